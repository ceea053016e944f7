/** The season in one paragraph. */

import { type Sentence, say, type Voice } from "../language/index.ts";
import type { Garden } from "../model.ts";
import { betweenDays } from "../order.ts";
import { compareHarvest } from "./comparisons.ts";
import type { Material } from "./material.ts";
import type { LossRow } from "./recap.ts";
import { recapWords } from "./recap-words/words.ts";
import { pickingsBetween, seasonResults } from "./results.ts";
import type { TrialResult } from "./trial-results.ts";

export function paragraphOf(
  material: Omit<Material, "paragraph" | "photos" | "nextYear" | "credits">,
): readonly Sentence[] {
  const { losses, weather, trials } = material;
  return [
    totalSaid(material),
    ...(weather?.short === undefined ? [] : [weather.short]),
    carriedBy(material),
    ...(losses[0] === undefined ? [] : [setbackSaid(losses, material.book.garden.crops)]),
    trialsSaid(trials),
  ].filter((one) => one !== undefined);
}

function totalSaid({
  book,
  season,
  from,
  to,
  past,
}: Pick<Material, "book" | "season" | "from" | "to" | "past">): Sentence {
  const voice: Voice = { settings: book.garden.settings, day: to };
  const words = recapWords;
  const pickings = pickingsBetween(book, from, to);
  const whole = from === season.from;
  const grounds = pickings.map(({ note, private: isPrivate }) => ({
    note,
    private: isPrivate && pickings.every((one) => one.private),
  }));
  const facts = { season: season.label, from, to, whole, past, finished: whole && past, lastYear: season.year - 1 };
  if (pickings.length === 0) {
    const [event] = betweenDays(book.events, from, to);
    return say(words.total({ ...facts, grams: 0, stems: 0, pickings: 0 }, voice), [
      event ?? { place: { file: "notes", line: 1, column: 1 } },
    ]);
  }
  const { now, lastYear, meanGrams } = compareHarvest(book, season, to);
  const stems = pickings.reduce(
    (sum, { harvest, crop }) =>
      sum +
      (harvest.unit === "stem" && book.garden.crops.get(crop ?? "")?.use === "flower"
        ? (harvest.count?.value ?? 0)
        : 0),
    0,
  );
  const compared = whole && now.grams > 0;
  return say(
    words.total(
      {
        ...facts,
        grams: pickings.reduce((sum, { harvest }) => sum + (harvest.grams ?? 0), 0),
        stems,
        pickings: pickings.length,
        lastYearGrams: compared && lastYear !== undefined && lastYear.grams > 0 ? lastYear.grams : undefined,
        mean: compared && meanGrams !== undefined && meanGrams.seasons > 1 ? meanGrams : undefined,
      },
      voice,
    ),
    grounds,
  );
}

function carriedBy({
  book,
  season,
  from,
  to,
}: Pick<Material, "book" | "season" | "from" | "to">): Sentence | undefined {
  const { settings } = book.garden;
  const { varieties } = seasonResults(book, season, to, from);
  const [most, another] = varieties;
  if (most?.share === undefined || another === undefined || most.sum.grams <= 0) return undefined;
  const grounds = betweenDays(book.pickings, from, to).filter(({ variety }) => variety === most.id);
  const text = recapWords.gaveMost(most.said, most.sum.grams, Math.round(most.share * 100), {
    settings,
    day: to,
  });
  return { ...say(text, grounds), private: most.private };
}

function setbackSaid(losses: readonly LossRow[], crops: Garden["crops"]): Sentence {
  const shown = losses.filter(({ sentence }) => !sentence.private);
  const taken = shown
    .filter(({ plants }) => plants > 0)
    .slice(0, 2)
    .map(({ crop, ...row }) => ({ ...row, crop: crop === undefined ? undefined : crops.get(crop) }));
  const open = shown.filter(({ standing }) => standing === "open").map(({ cause }) => cause);
  const first = shown[0]?.sentence ?? losses[0]?.sentence;
  return {
    text: recapWords.setbacks(taken, open),
    sources: shown.slice(0, 4).flatMap(({ sentence }) => sentence.sources),
    private: first?.private ?? false,
  };
}

function trialsSaid(trials: readonly TrialResult[]): Sentence | undefined {
  const shown = trials.filter((one) => !one.private);
  if (shown.length === 0) return undefined;
  const titles = (status: TrialResult["trial"]["status"]) =>
    shown.filter(({ trial }) => trial.status === status).map(({ trial }) => trial.title);
  const [settled, running] = [titles("settled"), titles("running")];
  if (settled.length + running.length === 0) return undefined;
  return say(
    recapWords.trials(settled, running),
    shown.map(({ trial }) => trial),
  );
}
