/**
 * Progress of long work: one redrawn line for a person at a terminal, plain lines elsewhere.
 */
import type { Effects } from "./effects.ts";

export interface Report {
  /** Says once what is being done. */
  step(text: string): void;
  /** Says how far a counted work has come; cheap to call for every piece. */
  progress(what: string, done: number, total: number): void;
  /** Ends the redrawn line, if any. */
  end(): void;
}

/** Milliseconds between redraws: fast enough to look alive, slow enough to cost nothing. */
const REDRAW_EVERY = 100;

/** Milliseconds of work below which a plain log hears nothing of it. */
const WORTH_SAYING = 2000;

export function reportTo(
  effects: Pick<Effects, "terminal" | "err" | "redraw">,
  clock = () => performance.now(),
): Report {
  let drawn = false;
  let lastDraw = Number.NEGATIVE_INFINITY;
  let startedAt = 0;
  let work = "";

  const end = () => {
    if (drawn) effects.err("");
    drawn = false;
  };

  return {
    step(text) {
      if (!effects.terminal) effects.err(text);
      else {
        effects.redraw(text);
        drawn = true;
      }
    },
    progress(what, done, total) {
      const now = clock();
      if (work !== what) {
        work = what;
        startedAt = now;
        lastDraw = Number.NEGATIVE_INFINITY;
      }
      if (!effects.terminal) {
        if (done === total && now - startedAt >= WORTH_SAYING) effects.err(`${what}: ${total}`);
        return;
      }
      if (done < total && now - lastDraw < REDRAW_EVERY) return;
      lastDraw = now;
      const left = done > 0 && done < total ? ((now - startedAt) / done) * (total - done) : 0;
      const wait = left >= 1000 ? `, about ${Math.round(left / 1000)} s left` : "";
      effects.redraw(`${what}: ${done} of ${total}${wait}`);
      drawn = true;
    },
    end,
  };
}
