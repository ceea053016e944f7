/** The running clock, and how it stands against the plan. */

/** "0:42", "12:40", "1:02:40" */
export function sayElapsed(seconds: number): string {
  const whole = Math.max(0, Math.floor(seconds));
  const [hours, minutes, rest] = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60, whole % 60];
  const two = (number: number) => String(number).padStart(2, "0");
  return hours === 0 ? `${minutes}:${two(rest)}` : `${hours}:${two(minutes)}:${two(rest)}`;
}

/** At a stop nobody is early or late while its planned time runs, give or take half a minute. */
export function sayAgainstPlan(elapsed: number, stop: { readonly begins: number; readonly ends: number }): string {
  const late = elapsed - stop.ends;
  const early = stop.begins - elapsed;
  if (late >= 30) return `${Math.max(1, Math.round(late / 60))} min behind`;
  if (early >= 30) return `${Math.max(1, Math.round(early / 60))} min ahead`;
  return "on plan";
}

/** Wall clock of the phone, "09:24:31". */
export function clockOf(now: Date): string {
  return now.toTimeString().slice(0, 8);
}

/** Calendar day of the phone. */
export function dayOf(now: Date): string {
  const two = (number: number) => String(number).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** Local time with its offset, "2026-07-18T11:02:09+01:00". */
export function instantOf(now: Date): string {
  const minutes = -now.getTimezoneOffset();
  const two = (number: number) => String(number).padStart(2, "0");
  const offset = `${minutes < 0 ? "-" : "+"}${two(Math.floor(Math.abs(minutes) / 60))}:${two(Math.abs(minutes) % 60)}`;
  return `${dayOf(now)}T${clockOf(now)}${offset}`;
}
