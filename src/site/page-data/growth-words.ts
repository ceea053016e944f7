/** How measured growth is said on a page. */
import { localeOf } from "../../language/index.ts";
import type { GardenSettings } from "../../model.ts";
import { siteWords } from "../words/index.ts";

/** Points of a hundred below which two covers are the same: what measuring itself may be off by. */
const SAME = 3;

/**
 * "Cover went from 35 % to 80 %", to be ended or gone on with. Shares 0 to 1, or words that stand for them; empty when one of
 * them is not known. Of a photo without the bed's outline only the photo is spoken of.
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
  const still =
    typeof from === "number" &&
    typeof to === "number" &&
    Math.abs(Math.round(to * 100) - Math.round(from * 100)) < SAME;
  return still ? green.stayed(say(to), of) : green.went(say(from), say(to), of);
}
