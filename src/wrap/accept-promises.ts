/**
 * Promises into an episode's record. Only the list `promised` grows; every other letter of the file stays. The YAML is
 * parsed to find the place, and what comes out is parsed again and compared before it is given back.
 */
import { isMap, isScalar, isSeq, type ParsedNode, parseDocument, stringify, type YAMLSeq } from "yaml";
import type { Day } from "../model.ts";
import { sayTime } from "./caption-times.ts";

export interface PromiseToWrite {
  readonly what: string;
  readonly bed?: string | undefined;
  readonly due?: Day | undefined;
  /** The episode in which it was kept: its own. */
  readonly kept?: string | undefined;
  /** The words of the earlier promise that it puts off. */
  readonly putsOff?: string | undefined;
  /** Seconds. */
  readonly at: number;
}

export interface Accepted {
  readonly text: string;
}

/** The record with the promises added; or one sentence why it was left as it is. */
export function acceptPromises(
  record: string,
  promises: readonly PromiseToWrite[],
): Accepted | { readonly refused: string } {
  const bounds = frontMatter(record);
  if (bounds === undefined) return { refused: "The record has no front matter between two lines of three hyphens." };
  const { from, to } = bounds;
  const yaml = record.slice(from, to);
  const document = parseDocument(yaml);
  const [error] = document.errors;
  if (error !== undefined) return { refused: `The front matter cannot be read: ${error.message.split("\n")[0]}` };
  // A group as a key doubles in size with each level when it is written out.
  if (hasGroupAsKey(document.contents))
    return { refused: "The front matter has a group of keys where a key should be." };
  const newline = record.includes("\r\n") ? "\r\n" : "\n";
  const fresh = promises.filter((promise) => !isThere(promise, document.contents));
  if (fresh.length === 0) return { text: record };
  const added = withPromises(yaml, document.contents, fresh, newline);
  if (added === undefined) return { refused: 'The key "promised" holds something other than a list.' };
  const text = record.slice(0, from) + added + record.slice(to);
  return isOnlyMore(yaml, added, fresh.length)
    ? { text }
    : { refused: "The promises could not be added without changing something else." };
}

/** Another run may have taken it in since the record was read. */
function isThere({ what, at }: PromiseToWrite, contents: ParsedNode | null): boolean {
  const list = isMap(contents) ? contents.get("promised") : undefined;
  const items = isSeq(list) ? list.items : [];
  const isSame = (value: unknown, wanted: string) => value === wanted;
  return items.some(
    (item) => isMap(item) && isSame(item.get("what"), what) && isSame(item.get("at"), sayTime(at * 1000)),
  );
}

function hasGroupAsKey(node: unknown): boolean {
  if (isSeq(node)) return node.items.some(hasGroupAsKey);
  return isMap(node) && node.items.some(({ key, value }) => !isScalar(key) || hasGroupAsKey(value));
}

function frontMatter(record: string): { readonly from: number; readonly to: number } | undefined {
  const opening = /^\uFEFF?---[ \t]*\r?\n/.exec(record);
  if (opening === null) return undefined;
  const from = opening[0].length;
  const closing = /^(?:---|\.\.\.)[ \t]*\r?$/m.exec(record.slice(from));
  return closing === null ? undefined : { from, to: from + closing.index };
}

function withPromises(
  yaml: string,
  contents: ParsedNode | null,
  promises: readonly PromiseToWrite[],
  newline: string,
): string | undefined {
  if (contents !== null && !isMap(contents)) return undefined;
  const pair = contents?.items.find(({ key }) => String((key as { value?: unknown }).value) === "promised");
  const list = pair?.value as ParsedNode | null | undefined;
  if (pair === undefined) {
    const before = yaml === "" || yaml.endsWith("\n") ? yaml : `${yaml}${newline}`;
    return `${before}promised:${newline}${lines(promises, "  ", newline)}`;
  }
  if (list !== null && list !== undefined && isSeq(list) && list.flow !== true && list.items.length > 0) {
    const { at, indent } = afterLast(yaml, list as YAMLSeq);
    const head = yaml.slice(0, at);
    return (head.endsWith("\n") ? head : head + newline) + lines(promises, indent, newline) + yaml.slice(at);
  }
  const isEmpty = list === null || list === undefined || (list as { value?: unknown }).value === null;
  if (!isEmpty && !(isSeq(list) && list.flow === true)) return undefined;
  // "promised:" with nothing after it, or a list in brackets: written out as lines.
  const key = (pair.key as ParsedNode).range;
  const end = isEmpty ? endOfLine(yaml, key[1]) : endOfLine(yaml, (list as ParsedNode).range[1]);
  const before = isEmpty
    ? []
    : (list as YAMLSeq).items.map(
        (item) => `  - ${stringify(item, { collectionStyle: "flow", lineWidth: 0 }).trim()}${newline}`,
      );
  return `${yaml.slice(0, key[0])}promised:${newline}${before.join("")}${lines(promises, "  ", newline)}${yaml.slice(end)}`;
}

/** Where the last item of a list ends, and how its items are indented. */
function afterLast(yaml: string, list: YAMLSeq): { readonly at: number; readonly indent: string } {
  const first = list.items[0] as ParsedNode;
  const last = list.items.at(-1) as ParsedNode;
  const dash = yaml.lastIndexOf("-", first.range[0] - 1);
  const indent = yaml.slice(yaml.lastIndexOf("\n", dash) + 1, dash);
  return { at: endOfLine(yaml, last.range[1] - (yaml[last.range[1] - 1] === "\n" ? 1 : 0)), indent };
}

function endOfLine(yaml: string, at: number): number {
  const end = yaml.indexOf("\n", at);
  return end < 0 ? yaml.length : end + 1;
}

function lines(promises: readonly PromiseToWrite[], indent: string, newline: string): string {
  return promises
    .map(({ what, bed, due, kept, putsOff, at }) => {
      const rows = [
        `- what: ${scalar(what)}`,
        ...(bed === undefined ? [] : [`  bed: ${scalar(bed)}`]),
        ...(due === undefined ? [] : [`  due: ${due}`]),
        ...(kept === undefined ? [] : [`  kept: ${scalar(kept)}`]),
        ...(putsOff === undefined ? [] : [`  puts off: ${scalar(putsOff)}`]),
        `  at: "${sayTime(at * 1000)}"`,
      ];
      return rows.map((row) => `${indent}${row}${newline}`).join("");
    })
    .join("");
}

function scalar(text: string): string {
  return stringify(text, { lineWidth: 0, blockQuote: false }).trim();
}

/** Everything as before, and the list longer by what was added. */
function isOnlyMore(before: string, after: string, count: number): boolean {
  const [old, now] = [parseDocument(before), parseDocument(after)];
  if (now.errors.length > 0) return false;
  const [was, is] = [(old.toJS() ?? {}) as Record<string, unknown>, now.toJS() as Record<string, unknown>];
  const [wasPromised, isPromised] = [(was.promised ?? []) as unknown[], is.promised as unknown[]];
  const rest = ({ promised: _, ...others }: Record<string, unknown>) => JSON.stringify(others);
  return (
    rest(was) === rest(is) &&
    isPromised.length === wasPromised.length + count &&
    JSON.stringify(isPromised.slice(0, wasPromised.length)) === JSON.stringify(wasPromised)
  );
}
