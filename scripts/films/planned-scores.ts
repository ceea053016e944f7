/**
 * What a plan wanted held against what the wrap says became of it. Labels are of people who saw no plan, so each is taken for the
 * planned thing of its kind and bed that shares most words with it; what no thing was planned for is not counted.
 */
import type { PlannedTour } from "../../src/model.ts";
import type { Wrap } from "../../src/wrap/index.ts";
import { plainWord } from "../../src/wrap/spoken-words.ts";

export interface Wanted {
  readonly id: string;
  readonly bed: string;
  readonly what: string;
  readonly why?: string;
  readonly kind?: string;
  readonly said: boolean | string;
}

export interface PlannedAgainst {
  readonly wanted: Wanted;
  /** What the labels say, and what the wrap does. */
  readonly isSaid: boolean;
  readonly told: string;
  readonly isToldSaid: boolean;
  /** Both say that it was put off, or that it was not. */
  readonly isPutOff: boolean;
}

/** Told in part may be called either. */
const partly = "partly";

export function plannedAgainst(wanted: readonly Wanted[], wrap: Wrap, brief: PlannedTour): readonly PlannedAgainst[] {
  const things = brief.stops.flatMap(({ bed, show }) => show.map((thing) => ({ ...thing, bed })));
  return wanted.flatMap((one) => {
    if (one.said === partly) return [];
    const isSaid = one.said === true || one.said === "yes";
    const told = /disclosure/.test(one.id) ? noticeTold(one, wrap) : thingTold(one, things, wrap);
    if (told === undefined) return [];
    const isToldSaid = told.startsWith("said");
    return [{ wanted: one, isSaid, told, isToldSaid, isPutOff: /put off/.test(String(one.said)) }];
  });
}

function thingTold(
  wanted: Wanted,
  things: readonly { readonly bed: string; readonly kind: string; readonly key: string; readonly text: string }[],
  { coverage }: Wrap,
): string | undefined {
  const kind = kindOf(wanted);
  const [best] = things
    .filter(({ bed, kind: own }) => bed === wanted.bed && kinds.get(kind)?.includes(own) === true)
    .map((thing) => ({ thing, alike: alike(wanted.what, thing.text) }))
    .filter((one) => one.alike > 0)
    .sort((a, b) => b.alike - a.alike);
  return best === undefined ? undefined : coverage.things.find(({ key }) => key === best.thing.key)?.covered;
}

const kinds: ReadonlyMap<string, readonly string[]> = new Map(
  Object.entries({
    owed: ["owed"],
    lost: ["lost"],
    "trouble over": ["trouble over"],
    trouble: ["trouble"],
    "first picking": ["first picking", "only picking", "picking"],
    "first flower": ["first flower", "in flower"],
    "first fruit": ["first fruit"],
    finished: ["finished", "picking"],
    new: ["new", "first time", "up"],
    built: ["built", "task"],
  }),
);

function kindOf({ kind, what, why = "" }: Wanted): string {
  if (kind !== undefined) return kind;
  if (why.startsWith("promised")) return "owed";
  if (/\blost\b/.test(what)) return "lost";
  if (/\bis over\b/.test(what)) return "trouble over";
  if (/^trouble\b/.test(what)) return "trouble";
  if (/^first (?:picking|cut)\b|\bharvested\b/.test(what)) return "first picking";
  if (/^first flower|\bin flower\b/.test(what)) return "first flower";
  if (/\bcleared\b/.test(what)) return "finished";
  if (/\bnew\b|\bplanted\b|\bsown\b|\bup\b/.test(what)) return /\bput up\b|cloth up/.test(what) ? "built" : "new";
  return "built";
}

function noticeTold(wanted: Wanted, { noticesSpoken }: Wrap): string | undefined {
  const [best] = noticesSpoken
    .map((one) => ({ one, alike: alike(wanted.what, one.thing) }))
    .filter(({ alike: shared }) => shared > 0)
    .sort((a, b) => b.alike - a.alike);
  return best === undefined ? undefined : best.one.spoken === undefined ? "missed" : "said";
}

/** Words that say of what kind a thing is, and when, and not what it is of. */
const ordinary = new Set(
  (
    "new this year first the and was were planted sown put picking harvested cut with since trouble lost flower fruit opened picked " +
    "january february march april may june july august september october november december"
  ).split(" "),
);

function alike(one: string, other: string): number {
  const words = (text: string) =>
    new Set(
      text
        .split(/[^\p{L}\p{N}'’]+/u)
        .map(plainWord)
        .filter((word) => word.length > 2 && !ordinary.has(word))
        .map((word) => word.replace(/s$/, "")),
    );
  const there = words(other);
  return [...words(one)].filter((word) => there.has(word)).length;
}
