/** What became of plants since a film showed them, as facts. */
import { bookOf } from "../../../garden/index.ts";
import type { Day, Garden, Picked, Planting } from "../../../model.ts";
import { nothingPicked, pickedMore } from "../../../picked.ts";

export interface Since {
  readonly picked: Picked;
  /** Of plants that went on living. */
  readonly lost: number;
  /** The first flower after the film, where there was none before it in the season. */
  readonly flowered?: Day | undefined;
  /** The last of them ended; undefined while any lives, and where only the calendar ended it. */
  readonly over?: { readonly day: Day; readonly wasLost: boolean } | undefined;
}

/** `plantings` as they stood on the filming day; what came later than `until` is left out. */
export function sinceFilm(
  garden: Garden,
  plantings: readonly Planting[],
  { film, seasonStart, until }: { readonly film: Day; readonly seasonStart: Day; readonly until: Day },
): Since {
  const book = bookOf(garden);
  const later = plantings.map((then) => ({ then, now: book.standing(then, until) ?? then }));
  const flowers = plantings
    .flatMap((planting) => book.historyOf(planting))
    .filter(({ told, day }) => told.is === "flowered" && day >= seasonStart && day <= until)
    .map(({ day }) => day)
    .sort();
  const ends = later.map(({ now }) => now).filter(({ ended }) => ended !== undefined);
  const last = ends.toSorted((a, b) => ((a.ended ?? "") < (b.ended ?? "") ? 1 : -1))[0];
  const isOver = ends.length === plantings.length && last?.ended !== undefined && last.takenToBeOver !== true;
  return {
    picked: plantings
      .flatMap((planting) => book.pickingsOf(planting))
      .filter(({ day }) => day > film && day <= until)
      .reduce((sum, { harvest, day }) => pickedMore(sum, harvest, day), nothingPicked),
    lost: later.reduce((sum, { then, now }) => sum + (now.stage === "lost" ? 0 : now.lost - then.lost), 0),
    flowered: flowers[0] !== undefined && flowers[0] > film ? flowers[0] : undefined,
    over: isOver && last?.ended !== undefined ? { day: last.ended, wasLost: last.stage === "lost" } : undefined,
  };
}
