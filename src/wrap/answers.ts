/**
 * Viewers' questions answered from the records where they can be: which variety, from where, since when, how much; or in
 * the person's own words, where a note answers it. What the records do not tell is left open.
 */
import { cropOf } from "../crop-of.ts";
import { fromWords, sayDay, sayList, sayNumber, sayWeight } from "../language/index.ts";
import type { Garden, Place, Planting } from "../model.ts";
import { asksSomething } from "./comments.ts";
import { commonWords } from "./common-words.ts";
import { varietyDisclosure } from "./disclosures.ts";
import type { FilmingDay } from "./filming-day.ts";
import { gearAsked, whichIsMeant } from "./gear-asked.ts";
import { plainWord } from "./spoken-words.ts";
import type { Answer } from "./wrap.ts";

export interface Question {
  readonly text: string;
  readonly place: Place;
}

/** Questions noted on or after the filming day and before the next film, and those of a file of comments, a line each. */
export function questionsFor(
  day: FilmingDay,
  comments?: { readonly file: string; readonly text: string },
): readonly Question[] {
  const { garden, episode } = day;
  const next = [...garden.episodes.values()]
    .filter((one) => one.day > episode.day)
    .map((one) => one.day)
    .sort()[0];
  const noted = garden.events
    .filter((event) => event.kind === "asked" && event.day >= episode.day && (next === undefined || event.day < next))
    .map(({ what, text, place }) => ({ text: what ?? text, place }));
  const written = (comments?.text ?? "").split(/\r?\n/).flatMap((line, index): Question[] => {
    const text = line.replace(/^[\s>*-]+/, "").trim();
    return asksSomething(text) ? [{ text, place: { file: comments?.file ?? "", line: index + 1, column: 1 } }] : [];
  });
  return [...noted, ...written];
}

export function answersOf(day: FilmingDay, questions: readonly Question[]): readonly Answer[] {
  return questions.map(({ text, place }) => {
    const found = answer(text, day);
    return {
      question: text,
      place,
      answer: found?.text,
      sources: found?.sources ?? [],
      asks: found?.asks,
      guess: found?.guess,
    };
  });
}

export interface AnswerFound {
  /** Undefined where the records do not tell, or would have to tell of too many. */
  readonly text: string | undefined;
  readonly sources: readonly Place[];
  /** What the person has to decide first: which of several is meant. */
  readonly asks?: string | undefined;
  /** Why it may not be the answer. */
  readonly guess?: string | undefined;
}

/** What a question asks, in the order tried. */
const asks: readonly (readonly [RegExp, (about: About) => AnswerFound | undefined])[] = [
  [
    /\b(?:which|what) (?:variety|kind|sort|type)\b|\bwhat(?:'s| is| are) (?:the|that|those)\b|\bwhich (?:one )?is\b/i,
    which,
  ],
  [/\bwhere\b.*\b(?:from|get|got|buy|bought)\b|\bsource\b/i, whereFrom],
  [/\bwhen\b.*\b(?:sow|sown|plant|planted|started?)\b/i, when],
  [/\bhow (?:much|many|heavy)\b/i, howMuch],
];

interface About extends Plants {
  readonly question: string;
  readonly words: ReadonlySet<string>;
  readonly day: FilmingDay;
}

interface Plants {
  readonly lots: readonly Planting[];
  /** The question names the variety itself, and not only its crop. */
  readonly named: boolean;
  readonly bed: string | undefined;
}

/** Varieties that an answer may tell of at once. */
const MOST_TOLD = 3;

function answer(question: string, day: FilmingDay): AnswerFound | undefined {
  const inOrder = question
    .split(/[^\p{L}\p{N}'’-]+/u)
    .flatMap((word) => word.split("-"))
    .map(plainWord);
  const words = new Set(inOrder);
  const about: About = { question, words, day, ...plantsMeant(question, words, day) };
  const gear = gearAsked(question, inOrder, plantWordAt(inOrder, about), day);
  if (gear !== undefined) return gear;
  // What the person wrote themselves goes before what can be worked out.
  const own = inOwnWords(about);
  if (own !== undefined) return own;
  for (const [pattern, tell] of asks) {
    const found = pattern.test(question) && about.lots.length > 0 ? tell(about) : undefined;
    if (found !== undefined) return { ...withCandidates(found, about, tell === which), guess: guessIn(about.lots) };
  }
  return undefined;
}

/** Where the question first names one of the plants it speaks of. */
function plantWordAt(words: readonly string[], { lots, day: { garden } }: About): number | undefined {
  const names = new Set(
    lots.flatMap((lot) => {
      const crop = cropOf(garden, lot);
      const variety = garden.varieties.get(lot.variety ?? "");
      return [crop?.name, crop?.plural, variety?.title, ...(variety?.alsoSpelled ?? [])].flatMap((name) =>
        (name ?? "").split(/[^\p{L}\p{N}'’]+/u).map(plainWord),
      );
    }),
  );
  const at = words.findIndex((word) => word.length > 2 && names.has(word));
  return at < 0 ? undefined : at;
}

/** A crop of which several varieties stand there: which is meant only the person who was asked can tell. */
function withCandidates(found: AnswerFound, { lots, named, day }: About, tellsApart: boolean): AnswerFound {
  const all = titles(day, lots);
  if (named || all.length < 2 || (tellsApart && !found.text?.startsWith("That day"))) return found;
  return { ...found, text: all.length > MOST_TOLD ? undefined : found.text, asks: whichIsMeant(all) };
}

function guessIn(lots: readonly Planting[]): string | undefined {
  if (lots.some(({ takenToBeOver }) => takenToBeOver === true))
    return "It is taken to be over, because its season turned and no line says so.";
  if (lots.some(({ count }) => count?.approx === true)) return "Its number is an estimate.";
  return undefined;
}

/** Plants a question speaks of: a variety by name, else a crop, in the bed it names if it names one. */
function plantsMeant(question: string, words: ReadonlySet<string>, { garden, beds }: FilmingDay): Plants {
  const lower = question.toLowerCase();
  const bed = [...garden.beds.values()].find(({ title, alsoCalled }) =>
    [title, ...alsoCalled].some((name) => lower.includes(name.toLowerCase())),
  )?.id;
  const all = [...beds.values()]
    .filter((one) => bed === undefined || one.bed.id === bed)
    .flatMap(({ living, ended }) => [...living, ...ended]);
  const open = all.filter(
    (lot) => !lot.private && lot.variety !== undefined && garden.varieties.get(lot.variety)?.private !== true,
  );
  const named = open.filter((lot) => {
    const variety = garden.varieties.get(lot.variety ?? "");
    return (
      variety !== undefined &&
      [variety.title, ...variety.alsoSpelled].some((name) => lower.includes(name.toLowerCase()))
    );
  });
  if (named.length > 0) return { lots: named, bed, named: true };
  const ofCrop = open.filter((lot) => {
    const crop = cropOf(garden, lot);
    return (
      crop !== undefined && [crop.name, crop.plural].some((name) => words.has(plainWord(name.split(" ").at(-1) ?? "")))
    );
  });
  const alive = ofCrop.filter(({ ended }) => ended === undefined);
  return { lots: alive.length > 0 ? alive : ofCrop, bed, named: false };
}

function titles({ garden }: FilmingDay, lots: readonly Planting[]): readonly string[] {
  return [...new Set(lots.flatMap(({ variety }) => garden.varieties.get(variety ?? "")?.title ?? []))];
}

function sources(lots: readonly Planting[], garden: Garden): readonly Place[] {
  const places = lots.flatMap(({ variety }) => garden.varieties.get(variety ?? "")?.place ?? []);
  return places.filter((place, index) => places.findIndex(({ file }) => file === place.file) === index);
}

/** "Which is the red lettuce by the gate?": of several, those whose own words share the question's. */
function which({ lots, words, day }: About): AnswerFound | undefined {
  const told = [...words].filter((word) => word.length > 2 && !asking.has(word));
  const scored = lots.map((lot) => {
    const variety = day.garden.varieties.get(lot.variety ?? "");
    const own = `${variety?.title ?? ""} ${variety?.body ?? ""} ${lot.spot ?? ""}`.split(/[^\p{L}]+/u).map(plainWord);
    return { lot, shared: told.filter((word) => own.includes(word)).length };
  });
  const most = Math.max(...scored.map(({ shared }) => shared));
  const meant = most > 0 ? scored.filter(({ shared }) => shared === most).map(({ lot }) => lot) : lots;
  const names = titles(day, meant);
  if (names.length === 0) return undefined;
  const text = names.length === 1 ? `${names[0]}.` : `That day there were ${sayList(names)}.`;
  return { text, sources: sources(meant, day.garden) };
}

const asking = new Set(
  "which what variety kind sort type the are there that this for and your you does did was were how where when who why".split(
    " ",
  ),
);

function whereFrom({ lots, day }: About): AnswerFound | undefined {
  const told = [...new Set(lots.map(({ variety }) => variety ?? ""))].flatMap((id) => {
    const variety = day.garden.varieties.get(id);
    return variety?.source === undefined
      ? []
      : [`${variety.title}: ${varietyDisclosure(variety).beside ?? fromWords(variety.source)}`];
  });
  return told.length === 0 ? undefined : { text: `${told.join("; ")}.`, sources: sources(lots, day.garden) };
}

function when({ lots, day }: About): AnswerFound | undefined {
  const near = { language: day.garden.settings.language, near: day.day };
  const told = lots.flatMap(({ variety, sown, planted }) => {
    const title = day.garden.varieties.get(variety ?? "")?.title;
    const parts = [
      ...(sown === undefined ? [] : [`sown on ${sayDay(sown, near)}`]),
      ...(planted === undefined ? [] : [`planted out on ${sayDay(planted, near)}`]),
    ];
    return title === undefined || parts.length === 0 ? [] : [`${title}: ${parts.join(", ")}`];
  });
  return told.length === 0 ? undefined : { text: `${told.join("; ")}.`, sources: lots.map(({ lastNote }) => lastNote) };
}

function howMuch({ lots, day }: About): AnswerFound | undefined {
  const { garden } = day;
  const told = lots.flatMap(({ variety, crop, picked, count }) => {
    const title = garden.varieties.get(variety ?? "")?.title ?? crop ?? "Plants";
    if (picked.grams > 0) return [`${title}: ${sayWeight(picked.grams, garden.settings.units)} by then`];
    return count === undefined ? [] : [`${title}: ${sayNumber(count.value)}`];
  });
  return told.length === 0 ? undefined : { text: `${told.join("; ")}.`, sources: lots.map(({ lastNote }) => lastNote) };
}

/** Share of a question's own words that a sentence of the notes must hold to answer it, and how many at least. */
const SHARED = 0.5;
const LEAST = 2;
/** Days around the filming day whose notes may answer. */
const NOTES_AFTER = 60;

function inOwnWords({ words, day, question }: About): AnswerFound | undefined {
  const told = [...words].filter((word) => word.length > 2 && !commonWords.has(word) && !asking.has(word)).map(stem);
  if (told.length < LEAST) return undefined;
  let best: { readonly text: string; readonly place: Place; readonly share: number } | undefined;
  for (const note of day.garden.notes) {
    if (note.private || note.day < day.day || Date.parse(note.day) - Date.parse(day.day) > NOTES_AFTER * 86_400_000)
      continue;
    for (const { text, place, private: hidden } of note.story) {
      if (hidden === true) continue;
      for (const sentence of text.split(/(?<=[.!?])\s+/)) {
        if (sentence.endsWith("?") || sentence.includes(question)) continue;
        const own = new Set(
          sentence
            .split(/[^\p{L}]+/u)
            .map(plainWord)
            .map(stem),
        );
        const shared = told.filter((word) => own.has(word)).length;
        if (shared >= LEAST && shared / told.length >= SHARED && shared / told.length > (best?.share ?? 0)) {
          best = { text: sentence, place, share: shared / told.length };
        }
      }
    }
  }
  return best === undefined
    ? undefined
    : {
        text: best.text,
        sources: [best.place],
        guess: "This sentence of your notes has the question's words; whether it answers it is for you to say.",
      };
}

function stem(word: string): string {
  return word.replace(/(?:ing|ed|es|s)$/, "");
}
