/** sites/*.md: one piece of ground. */
import * as z from "zod";
import type { PlanPoint, RecordFile, Site } from "../../model.ts";
import { number, planPoint, position, text } from "./fields.ts";
import { forViewers, forYou } from "./meaning.ts";
import { recordKeys } from "./record.ts";

/** Points of the plan, a single one or a list; a name beside a point is for the person who reads the file. */
const points = z.preprocess(
  (value) => (Array.isArray(value) ? value : [value]),
  z.array(planPoint.extend({ name: forYou("what you call it", "lower gate", text.optional()) })),
);

/** Where a walk begins or ends: a point of the plan, or a bed's name. */
const walkEnd = z.union([planPoint, text]);

export const siteSchema = z.strictObject({
  ...recordKeys,
  "place name": forViewers("what viewers may hear of where it is", "the west side of town", text.optional()),
  position: forYou(
    "where it lies on Earth, for its sun and light; never published",
    "{ latitude: 54.3, longitude: -5.6 }",
    position.optional(),
  ),
  order: forYou("its place among the sites you walk, from 0 on", "2", number({ from: 0, to: 10_000 }).optional()),
  gates: forYou("where it is entered and left, on its plan", "[{ x: 0, y: 3, name: lower gate }]", points.optional()),
  "must pass": forYou("points of the plan that every walk takes in", "[{ x: 6, y: 3 }]", points.optional()),
  start: forYou("where a walk begins: a point of the plan, or a bed", "Long Bed", walkEnd.optional()),
  end: forYou("where a walk ends", "{ x: 0, y: 3 }", walkEnd.optional()),
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
