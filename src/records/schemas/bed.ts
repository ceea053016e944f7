/** beds/*.md: a place in a site where things grow. */
import * as z from "zod";
import type { Bed, DatedWork, RecordFile, Stake } from "../../model.ts";
import { unitCalled } from "../units.ts";
import { compass, framePoint, names, planPoint, readAs, roughDay, since, text, texts, wrongValue } from "./fields.ts";
import { recordKeys } from "./record.ts";

/** "4 x 1.2 m", "12 x 4 ft", "4 m x 120 cm". */
const sizePattern = /^(\d+(?:\.\d+)?) ?([a-z]+|['"])? ?(?:x|×|by|\*) ?(\d+(?:\.\d+)?) ?([a-z]+|['"])?$/i;

/** Patterns that allow blanks in several places try all ways of sharing out a long run of them. */
function plainBlanks(written: string): string {
  return written.trim().replace(/\s+/g, " ");
}

const size = readAs((written) => {
  const [, length, ownUnit, width, unit] = sizePattern.exec(plainBlanks(written).replace(/(\d)x/gi, "$1 x")) ?? [];
  const long = metres(length, ownUnit ?? unit);
  const wide = metres(width, unit ?? ownUnit);
  if (long !== undefined && wide !== undefined) return { value: { length: long, width: wide } };
  return wrongValue(
    `"${written}" is not a size.`,
    'Write length, width and unit, for example "4 x 1.2 m" or "12 x 4 ft".',
  );
});

function metres(value: string | undefined, unitName: string | undefined): number | undefined {
  const unit = unitCalled(unitName?.toLowerCase() ?? "");
  if (value === undefined || unit?.dimension !== "length") return undefined;
  // Rounded to the tenth of a millimetre, which hides the noise of binary fractions and nothing a tape can measure.
  return Math.round(Number(value) * unit.factor * 100) / 10_000;
}

const work = z.preprocess(
  (value) => (typeof value === "string" ? { what: value } : value),
  z.strictObject({ what: text, on: roughDay.optional() }),
);

/** What a bed is built of or filled with: one text, or a list of texts and dated texts. */
const works = z.preprocess((value) => (Array.isArray(value) ? value : [value]), z.array(work));

/** "1.2 m", "90 cm", "4 ft"; in centimetres. */
const lengthCm = readAs((written) => {
  const [, value, unitName] = /^(\d+(?:\.\d+)?)\s*([a-z]+|['"])$/i.exec(written) ?? [];
  const long = metres(value, unitName);
  if (long !== undefined && long > 0) return { value: long * 100 };
  return wrongValue(`"${written}" is not a length.`, 'Write number and unit, for example "1.2 m" or "4 ft".');
});

const stake = z
  .strictObject({ foot: framePoint, top: framePoint, length: lengthCm })
  .transform(({ foot, top, length }): Stake => ({ foot, top, lengthCm: length }));

const viewpoint = z.strictObject({
  name: text,
  spot: text.optional(),
  looking: compass.optional(),
  outline: z.array(framePoint).optional(),
  stake: stake.optional(),
});

export const bedSchema = z.strictObject({
  ...recordKeys,
  site: text.optional(),
  "also called": names.optional(),
  size: size.optional(),
  plan: planPoint.optional(),
  facing: compass.optional(),
  shade: texts.optional(),
  soil: text.optional(),
  built: works.optional(),
  filled: works.optional(),
  "in use since": since.optional(),
  "in use until": since.optional(),
  viewpoints: z.array(viewpoint).optional(),
});

export function makeBed(file: RecordFile, front: z.output<typeof bedSchema>): Bed {
  return {
    ...file,
    site: front.site,
    alsoCalled: front["also called"] ?? [],
    size: front.size,
    plan: front.plan,
    facing: front.facing,
    shade: front.shade ?? [],
    soil: front.soil,
    built: front.built?.map(datedWork) ?? [],
    filled: front.filled?.map(datedWork) ?? [],
    inUseSince: front["in use since"],
    inUseUntil: front["in use until"],
    viewpoints: front.viewpoints ?? [],
  };
}

function datedWork({ what, on }: z.output<typeof work>): DatedWork {
  return { what, day: on };
}
