/** The surprise of a year, and what was grown for the first time. */
import { cropOf } from "../../crop-of.ts";
import { cardLimits, fits } from "../../films/index.ts";
import { isNewToGarden } from "../../garden/index.ts";
import { sentencesOf } from "../../language/index.ts";
import type { PlantIds, Variety } from "../../model.ts";
import { betweenDays } from "../../order.ts";
import { pickedSize } from "../../picked.ts";
import { type OwnLine, withoutBeds } from "./own-lines.ts";
import { isRemark } from "./remarks.ts";
import { harvests, ofCrop, type Telling } from "./telling.ts";
import { type Part, part, type Thread, type Told } from "./thread.ts";

/** Less than half as much again is what another summer brings. */
const farMore = 1.5;
/** Kilograms, or ten pieces, from which on a crop is worth a word. */
const leastSize = 1;
const mostSurprises = 2;
const mostNew = 2;
const mostCrops = 3;
/** How a person says that a thing is new to them, where no line of a sowing was read. */
const never = /\bnever (?:grew|grown|had)\b|\bfirst time\b|\bnew to me\b/i;

export function surpriseThreads(telling: Telling): readonly Thread[] {
  const { material } = telling;
  const { to } = material;
  const ofPlants = material.standings.best.flatMap((one): Thread[] => {
    const { each } = one.facts;
    if (one.private || each === undefined || each.grams / each.lastYear < farMore) return [];
    const of = { variety: one.variety };
    const ratio = each.grams / each.lastYear;
    const grounds = one.sources.map((place) => ({ place }));
    return [
      {
        kind: "surprise",
        about: of,
        worth: 50 + Math.min(12, 6 * Math.log2(ratio)) + Math.min(4, one.score),
        lead: part({ is: "more or less", of, ratio, each: true }, grounds, to),
        now: [...amount(of, telling), ...words(of, telling)],
        figure: part({ is: "each plant", of, grams: each.grams, before: each.lastYear }, grounds, to),
        notes: aboutIt(of, telling),
        gear: [],
        photos: [],
      },
    ];
  });
  return [...ofPlants, ...ofCrops(telling)].toSorted((a, b) => b.worth - a.worth).slice(0, mostSurprises);
}

/** Crops whose plants stand for years: by what they gave in all. */
function ofCrops(telling: Telling): readonly Thread[] {
  return compared(telling).flatMap(({ crop, ratio, thread }) => {
    const lots = telling.material.book.lotsOfCrop(crop);
    const lasting = lots.length > 0 && lots.every(({ planting }) => planting.perennial);
    return lasting && ratio >= farMore
      ? [{ ...thread, kind: "surprise" as const, worth: 46 + Math.min(12, 6 * Math.log2(ratio)) }]
      : [];
  });
}

/** Any crop beside the year before: what a year with little else on record has to tell. */
export function cropThreads(telling: Telling): readonly Thread[] {
  return compared(telling)
    .map(({ thread, ratio, size }) => ({
      ...thread,
      worth: 28 + Math.min(6, 4 * Math.abs(Math.log2(ratio))) + Math.min(4, Math.log2(1 + size)),
    }))
    .toSorted((a, b) => b.worth - a.worth)
    .slice(0, mostCrops);
}

function compared(telling: Telling) {
  const { book, to } = telling.material;
  return [...book.garden.crops.values()].flatMap((crop) => {
    const same = harvests(telling, ofCrop(crop.id));
    if (same === undefined) return [];
    const ratio = pickedSize(same.now.sum) / pickedSize(same.last.sum);
    const size = pickedSize(same.now.sum);
    if (size < leastSize || !Number.isFinite(ratio) || ratio <= 0) return [];
    const of = { crop: crop.id };
    const lines = [...same.now.lines, ...same.last.lines];
    const thread: Thread = {
      kind: "crop",
      about: of,
      worth: 0,
      lead: part({ is: "more or less", of, ratio, each: false }, lines, to),
      now: words(of, telling),
      figure: part({ is: "picked", of, now: same.now.sum, before: same.last.sum }, lines, to),
      notes: [],
      gear: [],
      photos: [],
    };
    return [{ crop: crop.id, ratio, size, thread }];
  });
}

/** Never sown or planted here before, and something came of it. */
export function newThreads(telling: Telling): readonly Thread[] {
  const { book, from, to } = telling.material;
  const ids = new Set(
    betweenDays(book.events, from, book.until).flatMap(({ variety, private: hidden }) =>
      !hidden && variety !== undefined ? [variety] : [],
    ),
  );
  const isFirst = firstsOf(telling);
  return [...ids]
    .filter((id) => book.garden.varieties.get(id)?.private !== true && isFirst(id))
    .flatMap((id): Thread[] => {
      const variety = book.garden.varieties.get(id);
      const of = { variety: id };
      const gave = amount(of, telling);
      const said = words(of, telling);
      const first = book.events.find((event) => event.variety === id);
      if (variety === undefined || first === undefined || gave.length + said.length === 0) return [];
      const size = pickedSize(telling.picked(from, to, (one) => one.variety === id).sum);
      return [
        {
          kind: "new",
          about: of,
          worth:
            38 + Math.min(8, 2 * Math.log2(1 + size)) + (said.length > 0 ? 3 : 0) + (firstOfCrop(id, telling) ? 4 : 0),
          lead: part({ is: "never grown before", of, from: variety.source?.name }, [first, variety], to),
          now: [...gave, ...said],
          notes: aboutIt(of, telling),
          gear: [],
          photos: [],
        },
      ];
    })
    .toSorted((a, b) => b.worth - a.worth)
    .slice(0, mostNew);
}

/** By the book, or in the person's own words where the book knows of no beginning. */
function firstsOf({ lines, now, material: { book, from, to } }: Telling): (id: string) => boolean {
  const { garden } = book;
  const before = new Set(garden.events.flatMap(({ variety, day }) => (day < from ? (variety ?? []) : [])));
  const saidFirst = linesByWord(now.filter(({ text }) => never.test(text)));
  const nameless = Map.groupBy(
    lines.filter(({ day, event }) => day < from && event?.variety === undefined && event?.kind !== "plan"),
    ({ bed }) => bed,
  );
  /** Something of its kind grew where it stands now, and no line says which it was. */
  const mayHaveGrown = ({ id, crop }: Variety) => {
    const { crops } = garden;
    const family = crops.get(crop ?? "")?.family;
    const beds = new Set(book.lotsOf(id).map(({ planting }) => planting.bed));
    return [...beds].some((bed) =>
      nameless.get(bed)?.some(({ crops: named }) => [...named].some((one) => crops.get(one)?.family === family)),
    );
  };
  return (id) => {
    const variety = garden.varieties.get(id);
    if (variety === undefined) return false;
    const isNew =
      isNewToGarden(garden, id, to) ||
      (!before.has(id) &&
        (saidFirst.of.has(id) ||
          (saidFirst.saying.get(firstWord(variety.title)) ?? []).some((line) => names(line, variety))));
    return isNew && !mayHaveGrown(variety);
  };
}

/** By the variety of their facts, and by each of their words: hundreds of varieties are asked for in thousands of lines. */
function linesByWord(lines: readonly OwnLine[]): {
  readonly of: ReadonlySet<string | undefined>;
  readonly saying: ReadonlyMap<string, readonly OwnLine[]>;
} {
  const saying = new Map<string, OwnLine[]>();
  for (const line of lines) {
    for (const word of new Set(wordsOf(line).trim().split(" "))) {
      const known = saying.get(word);
      if (known === undefined) saying.set(word, [line]);
      else known.push(line);
    }
  }
  return { of: new Set(lines.map(({ event }) => event?.variety)), saying };
}

function firstWord(title: string): string {
  return title.toLowerCase().split(" ", 1)[0] ?? "";
}

/** A line of its own, short enough to be said whole. */
function isAbout(line: OwnLine, variety: Variety): boolean {
  return names(line, variety) && !never.test(line.text) && fits(line.text, cardLimits.why);
}

/** Each line is held against every variety of its year. */
const plain = new WeakMap<OwnLine, string>();

function names(line: OwnLine, { title }: Variety): boolean {
  return wordsOf(line).includes(` ${title.toLowerCase()} `);
}

function wordsOf(line: OwnLine): string {
  let words = plain.get(line);
  if (words === undefined) {
    words = ` ${line.text.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, " ")} `;
    plain.set(line, words);
  }
  return words;
}

function firstOfCrop(id: string, { material: { book, from } }: Telling): boolean {
  const { garden } = book;
  const crop = cropOf(garden, { variety: id })?.id;
  return !garden.events.some((event) => event.day < from && cropOf(garden, event)?.id === crop);
}

function amount(of: PlantIds, { picked, material: { from, to } }: Telling): readonly Part<Told>[] {
  const found = picked(from, to, ({ variety }) => variety === of.variety);
  return found.doubtful || found.sum.times === 0 ? [] : [part({ is: "gave", of, picked: found.sum }, found.lines, to)];
}

/** What the person noted of it beside figures. */
function words(of: PlantIds, { now, material: { book, to } }: Telling): readonly Part<Told>[] {
  const { garden } = book;
  const variety = garden.varieties.get(of.variety ?? "");
  return now.flatMap((line) => {
    const { event, text: written } = line;
    if (event === undefined && variety !== undefined && line.crops.size < 2 && isAbout(line, variety))
      return [part<Told>({ is: "own words", text: withoutBeds(written, garden) }, [line], to, line.asks)];
    const same =
      event !== undefined &&
      (of.variety === undefined ? cropOf(garden, event)?.id === of.crop : event.variety === of.variety);
    if (!same || (event.kind !== "picked" && event.kind !== "fruited" && event.kind !== "flowered")) return [];
    return [event.detail, ...event.more]
      .filter((text): text is string => text !== undefined && isRemark(text))
      .map((text) => part<Told>({ is: "own words", text: text.trim() }, [event], to));
  });
}

/** What the variety's own file says of the plant. */
function aboutIt(of: PlantIds, { material: { book, to } }: Telling): readonly Part<Told>[] {
  const variety = book.garden.varieties.get(of.variety ?? "");
  if (variety === undefined || variety.private) return [];
  return sentencesOf(variety.body)
    .map((text) => text.replace(/\.$/, ""))
    .filter((text) => !/^(?:new in|grown in|grown once|bought once|sown once)\b|[[\]<>`|#]|https?:/i.test(text))
    .slice(0, 2)
    .map((text) => part<Told>({ is: "own words", text, of }, [variety], to));
}
