/**
 * What a film says and where: names and stops help each other, so they are heard twice. The first time names are matched
 * with the whole film's varieties in mind and the speech is cut into stops; the second time with those of the bed at hand.
 */
import type { FilmingDay } from "./filming-day.ts";
import { type GlossaryWord, type KnownName, knownNames, ownWords } from "./known-names.ts";
import { maybeNames, type NameHeard, namesHeard } from "./names-heard.ts";
import { type Phrase, phrasesOf } from "./phrases.ts";
import { type PlaceHeard, PlaceWords } from "./places-heard.ts";
import type { Speech } from "./spoken-words.ts";
import { type Statement, statementsOf } from "./statements.ts";
import { type Stretch, stopsHeard, type TimedStop, withoutGuesses } from "./stops-heard.ts";

export interface FilmHeard {
  readonly day: FilmingDay;
  readonly speech: Speech;
  readonly phrases: readonly Phrase[];
  readonly statements: readonly Statement[];
  readonly known: readonly KnownName[];
  readonly names: readonly NameHeard[];
  readonly places: readonly PlaceHeard[];
  readonly stretches: readonly Stretch[];
  /** The same with the turns that are no more than guesses. */
  readonly turns: readonly Stretch[];
}

export interface FilmRequest {
  readonly speech: Speech;
  readonly day: FilmingDay;
  /** Beds in the order of the plan; empty when none is known. */
  readonly plan: readonly string[];
  readonly glossary?: readonly GlossaryWord[] | undefined;
  /** When the person says a stop begins, milliseconds; what they say counts. */
  readonly times?: readonly TimedStop[] | undefined;
}

export function hearFilm({ speech, day, plan, glossary, times = [] }: FilmRequest): FilmHeard {
  const phrases = phrasesOf(speech);
  const known = knownNames(day, new Set(plan), glossary);
  const placeWords = new PlaceWords(day);
  const cut = (names: readonly NameHeard[], howSure: boolean) => {
    const places = placeWords.heard(speech.words, phrases, names);
    return { names, places, stretches: stopsHeard({ words: speech.words, phrases, places, plan, times }, howSure) };
  };
  const maybe = maybeNames(speech, known, ownWords(day, known));
  const first = cut(namesHeard(maybe), false);
  const bedOf = bedByWord(first.stretches, speech.words.length);
  const statements = statementsOf(speech);
  const {
    names,
    places,
    stretches: turns,
  } = cut(
    namesHeard(maybe, (word) => bedOf[word]),
    true,
  );
  return { day, speech, phrases, statements, known, names, places, stretches: withoutGuesses(turns), turns };
}

function bedByWord(stretches: readonly Stretch[], words: number): readonly (string | undefined)[] {
  const beds = new Array<string | undefined>(words).fill(undefined);
  for (const { bed, from, to } of stretches) beds.fill(bed, from, to);
  return beds;
}
