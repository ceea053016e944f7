/** The season in one paragraph. */
import { capital, sayList, sayNumber, sayPlural, sayWeight } from "../timeline/index.ts";
import { dayOnly, type Sentence, type Speech, say, sayPickings } from "../tour/index.ts";
import { compareHarvest } from "./comparisons.ts";
import type { Material } from "./material.ts";
import type { LossRow } from "./recap.ts";
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
    ...(losses[0] === undefined ? [] : [setbackSaid(losses)]),
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
  const { settings } = book.garden;
  const speech: Speech = { settings, day: to };
  const pickings = pickingsBetween(book, from, to);
  const whole = from === season.from;
  const grounds = pickings.map(({ note, private: isPrivate }) => ({
    note,
    private: isPrivate && pickings.every((one) => one.private),
  }));
  const finished = whole && past;
  const head = whole
    ? finished
      ? `The season of ${season.label}`
      : `By ${dayOnly(to, speech)} the garden`
    : `From ${dayOnly(from, speech)} to ${dayOnly(to, speech)} the garden`;
  if (pickings.length === 0) {
    const [event] = book.events.filter(({ day }) => day >= from && day <= to);
    const told = `${head} ${finished ? "brought in" : past ? "gave" : "has given"} nothing that was noted.`;
    return say(told, [event ?? { place: { file: "notes", line: 1, column: 1 } }]);
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
  const grams = pickings.reduce((sum, { harvest }) => sum + (harvest.grams ?? 0), 0);
  const gave = finished ? "brought in" : past ? "gave" : "has given";
  const parts = [
    ...(grams > 0 ? [sayWeight(grams, settings.units)] : []),
    ...(stems > 0 ? [`${sayPlural(stems, "stem", "stems")} of flowers`] : []),
  ];
  const amount =
    parts.length === 0
      ? sayPlural(pickings.length, "picking", "pickings")
      : `${sayList(parts)} ${sayPickings(pickings.length)}`;
  const then =
    whole && now.grams > 0 && lastYear !== undefined && lastYear.grams > 0
      ? `, against ${sayWeight(lastYear.grams, settings.units)}${finished ? ` in ${String(season.year - 1)}` : " by the same day last year"}`
      : "";
  const mean =
    whole && meanGrams !== undefined && meanGrams.seasons > 1 && now.grams > 0
      ? ` and ${sayWeight(meanGrams.grams, settings.units)} in the mean of ${sayNumber(meanGrams.seasons)} earlier seasons`
      : "";
  return say(`${head} ${gave} ${amount}${then}${mean}.`, grounds);
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
  const share = Math.round(most.share * 100);
  const grounds = book.pickings.filter(({ variety, day }) => variety === most.id && day >= from && day <= to);
  const part = share < 1 ? "" : `, ${share} % of all that was weighed`;
  const told = say(`The ${most.said} gave most, ${sayWeight(most.sum.grams, settings.units)}${part}.`, grounds);
  return { ...told, private: most.private };
}

/** "Slugs took eleven plants, the gale eight; leek moth, clubroot and powdery mildew are not over." */
function setbackSaid(losses: readonly LossRow[]): Sentence {
  const shown = losses.filter(({ sentence }) => !sentence.private);
  const taken = shown.filter(({ plants }) => plants > 0).slice(0, 2);
  const open = shown.filter(({ standing }) => standing === "open").map(({ cause }) => cause);
  const lost = taken.map(({ cause, plants, noted }, index) => {
    const many = sayPlural(plants, index === 0 ? "plant" : "more", index === 0 ? "plants" : "more");
    if (!noted)
      return `${index === 0 ? "" : "and "}${many} ${plants === 1 ? "was" : "were"} lost without a cause noted`;
    return `${cause} ${index === 0 || taken[0]?.noted === false ? `took ${sayPlural(plants, "plant", "plants")}` : sayNumber(plants)}`;
  });
  const goingOn =
    open.length === 0
      ? ""
      : `${sayList(open)} ${open.length === 1 && !/[^s]s$/.test(open[0] ?? "") ? "is" : "are"} not over`;
  const text = [lost.join(", "), goingOn].filter((part) => part !== "").join("; ");
  const first = shown[0]?.sentence ?? losses[0]?.sentence;
  return {
    text: text === "" ? "" : `${capital(text)}.`,
    sources: shown.slice(0, 4).flatMap(({ sentence }) => sentence.sources),
    private: first?.private ?? false,
  };
}

function trialsSaid(trials: readonly TrialResult[]): Sentence | undefined {
  const shown = trials.filter((one) => !one.private);
  if (shown.length === 0) return undefined;
  const settled = shown.filter(({ trial }) => trial.status === "settled");
  const running = shown.filter(({ trial }) => trial.status === "running");
  const parts = [
    settled.length === 0
      ? ""
      : `${sayPlural(settled.length, "trial was settled", "trials were settled")}: ${sayList(settled.map(({ trial }) => trial.title))}`,
    running.length === 0
      ? ""
      : `${sayPlural(running.length, "trial is", "trials are")} running: ${sayList(running.map(({ trial }) => trial.title))}`,
  ].filter((part) => part !== "");
  if (parts.length === 0) return undefined;
  return say(
    `${capital(parts.join("; "))}.`,
    shown.map(({ trial }) => trial),
  );
}
