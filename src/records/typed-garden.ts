/** A garden's names as the phone's page carries them: those that notes use, whether files describe them or not. */
import { cropsIn } from "./american-crops.ts";
import type { NamedRecords } from "./garden-names.ts";
import type { TypedGarden } from "./typed-reading.ts";

export function typedGarden({ settings, sites, beds, varieties, gear, crops }: NamedRecords): TypedGarden {
  const table = new Set(cropsIn(settings.language).map(({ id }) => id));
  return {
    language: settings.language,
    units: settings.units,
    southern: (settings.position?.latitude ?? 0) < 0,
    sites: [...sites.values()].map(({ id, title }) => ({ id, title })),
    beds: [...beds.values()].map(({ id, title, alsoCalled, site }) => ({ id, title, alsoCalled, site })),
    varieties: [...varieties.values()].map(({ id, title, alsoSpelled, crop }) => ({ id, title, alsoSpelled, crop })),
    gear: [...gear.values()].map(({ id, title, alsoCalled }) => ({ id, title, alsoCalled })),
    crops: [...crops.values()].filter(({ id }) => !table.has(id)),
  };
}
