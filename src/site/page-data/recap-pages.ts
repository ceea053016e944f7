/** A recap as a page: the public one tells viewers, the private one has levels, sources, prices, seed list and notes. */
import type { Weather } from "../../almanac/index.ts";
import type { Day, GardenSettings } from "../../model.ts";
import {
  levelNames,
  makeRecap,
  type Recap,
  type RecapPoint,
  type ResultRow,
  type Season,
  type Segment,
  seasonBook,
} from "../../season/index.ts";
import { sayDay, sayPlural, sayWeight } from "../../timeline/index.ts";
import { storyHtml } from "../story-html.ts";
import { calendarCharts, heatChart, weekChart } from "./recap-charts.ts";
import type { ChartFigure, DataTable, RecapNote, RecapPage, RecapPictures, RecapSection } from "./recap-shapes.ts";
import { trialCharts } from "./trial-charts.ts";
import type { View } from "./view.ts";

/** Newest first, one for each season in which anything was picked, sown or planted. */
export function recapPages(view: View, weather: Weather, isPrivate: boolean): readonly RecapPage[] {
  const book = seasonBook(view.garden, weather, view.today);
  return book.seasons
    .filter((season) => hasNews(book.events, season))
    .toReversed()
    .map((season) => {
      const recap = makeRecap(view.garden, weather, { season, today: view.today, forViewers: !isPrivate });
      return recapPage(recap, view.garden.settings, isPrivate, view);
    });
}

function hasNews(events: readonly { readonly day: Day; readonly kind: string }[], { from, to }: Season): boolean {
  return events.some(
    ({ day, kind }) => day >= from && day <= to && (kind === "picked" || kind === "planted" || kind === "sowed"),
  );
}

/** Without a view the page has no pictures and no links: it can be carried about as one file. */
export function recapPage(recap: Recap, settings: GardenSettings, isPrivate: boolean, view?: View): RecapPage {
  const sections = recap.segments
    .filter(({ kind, seconds }) => kind !== "season" && (seconds > 0 || !isPrivate))
    .map((segment) => sectionOf(recap, segment, settings, isPrivate, view))
    .filter((section) => section !== undefined);
  return {
    id: recap.recap,
    href: view?.links.recap(recap.recap) ?? "",
    name: recap.finished ? recap.season.label : `${recap.season.label} so far`,
    title: recap.title,
    span: recap.spanText,
    paragraph: recap.paragraph
      .filter((one) => isPrivate || !one.private)
      .map(({ text }) => text)
      .join(" "),
    opening: isPrivate ? recap.opening.map(({ text }) => text) : [],
    sections: [...sections, ...ownSections(recap, settings, isPrivate), ...calendarSection(recap, settings, isPrivate)],
    methods: recap.methods,
    notes: isPrivate && view !== undefined ? notesOf(view, recap) : [],
  };
}

/** What viewers have no use for: jars, beds of next year, seed orders. */
const ownKinds: ReadonlySet<Segment["kind"]> = new Set(["questions"]);

function sectionOf(
  recap: Recap,
  segment: Segment,
  settings: GardenSettings,
  isPrivate: boolean,
  view: View | undefined,
): RecapSection | undefined {
  const { kind, title, show } = segment;
  if (!isPrivate && ownKinds.has(kind) && recap.thanks.length === 0) return undefined;
  const told = show.filter((point) =>
    isPrivate ? point.chosen : !point.private && isForViewers(segment, point, recap),
  );
  const pictures = view === undefined ? [] : picturesOf(segment, view);
  const charts = chartsOf(recap, segment, settings);
  const tables = kind === "results" ? resultTables(recap, settings, isPrivate) : [];
  if (told.length + charts.length + tables.length + pictures.length === 0) return undefined;
  return {
    id: kind.replaceAll(" ", "-"),
    title,
    // A sentence that stands below its own photos is not told twice.
    lines: told
      .filter(({ text }) => !pictures.some((one) => one.text === text))
      .map((point) => ({
        text: point.text,
        level: isPrivate ? levelNames[point.level] : undefined,
        file: isPrivate ? placeOf(point) : undefined,
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

function placeOf({ sources }: RecapPoint): string | undefined {
  const [first] = sources;
  if (first === undefined) return undefined;
  const more = sources.length - 1;
  return `${first.file}:${first.line}${more === 0 ? "" : ` and ${sayPlural(more, "more line", "more lines")}`}`;
}

function picturesOf({ photos }: Segment, view: View): readonly RecapPictures[] {
  return photos.flatMap(({ bed, title, text, first, peak, last }) => {
    const shown = [first, peak, last].flatMap((one) => {
      const photo = one === undefined ? undefined : view.book.all.find(({ path }) => path === one.path);
      return photo === undefined ? [] : [view.book.picture(photo)];
    });
    return shown.length < 2 ? [] : [{ bed: { href: view.links.bed(bed), text: title }, text, pictures: shown }];
  });
}

function chartsOf(recap: Recap, { kind }: Segment, settings: GardenSettings): readonly ChartFigure[] {
  switch (kind) {
    case "results":
      return [weekChart(recap.charts, settings, recap.spanText)].filter((chart) => chart !== undefined);
    case "weather":
      return [heatChart(recap.charts, settings)].filter((chart) => chart !== undefined);
    case "trials":
      return recap.trials.filter((trial) => !trial.private).flatMap((trial) => trialCharts(trial, settings));
    default:
      return [];
  }
}

function calendarSection(recap: Recap, settings: GardenSettings, isPrivate: boolean): readonly RecapSection[] {
  const charts = calendarCharts(recap.charts, settings, isPrivate);
  if (charts.length === 0) return [];
  return [{ id: "calendar", title: "From sowing to clearing", lines: [], pictures: [], charts, tables: [] }];
}

function resultTables({ results }: Recap, settings: GardenSettings, isPrivate: boolean): readonly DataTable[] {
  const { varieties, crops, beds, sites } = results;
  const open = (rows: readonly ResultRow[]) => rows.filter((row) => isPrivate || !row.private);
  return [
    tableOf("By variety", open(varieties), settings, isPrivate, "plant"),
    tableOf("By crop", open(crops), settings, isPrivate, "plant"),
    tableOf("By bed", open(beds), settings, isPrivate, "ground"),
    ...(sites.length < 2 ? [] : [tableOf("By site", open(sites), settings, isPrivate, "none")]),
  ].filter(({ rows }) => rows.length > 0);
}

function tableOf(
  title: string,
  rows: readonly ResultRow[],
  settings: GardenSettings,
  isPrivate: boolean,
  measure: "plant" | "ground" | "none",
): DataTable {
  const weight = (grams: number | undefined) => (grams === undefined ? "" : sayWeight(grams, settings.units));
  const values = isPrivate && rows.some(({ value }) => value !== undefined);
  const day = (of: Day | undefined, near: Day | undefined) =>
    of === undefined ? "" : sayDay(of, { language: settings.language, near });
  const each = (row: ResultRow) =>
    measure === "ground"
      ? weight(row.gramsPerSquareMetre)
      : row.gramsPerPlant !== undefined
        ? weight(row.gramsPerPlant)
        : row.gramsPerPiece === undefined
          ? ""
          : `${weight(row.gramsPerPiece)} each`;
  return {
    title,
    head: [
      title.replace("By ", "").replace(/^./, (letter) => letter.toUpperCase()),
      "Picked",
      "Pickings",
      "First",
      "Last",
      ...(measure === "none" ? [] : [measure === "ground" ? "A square metre" : "A plant"]),
      "Last year by then",
      ...(values ? ["Worth"] : []),
    ],
    rows: rows.map((row) => [
      row.title,
      row.picked,
      String(row.pickings),
      day(row.first, row.last),
      day(row.last, row.last),
      ...(measure === "none" ? [] : [each(row)]),
      row.lastYear ?? "",
      ...(values ? [row.value ?? ""] : []),
    ]),
  };
}

/** What only the person sees: losses whole, forecasts, needs, plan, seed order, what must be said. */
function ownSections(recap: Recap, settings: GardenSettings, isPrivate: boolean): readonly RecapSection[] {
  if (!isPrivate) return [];
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
  const day = (of: Day) => sayDay(of, { language: settings.language, near: recap.to });
  const { plan } = nextYear;
  return [
    ...section(
      "left-out",
      "Not in this length",
      leftOut.map(({ text }) => text),
    ),
    ...section("results-notes", "To read the tables by", results.remarks),
    ...section(
      "losses",
      "Losses and troubles",
      losses.map(({ sentence }) => sentence.text),
    ),
    ...(forecasts.length === 0
      ? []
      : section(
          "forecasts",
          "Forecasts",
          [],
          [
            {
              title: "Windows of what is still to come",
              head: ["Planting", "From", "Likely", "To"],
              rows: forecasts.map(({ planting, from, likely, to }) => [planting, day(from), day(likely), day(to)]),
            },
          ],
        )),
    ...section(
      "needs",
      "Wanted next year",
      nextYear.needs.flatMap(({ sentence, cautions: own }) => [sentence.text, ...own]),
    ),
    ...(plan.rows.length === 0
      ? []
      : section(
          "plan",
          `A draft for ${plan.year}`,
          [...plan.compromises, ...plan.unread].map(({ text }) => text),
          [
            {
              title: "Who goes where",
              head: ["Bed", "Crops", "Not yet"],
              rows: plan.rows.map(({ bed, title, crops }) => [
                title,
                crops
                  .map(
                    ({ name, plants, pinned }) =>
                      `${plants === undefined ? "" : `${plants} `}${name}${pinned ? " (pinned)" : ""}`,
                  )
                  .join(", "),
                (nextYear.rotation.notYet[bed] ?? []).map(({ name, from }) => `${name} before ${from}`).join("; "),
              ]),
            },
          ],
        )),
    ...(nextYear.seeds.length === 0
      ? []
      : section("seeds", "Seed order", nextYear.seedsSaid === undefined ? [] : [nextYear.seedsSaid], [
          {
            title: "By source",
            head: ["Variety", "From", "How", "Own seed", "To think of"],
            rows: nextYear.seeds.map(({ title, source, how, saved, remark }) => [title, source, how, saved, remark]),
          },
        ])),
    ...section(
      "say-it",
      "Say it",
      disclosures.map(({ text }) => text),
    ),
    ...section(
      "care",
      "Care",
      cautions.map(({ text }) => text),
    ),
  ];
}

/** The person's own story of the season, newest first. */
function notesOf({ garden }: View, { from, to }: Recap): readonly RecapNote[] {
  return garden.notes
    .filter(({ day, story }) => day >= from && day <= to && story.length > 0)
    .toReversed()
    .map(({ day, title, story }) => ({
      iso: day,
      day: sayDay(day, garden.settings),
      title,
      html: storyHtml(story.map(({ text }) => text).join("\n\n")),
    }));
}
