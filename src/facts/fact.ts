/** What every fact of a garden says beside its value. */
import type { Day, Place } from "../model.ts";

export interface Fact<Value> {
  readonly value: Value;
  /** The lines it rests on. */
  readonly sources: readonly Place[];
  /** Rests on something the person marked private. */
  readonly private: boolean;
  /** The day on which it holds. */
  readonly day: Day;
}
