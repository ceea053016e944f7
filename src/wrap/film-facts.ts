/**
 * What happened in the film, as facts: first pickings, kept promises, losses, trials side by side. Each stands in public lines of the
 * records, was new since the film before, and was spoken of where it stands; what only one of the two tells is none.
 */
import { daysBetween, seasonStart } from "../calendar.ts";
import { bookOf } from "../garden/index.ts";
import type { Change, Day, FollowUp, Planting, Trial } from "../model.ts";
import { compare } from "../order.ts";
import { saidAt } from "./coverage.ts";
import { SURE } from "./fact-check.ts";
import type { FilmHeard } from "./hear-film.ts";
import { APPLY_FROM } from "./names-heard.ts";
import { type Subject, subjectsOf } from "./spoken-subjects.ts";
import type { Word } from "./spoken-words.ts";
import { lower } from "./statements.ts";
import type { Stretch } from "./stops-heard.ts";
import { type ViewersEye, viewersEye } from "./viewers-eye.ts";
import { firstFrom, stretchAt } from "./word-ranges.ts";

/** Words of the speech that tell of it, and the bed it is at. */
interface Told {
  readonly from: number;
  readonly to: number;
  readonly bed: string;
}

export type FilmFact = Told &
  (
    | { readonly kind: "first picking"; readonly planting: Planting }
    | { readonly kind: "loss"; readonly planting: Planting; readonly changes: readonly Change[] }
    | { readonly kind: "kept promise"; readonly promise: FollowUp }
    | { readonly kind: "side by side"; readonly trial: Trial }
  );

export function filmFacts(film: FilmHeard, stretches: readonly Stretch[]): readonly FilmFact[] {
  const { garden, episode } = film.day;
  if (film.speech.words.length === 0 || episode.private) return [];
  const eye = viewersEye(garden);
  const subjects = subjectsOf(film, stretches);
  return [
    ...keptPromises(film, stretches, eye),
    ...ofPlantings(film, stretches, subjects, eye),
    ...sideBySide(film, stretches, eye),
  ].sort((a, b) => a.from - b.from);
}

/** The film before this one; what happened since is new to viewers. Before the first film it is the season. */
function lastFilm({ day: { garden, day } }: FilmHeard): Day {
  const earlier = [...garden.episodes.values()].map((one) => one.day).filter((one) => one < day);
  return earlier.toSorted(compare).at(-1) ?? seasonStart(day, garden.settings.seasonStarts);
}

/** Words after a name among which what happened to its plants is told. */
const TOLD_WITHIN = 40;

const pickingWords =
  /^(?:pick(?:ed|ing|ings)|cut|dug|lifted|harvest(?:ed)?|gathered|pulled|kilos?|kilograms?|grams?|pounds?|ounces?|stems?|heads?|bunch(?:es)?|punnets?|fruits?)$/;
const lossWords =
  /^(?:lost|losses|died|dead|gone|went|took|taken|eaten|ate|had|killed|slugs?|snails?|pigeons?|mouse|mice|rats?|frost(?:ed)?|rot(?:ted)?|blight|wind|rabbits?|deer|moth)$/;

function ofPlantings(
  film: FilmHeard,
  stretches: readonly Stretch[],
  subjects: readonly Subject[],
  eye: ViewersEye,
): readonly FilmFact[] {
  const since = lastFilm(film);
  const found = new Map<string, FilmFact>();
  const doubtful = new Set(film.names.flatMap((one) => (one.confidence < APPLY_FROM ? [one.from] : [])));
  const picked = remembered((planting: Planting) => isFirstPicked(film, planting, since));
  const lost = remembered((planting: Planting) => lostSince(film, planting, since));
  subjects.forEach((subject, index) => {
    const { bed, from, confidence } = subject;
    if (bed === undefined || confidence < SURE || doubtful.has(from) || !eye.bed(bed)) return;
    const here = subject.here.filter((lot) => !lot.private && lot.since <= film.day.day && isNamedOpenly(lot, eye));
    const told = (words: RegExp) => toldOf(film, stretches, subjects, index, words);
    for (const planting of here) {
      const [first, loss] = [`picked ${nameKey(planting)}`, `lost ${planting.id}`];
      const ofPicking = !found.has(first) && picked(planting) ? told(pickingWords) : undefined;
      if (ofPicking !== undefined) found.set(first, { kind: "first picking", planting, bed, from, to: ofPicking });
      const changes = found.has(loss) ? [] : lost(planting);
      const ofLoss = changes.length === 0 ? undefined : told(lossWords);
      if (ofLoss !== undefined) found.set(loss, { kind: "loss", planting, changes, bed, from, to: ofLoss });
    }
  });
  return [...found.values()];
}

/** Days for which a first picking is news. */
const NEWS = 31;

function isNamedOpenly({ variety, crop }: Planting, eye: ViewersEye): boolean {
  return variety === undefined ? crop !== undefined : eye.variety(variety);
}

function nameKey({ variety, crop }: Planting): string {
  return variety ?? `any ${crop}`;
}

/** The word after the telling one, before other plants are spoken of. */
function toldOf(
  { speech }: FilmHeard,
  stretches: readonly Stretch[],
  subjects: readonly Subject[],
  index: number,
  telling: RegExp,
): number | undefined {
  const { from, to, here } = subjects[index] as Subject;
  const own = new Set(here.map(({ id }) => id));
  const stretch = stretchAt(stretches, from);
  let end = Math.min(to + TOLD_WITHIN, stretch?.to ?? to);
  for (let next = index + 1; next < subjects.length; next += 1) {
    const other = subjects[next] as Subject;
    if (other.from >= to && !other.here.some(({ id }) => own.has(id))) end = Math.min(end, other.from);
    if (other.from >= end) break;
  }
  const at = speech.words.slice(to, end).findIndex((word) => telling.test(lower(word)));
  return at < 0 ? undefined : to + at + 1;
}

/** Whether the season's first picking of these plants, in whichever bed, is public and new since the film before. */
function isFirstPicked({ day: { garden, day } }: FilmHeard, planting: Planting, since: Day): boolean {
  const starts = seasonStart(day, garden.settings.seasonStarts);
  const book = bookOf(garden);
  const ofThem = ({ variety, crop }: { readonly variety?: string | undefined; readonly crop?: string | undefined }) =>
    planting.variety === undefined ? crop === planting.crop : variety === planting.variety;
  const first = book.pickings.find((one) => one.day >= starts && one.day <= day && ofThem(one));
  if (first === undefined || first.private || first.planting !== planting.id) return false;
  // What is lifted all at once has no first picking.
  const told = book.historyOf(planting).find((one) => one.kind === "picked" && one.day === first.day)?.told;
  return first.day > since && daysBetween(first.day, day) <= NEWS && !(told?.is === "picked" && told.atOnce);
}

function lostSince({ day: { garden, day } }: FilmHeard, planting: Planting, since: Day): readonly Change[] {
  const losses = bookOf(garden)
    .historyOf(planting)
    .filter((one) => one.kind === "lost" && one.day > since && one.day <= day && one.told.is === "lost");
  // Of what is partly private no part is told: the rest would be a false total.
  return losses.some((one) => one.private) ? [] : losses;
}

function keptPromises(film: FilmHeard, stretches: readonly Stretch[], eye: ViewersEye): readonly FilmFact[] {
  const { garden, episode, day } = film.day;
  return garden.followUps.flatMap((promise): FilmFact[] => {
    const { id, what, bed, variety, kept, keptIn, private: isPrivate, promisedOn } = promise;
    const isHere = keptIn === episode.id || (keptIn === undefined && kept === day);
    if (!isHere || isPrivate || promisedOn >= day || bed === undefined || !eye.bed(bed)) return [];
    if ((variety !== undefined && !eye.variety(variety)) || !eye.text(what)) return [];
    const point = { id, key: id, kind: "owed", level: "must", text: what, plantings: [] } as const;
    const at = saidAt(point, bed, film, stretches);
    if (at === undefined) return [];
    const from = firstFrom(film.speech.words, (word) => word.at, at);
    return [{ kind: "kept promise", promise, bed, from, to: from + 1 }];
  });
}

/** Words that set what has no name of its own against what has: "eight under the net, seven without". */
const against = /^(?:without|uncovered|bare|other|against|open)$/;

function sideBySide(film: FilmHeard, stretches: readonly Stretch[], eye: ViewersEye): readonly FilmFact[] {
  const { garden, day } = film.day;
  return [...garden.trials.values()].flatMap((trial): FilmFact[] => {
    const { arms, started, status } = trial;
    const isOn = started !== undefined && started <= day && status !== "planned" && status !== "given up";
    const [bed] = arms.map((arm) => arm.bed);
    if (!isOn || trial.private || bed === undefined || arms.length < 2) return [];
    const isOpen = arms.every(
      (arm) => arm.bed === bed && (arm.variety === undefined || eye.variety(arm.variety)) && eye.text(arm.name),
    );
    if (!isOpen || !eye.bed(bed) || !stands(film, bed, trial)) return [];
    const told = bothTold(film, stretches, bed, trial);
    return told === undefined ? [] : [{ kind: "side by side", trial, bed, ...told }];
  });
}

function stands({ day }: FilmHeard, bed: string, { arms }: Trial): boolean {
  const living = day.beds.get(bed)?.living ?? [];
  return arms.every(({ variety }) => variety === undefined || living.some((lot) => lot.variety === variety));
}

/** Where each side was spoken of by words of its own, or all but one and that one set against them. */
function bothTold(
  { speech: { words } }: FilmHeard,
  stretches: readonly Stretch[],
  bed: string,
  { arms }: Trial,
): { readonly from: number; readonly to: number } | undefined {
  const wordsOf = arms.map(({ name }) => name.toLowerCase().split(/[^\p{L}\p{N}]+/u));
  const own = wordsOf.map((all, index) =>
    all.filter((word) => word.length > 2 && !wordsOf.some((other, at) => at !== index && other.includes(word))),
  );
  if (own.some((all) => all.length === 0)) return undefined;
  for (const { bed: at, from, to } of stretches) {
    if (at !== bed) continue;
    for (let word = from; word < to; word += 1) {
      const first = lower(words[word] as Word);
      if (!own.some((all) => all.some((one) => isAlike(one, first)))) continue;
      const said = words.slice(word, Math.min(to, word + TOLD_WITHIN)).map(lower);
      const places = own.map((all) => said.findIndex((heard) => all.some((one) => isAlike(one, heard))));
      const unnamed = places.filter((place) => place < 0).length;
      const set = said.findIndex((heard) => against.test(heard));
      if (unnamed === 0 || (unnamed === 1 && set >= 0))
        return { from: word, to: word + Math.max(...places, unnamed === 1 ? set : 0) + 1 };
    }
  }
  return undefined;
}

/** "net" and "netted", "ten" and "ten". */
function isAlike(one: string, heard: string): boolean {
  return heard === one || (heard.length > 2 && one.length > heard.length + 1 && one.startsWith(heard));
}

function remembered<Value>(work: (planting: Planting) => Value): (planting: Planting) => Value {
  const known = new Map<string, Value>();
  return (planting) => {
    const value = known.has(planting.id) ? (known.get(planting.id) as Value) : work(planting);
    known.set(planting.id, value);
    return value;
  };
}
