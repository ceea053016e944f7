/** One way from a records folder to the Garden: read, date the photos, grow the timeline. Every command starts here. */
import { gardenWeather, type Weather } from "../almanac/index.ts";
import { timelineProblems } from "../garden/index.ts";
import type { Day, Garden } from "../model.ts";
import { openPhotoFolder, readPhotos, recordsOfMoments } from "../photos/index.ts";
import { readRecords, readSettings, readTexts, sortProblems } from "../records/index.ts";
import { seasonProblems } from "../season/index.ts";
import { type FilmTexts, privacyHints } from "../site/index.ts";
import { growGarden } from "../timeline/index.ts";
import { tourProblems } from "../tour/index.ts";
import type { Effects } from "./effects.ts";
import { ownGlossary, readCaptionFiles } from "./film-captions.ts";
import { openReadingCache } from "./reading-cache.ts";
import { recordsPlace } from "./records-place.ts";
import { type Report, reportTo } from "./report.ts";
import type { Settling } from "./settle-command.ts";
import { spokenLines } from "./spoken-captions.ts";

export interface LoadOptions {
  /** Relative to the current folder, or absolute; undefined when it goes without saying. */
  readonly records?: string | undefined;
  /** Fixes the clock. */
  readonly today?: Day | undefined;
  /** Says how many files were read again. */
  readonly verbose?: boolean | undefined;
}

export interface Loaded {
  readonly garden: Garden;
  readonly weather: Weather;
  /** What lies beside the records of films, for those who show what is said in them. */
  readonly films: FilmTexts;
  readonly today: Day;
  /** Absolute. */
  readonly recordsDir: string;
  readonly cacheDir: string;
  readonly report: Report;
}

export async function loadGarden(options: LoadOptions, effects: Effects): Promise<Loaded> {
  const recordsDir = await recordsPlace(options.records, effects);
  const cacheDir = effects.cacheFor(recordsDir);
  const report = reportTo(effects);
  const folder = await effects.openRecords(recordsDir);
  const today = options.today ?? effects.today((await readSettings(folder)).timeZone);
  await effects.keepToOwner(cacheDir);
  const cache = await openReadingCache(effects, cacheDir);
  const records = await readRecords(folder, {
    today,
    cache: cache.files,
    readings: cache.readings,
    onProgress: (done, total) => report.progress("Reading records", done, total),
  });
  await cache.save();
  const photos = await readPhotos(records, openPhotoFolder(recordsDir));
  report.end();
  if (options.verbose === true) {
    effects.err(`${cache.readAgain} files read again, ${cache.known} unchanged since the last run.`);
  }
  const { texts, problems: unreadTexts } = await readTexts(folder, records.weatherFiles);
  const weather = gardenWeather(texts, records.settings.position, today);
  const problems = [...records.problems, ...photos.problems, ...unreadTexts, ...weather.problems];
  const captions = await readCaptionFiles(folder, records.episodes.values());
  const films: FilmTexts = { captions, glossary: await ownGlossary(recordsDir, effects) };
  const spoken = spokenLines(captions);
  const grown = growGarden({ ...recordsOfMoments(records, photos.photos), problems }, photos.photos);
  const garden: Garden = {
    ...grown,
    photosTakenAt: photos.takenAt,
    spoken,
    problems: sortProblems([
      ...grown.problems,
      ...timelineProblems(grown),
      ...tourProblems(grown),
      ...seasonProblems(grown),
      ...privacyHints(grown),
    ]),
  };
  return { garden, weather, films, today, recordsDir, cacheDir, report };
}

/** Records alone, read anew as often as they are asked for: what goes through open questions needs no photos and no timeline. */
export async function settling(options: LoadOptions, effects: Effects): Promise<Settling> {
  const recordsDir = await recordsPlace(options.records, effects);
  const folder = await effects.openRecords(recordsDir);
  const today = options.today ?? effects.today((await readSettings(folder)).timeZone);
  return {
    recordsDir,
    today,
    async records() {
      const cache = await openReadingCache(effects, effects.cacheFor(recordsDir));
      const now = await effects.openRecords(recordsDir);
      const records = await readRecords(now, { today, cache: cache.files, readings: cache.readings });
      await cache.save();
      return records;
    },
  };
}
