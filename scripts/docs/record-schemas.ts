/**
 * A JSON Schema for each kind of record, for editors that complete and check YAML by one. They are wider than what reads the
 * records where they cannot say what it takes, so that nothing it takes is marked as wrong.
 */
import { parse } from "yaml";
import * as z from "zod";
import { type RecordKind, recordKinds } from "./record-kinds.ts";

type Json = z.core.JSONSchema.BaseSchema;

/** YAML makes numbers, truths and nothing of texts; what reads the records has all of them as they are written. */
const SCALAR = { type: ["string", "number", "boolean", "null"] } as unknown as Json;

export const recordSchemas: Readonly<Record<string, () => string>> = Object.fromEntries(
  recordKinds.map((kind) => [`${kind.name}.json`, () => `${JSON.stringify(schemaOf(kind), null, 2)}\n`]),
);

export function schemaOf({ files, schema }: RecordKind): Json {
  const { $schema, ...json } = z.toJSONSchema(schema, {
    io: "input",
    target: "draft-07",
    unrepresentable: "any",
    reused: "inline",
    override: ({ zodSchema, jsonSchema }) => asWritten(zodSchema, jsonSchema),
  }) as Json;
  return { $schema, title: `The front matter of ${files}`, ...json } as Json;
}

/** Puts what a person may write in the place of what zod would have. */
function asWritten(schema: z.core.$ZodTypes, json: Json): void {
  const { description, example, seenBy: _seenBy, words, ...form } = json as Json & Said;
  for (const key of Object.keys(json)) delete (json as Record<string, unknown>)[key];
  Object.assign(
    json,
    description === undefined ? {} : { description },
    widened(schema._zod.def, form, words),
    example === undefined ? {} : { examples: [parse(example)] },
  );
}

interface Said {
  readonly description?: string;
  readonly example?: string;
  readonly seenBy?: string;
  readonly words?: readonly string[];
}

function widened(def: z.core.$ZodTypes["_zod"]["def"], form: Json, words: readonly string[] | undefined): Json {
  // In any case, so the words are offered and others not refused.
  if (words !== undefined) return { anyOf: [{ enum: [...words] }, SCALAR] };
  if (def.type === "string") return { ...form, ...SCALAR };
  if (def.type !== "pipe" || def.in._zod.def.type !== "transform") return form;
  // One text, or one entry, stands for a list of one.
  const entry = form.type === "array" && !isScalar(form.items as Json) ? [form.items as Json] : [];
  return { anyOf: [SCALAR, ...entry, form] };
}

function isScalar({ type }: Json): boolean {
  return Array.isArray(type) || type === "string";
}
