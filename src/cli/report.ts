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

/** Milliseconds after which a plain log hears that long work goes on. */
const SIGN_OF_LIFE = 30_000;

/** ", 4.2 a second, about 2 min left": said once the work has gone on long enough to tell, and while a second or more is left. */
function pace(done: number, total: number, spent: number): string {
  const left = done > 0 && done < total ? (spent / done) * (total - done) : 0;
  if (left < 1000) return "";
  const rate = done / (spent / 1000);
  const minutes = Math.round(left / 60_000);
  const wait =
    left < 90_000 ? `${Math.round(left / 1000)} s` : minutes < 90 ? `${minutes} min` : `${Math.round(minutes / 60)} h`;
  return `, ${rate >= 10 ? Math.round(rate) : Number(rate.toPrecision(2))} a second, about ${wait} left`;
}

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
        else if (done < total && now - Math.max(startedAt, lastDraw) >= SIGN_OF_LIFE) {
          lastDraw = now;
          effects.err(`${what}: ${done} of ${total}`);
        }
        return;
      }
      if (done < total && now - lastDraw < REDRAW_EVERY) return;
      lastDraw = now;
      effects.redraw(`${what}: ${done} of ${total}${pace(done, total, now - startedAt)}`);
      drawn = true;
    },
    end,
  };
}
