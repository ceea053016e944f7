/**
 * The head of a private page that is one file: no request to anywhere, no script, its one style sheet allowed by hash. While it is
 * served live it may also hear from where it came that there is a newer one.
 */
import { createHash } from "node:crypto";

export interface SealedWith {
  /** Carried as data. */
  readonly pictures?: boolean | undefined;
  readonly live?: boolean | undefined;
}

/** `title` is HTML; `style` is all the page has, but for its pictures. */
export function sealedHead(title: string, style: string, { pictures = false, live = false }: SealedWith = {}): string {
  const hash = createHash("sha256").update(style).digest("base64");
  const policy = `default-src 'none'; style-src 'sha256-${hash}'; font-src data:;${pictures ? " img-src data:;" : ""}${live ? " script-src 'self'; connect-src 'self';" : ""} base-uri 'none'; form-action 'none'`;
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Private · ${title}</title>
<meta name="robots" content="noindex, nofollow">
<meta name="referrer" content="no-referrer">
<meta name="color-scheme" content="light dark">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<style>${style}</style>
</head>`;
}
