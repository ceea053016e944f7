/** gear/*.md: things viewers ask about, and how they were obtained. */
import * as z from "zod";
import type { Gear, RecordFile } from "../../model.ts";
import { link, names, obtained, roughDay, text } from "./fields.ts";
import { recordKeys } from "./record.ts";

export const gearSchema = z.strictObject({
  ...recordKeys,
  "also called": names.optional(),
  obtained: obtained.optional(),
  from: text.optional(),
  source: text.optional(),
  link: link.optional(),
  since: roughDay.optional(),
});

export function makeGear(file: RecordFile, front: z.output<typeof gearSchema>): Gear {
  return {
    ...file,
    alsoCalled: front["also called"] ?? [],
    obtained: front.obtained,
    // A variety's key for the same thing.
    from: front.from ?? front.source,
    link: front.link,
    since: front.since,
  };
}
