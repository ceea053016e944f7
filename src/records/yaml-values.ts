/**
 * YAML nodes to plain values in which every scalar is the text as written: "012" stays "012", "no" stays "no" and a date
 * stays a date, because what a value means is for the key to say, not for YAML. Empty values count as keys left out, so
 * that a record template may be filled in bit by bit.
 */
import { type Document, isAlias, isMap, isScalar, isSeq, type Node } from "yaml";

export type YamlValue = string | readonly YamlValue[] | { readonly [key: string]: YamlValue };

/** More values than any person writes into one front matter; anchors that multiply reach it at once. */
const most = 10_000;

export class ExpandsWithoutEnd extends Error {
  readonly node: Node;
  constructor(node: Node) {
    super("anchors expand without end");
    this.node = node;
  }
}

export class UnknownAnchor extends Error {
  readonly node: Node;
  constructor(node: Node) {
    super("an alias has no anchor");
    this.node = node;
  }
}

/**
 * What a key is called. YAML lets a whole mapping be a key; written out, each level of such keys doubles the one below it,
 * so it is called by a word that is no key of any record.
 */
export function keyText(key: unknown): string {
  if (isScalar(key)) return String(key.value ?? "");
  return key === null ? "" : "a group as a key";
}

/** Undefined for an empty value. Of a key given twice the first counts. */
export function plainValue(document: Document.Parsed): YamlValue | undefined {
  let seen = 0;
  const open = new Set<Node>();

  function plain(node: unknown): YamlValue | undefined {
    if (node === null || node === undefined) return undefined;
    const here = node as Node;
    seen += 1;
    if (seen > most || open.has(here)) throw new ExpandsWithoutEnd(here);
    if (isScalar(here)) {
      const text = typeof here.value === "string" ? here.value : String(here.value ?? "");
      return text.trim() === "" ? undefined : text;
    }
    if (isAlias(here)) {
      const target = here.resolve(document);
      if (target === undefined) throw new UnknownAnchor(here);
      if (open.has(target)) throw new ExpandsWithoutEnd(here);
      return plain(target);
    }
    open.add(here);
    const value = isMap(here) ? plainMap(here.items) : isSeq(here) ? plainList(here.items) : undefined;
    open.delete(here);
    return value;
  }

  function plainMap(pairs: readonly { readonly key: unknown; readonly value: unknown }[]): YamlValue | undefined {
    // Without a prototype, so that a key such as "__proto__" is a key like any other.
    const map: Record<string, YamlValue> = Object.create(null);
    let empty = true;
    for (const { key, value } of pairs) {
      const name = keyText(key);
      const inner = plain(value);
      // "private:" with nothing after it may be meant either way, so it is not passed over.
      const mayBeLeftOut = name !== "private" && isScalar(key);
      if ((inner === undefined && mayBeLeftOut) || Object.hasOwn(map, name)) continue;
      map[name] = inner ?? "";
      empty = false;
    }
    return empty ? undefined : map;
  }

  function plainList(items: readonly unknown[]): YamlValue | undefined {
    return items.map(plain).filter((item) => item !== undefined);
  }

  return plain(document.contents);
}
