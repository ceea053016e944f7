/**
 * The last step of reading: what could not be read for sure, stands beside an error, or is called nearly like something
 * private, is private until it can. Works on records of which every problem is known.
 */
import type { Bed, Event, Note, PhotoSidecar, Place, Problem, RecordFile, Records, Site, Variety } from "../model.ts";
import { isDoubt } from "./doubts.ts";
import { lowerForm } from "./line-words.ts";
import { didYouMean, nearestSpellings } from "./nearest-spelling.ts";
import type { ParsedFile } from "./parsed-files.ts";
import { momentName } from "./picture-names.ts";
import { problem, sortProblems } from "./problem-rules.ts";
import type { UnreadFile } from "./unread-files.ts";
import type { YamlValue } from "./yaml-values.ts";

export interface ReadSoFar {
  readonly records: Records;
  readonly files: ReadonlyMap<string, ParsedFile>;
  readonly unread: readonly UnreadFile[];
  /** Photos by the notes that link them and have no day. */
  readonly linkedWithoutDay: readonly string[];
}

export function doubtIsPrivate({ records, files, unread, linkedWithoutDay }: ReadSoFar): Records {
  const inDoubt = new Set(records.problems.filter(isDoubt).map(({ file }) => file));
  const guard = <T extends { readonly private: boolean; readonly place?: Place | undefined }>(record: T): T =>
    !record.private && inDoubt.has(record.place?.file ?? "") ? { ...record, private: true } : record;
  const described = <T extends RecordFile>(all: ReadonlyMap<string, T>): ReadonlyMap<string, T> =>
    new Map([...all].map(([id, record]) => [id, record.described ? guard(record) : record]));

  const sites = described(records.sites);
  const beds = described(records.beds);
  const varieties = described(records.varieties);
  const gear = described(records.gear);
  const grounds = privateAndOpen([
    ...[...beds.values()].filter(isDescribed).map((bed) => ({ ...bed, private: bed.private || isOn(bed, sites) })),
    ...sites.values(),
  ]);
  const plants = privateAndOpen([...varieties.values()].filter(isDescribed));
  const problems: Problem[] = [];

  const titled = [sites, beds, varieties, gear, records.trials, records.episodes].flatMap((kind): RecordFile[] => [
    ...kind.values(),
  ]);
  for (const { record, holds } of namedInTitles(titled, records)) {
    inDoubt.add(record.place?.file ?? "");
    if (record.place) problems.push(namedInTitle(record.place, record.title, holds));
  }
  for (const [file, parsed] of files) {
    for (const { name, kind, path } of namesIn(parsed.data)) {
      const near = nearPrivate(name, kind === "variety" ? plants : grounds);
      if (near === undefined || inDoubt.has(file)) continue;
      inDoubt.add(file);
      problems.push(likePrivate({ file, ...parsed.places().value(path) }, name, near));
    }
  }
  // What a public line does not name is known from private ones alone.
  const notes = records.notes.map(guard);
  const events = records.events.map(guard);
  const named = namedInPublic(notes, events, records);
  const taken = <T extends Bed | Variety>(all: ReadonlyMap<string, T>, folder: "beds" | "varieties", names: Names) =>
    new Map(
      [...all].map(([id, record]) => {
        if (record.described) return [id, guard(record)];
        const near = nearPrivate(record.title, names);
        if (near !== undefined && record.place) problems.push(likePrivate(record.place, record.title, near));
        const mayBeUnread = unread.some((file) => file.folder === folder);
        return [id, near !== undefined || mayBeUnread || !named.has(id) ? { ...record, private: true } : record];
      }),
    );

  const openBeds = taken(beds, "beds", grounds);
  const openVarieties = taken(varieties, "varieties", plants);
  return {
    ...records,
    settings: { ...records.settings, ...(inDoubt.has(settingsFile(files)) && { inDoubt: true }) },
    sites: described(sites),
    beds: openBeds,
    varieties: openVarieties,
    gear: described(gear),
    trials: described(records.trials),
    episodes: described(records.episodes),
    notes,
    events,
    photoSidecars: guardedSidecars(records, notes, guard, [
      ...linkedWithoutDay,
      ...photosOfUnreadNotes(records, unread),
    ]),
    problems: sortProblems([...records.problems, ...problems]),
  };
}

function isDescribed(record: RecordFile): boolean {
  return record.described;
}

function isOn(bed: Bed, sites: ReadonlyMap<string, Site>): boolean {
  return bed.site !== undefined && sites.get(bed.site)?.private === true;
}

function settingsFile(files: ReadonlyMap<string, ParsedFile>): string {
  return [...files.keys()].find((file) => /^garden\.md$/i.test(file)) ?? "garden.md";
}

// --------------------------------------------------------------------------------------------------------------- names

interface Names {
  /** Titles by letters. */
  readonly secret: ReadonlyMap<string, string>;
  readonly open: ReadonlySet<string>;
}

function privateAndOpen(records: readonly (Site | Bed | Variety)[]): Names {
  const secret = new Map<string, string>();
  const open = new Set<string>();
  for (const record of records) {
    const more = "alsoCalled" in record ? record.alsoCalled : "alsoSpelled" in record ? record.alsoSpelled : [];
    for (const name of [record.title, record.id, ...more]) {
      if (record.private) secret.set(lettersOf(name), record.title);
      else open.add(lettersOf(name));
    }
  }
  for (const letters of open) secret.delete(letters);
  return { secret, open };
}

function lettersOf(name: string): string {
  return lowerForm(name).replace(/[^\p{L}\p{N}]+/gu, "");
}

/** The private name that another is a slip for; a name that is no slip is not near. */
function nearPrivate(name: string, { secret, open }: Names): string | undefined {
  if (secret.size === 0) return undefined;
  const letters = lettersOf(name);
  if (open.has(letters) || secret.has(letters)) return undefined;
  const near = nearestSpellings(letters, [...secret.keys(), ...open]).find((one) => secret.has(one));
  return near === undefined ? undefined : secret.get(near);
}

function likePrivate(place: Place, name: string, near: string): Problem {
  return problem(
    "privacy/like-private",
    place,
    `"${name}" is spelled nearly like "${near}", which is private, so it is kept private too.`,
    didYouMean(name, [near]) ?? `Write "${near}" if that is meant, or describe "${name}" in a file of its own.`,
  );
}

/** Records whose title holds that of a private one, unless their own file says that they are public all the same. */
function namedInTitles(
  titled: readonly RecordFile[],
  { crops }: Records,
): readonly { readonly record: RecordFile; readonly holds: string }[] {
  const known = new Set([...crops.values()].flatMap(({ name, plural }) => [name, plural].map(phraseOf)));
  for (const record of titled) if (!record.private) known.add(phraseOf(record.title));
  const secret = titled.filter((record) => record.private && !known.has(phraseOf(record.title)));
  return titled.flatMap((record) => {
    if (record.private || record.openly === true || !record.described) return [];
    const holds = secret.find(({ title }) => phraseOf(record.title).includes(phraseOf(title)));
    return holds === undefined ? [] : [{ record, holds: holds.title }];
  });
}

/** Words between blanks, so that one phrase holds another only by whole words. */
function phraseOf(name: string): string {
  return ` ${lowerForm(name)
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim()} `;
}

function namedInTitle(place: Place, title: string, holds: string): Problem {
  return problem(
    "privacy/named-in-title",
    place,
    `"${title}" holds the name of "${holds}", which is private, so this record is kept private too.`,
    'Call it something else, or write "private: false" in its front matter if viewers may know of both.',
  );
}

const namingKeys: ReadonlyMap<string, "ground" | "variety"> = new Map(
  Object.entries({
    bed: "ground",
    beds: "ground",
    site: "ground",
    stops: "ground",
    "first stop": "ground",
    "last stop": "ground",
    variety: "variety",
    varieties: "variety",
  }),
);

interface Naming {
  readonly name: string;
  readonly kind: "ground" | "variety";
  readonly path: readonly PropertyKey[];
}

/** Names of other records anywhere in front matter. */
function* namesIn(value: YamlValue, path: readonly PropertyKey[] = [], kind?: Naming["kind"]): Generator<Naming> {
  if (typeof value === "string") {
    if (kind !== undefined) yield { name: value, kind, path };
  } else if (Array.isArray(value)) {
    for (const [index, one] of value.entries()) yield* namesIn(one, [...path, index], kind);
  } else {
    for (const [key, one] of Object.entries(value))
      yield* namesIn(one as YamlValue, [...path, key], namingKeys.get(key));
  }
}

/** Ids that a line, a note or a photo that is public names. */
function namedInPublic(notes: readonly Note[], events: readonly Event[], records: Records): ReadonlySet<string> {
  const ids: (string | undefined)[] = [];
  for (const note of notes) if (!note.private) ids.push(...note.beds);
  for (const event of events) if (!event.private) ids.push(event.bed, event.toBed, event.variety);
  for (const photo of records.photoSidecars.values()) if (!photo.private) ids.push(photo.bed, ...photo.varieties);
  for (const trial of records.trials.values()) for (const arm of trial.arms) ids.push(arm.bed, arm.variety);
  for (const episode of records.episodes.values()) for (const stop of episode.stops) ids.push(stop.bed);
  return new Set(ids.filter((id) => id !== undefined));
}

// -------------------------------------------------------------------------------------------------------------- photos

/** Without what only private lines show. */
function openPhotos({ photos, privatePhotos = [] }: Note): readonly string[] {
  return photos.filter((photo) => !privatePhotos.includes(photo));
}

function guardedSidecars(
  records: Records,
  notes: readonly Note[],
  guard: (sidecar: PhotoSidecar) => PhotoSidecar,
  linkedInDoubt: readonly string[],
): ReadonlyMap<string, PhotoSidecar> {
  const linkedInPublic = new Set(notes.flatMap((note) => (note.private ? [] : openPhotos(note))));
  const sidecars = new Map([...records.photoSidecars].map(([photo, sidecar]) => [photo, guard(sidecar)]));
  const keep = (photo: string) =>
    sidecars.set(photo, { ...(sidecars.get(photo) ?? { photo, varieties: [] }), private: true });
  for (const photo of linkedInDoubt) if (!linkedInPublic.has(photo)) keep(photo);
  const secret = new Set(
    [...sidecars.values()].filter((sidecar) => sidecar.private).map(({ photo }) => momentName(photo)),
  );
  if (secret.size > 0)
    for (const file of [...records.photoFiles, ...records.clipFiles]) if (secret.has(momentName(file))) keep(file);
  return sidecars;
}

/** A photo that a note which is not read may keep private. Those with words of their own speak for themselves. */
function photosOfUnreadNotes({ photoFiles, photoSidecars }: Records, unread: readonly UnreadFile[]): readonly string[] {
  if (!unread.some(({ folder }) => folder === "notes")) return [];
  return photoFiles.filter((photo) => !photoSidecars.has(photo));
}
