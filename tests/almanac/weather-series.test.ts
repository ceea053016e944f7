import { describe, expect, it } from "vitest";
import { gardenWeather, kilometresBetween, weatherSpan } from "../../src/almanac/index.ts";
import { weatherOf } from "./weather-of.ts";

const today = "2026-07-18";
const plain = (rows: readonly string[]) => ["date,tmin_c,tmax_c,rain_mm", ...rows].join("\n");
const access = (station: string, place: readonly [number, number, number], rows: readonly string[]) =>
  [
    '"STATION","DATE","LATITUDE","LONGITUDE","ELEVATION","TMAX","TMIN","PRCP"',
    ...rows.map((row) => {
      const [day, tmax, tmin, rain] = row.split(",");
      return `"${station}","${day}","${place[0]}","${place[1]}","${place[2]}","${tmax}","${tmin}","${rain}"`;
    }),
  ].join("\n");

const garden = { latitude: 54.3, longitude: -5.6, elevation: 30 };

describe("several weather files", () => {
  const near = {
    file: "weather/near.csv",
    text: access("XX000000001", [54.35, -5.6, 12], ["2026-05-01,150,60,", "2026-05-02,160,,12"]),
  };
  const far = {
    file: "weather/far.csv",
    text: access(
      "XX000000002",
      [54.9, -5.6, 200],
      ["2026-05-01,100,10,5", "2026-05-02,110,20,6", "2026-05-03,120,30,7"],
    ),
  };

  it("give each day by the nearest station that has it whole, and say who gave what", () => {
    const weather = gardenWeather([far, near], garden, today);
    expect([...weather.days]).toEqual([
      ["2026-05-01", { tmax: 15, tmin: 6, rain: 0.5 }],
      ["2026-05-02", { tmax: 11, tmin: 2, rain: 1.2 }],
      ["2026-05-03", { tmax: 12, tmin: 3, rain: 0.7 }],
    ]);
    expect(weather.sources).toMatchObject([
      { station: "XX000000001", higherM: -18, temperatureDays: 1, rainDays: 1 },
      { station: "XX000000002", higherM: 170, temperatureDays: 2, rainDays: 2 },
    ]);
    expect(weather.sources[0]?.distanceKm).toBeCloseTo(5.6, 1);
  });

  it("take a file without a place as measured in the garden, before every station", () => {
    const own = { file: "weather/own.csv", text: plain(["2026-05-01,7,14,0"]) };
    const weather = gardenWeather([near, own], garden, today);
    expect(weather.days.get("2026-05-01")).toEqual({ tmin: 7, tmax: 14, rain: 0 });
    expect(weather.sources.map(({ file, distanceKm }) => [file, Math.round(distanceKm ?? -1)])).toEqual([
      ["weather/own.csv", 0],
      ["weather/near.csv", 6],
    ]);
  });

  it("keep stations of one file apart", () => {
    const two = {
      file: "weather/2026.csv",
      text: "XX000000001,20260501,TMAX,150,,,W,\nXX000000002,20260501,TMAX,100,,,W,\nXX000000002,20260501,TMIN,10,,,W,\n",
    };
    const weather = gardenWeather([two], garden, today);
    expect(weather.problems).toEqual([]);
    expect(weather.days.get("2026-05-01")).toEqual({ tmax: 10, tmin: 1, rain: undefined });
  });

  it("say when a station moved", () => {
    const moved = {
      file: "weather/moved.csv",
      text: [
        access("XX000000001", [54.35, -5.6, 12], ["2026-05-01,150,60,0"]),
        ...access("XX000000001", [54.5, -5.6, 12], ["2026-05-02,150,60,0", "2026-05-03,150,60,0"]).split("\n").slice(1),
      ].join("\n"),
    };
    const { problems } = gardenWeather([moved], garden, today);
    expect(problems.map(({ rule, line }) => [rule, line])).toEqual([["weather/station-moved", 3]]);
    expect(problems[0]?.what).toBe(
      "The station XX000000001 stands elsewhere from 2026-05-02 on, so its earlier and later days are not of one place.",
    );
  });
});

describe("gaps", () => {
  it("of up to three days are bridged and marked, longer ones stay and are said", () => {
    const text = plain(["2026-01-01,2,6,0", "2026-01-03,4,10,1", "2026-06-30,10,20,0"]);
    const weather = gardenWeather([{ file: "weather/w.csv", text }], garden, today);
    expect(weather.days.get("2026-01-02")).toEqual({ tmin: 3, tmax: 8, rain: undefined, bridged: true });
    expect(weather.bridgedDays).toBe(1);
    expect(weather.gaps).toEqual([{ from: "2026-01-04", to: "2026-06-29", days: 177 }]);
    expect(weather.problems.map(({ what }) => what)).toEqual([
      "No file has temperatures from 2026-01-04 to 2026-06-29, 177 days.",
    ]);
  });

  it("leave out what is dated after today", () => {
    const text = plain(["2026-07-18,10,20,0", "2026-07-19,10,20,0"]);
    expect(gardenWeather([{ file: "w.csv", text }], undefined, today).last).toBe("2026-07-18");
  });

  it("of no file at all is no weather", () => {
    expect(gardenWeather([], garden, today)).toMatchObject({ sources: [], gaps: [], problems: [], first: undefined });
  });
});

describe("a column in another unit", () => {
  const fahrenheit = Array.from(
    { length: 30 },
    (_, i) => `2026-07-${String(i + 1).padStart(2, "0")},${50 + i},${60 + i},0`,
  );

  it("is found by what cannot be, and none of it is used", () => {
    const weather = gardenWeather([{ file: "weather/w.csv", text: plain(fahrenheit) }], garden, "2026-12-31");
    expect(weather.problems.map(({ rule }) => rule)).toEqual(["weather/wrong-unit", "weather/wrong-unit"]);
    expect(weather.problems[1]?.what).toBe(
      "22 of 30 values of lowest temperature cannot be (the first is 58), so the column is in another unit than its name says, and none of it was used.",
    );
    expect([...weather.days.values()].every(({ tmax, tmin }) => tmax === undefined && tmin === undefined)).toBe(true);
  });

  it("is not taken for one for two slips of the pen", () => {
    const slips = plain(["2026-07-01,10,200,0", "2026-07-02,10,20,0", "2026-07-03,10,190,0", "2026-07-04,25,20,0"]);
    const weather = gardenWeather([{ file: "weather/w.csv", text: slips }], garden, today);
    expect(weather.problems.map(({ what }) => what)).toEqual([
      "2 values of highest temperature cannot be (the first is 200); they were left out.",
      "On 2026-07-04 the lowest temperature is above the highest; both were left out.",
    ]);
  });
});

describe("the weather of a stretch of days", () => {
  it("is its extremes, frosts, rain and dry spell", () => {
    const span = weatherSpan(
      weatherOf({
        "2026-01-01": { tmin: -3, tmax: 4, rain: 0 },
        "2026-01-02": { tmin: 0, tmax: 6, rain: 12.4 },
        "2026-01-03": { tmin: 1, tmax: 30, rain: undefined, bridged: true },
        "2026-01-04": { tmin: 2, tmax: 9, rain: 0 },
        "2026-01-05": { tmin: 3, tmax: 8, rain: 0.1 },
      }),
      "2026-01-01",
      "2026-01-07",
    );
    expect(span).toMatchObject({
      temperatureDays: 5,
      missingDays: 2,
      hottest: { day: "2026-01-04", value: 9 },
      coldest: { day: "2026-01-01", value: -3 },
      frosts: 2,
      hardFrosts: 1,
      rain: 12.5,
      rainDays: 4,
      wettest: { day: "2026-01-02", value: 12.4 },
      wetDays: 1,
      dry: { from: "2026-01-04", to: "2026-01-05", days: 2 },
    });
  });

  it("without readings has none of them", () => {
    const span = weatherSpan(weatherOf({}), "2026-01-01", "2026-01-03");
    expect(span).toMatchObject({ missingDays: 3, frosts: 0, wetDays: 0 });
    expect([span.hottest, span.coldest, span.mean, span.rain, span.dry]).toEqual(Array(5).fill(undefined));
  });
});

describe("distance", () => {
  // One degree of latitude on a sphere of 6371.0088 km is 111.195 km; a quarter turn along the equator 10,007.557 km (computed).
  it("is the great circle's", () => {
    const at = (latitude: number, longitude: number) => ({ latitude, longitude });
    expect(kilometresBetween(at(54, 0), at(55, 0))).toBeCloseTo(111.195, 3);
    expect(kilometresBetween(at(0, 0), at(0, 90))).toBeCloseTo(10_007.557, 2);
    expect(kilometresBetween(at(10, 179.5), at(10, -179.5))).toBeLessThan(110);
  });
});
