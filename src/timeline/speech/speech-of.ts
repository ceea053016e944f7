/** Making Intl formatters is slow, so each English is made once. */
import type { GardenSettings } from "../../model.ts";
import { englishSpeech } from "./english.ts";
import type { Speech } from "./speech.ts";

const made = new Map<string, Speech>();

export function speechOf({ language, units }: Pick<GardenSettings, "language" | "units">): Speech {
  const key = `${language} ${units}`;
  const known = made.get(key) ?? englishSpeech(language, units);
  made.set(key, known);
  return known;
}
