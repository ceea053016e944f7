/** The shot list of a stop: what to film, each with the key that the field list and the wrap go by. */

import { daysBetween } from "../calendar.ts";
import { capital, sayList, theBed, theGear } from "../language/index.ts";
import type { Picked } from "../model.ts";
import type { BedOnTheDay } from "./bed-on-the-day.ts";
import type { ShowKind, VarietyRow } from "./brief.ts";
import type { Shot, Spot } from "./camera.ts";
import type { Weighed } from "./candidates/candidate.ts";
import { keyOf, thingKey, toldApart } from "./keys.ts";
import { isOverAlready } from "./picked-sentences.ts";

export interface ShotList {
  readonly shots: readonly Shot[];
  /** For each thing shown, in the same order: its own key, and the id of its shot. */
  readonly things: readonly { readonly key: string; readonly shot: string }[];
}

/** More labels, gear or cutaways than this at one stop are not picked up by anybody. */
const mostNamed = 3;
const mostCutaways = 2;

/** Days for which a picking is there to be put on the scale. */
const FRESH = 14;

/** What the close-up of each kind shows; "to camera" things are covered by the wide shot and have none. */
const closeUps: Partial<Readonly<Record<ShowKind, (about: string) => string>>> = {
  owed: (about) => `for ${about}`,
  new: (about) => `${about}, then one plant close`,
  "first time": (about) => `${about}, close, label in the frame`,
  trouble: (about) => `${about}, close`,
  "trouble over": (about) => `no more of ${about}`,
  lost: (about) => `the gap among ${about}`,
  "first flower": (about) => `first flower of ${about}`,
  "in flower": (about) => `flowers of ${about}`,
  "first fruit": (about) => `first fruit of ${about}`,
  "first picking": (about) => `${about} in the hand`,
  "only picking": (about) => `${about} in the hand`,
  picking: (about) => `${about} in the hand`,
  ready: (about) => `${about}, ready or not`,
  "due soon": (about) => `${about}, how far it is`,
  up: (about) => `seedlings of ${about}, low`,
  trial: (about) => `${about}, both ways in one frame`,
  grew: (about) => `folding rule against ${about}`,
  "side by side": (about) => `${about}, the photo of then held beside it`,
  finished: (about) => `the place where ${about} stood`,
  going: (about) => `${about}, a long look`,
  built: (about) => about,
  standing: (about) => `${about}, one slow pass`,
};

export function shotsOf(
  stopId: string,
  here: BedOnTheDay,
  spot: Spot,
  show: readonly Weighed[],
  { varieties, leftOut }: { readonly varieties: readonly VarietyRow[]; readonly leftOut: readonly Cutaway[] },
): ShotList {
  const shots: Shot[] = [];
  const bed = here.bed.id;
  const apart = toldApart();
  const put = (shot: Omit<Shot, "id">): string => {
    const id = `${stopId}.${shots.length + 1}`;
    shots.push({ id, ...shot });
    return id;
  };
  const match = spot.photo?.path;
  const wide = put({
    kind: "wide",
    key: keyOf(bed, "wide"),
    text: spot.text === "" ? `the whole of ${theBed(here.bed)}` : spot.text,
    level: "must",
    match,
  });
  put({ kind: "walk-in", key: keyOf(bed, "walk-in"), text: `walking up to ${theBed(here.bed)}`, level: "should" });
  const things = show.map((thing) => {
    const { kind, about, level } = thing;
    const key = apart(thingKey(bed, thing));
    // Of fruit that was picked long ago there is none to hold up; its plants are still there to be seen.
    const words = closeUps[isOverAlready(thing, here) ? "standing" : kind];
    if (words === undefined) return { key, shot: wide };
    return { key, shot: put({ kind: level === "could" ? "insert" : "close-up", key, text: words(about), level }) };
  });
  for (const { key, text } of inserts(here, show, varieties)) put({ kind: "insert", key, text, level: "could" });
  for (const { of, text } of leftOut.slice(0, mostCutaways))
    put({ kind: "cutaway", key: apart(keyOf(bed, "cutaway", of)), text, level: "could" });
  return { shots, things };
}

/** A picture of what the film leaves out, to be picked up in passing. */
export interface Cutaway {
  readonly text: string;
  /** Bed or thing it is of. */
  readonly of: string;
}

/** Labels of names viewers will ask about, gear they will ask about, a harvest on the scale. */
function inserts(
  here: BedOnTheDay,
  show: readonly Weighed[],
  varieties: readonly VarietyRow[],
): readonly Pick<Shot, "key" | "text">[] {
  const bed = here.bed.id;
  const shown = new Set(show.flatMap(({ lots }) => lots.map((lot) => lot.planting.id)));
  const asked = varieties.filter(
    (row) => !row.private && (row.newThisYear || row.sayAs !== undefined) && row.plantings.some((id) => shown.has(id)),
  );
  const labelled = asked.slice(0, mostNamed);
  const labels = labelled.map(({ title }) => title);
  const gear = here.now.gear
    .flatMap((id) => here.index.garden.gear.get(id) ?? [])
    .filter((one) => !one.private)
    .slice(0, mostNamed);
  const weighed = show.find(({ kind, lots }) => {
    const picked = kind === "picking" || kind === "first picking" || kind === "only picking";
    // What was weighed weeks ago is eaten.
    const isThere = ({ last }: Picked) => last !== undefined && daysBetween(last, here.day) <= FRESH;
    return picked && lots.some(({ planting }) => planting.picked.grams > 0 && isThere(planting.picked));
  });
  return [
    ...(labels.length === 0
      ? []
      : [
          {
            key: keyOf(bed, "label", ...labelled.map(({ variety }) => variety).toSorted()),
            text: `${labels.length === 1 ? "label" : "labels"}: ${labels.join(", ")}`,
          },
        ]),
    ...(gear.length === 0
      ? []
      : [
          {
            key: keyOf(bed, "gear", ...gear.map(({ id }) => id).toSorted()),
            text: capital(sayList(gear.map(({ title }) => theGear(title)))).replace(/^The/, "the"),
          },
        ]),
    ...(weighed === undefined
      ? []
      : [{ key: `${thingKey(bed, weighed)}/scale`, text: `${weighed.about} on the scale` }]),
  ];
}
