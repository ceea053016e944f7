/** Hours between sunrise and sunset, for how fast plants can grow. */
import { daysBetween } from "../calendar.ts";
import type { Day } from "../model.ts";

/** Degrees of the sun's centre below the horizon at sunrise and sunset: refraction and the sun's radius (NOAA). */
const atHorizon = -0.833;

/**
 * Day length by the declination of Spencer, "Fourier series representation of the position of the sun", Search 2:172 (1971):
 * within a few minutes of the almanac's, which is far nearer than plants care. 0 and 24 beyond the polar circles.
 */
export function dayLength(day: Day, latitude: number): number {
  const radians = (degrees: number) => (degrees * Math.PI) / 180;
  const turn = (2 * Math.PI * daysBetween(`${day.slice(0, 4)}-01-01`, day)) / 365;
  const declination =
    0.006918 -
    0.399912 * Math.cos(turn) +
    0.070257 * Math.sin(turn) -
    0.006758 * Math.cos(2 * turn) +
    0.000907 * Math.sin(2 * turn) -
    0.002697 * Math.cos(3 * turn) +
    0.00148 * Math.sin(3 * turn);
  const north = radians(latitude);
  const hourAngle =
    (Math.sin(radians(atHorizon)) - Math.sin(north) * Math.sin(declination)) /
    (Math.cos(north) * Math.cos(declination));
  if (hourAngle >= 1) return 0;
  if (hourAngle <= -1) return 24;
  return (Math.acos(hourAngle) * 24) / Math.PI;
}
