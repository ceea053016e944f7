/**
 * Every number of a line with what it is a number of. A number that counts nothing ("row 2", "day 9", "2 inches deep") has a
 * use of its own, so that it never stands as a count.
 */
import type { PickUnit } from "../../model.ts";
import type { Word } from "../line-words.ts";
import { digitsAt, numberAt } from "../numbers.ts";
import { type Amount, amountAt, pickUnitCalled } from "../quantities.ts";
import type { UnitSystem } from "../units.ts";
import type { AmountMention, AmountUse } from "./mention.ts";

/** Things that hold or hold together what is counted. */
const vessels = new Set(
  (
    "tray trays row rows pot pots packet packets module modules drill drills block blocks patch patches cell cells strip strips line lines bag bags " +
    "mess messes pinch trug trugs bowl bowls basket baskets bucket buckets bckt bckts bkt colander seedtray seedtrays flat flats load loads pile piles sack sacks basketful bowlful bowlfuls " +
    "armful jar jars jam-jars bottle bottles carton cartons tub tubs tin tins pack packs pkt pkts packets box boxes crate crates barrow barrows barrowload barrowloads hill hills mound mounds ridge ridges " +
    "bed beds plug-trays sheet sheets carrier carriers bin bins pail pails batch batches braid braids plait plaits string strings tonne tonnes ton tons bale bales scoop scoops container containers freezer-bags zip-lock " +
    "cup-jar tupperware dish dishes plate plates punnet punnets gallon-bags planter planters station stations root-trainers kilner kilners half-pints half-pint flats"
  ).split(" "),
);
/** Whether a word names something that holds plants or produce, and so is no plant. */
export function isVessel(lower: string): boolean {
  return vessels.has(lower);
}

/** Before a number these make it a name: "row 2", "truss 4". */
const labels = new Set(
  (
    "row rows bed beds no nr number truss day year week wk take ep episode round batch page zone plot station step part tray house tunnel hut field section block bay generation gen g f series " +
    "season volume vol chapter succession grade size age aged stage at-day section spit level line b r t hd hh node station dz item lot shelf barrel box tub pot bag trough planter"
  ).split(" "),
);
const timeNouns =
  /^(?:days?|weeks?|wks?|months?|mths?|years?|yrs?|hours?|hrs?|h|hr|mins?|min|minutes?|seconds?|secs?|oclock|am|pm|nights?|mornings?|evenings?|times?|seasons?|fortnights?|generations?|goes|miles?|km|mph|per)$/;
/** How far round or across: no height of a plant. */
const girths = /^(?:round|across|girth|wide|diameter)$/;
const money = /^[£$€₹¥]$/;
const moneyNouns =
  /^(?:p|pence|euros?|bucks?|dollars?|quid|pounds-each|cents?|rupees?|rs|rand|shillings?|ksh|bob|tenner|fiver)$/;
const heights = /^(?:tall|high|long|height|up|round|across|girth|wide|diameter)$/;
const peopleNouns =
  /^(?:people|folk|kids|children|women|men|ladies|visitors|volunteers|viewers|subscribers|subs|guests|friends|hands|hens|chooks|sheep|eggs|members|of us|views|comments|teenagers|lads|girls|boys|sisters|brothers|grandkids|varieties|kinds|sorts|colours|colors|degrees)$/;

/** `behindBed`: a bed's name ends right before it, so that it counts what follows: "in Squash Bed 6 Crown Prince". */
export function amountMention(
  words: readonly Word[],
  at: number,
  system: UnitSystem,
  behindBed = false,
): AmountMention | undefined {
  const word = words[at];
  if (word === undefined) return undefined;
  const before = words[at - 1];
  const [point, behind] = words.slice(at + 1, at + 3);
  // "2. Heads of the best four": the item's number.
  if (
    at === 0 &&
    /^\d{1,2}$/.test(word.text) &&
    point?.text === "." &&
    behind !== undefined &&
    behind.start > point.end
  )
    return mention("label", at, at + 1, Number(word.text));
  if (word.text === "#" || /^(?:x|×)$/.test(word.lower)) return timesBehind(words, at);
  if (word.lower === "a" && words[at + 1]?.lower === "few") return undefined;
  // "flat A" is a name.
  if (word.text === "A" && before !== undefined && !/^[.!?:|(]$/.test(before.text)) return undefined;
  if (money.test(word.text)) {
    const number = numberAt(words, at + 1);
    if (number === undefined) return undefined;
    const each = /^(?:each|ea|a|per|lb)$/.test(words[number.end]?.lower ?? "");
    return mention("price", at, each ? number.end + 1 : number.end, number.value);
  }
  if (word.text === "'" && /^\d{2}$/.test(words[at + 1]?.text ?? ""))
    return mention("year", at, at + 2, Number(words[at + 1]?.text));
  if (word.text === "-" && before !== undefined && before.kind !== "mark") return undefined;
  if (word.lower === "minus" || word.text === "-" || word.text === "−") {
    const number = numberAt(words, at);
    return number === undefined ? undefined : mention("temperature", at, degreesEnd(words, number.end), number.value);
  }
  const share = shareAt(words, at);
  if (share !== undefined) return share;
  if (
    word.lower === "both" &&
    words[at + 1]?.kind === "word" &&
    !vessels.has(words[at + 1]?.lower ?? "") &&
    !/^(?:of|are|were|is|sides?|ends?|hands?|and|have|had|doing|in|on|at|the|with)$/.test(words[at + 1]?.lower ?? "")
  )
    return mention("count", at, at + 1, 2);
  const packs = packsOf(words, at, system) ?? traysOfCells(words, at);
  if (packs !== undefined) return packs;
  const amount = amountAt(words, at, system);
  if (amount === undefined) return percentOrPart(words, at);
  return classified(words, at, amount, behindBed);
}

function mention(
  use: AmountUse,
  from: number,
  end: number,
  value: number,
  more: Partial<AmountMention> = {},
): AmountMention {
  return { type: "amount", use, from, end, value, ...more };
}

function degreesEnd(words: readonly Word[], end: number): number {
  const degree = /^(?:°|degrees?|deg)$/.test(words[end]?.lower ?? "") ? end + 1 : end;
  return /^[cf]$/.test(words[degree]?.lower ?? "") ? degree + 1 : degree;
}

/** "x8", "x 8", "× 12" behind a name; "#2" is a label. */
function timesBehind(words: readonly Word[], at: number): AmountMention | undefined {
  const number = words[at + 1];
  if (number?.kind !== "number") return undefined;
  const value = digitsAt(words, at + 1);
  if (value === undefined) return undefined;
  if (words[at]?.text === "#") return mention("label", at, value.end, value.value);
  if (words[at - 1]?.kind === "number" || !Number.isInteger(value.value)) return undefined;
  return mention("count", at, value.end, value.value);
}

/** What a share of the plants did. */
const countedSo = /^(?:up|through|alive|germinated|sprouted|survived|took|showing)$/;

/** "7 of 9", "18/24", "five of the six", "9 out of 10", "7 outta 9". */
function shareAt(words: readonly Word[], at: number): AmountMention | undefined {
  const first = words[at];
  if (first === undefined || (first.kind !== "number" && first.kind !== "word")) return undefined;
  if (first.kind === "number" && words[at + 1]?.text === "/") {
    const whole = words[at + 2];
    const value = Number(first.text);
    const isJoined = words[at + 1]?.start === first.end;
    // "33 / 40 through" is a share as well, "1 / 2" none.
    if (
      whole?.kind !== "number" ||
      (!isJoined && Number(whole.text) < 5) ||
      !Number.isInteger(value) ||
      !(value <= Number(whole.text))
    )
      return undefined;
    // "1/2 lb" and "3/4" are fractions, "6/6" and "18/24" shares.
    if (Number(whole.text) <= 4 && value < Number(whole.text)) return undefined;
    if (/^(?:lb|lbs|oz|kg|in|inch|inches|cup|pint|pot|pots)$/.test(words[at + 3]?.lower ?? "")) return undefined;
    return mention("share", at, at + 3, value);
  }
  const part = numberAt(words, at);
  if (part === undefined || !Number.isInteger(part.value) || part.value < 0 || part.end === at) return undefined;
  let next = part.end;
  // "16 up out of 18": the verb between stays one.
  if (countedSo.test(words[next]?.lower ?? "")) {
    const [, of, whole] = words.slice(next, next + 4).filter(({ lower }) => lower !== "out");
    const all = of?.lower === "of" && whole?.kind === "number" ? Number(whole.text) : undefined;
    return all === undefined || all < part.value ? undefined : mention("share", at, part.end, part.value);
  }
  if (words[next]?.lower === "out" && words[next + 1]?.lower === "of") next += 2;
  else if (words[next]?.lower === "outta") next += 1;
  else if (words[next]?.lower === "of") next += 1;
  else return undefined;
  if (/^(?:the|my|our|those|these)$/.test(words[next]?.lower ?? "")) next += 1;
  const whole = numberAt(words, next);
  if (whole === undefined || whole.end === next || whole.value < part.value || words[next]?.lower === "a")
    return undefined;
  if (/^(?:st|nd|rd|th)$/.test(words[whole.end]?.lower ?? "")) return undefined;
  const measured = amountAt(words, next, "metric");
  if (measured?.count === undefined || measured.unit !== undefined) return undefined;
  // "2 trays of 24" is a product, and is read with its trays.
  return mention("share", at, whole.end, part.value);
}

/** "2 x 500 g", "2 trays of 24", "three bags of 2 kg". */
const groups = /^(?:drifts?|groups?|clumps?|rings?|circles?|clusters?)$/;

/** Sizes of module trays, by their cells: "two 210 trays" are 420. */
const cellsOfTrays = new Set([
  24, 36, 38, 40, 50, 60, 72, 77, 84, 98, 104, 105, 126, 128, 144, 150, 162, 200, 210, 240, 288,
]);

/** "two 210 trays", "38-cell x 2" */
function traysOfCells(words: readonly Word[], at: number): AmountMention | undefined {
  const first = numberAt(words, at);
  if (first === undefined || first.end === at) return undefined;
  const isTray = (index: number) => /^(?:trays?|flats?|modules?|plug-?trays?)$/.test(words[index]?.lower ?? "");
  const second = words[first.end]?.kind === "number" ? Number(words[first.end]?.text) : Number.NaN;
  if (cellsOfTrays.has(second) && first.value <= 20 && isTray(first.end + 1))
    return mention("count", at, first.end + 2, first.value * second);
  if (!cellsOfTrays.has(first.value)) return undefined;
  const cell = words[first.end]?.text === "-" ? first.end + 1 : first.end;
  const behind = words.slice(cell, cell + 3);
  const isTimes = /^cells?$/.test(behind[0]?.lower ?? "") && /^[x×]$/.test(behind[1]?.lower ?? "");
  return isTimes && behind[2]?.kind === "number"
    ? mention("count", at, cell + 3, first.value * Number(behind[2].text))
    : undefined;
}

function packsOf(words: readonly Word[], at: number, system: UnitSystem): AmountMention | undefined {
  const number = numberAt(words, at);
  if (number === undefined || number.value < 1 || number.end === at) return undefined;
  const times = /^[x×]$/.test(words[number.end]?.lower ?? "");
  const vessel = isVessel(words[number.end]?.lower ?? "") || groups.test(words[number.end]?.lower ?? "");
  const of = words[number.end + 1]?.lower === "of" || (vessel && /^[x×]$/.test(words[number.end + 1]?.lower ?? ""));
  const from = times ? number.end + 1 : vessel && of ? number.end + 2 : undefined;
  if (from === undefined) return undefined;
  const each = amountAt(words, from, system);
  if (each === undefined) return undefined;
  if (each.grams !== undefined) return mention("mass", at, each.end, number.value * each.grams);
  if (each.litres !== undefined && times) return mention("volume", at, each.end, number.value * each.litres);
  if (each.cm !== undefined) return mention("length", at, each.end, each.cm);
  if (each.count === undefined || (words[from]?.lower ?? "") === "a") return undefined;
  return mention("count", at, each.end, number.value * each.count.value, { approx: each.count.approx });
}

function percentOrPart(words: readonly Word[], at: number): AmountMention | undefined {
  const number = words[at]?.kind === "number" || words[at]?.kind === "fraction" ? digitsAt(words, at) : undefined;
  if (number === undefined) return undefined;
  const next = words[number.end];
  if (next?.text === "%" || /^(?:percent|pc|per)$/.test(next?.lower ?? ""))
    return mention("percent", at, number.end + 1, number.value);
  return mention("label", at, number.end, number.value);
}

function classified(words: readonly Word[], at: number, amount: Amount, behindBed: boolean): AmountMention {
  const before = words[at - 1]?.lower ?? "";
  const beforeMark = words[at - 1];
  const next = words[amount.end]?.lower ?? "";
  const { end } = amount;
  if (amount.grams !== undefined) return mention("mass", at, end, amount.grams, { approx: amount.loose });
  if (amount.litres !== undefined)
    return mention("volume", at, end, amount.litres, { approx: amount.loose, noun: words[end - 1]?.lower });
  if (amount.celsius !== undefined) return mention("temperature", at, end, amount.celsius);
  if (amount.cm !== undefined) {
    const apart =
      /^(?:apart|spacing|between|deep|depth|oc|pots?|centres|centers|wide|modules?|cells?|row|rows|bed|trench|of|collar|mesh|tall-canes)$/.test(
        next,
      );
    const at2 = /^(?:at|every|by|in|into|to)$/.test(before);
    const spaced = apart || (at2 && !heights.test(next)) || before === "x";
    const noun = girths.test(next) ? { noun: next } : {};
    return mention(spaced ? "spacing" : "length", at, heights.test(next) ? end + 1 : end, amount.cm, noun);
  }
  const value = amount.count?.value ?? 0;
  const count = { upTo: amount.count?.upTo, approx: amount.count?.approx };
  if (amount.unit !== undefined) return piecesOrVessel(words, at, amount.unit, value, end, count);
  if (before === "ph" || words[at - 2]?.lower === "ph") return mention("ph", at, end, value);
  // "24 P. Javelin" are potatoes and no pence.
  const isInitial = words[end]?.text === "P" && /^(?:\.|\p{Lu}.*)$/u.test(words[end + 1]?.text ?? "");
  if (moneyNouns.test(next) && !isInitial) return mention("price", at, end + 1, value);
  if (timeNouns.test(next) || (next === "-" && timeNouns.test(words[end + 1]?.lower ?? "")))
    return mention("time", at, end + 1, value);
  // "16 up out of 18": those it is out of.
  if (before === "of" && words[at - 2]?.lower === "out" && countedSo.test(words[at - 3]?.lower ?? ""))
    return mention("label", at, end, value);
  // "all but two" says how many were not.
  if (before === "but" && /^(?:all|every|everything|none|nothing)$/.test(words[at - 2]?.lower ?? ""))
    return mention("label", at, end, value);
  if (/^(?:bar|except)$/.test(before)) return mention("label", at, end, value);
  // "of the five young ones three are browsed": those it was of.
  if (/^(?:the|my|our|those|these)$/.test(before) && /^(?:of|from)$/.test(words[at - 2]?.lower ?? ""))
    return mention("label", at, end, value);
  // "before it drops under 50", "by 1140"
  const bare = words[end] === undefined || words[end]?.kind === "mark";
  // "Rain by four": an hour.
  if (bare && /^(?:by|until|till|past)$/.test(before) && value <= 12) return mention("time", at, end, value);
  if (bare && [before, words[at]?.lower ?? ""].some((word) => /^(?:under|below|over|above)$/.test(word)))
    return mention("label", at, end, value);
  if (/^(?:by|at|until|till|before)$/.test(before) && /^\d{3,4}$/.test(words[at]?.text ?? "") && bare)
    return mention("time", at, end, value);
  // "the old ugly one"
  if (
    words[at]?.lower === "one" &&
    bare &&
    /^(?:the|this|that|last|first|other|another|big|old|ugly|new|little|good|best)$/.test(before)
  )
    return mention("label", at, end, value);
  // "in 50s": by the size of the tray
  if (next === "s" && words[end]?.start === words[end - 1]?.end) return mention("label", at, end + 1, value);
  if (peopleNouns.test(next)) return mention("label", at, end + 1, value);
  if (words[end]?.text === ":" && words[end + 1]?.kind === "number" && words[end]?.start === words[end - 1]?.end)
    return mention("time", at, end + 2, value);
  const isYear = words[at]?.kind === "number" && /^(?:19|20)\d\d$/.test(words[at]?.text ?? "");
  if (isYear && !/^(?:seeds?|plants?|sets|bulbs|cloves)$/.test(next)) return mention("year", at, end, value);
  const article = /^an?$/.test(words[at]?.lower ?? "") && end === at + 1;
  if (labels.has(before) && !behindBed && !article && beforeMark?.end !== undefined && words[at]?.kind === "number")
    return mention("label", at, end, value);
  // "E2", "R2", "F1": a letter before it without a space.
  if (beforeMark?.kind === "word" && beforeMark.end === words[at]?.start && before.length <= 2)
    return mention("label", at, end, value);
  if (/^(?:minus|temp|temperature)$/.test(before)) return mention("temperature", at, end, value);
  const each = /^(?:each|ea|apiece|of)$/.test(next) && (next !== "of" || words[end + 1]?.lower === "each");
  // Size words stand between the number and what is counted: "3 big jars", "2 grocery bags".
  for (let noun = end; noun < end + 3 && noun < words.length; noun++) {
    const word = words[noun];
    if (word === undefined || word.kind !== "word") break;
    if (/^(?:cells?|modules|plugs)$/.test(word.lower)) return mention("count", at, noun + 1, value, count);
    if (vessels.has(word.lower) && (word.lower !== "mess" || words[noun + 1]?.lower === "of"))
      return mention("vessel", at, noun + 1, value, { ...count, noun: word.lower });
    const unit = pickUnitCalled(word.lower);
    if (unit !== undefined && noun > end) return piecesOrVessel(words, at, unit, value, noun + 1, count);
    if (!sizes.test(word.lower)) break;
  }
  if (/^(?:stms?|stm)$/.test(next)) return mention("pieces", at, end + 1, value, { ...count, unit: "stem" });
  if (/^(?:bnch|bnchs|bunchs|bchs)$/.test(next))
    return mention("pieces", at, end + 1, value, { ...count, unit: "bunch" });
  const isSum = before === "=" || /^(?:in (?:all|total)|altogether|all told|total)(?: |$)/.test(lowerText(words, end));
  const noun = /^(?:plants?|bushes|bush|vines?|trees?|crowns?|rows?)$/.test(next) ? next : undefined;
  return mention("count", at, each ? end + 1 : end, value, {
    ...count,
    each: each || eachBehind(words, end) || undefined,
    noun,
    sum: isSum || undefined,
  });
}

/** "9 seeds of each", "2 seeds each" */
function eachBehind(words: readonly Word[], end: number): boolean {
  const behind = words.slice(end, end + 3).map(({ lower }) => lower);
  return (
    /^(?:seeds?|plants?|of|sets|cloves|bulbs|tubers|corms)$/.test(behind[0] ?? "") &&
    /^(?:each$|of each)/.test(behind.slice(1).join(" "))
  );
}

function lowerText(words: readonly Word[], from: number): string {
  return words
    .slice(from, from + 2)
    .map(({ lower }) => lower)
    .join(" ");
}

const sizes =
  /^(?:big|small|large|little|wee|good|huge|tiny|full|half|grocery|carrier|freezer|plastic|pint|quart|litre|liter|gallon|inch|cm|decent|giant|lil|great|nice|fat|heaped|contractor|bin|paper|feed|seed|module|mixed|more|long|short|raised|milk|yoghurt|egg|ice|cream)$/;

function piecesOrVessel(
  words: readonly Word[],
  at: number,
  unit: PickUnit,
  value: number,
  end: number,
  count: Partial<AmountMention>,
): AmountMention {
  const noun = words[end - 1]?.lower ?? "";
  if (unit === "crate" || unit === "handful" || unit === "punnet")
    return mention("vessel", at, end, value, { ...count, unit, noun });
  return mention("pieces", at, end, value, { ...count, unit });
}
