/** The plain written form of notes, printed from the tables of verbs and units. */
import { type Proof, units, type Verb, verbTable } from "../../src/records/index.ts";

export function writtenForm(): string {
  return [introduction, verbSections(), unitSection()].join("\n");
}

const introduction = `## When you want to be sure

What a line is taken to say is itself a line, with the verb first, and you can write that yourself. A list item that begins
with a verb of this list and goes on with the parts below is hardly ever asked about.

    - planted 12 Musselburgh leek, 20 cm apart, row 2
    - trouble: blackfly on Aquadulce, growing tips
      - pinched the worst of them out
    - picked 1.4 kg Black Beauty from Cold Frame

Lines that name no bed speak of the note's bed: of \`bed:\` or \`beds:\` in the front matter, or of the heading they stand
under when the heading is a bed's name. \`Long Bed: sowed 40 Boltardy\` says the bed first. Capitals do not matter, and a
colon may stand behind any verb.

A verb may stand above a list, \`Sowed:\` or \`Planted in Long Bed:\`, and each item below goes on with it. Of several plants
in one line, set apart by semicolons, each keeps the words of its own part: \`Nantes carrots, 2 rows; Boltardy beetroot, 1 row\`.

A list item that names a bed or variety you know and begins with something close to a verb is reported, so that a slip
loses no fact. Nothing you write is ever changed.

## The parts of a line

| part | as you may write it |
|---|---|
| how many | \`24\`, \`about 10\`, \`8-10\`, \`8 to 10\`, \`a dozen\`, \`half a dozen\`, \`twenty-four\`, \`3 x 12\`, \`4 trays of 24\` |
| how much | \`1.4 kg\`, \`500g\`, \`1 1/2 lb\`, \`½ lb\`, \`2 lb 3 oz\`, \`2 pints\`, \`6 ft 2 in\`, \`6'2"\`, \`12 °C\`, \`54 °F\` |
| pieces picked | stems, bunches, heads, fruits, pods, punnets, crates, roots, bulbs, ears or cobs, handfuls, pieces; a bare number counts what the crop is counted in |
| several at once | \`planted 6 Crown Prince, 4 Uchiki Kuri and 2 Red Kuri in Squash Bed\` |
| plant | the variety's title, its id or another spelling, with or without the crop before or after it: \`Musselburgh\`, \`Musselburgh leeks\`, \`leek (Musselburgh)\`; or only the crop: \`all tomatoes\` |
| a new plant | any name in capitals or in quotation marks: \`Nantes carrots\`, \`"black from tula"\`; it is taken as you name it |
| bed | \`in Long Bed\`, \`from Cold Frame\`, \`into the long bed\`; a bed you never described is taken as you name it |
| indoors | \`indoors\`, \`in trays\`, \`in modules\`, \`in 9 cm pots\`, \`under glass\`, \`on the windowsill\`, \`in the propagator\` |
| apart | \`20 cm apart\`, \`9 in apart\`, \`a foot apart\`, \`at 30 cm\`, \`20 x 30 cm apart\` (between plants, then rows) |
| spot | \`row 2\`, \`the north end\`, \`the corner by the gate\`, \`by the path\`, \`between the tomatoes\`, \`next to the leeks\` |
| gear | \`on the arch\`, \`up the canes\`, \`under the mesh\` |
| why | at the end of the line: \`because of the moth last year\`, \`so that it dries\`, \`to keep the pigeons off\` |
| price | \`for £4\`, \`$3 each\`, \`at 50p a bunch\`; it is yours alone and stands on no public page |
| not raised here | \`planted 3 bought Black Beauty\`, \`planted 2 given Victoria\` |
| day | at the end of the line: \`today\`, \`yesterday\`, \`last Tuesday\`, \`on Tuesday\`, \`on 3 May\`, \`two days ago\`, \`2026-05-03\` |
| due | \`by 2026-06-20\`, \`by 20 June\`, \`by Friday\`, \`tomorrow\`, \`next week\`, \`in July\`, \`by the end of August\`, \`this autumn\`, \`in two weeks\`; a period is due on its last day |

The rest of the line is kept as you wrote it, and so are list items nested below it.
`;

const proofs: Readonly<Record<Proof, string>> = {
  plant: "when a colon, an amount, or a plant or bed you know follows",
  name: "when a colon, an amount, or a name follows",
  colon: "with a colon",
  question: "with a colon or a question",
  trouble: "when a colon or a pest or disease follows",
  number: "when a colon or a number follows",
  gear: "when gear you know or a thing such as a net follows",
  next: "when a colon follows, or right behind it a plant you know, with or without its amount",
};

function verbSections(): string {
  return ["## The verbs", "", ...verbTable.map(verbSection)].join("\n");
}

function verbSection(verb: Verb): string {
  const guarded = Object.entries(verb.guarded ?? {}).map(
    ([proof, forms]) => [proofs[proof as Proof], forms.join(", ")] as const,
  );
  const begins =
    verb.forms.length === 0
      ? guarded.map(([when, forms]) => `${forms}, ${when}.`)
      : [`${verb.forms.join(", ")}.`, ...guarded.map(([when, forms]) => `${capital(when)}: ${forms}.`)];
  return [
    `### ${verb.kind}`,
    "",
    verb.says,
    ...(verb.caution === undefined ? [] : ["", verb.caution]),
    "",
    `- Begins with: ${begins.join(" ")}`,
    `- Then: ${verb.takes}.`,
    "",
    "```",
    ...verb.examples.map((line) => `- ${line}`),
    "```",
    "",
  ].join("\n");
}

function unitSection(): string {
  return [
    "## Units",
    "",
    "Pints, quarts and gallons are imperial in metric gardens and US liquid measure where `units: us` stands in garden.md.",
    "",
    "| unit | is | where `units: us` |",
    "|---|---|---|",
    ...units
      .filter((unit) => unit.dimension !== "temperature")
      .map((unit) => {
        const base = { mass: "g", length: "cm", volume: "l" }[unit.dimension as "mass" | "length" | "volume"];
        return `| ${unit.names.slice(0, 3).join(", ")} | ${unit.factor} ${base} | ${unit.usFactor === undefined ? "the same" : `${unit.usFactor} ${base}`} |`;
      }),
    "",
  ].join("\n");
}

function capital(text: string): string {
  return `${text[0]?.toUpperCase() ?? ""}${text.slice(1)}`;
}
