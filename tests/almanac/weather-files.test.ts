import { describe, expect, it } from "vitest";
import { readWeather, type WeatherFile } from "../../src/almanac/index.ts";

/** The days of a file of one station. */
const daysOf = (weather: WeatherFile) => weather.stations[0]?.days ?? new Map();
const stationsOf = (weather: WeatherFile) => weather.stations.map(({ station }) => station);

/** One .dly row: values of the month's first days; the rest is missing, as the archive writes it. */
function dly(element: string, values: readonly string[]): string {
  const slots = Array.from({ length: 31 }, (_, slot) => values[slot] ?? "-9999   ");
  return `USW00014739202407${element}${slots.join("")}`;
}

describe("GHCN-Daily", () => {
  // Layout: NOAA NCEI, GHCN-Daily readme (tenths of °C and of mm, -9999 missing, a quality flag that is not blank means failed). Values are made up.
  it("is read from fixed-width rows", () => {
    const text = [
      dly("TMAX", ["  289  W", "  300  W", "-9999   ", "  999 XW"]),
      dly("TMIN", ["  178  W", "  -11  W"]),
      dly("PRCP", ["  254  W", "    0T W"]),
      dly("SNWD", ["   50  W"]),
    ].join("\n");
    expect(text.split("\n")[0]).toHaveLength(269);
    const weather = readWeather("weather/a.dly", text);
    expect(weather).toMatchObject({ layout: "ghcn dly", flagged: 1, problems: [] });
    expect(stationsOf(weather)).toEqual(["USW00014739"]);
    expect([...daysOf(weather)]).toEqual([
      ["2024-07-01", { tmax: 28.9, tmin: 17.8, rain: 25.4 }],
      ["2024-07-02", { tmax: 30, tmin: -1.1, rain: 0 }],
    ]);
  });

  it("has no 31 June", () => {
    const row = dly(
      "TMAX",
      Array.from({ length: 31 }, () => "  200  W"),
    ).replace("202407", "202406");
    const days = [...daysOf(readWeather("a.dly", row)).keys()];
    expect(days).toHaveLength(30);
    expect(days.at(-1)).toBe("2024-06-30");
  });

  it("is read from by-year rows", () => {
    const text =
      "USW00014739,20240701,TMAX,289,,,W,2400\nUSW00014739,20240701,TMIN,178,,I,W,2400\nUSW00014739,20240701,PRCP,254,T,,W,\n";
    const weather = readWeather("2024.csv", text);
    expect(weather).toMatchObject({ layout: "ghcn by year", flagged: 1 });
    expect([...daysOf(weather)]).toEqual([["2024-07-01", { tmax: 28.9, rain: 25.4 }]]);
  });

  it("is read from access rows, in tenths or already converted", () => {
    const tenths =
      '"STATION","DATE","TMAX","TMAX_ATTRIBUTES","TMIN","TMIN_ATTRIBUTES","PRCP","PRCP_ATTRIBUTES"\n"USW00014739","2024-07-01","289",",,W","178",",S,W","254",",,W"\n';
    expect([...daysOf(readWeather("a.csv", tenths))]).toEqual([["2024-07-01", { tmax: 28.9, rain: 25.4 }]]);
    const converted = '"STATION","DATE","TMAX","TMIN","PRCP"\n"USW00014739","2024-07-01","84.02","64.0","1.00"\n';
    const weather = readWeather("a.csv", converted);
    expect(weather.problems.map(({ rule }) => rule)).toEqual(["weather/units-converted"]);
    expect(daysOf(weather).get("2024-07-01")?.tmax).toBeCloseTo(28.9, 6);
    expect(daysOf(weather).get("2024-07-01")?.rain).toBeCloseTo(25.4, 6);
  });
});

describe("a plain CSV", () => {
  it("is read by its column names and units", () => {
    expect([
      ...daysOf(readWeather("w.csv", "date,tmin_c,tmax_c,rain_mm\n2026-05-01,4.5,13,0\n2026-05-02,,12.5,3.2\n")),
    ]).toEqual([
      ["2026-05-01", { tmin: 4.5, tmax: 13, rain: 0 }],
      ["2026-05-02", { tmax: 12.5, rain: 3.2 }],
    ]);
    expect([...daysOf(readWeather("w.csv", "Date;Min (°F);Max (°F);Rain (in)\n2026-05-01;50;86;1\n"))]).toEqual([
      ["2026-05-01", { tmin: 10, tmax: 30, rain: 25.4 }],
    ]);
  });

  it("says when a unit cannot be right, a day is doubled, a date is none", () => {
    const weather = readWeather(
      "w.csv",
      "date,tmin_c,tmax_c\n2026-07-01,61,84\n2026-07-02,10,20\n2026-07-02,11,21\nyesterday,1,2\n",
    );
    expect([...daysOf(weather)]).toEqual([["2026-07-02", { tmin: 10, tmax: 20 }]]);
    expect(weather.problems.map(({ rule, line }) => [rule, line])).toEqual([
      ["weather/no-date", 5],
      ["weather/impossible-value", 2],
      ["weather/impossible-value", 2],
      ["weather/day-twice", 4],
    ]);
  });

  it("says what the first line should be", () => {
    expect(readWeather("w.csv", "a,b\n1,2\n").problems[0]?.fix).toBe(
      "Begin the file with a line such as: date,tmin_c,tmax_c,rain_mm",
    );
    expect(readWeather("w.csv", "").problems).toHaveLength(1);
  });
});
