/** How lengths of films are said: near enough to decide by, or in digits as on a clock. */
import { sayNumber, sayPlural } from "../language/index.ts";

/** Short lengths are said to the second. */
export function exactLength(seconds: number): string {
  return seconds < 90 ? sayPlural(seconds, "second", "seconds") : roughLength(seconds);
}

/** "a minute and a half", "two and a half minutes": near enough to decide by. */
export function roughLength(seconds: number): string {
  const halves = Math.max(1, Math.round(seconds / 30));
  const whole = Math.floor(halves / 2);
  const half = halves % 2 === 1;
  if (whole === 0) return "half a minute";
  if (whole === 1) return half ? "a minute and a half" : "a minute";
  return `${sayNumber(whole)}${half ? " and a half" : ""} minutes`;
}

/** "12 minutes", "12 minutes and a half", "40 seconds" */
export function minutes(seconds: number): string {
  if (seconds < 60) return `${sayNumber(seconds)} ${seconds === 1 ? "second" : "seconds"}`;
  const whole = Math.floor(seconds / 60);
  const half = seconds % 60 >= 30 ? " and a half" : "";
  return whole === 1 && half === "" ? "one minute" : `${sayNumber(whole)}${half} minutes`;
}

/** "12 minutes", "90 seconds": what the film should last, in digits as on a clock. */
export function filmLength(seconds: number): string {
  const whole = Math.round(seconds / 60);
  if (seconds < 120 && seconds !== 60) return `${seconds} seconds`;
  return whole === 1 ? "1 minute" : `${whole} minutes`;
}

/** "2 min 10", "50 s": a stop's length as it stands in a heading. */
export function stopLength(seconds: number): string {
  if (seconds < 60) return `${seconds} s`;
  const rest = seconds % 60;
  return `${Math.floor(seconds / 60)} min${rest === 0 ? "" : ` ${String(rest).padStart(2, "0")}`}`;
}
