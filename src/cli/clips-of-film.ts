/** A folder of film files to the log of its clips: what is read from the disk, and what is asked where two readings fit. */
import path from "node:path";
import pLimit from "p-limit";
import type { Episode, Garden } from "../model.ts";
import { clipFacts, openPhotoFolder } from "../photos/index.ts";
import { clipEnding } from "../records/index.ts";
import { type ClipLog, type ClipSpeech, clipLog, openCaptions } from "../wrap/index.ts";
import { CommandError, EXIT } from "./command-error.ts";
import type { Effects } from "./effects.ts";

export async function clipsOfFilm(garden: Garden, episode: Episode, dir: string, effects: Effects): Promise<ClipLog> {
  const folder = await effects.openRecords(dir);
  const files = await folder.list();
  const films = files.filter((file) => clipEnding.test(file));
  if (films.length === 0) throw new CommandError(`There is no MP4 or MOV file in ${dir}.`, EXIT.couldNot);
  const pictures = openPhotoFolder(dir);
  const limit = pLimit(8);
  const clips = await Promise.all(films.map((file) => limit(() => clipFacts(file, pictures))));
  const request = {
    clips,
    filming: episode.filming,
    timeZone: garden.settings.timeZone,
    clipClocks: garden.settings.clipClocks,
    said: await saidIn(files, films, folder),
  };
  const log = clipLog(request);
  const otherwise = new Set<string>();
  for (const { camera, file, bed, shot } of effects.canAsk ? log.questions : []) {
    const title = garden.beds.get(bed)?.title ?? bed;
    const answer = await effects.askKey(`Does ${file} show ${title}, shot ${shot}?`, [
      { key: "y", means: "yes" },
      { key: "n", means: "no" },
    ]);
    if (answer === "n") otherwise.add(camera);
  }
  return otherwise.size === 0 ? log : clipLog({ ...request, otherwise });
}

/** Milliseconds that a last word takes. */
const SAID = 600;

/** Captions of a single clip beside it, under its name. */
async function saidIn(
  files: readonly string[],
  films: readonly string[],
  folder: { read(file: string): Promise<Uint8Array> },
): Promise<ReadonlyMap<string, ClipSpeech>> {
  const said = new Map<string, ClipSpeech>();
  const stem = (file: string) => file.slice(0, -path.extname(file).length);
  const captions = new Map(files.filter((file) => /\.(?:vtt|srt|sbv)$/i.test(file)).map((file) => [stem(file), file]));
  for (const film of films) {
    const file = captions.get(stem(film));
    if (file === undefined) continue;
    const { words } = openCaptions(file, await folder.read(file)).speech;
    const [first, last] = [words[0], words.at(-1)];
    if (first === undefined || last === undefined) continue;
    said.set(film, { text: words.map(({ text }) => text).join(" "), from: first.at, to: last.at + SAID });
  }
  return said;
}
