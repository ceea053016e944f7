/** The shot list of a stop: what to film, each with an id that the field list and the wrap go by. */

import { capital, sayList, theBed, theGear } from "../language/index.ts";
import type { BedOnTheDay } from "./bed-on-the-day.ts";
import type { ShowKind, VarietyRow } from "./brief.ts";
import type { Shot, Spot } from "./camera.ts";
import type { Weighed } from "./candidates/candidate.ts";

export interface ShotList {
  readonly shots: readonly Shot[];
  /** Shot id for each thing shown, in the same order. */
  readonly shotOf: readonly string[];
}

/** More labels, gear or cutaways than this at one stop are not picked up by anybody. */
const mostNamed = 3;
const mostCutaways = 2;

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
  { varieties, leftOut }: { readonly varieties: readonly VarietyRow[]; readonly leftOut: readonly string[] },
): ShotList {
  const shots: Shot[] = [];
  const put = (shot: Omit<Shot, "id">): string => {
    const id = `${stopId}.${shots.length + 1}`;
    shots.push({ id, ...shot });
    return id;
  };
  const match = spot.photo?.path;
  const wide = put({
    kind: "wide",
    text: spot.text === "" ? `the whole of ${theBed(here.bed)}` : spot.text,
    level: "must",
    match,
  });
  put({ kind: "walk-in", text: `walking up to ${theBed(here.bed)}`, level: "should" });
  const shotOf = show.map(({ kind, about, level }) => {
    const words = closeUps[kind];
    if (words === undefined) return wide;
    return put({ kind: level === "could" ? "insert" : "close-up", text: words(about), level });
  });
  for (const text of inserts(here, show, varieties)) put({ kind: "insert", text, level: "could" });
  for (const text of leftOut.slice(0, mostCutaways)) put({ kind: "cutaway", text, level: "could" });
  return { shots, shotOf };
}

/** Labels of names viewers will ask about, gear they will ask about, a harvest on the scale. */
function inserts(here: BedOnTheDay, show: readonly Weighed[], varieties: readonly VarietyRow[]): readonly string[] {
  const shown = new Set(show.flatMap(({ lots }) => lots.map((lot) => lot.planting.id)));
  const asked = varieties.filter(
    (row) => !row.private && (row.newThisYear || row.sayAs !== undefined) && row.plantings.some((id) => shown.has(id)),
  );
  const labels = asked.slice(0, mostNamed).map(({ title }) => title);
  const gear = here.now.gear
    .flatMap((id) => here.index.garden.gear.get(id) ?? [])
    .filter((one) => !one.private)
    .slice(0, mostNamed)
    .map(({ title }) => theGear(title));
  const weighed = show.find(({ kind, lots }) => {
    const picked = kind === "picking" || kind === "first picking" || kind === "only picking";
    return picked && lots.some(({ planting }) => planting.picked.grams > 0);
  });
  return [
    ...(labels.length === 0 ? [] : [`${labels.length === 1 ? "label" : "labels"}: ${labels.join(", ")}`]),
    ...(gear.length === 0 ? [] : [capital(sayList(gear)).replace(/^The/, "the")]),
    ...(weighed === undefined ? [] : [`${weighed.about} on the scale`]),
  ];
}
