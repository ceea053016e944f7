/**
 * Which plantings a line speaks of.
 *
 * A line names a variety or a crop, and a bed or none. What it means is looked for in this order: what lives in the beds
 * meant; everywhere, when no bed is meant; what just ended there; the nursery; the same plants in another bed. Where more
 * than one planting fits, the table below chooses, and a choice a person could have made otherwise is reported as a hint.
 */

import { addDays, daysBetween } from "../calendar.ts";
import type { Count, Day, Event, EventKind, PickUnit } from "../model.ts";
import { isNone } from "./counts.ts";
import { bedsMeant, type Growing, type Ledger, type Lot, plantIds, plantKey } from "./ledger.ts";
import { livingNamed, putBack } from "./living-plantings.ts";
import { openLotsOf } from "./nursery-lots.ts";
import { wordsOf } from "./same-words.ts";
import { daysIntoSpring } from "./seasons.ts";
import { at, report } from "./write-down.ts";

/** What plants are counted in; of a root or a head the crop says whether the plant goes with it. */
const plantUnits: ReadonlySet<PickUnit> = new Set(["head", "root", "bulb", "piece"]);

export type Meant =
  | { readonly is: "plantings"; readonly plantings: readonly Growing[] }
  | { readonly is: "lots"; readonly lots: readonly Lot[] }
  | { readonly is: "nothing" };

/** Of several plantings of one name in order of beginning: those a line means. */
type Choice = (from: readonly Growing[], count: Count | undefined) => readonly Growing[];

interface Reading {
  readonly choose: Choice;
  /** The trade's own order decides (the oldest sowing is picked first), so choosing needs no hint. */
  readonly sure?: true;
  /**
   * Whether seedlings in the nursery can be meant: `first` when there are enough of them, `before` plants of another bed
   * than the line's, or `after` those.
   */
  readonly nursery?: "first" | "before" | "after";
  /** Whether it can be said of plants that ended days ago: onions weighed after drying. */
  readonly afterEnd?: true;
  /** Whether it shows that a planting still stood that was taken to have ended with its season. */
  readonly showsLife?: true;
}

const every: Choice = (from) => from;
const oldest: Choice = (from) => from.slice(0, 1);
const first = (fits: (growing: Growing) => boolean): Choice => {
  return (from) => [from.find(fits) ?? from[0]].filter((one) => one !== undefined);
};

const early = new Set(["sown", "up", "growing"]);
/** Counted plants come from the oldest planting that has as many; a line without a number speaks of them all. */
const enough: Choice = (from, count) =>
  count === undefined
    ? from
    : first(({ now }) => now.count === undefined || now.count.value >= count.value)(from, count);

/** Days between two sowings of one thing that are meant to follow one another. */
const succession = 21;

/** What is past its best is cleared, with what was begun along with it, before what was sown after it. */
const spent: Choice = (from) => {
  const picked = from.filter(({ now }) => now.stage === "picking");
  if (picked.length === 0) return from;
  return from.filter(({ now }) =>
    picked.some((other) => Math.abs(daysBetween(other.now.since, now.since)) < succession),
  );
};

const readings: Partial<Readonly<Record<EventKind, Reading>>> = {
  up: { choose: first(({ now }) => now.stage === "sown"), sure: true, nursery: "before" },
  "potted on": { choose: every, nursery: "before" },
  thinned: {
    choose: first(({ now }) => now.thinnedOut === 0 && (now.stage === "sown" || now.stage === "up")),
    sure: true,
    showsLife: true,
  },
  did: { choose: every, sure: true, nursery: "after" },
  flowered: { choose: first(({ now }) => early.has(now.stage)), sure: true, showsLife: true },
  fruited: {
    choose: first(({ now }) => early.has(now.stage) || now.stage === "flowering"),
    sure: true,
    showsLife: true,
  },
  picked: { choose: oldest, sure: true, afterEnd: true, showsLife: true },
  measured: { choose: oldest, nursery: "after", afterEnd: true, showsLife: true },
  trouble: { choose: every, sure: true, nursery: "after" },
  lost: { choose: enough, nursery: "after", showsLife: true },
  "gave away": { choose: enough, nursery: "first", showsLife: true },
  sold: { choose: enough, nursery: "first", showsLife: true },
  "came back": { choose: every, sure: true, showsLife: true },
  doing: { choose: every, sure: true, nursery: "after", showsLife: true },
  cleared: { choose: spent, showsLife: true },
  moved: { choose: enough, showsLife: true },
  "saved seed": { choose: oldest, sure: true, afterEnd: true },
  asked: { choose: every, sure: true, nursery: "after" },
};

/** Bunches and boxes of what was picked, whatever became of the plants since. */
const ofProduce: Reading = { choose: oldest, sure: true, afterEnd: true, showsLife: true };

/** "3 bunches of Nantes", "2 kg of tomatoes" that left the garden: what was picked, and not the plants. */
export function isProduce({ kind, unit, grams, litres }: Event): boolean {
  if (kind !== "gave away" && kind !== "sold") return false;
  return grams !== undefined || litres !== undefined || (unit !== undefined && !plantUnits.has(unit));
}

const plain: Reading = { choose: every, sure: true };

/** Days after its end in which a picking can still be of a planting: onions and squash are weighed when they have dried. */
const weighedAfterDays = 120;

export function plantingsMeant(ledger: Ledger, event: Event): Meant {
  const ids = plantIds(ledger.records, event);
  if (ids.variety === undefined && ids.crop === undefined) return { is: "nothing" };
  const reading = isProduce(event) ? ofProduce : (readings[event.kind] ?? plain);
  const beds = bedsMeant(ledger, event);
  const here = inOrder(livingNamed(ledger, ids, beds));
  const nursery = () => {
    const lots = reading.nursery === undefined ? [] : openLotsOf(ledger, ids, event.day);
    return lots.length === 0 ? undefined : ({ is: "lots", lots } as const);
  };
  if (event.nursery === true || (reading.nursery === "before" && here.length === 0)) {
    const lots = nursery();
    if (lots !== undefined) return lots;
  }
  // Plants of a bed that the line itself names stand in that bed.
  if (reading.nursery === "first" && event.bed === undefined) {
    const lots = nursery();
    if (lots !== undefined && (here.length === 0 || hasEnough(lots.lots, event.count))) return lots;
  }
  if (here.length > 0) return choose(ledger, event, reading, here);
  const ended = justEnded(ledger, event, reading, beds);
  if (ended !== undefined) return { is: "plantings", plantings: [ended] };
  return nursery() ?? elsewhere(ledger, event, reading, beds);
}

function choose(ledger: Ledger, event: Event, reading: Reading, from: readonly Growing[]): Meant {
  const candidates = describedAs(event, withoutSeedbeds(from));
  const counted = event.count !== undefined && reading.choose === enough;
  // "All tomatoes" is said of each of them; a number of tomatoes can be taken from one planting only.
  const chosen = event.variety === undefined && !counted ? candidates : reading.choose(candidates, event.count);
  const beds = new Set(candidates.map(({ now }) => now.bed));
  const unsure = candidates.length > 1 && chosen.length < candidates.length && (!reading.sure || beds.size > 1);
  if (unsure) reportChoice(ledger, event, candidates, chosen, beds.size > 1);
  return { is: "plantings", plantings: chosen };
}

/** What is left in a seedbed is not meant while the plants that were set out of it live. */
function withoutSeedbeds(from: readonly Growing[]): readonly Growing[] {
  const setOut = from.filter(({ now }) => now.planted !== undefined || now.movedOut === 0);
  return setOut.length > 0 ? setOut : from;
}

/** Whether the nursery can give as many; an uncounted lot always can. */
function hasEnough(lots: readonly Lot[], count: Count | undefined): boolean {
  const left = lots.map(({ now }) => now.left ?? Number.POSITIVE_INFINITY).reduce((sum, more) => sum + more, 0);
  return left > 0 && left >= (count?.value ?? 1);
}

/**
 * Of several plantings, those the line describes: by their spot, their gear, or in words they were planted with ("the netted
 * row"). All of them when it tells none apart.
 */
function describedAs(event: Event, from: readonly Growing[]): readonly Growing[] {
  if (from.length < 2) return from;
  const said = wordsOf([event.spot, event.detail].join(" "));
  const scores = from.map(({ now, words }) => {
    const placed =
      (event.spot !== undefined && now.spot === event.spot ? 2 : 0) +
      (event.gear !== undefined && now.gear === event.gear ? 2 : 0);
    return placed + said.filter((word) => words.includes(word)).length;
  });
  const best = Math.max(...scores);
  return from.filter((_, index) => scores[index] === best);
}

/** A planting of that name which ended in one of these beds: that very day, with its season, or a while ago. */
function justEnded(ledger: Ledger, event: Event, reading: Reading, beds: readonly string[]): Growing | undefined {
  const key = plantKey(plantIds(ledger.records, event));
  const looked = beds.length > 0 ? beds.map((bed) => ledger.beds.get(bed)) : [...ledger.beds.values()];
  const [last] = looked
    .map((bed) => bed?.ended.get(key)?.at(-1))
    .filter((one) => one !== undefined)
    .sort((a, b) => compare(b.now.ended ?? "", a.now.ended ?? ""));
  const ended = last?.now.ended;
  if (last === undefined || ended === undefined) return undefined;
  const since = daysBetween(ended, event.day);
  if (last.endedWithoutWord !== undefined) {
    if (reading.showsLife !== true || since > daysIntoSpring) return undefined;
    return putBack(ledger, last, last.endedWithoutWord, addDays(ended, daysIntoSpring));
  }
  if (since > weighedAfterDays || ledger.endedWithoutWord.has(last)) return undefined;
  // What was picked or lost to the last plant is cleared away all the same.
  if (event.kind === "cleared") return isNone(last.now.count) ? last : undefined;
  if (since === 0) return last;
  if (reading.afterEnd !== true) return undefined;
  reportAfterEnd(ledger, event, last, ended);
  return last;
}

/** The same plants in another bed: taken when they live in one bed only, or when the line can be said of each of them. */
function elsewhere(ledger: Ledger, event: Event, reading: Reading, beds: readonly string[]): Meant {
  const ids = plantIds(ledger.records, event);
  if (beds.length === 0) return { is: "nothing" };
  const others = inOrder(livingNamed(ledger, ids));
  const otherBeds = [...new Set(others.map(({ now }) => now.bed))];
  if (others.length === 0 || (otherBeds.length > 1 && reading.choose !== every)) return { is: "nothing" };
  // "All tomatoes" are those of every bed, whatever bed the note is about.
  if (event.variety === undefined && /\b(all|every|everywhere)\b/i.test(event.text))
    return choose(ledger, event, reading, others);
  report(ledger, { rule: "timeline/in-another-bed", ...at(event), plants: ids, beds, otherBeds });
  return choose(ledger, event, reading, others);
}

function inOrder(plantings: readonly Growing[]): readonly Growing[] {
  return plantings.length < 2
    ? plantings
    : plantings.toSorted((a, b) => compare(a.now.since, b.now.since) || compare(a.now.id, b.now.id));
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

function reportChoice(
  ledger: Ledger,
  event: Event,
  from: readonly Growing[],
  chosen: readonly Growing[],
  manyBeds: boolean,
): void {
  report(ledger, {
    rule: "timeline/several-plantings",
    ...at(event),
    plants: plantIds(ledger.records, event),
    beds: [...new Set(from.map(({ now }) => now.bed))],
    chosen: chosen.map(({ now: { bed, since } }) => ({ bed, since })),
    manyBeds,
  });
}

function reportAfterEnd(ledger: Ledger, event: Event, last: Growing, ended: Day): void {
  report(ledger, { rule: "timeline/after-its-end", ...at(event), plants: last.now, bed: last.now.bed, ended });
}
