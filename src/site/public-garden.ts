/**
 * The garden as viewers may see it. Everything the public site shows is made from what this function lets through, so
 * this file is the one place to read when asking whether something private can get out; what films say is let through by
 * public-captions.ts beside it.
 *
 * A record is kept back when it says so itself, and when it lies in, grows in or shows something that is kept back: a
 * private site keeps its beds back, a private bed its photos and events, a private note the photos it alone links. What
 * names something that is kept back is left out (without-secrets.ts). What follows from the records (plantings,
 * totals, changes) is then grown anew from the public ones alone, so that no sum and no sentence rests on a private line.
 */
import type {
  Bed,
  ChangeKind,
  Episode,
  Event,
  EventKind,
  Garden,
  GardenGrowth,
  Note,
  Photo,
  Problem,
  RecordFile,
  Records,
  Site,
  Trial,
} from "../model.ts";
import { withoutPrice } from "../records/index.ts";
import { openPickings } from "../season/index.ts";
import { growGarden } from "../timeline/index.ts";
import { lettersOf, namesKeptBack } from "./privacy/kept-back-names.ts";
import { namesOf } from "./privacy/private-phrases.ts";
import {
  eventNamingNobody,
  eventWithoutPeople,
  gearWithoutGiver,
  namesSomebody,
  withoutGiver,
} from "./without-people.ts";
import { eventWithout, saidInPublic, withoutSecrets } from "./without-secrets.ts";

/** What a person notes down for themselves: it belongs to the field pages. */
const OWN_BUSINESS: ReadonlySet<EventKind> = new Set(["to do", "asked", "plan"]);
const OWN_CHANGES: ReadonlySet<ChangeKind> = new Set(["to do", "asked", "overdue", "plan"]);

export function publicGarden(garden: Garden): Garden {
  const seen = publicRecords(garden);
  const open = grown.get(seen) ?? growPublic(garden, seen);
  grown.set(seen, open);
  return {
    ...open,
    growth: publicGrowth(garden.growth, open.photos),
  };
}

const grown = new WeakMap<PublicRecords, Garden>();

function growPublic(garden: Garden, seen: PublicRecords): Garden {
  const { records, photos } = withoutSecrets(seen, namesKeptBack(garden, seen.records));
  const grown = growGarden({ ...records, beds: new Map([...records.beds, [UNSHOWN.id, UNSHOWN]]) }, photos);
  return {
    ...grown,
    beds: records.beds,
    problems: [],
    doubts: [],
    photosTakenAt: undefined,
    tasks: [],
    plans: [],
    openPickings: openPickings(garden),
    changes: new Map(
      [...grown.changes]
        .filter(([bed]) => bed !== UNSHOWN.id)
        .map(([bed, changes]) => [bed, changes.filter(({ kind }) => !OWN_CHANGES.has(kind))]),
    ),
  };
}

/** What a person wrote in public records and viewers are not shown, because it names something that is kept back. */
export function privacyHints(garden: Garden): readonly Problem[] {
  const open = publicRecords(garden);
  return saidInPublic(open, namesKeptBack(garden, open.records));
}

/** What was measured in a public photo is as public as the photo. */
function publicGrowth(growth: GardenGrowth | undefined, photos: readonly Photo[]): GardenGrowth | undefined {
  if (growth === undefined) return undefined;
  const open = new Set(photos.map(({ path }) => path));
  return {
    photos: growth.photos.filter(({ photo }) => open.has(photo)),
    bursts: growth.bursts?.flatMap((burst) => {
      const shown = burst.photos.filter((photo) => open.has(photo));
      const [first] = shown;
      return first === undefined ? [] : [{ best: open.has(burst.best) ? burst.best : first, photos: shown }];
    }),
  };
}

type IsPublic = (id: string | undefined) => boolean;

interface PublicRecords {
  readonly records: Records;
  readonly photos: readonly Photo[];
}

const made = new WeakMap<Garden["events"], { readonly of: Garden; readonly open: PublicRecords }>();

/** Once for the records of a garden: its hints, its photo copies and its pages all begin with it. */
function publicRecords(garden: Garden): PublicRecords {
  const known = made.get(garden.events);
  if (known !== undefined && isSame(known.of, garden)) return known.open;
  const open = readPublicRecords(garden);
  made.set(garden.events, { of: garden, open });
  return open;
}

/** What a garden gets after it was grown, and nothing here is read from. */
const LATER: ReadonlySet<string> = new Set([
  "problems",
  "growth",
  "photosTakenAt",
  "spoken",
] satisfies (keyof Garden)[]);

/** Whether two gardens are the very same in all else. */
function isSame(a: Garden, b: Garden): boolean {
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]) as ReadonlySet<keyof Garden>;
  return [...keys].every((key) => LATER.has(key) || a[key] === b[key]);
}

function readPublicRecords(garden: Garden): PublicRecords {
  if (garden.settings.private === true) return nothing(garden);
  const isLikePrivate = privateNamesOf(garden);
  const { onlyDescribed } = garden.settings;
  const isPrivateName = (record: RecordFile) => isLikePrivate(record) || (onlyDescribed === true && !record.described);
  const sites = kept(garden.sites, (site) => !site.private, withoutPosition);
  const beds = kept(
    garden.beds,
    (bed) =>
      !bed.private &&
      (bed.site === undefined || !garden.sites.has(bed.site) || sites.has(bed.site)) &&
      !isPrivateName(bed),
    withoutFilmingNotes,
  );
  const varieties = kept(
    garden.varieties,
    (variety) => !variety.private && !isPrivateName(variety),
    (variety) => withoutGiver(variety, garden),
  );
  const gear = kept(
    garden.gear,
    (thing) => !thing.private && !isPrivateName(thing),
    (thing) => gearWithoutGiver(thing, garden),
  );
  const sellers = new Set(
    [...[...varieties.values()].map(({ source }) => source?.name), ...[...gear.values()].map(({ from }) => from)].map(
      (name) => name?.toLowerCase() ?? "",
    ),
  );
  const unnamed = (event: Event) => {
    const of = garden.varieties.get(event.variety ?? "") ?? garden.gear.get(event.gear ?? "");
    return eventWithoutPeople(event, of, sellers);
  };

  const isNaming = namesSomebody({ ...garden, sites, beds, varieties, gear });

  /** A thing nothing describes keeps nothing back. */
  const unlessKeptBack = <T>(open: ReadonlyMap<string, T>, all: ReadonlyMap<string, T>): IsPublic => {
    return (id) => id === undefined || open.has(id) || !all.has(id);
  };
  const siteIsPublic = unlessKeptBack(sites, garden.sites);
  const bedIsPublic = unlessKeptBack(beds, garden.beds);
  const varietyIsPublic = unlessKeptBack(varieties, garden.varieties);
  const gearIsPublic = unlessKeptBack(gear, garden.gear);

  const notes = garden.notes.filter((note) => !note.private && (note.beds.length === 0 || note.beds.some(bedIsPublic)));
  const openFiles = new Set(notes.map(({ place }) => place.file));
  const closedFiles = new Set(garden.notes.flatMap(({ place }) => (openFiles.has(place.file) ? [] : [place.file])));
  const bedsFrom = new Map(notes.map((note) => [note.place.file, note.bedsFrom]));
  const openEvents = garden.events.flatMap((event) => {
    const isOpen =
      !event.private &&
      !OWN_BUSINESS.has(event.kind) &&
      !closedFiles.has(event.place.file) &&
      !isUnderPrivateBed(event, bedsFrom.get(event.place.file), bedIsPublic) &&
      varietyIsPublic(event.variety) &&
      gearIsPublic(event.gear);
    if (!isOpen) return [];
    return eventNamingNobody(unnamed(withoutPrices(event)), isNaming).flatMap((open) => publicMove(open, bedIsPublic));
  });
  const openNotes = new Set(notes);
  const linked = new Set(
    notes.flatMap(({ photos, privatePhotos = [] }) => photos.filter((photo) => !privatePhotos.includes(photo))),
  );
  const linkedInPrivate = new Set(
    garden.notes.flatMap((note) => (openNotes.has(note) ? (note.privatePhotos ?? []) : note.photos)),
  );
  const photoIsPublic = (photo: Photo) =>
    !photo.private &&
    bedIsPublic(photo.bed) &&
    siteIsPublic(photo.site) &&
    photo.varieties.every(varietyIsPublic) &&
    (linked.has(photo.path) || !linkedInPrivate.has(photo.path)) &&
    (onlyDescribed !== true ||
      photo.bed !== undefined ||
      linked.has(photo.path) ||
      garden.photoSidecars.has(photo.path));
  const photos = garden.photos
    .filter(photoIsPublic)
    // The time of a file is that of its last copying: no day to tell viewers, and another one on another machine.
    .filter(({ dateBasis }) => dateBasis !== "file time")
    .map(withoutInstant)
    .map((photo) =>
      photo.caption !== undefined && isNaming(photo.caption) ? { ...photo, caption: undefined } : photo,
    );
  const photoPaths = new Set(photos.map(({ path }) => path));
  const hidden = wordsOfHiddenPhotos(notes, photoPaths);
  const events = openEvents.flatMap((event) => {
    const words = hidden.get(event.place.file) ?? [];
    return words.length === 0 ? [event] : eventWithout(event, (text) => !words.some((word) => text.includes(word)));
  });
  const crops = new Set([...[...varieties.values()].map(({ crop }) => crop), ...events.map(({ crop }) => crop)]);

  return {
    photos,
    records: {
      settings: {
        ...garden.settings,
        ...(garden.settings.inDoubt === true && { body: "" }),
        position: undefined,
        kit: [],
        weights: {},
        goals: undefined,
        pins: undefined,
        prices: undefined,
      },
      sites,
      beds,
      varieties,
      crops: kept(garden.crops, ({ id }) => crops.has(id)),
      gear,
      trials: kept(garden.trials, (trial) => !trial.private && armsArePublic(trial, bedIsPublic, varietyIsPublic)),
      episodes: kept(
        garden.episodes,
        (episode) => !episode.private && episode.status === "published",
        (episode) => {
          const shown = asPublished(episode, bedIsPublic, garden.episodes);
          return { ...shown, promised: shown.promised.filter(({ what }) => !isNaming(what)) };
        },
      ),
      notes: notes
        .map((note) => asRead(note, bedIsPublic, photoPaths, hidden.get(note.place.file) ?? []))
        .map((note) => ({ ...note, story: note.story.filter(({ text }) => !isNaming(text)) })),
      events,
      // How lines were read is told to the person alone.
      readings: [],
      words: [],
      photoFiles: garden.photoFiles.filter((file) => photoPaths.has(file)),
      clipFiles: [],
      asideFiles: [],
      sounds: [],
      photoSidecars: new Map(),
      weatherFiles: [],
      problems: [],
    },
  };
}

/** Of a garden that is private as a whole viewers see an empty site, without even its name. */
function nothing(garden: Garden): PublicRecords {
  const { southern, timeZone, units, language, seasonStarts, narrationRate, photoGapDays, base, address } =
    garden.settings;
  const kept = { southern, timeZone, units, language, seasonStarts, narrationRate, photoGapDays, base, address };
  const none = new Map<string, never>();
  return {
    photos: [],
    records: {
      settings: { ...kept, name: "Garden", kit: [], weights: {}, body: "", private: true },
      sites: none,
      beds: none,
      varieties: none,
      crops: none,
      gear: none,
      trials: none,
      episodes: none,
      notes: [],
      events: [],
      readings: [],
      words: [],
      photoFiles: [],
      clipFiles: [],
      asideFiles: [],
      sounds: [],
      photoSidecars: none,
      weatherFiles: [],
      problems: [],
    },
  };
}

/** Says of a record that a note alone names whether it is called like a private one, perhaps of another kind: a bed like a site. */
function privateNamesOf({ sites, beds, varieties, gear }: Garden): (record: RecordFile) => boolean {
  const all = [sites, beds, varieties, gear].flatMap((kind): RecordFile[] => [...kind.values()]);
  const secret = new Set(all.filter((record) => record.private).flatMap((record) => namesOf(record).map(lettersOf)));
  return (record) => !record.described && secret.has(lettersOf(record.title));
}

function kept<T>(
  all: ReadonlyMap<string, T>,
  isPublic: (record: T) => boolean,
  change: (record: T) => T = (record) => record,
): ReadonlyMap<string, T> {
  return new Map([...all].filter(([, record]) => isPublic(record)).map(([id, record]) => [id, change(record)]));
}

/** What was paid is nobody's business, wherever in a line it stands. */
function withoutPrices(event: Event): Event {
  const bare = (said: string | undefined) => (said === undefined ? undefined : withoutPrice(said).text);
  return {
    ...event,
    price: undefined,
    text: withoutPrice(event.text).text,
    what: bare(event.what),
    detail: bare(event.detail),
    spot: bare(event.spot),
    cause: bare(event.cause),
    reason: bare(event.reason),
    from: bare(event.from),
    more: event.more.map((said) => withoutPrice(said).text),
  };
}

/** Stands for every private bed that plants of a public one move to or come from. */
const UNSHOWN: Bed = {
  id: "a bed that is not shown",
  title: "a bed that is not shown",
  private: true,
  body: "",
  described: false,
  alsoCalled: [],
  shade: [],
  built: [],
  filled: [],
  viewpoints: [],
};

/**
 * A move between a public and a private bed is seen from the public end only, in no words of the person's own. Other
 * events of private beds stay private.
 */
function publicMove(event: Event, bedIsPublic: IsPublic): readonly Event[] {
  if (bedIsPublic(event.bed) && bedIsPublic(event.toBed)) return [event];
  if (event.kind !== "moved" || (!bedIsPublic(event.bed) && !bedIsPublic(event.toBed))) return [];
  const shown = (bed: string | undefined) => (bedIsPublic(bed) ? bed : UNSHOWN.id);
  return [
    {
      ...event,
      bed: shown(event.bed),
      toBed: shown(event.toBed),
      text: "",
      detail: undefined,
      spot: undefined,
      more: [],
    },
  ];
}

function withoutPosition(site: Site): Site {
  return { ...site, position: undefined };
}

/** What shades a bed and where the camera stands can tell where on Earth a bed is. */
function withoutFilmingNotes(bed: Bed): Bed {
  return { ...bed, shade: [], viewpoints: bed.viewpoints.map(({ name }) => ({ name })) };
}

/** Viewers are told the day; the minute and how it is known are nobody's business. */
function withoutInstant(photo: Photo): Photo {
  return { ...photo, time: undefined, instant: undefined, dateBasis: "unknown" };
}

function asPublished(episode: Episode, bedIsPublic: IsPublic, all: ReadonlyMap<string, Episode>): Episode {
  // The name of a film that nobody has seen gives it away, and a promise kept in it is not kept for viewers.
  const isUnseen = (kept: string | undefined) => {
    const film = kept === undefined ? undefined : all.get(kept);
    return film !== undefined && (film.private || film.status !== "published");
  };
  return {
    ...episode,
    target: undefined,
    start: undefined,
    stops: episode.stops.filter((stop) => bedIsPublic(stop.bed)),
    promised: episode.promised
      .filter((promise) => bedIsPublic(promise.bed))
      .map((promise) => (isUnseen(promise.kept) ? { ...promise, kept: undefined } : promise)),
    must: [],
    keep: [],
    skip: [],
    captions: [],
    filming: undefined,
    plan: undefined,
  };
}

/** A line without a bed speaks of that of the heading above it. */
function isUnderPrivateBed({ bed, place }: Event, bedsFrom: Note["bedsFrom"], bedIsPublic: IsPublic): boolean {
  const { beds = [] } = (bed === undefined && bedsFrom?.findLast(({ line }) => line <= place.line)) || {};
  return beds.length > 0 && !beds.some(bedIsPublic);
}

function asRead(note: Note, bedIsPublic: IsPublic, photoPaths: ReadonlySet<string>, hidden: readonly string[]): Note {
  return {
    ...note,
    beds: note.beds.filter(bedIsPublic),
    bedsFrom: note.bedsFrom?.map(({ line, beds }) => ({ line, beds: beds.filter(bedIsPublic) })),
    photos: note.photos.filter((photo) => photoPaths.has(photo)),
    photoWords: undefined,
    voice: undefined,
    privatePhotos: undefined,
    story: note.story
      .filter((part) => part.asks !== true && part.private !== true)
      .map((part) => (hidden.length === 0 ? part : { ...part, text: cutImages(part.text, hidden) })),
  };
}

/** By note: how it describes photos that viewers are not shown. */
function wordsOfHiddenPhotos(
  notes: readonly Note[],
  photoPaths: ReadonlySet<string>,
): ReadonlyMap<string, readonly string[]> {
  return new Map(
    notes.flatMap(({ photoWords = [], place }) => {
      const words = photoWords.flatMap(({ photo, words }) => (photoPaths.has(photo) ? [] : [words]));
      return words.length === 0 ? [] : [[place.file, words] as const];
    }),
  );
}

/** An image that is not shown leaves none of its words, nor where it lies. */
function cutImages(markdown: string, hidden: readonly string[]): string {
  return markdown.replace(/!?\[([^\]]*)\](?:\([^)]*\)|\[[^\]]*\])?/gu, (image, words: string) =>
    hidden.includes(words.replace(/\s+/gu, " ").trim()) ? "" : image,
  );
}

function armsArePublic(trial: Trial, bedIsPublic: IsPublic, varietyIsPublic: IsPublic): boolean {
  return trial.arms.every((arm) => bedIsPublic(arm.bed) && varietyIsPublic(arm.variety));
}
