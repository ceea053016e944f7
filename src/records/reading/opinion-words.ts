/**
 * A line as the learned opinion sees it: its words without endings, with names, beds, days and numbers masked by what they
 * are, alone and in pairs. It knows nothing of verbs and frames, so that it errs elsewhere than the reader it is asked about.
 */
import type { Word } from "../line-words.ts";
import type { Names } from "../names.ts";
import type { Mention } from "./mention.ts";

/** What stands in a place of the line: a word's stem, or a mask such as "<crop>". */
export function maskedWords(
  words: readonly Word[],
  mentions: readonly Mention[],
  from: number,
  end: number,
): readonly string[] {
  const masks = new Map<number, { readonly mask: string; readonly end: number }>();
  for (const mention of mentions) {
    const mask = maskOf(mention);
    if (mask !== undefined && mention.from >= from && mention.end <= end)
      masks.set(mention.from, { mask, end: mention.end });
  }
  const out: string[] = [];
  for (let at = from; at < end; at++) {
    const masked = masks.get(at);
    if (masked !== undefined) {
      out.push(masked.mask);
      at = masked.end - 1;
      continue;
    }
    const word = words[at];
    if (word === undefined) continue;
    if (word.kind === "mark") {
      if (/^[?!:;[\]|→+]$/.test(word.text)) out.push(word.text);
      continue;
    }
    out.push(word.kind === "word" ? stem(word.lower) : "<n>");
  }
  return out;
}

function maskOf(mention: Mention): string | undefined {
  switch (mention.type) {
    case "plant":
      return mention.variety === undefined && mention.title === undefined ? "<crop>" : "<name>";
    case "amount":
      return `<${mention.use}>`;
    case "bed":
      return "<bed>";
    case "day":
      return "<day>";
    case "cause":
      return mention.of === "pest" ? "<pest>" : mention.of === "disease" ? "<disease>" : undefined;
    default:
      return undefined;
  }
}

/** Without the commonest endings: "picked", "picking" and "picks" are one word. */
function stem(lower: string): string {
  if (lower.length <= 3) return lower;
  let word = lower;
  if (word.endsWith("ies")) word = `${word.slice(0, -3)}y`;
  else if (word.endsWith("sses")) word = word.slice(0, -2);
  else if (word.endsWith("s") && !word.endsWith("ss") && !word.endsWith("us")) word = word.slice(0, -1);
  if (word.length > 5 && word.endsWith("ing")) word = undouble(word.slice(0, -3));
  else if (word.length > 4 && word.endsWith("ed")) word = undouble(word.slice(0, -2));
  if (word.length > 4 && word.endsWith("ly")) word = word.slice(0, -2);
  if (word.length > 3 && word.endsWith("e")) word = word.slice(0, -1);
  return word;
}

function undouble(word: string): string {
  const last = word.at(-1);
  return word.length > 3 && last === word.at(-2) && !/[lsz]/.test(last ?? "") ? word.slice(0, -1) : word;
}

/** The features of a stretch of words: what they are, each and in pairs, how they begin, and what is in them at all. */
export function opinionFeatures(
  masked: readonly string[],
  mentions: readonly Mention[],
  names: Names,
  whole: boolean,
): readonly string[] {
  const features = new Set<string>();
  for (const [index, word] of masked.entries()) {
    features.add(word);
    features.add(`${masked[index - 1] ?? "^"} ${word}`);
    if (index < 3) features.add(`${index}:${word}`);
  }
  features.add(`${masked.at(-1) ?? "^"} $`);
  const families = new Set<string>();
  for (const mention of mentions) {
    if (mention.type === "plant") {
      const crop = names.crop(mention.crop);
      if (crop !== undefined) families.add(crop.use === "vegetable" ? crop.family : crop.use);
    }
    if (mention.type === "amount" || mention.type === "cause" || mention.type === "gear" || mention.type === "stand") {
      features.add(
        `has:${mention.type === "amount" ? mention.use : mention.type === "stand" ? (mention.nursery ? "tray" : "row") : mention.type}`,
      );
    }
    if (mention.type === "cue") features.add(`cue:${mention.is}`);
  }
  for (const family of families) features.add(`of:${family}`);
  const plants = mentions.filter(({ type }) => type === "plant").length;
  features.add(`plants:${Math.min(plants, 3)}`);
  features.add(`long:${masked.length < 5 ? 0 : masked.length < 10 ? 1 : masked.length < 18 ? 2 : 3}`);
  if (!whole) features.add("part");
  return [...features];
}
