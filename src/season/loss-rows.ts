/** Losses and troubles in words: what, how many, since when, what was tried, whether last year was worse. */

import { cropOf } from "../crop-of.ts";
import { type Season, sameDayIn } from "../garden/index.ts";
import { say, type Voice } from "../language/index.ts";
import type { Day } from "../model.ts";
import type { LossRow } from "./recap.ts";
import { recapWords } from "./recap-words/words.ts";
import type { SeasonBook } from "./season-book.ts";
import { type Setback, setbacks } from "./setbacks.ts";

/** Names said before the rest is counted. */
const mostNamed = 3;

/** `past`: the days told are over, so that what nobody noted as over is not called open still. */
export function lossRows(book: SeasonBook, season: Season, from: Day, to: Day, past: boolean): readonly LossRow[] {
  const before = book.seasons.find(({ year }) => year === season.year - 1);
  const then =
    before === undefined ? [] : setbacks(book, sameDayIn(before, from, season), sameDayIn(before, to, season));
  const voice: Voice = { settings: book.garden.settings, day: to };
  return setbacks(book, from, to).map((one) =>
    rowOf(
      book,
      one,
      then.find(({ cause }) => cause === one.cause),
      voice,
      past,
    ),
  );
}

function rowOf(book: SeasonBook, one: Setback, then: Setback | undefined, voice: Voice, past: boolean): LossRow {
  const { plants } = recapWords;
  const { crops } = book.garden;
  const names = [
    ...one.varieties.map((id) => {
      const variety = book.garden.varieties.get(id);
      return variety === undefined ? id : plants({ variety, crop: cropOf(book.garden, variety) });
    }),
    ...one.crops.map((id) => (crops.has(id) ? plants({ crop: crops.get(id) }) : id)),
  ];
  const ofCrops = new Set([...one.varieties.map((id) => book.garden.varieties.get(id)?.crop), ...one.crops]);
  const [crop] = ofCrops;
  return {
    cause: one.cause,
    noted: one.noted,
    plants: one.plants,
    lastYear: then?.plants ?? 0,
    first: one.first,
    last: one.last,
    what: names,
    ...(ofCrops.size === 1 && crop !== undefined ? { crop } : {}),
    tried: one.tried,
    standing: one.open && !past ? "open" : one.over !== undefined ? "over" : "lost",
    sentence: {
      ...say(
        sentenceOf(book, one, names, then, voice, past),
        one.sources.map((place) => ({ place })),
      ),
      private: one.private,
    },
  };
}

function sentenceOf(
  book: SeasonBook,
  one: Setback,
  names: readonly string[],
  then: Setback | undefined,
  voice: Voice,
  past: boolean,
): string {
  const [bed] = one.beds.length === 1 ? one.beds.flatMap((id) => book.garden.beds.get(id) ?? []) : [];
  return recapWords.loss(
    {
      names: names.slice(0, mostNamed),
      moreKinds: Math.max(0, names.length - mostNamed),
      bed,
      cause: one.noted ? one.cause : undefined,
      plants: one.plants,
      all: one.all,
      first: one.first,
      last: one.last,
      end: one.open ? (past ? "open, past" : "open") : one.over === undefined ? undefined : { over: one.over },
      lastYear: then === undefined || (then.plants === 0 && one.plants === 0) ? undefined : then.plants,
      tried: one.plants + one.times === 0 ? [] : one.tried.slice(0, 2),
    },
    voice,
  );
}
