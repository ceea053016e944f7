/**
 * Chapters from stops. Common practice of video sites: the first begins at 0:00, each lasts ten seconds or more, there are
 * at least three, and names are short and specific.
 */
import { cropOf } from "../crop-of.ts";
import { capital, cropName, sayList, varietyName } from "../language/index.ts";
import type { Crop, Garden, Variety } from "../model.ts";
import { chapterWords } from "./chapter-words.ts";
import { keeping } from "./claims/planned-answer.ts";
import { SURE } from "./fact-check.ts";
import type { FilmHeard } from "./hear-film.ts";
import { moment } from "./moments.ts";
import { APPLY_FROM } from "./names-heard.ts";
import type { Word } from "./spoken-words.ts";
import type { Stretch } from "./stops-heard.ts";
import { inWords } from "./word-ranges.ts";
import type { Chapter } from "./wrap.ts";
import type { CueToWrite } from "./write-captions.ts";

/** Milliseconds. */
const SHORTEST = 10_000;
const FEWEST = 3;
/** Letters of a name; longer ones are cut off by players. */
const LONGEST_NAME = 60;

export interface ChapterList {
  readonly chapters: readonly Chapter[];
  /** Why there are none. */
  readonly none?: string | undefined;
}

export function chaptersOf(film: FilmHeard, stretches: readonly Stretch[]): ChapterList {
  const end = film.speech.end;
  const parts = longEnough(
    joinSame(
      stretches.map((one) => asShown(withoutDoubtfulReturn(one, stretches), film)),
      end,
    ),
    end,
  );
  if (parts.length < FEWEST) {
    const found =
      parts.length === 0 ? "nothing was heard in it" : `this film has ${parts.length === 1 ? "one part" : "two parts"}`;
    return { chapters: [], none: `Video sites want at least three chapters of ten seconds or more, and ${found}.` };
  }
  const { again } = chapterWords;
  const names = new Map<string, number>();
  const chapters = parts.map((part, index): Chapter => {
    const name = nameOf(part, index, parts.length, film);
    const before = names.get(name) ?? 0;
    names.set(name, before + 1);
    return {
      ...moment(index === 0 ? 0 : part.at),
      title: before === 0 ? name : again(name),
      until: moment(parts[index + 1]?.at ?? end).at,
      bed: part.bed,
    };
  });
  return { chapters };
}

interface Part {
  readonly bed: string | undefined;
  readonly at: number;
  readonly from: number;
  readonly to: number;
}

/** A bed of which it is said that nobody goes there has no chapter. */
function asShown(stretch: Stretch, { speech: { words } }: FilmHeard): Stretch {
  const { bed, from, to } = stretch;
  if (bed === undefined) return stretch;
  const said = words.slice(Math.max(0, from - KEPT_BEFORE), Math.min(to, from + KEPT_BACK)).map(({ plain }) => plain);
  return keeping.test(said.join(" ")) ? { ...stretch, bed: undefined } : stretch;
}

/** Words in which a bed is passed by, and before it: captions cut "I'm not going | over there". */
const KEPT_BACK = 26;
const KEPT_BEFORE = 4;

/** Nobody comes to a bed twice without saying so: of two visits a doubtful one is talk of it. */
function withoutDoubtfulReturn(stretch: Stretch, all: readonly Stretch[]): Stretch {
  const isSurer = all.some((one) => one.bed === stretch.bed && one.confidence > stretch.confidence);
  return stretch.confidence < SURE && isSurer ? { ...stretch, bed: undefined } : stretch;
}

/** Neighbours at one bed become one; what lies between beds belongs to the bed before it. */
function joinSame(stretches: readonly Stretch[], end: number): Part[] {
  const parts: Part[] = [];
  stretches.forEach((stretch, index) => {
    const before = parts.at(-1);
    const length = (stretches[index + 1]?.at ?? end) - stretch.at;
    const isEdge = index === 0 || index === stretches.length - 1;
    const belongs = stretch.bed === undefined && !(isEdge && length >= SHORTEST);
    if (before !== undefined && (before.bed === stretch.bed || belongs)) {
      parts[parts.length - 1] = { ...before, to: stretch.to };
    } else parts.push({ bed: stretch.bed, at: stretch.at, from: stretch.from, to: stretch.to });
  });
  return parts;
}

/** A part too short for a chapter goes to the one before it, the first to the one after. */
function longEnough(parts: readonly Part[], end: number): Part[] {
  const kept = [...parts];
  for (let at = 0; at < kept.length; ) {
    const part = kept[at] as Part;
    const begins = at === 0 ? 0 : part.at;
    const length = (kept[at + 1]?.at ?? end) - begins;
    if (length >= SHORTEST || kept.length === 1) {
      at += 1;
      continue;
    }
    const other = at === 0 ? 1 : at - 1;
    const into = kept[other] as Part;
    kept[other] = {
      ...into,
      at: Math.min(into.at, part.at),
      from: Math.min(into.from, part.from),
      to: Math.max(into.to, part.to),
    };
    kept.splice(at, 1);
    at = Math.max(0, at - 1);
  }
  return kept;
}

function nameOf(part: Part, index: number, count: number, film: FilmHeard): string {
  const words = chapterWords;
  if (part.bed === undefined) return index === 0 ? words.first : index === count - 1 ? words.last : words.between;
  const bed = film.day.garden.beds.get(part.bed);
  if (bed?.private === true)
    return (
      capital(
        sayList(
          subjects(part, film, "")
            .slice(0, 2)
            .map(({ plain }) => plain),
        ),
      ) || words.anotherBed
    );
  const title = bed?.title ?? part.bed;
  const all = subjects(part, film, title);
  for (const about of [all.slice(0, 2), all.slice(0, 1)]) {
    for (const names of [about.map(({ named }) => named), about.map(({ plain }) => plain)]) {
      const name = names.length === 0 ? title : `${title}: ${sayList(names)}`;
      if (name.length <= LONGEST_NAME) return name;
    }
  }
  return title;
}

/** What a part is about: by its sorts, "Winterbor kale", and where that is too long by its crop. */
interface Subject {
  readonly named: string;
  readonly plain: string;
}

/** What is counted: a crop, or a sort of none that is known. */
type Kind = Crop | Variety;

function isCrop(kind: Kind): kind is Crop {
  return "plural" in kind;
}

/** More sorts of a crop than these are its crop. */
const FEW_SORTS = 2;

/**
 * What is talked about most in a part: crops of this bed before others, each with its sorts where they are few; the sorts alone where
 * the crop is never said or is the bed's own name. Gear only where no plant grows.
 */
function subjects(part: Part, film: FilmHeard, title: string): readonly Subject[] {
  const { garden, beds } = film.day;
  const heardHere = inWords(film.names, (heard) => heard.from, part.from, part.to);
  const { counts, said } = plantsTold(part, film);
  const sorts = new Map<Kind, Variety[]>();
  for (const { name, confidence } of heardHere) {
    const variety = name.kind === "variety" ? garden.varieties.get(name.record) : undefined;
    if (variety === undefined || variety.private || confidence < APPLY_FROM) continue;
    if (!name.beds.has(part.bed ?? "") && name.beds.size > 0) continue;
    const crop = cropOf(garden, variety) ?? variety;
    const known = sorts.get(crop) ?? [];
    if (!known.includes(variety)) sorts.set(crop, [...known, variety]);
  }
  const { living = [], ended = [], coming = [] } = beds.get(part.bed ?? "") ?? {};
  const grown = new Set([...living, ...ended, ...coming].map((lot) => cropOf(garden, lot)?.id ?? lot.variety));
  const told = [...counts].sort((a, b) => b[1] - a[1]).map(([crop]) => crop);
  const own = told.filter(({ id }) => grown.has(id));
  const about = (own.length > 0 ? own : told).flatMap((crop): Subject[] => {
    const known = sorts.get(crop) ?? [];
    if (!isCrop(crop)) return [{ named: crop.title, plain: crop.title }];
    const plain = cropName(crop);
    if (isInTitle(crop, title) || !said.has(crop)) {
      const alone = known.map((one) => ({ named: one.title, plain: one.title }));
      return alone.length > 0 || isInTitle(crop, title) ? alone : [{ named: plain, plain }];
    }
    return [{ named: known.length === 0 || known.length > FEW_SORTS ? plain : sortsOf(known, crop), plain }];
  });
  if (about.length > 0 || counts.size > 0 || living.length > 0) return about;
  const gear = heardHere.flatMap(({ name: { kind, record } }) => {
    const own = kind === "gear" ? garden.gear.get(record) : undefined;
    return own === undefined || own.private ? [] : [chapterWords.gear(own.title)];
  });
  return [...new Set(gear)].map((one) => ({ named: one, plain: one }));
}

/** "Dale and Sugar Drip sorghum" */
function sortsOf(sorts: readonly Variety[], crop: Crop): string {
  const last = sorts.at(-1) as Variety;
  return sayList([...sorts.slice(0, -1).map(({ title }) => title), varietyName(last, crop)]);
}

function isInTitle(crop: Crop, title: string): boolean {
  const inTitle = title.toLowerCase();
  return [crop.plural, crop.name, ...crop.alsoCalled].some((name) => inTitle.includes(singular(name)));
}

/** How much each crop is spoken of, and which by a name of its own. */
function plantsTold(
  { bed, from, to }: Part,
  { day: { garden }, names, speech }: FilmHeard,
): { readonly counts: ReadonlyMap<Kind, number>; readonly said: ReadonlySet<Kind> } {
  const counts = new Map<Kind, number>();
  const said = new Set<Kind>();
  const add = (subject: Kind, weight: number) => counts.set(subject, (counts.get(subject) ?? 0) + weight);
  for (const { name } of inWords(names, (heard) => heard.from, from, to)) {
    const variety = name.kind === "variety" ? garden.varieties.get(name.record) : undefined;
    if (variety === undefined || variety.private) continue;
    add(cropOf(garden, variety) ?? variety, name.beds.has(bed ?? "") ? 2 : 0.5);
  }
  const crops = cropNames(garden);
  for (let at = from; at < to; at += 1) {
    const [word, next] = [(speech.words[at] as Word).plain, speech.words[at + 1]?.plain ?? ""];
    const crop = crops.get(`${word} ${next}`) ?? crops.get(word);
    if (crop === undefined) continue;
    add(crop, 1);
    said.add(crop);
  }
  return { counts, said };
}

const cropNamesOf = new WeakMap<Garden["crops"], ReadonlyMap<string, Crop>>();

/** By every name of a crop, made once for all chapters. */
function cropNames({ crops }: Garden): ReadonlyMap<string, Crop> {
  let known = cropNamesOf.get(crops);
  if (known === undefined) {
    known = new Map(
      [...crops.values()].flatMap((crop) => [crop.name, crop.plural].map((one) => [one.toLowerCase(), crop])),
    );
    cropNamesOf.set(crops, known);
  }
  return known;
}

function singular(subject: string): string {
  const last = subject.toLowerCase().split(" ").at(-1) as string;
  return last.replace(/(?:ies|oes|es|s)$/, "");
}

/** As video sites read them in a description: one line each, "0:00 Hello". */
export function chapterLines(chapters: readonly Chapter[]): readonly string[] {
  return chapters.map(({ time, title }) => `${time} ${title}`);
}

/** As cues of a chapters track: titles are plain text. */
export function chapterCues(chapters: readonly Chapter[]): readonly CueToWrite[] {
  return chapters.map(({ at, until, title }) => ({ start: at * 1000, end: until * 1000, text: title }));
}
