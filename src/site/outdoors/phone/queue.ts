/**
 * What was kept outdoors, on its way home: sent one after the other, the oldest first; what is taken goes, what is refused stays
 * with the reason, and of what is not answered nothing is known, so that it is sent again under the same id.
 */
import type { OutdoorAnswer } from "../../outdoors-taking.ts";
import type { Queued, QueuedLine, Refused } from "./shapes.ts";

export interface QueueStore {
  /** The oldest first. */
  all(): Promise<readonly Queued[]>;
  /** Done only when it would outlast the end of the battery. */
  put(entry: Queued, bytes?: ArrayBuffer): Promise<void>;
  bytesOf(id: string): Promise<ArrayBuffer | undefined>;
  drop(id: string): Promise<void>;
  /** False when this browser keeps nothing, so that what is written lasts only as long as the page. */
  readonly lasts: boolean;
}

/** Undefined where no answer came. */
export type Deliver = (entry: Queued, bytes: ArrayBuffer | undefined) => Promise<OutdoorAnswer | undefined>;

export interface SentHome {
  readonly taken: number;
  readonly refused: number;
  /** Somebody answered to the end. */
  readonly isReached: boolean;
}

export async function sendHome(store: QueueStore, garden: string, deliver: Deliver): Promise<SentHome> {
  let [taken, refused] = [0, 0];
  for (const entry of await store.all()) {
    if (entry.refused !== undefined) continue;
    if (entry.garden !== garden) {
      await store.put({ ...entry, refused: { told: `It was kept for “${entry.garden}”.`, elsewhere: true } });
      refused += 1;
      continue;
    }
    // Before it leaves: from now on it may be at home, whatever is heard of it.
    const leaving = { ...entry, sent: true } as const;
    await store.put(leaving);
    const answer = await deliver(leaving, await store.bytesOf(entry.id));
    if (answer === undefined) return { taken, refused, isReached: false };
    if (answer.done === true) {
      await store.drop(entry.id);
      taken += 1;
    } else {
      const { told, reads, stands } = answer;
      await store.put({ ...entry, sent: undefined, refused: { told, reads, stands } });
      refused += 1;
    }
  }
  return { taken, refused, isReached: true };
}

/** To be sent again, with what the person agreed to. */
export function agreed(entry: Queued, garden: string): Queued {
  const { refused, ...rest } = entry;
  const again = { ...rest, garden: refused?.elsewhere === true ? garden : rest.garden } as Queued;
  if (again.kind === "photo" || refused === undefined) return again;
  return {
    ...again,
    ...(refused.reads !== undefined && { shown: refused.reads }),
    ...(refused.stands === true && { again: true as const }),
  };
}

/** What a tap that sends it again is called. */
export function againCalled({ reads, stands, elsewhere }: Refused): string {
  if (stands === true) return "It happened again";
  if (reads !== undefined) return "Write it so";
  return elsewhere === true ? "It is of this garden" : "Try again";
}

/** As the computer takes a line. */
export function lineToSend({ id, day, bed, text, shown: { as, says }, again }: QueuedLine): object {
  return { id, day, ...(bed !== undefined && { bed }), text, shown: { as, says }, ...(again === true && { again }) };
}
