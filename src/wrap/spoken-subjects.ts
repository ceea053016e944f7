/** What a number in the speech is about: the plants named beside it, as they stood that day at the bed the film is at. */
import { cropOf } from "../crop-of.ts";
import type { Garden, Planting } from "../model.ts";
import type { FilmHeard } from "./hear-film.ts";
import { plainWord } from "./spoken-words.ts";
import type { Stretch } from "./stops-heard.ts";
import { stretchAt } from "./word-ranges.ts";

export interface Subject {
  /** First word of its name, and after the last. */
  readonly from: number;
  readonly to: number;
  /** Nobody named it: it is all that stands at the bed. */
  readonly unnamed?: boolean;
  readonly variety?: string | undefined;
  readonly crop?: string | undefined;
  /** As it is said in a sentence about it. */
  readonly title: string;
  readonly bed: string | undefined;
  /** How sure the name and the bed are. */
  readonly confidence: number;
  /** Its plantings at that bed, living and ended, and everywhere. */
  readonly here: readonly Planting[];
  readonly anywhere: readonly Planting[];
}

const known = new WeakMap<readonly Stretch[], { readonly film: FilmHeard; readonly subjects: readonly Subject[] }>();

/** Every variety and crop named in the speech, in order. Each part of a wrap asks for them. */
export function subjectsOf(film: FilmHeard, stretches: readonly Stretch[]): readonly Subject[] {
  const found = known.get(stretches);
  if (found?.film === film) return found.subjects;
  const subjects = findSubjects(film, stretches);
  known.set(stretches, { film, subjects });
  return subjects;
}

const none: readonly Planting[] = [];

function findSubjects(film: FilmHeard, stretches: readonly Stretch[]): readonly Subject[] {
  const { day, names, speech } = film;
  const { garden } = day;
  const taken = new Set<number>();
  const found: Subject[] = [];
  const at = (word: number) => stretchAt(stretches, word);
  const lots = [...day.beds.values()].flatMap(({ living, ended, coming }) => [...living, ...ended, ...coming]);
  const byVariety = Map.groupBy(lots, ({ variety }) => variety);
  const byCrop = Map.groupBy(lots, (lot) => cropOf(film.day.garden, lot)?.id);
  const there = new Map<readonly Planting[], Map<string | undefined, readonly Planting[]>>();
  const thoseAt = (bed: string | undefined, meant: readonly Planting[]) => {
    const byBed = there.get(meant) ?? Map.groupBy(meant, (lot): string | undefined => lot.bed);
    there.set(meant, byBed);
    return byBed.get(bed) ?? [];
  };
  const add = (
    from: number,
    to: number,
    title: string,
    ids: { variety?: string; crop?: string },
    confidence: number,
  ) => {
    const stretch = at(from);
    const meant = (ids.variety === undefined ? byCrop.get(ids.crop) : byVariety.get(ids.variety)) ?? none;
    found.push({
      from,
      to,
      ...ids,
      title,
      bed: stretch?.bed,
      confidence: Math.min(confidence, stretch?.confidence ?? 0),
      here: thoseAt(stretch?.bed, meant),
      anywhere: meant,
    });
  };
  for (const { name, from, to, confidence } of names) {
    if (name.kind !== "variety") continue;
    for (let word = from; word < to; word += 1) taken.add(word);
    add(from, to, garden.varieties.get(name.record)?.title ?? name.name, { variety: name.record }, confidence);
  }
  for (const { from, to, variety } of writtenSmall(film, taken, (word) => at(word)?.bed)) {
    for (let word = from; word < to; word += 1) taken.add(word);
    add(from, to, garden.varieties.get(variety)?.title ?? variety, { variety }, 1);
  }
  const crops = new Map(
    [...garden.crops.values()].flatMap((crop) =>
      [crop.name, crop.plural].map(
        (name) =>
          [
            name
              .split(/[\s-]+/)
              .map(plainWord)
              .join(" "),
            crop,
          ] as const,
      ),
    ),
  );
  const opensPair = new Set([...crops.keys()].flatMap((name) => (name.includes(" ") ? [name.split(" ")[0]] : [])));
  speech.words.forEach(({ plain }, word) => {
    if (taken.has(word)) return;
    const next = opensPair.has(plain) ? speech.words[word + 1] : undefined;
    const pair = next === undefined ? undefined : crops.get(`${plain} ${next.plain}`);
    const crop = pair ?? crops.get(plain);
    if (crop === undefined) return;
    if (pair !== undefined) taken.add(word + 1);
    add(word, word + (pair === undefined ? 1 : 2), crop.plural, { crop: crop.id }, 1);
  });
  return found.sort((a, b) => a.from - b.from);
}

interface LongTitle {
  readonly words: readonly string[];
  readonly variety: string;
}

const titles = new WeakMap<Garden["varieties"], ReadonlyMap<string, readonly LongTitle[]>>();

/** Titles of two words and more by their first, made once for all films of a garden. */
function longTitles(varieties: Garden["varieties"]): ReadonlyMap<string, readonly LongTitle[]> {
  const known = titles.get(varieties);
  if (known !== undefined) return known;
  const byFirst = new Map<string, LongTitle[]>();
  for (const { id, title } of varieties.values()) {
    const words = title.split(/[\s-]+/).map(plainWord);
    const [first] = words;
    if (first === undefined || words.length < 2) continue;
    const same = byFirst.get(first);
    if (same === undefined) byFirst.set(first, [{ words, variety: id }]);
    else same.push({ words, variety: id });
  }
  titles.set(varieties, byFirst);
  return byFirst;
}

/** Names of two words and more that are written like ordinary ones, where the plants stand that they are of: "red creole". */
function writtenSmall(
  { day, speech: { words } }: FilmHeard,
  taken: ReadonlySet<number>,
  bedAt: (word: number) => string | undefined,
): readonly { readonly from: number; readonly to: number; readonly variety: string }[] {
  const byFirst = longTitles(day.garden.varieties);
  return words.flatMap(({ plain }, from) => {
    const found = byFirst.get(plain)?.find((one) => one.words.every((word, at) => words[from + at]?.plain === word));
    if (found === undefined) return [];
    const to = from + found.words.length;
    for (let word = from; word < to; word += 1) if (taken.has(word)) return [];
    const there = day.beds.get(bedAt(from) ?? "");
    const lots = [...(there?.living ?? []), ...(there?.ended ?? [])];
    return lots.some(({ variety }) => variety === found.variety) ? [{ from, to, variety: found.variety }] : [];
  });
}

/** "Same as Mollie", "taller than the leeks": named beside what is spoken of, which goes on. */
export function isCompared({ speech: { words } }: FilmHeard, { from }: Subject): boolean {
  const before = words.slice(Math.max(0, from - 3), from).map(({ plain }) => plain);
  return /\b(?:same as|than|like|against|unlike|beat|beats|beaten)(?: the| a| my| our)?$/.test(before.join(" "));
}
