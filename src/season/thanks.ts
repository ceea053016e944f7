/** Who is to be thanked at the end of a season, what must be said of things that did not cost their price, and what viewers asked. */
import { cropOf } from "../crop-of.ts";
import { capital, disclosureLines, type HowItCame, namedGiver, type Sentence, say } from "../language/index.ts";
import type { Day, Gear, Variety } from "../model.ts";
import { betweenDays } from "../order.ts";
import type { Plants } from "./recap-words/facts.ts";
import { recapWords } from "./recap-words/words.ts";
import type { SeasonBook } from "./season-book.ts";

export interface Credits {
  readonly thanks: readonly Sentence[];
  readonly disclosures: readonly Sentence[];
  readonly questions: readonly Sentence[];
}

/** Kinds named before the rest is counted. */
const mostNamed = 3;

export function credits(book: SeasonBook, from: Day, to: Day): Credits {
  const grown = new Map<string, Variety>();
  for (const { planting, variety } of book.lots) {
    if (variety !== undefined && planting.since <= to && (planting.ended ?? to) >= from) grown.set(variety.id, variety);
  }
  const gear = gearUsed(book, from, to);
  return {
    thanks: thanksTo(book, [...grown.values()], gear),
    disclosures: disclosureLines([...grown.values()], gear),
    questions: betweenDays(book.events, from, to)
      .filter(({ kind }) => kind === "asked")
      .map((event) => say(question(event.what ?? event.text), [event])),
  };
}

/** Gear that lines put up or plants grew on in the stretch of days. */
function gearUsed(book: SeasonBook, from: Day, to: Day): readonly Gear[] {
  const used = new Set<string>();
  for (const { kind, gear } of betweenDays(book.events, from, to)) {
    if (gear !== undefined && kind !== "took down") used.add(gear);
  }
  return [...used].sort().flatMap((id) => book.garden.gear.get(id) ?? []);
}

interface Given {
  readonly plants?: Plants | undefined;
  /** Its title. */
  readonly gear?: string | undefined;
  readonly obtained: "lent" | "gifted" | "swapped";
  readonly record: Variety | Gear;
}

function thanksTo({ garden }: SeasonBook, varieties: readonly Variety[], gear: readonly Gear[]): readonly Sentence[] {
  // By the giver's name; those who are not named stand under "".
  const from = new Map<string, Given[]>();
  const put = (source: HowItCame, given: Given) => {
    if (source.from === undefined || source.from.trim() === "") return;
    const name = namedGiver(source, given.record.thankByName) ?? "";
    from.set(name, [...(from.get(name) ?? []), given]);
  };
  for (const variety of varieties) {
    const { source } = variety;
    if (source?.obtained === "swapped" || source?.obtained === "gifted" || source?.obtained === "lent")
      put(
        { ...source, obtained: source.obtained, from: source.name },
        {
          plants: { variety, crop: cropOf(garden, variety) },
          obtained: source.obtained,
          record: variety,
        },
      );
  }
  for (const one of gear) {
    if (one.obtained === "lent" || one.obtained === "gifted")
      put(
        { ...one, obtained: one.obtained },
        {
          gear: one.title,
          obtained: one.obtained,
          record: one,
        },
      );
  }
  return [...from]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, given]) => {
      const shown = given.slice(0, mostNamed);
      const [how, another] = [...new Set(given.map(({ obtained }) => obtained))];
      const text = recapWords.thanks({
        to: name === "" ? undefined : name,
        plants: shown.flatMap(({ plants }) => plants ?? []),
        gear: shown.flatMap(({ gear: title }) => title ?? []),
        more: given.length - shown.length,
        how: another === undefined ? how : undefined,
      });
      return say(
        text,
        given.map(({ record }) => record),
      );
    });
}

function question(asked: string): string {
  const words = asked.trim();
  return `${capital(words)}${/[.?!…]$/.test(words) ? "" : "?"}`;
}
