/**
 * Front matter: the YAML between two lines of three hyphens at the head of a file. This is the one reader of it: another language
 * named on the first line is refused, never run, and all values stay as they were written.
 */
import { type Document, isMap, type Node, type Pair, parseDocument, type YAMLError } from "yaml";
import type { FileProblem } from "./file-problem.ts";
import { type LineColumn, textPlaces } from "./text-places.ts";
import { ExpandsWithoutEnd, keyText, plainValue, UnknownAnchor, type YamlValue } from "./yaml-values.ts";

export interface FrontMatter {
  /** By key; empty when there is none. Scalars are texts as written. */
  readonly data: { readonly [key: string]: YamlValue };
  readonly problems: readonly FileProblem[];
  /** Offset in the text at which the Markdown body begins. */
  readonly bodyAt: number;
}

/** `key` is a path of keys and list indexes. */
export interface FrontMatterPlaces {
  /** Where the key stands, else its nearest holder that stands somewhere, else the head of the front matter. */
  key(path: readonly PropertyKey[]): LineColumn;
  /** Where the value stands, else as `key`. */
  value(path: readonly PropertyKey[]): LineColumn;
}

const none: FrontMatter = { data: {}, problems: [], bodyAt: 0 };

export function readFrontMatter(text: string): FrontMatter {
  if (!text.startsWith("---")) return none;
  const first = /^---([^\r\n]*)/.exec(text)?.[1] ?? "";
  if (/^-/.test(first)) return none;
  if (first.trim() !== "") return { ...none, problems: [otherLanguage(first.trim())], bodyAt: lineEnd(text, 0) };
  const close = closingLine(text);
  if (close === undefined) return { ...none, problems: [unclosed], bodyAt: lineEnd(text, 0) };
  return { ...readYaml(text.slice(3, close.start)), bodyAt: close.after };
}

/** Places of keys and values. Parses the front matter again, so it is only asked for when there is something to point at. */
export function frontMatterPlaces(text: string): FrontMatterPlaces {
  const close = closingLine(text);
  const placeAt = textPlaces(text);
  if (!text.startsWith("---") || close === undefined) return { key: () => head, value: () => head };
  // The opening hyphens become blanks, so that offsets in the YAML are offsets in the file.
  return yamlPlaces(`   ${text.slice(3, close.start)}`, placeAt);
}

const head: LineColumn = { line: 1, column: 1 };

/** Places of keys and values in YAML, or in JSON, which is YAML too. */
export function yamlPlaces(yaml: string, placeAt: (offset: number) => LineColumn): FrontMatterPlaces {
  const document = parseDocument(yaml, yamlOptions);

  function find(path: readonly PropertyKey[], want: "key" | "value"): LineColumn {
    let node: unknown = document.contents;
    let at: LineColumn = head;
    for (const [index, step] of path.entries()) {
      const pair: Pair | undefined = isMap(node)
        ? node.items.find((item) => keyName(item) === String(step))
        : undefined;
      const inner: unknown = pair
        ? pair.value
        : (node as { get?: (key: unknown, keep: boolean) => unknown })?.get?.(step, true);
      if (pair === undefined && inner === undefined) return at;
      const shown = pair && (want === "key" || index < path.length - 1 || !hasRange(inner)) ? pair.key : inner;
      if (hasRange(shown)) at = placeAt(shown.range[0]);
      node = inner;
    }
    return at;
  }

  return { key: (path) => find(path, "key"), value: (path) => find(path, "value") };
}

const yamlOptions = { schema: "failsafe", prettyErrors: false, logLevel: "silent" } as const;

function readYaml(yaml: string): Pick<FrontMatter, "data" | "problems"> {
  const document = parseDocument(yaml, yamlOptions);
  const placeOf = (offset: number): LineColumn => textPlaces(yaml)(offset);
  const problems = yamlProblems(document.errors, yaml, placeOf);
  dropBroken(document);
  try {
    const data = plainValue(document);
    if (data === undefined) return { data: {}, problems };
    if (typeof data === "string" || Array.isArray(data)) {
      return {
        data: {},
        problems: problems.length > 0 ? problems : [notAMapping(placeOf(document.contents?.range[0] ?? 0))],
      };
    }
    return { data: data as { readonly [key: string]: YamlValue }, problems };
  } catch (error) {
    if (error instanceof ExpandsWithoutEnd) return { data: {}, problems: [...problems, expands(error.node, placeOf)] };
    if (error instanceof UnknownAnchor)
      return { data: {}, problems: [...problems, unknownAnchor(error.node, placeOf)] };
    throw error;
  }
}

/** Of broken YAML only the keys that end before the first fault are kept: what stands after it may mean anything. */
function dropBroken(document: Document.Parsed): void {
  const fault = document.errors.find((error) => error.code !== "DUPLICATE_KEY")?.pos[0];
  if (fault === undefined || !isMap(document.contents)) return;
  document.contents.items = document.contents.items.filter(({ value }) => hasRange(value) && value.range[1] < fault);
}

function yamlProblems(
  errors: readonly YAMLError[],
  yaml: string,
  placeOf: (offset: number) => LineColumn,
): readonly FileProblem[] {
  const byLine = new Map<number, FileProblem>();
  for (const error of errors) {
    const place = placeOf(error.pos[0]);
    // One slip often makes several errors on its line; the first is the one to mend.
    if (!byLine.has(place.line)) byLine.set(place.line, { ...yamlSentence(error, yaml), ...place });
  }
  return [...byLine.values()];
}

function yamlSentence(error: YAMLError, yaml: string): Pick<FileProblem, "rule" | "what" | "fix"> {
  const rule = "front-matter/yaml";
  switch (error.code) {
    case "DUPLICATE_KEY": {
      const key = /^[^:\r\n]*/.exec(yaml.slice(error.pos[0]))?.[0].trim() ?? "";
      return {
        rule: "front-matter/duplicate-key",
        what: `The key "${key}" stands twice; only the first was read.`,
        fix: "Keep one of the two, or put both values into one list.",
      };
    }
    case "BLOCK_AS_IMPLICIT_KEY":
      return {
        rule,
        what: "A value holds a colon followed by a space, which would begin another key.",
        fix: 'Put the value in quotes, for example title: "Peas: the early row".',
      };
    case "TAB_AS_INDENT":
      return { rule, what: "This line begins with a tab.", fix: "Indent with spaces." };
    case "BAD_INDENT":
      return {
        rule,
        what: "This line is not indented like the lines it belongs to, or a bracket before it is not closed.",
        fix: "Begin keys that belong together in the same column, and close every bracket.",
      };
    case "BAD_SCALAR_START":
      return {
        rule,
        what: `A value cannot begin with "${yaml[error.pos[0]] ?? ""}" unless it stands in quotes.`,
        fix: "Put the value in quotes.",
      };
    case "MISSING_CHAR":
      return /quote/.test(error.message)
        ? { rule, what: "A quotation mark is opened and not closed.", fix: "Close it at the end of the value." }
        : {
            rule,
            what: "This line is no key with a value.",
            fix: 'Write a key, a colon, a space and the value, for example "bed: long-bed".',
          };
    default:
      return {
        rule,
        what: `The front matter is not valid YAML: ${error.message.trimEnd().replace(/[.:]$/, "")}.`,
        fix: "Write each line as a key, a colon, a space and a value; put a value with unusual signs in quotes.",
      };
  }
}

function otherLanguage(name: string): FileProblem {
  return {
    rule: "front-matter/language",
    line: 1,
    column: 4,
    what: `The front matter is opened as "${name}", and only YAML is read; its keys were left aside.`,
    fix: "Let the first line be three hyphens and nothing else.",
  };
}

const unclosed: FileProblem = {
  rule: "front-matter/unclosed",
  line: 1,
  column: 1,
  what: "The front matter begins here and is never closed, so its keys could not be read.",
  fix: "Put a line of three hyphens (---) after the last key.",
};

function notAMapping(place: LineColumn): FileProblem {
  return {
    rule: "front-matter/not-a-mapping",
    ...place,
    what: "The front matter is not made of keys with values.",
    fix: 'Write each line as a key, a colon, a space and a value, for example "title: Long Bed".',
  };
}

function expands(node: Node, placeOf: (offset: number) => LineColumn): FileProblem {
  return {
    rule: "front-matter/expands",
    ...placeOf(node.range?.[0] ?? 0),
    what: "Anchors (&) and aliases (*) repeat one another here without end, so the front matter was left aside.",
    fix: "Write the values out.",
  };
}

function unknownAnchor(node: Node, placeOf: (offset: number) => LineColumn): FileProblem {
  return {
    rule: "front-matter/yaml",
    ...placeOf(node.range?.[0] ?? 0),
    what: "A value that begins with * is read as a reference, and there is nothing of that name to refer to.",
    fix: "Put the value in quotes.",
  };
}

/**
 * The closing line: where its line break begins, where it ends, where the next line begins. Undefined too when the
 * first line that begins with three hyphens goes on after them.
 */
function closingLine(
  text: string,
): { readonly start: number; readonly end: number; readonly after: number } | undefined {
  const found = /\r?\n---([^\r\n]*)/.exec(text);
  if (!found || (found[1] ?? "").trim() !== "") return undefined;
  const end = found.index + found[0].length;
  return { start: found.index, end, after: lineEnd(text, end) };
}

function lineEnd(text: string, from: number): number {
  const end = text.indexOf("\n", from);
  return end < 0 ? text.length : end + 1;
}

function keyName(pair: Pair): string {
  return keyText(pair.key);
}

function hasRange(node: unknown): node is { readonly range: readonly [number, number, number] } {
  return Array.isArray((node as { range?: unknown } | null | undefined)?.range);
}
