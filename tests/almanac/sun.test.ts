import { Temporal } from "temporal-polyfill";
import { describe, expect, it } from "vitest";
import { lowSun, sunAt, sunDay } from "../../src/almanac/index.ts";

const at = (text: string) => Temporal.Instant.from(text);

/** Seconds between what was found and what was expected; no time found is endlessly far. */
function secondsApart(found: Temporal.Instant | undefined, expected: string): number {
  return found === undefined ? Number.POSITIVE_INFINITY : Math.abs(found.since(at(expected)).total("seconds"));
}

describe("the sun's position", () => {
  // Reda & Andreas, NREL/TP-560-34302 (rev. 2008), Table A5.1: azimuth 194.34024, zenith 50.11162.
  // suncalc refracts for standard air; the example has 820 mbar, hence 0.005 in altitude.
  it("agrees with the SPA reference case", () => {
    const sun = sunAt(at("2003-10-17T12:30:30-07:00"), { latitude: 39.742476, longitude: -105.1786 });
    expect(Math.abs(sun.azimuth - 194.34024)).toBeLessThan(0.002);
    expect(Math.abs(sun.altitude - (90 - 50.11162))).toBeLessThan(0.005);
  });

  // NOAA_Solar_Calculations_day spreadsheet, row 2010-06-21 00:06:00 UTC-7, 40 N 105 W: azimuth 1.0986711839, true elevation -26.5537621192.
  it("agrees with the NOAA row", () => {
    const sun = sunAt(at("2010-06-21T00:06:00-07:00"), { latitude: 40, longitude: -105 });
    // NOAA's shorter series, and an azimuth 1° from the anti-transit where a second of time is 0.01°.
    expect(Math.abs(sun.azimuth - 1.0986711839)).toBeLessThan(0.01);
    expect(Math.abs(sun.altitude - (-26.5537621192 + refraction(-26.5537621192)))).toBeLessThan(0.01);
  });
});

// Computed independently with astronomy-engine (sea level, 34' refraction, 16' radius); tolerance one minute.
const PLACES = [
  ["2010-06-21", "-06:00", 40, -105, "05:31:21", "13:01:49", "20:32:17", "04:58:27", "21:05:12", 73.44],
  ["2024-06-20", "+01:00", 51.4779, 0, "04:42:41", "13:01:42", "21:20:44", "03:54:56", "22:08:28", 61.96],
  ["2024-12-21", "+00:00", 51.4779, 0, "08:03:17", "11:58:17", "15:53:17", "07:23:01", "16:33:33", 15.08],
  ["2024-07-04", "-05:00", 36.16, -86.78, "05:35:21", "12:51:41", "20:07:49", "05:05:14", "20:37:54", 76.62],
  ["2024-12-21", "+11:00", -33.87, 151.21, "05:40:49", "12:53:14", "20:05:39", "05:11:41", "20:34:48", 79.57],
  ["2024-03-20", "+00:00", 0, 0, "06:04:03", "12:07:18", "18:10:33", "05:43:23", "18:31:13", 89.85],
  ["2024-06-21", "+02:00", 69.65, 18.96, undefined, "12:46:04", undefined, undefined, undefined, 43.79],
  ["2024-12-21", "+01:00", 69.65, 18.96, undefined, "11:42:25", undefined, "09:31:31", "13:53:19", -3.09],
] as const;

/**
 * Sæmundsson's formula (Meeus, Astronomical Algorithms, 2nd ed., ch. 16), degrees in and out. suncalc gives a sun below
 * the horizon the refraction of the horizon.
 */
function refraction(geometric: number): number {
  const altitude = Math.max(geometric, 0);
  return 1.02 / Math.tan(((altitude + 10.3 / (altitude + 5.11)) * Math.PI) / 180) / 60;
}

describe("the sun's day", () => {
  let compared = 0;
  it.each(PLACES)("%s at %s, %d %d", (day, offset, latitude, longitude, rise, noon, set, dawn, dusk, altitude) => {
    const sun = sunDay(day, offset, { latitude, longitude });
    const near = (found: Temporal.Instant | undefined, expected: string | undefined) => {
      if (expected === undefined) return expect(found).toBeUndefined();
      compared += 1;
      return expect(secondsApart(found, `${day}T${expected}${offset}`)).toBeLessThan(60);
    };
    near(sun.sunrise, rise);
    near(sun.noon, noon);
    near(sun.sunset, set);
    near(sun.civilDawn, dawn);
    near(sun.civilDusk, dusk);
    // The table's altitudes are geometric; ours are as seen.
    expect(Math.abs(sun.noonAltitude - (altitude + refraction(altitude)))).toBeLessThan(0.01);
  });

  it("compared every time of the table, polar day and night among them", () => {
    expect(compared).toBe(34);
    expect(sunDay("2024-06-21", "+02:00", { latitude: 69.65, longitude: 18.96 }).polar).toBe("day");
    expect(sunDay("2024-12-21", "+01:00", { latitude: 69.65, longitude: 18.96 }).polar).toBe("night");
  });

  // SPA's printed 17:20:19 is the sunset of local 16 October, because it works on the UTC day.
  it("gives the sunset of the local day", () => {
    const { sunset, sunrise } = sunDay("2003-10-17", "-07:00", { latitude: 39.742476, longitude: -105.1786 });
    expect(secondsApart(sunset, "2003-10-17T17:18:51-07:00")).toBeLessThan(5);
    expect(secondsApart(sunrise, "2003-10-17T06:12:44-07:00")).toBeLessThan(5);
  });

  it("stays on the local day where the clock runs 14 hours ahead", () => {
    const { noon } = sunDay("2026-05-16", "Pacific/Kiritimati", { latitude: 1.87, longitude: -157.4 });
    expect(noon.toZonedDateTimeISO("Pacific/Kiritimati").toPlainDate().toString()).toBe("2026-05-16");
  });
});

describe("low sun", () => {
  // Computed with astronomy-engine, geometric altitude: 36.16 N, 2024-07-04.
  it("lies between the bounds asked for", () => {
    const low = lowSun("2024-07-04", "-05:00", { latitude: 36.16, longitude: -86.78 }, { from: -4, to: 6 });
    expect(secondsApart(low.morning?.begins, "2024-07-04T05:17:04-05:00")).toBeLessThan(60);
    expect(secondsApart(low.morning?.ends, "2024-07-04T06:13:14-05:00")).toBeLessThan(60);
    expect(secondsApart(low.evening?.begins, "2024-07-04T19:29:59-05:00")).toBeLessThan(60);
    expect(secondsApart(low.evening?.ends, "2024-07-04T20:26:05-05:00")).toBeLessThan(60);
  });

  // Greenwich 2024-12-21: +6 at 09:04:58 and 14:51:36 (astronomy-engine).
  it("follows the bounds", () => {
    const low = lowSun("2024-12-21", "+00:00", { latitude: 51.4779, longitude: 0 }, { from: 0, to: 6 });
    expect(secondsApart(low.morning?.ends, "2024-12-21T09:04:58Z")).toBeLessThan(60);
    expect(secondsApart(low.evening?.begins, "2024-12-21T14:51:36Z")).toBeLessThan(60);
  });

  it("is none on a day the sun never reaches the upper bound", () => {
    const low = lowSun("2024-12-21", "+01:00", { latitude: 69.65, longitude: 18.96 }, { from: -4, to: 6 });
    expect(low).toEqual({});
  });
});
