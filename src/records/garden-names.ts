/** The names of a garden that has been read: what its events are printed with, and what one line more is read with. */
import type { RecordFile, Records } from "../model.ts";
import { type Names, namesOnceHeard } from "./names.ts";
import { cropsIn } from "./region-crops.ts";

export type NamedRecords = Pick<Records, "settings" | "sites" | "beds" | "varieties" | "gear" | "crops" | "words">;

export function namesOfGarden(records: NamedRecords): Names {
  const { settings, sites, beds, varieties, gear, crops } = records;
  const described = {
    sites: sites.values(),
    beds: describedOf(beds),
    varieties: describedOf(varieties),
    gear: gear.values(),
    crops: new Map([...cropsIn(settings.language).map((crop) => [crop.id, crop] as const), ...crops]).values(),
  };
  return namesOnceHeard(described, { beds: onlyNamed(beds), varieties: onlyNamed(varieties) });
}

export function describedOf<Kind extends RecordFile>(all: ReadonlyMap<string, Kind>): readonly Kind[] {
  return [...all.values()].filter(({ described }) => described);
}

export function onlyNamed<Kind extends RecordFile>(all: ReadonlyMap<string, Kind>): readonly Kind[] {
  return [...all.values()].filter(({ described }) => !described);
}
