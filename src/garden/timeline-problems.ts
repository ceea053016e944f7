/** What the timeline was in doubt about, as problems of the records. */
import { namesOf, sayDoubt } from "../language/index.ts";
import type { Garden, Problem } from "../model.ts";
import { problem } from "../records/index.ts";

export function timelineProblems(garden: Garden): readonly Problem[] {
  const names = namesOf(garden);
  return garden.doubts.map((doubt) => {
    const { what, fix } = sayDoubt(doubt, names);
    return problem(doubt.rule, doubt.place, what, fix);
  });
}
