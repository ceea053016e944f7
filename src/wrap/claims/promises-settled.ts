/**
 * What a film says of promises beside making them: one made and kept in it closes itself, and a new one may put an earlier one
 * off, which then stands for it in the record.
 */
import { openFollowUps } from "../../timeline/index.ts";
import type { FilmHeard } from "../hear-film.ts";
import { type PromiseHeard, promisesHeard } from "../promises-heard.ts";
import { subjectsOf } from "../spoken-subjects.ts";
import type { Word } from "../spoken-words.ts";
import type { FollowUpProposed } from "../wrap.ts";
import type { Asked } from "./planned-answer.ts";
import { outcomeOf } from "./promise-answer.ts";
import { ownWords, recalledAt } from "./promise-recalled.ts";

export interface Settled {
  /** Milliseconds at which it is kept in the same film. */
  readonly kept?: number | undefined;
  readonly putsOff?: FollowUpProposed["putsOff"];
}

/** Own words by which a promise is known again later in its film. */
const ENOUGH_WORDS = 2;

export function promisesSettled(film: FilmHeard): ReadonlyMap<PromiseHeard, Settled> {
  const asked: Asked = { film, stretches: film.stretches, subjects: subjectsOf(film, film.stretches) };
  const settled = new Map<PromiseHeard, Settled>();
  const recalled = new Set<number>();
  for (const { what, bed, promisedOn, place } of earlierOnes(film)) {
    const own = ownWords(what);
    const here = film.stretches.filter((one) => bed === undefined || one.bed === bed);
    const recall = recalledAt(own, here, [], asked);
    if (recall === undefined) continue;
    recalled.add(recall);
    const { anew } = outcomeOf(what, recall, here, film);
    if (anew !== undefined && !settled.has(anew)) settled.set(anew, { putsOff: { what, promisedOn, place } });
  }
  for (const promise of promisesHeard(film)) {
    const word = settled.has(promise) ? undefined : keptAt(promise, asked, recalled);
    if (word !== undefined) settled.set(promise, { kept: (film.speech.words[word] as Word).at });
  }
  return settled;
}

function earlierOnes({ day: { garden, day, episode } }: FilmHeard) {
  return openFollowUps(garden, day).filter((one) => one.promisedOn < day && one.episode !== episode.id);
}

/** What is for another day is not kept in its own film, and what recalls a promise of another film keeps that one. */
function keptAt({ what, due, to }: PromiseHeard, asked: Asked, others: ReadonlySet<number>): number | undefined {
  const { film } = asked;
  if (due !== undefined && due > film.day.day) return undefined;
  const own = ownWords(what);
  if (own.size < ENOUGH_WORDS) return undefined;
  const after = [{ from: to, to: film.speech.words.length }];
  const recall = recalledAt(own, after, [], asked, ENOUGH_WORDS);
  if (recall === undefined || others.has(recall)) return undefined;
  return outcomeOf(what, recall, after, film).is === "said" ? recall : undefined;
}
