/** Which plants, beds and gear of a garden plain words name. */
import { mentionsAny, plainWords } from "../language/index.ts";
import type { Crop, Garden } from "../model.ts";

/** Takes text as `plainWords` gives it; ids in the order of the records. */
export interface Finder {
  readonly beds: (plain: string) => readonly string[];
  readonly varieties: (plain: string) => readonly string[];
  readonly crops: (plain: string) => readonly string[];
  readonly gear: (plain: string) => readonly string[];
}

const finders = new WeakMap<Garden["beds"], Finder>();

export function finderOf(garden: Garden): Finder {
  const made = finders.get(garden.beds);
  if (made !== undefined) return made;
  const by = <T extends { readonly id: string }>(records: Iterable<T>, names: (record: T) => readonly string[]) => {
    const all = [...records].map((record) => ({ id: record.id, plain: names(record).map(plainWords) }));
    // A garden has hundreds of beds and tens of thousands of lines: a line is held against those only whose names begin in it.
    const beginning = new Map<string, Set<number>>();
    for (const [at, { plain }] of all.entries())
      for (const name of plain) {
        const word = firstWord(name);
        beginning.set(word, (beginning.get(word) ?? new Set()).add(at));
      }
    return (plain: string) => {
      const near = new Set(
        plain
          .trim()
          .split(" ")
          .flatMap((word) => [...(beginning.get(word) ?? [])]),
      );
      return [...near]
        .sort((a, b) => a - b)
        .flatMap((at) => {
          const one = all[at];
          return one !== undefined && mentionsAny(plain, one.plain) ? [one.id] : [];
        });
    };
  };
  const plants = plantsNamed(garden);
  const finder = {
    beds: by(garden.beds.values(), ({ title, alsoCalled }) => [title, ...alsoCalled]),
    varieties: (plain: string) => [...plants(plain).varieties],
    crops: (plain: string) => [...plants(plain).crops],
    gear: by(garden.gear.values(), ({ title, alsoCalled }) => [title, ...alsoCalled]),
  };
  finders.set(garden.beds, finder);
  return finder;
}

function firstWord(plain: string): string {
  return plain.trim().split(" ", 1)[0] ?? "";
}

interface Plants {
  readonly varieties: ReadonlySet<string>;
  readonly crops: ReadonlySet<string>;
}

/** The longest name at a place is what stands there: "sweet peas" are no peas. */
function plantsNamed(garden: Garden): (plain: string) => Plants {
  const byName = new Map<string, { readonly varieties: string[]; readonly crops: string[] }>();
  const put = (name: string, kind: keyof Plants, id: string) => {
    const words = plainWords(name).trim();
    if (words === "") return;
    const of = byName.get(words) ?? { varieties: [], crops: [] };
    byName.set(words, of);
    of[kind].push(id);
  };
  for (const { id, title, alsoSpelled } of garden.varieties.values())
    for (const name of [title, ...alsoSpelled]) put(name, "varieties", id);
  for (const { id, name, plural, alsoCalled } of [...garden.crops.values(), ...cropsAsked(garden)])
    for (const called of [name, plural, ...alsoCalled]) put(called, "crops", id);
  for (const { word, means } of garden.words) {
    if ("crop" in means && !("kind" in means)) put(word, "crops", means.crop);
    if ("variety" in means) put(word, "varieties", means.variety);
  }
  /** Words of the longest name that begins with a word: most words begin none. */
  const longest = new Map<string, number>();
  for (const words of [...byName.keys()].map((name) => name.split(" "))) {
    const [first = ""] = words;
    longest.set(first, Math.max(longest.get(first) ?? 0, words.length));
  }
  const rank = new Map([...garden.varieties.keys()].map((id, at) => [id, at]));
  return (plain) => {
    const words = plain.trim().split(" ");
    const varieties = new Set<string>();
    const crops = new Set<string>();
    for (let at = 0; at < words.length; at += 1) {
      const word = words[at] as string;
      // A name of one word is known by its plural too.
      const most = Math.max(longest.get(word) ?? 0, longest.has(word.replace(/s$/, "")) ? 1 : 0);
      for (let length = Math.min(most, words.length - at); length > 0; length -= 1) {
        const name = words.slice(at, at + length).join(" ");
        const named = byName.get(name) ?? byName.get(name.replace(/s$/, ""));
        if (named === undefined) continue;
        for (const id of named.varieties) varieties.add(id);
        for (const id of named.crops) crops.add(id);
        at += length - 1;
        break;
      }
    }
    return {
      varieties: new Set(
        [...varieties].filter((id) => rank.has(id)).sort((a, b) => (rank.get(a) ?? 0) - (rank.get(b) ?? 0)),
      ),
      crops,
    };
  };
}

/** Crops that only questions name: no record tells what many of them are called. */
function cropsAsked(garden: Garden): readonly Pick<Crop, "id" | "name" | "plural" | "alsoCalled">[] {
  const ids = garden.readings.flatMap(({ as, readings }) =>
    as === "question" ? readings.flatMap(({ events }) => events.flatMap(({ crop }) => crop ?? [])) : [],
  );
  return unique(ids)
    .filter((id) => !garden.crops.has(id))
    .map((id) => ({ id, name: id.replaceAll("-", " "), plural: `${id}s`, alsoCalled: [`${id}es`] }));
}

function unique(ids: readonly string[]): readonly string[] {
  return [...new Set(ids)];
}
