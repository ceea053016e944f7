/** How plants came by the note lines alone, where no record of the variety says it: "planted 1 given Sun Gold …, from a neighbour". */
import type { HowItCame } from "../language/index.ts";
import type { Day, Garden } from "../model.ts";

/** The last that came by a day. Whether who gave them sells such things no line says, so that it is asked; a private line tells nothing. */
export function cameInLines({ events }: Garden, variety: string, day: Day): HowItCame | undefined {
  const told = events.filter(
    (event) => event.variety === variety && event.plantsFrom !== undefined && event.day <= day && !event.private,
  );
  const last = told.at(-1)?.day;
  const ofThatDay = told.filter((event) => event.day === last);
  // Of what was bought and given on one day the gift is the one that viewers may be owed a word about.
  const event = ofThatDay.find(({ plantsFrom }) => plantsFrom === "given") ?? ofThatDay.at(-1);
  return event === undefined
    ? undefined
    : { obtained: event.plantsFrom === "given" ? "gifted" : "bought", from: event.from };
}
