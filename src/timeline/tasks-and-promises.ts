/**
 * What is to be done and what viewers were promised: opened by notes and episode records, closed by a `done:` line whose
 * words come nearest, or by the `kept` of an episode record.
 */

import { addDays, isDay } from "../calendar.ts";
import type { Day, Episode, EpisodePromise, Event, FollowUp } from "../model.ts";
import { compare } from "../order.ts";
import { bedsMeant, isPrivate, type Ledger, type OpenThing, plantIds } from "./ledger.ts";
import { livingNamed } from "./living-plantings.ts";
import { likeness, wordsOf } from "./same-words.ts";
import { addChange, pushChange, report } from "./write-down.ts";

/** How much a `done:` line and a task must have in common to be of one thing. */
const sameThing = 0.5;

/** A `done:` line about the same bed is a little more likely meant. */
const sameBed = 0.1;

export function toDo(ledger: Ledger, event: Event): void {
  const what = event.what ?? event.detail ?? event.text;
  const beds = bedsConcerned(ledger, event);
  const { id, due, day: opened, place } = event;
  const task = { id, what, bed: beds[0], due, opened, done: undefined, private: event.private, place };
  remember(ledger, { is: "task", now: task, beds, words: wordsOf(what) });
  for (const bed of beds) {
    const effect = { tasks: [{ ...task, bed }] };
    addChange(ledger, event, { kind: "to do", bed, told: { is: "to do", what, due }, effect });
  }
}

export function promise(ledger: Ledger, event: Event): void {
  const what = event.what ?? event.detail ?? event.text;
  const beds = bedsConcerned(ledger, event);
  const bed = beds.length === 1 ? beds[0] : undefined;
  const episode = [...ledger.records.episodes.values()].find(({ day }) => day === event.day);
  const followUp: FollowUp = {
    id: event.id,
    what,
    bed,
    variety: event.variety,
    promisedOn: event.day,
    episode: episode?.id,
    due: event.due,
    private: event.private || isPrivate(ledger, { bed, variety: event.variety }),
    place: event.place,
  };
  remember(ledger, { is: "promise", now: followUp, beds, words: wordsOf(what) });
  for (const one of beds) {
    addChange(ledger, event, { kind: "promised", bed: one, told: { is: "promised", what } });
  }
}

/** Closes the open task or promise that a `done:` line comes nearest to, and any that is worded just the same. */
export function done(ledger: Ledger, event: Event): void {
  const what = event.what ?? event.detail ?? event.text;
  const closed = bestMatches(ledger, wordsOf(what), bedsMeant(ledger, event));
  if (closed.length === 0) {
    for (const bed of bedsConcerned(ledger, event))
      addChange(ledger, event, { kind: "done", bed, told: { is: "done", what } });
  }
  for (const thing of closed) close(ledger, event, thing);
}

function close(ledger: Ledger, event: Event, thing: OpenThing): void {
  forget(ledger, thing);
  const isPrivate = event.private || thing.now.private;
  const closing = { kind: "done" as const, day: event.day, event: event.id, note: event.place, private: isPrivate };
  if (thing.is === "task") {
    thing.now = { ...thing.now, done: event.day };
    for (const bed of thing.beds) {
      pushChange(ledger, {
        ...closing,
        bed,
        told: { is: "done", what: thing.now.what },
        effect: { tasks: [{ ...thing.now, bed }] },
      });
    }
  } else {
    const episode = [...ledger.records.episodes.values()].find(({ day }) => day === event.day);
    thing.now = { ...thing.now, kept: event.day, keptIn: episode?.id };
    for (const bed of thing.beds) pushChange(ledger, { ...closing, bed, told: { is: "kept", what: thing.now.what } });
  }
}

function bestMatches(
  ledger: Ledger,
  words: readonly string[],
  beds: readonly string[],
  only?: OpenThing["is"],
): readonly OpenThing[] {
  const sharing = new Set(words.flatMap((word) => [...(ledger.openByWord.get(word) ?? [])]));
  let best = sameThing;
  let found: OpenThing[] = [];
  for (const thing of sharing) {
    const alike = likeness(words, thing.words);
    if (alike < sameThing || (only !== undefined && thing.is !== only)) continue;
    const score = alike + (thing.beds.some((bed) => beds.includes(bed)) ? sameBed : 0);
    if (score > best || found.length === 0) [best, found] = [score, [thing]];
    else if (score === best) found.push(thing);
  }
  const [first] = found.toSorted((a, b) => compare(begun(a), begun(b)) || compare(a.now.id, b.now.id));
  return found.filter((thing) => thing === first || thing.words.join(" ") === first?.words.join(" "));
}

function begun(thing: OpenThing): Day {
  return thing.is === "task" ? thing.now.opened : thing.now.promisedOn;
}

function remember(ledger: Ledger, thing: OpenThing): void {
  if (thing.is === "task") ledger.tasks.push(thing);
  else ledger.promises.push(thing);
  for (const word of thing.words) {
    const same = ledger.openByWord.get(word);
    if (same === undefined) ledger.openByWord.set(word, new Set([thing]));
    else same.add(thing);
  }
}

function forget(ledger: Ledger, thing: OpenThing): void {
  for (const word of thing.words) ledger.openByWord.get(word)?.delete(thing);
}

/** Where the plants named live, else the bed or beds the line or its note speaks of. */
export function bedsConcerned(ledger: Ledger, event: Event): readonly string[] {
  const meant = bedsMeant(ledger, event);
  const ids = plantIds(ledger.records, event);
  if (ids.variety === undefined && ids.crop === undefined) return meant;
  const here = livingNamed(ledger, ids, meant);
  const living = here.length > 0 ? here : livingNamed(ledger, ids);
  const beds = [...new Set(living.map(({ now }) => now.bed))];
  return beds.length > 0 ? beds : meant;
}

// ------------------------------------------------------------------------------------------------- promises of episodes

/** A promise in an episode record, and the day on which viewers heard it. */
export interface SpokenPromise {
  readonly episode: Episode;
  readonly promise: EpisodePromise;
  readonly day: Day;
}

/** Promises of all episode records, in order of day. Viewers hear them when the film is published. */
export function spokenPromises(episodes: Iterable<Episode>): readonly SpokenPromise[] {
  return [...episodes]
    .flatMap((episode) =>
      episode.promised.map((promise) => ({ episode, promise, day: episode.published ?? episode.day })),
    )
    .sort(
      (a, b) =>
        compare(a.day, b.day) ||
        compare(a.promise.place.file, b.promise.place.file) ||
        a.promise.place.line - b.promise.place.line,
    );
}

export function promiseAloud(ledger: Ledger, { episode, promise: said, day }: SpokenPromise): void {
  const { what, bed, due, at, place, putsOff } = said;
  if (putsOff !== undefined && !putOff(ledger, putsOff, bed, day))
    report(ledger, { rule: "timeline/no-such-promise", place, day, what: putsOff });
  const kept = said.kept === undefined ? undefined : keptOn(ledger, said.kept, day);
  const followUp: FollowUp = {
    id: `${place.file}:${place.line}`,
    what,
    bed,
    promisedOn: day,
    episode: episode.id,
    at,
    due,
    ...kept,
    private: episode.private || isPrivate(ledger, { bed }),
    place,
  };
  const beds = bed === undefined ? [] : [bed];
  const thing: OpenThing = { is: "promise", now: followUp, beds, words: wordsOf(what) };
  if (kept === undefined) remember(ledger, thing);
  else ledger.promises.push(thing);
  if (bed === undefined) return;
  const spoken = { bed, note: place, private: followUp.private };
  pushChange(ledger, { ...spoken, kind: "promised", day, told: { is: "promised", what } });
  if (kept !== undefined) pushChange(ledger, { ...spoken, kind: "done", day: kept.kept, told: { is: "kept", what } });
}

/** The open promise of just these words, else the one that comes nearest to them, is stood for by another from that day on. */
function putOff(ledger: Ledger, words: string, bed: string | undefined, day: Day): boolean {
  const open = bestMatches(ledger, wordsOf(words), bed === undefined ? [] : [bed], "promise");
  const found = open.find(({ now }) => now.what === words) ?? open[0];
  if (found?.is !== "promise") return false;
  forget(ledger, found);
  found.now = { ...found.now, putOff: day };
  return true;
}

/** `kept` names a day or an episode; anything else says only that it was kept. */
function keptOn(ledger: Ledger, kept: string, promisedOn: Day): { readonly kept: Day; readonly keptIn?: string } {
  if (isDay(kept)) return { kept };
  const episode = ledger.records.episodes.get(kept);
  return episode === undefined ? { kept: promisedOn } : { kept: episode.published ?? episode.day, keptIn: episode.id };
}

// -------------------------------------------------------------------------------------------------------------- overdue

/** Writes down what fell due and was not done: on the day after it was due. */
export function fallDue(ledger: Ledger): void {
  for (const { now, beds } of ledger.tasks) {
    const { due, done: doneOn, what, place } = now;
    if (due === undefined || (doneOn !== undefined && doneOn <= due)) continue;
    const day = addDays(due, 1);
    for (const bed of beds) {
      pushChange(ledger, {
        kind: "overdue",
        bed,
        day,
        note: place,
        private: now.private,
        told: { is: "overdue", what, due },
      });
    }
  }
  for (const { now, beds } of ledger.promises) {
    const { due, kept, putOff: later, what, place } = now;
    if (due === undefined || [kept, later].some((on) => on !== undefined && on <= due)) continue;
    const day = addDays(due, 1);
    for (const bed of beds) {
      pushChange(ledger, {
        kind: "overdue",
        bed,
        day,
        note: place,
        private: now.private,
        told: { is: "owed", what, due },
      });
    }
  }
}
