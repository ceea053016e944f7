/** The one figure of a card: rounded to two digits, with what it is to be held against. Without a comparison there is none. */

import { daysBetween } from "../../calendar.ts";
import { cardLimits, fits, ratioWords, twoDigits } from "../../films/index.ts";
import {
  capital,
  cropName,
  type Sentence,
  say,
  sayLength,
  sayMonth,
  sayNumber,
  sayPicked,
} from "../../language/index.ts";
import type { Picked } from "../../model.ts";
import { comparable, onlyCounted, pickedSize } from "../../picked.ts";
import { byVariety } from "../batches.ts";
import { type BedOnTheDay, type Lot, voiceOf } from "../bed-on-the-day.ts";
import type { Weighed } from "../candidates/candidate.ts";
import { coverChange, sideBySide } from "../growth-lines.ts";
import { lastYears } from "../milestones.ts";
import { lastYearByNow, pickedSince } from "../picked-sentences.ts";
import type { PhotosByBed } from "../spot.ts";

interface Figure extends Sentence {
  /** How far from ordinary it is. */
  readonly worth: number;
}

/** The most telling first; of what is shown before what is not. */
export function figuresAt(here: BedOnTheDay, show: readonly Weighed[], photos: PhotosByBed): readonly Sentence[] {
  const shown = new Set(show.flatMap(({ lots }) => lots));
  const all = [
    ...harvests(here, shown),
    ...here.growing.flatMap((lot) => milestoneFigure(lot, here, shown)),
    ...here.growing.flatMap((lot) => heightFigure(lot, here, shown)),
    ...coverFigure(here, photos),
  ];
  return all
    .filter(({ private: hidden, text }) => !hidden && fits(text, cardLimits.figure))
    .toSorted((a, b) => b.worth - a.worth)
    .map(({ text, sources, private: hidden }) => ({ text, sources, private: hidden }));
}

/** "Peas, 4.3 kg: more than double last July". */
function harvests(here: BedOnTheDay, shown: ReadonlySet<Lot>): readonly Figure[] {
  const { settings } = here.index.garden;
  const month = sayMonth(here.day, { language: settings.language, near: here.day });
  const over = here.ended.filter(({ planting }) => (planting.ended ?? "") >= here.season);
  return byVariety([...here.growing, ...over]).flatMap((batch): readonly Figure[] => {
    const [lot] = batch.lots;
    const when = batch.lots.every((one) => over.includes(one)) ? "last year" : `last ${month}`;
    const season = pickedSince(batch, here, here.seasonEve);
    const now = season.value;
    const last = lastYearByNow(batch, here);
    if (last === undefined || !comparable(now, last.value)) return [];
    const ratio = pickedSize(now) / pickedSize(last.value);
    const words = ratioWords(ratio);
    const amount = sayPicked(roundedPicked(now), settings);
    if (words === undefined || amount === undefined || amount.includes(",")) return [];
    const text = shortest(lot, (name) => `${capital(name)}, ${amount}: ${words} ${when}`);
    return [
      {
        ...say(text, [season, last]),
        worth: Math.abs(Math.log(ratio)) * 10 + (batch.lots.some((one) => shown.has(one)) ? 4 : 0),
      },
    ];
  });
}

/** Weight where it was weighed; pieces only where nothing was. */
function roundedPicked(picked: Picked): Picked {
  const counts = picked.grams > 0 ? {} : onlyCounted(picked);
  return {
    ...picked,
    grams: twoDigits(picked.grams),
    litres: twoDigits(picked.litres),
    counts: rounded(counts),
    weighed: {},
  };
}

function rounded(counts: Picked["counts"]): Picked["counts"] {
  return Object.fromEntries(Object.entries(counts).map(([unit, n]) => [unit, twoDigits(n ?? 0)]));
}

/** Fewer days are what any year brings; more are another sowing. */
const fewestDays = 7;
const mostDays = 45;

/** "Dahlias open a month ahead of last year". */
function milestoneFigure(lot: Lot, here: BedOnTheDay, shown: ReadonlySet<Lot>): readonly Figure[] {
  for (const [kind, verb] of [
    ["picked", "picked"],
    ["flowered", "open"],
  ] as const) {
    const now = lot.events.find((event) => event.kind === kind && event.day >= here.season);
    const before = lastYears(lot, kind, here);
    if (now === undefined || now.day <= here.newsAfter) continue;
    if (before === undefined) return [];
    const ahead = daysBetween(now.day, before.day) + 365;
    const days = Math.abs(ahead);
    if (days < fewestDays || days > mostDays) return [];
    const against = `${spanWords(days)} ${ahead > 0 ? "ahead of" : "behind"} last year`;
    const text = shortest(lot, (name) => `${capital(name)} ${verb} ${against}`);
    return [{ ...say(text, [now, before]), worth: days / 5 + (shown.has(lot) ? 4 : 0) }];
  }
  return [];
}

/** As one says it: "nine days", "two weeks", "a month". */
export function spanWords(days: number): string {
  if (days >= 40) return "six weeks";
  if (days >= 26) return "a month";
  if (days >= 19) return "three weeks";
  if (days >= 12) return "two weeks";
  return days === 7 ? "a week" : `${sayNumber(days)} days`;
}

/** "Saint-Pierre: 1.7 m, up from 1.2 m". */
function heightFigure(lot: Lot, here: BedOnTheDay, shown: ReadonlySet<Lot>): readonly Figure[] {
  const measured = lot.events.filter(({ kind, heightCm }) => kind === "measured" && heightCm !== undefined);
  const [before, now] = measured.slice(-2);
  if (
    before?.heightCm === undefined ||
    now?.heightCm === undefined ||
    now.day <= here.newsAfter ||
    now.heightCm <= before.heightCm
  )
    return [];
  const { units } = voiceOf(here).settings;
  const [high, low] = [now.heightCm, before.heightCm].map((cm) => sayLength(twoDigits(cm), units));
  const title = lot.variety?.title ?? lot.crop?.name ?? "";
  return [
    {
      ...say(`${capital(title)}: ${high}, up from ${low}`, [now, before]),
      worth: now.heightCm / before.heightCm + (shown.has(lot) ? 4 : 0),
    },
  ];
}

const shares: readonly (readonly [below: number, words: string])[] = [
  [0.06, "hardly any"],
  [0.15, "a tenth"],
  [0.22, "a fifth"],
  [0.29, "a quarter"],
  [0.4, "a third"],
  [0.58, "half"],
  [0.7, "two thirds"],
  [0.85, "three quarters"],
  [2, "nearly all"],
];

/** "A tenth green then, half now". */
function coverFigure(here: BedOnTheDay, photos: PhotosByBed): readonly Figure[] {
  const pair = sideBySide(here.index.garden, here, photos);
  const cover = pair && coverChange(pair);
  if (pair === undefined || cover === undefined) return [];
  const [from, to] = [cover.from, cover.to].map((share) => shares.find(([below]) => share < below)?.[1]);
  if (from === to || from === undefined) return [];
  const grounds = [pair.before, pair.after].map(({ path }) => ({ place: { file: path, line: 1, column: 1 } }));
  return [{ ...say(`${capital(from)} green then, ${to} now`, grounds), worth: Math.abs(cover.to - cover.from) * 10 }];
}

/** By the crop's name; runner beans are beans where the name is too long, sweet peas are no peas. */
function shortest({ crop, variety }: Lot, words: (name: string) => string): string {
  const name = crop === undefined ? (variety?.title ?? "") : cropName(crop, 2);
  const whole = words(name);
  return fits(whole, cardLimits.figure)
    ? whole
    : words(name.replace(/^.* (?=(?:beans|tomatoes|onions|potatoes)$)/, ""));
}
