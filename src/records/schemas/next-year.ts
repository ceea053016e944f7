/** What the person wants of next year, in garden.md: goals, crops pinned to beds, and what produce is worth to them. */
import * as z from "zod";
import type { Goal, PickUnit, Pin, Price } from "../../model.ts";
import { didYouMean } from "../nearest-spelling.ts";
import { pickUnitCalled } from "../quantities.ts";
import { unitCalled } from "../units.ts";
import { type Refusal, readAs, wrongValue } from "./fields.ts";
import { forYou } from "./meaning.ts";

const amountFirst = /^(?:about\s+)?(\d{1,20}(?:[.,]\d{1,20})?)\s*(\S.*)$/i;

/** "28 quarts of tomato sauce", "10 kg of leeks", "40 heads of lettuce", "60 leeks". */
const goal = readAs((written): { readonly value: Goal } | Refusal => {
  const [, number, rest = ""] = amountFirst.exec(written.trim()) ?? [];
  const amount = Number((number ?? "").replace(",", "."));
  if (number === undefined || !(amount > 0)) {
    return wrongValue(
      `"${written}" does not begin with an amount above none.`,
      'Write how much of what: "10 kg of leeks", "28 quarts of tomato sauce", "40 heads of lettuce".',
    );
  }
  const [first = "", ...words] = rest.trim().split(/\s+/);
  const measured = measureOf(amount, first.toLowerCase());
  const what = (measured === undefined ? [first, ...words] : words).join(" ").replace(/^of\s+/i, "");
  if (what === "") {
    return wrongValue(`"${written}" does not say of what.`, `Write it out: "${written} of leeks".`);
  }
  return { value: { text: written, what, ...(measured ?? { pieces: { count: amount } }) } };
});

type Measure = Pick<Goal, "grams" | "litres" | "jars" | "pieces">;

function measureOf(amount: number, unitWord: string): Measure | undefined {
  if (/^(?:quarts?|qts?)$/.test(unitWord)) return { jars: { count: amount, size: "quart" } };
  if (/^(?:pints?|pts?)$/.test(unitWord)) return { jars: { count: amount, size: "pint" } };
  const unit = unitCalled(unitWord);
  if (unit?.dimension === "mass") return { grams: amount * unit.factor };
  if (unit?.dimension === "volume") return { litres: amount * unit.factor };
  const piece = pickUnitCalled(unitWord);
  return piece === undefined ? undefined : { pieces: { count: amount, unit: piece } };
}

/** "tomatoes in Tomato Pots". */
const pin = readAs((written): { readonly value: Pin } | Refusal => {
  const [, crop, bed] = /^(\S.*?) (?:in|on|at) (?:the )?(\S.*)$/i.exec(written.trim().replace(/\s+/g, " ")) ?? [];
  if (crop === undefined || bed === undefined) {
    return wrongValue(`"${written}" does not say what goes where.`, 'Write crop and bed: "tomatoes in Tomato Pots".');
  }
  return { value: { text: written, crop, bed } };
});

/** "4.20 a kg", "£4.20 a kg", "0.50 a head". The sign is kept as written. */
const price = readAs((written): { readonly value: Omit<Price, "of"> } | Refusal => {
  const parts =
    /^([^\d\s]*)\s*(\d+(?:[.,]\d+)?)\s*(?:([^\d\s]+?)\s*)?(?:\/|\ba\b|\ban\b|\bper\b|\bthe\b)\s*([a-z]+)$/i.exec(
      written.trim(),
    );
  const [, before = "", number = "", after = "", unitWord = ""] = parts ?? [];
  const lower = unitWord.toLowerCase();
  const unit = unitCalled(lower);
  const piece = pickUnitCalled(lower);
  if (parts === null || (unit?.dimension !== "mass" && piece === undefined)) {
    return wrongValue(
      `"${written}" is not a price for a weight or a piece.`,
      didYouMean(lower, ["kg", "lb", "head", "bunch", "stem", "fruit"]) ?? 'Write it as "4.20 a kg" or "0.50 a head".',
    );
  }
  const amount = Number(number.replace(",", "."));
  const sign = { sign: before === "" ? after : before, signAfter: before === "" && after !== "" };
  return {
    value:
      unit?.dimension === "mass"
        ? { ...sign, perGram: amount / unit.factor }
        : { ...sign, perPiece: { amount, unit: piece as PickUnit } },
  };
});

const list = <Schema extends z.ZodType>(item: Schema) =>
  z.preprocess((value) => (typeof value === "string" ? [value] : value), z.array(item));

export const nextYearKeys = {
  goals: forYou(
    "how much you want of what next year: a weight, a volume, jars or pieces",
    "[10 kg of leeks, 18 pints of tomato sauce]",
    list(goal).optional(),
  ),
  pins: forYou("what grows where next year whatever a plan says", "[tomatoes in Tomato Pots]", list(pin).optional()),
  prices: forYou(
    "what produce is worth to you, for a weight or a piece, by crop or variety",
    "{ leek: 3 a kg }",
    z.record(z.string(), price).optional(),
  ),
};

export function makePrices(written: Readonly<Record<string, Omit<Price, "of">>> | undefined): readonly Price[] {
  return Object.entries(written ?? {}).map(([of, value]) => ({ of, ...value }));
}
