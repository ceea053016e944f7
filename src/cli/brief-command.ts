/** `plotreel brief TOUR-OR-DATE`: cover, cards and dossier as Markdown to read, and beside it as data and as a page to print. */
import path from "node:path";
import { isDay } from "../calendar.ts";
import { earlier } from "../garden/index.ts";
import type { Garden } from "../model.ts";
import { nearestName } from "../records/index.ts";
import { briefPage, fieldListPage, makeFieldList } from "../site/index.ts";
import {
  type Brief,
  type BriefRequest,
  cardsMarkdown,
  makeBrief,
  makeCards,
  photosCompared,
  type TourCards,
} from "../tour/index.ts";
import { CommandError, EXIT } from "./command-error.ts";
import type { Effects } from "./effects.ts";
import { expectedWindows } from "./expected-windows.ts";
import { cardPictures } from "./field-list-of.ts";
import { keepPlan } from "./keep-plan.ts";
import type { Loaded } from "./load-garden.ts";
import { measured } from "./measured-garden.ts";
import { printBrief } from "./print-brief.ts";

export interface BriefOptions {
  /** An episode's folder name, or a day. */
  readonly tour: string;
  readonly json?: boolean | undefined;
  /** Wall clock "09:30" at which filming begins, whatever the episode's record says. */
  readonly start?: string | undefined;
  /** Cloud is expected. */
  readonly overcast?: boolean | undefined;
  /** File and line under each sentence of the Markdown. */
  readonly sources?: boolean | undefined;
  /** Also a PDF on A4, or on Letter where the garden measures in US units. */
  readonly pdf?: boolean | undefined;
  /** Cards to print of A6, or a quarter of Letter, four to a sheet. */
  readonly pocket?: boolean | undefined;
  /** Relative to the current folder, or absolute. */
  readonly out: string;
}

export async function brief(read: Loaded, options: BriefOptions, effects: Effects): Promise<number> {
  // Only photos that the brief holds against one another are measured: a few, however many there are.
  const loaded = await measured(read, photosCompared(read.garden, requestFor(read, options.tour, options)));
  const { garden } = loaded;
  const made = cardsFor(loaded, options.tour, options);
  const stem = path.resolve(effects.cwd, options.out, "briefs", made.dossier.tour);
  const markdown = cardsMarkdown(made, garden.settings, { sources: options.sources });
  const data = JSON.stringify(made, null, 2);
  await effects.writeText(`${stem}.md`, markdown);
  await effects.writeText(`${stem}.json`, `${data}\n`);
  const pictures = await cardPictures(loaded, made);
  await effects.writeText(`${stem}.html`, briefPage(made, garden, { pictures, pocket: options.pocket }));
  await effects.writeText(`${stem}-field-list.html`, fieldListPage(makeFieldList(made, garden, pictures)));
  await keepPlan(loaded, made.dossier, effects);
  effects.out(options.json === true ? data : markdown.trimEnd());
  effects.err(`Written: ${stem}.md, .json and .html (the page to print).`);
  effects.err(`Field list for the phone: ${stem}-field-list.html`);
  if (options.pdf === true) await printBrief(loaded, made, stem, effects, { pictures, pocket: options.pocket });
  return EXIT.done;
}

/** Cover, cards and dossier of an episode or of a day. */
export function cardsFor(loaded: InTime, tour: string, how: HowToFilm = {}): TourCards {
  return makeCards(loaded.garden, inTime(loaded, tour, how));
}

/** The dossier alone, for what only asks what was planned. */
export function briefFor(loaded: InTime, tour: string, how: HowToFilm = {}): Brief {
  return makeBrief(loaded.garden, inTime(loaded, tour, how));
}

function inTime(loaded: InTime, tour: string, how: HowToFilm): BriefRequest {
  const request = requestFor(loaded, tour, how);
  const { garden, today } = loaded;
  const day = garden.episodes.get(request.episode ?? "")?.day ?? request.day ?? today;
  // Of a tour that was, only what was known then.
  return { ...request, windows: expectedWindows(loaded, earlier(day, today)) };
}

type InTime = Pick<Loaded, "garden" | "weather" | "today">;
type HowToFilm = Pick<BriefOptions, "start" | "overcast">;

function requestFor(
  { garden, today }: Pick<InTime, "garden" | "today">,
  tour: string,
  { start, overcast }: HowToFilm,
): BriefRequest {
  const asked = { start, overcast, today };
  if (garden.episodes.has(tour)) return { ...asked, episode: tour };
  if (isDay(tour)) {
    const planned = episodeOn(garden, tour);
    return planned === undefined ? { ...asked, day: tour } : { ...asked, episode: planned };
  }
  const episodes = [...garden.episodes.keys()];
  const nearest = nearestName(tour, episodes);
  throw new CommandError(
    `No episode is called "${tour}", and it is not a day such as ${today}.${nearest === undefined ? "" : ` Did you mean "${nearest}"?`}`,
  );
}

function episodeOn(garden: Garden, day: string): string | undefined {
  return [...garden.episodes.values()].find((episode) => episode.day === day && episode.status === "planned")?.id;
}
