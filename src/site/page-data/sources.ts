/** Where varieties came from, and what must be said about it beside the name. */
import type { Gear, Obtained, Source } from "../../model.ts";
import type { SourceLine } from "./shapes.ts";

interface Disclosure {
  readonly words: string;
  /** What viewers are owed before they trust or follow it. */
  readonly mustSay: boolean;
  /** The year follows as "in 2025"; it stands before words that say no doing. */
  readonly isDoing: boolean;
}

/** The words beside a source. */
const DISCLOSURES: Readonly<Record<Obtained, Disclosure>> = {
  bought: { words: "bought", mustSay: false, isDoing: true },
  swapped: { words: "swapped", mustSay: false, isDoing: true },
  saved: { words: "own saved seed", mustSay: false, isDoing: false },
  gifted: { words: "given free", mustSay: true, isDoing: true },
  lent: { words: "lent free", mustSay: true, isDoing: true },
  "paid promotion": { words: "paid promotion", mustSay: true, isDoing: false },
  "commission link": { words: "commission link: this garden earns when you buy", mustSay: true, isDoing: false },
  "own product": { words: "own product", mustSay: true, isDoing: false },
};

export function sourceLine(source: Source | undefined): SourceLine | undefined {
  if (source === undefined) return undefined;
  const disclosure = source.obtained === undefined ? undefined : DISCLOSURES[source.obtained];
  return {
    name: source.name,
    link: webAddress(source.link),
    disclosure: sayDisclosure(source, disclosure),
    mustSay: disclosure?.mustSay ?? false,
  };
}

function sayDisclosure({ name, year }: Source, disclosure: Disclosure | undefined): string | undefined {
  const saidByName = disclosure !== undefined && name.toLowerCase().includes(disclosure.words);
  if (disclosure === undefined || saidByName) return year === undefined ? undefined : String(year);
  if (year === undefined) return disclosure.words;
  return disclosure.isDoing ? `${disclosure.words} in ${year}` : `${year}, ${disclosure.words}`;
}

/** "Fine netting", "Fine netting (given free by Tidewater Cloth)". */
export function sayGear({ title, obtained, from }: Pick<Gear, "title" | "obtained" | "from">): string {
  const disclosure = obtained === undefined ? undefined : DISCLOSURES[obtained];
  if (disclosure?.mustSay !== true) return title;
  if (from === undefined) return `${title} (${disclosure.words})`;
  return `${title} (${disclosure.isDoing ? `${disclosure.words} by ${from}` : `${from}, ${disclosure.words}`})`;
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
