/** trials/*.md: a side-by-side comparison with arms and a measure. */
import * as z from "zod";
import type { RecordFile, Trial } from "../../model.ts";
import { day, oneOf, text } from "./fields.ts";
import { recordKeys } from "./record.ts";

const arm = z.preprocess(
  (value) => (typeof value === "string" ? { name: value } : value),
  z.strictObject({ name: text, variety: text.optional(), bed: text.optional() }),
);

export const trialSchema = z.strictObject({
  ...recordKeys,
  question: text,
  arms: z.array(arm),
  measure: text,
  status: oneOf(["planned", "running", "settled", "given up"]).optional(),
  verdict: text.optional(),
  started: day.optional(),
  "verdict due": day.optional(),
});

export function makeTrial(file: RecordFile, front: z.output<typeof trialSchema>): Trial {
  return {
    ...file,
    question: front.question,
    arms: front.arms,
    measure: front.measure,
    status: front.status ?? usualStatus(front),
    verdict: front.verdict,
    started: front.started,
    verdictDue: front["verdict due"],
  };
}

/** A trial whose status nobody wrote is as far as its other keys say. */
function usualStatus(front: z.output<typeof trialSchema>): Trial["status"] {
  if (front.verdict !== undefined) return "settled";
  return front.started === undefined ? "planned" : "running";
}
