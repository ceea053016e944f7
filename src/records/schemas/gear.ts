/** gear/*.md: things viewers ask about, and how they were obtained. */
import * as z from "zod";
import type { Gear, RecordFile } from "../../model.ts";
import { giverInWords } from "../giver-in-words.ts";
import { howObtained, link, names, obtained, roughDay, text, truth } from "./fields.ts";
import { forViewers } from "./meaning.ts";
import { recordKeys } from "./record.ts";

export const gearSchema = z.strictObject({
  ...recordKeys,
  "also called": forViewers("other names that your notes may use for it", "[fine net]", names.optional()),
  obtained: forViewers(
    "how you came by it; a gift of a seller or maker, a loan, a payment and a commission are said wherever it is named",
    "given by a seller",
    obtained.optional(),
  ),
  from: forViewers("whom it came from", "Skerry Netting", text.optional()),
  source: forViewers('the same as "from"', "Skerry Netting", text.optional()),
  "thank by name": forViewers("true when the person it came from may be named to viewers", "true", truth.optional()),
  link: forViewers("where viewers find it", "https://netting.example/fine", link.optional()),
  since: forViewers("the day, month or year you have had it", "2025-04", roughDay.optional()),
});

export function makeGear(file: RecordFile, front: z.output<typeof gearSchema>): Gear {
  const { obtained: how, giver: said } = howObtained(front.obtained);
  // A variety's key for the same thing.
  const from = front.from ?? front.source;
  const giver = said ?? giverInWords(how, from);
  return {
    ...file,
    alsoCalled: front["also called"] ?? [],
    ...(how !== undefined && { obtained: how }),
    ...(giver !== undefined && { giver }),
    from,
    ...(front["thank by name"] === true && { thankByName: true }),
    link: front.link,
    since: front.since,
  };
}
