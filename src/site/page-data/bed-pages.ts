/** A page per bed, and the list of beds by site. */
import type { Weather } from "../../almanac/index.ts";
import { cropOf } from "../../crop-of.ts";
import { seasonBeginning } from "../../garden/index.ts";
import {
  type Amount,
  type Amounts,
  capital,
  cropName,
  digits,
  fullStop,
  sayList,
  varietyName,
} from "../../language/index.ts";
import type { Bed, DatedWork, Day, PlanPoint, Planting } from "../../model.ts";
import { changes } from "../../timeline/index.ts";
import { storyHtml } from "../story-html.ts";
import { bedGrowth } from "./bed-growth.ts";
import type { DayLines } from "./day-lines.ts";
import { letterJumps } from "./letter-jumps.ts";
import { pagesOnDemand } from "./on-demand.ts";
import type { ShownPhoto } from "./pictures.ts";
import { planOf } from "./plan.ts";
import { plantAges } from "./plant-ages.ts";
import { sayPlanting } from "./planting-words.ts";
import { bedRibbon } from "./ribbon/bed-ribbon.ts";
import type { BedListPage, BedPage, GrowingNow, Picture } from "./shapes.ts";
import type { Shown } from "./shown.ts";
import { sayGear } from "./sources.ts";
import { bedsInOrder, livingIn, seasonLabel, seasonYear, type View } from "./view.ts";

/** The beds of one site, numbered as its plan and list show them. */
export interface NumberedSite {
  readonly id: string;
  readonly name: string;
  readonly placeName?: string | undefined;
  readonly gates: readonly PlanPoint[];
  readonly beds: readonly { readonly bed: Bed; readonly number: number }[];
}

/** Beds without a site stand under the garden's own name. */
export function sitesWithBeds(view: View): readonly NumberedSite[] {
  const found = new Map<string, Bed[]>();
  for (const bed of bedsInOrder(view)) found.set(bed.site ?? "", [...(found.get(bed.site ?? "") ?? []), bed]);
  return [...found].map(([id, beds]) => {
    const site = view.garden.sites.get(id);
    return {
      id: id === "" ? "no-site" : id,
      name: site?.title ?? (id === "" ? view.garden.settings.name : id),
      placeName: site?.placeName,
      gates: site?.gates ?? [],
      beds: beds.map((bed, index) => ({ bed, number: index + 1 })),
    };
  });
}

export function bedList(view: View, sites: readonly NumberedSite[]): BedListPage {
  return {
    href: view.links.beds,
    sites: sites.map(({ id, name, placeName, gates, beds }) => {
      const letters = letterJumps(
        beds.map(({ bed }) => bed.title),
        `beds-${id}`,
      );
      return {
        id,
        name,
        placeName,
        plan: planOf(name, beds, view.words.beds, { hrefOf: view.links.bed, numbered: true, gates }),
        letters: letters.links,
        beds: beds.map(({ bed, number }, index) => ({
          href: view.links.bed(bed.id),
          name: bed.title,
          number,
          anchor: letters.anchorOf(index),
          growing: sayGrowing(view, bed),
        })),
      };
    }),
  };
}

export function bedPages(
  view: View,
  sites: readonly NumberedSite[],
  shown: Shown,
  weather: Weather,
): readonly BedPage[] {
  return pagesOnDemand(
    sites.flatMap((site) => site.beds.map(({ bed }) => ({ site, bed }))),
    ({ bed: { id } }) => ({ id }),
    ({ site, bed }): BedPage => bedPage(view, site, bed, shown, weather),
  );
}

/** The season that runs, and those before it, the newest first. */
export function bedSeasons(
  view: View,
  bed: Bed,
  weather: Weather,
  written?: DayLines,
): Pick<BedPage, "season" | "ribbon" | "seasons"> {
  const { garden, today, book } = view;
  const photos = book.byBed.get(bed.id) ?? [];
  const all = changes(garden, bed.id, "", today);
  const seasonOf = (day: Day) => seasonYear(view, day);
  const season = seasonOf(today);
  const years = [...new Set(all.map(({ day }) => seasonOf(day)))].filter((year) => year < season).sort((a, b) => b - a);
  const ribbonOf = (year: number) =>
    bedRibbon(view, bed.id, seasonBeginning(year, garden.settings.seasonStarts), {
      changes: all.filter(({ day }) => seasonOf(day) === year),
      photos: photos.filter(({ day }) => seasonOf(day) === year),
      weather,
      written,
    });
  return {
    season: seasonLabel(view, season),
    ribbon: ribbonOf(season),
    seasons: years.flatMap((year) => ribbonOf(year) ?? []),
  };
}

function bedPage(view: View, site: NumberedSite, bed: Bed, shown: Shown, weather: Weather): BedPage {
  const photos = view.book.byBed.get(bed.id) ?? [];
  return {
    id: bed.id,
    name: bed.title,
    site: bed.site === undefined ? undefined : site.name,
    placeName: site.placeName,
    size: bedSize(view, bed),
    facts: bedFacts(view, bed),
    about: storyHtml(bed.body),
    picture: photos[0] === undefined ? undefined : leadPicture(view, photos[0]),
    plan: planOf(site.name, site.beds, view.words.beds, { here: bed.id, hrefOf: view.links.bed, gates: site.gates }),
    now: livingIn(view, bed.id).map((planting) => growing(view, planting)),
    growth: bedGrowth(view, bed),
    ...bedSeasons(view, bed, weather),
    seenIn: shown.byBed.get(bed.id) ?? [],
  };
}

/** The newest photo, under it the age of the plants unless the person wrote a caption. */
function leadPicture({ garden, book }: View, photo: ShownPhoto): Picture {
  const picture = book.picture(photo);
  const ages = photo.bed === undefined ? "" : plantAges(garden, photo.bed, photo.day);
  return picture.caption === undefined && ages !== "" ? { ...picture, caption: ages } : picture;
}

export function growing(view: View, planting: Planting): GrowingNow {
  const variety = planting.variety === undefined ? undefined : view.garden.varieties.get(planting.variety);
  const crop = cropOf(view.garden, planting);
  return {
    href: variety === undefined ? undefined : view.links.variety(variety.id),
    name: variety?.title ?? (crop === undefined ? view.words.sentences.bed.unnamed : capital(cropName(crop))),
    crop: variety === undefined || crop === undefined ? "" : cropName(crop, 1),
    text: sayPlanting(view.garden, planting, planting.ended ?? view.today),
    isNew: planting.variety !== undefined && view.newVarieties.has(planting.variety),
  };
}

/** "Crown Prince squash, Musselburgh leeks and four more." */
export function sayGrowing(view: View, bed: Bed): string {
  const { bed: said } = view.words.sentences;
  const names = [
    ...new Set(
      livingIn(view, bed.id).map((planting) => {
        const variety = planting.variety === undefined ? undefined : view.garden.varieties.get(planting.variety);
        return varietyName(variety, cropOf(view.garden, planting));
      }),
    ),
  ];
  if (names.length === 0)
    return bed.inUseUntil !== undefined && bed.inUseUntil < view.today ? said.noLongerUsed : said.empty;
  const few = names.length <= 5 ? names : [...names.slice(0, 4), said.more(names.length - 4)];
  return fullStop(capital(sayList(few)));
}

/** "8 m by 1.2 m, facing south.", with the size in the other units; undefined when the records tell neither. */
export function bedSize({ locale, words }: View, { size, facing }: Bed): Amount | undefined {
  const { bed: said } = words.sentences;
  const sides = ({ side }: Amounts) =>
    size === undefined ? undefined : said.size(side(size.length), side(size.width));
  const about = [sides(locale), facing === undefined ? undefined : said.facing(facing)].filter(
    (part) => part !== undefined,
  );
  if (about.length === 0) return undefined;
  return { text: fullStop(capital(about.join(", "))), other: sides(locale.otherUnits) };
}

/** How a bed was made and what stands in it, as short sentences. */
export function bedFacts(view: View, bed: Bed): readonly string[] {
  const { locale, words } = view;
  const { bed: said } = words.sentences;
  const known = view.states.get(bed.id);
  const when = ({ day }: DatedWork) => (day === undefined ? undefined : sayPartOfYear(view, day));
  const standing = (known?.gear ?? []).flatMap((id) => {
    const thing = view.garden.gear.get(id);
    return thing === undefined ? [] : [sayGear(words, thing)];
  });
  return [
    ...(bed.was ?? []).map(({ name, until }) => said.was(name, locale.day(until))),
    ...(bed.inUseSince === undefined ? [] : [said.inUseSince(sayPartOfYear(view, bed.inUseSince))]),
    ...(known?.built ?? bed.built).map((work) => said.built(work.what, when(work))),
    ...(known?.filled ?? bed.filled).map((work) => said.filled(work.what, when(work))),
    ...(bed.soil === undefined ? [] : [said.soil(bed.soil)]),
    ...(known?.soilPh === undefined ? [] : [said.ph(digits(known.soilPh.ph), locale.day(known.soilPh.day))]),
    ...(standing.length === 0 ? [] : [said.standing(standing)]),
  ];
}

/** A day, a month or only a year, as exactly as it was written. */
function sayPartOfYear(view: View, day: string): string {
  if (/^\d{4}$/u.test(day)) return day;
  if (/^\d{4}-\d{2}$/u.test(day)) return view.locale.month(`${day}-01`);
  return /^\d{4}-\d{2}-\d{2}$/u.test(day) ? view.locale.day(day) : day;
}
