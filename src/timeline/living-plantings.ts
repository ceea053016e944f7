/** The plantings that live at the point the events have come to: found by name, put among the living, taken out of them. */
import type { Day, Event, PlantIds, Planting, Trouble } from "../model.ts";
import { bedLedger, type EndWithoutWord, type Growing, type Ledger, type OpenTrouble, plantKey } from "./ledger.ts";

/** Living plantings a line could name, in these beds (all beds when none is given), in order of beginning. */
export function livingNamed(ledger: Ledger, event: PlantIds, beds?: readonly string[]): Growing[] {
  const { variety, crop } = event;
  const crops = crop === undefined ? [] : (ledger.cropsCovered.get(crop) ?? [crop]);
  if (beds === undefined || beds.length === 0) {
    const keys = variety === undefined ? crops.map((one) => plantKey({ crop: one })) : [plantKey({ variety })];
    return keys.flatMap((key) => [...(ledger.living.get(key) ?? [])]);
  }
  const isNamed = ({ now }: Growing) =>
    variety === undefined ? now.crop !== undefined && crops.includes(now.crop) : now.variety === variety;
  return beds.flatMap((bed) => (ledger.beds.get(bed)?.living ?? []).filter(isNamed));
}

/** Plantings grouped by bed, in the order given. */
export function byBed(plantings: readonly Growing[]): ReadonlyMap<string, readonly Growing[]> {
  return Map.groupBy(plantings, ({ now }) => now.bed);
}

/** Puts a planting among the living. */
export function addGrowing(ledger: Ledger, growing: Growing): void {
  const { now, endsBy } = growing;
  bedLedger(ledger, now.bed).living.push(growing);
  for (const key of livingKeys(now)) {
    const same = ledger.living.get(key);
    if (same === undefined) ledger.living.set(key, new Set([growing]));
    else same.add(growing);
  }
  if (endsBy === undefined) return;
  const ending = ledger.endings.get(endsBy);
  if (ending === undefined) ledger.endings.set(endsBy, [growing]);
  else ending.push(growing);
}

/** A planting answers to its variety and to its crop. */
function livingKeys(now: Planting): readonly string[] {
  const crop = plantKey({ crop: now.crop });
  return now.variety === undefined ? [crop] : now.crop === undefined ? [plantKey(now)] : [plantKey(now), crop];
}

/** The planting as an event leaves it. */
export function become(growing: Growing, patch: Partial<Planting>, event?: Event): Planting {
  const spoken = event === undefined ? undefined : { lastEvent: event.id, lastNote: event.place };
  growing.now = { ...growing.now, ...patch, ...spoken };
  return growing.now;
}

/** Takes a planting out of the living; gives the troubles that end with it. The planting's own record is set by the caller. */
export function takeOut(ledger: Ledger, growing: Growing, day: Day): { trouble: OpenTrouble; before: Trouble }[] {
  const bed = bedLedger(ledger, growing.now.bed);
  bed.living = bed.living.filter((other) => other !== growing);
  for (const key of livingKeys(growing.now)) ledger.living.get(key)?.delete(growing);
  for (const key of livingKeys(growing.now)) {
    const ended = bed.ended.get(key);
    if (ended === undefined) bed.ended.set(key, [growing]);
    else ended.push(growing);
  }
  const lives = (id: string) => bed.living.some((other) => other.now.id === id);
  const over = bed.troubles.filter(({ now }) => now.plantings.includes(growing.now.id) && !now.plantings.some(lives));
  bed.troubles = bed.troubles.filter((trouble) => !over.includes(trouble));
  bed.pastTroubles.push(...over);
  return over.map((trouble) => {
    const before = trouble.now;
    trouble.now = { ...before, ended: day };
    return { trouble, before };
  });
}

/**
 * Undoes an ending by the calendar, when a later line shows that the planting still stood. It now stands until spring at
 * the latest, and a second such ending is final: last year's tomatoes are not kept alive by this year's.
 */
export function putBack(ledger: Ledger, growing: Growing, undo: EndWithoutWord, until: Day): Growing {
  const bed = bedLedger(ledger, growing.now.bed);
  bed.changes.splice(bed.changes.indexOf(undo.change), 1);
  for (const { trouble, before } of undo.troubles) {
    trouble.now = before;
    bed.troubles.push(trouble);
  }
  for (const ended of bed.ended.values()) {
    const at = ended.indexOf(growing);
    if (at >= 0) ended.splice(at, 1);
  }
  ledger.endedWithoutWord.delete(growing);
  const back: Growing = { now: undo.before, words: growing.words, endsBy: until, proven: true };
  addGrowing(ledger, back);
  return back;
}
