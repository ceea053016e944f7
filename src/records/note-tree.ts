/**
 * The body of a note, taken apart by its Markdown syntax tree: list items, which may be log lines, headings, and story; and
 * below an item or a paragraph the plain lines by which the person settled what it says (settled-lines.ts).
 * Knows one text and nothing else, so what it gives may be kept by the content of that text.
 */
import type { Definition, Image, ImageReference, List, ListItem, Node, Paragraph, PhrasingContent, Root } from "mdast";
import { fromMarkdown } from "mdast-util-from-markdown";
import { splitLongNote } from "./long-notes.ts";
import { deepestNesting } from "./nesting.ts";
import { type LineColumn, textPlaces } from "./text-places.ts";

/** Offsets are into the whole text of the file. */
interface Span {
  readonly from: number;
  readonly to: number;
}

/** A list item that begins with "=": what the line above it says, settled by the person. */
export interface SettledLine extends Span, LineColumn {
  /** Without the mark. */
  readonly text: string;
  /** Plain texts of what stands below it. */
  readonly more: readonly string[];
}

/** A list item: a candidate log line. */
export interface ItemPiece extends Span, LineColumn {
  readonly kind: "item";
  /** Where its first paragraph ends, and on which line. */
  readonly wordsTo: number;
  readonly lastLine: number;
  /** It begins with "=" itself, and no item or paragraph stands above it. */
  readonly isMark?: true;
  readonly settled?: readonly SettledLine[];
  /** Plain text of its first paragraph on one line: no marks, links by their words. */
  readonly text: string;
  /** Plain texts of what stands below it in the item, an unindented sentence, nested items and further paragraphs, in order. */
  readonly more: readonly string[];
  /** Its nested items, candidates themselves when the item is no log line. */
  readonly items: readonly ItemPiece[];
}

/** Anything else: paragraphs, quotations, code, headings. */
export interface StoryPiece extends Span, LineColumn {
  readonly kind: "story";
  /** Of a heading: its level from 1 to 6 and its plain text. */
  readonly heading?: { readonly level: number; readonly text: string };
  /** Of a paragraph: its plain text on one line. */
  readonly paragraph?: string;
  /** The lines it was written in, where there are several. */
  readonly lines?: readonly ParagraphLine[];
  /** Where its own words end, and on which line; `to` is the end of what settles them. */
  readonly wordsTo: number;
  readonly lastLine: number;
  readonly settled?: readonly SettledLine[];
}

export interface ParagraphLine extends LineColumn {
  readonly text: string;
}

export interface LinkedFile extends LineColumn {
  /** Offset into the whole text of the file. */
  readonly from: number;
  /** As written: "../photos/long-bed/gate/2026-05-16.jpg". */
  readonly address: string;
  /** What stands there in its place: the description of an image, the words of a link. */
  readonly words?: string;
}

export interface NoteTree {
  readonly pieces: readonly (ItemPiece | StoryPiece)[];
  /** Images and links in the note that are no web addresses, in order. */
  readonly linked: readonly LinkedFile[];
  /** Places of parts that could not be taken apart and stand as story. */
  readonly unparsed: readonly LineColumn[];
}

/** `from` is the offset at which the body begins. */
export function readNoteTree(text: string, from: number): NoteTree {
  const placeAt = textPlaces(text);
  const pieces: (ItemPiece | StoryPiece)[] = [];
  const linked: LinkedFile[] = [];
  const unparsed: LineColumn[] = [];
  for (const section of splitLongNote(text, from)) {
    // The parser passes over one byte-order mark at the front and does not count it.
    const base = text.charCodeAt(section.from) === 0xfeff ? section.from + 1 : section.from;
    const root = section.readable ? parse(text.slice(section.from, section.to)) : undefined;
    if (root === undefined) {
      unparsed.push(placeAt(section.from));
      const place = placeAt(section.from);
      const { from, to } = section;
      pieces.push({ kind: "story", from, to, wordsTo: to, lastLine: place.line, ...place });
      continue;
    }
    const reader = { text, base, placeAt, linked };
    for (const node of root.children) {
      if (node.type === "list") {
        for (const item of itemsOf(node, reader)) addItem(pieces, item);
      } else {
        const heading = node.type === "heading" ? { level: node.depth, text: plainText(node.children) } : undefined;
        const paragraph =
          node.type === "paragraph" ? { paragraph: plainText(node.children), ...linesOf(node, reader) } : undefined;
        const span = spanOf(node, reader);
        const lastLine = placeAt(span.to).line;
        pieces.push({ kind: "story", wordsTo: span.to, lastLine, ...span, ...(heading && { heading }), ...paragraph });
      }
      collectLinks(node, root, reader);
    }
  }
  return { pieces, linked, unparsed };
}

/** A paragraph of several lines, as people without hyphens write a note a line; undefined of one line. */
function linesOf(
  paragraph: Paragraph,
  { base, placeAt }: Reader,
): { readonly lines: readonly ParagraphLine[] } | undefined {
  const said = rawText(paragraph.children).split("\n");
  const first = placeAt(base + offsetOf(paragraph));
  const last = placeAt(base + (paragraph.position?.end.offset ?? 0));
  // Where breaks and source lines differ, which line is which is not known.
  if (said.length === 1 || last.line - first.line + 1 !== said.length) return undefined;
  return {
    lines: said.map((text, at) => ({ text: text.trim(), line: first.line + at, column: at === 0 ? first.column : 1 })),
  };
}

interface Reader {
  readonly text: string;
  /** Offset of the parsed section in the text. */
  readonly base: number;
  readonly placeAt: (offset: number) => LineColumn;
  readonly linked: LinkedFile[];
}

/** Lists in lists in lists: more levels than this are nothing a person wrote as a note. */
const deepest = 100;

/** Undefined when the text is nested so deep that reading it, which goes level by level, would run out of room. */
function parse(markdown: string): Root | undefined {
  if (deepestNesting(markdown) > deepest) return undefined;
  try {
    const root = fromMarkdown(markdown);
    return goesDeeper(root, deepest) ? undefined : root;
  } catch (error) {
    // The parser itself runs out of room at some thousand levels.
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

function goesDeeper(node: Node, levels: number): boolean {
  const { children } = node as Partial<Root>;
  return children !== undefined && (levels === 0 || children.some((child) => goesDeeper(child, levels - 1)));
}

function itemsOf(list: List, reader: Reader): ItemPiece[] {
  const items: ItemPiece[] = [];
  for (const item of list.children) addItem(items, itemPiece(item, reader));
  return items;
}

/** One that begins with "=" belongs to the item or paragraph it stands below; without one it stays an item. */
function addItem(pieces: (ItemPiece | StoryPiece)[], item: ItemPiece): void {
  const above = pieces.at(-1);
  const settled = settledLine(item);
  if (settled === undefined || above === undefined || !maySettle(above)) pieces.push(item);
  else pieces[pieces.length - 1] = { ...above, to: item.to, settled: [...(above.settled ?? []), settled] };
}

function maySettle(piece: ItemPiece | StoryPiece): boolean {
  return piece.kind === "item" ? piece.isMark === undefined : piece.paragraph !== undefined;
}

function settledLine({ isMark, text, more, from, to, line, column }: ItemPiece): SettledLine | undefined {
  return isMark && { text: text.slice(1).trim(), more, from, to, line, column };
}

/** "= planted 12 leeks" settles; "=> next year", "== leeks ==" and "\\= leeks" are people's own marks. */
function settles({ children: [first] }: ListItem, { text, base }: Reader): boolean {
  return first?.type === "paragraph" && /^=(?![=>])[ \t]*\S/.test(text.slice(base + offsetOf(first)));
}

function itemPiece(item: ListItem, reader: Reader): ItemPiece {
  const [first, ...below] = item.children;
  const says = first?.type === "paragraph" ? first : undefined;
  const rest = says ? below : item.children;
  const span = spanOf(item, reader);
  const [text = "", ...after] = says ? withoutSentenceBelow(says, reader) : [];
  const inner = rest.flatMap((node) => (node.type === "list" ? itemsOf(node, reader) : []));
  // Those that stand first below its words settle them; later ones have an item of their own above them.
  const others = inner.findIndex((one) => settledLine(one) === undefined);
  const settled = (others < 0 ? inner : inner.slice(0, others)).flatMap((one) => settledLine(one) ?? []);
  const wordsTo = says === undefined ? span.from : spanOf(says, reader).to;
  return {
    kind: "item",
    text,
    more: [...after, ...rest.flatMap((node) => textsOf(node, reader))],
    items: inner.slice(settled.length),
    wordsTo,
    lastLine: reader.placeAt(wordsTo).line,
    ...(settles(item, reader) && { isMark: true as const }),
    ...(settled.length > 0 && { settled }),
    ...span,
    ...(says?.position && reader.placeAt(reader.base + offsetOf(says))),
  };
}

/** A line that ends like this goes on in the next one. */
const goesOn = /(?:[,;&+×–-]|\b(?:in|into|from|to|of|on|at|and|or|with|by|near|under|the|an?|for|between|\d+))$/i;

/**
 * Markdown takes an unindented line right below a list item into the item. Editors that wrap long lines do the same, so
 * only a line that begins a sentence of its own is set apart: "- sowed chard in North Bed", then "Wet and windy."
 */
function withoutSentenceBelow(paragraph: Paragraph, { text, base }: Reader): readonly string[] {
  const said = rawText(paragraph.children).split("\n");
  if (said.length === 1) return [oneLine(said)];
  const { start, end } = paragraph.position ?? {};
  const written = text.slice(base + (start?.offset ?? 0), base + (end?.offset ?? 0)).split(/\r\n?|\n/);
  const below = said.findIndex((line, at) => {
    const indent = /^[ \t]*/.exec(written[at] ?? "")?.[0].length ?? 0;
    const apart = at > 0 && indent + 1 < (start?.column ?? 1) && /^\p{Lu}/u.test(line.trim());
    return apart && !goesOn.test(said[at - 1]?.trim() ?? "");
  });
  return below < 0 || written.length !== said.length
    ? [oneLine(said)]
    : [oneLine(said.slice(0, below)), oneLine(said.slice(below))];
}

function oneLine(lines: readonly string[]): string {
  return lines.join(" ").replace(/\s+/g, " ").trim();
}

function spanOf(node: Node, { base, placeAt }: Reader): Span & LineColumn {
  const from = base + offsetOf(node);
  return { from, to: base + (node.position?.end.offset ?? 0), ...placeAt(from) };
}

function offsetOf(node: Node): number {
  return node.position?.start.offset ?? 0;
}

/** Plain texts of the paragraphs, items and code below a list item, without what settles a line. */
function textsOf(node: ListItem["children"][number], reader: Reader): string[] {
  if (node.type === "paragraph" || node.type === "heading")
    return [plainText(node.children)].filter((text) => text !== "");
  if (node.type === "list" || node.type === "blockquote") {
    return node.children.flatMap((child) => {
      if (child.type !== "listItem") return textsOf(child, reader);
      return settles(child, reader) ? [] : child.children.flatMap((inner) => textsOf(inner, reader));
    });
  }
  return "value" in node && node.type === "code" ? [node.value] : [];
}

/** Words on one line: links and emphasis by their text, images by their description, HTML left out. */
function plainText(nodes: readonly PhrasingContent[]): string {
  return oneLine([rawText(nodes)]);
}

function rawText(nodes: readonly PhrasingContent[]): string {
  let text = "";
  for (const node of nodes) {
    if (node.type === "text" || node.type === "inlineCode") text += node.value;
    else if (node.type === "break") text += "\n";
    else if ("children" in node) text += rawText(node.children as readonly PhrasingContent[]);
    else if ("alt" in node) text += node.alt ?? "";
  }
  return text;
}

function collectLinks(node: Node, root: Root, reader: Reader): void {
  const address = addressOf(node, root);
  if (address !== undefined && !/^([a-z][a-z0-9+.-]*:|\/\/|#|$)/i.test(address)) {
    const words = "alt" in node ? (node as Image).alt : plainText((node as Paragraph).children ?? []);
    const from = reader.base + offsetOf(node);
    reader.linked.push({ address, from, ...(words && { words }), ...reader.placeAt(from) });
  }
  for (const child of (node as Partial<Root>).children ?? []) collectLinks(child, root, reader);
}

function addressOf(node: Node, root: Root): string | undefined {
  if (node.type === "image" || node.type === "link") return (node as Image).url;
  if (node.type !== "imageReference" && node.type !== "linkReference") return undefined;
  const wanted = (node as ImageReference).identifier;
  return root.children.find((child): child is Definition => child.type === "definition" && child.identifier === wanted)
    ?.url;
}
