/** A question worth asking, answered on a page: found again in the records as they are now, and kept as a line. */
import type { Day, Garden } from "../model.ts";
import type { ThingAsking } from "../site/index.ts";
import { askedNow } from "../tour/index.ts";
import { type Keeping, keepAnswer, keepNotAsked } from "./keep-answer.ts";

export interface ThingAnswerer extends ThingAsking {
  see(garden: Garden, today: Day): void;
}

export function thingAnswerer(first: Keeping): ThingAnswerer {
  let keeping = first;
  return {
    see(garden, today) {
      keeping = { ...keeping, garden, today };
    },
    async answerThing({ id, text, answer }) {
      const asking = askedNow(keeping.garden, keeping.today).find((one) => one.id === id && one.text === text);
      if (asking === undefined) return { told: "That is not asked any more: the records have changed." };
      return answer === undefined ? keepNotAsked(asking, keeping) : keepAnswer(asking, answer, keeping);
    },
  };
}
