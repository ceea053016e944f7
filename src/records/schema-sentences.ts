/**
 * Checks front matter against its schema, and turns what zod finds into sentences a person can act on. This is the one
 * place where schema failures become words.
 */
import type * as z from "zod";
import type { FileProblem } from "./file-problem.ts";
import type { FrontMatterPlaces } from "./front-matter.ts";
import { didYouMean, nearestSpellings } from "./nearest-spelling.ts";
import { orList, type Refusal } from "./schemas/fields.ts";
import type { YamlValue } from "./yaml-values.ts";

type Data = { readonly [key: string]: YamlValue };
type Path = readonly PropertyKey[];
type Issue = z.core.$ZodIssue;

export interface CheckedFrontMatter<Front> {
  /** What could be read, without the keys and list entries that are wrong; undefined when a needed key is missing. */
  readonly front: Front | undefined;
  readonly problems: readonly FileProblem[];
}

/** `kind` is the record with its article: "a bed". `places` is only asked for when something is wrong. */
export function checkFrontMatter<Schema extends z.ZodObject>(
  schema: Schema,
  kind: string,
  data: Data,
  places: () => FrontMatterPlaces,
): CheckedFrontMatter<z.output<Schema>> {
  const first = schema.safeParse(data);
  if (first.success) return { front: first.data, problems: [] };
  const where = places();
  const issues = first.error.issues.flatMap(plainIssues);
  const problems = issues.flatMap((issue) => sentences(issue, { schema, kind, data, where, issues }));
  const second = schema.safeParse(without(data, issues.flatMap(pathsToDrop)));
  return { front: second.success ? second.data : undefined, problems };
}

interface Subject {
  readonly schema: z.ZodObject;
  readonly kind: string;
  readonly data: Data;
  readonly where: FrontMatterPlaces;
  readonly issues: readonly Issue[];
}

/** Of a choice between shapes only the shape that was attempted is spoken of: the one whose faults lie deepest. */
function plainIssues(issue: Issue): Issue[] {
  if (issue.code !== "invalid_union") return [issue];
  const attempts = issue.errors.map((issues) =>
    issues.flatMap((inner) => plainIssues({ ...inner, path: [...issue.path, ...inner.path] } as Issue)),
  );
  const attempted = attempts.find((issues) => issues.every((inner) => !isWrongShape(inner, issue.path))) ?? attempts[0];
  return attempted ?? [];
}

function isWrongShape(issue: Issue, at: Path): boolean {
  return issue.code === "invalid_type" && issue.path.length === at.length;
}

function sentences(issue: Issue, subject: Subject): FileProblem[] {
  const { kind, data, where } = subject;
  if (issue.code === "unrecognized_keys") return issue.keys.map((key) => unknownKey(key, issue.path, subject));
  if (issue.code === "custom" && isRefusal(issue.params)) {
    const { rule, what, fix, expected } = issue.params;
    return [{ rule, ...where.value(issue.path), what: `${keyWords(issue.path)}: ${what}`, fix, expected }];
  }
  const found = valueAt(data, issue.path);
  if (found === undefined) {
    const key = String(issue.path.at(-1));
    const at = issue.path.slice(0, -1);
    if (subject.issues.some((other) => isMisspelt(key, at, other))) return [];
    const holder = capital(holderOf(at, kind));
    return [
      {
        rule: "record/missing-key",
        ...where.value(at),
        what: `${holder} needs "${key}", so ${at.length === 0 ? "this file" : "it"} was left out.`,
        fix: `Add a line "${key}: …".`,
        expected: `the key "${key}"`,
      },
    ];
  }
  return [
    {
      rule: "record/wrong-value",
      ...where.value(issue.path),
      what: `${keyWords(issue.path)}: ${capital(shapeOf(found))} stands where ${expectedShape(issue)} is needed.`,
      fix: expectedFix(issue),
      expected: expectedShape(issue),
    },
  ];
}

/** Whether a key is missing only because it is written with a slip, which is told at the slip. */
function isMisspelt(key: string, at: Path, { code, path, ...issue }: Issue): boolean {
  if (code !== "unrecognized_keys" || JSON.stringify(path) !== JSON.stringify(at)) return false;
  return (issue as { readonly keys: readonly string[] }).keys.some(
    (other) => nearestSpellings(other, [key]).length > 0,
  );
}

function unknownKey(key: string, path: Path, { schema, kind, where }: Subject): FileProblem {
  const known = keysAt(schema, path);
  const holder = holderOf(path, kind);
  return {
    rule: "record/unknown-key",
    ...where.key([...path, key]),
    what: `"${key}" is not a key of ${holder}, so it was left aside.`,
    fix: didYouMean(key, known) ?? `The keys of ${holder} are ${listOf(known)}.`,
    expected: orList(known),
  };
}

/** What the keys below a path belong to: a record, an entry of a list, a key. */
function holderOf(path: Path, kind: string): string {
  if (path.length === 0) return kind;
  return typeof path.at(-1) === "number" ? `an entry of "${keyName(path)}"` : `"${keyName(path)}"`;
}

/** "place: latitude" or "stops, entry 2: bed". */
function keyWords(path: Path): string {
  return path
    .map((step, index) => {
      if (typeof step === "number") return `, entry ${step + 1}`;
      return index === 0 ? String(step) : `: ${String(step)}`;
    })
    .join("");
}

/** The last named step of a path: of ["stops", 1] it is "stops". */
function keyName(path: Path): string {
  return String(path.findLast((step) => typeof step === "string") ?? "");
}

function isRefusal(params: unknown): params is Refusal {
  return typeof params === "object" && params !== null && "rule" in params;
}

function shapeOf(value: YamlValue): string {
  if (typeof value === "string") return `the text "${value.length > 40 ? `${value.slice(0, 40)}…` : value}"`;
  return Array.isArray(value) ? "a list" : "a group of keys";
}

function expectedShape(issue: Issue): string {
  if (issue.code === "too_small" || issue.code === "too_big") return "a pair of values";
  if (issue.code !== "invalid_type") return "another value";
  if (issue.expected === "array" || issue.expected === "tuple") return "a list";
  return issue.expected === "string" ? "one text" : "a group of keys";
}

function expectedFix(issue: Issue): string {
  if (issue.code === "invalid_type" && issue.expected === "string") return "Write one text after the colon.";
  if (issue.code === "invalid_type" && issue.expected !== "array" && issue.expected !== "tuple") {
    return "Write keys with values, indented below this key or between { and }.";
  }
  return "Write the entries between [ and ], set off by commas.";
}

/** Keys a mapping may have, found by walking down the schema. */
function keysAt(schema: unknown, path: Path): readonly string[] {
  const node = unwrap(schema);
  if (node === undefined) return [];
  if (node.type === "union") return (node.options ?? []).flatMap((option) => keysAt(option, path));
  const [step, ...rest] = path;
  if (step === undefined) return Object.keys(node.shape ?? {});
  if (node.type === "array") return keysAt(node.element, rest);
  return keysAt(node.shape?.[String(step)], rest);
}

/** The part of zod's own description of a schema that is needed to find keys. */
interface Shape {
  readonly type: string;
  readonly shape?: Readonly<Record<string, unknown>>;
  readonly element?: unknown;
  readonly options?: readonly unknown[];
  readonly innerType?: unknown;
  readonly out?: unknown;
}

function unwrap(schema: unknown): Shape | undefined {
  const shape = (schema as { _zod?: { def?: Shape } } | undefined)?._zod?.def;
  if (shape?.type === "optional") return unwrap(shape.innerType);
  return shape?.type === "pipe" ? unwrap(shape.out) : shape;
}

/** A wrong key goes; a wrong entry of a list goes without the rest of its list. */
function pathsToDrop(issue: Issue): Path[] {
  if (issue.code === "unrecognized_keys") return issue.keys.map((key) => [...issue.path, key]);
  const entry = issue.path.findIndex((step) => typeof step === "number");
  return [issue.path.slice(0, entry < 0 ? 1 : entry + 1)];
}

function without(data: Data, paths: readonly Path[]): Data {
  const dropped = new Set(paths.map((path) => JSON.stringify(path)));
  const copy = (value: YamlValue, path: Path): YamlValue | undefined => {
    if (dropped.has(JSON.stringify(path))) return undefined;
    if (typeof value === "string") return value;
    if (Array.isArray(value)) {
      return value.map((entry, index) => copy(entry, [...path, index])).filter((entry) => entry !== undefined);
    }
    return Object.fromEntries(
      Object.entries(value)
        .map(([key, inner]) => [key, copy(inner, [...path, key])] as const)
        .filter((entry): entry is readonly [string, YamlValue] => entry[1] !== undefined),
    );
  };
  return copy(data, []) as Data;
}

function valueAt(data: Data, path: Path): YamlValue | undefined {
  let value: unknown = data;
  for (const step of path) value = (value as Record<PropertyKey, unknown> | undefined)?.[step];
  return value as YamlValue | undefined;
}

function listOf(words: readonly string[]): string {
  return orList(words).replace(/ or (?=[^,]*$)/, " and ");
}

function capital(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}
