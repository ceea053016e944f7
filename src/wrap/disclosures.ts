/**
 * What viewers must be told about where things came from, beside the thing and at the top. Follows the sense of the FTC's
 * Endorsement Guides, 16 CFR 255.5 (2023: a connection that viewers do not expect and that could weigh with them is told
 * clearly: pay, free or discounted things, ties), and of the CAP Code, 2.1 and 2.3 (obviously identifiable, up front; the
 * word "affiliate" alone has been judged unclear). Help with the records, not legal advice: local rules decide.
 */
import { sayList } from "../language/index.ts";
import type { Obtained } from "../model.ts";
import type { FilmHeard } from "./hear-film.ts";
import type { Disclosure } from "./wrap.ts";

interface Words {
  /** Beside the thing, `from` as " by X" or "". */
  readonly beside: (from: string) => string;
  /** Before its name at the top. */
  readonly top: string;
}

/** What is bought, swapped for or saved by oneself needs no words. */
const words: Partial<Readonly<Record<Obtained, Words>>> = {
  "paid promotion": {
    beside: (from) => `paid promotion${from === "" ? "" : ` for ${from}`}`,
    top: "AD, paid promotion",
  },
  "own product": { beside: () => "my own product, which I sell", top: "My own product" },
  gifted: { beside: (from) => `given free${from === "" ? "" : ` by ${from}`}`, top: "Given to me free" },
  lent: { beside: (from) => `on loan${from === "" ? "" : ` from ${from}`}`, top: "On loan" },
  "commission link": {
    beside: (from) => `${from === "" ? "" : `${from}; `}commission link: I am paid if you buy through it`,
    top: "I am paid if you buy through the link to",
  },
};

/** Order at the top: what viewers are owed first. */
const order: readonly Obtained[] = ["paid promotion", "own product", "commission link", "gifted", "lent"];

export const disclosureCaution =
  "These lines follow what your records say. They are help, not legal advice; local rules decide what must be said and how.";

/** For every variety and thing in the film, by bed in walking order. */
export function disclosuresOf(
  film: FilmHeard,
  varieties: readonly string[],
  gear: readonly string[],
): readonly Disclosure[] {
  const { garden } = film.day;
  const seeds = varieties.flatMap((id): Disclosure[] => {
    const variety = garden.varieties.get(id);
    if (variety === undefined || variety.private) return [];
    const { source } = variety;
    return [disclosure(variety.title, "variety", id, source?.obtained, source?.name, source !== undefined)];
  });
  const things = gear.flatMap((id): Disclosure[] => {
    const thing = garden.gear.get(id);
    if (thing === undefined || thing.private) return [];
    return [disclosure(thing.title, "gear", id, thing.obtained, thing.from, thing.from !== undefined)];
  });
  return [...things, ...seeds];
}

function disclosure(
  thing: string,
  kind: Disclosure["kind"],
  record: string,
  obtained: Obtained | undefined,
  from: string | undefined,
  hasSource: boolean,
): Disclosure {
  const said = obtained === undefined ? undefined : words[obtained];
  const missing = hasSource
    ? `${thing}: from ${from}, and nothing says how it was obtained. Add "obtained" to its record; nothing is assumed.`
    : `${thing}: nothing says where it came from, or how. Add it to its record before you publish.`;
  return {
    thing,
    kind,
    record,
    obtained,
    from,
    beside: said?.beside(from ?? ""),
    atTop: said !== undefined,
    warning: obtained === undefined ? missing : undefined,
  };
}

/** What the records must still say before the film goes out; things of which nothing is known are told together. */
export function missingSources(disclosures: readonly Disclosure[]): readonly string[] {
  const unknown = disclosures.filter(({ warning, from }) => warning !== undefined && from === undefined);
  const others = disclosures.flatMap(({ warning, from }) =>
    warning === undefined || from === undefined ? [] : [warning],
  );
  if (unknown.length < 2) return [...others, ...unknown.flatMap(({ warning }) => warning ?? [])];
  return [
    ...others,
    `${sayList(unknown.map(({ thing }) => thing))}: nothing says where they came from, or how. Add it to their records before you publish.`,
  ];
}

/** The lines at the top of a description: one for each way things came, the gravest first. */
export function topLines(disclosures: readonly Disclosure[]): readonly string[] {
  return order.flatMap((obtained) => {
    const these = disclosures.filter((one) => one.obtained === obtained);
    if (these.length === 0) return [];
    const names = these.map(({ thing, from, kind }) => {
      const seed = kind === "variety" ? `${thing} ${obtained === "gifted" ? "plants or seed" : "seed"}` : thing;
      return from === undefined || obtained === "own product" || from === "me" ? seed : `${seed} (${from})`;
    });
    return [`${words[obtained]?.top}: ${sayList(names)}.`];
  });
}
