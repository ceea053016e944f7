/** A garden's names as the phone's page carries them: those that notes use, whether files describe them or not. */

import { describedOf, type NamedRecords, onlyNamed } from "./garden-names.ts";
import { cropsIn } from "./region-crops.ts";
import type { TypedGarden } from "./typed-reading.ts";

export function typedGarden({ settings, sites, beds, varieties, gear, crops, words }: NamedRecords): TypedGarden {
  const table = new Set(cropsIn(settings.language).map(({ id }) => id));
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
    crops: [...crops.values()].filter(({ id }) => !table.has(id)),
    words: words.map(({ word, means }) => ({ word, means })),
  };
}
