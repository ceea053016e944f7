/**
 * Whether a text holds what looks like a position on Earth, wherever that is: two decimals of degrees side by side, degrees
 * with minutes however they are marked, UTM and MGRS, the national grids of Britain and Ireland, locator squares, plus
 * codes. What it means is not asked: no viewer of a garden needs it, and nobody can tell whose it is.
 */

/** The first such spelling, or undefined. */
export function coordinatesIn(written: string): string | undefined {
  if (!/\p{Nd}|point/iu.test(written)) return undefined;
  const text = plainDigits(written);
  if (!PLAUSIBLE.test(text)) return undefined;
  for (const { pattern, means } of NOTATIONS) {
    for (const found of text.matchAll(pattern)) if (means === undefined || means(found, text)) return found[0].trim();
  }
  return undefined;
}

/** What every notation below has somewhere; nearly no line of a note does, so that looking costs nothing. */
const PLAUSIBLE =
  /\d\s?[.,·]\s?\d\d|[°º˚]|\d\s?(?:d|rad)|\d\s?[NSEW](?!\p{L})|(?<!\p{L})[NSEW]\s?\d|\d{4}|\d{3}\s\d{3}|\p{Lu}{2}\d\d\p{L}|\p{Lu}\d*\+|point|['’]\d{4}/u;

interface Notation {
  readonly pattern: RegExp;
  readonly means?: (found: RegExpExecArray, text: string) => boolean;
}

/** Between the two numbers of a position stand only signs, letters of the sky, or the words for them. */
const BETWEEN =
  "[\\s,;/|:°º˚NSEWO()\\[\\]{}'\"=−–-]{1,12}?(?:(?:and|und|lat(?:itude)?|lon(?:g(?:itude)?)?|lng|x|y|north|south|east|west)[\\s,;/|:=]{0,3}){0,3}";
const SIGN = "[+−–-]?\\s?";
const DECIMAL = "\\d{1,3}\\s?[.,·]\\s?\\d{2,}(?:\\s\\d{2,})?";
const DEGREES = "\\s?(?:°|º|˚|d(?:eg(?:rees?)?)?\\b|d(?=\\d)|grad\\b)\\s?";
const MINUTES = "\\s?(?:′|'|’|‘|´|m(?:in(?:utes?)?)?\\b|m(?=\\d))\\s?";

const NOTATIONS: readonly Notation[] = [
  // 54.31234, -1.57321 and 54.31, -1.57, but not "54.35 kg, 12.10 kg" nor "0.25, 0.50".
  {
    pattern: new RegExp(`(?<![\\d.,])${SIGN}(${DECIMAL})${BETWEEN}${SIGN}(${DECIMAL})(?![\\d.]*\\d)`, "giu"),
    means: areDegrees,
  },
  // Four decimals are ten metres, and no weight or length in a garden has them.
  {
    pattern: /(?<![\d.,])\d{1,3}[.,·]\d{4,}(?![\d.])/gu,
    means: ([found]) => Number.parseFloat(found.replace(/[,·]/, ".")) <= 360,
  },
  // 54.3123 N, N 54.3123, 54.3123°, 54.3123 degrees north
  { pattern: new RegExp(`(?<![\\d.,])\\d{1,3}(?:[.·]\\d{3,}|,\\d{4,}|,\\d{3}(?=\\s?[°º˚]))${DEGREES}`, "giu") },
  { pattern: /(?<![\d.,])\d{1,3}[.,·]\d{3,}\s?[NSEW](?![\p{L}\d])|(?<![\p{L}\d])[NSEW]\s?\d{1,3}[.,·]\d{3,}/gu },
  {
    pattern:
      /(?<!\p{L})(?:lat(?:itude)?|lon(?:g(?:itude)?)?|lng|breite|länge)\.?\s?[:=]?\s?[+−–-]?\d{1,3}[.,·]\d{2,}/giu,
  },
  // 54°18'44", 54 deg 18 min, 54d18m44s
  { pattern: new RegExp(`(?<!\\d)\\d{1,3}${DEGREES}\\d{1,2}(?:[.,]\\d+)?${MINUTES}`, "giu") },
  // 54-18-44 N, 54 18 44 N, 54:18.733 N, N 54 18.733
  { pattern: /(?<![\d.-])\d{1,3}[-–:. ]\d{1,2}(?:[-–:. ]\d{1,2}(?:\.\d+)?|\.\d{2,})\s?[NSEW](?![\p{L}\d])/gu },
  { pattern: /(?<![\p{L}\d])[NSEW]\s?\d{1,3}[-–: ]\d{1,2}(?:[-–: ]\d{1,2}(?:\.\d+)?|\.\d{2,})(?!\d)/gu },
  // 54'31234 1'57321
  { pattern: /(?<!\d)\d{1,3}['’]\d{4,}[\s,;]{1,3}[−–-]?\d{1,3}['’]\d{4,}/gu },
  // 0.947928 rad
  { pattern: /(?<!\d)\d\.\d{4,}\s?rad(?:ians)?(?!\p{L})/giu },
  // 30U 592760 6019210
  {
    pattern:
      /(?<![\p{L}\d])(?:0?[1-9]|[1-5]\d|60)\s?[C-HJ-NP-X]\s{0,2}\d{6}(?:\.\d+)?\s?m?E?[\s,]{1,3}\d{6,7}(?:\.\d+)?/gu,
  },
  // 30U XF 92760 19210
  {
    pattern:
      /(?<![\p{L}\d])(?:0?[1-9]|[1-5]\d|60)\s?[C-HJ-NP-X]\s?[A-HJ-NP-Z]{2}\s?(?:\d{3}\s?\d{3}|\d{4}\s?\d{4}|\d{5}\s?\d{5})(?!\d)/gu,
  },
  // NZ 27758 91234, and the Irish O 15904 34671
  { pattern: /(?<![\p{L}\d])(?:[HJNOST][A-HJ-Z]|[A-HJ-Z])\s?(?:\d{3}\s?\d{3}|\d{4}\s?\d{4}|\d{5}\s?\d{5})(?!\d)/gu },
  // 425590 565230 and 2600000, 1200000: six or seven digits each
  { pattern: /(?<![\d.,-])\d{6,7}(?:\.\d+)?(?:\s?m?[EN])?(?:[,;/]\s?|\s)\d{6,7}(?:\.\d+)?(?![\d-])/gu },
  // IO94fh14dx
  { pattern: /(?<![\p{L}\d])[A-R]{2}\d{2}[a-x]{2}(?:\d{2}(?:[a-x]{2})?)?(?![\p{L}\d])/giu, means: isLocator },
  // 9C6W8C7G+35
  {
    pattern:
      /(?<![\p{L}\d])(?:[23456789CFGHJMPQRVWX]{4})?[23456789CFGHJMPQRVWX]{4}\+[23456789CFGHJMPQRVWX]{2,3}(?![\p{L}\d])/gu,
  },
  // 54 point 31234
  { pattern: /(?<!\d)\d{1,3}\s?point\s?(?:\d\s?){3,}/giu },
  // fifty-four point three one two
  { pattern: new RegExp(`(?<!\\p{L})(?:${numberWord()}[\\s-]){1,3}point(?:\\s${digitWord()}){3,}(?!\\p{L})`, "giu") },
];

function areDegrees([whole, one = "", other = ""]: RegExpExecArray): boolean {
  const [first, second] = [one, other].map((written) => written.replace(/\s/g, "").replace(/[,·]/, "."));
  const [a, b] = [Number(first), Number(second)];
  const decimals = (text: string | undefined) => text?.split(".")[1]?.length ?? 0;
  const fewest = Math.min(decimals(first), decimals(second));
  if (!(a <= 180 && b <= 180 && Math.min(a, b) <= 90)) return false;
  // Two decimals are prices and weights as well, unless something says which way they lie.
  if (fewest >= 4) return true;
  const isMarked =
    /[°º˚]|[NSEW](?![\p{L}])|lat|lon/u.test(whole) || /[,;\s][−–-]\s?\d/u.test(whole) || /^[−–-]/u.test(whole);
  if (fewest >= 3) return isMarked || (a > 1 && b > 0.001 && decimals(first) === decimals(second));
  return isMarked && a > 1;
}

/** "IO94fh" and not "AB12cd" of a seed packet: a pair of capitals, digits, and a pair of small letters. */
function isLocator([found]: RegExpExecArray): boolean {
  return found.length > 6 || /^[A-R]{2}\d{2}[a-x]{2}$/.test(found);
}

function numberWord(): string {
  return "(?:zero|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|minus)";
}

function digitWord(): string {
  return "(?:zero|oh|one|two|three|four|five|six|seven|eight|nine)";
}

/** Digits of every script as those of English, with the decimal signs of Arabic. */
function plainDigits(text: string): string {
  return text
    .normalize("NFKC")
    .replace(/[\u0660-\u0669\u06f0-\u06f9]/gu, (digit) => String((digit.codePointAt(0) ?? 0) & 0xf))
    .replace(/[\u0966-\u096f]/gu, (digit) => String((digit.codePointAt(0) ?? 0) - 0x966))
    .replaceAll("\u066b", ".");
}
