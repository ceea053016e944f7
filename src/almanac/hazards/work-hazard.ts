/** One row of the table of work that can hurt: the words of a note line that name it, and the line to show. */
import type { HazardSource } from "./hazard-sources.ts";

export interface WorkHazard {
  readonly what: string;
  readonly words: RegExp;
  readonly caution: string;
  /** Whom or what to follow, where the caution does not say so itself. */
  readonly defer?: string;
  /** Said once a film: work that many stops may have, which nobody has to be told of at each. */
  readonly once?: true;
  /** Figures behind the line, for the manual. */
  readonly facts?: string;
  readonly sources: readonly HazardSource[];
  readonly proof: "seen" | "partly" | "memory";
}
