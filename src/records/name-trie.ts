/**
 * Names by their words, each word in its form for comparing. Looking a line over for names costs one step a word,
 * whatever the number of names.
 */
import type { Day } from "../model.ts";
import { isPointOfName, type Word, wordsOf } from "./line-words.ts";

/** A name found in a line; `end` is the word after it. */
export interface Found {
  readonly id: string;
  readonly end: number;
  /** Ids of other records that go by the same name. */
  readonly others: readonly string[];
}

export interface NameEntry {
  readonly id: string;
  /**
   * 0 for a title or id, 1 for a word of the garden's own list, 2 for another spelling, 3 for a title without its crop word or
   * its "F1", 4 for a name only heard.
   */
  readonly rank: number;
  /** Of a former name: up to this day it means this record before any other. */
  readonly until?: Day | undefined;
}

interface Node {
  readonly next: Map<string, Node>;
  readonly entries: NameEntry[];
}

export class NameTrie {
  readonly #root = newNode();

  add(keys: readonly string[], entry: NameEntry): void {
    if (keys.length === 0) return;
    let node = this.#root;
    for (const key of keys) {
      let next = node.next.get(key);
      if (next === undefined) {
        next = newNode();
        node.next.set(key, next);
      }
      node = next;
    }
    if (!node.entries.some((known) => known.id === entry.id)) node.entries.push(entry);
  }

  /** Whether any name begins with a word of this key. */
  begins(key: string): boolean {
    return this.#root.next.has(key);
  }

  /** The longest name that begins at word `from`, as it was meant on this day. Hyphens inside it are passed over. */
  at(words: readonly Word[], from: number, day?: Day): Found | undefined {
    const first = words[from];
    if (first === undefined || first.kind === "mark") return undefined;
    let node = this.#root.next.get(first.key);
    if (node === undefined) return undefined;
    let found = foundHere(node, from + 1, day);
    for (let end = from + 1; end < words.length; end++) {
      const word = words[end];
      if (word === undefined) break;
      if (word.kind === "mark") {
        // "Café-au-Lait", but not "potatoes - Charlotte".
        const joins = word.start === words[end - 1]?.end && word.end === words[end + 1]?.start;
        if (joins && (word.text === "-" || word.text === "‐" || word.text === "‑")) continue;
        if (isPointOfName(words, end)) continue;
        break;
      }
      node = node.next.get(word.key);
      if (node === undefined) break;
      found = foundHere(node, end + 1, day) ?? found;
    }
    return found;
  }
}

/** The words of a name as they are compared. */
export function keysOf(name: string): string[] {
  return wordsOf(name)
    .filter((word) => word.kind !== "mark")
    .map((word) => word.key);
}

function newNode(): Node {
  return { next: new Map(), entries: [] };
}

function foundHere(node: Node, end: number, day: Day | undefined): Found | undefined {
  let best: NameEntry | undefined;
  let bestRank = Number.POSITIVE_INFINITY;
  let others: string[] | undefined;
  for (const entry of node.entries) {
    const rank = rankOn(entry, day);
    if (rank < bestRank) {
      best = entry;
      bestRank = rank;
      others = undefined;
    } else if (rank === bestRank) {
      others ??= [];
      others.push(entry.id);
    }
  }
  return best === undefined ? undefined : { id: best.id, end, others: others ?? noOthers };
}

/** In its time a former name is the name itself, before whatever is called so now. */
function rankOn({ rank, until }: NameEntry, day: Day | undefined): number {
  return until !== undefined && day !== undefined && day <= until ? -1 : rank;
}

const noOthers: readonly string[] = [];
