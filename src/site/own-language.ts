/** The garden told in its own language: commands tell changes in English, pages in the language that garden.md names. */
import type { Garden } from "../model.ts";
import { growGarden, languageOf } from "../timeline/index.ts";

/** The same garden, grown anew where its language is another; what is wrong with the records stays in English. */
export function inOwnLanguage(garden: Garden): Garden {
  if (languageOf(garden.settings.language) === "en") return garden;
  return { ...garden, changes: growGarden(garden, garden.photos).changes };
}
