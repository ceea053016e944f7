/** Which language a garden's pages speak. A new language is a row here. */
import type { GardenSettings } from "../../model.ts";
import { englishOf } from "../words.ts";
import { englishSpeech } from "./english.ts";
import { germanSpeech } from "./german.ts";
import type { Speech, Units } from "./speech.ts";

/** By the first part of a language tag. */
const speeches = { en: englishSpeech, de: germanSpeech } as const;

export type Language = keyof typeof speeches;

/** The language a garden's pages are in; English where there are no words in its own. */
export function languageOf(tag: string): Language {
  const known = languages.get(tag) ?? (isSpoken(tag) ? (firstPart(tag) as Language) : "en");
  languages.set(tag, known);
  return known;
}

/** Every sentence asks, and a garden has one tag. */
const languages = new Map<string, Language>();

function firstPart(tag: string): string {
  return tag.toLowerCase().split("-")[0] ?? "";
}

function isSpoken(tag: string): boolean {
  return Object.hasOwn(speeches, firstPart(tag));
}

/** The garden's own tag where its language is spoken here: "de-AT"; else that of what is spoken instead. */
export function tongueOf(tag: string): string {
  return isSpoken(tag) ? tag : englishOf(tag);
}

/** Making Intl formatters is slow, so each language is made once. */
const made = new Map<string, Speech>();

export function speechOf({ language, units }: Pick<GardenSettings, "language" | "units">): Speech {
  const key = `${language} ${units}`;
  const known = made.get(key) ?? newSpeech(language, units);
  made.set(key, known);
  return known;
}

function newSpeech(language: string, units: Units): Speech {
  return speeches[languageOf(language)](tongueOf(language), units);
}
