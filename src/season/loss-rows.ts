/** Losses and troubles in words: what, how many, since when, what was tried, whether last year was worse. */
import type { Day } from "../model.ts";
import { capital, sayList, sayNumber, sayPlural } from "../timeline/index.ts";
import { dayOnly, inBed, plantName, type Speech, say } from "../tour/index.ts";
import type { LossRow } from "./recap.ts";
import type { SeasonBook } from "./season-book.ts";
import { type Season, sameDayIn } from "./seasons.ts";
import { type Setback, setbacks } from "./setbacks.ts";

/** Names said before the rest is counted. */
const mostNamed = 3;

/** `past`: the days told are over, so that what nobody noted as over is not called open still. */
export function lossRows(book: SeasonBook, season: Season, from: Day, to: Day, past: boolean): readonly LossRow[] {
  const before = book.seasons.find(({ year }) => year === season.year - 1);
  const then =
    before === undefined ? [] : setbacks(book, sameDayIn(before, from, season), sameDayIn(before, to, season));
  const speech: Speech = { settings: book.garden.settings, day: to };
  return setbacks(book, from, to).map((one) =>
    rowOf(
      book,
      one,
      then.find(({ cause }) => cause === one.cause),
      speech,
      past,
    ),
  );
}

function rowOf(book: SeasonBook, one: Setback, then: Setback | undefined, speech: Speech, past: boolean): LossRow {
  const names = [
    ...one.varieties.map((id) => {
      const variety = book.garden.varieties.get(id);
      return variety === undefined ? id : plantName({ variety, crop: book.garden.crops.get(variety.crop ?? "") });
    }),
    ...one.crops.map((id) => book.garden.crops.get(id)?.plural ?? id),
  ];
  return {
    cause: one.cause,
    noted: one.noted,
    plants: one.plants,
    lastYear: then?.plants ?? 0,
    first: one.first,
    last: one.last,
    what: names,
    tried: one.tried,
    standing: one.open && !past ? "open" : one.over !== undefined ? "over" : "lost",
    sentence: {
      ...say(
        sentenceOf(book, one, names, then, speech, past),
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
  speech: Speech,
  past: boolean,
): string {
  const shown = names.slice(0, mostNamed);
  const rest = names.length - shown.length;
  const what = sayList(rest > 0 ? [...shown, sayPlural(rest, "other kind", "other kinds")] : shown);
  const [bed] = one.beds.length === 1 ? one.beds.flatMap((id) => book.garden.beds.get(id) ?? []) : [];
  const where = bed === undefined ? "" : ` ${inBed(bed)}`;
  const cause = one.noted ? capital(one.cause) : "";
  const days =
    one.first === one.last
      ? `on ${dayOnly(one.first, speech)}`
      : `between ${dayOnly(one.first, speech)} and ${dayOnly(one.last, speech)}`;
  const lost =
    one.plants === 0
      ? one.all && one.noted && what !== ""
        ? `${cause} took all the ${what}${where}, ${days}`
        : undefined
      : one.noted
        ? `${cause} took ${sayPlural(one.plants, "plant", "plants")}${what === "" ? "" : ` of the ${what}`}${where}, ${days}`
        : `${capital(sayPlural(one.plants, "plant", "plants"))}${what === "" ? "" : ` of the ${what}`}${where} ${one.plants === 1 ? "was" : "were"} lost, no cause noted, ${days}`;
  const seen = `${cause === "" ? "Plants were lost" : cause}${what === "" ? where : ` on the ${what}${where}`}, seen ${days}`;
  const end = one.open
    ? past
      ? "; no line says that it was over"
      : "; not over yet"
    : one.over === undefined
      ? ""
      : `; over by ${dayOnly(one.over, speech)}`;
  const worse =
    then === undefined || (then.plants === 0 && one.plants === 0)
      ? ""
      : ` Last year by then it was ${then.plants === 0 ? "none" : sayNumber(then.plants)}.`;
  const tried =
    one.tried.length === 0 || one.plants + one.times === 0 ? "" : ` Tried: ${one.tried.slice(0, 2).join("; ")}.`;
  return `${lost ?? seen}${end}.${worse}${tried}`;
}
