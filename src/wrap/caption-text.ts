/**
 * The text of one caption taken apart: what is spoken, where each letter stands in the file's own text, and what was
 * marked as no speech. Tags and entities follow WebVTT (W3C, webvtt1, section 4.2.2 and 6.4); overrides in braces are
 * those that SubRip files carry.
 */

/** What viewers see, with where each piece of it stands in the caption's own text. */
export interface ShownText {
  readonly text: string;
  /** Pieces of `text` in order: from `at` on, letters stand in the file from `raw` on. The last one marks the end. */
  readonly pieces: readonly Piece[];
  /** Times written inside the caption, by offset in `text`. */
  readonly times: readonly { readonly index: number; readonly stamp: string }[];
  /** Sounds and music that no one says, as written: their letters are blanks in `text`. */
  readonly sounds: readonly string[];
}

interface Piece {
  readonly at: number;
  readonly raw: number;
  /** Length in the file of one letter of this piece when it is a character by its name or number, else 1. */
  readonly unit: number;
}

/** Where the letter at an offset of the shown text begins in the file, and where it ends. */
export function placeInFile({ pieces }: ShownText, index: number): { readonly start: number; readonly end: number } {
  let low = 0;
  let high = pieces.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >>> 1;
    if ((pieces[middle] as Piece).at <= index) low = middle;
    else high = middle - 1;
  }
  const { at, raw, unit } = pieces[low] as Piece;
  return unit === 1 ? { start: raw + index - at, end: raw + index - at + 1 } : { start: raw, end: raw + unit };
}

/** Words that describe a sound when they stand in round brackets; in square ones everything does. */
const soundWords =
  /^(?:\s*(?:loud|soft|quiet|distant|upbeat|gentle|the|a|of|and)\b)*\s*(?:laugh\w*|music|applause|cheer\w*|chuckl\w*|sigh\w*|cough\w*|sneez\w*|snif\w*|inaudible|indistinct|unintelligible|silence|wind|rain|thunder|birds?|birdsong|gulls?|dogs?|barking|footsteps|creak\w*|engine|traffic|phone|whistl\w*|hum\w*|sing\w*|gasps?|groans?|clears|clap\w*|bang\w*|crow\w*|cock)\b/i;

/** Named characters that captions use; the rest of HTML's long list stays as it is written. */
const entities: ReadonlyMap<string, string> = new Map(
  Object.entries({
    amp: "&",
    lt: "<",
    gt: ">",
    quot: '"',
    apos: "'",
    nbsp: " ",
    lrm: "",
    rlm: "",
    hellip: "…",
    ndash: "–",
    mdash: "—",
    lsquo: "‘",
    rsquo: "’",
    ldquo: "“",
    rdquo: "”",
  }),
);

/** Accents as HTML names them after their letter: "eacute". */
const accents: ReadonlyMap<string, string> = new Map(
  Object.entries({
    acute: "\u0301",
    grave: "\u0300",
    circ: "\u0302",
    uml: "\u0308",
    tilde: "\u0303",
    cedil: "\u0327",
    ring: "\u030a",
  }),
);

function namedSign(name: string): string | undefined {
  const accent = accents.get(name.slice(1));
  return accent === undefined ? entities.get(name.toLowerCase()) : `${name[0]}${accent}`.normalize("NFC");
}

/** One construct that is not plain text: a script, a time, a tag, a sign by its name or number. Unclosed tags run to the end, as the specification's tokenizer has it. */
const construct =
  /<(script|style)\b[^>]*>[\s\S]*?(?:<\/\1\s*>|$)|<((?:\d+:)?\d+:\d+[.,]\d+)>|<(\/?[a-zA-Z][^<>]*)(?:>|$)|<!--[\s\S]*?(?:-->|$)|\{\\[^}]{0,200}\}|&(?:([a-zA-Z]+)|#(\d{1,7}|[xX][\da-fA-F]{1,6}));/g;

export function shownText(raw: string): ShownText {
  const pieces: Piece[] = [];
  const times: { index: number; stamp: string }[] = [];
  let letters = "";
  let from = 0;
  const keep = (to: number) => {
    if (to > from) {
      pieces.push({ at: letters.length, raw: from, unit: 1 });
      letters += raw.slice(from, to);
    }
  };
  if (/[<&{]/.test(raw)) {
    for (const found of raw.matchAll(construct)) {
      keep(found.index);
      from = found.index + found[0].length;
      const [, , stamp, tag, entity, code] = found;
      if (stamp !== undefined) times.push({ index: letters.length, stamp });
      const sign =
        tag !== undefined && /^(?:br|p|div|li)\b/i.test(tag)
          ? " "
          : entity !== undefined
            ? (namedSign(entity) ?? found[0])
            : code !== undefined
              ? (signOf(code) ?? found[0])
              : "";
      if (sign !== "") {
        pieces.push({ at: letters.length, raw: found.index, unit: sign === found[0] ? 1 : found[0].length });
        letters += sign;
      }
    }
  }
  keep(raw.length);
  pieces.push({ at: letters.length, raw: raw.length, unit: 1 });
  const { text, sounds } = withoutSounds(letters);
  return { text, pieces, times, sounds };
}

function signOf(code: string): string | undefined {
  const point = /^x/i.test(code) ? Number.parseInt(code.slice(1), 16) : Number(code);
  return point > 0 && point <= 0x10ffff && !(point >= 0xd800 && point <= 0xdfff)
    ? String.fromCodePoint(point)
    : undefined;
}

/** Blanks out sounds, music and who is speaking, so that offsets stay true. */
function withoutSounds(text: string): { readonly text: string; readonly sounds: readonly string[] } {
  if (!/[[(♪♫>:]/.test(text)) return { text, sounds: [] };
  const sounds: string[] = [];
  const blank = (found: string) => {
    const mark = found.trim();
    if (/[\p{L}\p{N}♪♫]/u.test(mark)) sounds.push(mark);
    return found.replace(/[^\n]/g, " ");
  };
  const shouted = text === text.toUpperCase();
  const spoken = text
    .replace(/\[[^\]]*(?:\]|$)/g, blank)
    .replace(/\(([^()]*)\)/g, (found, inside: string) => (soundWords.test(inside) ? blank(found) : found))
    .replace(/[♪♫][^\n♪♫]*[♪♫]?/g, blank)
    // ">> " and "WILMA:" say who speaks; where all is in capitals a colon may be anybody's.
    .replace(/^[^\S\n\r\u2028\u2029]*>>+/gm, (found) => found.replace(/[^\n]/g, " "))
    .replace(/^[^\S\n\r\u2028\u2029]*[\p{Lu}][\p{Lu} .'’-]{1,24}:(?=\s|$)/gmu, (found) =>
      shouted ? found : blank(found),
    );
  return { text: spoken, sounds };
}
