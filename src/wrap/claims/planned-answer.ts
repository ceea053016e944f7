/**
 * What became of a thing that was planned: told, shown without a word of it, put off once more, or kept back in so many words.
 * It is told only when its own claim was made: that its plants were named is not that they were said to be lost.
 */
import { cropOf } from "../../crop-of.ts";
import type { PlannedThing } from "../../model.ts";
import { SURE } from "../fact-check.ts";
import type { FilmHeard } from "../hear-film.ts";
import { isCompared, type Subject } from "../spoken-subjects.ts";
import { plainWord } from "../spoken-words.ts";
import type { Stretch } from "../stops-heard.ts";
import { inWords } from "../word-ranges.ts";
import { figureTold } from "./planned-values.ts";
import { promiseAnswer } from "./promise-answer.ts";
import { isAbout, stem, tellingWords } from "./telling-words.ts";

export interface PlannedAnswer {
  readonly is: "said" | "shown, not said" | "put off again" | "not shown, as told" | "missed";
  /** The word with which it is told, put off, or kept back; else the first that names its plants. */
  readonly word?: number | undefined;
}

export interface Asked {
  readonly film: FilmHeard;
  readonly stretches: readonly Stretch[];
  readonly subjects: readonly Subject[];
}

/** Words of a stop in which one thing may be told. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

export function plannedAnswer(point: PlannedThing, bed: string, asked: Asked): PlannedAnswer {
  const here = asked.stretches.filter((stretch) => stretch.bed === bed);
  const kept = keptBack(bed, asked);
  if (here.length === 0) {
    if (kept !== undefined) return { is: "not shown, as told", word: kept };
    const word = toldElsewhere(point, bed, asked);
    return word === undefined ? { is: "missed" } : { is: "said", word };
  }
  const mentions = mentionsOf(point, bed, asked);
  if (point.kind === "owed") return promiseAnswer(point, here, mentions, asked);
  const word = told(point, here, mentions, asked);
  if (word !== undefined) return { is: "said", word };
  const [first] = mentions;
  return first === undefined ? { is: "missed" } : { is: "shown, not said", word: first.from };
}

/** Where no stop was heard at its bed: told of sorts that grow nowhere else, wherever the film is taken to be. */
function toldElsewhere(point: PlannedThing, bed: string, asked: Asked): number | undefined {
  const { stretches, subjects } = asked;
  if (byCause.has(point.kind) || byName.has(point.kind) || !claims.has(point.kind)) return undefined;
  const own = new Set(point.plantings);
  const mentions = subjects.filter(
    ({ variety, anywhere }) =>
      variety !== undefined && anywhere.some(({ id }) => own.has(id)) && anywhere.every((lot) => lot.bed === bed),
  );
  return mentions.length === 0 ? undefined : told(point, stretches, mentions, asked);
}

/** Where the plants of a thing are named at its bed, from the first such word on. */
function mentionsOf({ plantings }: PlannedThing, bed: string, { film, subjects }: Asked): readonly Subject[] {
  const { day, names } = film;
  const own = new Set(plantings);
  const there = day.beds.get(bed)?.state.plantings ?? [];
  const lots = there.filter(({ id }) => own.has(id));
  const crops = new Set(lots.flatMap((lot) => cropOf(day.garden, lot)?.id ?? []));
  const varieties = new Set(lots.flatMap(({ variety }) => variety ?? []));
  // Of two okras in a bed the word okra names neither.
  const { living = [], ended = [] } = day.beds.get(bed) ?? {};
  const others = [...living, ...ended].filter(({ id }) => !own.has(id));
  const shared = new Set(others.flatMap((lot) => cropOf(day.garden, lot)?.id ?? []));
  const doubtful = new Set(names.flatMap(({ from, confidence }) => (confidence < SURE ? [from] : [])));
  return subjects.filter(
    (subject) =>
      subject.bed === bed &&
      (subject.variety === undefined
        ? crops.has(subject.crop ?? "") && !shared.has(subject.crop ?? "")
        : varieties.has(subject.variety) && !doubtful.has(subject.from)),
  );
}

// ---------------------------------------------------------------------------------------------------- what must be said

const number =
  "(?:\\d[\\d.]*|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\\w+teen|twenty\\w*|thirty\\w*|forty\\w*|fifty\\w*|sixty\\w*|seventy\\w*|eighty\\w*|ninety\\w*|hundred|dozen|half)";
const picked =
  "(?:pick(?:ed|ing|ings)?|pluck(?:ed|ing)?|cut|cutting|ate|eat|eating|eaten|pulled|dug|lifted|harvest(?:ed|ing)?|gather(?:ed|ing)|lifting|digging|came in|brought in|broke into|(?:had|got) (?:our|my|the|a|her|his|their)(?: \\w+)? first|tasted|ripe|mess|basket(?:ful)?s?|bowl(?:ful)?s?|handfuls?|took off|took the|off|stems?|bunch(?:es)?|kilos?|kg|grams?|pounds?|ounces?|heads?|fruits?|punnets?)";

/** Neither what is still to be picked nor what was not: "I will pull", "I have not pulled even one". */
const undone =
  /\b(?:will|ill|well|going to|not|never|havent|hasnt|didnt)(?: \w+)? (?:pull|pulled|pick|picked|cut|dig|dug|harvest|harvested|lift|lifted)\b/g;
const time =
  "(?:yesterday|today|ago|back|last (?:week|weekend|night|\\w+day)|week|easter|christmas|january|february|march|april|may|june|july|august|september|october|november|december|\\w+day)";

const pickedWords = new RegExp(`\\b${picked}\\b`, "g");
const firstWords = new RegExp(`\\b(?:first|began|start(?:ed|ing)?|${time})\\b`, "g");
/** Letters between a picking and the word that makes it a first or dates it. */
const FIRST_NEAR = 55;

function isFirstPicked(said: string): boolean {
  const firsts = [...said.matchAll(firstWords)].map(({ index }) => index);
  return [...said.matchAll(pickedWords)].some(({ index }) => firsts.some((one) => Math.abs(one - index) <= FIRST_NEAR));
}

/** A bud is no flower, and what opens only in the sun is not said to have opened. */
const inFlower =
  /\b(?:flower\w*|tassel\w*|silks?|bloom\w*|blossom\w*|opened|opening|spikes?|(?:is|are|its|theyre|come|came|now|wide|just|fully|all|been|first) open|open (?:now|since|already|today|yesterday|on|last|this)|(?:came|come|theyre|its|been|are|first) out(?! of))\b/;

/** What besides its plants' name must be said of a thing, by its kind; where nothing stands here the name is enough. */
const claims: ReadonlyMap<string, { readonly test: (said: string) => boolean }> = new Map(
  Object.entries({
    "first picking": { test: isFirstPicked },
    "only picking": new RegExp(`\\b${picked}\\b`),
    picking: new RegExp(`\\b${picked}\\b`),
    "first flower": inFlower,
    "in flower": inFlower,
    "first fruit": /\b(?:fruit\w*|pods?|peppers?|swelling|set|ripe\w*|turns?|turning|colou?r)\b/,
    lost: new RegExp(
      `\\b(?:lost|loss(?:es)?|died|dead|gone|killed|eaten|ate|wilt\\w*|rotted|perished|carked|snapped|drowned|keeled|conked|croaked|succumb\\w*|flattened|zapped|wiped out|goners?|did for|done for|done in|collapsed|never came|no more|fewer|failed|down (?:to|by)|(?:didnt|never) (?:make|made) it|gave up)\\b|\\b(?:had|got|took|taken|have had)\\b(?: \\w+){0,2} ${number}\\b|\\b${number}(?: \\w+)? left\\b`,
    ),
    new: new RegExp(
      `\\b${number}\\b|\\b(?:new|first|never|sow\\w*|plant\\w*|put|went|got|gave|bought|seeds?|up|through|beside|weeks?)\\b`,
    ),
    "first time": /\b(?:new|first (?:time|year)|never)\b/,
    up: /\b(?:up|through|germinat\w*|showing|came|sprout\w*|appeared|emerged|peep\w*|poking|sprung|(?:the|broke|broken) (?:surface|ground))\b/,
    grew: new RegExp(
      `\\b(?:${number}|a)\\b(?: \\w+){0,2} (?:met(?:re|er)s?|centimet(?:re|er)s?|cm|centi|foot|feet|inch(?:es)?|high|tall)\\b|\\bmet(?:re|er)s?\\b|\\bfoot tall\\b`,
    ),
    finished: /\b(?:done|finish\w*|over|out|cleared|pulled|gone|harvest\w*|dug|lifted|last of|no more|eaten)\b/,
    "a year ago": /\blast (?:year|season|summer|spring|autumn|fall|winter)\b/,
    "last year": /\blast (?:year|season|summer|spring|autumn|fall|winter)\b/,
  }),
);

/** Kinds told by the words for what happened, whoever it happened to. */
const byCause = new Set(["trouble", "trouble over"]);
const byName = new Set(["standing", "going", "ready", "side by side"]);
/** Kinds whose figure and words tell them, whichever plants were named last. */
const byFigure = new Set(["lost", "first picking", "only picking", "first flower", "in flower", "up", "finished"]);
const planting = /\b(?:sow\w*|plant\w*|seeds?|went in|put|set|stuck|in the ground)\b/;
/** Kinds of which a sort is meant and no other plant of its crop. */
const ofSorts = new Set(["new", "first time"]);

function told(
  point: PlannedThing,
  here: readonly Stretch[],
  mentions: readonly Subject[],
  asked: Asked,
): number | undefined {
  const { film } = asked;
  const { kind, text } = point;
  if (byCause.has(kind)) return causeTold(text, here, film);
  const [first] = mentions;
  if (byName.has(kind)) return first?.from;
  const claim = claims.get(kind);
  if (claim === undefined) return ownWords(text, here, first, film);
  const varied = ofSorts.has(kind) && mentions.some(({ variety }) => variety !== undefined);
  const isSort = ofSorts.has(kind) && hasVarieties(point, film);
  for (const mention of mentions) {
    if (isSort && (!varied || mention.variety === undefined)) continue;
    const { from, to } = around(mention, mentions, here, asked);
    const said = plainText(film, from, to).replaceAll(undone, "");
    const cause = kind === "lost" ? / to ([\p{L} ]+?)(?: on | in |;|\.|,|$)/u.exec(text)?.[1] : undefined;
    if (claim.test(said) || (cause !== undefined && isAbout(tellingWords(cause, film), said.split(" "), 8)))
      return mention.from;
  }
  if (byFigure.has(kind)) return figureTold(point, here, claim, film);
  // What a machine heard has lost names.
  return kind === "new" && !film.speech.punctuated ? figureTold(point, here, planting, film) : undefined;
}

function hasVarieties({ plantings }: PlannedThing, { day }: FilmHeard): boolean {
  const own = new Set(plantings);
  return [...day.beds.values()].some(({ state }) =>
    state.plantings.some(({ id, variety }) => own.has(id) && variety !== undefined),
  );
}

/** Words after a name, and before it in the same breath, among which its claim is made. */
const WITHIN = 90;
const BEFORE = 12;

/** From the name to where other plants of the bed are spoken of. */
function around(
  { from, to }: Subject,
  own: readonly Subject[],
  here: readonly Stretch[],
  { film, subjects }: Asked,
): Span {
  const stretch = here.find((one) => from >= one.from && from < one.to);
  const lots = new Set(own.flatMap((one) => one.here.map(({ id }) => id)));
  const isOther = (subject: Subject) =>
    subject.here.length > 0 && !subject.here.some(({ id }) => lots.has(id)) && !isCompared(film, subject);
  const next = inWords(subjects, (subject) => subject.from, to, to + WITHIN).find(isOther);
  const before = inWords(subjects, (subject) => subject.to, from - BEFORE, from + 1).findLast(isOther);
  const { words } = film.speech;
  let begins = from;
  const least = Math.max(before?.to ?? 0, stretch?.from ?? 0, from - BEFORE);
  while (begins > least && !/[.?!]/.test(words[begins - 1]?.mark ?? "")) begins -= 1;
  const ends = Math.min(to + WITHIN, next?.from ?? words.length, stretch?.to ?? words.length);
  const total = words.slice(to, ends).findIndex(({ plain }) => plain === "total" || plain === "altogether");
  return { from: begins, to: total < 0 ? ends : to + total };
}

function plainText({ speech }: FilmHeard, from: number, to: number): string {
  return speech.words
    .slice(from, to)
    .map(({ plain }) => plain)
    .join(" ");
}

/** Words before a trouble's own that nobody needs to say: "mildew" is powdery mildew, "the borers" are vine borers. */
const onlyWhich =
  /^(?:powdery|downy|early|late|common|spider|vine|root|leaf|stem|head|tulip|spotted|colorado|american)$/;

/** "Rust on the garlic" is told where rust is named, "red spider mite" where mite is; "squash bugs" where both words are. */
function causeTold(text: string, here: readonly Stretch[], film: FilmHeard): number | undefined {
  const what = /^(.+?) on the /.exec(text)?.[1] ?? text.split(",")[0] ?? text;
  const words = what.split(/[^\p{L}'’]+/u).map(plainWord);
  const all = words.filter((word) => word.length > 3 && !/^(?:something|some|eats?)$/.test(word));
  const own = all.filter((word) => !onlyWhich.test(word.toLowerCase()));
  const wanted = new Set((own.length > 0 ? own : all).map(stem));
  return wanted.size === 0 ? undefined : firstAbout(wanted, here, film, wanted.size, wanted.size + 2);
}

/** Words within which a thing's own words are said. */
const OWN_WITHIN = 40;

/** What has no kind of claim is told by its own words. */
function ownWords(
  text: string,
  here: readonly Stretch[],
  first: Subject | undefined,
  film: FilmHeard,
): number | undefined {
  const wanted = tellingWords(text, film);
  if (wanted.size === 0) return first?.from;
  return firstAbout(wanted, here, film, Math.min(wanted.size, first === undefined ? 2 : 1), OWN_WITHIN);
}

/** The first word of a run in which at least so many of the wanted are said; "white fly" is whitefly. */
export function firstAbout(
  wanted: ReadonlySet<string>,
  here: readonly Span[],
  { speech: { words } }: FilmHeard,
  least: number,
  within: number,
): number | undefined {
  for (const { from, to } of here) {
    const recent: { word: number; stem: string }[] = [];
    for (let word = from; word < to; word += 1) {
      const plain = words[word]?.plain ?? "";
      const both = stem(plain + (words[word + 1]?.plain ?? ""));
      const said = wanted.has(stem(plain)) ? stem(plain) : both;
      if (!wanted.has(said)) continue;
      while (recent.length > 0 && word - (recent[0]?.word ?? 0) > within) recent.shift();
      if (!recent.some((one) => one.stem === said)) recent.push({ word, stem: said });
      if (recent.length >= least) return recent[0]?.word ?? word;
    }
  }
  return undefined;
}

// ----------------------------------------------------------------------------------------------------------- kept back

export const keeping =
  /\b(?:(?:not|aint|arent|isnt|never) a?(?:going|showing|filming|taking|bringing|letting|stopping|for the)|(?:wont|dont|cant|cannot) (?:be )?(?:show|go|film|tak|bring|com)\w*|you cant come in|not that side|keep that one|leave that one out|leave (?:it|that|them|her|him) (?:in peace|alone)|we leave in peace|off limits|out of bounds|off camera|none of your business|just for me|say nothing|to myself)\b/;
/** Words around a bed's name in which it is said that it is not shown. */
const KEPT_NEAR = 14;

/** Where the speaker names a bed and says that it stays out of the film. */
function keptBack(bed: string, { film }: Asked): number | undefined {
  const { words } = film.speech;
  const named = inWords(film.places, ({ word }) => word, 0, words.length).filter(
    ({ beds }) => (beds.get(bed) ?? 0) >= 4,
  );
  return named.find(({ word }) => keeping.test(plainText(film, Math.max(0, word - KEPT_NEAR), word + KEPT_NEAR)))?.word;
}
