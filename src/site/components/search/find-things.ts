/** What somebody may mean by the words they typed: varieties by name, by sound and by crop, then beds, then films. */
import { closeness, type Named, plain, SURE } from "./close-names.ts";
import { withoutAsking } from "./question-words.ts";

export interface Thing extends Named {
  readonly kind: "variety" | "bed" | "film";
  /** Of a variety: its place among the catalogue's crops, and that crop as one of it is called. */
  readonly crop?: number | undefined;
  readonly of?: string | undefined;
  readonly say?: string | undefined;
  /** Where it came from, with what must be said of it. */
  readonly from?: string | undefined;
  /** One sentence. */
  readonly says: string;
  readonly thumb?: string | undefined;
}

export interface Catalogue {
  readonly things: readonly Thing[];
  /** All words for a crop, one and several, small and without accents. */
  readonly crops: readonly (readonly string[])[];
}

export interface Found {
  /** Best first. */
  readonly things: readonly Thing[];
  /** What is left of the question, to be looked for in the pages. */
  readonly words: string;
}

const KINDS = ["variety", "bed", "film"] as const;

/** Slips are guessed at only while little else is found. */
const FEW = 3;

/** Names with slips in them, at most. */
const GUESSES = 6;

export function findThings(typed: string, { things, crops }: Catalogue): Found {
  const asked = plain(typed);
  const all = asked === "" ? [] : asked.split(" ");
  const words = withoutAsking(all);
  const near = things.map((thing) => ({
    thing,
    rank: Math.min(closeness(asked, thing), closeness(words.join(" "), thing)),
  }));
  const ranked = near.filter(({ rank }) => Number.isFinite(rank)).sort((a, b) => a.rank - b.rank);
  const sure = ranked.filter(({ rank }) => rank <= SURE);
  const ofKind = (kind: Thing["kind"]) => sure.filter(({ thing }) => thing.kind === kind).map(({ thing }) => thing);
  const found = new Set<Thing>([
    ...sure.filter(({ rank }) => rank === 0).map(({ thing }) => thing),
    ...ofKind("variety"),
    ...ofCrops(words, { things, crops }),
    ...ofKind("bed"),
    ...ofKind("film"),
  ]);
  if (found.size < FEW)
    for (const kind of KINDS)
      for (const { thing } of ranked.filter(({ thing }) => thing.kind === kind).slice(0, GUESSES)) found.add(thing);
  return { things: [...found], words: words.join(" ") };
}

/** The varieties of the crop that is named, those first of which another word is the name's. */
function ofCrops(words: readonly string[], { things, crops }: Catalogue): readonly Thing[] {
  const meant = cropsMeant(words, crops);
  const rest = words.filter((word) => !meant.words.has(word)).join(" ");
  return things
    .filter(({ crop }) => crop !== undefined && meant.crops.has(crop))
    .map((thing) => ({ thing, rank: rest === "" ? 0 : Math.min(closeness(rest, thing), 99) }))
    .sort((a, b) => a.rank - b.rank || order(meant.crops, a.thing) - order(meant.crops, b.thing))
    .map(({ thing }) => thing);
}

function order(crops: ReadonlySet<number>, { crop = -1 }: Thing): number {
  return [...crops].indexOf(crop);
}

/** "sweet peas" is no pea; "beans" are runner beans too. Crops named whole come first. */
function cropsMeant(words: readonly string[], crops: Catalogue["crops"]) {
  const text = ` ${words.join(" ")} `;
  const whole = crops.flatMap((names, crop) =>
    names.filter((name) => text.includes(` ${name} `)).map((name) => ({ crop, name, length: name.split(" ").length })),
  );
  const longest = Math.max(0, ...whole.map(({ length }) => length));
  const named = whole.filter(({ length }) => length === longest);
  const kin =
    longest > 1
      ? []
      : crops.flatMap((names, crop) => {
          const last = names.map((name) => name.split(" ").at(-1) ?? "").find((one) => words.includes(one));
          return last === undefined ? [] : [{ crop, name: last }];
        });
  const slipped = named.length + kin.length > 0 ? [] : misspelt(words, crops);
  const meant = [...named, ...kin, ...slipped];
  return {
    crops: new Set(meant.map(({ crop }) => crop)),
    words: new Set(meant.flatMap(({ name }) => name.split(" "))),
  };
}

/** "tomatos", "kurgettes": a word of five letters or more, one slip or one sound away. */
function misspelt(words: readonly string[], crops: Catalogue["crops"]) {
  return words
    .filter((word) => word.length >= 5)
    .flatMap((word) =>
      crops.flatMap((names, crop) =>
        names.some((name) => name.length >= 5 && closeness(word, { name, also: [] }) <= 3 && isAsLong(word, name))
          ? [{ crop, name: word }]
          : [],
      ),
    );
}

function isAsLong(a: string, b: string): boolean {
  return Math.abs(a.length - b.length) <= 2;
}
