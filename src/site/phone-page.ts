/**
 * The frame of the pages for a phone in a garden: a head whose policy allows by their hashes what stands in the page, its style, its
 * data and its script. What reads a line while it is typed is by far the most of it: pages of a site share it as one file beside
 * them, and a page that is a file of its own carries it.
 */
import { createHash } from "node:crypto";
import { preparedText } from "../store/index.ts";
import { escapeHtml } from "./escape-html.ts";

/** Path of the reader in the private site. */
export const READER = "reader.js";

export interface PhonePage {
  readonly title: string;
  readonly style: string;
  /** Name of the script among those made ready. */
  readonly script: string;
  /** Address of the reader; a page that is a file of its own has none and carries it. */
  readonly reader?: string | undefined;
  /** For the script, with the id of its element. */
  readonly data: { readonly id: string; readonly value: unknown };
  /** What the page may ask for beside what stands in it: "img-src data: 'self'". */
  readonly mayAsk: readonly string[];
  /** How the window behaves, beside its width. */
  readonly window?: string | undefined;
  readonly name?: string | undefined;
  readonly body: string;
}

export function readerScript(): string {
  return preparedText("phone/reader.js");
}

/** A whole HTML document. */
export function phonePage({ title, style, reader, data, mayAsk, window, name, body, ...page }: PhonePage): string {
  const script = preparedText(`phone/${page.script}.js`);
  const carried = reader === undefined ? readerScript() : undefined;
  const policy = [
    "default-src 'none'",
    `script-src ${hashOf(script)} ${carried === undefined ? "'self'" : hashOf(carried)}`,
    `style-src ${hashOf(style)}`,
    "font-src data:",
    ...mayAsk,
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1, viewport-fit=cover${window === undefined ? "" : `, ${window}`}">
<title>Private · ${escapeHtml(title)}</title>
<meta name="robots" content="noindex, nofollow">
<meta name="referrer" content="no-referrer">
<meta name="color-scheme" content="light dark">
<meta name="format-detection" content="telephone=no">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<style>${style}</style>
</head>
<body${name === undefined ? "" : ` class="${name}"`}>
${body}
<script type="application/json" id="${data.id}">${json(data.value)}</script>
${carried === undefined ? `<script src="${escapeHtml(reader ?? "")}"></script>` : `<script>${carried}</script>`}
<script type="module">${script}</script>
</body>
</html>
`;
}

/** JSON that can stand in a script element: nothing in it ends the element. */
function json(data: unknown): string {
  return JSON.stringify(data).replaceAll("<", "\\u003c");
}

function hashOf(content: string): string {
  return `'sha256-${createHash("sha256").update(content).digest("base64")}'`;
}
