/** A page per variety, and the one sentence that says how it did. */
import { daysBetween, yearOf } from "../../calendar.ts";
import type { Planting, Stage, Variety } from "../../model.ts";
import { capital, sayAge, sayDay, sayList, sayNumber } from "../../timeline/index.ts";
import { storyHtml } from "../story-html.ts";
import { heightsIn } from "./bed-growth.ts";
import type { YearPicked } from "./harvests.ts";
import { notebooks } from "./notebook.ts";
import { sayPicked, sayPlanting } from "./planting-words.ts";
import type { GrownHere, VarietyPage } from "./shapes.ts";
import type { Shown } from "./shown.ts";
import { sourceLine } from "./sources.ts";
import { varietyComparison, varietyPhotos } from "./variety-photos.ts";
import { cropOf, seasonYear, type View } from "./view.ts";

export type Harvests = ReadonlyMap<string, ReadonlyMap<number, YearPicked>>;

export function varietyPages(view: View, shown: Shown, harvests: Harvests): readonly VarietyPage[] {
  const notes = notebooks(view.garden);
  return [...view.garden.varieties.values()]
    .sort((a, b) => view.compare(a.title, b.title) || (a.id < b.id ? -1 : 1))
    .map((variety) => ({
      ...varietyPage(view, variety, shown, harvests.get(variety.id) ?? new Map()),
      notes: notes.get(variety.id) ?? [],
    }));
}

function varietyPage(
  view: View,
  variety: Variety,
  shown: Shown,
  picked: ReadonlyMap<number, YearPicked>,
): Omit<VarietyPage, "notes"> {
  const { garden, today, links, book } = view;
  const plantings = view.plantings.get(variety.id) ?? [];
  const now = plantings.filter((planting) => planting.ended === undefined);
  const crop = cropOf(garden, variety);
  const own = book.byVariety.get(variety.id) ?? [];
  const first = own[0] ?? now.flatMap((planting) => book.byBed.get(planting.bed) ?? [])[0];
  return {
    id: variety.id,
    name: variety.title,
    crop: crop?.name ?? "",
    cropHref: crop === undefined ? undefined : links.crop(crop.id),
    botanical: variety.botanical,
    sayAs: variety.sayAs,
    alsoSpelled: variety.alsoSpelled.length === 0 ? "" : `Also written ${sayList(variety.alsoSpelled, "or")}.`,
    isNew: view.newVarieties.has(variety.id),
    caution: variety.caution === undefined ? undefined : capital(variety.caution),
    picture: first === undefined ? undefined : book.picture(first),
    result: sayResult(view, variety, picked),
    source: sourceLine(variety.source),
    now: now.map((planting) => grownHere(view, planting)),
    before: beforeByYear(view, plantings),
    picked: [...picked]
      .sort(([a], [b]) => b - a)
      .map(([year, of]) => ({
        year,
        amount: capital(sayPicked(of, garden.settings.units)) || "Not measured",
        times: String(of.times),
      })),
    seenIn: shown.byVariety.get(variety.id) ?? [],
    about: storyHtml(variety.body),
    comparison: varietyComparison(view, plantings),
    heights: heightsIn(view, view.heights.byVariety.get(variety.id))[0],
    photos: varietyPhotos(view, variety, plantings, first),
  };

  function grownHere(of: View, planting: Planting): GrownHere {
    const bed = of.garden.beds.get(planting.bed);
    return {
      bed: { href: links.bed(planting.bed), text: bed?.title ?? planting.bed },
      text: sayPlanting(planting, of.garden.settings, planting.ended ?? today),
      isNew: of.newVarieties.has(variety.id),
    };
  }

  function beforeByYear(of: View, all: readonly Planting[]): VarietyPage["before"] {
    const years = new Map<number, GrownHere[]>();
    for (const planting of all) {
      if (planting.ended === undefined) continue;
      const year = yearOf(planting.ended);
      years.set(year, [...(years.get(year) ?? []), grownHere(of, planting)]);
    }
    return [...years].sort(([a], [b]) => b - a).map(([year, grown]) => ({ year, plantings: grown }));
  }
}

/** One sentence: what it gave this year, else how it stands, else how it ended when it was last grown. */
export function sayResult(view: View, variety: Variety, picked: ReadonlyMap<number, YearPicked>): string {
  const { garden, today } = view;
  const { settings } = garden;
  const day = (of: string) => sayDay(of, { language: settings.language, near: today });
  const plantings = view.plantings.get(variety.id) ?? [];
  const now = plantings.filter((planting) => planting.ended === undefined);
  const bedName = (planting: Planting) => garden.beds.get(planting.bed)?.title ?? planting.bed;
  const thisYear = picked.get(yearOf(today));
  if (thisYear?.first !== undefined) {
    const amount = sayPicked(thisYear, settings.units);
    const since = thisYear.times === 1 ? `on ${day(thisYear.first)}` : `since ${day(thisYear.first)}`;
    return amount === ""
      ? `Picked ${times(thisYear.times)} ${since}.`
      : `${capital(amount)} picked ${thisYear.times === 1 ? "" : "so far this year, "}${since}.`;
  }
  const latest = furthest(now);
  if (latest !== undefined) {
    const since = day(latest.stageSince);
    const bed = bedName(latest);
    if (latest.stage === "flowering") return `In flower in ${bed} since ${since}.`;
    if (latest.stage === "fruiting") return `Setting fruit in ${bed} since ${since}; nothing picked yet.`;
    if (latest.stage === "sown") return `Sown in ${bed} on ${day(latest.sown ?? latest.since)}, not up yet.`;
    if (latest.perennial && latest.since < view.seasonStart)
      return `In ${bed} for ${sayAge(daysBetween(latest.since, today))}.`;
    const beds = sayList([...new Set(now.map(bedName))]);
    return `Growing in ${beds} since ${day(now[0]?.since ?? latest.since)}.`;
  }
  const lot = view.waitingLots.get(variety.id);
  if (lot !== undefined) return `Sown on ${day(lot.sown)}, not planted out yet.`;
  const last = plantings.at(-1);
  if (last?.ended === undefined) return "Not grown here yet.";
  const year = yearOf(last.ended);
  const gave = picked.get(year);
  const amount = gave === undefined ? "" : sayPicked(gave, settings.units);
  const when = year === yearOf(today) ? "earlier this year" : `in ${year}`;
  if (last.stage === "lost" && amount === "") return `Last grown ${when}, and lost.`;
  return `Last grown ${when}${amount === "" ? "" : `: ${amount} picked`}.`;
}

const STAGES_FURTHEST_FIRST: readonly Stage[] = ["picking", "fruiting", "flowering", "growing", "up", "sown"];

/** The lot that has come furthest speaks for the variety. */
function furthest(now: readonly Planting[]): Planting | undefined {
  return STAGES_FURTHEST_FIRST.map((stage) => now.find((planting) => planting.stage === stage)).find(
    (planting) => planting !== undefined,
  );
}

function times(n: number): string {
  return n === 1 ? "once" : n === 2 ? "twice" : `${sayNumber(n)} times`;
}

/** "Long bed and Cold frame", "Last grown in 2024", "Waiting to be planted out". */
export function sayWhere(view: View, variety: Variety): string {
  const plantings = view.plantings.get(variety.id) ?? [];
  const now = plantings.filter((planting) => planting.ended === undefined);
  if (now.length > 0)
    return sayList([...new Set(now.map((planting) => view.garden.beds.get(planting.bed)?.title ?? planting.bed))]);
  const season = seasonYear(view);
  if (view.waitingLots.has(variety.id)) return "Sown, not planted out yet";
  const ended = plantings.flatMap((planting) => (planting.ended === undefined ? [] : [yearOf(planting.ended)]));
  if (ended.length === 0) return "Not grown yet";
  const last = Math.max(...ended);
  return last === season ? "Over for this year" : `Last grown in ${last}`;
}
