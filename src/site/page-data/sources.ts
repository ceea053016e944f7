/** Where varieties came from, and what must be said about it beside the name. */
import type { Obtained, Source } from "../../model.ts";
import type { SourceLine } from "./shapes.ts";

/** The word beside a source; `mustSay` marks what viewers are owed before they trust or follow it. */
const DISCLOSURES: Readonly<Record<Obtained, { readonly words: string; readonly mustSay: boolean }>> = {
  bought: { words: "bought", mustSay: false },
  swapped: { words: "swapped", mustSay: false },
  saved: { words: "own saved seed", mustSay: false },
  gifted: { words: "given free", mustSay: true },
  lent: { words: "lent for free", mustSay: true },
  "paid promotion": { words: "paid promotion", mustSay: true },
  "commission link": { words: "commission link: this garden earns when you buy", mustSay: true },
  "own product": { words: "own product", mustSay: true },
};

export function sourceLine(source: Source | undefined): SourceLine | undefined {
  if (source === undefined) return undefined;
  const disclosure = source.obtained === undefined ? undefined : DISCLOSURES[source.obtained];
  const year = source.year === undefined ? undefined : String(source.year);
  const saidByName = disclosure !== undefined && source.name.toLowerCase().includes(disclosure.words);
  const words = [saidByName ? undefined : disclosure?.words, year].filter((part) => part !== undefined).join(", ");
  return {
    name: source.name,
    link: webAddress(source.link),
    disclosure: words === "" ? undefined : words,
    mustSay: disclosure?.mustSay ?? false,
  };
}

/** "Drift Lane Seeds, bought", in one piece. */
export function saySource(source: Source | undefined): string {
  const line = sourceLine(source);
  if (line === undefined) return "Source not recorded";
  return [line.name, line.disclosure].filter((part) => part !== undefined).join(", ");
}

/** Only addresses a browser opens as a web page; anything else in a record stays text. */
export function webAddress(link: string | undefined): string | undefined {
  return link !== undefined && URL.canParse(link) && /^https?:$/u.test(new URL(link).protocol)
    ? new URL(link).href
    : undefined;
}
