/** gear/*.md: things viewers ask about, and how they were obtained. */
import * as z from "zod";
import type { Gear, RecordFile } from "../../model.ts";
import { howObtained, link, names, obtained, roughDay, text, truth } from "./fields.ts";
import { recordKeys } from "./record.ts";

export const gearSchema = z.strictObject({
  ...recordKeys,
  "also called": names.optional(),
  obtained: obtained.optional(),
  from: text.optional(),
  source: text.optional(),
  "thank by name": truth.optional(),
  link: link.optional(),
  since: roughDay.optional(),
});

export function makeGear(file: RecordFile, front: z.output<typeof gearSchema>): Gear {
  return {
    ...file,
    alsoCalled: front["also called"] ?? [],
    ...howObtained(front.obtained),
    // A variety's key for the same thing.
    from: front.from ?? front.source,
    ...(front["thank by name"] === true && { thankByName: true }),
    link: front.link,
    since: front.since,
  };
}
