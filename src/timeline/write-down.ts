/** Writing down what changed in a bed, and where the notes leave a doubt. */
import { addDays } from "../calendar.ts";
import type {
  Change,
  ChangeEffect,
  ChangeKind,
  Day,
  Doubt,
  Event,
  Happening,
  Harvest,
  Place,
  Told,
  Turn,
} from "../model.ts";
import { bedLedger, bedsMeant, isPrivate, type Ledger } from "./ledger.ts";

export interface ChangeFacts {
  readonly kind: ChangeKind;
  readonly bed: string;
  /** Without its line, which `addChange` knows. */
  readonly told: Happening | Turn;
  readonly effect?: ChangeEffect | undefined;
  readonly harvest?: Harvest | undefined;
  readonly cause?: string | undefined;
}

/** Writes down a change an event made. It is private when the line is, or the bed or a plant it speaks of. */
export function addChange(ledger: Ledger, event: Event, facts: ChangeFacts): Change {
  return pushChange(ledger, {
    ...facts,
    told: { ...facts.told, line: event },
    day: event.day,
    event: event.id,
    note: event.place,
    private: event.private,
  });
}

export function pushChange(
  ledger: Ledger,
  facts: Omit<ChangeFacts, "told"> & {
    readonly told: Told;
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
    told: facts.told,
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

export function report(ledger: Ledger, doubt: Doubt): void {
  ledger.doubts.push(doubt);
}

/** Where and when a line was written. */
export function at({ place, day }: Event): Pick<Doubt, "place" | "day"> {
  return { place, day };
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
    report(ledger, { rule: "timeline/several-beds", ...at(event), bed: first });
  }
  return first;
}
