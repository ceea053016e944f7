/**
 * A film's frame at the moment a variety is named, offered for its plate where the film is at hand and the program that opens it
 * is on the machine. Offered only: it lies among the results, and is on no page until a person puts it among the photos.
 */
import path from "node:path";
import type { Episode, Garden } from "../model.ts";
import { filmFrame, NoFilmProgram } from "../photos/index.ts";
import { clipEnding } from "../records/index.ts";
import type { PlateFrame, Wrap } from "../wrap/index.ts";
import { CommandError, EXIT } from "./command-error.ts";
import type { Effects } from "./effects.ts";

/** Frames of one film: each takes a second or two to open. */
const MOST = 24;

/** Seconds after the name: whoever says it shows it then. */
const AFTER = 1;

export interface FilmAtHand {
  readonly garden: Garden;
  readonly recordsDir: string;
  readonly episode: Episode;
  /** As the person wrote it; else the one film beside the episode's record. */
  readonly film: string | undefined;
}

/** Written into `dir`; none without a film or the program. */
export async function offerPlates(
  { garden, recordsDir, episode, film }: FilmAtHand,
  { coverage }: Wrap,
  dir: string,
  effects: Effects,
): Promise<readonly PlateFrame[]> {
  const file = await filmFile(recordsDir, episode, film, effects);
  if (file === undefined) return [];
  const pictured = new Set(garden.photos.flatMap(({ varieties }) => varieties));
  const wanted = coverage.named.filter(({ variety }) => !pictured.has(variety)).slice(0, MOST);
  const found: PlateFrame[] = [];
  for (const { variety, title, at, time } of wanted) {
    const name = `plates/${episode.day}-${variety}.jpg`;
    try {
      await effects.writeBytes(path.join(dir, name), await filmFrame(file, at + AFTER));
      found.push({ variety, title, time, file: name });
    } catch (error) {
      if (error instanceof NoFilmProgram) return [];
      effects.err(`No frame could be taken of the film at ${time}, for ${title}.`);
    }
  }
  return found;
}

async function filmFile(
  recordsDir: string,
  { id }: Episode,
  film: string | undefined,
  effects: Effects,
): Promise<string | undefined> {
  if (film !== undefined) {
    const file = path.resolve(effects.cwd, film);
    const beside = await (await effects.openRecords(path.dirname(file))).list();
    if (!beside.includes(path.basename(file))) throw new CommandError(`There is no file ${file}.`, EXIT.couldNot);
    return file;
  }
  const folder = path.join(recordsDir, "episodes", id);
  // Several are clips of it, and nobody knows which of them the captions are of.
  const [only, ...more] = (await (await effects.openRecords(folder)).list()).filter((name) => clipEnding.test(name));
  return only === undefined || more.length > 0 ? undefined : path.join(folder, ...only.split("/"));
}
