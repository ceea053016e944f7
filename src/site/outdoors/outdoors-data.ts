/** The page to write outdoors as plain data: beds and verbs in the order in which this person needs them, spots, names. */
import type { Day, Garden } from "../../model.ts";
import { typedGarden, verbTable } from "../../records/index.ts";
import type { ViewpointPage } from "../page-data/shapes.ts";
import type { BedToTap, OutdoorsData, Spot } from "./phone/shapes.ts";

export interface OutdoorsPage extends Omit<OutdoorsData, "spots" | "worker"> {
  readonly spots: readonly SpotOfPage[];
  /** To tap, the usual one first. */
  readonly verbs: readonly string[];
}

export interface SpotOfPage extends Omit<Spot, "last"> {
  /** The last photo from there: its path in the records, and its address in the private site. */
  readonly last?:
    | { readonly path: string; readonly src: string; readonly width: number; readonly height: number }
    | undefined;
}

/** Verbs that fit above a thumb, and those that a garden without notes begins with. */
const MOST_VERBS = 9;
/** Of these so many at most are habits, so that what happens once in a while is at hand too. */
const MOST_HABITS = 6;
const FIRST_VERBS = ["picked", "sowed", "planted", "watered", "lost", "saw", "potted on", "trouble", "to do"];

/** Facts a person's habits are taken from: more than a year of them changes nothing. */
const LATEST = 2000;

export function outdoorsPage(garden: Garden, viewpoints: readonly ViewpointPage[], today: Day): OutdoorsPage {
  return {
    garden: garden.settings.name,
    language: garden.settings.language,
    reads: typedGarden(garden),
    beds: bedsByUse(garden, today),
    verbs: verbsByUse(garden),
    spots: viewpoints.map(({ bedId, name, title, fileName, last }) => ({
      ...{ bed: bedId, viewpoint: name, title, fileName },
      ...(last !== undefined && {
        last: { path: last.path, src: last.src, width: last.picture.width, height: last.picture.height },
      }),
    })),
  };
}

/** The bed that was written of last first; those that nobody wrote of stand behind in their own order. */
function bedsByUse({ beds, events }: Garden, today: Day): readonly BedToTap[] {
  const lastDay = new Map<string, Day>();
  for (const { bed, day } of events)
    if (bed !== undefined && day <= today && day > (lastDay.get(bed) ?? "")) lastDay.set(bed, day);
  const day = (id: string) => lastDay.get(id) ?? "";
  return [...beds.values()]
    .filter(({ inUseUntil }) => inUseUntil === undefined || inUseUntil >= today)
    .map(({ id, title }) => ({ id, title }))
    .sort((a, b) => (day(a.id) > day(b.id) ? -1 : day(a.id) < day(b.id) ? 1 : 0));
}

/** The words this person's lines begin with, of each kind of verb the one that is used most. */
export function verbsByUse({ readings }: Pick<Garden, "readings">): readonly string[] {
  const forms = new Map(verbTable.flatMap(({ forms: all }, row) => all.map((form) => [form, row] as const)));
  const used = new Map<string, number>();
  for (const { as, text } of readings.slice(-LATEST)) {
    const form = as === "facts" ? formAtFront(text, forms) : undefined;
    if (form !== undefined) used.set(form, (used.get(form) ?? 0) + 1);
  }
  used.delete("did");
  const own = [...used].sort(([, a], [, b]) => b - a).map(([form]) => form);
  // "did" stands for many verbs, each of them a habit of its own.
  const isWork = (form: string) => verbTable[forms.get(form) ?? -1]?.kind === "did";
  const best = own.filter(
    (form, at) => isWork(form) || !own.slice(0, at).some((better) => forms.get(better) === forms.get(form)),
  );
  const habits = best.slice(0, MOST_HABITS);
  const rows = new Set(habits.map((form) => (isWork(form) ? form : forms.get(form))));
  const rest = FIRST_VERBS.filter((form) => !rows.has(isWork(form) || !forms.has(form) ? form : forms.get(form)));
  return [...habits, ...rest].slice(0, MOST_VERBS);
}

/** Words of the longest verb. */
const LONGEST = 3;

function formAtFront(text: string, forms: ReadonlyMap<string, number>): string | undefined {
  const words = text.toLowerCase().split(/[\s:,]+/u, LONGEST);
  for (let count = words.length; count > 0; count -= 1) {
    const form = words.slice(0, count).join(" ");
    if (forms.has(form)) return form;
  }
  return undefined;
}
