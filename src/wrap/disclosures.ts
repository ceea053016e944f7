/**
 * What viewers must be told about where things came from, beside the thing and at the top; the words are those of
 * `language/notices.ts`. A gift or a loan of which nobody said whose it is names no giver and is asked about.
 */
import {
  gravest,
  type HowItCame,
  isNotice,
  isUndecided,
  namedGiver,
  noticeLine,
  sayList,
  theGear,
} from "../language/index.ts";
import type { Gear, Notices, Obtained, Variety } from "../model.ts";
import { cameInLines } from "./came-in-lines.ts";
import type { FilmHeard } from "./hear-film.ts";
import type { Disclosure } from "./wrap.ts";

/** Beside the thing, `from` as " by X" or "". What is bought, swapped for or saved by oneself needs no words. */
const besideWords: Partial<Readonly<Record<Obtained, (from: string | undefined) => string>>> = {
  "paid promotion": (from) => `paid promotion${from === undefined ? "" : ` for ${from}`}`,
  "own product": () => "my own product, which I sell",
  "family business": (from) => `from ${from === undefined ? "" : `${from}, `}a business of my family or friends`,
  "commission link": (from) =>
    `${from === undefined ? "" : `${from}; `}I earn a commission if you buy through this link`,
  gifted: (from) => `given free${from === undefined ? "" : ` by ${from}`}`,
  discounted: (from) => `bought for less than its price${from === undefined ? "" : ` from ${from}`}`,
  lent: (from) => `on loan${from === undefined ? "" : ` from ${from}`}`,
};

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
    const inLines = variety.source === undefined ? cameInLines(garden, id, film.day.day) : undefined;
    return [varietyDisclosure(variety, inLines)];
  });
  const things = gear.flatMap((id): Disclosure[] => {
    const thing = garden.gear.get(id);
    if (thing === undefined || thing.private) return [];
    return [gearDisclosure(thing)];
  });
  return [...things, ...seeds];
}

/** `inLines`: how its plants came by the note lines, where its record says nothing. */
export function varietyDisclosure({ title, id, source, thankByName }: Variety, inLines: HowItCame = {}): Disclosure {
  const came = source === undefined ? inLines : { obtained: source.obtained, giver: source.giver, from: source.name };
  const told = disclosure(title, "variety", id, came, thankByName);
  // Most that a line calls given is a neighbour's: whose it was is asked, and viewers are told when the record says it.
  return source === undefined ? { ...told, beside: undefined, atTop: false } : told;
}

export function gearDisclosure(gear: Gear): Disclosure {
  return disclosure(gear.title, "gear", gear.id, gear, gear.thankByName);
}

function disclosure(
  thing: string,
  kind: Disclosure["kind"],
  record: string,
  { obtained, giver, from }: HowItCame,
  mayThank = false,
): Disclosure {
  const came: HowItCame = { obtained, giver, from };
  const missing =
    from !== undefined
      ? `${thing}: from ${from}, and nothing says how it was obtained. Add "obtained" to its record; nothing is assumed.`
      : `${thing}: nothing says where it came from, or how. Add it to its record before you publish.`;
  const how = obtained === "lent" ? "lent" : "given";
  const whose = from === undefined ? "" : ` ("${from}")`;
  const undecided = `${thing}: ${how} free${whose}, and nothing says whether by somebody who sells or makes such things. Write "${how} by a seller" or "${how} by a person" in its record.`;
  const named = namedGiver(came, mayThank);
  return {
    thing,
    kind,
    record,
    obtained,
    giver,
    from,
    named,
    beside: obtained === undefined ? undefined : besideWords[obtained]?.(named),
    atTop: isNotice(came) || isUndecided(came),
    warning: obtained === undefined ? missing : isUndecided(came) ? undecided : undefined,
  };
}

/** What the records must still say before the film goes out; things of which nothing is known are told together. */
export function missingSources(disclosures: readonly Disclosure[]): readonly string[] {
  const isUnknown = ({ obtained, from }: Disclosure) => obtained === undefined && from === undefined;
  const unknown = disclosures.filter((one) => one.warning !== undefined && isUnknown(one));
  const others = disclosures.flatMap((one) => (one.warning === undefined || isUnknown(one) ? [] : [one.warning]));
  if (unknown.length < 2) return [...others, ...unknown.flatMap(({ warning }) => warning ?? [])];
  return [
    ...others,
    `${sayList(unknown.map(({ thing }) => thing))}: nothing says where they came from, or how. Add it to their records before you publish.`,
  ];
}

/** As a sentence names it: "the butterfly net", "the Harbinger seed". */
function inSentence({ thing, kind, obtained }: Disclosure): string {
  if (kind === "variety")
    return `the ${thing} ${obtained === "gifted" || obtained === "lent" ? "plants or seed" : "seed"}`;
  return theGear(thing);
}

/** The lines at the top of a description: one for each way and seller, the gravest first; then what nobody decided yet. */
export function topLines(disclosures: readonly Disclosure[], notices: Notices): readonly string[] {
  const due = gravest.flatMap((obtained) => {
    const these = disclosures.filter((one) => one.obtained === obtained && isNotice(one));
    return [...Map.groupBy(these, ({ from }) => from)].flatMap(
      ([from, group]) => noticeLine(group.map(inSentence), { obtained, giver: group[0]?.giver, from }, notices) ?? [],
    );
  });
  const open = (obtained: Obtained, how: string) => {
    const these = disclosures.filter((one) => one.obtained === obtained && one.atTop && isUndecided(one));
    return these.length === 0 ? [] : [`${how}: ${sayList(these.map(({ thing }) => thing))}.`];
  };
  return [...due, ...open("gifted", "Came to me free"), ...open("lent", "On loan")];
}

/** What private persons gave or lent: thanks, and names only where the records allow them. */
export function thanksLines(disclosures: readonly Disclosure[]): readonly string[] {
  const given = disclosures.filter(({ giver }) => giver === "a person");
  return [...Map.groupBy(given, ({ named }) => named)].map(
    ([named, group]) => `Thanks${named === undefined ? "" : ` to ${named}`} for ${sayList(group.map(inSentence))}.`,
  );
}
