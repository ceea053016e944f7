import { describe, expect, it } from "vitest";
import {
  isLeafless,
  lightOf,
  lightSpans,
  readObstacle,
  sayLight,
  sunByMinute,
  takesSun,
} from "../../src/almanac/index.ts";
import type { Bed } from "../../src/model.ts";

const bed = (facts: Partial<Bed>): Bed => ({
  id: "long-bed",
  title: "Long Bed",
  private: false,
  body: "",
  described: true,
  alsoCalled: [],
  shade: [],
  built: [],
  filled: [],
  viewpoints: [],
  ...facts,
});
const question = { day: "2024-06-20", timeZone: "Europe/London", place: { latitude: 51.4779, longitude: 0 } };

describe("obstacles", () => {
  it("are read from a bed's words", () => {
    expect(readObstacle("wall to the east, 3 m high, 2 m away")).toEqual({
      what: "wall",
      direction: 90,
      heightM: 3,
      awayM: 2,
      widthM: Number.POSITIVE_INFINITY,
      deciduous: false,
    });
    expect(readObstacle("two apple trees to the south-west, 5 m tall, 8,5 m away, 6 m wide")).toEqual({
      what: "two apple trees",
      direction: 225,
      heightM: 5,
      awayM: 8.5,
      widthM: 6,
      deciduous: true,
    });
    expect(readObstacle("shed to the north, 8 ft high, 4 ft away")?.heightM).toBeCloseTo(2.4384);
    expect(readObstacle("a bit gloomy")).toBeUndefined();
  });

  // A wall 3 m high and 3 m away hides the sun up to 45°; at 60° aside the way to it is twice as long, so only up to 26.6° (plane geometry).
  it("hide the sun as plane geometry says", () => {
    const wall = readObstacle("wall to the south, 3 m high, 3 m away");
    if (wall === undefined) throw new Error("not read");
    expect(takesSun(wall, { azimuth: 180, altitude: 44.9 }, false)).toBe(true);
    expect(takesSun(wall, { azimuth: 180, altitude: 45.1 }, false)).toBe(false);
    expect(takesSun(wall, { azimuth: 240, altitude: 26.5 }, false)).toBe(true);
    expect(takesSun(wall, { azimuth: 240, altitude: 26.7 }, false)).toBe(false);
    expect(takesSun(wall, { azimuth: 0, altitude: 5 }, false)).toBe(false);
  });

  it("let light through when they are bare", () => {
    const tree = readObstacle("oak tree to the south, 10 m high, 5 m away");
    if (tree === undefined) throw new Error("not read");
    expect(takesSun(tree, { azimuth: 180, altitude: 20 }, isLeafless(1, 51))).toBe(false);
    expect(takesSun(tree, { azimuth: 180, altitude: 20 }, isLeafless(7, 51))).toBe(true);
    expect(isLeafless(7, -34)).toBe(true);
    expect(isLeafless(1, -34)).toBe(false);
  });
});

describe("light on a bed", () => {
  it("is named from the camera", () => {
    expect(lightOf({ azimuth: 180, altitude: 40 }, 0)).toBe("front");
    expect(lightOf({ azimuth: 180, altitude: 40 }, 170)).toBe("back");
    expect(lightOf({ azimuth: 180, altitude: 40 }, 90)).toBe("side");
    expect(lightOf({ azimuth: 350, altitude: 40 }, 10)).toBe("back");
    expect(lightOf({ azimuth: 180, altitude: -1 }, 0)).toBe("dark");
  });

  it("is said with its times", () => {
    const walled = bed({
      shade: ["wall to the east, 3 m high, 2 m away"],
      viewpoints: [{ name: "gate", looking: 270 }],
    });
    const spans = lightSpans(walled, sunByMinute(question), question) ?? [];
    expect(spans[0]?.light).toBe("dark");
    expect(spans.at(-1)?.until).toBe(1440);
    const shade = spans.find((span) => span.light === "shade");
    // At 10:44 summer time the sun stands at 53° and 27° off east: tan 53° = 1.33 = 3 m · cos 27° / 2 m.
    expect(sayLight(spans, 8 * 60)).toMatch(/^in the wall's shade before 10:4\d$/);
    expect(sayLight(spans, (shade?.until ?? 0) + 10)).toMatch(
      /^sun behind you until 1\d:\d\d, wall shade gone since 10:4\d$/,
    );
    expect(sayLight(spans, 3 * 60)).toMatch(/^the sun is not up before 4:4\d$/);
    expect(sayLight(spans, 23 * 60)).toBe("the sun is down");
  });

  it("is not guessed when nobody said where the camera stands", () => {
    expect(lightSpans(bed({}), sunByMinute(question), question)).toBeUndefined();
  });

  it("has 1,440 minutes on the days the clock changes", () => {
    const day = { ...question, day: "2024-03-31" };
    const suns = sunByMinute(day);
    expect(suns).toHaveLength(1440);
    // Sunrise on 2024-03-31 in Greenwich is 05:38 UT, 06:38 on the clock (astronomy tables; within a minute).
    expect(suns.findIndex((sun) => sun.altitude > 0)).toBeGreaterThan(6 * 60 + 30);
  });
});
