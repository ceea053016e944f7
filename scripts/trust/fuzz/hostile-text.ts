/** Text that people, phones and enemies write: pieces of real lines, broken and joined; runs; odd letters; odd numbers. */
import { readFileSync } from "node:fs";
import path from "node:path";
import fc from "fast-check";

const corpus = path.resolve(import.meta.dirname, "../../../tests/corpus/learn");

/** Some hundred lines of real writing, from which pieces are taken. */
const written: readonly string[] = ["a", "c", "f"].flatMap((name) => {
  const { lines } = JSON.parse(readFileSync(path.join(corpus, `${name}.json`), "utf8")) as {
    lines: { text: string }[];
  };
  return lines.slice(0, 150).map(({ text }) => text);
});

const words = [...new Set(written.flatMap((line) => line.split(/\s+/u)))].slice(0, 1500);

export const number = fc.oneof(
  fc.constantFrom(
    "0",
    "-0",
    "1e999",
    "1e-320",
    "0x10",
    "NaN",
    "Infinity",
    "99999999999999999999",
    "1/0",
    "½",
    "0.1.2",
    "1,000,000",
    "٣",
    "-5",
    "1_000",
    "007",
  ),
  fc.nat().map(String),
  fc.double({ noNaN: true }).map(String),
);

export const day = fc.oneof(
  fc.constantFrom(
    "2026-02-30",
    "0000-00-00",
    "9999-12-31",
    "275760-09-13",
    "2026-13-01",
    "30 February",
    "31 June",
    "week 54",
    "29.02.2025",
    "tomorrow",
    "last blue moon",
  ),
  fc
    .tuple(fc.nat(9999), fc.nat(13), fc.nat(32))
    .map(([y, m, d]) => `${String(y).padStart(4, "0")}-${String(m).padStart(2, "0")}-${String(d).padStart(2, "0")}`),
);

const odd = fc.constantFrom(
  "\u0000",
  "\u202e",
  "\ufeff",
  "\u2028",
  "\ud800",
  "\u00a0",
  "\u200d",
  "🌱",
  "ﬁ",
  "İ",
  "ß",
  "e\u0301",
  "\u001b[31m",
  "\r",
  "\t",
  "`",
  "|",
  "\\",
  "<!--",
  "-->",
  "]]>",
  "</script>",
  "{{",
  "${",
  "%s",
  "__proto__",
  "constructor",
  "toString",
  "=",
  "= story",
  "@",
  "::",
  "- - -",
  "---",
  "…",
  "“",
  "’",
);

const run = fc
  .tuple(
    fc.constantFrom(" ", "\t", "a", "1", "-", "(", "[", '"', "*", ", ", "and ", "in ", "12 ", "é", "\n"),
    fc.integer({ min: 2, max: 3000 }),
  )
  .map(([piece, times]) => piece.repeat(times));

const piece = fc.oneof(
  { weight: 12, arbitrary: fc.constantFrom(...words) },
  { weight: 2, arbitrary: number },
  { weight: 2, arbitrary: day },
  { weight: 2, arbitrary: odd },
  { weight: 1, arbitrary: fc.string({ unit: "binary", maxLength: 8 }) },
);

/** A real line with pieces taken out, put in, doubled. */
const broken = fc
  .tuple(fc.constantFrom(...written), fc.array(fc.tuple(fc.nat(), piece, fc.nat(2)), { maxLength: 4 }))
  .map(([line, cuts]) => {
    const parts = line.split(" ");
    for (const [at, put, much] of cuts) parts.splice(at % (parts.length + 1), much, put);
    return parts.join(" ");
  });

export const line: fc.Arbitrary<string> = fc.oneof(
  { weight: 8, arbitrary: broken },
  { weight: 4, arbitrary: fc.array(piece, { maxLength: 14 }).map((parts) => parts.join(" ")) },
  {
    weight: 1,
    arbitrary: fc
      .tuple(fc.constantFrom(...written), run)
      .map(([text, long]) => text.slice(0, 20) + long + text.slice(20)),
  },
);

export const value: fc.Arbitrary<string> = fc.oneof(
  line,
  number,
  day,
  fc.constantFrom(
    "",
    "true",
    "[]",
    "{}",
    "~",
    "null",
    "[1, 2",
    "!!js/function x",
    "&a [*a]",
    "*nowhere",
    "'",
    "|",
    ">-",
    "yes",
    "no",
  ),
);
