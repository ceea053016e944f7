import { describe, expect, it, test } from "vitest";
import {
  isLeafless,
  lightOf,
  lightSpans,
  lightWorth,
  type Obstacle,
  readObstacle,
  readShade,
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

describe("shade as people write it", () => {
  test.each<[string, Partial<Obstacle>]>([
    ["fence to the south, 180 cm high, 1 m away", { what: "fence", direction: 180, heightM: 1.8, awayM: 1 }],
    ["fence to the west, 6 feet 6 inches high, 3 ft away", { direction: 270, heightM: 1.9812, awayM: 0.9144 }],
    ["wall to the east, 10 feet 6 inches high, 3 ft away", { direction: 90, heightM: 3.2004, awayM: 0.9144 }],
    ["hedge on the north-east side, 2 m high", { what: "hedge", direction: 45, heightM: 2, awayM: 0 }],
    ["house to the south-south-west, 6 m high, 4 m away", { what: "house", direction: 202.5, heightM: 6, awayM: 4 }],
    ["house SSW, 6 m high, 4 m away", { what: "house", direction: 202.5 }],
    ["fence 2 m high to the west", { what: "fence", direction: 270, heightM: 2 }],
    ["hedge, west, 180 cm high, 1 m away", { what: "hedge", direction: 270, heightM: 1.8, awayM: 1 }],
    ["six-foot-high fence on the northwestern side", { what: "fence", direction: 315, heightM: 1.8288 }],
    ["shed to the north, 8' tall, 4' away", { heightM: 2.4384, awayM: 1.2192 }],
    ["3 birches to the west, 8 m high, 5 m away, 4 m wide", { what: "3 birches", heightM: 8, widthM: 4 }],
    ["wall to the east, 2 metres in height, half a metre away", { heightM: 2, awayM: 0.5 }],
    ["wall to the east, two and a half metres high", { heightM: 2.5 }],
    ["wall to the east, height 2 m, 1.5 m from the bed", { heightM: 2, awayM: 1.5 }],
  ])("%s", (text, expected) => {
    const read = readObstacle(text);
    for (const [key, value] of Object.entries(expected)) {
      const found = read?.[key as keyof Obstacle];
      if (typeof value === "number") expect.soft(found, key).toBeCloseTo(value, 9);
      else expect.soft(found, key).toBe(value);
    }
  });

  test.each([
    ["a bit gloomy", "no direction"],
    ["wall to the north and west, 3 m high", "two directions"],
    ["wall to the east, very high", "no height"],
    ["wall to the east, 3 m high, about 2 paces away", "a number"],
    ["wall to the east, 3 m high, 2", "a number"],
  ])("is not guessed: %s", (text, why) => {
    expect(readShade(text)).toEqual({ as: "unread", why });
  });

  test("roofs and open ground are neither", () => {
    expect(readShade("tunnel skin").as).toBe("roof");
    expect(readShade("none").as).toBe("nothing");
  });
});

describe("a sun high in the sky", () => {
  // Sun altitudes at noon by astronomy-engine: Nashville 4 July 76.6°, the equator in March near 90°.
  test.each([
    [
      "Nashville on 4 July, looking south",
      "America/Chicago",
      "2024-07-04",
      { latitude: 36.16, longitude: -86.78 },
      180,
    ],
    ["Nashville on 4 July, looking north", "America/Chicago", "2024-07-04", { latitude: 36.16, longitude: -86.78 }, 0],
    ["the equator in March", "UTC", "2024-03-20", { latitude: 0, longitude: 0 }, 0],
  ])("is hard light from above whichever way the camera looks: %s", (_, timeZone, day, place, looking) => {
    const asked = { day, timeZone, place };
    const suns = sunByMinute(asked);
    const noon = suns.reduce((best, sun, at) => (sun.altitude > (suns[best]?.altitude ?? 0) ? at : best), 0);
    const spans = lightSpans(bed({ viewpoints: [{ name: "gate", looking }] }), suns, asked) ?? [];
    expect(sayLight(spans, noon)).toMatch(/^hard light from above until \d+:\d\d$/);
    expect(lightWorth.high).toBeLessThan(lightWorth.front);
  });

  test("is front light again when it has come down", () => {
    expect(lightOf({ azimuth: 180, altitude: 59.9 }, 0)).toBe("front");
    expect(lightOf({ azimuth: 180, altitude: 60 }, 0)).toBe("high");
  });
});
