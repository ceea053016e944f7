/** How a crop is said in German, and how a variety is named with its crop: "Tomaten Ochsenherz". */
import type { Crop } from "../../model.ts";
import { germanNames } from "./german-crop-names.ts";

/** "Tomaten", of one "Tomate"; a crop that this list does not know keeps the name its records give it. */
export function germanCropName(crop: Crop, count: number | undefined, tongue: string): string {
  const { one, many } = germanNames.get(crop.id) ?? { one: crop.name, many: crop.plural };
  return spelled(count === 1 ? one : many, tongue);
}

/** "eine Tomate" begins with this; "ein" also where nobody knows. */
export function germanArticle(crop: Crop | undefined): "ein" | "eine" {
  return germanNames.get(crop?.id ?? "")?.gender === "f" ? "eine" : "ein";
}

/** "Tomaten Ochsenherz": the crop before the variety's name, unless that brings it along ("Rote Zwiebel Braunschweiger"). */
export function germanVarietyName(
  variety: { readonly title: string } | undefined,
  crop: Crop | undefined,
  count: number | undefined,
  tongue: string,
): string {
  if (variety === undefined) return crop === undefined ? "Pflanzen" : germanCropName(crop, count, tongue);
  if (crop === undefined) return variety.title;
  const [one, many] = [germanCropName(crop, 1, tongue), germanCropName(crop, undefined, tongue)];
  const title = variety.title.toLowerCase();
  if (title === one.toLowerCase() || title === many.toLowerCase()) return count === 1 ? one : many;
  if ([one, many, crop.name, crop.plural].some((word) => bringsAlong(title, word.toLowerCase()))) return variety.title;
  return `${count === 1 ? one : many} ${variety.title}`;
}

/** German names grow to the left: "Braunschweiger Zwiebel", "Frühkohl". What goes on after the word is another word: "Rosella" is no rose. */
function bringsAlong(title: string, word: string): boolean {
  const at = title.indexOf(word);
  return at >= 0 && !/^\p{L}/u.test(title.slice(at + word.length));
}

/** Switzerland and Liechtenstein write no ß. */
function spelled(text: string, tongue: string): string {
  return /-(?:CH|LI)\b/iu.test(tongue) ? text.replaceAll("ß", "ss") : text;
}
