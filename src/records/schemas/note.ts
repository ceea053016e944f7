/** Front matter of notes/*.md: the day and the beds a note speaks of. */
import * as z from "zod";
import { day, names, text } from "./fields.ts";
import { recordKeys } from "./record.ts";

export const noteSchema = z.strictObject({
  ...recordKeys,
  date: day.optional(),
  bed: text.optional(),
  beds: names.optional(),
});
