/** docs/seasons.md, printed from the tables the almanac reckons with, so that every figure stands there with its source. */
import {
  allCropFacts,
  canningFacts,
  type Fact,
  type Range,
  rotationRules,
  soilDiseases,
} from "../../src/almanac/index.ts";

export function seasonsPage(): string {
  return `${introduction}
${weather}
${garden}
${trials}
## What it reckons with

Your own records go first. Where they say nothing, these tables do; a tilde marks what was written from memory of such
tables and not read in one.

### Crops

Distances are in centimetres, the yield is of a metre of row, and the base is the temperature from which growth is counted.

${cropTable()}

${sources()}

### Rotation

${rotationTable()}

Longer after what stays in the soil: ${soilDiseases.map(({ name, years }) => `${name}, ${years} seasons`).join("; ")}.

### Jars

Pounds of fresh produce for a canner load, by the
${canningFacts[0]?.source.title ?? ""}. They are for planning only: what goes into a jar follows a tested recipe, and every
page that has such a figure says so beside it.

${jarTable()}
`;
}

function cropTable(): string {
  const rows = allCropFacts.map((facts) =>
    [
      facts.crop,
      cell(facts.maturity, ({ from, to, counted }) => `${range({ from, to })} from ${counted}`),
      cell(facts.inRowCm, range),
      cell(facts.betweenRowsCm, range),
      cell(facts.rowYield, (gives) =>
        "gramsPerMetre" in gives
          ? `${Math.round(gives.gramsPerMetre)} g`
          : `${gives.piecesPerMetre.toFixed(1)} ${gives.unit}`,
      ),
      cell(facts.ph, ({ from, to }) => `${from.toFixed(1)}–${to.toFixed(1)}`),
      cell(facts.heat, ({ base }) => `${base.toFixed(1)} °C`),
    ].join(" | "),
  );
  return table("crop | days | in the row | between rows | a metre gives | pH | base", rows);
}

function cell<Value>(fact: Fact<Value> | undefined, say: (value: Value) => string): string {
  return fact === undefined ? "" : `${fact.source.fromMemory ? "~" : ""}${say(fact.value)}`;
}

function range({ from, to }: Range): string {
  const [a, b] = [Math.round(from), Math.round(to)];
  return a === b ? String(a) : `${a}–${b}`;
}

function sources(): string {
  const titles = new Set(
    allCropFacts.flatMap(({ maturity, inRowCm, betweenRowsCm, rowYield, ph, heat }) =>
      [maturity, inRowCm, betweenRowsCm, rowYield, ph, heat].flatMap((fact) =>
        fact === undefined || fact.source.fromMemory ? [] : [fact.source.title],
      ),
    ),
  );
  return `Read in: ${[...titles].sort().join("; ")}.`;
}

function rotationTable(): string {
  return table(
    "family | seasons | source of these | because",
    rotationRules.map(
      ({ name, years, source, reason, reasonSource }) =>
        `${name} | ${years} | ${source.title} | ${reasonSource.fromMemory ? "~" : ""}${reason}`,
    ),
  );
}

function jarTable(): string {
  return table(
    "product | seven quarts | nine pints",
    canningFacts.map(
      ({ product, poundsPerSevenQuarts, poundsPerNinePints, source }) =>
        `${source.fromMemory ? "~" : ""}${product} | ${poundsPerSevenQuarts} | ${poundsPerNinePints}`,
    ),
  );
}

function table(head: string, rows: readonly string[]): string {
  const rule = head.split(" | ").map(() => "---");
  return [`| ${head} |`, `|${rule.join("|")}|`, ...rows.map((row) => `| ${row} |`)].join("\n");
}

const introduction = `# Looking back, and next year

\`plotreel recap 2026\` writes the film that looks back on a season as the set of cards that a tour has: a cover with the year in a
sentence, and at most ten cards, the most worth first, in sixty words each. A card is a thread: what was tried and what came of it,
what failed and what you mean to do about it, the surprise, what never grew here before, the bed that changed most with its photos,
a trial as far as it can be told, the whole season, what is still owed, and last what comes next. Each part rests on your lines.

Nothing is told to have helped: a card says what you did, what was picked and what you wrote of it. Your plans (\`plan:\`), your
reasons ("because of the blight last year") and what you note beside a picking are what it draws on. A figure stands only beside
the season before, and no sum is told that a line still in question could change; the cover says how many there are. A line that is
a question is at most told in its own words, and never to viewers. A promise that was not kept is told in one card of one recap, that
of the days in which it fell due. A year with little on record gets few cards, or none.

The report follows as the dossier: a paragraph, the season in figures, the weather, best and worst with their reasons, what was
lost, photos of each bed first, at its fullest and last, trials, promises, thanks and what is still to come, and next year. All of
it goes into \`out/recaps/\` as Markdown, data (\`cover\`, \`cards\`, \`dossier\`), a page to print with two cards to a sheet, and a seed
order for a spreadsheet. \`--length 10\` leaves out what ten minutes have no room for; \`--month 6\` tells one month;
\`--since-last\` begins where the last episode called a recap ended. \`plotreel publish\` puts a page for each season on the public site,
told in the same threads, with the report and its charts folded below, without money, positions and plans, and the whole of
it on the field pages.

A season begins on \`season starts\` of garden.md, else on 1 January, or on 1 July where \`place\` lies south of the equator. It
is called by the year in which it begins: 2026, or 2025/26 where it goes over New Year.

Plants that are known as annuals and that no line clears are taken to be over when their season turns; that is never told as
news. Perennials go on. Of plants that neither the table of crops nor their own file knows \`plotreel check\` asks once.
What you wrote down with \`plan:\` comes back on the card of what it is about, else on the last one.
`;

const weather = `## Weather

Put daily weather as text into \`weather/\`. It is read in four forms: a CSV of your own with a first line such as
\`date,tmin_c,tmax_c,rain_mm\` (\`tmin_f\`, \`tmax_f\` and \`rain_in\` for Fahrenheit and inches), and the three in which NOAA hands
out its GHCN-Daily archive (.dly, by year, by station). Of several files each day takes the nearest station that has it
whole; gaps of three days are bridged and said, longer ones stay gaps. Impossible values, a column in another unit, days
told twice and stations that moved are said by \`plotreel check\`. With weather a recap tells frosts, warmth, rain and dry
spells, and forecasts know a cold spring.

A forecast is the variety's days, slower while days are short, times what your own plantings of the crop took against
theirs; with weather, the mean of that and the same in warmth. The window is made to hold four times in five of what has not
come by the day you ask, and plantings that are overdue teach as well as those that came. The brief and the look ahead tell the
same window; what waits in the ground until you want it, such as leeks, has none. A planting begun a month later than those
it was learned from is told too late: a variety's days are taken for the same whenever it is begun. \`npm run bench:season\` holds it
against the demo garden's past (what weather is usual is taken from all years of the files there, the tested one too), and
\`npm run truth\` against made-up gardens whose truth is known.
`;

const garden = `## Next year, in garden.md

    goals: [10 kg of leeks, 28 quarts of tomato sauce, 40 heads of lettuce, 60 leeks]
    pins: [tomatoes in Tomato Pots]
    prices: {tomato: 4 a kg, lettuce: 0.50 a head}

Goals become plants by what a plant gave you, the lost ones counted, with good and poor years; for a crop that you never
weighed they are the range of handbooks. Jars are reckoned for what the table below names and for nothing else. Pins hold a
crop in a bed of the draft; prices tell what the season was worth, on the field pages only.
`;

const trials = `## Trials

A trial's record names its arms and what is measured. Lines count for an arm by its variety and bed; where two arms share
both, by the arm's name in the line:

        - picked 2.1 kg Greyhound from Brassica Bed, row 1, 3 heads, netted row
    - dug 0.9 kg Early Nantes from Long Bed, row 1, 20 roots, 12 clean, early row

Measures are read from their words: kilograms a head or in all, clean (sound, split, …) roots in every twenty, how many,
days to flower or to the first picking, height (with a rule, or against a stake in a photo), green cover (of each arm's bed
in photos of one day).

What counts is what was treated apart: a bed, a row, a pot. However often one row is picked, it stays one row, and one
against one names no winner. Number the rows where both stand in one bed (\`row 1\`, \`row 2\`, in every line), and let the
arms take turns: rows of one arm next to one another count as one, and so does a bed that one arm has for itself. Four rows a
side can begin to show a difference; two treatments in each of six beds can too. The verdict sets heights of one day against
one another, pickings of the same days, totals of what has ended and days counted from the same thing, counts a row that was
lost as one that gave nothing, and says when these can't be had. It rests on an exact permutation test, and says how many
rows a difference of the size seen would take.
`;
