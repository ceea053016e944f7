/**
 * The sun, by what our almanac gives: declination and equation of time from positions, against NOAA and Meeus; and the order of
 * the kinds of light, against guidance for photographing plants.
 */
import { highSun, type Light, lightWorth, sunAtMilliseconds } from "../../src/almanac/index.ts";
import type { TruthRow } from "./table.ts";

/** Declination in degrees: the sun's height at the pole where it is up, without the air's lift of it. */
export function declinationAt(instant: string): number {
  const heightAt = (latitude: number) => sunAtMilliseconds(Date.parse(instant), { latitude, longitude: 0 }).altitude;
  const [north, south] = [heightAt(90), heightAt(-90)];
  return north > south ? north - lift(north) : lift(south) - south;
}

/**
 * Equation of time in minutes: how far the sun's hour is ahead of the clock's. The hour angle is read where the sun stands
 * low in the south, from its azimuth and height, at the longitude of noon.
 */
export function equationOfTimeAt(instant: string): number {
  const at = Date.parse(instant);
  const { latitude, longitude } = { latitude: 45, longitude: longitudeOfNoon(at) };
  const { azimuth, altitude } = sunAtMilliseconds(at, { latitude, longitude });
  const [a, h, lat] = [azimuth - 180, altitude - lift(altitude), latitude].map(
    (degrees) => (degrees * Math.PI) / 180,
  ) as [number, number, number];
  const hourAngle = Math.atan2(Math.sin(a), Math.cos(a) * Math.sin(lat) + Math.tan(h) * Math.cos(lat));
  // At that longitude the mean sun stands in the south: the true sun's hour angle is the whole of the equation.
  return ((hourAngle * 180) / Math.PI) * 4;
}

function longitudeOfNoon(at: number): number {
  const hours = (at / 3_600_000) % 24;
  return (12 - hours) * 15;
}

/** What the air lifts a sun that is seen at this height, degrees: Bennett's formula (Meeus, ch. 16). */
function lift(seen: number): number {
  return 1 / Math.tan(((seen + 7.31 / (seen + 4.4)) * Math.PI) / 180) / 60;
}

interface SunFigure {
  readonly of: string;
  readonly found: () => number;
  readonly expected: number;
  readonly unit: string;
  /** Greatest difference that may be. */
  readonly within: number;
  readonly against: string;
}

const noaa = "NOAA spreadsheet of solar calculations, row of 21 June 2010";
const meeus = "Meeus, Astronomical Algorithms, 2nd ed.";
const noaaInstant = "2010-06-21T00:06:00-07:00";
/** 13 October 1992, 0h dynamical time: 59 s before by universal time. */
const meeusInstant = "1992-10-12T23:59:01Z";

/** NOAA's row was read; Meeus's three figures are from memory and were worked out again from his formulas. */
export const sunFigures: readonly SunFigure[] = [
  {
    of: "declination",
    found: () => declinationAt(noaaInstant),
    expected: 23.4383706193,
    unit: "°",
    within: 0.01,
    against: noaa,
  },
  {
    of: "equation of time",
    found: () => equationOfTimeAt(noaaInstant),
    expected: -1.71536757847,
    unit: " min",
    within: 0.05,
    against: noaa,
  },
  {
    of: "declination",
    found: () => declinationAt(meeusInstant),
    expected: -7.78507,
    unit: "°",
    within: 0.01,
    against: `${meeus}, ex. 25.a (from memory)`,
  },
  {
    of: "declination",
    found: () => declinationAt(meeusInstant),
    expected: -7.783871,
    unit: "°",
    within: 0.01,
    against: `${meeus}, ex. 25.b (from memory)`,
  },
  {
    of: "equation of time",
    found: () => equationOfTimeAt(meeusInstant),
    expected: 13.7109,
    unit: " min",
    within: 0.05,
    against: `${meeus}, ex. 28.a (from memory)`,
  },
];

const oregon = "Oregon State Univ. Ext., Take better pictures of plants";
const navy = "US Navy, Photography (Basic), NAVEDTRA 14209 (1993), fig. 4-18";

/**
 * Of two lights, which one published guidance would rather have. Oregon: a cloudy day is best for plants, keep away from the
 * sun overhead, thin cloth over the plant softens it, and so does plain shade. The Navy's course: what is lit from the front
 * sends the most light to the camera, less from the side, least from behind. Some garden photographers want the sun behind
 * leaves and petals; that is for single shots, and no light to film a whole bed by.
 */
export const lightOrders: readonly (readonly [better: Light, worse: Light, source: string])[] = [
  ...(["front", "side", "high", "back"] as const).map((sunny) => ["even", sunny, oregon] as const),
  ["front", "high", oregon],
  ["side", "high", oregon],
  ["soft", "high", oregon],
  ["shade", "high", oregon],
  ["front", "side", navy],
  ["side", "back", navy],
];

export function wrongOrders(worth: Readonly<Record<Light, number>>): readonly string[] {
  return lightOrders
    .filter(([better, worse]) => worth[better] < worth[worse])
    .map(([better, worse]) => `${better} below ${worse}`);
}

export function lightRows(): readonly TruthRow[] {
  const sun = sunFigures.map(({ of, found, expected, unit, within, against }): TruthRow => {
    const apart = Math.abs(found() - expected);
    return {
      quantity: `the sun's ${of}`,
      cases: 1,
      found: `${apart.toFixed(4)}${unit}`,
      against,
      goal: `at most ${within}${unit}`,
      met: apart <= within,
    };
  });
  const wrong = wrongOrders(lightWorth);
  return [
    ...sun,
    {
      quantity: "kinds of light worth less than one that guidance puts below them",
      cases: lightOrders.length,
      found: wrong.length === 0 ? "none" : wrong.join(", "),
      against: `${oregon}; ${navy}. How much less is common practice, no published figure`,
      goal: "none",
      met: wrong.length === 0,
    },
    {
      quantity: `${highSun}° as the beginning of a high sun`,
      cases: 1,
      found: "no published figure was found to hold it against",
      against: "ours: guidance says noon and overhead, in no degrees",
      goal: "",
    },
  ];
}
