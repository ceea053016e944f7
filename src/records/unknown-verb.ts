/**
 * List items that are no log lines but look as if they were meant as one: a slip in the verb, or another form of it.
 * Without a bed or variety the garden knows, a list item is story and nothing is said.
 */
import { distance } from "fastest-levenshtein";
import type { EventKind, Place, Problem } from "../model.ts";
import { lineProblem } from "./line-rules.ts";
import { type Word, wordsOf } from "./line-words.ts";
import { causeWords } from "./loss-causes.ts";
import type { Names } from "./names.ts";
import { nearestSpellings } from "./nearest-spelling.ts";
import { amountAt } from "./quantities.ts";
import { beginsVerb, verbForms, verbsAt } from "./verb-forms.ts";
import { verbTable } from "./verb-table.ts";

/** Common first words of prose that are one slip away from a verb. */
const ordinary = new Set(
  (
    "the this that these those then there they them but put bed get got had has have not now new one two all and for from with when what " +
    "where while which who why how our out off over under only also still just very much more most some such same she her his him its " +
    "need needs needed needing want wanted look looks looked looking could would should might must will were was are been being seems " +
    "seemed found made make makes came come went gone going time tired tried tied left right last next first good great nice bad every " +
    "each both half back down into onto since until soon again maybe perhaps hope hoped hoping think thought plan planned plans pleased " +
    "cold hot wet dry warm rain rained sun sunny wind windy frost frosty snow gate path shed water waiting wait walked talked asking " +
    "picture pictures photo photos filmed filming took take taken taking"
  ).split(" "),
);
const oneWordForms = verbForms.filter(isOneWord);
/** The first form of every verb: when one of these is close, its synonyms are not offered beside it. */
const mainForms = verbTable.map((verb) => verb.forms[0] ?? "").filter(isOneWord);
const formSet = new Set(oneWordForms);

/** A warning for a list item whose first word is no verb; undefined when it is ordinary prose. */
export function unknownVerb(words: readonly Word[], names: Names, place: Place): Problem | undefined {
  const first = words[0];
  if (first === undefined || first.kind === "mark") return undefined;
  const planted = plantedAfterBuying(words);
  if (planted !== undefined) {
    return lineProblem(
      "note/unknown-verb",
      place,
      `"${first.text}" is not a verb of the note format, so this line was kept as story.`,
      `Begin with what was done: "${planted}". (verbs: docs/notes.md)`,
    );
  }
  const verbAfterName = verbAfter(words, names);
  if (verbAfterName !== undefined) {
    return lineProblem(
      "note/unknown-verb",
      place,
      `"${verbAfterName.form}" stands after the name, so this line was kept as story.`,
      `Begin with the verb: "${verbAfterName.form}: ${verbAfterName.name}". (verbs: docs/notes.md)`,
    );
  }
  const untold = troubleSeen(words, names) ?? weightOf(words, names);
  if (untold !== undefined) {
    return lineProblem(
      "note/unknown-verb",
      place,
      "This line begins with no verb of the note format, so it was kept as story.",
      `Begin with what it tells: "${untold}". (verbs: docs/notes.md)`,
    );
  }
  if (first.kind !== "word") return undefined;
  if (!namesSomething(words, names)) return slipBeforeCrop(words, names, place);
  if (isAdverb(first.lower) && verbsAt(words.slice(1)).length > 0) {
    return lineProblem(
      "note/unknown-verb",
      place,
      `"${first.text}" stands before the verb, so this line was kept as story.`,
      `Begin with the verb: "${words[1]?.text}". (verbs: docs/notes.md)`,
    );
  }
  if (first.lower.length < 3 || ordinary.has(first.lower) || beginsVerb(first.lower)) return undefined;
  const meant = meantVerbs(first.lower);
  const fact = first.lower.endsWith("ed") && factFollows(words, names);
  if (meant.length === 0 && !fact) return undefined;
  return notAVerb(first, place, meant);
}

function notAVerb(first: Word, place: Place, meant: readonly string[]): Problem {
  return lineProblem(
    "note/unknown-verb",
    place,
    `"${first.text}" is not a verb of the note format, so this line was kept as story.`,
    meant.length === 0
      ? 'Begin with another verb, or with "did:". (verbs: docs/notes.md)'
      : `Did you mean ${meant.map((form) => `"${form}"`).join(" or ")}? (verbs: docs/notes.md)`,
  );
}

/** "picekd 3 lb peas": only a crop is named, which prose does too, so the slip must stand before an amount of it. */
function slipBeforeCrop(words: readonly Word[], names: Names, place: Place): Problem | undefined {
  const [first] = words;
  const amount = amountAt(words, 1, "metric");
  if (first === undefined || amount === undefined || names.at("crop", words, amount.end) === undefined)
    return undefined;
  if (ordinary.has(first.lower) || beginsVerb(first.lower)) return undefined;
  const [meant] = slipIn(first.lower, mainForms) ?? [];
  return meant === undefined ? undefined : notAVerb(first, place, [meant]);
}

/** "bought 6 basil plants, planted in Tunnel" as it would be a log line: "planted 6 bought basil plants in Tunnel". */
export function plantedAfterBuying(words: readonly Word[]): string | undefined {
  const [first] = words;
  if (first === undefined || !/^(?:bought|purchased|given)$/.test(first.lower)) return undefined;
  const at = words.findIndex((_, index) => {
    const [verb] = index > 1 ? verbsAt(words.slice(index)) : [];
    return verb?.verb.kind === "planted" || verb?.verb.kind === "sowed";
  });
  const [verb] = at < 0 ? [] : verbsAt(words.slice(at));
  if (verb === undefined) return undefined;
  const amount = amountAt(words, 1, "metric")?.end ?? 1;
  const before = words
    .slice(amount, at)
    .filter((word, index, all) => index < all.length - 1 || !/^(?:,|and)$/.test(word.lower));
  const parts = [...words.slice(1, amount), { ...first, text: first.lower }, ...before, ...words.slice(at + verb.end)];
  return `${verb.form} ${parts.map(({ text }) => text).join(" ")}`;
}

/** "blackfly on the broad beans": a pest or disease, then what it is on, as a line of trouble. */
function troubleSeen(words: readonly Word[], names: Names): string | undefined {
  const end = words.findIndex((word, at) => at < 3 && causeWords.has(word.lower)) + 1;
  if (end === 0 || words.slice(0, end).some((word) => word.kind !== "word" || ordinary.has(word.lower)))
    return undefined;
  const on = words.findIndex((word, at) => at >= end && at < end + 4 && word.lower === "on");
  if (on < 0) return undefined;
  const plant = /^(?:the|my|our|all)$/.test(words[on + 1]?.lower ?? "") ? on + 2 : on + 1;
  const found = names.plantAt(words, plant) ?? names.at("bed", words, plant);
  if (found === undefined) return undefined;
  return `trouble: ${textOf(words.slice(0, end))} on ${textOf(words.slice(plant, found.end))}`;
}

/** "4 Buttercup, 6.2 kg", "first strawberries, 200 g": a plant with a weight and no word of what was done. */
function weightOf(words: readonly Word[], names: Names): string | undefined {
  const start = /^(?:the|first|1|more)$/.test(words[0]?.lower ?? "") ? (words[1]?.lower === "st" ? 2 : 1) : 0;
  const from = amountAt(words, start, "metric")?.end ?? start;
  const plant = names.plantAt(words, from);
  const weight =
    plant === undefined
      ? undefined
      : amountAt(words, words[plant.end]?.text === "," ? plant.end + 1 : plant.end, "metric");
  if (plant === undefined || weight?.grams === undefined) return undefined;
  return `picked ${textOf(words.slice(start, weight.end))}`;
}

function textOf(words: readonly Word[]): string {
  return words.map((word, at) => (at > 0 && words[at - 1]?.end !== word.start ? ` ${word.text}` : word.text)).join("");
}

interface VerbAfter {
  readonly form: string;
  readonly name: string;
}

/** "Musselburgh up", "Black Beauty: picked 3", "3 Sungold died from cold", "the carrots are up": a verb behind the name. */
function verbAfter(words: readonly Word[], names: Names): VerbAfter | undefined {
  const article = words[0]?.lower === "the" ? 1 : 0;
  const from = amountAt(words, article, "metric")?.end ?? article;
  const plant = names.plantAt(words, from);
  if (plant === undefined) return undefined;
  const past = afterCount(words, plant.end);
  if (past !== plant.end) {
    const [planted] = verbsAt(words.slice(past));
    if (planted === undefined || !endsOrGoesOn(words[past + planted.end])) return undefined;
    return { form: planted.form, name: textOf(words.slice(article, past)) };
  }
  const at = /^(?:[:–—-]|is|are|was|were|has|have|all|now)$/.test(words[plant.end]?.lower ?? "")
    ? plant.end + 1
    : plant.end;
  const [verb] = verbsAt(words.slice(at));
  if (verb === undefined) return undefined;
  const varietyFirst = plant.variety !== undefined && from === 0;
  if (!varietyFirst && !endsOrGoesOn(words[at + verb.end])) return undefined;
  return {
    form: verb.form,
    name: words
      .slice(article, plant.end)
      .map((word) => word.text)
      .join(" "),
  };
}

/** Past "(Defender)" and "x2" behind a name: "courgette (Defender) x2 planted in South Bed". */
function afterCount(words: readonly Word[], from: number): number {
  let at = from;
  if (words[at]?.text === "(") {
    const close = words.findIndex((word, index) => index > at && word.text === ")");
    if (close > 0 && close < at + 6) at = close + 1;
  }
  return /^[x×]$/.test(words[at]?.lower ?? "") && words[at + 1]?.kind === "number" ? at + 2 : at;
}

/** "carrots up in North Bed" tells a fact; "tomatoes up against the wall" is prose. */
function endsOrGoesOn(next: Word | undefined): boolean {
  return (
    next === undefined ||
    next.kind === "number" ||
    /^(?:in|from|on|to|by|of|at|today|yesterday|and|[,.;:(])$/.test(next.lower)
  );
}

/** Whether any bed or variety the garden knows stands in the line. */
function namesSomething(words: readonly Word[], names: Names): boolean {
  for (let at = 0; at < words.length; at++) {
    if (names.at("bed", words, at) ?? names.at("variety", words, at)) return true;
  }
  return false;
}

function isOneWord(form: string): boolean {
  return /^[a-z]+$/.test(form);
}

function isAdverb(lower: string): boolean {
  return /^(?:i|also|then|today|yesterday|finally|just|we|again|later|first|now)$/.test(lower);
}

/** Whether a word is one slip away from a verb and no other word: "plnated". What was done is then a guess. */
export function isMisspeltVerb({ kind, lower }: Word): boolean {
  if (kind !== "word" || lower.length < 5 || formSet.has(lower) || ordinary.has(lower)) return false;
  return nearestSpellings(lower, oneWordForms).length > 0;
}

/** What a line may tell of that opens with a slip in a verb: "plantd 3 leeks". */
export function kindsOfSlip(word: Word): readonly EventKind[] {
  if (!isMisspeltVerb(word)) return [];
  return [...new Set(meantVerbs(word.lower).flatMap((form) => verbsAt(wordsOf(form))[0]?.verb.kind ?? []))];
}

/** Another form of a verb ("sow", "picking"), else a slip in one. */
function meantVerbs(lower: string): readonly string[] {
  if (/(?:ing|s)$/.test(lower) || !lower.endsWith("ed")) {
    const stem = lower.replace(/(?:ing|es|s)$/, "");
    const bare = stem.replace(/(.)\1$/, "$1");
    const past = [
      `${stem}ed`,
      `${stem}d`,
      `${lower}ed`,
      `${lower}d`,
      `${lower}${lower.at(-1)}ed`,
      `${bare}ed`,
      irregular.get(stem) ?? "",
    ];
    const form = past.find((candidate) => formSet.has(candidate));
    if (form !== undefined) return [form];
  }
  return slipIn(lower, mainForms) ?? slipIn(lower, oneWordForms) ?? [];
}

/** Verbs at most two slips away, of which there may be two; "harvset" is a slip in the bare form. */
function slipIn(lower: string, forms: readonly string[]): readonly string[] | undefined {
  const bare = new Map(forms.flatMap((form) => [[form, form] as const, [form.replace(/ed$/, ""), form] as const]));
  const near = nearestSpellings(lower, bare.keys()).filter((form) => distance(lower, form) <= 2);
  return near.length === 0 ? undefined : [...new Set(near.map((form) => bare.get(form) ?? form))];
}

const irregular: ReadonlyMap<string, string> = new Map(
  Object.entries({
    dig: "dug",
    digg: "dug",
    feed: "fed",
    lose: "lost",
    los: "lost",
    di: "died",
    ty: "tied",
  }),
);

/** "scattered 3 g Nantes": an amount or a variety right after the first word tells of a fact. */
function factFollows(words: readonly Word[], names: Names): boolean {
  return amountAt(words, 1, "metric") !== undefined || names.at("variety", words, 1) !== undefined;
}
