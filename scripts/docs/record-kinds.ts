/** Every kind of record with front matter, and every key it may have, as the schemas that read them say. */
import type * as z from "zod";
import { bedSchema } from "../../src/records/schemas/bed.ts";
import { episodeSchema } from "../../src/records/schemas/episode.ts";
import { gardenSchema } from "../../src/records/schemas/garden.ts";
import { gearSchema } from "../../src/records/schemas/gear.ts";
import type { SeenBy } from "../../src/records/schemas/meaning.ts";
import { noteSchema } from "../../src/records/schemas/note.ts";
import { sidecarSchema } from "../../src/records/schemas/sidecar.ts";
import { siteSchema } from "../../src/records/schemas/site.ts";
import { trialSchema } from "../../src/records/schemas/trial.ts";
import { varietySchema } from "../../src/records/schemas/variety.ts";

export interface RecordKind {
  readonly name: string;
  /** With its article, as problems name it. */
  readonly one: string;
  /** Its files, as a pattern below the records folder. */
  readonly files: string;
  readonly schema: z.ZodObject;
  /** What it is for, and what the words below the front matter are. */
  readonly about: string;
}

export const recordKinds: readonly RecordKind[] = [
  {
    name: "garden",
    one: "garden.md",
    files: "garden.md",
    schema: gardenSchema,
    about:
      "What holds for the whole garden. `plotreel start` writes it; every key may be left out. The words below the keys stand on the first page that viewers see.",
  },
  {
    name: "bed",
    one: "a bed",
    files: "beds/*.md",
    schema: bedSchema,
    about:
      "A place where things grow: a bed, row, pots, tunnel, patch. A bed that your notes name and no file describes is taken as it is named. The words below the keys stand on its page.",
  },
  {
    name: "variety",
    one: "a variety",
    files: "varieties/*.md",
    schema: varietySchema,
    about:
      "A cultivar, where it came from and how long it takes. It too may be only named in notes. The words below the keys stand on its page.",
  },
  {
    name: "note",
    one: "a note",
    files: "notes/**/*.md",
    schema: noteSchema,
    about:
      "What happened on a day, a line for each thing, below the keys. A file whose name begins with the day, such as `2026-05-16-long-bed.md`, needs no keys at all. How lines are read: [notes.md](notes.md).",
  },
  {
    name: "episode",
    one: "an episode",
    files: "episodes/*/index.md",
    schema: episodeSchema,
    about:
      "One film, in a folder of its own beside its captions (.vtt or .srt). **The film's address goes into `link`**, with `published` for the day it came out. The words below the keys stand on its page once it is published.",
  },
  {
    name: "site",
    one: "a site",
    files: "sites/*.md",
    schema: siteSchema,
    about: "One piece of ground, where you garden on more than one or want its plan.",
  },
  {
    name: "gear",
    one: "a piece of gear",
    files: "gear/*.md",
    schema: gearSchema,
    about: "What viewers ask about beside the plants: nets, pots, frames. It matters most who gave or paid for it.",
  },
  {
    name: "trial",
    one: "a trial",
    files: "trials/*.md",
    schema: trialSchema,
    about: "One thing held against another, and by what.",
  },
  {
    name: "photo",
    one: "a photo's words",
    files: "photos/**/*.md",
    schema: sidecarSchema,
    about:
      "Words and corrections for one photo, in a file that is named as the photo is (`gate.md` beside `gate.jpg`). Most photos need none: [photos.md](photos.md).",
  },
];

export interface RecordKey {
  /** "place", or "place: latitude" below another key. */
  readonly name: string;
  readonly means: string | undefined;
  /** YAML, as it stands behind the colon. */
  readonly example: string | undefined;
  readonly seenBy: SeenBy | undefined;
  /** The words it may be; empty where it may be anything of its form. */
  readonly words: readonly string[];
  /** A record, or an entry of a list, without it is left out. */
  readonly needed: boolean;
  /** Alone in its record this is what checks it. */
  readonly schema: z.core.$ZodType;
}

export function keysOf(schema: z.core.$ZodType, above?: RecordKey): readonly RecordKey[] {
  return shapesIn(schema).flatMap((shape) =>
    Object.entries(shape).flatMap(([key, value]) => {
      const { description, example, seenBy } = (value as z.ZodType).meta() ?? {};
      const here: RecordKey = {
        name: above === undefined ? key : `${above.name}: ${key}`,
        means: description,
        example,
        // What stands below a key of yours is yours.
        seenBy: above?.seenBy === "you" ? "you" : seenBy,
        words: wordsIn(value),
        needed: !(value as z.ZodType).safeParse(undefined).success,
        schema: value,
      };
      return [here, ...keysOf(value, here)];
    }),
  );
}

/** The part of zod's own description of a schema that leads on to what lies in it. */
interface Inner {
  readonly type: string;
  readonly shape?: Readonly<Record<string, z.core.$ZodType>>;
  readonly innerType?: z.core.$ZodType;
  readonly element?: z.core.$ZodType;
  readonly valueType?: z.core.$ZodType;
  readonly options?: readonly z.core.$ZodType[];
  readonly in?: z.core.$ZodType;
  readonly out?: z.core.$ZodType;
}

function innerOf(schema: z.core.$ZodType): Inner {
  return schema._zod.def as unknown as Inner;
}

/** What lies directly in a schema that is no group of keys. */
function within(schema: z.core.$ZodType): readonly z.core.$ZodType[] {
  const { type, shape, innerType, element, valueType, options, in: from, out } = innerOf(schema);
  if (type === "object" && shape !== undefined) return [];
  return [innerType, element, valueType, ...(options ?? []), from, out].filter((inner) => inner !== undefined);
}

function shapesIn(schema: z.core.$ZodType): readonly Readonly<Record<string, z.core.$ZodType>>[] {
  const { shape } = innerOf(schema);
  return shape === undefined ? within(schema).flatMap(shapesIn) : [shape];
}

function wordsIn(schema: z.core.$ZodType): readonly string[] {
  return (schema as z.ZodType).meta()?.words ?? within(schema).flatMap(wordsIn);
}
