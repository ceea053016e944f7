/** Makes the recap of a season, of a month of it, or of the days since the last recap, from the garden and its weather. */

import {
  allOf,
  cautionsFor,
  closingCaution,
  namesPoison,
  noWeather,
  preservingCautions,
  type Weather,
} from "../almanac/index.ts";
import { addDays, daysInMonth, yearOf } from "../calendar.ts";
import { type Fitting, fitToTarget, secondsToSay } from "../films/index.ts";
import { earlier, type Season, seasonBeginning } from "../garden/index.ts";
import { capital, type Sentence, say, sayDay, sayMonth } from "../language/index.ts";
import type { Day, Episode, Garden } from "../model.ts";
import { betweenDays, compare } from "../order.ts";
import { backTest } from "./back-test.ts";
import { recapCharts } from "./chart-data.ts";
import { photoSets } from "./growth-photos.ts";
import { lossRows } from "./loss-rows.ts";
import type { DraftSegment, Material } from "./material.ts";
import { needs } from "./needs.ts";
import { paragraphOf } from "./paragraph.ts";
import { noPlan, planDraft } from "./plan-draft.ts";
import { promiseRows } from "./promises.ts";
import type { NextYear, Recap, RecapPoint, Segment } from "./recap.ts";
import { methods } from "./recap-methods.ts";
import { recapWords } from "./recap-words/words.ts";
import { resultTables } from "./result-rows.ts";
import { diseaseAdvice, rotation } from "./rotation.ts";
import { type SeasonBook, seasonBook } from "./season-book.ts";
import { seedList, seedListSaid } from "./seed-list.ts";
import { draftSegments } from "./segments.ts";
import { soilOf } from "./soil.ts";
import { standings } from "./standings.ts";
import { forecastRows, frostSentence, sowingLeft } from "./still-to-come.ts";
import { credits } from "./thanks.ts";
import { trialResult } from "./trial-results.ts";
import { weatherStory } from "./weather-story.ts";

export interface RecapRequest {
  readonly season: Season;
  /** First day of a month, for the recap of that month. */
  readonly month?: Day | undefined;
  /** Begins after the last recap that was published. */
  readonly sinceLast?: boolean | undefined;
  readonly today: Day;
  /** Seconds the film should last. */
  readonly target?: number | undefined;
  /** Nothing that is the person's own business alone: the draft of next year's beds, which takes longest, is left out. */
  readonly forViewers?: boolean | undefined;
}

/** Seconds that each part of the film takes beside its words: its title and the cut (common practice). */
const segmentSeconds = 6;

export function makeRecap(garden: Garden, weather: Weather | undefined, request: RecapRequest): Recap {
  return gatherRecap(garden, weather, request).recap;
}

/** The report, and what it was made from: the threads of the cards are drawn from the same. */
export function gatherRecap(
  garden: Garden,
  weather: Weather | undefined,
  request: RecapRequest,
): { readonly recap: Recap; readonly material: Material } {
  const { season, today } = request;
  const span = spanOf(garden, request);
  const book = seasonBook(garden, weather ?? noWeather, span.to);
  const finished = season.to <= today && span.to === season.to;
  const past = finished || span.to < today;
  const material = gather(book, request, span, past);
  const drafts = draftSegments(material);
  const { segments, leftOut, seconds } = fitted(garden, drafts, request.target);
  const charts = recapCharts(book, season, span.from, span.to);
  const recap: Recap = {
    recap: span.name,
    title: titleOf(garden, season, span, finished),
    kind: span.kind,
    season,
    from: span.from,
    to: span.to,
    spanText: spanText(garden, span.from, span.to),
    finished,
    target: request.target,
    opening: openings(material),
    paragraph: material.paragraph,
    segments,
    leftOut,
    seconds,
    results: resultTables(book, season, span.from, span.to),
    losses: material.losses,
    trials: material.trials,
    promises: material.promises,
    forecasts: material.forecasts,
    forecastsChecked: material.forecasts.length === 0 ? undefined : backTest(book),
    nextYear: material.nextYear,
    questions: material.credits.questions,
    thanks: material.credits.thanks,
    disclosures: material.credits.disclosures,
    cautions: cautions(material),
    methods: methods(material),
    charts,
  };
  return { recap, material };
}

interface Span {
  readonly kind: Recap["kind"];
  readonly name: string;
  readonly from: Day;
  readonly to: Day;
}

/** Of a whole season: what its page and files are called. */
export function recapName({ label }: Season): string {
  return label.replace("/", "-");
}

function spanOf(garden: Garden, { season, month, sinceLast, today }: RecapRequest): Span {
  const name = recapName(season);
  const to = earlier(season.to, today < season.from ? season.from : today);
  if (month !== undefined) {
    const last = `${month.slice(0, 8)}${daysInMonth(yearOf(month), Number(month.slice(5, 7)))}`;
    return { kind: "month", name: month.slice(0, 7), from: month, to: earlier(last, to) };
  }
  if (sinceLast === true) {
    const last = lastRecap(garden, to);
    const after = last === undefined ? season.from : addDays(last.day, 1);
    const from = earlier(after, to);
    if (last !== undefined) return { kind: "since the last recap", name: `${name}-since-${last.day}`, from, to };
  }
  return { kind: "season", name, from: season.from, to };
}

/** The last published film that calls itself a recap, by its folder's name or its title. */
export function lastRecap(garden: Garden, before: Day): Episode | undefined {
  return [...garden.episodes.values()]
    .filter(
      ({ id, title, status, day }) =>
        status === "published" &&
        day < before &&
        /\b(?:recap|round.?up|review|look(?:ing)? back|the year)\b/i.test(`${id.replaceAll("-", " ")} ${title}`),
    )
    .sort((a, b) => compare(a.day, b.day) || compare(a.id, b.id))
    .at(-1);
}

function gather(
  book: SeasonBook,
  { season, today, forViewers = false }: RecapRequest,
  { kind, from, to }: Span,
  past: boolean,
): Material {
  const { garden } = book;
  const trials = [...garden.trials.values()]
    .filter(({ started }) => (started ?? "") <= to)
    .map((trial) => trialResult(book, trial))
    .filter(
      ({ trial, measures }) =>
        trial.status === "running" || (trial.verdictDue ?? "") >= from || touched(measures, book, from),
    );
  const base = {
    book,
    season,
    from,
    to,
    kind,
    past,

    weather: weatherStory(book, season, from, to),
    standings: standings(book, season, from, to),
    losses: lossRows(book, season, from, to, past),
    trials,
    promises: promiseRows(book, from, to),
    forecasts: past ? [] : forecastRows(book, to),
    sowing: past ? [] : [frostSentence(book, to), sowingLeft(book, to)].filter((one) => one !== undefined),
  };
  return {
    ...base,
    paragraph: paragraphOf(base).filter(({ text }) => text !== ""),
    photos: photoSets(book, from, to),
    nextYear: nextYear(book, season, !forViewers && !isOver(garden, season.year + 1, today)),
    credits: credits(book, from, to),
  };
}

function touched(measures: Material["trials"][number]["measures"], book: SeasonBook, from: Day): boolean {
  const lines = new Set(
    measures.flatMap(({ arms }) =>
      arms.flatMap(({ figures }) => figures.map(({ source }) => `${source.file}:${source.line}`)),
    ),
  );
  return betweenDays(book.events, from, book.until).some(({ place }) => lines.has(`${place.file}:${place.line}`));
}

/** Nobody plans the beds of a season that is over. */
function isOver({ settings }: Garden, year: number, today: Day): boolean {
  return seasonBeginning(year, settings.seasonStarts).to < today;
}

function nextYear(book: SeasonBook, season: Season, isPlanned: boolean): NextYear {
  const turned = rotation(book, season.year);
  const wanted = needs(book);
  const seeds = seedList(book, season.year);
  return {
    planned: plannedIn(book, season),
    needs: wanted,
    rotation: {
      broken: turned.conflicts
        .toSorted(
          (a, b) =>
            Number(b.disease !== undefined) - Number(a.disease !== undefined) || a.year - a.last - (b.year - b.last),
        )
        .map(({ sentence }) => sentence),
      notYet: Object.fromEntries(turned.notYet),
    },
    advice: [...diseaseAdvice(book, season.year), ...turned.noCure],
    soil: soilOf(book, season.year).flatMap(({ sentences }) => sentences),
    plan: isPlanned ? planDraft(book, season.year, turned, wanted) : noPlan(season.year),
    seeds,
    seedsSaid: seedListSaid(seeds),
  };
}

/** Plans of the season that is told: each is shown as planned, whatever has been done since. */
function plannedIn({ garden, until }: SeasonBook, { from, to }: Season): readonly Sentence[] {
  const words = recapWords;
  return garden.plans
    .filter(({ said }) => said >= from && said <= to && said <= until)
    .map((plan) => say(words.planned(plan.what), [plan]));
}

/** What the film may begin with: the best, the worst, what is owed; each only where there is one. */
function openings({ standings: { best, worst }, promises, weather, paragraph }: Material): readonly Sentence[] {
  const owed = promises.find(({ standing }) => standing === "broken");
  const lines: readonly (Sentence | undefined)[] = [best[0], worst[0], owed, weather?.short, paragraph[0]];
  return lines
    .filter((one): one is Sentence => one !== undefined && !one.private && one.text !== "")
    .slice(0, 3)
    .map(({ text, sources, private: isPrivate }) => ({ text, sources, private: isPrivate }));
}

function fitted(garden: Garden, drafts: readonly DraftSegment[], target: number | undefined) {
  const rate = garden.settings.narrationRate;
  const rows = drafts.map((draft, at) => ({
    id: `R${at + 1}`,
    draft,
    points: draft.points.map((one, index) => ({
      ...one,
      id: `R${at + 1}.${index + 1}`,
      seconds: Math.max(1, secondsToSay(one.sentence.text, rate)),
    })),
  }));
  const candidates = rows.flatMap(({ id: stop, points }): Fitting[] =>
    points.map(({ id, seconds, value, level }) => ({ id, stop, seconds, value, must: level === "must" })),
  );
  const chosen = new Set(
    target === undefined
      ? candidates.map(({ id }) => id)
      : fitToTarget(candidates, target, () => segmentSeconds).chosen,
  );
  const segments = rows.map(({ id, draft, points }, at): Segment => {
    const show = points.map(
      ({ id: own, sentence, level, why, value, seconds }): RecapPoint => ({
        text: sentence.text,
        sources: sentence.sources,
        private: sentence.private,
        id: own,
        level,
        why,
        value,
        seconds,
        chosen: chosen.has(own),
      }),
    );
    const said = show.filter((one) => one.chosen);
    return {
      id,
      number: at + 1,
      kind: draft.kind,
      title: draft.title,
      show,
      photos: draft.photos,
      seconds: said.length === 0 ? 0 : segmentSeconds + total(said.map(({ seconds }) => seconds)),
    };
  });
  const all = segments.flatMap(({ show }) => show);
  const upTo = (levels: readonly string[]) => {
    const told = segments.map(({ show }) => show.filter(({ level }) => levels.includes(level)));
    return (
      total(told.flat().map(({ seconds }) => seconds)) + segmentSeconds * told.filter((show) => show.length > 0).length
    );
  };
  return {
    segments,
    leftOut: all.filter((one) => !one.chosen),
    seconds: {
      must: upTo(["must"]),
      should: upTo(["must", "should"]),
      all: upTo(["must", "should", "could"]),
      chosen: total(segments.map(({ seconds }) => seconds)),
    },
  };
}

function total(numbers: readonly number[]): number {
  return numbers.reduce((sum, one) => sum + one, 0);
}

/** Cautions for the plants that are told of, the work of the time, and jars when a goal wants them. */
function cautions({
  book,
  standings: { best, worst },
  from,
  to,
  nextYear: { needs: wanted },
}: Material): readonly Sentence[] {
  const told = new Set([...best, ...worst].map(({ variety }) => variety));
  const lots = book.lots.filter(({ planting }) => told.has(planting.variety ?? ""));
  const news = betweenDays(book.events, from, to);
  const jars = wanted.flatMap(({ cautions: own, sentence }) => own.map((text) => ({ ...sentence, text })));
  const { settings } = book.garden;
  const table = cautionsFor({ growing: lots, news, garden: book.garden });
  const kept = wanted.flatMap(({ goal, sentence }) =>
    preservingCautions(goal.text).map((text) => ({ ...sentence, text })),
  );
  const closing = namesPoison(table) ? [{ text: closingCaution(settings), sources: [], private: false }] : [];
  const all = [...allOf(table), ...kept, ...jars, ...closing];
  return all.filter((one, index) => all.findIndex(({ text }) => text === one.text) === index);
}

function titleOf(garden: Garden, season: Season, { kind, from, to }: Span, finished: boolean): string {
  const { name } = garden.settings;
  if (kind === "month") return `${name}: ${capital(sayMonth(from, { language: garden.settings.language }))}`;
  if (kind === "since the last recap") return `${name}: since the last recap, to ${sayDay(to, garden.settings)}`;
  return `${name}: the season of ${season.label}${finished ? "" : " so far"}`;
}

/** "1 January to 18 July 2026" */
function spanText(garden: Garden, from: Day, to: Day): string {
  const { language } = garden.settings;
  if (from === to) return sayDay(to, { language });
  return `${yearOf(from) === yearOf(to) ? sayDay(from, { language, near: to }) : sayDay(from, { language })} to ${sayDay(to, { language })}`;
}
