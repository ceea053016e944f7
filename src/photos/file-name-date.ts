/** Dates that phones, messengers and people write into the names of photo files and of day folders. */
import { dayOf } from "../calendar.ts";
import type { Day } from "../model.ts";

export interface NameDate {
  readonly day: Day;
  /** Wall clock "18:05:09", when the name has one. */
  readonly time?: string | undefined;
  /** True when the name's clock is UTC and not local. */
  readonly utc: boolean;
}

/**
 * Year, month and day joined or parted by one mark, then perhaps the time: "IMG_20260516_180509", "2026-05-16 18.05.09",
 * "gate-2026-05-16T18-05-09", "IMG-20260516-WA0003", "20260516180509". No digit may touch it on the left, so that a
 * longer number is not taken for a date.
 */
const dated =
  /(?<!\d)((?:19|20)\d\d)([-_.:]?)(\d\d)\2(\d\d)(?:(?:[ _T.,-]|-at-| at )?([01]\d|2[0-3])[-_.:h]?([0-5]\d)[-_.:m]?([0-5]\d)(?!\d{4,})|(?!\d))/gi;

/** The date in a file's name, else the one of the day folder it lies in. */
export function dateInName(path: string): NameDate | undefined {
  const segments = path.split("/");
  const name = segments.pop() ?? "";
  return firstDate(name) ?? folderDate(segments.pop());
}

function firstDate(name: string): NameDate | undefined {
  for (const found of name.matchAll(dated)) {
    const day = dayOf(Number(found[1]), Number(found[3]), Number(found[4]));
    if (day === undefined || day < "1990") continue;
    const time = found[5] === undefined ? undefined : `${found[5]}:${found[6]}:${found[7]}`;
    // This prefix is known for names in UTC; all others write the local clock.
    return { day, time, utc: time !== undefined && /^PXL_/i.test(name) };
  }
  return undefined;
}

function folderDate(folder: string | undefined): NameDate | undefined {
  const found = folder === undefined ? undefined : /^(\d{4})-(\d\d)-(\d\d)$/.exec(folder);
  const day = found ? dayOf(Number(found[1]), Number(found[2]), Number(found[3])) : undefined;
  return day === undefined ? undefined : { day, utc: false };
}

/** Folders of days, months and years say when, not where. */
export function isDated(folder: string): boolean {
  return /^\d{4}(-\d\d){0,2}$/.test(folder);
}
