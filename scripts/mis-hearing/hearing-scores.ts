/** How well films are heard, against their labels: names set right, promises, stops. */
import type { Garden } from "../../src/model.ts";
import { APPLY_FROM, type CaptionFile, filmingDay, hearFilm, promisesHeard } from "../../src/wrap/index.ts";
import type { NameTruth } from "./automatic-words.ts";
import type { LabelledFilm, PromiseTruth } from "./labelled-films.ts";

export interface Score {
  readonly right: number;
  readonly wrong: number;
  readonly missed: number;
}

export const nothing: Score = { right: 0, wrong: 0, missed: 0 };

export function sum(a: Score, b: Score): Score {
  return { right: a.right + b.right, wrong: a.wrong + b.wrong, missed: a.missed + b.missed };
}

export function precision({ right, wrong }: Score): number {
  return right + wrong === 0 ? 1 : right / (right + wrong);
}

export function recall({ right, missed }: Score): number {
  return right + missed === 0 ? 1 : right / (right + missed);
}

function hear(garden: Garden, { episode }: LabelledFilm, captions: CaptionFile) {
  const plan = episode.stops.map(({ bed }) => bed);
  return hearFilm({ speech: captions.speech, day: filmingDay(garden, episode), plan });
}

/** Words by which a correction may begin beside the name. */
const BESIDE = 1;

/**
 * Corrections made in the copy, against the mangled names: right when they give the variety that was said, at its words. A
 * correction anywhere else is wrong, in clean captions too.
 */
export function scoreNames(
  garden: Garden,
  film: LabelledFilm,
  captions: CaptionFile,
  truth: readonly NameTruth[],
): Score {
  const mangled = truth.filter(({ kind }) => kind === "mangled");
  const found = new Set<NameTruth>();
  let wrong = 0;
  for (const { from, to, name, right, confidence } of hear(garden, film, captions).names) {
    if (right || confidence < APPLY_FROM) continue;
    const meant = mangled.find(({ word, words }) => from < word + words && to > word);
    if (meant !== undefined && meant.variety === name.record && Math.abs(from - meant.word) <= BESIDE) found.add(meant);
    else wrong += 1;
  }
  return { right: found.size, wrong, missed: mangled.length - found.size };
}

/** Seconds by which what is heard may lie beside what was labelled. */
const NEAR = 1;

export function scorePromises(garden: Garden, film: LabelledFilm, captions: CaptionFile): Score {
  const left = new Set<PromiseTruth>(film.promises);
  let [right, wrong] = [0, 0];
  for (const { from, to } of promisesHeard(hear(garden, film, captions))) {
    const [begin, end] = [from, to - 1].map((word) => (captions.speech.words[word]?.at ?? 0) / 1000) as [
      number,
      number,
    ];
    const meant = [...left].find((one) => begin <= one.to + NEAR && end >= one.at - NEAR);
    if (meant === undefined) wrong += 1;
    else {
      left.delete(meant);
      right += 1;
    }
  }
  return { right, wrong, missed: left.size };
}

/** For each stop of the plan, seconds by which it was heard to begin elsewhere; Infinity when it was not heard. */
export function stopErrors(garden: Garden, film: LabelledFilm, captions: CaptionFile): readonly number[] {
  const { stretches } = hear(garden, film, captions);
  return film.stops.map(({ bed, at }) =>
    Math.min(
      Number.POSITIVE_INFINITY,
      ...stretches.filter((one) => one.bed === bed).map((one) => Math.abs(one.at / 1000 - at)),
    ),
  );
}
