/** What the beds came to, and the season against last year's at the same warmth. */

import type { Picking } from "../garden/index.ts";
import { say, type Voice } from "../language/index.ts";
import { compareHarvest } from "./comparisons.ts";
import { type DraftPoint, falling, type Material, point } from "./material.ts";
import type { BedYieldFacts } from "./recap-words/facts.ts";
import { recapWords } from "./recap-words/words.ts";
import { pickingsBetween, seasonResults } from "./results.ts";
import type { SeasonBook } from "./season-book.ts";

/** Beds told at most. */
const mostBeds = 5;

export function resultPoints(material: Material): readonly DraftPoint[] {
  const { book, season, from, to } = material;
  const voice: Voice = { settings: book.garden.settings, day: to };
  const words = recapWords;
  const results = seasonResults(book, season, to, from);
  const pickings = pickingsBetween(book, from, to);
  const beds = results.beds
    .filter(({ sum }) => sum.grams > 0)
    .slice(0, mostBeds)
    .flatMap((one, index): DraftPoint[] => {
      const bed = book.garden.beds.get(one.id);
      const amount = words.harvest(one.sum, voice.settings);
      if (bed === undefined || amount === undefined) return [];
      const picked = pickings.filter((picking) => picking.bed === one.id);
      const grounds = picked.map(({ note, private: isPrivate }) => ({ note, private: isPrivate && one.private }));
      const text = words.bedYield({
        bed,
        amount,
        pickings: one.sum.times,
        mostly: mostlyOf(book, picked, one.sum.grams),
      });
      return [
        point(say(text, grounds), index < 2 ? "should" : "could", "one of the beds that gave most", falling(44, index)),
      ];
    });
  return [...beds, ...sameHeat(material)];
}

/** The crop that a bed's weight was of: all of it, or a part worth telling. */
function mostlyOf(book: SeasonBook, picked: readonly Picking[], grams: number): BedYieldFacts["mostly"] {
  const crops = [...Map.groupBy(picked, ({ crop }) => crop ?? "")]
    .map(([id, all]) => ({ id, grams: all.reduce((sum, { harvest }) => sum + (harvest.grams ?? 0), 0) }))
    .sort((a, b) => b.grams - a.grams);
  const [most] = crops;
  const crop = book.garden.crops.get(most?.id ?? "");
  if (most === undefined || crop === undefined) return undefined;
  if (crops.length === 1) return { crop };
  return most.grams < grams * 0.25 ? undefined : { crop, share: most.grams / grams };
}

/** "At the same warmth, on 12 July, last year had given 45.9 kg." */
function sameHeat({ book, season, from, to }: Material): readonly DraftPoint[] {
  if (from !== season.from) return [];
  const { atSameHeat, now } = compareHarvest(book, season, to);
  if (atSameHeat === undefined || now.grams <= 0) return [];
  const { settings } = book.garden;
  const text = recapWords.sameHeat(atSameHeat.day, atSameHeat.sum.grams, now.grams, { settings, day: to });
  const grounds = pickingsBetween(book, from, to)
    .slice(0, 1)
    .map(({ note }) => ({ note }));
  return [point(say(text, grounds), "could", "compared at the same warmth", 30)];
}
