/** A garden's names as the phone's page carries them: those that notes use, whether files describe them or not. */

import { crops as everywhere } from "./crops.ts";
import { describedOf, type NamedRecords, onlyNamed } from "./garden-names.ts";
import { cropsIn } from "./region-crops.ts";
import type { TypedGarden } from "./typed-reading.ts";

export function typedGarden({ settings, sites, beds, varieties, gear, crops, words }: NamedRecords): TypedGarden {
  const table = new Set(everywhere.map(({ id }) => id));
  const asEverywhere = new Set(everywhere);
  return {
    language: settings.language,
    units: settings.units,
    southern: settings.southern,
    sites: [...sites.values()].map(({ id, title }) => ({ id, title })),
    beds: describedOf(beds).map(({ id, title, alsoCalled, site, was }) => ({ id, title, alsoCalled, site, was })),
    varieties: describedOf(varieties).map(({ id, title, alsoSpelled, crop }) => ({ id, title, alsoSpelled, crop })),
    heard: {
      beds: onlyNamed(beds).map(({ id, title }) => ({ id, title })),
      varieties: onlyNamed(varieties).map(({ id, title, crop }) => ({ id, title, crop })),
    },
    gear: [...gear.values()].map(({ id, title, alsoCalled }) => ({ id, title, alsoCalled })),
    // The phone carries the table, and of the region's own words those of its garden.
    crops: [
      ...cropsIn(settings.language).filter((crop) => !asEverywhere.has(crop)),
      ...[...crops.values()].filter(({ id }) => !table.has(id)),
    ],
    words: words.map(({ word, means }) => ({ word, means })),
  };
}
