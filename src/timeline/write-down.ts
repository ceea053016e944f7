/** Writing down what changed in a bed, and what is wrong with the notes. */
import { addDays } from "../calendar.ts";
import type { Change, ChangeEffect, ChangeKind, Day, Event, Harvest, Place } from "../model.ts";
import { problem, type RuleName } from "../records/index.ts";
import { bedLedger, bedsMeant, isPrivate, type Ledger } from "./ledger.ts";

export interface ChangeFacts {
  readonly kind: ChangeKind;
  readonly bed: string;
  readonly text: string;
  readonly effect?: ChangeEffect | undefined;
  readonly harvest?: Harvest | undefined;
  readonly cause?: string | undefined;
}

/** Writes down a change an event made. It is private when the line is, or the bed or a plant it speaks of. */
export function addChange(ledger: Ledger, event: Event, facts: ChangeFacts): Change {
  const text = event.reason === undefined ? facts.text : ledger.say.because(facts.text, event.reason);
  return pushChange(ledger, {
    ...facts,
    text,
    day: event.day,
    event: event.id,
    note: event.place,
    private: event.private,
  });
}

export function pushChange(
  ledger: Ledger,
  facts: ChangeFacts & {
    readonly day: Day;
    readonly event?: string | undefined;
    readonly note: Place;
    readonly private: boolean;
  },
): Change {
  const { effect = {} } = facts;
  const plantings = effect.plantings ?? [];
  const change: Change = {
    kind: facts.kind,
    day: facts.day,
    bed: facts.bed,
    planting: plantings.length === 1 ? plantings[0]?.id : undefined,
    text: facts.text,
    event: facts.event,
    note: facts.note,
    private: facts.private || isPrivate(ledger, { bed: facts.bed }) || plantings.some((one) => isPrivate(ledger, one)),
    effect,
    harvest: facts.harvest,
    cause: facts.cause,
  };
  bedLedger(ledger, facts.bed).changes.push(change);
  return change;
}

export function report(ledger: Ledger, rule: RuleName, place: Place, what: string, fix: string): void {
  ledger.problems.push(problem(rule, place, what, fix));
}

/** Whether the notes go on so long after a day that a line about it would have been written by now. */
export function notesWentOn(ledger: Ledger, day: Day, days: number): boolean {
  return ledger.lastDay > addDays(day, days);
}

/**
 * The one bed a line speaks of, for what can be in one bed only: gear, a soil test. When its note is about several, the
 * first, with a hint.
 */
export function oneBedMeant(ledger: Ledger, event: Event): string | undefined {
  const [first, second] = bedsMeant(ledger, event);
  if (first !== undefined && second !== undefined) {
    report(
      ledger,
      "timeline/several-beds",
      event.place,
      `The line names no bed, and its note is about several; it was taken to mean ${ledger.names.bed(first)}.`,
      `Name the bed in the line: "in ${ledger.names.bed(first)}".`,
    );
  }
  return first;
}
