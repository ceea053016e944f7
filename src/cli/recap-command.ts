/** `plotreel recap YEAR`: cover, cards and dossier of the film that looks back, as Markdown, data, a page to print; the seed order. */
import path from "node:path";
import { isDay } from "../calendar.ts";
import { type Season, seasonAsked } from "../garden/index.ts";
import type { Day } from "../model.ts";
import { lastRecap, makeRecapCards, type RecapCards, recapCardsMarkdown, seedListCsv } from "../season/index.ts";
import { recapDocument } from "../site/index.ts";
import { CommandError, EXIT } from "./command-error.ts";
import type { Effects } from "./effects.ts";
import { recapPictures } from "./field-list-of.ts";
import type { Loaded } from "./load-garden.ts";
import { measured } from "./measured-garden.ts";

export interface RecapOptions {
  /** "2026", or "2025/26" where a season goes over New Year. */
  readonly year: string;
  /** "06" or "2026-06": only that month. */
  readonly month?: string | undefined;
  /** Only what came after the last published recap. */
  readonly sinceLast?: boolean | undefined;
  /** Minutes the film should last. */
  readonly length?: number | undefined;
  readonly json?: boolean | undefined;
  /** Relative to the current folder, or absolute. */
  readonly out: string;
}

export async function recap(read: Loaded, options: RecapOptions, effects: Effects): Promise<number> {
  const { settings } = read.garden;
  const season = seasonAsked(options.year, settings.seasonStarts);
  if (season === undefined) {
    throw new CommandError(
      `"${options.year}" is no season. Write the year in which it begins, such as ${read.today.slice(0, 4)}.`,
    );
  }
  if (season.from > read.today) throw new CommandError(`The season of ${season.label} has not begun yet.`);
  if (options.month !== undefined && options.sinceLast === true) {
    throw new CommandError("--month and --since-last each say from when to tell; give one of them.");
  }
  const month = options.month === undefined ? undefined : monthOf(options.month, season, read.today);
  if (options.sinceLast === true && lastRecap(read.garden, read.today) === undefined) {
    effects.err("No published episode is called a recap yet, so this one begins with the season.");
  }
  const loaded = await measured(read);
  const { garden } = loaded;
  const made = makeRecapCards(garden, read.weather, {
    season,
    month,
    sinceLast: options.sinceLast,
    today: read.today,
    target: options.length === undefined ? undefined : Math.round(options.length * 60),
  });
  return write(made, loaded, options, effects);
}

async function write(made: RecapCards, loaded: Loaded, options: RecapOptions, effects: Effects): Promise<number> {
  const { settings } = loaded.garden;
  const { dossier } = made;
  const stem = path.resolve(effects.cwd, options.out, "recaps", dossier.recap);
  const markdown = recapCardsMarkdown(made, settings);
  const data = JSON.stringify(made, null, 2);
  await effects.writeText(`${stem}.md`, markdown);
  await effects.writeText(`${stem}.json`, `${data}\n`);
  await effects.writeText(`${stem}.html`, recapDocument(made, settings, await recapPictures(loaded, made)));
  const seeds = dossier.kind === "season" && dossier.nextYear.seeds.length > 0;
  if (seeds) await effects.writeText(`${stem}-seed-order.csv`, seedListCsv(dossier.nextYear.seeds));
  effects.out(options.json === true ? data : markdown.trimEnd());
  effects.err(`Written: ${stem}.md, .json and .html (the page to print).`);
  if (seeds) effects.err(`Seed order for next year: ${stem}-seed-order.csv`);
  return EXIT.done;
}

/** The first day of the month asked for, within the season. */
function monthOf(asked: string, season: Season, today: Day): Day {
  const [, year, month] = /^(?:(\d{4})-)?(\d{1,2})$/.exec(asked.trim()) ?? [];
  const number = (month ?? "").padStart(2, "0");
  const years = year === undefined ? [season.from.slice(0, 4), season.to.slice(0, 4)] : [year];
  const first = years
    .map((one) => `${one}-${number}-01`)
    .find((day) => isDay(day) && day.slice(0, 7) >= season.from.slice(0, 7) && day <= season.to);
  if (first === undefined) {
    throw new CommandError(
      `"${asked}" is no month of the season of ${season.label}. Write it as a number, such as 6, or as ${season.from.slice(0, 7)}.`,
    );
  }
  if (first > today) throw new CommandError(`${first.slice(0, 7)} has not begun yet.`);
  // A season may begin within a month; only its own days of it are told.
  return [first, season.from].sort()[1] as Day;
}
