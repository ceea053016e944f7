/** Front matter of notes/*.md: the day and the beds a note speaks of. */
import * as z from "zod";
import { day, names, text } from "./fields.ts";
import { forViewers, forYou } from "./meaning.ts";
import { recordKeys } from "./record.ts";

export const noteSchema = z.strictObject({
  ...recordKeys,
  date: forViewers("the day it tells of; the file's name tells it too", "2026-05-16", day.optional()),
  bed: forViewers("the bed its lines speak of, where a line names none", "Long Bed", text.optional()),
  beds: forViewers("the same for several beds", "[Long Bed, Cold Frame]", names.optional()),
  "voice note": forYou(
    "the sound file whose words it holds, which then waits for no words any more",
    "photos/2026-05-16/memo.m4a",
    text.optional(),
  ),
});
