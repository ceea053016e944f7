/**
 * Times as editing programs count them: whole pictures of a rate, and their labels. Drop frame (SMPTE ST 12-1) leaves out two
 * labels (four at 59.94) at each minute that ten does not divide, so that labels keep up with the clock; no picture is left out.
 */
import type { FrameRate } from "../../model.ts";

const ofTelevision: Readonly<Record<string, number>> = { "23.976": 24, "23.98": 24, "29.97": 30, "59.94": 60 };

/** "25", "29.97", "30000/1001"; undefined for what no film is made at. */
export function readRate(text: string): FrameRate | undefined {
  const nominal = ofTelevision[text];
  if (nominal !== undefined) return { num: nominal * 1000, den: 1001 };
  const parts = /^(\d{1,6})(?:\/(\d{1,4}))?$/.exec(text);
  const rate = { num: Number(parts?.[1]), den: Number(parts?.[2] ?? 1) };
  return rate.num / rate.den >= 10 && rate.num / rate.den <= 120 ? rate : undefined;
}

/** Whole numbers that labels count to: 30 for 29.97. */
export function countOf({ num, den }: FrameRate): number {
  return Math.round(num / den);
}

/** Only 29.97 and 59.94 have drop frame. */
export function hasDropFrame({ num, den }: FrameRate): boolean {
  return den === 1001 && (num === 30_000 || num === 60_000);
}

/** Rounded down, never past the moment; 1e-6 takes up what division leaves. */
export function framesIn(ms: number, { num, den }: FrameRate): number {
  return Math.floor((ms * num) / (den * 1000) + 1e-6);
}

export function frameOfLabel(label: string, rate: FrameRate): number | undefined {
  const parts = /^(\d\d):(\d\d):(\d\d)([:;.])(\d\d\d?)$/.exec(label);
  if (parts === null) return undefined;
  const [hours, minutes, seconds, frames] = [parts[1], parts[2], parts[3], parts[5]].map(Number) as [
    number,
    number,
    number,
    number,
  ];
  const count = countOf(rate);
  if (minutes > 59 || seconds > 59 || frames >= count) return undefined;
  const all = count * (hours * 3600 + minutes * 60 + seconds) + frames;
  if (parts[4] === ":" || !hasDropFrame(rate)) return all;
  const left = count / 15;
  if (seconds === 0 && minutes % 10 !== 0 && frames < left) return undefined;
  const whole = 60 * hours + minutes;
  return all - left * (whole - Math.floor(whole / 10));
}

/** "01:00:00:00", with ";" before the frames where labels are left out. */
export function labelOfFrame(frame: number, rate: FrameRate, isDrop = hasDropFrame(rate)): string {
  const count = countOf(rate);
  const left = count / 15;
  const inTen = count * 600 - 9 * left;
  const inMinute = count * 60 - left;
  let label = frame;
  if (isDrop) {
    const rest = frame % inTen;
    label += 9 * left * Math.floor(frame / inTen) + (rest >= left ? left * Math.floor((rest - left) / inMinute) : 0);
  }
  const two = (n: number) => String(n).padStart(2, "0");
  const seconds = Math.floor(label / count);
  const time = [Math.floor(seconds / 3600) % 24, Math.floor(seconds / 60) % 60, seconds % 60].map(two).join(":");
  return `${time}${isDrop ? ";" : ":"}${two(label % count)}`;
}
