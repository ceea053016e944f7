/** Which of a person's own words are worth saying: what stands beside a figure, and how a trouble was told. */
import { toPause } from "../../films/index.ts";
import type { Material } from "../material.ts";
import { type OwnLine, withoutBeds } from "./own-lines.ts";
import { type Part, part, type Told } from "./thread.ts";

const place = /\b(?:rows?|pots?|end|side|edge|corner|rest|row metre|trays?)$|^(?:the rest|row|a row|where|\d)/i;

/** "not one with a black bottom" is one; "bare row", "the gate end" and "the rest of it" are places. */
export function isRemark(words: string): boolean {
  const text = words.trim();
  return (
    text.split(/\s+/).length > 2 &&
    !text.startsWith("=") &&
    !place.test(text) &&
    !/^(?:fence|gate|door) end\b/i.test(text)
  );
}

const lament =
  /\b(?:took|threw out|dropped|lost|split|rot(?:ted)?|wilt(?:ed|ing)?|blight|no good|was wrong|nothing|gone|failed|died|full of gaps|burnt|papery)\b/i;

/** Longest that is said of what was before. */
const words = 8;

/** How a trouble of a crop was told in these lines. */
export function lamentOf(crop: string, lines: readonly OwnLine[], { book, to }: Material): Part<Told> | undefined {
  for (const line of lines) {
    if (!line.crops.has(crop) || line.event?.kind === "plan" || line.event?.kind === "saved seed") continue;
    const text = withoutBeds(line.text, book.garden);
    const short = [...text.split(/[,;.]\s+/), text]
      .map((one) => toPause(one, words))
      .find((one) => one !== undefined && lament.test(one) && one.split(" ").length > 2);
    if (short !== undefined) return part({ is: "own words", text: short }, [line], to, line.asks);
  }
  return undefined;
}

/** Whether a line cut short would say another thing: what leads up to the rest, or is taken back by it. */
export function cutsMeaning(whole: string, short: string): boolean {
  return /^\W*(?::|but\b|though\b|although\b|except\b|however\b|not\b|until\b|only\b)/i.test(whole.slice(short.length));
}
