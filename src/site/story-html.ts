/**
 * A person's Markdown as HTML that cannot do anything: no scripts, no pictures from elsewhere, no links but to the web
 * and to mail. HTML written into the Markdown is shown as the text it is; HTML comments are remarks to oneself and
 * vanish.
 */
import type { Element, ElementContent, Root, RootContent } from "hast";
import type { Html, Parents } from "mdast";
import rehypeSanitize, { defaultSchema } from "rehype-sanitize";
import rehypeStringify from "rehype-stringify";
import remarkParse from "remark-parse";
import remarkRehype from "remark-rehype";
import { unified } from "unified";
import { deepestNesting } from "../records/index.ts";
import { escapeHtml } from "./escape-html.ts";
import { DIRECTION_CONTROLS } from "./without-direction-controls.ts";

/** Levels of nesting that a person could mean; what lies deeper is shown as plain text. */
const DEEPEST = 40;

/** Characters of a text that is taken apart; the time for it grows with the square of its length. */
const LONGEST = 262_144;

/** Stories stand under headings of the second level. */
const TOP_HEADING = 3;

const writer = unified()
  .use(remarkRehype, {
    handlers: { html: (_: unknown, node: Html, parent: Parents | undefined) => htmlAsText(node, parent) },
  })
  .use(() => quietLinks)
  .use(() => steppedHeadings)
  .use(rehypeSanitize, {
    ...defaultSchema,
    tagNames: (defaultSchema.tagNames ?? []).filter((name) => !["img", "picture", "source", "input"].includes(name)),
    protocols: { ...defaultSchema.protocols, href: ["http", "https", "mailto"] },
  })
  .use(rehypeStringify);

/** Markdown to HTML whose top headings are `h3`; empty when the Markdown says nothing. */
export function storyHtml(markdown: string): string {
  const known = written.get(markdown);
  if (known !== undefined) return known;
  if (written.size >= MOST_KEPT) written.clear();
  const html = writtenOut(markdown);
  written.set(markdown, html);
  return html;
}

/** A story stands on several pages of both sites, and on them again after every save of a watched garden. */
const written = new Map<string, string>();
const MOST_KEPT = 20_000;

function writtenOut(markdown: string): string {
  const clean = markdown.replace(DIRECTION_CONTROLS, "");
  // Most records have no story, and a parser takes its time to find none.
  if (clean.trim() === "") return "";
  if (clean.length > LONGEST || deepestNesting(clean) > DEEPEST) return `<p>${escapeHtml(clean.trim())}</p>`;
  return writer.stringify(writer.runSync(unified().use(remarkParse).parse(clean))).trim();
}

function htmlAsText(node: Html, parent: Parents | undefined): Element | undefined {
  const value = node.value.replace(/<!--[\s\S]*?(?:-->|$)/gu, "").trim();
  const tagName = parent !== undefined && ["root", "blockquote", "listItem"].includes(parent.type) ? "p" : "span";
  return value === "" ? undefined : { type: "element", tagName, properties: {}, children: [{ type: "text", value }] };
}

/** A link inside the records folder leads nowhere on a page: only its words stay. */
function quietLinks(tree: Root): void {
  const walk = (parent: Root | Element): void => {
    parent.children = parent.children.flatMap((child: RootContent): ElementContent[] => {
      if (child.type === "element") {
        walk(child);
        if (child.tagName === "a" && !/^(?:https?:\/\/|mailto:)/iu.test(String(child.properties.href ?? "")))
          return child.children;
      }
      return [child as ElementContent];
    });
  };
  walk(tree);
}

/** No heading may skip a level, whatever levels the Markdown used. */
function steppedHeadings(tree: Root): void {
  const headings: Element[] = [];
  const walk = (parent: Root | Element): void => {
    for (const child of parent.children) {
      if (child.type !== "element") continue;
      if (/^h[1-6]$/u.test(child.tagName)) headings.push(child);
      walk(child);
    }
  };
  walk(tree);
  const used = [...new Set(headings.map(({ tagName }) => tagName))].sort();
  let previous = TOP_HEADING - 1;
  for (const heading of headings) {
    const level = Math.min(TOP_HEADING + used.indexOf(heading.tagName), previous + 1, 6);
    heading.tagName = `h${level}`;
    previous = level;
  }
}
