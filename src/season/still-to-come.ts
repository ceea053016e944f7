/** What a season that goes on has still to bring: picking windows, what can yet be sown, days to the first frost. */

import { cropFacts, frostFreeDaysLeft, middle, sowBy } from "../almanac/index.ts";
import { addDays, inYear, yearOf } from "../calendar.ts";
import { type Sentence, say, type Voice } from "../language/index.ts";
import type { Day } from "../model.ts";
import { compare } from "../order.ts";
import { type Forecast, forecaster } from "./forecast.ts";
import { stillWaiting, waits } from "./maturity.ts";
import type { ForecastRow } from "./recap.ts";
import { recapWords } from "./recap-words/words.ts";
import type { SeasonBook } from "./season-book.ts";
import { frostLeft } from "./weather-story.ts";

/** Days after the end of its first window beyond which nothing is forecast any more. */
const givenUp = 21;

/** Living plantings that have not reached their goal, the soonest first. */
export function forecastRows(book: SeasonBook, on: Day): readonly ForecastRow[] {
  const forecast = forecaster(book);
  return stillWaiting(book, on)
    .map((one) => forecast(one, on))
    .filter(({ expected }) => addDays(expected.by, givenUp) >= on)
    .map((one) => rowOf(book, one, on))
    .sort((a, b) => compare(a.likely, b.likely) || compare(a.planting, b.planting));
}

function rowOf(book: SeasonBook, forecast: Forecast, on: Day): ForecastRow {
  const { timed, from, likely, to, expected } = forecast;
  const { lot, goal } = timed;
  return {
    ...say(forecastSaid(book, forecast, on), [
      ...lot.events.filter(({ kind }) => kind === "planted" || kind === "sowed").slice(0, 1),
      lot.variety,
    ]),
    planting: lot.planting.id,
    name: plantingName(book, lot, on),
    goal,
    from,
    likely,
    to,
    overdue: expected.by < on,
  };
}

function plantingName({ garden }: SeasonBook, { planting, variety, crop }: Forecast["timed"]["lot"], on: Day): string {
  const { settings } = garden;
  const began = planting.planted === undefined ? "sown" : "planted";
  const day = planting.planted ?? planting.since;
  const bed = garden.beds.get(planting.bed);
  return recapWords.planting({ variety, crop }, bed, began, day, { settings, day: on });
}

export function forecastSaid(book: SeasonBook, forecast: Forecast, on: Day): string {
  const { timed, basis, from, likely, to, expected } = forecast;
  const { settings } = book.garden;
  const { variety, crop } = timed.lot;
  return recapWords.forecast(
    {
      plants: { variety, crop },
      goal: timed.goal,
      from,
      likely,
      to,
      expected,
      days: timed.catalogueDays,
      counted: timed.counted,
      ratio: basis.ratio,
      learnedFrom: basis.learnedFrom,
      byHeat: basis.byHeat && book.weather.days.size > 0,
    },
    { settings, day: on },
  );
}

/** Days for which autumn crops are picked before the frost ends it, in the count-back (Virginia Cooperative Extension 426-334). */
const harvestDays = 14;
/** Crops that stand the winter or are begun then have no last day before the frost. */
const mostDays = 75;
const mostNamed = 6;
/** Days that must be left, so that it is still time when the film is out. */
const leastLeft = 7;

/** Days to the first frost beyond which the sowing year has hardly begun, where no last frost tells it. */
const mostLeft = 150;

/**
 * "Still time to sow: turnips up to 28 August, lettuces up to 4 September." Only crops this garden has grown, and only when
 * spring's last frost is past: before it there is no hurry, and for tender crops no sowing.
 */
export function sowingLeft(book: SeasonBook, on: Day): Sentence | undefined {
  const { firstFrost, lastFrost } = book.garden.settings;
  if (firstFrost === undefined) return undefined;
  const left = frostFreeDaysLeft(firstFrost, on, lastFrost);
  if (left <= 0 || !springFrostPast(on, left, lastFrost)) return undefined;
  const frost = addDays(on, left);
  const voice: Voice = { settings: book.garden.settings, day: on };
  const words = recapWords;
  const grown = new Set(
    book.lots.flatMap(({ crop }) => (crop === undefined || crop.use === "flower" ? [] : [crop.id])),
  );
  const rows = [...grown].flatMap((id) => {
    const facts = cropFacts(id);
    const maturity = facts?.maturity?.value;
    if (maturity === undefined || maturity.counted !== "sowing" || waits(id)) return [];
    const days = Math.round(middle(maturity));
    if (days > mostDays) return [];
    const hardiness = facts?.hardiness?.value;
    const tender = hardiness === "tender" || hardiness === "very tender";
    const by = sowBy(frost, { daysToMaturity: days, harvestDays, frostTender: tender });
    return by < addDays(on, leastLeft) ? [] : [{ name: words.plants({ crop: book.garden.crops.get(id) }), by }];
  });
  if (rows.length === 0) return undefined;
  const soonest = rows.sort((a, b) => compare(a.by, b.by) || compare(a.name, b.name)).slice(0, mostNamed);
  const rowsByDay = [...Map.groupBy(soonest, ({ by }) => by)].map(([by, all]) => ({
    by,
    crops: all.map(({ name }) => name),
  }));
  return say(words.timeToSow(rowsByDay, voice), [{ place: { file: "garden.md", line: 1, column: 1 } }]);
}

/** Whether the last spring frost before the coming first frost lies behind. */
function springFrostPast(on: Day, left: number, lastFrost: string | undefined): boolean {
  if (lastFrost === undefined) return left <= mostLeft;
  const frost = addDays(on, left);
  const sameYear = inYear(lastFrost, yearOf(frost));
  const last = sameYear < frost ? sameYear : inYear(lastFrost, yearOf(frost) - 1);
  return last <= on;
}

export function frostSentence(book: SeasonBook, on: Day): Sentence | undefined {
  const { firstFrost, lastFrost } = book.garden.settings;
  if (firstFrost === undefined) return undefined;
  const text = frostLeft(book, on, frostFreeDaysLeft(firstFrost, on, lastFrost));
  return text === undefined ? undefined : say(text, [{ place: { file: "garden.md", line: 1, column: 1 } }]);
}
