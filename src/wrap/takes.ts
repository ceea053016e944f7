/** The takes of a filming day as an editor's log: a row each, and as lines to read. */
import { sayPlural } from "../language/index.ts";
import type { Take } from "../model.ts";
import type { PlannedCovered, Reshoot, Wrap } from "./wrap.ts";

type Title = (bed: string | undefined) => string | undefined;

export interface TakeRow {
  readonly stop: string;
  /** "S1.3" */
  readonly shot: string;
  readonly what: string;
  readonly take: number;
  /** Wall clock of the phone at its end: "09:24:31". */
  readonly at: string;
  readonly mark: string;
  readonly why: string;
}

/** A shot that was left out has one row without a take. */
export function takeRows({ coverage }: Wrap, title: Title): readonly TakeRow[] {
  return coverage.shots.flatMap(({ id, bed, text, takes = [], covered, reason = "" }) => {
    const shot = { stop: title(bed) ?? bed, shot: id, what: text };
    const rows = takes.map(({ at = "", mark = "", why = "" }, index) => ({ ...shot, take: index + 1, at, mark, why }));
    return covered === "skipped" ? [...rows, { ...shot, take: 0, at: "", mark: "skipped", why: reason }] : rows;
  });
}

/** "Long Bed, S1.3 the flowers: take 1 no good (wind), 9:24:31; take 2 good, 9:26:02" */
export function takeLines({ coverage }: Wrap, title: Title): readonly string[] {
  return coverage.shots.flatMap(({ id, bed, text, takes = [], covered, reason }) => {
    const made = takes.map((take, index) => `take ${index + 1}${sayTake(take)}`);
    const said = covered === "skipped" ? [...made, reason === undefined ? "skipped" : `skipped (${reason})`] : made;
    return said.length === 0 ? [] : [`${title(bed) ?? bed}, ${id} ${text}: ${said.join("; ")}`];
  });
}

function sayTake({ at, mark, why }: Take): string {
  const worth = mark === undefined ? "" : ` ${mark}`;
  return `${worth}${why === undefined ? "" : ` (${why})`}${at === undefined ? "" : `, ${at.replace(/^0/, "")}`}`;
}

/** "Long Bed, S1.3 the flowers: no good take (wind)" */
export function reshootLines({ coverage }: Wrap, title: Title): readonly string[] {
  return coverage.reshoot.map(({ bed, id, text, what, why, level }: Reshoot) => {
    const must = level === "must" ? " Must." : "";
    return `${title(bed) ?? bed}, ${id} ${text}: ${what}${why === undefined ? "" : ` (${why})`}.${must}`;
  });
}

/** "three takes, the best at 9:26:02", where takes were made. */
export function bestTake({ takes = [] }: Pick<PlannedCovered, "takes">): string | undefined {
  const best = takes.findLast(({ mark }) => mark === "good") ?? takes.findLast(({ mark }) => mark === "hold");
  if (takes.length === 0) return undefined;
  const count = sayPlural(takes.length, "take", "takes");
  if (best === undefined) return `${count}, none good`;
  return `${count}, the best${best.at === undefined ? ` is ${takes.indexOf(best) + 1}` : ` at ${best.at.replace(/^0/, "")}`}`;
}
