/** How measured growth is said on a page. */
import { localeOf } from "../../language/index.ts";
import type { GardenSettings } from "../../model.ts";
import { toldCover } from "../../photos/index.ts";
import { siteWords } from "../words/index.ts";

/**
 * "Cover went from 35 % to 80 %", to be ended or gone on with. Shares 0 to 1, or words that stand for them; empty when one of
 * them is not known, or they lie no further apart than measuring may be off by. Of a photo without the bed's outline only the photo is spoken of.
 */
export function sayGreen(
  settings: GardenSettings,
  from: number | string | undefined,
  to: number | string | undefined,
  of: "bed" | "photo",
): string {
  if (from === undefined || to === undefined) return "";
  const { green } = siteWords.sentences;
  const { share } = localeOf(settings);
  const say = (value: number | string) => (typeof value === "number" ? share(value) : value);
  const isNone = typeof from === "number" && typeof to === "number" && !isToldCover(from, to);
  return isNone ? "" : green.went(say(from), say(to), of);
}

/** Whether two covers, rounded as they are said, differ by more than measuring may be off by. */
export function isToldCover(from: number, to: number): boolean {
  return Math.abs(Math.round(to * 100) - Math.round(from * 100)) >= Math.round(toldCover * 100);
}
