/**
 * What of a brief is new since somebody last looked at it, card by card. It is held against the state before the one shown now:
 * looking again, or from a second device, forgets nothing; only the next change does.
 */
import type { Card } from "../tour/index.ts";

/** By bed: a card keeps its bed when others come before it. */
type Said = ReadonlyMap<string, string>;

/** Gives the beds whose cards say something new; at the first look there is nothing to hold them against. */
export type LastLooks = (brief: string, cards: readonly Card[]) => ReadonlySet<string>;

export function lastLooks(): LastLooks {
  const looks = new Map<string, { readonly before?: Said | undefined; readonly now: Said }>();
  return (brief, cards) => {
    const now: Said = new Map(cards.map((card) => [card.bed, saidOn(card)]));
    const last = looks.get(brief);
    const isNew = last !== undefined && newIn(now, last.now).size + newIn(last.now, now).size > 0;
    const look = last === undefined || isNew ? { before: last?.now, now } : last;
    looks.set(brief, look);
    return look.before === undefined ? new Set() : newIn(now, look.before);
  };
}

function newIn(now: Said, before: Said): ReadonlySet<string> {
  return new Set([...now].flatMap(([bed, said]) => (before.get(bed) === said ? [] : [bed])));
}

/** What is spoken and filmed: neither its place in the walk nor the clock, which every other card moves, nor where its lines stand. */
function saidOn({ title, opening, before, now, figure, why, names, aloud, next, shots }: Card): string {
  const texts = [opening, before, ...now, figure, why, ...aloud, next].map((phrase) => phrase?.text);
  return JSON.stringify([
    title,
    texts,
    names.map(({ name, say, standing }) => [name, say, standing]),
    shotWords(shots),
  ]);
}

function shotWords(shots: Card["shots"]) {
  return shots.map(({ text, hold, cutaway, match }) => [text, hold, cutaway, match]);
}
