/** A recap as a page: the public one tells viewers, the private one has levels, sources, prices, seed list and notes. */

import type { Weather } from "../../almanac/index.ts";
import { type Season, seasonOf } from "../../garden/index.ts";
import { capital, digits, groundUnit, type Locale, localeOf, sayFromGround } from "../../language/index.ts";
import type { Day, EventKind, GardenSettings } from "../../model.ts";
import {
  makeRecapCards,
  type Recap,
  type RecapPoint,
  type ResultRow,
  recapName,
  type Segment,
} from "../../season/index.ts";
import { storyHtml } from "../story-html.ts";
import { unbroken } from "../unbroken.ts";
import { siteWords, type Words } from "../words/index.ts";
import { calendarCharts, heatChart, weekChart } from "./recap-charts.ts";
import type { ChartFigure, DataTable, RecapNote, RecapPage, RecapPictures, RecapSection } from "./recap-shapes.ts";
import { threadOf } from "./recap-threads.ts";
import { seasonRibbon } from "./ribbon/season-ribbon.ts";
import type { Link } from "./shapes.ts";
import { trialCharts } from "./trial-charts.ts";
import type { View } from "./view.ts";

/** Newest first, one for each season that has figures. */
export function recapPages(view: View, weather: Weather, isPrivate: boolean): readonly RecapPage[] {
  return seasonsWithFigures(view).map((season) => {
    const cards = makeRecapCards(view.garden, weather, { season, today: view.today, forViewers: !isPrivate });
    return {
      ...recapPage(cards.dossier, view.garden.settings, isPrivate, view),
      ribbon: isPrivate ? undefined : seasonRibbon(view, season, weather),
      year: cards.cover.year === undefined ? undefined : unbroken(cards.cover.year.text),
      threads: cards.cards.map((card) => threadOf(card, view, season)),
    };
  });
}

/** Ways to the same pages, for where only their names are told. */
export function recapLinks(view: View): readonly Link[] {
  const { recap } = view.words;
  return seasonsWithFigures(view).map((season) => ({
    href: view.links.recap(recapName(season)),
    text: season.to <= view.today ? season.label : recap.soFar(season.label),
  }));
}

const NEWS: ReadonlySet<EventKind> = new Set(["picked", "planted", "sowed"]);

/** Newest first: those in which anything was picked, and the one that runs as soon as anything is sown or planted. */
export function seasonsWithFigures({ garden, today }: View): readonly Season[] {
  const running = seasonOf(today, garden.settings.seasonStarts);
  const news = garden.events.filter(
    ({ day, kind }) => day <= today && NEWS.has(kind) && (kind === "picked" || day >= running.from),
  );
  const seasons = news.map(({ day }) => seasonOf(day, garden.settings.seasonStarts));
  return [...new Map(seasons.map((season) => [season.year, season])).values()].sort((a, b) => b.year - a.year);
}

/** A page's words and how it says numbers and days. */
interface Voice {
  readonly settings: GardenSettings;
  readonly locale: Locale;
  readonly words: Words;
}

/** Without a view the page has no pictures and no links: it can be carried about as one file. */
export function recapPage(recap: Recap, settings: GardenSettings, isPrivate: boolean, view?: View): RecapPage {
  const voice = { settings, locale: localeOf(settings), words: siteWords };
  const name = recap.finished ? recap.season.label : voice.words.recap.soFar(recap.season.label);
  const sections = recap.segments
    .filter(({ kind, seconds }) => kind !== "season" && (seconds > 0 || !isPrivate))
    .map((segment) => sectionOf(recap, segment, voice, isPrivate, view))
    .filter((section) => section !== undefined);
  return {
    id: recap.recap,
    href: view?.links.recap(recap.recap) ?? "",
    name,
    title: recap.kind === "season" ? voice.words.recap.whole(settings.name, name) : recap.title,
    span: sayDays(recap, voice),
    paragraph: unbroken(
      recap.paragraph
        .filter((one) => isPrivate || !one.private)
        .map(({ text }) => text)
        .join(" "),
    ),
    threads: [],
    opening: isPrivate ? recap.opening.map(({ text }) => unbroken(text)) : [],
    // Viewers have it as the ribbon of each bed.
    sections: [...sections, ...(isPrivate ? [...ownSections(recap, voice), ...calendarSection(recap, voice)] : [])],
    methods: recap.methods.map(unbroken),
    notes: isPrivate && view !== undefined ? notesOf(view, recap) : [],
  };
}

/** "1 January to 18 July 2026" */
function sayDays({ from, to }: Recap, { locale, words }: Voice): string {
  return from === to ? locale.day(to) : words.sentences.compared.span(locale.day(from, to), locale.day(to));
}

/** What viewers have no use for: jars, beds of next year, seed orders. */
const ownKinds: ReadonlySet<Segment["kind"]> = new Set(["questions"]);

function sectionOf(
  recap: Recap,
  segment: Segment,
  voice: Voice,
  isPrivate: boolean,
  view: View | undefined,
): RecapSection | undefined {
  const { kind, show } = segment;
  if (!isPrivate && ownKinds.has(kind) && recap.thanks.length === 0) return undefined;
  const told = show.filter((point) =>
    isPrivate ? point.chosen : !point.private && isForViewers(segment, point, recap),
  );
  const pictures = view === undefined ? [] : picturesOf(segment, view);
  const charts = chartsOf(recap, segment, voice);
  const tables = kind === "results" ? resultTables(recap, voice, isPrivate) : [];
  if (told.length + charts.length + tables.length + pictures.length === 0) return undefined;
  return {
    id: kind.replaceAll(" ", "-"),
    title:
      kind === "questions" && told.every(({ text }) => recap.thanks.some((one) => one.text === text))
        ? voice.words.recap.thanks
        : voice.words.recap.parts[kind],
    // A sentence that stands below its own photos is not told twice.
    lines: told
      .filter(({ text }) => !pictures.some((one) => one.text === unbroken(text)))
      .map((point) => ({
        text: unbroken(point.text),
        level: isPrivate ? voice.words.field.own.levels[point.level] : undefined,
        file: isPrivate ? placeOf(point, voice) : undefined,
      })),
    pictures,
    charts,
    tables,
  };
}

/** The draft, the needs and the seed order are the person's own business; what a bed teaches is not. */
function isForViewers({ kind }: Segment, point: RecapPoint, recap: Recap): boolean {
  if (kind === "next year") {
    return [...recap.nextYear.advice, ...recap.nextYear.rotation.broken].some(({ text }) => text === point.text);
  }
  return kind !== "questions" || recap.thanks.some(({ text }) => text === point.text);
}

function placeOf({ sources }: RecapPoint, { words }: Voice): string | undefined {
  const [first] = sources;
  if (first === undefined) return undefined;
  const more = sources.length - 1;
  return `${first.file}:${first.line}${more === 0 ? "" : ` ${words.field.own.moreLines(more)}`}`;
}

function picturesOf({ photos }: Segment, view: View): readonly RecapPictures[] {
  return photos.flatMap(({ bed, title, text, first, peak, last }) => {
    const shown = [first, peak, last].flatMap((one) => {
      const photo = one === undefined ? undefined : view.book.all.find(({ path }) => path === one.path);
      return photo === undefined ? [] : [view.book.picture(photo)];
    });
    return shown.length < 2
      ? []
      : [{ bed: { href: view.links.bed(bed), text: title }, text: unbroken(text), pictures: shown }];
  });
}

function chartsOf(recap: Recap, { kind }: Segment, voice: Voice): readonly ChartFigure[] {
  const { settings } = voice;
  switch (kind) {
    case "results":
      return [weekChart(recap.charts, settings, sayDays(recap, voice))].filter((chart) => chart !== undefined);
    case "weather":
      return [heatChart(recap.charts, settings)].filter((chart) => chart !== undefined);
    case "trials":
      return recap.trials.filter((trial) => !trial.private).flatMap((trial) => trialCharts(trial, settings));
    default:
      return [];
  }
}

function calendarSection(recap: Recap, { settings, words }: Voice): readonly RecapSection[] {
  const charts = calendarCharts(recap.charts, settings);
  if (charts.length === 0) return [];
  return [{ id: "calendar", title: words.recap.calendar, lines: [], pictures: [], charts, tables: [] }];
}

function resultTables({ results }: Recap, voice: Voice, isPrivate: boolean): readonly DataTable[] {
  const { varieties, crops, beds, sites } = results;
  const open = (rows: readonly ResultRow[]) => rows.filter((row) => isPrivate || !row.private);
  return [
    tableOf("variety", open(varieties), voice, isPrivate, "plant"),
    tableOf("crop", open(crops), voice, isPrivate, "plant"),
    tableOf("bed", open(beds), voice, isPrivate, "ground"),
    ...(sites.length < 2 ? [] : [tableOf("site", open(sites), voice, isPrivate, "none")]),
  ].filter(({ rows }) => rows.length > 0);
}

function tableOf(
  by: keyof Words["recap"]["tables"],
  rows: readonly ResultRow[],
  { settings, locale, words }: Voice,
  isPrivate: boolean,
  measure: "plant" | "ground" | "none",
): DataTable {
  const said = words.recap;
  const weight = (grams: number | undefined) => (grams === undefined ? "" : locale.weight(grams));
  const values = isPrivate && rows.some(({ value }) => value !== undefined);
  const day = (of: Day | undefined, near: Day | undefined) => (of === undefined ? "" : locale.day(of, near));
  const each = (row: ResultRow) =>
    measure === "ground"
      ? row.gramsPerSquareMetre === undefined
        ? ""
        : sayFromGround(row.gramsPerSquareMetre, locale.units)
      : row.gramsPerPlant !== undefined
        ? weight(row.gramsPerPlant)
        : row.gramsPerPiece === undefined
          ? ""
          : said.each(weight(row.gramsPerPiece));
  return {
    title: said.tables[by],
    head: [
      said.heads[by],
      said.picked,
      said.pickings,
      said.first,
      said.last,
      ...(measure === "none" ? [] : [measure === "ground" ? capital(`a ${groundUnit(settings)}`) : said.perPlant]),
      said.lastYearByThen,
      ...(values ? [said.worth] : []),
    ],
    rows: rows.map((row) => [
      row.title,
      row.picked,
      digits(row.pickings),
      day(row.first, row.last),
      day(row.last, row.last),
      ...(measure === "none" ? [] : [each(row)]),
      row.lastYear ?? "",
      ...(values ? [row.value ?? ""] : []),
    ]),
  };
}

/** What only the person sees: losses whole, forecasts, needs, plan, seed order, what must be said. */
function ownSections(recap: Recap, { locale, words }: Voice): readonly RecapSection[] {
  const said = words.field.own;
  const { losses, forecasts, nextYear, disclosures, cautions, leftOut, results } = recap;
  const section = (
    id: string,
    title: string,
    lines: readonly string[],
    tables: readonly DataTable[] = [],
  ): RecapSection[] =>
    lines.length + tables.length === 0
      ? []
      : [{ id, title, lines: lines.map((text) => ({ text })), pictures: [], charts: [], tables }];
  const day = (of: Day) => locale.day(of, recap.to);
  const { plan } = nextYear;
  return [
    ...section(
      "left-out",
      said.leftOut,
      leftOut.map(({ text }) => text),
    ),
    ...section("results-notes", said.readBy, results.remarks),
    ...section(
      "losses",
      said.losses,
      losses.map(({ sentence }) => sentence.text),
    ),
    ...(forecasts.length === 0
      ? []
      : section(
          "forecasts",
          said.forecasts,
          [],
          [
            {
              title: said.windows,
              head: said.windowHeads,
              rows: forecasts.map(({ planting, from, likely, to }) => [planting, day(from), day(likely), day(to)]),
            },
          ],
        )),
    ...section(
      "needs",
      said.wanted,
      nextYear.needs.flatMap(({ sentence, cautions: own }) => [sentence.text, ...own]),
    ),
    ...(plan.rows.length === 0
      ? []
      : section(
          "plan",
          said.draft(plan.year),
          [...plan.compromises, ...plan.unread].map(({ text }) => text),
          [
            {
              title: said.whoGoesWhere,
              head: said.draftHeads,
              rows: plan.rows.map(({ bed, title, crops }) => [
                title,
                crops
                  .map(({ name, plants, pinned }) => {
                    const crop = plants === undefined ? name : `${digits(plants)} ${name}`;
                    return pinned ? said.pinned(crop) : crop;
                  })
                  .join(", "),
                (nextYear.rotation.notYet[bed] ?? []).map(({ name, from }) => said.notBefore(name, from)).join("; "),
              ]),
            },
          ],
        )),
    ...(nextYear.seeds.length === 0
      ? []
      : section("seeds", said.seeds, nextYear.seedsSaid === undefined ? [] : [nextYear.seedsSaid], [
          {
            title: said.bySource,
            head: said.seedHeads,
            rows: nextYear.seeds.map(({ title, source, how, saved, remark }) => [title, source, how, saved, remark]),
          },
        ])),
    ...section(
      "say-it",
      said.sayIt,
      disclosures.map(({ text }) => text),
    ),
    ...section(
      "care",
      said.care,
      cautions.map(({ text }) => text),
    ),
  ];
}

/** The person's own story of the season, newest first. */
function notesOf({ garden, locale }: View, { from, to }: Recap): readonly RecapNote[] {
  return garden.notes
    .filter(({ day, story }) => day >= from && day <= to && story.length > 0)
    .toReversed()
    .map(({ day, title, story }) => ({
      iso: day,
      day: locale.day(day),
      title,
      html: storyHtml(story.map(({ text }) => text).join("\n\n")),
    }));
}
