/** Names that notes use and no file describes: how often, from when to when and where, and which others are nearly the same. */
import type { Day, Event, LineReading, Place, Records } from "../model.ts";
import { compare } from "../order.ts";
import { idOfName, nearestSpellings, normaliseName } from "../records/index.ts";
import { soundLikeness, soundOf } from "../wrap/index.ts";

export type UsedKind = "bed" | "variety" | "source";

export interface NearName {
  readonly name: string;
  readonly by: "spelling" | "sound";
  /** Whether a file describes it. */
  readonly described: boolean;
}

export interface UsedName {
  readonly kind: UsedKind;
  readonly name: string;
  /** Lines of notes that use it. */
  readonly lines: number;
  /** Those of them that are still asked about. */
  readonly asked: number;
  readonly first: Day;
  readonly last: Day;
  /** Notes, the earliest first. */
  readonly files: readonly string[];
  readonly near: readonly NearName[];
}

export interface NamesUsed {
  readonly names: readonly UsedName[];
}

interface Use {
  readonly day: Day;
  readonly place: Place;
  readonly isAsked?: true;
}

/** How alike two names must sound to be told as one that may be the other. */
const soundsLike = 0.86;
/** Sounds below which too much is alike. */
const enoughSounds = 4;

export function namesUsed(records: Records): NamesUsed {
  const uses = usesOf(records);
  const known: Readonly<Record<UsedKind, ReadonlySet<string>>> = {
    bed: new Set([...records.beds.values()].filter(({ described }) => described).map(({ title }) => title)),
    variety: new Set([...records.varieties.values()].filter(({ described }) => described).map(({ title }) => title)),
    source: new Set([
      ...[...records.varieties.values()].flatMap(({ source }) => source?.name ?? []),
      ...[...records.gear.values()].flatMap(({ from }) => from ?? []),
    ]),
  };
  const names = (["bed", "variety", "source"] as const).flatMap((kind) => {
    const used = [...uses[kind].keys()];
    const all = new Set([...known[kind], ...used]);
    return used.map((name): UsedName => {
      const own = [...(uses[kind].get(name) ?? [])].sort((a, b) => compare(a.day, b.day));
      return {
        kind,
        name,
        lines: linesOf(own),
        asked: linesOf(own.filter(({ isAsked }) => isAsked === true)),
        first: own[0]?.day ?? "",
        last: own.at(-1)?.day ?? "",
        files: [...new Set(own.map(({ place }) => place.file))],
        near: nearTo(name, all).map((near) => ({ ...near, described: known[kind].has(near.name) })),
      };
    });
  });
  return { names: names.sort((a, b) => compare(a.kind, b.kind) || b.lines - a.lines || compare(a.name, b.name)) };
}

function linesOf(uses: readonly Use[]): number {
  return new Set(uses.map(({ place: { file, line } }) => `${file}:${line}`)).size;
}

/** What lines would tell that are still asked about, however they are answered. */
export function askedEvents({ readings }: Records): readonly Event[] {
  return readings.flatMap(({ as, readings: offered }) =>
    as === "question" ? offered.flatMap(({ events }) => events) : [],
  );
}

/** Names that only a line still asked about has, in its likeliest reading: that writes a variety nobody knows in quotation marks. */
function guessedVarieties(reading: LineReading): readonly { readonly name: string; readonly use: Use }[] {
  const [likeliest] = reading.as === "question" ? reading.readings : [];
  const names = [...(likeliest?.line ?? "").matchAll(/"([^"]+)"/g)].map(([, name = ""]) => name);
  return (likeliest?.events ?? []).flatMap(({ variety, day, place }) => {
    const name = names.find((one) => idOfName(one) === variety);
    return name === undefined ? [] : [{ name, use: { day, place, isAsked: true } }];
  });
}

/** By kind and name, what no file describes. */
function usesOf(records: Records): Readonly<Record<UsedKind, ReadonlyMap<string, readonly Use[]>>> {
  const uses = { bed: new Map<string, Use[]>(), variety: new Map<string, Use[]>(), source: new Map<string, Use[]>() };
  const add = (kind: UsedKind, name: string | undefined, use: Use) => {
    if (name !== undefined) uses[kind].set(name, [...(uses[kind].get(name) ?? []), use]);
  };
  const onlyNamed = (kind: "beds" | "varieties", id: string | undefined) => {
    const record = id === undefined ? undefined : records[kind].get(id);
    return record?.described === false ? record.title : undefined;
  };
  const sources = sourcesKnown(records);
  const addEvent = ({ bed, toBed, variety, from }: Event, use: Use) => {
    add("bed", onlyNamed("beds", bed), use);
    add("bed", onlyNamed("beds", toBed), use);
    add("variety", onlyNamed("varieties", variety), use);
    // "a neighbour" is nobody's name.
    if (from !== undefined && /\p{Lu}/u.test(from) && !sources.has(normaliseName(from))) add("source", from, use);
  };
  for (const event of records.events) addEvent(event, { day: event.day, place: event.place });
  for (const event of askedEvents(records)) addEvent(event, { day: event.day, place: event.place, isAsked: true });
  for (const { name, use } of records.readings.flatMap(guessedVarieties))
    if (!records.varieties.has(idOfName(name))) add("variety", name, use);
  for (const { beds, day, place } of records.notes)
    for (const bed of beds) add("bed", onlyNamed("beds", bed), { day, place });
  return uses;
}

function sourcesKnown({ varieties, gear }: Records): ReadonlySet<string> {
  return new Set(
    [...[...varieties.values()].map(({ source }) => source?.name), ...[...gear.values()].map(({ from }) => from)]
      .filter((name) => name !== undefined)
      .map(normaliseName),
  );
}

function nearTo(name: string, all: ReadonlySet<string>): readonly Omit<NearName, "described">[] {
  const own = normaliseName(name);
  const others = [...all].filter((other) => other !== name);
  // The same name but for capitals, hyphens and plural is one already.
  const apart = others.filter((other) => normaliseName(other) !== own);
  const spelled = new Set(nearestSpellings(name, apart));
  const sounds = apart.filter(
    (other) => !spelled.has(other) && digitsOf(other) === digitsOf(name) && isHeardAs(own, normaliseName(other)),
  );
  return [
    ...[...spelled].map((near) => ({ name: near, by: "spelling" as const })),
    ...sounds.map((near) => ({ name: near, by: "sound" as const })),
  ];
}

function digitsOf(name: string): string {
  return name.replace(/\D+/g, "");
}

function isHeardAs(a: string, b: string): boolean {
  const [one, other] = [soundOf(a.split(" ")).full, soundOf(b.split(" ")).full];
  if (Math.min(one.length, other.length) < enoughSounds) return false;
  return Math.min(soundLikeness(one, other), soundLikeness(other, one)) >= soundsLike;
}
