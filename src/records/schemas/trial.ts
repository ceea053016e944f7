/** trials/*.md: a side-by-side comparison with arms and a measure. */
import * as z from "zod";
import type { RecordFile, Trial } from "../../model.ts";
import { day, oneOf, text } from "./fields.ts";
import { forViewers } from "./meaning.ts";
import { recordKeys } from "./record.ts";

const arm = z.preprocess(
  (value) => (typeof value === "string" ? { name: value } : value),
  z.strictObject({
    name: forViewers("what the arm is called, as your notes call it", "under mesh", text),
    variety: forViewers("the variety it grows", "Musselburgh", text.optional()),
    bed: forViewers("the bed it grows in", "Long Bed", text.optional()),
  }),
);

export const trialSchema = z.strictObject({
  ...recordKeys,
  question: forViewers("what you want to know", "Does mesh keep the leek moth out?", text),
  arms: forViewers("what is held against what", "[with mesh, without mesh]", z.array(arm)),
  measure: forViewers("what you weigh, count or measure", "weight picked", text),
  status: forViewers("how far it is", "running", oneOf(["planned", "running", "settled", "given up"]).optional()),
  verdict: forViewers("what came of it, in your words", "The mesh kept them clean.", text.optional()),
  started: forViewers("the day it began", "2026-04-25", day.optional()),
  "verdict due": forViewers("the day by which you mean to know", "2026-10-31", day.optional()),
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
