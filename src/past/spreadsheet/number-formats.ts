/**
 * How a spreadsheet shows the numbers of its cells (ECMA-376 part 1, 18.8.30 and 18.8.31): a price with its currency, a month that
 * only seems to be a day because a cell can hold nothing rougher.
 */
import { attributesOf, tagsOf } from "./tags.ts";

export interface NumberFormat {
  readonly shows: "day" | "month" | "year" | "time" | "number";
  /** Digits behind the point; undefined where as many as there are. */
  readonly decimals?: number | undefined;
  readonly before?: string | undefined;
  readonly behind?: string | undefined;
}

const general: NumberFormat = { shows: "number" };

/** Formats that have a number and no pattern in the file; those of money hang on the system and say no currency. */
const builtIn: Readonly<Record<number, string>> = {
  ...{ 1: "0", 2: "0.00", 3: "0", 4: "0.00", 9: "0%", 10: "0.00%" },
  ...{ 14: "d/m/y", 15: "d-mmm-yy", 16: "d-mmm", 17: "mmm-yy", 18: "h:mm", 19: "h:mm:ss", 20: "h:mm", 21: "h:mm:ss" },
  ...{ 22: "d/m/y h:mm", 45: "mm:ss", 46: "h:mm:ss", 47: "mm:ss" },
};

/** By the number that a cell names as its style. */
export function numberFormats(styles: string): readonly NumberFormat[] {
  const patterns = new Map<number, string>();
  const formats: NumberFormat[] = [];
  const ids: number[] = [];
  let isOfCells = false;
  for (const tag of tagsOf(styles)) {
    if (tag.name === "cellXfs") isOfCells = !tag.isEmpty;
    else if (tag.name === "/cellXfs") isOfCells = false;
    else if (tag.name === "numFmt") {
      const of = attributesOf(tag);
      patterns.set(Number(of?.get("numFmtId")), (of?.get("formatCode") ?? "").slice(0, longestPattern));
    } else if (isOfCells && tag.name === "xf") ids.push(Number(attributesOf(tag)?.get("numFmtId") ?? 0));
  }
  for (const id of ids) formats.push(formatOf(patterns.get(id) ?? builtIn[id] ?? ""));
  return formats;
}

const longestPattern = 255;

export function formatOf(pattern: string): NumberFormat {
  // What is positive is shown by the first part.
  const [first = ""] = pattern.split(";");
  const currency = /\[\$([^\]-]+)(?:-[^\]]*)?\]|(?<![[\\\w])([£$€])|"([£$€])"|\\([£$€])/u.exec(first);
  const bare = first
    .replace(/"[^"]*"|\[[^\]]*\]|\\.|_./g, " ")
    .replace(/am\/pm|a\/p/gi, "h")
    .toLowerCase();
  if (/[dyhs]|m/.test(bare) && !/general|[0#?]/.test(bare.replace(/[.,]0+/g, ""))) {
    if (/d/.test(bare)) return { shows: "day" };
    if (/y/.test(bare)) return { shows: /m/.test(bare) ? "month" : "year" };
    return { shows: /[hs]/.test(bare) ? "time" : "month" };
  }
  const digits = /[0#?](?:\.([0#?]*))?(?!.*[0#?])/.exec(bare.replaceAll(",", ""));
  const behindPoint = digits?.[1] ?? "";
  const decimals = digits === null || /[#?]/.test(behindPoint) ? undefined : behindPoint.length;
  if (/%/.test(bare)) return { shows: "number", decimals, behind: "%" };
  const sign = currency?.slice(1).find((found) => found !== undefined);
  if (sign === undefined || currency === null) return decimals === undefined ? general : { shows: "number", decimals };
  const isBefore = currency.index < first.search(/[0#?]/);
  return { shows: "number", decimals, ...(isBefore ? { before: sign } : { behind: ` ${sign}` }) };
}

/** As the cell shows it, without the signs that part thousands. */
export function shownNumber(value: number, { decimals, before = "", behind = "" }: NumberFormat = general): string {
  const shown = behind === "%" ? value * 100 : value;
  // Fifteen digits are what a spreadsheet keeps: 2.4000000000000004 was written as 2.4.
  const digits = decimals === undefined ? String(Number(shown.toPrecision(15))) : shown.toFixed(Math.min(decimals, 20));
  return `${before}${digits}${behind}`;
}

/** A day as the cell holds it: it has no time zone, and neither has what is made of it. */
export function shownDay(day: Date, { shows }: NumberFormat = { shows: "day" }): string {
  // A cell counts in parts of a day: 23:59 stands there as a fraction that is a little short of it.
  const exact = new Date(Math.round(day.getTime() / 1000) * 1000);
  const [date = "", time = ""] = exact.toISOString().split(/[T.]/);
  const clock = time.slice(0, 5);
  switch (shows) {
    case "time":
      return clock;
    case "month":
      return exact.toLocaleDateString("en-GB", { month: "long", year: "numeric", timeZone: "UTC" });
    case "year":
      return date.slice(0, 4);
    default:
      return clock === "00:00" ? date : `${date} ${clock}`;
  }
}
