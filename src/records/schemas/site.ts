/** sites/*.md: one piece of ground. */
import * as z from "zod";
import type { PlanPoint, RecordFile, Site } from "../../model.ts";
import { number, planPoint, position, text } from "./fields.ts";
import { recordKeys } from "./record.ts";

/** Points of the plan, a single one or a list; a name beside a point is for the person who reads the file. */
const points = z.preprocess(
  (value) => (Array.isArray(value) ? value : [value]),
  z.array(planPoint.extend({ name: text.optional() })),
);

/** Where a walk begins or ends: a point of the plan, or a bed's name. */
const walkEnd = z.union([planPoint, text]);

export const siteSchema = z.strictObject({
  ...recordKeys,
  "place name": text.optional(),
  position: position.optional(),
  order: number({ from: 0, to: 10_000 }).optional(),
  gates: points.optional(),
  "must pass": points.optional(),
  start: walkEnd.optional(),
  end: walkEnd.optional(),
});

export function makeSite(file: RecordFile, front: z.output<typeof siteSchema>): Site {
  return {
    ...file,
    placeName: front["place name"],
    position: front.position,
    order: front.order,
    gates: front.gates?.map(pointOf) ?? [],
    mustPass: front["must pass"]?.map(pointOf) ?? [],
    start: front.start,
    end: front.end,
  };
}

function pointOf({ x, y }: PlanPoint): PlanPoint {
  return { x, y };
}
