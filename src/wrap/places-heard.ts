/** What in the speech speaks for which bed: names of beds and sites, of what grows there, of what it is hung and built with. */
import { cropOf } from "../crop-of.ts";
import type { Crop } from "../model.ts";
import { openFollowUps } from "../timeline/index.ts";
import { commonWords } from "./common-words.ts";
import type { FilmingDay } from "./filming-day.ts";
import type { NameHeard } from "./names-heard.ts";
import type { Phrase } from "./phrases.ts";
import { plainWord, type Word } from "./spoken-words.ts";

/** Words that speak for beds, each with its weight. */
export interface PlaceHeard {
  readonly word: number;
  readonly to: number;
  readonly text: string;
  readonly beds: ReadonlyMap<string, number>;
}

/** How much a word speaks for a bed. Common practice of nobody: set on half of the demo's films, see scripts/bench-wrap.ts. */
const weights = {
  bed: 5,
  /** A bed named in the middle of a sentence: "it was in the onion bed". */
  bedInPassing: 2.2,
  bedWord: 2,
  site: 1.4,
  variety: 3,
  varietyEnded: 1.2,
  varietyComing: 1,
  crop: 1.6,
  cropEnded: 0.6,
  group: 1,
  gear: 1.5,
  owed: 1.2,
} as const;

/** Several beds share what speaks for all of them. */
function shared(beds: Iterable<string>, weight: number): Map<string, number> {
  const all = [...beds];
  return new Map(all.map((bed) => [bed, weight / all.length ** 0.7]));
}

const groups: Readonly<Record<string, (crop: Crop) => boolean>> = {
  brassicas: ({ family }) => family === "Brassicaceae",
  alliums: ({ family }) => family === "Amaryllidaceae",
  legumes: ({ family }) => family === "Fabaceae",
  cucurbits: ({ family }) => family === "Cucurbitaceae",
  roots: ({ id }) => ["carrot", "parsnip", "beetroot", "turnip", "swede"].includes(id),
  flowers: ({ use }) => use === "flower",
  herbs: ({ use }) => use === "herb",
  salads: ({ id }) => ["lettuce", "rocket", "lambs-lettuce", "radish"].includes(id),
};

/** Words of bed titles that are said of any bed. */
const anyBed = new Set(
  "bed the of and row patch border plot garden corner side end my our one two three four five six seven eight nine ten".split(
    " ",
  ),
);

export class PlaceWords {
  readonly #day: FilmingDay;
  /** Plain word, or two, to what it speaks for. */
  readonly #single = new Map<string, Map<string, number>>();
  readonly #pairs = new Map<string, Map<string, number>>();
  readonly #varieties = new Map<string, Map<string, number>>();

  constructor(day: FilmingDay) {
    this.#day = day;
    this.#addVarieties();
    this.#addCrops();
    this.#addBedsAndSites();
    this.#addOwed();
  }

  /** Everything in the speech that speaks for a bed, in order. */
  heard(words: readonly Word[], phrases: readonly Phrase[], names: readonly NameHeard[]): readonly PlaceHeard[] {
    const found: PlaceHeard[] = [];
    const taken = new Uint8Array(words.length);
    const atOnce = (word: number) => {
      const from = phrases[phraseOf(phrases, word)]?.from ?? 0;
      const begins = words.slice(from, from + 3).map((one) => one.text.toLowerCase().replaceAll("’", "'"));
      // "I'll show you the tomato pots in July" goes nowhere yet.
      return word - from <= AT_ONCE && !begins.some((text) => /^(?:i'll|we'll|you'll)$/.test(text));
    };
    for (const { from, to, name, confidence } of names) {
      if (confidence < SURE) continue;
      const beds =
        name.kind === "bed"
          ? new Map([[name.record, atOnce(from) || isPresented(words, from, to) ? weights.bed : weights.bedInPassing]])
          : name.kind === "gear"
            ? shared(name.beds, weights.gear)
            : (this.#varieties.get(name.record) ?? new Map<string, number>());
      taken.fill(1, from, to);
      if (beds.size > 0) found.push({ word: from, to, text: name.name, beds });
    }
    words.forEach((word, at) => {
      if (taken[at] === 1) return;
      const next = words[at + 1];
      const pair =
        next === undefined || taken[at + 1] === 1 ? undefined : this.#pairs.get(`${word.plain} ${next.plain}`);
      if (pair !== undefined) {
        found.push({ word: at, to: at + 2, text: `${word.text} ${next?.text}`, beds: pair });
        taken[at + 1] = 1;
        return;
      }
      const beds = this.#single.get(word.plain);
      if (beds !== undefined) found.push({ word: at, to: at + 1, text: word.text, beds });
    });
    return found.sort((a, b) => a.word - b.word);
  }

  #addVarieties(): void {
    const { beds } = this.#day;
    for (const { bed, living, ended, coming } of beds.values()) {
      for (const [lots, weight] of [
        [living, weights.variety],
        [ended, weights.varietyEnded],
        [coming, weights.varietyComing],
      ] as const) {
        for (const { variety } of lots) {
          if (variety === undefined) continue;
          const known = this.#varieties.get(variety) ?? new Map<string, number>();
          known.set(bed.id, Math.max(weight, known.get(bed.id) ?? 0));
          this.#varieties.set(variety, known);
        }
      }
    }
    for (const [variety, known] of this.#varieties) {
      const count = [...known.values()].filter((weight) => weight === weights.variety).length;
      const share = Math.max(1, count) ** 0.7;
      this.#varieties.set(variety, new Map([...known].map(([bed, weight]) => [bed, weight / share])));
    }
  }

  #addCrops(): void {
    const { garden, beds } = this.#day;
    const alive = new Map<string, Set<string>>();
    const gone = new Map<string, Set<string>>();
    for (const { bed, living, ended } of beds.values()) {
      for (const [lots, into] of [
        [living, alive],
        [ended, gone],
      ] as const) {
        for (const lot of lots) {
          const id = cropOf(garden, lot)?.id;
          if (id !== undefined) into.set(id, (into.get(id) ?? new Set()).add(bed.id));
        }
      }
    }
    const bedsOf = (test: (crop: Crop) => boolean, lots: ReadonlyMap<string, ReadonlySet<string>>) =>
      new Set(
        [...lots].flatMap(([id, where]) =>
          garden.crops.has(id) && test(garden.crops.get(id) as Crop) ? [...where] : [],
        ),
      );
    const add = (phrase: string, test: (crop: Crop) => boolean, weight: number) => {
      const here = bedsOf(test, alive);
      const before = [...bedsOf(test, gone)].filter((bed) => !here.has(bed));
      this.#add(phrase, new Map([...shared(before, weights.cropEnded), ...shared(here, weight)]));
    };
    for (const crop of garden.crops.values()) {
      for (const name of [crop.name, crop.plural, ...crop.alsoCalled]) {
        const words = name.split(/[\s-]+/).map(plainWord);
        const last = words.at(-1) as string;
        add(words.join(" "), ({ id }) => id === crop.id, weights.crop);
        // "beans" are any beans.
        if (words.length > 1) {
          add(last, ({ name: other, plural }) => [other, plural].some((one) => lastWord(one) === last), weights.crop);
        }
      }
    }
    for (const [word, test] of Object.entries(groups)) add(word, test, weights.group);
  }

  #addBedsAndSites(): void {
    const { garden, beds } = this.#day;
    const byWord = new Map<string, Set<string>>();
    for (const { bed } of beds.values()) {
      for (const word of [bed.title, ...bed.alsoCalled].flatMap((name) => name.split(/[\s-]+/).map(plainWord))) {
        if (!anyBed.has(word)) byWord.set(word, (byWord.get(word) ?? new Set()).add(bed.id));
      }
    }
    for (const [word, where] of byWord) {
      const weight = commonWords.has(word) ? weights.bedWord * 0.4 : weights.bedWord;
      this.#add(word, shared(where, weight));
      if (!word.endsWith("s")) this.#add(`${word}s`, shared(where, weight));
    }
    for (const site of garden.sites.values()) {
      const where = [...beds.values()].filter(({ bed }) => bed.site === site.id).map(({ bed }) => bed.id);
      for (const word of site.title.split(/[\s-]+/).map(plainWord)) {
        if (!anyBed.has(word) && where.length > 0 && !byWord.has(word))
          this.#add(word, new Map(where.map((bed) => [bed, weights.site])));
      }
    }
  }

  /** What viewers are owed at one bed and no other: "bring a tape measure", "cut the first spear". */
  #addOwed(): void {
    const { garden, day } = this.#day;
    const byWord = new Map<string, Set<string>>();
    for (const { what, bed } of openFollowUps(garden, day)) {
      for (const word of bed === undefined ? [] : what.split(/\s+/).map(plainWord)) {
        if (word.length > 3 && !commonWords.has(word))
          byWord.set(word, (byWord.get(word) ?? new Set()).add(bed as string));
      }
    }
    for (const [word, beds] of byWord)
      if (beds.size === 1 && !this.#single.has(word)) this.#add(word, shared(beds, weights.owed));
  }

  #add(phrase: string, beds: ReadonlyMap<string, number>): void {
    if (beds.size === 0) return;
    const into = phrase.includes(" ") ? this.#pairs : this.#single;
    const known = into.get(phrase);
    if (known === undefined) into.set(phrase, new Map(beds));
    else for (const [bed, weight] of beds) known.set(bed, Math.max(weight, known.get(bed) ?? 0));
  }
}

/** A bed named within so many words of a phrase's beginning is where the speaker is. */
const AT_ONCE = 4;

/** "And this is | the gate bed", "nursery row, | these are": wherever a phrase was cut, here a bed is presented. */
function isPresented(words: readonly Word[], from: number, to: number): boolean {
  const said = (begins: number, ends: number) =>
    words
      .slice(Math.max(0, begins), ends)
      .map(({ plain }) => plain)
      .join(" ");
  return presenting.test(said(from - 4, from)) || presented.test(said(to, to + 2));
}

const presenting =
  /\b(?:(?:this|here|first|next|last|second|third|one|it|up|gate) is|heres|thats|now|next|(?:call|called)(?: it| this)?|(?:come|coming|on|over|get|welcome|round|down) to|into|enter)(?: the| my| our)?$/;
const presented = /^(?:these are|this is|here (?:is|are)|heres)$/;

/** Names heard with less confidence speak for no bed. */
const SURE = 0.82;

function lastWord(name: string): string {
  return plainWord(name.split(/[\s-]+/).at(-1) ?? "");
}

/** Which phrase a word is in, by halving. */
export function phraseOf(phrases: readonly Phrase[], word: number): number {
  let low = 0;
  let high = phrases.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >>> 1;
    if ((phrases[middle] as Phrase).from <= word) low = middle;
    else high = middle - 1;
  }
  return low;
}
