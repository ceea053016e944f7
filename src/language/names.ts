/** What plants, beds and gear are called in a sentence. */

import type { Crop, Day, GardenSettings, PlantIds, Records } from "../model.ts";
import { localeOf } from "./locale.ts";
import { oneForm, varietyName } from "./plant-names.ts";

export interface Names {
  readonly settings: GardenSettings;
  /** "Musselburgh leeks"; one of them: "Musselburgh leek". */
  plants(ids: PlantIds, count?: number): string;
  /** Whether "were" follows the name: "leeks were", "kale was", "six kale were". */
  arePlural(ids: PlantIds, count?: number): boolean;
  /** The variety's title alone: "Musselburgh"; "" when only a crop is known. */
  title(ids: PlantIds): string;
  /** Everything a line may call these plants, the longest first. */
  spellings(ids: PlantIds): readonly string[];
  bed(id: string): string;
  /** "was", or "were" for beds that are several: "Tomato Pots were". */
  bedWas(id: string): "was" | "were";
  /** With its article: "the hazel arch". */
  gear(id: string): string;
  /** A day as said on another day. */
  day(day: Day, near: Day): string;
}

export type Named = Pick<Records, "settings" | "varieties" | "crops" | "beds" | "gear">;

const known = new WeakMap<Named, Names>();

export function namesOf(records: Named): Names {
  const names = known.get(records) ?? makeNames(records);
  known.set(records, names);
  return names;
}

/** The same few hundred names are said thousands of times, so each is put together once. */
function makeNames(records: Named): Names {
  const said = new Map<string, string>();
  const spelled = new Map<string, readonly string[]>();
  const cropOf = (ids: PlantIds): Crop | undefined => {
    const id = (ids.variety === undefined ? undefined : records.varieties.get(ids.variety)?.crop) ?? ids.crop;
    return id === undefined ? undefined : records.crops.get(id);
  };
  const plants = (ids: PlantIds, count?: number): string => {
    const key = `${ids.variety ?? ""}/${ids.crop ?? ""}/${count === 1}`;
    let name = said.get(key);
    if (name === undefined) {
      const variety =
        ids.variety === undefined ? undefined : (records.varieties.get(ids.variety) ?? titled(ids.variety));
      const crop = cropOf(ids);
      name =
        variety === undefined && crop === undefined && ids.crop !== undefined
          ? titled(ids.crop).title
          : varietyName(variety, crop, count);
      said.set(key, name);
    }
    return name;
  };
  return {
    settings: records.settings,
    plants,
    arePlural(ids, count) {
      if (count !== undefined) return count !== 1;
      const crop = cropOf(ids);
      return crop === undefined ? endsPlural(plants(ids)) : crop.plural !== crop.name || oneForm.has(crop.id);
    },
    spellings(ids) {
      const key = `${ids.variety ?? ""}/${ids.crop ?? ""}`;
      let names = spelled.get(key);
      if (names === undefined) {
        const variety = ids.variety === undefined ? undefined : records.varieties.get(ids.variety);
        const crop = cropOf(ids);
        const ofCrop = crop === undefined ? [] : [crop.plural, crop.name, ...crop.alsoCalled];
        const ofVariety = variety === undefined ? [] : [variety.title, ...variety.alsoSpelled];
        const all = new Set([plants(ids), plants(ids, 1), ...ofVariety, ...ofCrop]);
        names = [...all].filter((name) => name !== "").sort((a, b) => b.length - a.length);
        spelled.set(key, names);
      }
      return names;
    },
    title: ({ variety }) => (variety === undefined ? "" : (records.varieties.get(variety) ?? titled(variety)).title),
    bed: (id) => records.beds.get(id)?.title ?? titled(id).title,
    bedWas: (id) => (endsPlural(records.beds.get(id)?.title ?? "") ? "were" : "was"),
    gear: (id) => withArticle(records.gear.get(id)?.title ?? titled(id).title),
    day: localeOf(records.settings).day,
  };
}

/** A name no record knows: its id is all there is to say. */
function titled(id: string): { readonly title: string } {
  return { title: id.replaceAll("-", " ") };
}

/** "Hazel arch" becomes "the hazel arch"; a title with more capitals is a name and keeps them. */
function withArticle(title: string): string {
  if (/^(the|a|an|my|our|two|three|four|five|six)\s/i.test(title)) return title[0]?.toLowerCase() + title.slice(1);
  const rest = title.slice(1);
  return `the ${rest === rest.toLowerCase() ? title.toLowerCase() : title}`;
}

/** Whether a phrase speaks of several things, by its last word: "side shoots" does, "moss" and "asparagus" do not. */
export function endsPlural(phrase: string): boolean {
  return /[^sui]s$/i.test(phrase) || /\band\b/i.test(phrase);
}
