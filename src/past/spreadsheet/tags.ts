/** Tags of an XML part of a spreadsheet, as far as sizes and formats are told by them. The cells themselves a library reads. */

export interface Tag {
  /** Without its prefix; with a slash before it where it closes. */
  readonly name: string;
  readonly isEmpty: boolean;
  /** What stands behind the name. */
  readonly rest: string;
  /** Whether anything stands between the tag before it and this one. */
  readonly isBehindText: boolean;
}

/**
 * Every stretch from a "<" to the next ">" with no other "<" between, so that nothing which another reader takes for a tag can
 * hide within one.
 */
export function* tagsOf(xml: string): Generator<Tag> {
  for (let at = 0; ; ) {
    const end = xml.indexOf(">", at);
    if (end < 0) return;
    const start = xml.lastIndexOf("<", end);
    if (start >= at) yield tagIn(xml.slice(start + 1, end), start > at);
    at = end + 1;
  }
}

function tagIn(text: string, isBehindText: boolean): Tag {
  const isEmpty = text.endsWith("/");
  const words = isEmpty ? text.slice(0, -1) : text;
  const space = words.search(/\s/);
  const whole = space < 0 ? words : words.slice(0, space);
  const colon = whole.indexOf(":");
  const name = colon < 0 ? whole : (whole.startsWith("/") ? "/" : "") + whole.slice(colon + 1);
  return { name, isEmpty, rest: space < 0 ? "" : words.slice(space), isBehindText };
}

/** Longer tags are of no writer. */
const longestTag = 4_000;

/** The last value of each name, prefixes left away. Undefined for a tag that no writer of spreadsheets writes. */
export function attributesOf({ rest }: Tag): ReadonlyMap<string, string> | undefined {
  if (rest.length > longestTag) return undefined;
  const found = new Map<string, string>();
  // Sign by sign and never back: a tag may be made to be slow.
  for (let at = 0; ; ) {
    const equals = rest.indexOf("=", at);
    if (equals < 0) return found;
    const name = rest.slice(at, equals).trim();
    let open = equals + 1;
    while (rest[open] === " ") open += 1;
    const quote = rest[open];
    const close = quote === '"' || quote === "'" ? rest.indexOf(quote, open + 1) : -1;
    if (close < 0) return undefined;
    found.set(name.slice(name.indexOf(":") + 1), plain(rest.slice(open + 1, close)));
    at = close + 1;
  }
}

const entities: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };

function plain(value: string): string {
  if (!value.includes("&")) return value;
  return value.replace(/&(?:#(\d{1,6})|#x([0-9a-f]{1,5})|([a-z]{2,4}));/gi, (whole, digits, hex, name) => {
    if (name !== undefined) return entities[name.toLowerCase()] ?? whole;
    return String.fromCharCode(digits === undefined ? Number.parseInt(hex, 16) : Number(digits));
  });
}
