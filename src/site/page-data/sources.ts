/** Where varieties came from, and what must be said about it beside the name. */
import type { Gear, Source } from "../../model.ts";
import type { Words } from "../words/index.ts";
import type { Disclosure } from "../words/sentences.ts";
import type { SourceLine } from "./shapes.ts";

export function sourceLine({ sentences }: Words, source: Source | undefined): SourceLine | undefined {
  if (source === undefined) return undefined;
  const disclosure = source.obtained === undefined ? undefined : sentences.source.disclosures[source.obtained];
  return {
    name: source.name,
    link: webAddress(source.link),
    disclosure: sayDisclosure(source, disclosure),
    mustSay: disclosure?.mustSay ?? false,
  };
}

function sayDisclosure({ name, year }: Source, disclosure: Disclosure | undefined): string | undefined {
  const saidByName = disclosure !== undefined && saysAsMuch(name.toLowerCase(), disclosure.words.toLowerCase());
  if (disclosure === undefined || saidByName) return year === undefined ? undefined : String(year);
  if (year === undefined) return disclosure.words;
  return disclosure.in(year);
}

/** "Our own saved seed" says it, and "own seed" or "saved seed" is the shorter way. */
function saysAsMuch(name: string, words: string): boolean {
  const said = words.split(" ");
  return name.includes(words) || (name.includes(" ") && name.split(" ").every((word) => said.includes(word)));
}

/** "Fine netting", "Fine netting (given free by Tidewater Cloth)". */
export function sayGear(
  { sentences }: Words,
  { title, obtained, from }: Pick<Gear, "title" | "obtained" | "from">,
): string {
  const disclosure = obtained === undefined ? undefined : sentences.source.disclosures[obtained];
  if (disclosure?.mustSay !== true) return title;
  if (from === undefined) return `${title} (${disclosure.words})`;
  return `${title} (${disclosure.by(from)})`;
}

/** "Drift Lane Seeds, bought", in one piece. */
export function saySource(words: Words, source: Source | undefined): string {
  const line = sourceLine(words, source);
  if (line === undefined) return words.sentences.source.none;
  return [line.name, line.disclosure].filter((part) => part !== undefined).join(", ");
}

/** Only addresses a browser opens as a web page; anything else in a record stays text. */
export function webAddress(link: string | undefined): string | undefined {
  return link !== undefined && URL.canParse(link) && /^https?:$/u.test(new URL(link).protocol)
    ? new URL(link).href
    : undefined;
}
