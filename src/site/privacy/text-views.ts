/**
 * A file's text as a reader, a parser or a patient stranger would come to see it. The same words may stand in a page as
 * they are, as entities, escaped inside JSON or a script, percent-encoded in an address, or cut up by tags; each way of
 * undoing that is one view, and what must not be said must stand in none of them.
 */

export interface TextViews {
  /** Views in which numbers are looked for: words may run together in them. */
  readonly forNumbers: readonly string[];
  /** Views in which sentences are looked for. */
  readonly forWords: readonly string[];
}

export function textViews(raw: string): TextViews {
  const plain = decoded(raw);
  const spaced = decoded(withoutTags(raw));
  // Markup that was itself escaped: a feed's entry, a page inside JSON.
  const unwrapped = withoutTags(plain);
  return {
    forNumbers: [...new Set([plain, spaced, unwrapped, decoded(withoutTags(joined(raw))), withoutTags(joined(plain))])],
    forWords: [...new Set([plain, spaced, unwrapped])],
  };
}

/** What a page shows as text, block by block: no scripts, styles, drawings or attributes. */
export function shownText(html: string): string {
  const words = html.replace(/<(script|style|svg)\b[^>]*>[\s\S]*?<\/\1\s*>/gi, "\n");
  return decoded(joined(words).replace(/<[^<>]{0,20000}>/g, "\n"));
}

/** The text without the numbers that draw: outlines, transforms and sizes of SVG. Where a lone number means nothing. */
export function withoutDrawings(raw: string): string {
  return raw.replace(
    /\s(?:d|points|transform|viewBox|[xy][12]?|[cfrd][xy]|r|width|height|offset|stroke-\w+|font-size)=(?:"[^"]*"|'[^']*')/g,
    " ",
  );
}

function withoutTags(text: string): string {
  return text.replace(/<[^<>]{0,20000}>/g, " ");
}

/** Without the tags that stand within a word; two cells of a table are not one number. */
function joined(text: string): string {
  return text.replace(
    /<\/?(?:a|b|bdi|code|em|font|i|ins|mark|q|s|small|span|strong|sub|sup|tspan|u|wbr)(?:\s[^<>]{0,20000})?>|<!--[^<>]*-->/gi,
    "",
  );
}

/** Undoes entities, escapes and percent-encoding, twice for what was escaped twice, and drops marks nobody sees. */
function decoded(text: string): string {
  const once = undo(text);
  const twice = once === text ? once : undo(once);
  // Soft hyphens, zero-width characters, direction marks (all of class Cf) and variation selectors.
  return twice.normalize("NFKC").replace(/\p{Cf}|\p{Variation_Selector}/gu, "");
}

function undo(text: string): string {
  let result = text;
  if (result.includes("&")) result = result.replace(/&(?:#(\d{1,7})|#x([0-9a-f]{1,6})|([a-z]{2,8}));?/gi, entity);
  if (result.includes("\\"))
    result = result.replace(/\\(?:u\{([0-9a-f]{1,6})\}|u([0-9a-f]{4})|x([0-9a-f]{2})|([nrt"'/\\]))/gi, escaped);
  if (result.includes("%")) result = result.replace(/(?:%[0-9a-f]{2})+/gi, percent);
  return result;
}

const named: ReadonlyMap<string, string> = new Map(
  Object.entries({
    amp: "&",
    lt: "<",
    gt: ">",
    quot: '"',
    apos: "'",
    nbsp: " ",
    ensp: " ",
    emsp: " ",
    thinsp: " ",
    deg: "°",
    prime: "′",
    Prime: "″",
    rsquo: "’",
    lsquo: "‘",
    rdquo: "”",
    ldquo: "“",
    minus: "−",
    ndash: "–",
    mdash: "—",
    hyphen: "-",
    period: ".",
    comma: ",",
    num: "#",
    sol: "/",
    colon: ":",
    semi: ";",
    shy: "",
    zwnj: "",
    zwj: "",
    hellip: "…",
  }),
);

function entity(whole: string, decimal?: string, hexadecimal?: string, name?: string): string {
  if (name !== undefined) return named.get(name) ?? named.get(name.toLowerCase()) ?? letterWithAccent(name) ?? whole;
  return character(decimal === undefined ? Number.parseInt(hexadecimal ?? "", 16) : Number(decimal)) ?? whole;
}

/** "eacute" is é: words are compared without accents, so the letter is enough. */
function letterWithAccent(name: string): string | undefined {
  return /^([a-z])(?:acute|grave|circ|uml|tilde|cedil|ring|slash|caron)$/i.exec(name)?.[1];
}

function escaped(whole: string, long?: string, short?: string, byte?: string, single?: string): string {
  if (single !== undefined) return /[nrt]/i.test(single) ? " " : single;
  return character(Number.parseInt(long ?? short ?? byte ?? "", 16)) ?? whole;
}

function percent(whole: string): string {
  try {
    return decodeURIComponent(whole);
  } catch {
    return whole;
  }
}

function character(code: number): string | undefined {
  return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : undefined;
}
