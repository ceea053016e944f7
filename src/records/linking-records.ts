/** Records that name other records: trials, episodes, photo sidecars. Read last, when every bed and variety is known. */
import type * as z from "zod";
import { isDay, parseDay, writeDay } from "../calendar.ts";
import type {
  Bed,
  Day,
  Episode,
  EpisodePromise,
  PhotoSidecar,
  Problem,
  Site,
  Trial,
  TrialArm,
  Variety,
} from "../model.ts";
import type { EpisodePlace } from "./episode-places.ts";
import { type RecordPlace, recordEnding } from "./file-names.ts";
import { bodyOf, type Reading, readKind } from "./garden-records.ts";
import { wordsOf } from "./line-words.ts";
import { idOfName, type Names } from "./names.ts";
import { didYouMean } from "./nearest-spelling.ts";
import type { ParsedFile } from "./parsed-files.ts";
import type { SidecarPlace } from "./photo-places.ts";
import { problem } from "./problem-rules.ts";
import { checkRecord } from "./record-fronts.ts";
import { ruleOfRefusedDay } from "./refused-days.ts";
import { episodeSchema, makeEpisode, makePromise } from "./schemas/episode.ts";
import { makeSidecar, sidecarSchema } from "./schemas/sidecar.ts";
import { makeTrial, trialSchema } from "./schemas/trial.ts";

/** Every bed and variety, described or taken from notes, and the names they go by. */
export interface Directory {
  readonly names: Names;
  readonly beds: ReadonlyMap<string, Bed>;
  readonly varieties: ReadonlyMap<string, Variety>;
}

export function readTrials(
  places: readonly RecordPlace[],
  reading: Reading,
  directory: Directory,
): ReadonlyMap<string, Trial> {
  return readKind("trials", places, reading, trialSchema, "a trial", (file, front, parsed) => {
    const link = linker(directory, parsed, reading);
    const arms = front.arms.map(
      (arm, index): TrialArm => ({
        name: arm.name,
        variety: link("variety", arm.variety, ["arms", index, "variety"]),
        bed: link("bed", arm.bed, ["arms", index, "bed"]),
      }),
    );
    return makeTrial(file, { ...front, arms });
  });
}

export function readEpisodes(
  places: readonly EpisodePlace[],
  reading: Reading,
  directory: Directory,
  today: Day,
): ReadonlyMap<string, Episode> {
  const captions = new Map(places.map((place) => [place.file, place.captions]));
  const ids = new Set(places.map(({ id }) => id));
  return readKind("episodes", places, reading, episodeSchema, "an episode", (file, front, parsed) => {
    // A film of last year names beds as they were called then.
    directory.names.asOn(front.date);
    const link = linker(directory, parsed, reading);
    const stops = (front.stops ?? []).flatMap((stop, index) => {
      const bed = link("bed", stop.bed, ["stops", index]);
      return bed === undefined ? [] : [{ bed, at: stop.at }];
    });
    const promised = (front.promised ?? []).map((promise, index): EpisodePromise => {
      const path = ["promised", index];
      const kept =
        promise.kept === undefined ? undefined : keptIn(promise.kept, ids, parsed, [...path, "kept"], reading);
      return makePromise(
        { ...promise, kept },
        { file: parsed.file, ...parsed.places().value(path) },
        link("bed", promise.bed, [...path, "bed"]),
      );
    });
    const ends = {
      firstStop: link("bed", front["first stop"], ["first stop"]),
      lastStop: link("bed", front["last stop"], ["last stop"]),
    };
    directory.names.asOn(undefined);
    if (front.date < today) reading.problems.push(...notKnownWhatWasShown(front, parsed));
    return makeEpisode(file, front, {
      stops,
      ...ends,
      promised,
      captions: captions.get(parsed.file) ?? [],
    });
  });
}

/** Until its record says so, a film counts as not seen by viewers. */
function notKnownWhatWasShown(front: z.output<typeof episodeSchema>, parsed: ParsedFile): readonly Problem[] {
  if (front.published !== undefined || front.status !== undefined) return [];
  const stops = front.stops === undefined ? ' and "stops: [Long Bed, Top Bed]"' : "";
  return [
    problem(
      "episode/not-known-what-was-shown",
      { file: parsed.file, ...parsed.places().key(["date"]) },
      `The day of this film, ${writeDay(front.date)}, is past, and nothing tells whether it came out${stops === "" ? "" : " and which beds it shows"}.`,
      `Write "published: ${front.date}"${stops} with what is true, or "status: planned".`,
    ),
  ];
}

/** Sites whose walk begins or ends at a bed, with the bed's id in place of its name. */
export function linkSites(
  sites: ReadonlyMap<string, Site>,
  reading: Reading,
  directory: Directory,
): ReadonlyMap<string, Site> {
  return new Map(
    [...sites].map(([id, site]) => {
      const parsed = reading.files.get(site.place?.file ?? "");
      if (parsed === undefined) return [id, site];
      const link = linker(directory, parsed, reading);
      const end = (key: "start" | "end") => (typeof site[key] === "string" ? link("bed", site[key], [key]) : site[key]);
      return [id, { ...site, start: end("start"), end: end("end") }];
    }),
  );
}

/** What is said of one photo, put together from every file that speaks of it: one that keeps it private is enough. */
export function readSidecars(
  places: readonly SidecarPlace[],
  reading: Reading,
  directory: Directory,
): ReadonlyMap<string, PhotoSidecar> {
  const sidecars = new Map<string, PhotoSidecar>();
  // What is named like one file speaks louder than what is named like several.
  for (const place of [...places].sort((a, b) => Number(a.own) - Number(b.own))) {
    const read = place.inDoubt && !recordEnding.test(place.file) ? undefined : readSidecar(place, reading, directory);
    for (const photo of place.photos) {
      const before = sidecars.get(photo);
      const said = place.inDoubt ? undefined : read?.(photo);
      const isPrivate = place.inDoubt || said === undefined || said.private || before?.private === true;
      sidecars.set(photo, { ...(before ?? { photo, varieties: [] }), ...withoutGaps(said), private: isPrivate });
    }
  }
  return new Map([...sidecars].sort(([a], [b]) => (a < b ? -1 : 1)));
}

function readSidecar(
  { file, photos }: SidecarPlace,
  reading: Reading,
  directory: Directory,
): ((photo: string) => PhotoSidecar) | undefined {
  const parsed = reading.files.get(file);
  if (parsed === undefined) return undefined;
  const checked = checkRecord(sidecarSchema, "a photo's sidecar", parsed);
  reading.problems.push(...checked.problems);
  if (photos.length === 0 && checked.private) reading.problems.push(keepsNothing(file));
  if (checked.front === undefined) return undefined;
  const { front } = checked;
  const link = linker(directory, parsed, reading);
  const bed = link("bed", front.bed, ["bed"]);
  const varieties = (front.varieties ?? []).flatMap((name, index) => link("variety", name, ["varieties", index]) ?? []);
  const plantTops = front.heights?.flatMap(({ variety, top }, index) => {
    const id = link("variety", variety, ["heights", index, "variety"]);
    return id === undefined ? [] : [{ variety: id, top }];
  });
  const links = { bed, varieties, plantTops, private: checked.private, body: bodyOf(parsed) };
  const openly = front.private === false && { openly: true };
  return (photo) => ({ ...makeSidecar(front, { photo, ...links }), ...openly, place: { file, line: 1, column: 1 } });
}

function keepsNothing(file: string): Problem {
  return problem(
    "privacy/photo",
    { file, line: 1, column: 1 },
    "This keeps a photo private that does not lie beside it, so the photo may stand elsewhere for everybody to see.",
    "Put it beside its photo and name it like that, or delete it.",
  );
}

/** A key that one file leaves out does not take away what another says. */
function withoutGaps(sidecar: PhotoSidecar | undefined): Partial<PhotoSidecar> {
  const { varieties, ...rest } = sidecar ?? { varieties: [] };
  const told = Object.entries(rest).filter(([, value]) => value !== undefined);
  return { ...Object.fromEntries(told), ...(varieties.length > 0 && { varieties }) };
}

/** Finds the id behind a name; a name that leads nowhere is a problem and gives undefined. */
function linker(directory: Directory, parsed: ParsedFile, { problems }: Reading) {
  return (kind: "bed" | "variety", name: string | undefined, path: readonly PropertyKey[]): string | undefined => {
    if (name === undefined) return undefined;
    const id = kind === "bed" ? bedCalled(name, directory) : varietyCalled(name, directory);
    if (id !== undefined) return id;
    const records = kind === "bed" ? directory.beds : directory.varieties;
    const folder = kind === "bed" ? "beds" : "varieties";
    problems.push(
      problem(
        `link/unknown-${kind}`,
        { file: parsed.file, ...parsed.places().value(path) },
        `No ${kind} is called "${name}", so it was left out here.`,
        didYouMean(name, namesOf(records.values())) ?? `Write ${folder}/${idOfName(name) || "name"}.md to describe it.`,
      ),
    );
    return undefined;
  };
}

function bedCalled(name: string, { names, beds }: Directory): string | undefined {
  const taken = idOfName(name);
  return names.find("bed", name) ?? (beds.has(taken) ? taken : undefined);
}

/** "Musselburgh", "Musselburgh leek" and "leek Musselburgh" are one variety. */
function varietyCalled(name: string, { names, varieties }: Directory): string | undefined {
  const words = wordsOf(name);
  const found = names.plantAt(words, 0);
  if (found?.variety !== undefined && found.end === words.length) return found.variety;
  const taken = idOfName(name);
  return names.find("variety", name) ?? (varieties.has(taken) ? taken : undefined);
}

function namesOf(records: Iterable<Bed | Variety>): readonly string[] {
  return [...records].flatMap((record) => [
    record.title,
    ...("alsoCalled" in record ? record.alsoCalled : record.alsoSpelled),
  ]);
}

/** A promise is kept on a day or in an episode. */
function keptIn(
  written: string,
  episodes: ReadonlySet<string>,
  parsed: ParsedFile,
  path: readonly PropertyKey[],
  { problems }: Reading,
): string | undefined {
  if (isDay(written) || episodes.has(written)) return written;
  const id = idOfName(written);
  if (episodes.has(id)) return id;
  const reading = parseDay(written);
  if ("day" in reading) return reading.day;
  const place = { file: parsed.file, ...parsed.places().value(path) };
  if (reading.refused !== "not a date") {
    problems.push(problem(ruleOfRefusedDay(reading), place, reading.what, reading.fix));
  } else {
    problems.push(
      problem(
        "link/unknown-episode",
        place,
        `"${written}" is neither a day nor an episode, so the promise counts as open.`,
        didYouMean(written, episodes) ?? "Write the day it was kept, or the folder name of the episode that kept it.",
      ),
    );
  }
  return undefined;
}
