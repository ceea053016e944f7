/** Which notes and plantings belong to which arm of a trial. */

import type { Picking } from "../garden/index.ts";
import type { Day, Event, PhotoMeasure, Trial, TrialArm } from "../model.ts";
import { compare } from "../order.ts";
import type { Lot, SeasonBook } from "./season-book.ts";

export interface Arm {
  readonly arm: TrialArm;
  readonly name: string;
  /** Lines of its plants from the trial's start on, in order. */
  readonly events: readonly Event[];
  readonly pickings: readonly Picking[];
  readonly lots: readonly Lot[];
  /** Photos of its bed since the trial began, in order of day; none where only words tell the arms apart. */
  readonly photos: readonly PhotoMeasure[];
  /** Whether what is green in them is this arm's alone: no other arm stands in its bed. */
  readonly bedAlone: boolean;
  /** Plants it began with; undefined when nobody counted them. */
  readonly plants?: number | undefined;
}

export interface TrialArms {
  readonly arms: readonly Arm[];
  /** Arms that nothing tells apart: the same plants would count for both. */
  readonly overlapping: readonly (readonly [string, string])[];
}

/**
 * An arm's lines are of its variety, in its bed. Where two arms share both, a line counts when it has the arm's name
 * ("netted row", "ten-litre pots") or the place in the bed of a planting whose first line has it ("row 1"). A line that has
 * neither tells of no difference, and is left out.
 */
export function trialArms(book: SeasonBook, trial: Trial): TrialArms {
  const named = trial.arms.map((arm) => ({ arm, words: nameWords(arm.name) }));
  return { arms: named.map((one) => readArm(book, trial, one, named)), overlapping: overlappingArms(trial) };
}

interface NamedArm {
  readonly arm: TrialArm;
  readonly words: readonly string[];
}

function readArm(book: SeasonBook, trial: Trial, { arm, words }: NamedArm, named: readonly NamedArm[]): Arm {
  const from = trial.started ?? "";
  const rivals = named.filter((other) => other.arm !== arm && sameGround(other.arm, arm));
  const byName = rivals.length > 0 || (arm.variety === undefined && arm.bed === undefined);
  const said = (event: Event) => withoutNames(book, event);
  /** A rival's longer name holds a shorter one: "the tall net" is not "the net". */
  const hasName = (event: Event) => {
    const text = said(event);
    return says(text, words) && !rivals.some((rival) => rival.words.length > words.length && says(text, rival.words));
  };
  const fits = (of: Pick<Event, "variety" | "bed">) =>
    (arm.variety === undefined || of.variety === arm.variety) &&
    (arm.bed === undefined || of.bed === undefined || of.bed === arm.bed);
  const lots = book.lots.filter(
    (lot) =>
      begunBy(lot) >= from &&
      (arm.bed === undefined || lot.planting.bed === arm.bed) &&
      fits(lot.planting) &&
      (!byName || lot.events.some((event) => isBeginning(event) && hasName(event))),
  );
  const ofLots = new Set(lots.flatMap((lot) => lot.events));
  const spots = lots.flatMap(({ planting }) => (planting.spot === undefined ? [] : [nameWords(planting.spot)]));
  const events = book.events.filter((event) => {
    if (event.day < from || !fits(event)) return false;
    if (!byName) return true;
    if (hasName(event)) return true;
    // "Row 2" is a place only as it stands, and never where another arm is named: "row 1, 2 heads".
    const another = rivals.some((rival) => says(said(event), rival.words));
    return !another && ofLots.has(event) && spots.some((spot) => saysTogether(said(event), spot));
  });
  const taken = new Set(events);
  return {
    arm,
    name: arm.name,
    events,
    pickings: book.pickings.filter(({ event }) => event !== undefined && taken.has(event)),
    lots,
    photos: byName
      ? []
      : (book.garden.growth?.photos ?? [])
          .filter(({ bed, day }) => day >= from && (arm.bed === undefined || bed === arm.bed))
          .toSorted((a, b) => compare(a.day, b.day) || compare(a.photo, b.photo)),
    bedAlone: arm.bed !== undefined && !named.some((other) => other.arm !== arm && other.arm.bed === arm.bed),
    plants: plantsOf(lots),
  };
}

/** Arms that no line can tell apart: the same variety, bed and name. */
export function overlappingArms({ arms }: Trial): readonly (readonly [string, string])[] {
  const key = (arm: TrialArm) => nameWords(arm.name).join(" ");
  return arms.flatMap((one, at) =>
    arms
      .slice(at + 1)
      .filter((other) => sameGround(one, other) && key(one) === key(other))
      .map((other) => [one.name, other.name] as const),
  );
}

function sameGround(a: TrialArm, b: TrialArm): boolean {
  const meets = (x: string | undefined, y: string | undefined) => x === undefined || y === undefined || x === y;
  return meets(a.variety, b.variety) && meets(a.bed, b.bed);
}

/** The line without the names of its variety and bed: Early Nantes is no early row. */
function withoutNames({ garden }: SeasonBook, { text, variety, bed }: Event): string {
  const own = variety === undefined ? undefined : garden.varieties.get(variety);
  const names = [own?.title, ...(own?.alsoSpelled ?? []), garden.beds.get(bed ?? "")?.title].filter(
    (name) => name !== undefined && name !== "",
  );
  return names.reduce<string>((left, name) => left.replaceAll(name ?? "", " "), text);
}

function isBeginning({ kind }: Event): boolean {
  return kind === "sowed" || kind === "planted" || kind === "moved";
}

function begunBy({ planting }: Lot): Day {
  return planting.planted ?? planting.since;
}

function plantsOf(lots: readonly Lot[]): number | undefined {
  if (lots.length === 0 || lots.some(({ planting }) => planting.planted === undefined || planting.began === undefined))
    return undefined;
  return lots.reduce((sum, { planting }) => sum + (planting.began?.value ?? 0), 0);
}

/** The words that must all stand in a line, in one form: "Ten-litre pots" are "ten", "litre", "pot". */
function nameWords(name: string): readonly string[] {
  return plainWords(name).filter((word) => !/^(?:the|a|an|of|in|with|and)$/.test(word));
}

function says(text: string, words: readonly string[]): boolean {
  if (words.length === 0) return false;
  const found = new Set(plainWords(text));
  return words.every((word) => found.has(word));
}

/** The words one after the other. */
function saysTogether(text: string, words: readonly string[]): boolean {
  return words.length > 0 && ` ${plainWords(text).join(" ")} `.includes(` ${words.join(" ")} `);
}

function plainWords(text: string): readonly string[] {
  return (
    text
      .normalize("NFD")
      .replace(/\p{M}/gu, "")
      .toLowerCase()
      .match(/[\p{L}\p{N}]+/gu) ?? []
  ).map((word) => (word.length > 3 ? word.replace(/(?<=[^s])s$/, "") : word));
}
