/**
 * What the columns of a gardener's table hold, by the words at their heads. A heading that is in no row of the table below
 * is matched by the person alone.
 */
import { lowerForm } from "../line-words.ts";

export const columnMeanings = {
  variety:
    "variety, varieties, cultivar, variety name, cultivar name, name, named, sort, variety or cultivar, plant name, seed, seeds",
  crop: "crop, crops, plant, vegetable, veg, type, kind, crop type, plant type, what, vegetable or flower, type of plant, common name",
  botanical: "botanical, botanical name, latin, latin name, scientific name, species",
  source:
    "source, supplier, from, seed house, company, seed company, vendor, seller, shop, where from, bought from, obtained from, seed source, nursery, came from, merchant",
  obtained: "obtained, how obtained, acquired, how acquired, how, got",
  year: "year, seed year, packet year, year bought, year of seed, packed, packed for, year packed, vintage, year obtained, sow by year",
  ordered:
    "ordered, order date, date ordered, ordered on, bought on, date bought, purchased, purchase date, received, date received, arrived, date of order, came",
  price: "price, cost, paid, price paid, total, amount paid, total price, line total",
  sown: "sown, sowed, date sown, sowing date, sow date, sown on, sowing, started, date started, seeded, sown date",
  "sown in": "sown in, where sown, sown at, sown where, sowing place, started in",
  "number sown": "number sown, no sown, seeds sown, how many sown, sown number",
  planted:
    "planted, planted out, date planted, planting date, plant date, planted on, transplanted, transplant date, set out, planted out on, date planted out",
  bed: "bed, beds, place, location, where, plot, border, planted in, where planted, growing in, position, container",
  number:
    "number, count, how many, qty, quantity, plants, no of plants, number of plants, plant count, number planted, planted number",
  spot: "row, spot, rows",
  "say it as": "say it as, say, said, pronounced, pronunciation, how to say it",
  "also spelled": "also spelled, also called, also known as, aka, other names, synonyms, synonym",
  "days to maturity": "days to maturity, days, dtm, maturity, days to harvest, days to crop",
  link: "link, url, website, web, web address, web page, site",
  perennial: "perennial, perennial or not",
  private: "private, keep private, secret",
  notes: "notes, note, comment, comments, remark, remarks, description, about, observations, memo",
} as const satisfies Readonly<Record<string, string>>;

export type ColumnMeaning = keyof typeof columnMeanings;

const byHeading: ReadonlyMap<string, ColumnMeaning> = new Map(
  Object.entries(columnMeanings).flatMap(([meaning, words]) =>
    words.split(", ").map((word) => [word, meaning as ColumnMeaning] as const),
  ),
);

/** "Date sown (indoors)", "No. of plants:", "Sown_on" as the words that are compared. */
function plainHeading(heading: string): string {
  return lowerForm(heading)
    .replace(/\([^()]*\)/g, " ")
    .replace(/[^\p{L}\d]+/gu, " ")
    .trim();
}

function meaningOfHeading(heading: string): ColumnMeaning | undefined {
  return byHeading.get(plainHeading(heading));
}

/** A meaning as a person writes it: "source", "Days to maturity". */
export function meaningCalled(written: string): ColumnMeaning | undefined {
  const plain = plainHeading(written);
  return Object.keys(columnMeanings).includes(plain) ? (plain as ColumnMeaning) : undefined;
}

/** What a person says of headings; undefined leaves a column out. */
export type SaidColumns = ReadonlyMap<string, ColumnMeaning | undefined>;

export interface TableColumn {
  readonly heading: string;
  /** Its place among the cells of a row. */
  readonly at: number;
  readonly meaning: ColumnMeaning | undefined;
  /** Another column before it holds the same. */
  readonly again?: true | undefined;
}

/** The columns of a heading row. What the person says of a heading counts before the table; notes may stand in several columns. */
export function matchColumns(headings: readonly string[], said: SaidColumns = new Map()): readonly TableColumn[] {
  const bySaid = new Map([...said].map(([heading, meaning]) => [plainHeading(heading), meaning]));
  const taken = new Set(headings.flatMap((heading) => bySaid.get(plainHeading(heading)) ?? []));
  return headings.map((heading, at) => {
    const key = plainHeading(heading);
    if (bySaid.has(key)) return { heading, at, meaning: bySaid.get(key) };
    const meaning = meaningOfHeading(heading);
    if (meaning === undefined) return { heading, at, meaning };
    if (taken.has(meaning) && meaning !== "notes") return { heading, at, meaning: undefined, again: true };
    taken.add(meaning);
    return { heading, at, meaning };
  });
}

/** Headings that a person names and the table has not. */
export function unknownHeadings(headings: readonly string[], said: SaidColumns): readonly string[] {
  const known = new Set(headings.map(plainHeading));
  return [...said.keys()].filter((heading) => !known.has(plainHeading(heading)));
}

/** Rows looked at for the headings: a spreadsheet may begin with a title. */
const headedWithin = 12;

/** Which row holds the headings: the one whose cells are known best, if any is. */
export function headingRow(
  rows: readonly { readonly cells: readonly { readonly text: string }[] }[],
  said: SaidColumns = new Map(),
): number | undefined {
  const own = new Set([...said.keys()].map(plainHeading));
  const scores = rows
    .slice(0, headedWithin)
    .map(
      ({ cells }) =>
        cells.filter(({ text }) => own.has(plainHeading(text)) || meaningOfHeading(text) !== undefined).length,
    );
  const best = Math.max(0, ...scores);
  return best === 0 ? undefined : scores.indexOf(best);
}
