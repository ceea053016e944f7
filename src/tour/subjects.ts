/** Who a sentence speaks of: plants by name, or by pronoun when they have just been named. */
import { capital, type Ground, say } from "../language/index.ts";
import { agree, type Batch, groundsOf, theBatch } from "./batches.ts";
import type { Fact } from "./brief.ts";

export interface Subject {
  /** "the Musselburgh leeks" or "they" */
  readonly who: string;
  /** The same at the beginning of a sentence. */
  readonly Who: string;
  readonly is: string;
  readonly was: string;
  readonly has: string;
  readonly it: string;
  readonly its: string;
}

/**
 * A fact of a batch, told once by name so that it can be said alone, and once by pronoun for when the plants have just
 * been named.
 */
export function factOf(
  kind: Fact["kind"],
  batch: Batch,
  tell: (subject: Subject) => string,
  grounds: readonly (Ground | undefined)[] = groundsOf(batch),
): Fact {
  const it = agree(batch, "it", "they");
  const words = {
    is: agree(batch, "is", "are"),
    was: agree(batch, "was", "were"),
    has: agree(batch, "has", "have"),
    its: agree(batch, "its", "their"),
    it,
  };
  const subject = (who: string): Subject => ({ ...words, who, Who: capital(who) });
  return {
    ...say(tell(subject(theBatch(batch))), [...grounds, { private: batch.lots.some((lot) => lot.planting.private) }]),
    follow: tell(subject(it)),
    kind,
    plantings: batch.lots.map((lot) => lot.planting.id),
  };
}
