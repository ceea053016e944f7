/**
 * What the bodies of notes say, kept from one run to the next. Unlike a parse, a reading depends on the names of the whole
 * garden, so its key stands for those as well: a renamed bed has every note read again, a changed note only that one.
 */
import { hash } from "node:crypto";
import type { Crop, OwnWord } from "../model.ts";
import type { NameRecords } from "./names.ts";
import type { NoteBody, NoteBodyContext } from "./note-body.ts";
import type { ParsedFile } from "./parsed-files.ts";
import type { Taken } from "./taken-names.ts";

export interface NoteReadings {
  get(key: string): NoteBody | undefined;
  set(key: string, body: NoteBody): void;
}

/** Stands for all names and words that a line may use, and for how amounts and seasons are read. */
export function namesKey(
  records: NameRecords,
  heard: Taken | undefined,
  { units, southern, language }: NoteBodyContext["settings"],
  words: readonly OwnWord[],
): string {
  const named = (all: Iterable<{ readonly id: string; readonly title?: string }>, ...more: readonly string[]) =>
    [...all].map((one) => [one.id, one.title, ...more.map((key) => (one as unknown as Record<string, unknown>)[key])]);
  const parts = [
    named(records.sites),
    named(records.beds, "alsoCalled", "site", "was"),
    named(records.gear, "alsoCalled"),
    named(records.varieties, "alsoSpelled", "crop"),
    [...records.crops].map(cropKey),
    heard === undefined ? [] : [named(heard.beds, "place"), named(heard.varieties, "crop", "place")],
    units,
    language === "en-US",
    southern,
    words.map(({ word, means }) => [word, means]),
  ];
  return hash("sha256", JSON.stringify(parts), "base64url");
}

/** Rows of the crop table are the same objects in every garden. */
const cropKeys = new WeakMap<Crop, string>();

function cropKey(crop: Crop): string {
  let key = cropKeys.get(crop);
  if (key === undefined) {
    const { id, name, plural, alsoCalled, perennial, use } = crop;
    key = JSON.stringify([id, name, plural, alsoCalled, perennial, use]);
    cropKeys.set(crop, key);
  }
  return key;
}

/** Reads a note's body, or takes the kept reading; one that took a name of its own is not kept. */
export function keptReading(
  readings: NoteReadings | undefined,
  namesKeyNow: string,
  parsed: ParsedFile,
  context: NoteBodyContext,
  read: () => NoteBody,
): NoteBody {
  const { names, note, beds } = context;
  if (readings === undefined || !names.asBuilt) return read();
  const key = hash("sha256", JSON.stringify([namesKeyNow, parsed.key, parsed.file, note, beds]), "base64url");
  const kept = readings.get(key);
  if (kept !== undefined) return kept;
  const body = read();
  if (names.asBuilt) readings.set(key, body);
  return body;
}
