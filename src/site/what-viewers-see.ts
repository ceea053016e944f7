/**
 * What viewers may see of a garden, thing by thing, and what is kept back. The last published list lies among the private
 * pages: by it a dry run tells what would be new to viewers, and a private record whose file is not there for a moment stays
 * private although nothing says so.
 */

import { readFile, writeFile } from "node:fs/promises";
import path from "node:path";
import type { Event, Garden, Photo, Problem, RecordFile } from "../model.ts";
import { compare } from "../order.ts";
import { idOfName, isDoubt, problem } from "../records/index.ts";
import { DIRECTION_CONTROLS } from "./without-direction-controls.ts";

const LIST = "what-viewers-see.json";

export interface Seen {
  /** "bed Long Bed", "photo photos/long-bed/2026-05-16.jpg", "line of note 2026-05-16: planted 12 leeks". */
  readonly open: readonly string[];
  readonly keptBack: readonly KeptBack[];
  /** What a file of its own keeps back, which must not come out when that file is not there. */
  readonly marked: readonly string[];
}

export interface KeptBack {
  /** Of the form above; of a note only its name. */
  readonly what: string;
  /** "it is marked private in beds/shed.md" */
  readonly why: string;
}

const KINDS = {
  sites: "site",
  beds: "bed",
  varieties: "variety",
  gear: "gear",
  trials: "trial",
  episodes: "film",
} as const;
type Kind = keyof typeof KINDS;

const QUESTION = 'it can be read in more than one way: "plotreel settle" asks what it says';

const NAMES = 'it seems to name somebody: "may be named" in garden.md lists whom viewers may read of';

/** `before` is the list of the last time. */
export function whatViewersSee(garden: Garden, open: Garden, before?: Seen): Seen {
  const seen: string[] = [];
  const keptBack: KeptBack[] = [];
  const marked: string[] = [];
  const wasMarked = new Set(before?.marked.map(plain));
  const doubts = new Map(garden.problems.filter(isDoubt).map((found) => [found.file, found.what]));
  const fileWhy = (file: string | undefined, usual: string) => {
    const doubt = file === undefined ? undefined : doubts.get(file);
    return doubt === undefined ? usual : `it is in doubt (${file}): ${doubt}`;
  };
  for (const [kind, word] of Object.entries(KINDS) as [Kind, string][]) {
    for (const [id, record] of garden[kind] as ReadonlyMap<string, RecordFile>) {
      const what = `${word} ${record.title}`;
      if (open[kind].has(id)) seen.push(what);
      else keptBack.push({ what, why: fileWhy(record.place?.file, whyRecord(record, garden)) });
      if (record.private && (record.described || wasMarked.has(plain(what)))) marked.push(what);
    }
  }
  const shown = new Set(open.photos.map(({ path: photo }) => photo));
  const inPrivateNotes = new Set(
    garden.notes.flatMap((note) => (note.private ? note.photos : (note.privatePhotos ?? []))),
  );
  for (const photo of garden.photos) {
    const what = `photo ${photo.path}`;
    const sidecar = garden.photoSidecars.get(photo.path);
    if (shown.has(photo.path)) {
      seen.push(what);
      continue;
    }
    keptBack.push({ what, why: fileWhy(sidecar?.place?.file ?? photo.path, whyPhoto(photo, garden)) });
    const isMarked = (sidecar?.private === true && sidecar.place !== undefined) || inPrivateNotes.has(photo.path);
    if (isMarked || (photo.private && wasMarked.has(plain(what)))) marked.push(what);
  }
  const lines = Map.groupBy(open.events, ({ place }) => place.file);
  const notes = new Map(open.notes.map((note) => [note.id, note]));
  for (const note of garden.notes) {
    const said = notes.get(note.id);
    if (said === undefined) {
      const usual = note.private ? `it is marked private in ${note.place.file}` : "it is of nothing that viewers see";
      keptBack.push({ what: `note ${note.id}`, why: fileWhy(note.place.file, usual) });
      continue;
    }
    for (const part of note.story) {
      const why =
        part.private === true
          ? "it, or what it stands below, says that it is private"
          : part.asks === true
            ? QUESTION
            : said.story.some(({ place }) => place.line === part.place.line)
              ? undefined
              : NAMES;
      if (why !== undefined) keptBack.push({ what: `words of note ${note.id}: ${part.text}`, why });
    }
    for (const { text } of said.story) seen.push(`words of note ${note.id}: ${text}`);
    for (const event of lines.get(note.place.file) ?? [])
      seen.push(`line of note ${note.id}: ${event.text || event.kind}`);
  }
  return {
    open: [...new Set(seen)].sort(compare),
    keptBack: keptBack.sort((a, b) => compare(a.what, b.what)),
    marked: [...new Set(marked)].sort(compare),
  };
}

export interface Gone {
  readonly what: string;
  /** Goes on after "because". */
  readonly why: string;
  /** What to do about it, a sentence. */
  readonly fix?: string | undefined;
}

/** What viewers saw when it was last published, and would not see any more. */
export function goneFromView(garden: Garden, now: Seen, before: Seen | undefined): readonly Gone[] {
  const shown = new Set(now.open);
  const kept = new Map(now.keptBack.map(({ what, why }) => [what, why]));
  const lines = new Map(
    garden.events.map((event) => [`${event.place.file}: ${event.text || event.kind}`, event] as const),
  );
  const files = new Map(garden.notes.map((note) => [note.id, note.place.file]));
  return (before?.open ?? [])
    .filter((what) => !shown.has(what))
    .map((what) => {
      const why = kept.get(what);
      const file = /^it is marked private in (.*)$/u.exec(why ?? "")?.[1];
      if (file !== undefined)
        return { what, why: why ?? "", fix: `Take "private: true" out of ${file} if viewers may see it.` };
      if (why !== undefined) return { what, why };
      const [, id = "", text = ""] = /^line of note ([^:]+): (.*)$/su.exec(what) ?? [];
      const event = lines.get(`${files.get(id)}: ${text}`);
      return { what, why: event === undefined ? whyNoteGone(what, kept) : whyLine(event, garden, kept) };
    });
}

function whyNoteGone(what: string, kept: ReadonlyMap<string, string>): string {
  const id = what.split(": ", 1)[0]?.split(" of note ")[1];
  return kept.get(`note ${id}`) ?? "it is not in the records any more";
}

function whyLine(event: Event, garden: Garden, kept: ReadonlyMap<string, string>): string {
  const named = [
    ["variety", garden.varieties.get(event.variety ?? "")],
    ["bed", garden.beds.get(event.bed ?? "")],
  ] as const;
  for (const [word, record] of named)
    if (record !== undefined && kept.has(`${word} ${record.title}`))
      return `the ${word} ${record.title} is kept back now`;
  return event.private ? "it, or what it stands below, says that it is private" : "it names or shows something private";
}

const NOT_DESCRIBED = "no file describes it";

function whyRecord(record: RecordFile & { readonly site?: string; readonly status?: string }, garden: Garden): string {
  if (garden.settings.private === true) return "garden.md keeps the whole garden private";
  const site = record.site === undefined ? undefined : garden.sites.get(record.site);
  if (record.private)
    return record.described
      ? `it is marked private in ${record.place?.file}`
      : garden.problems.some(isDoubt)
        ? `${NOT_DESCRIBED}, and other records cannot be read for sure`
        : "no public line names it";
  if (site?.private === true) return `it stands on ${site.title}, which is private`;
  if (record.status === "planned" || record.status === "filmed") return "it is not out yet";
  if (!record.described) return NOT_DESCRIBED;
  return "it names or shows something private";
}

function whyPhoto(photo: Photo, garden: Garden): string {
  const sidecar = garden.photoSidecars.get(photo.path);
  if (sidecar?.private === true && sidecar.place !== undefined) return `it is marked private in ${sidecar.place.file}`;
  const bed = photo.bed === undefined ? undefined : garden.beds.get(photo.bed);
  if (bed?.private === true) return `it shows ${bed.title}, which is private`;
  if (photo.dateBasis === "file time" || photo.day === undefined)
    return "nothing but the file's own time tells its day";
  return photo.private
    ? "it shows what another private photo shows"
    : "only private notes show it, or it shows something private";
}

/** To be called on the finished folder of the private pages. */
export async function keepWhatViewersSee(privateDir: string, seen: Seen): Promise<void> {
  // A name that turns the reading direction is kept as it is, and turns nothing where the list is looked at.
  const json = JSON.stringify(seen, null, 1).replace(
    DIRECTION_CONTROLS,
    (control) => `\\u${control.charCodeAt(0).toString(16)}`,
  );
  await writeFile(path.join(privateDir, LIST), `${json}\n`);
}

/** Undefined when nothing was published here before. */
export async function lastSeen(privateDir: string): Promise<Seen | undefined> {
  try {
    const { open, keptBack, marked } = JSON.parse(await readFile(path.join(privateDir, LIST), "utf8")) as Seen;
    return { open: [...open], keptBack: [...keptBack], marked: [...marked] };
  } catch {
    return undefined;
  }
}

/**
 * The garden with what was kept back when it was last published and of which no file speaks any more: a bed or a variety
 * that notes still name, a photo whose sidecar is gone. Whoever wants them seen describes them. While anything else is in
 * doubt, a name that no file describes and viewers have not seen yet is kept back too: its file may be what is missing, and
 * before the first publish nothing else would tell.
 */
export function keptBackAsBefore(garden: Garden, before: Seen | undefined): Garden {
  const secret = new Set(before?.marked.map(plain));
  const shown = new Set(before?.open.map(plain));
  const isDoubtful = garden.problems.some(isDoubt);
  const problems: Problem[] = [];
  let isChanged = false;
  const keptBack = <T extends { readonly private: boolean }>(record: T): T => {
    isChanged = true;
    return { ...record, private: true };
  };
  const asBefore = <T extends RecordFile>(
    kind: "beds" | "varieties",
    all: ReadonlyMap<string, T>,
  ): ReadonlyMap<string, T> =>
    new Map(
      [...all].map(([id, record]) => {
        const thing = plain(`${KINDS[kind]} ${record.title}`);
        if (record.described || record.private) return [id, record];
        if (!secret.has(thing)) return [id, isDoubtful && !shown.has(thing) ? keptBack(record) : record];
        problems.push(goneRecord(KINDS[kind], kind, record));
        return [id, keptBack(record)];
      }),
    );
  const beds = asBefore("beds", garden.beds);
  const varieties = asBefore("varieties", garden.varieties);
  const photos = garden.photos.map((photo): Photo => {
    if (photo.private || garden.photoSidecars.has(photo.path) || !secret.has(plain(`photo ${photo.path}`)))
      return photo;
    problems.push(gonePhoto(photo));
    return keptBack(photo);
  });
  // The garden itself, of which much may be worked out already.
  if (!isChanged) return garden;
  return { ...garden, beds, varieties, photos, problems: [...garden.problems, ...problems] };
}

function plain(thing: string): string {
  return idOfName(thing);
}

function goneRecord(word: string, folder: string, { id, title, place }: RecordFile): Problem {
  return problem(
    "privacy/described-no-more",
    place ?? { file: folder, line: 1, column: 1 },
    `The ${word} "${title}" was kept back when you last published, and no file describes it any more, so it is kept private.`,
    `Bring ${folder}/${id}.md back, or write it anew if viewers may see it: plotreel new ${word} "${title}".`,
  );
}

function gonePhoto({ path: photo }: Photo): Problem {
  return problem(
    "privacy/described-no-more",
    { file: photo, line: 1, column: 1 },
    "This photo was kept back when you last published, and nothing says so any more, so it is kept private.",
    `Bring back what kept it private, or write "private: false" into ${photo.replace(/\.[^.]*$/, "")}.md if viewers may see it.`,
  );
}
