/** How plantings begin: sown in place, come over from another bed, or simply there. Planting out is in planting-out.ts. */

import { daysBetween, seasonStart } from "../calendar.ts";
import { cropOf } from "../crop-of.ts";
import type { Count, Day, Event, PlantIds, Planting, Stage } from "../model.ts";
import { nothingPicked } from "../picked.ts";
import {
  bedsMeant,
  type Growing,
  isPerennial,
  isPrivate,
  type Ledger,
  plantIds,
  plantKey,
  varietyOf,
} from "./ledger.ts";
import { addGrowing } from "./living-plantings.ts";
import { openLot } from "./nursery-lots.ts";
import { wordsOf } from "./same-words.ts";
import { endsWithoutWord } from "./seasons.ts";
import { addChange, at, report } from "./write-down.ts";

interface Beginning {
  readonly bed: string;
  readonly ids: PlantIds;
  readonly stage: Stage;
  readonly count?: Count | undefined;
  readonly sown?: Day | undefined;
  readonly seeds?: true | undefined;
  readonly planted?: Day | undefined;
  readonly plantsFrom?: "bought" | "given" | undefined;
  /** From whom its plants came. */
  readonly source?: string | undefined;
  readonly selfSown?: true | undefined;
  readonly implied?: boolean;
  /** The planting it comes from, when plants move: what is known of them goes with them. */
  readonly from?: Planting | undefined;
}

/** A sowing with a bed begins the planting; indoors, or without any bed, it opens a nursery lot. */
export function sow(ledger: Ledger, event: Event): void {
  const bed = event.bed;
  if (event.nursery === true || bed === undefined) {
    raise(ledger, event);
    if (event.nursery !== true)
      report(ledger, { rule: "timeline/sown-where", ...at(event), plants: plantIds(ledger.records, event) });
    return;
  }
  const growing = begin(ledger, event, {
    bed,
    ids: plantIds(ledger.records, event),
    stage: "sown",
    count: event.count,
    sown: event.day,
    seeds: true,
  });
  const { now } = growing;
  addChange(ledger, event, {
    kind: "sown",
    bed,
    told: { is: "sown", plants: now },
    effect: { plantings: [now] },
  });
}

/** Opens a nursery lot. It is told of a bed only when the line itself names one: the staging, the cold frame. */
export function raise(ledger: Ledger, event: Event): void {
  const { bed } = event;
  const named = bed !== undefined && isNamed(ledger, event, bed);
  const lot = openLot(ledger, event, named ? bed : undefined);
  if (named) addChange(ledger, event, { kind: "sown", bed, told: { is: "sown", plants: lot.now } });
}

/** Whether the line names its bed, which its note may only have lent it. */
function isNamed(ledger: Ledger, event: Event, bed: string): boolean {
  if (ledger.notes.get(event.place.file)?.beds.includes(bed) !== true) return true;
  const record = ledger.records.beds.get(bed);
  const names = [bed, record?.title ?? bed.replaceAll("-", " "), ...(record?.alsoCalled ?? [])];
  return names.some((name) => event.text.toLowerCase().includes(name.toLowerCase()));
}

/** Plants that come into a bed from another, with what is known of them. */
export function arrive(
  ledger: Ledger,
  event: Event,
  bed: string,
  from: Planting | undefined,
  count: Count | undefined,
): void {
  const seedling = from !== undefined && from.planted === undefined && from.sown !== undefined;
  const growing = begin(ledger, event, {
    bed,
    ids: from ?? plantIds(ledger.records, event),
    stage: from?.stage ?? "growing",
    count,
    sown: from?.sown,
    planted: seedling ? event.day : (from?.planted ?? event.day),
    plantsFrom: from?.plantsFrom,
    source: from?.from,
    seeds: event.count === undefined ? from?.seeds : undefined,
    selfSown: from?.selfSown,
    from,
  });
  const { now } = growing;
  addChange(ledger, event, {
    kind: "moved",
    bed,
    told: { is: "moved in", plants: now, from: from?.bed ?? event.bed },
    effect: { plantings: [now] },
  });
}

/**
 * A planting that no line began, because a later line shows it living: the rhubarb that was there before the notes.
 * Undefined when the bed is not known, or when it was sown or planted only later that season (the dates disagree, and
 * nothing is guessed).
 */
export function impliedPlanting(ledger: Ledger, event: Event): Growing | undefined {
  const ids = plantIds(ledger.records, event);
  const [bed, another] = bedsMeant(ledger, event);
  if (bed === undefined || another !== undefined || standsElsewhere(ledger, event, ids, bed)) {
    report(ledger, { rule: "timeline/nothing-planted", ...at(event), plants: ids });
    return undefined;
  }
  const later = picksEarlierCrop(event, startLater(ledger, bed, ids, event.day));
  if (later !== undefined) {
    report(ledger, { rule: "timeline/before-planting", ...at(event), plants: ids, bed, begun: later });
    return undefined;
  }
  const growing = begin(ledger, event, { bed, ids, stage: "growing", implied: true });
  const { now } = growing;
  if (!now.perennial) {
    report(ledger, { rule: "timeline/nothing-planted", ...at(event), plants: ids, bed });
  }
  addChange(ledger, event, {
    kind: "new",
    bed,
    told: { is: "first noted", plants: now },
    effect: { plantings: [now] },
  });
  return growing;
}

/**
 * Whether the line only got its bed from its note, and the file of another bed says that the crop stands there: "rhubarb
 * picked" in a note on the onions, where the fruit bank's file names the rhubarb.
 */
export function standsElsewhere(ledger: Ledger, event: Event, ids: PlantIds, bed: string): boolean {
  const crop = cropOf(ledger.records, ids);
  const { beds } = ledger.records;
  if (crop === undefined || event.toBed !== undefined) return false;
  const names = (text: string, all: readonly string[]) => {
    const words = ` ${text.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, " ")} `;
    return all.some((name) => words.includes(` ${name.toLowerCase()} `));
  };
  const crops = [crop.name, crop.plural];
  const here = beds.get(bed);
  if (here === undefined || names(`${here.title} ${here.body}`, crops)) return false;
  if (names(event.text, [here.title, ...here.alsoCalled])) return false;
  return [...beds.values()].some((other) => other.id !== bed && names(`${other.title} ${other.body}`, crops));
}

/** Garlic lifted in July and planted in October is two crops: what is picked so long before is of the one before the notes. */
const twoCrops = 60;

function picksEarlierCrop(event: Event, later: Day | undefined): Day | undefined {
  return later !== undefined && event.kind === "picked" && daysBetween(event.day, later) >= twoCrops
    ? undefined
    : later;
}

/** The next day of the same season on which the same plants are begun in that bed. */
function startLater(ledger: Ledger, bed: string, ids: PlantIds, day: Day): Day | undefined {
  const { seasonStarts } = ledger.records.settings;
  const next = ledger.starts.get(`${bed}/${plantKey(ids)}`)?.find((start) => start > day);
  return next !== undefined && seasonStart(next, seasonStarts) === seasonStart(day, seasonStarts) ? next : undefined;
}

export function begin(ledger: Ledger, event: Event, beginning: Beginning): Growing {
  const { bed, ids, stage, from } = beginning;
  const variety = varietyOf(ledger, ids);
  const crop = cropOf(ledger.records, ids);
  const id = nextId(ledger, bed, ids, event.day);
  countId(ledger, bed, ids, event.day);
  const now: Planting = {
    id,
    bed,
    variety: ids.variety,
    crop: crop?.id ?? ids.crop,
    since: event.day,
    count: beginning.count,
    seeds: beginning.seeds,
    began: beginning.count,
    lost: 0,
    givenAway: 0,
    movedOut: 0,
    thinnedOut: 0,
    pickedWhole: 0,
    sown: beginning.sown,
    planted: beginning.planted,
    ended: undefined,
    stage,
    stageSince: from?.stageSince ?? event.day,
    heightCm: from?.heightCm,
    heightOn: from?.heightOn,
    picked: nothingPicked,
    spot: event.spot,
    gear: event.gear,
    spacingCm: event.spacingCm,
    perennial: isPerennial(ledger, ids) === true,
    plantsFrom: beginning.plantsFrom,
    from: beginning.source,
    selfSown: beginning.selfSown,
    movedFrom: from?.id,
    implied: beginning.implied === true,
    firstEvent: event.id,
    lastEvent: event.id,
    lastNote: event.place,
    private: event.private || isPrivate(ledger, { bed, variety: ids.variety }),
  };
  const growing: Growing = {
    now,
    words: wordsOf([event.spot, event.detail, ...event.more].join(" ")),
    endsBy: endsWithoutWord(event.day, crop, variety, ledger.records.settings.seasonStarts),
  };
  addGrowing(ledger, growing);
  checkInUse(ledger, event, bed);
  return growing;
}

function baseId(bed: string, ids: PlantIds, day: Day): string {
  return `${bed}/${ids.variety ?? ids.crop}/${day}`;
}

/** "long-bed/crown-prince/2026-05-24"; a second lot begun that day ends in "-2". */
export function nextId(ledger: Ledger, bed: string, ids: PlantIds, day: Day): string {
  const base = baseId(bed, ids, day);
  const begun = ledger.ids.get(base) ?? 0;
  return begun === 0 ? base : `${base}-${begun + 1}`;
}

function countId(ledger: Ledger, bed: string, ids: PlantIds, day: Day): void {
  const base = baseId(bed, ids, day);
  ledger.ids.set(base, (ledger.ids.get(base) ?? 0) + 1);
}

function checkInUse(ledger: Ledger, event: Event, id: string): void {
  const bed = ledger.records.beds.get(id);
  const { inUseSince, inUseUntil } = bed ?? {};
  const { day } = event;
  if (inUseSince !== undefined && day < inUseSince)
    report(ledger, { rule: "timeline/bed-not-in-use", ...at(event), bed: id, bound: "since", of: inUseSince });
  else if (inUseUntil !== undefined && day > inUseUntil)
    report(ledger, { rule: "timeline/bed-not-in-use", ...at(event), bed: id, bound: "until", of: inUseUntil });
}
