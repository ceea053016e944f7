/** Every word a page says stands in the catalogue of src/site/words: none is left in a template or in its script. */
import { readdir, readFile } from "node:fs/promises";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { parse } from "@astrojs/compiler-rs";
import ts from "typescript";
import { describe, expect, it } from "vitest";

const site = fileURLToPath(new URL("../../src/site", import.meta.url));

/** What people read or hear of an element beside its text, and what our own components take as such. */
const SAID = new Set([
  "aria-label",
  "aria-description",
  "aria-valuetext",
  "alt",
  "title",
  "placeholder",
  "label",
  "description",
  "above",
]);

/** What we look at of a template's syntax tree. */
interface Node {
  readonly type?: string;
  readonly name?: { readonly name?: string };
  readonly value?: unknown;
  readonly right?: Node;
  readonly consequent?: Node;
  readonly alternate?: Node;
  readonly children?: readonly Node[];
  readonly openingElement?: { readonly name: { readonly name?: string }; readonly attributes: readonly Node[] };
}

const NO_TEXT_YET = new Set(["CallExpression", "BinaryExpression", "MemberExpression"]);

/** Words in the text of a template, in what is said of its elements, and in the values its expressions give as text. */
function wordsIn(source: string): readonly string[] {
  const { ast } = parse(source) as unknown as { ast: { body: readonly Node[] } };
  const found: string[] = [];
  const note = (text: unknown) => {
    if (typeof text === "string" && /\p{L}{2}/u.test(text)) found.push(text.trim());
  };
  const each = (node: unknown, visit: (one: Node) => void) => {
    if (Array.isArray(node)) for (const one of node) each(one, visit);
    else if (typeof node === "object" && node !== null) visit(node);
  };
  /** Strings that an expression may give, apart from what is compared or handed to a function. */
  const strings = (node: unknown): void =>
    each(node, (one) => {
      if (one.type === "Literal") note(one.value);
      else if (one.type === "TemplateElement") note((one.value as { raw: string }).raw);
      else if (!NO_TEXT_YET.has(one.type ?? ""))
        for (const [key, value] of Object.entries(one)) if (key !== "test") strings(value);
    });
  const walk = (node: unknown, inText: boolean): void =>
    each(node, (one) => {
      if (one.type === "JSXText") note(one.value);
      for (const { name, value } of one.openingElement?.attributes ?? []) {
        if (isSaid(name?.name ?? "")) strings(value);
        else walk(value, false);
      }
      const element = one.openingElement?.name.name;
      if (element === "script" || element === "style") return;
      if (inText)
        for (const part of [one.consequent, one.alternate, one.type === "LogicalExpression" ? one.right : undefined])
          if (part?.type === "Literal" || part?.type === "TemplateLiteral") strings(part);
      for (const [key, value] of Object.entries(one))
        if (key !== "openingElement") walk(value, inText || key === "children");
    });
  walk(ast.body, true);
  return found;
}

function isSaid(attribute: string): boolean {
  return SAID.has(attribute) || /^data-(?:one|many|none|kept|lost|failed|all|said)/u.test(attribute);
}

/** Strings of TypeScript that read like a phrase: two words with a space between, or a capital and small letters. */
function phrasesIn(code: string): readonly string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node)) return;
    const text =
      ts.isStringLiteralLike(node) || ts.isTemplateHead(node) || ts.isTemplateMiddle(node) || ts.isTemplateTail(node)
        ? node.text
        : "";
    // Widths of pictures are phrases too.
    if (/\p{L}{2,} \p{L}{2,}|^\p{Lu}\p{Ll}{2,}|“/u.test(text) && !/\d(?:rem|vw)\b/u.test(text)) found.push(text);
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile("page.ts", code, ts.ScriptTarget.ESNext));
  return found;
}

const files = (await readdir(site, { recursive: true }))
  .filter((file) => file.endsWith(".astro") && path.basename(file) !== ".astro" && !file.includes("node_modules"))
  .sort();

describe("the words of pages", () => {
  it("are looked for in every component and page", () => expect(files.length).toBeGreaterThan(45));

  it.each(files)("%s carries none of its own", async (file) => {
    const source = await readFile(path.join(site, file), "utf8");
    expect(wordsIn(source)).toEqual([]);
    const code = [...source.matchAll(/^---\n(.*?)^---$|<script>(.*?)<\/script>/gmsu)].map(
      ([, front, script]) => front ?? script,
    );
    expect(code.flatMap((one) => phrasesIn(one ?? ""))).toEqual([]);
  });

  it("are found where they hide", () => {
    const hidden = [
      "<p>Leeks</p>",
      '<img alt="Leeks" />',
      "<p>{bed.now.length === 0 ? 'The bed is empty' : <b>{name}</b>}</p>",
      "{beds.map((bed) => <p aria-label={bed.isOurs ? `Plan of it` : bed}>{bed}</p>)}",
      "<p>{link !== undefined && 'A time opens the film there. '}{name}</p>",
      '<Plate title="Beds" />',
      '<p role="status" data-none="Nothing was found."></p>',
    ];
    for (const template of hidden) expect(wordsIn(template), template).toHaveLength(1);
    expect(wordsIn('<p class="label">{words.bed.growth} · {index > 0 && ", "}</p>')).toEqual([]);
    expect(phrasesIn('tell("The photo could not be saved."); box.querySelector(".names");')).toHaveLength(1);
  });
});
