/** beds/*.md: a place in a site where things grow. */
import * as z from "zod";
import { parseDay } from "../../calendar.ts";
import type { Bed, DatedWork, FormerName, RecordFile, Stake } from "../../model.ts";
import { unitCalled } from "../units.ts";
import { compass, framePoint, names, planPoint, readAs, roughDay, since, text, texts, wrongValue } from "./fields.ts";
import { forViewers, forYou } from "./meaning.ts";
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
  z.strictObject({
    what: forViewers("what it is", "leaf mould", text),
    on: forViewers("the day, month or year", "2025-11", roughDay.optional()),
  }),
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
  .strictObject({
    foot: forYou("where it meets the ground, in the photo", "[0.5, 0.9]", framePoint),
    top: forYou("its upper end, in the photo", "[0.5, 0.4]", framePoint),
    length: forYou("from foot to top, with its unit", "1.2 m", lengthCm),
  })
  .transform(({ foot, top, length }): Stake => ({ foot, top, lengthCm: length }));

const viewpoint = z.strictObject({
  name: forViewers("what the spot is called: its folder's name below the bed's photos", "gate", text),
  spot: forYou("how to find it", "from the gate post, chest height", text.optional()),
  looking: forYou("which way the camera looks: a word, or degrees from north", "north-west", compass.optional()),
  outline: forYou(
    "the bed's corners in the photo, as fractions of its width and height from the upper left",
    "[[0.1, 0.4], [0.9, 0.4], [0.5, 1]]",
    z.array(framePoint).optional(),
  ),
  stake: forYou(
    "a stake of known length that stands in the photo, so that heights can be measured",
    "{ foot: [0.5, 0.9], top: [0.5, 0.4], length: 1.2 m }",
    stake.optional(),
  ),
});

/** "Gravy until 2026-04-30" */
const formerName = readAs<FormerName>((written) => {
  const at = written.toLowerCase().lastIndexOf(" until ");
  const name = written.slice(0, Math.max(0, at)).trim();
  const until = at < 0 ? undefined : parseDay(written.slice(at + " until ".length).trim());
  if (name !== "" && until !== undefined && "day" in until) return { value: { name, until: until.day } };
  return wrongValue(
    `"${written}" does not say an earlier name and its last day.`,
    'Write the name, "until" and the last day on which it was called so, for example "Gravy until 2026-04-30".',
  );
});

export const bedSchema = z.strictObject({
  ...recordKeys,
  site: forViewers("the piece of ground it lies in: that file's name or title", "the plot", text.optional()),
  "also called": forViewers("other names that your notes may use for it", "[arch, top arch]", names.optional()),
  was: forViewers(
    "what it was called before, and the last day of that name: notes up to that day mean this bed by it",
    "Gravy until 2026-04-30",
    z.preprocess((value) => (Array.isArray(value) ? value : [value]), z.array(formerName)).optional(),
  ),
  size: forViewers("length and width, with a unit of length", "4 x 1.2 m", size.optional()),
  plan: forViewers("where its south-west corner lies on the site's plan", "{ x: 2, y: 5.5 }", planPoint.optional()),
  facing: forViewers("which way it faces: a word, or degrees from north", "south", compass.optional()),
  shade: forYou(
    "what shades it, with the direction, the height and how far away it is",
    '"wall to the east, 3 m high, 2 m away"',
    texts.optional(),
  ),
  soil: forViewers("what it is filled with, or the ground it is", "sandy loam", text.optional()),
  built: forViewers("what it is built of, with the day where you know it", "larch boards", works.optional()),
  filled: forViewers("what it was filled with", "[compost, { what: leaf mould, on: 2025-11 }]", works.optional()),
  "in use since": forViewers("the day, month or year it came into use", "March 2023", since.optional()),
  "in use until": forViewers("the day, month or year it was given up", "2026-12-31", since.optional()),
  viewpoints: forViewers(
    "the spots it is photographed from again and again",
    "[{ name: gate, looking: north }]",
    z.array(viewpoint).optional(),
  ),
});

export function makeBed(file: RecordFile, front: z.output<typeof bedSchema>): Bed {
  return {
    ...file,
    site: front.site,
    alsoCalled: [...new Set([...(front["also called"] ?? []), ...(front.was ?? []).map(({ name }) => name)])],
    ...(front.was !== undefined && { was: front.was }),
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
