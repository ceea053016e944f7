/**
 * Viewers' questions answered from the records where they can be: which variety, from where, since when, how much; or in
 * the person's own words, where a note answers it. What the records do not tell is left open.
 */
import type { Place } from "../model.ts";
import { asIfTyped, asksSomething } from "./comments.ts";
import { commonWords } from "./common-words.ts";
import type { FilmingDay } from "./filming-day.ts";
import { gearAsked } from "./gear-asked.ts";
import {
  type About,
  type AnswerFound,
  asking,
  plantsAsked,
  plantsDescribed,
  plantsKnown,
  plantsMeant,
  plantWordAt,
} from "./plants-asked.ts";
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

function answer(question: string, day: FilmingDay): AnswerFound | undefined {
  const asked = asIfTyped(question);
  const inOrder = asked
    .split(/[^\p{L}\p{N}'’-]+/u)
    .flatMap((word) => word.split("-"))
    .map(plainWord);
  const words = new Set(inOrder);
  const about: About = { question: asked, words, day, ...plantsMeant(asked, words, day) };
  const gear = gearAsked(asked, inOrder, plantWordAt(inOrder, about), about);
  if (gear !== undefined && gear.guess === undefined) return gear;
  // What the records tell for certain, then what the person wrote themselves, then what must be asked or guessed.
  const told = plantsAsked(about);
  if (told?.text !== undefined && told.asks === undefined) return told;
  return inOwnWords(about) ?? told ?? gear ?? plantsKnown(about) ?? plantsDescribed(about);
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
        // A list's line that could not be read is a record to mend and not an answer.
        if (sentence.endsWith("?") || sentence.includes(question) || /^[-*+=] /.test(sentence)) continue;
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
