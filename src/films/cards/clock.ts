/** "1:20": minutes and seconds as on a clock, for lengths and running totals. */
export function clockOf(seconds: number): string {
  const whole = Math.round(seconds);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, "0")}`;
}
