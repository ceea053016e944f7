/** varieties/*.md: a named cultivar, where it came from and how long it takes. */
import * as z from "zod";
import type { Maturity, Obtained, RecordFile, Source, Variety } from "../../model.ts";
import { giverInWords } from "../giver-in-words.ts";
import { howObtained, link, names, number, obtained, readAs, text, truth, wrongValue } from "./fields.ts";
import { forViewers } from "./meaning.ts";
import { recordKeys } from "./record.ts";

const sourceKeys = z.strictObject({
  name: forViewers("the seed house, the swap or the person, as it may be said", "Drift Lane Seeds", text.optional()),
  link: forViewers("where viewers find it", "https://seeds.example/leek", link.optional()),
  obtained: forViewers(
    "how you came by it; a gift of a seller, a loan, a payment and a commission are said wherever it is named",
    "swapped",
    obtained.optional(),
  ),
  year: forViewers("the year it came", "2025", number({ from: 1800, to: 2199 }).optional()),
});
const source = z.preprocess((value) => (typeof value === "string" ? { name: value } : value), sourceKeys);

/** Days to maturity; `from` is undefined for a bare number, whose start depends on the crop. */
const maturityWords = readAs(
  (written): { value: { days: number; from?: Maturity["from"] } } | ReturnType<typeof wrongValue> => {
    const parts = /^(?:about\s+)?(\d{1,4})(?:\s*days?)?(?:\s+(?:from|after)\s+(sowing|planting|transplanting))?$/i.exec(
      written,
    );
    if (!parts) {
      return wrongValue(
        `"${written}" is not a number of days.`,
        'Write the days and where they are counted from, for example "95 from planting".',
      );
    }
    const days = Number(parts[1]);
    const start = parts[2]?.toLowerCase();
    return { value: start === undefined ? { days } : { days, from: start === "sowing" ? "sowing" : "planting" } };
  },
);

const maturityStart = readAs((written): { value: Maturity["from"] } | ReturnType<typeof wrongValue> =>
  /^(sowing|planting)$/i.test(written)
    ? { value: written.toLowerCase() as Maturity["from"] }
    : wrongValue(`"${written}" is no place to count days from.`, "Write sowing or planting."),
);

const maturity = z.union([
  maturityWords,
  z.strictObject({
    days: forViewers("how many", "95", number({ from: 1, to: 9999, unit: /(?<!\s)\s*days?$/ })),
    from: forViewers("where they are counted from: sowing or planting", "planting", maturityStart.optional()),
  }),
]);

/** "yes", "no", or either with words behind it: "yes, in the tunnel only". */
const growAgain = readAs((written): { value: { would: boolean; words?: string } } | ReturnType<typeof wrongValue> => {
  const [, answer = "", rest = ""] = /^(yes|no|true|false)\b[\s,;:.]*(.*)$/isu.exec(written.trim()) ?? [];
  if (answer === "") {
    return wrongValue(
      `"${written}" does not say yes or no.`,
      'Begin with yes or no, for example "yes, in the tunnel only".',
    );
  }
  const would = /^(?:yes|true)$/iu.test(answer);
  return { value: rest === "" ? { would } : { would, words: rest } };
});

export const varietySchema = z.strictObject({
  ...recordKeys,
  crop: forViewers("the kind of plant", "leek", text.optional()),
  botanical: forViewers("its botanical name", "Allium porrum", text.optional()),
  "say it as": forViewers("how you say the name on camera", "MUSS-el-bruh", text.optional()),
  "also spelled": forViewers("other spellings that your notes may use", "[Musselborough]", names.optional()),
  source: forViewers(
    "where it came from: a name, or the keys below",
    "{ name: Drift Lane Seeds, obtained: bought, year: 2025 }",
    source.optional(),
  ),
  link: forViewers('the same as "link" of its source', "https://seeds.example/leek", link.optional()),
  obtained: forViewers('the same as "obtained" of its source', "saved", obtained.optional()),
  "days to maturity": forViewers(
    "days until it is first picked, and from where they are counted: sowing or planting",
    "95 from planting",
    maturity.optional(),
  ),
  perennial: forViewers("true when it stands from year to year", "false", truth.optional()),
  "thank by name": forViewers("true when the person it came from may be named to viewers", "true", truth.optional()),
  caution: forViewers("a short warning that goes wherever it is shown", "all parts are poisonous", text.optional()),
  "grow again": forViewers(
    "yes or no, whether you would grow it again, and more words if you like",
    "yes, in the tunnel only",
    growAgain.optional(),
  ),
});

/** What is said of a source that has no name. */
const unnamedSource: Readonly<Record<Obtained, string>> = {
  bought: "bought",
  swapped: "a swap",
  saved: "own saved seed",
  gifted: "a gift",
  lent: "lent",
  "paid promotion": "a paid promotion",
  "commission link": "bought",
  "own product": "own product",
  discounted: "bought at a discount",
  "family business": "a family business",
};

/**
 * Crops whose packets count days from planting out, the others from sowing: the crops marked "from transplant" in the
 * extension tables (Kansas State MF315 and its like; from memory), and those raised like them.
 */
const countedFromPlanting = new Set([
  "artichoke",
  "aubergine",
  "broccoli",
  "brussels sprout",
  "brussels-sprout",
  "cabbage",
  "calabrese",
  "cauliflower",
  "celeriac",
  "celery",
  "chilli",
  "eggplant",
  "leek",
  "pepper",
  "sweet potato",
  "sweet-potato",
  "tomatillo",
  "tomato",
]);

/** `crop` is the crop's id as the crop table knows it, `perennial` what the table says of the crop. */
export function makeVariety(
  file: RecordFile,
  front: z.output<typeof varietySchema>,
  crop: { readonly id: string; readonly perennial: boolean | undefined } | undefined,
): Variety {
  return {
    ...file,
    crop: crop?.id,
    botanical: front.botanical,
    sayAs: front["say it as"],
    alsoSpelled: front["also spelled"] ?? [],
    source: makeSource(front),
    maturity: makeMaturity(front["days to maturity"], crop?.id),
    perennial: front.perennial ?? crop?.perennial,
    ...(front["thank by name"] === true && { thankByName: true }),
    caution: front.caution,
    ...(front["grow again"] !== undefined && { growAgain: front["grow again"] }),
  };
}

function makeSource(front: z.output<typeof varietySchema>): Source | undefined {
  const { obtained: how, giver: said } = howObtained(front.source?.obtained ?? front.obtained);
  const address = front.source?.link ?? front.link;
  const name = front.source?.name ?? (how === undefined ? undefined : unnamedSource[how]) ?? hostOf(address);
  if (name === undefined) return undefined;
  const giver = said ?? giverInWords(how, name);
  return { name, link: address, obtained: how, ...(giver !== undefined && { giver }), year: front.source?.year };
}

function hostOf(address: string | undefined): string | undefined {
  return address === undefined ? undefined : URL.parse(address)?.hostname.replace(/^www\./, "");
}

function makeMaturity(
  written: { readonly days: number; readonly from?: Maturity["from"] | undefined } | undefined,
  crop: string | undefined,
): Maturity | undefined {
  if (written === undefined) return undefined;
  const usual = crop !== undefined && countedFromPlanting.has(crop) ? "planting" : "sowing";
  return { days: written.days, from: written.from ?? usual };
}
