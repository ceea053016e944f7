/**
 * The garden's own word list, words.md: what a person calls things, one list item each.
 *
 *     - rasps: raspberries
 *     - FB: French Breakfast
 *     - lifted onions: picked
 *
 * A word or phrase, a colon, and what it means: a crop, variety, bed, a piece of gear, or a verb of the note lines; a verb's
 * word may end in the crop of which alone it is said. What cannot be read comes as a problem beside the rest.
 */
import type { OwnWord, Place, Problem, WordMeaning } from "../model.ts";
import { wordsOf } from "./line-words.ts";
import { type NameKind, type Names, normaliseName } from "./names.ts";
import { didYouMean } from "./nearest-spelling.ts";
import { type ItemPiece, readNoteTree } from "./note-tree.ts";
import { problem } from "./problem-rules.ts";
import { verbTable } from "./verb-table.ts";

export const wordsFile = "words.md";

/** A line of the list, before it is known what its meaning names. */
export interface WrittenWord {
  readonly word: string;
  readonly means: string;
  readonly place: Place;
}

/** Own records before the table of crops. */
const named = ["variety", "bed", "gear", "crop"] as const satisfies readonly NameKind[];

/** Forms of verbs in lower case, to the kind they say. */
const kinds = new Map(
  verbTable
    .toReversed()
    .flatMap(({ kind, forms }) => [...forms, kind].map((form) => [form.toLowerCase(), kind] as const)),
);

/** The list items of the file; `bodyAt` is where the text behind its front matter begins. */
export function writtenWords(
  file: string,
  text: string,
  bodyAt = 0,
): { readonly words: readonly WrittenWord[]; readonly problems: readonly Problem[] } {
  const words: WrittenWord[] = [];
  const problems: Problem[] = [];
  const items = readNoteTree(text, bodyAt).pieces.flatMap((piece) => (piece.kind === "item" ? withInner(piece) : []));
  for (const { text: item, line, column } of items) {
    const place: Place = { file, line, column };
    const [, word = "", means = ""] = /^([^:]*):(.*)$/.exec(item) ?? [];
    const said = { word: unquoted(word), means: unquoted(means).replace(/\.$/, ""), place };
    if (normaliseName(said.word) !== "" && normaliseName(said.means) !== "") words.push(said);
    else {
      problems.push(
        problem(
          "words/not-read",
          place,
          `"${item}" is no word with its meaning, so it was passed over.`,
          'Write a word, a colon and what it means: "rasps: raspberries".',
        ),
      );
    }
  }
  return { words, problems };
}

function withInner(item: ItemPiece): readonly ItemPiece[] {
  return [...(item.text === "" ? [] : [item]), ...item.items.flatMap(withInner)];
}

function unquoted(text: string): string {
  return text
    .trim()
    .replace(/^["“”‘’']+|(?<!["“”‘’'])["“”‘’']+$/g, "")
    .trim();
}

/** What the words mean in a garden. `names` has not learned them yet. */
export function ownWords(
  written: readonly WrittenWord[],
  names: Names,
): { readonly words: readonly OwnWord[]; readonly problems: readonly Problem[] } {
  const words: OwnWord[] = [];
  const problems: Problem[] = [];
  const known = new Map<string, OwnWord>();
  for (const one of written) {
    const own = ownWord(one, names);
    if (own === undefined) {
      problems.push(unknownMeaning(one, names));
      continue;
    }
    const key = `${normaliseName(one.word)} ${"kind" in own.means ? "verb" : ""}`;
    const first = known.get(key);
    if (first !== undefined && JSON.stringify(first.means) !== JSON.stringify(own.means)) {
      problems.push(
        problem(
          "words/twice",
          one.place,
          `"${one.word}" has another meaning in line ${first.place.line}, which counts.`,
          "Keep the line that is right.",
        ),
      );
    }
    if (first !== undefined) continue;
    known.set(key, own);
    words.push(own);
    const other = otherNameOf(own, names);
    if (other !== undefined) {
      problems.push(
        problem(
          "words/name-of-another",
          one.place,
          `"${one.word}" is a name of ${other} as well, and may be taken for that.`,
          "Choose another word for one of them.",
        ),
      );
    }
  }
  return { words, problems };
}

function ownWord({ word, means, place }: WrittenWord, names: Names): OwnWord | undefined {
  for (const kind of named) {
    const id = names.find(kind, means);
    if (id !== undefined) return { word, means: { [kind]: id } as unknown as WordMeaning, place };
  }
  const kind = kinds.get(means.toLowerCase());
  if (kind === undefined) return undefined;
  const parts = wordsOf(word);
  for (let at = 1; at < parts.length; at++) {
    const crop = names.at("crop", parts, at);
    if (crop?.end !== parts.length) continue;
    return { word: word.slice(0, parts[at - 1]?.end), means: { kind, crop: crop.id }, place };
  }
  return { word, means: { kind }, place };
}

/** The title of another thing of the same kind that goes by that word; what a table calls a crop beside its name gives way. */
function otherNameOf({ word, means }: OwnWord, names: Names): string | undefined {
  for (const kind of named) {
    const id = "kind" in means ? undefined : (means as Partial<Record<NameKind, string>>)[kind];
    const other = id === undefined ? undefined : names.find(kind, word);
    if (other === undefined || other === id) continue;
    const title = names.title(kind, other);
    if (kind !== "crop" || normaliseName(title) === normaliseName(word)) return title;
  }
  return undefined;
}

function unknownMeaning({ word, means, place }: WrittenWord, names: Names): Problem {
  const near = named.map((kind) => names.nearest(kind, means)).find((name) => name !== undefined);
  return problem(
    "words/unknown-meaning",
    place,
    `"${word}" is to mean "${means}", and nothing in this garden is called that.`,
    near === undefined
      ? (didYouMean(means, kinds.keys()) ?? "Write a crop, a variety, a bed, gear, or a verb as in docs/notes.md.")
      : `Did you mean "${near}"?`,
  );
}

/** The file with one more word at its end, everything else as it is; begun where there is none yet. */
export function withOwnWord(text: string | undefined, word: string, means: string): string {
  const item = `- ${word}: ${means}`;
  if (text === undefined || text.trim() === "")
    return `What words mean in this garden: a word, a colon, its meaning.\n\n${item}\n`;
  const mark = /\r\n|\n/.exec(text)?.[0] ?? "\n";
  const lastLine =
    text
      .trimEnd()
      .split(/\r\n|\n/)
      .at(-1) ?? "";
  const gap = /^\s*[-*+] /.test(lastLine) ? "" : mark;
  return `${text}${/\n$/.test(text) ? "" : mark}${/\n\r?\n$/.test(text) ? "" : gap}${item}${mark}`;
}
