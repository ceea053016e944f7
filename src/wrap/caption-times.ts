/** Times of captions as WebVTT (W3C, webvtt1, section 4.1) and SubRip write them; milliseconds inside. */

export type CaptionFormat = "vtt" | "srt";

/** A time that breaks its format's rules may still tell when: then it comes with what is wrong. */
export interface ReadTime {
  readonly ms: number;
  readonly fault?: string | undefined;
}

/** Reads one time; undefined when nothing can be made of it. */
export function readTime(text: string, format: CaptionFormat): ReadTime | undefined {
  const usual = usualTime(text, format);
  if (usual !== undefined) return { ms: usual };
  const parts = /^(-)?(?:(\d+):)?(\d+):(\d+)(?:([.,])(\d+))?$/.exec(text.trim());
  if (parts === null) return undefined;
  const [, minus, hours, minutes = "", seconds = "", mark, fraction = ""] = parts;
  const fault = timeFault({ minus, hours, minutes, seconds, mark, fraction }, format);
  if (fault !== undefined && (Number(minutes) > 59 || Number(seconds) > 59)) return undefined;
  const whole = ((Number(hours ?? 0) * 60 + Number(minutes)) * 60 + Number(seconds)) * 1000;
  const ms = whole + Math.round(Number(`0.${fraction || "0"}`) * 1000);
  return minus === undefined ? { ms, fault } : { ms: 0, fault };
}

/**
 * "00:01:05.000" of the format's own kind, digit by digit: an automatic film of four hours has 70,000 of these, and the
 * pattern below takes four times as long.
 */
function usualTime(text: string, format: CaptionFormat): number | undefined {
  if (text.length !== 12 || text[2] !== ":" || text[5] !== ":" || text[8] !== (format === "vtt" ? "." : ","))
    return undefined;
  let ms = 0;
  for (let at = 0; at < 12; at += 1) {
    if (at === 2 || at === 5 || at === 8) continue;
    const digit = text.charCodeAt(at) - 48;
    if (digit < 0 || digit > 9 || ((at === 3 || at === 6) && digit > 5)) return undefined;
    ms += digit * (placeValue[at] as number);
  }
  return ms;
}

const placeValue = [36_000_000, 3_600_000, 0, 600_000, 60_000, 0, 10_000, 1000, 0, 100, 10, 1];

interface TimeParts {
  readonly minus?: string | undefined;
  readonly hours?: string | undefined;
  readonly minutes: string;
  readonly seconds: string;
  readonly mark?: string | undefined;
  readonly fraction: string;
}

function timeFault(
  { minus, hours, minutes, seconds, mark, fraction }: TimeParts,
  format: CaptionFormat,
): string | undefined {
  if (minus !== undefined) return "is before the film begins";
  if (Number(minutes) > 59 || Number(seconds) > 59) return "has more than 59 minutes or seconds";
  if (hours !== undefined && hours.length < 2) return "has an hour of one digit";
  if (format === "srt" && hours === undefined) return "has no hours";
  if (minutes.length !== 2 || seconds.length !== 2) return "has minutes or seconds that are not two digits";
  if (mark !== (format === "vtt" ? "." : ","))
    return `has ${mark === undefined ? "no" : `"${mark}" before its`} thousandths`;
  if (fraction.length !== 3) return "has thousandths that are not three digits";
  return undefined;
}

/** "00:01:01.500" for WebVTT, "01:01:01,500" for SubRip; rounded to the millisecond before it is split, so 59.9996 s is a minute. */
export function writeTime(ms: number, format: CaptionFormat): string {
  const whole = Math.max(0, Math.round(ms));
  const two = (n: number) => String(n).padStart(2, "0");
  const seconds = Math.floor(whole / 1000);
  const time = `${two(Math.floor(seconds / 3600))}:${two(Math.floor(seconds / 60) % 60)}:${two(seconds % 60)}`;
  return `${time}${format === "vtt" ? "." : ","}${String(whole % 1000).padStart(3, "0")}`;
}

/** A time as chapters name it: "0:00", "12:05", "1:02:05". Whole seconds, rounded down so that a chapter never begins late. */
export function sayTime(ms: number): string {
  const seconds = Math.floor(Math.max(0, ms) / 1000);
  const hours = Math.floor(seconds / 3600);
  const minutes = Math.floor(seconds / 60) % 60;
  const rest = String(seconds % 60).padStart(2, "0");
  return hours === 0 ? `${minutes}:${rest}` : `${hours}:${String(minutes).padStart(2, "0")}:${rest}`;
}
