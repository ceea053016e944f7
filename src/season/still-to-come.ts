/** What a season that goes on has still to bring: picking windows, what can yet be sown, days to the first frost. */
import { cropFacts, frostFreeDaysLeft, middle, sowBy } from "../almanac/index.ts";
import { addDays } from "../calendar.ts";
import type { Day } from "../model.ts";
import { sayList, sayPlural } from "../timeline/index.ts";
import { dayOnly, inBed, isSingular, plantName, type Sentence, type Speech, say } from "../tour/index.ts";
import { type Forecast, forecaster } from "./forecast.ts";
import { allTimed, waits } from "./maturity.ts";
import type { ForecastRow } from "./recap.ts";
import type { SeasonBook } from "./season-book.ts";
import { frostLeft } from "./weather-story.ts";

/** Days after the end of its window beyond which nothing is forecast any more. */
const givenUp = 21;

/** Living plantings that have not reached their goal, the soonest first. */
export function forecastRows(book: SeasonBook, on: Day): readonly ForecastRow[] {
  const forecast = forecaster(book);
  return allTimed(book)
    .filter(({ lot, reached, begun }) => reached === undefined && begun <= on && lot.planting.ended === undefined)
    .map((one) => forecast(one, on))
    .filter(({ to }) => addDays(to, givenUp) >= on)
    .map((one) => rowOf(book, one, on))
    .sort((a, b) => (a.likely < b.likely ? -1 : a.likely > b.likely ? 1 : a.planting < b.planting ? -1 : 1));
}

function rowOf(book: SeasonBook, forecast: Forecast, on: Day): ForecastRow {
  const { timed, from, likely, to } = forecast;
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
  };
}

function plantingName({ garden }: SeasonBook, { planting, variety, crop }: Forecast["timed"]["lot"], on: Day): string {
  const bed = garden.beds.get(planting.bed);
  const where = bed === undefined ? "" : ` ${inBed(bed)}`;
  const began = planting.planted === undefined ? "sown" : "planted";
  const day = dayOnly(planting.planted ?? planting.since, { settings: garden.settings, day: on });
  return `${plantName({ variety, crop })}${where}, ${began} on ${day}`;
}

/** "The Crown Prince squash should be ready between 2 September and 14 October, most likely about 22 September: 95 days from planting, and squash took a quarter longer here." */
export function forecastSaid(book: SeasonBook, forecast: Forecast, on: Day): string {
  const { timed, from, likely, to } = forecast;
  const { lot, goal } = timed;
  const speech: Speech = { settings: book.garden.settings, day: on };
  const named = { variety: lot.variety, crop: lot.crop };
  const ready = goal === "flower" ? "be in flower" : "be ready";
  const name = `The ${plantName(named)}`;
  const basis = basisSaid(book, forecast);
  if (to < on) {
    return `${name} ${isSingular(named) ? "was" : "were"} expected to ${ready} by ${dayOnly(to, speech)} at the latest and ${isSingular(named) ? "is" : "are"} not: ${basis}.`;
  }
  if (from <= on)
    return `${name} may ${ready} any day up to ${dayOnly(to, speech)}${likely > on ? `, most likely about ${dayOnly(likely, speech)}` : ""}: ${basis}.`;
  return `${name} should ${ready} between ${dayOnly(from, speech)} and ${dayOnly(to, speech)}, most likely about ${dayOnly(likely, speech)}: ${basis}.`;
}

/** Ratios nearer to 1 than this are no news. */
const noNews = 0.04;

function basisSaid(book: SeasonBook, { timed, basis }: Forecast): string {
  const days = `${sayPlural(timed.catalogueDays, "day", "days")} from ${timed.counted} by the variety's record`;
  const crop = timed.lot.crop;
  const apart = basis.ratio - 1;
  const plural = crop?.plural ?? "such plants";
  const own =
    basis.learnedFrom === 0
      ? ""
      : Math.abs(apart) < noNews
        ? `, which ${sayPlural(basis.learnedFrom, "earlier planting", "earlier plantings")} here kept to`
        : `, and ${plural} here took about ${shareSaid(Math.abs(apart))} ${apart > 0 ? "longer" : "less"}`;
  const heat = basis.byHeat && book.weather.days.size > 0 ? ", with this season's warmth reckoned in" : "";
  return `${days}${own}${heat}`;
}

function shareSaid(share: number): string {
  const fractions: readonly (readonly [number, string])[] = [
    [0.075, "a twentieth"],
    [0.14, "a tenth"],
    [0.22, "a sixth"],
    [0.29, "a quarter"],
    [0.41, "a third"],
    [0.6, "a half"],
  ];
  return fractions.find(([most]) => share < most)?.[1] ?? `${Math.round(share * 100)} %`;
}

/** Days for which autumn crops are picked before the frost ends it, in the count-back (Virginia Cooperative Extension 426-334). */
const harvestDays = 14;
/** Crops that stand the winter or are begun then have no last day before the frost. */
const mostDays = 75;
const mostNamed = 6;
/** Days that must be left, so that it is still time when the film is out. */
const leastLeft = 7;

/** "Still time to sow: turnips up to 28 August, lettuces up to 4 September." Only crops this garden has grown. */
export function sowingLeft(book: SeasonBook, on: Day): Sentence | undefined {
  const { firstFrost, lastFrost } = book.garden.settings;
  if (firstFrost === undefined) return undefined;
  const left = frostFreeDaysLeft(firstFrost, on, lastFrost);
  if (left <= 0) return undefined;
  const frost = addDays(on, left);
  const speech: Speech = { settings: book.garden.settings, day: on };
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
    return by < addDays(on, leastLeft) ? [] : [{ name: book.garden.crops.get(id)?.plural ?? id, by }];
  });
  if (rows.length === 0) return undefined;
  const soonest = rows
    .sort((a, b) => (a.by < b.by ? -1 : a.by > b.by ? 1 : a.name < b.name ? -1 : 1))
    .slice(0, mostNamed);
  const told = [...Map.groupBy(soonest, ({ by }) => by)].map(
    ([by, all]) => `${sayList(all.map(({ name }) => name))} up to ${dayOnly(by, speech)}`,
  );
  return say(`There is still time to sow ${told.join(", ")}.`, [{ place: { file: "garden.md", line: 1, column: 1 } }]);
}

export function frostSentence(book: SeasonBook, on: Day): Sentence | undefined {
  const { firstFrost, lastFrost } = book.garden.settings;
  if (firstFrost === undefined) return undefined;
  const text = frostLeft(book, on, frostFreeDaysLeft(firstFrost, on, lastFrost));
  return text === undefined ? undefined : say(text, [{ place: { file: "garden.md", line: 1, column: 1 } }]);
}
