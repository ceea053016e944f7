/** What the beds came to, and the season against last year's at the same warmth. */
import { capital, sayWeight } from "../timeline/index.ts";
import { dayOnly, type Speech, say, sayHarvest, sayPickings, theBed } from "../tour/index.ts";
import { compareHarvest } from "./comparisons.ts";
import { groundUnit, sayFromGround } from "./ground-words.ts";
import { type DraftPoint, falling, type Material, point } from "./material.ts";
import { pickingsBetween, seasonResults } from "./results.ts";

/** Beds told at most. */
const mostBeds = 5;

export function resultPoints(material: Material): readonly DraftPoint[] {
  const { book, season, from, to } = material;
  const { settings } = book.garden;
  const results = seasonResults(book, season, to, from);
  const pickings = pickingsBetween(book, from, to);
  const beds = results.beds
    .filter(({ sum }) => sum.grams > 0)
    .slice(0, mostBeds)
    .flatMap((one, index): DraftPoint[] => {
      const bed = book.garden.beds.get(one.id);
      const amount = sayHarvest(one.sum, settings);
      if (bed === undefined || amount === undefined) return [];
      const crops = [
        ...Map.groupBy(
          pickings.filter((picking) => picking.bed === one.id),
          ({ crop }) => crop ?? "",
        ),
      ]
        .map(([id, all]) => ({ id, grams: all.reduce((sum, { harvest }) => sum + (harvest.grams ?? 0), 0) }))
        .sort((a, b) => b.grams - a.grams);
      const [most] = crops;
      const name = most === undefined ? undefined : book.garden.crops.get(most.id)?.plural;
      const mostly =
        most === undefined || name === undefined || crops.length < 2 || most.grams < one.sum.grams * 0.25
          ? crops.length === 1 && name !== undefined
            ? `, all of it ${name}`
            : ""
          : `, ${sayWeight(most.grams, settings.units)} of it ${name}`;
      const ground =
        one.gramsPerSquareMetre === undefined
          ? ""
          : `, ${sayFromGround(one.gramsPerSquareMetre, settings.units)} from each ${groundUnit(settings.units)}`;
      const grounds = pickings
        .filter((picking) => picking.bed === one.id)
        .map(({ note, private: isPrivate }) => ({ note, private: isPrivate && one.private }));
      return [
        point(
          say(`${capital(theBed(bed))} gave ${amount} ${sayPickings(one.sum.times)}${ground}${mostly}.`, grounds),
          index < 2 ? "should" : "could",
          "one of the beds that gave most",
          falling(44, index),
        ),
      ];
    });
  return [...beds, ...sameHeat(material)];
}

/** "At the same warmth, on 12 July, last year had given 45.9 kg." */
function sameHeat({ book, season, from, to }: Material): readonly DraftPoint[] {
  if (from !== season.from) return [];
  const { atSameHeat, now } = compareHarvest(book, season, to);
  if (atSameHeat === undefined || now.grams <= 0) return [];
  const { settings } = book.garden;
  const speech: Speech = { settings, day: to };
  const then = atSameHeat.sum.grams > 0 ? sayWeight(atSameHeat.sum.grams, settings.units) : "nothing that was weighed";
  const text = `Last year the same warmth had come together by ${dayOnly(atSameHeat.day, { ...speech, day: atSameHeat.day })}, and by then the garden had given ${then}; now it is ${sayWeight(now.grams, settings.units)}.`;
  const grounds = pickingsBetween(book, from, to)
    .slice(0, 1)
    .map(({ note }) => ({ note }));
  return [point(say(text, grounds), "could", "compared at the same warmth", 30)];
}
