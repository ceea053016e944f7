/** The parts of a recap film in their order, each with what there is to say, how strongly and why. */
import type { Day } from "../model.ts";
import { capital, sayList, sayNumber, sayPlural, sayWeight } from "../timeline/index.ts";
import {
  dayOnly,
  type Level,
  type Sentence,
  type Speech,
  say,
  sayHarvest,
  sayPickings,
  theBed,
} from "../tour/index.ts";
import { compareHarvest } from "./comparisons.ts";
import type { ForecastRow, LossRow, NextYear, PhotoSet, PromiseRow, Recap, SegmentKind } from "./recap.ts";
import { pickingsBetween, seasonResults } from "./results.ts";
import type { SeasonBook } from "./season-book.ts";
import type { Season } from "./seasons.ts";
import type { Standings } from "./standings.ts";
import type { Credits } from "./thanks.ts";
import type { TrialResult } from "./trial-results.ts";
import type { WeatherStory } from "./weather-story.ts";

export interface DraftPoint {
  readonly sentence: Sentence;
  readonly level: Level;
  readonly why: string;
  readonly value: number;
}

export interface DraftSegment {
  readonly kind: SegmentKind;
  readonly title: string;
  readonly points: readonly DraftPoint[];
  readonly photos: readonly PhotoSet[];
}

/** What the segments are drafted from. */
export interface Material {
  readonly book: SeasonBook;
  readonly season: Season;
  readonly from: Day;
  readonly to: Day;
  readonly kind: Recap["kind"];
  /** The days told are over. */
  readonly past: boolean;
  readonly paragraph: readonly Sentence[];
  readonly weather?: WeatherStory | undefined;
  readonly standings: Standings;
  readonly losses: readonly LossRow[];
  readonly photos: readonly PhotoSet[];
  readonly trials: readonly TrialResult[];
  readonly promises: readonly PromiseRow[];
  readonly forecasts: readonly ForecastRow[];
  readonly sowing: readonly Sentence[];
  readonly nextYear: NextYear;
  readonly credits: Credits;
}

const point = (sentence: Sentence, level: Level, why: string, value: number): DraftPoint => ({
  sentence,
  level,
  why,
  value,
});

/** A value that falls from the first to the last of a list, so that a short film keeps the first. */
const falling = (start: number, index: number) => Math.max(1, start - index * 4);

const seasonTitles = {
  season: "The season",
  month: "The month",
  "since the last recap": "Since the last recap",
} as const;

export function draftSegments(material: Material): readonly DraftSegment[] {
  const segments: DraftSegment[] = [
    segment(
      "season",
      seasonTitles[material.kind],
      material.paragraph.map((one, index) => point(one, "must", "the season in short", 100 - index)),
    ),
    segment("weather", "The weather", weatherPoints(material)),
    segment(
      "best",
      "What did best",
      material.standings.best.map((one, index) =>
        point(one, index === 0 ? "must" : "should", one.why, falling(80, index)),
      ),
    ),
    segment("worst", "What went wrong", worstPoints(material)),
    segment("results", "What it came to", resultPoints(material)),
    {
      ...segment(
        "growth",
        "The same spot through the season",
        material.photos.map((one, index) =>
          point(one, index === 0 ? "should" : "could", "seen from one spot", falling(46, index)),
        ),
      ),
      photos: material.photos,
    },
    segment("trials", "Trials", material.trials.flatMap(trialPoints)),
    segment(
      "promises",
      "Promises",
      material.promises.map((one) => promisePoint(one, material.from)),
    ),
    segment("to come", "Still to come", comingPoints(material)),
    segment("next year", "Next year", nextYearPoints(material)),
    segment("questions", "Questions and thanks", [
      ...material.credits.questions.map((one, index) => point(one, "could", "viewers asked", falling(38, index))),
      ...material.credits.thanks.map((one, index) =>
        point(one, "should", "somebody gave or lent it", falling(50, index)),
      ),
    ]),
  ];
  return segments
    .map((one) => ({ ...one, points: one.points.filter(({ sentence }) => !sentence.private && sentence.text !== "") }))
    .filter(({ points }) => points.length > 0);
}

function segment(kind: SegmentKind, title: string, points: readonly DraftPoint[]): DraftSegment {
  return { kind, title, points, photos: [] };
}

function weatherPoints({ weather }: Material): readonly DraftPoint[] {
  const sentences = weather?.sentences ?? [];
  return sentences.map((one, index) =>
    point(
      one,
      /frost|degree days/.test(one.text) && index < 3 ? "should" : "could",
      "the year's weather",
      falling(48, index),
    ),
  );
}

/** Varieties first, then causes that the varieties have not told. */
function worstPoints({ standings, losses, book }: Material): readonly DraftPoint[] {
  const told = new Set(standings.worst.map(({ variety }) => book.garden.varieties.get(variety)?.title ?? ""));
  const causes = losses.filter(
    ({ what, standing, plants }) =>
      (standing === "open" || plants > 1) &&
      !what.every((name) => [...told].some((title) => title !== "" && name.includes(title))),
  );
  return [
    ...standings.worst.map((one, index) => point(one, index === 0 ? "must" : "should", one.why, falling(72, index))),
    ...causes.map(({ sentence, standing }, index) =>
      point(
        sentence,
        standing === "open" ? "should" : "could",
        standing === "open" ? "it is not over" : "plants were lost",
        falling(56, index),
      ),
    ),
  ];
}

/** Beds told at most. */
const mostBeds = 5;

function resultPoints(material: Material): readonly DraftPoint[] {
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
          : `, ${sayWeight(one.gramsPerSquareMetre, settings.units)} from each square metre`;
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

function trialPoints({ trial, measures, besides, own, remarks }: TrialResult): readonly DraftPoint[] {
  const asked = /[?!.]$/.test(trial.question.trim()) ? trial.question.trim() : `${trial.question.trim()}?`;
  const [first, ...rest] = measures;
  const question = say(asked, [trial]);
  return [
    point(question, "must", "a trial of this season", 78),
    ...(first === undefined ? [] : [point(first.verdict, "must", "what the figures can tell", 77)]),
    ...rest.map(({ verdict }) => point(verdict, "should", "what the figures can tell", 52)),
    ...(besides === undefined ? [] : [point(besides, "should", "it weighs in as well", 51)]),
    ...remarks.map((one) => point(one, "could", "noted beside the figures", 24)),
    ...(own === undefined
      ? []
      : [point({ ...own, text: `Your own verdict: “${own.text}”` }, "should", "you settled it", 54)]),
  ];
}

function promisePoint(row: PromiseRow, from: Day): DraftPoint {
  if (row.standing === "broken") {
    const now = row.due !== undefined && row.due >= from;
    return point(row, now ? "must" : "should", "still owed", now ? 74 : 50);
  }
  if (row.standing === "open" && row.due === undefined) return point(row, "could", "promised", 34);
  return row.standing === "open" ? point(row, "should", "promised", 44) : point(row, "could", "promised and kept", 36);
}

/** Forecasts told; the table has all. */
const mostForecasts = 6;

function comingPoints({ forecasts, sowing, past, to }: Material): readonly DraftPoint[] {
  if (past) return [];
  return [
    ...soonest(forecasts, to)
      .slice(0, mostForecasts)
      .map((one, index) => point(one, index < 3 ? "should" : "could", "it is on its way", falling(42, index))),
    ...sowing.map((one) => point(one, "could", "while there is time", 28)),
  ];
}

/** What is still ahead before what should have come already; two lots of one sowing once. */
function soonest(forecasts: readonly ForecastRow[], on: Day): readonly ForecastRow[] {
  const once = forecasts.filter((one, index) => forecasts.findIndex(({ text }) => text === one.text) === index);
  return [...once.filter(({ to }) => to >= on), ...once.filter(({ to }) => to < on)];
}

/** Rotation broken is told for the beds where it matters most; the table has the others. */
const mostBroken = 3;

function nextYearPoints({ nextYear, kind }: Material): readonly DraftPoint[] {
  if (kind !== "season") return nextYear.advice.map((one) => point(one, "should", "it stays in the soil", 62));
  const { advice, rotation, needs, soil, plan, seedsSaid } = nextYear;
  const shown = rotation.broken.slice(0, mostBroken);
  const rest = rotation.broken.length - shown.length;
  const [ground] = rotation.broken;
  const more =
    rest <= 0 || ground === undefined
      ? []
      : [
          point(
            {
              ...ground,
              text: `${capital(sayPlural(rest, "more bed or family", "more beds and families"))} came back too soon; the table has them.`,
            },
            "could",
            "rotation",
            14,
          ),
        ];
  return [
    ...advice.map((one) => point(one, "should", "it stays in the soil", 62)),
    ...shown.map((one, index) =>
      point(one, index === 0 ? "should" : "could", "the bed should change", falling(48, index)),
    ),
    ...more,
    ...soil.map((one) => point(one, "could", "soil", 26)),
    ...needs.map(({ sentence, cautions }, index) =>
      point(
        { ...sentence, text: [sentence.text, ...cautions].join(" ") },
        "could",
        "you want it next year",
        falling(40, index),
      ),
    ),
    ...plan.compromises.map((one, index) => point(one, "could", "the draft for next year", falling(22, index))),
    ...plan.unread.map((one) => point(one, "could", "a pin that was not understood", 20)),
    ...(seedsSaid === undefined
      ? []
      : [point(say(seedsSaid, [{ place: { file: "garden.md", line: 1, column: 1 } }]), "could", "the seed order", 32)]),
  ];
}

/** The season in one paragraph. */
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
    const told = `${head} ${finished ? "brought no pickings" : "gave no pickings"} that were noted.`;
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
  const [most] = varieties.filter(({ private: isPrivate }) => !isPrivate);
  if (most?.share === undefined || most.sum.grams <= 0) return undefined;
  const share = Math.round(most.share * 100);
  const grounds = book.pickings.filter(({ variety, day }) => variety === most.id && day >= from && day <= to);
  const part = share < 1 || varieties.length < 2 ? "" : `, ${share} % of all that was weighed`;
  return say(`The ${most.said} gave most, ${sayWeight(most.sum.grams, settings.units)}${part}.`, grounds);
}

/** "Slugs took eleven plants, the gale eight; leek moth, clubroot and powdery mildew are not over." */
function setbackSaid(losses: readonly LossRow[]): Sentence {
  const shown = losses.filter(({ sentence }) => !sentence.private);
  const taken = shown.filter(({ plants }) => plants > 0).slice(0, 2);
  const open = shown.filter(({ standing }) => standing === "open").map(({ cause }) => cause);
  const lost = taken.map(
    ({ cause, plants }, index) =>
      `${cause} ${index === 0 ? `took ${sayPlural(plants, "plant", "plants")}` : sayNumber(plants)}`,
  );
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
