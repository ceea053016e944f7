/** sites/*.md: one piece of ground. */
import * as z from "zod";
import type { RecordFile, Site } from "../../model.ts";
import { number, position, text } from "./fields.ts";
import { recordKeys } from "./record.ts";

export const siteSchema = z.strictObject({
  ...recordKeys,
  "place name": text.optional(),
  position: position.optional(),
  order: number({ from: 0, to: 10_000 }).optional(),
});

export function makeSite(file: RecordFile, front: z.output<typeof siteSchema>): Site {
  return { ...file, placeName: front["place name"], position: front.position, order: front.order };
}
