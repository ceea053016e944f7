/**
 * Public records in which a person named something that they keep back, or told where on Earth it is: those words are left
 * out, and what else is said of public things stays. Every text of every record is looked at, whichever field it is, so
 * that a field made tomorrow is looked at too.
 */
import type { Event, Note, Photo, Place, Problem, Records, Source } from "../model.ts";
import { problem, withoutRemarks } from "../records/index.ts";
import { coordinatesIn } from "./privacy/coordinates.ts";
import { type KeptBackNames, keptBackNameIn } from "./privacy/kept-back-names.ts";

interface Public {
  readonly records: Records;
  readonly photos: readonly Photo[];
}

/** Fields that hold no words but ids, kinds and places in files. */
const NOT_WORDS: ReadonlySet<string> = new Set([
  ...["id", "place", "path", "bed", "beds", "toBed", "site", "crop", "variety", "varieties", "gear", "plantings"],
  ...[
    "kind",
    "status",
    "obtained",
    "giver",
    "notices",
    "unit",
    "units",
    "language",
    "timeZone",
    "base",
    "address",
    "firstStop",
    "lastStop",
  ],
  ...["verb", "photo", "photos", "file", "dateBasis", "day", "published", "started", "kept", "family", "use"],
]);

/** Fields without which a thing is nothing: where one has to go, the thing goes. */
const NEEDED: ReadonlySet<string> = new Set(["title", "name", "what", "question", "measure", "plural"]);

type IsSilent = (text: string) => boolean;

export function withoutSecrets({ records, photos }: Public, names: KeptBackNames): Public {
  const isSilent = silence(names);
  const all = <T extends object>(kind: ReadonlyMap<string, T>): ReadonlyMap<string, T> =>
    new Map([...kind].flatMap(([id, record]) => cleaned(record, isSilent).map((one) => [id, one] as const)));
  const { name, ...settings } = records.settings;
  return {
    photos: photos.flatMap((photo) => cleaned(photo, isSilent)),
    records: {
      ...records,
      settings: { name: isSilent(name) ? name : "Garden", ...(cleaned(settings, isSilent)[0] ?? settings) },
      sites: all(records.sites),
      beds: all(records.beds),
      varieties: all(records.varieties),
      gear: all(records.gear),
      trials: all(records.trials),
      episodes: all(records.episodes),
      notes: records.notes.map((note) => noteWithout(note, isSilent)),
      events: records.events.flatMap((event) => eventWithout(event, isSilent)),
    },
  };
}

/** Of texts that were compared once the answer is known: the same words stand in many events. */
function silence(names: KeptBackNames): IsSilent {
  const known = new Map<string, boolean>();
  return (text) => {
    let silent = known.get(text);
    if (silent === undefined) {
      silent = keptBackNameIn(text, names) === undefined && coordinatesIn(text) === undefined;
      known.set(text, silent);
    }
    return silent;
  };
}

/** The thing without the texts that have to go; nothing when one of them is what it is called. */
function cleaned<T extends object>(thing: T, isSilent: IsSilent): readonly T[] {
  const result: Record<string, unknown> = {};
  for (const [key, value] of Object.entries(thing)) {
    if (NOT_WORDS.has(key)) {
      result[key] = value;
      continue;
    }
    if (key === "source" && typeof value === "object" && value !== null) {
      result[key] = sourceWithout(value as Source, isSilent);
      continue;
    }
    const kept = key === "body" ? bodyWithout(String(value), isSilent) : valueWithout(value, isSilent);
    if (kept === undefined && value !== undefined && NEEDED.has(key)) return [];
    result[key] = kept;
  }
  return [result as T];
}

function valueWithout(value: unknown, isSilent: IsSilent): unknown {
  if (typeof value === "string") {
    const text = withoutRemarks(value);
    return isSilent(text) ? text : undefined;
  }
  if (Array.isArray(value)) return value.map((one) => valueWithout(one, isSilent)).filter((one) => one !== undefined);
  if (typeof value !== "object" || value === null) return value;
  return cleaned(value, isSilent)[0];
}

/** How a thing was obtained has to be said, whoever it is from. */
function sourceWithout(source: Source, isSilent: IsSilent): Source | undefined {
  const link = source.link !== undefined && isSilent(source.link) ? source.link : undefined;
  const name = withoutRemarks(source.name);
  if (isSilent(name)) return { ...source, name, link };
  return source.obtained === undefined ? undefined : { ...source, name: source.obtained, link: undefined };
}

function bodyWithout(body: string, isSilent: IsSilent): string {
  return paragraphsOf(withoutRemarks(body)).filter(isSilent).join("\n\n");
}

function noteWithout(note: Note, isSilent: IsSilent): Note {
  const title = note.title === undefined ? undefined : withoutRemarks(note.title);
  return {
    ...note,
    title: title !== undefined && isSilent(title) ? title : undefined,
    story: note.story
      .map((piece) => ({ ...piece, text: withoutRemarks(piece.text) }))
      .filter(({ text }) => text.trim() !== "" && isSilent(text)),
  };
}

/** An event about the thing itself goes; one that only mentions it keeps its facts and loses those words. */
export function eventWithout(written: Event, isSilent: IsSilent): readonly Event[] {
  const remarkless = (text: string | undefined) => (text === undefined ? undefined : withoutRemarks(text).trim());
  const event: Event = {
    ...written,
    text: withoutRemarks(written.text).trim(),
    ...given("what", remarkless(written.what)),
    ...given("cause", remarkless(written.cause)),
    ...given("detail", remarkless(written.detail)),
    ...given("spot", remarkless(written.spot)),
    ...given("reason", remarkless(written.reason)),
    ...given("from", remarkless(written.from)),
    more: written.more.map((text) => withoutRemarks(text)),
  };
  const { text, what, cause, detail, spot, reason, from, more } = event;
  // A line is cut at its commas into what it says, and half of a position is still half of one.
  const isPlaced = coordinatesIn(text) !== undefined;
  const silent = (words: string | undefined) =>
    words === undefined || (isSilent(words) && !(isPlaced && /\p{Nd}|point/u.test(words)));
  if ([text, what, cause, detail, spot, reason, from, ...more].every(silent)) return [event];
  if (!silent(what) || !silent(cause)) return [];
  return [
    {
      ...event,
      text: "",
      ...(detail !== undefined && { detail: silent(detail) ? detail : undefined }),
      ...(spot !== undefined && { spot: silent(spot) ? spot : undefined }),
      ...(reason !== undefined && { reason: silent(reason) ? reason : undefined }),
      ...(from !== undefined && { from: silent(from) ? from : undefined }),
      more: more.filter(silent),
    },
  ];
}

function given<Key extends string>(key: Key, value: string | undefined): { readonly [K in Key]?: string } {
  return value === undefined || value === "" ? {} : ({ [key]: value } as { readonly [K in Key]?: string });
}

/** What viewers are not shown, and why, for the person who wrote it. `open` is what they may see before it is left out. */
export function saidInPublic({ records, photos }: Public, names: KeptBackNames): readonly Problem[] {
  const kinds = [records.beds, records.sites, records.varieties, records.gear, records.trials, records.episodes];
  const said = [
    ...records.notes.flatMap((note) => [
      ...note.story,
      ...(note.title ? [{ text: note.title, place: note.place }] : []),
    ]),
    ...records.events.flatMap((event) => textsIn(event).map((text) => ({ text, place: event.place }))),
    ...kinds.flatMap((kind) =>
      [...kind.values()].flatMap((record) =>
        record.place === undefined ? [] : textsIn(record).map((text) => ({ text, place: record.place as Place })),
      ),
    ),
    ...photos.flatMap((photo) => textsIn(photo).map((text) => ({ text, place: head(photo.path) }))),
    ...textsIn(records.settings).map((text) => ({ text, place: head("garden.md") })),
  ];
  const found = said.flatMap(({ text, place }) => {
    const plain = withoutRemarks(text);
    const name = keptBackNameIn(plain, names);
    const position = coordinatesIn(plain);
    return [
      ...(name === undefined ? [] : [named(name, place)]),
      ...(position === undefined ? [] : [placed(position, place)]),
    ];
  });
  return [...new Map(found.map((one) => [JSON.stringify(one), one])).values()];
}

/** Gathered in one list, and no generator: a garden has tens of thousands of events, and every save asks each of them. */
function stringsIn(value: unknown, found: string[] = []): readonly string[] {
  if (typeof value === "string") found.push(value);
  else if (Array.isArray(value)) for (const one of value) stringsIn(one, found);
  else if (typeof value === "object" && value !== null) {
    for (const [key, one] of Object.entries(value)) if (!NOT_WORDS.has(key)) stringsIn(one, found);
  }
  return found;
}

function textsIn(thing: object): readonly string[] {
  return [...new Set(stringsIn(thing).flatMap(paragraphsOf))];
}

function named(name: string, place: Place): Problem {
  return problem(
    "privacy/named",
    place,
    `This names "${name}", which is private, so viewers are not shown these words.`,
    "Name it in a private note instead, or write around it.",
  );
}

function placed(position: string, place: Place): Problem {
  return problem(
    "privacy/position",
    place,
    `"${position}" looks like a position, and positions are private, so viewers are not shown these words.`,
    "Say where it is in other words, or write the number another way if it means something else.",
  );
}

function head(file: string): Place {
  return { file, line: 1, column: 1 };
}

function paragraphsOf(markdown: string): readonly string[] {
  return markdown.split(/\n[ \t]*\n/u);
}
