/** `plotreel wrap EPISODE`: everything after filming, as files to use and a report to read; `--accept` takes promises into the record. */
import path from "node:path";
import { pathToFileURL } from "node:url";
import type { Episode, FrameRate, Garden, PlannedTour } from "../model.ts";
import { nearestName, problemText } from "../records/index.ts";
import {
  acceptPromises,
  commonRate,
  readGlossary,
  sayRate,
  type Wrap,
  wrapEpisode,
  wrapReport,
} from "../wrap/index.ts";
import { briefFor } from "./brief-command.ts";
import { clipsOfFilm } from "./clips-of-film.ts";
import { CommandError, EXIT } from "./command-error.ts";
import type { Effects } from "./effects.ts";
import { captionFileOf, ownGlossary } from "./film-captions.ts";
import { writeKeepingEdits } from "./generated-files.ts";
import type { Loaded } from "./load-garden.ts";
import { offerPlates } from "./plate-frames.ts";
import { wrapFiles } from "./wrap-files.ts";

export interface WrapOptions {
  readonly episode: string;
  /** Caption file: beside the episode's record unless it has a folder. */
  readonly captions?: string | undefined;
  /** Viewers' comments, one a line. */
  readonly comments?: string | undefined;
  /** Own words and how they are heard; glossary.txt in the records folder unless another is given. */
  readonly glossary?: string | undefined;
  /** Longest description. */
  readonly limit?: number | undefined;
  /** Seconds. */
  readonly length?: number | undefined;
  /** Numbers of promises. */
  readonly accept?: readonly number[] | undefined;
  /** Folder of the film files as they came from the cameras. */
  readonly clips?: string | undefined;
  /** Pictures a second of the film. */
  readonly rate?: FrameRate | undefined;
  /** The film itself; the only one beside the episode's record unless given. */
  readonly film?: string | undefined;
  readonly json?: boolean | undefined;
  readonly out: string;
}

export async function wrap(loaded: Loaded, options: WrapOptions, effects: Effects): Promise<number> {
  const { garden, recordsDir } = loaded;
  const episode = episodeNamed(garden, options.episode);
  const outDir = path.resolve(effects.cwd, options.out);
  const made = wrapEpisode({
    garden,
    episode,
    captions: await readCaptionFile(recordsDir, episode, options, effects),
    brief: plannedTour(loaded, episode),
    glossary: await glossaryOf(recordsDir, options, effects),
    comments: await commentsOf(recordsDir, episode, options, effects),
    limit: options.limit,
    length: options.length,
  });
  if (options.accept !== undefined && options.accept.length > 0)
    await accept(made.wrap, episode, recordsDir, options.accept, effects);
  const dir = path.join(outDir, "wraps", episode.id);
  const plates = await offerPlates({ garden, recordsDir, episode, film: options.film }, made.wrap, dir, effects);
  const clipsDir = options.clips === undefined ? undefined : path.resolve(effects.cwd, options.clips);
  const log = clipsDir === undefined ? undefined : await clipsOfFilm(garden, episode, clipsDir, effects);
  const rate = options.rate ?? (log === undefined ? undefined : commonRate(log.clips));
  const url = (file: string) => pathToFileURL(path.join(clipsDir ?? "", ...file.split("/"))).href;
  const files = wrapFiles({ made, garden, rate, clips: log?.clips, url, plates });
  const { kept } = await writeKeepingEdits(dir, files, effects);
  effects.out(
    options.json === true ? JSON.stringify(made.wrap, null, 2) : wrapReport(made.wrap, garden, plates).trimEnd(),
  );
  for (const line of log?.told ?? []) effects.err(line);
  for (const found of made.wrap.problems) effects.err(problemText(found));
  effects.err(toldOfRate(rate, options.rate !== undefined));
  effects.err(`Written: ${dir}`);
  for (const { name, beside } of kept) {
    effects.err(
      beside === undefined
        ? `You have edited ${name}; it was left as it is, and there is nothing new for it.`
        : `You have edited ${name}; it was left as it is, and the new version is ${beside}.`,
    );
  }
  return EXIT.done;
}

/** A timeline at a wrong rate puts every mark beside its picture, so none is guessed. */
function toldOfRate(rate: FrameRate | undefined, isGiven: boolean): string {
  if (rate === undefined)
    return "No timeline was made, because nothing tells the film's pictures a second: give --rate 25 (or 29.97, …), or --clips.";
  return `Timelines are at ${sayRate(rate)} pictures a second${isGiven ? "" : ", as most of the clips are; --rate says otherwise"}.`;
}

function episodeNamed(garden: Garden, name: string): Episode {
  const episode = garden.episodes.get(name);
  if (episode !== undefined) return episode;
  const ids = [...garden.episodes.keys()];
  const nearest = nearestName(name, ids);
  const known = ids.length === 0 ? " There are no episodes yet." : ` The episodes are: ${ids.join(", ")}.`;
  throw new CommandError(
    `No episode is called "${name}".${nearest === undefined ? known : ` Did you mean "${nearest}"?`}`,
  );
}

async function readCaptionFile(recordsDir: string, episode: Episode, { captions }: WrapOptions, effects: Effects) {
  if (captions !== undefined) {
    const file = path.resolve(effects.cwd, captions);
    const beside = path.join(recordsDir, "episodes", episode.id, captions);
    const found = captions === path.basename(captions) && (await exists(beside, effects)) ? beside : file;
    const folder = await effects.openRecords(path.dirname(found));
    return { file: shown(found, recordsDir), bytes: await folder.read(path.basename(found)) };
  }
  const first = captionFileOf(episode);
  if (first === undefined) {
    effects.err(
      `No captions lie beside ${episode.place?.file ?? episode.id} yet; this is what the records alone tell.`,
    );
    return undefined;
  }
  return { file: first, bytes: await (await effects.openRecords(recordsDir)).read(first) };
}

async function exists(file: string, effects: Effects): Promise<boolean> {
  return (await effects.readText(file)) !== undefined;
}

function shown(file: string, recordsDir: string): string {
  const relative = path.relative(recordsDir, file);
  return relative.startsWith("..") ? file : relative.split(path.sep).join("/");
}

/** The plan that was filmed by: as it came home with the ticks, else as it was kept; without either the tour is planned anew. */
function plannedTour(loaded: Loaded, { id, filming, plan }: Episode): PlannedTour {
  return filming?.plan ?? plan ?? briefFor(loaded, id);
}

async function glossaryOf(recordsDir: string, { glossary }: WrapOptions, effects: Effects) {
  if (glossary === undefined) return ownGlossary(recordsDir, effects);
  const file = path.resolve(effects.cwd, glossary);
  const text = await effects.readText(file);
  if (text === undefined) throw new CommandError(`There is no file ${file}.`, EXIT.couldNot);
  return readGlossary(text);
}

async function commentsOf(recordsDir: string, episode: Episode, { comments }: WrapOptions, effects: Effects) {
  const file =
    comments === undefined
      ? path.join(recordsDir, "episodes", episode.id, "comments.txt")
      : path.resolve(effects.cwd, comments);
  const text = await effects.readText(file);
  if (text === undefined && comments !== undefined) throw new CommandError(`There is no file ${file}.`, EXIT.couldNot);
  return text === undefined ? undefined : { file: shown(file, recordsDir), text };
}

async function accept(
  wrapped: Wrap,
  episode: Episode,
  recordsDir: string,
  numbers: readonly number[],
  effects: Effects,
): Promise<void> {
  const chosen = [...new Set(numbers)].map((number) => {
    const found = wrapped.followUps.find((one) => one.number === number);
    if (found === undefined) {
      const known =
        wrapped.followUps.length === 0
          ? "No promise was heard in these captions."
          : `The promises are numbered 1 to ${wrapped.followUps.length}.`;
      throw new CommandError(`There is no promise ${number}. ${known}`);
    }
    return found;
  });
  const fresh = chosen.filter(({ recorded }) => !recorded);
  for (const { number } of chosen.filter(({ recorded }) => recorded))
    effects.err(`Promise ${number} is in the record already.`);
  if (fresh.length === 0) return;
  const file = path.join(recordsDir, ...(episode.place?.file ?? `episodes/${episode.id}/index.md`).split("/"));
  const promises = fresh.map(({ kept, putsOff, ...one }) => {
    return { ...one, kept: kept === undefined ? undefined : episode.id, putsOff: putsOff?.what };
  });
  const { refused } = await effects.editText(file, (record) => acceptPromises(record, promises));
  if (refused !== undefined) throw new CommandError(`${file} was left as it is. ${refused}`, EXIT.couldNot);
  effects.err(`Taken into ${shown(file, recordsDir)}: ${fresh.map(takenIn).join("; ")}.`);
}

function takenIn({ what, kept, putsOff }: Wrap["followUps"][number]): string {
  if (kept !== undefined) return `${what} (kept in this film)`;
  return putsOff === undefined ? what : `${what} (“${putsOff.what}” is put off)`;
}
