/** Short clips out of the film: in and out points in whole sentences around what happened and was said. */
import { writeTime } from "./caption-times.ts";
import { factsTitle } from "./fact-words.ts";
import type { FilmFact } from "./film-facts.ts";
import type { FilmHeard } from "./hear-film.ts";
import type { Statement } from "./statements.ts";
import type { Stretch } from "./stops-heard.ts";
import { viewersEye } from "./viewers-eye.ts";
import { stretchAt } from "./word-ranges.ts";
import type { PrivateAloud, Short } from "./wrap.ts";

/** Milliseconds. */
const SHORTEST = 15_000;
const LONGEST = 60_000;

/** Losses are told in the film; nobody makes a clip of each. A clip in which a private name is said is none. */
export function shortsOf(
  film: FilmHeard,
  stretches: readonly Stretch[],
  facts: readonly FilmFact[],
  aloud: readonly PrivateAloud[],
): readonly Short[] {
  const { garden } = film.day;
  const eye = viewersEye(garden);
  const cuts = facts.flatMap((fact) => {
    const stretch = stretchAt(stretches, fact.from);
    const cut = stretch === undefined || fact.kind === "loss" ? undefined : cutAround(film, stretch, fact);
    return cut === undefined ? [] : [{ fact, ...cut, key: `${fact.kind} ${cut.at} ${cut.until}` }];
  });
  // What is told in the same sentences is one clip.
  return [...Map.groupBy(cuts, ({ key }) => key).values()].flatMap((group): Short[] => {
    const [{ fact, at: begin, until: end }] = group as [(typeof group)[number]];
    const [at, until] = [begin / 1000, end / 1000];
    const told = group.map((one) => one.fact);
    const title = factsTitle(told, garden);
    const isPrivate = aloud.some((one) => one.at >= at - 0.1 && one.at < until) || !eye.text(title);
    return isPrivate || fact.kind === "loss" ? [] : [{ kind: fact.kind, bed: fact.bed, at, until, title }];
  });
}

/** The sentences of what is told, then those after them at the same stop until it is long enough, else those before. */
function cutAround(
  { statements, speech }: FilmHeard,
  stretch: Stretch,
  { from, to }: FilmFact,
): { readonly at: number; readonly until: number } | undefined {
  const here = statements.filter((one) => one.from >= stretch.from && one.to <= stretch.to);
  let first = here.findIndex((one) => one.to > from);
  let last = here.findIndex((one) => one.to >= to);
  if (first < 0 || last < 0) return undefined;
  const end = ({ to: after }: Statement) => speech.words[after]?.at ?? speech.end;
  const length = () => end(here[last] as Statement) - (here[first] as Statement).at;
  while (length() < SHORTEST && last + 1 < here.length) last += 1;
  while (length() < SHORTEST && first > 0) first -= 1;
  return length() < SHORTEST || length() > LONGEST
    ? undefined
    : { at: (here[first] as Statement).at, until: end(here[last] as Statement) };
}

export interface ShortRow {
  /** "00:01:05.000" */
  readonly in: string;
  readonly out: string;
  readonly seconds: number;
  readonly kind: string;
  readonly title: string;
}

export function shortRows(shorts: readonly Short[]): readonly ShortRow[] {
  return shorts.map(({ at, until, kind, title }) => ({
    in: writeTime(at * 1000, "vtt"),
    out: writeTime(until * 1000, "vtt"),
    seconds: Math.round((until - at) * 10) / 10,
    kind,
    title,
  }));
}
