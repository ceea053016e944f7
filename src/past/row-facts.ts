/** What one row of a table says, cell by cell; a cell that cannot be read for sure is told, and nothing is taken from it. */
import type { Count, Day } from "../model.ts";
import {
  type ColumnMeaning,
  type Names,
  obtainedCalled,
  saysNothing,
  type TableColumn,
  type TableRow,
  yesOrNo,
} from "../records/index.ts";
import { type DaysContext, readDay } from "./cell-days.ts";
import type { Told } from "./new-file.ts";

export interface RowFacts {
  readonly line: number;
  /** As written, without quotation marks. */
  readonly variety?: string | undefined;
  readonly crop?: string | undefined;
  readonly botanical?: string | undefined;
  readonly source?: string | undefined;
  readonly obtained?: string | undefined;
  readonly year?: number | undefined;
  readonly link?: string | undefined;
  readonly sayAs?: string | undefined;
  readonly alsoSpelled?: string | undefined;
  readonly maturity?: string | undefined;
  readonly perennial?: boolean | undefined;
  readonly private: boolean;
  readonly notes: readonly string[];
  readonly ordered?: Day | undefined;
  /** With its currency. */
  readonly price?: string | undefined;
  readonly sown?: Day | undefined;
  readonly sownIn?: string | undefined;
  readonly numberSown?: Count | undefined;
  readonly planted?: Day | undefined;
  readonly bed?: string | undefined;
  readonly number?: Count | undefined;
  readonly spot?: string | undefined;
  readonly told: readonly Told[];
}

export function factsOfRow(
  row: TableRow,
  columns: readonly TableColumn[],
  context: DaysContext & { readonly names: Names },
): RowFacts {
  const told: Told[] = [];
  const cell = (meaning: ColumnMeaning) => {
    const column = columns.find((one) => one.meaning === meaning);
    const text = row.cells[column?.at ?? -1]?.text.replace(/\s+/gu, " ") ?? "";
    return saysNothing(text) ? undefined : text;
  };
  const heading = (meaning: ColumnMeaning) => columns.find((one) => one.meaning === meaning)?.heading ?? meaning;
  const tell = (meaning: ColumnMeaning, why: string) =>
    void told.push({ line: row.line, what: `${heading(meaning)}: ${why}` });
  const read = <Value>(meaning: ColumnMeaning, reader: (text: string) => Value | undefined, why: string) => {
    const text = cell(meaning);
    const value = text === undefined ? undefined : reader(text);
    if (text !== undefined && value === undefined) tell(meaning, `"${text}" ${why}`);
    return value;
  };
  const day = (meaning: ColumnMeaning) => {
    const text = cell(meaning);
    if (text === undefined) return undefined;
    const said = readDay(text, context);
    if ("day" in said) return said.day;
    tell(meaning, "rough" in said ? `"${said.rough}" says no day, and a note is of a day` : said.doubt);
    return undefined;
  };
  const named = plantOf(cell("variety"), cell("crop"), context.names);
  const source = cell("source");
  // "own saved" under "source" says how and not from whom.
  const how =
    read("obtained", obtainedCalled, "is none of bought, swapped, saved, gifted and lent") ??
    obtainedCalled(source ?? "");
  const mark = cell("private");
  return {
    line: row.line,
    ...named,
    botanical: cell("botanical"),
    source: obtainedCalled(source ?? "") === undefined ? source : undefined,
    obtained: how,
    year: read("year", yearIn, "is no year"),
    link: read("link", linkIn, "is no web address with https:// at its front"),
    sayAs: cell("say it as"),
    alsoSpelled: cell("also spelled"),
    maturity: read("days to maturity", maturityIn, "is no number of days"),
    perennial: read("perennial", yesOrNo, "is neither yes nor no"),
    private: mark !== undefined && yesOrNo(mark) !== false,
    notes: columns.flatMap(({ meaning, at, heading: head }) => {
      const text = meaning === "notes" ? (row.cells[at]?.text ?? "") : "";
      return text === "" ? [] : [/^(?:notes?|comments?|remarks?)$/i.test(head) ? text : `${head}: ${text}`];
    }),
    ordered: day("ordered"),
    price: read("price", (text) => priceIn(text, heading("price")), "says no currency"),
    sown: day("sown"),
    sownIn: cell("sown in"),
    numberSown: read("number sown", countIn, "is no number of plants or seeds"),
    planted: day("planted"),
    bed: cell("bed"),
    number: read("number", countIn, "is no number of plants or seeds"),
    spot: cell("spot"),
    // Of a row that names no plant, such as a sum, no single cell is worth a word.
    told: named.variety === undefined && named.crop === undefined ? [] : told,
  };
}

/** Words of a crop's name. */
const MOST_WORDS = 6;

/** The plant of a row. Where one cell holds crop and name ("Tomato ‘Sungold’", "Beetroot - Boltardy"), they are taken apart. */
function plantOf(
  written: string | undefined,
  crop: string | undefined,
  names: Names,
): { readonly variety?: string; readonly crop?: string } {
  const plain = (text: string) => text.replace(/^["'‘’“”]+|(?<!["'‘’“”])["'‘’“”]+$/g, "").trim();
  if (written === undefined) return crop === undefined ? {} : { crop };
  if (crop !== undefined) return { variety: plain(written), crop };
  const [, before, name] = /^([^'‘“"–:,-]+?) ?(?:[–:,-] |['‘“"])(.+)$/.exec(written) ?? [];
  if (before !== undefined && name !== undefined && names.find("crop", before) !== undefined)
    return { variety: plain(name), crop: before };
  const words = plain(written).split(" ");
  for (let from = Math.max(1, words.length - MOST_WORDS); from < words.length; from += 1) {
    const last = words.slice(from).join(" ");
    if (names.find("crop", last) !== undefined) return { variety: plain(written), crop: last };
  }
  // A crop's name alone is no variety's.
  if (names.find("crop", plain(written)) !== undefined) return { crop: plain(written) };
  return { variety: plain(written) };
}

function yearIn(text: string): number | undefined {
  const year = Number(/^(?:sow by |packed |pkt )?(\d{4})$/i.exec(text)?.[1]);
  return year >= 1800 && year <= 2199 ? year : undefined;
}

function linkIn(text: string): string | undefined {
  const address = URL.parse(text);
  return address?.protocol === "https:" || address?.protocol === "http:" ? text : undefined;
}

function maturityIn(text: string): string | undefined {
  return /^(?:about )?\d{1,4}(?: ?days?)?(?: (?:from|after) (?:sowing|planting|transplanting))?$/i.test(text)
    ? text
    : undefined;
}

/** "12", "about 12", "24 seeds": a weight, a tray or "2 x 6" is no number of plants. */
function countIn(text: string): Count | undefined {
  const [, about, digits] =
    /^(about |c\.? ?|~ ?)?(\d{1,6})(?: (?:plants?|seeds?|sets?|bulbs?|tubers?|cloves?|corms?))?$/i.exec(text) ?? [];
  const value = Number(digits);
  return value > 0 ? { value, approx: about !== undefined } : undefined;
}

/** A price with the currency of its own or of the column's heading. */
function priceIn(text: string, heading: string): string | undefined {
  if (!/\d/.test(text)) return undefined;
  if (/[£$€]/.test(text)) return text;
  const sign = /[£$€]/.exec(heading)?.[0];
  return sign === undefined || !/^\d+(?:[.,]\d{1,2})?$/.test(text) ? undefined : `${sign}${text}`;
}
