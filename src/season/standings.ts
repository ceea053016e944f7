/**
 * What did best and what did worst in a season, each with its reasons from the records. Common practice of people who judge
 * their own gardens: a variety is held against what it gave here before, else against the handbook, then come losses and
 * troubles.
 */

import { daysBetween } from "../calendar.ts";
import { cropOf } from "../crop-of.ts";
import { earlier, type Season, sameDayIn } from "../garden/index.ts";
import { type Ground, type Sentence, say } from "../language/index.ts";
import type { Day, NurseryLot, Picked, Trouble } from "../model.ts";
import { betweenDays } from "../order.ts";
import { comparable, pickedInAll } from "../picked.ts";
import { promisedDay, timed } from "./maturity.ts";
import type { StandingFacts } from "./recap-words/facts.ts";
import { recapWords } from "./recap-words/words.ts";
import { perPlant, pickingsBetween } from "./results.ts";
import type { Lot, SeasonBook } from "./season-book.ts";
import { lostAll } from "./setbacks.ts";
import { handbookChange, type PlantsSet, soFarChange, yieldChange } from "./yield-changes.ts";

export interface Standing extends Sentence {
  readonly variety: string;
  readonly score: number;
  /** What weighs most: "more than last year", "lost". */
  readonly why: string;
  readonly facts: {
    readonly lost: number;
    readonly began?: number | undefined;
    readonly lostAll: boolean;
    readonly causes: readonly string[];
    readonly troubles: readonly string[];
    /** Grams from each plant of finished plantings, and the year before. */
    readonly each?: { readonly grams: number; readonly lastYear: number } | undefined;
  };
}

export interface Standings {
  readonly best: readonly Standing[];
  readonly worst: readonly Standing[];
}

/** Told on each side at most. */
const mostTold = 5;
/** Lines of pickings given as sources. */
const mostPickings = 2;
/** A score nearer to nothing than this is neither good nor bad. */
const least = 0.2;

interface Account {
  readonly variety: string;
  readonly lots: readonly Lot[];
  readonly now: Picked;
  readonly before?: Picked | undefined;
  /** Plants the pickings are of; undefined when some were not counted. */
  readonly set: PlantsSet;
  readonly lost: number;
  readonly began?: number | undefined;
  readonly losses: readonly { readonly plants: number; readonly cause?: string | undefined }[];
  /** A line says that all were lost, and nobody counted them. */
  readonly lostAll: boolean;
  /** Some of them were raised indoors here. */
  readonly raised: boolean;
  readonly troubles: readonly string[];
  /** The lines it rests on. */
  readonly grounds: readonly Ground[];
}

export function standings(book: SeasonBook, season: Season, from: Day, to: Day): Standings {
  const all = accounts(book, season, from, to);
  const grams = all.reduce((sum, { now }) => sum + now.grams, 0);
  const scored = all.flatMap((account) => {
    const judged = judge(book, account, season, { from, to }, grams > 0 ? account.now.grams / grams : 0);
    return judged === undefined ? [] : [judged];
  });
  const order = (a: Standing, b: Standing) => b.score - a.score || (a.variety < b.variety ? -1 : 1);
  return {
    best: scored
      .filter(({ score }) => score >= least)
      .sort(order)
      .slice(0, mostTold),
    worst: scored
      .filter(({ score }) => score <= -least)
      .sort((a, b) => order(b, a))
      .slice(0, mostTold),
  };
}

function accounts(book: SeasonBook, season: Season, from: Day, to: Day): readonly Account[] {
  const before = book.seasons.find(({ year }) => year === season.year - 1);
  const picked = Map.groupBy(pickingsBetween(book, from, earlier(to, season.to)), ({ variety }) => variety ?? "");
  const former =
    before === undefined
      ? new Map()
      : Map.groupBy(
          pickingsBetween(book, sameDayIn(before, from, season), sameDayIn(before, to, season)),
          ({ variety }) => variety ?? "",
        );
  const lost = Map.groupBy(
    betweenDays(book.events, from, to).filter(({ kind }) => kind === "lost"),
    ({ variety }) => variety ?? "",
  );
  const troubled = new Map<string, Trouble[]>();
  for (const { trouble } of book.troubles) {
    if (trouble.opened < from || trouble.opened > to) continue;
    for (const variety of trouble.varieties) troubled.set(variety, [...(troubled.get(variety) ?? []), trouble]);
  }
  const raised = Map.groupBy(book.garden.nurseryLots, ({ variety }) => variety ?? "");

  const ids = new Set([...picked.keys(), ...lost.keys(), ...troubled.keys()]);
  ids.delete("");
  return [...ids].sort().map((variety): Account => {
    const lots = livingBetween(book.lotsOf(variety), from, to);
    const lostLines = lost.get(variety) ?? [];
    const losses = lostLines.map((line) => ({
      plants: line.count?.value ?? (lostAll(line) ? 0 : 1),
      cause: line.cause,
    }));
    const troubles = troubled.get(variety) ?? [];

    return {
      variety,
      lots,
      now: pickedInAll(picked.get(variety) ?? []),
      before: former.has(variety) ? pickedInAll(former.get(variety) ?? []) : undefined,
      set: {
        now: plantsIn(lots),
        before:
          before === undefined
            ? undefined
            : plantsIn(livingBetween(book.lotsOf(variety), before.from, sameDayIn(before, to, season))),
      },
      lost: losses.reduce((sum, { plants }) => sum + plants, 0),
      began: begunWith(raised.get(variety) ?? [], lots, lostLines, from, to),
      losses,
      lostAll: lostLines.some(lostAll),
      raised: raised.has(variety),
      troubles: [...new Set(troubles.map(({ cause }) => cause))],
      grounds: [...(picked.get(variety) ?? []).slice(0, mostPickings), ...lostLines, ...troubles],
    };
  });
}

function livingBetween(lots: readonly Lot[], from: Day, to: Day): readonly Lot[] {
  return lots.filter(({ planting }) => planting.since <= to && (planting.ended ?? to) >= from);
}

function plantsIn(lots: readonly Lot[]): number | undefined {
  const counts = lots.map(({ plants }) => plants);
  return counts.length === 0 || counts.includes(undefined)
    ? undefined
    : counts.reduce((sum: number, plants) => sum + (plants ?? 0), 0);
}

/**
 * Plants a variety began with: those planted, or those sown indoors where that is more and some were lost before planting,
 * because seedlings are lost too.
 */
function begunWith(
  raised: readonly NurseryLot[],
  lots: readonly Lot[],
  lost: readonly { readonly day: Day }[],
  from: Day,
  to: Day,
): number | undefined {
  const planted = lots.map(({ planting }) => (planting.planted === undefined ? undefined : planting.began?.value));
  const inBeds = planted.includes(undefined) ? undefined : planted.reduce((sum: number, n) => sum + (n ?? 0), 0);
  const first = lots.map(({ planting }) => planting.planted ?? planting.since).sort()[0];
  if (inBeds !== undefined && inBeds > 0 && lost.every(({ day }) => first !== undefined && day >= first)) return inBeds;
  const sown = raised
    .filter((lot) => lot.sown <= to && (lot.sown >= from || lots.some(({ planting }) => planting.sown === lot.sown)))
    .reduce((sum, lot) => sum + (lot.count?.value ?? 0), 0);
  const most = Math.max(inBeds ?? 0, sown);
  return most > 0 ? most : undefined;
}

function judge(
  book: SeasonBook,
  account: Account,
  season: Season,
  { from, to }: { readonly from: Day; readonly to: Day },
  part: number,
): Standing | undefined {
  const { now, lots, lost, began, troubles } = account;
  const change =
    yieldChange(book.lotsOf(account.variety), lots, season) ?? soFarChange(account.now, account.before, account.set);
  const handbook = change === undefined ? handbookChange(lots) : undefined;
  const share =
    account.lostAll && lost === 0
      ? now.times === 0
        ? 1
        : 0.3
      : began !== undefined && began > 0
        ? Math.min(1, lost / began)
        : lost > 0 && now.times === 0
          ? 1
          : lost > 0
            ? 0.3
            : 0;
  const grown = change ?? (handbook === undefined ? 0 : handbook * 0.4);
  const soon = againstPromise(book, lots, to);
  // A large part of the weight is no merit of plants that gave less than they did before.
  const weight = grown < 0 ? 0 : Math.min(0.3, now.times * 0.04) + Math.min(0.8, 4 * part);
  const score = (now.times > 0 ? grown + soon + weight : 0) - share - 0.08 * Math.min(8, lost) - 0.2 * troubles.length;
  const text = sentenceOf(book, account, season, from, to);
  if (text === undefined) return undefined;
  const why = whyOf(score, { account, change, handbook });
  return {
    ...say(text, account.grounds),
    variety: account.variety,
    score: Number.isFinite(score) ? score : 0,
    why,
    facts: {
      lost,
      began: began !== undefined && began > 0 ? began : undefined,
      lostAll: account.lostAll && lost === 0,
      causes: [...new Set(account.losses.flatMap(({ cause }) => cause ?? []))],
      troubles,
      each: eachPlant(book, account, season),
    },
  };
}

/** What weighs most; nothing is compared with a year that was not. */
function whyOf(
  score: number,
  { account, change, handbook }: { account: Account; change: number | undefined; handbook: number | undefined },
): string {
  if (score < 0) {
    if (account.lost > 0 || account.lostAll) return "plants were lost";
    if (account.troubles.length > 0) return "it had trouble";
    if ((change ?? 0) < 0) return "each plant gave less than before";
    return (handbook ?? 0) < 0 ? "each plant gave less than handbooks tell" : "it came late";
  }
  if ((change ?? 0) > 0) return "each plant gave more than before";
  if ((handbook ?? 0) > 0) return "each plant gave more than handbooks tell";
  return account.before === undefined ? "it did well in its first year" : "it gave a good part of the weight";
}

/** A little for coming early and off for coming late, by what the variety promises. */
function againstPromise(book: SeasonBook, lots: readonly Lot[], to: Day): number {
  const apart = lots.flatMap((lot) => {
    const one = timed(book.garden, lot);
    if (one?.reached === undefined || one.reached > to) return [];
    return [daysBetween(one.reached, promisedDay(one, book.weather.latitude)) / one.catalogueDays];
  });
  const mean = apart.reduce((sum, one) => sum + one, 0) / Math.max(1, apart.length);
  return Math.max(-0.15, Math.min(0.15, mean));
}

/** What is to be told of a variety; undefined when there is nothing. */
function sentenceOf(book: SeasonBook, account: Account, season: Season, from: Day, to: Day): string | undefined {
  const { settings } = book.garden;
  const { now, before, lots, losses, troubles, lost, began } = account;
  const variety = book.garden.varieties.get(account.variety);
  if (variety === undefined) return undefined;
  const own = perPlant(lots.filter((lot) => lot.season === season.year && lot.planting.ended !== undefined));
  // Of a planting that lost plants, the mean of all that were set out says little.
  const each =
    own?.grams === undefined || own.plants < 2 || now.grams <= 0 || lost > 0
      ? undefined
      : { grams: own.grams, plants: own.plants, lastYear: perPlant(lotsBefore(book, account.variety, season))?.grams };
  return recapWords.standing(
    {
      plants: { variety, crop: cropOf(book.garden, variety) },
      now,
      each,
      before: before !== undefined && comparable(now, before) ? before : undefined,
      set: account.set.now !== undefined && account.set.now !== account.set.before ? account.set : undefined,
      span: from !== season.from ? "same days" : season.to > to ? "same day" : "whole year",
      allLost: account.lostAll && lost === 0,
      lost,
      began: began !== undefined && began > lost ? began : undefined,
      causes: [...new Set(losses.flatMap(({ cause }) => cause ?? []))],
      never: lost > 0 && now.times === 0 ? neverPicked(account, to) : undefined,
      otherTroubles: troubles.filter(
        (cause) => !losses.some((loss) => loss.cause?.toLowerCase() === cause.toLowerCase()),
      ),
    },
    { settings, day: to },
  );
}

function eachPlant(book: SeasonBook, { variety, lots }: Account, season: Season): Standing["facts"]["each"] {
  const own = perPlant(lots.filter((lot) => lot.season === season.year));
  const then = perPlant(lotsBefore(book, variety, season));
  return own?.grams === undefined || then?.grams === undefined || own.plants < 2 || then.plants < 2
    ? undefined
    : { grams: own.grams, lastYear: then.grams };
}

/** Finished plantings of the season before. */
function lotsBefore(book: SeasonBook, variety: string, season: Season): readonly Lot[] {
  return book.lotsOf(variety).filter((lot) => lot.season === season.year - 1 && lot.planting.ended !== undefined);
}

/** Plants that are past their time and gave nothing; while they may still come, nothing is said. */
function neverPicked({ lots, raised }: Account, to: Day): StandingFacts["never"] {
  if (lots.length === 0) return raised ? "not planted" : undefined;
  const ended = lots.filter(({ planting }) => planting.ended !== undefined && planting.ended <= to);
  const last = ended.at(-1)?.planting.ended;
  return ended.length === lots.length && last !== undefined ? { gone: last } : undefined;
}
