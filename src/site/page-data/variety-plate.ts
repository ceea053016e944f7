/** The plate at the head of a variety's page: its photos, its years, its moment on film, and whether it would be grown again. */
import type { Picked, Variety } from "../../model.ts";
import type { PerPlant } from "../../season/index.ts";
import { platePhotos } from "./plate-photos.ts";
import type { VarietyPlate } from "./plate-shapes.ts";
import type { SeenIn } from "./shapes.ts";
import type { View } from "./view.ts";
import { yearStrips } from "./year-strips.ts";

interface Known {
  readonly picked: ReadonlyMap<number, Picked>;
  readonly yields: ReadonlyMap<number, PerPlant>;
  /** Newest film first. */
  readonly seenIn: readonly SeenIn[];
}

export function varietyPlate(view: View, variety: Variety, { picked, yields, seenIn }: Known): VarietyPlate {
  const { sentences } = view.words;
  const { growAgain } = variety;
  return {
    photos: platePhotos(view, variety).map(({ photo, subject }) => ({
      picture: view.book.picture(photo),
      shows: subject && sentences.subject[subject],
    })),
    years: yearStrips(view, variety, picked, yields),
    film: momentIn(seenIn),
    again: growAgain && sentences.again(growAgain.would, growAgain.words),
  };
}

/** Where its name is said, else where its bed is shown; a film that tells the time of it before one that does not. */
function momentIn(seenIn: readonly SeenIn[]): VarietyPlate["film"] {
  const timed = seenIn.map(({ episode, day, named, stops }) => ({
    episode,
    day,
    at: named ?? stops.find(({ at }) => at !== undefined)?.at,
  }));
  return timed.find(({ at }) => at !== undefined) ?? timed[0];
}
