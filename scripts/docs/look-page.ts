/** docs/look.md, for whoever works on the pages: what their look is made of, and why; figures from the style sheet itself. */

import { readFile } from "node:fs/promises";
import path from "node:path";
import { readTokens, type Schemes, type Tokens } from "../../src/site/look/tokens.ts";
import { colourPairs } from "./look/colour-pairs.ts";
import { contrast } from "./look/contrast.ts";

const SHEET = path.join(import.meta.dirname, "../../src/site/styles/tokens.css");

const SCHEMES: Readonly<Record<Exclude<keyof Schemes, "paper">, string>> = {
  light: "by day",
  dark: "by night",
};

const IDEA = `A plant label pushed into soil: zinc grey, pencil black, generous white, and one flower colour that is only for what is new
and, on field pages, for what is asked. Photographs carry the page; everything else keeps quiet beside them. No icons that need
learning, no gradients. Private pages have the same letters and the same white ground, under a band of their own.

All of it is read outdoors: on a phone in full sun, with wet hands, or on a sheet of paper in a pocket. So letters are large and
lines few, text stands out from its ground by 7 to 1 or more, nothing is told by colour alone, and no sign has to be learned.

Colours, sizes of letters and distances stand in \`src/site/styles/tokens.css\` and nowhere else: \`tests/site/tokens.test.ts\`
fails on one that is written anywhere else, and on a pair of colours below its contrast.`;

const LETTERS =
  "One family, Alegreya Sans, in two weights and one slant: it keeps the stroke of a pen, as the lettering on a label does. Names are the largest, because a name is what people come for. The files travel with the pages, and nobody else is asked for them; until they have come, the machine’s own letters stand there as wide and as high, so that nothing moves.";

const COLOURS =
  "Zinc is for labels, stakes, edges and lines; pencil for everything written. Text reaches 7 to 1 on its ground, edges of what can be pressed 3 to 1, as WCAG 2.2 works it out.";

const DISTANCES =
  "What belongs together stands together: a small step inside a thing, a large one between things. One step, between the parts of a page, grows with the screen.";

const PARTS: readonly (readonly [title: string, why: string])[] = [
  [
    "Label and stake",
    "The page’s name stands on a zinc plate. Where a photo follows, the stake goes into it; where lines belong to the name, they stand along the stake: what it is, how it did, where it came from, all in the first screen of a phone.",
  ],
  [
    "List",
    "One name to a row, in the size of a heading, and below it in quiet letters what the list can tell. New is said with a word; its colour only helps. Letters lead into what is longer than three screens.",
  ],
  [
    "Controls",
    "Square, edged, and never lower than a thumb in a glove needs. A cross, as one makes with a pencil, says that something is chosen.",
  ],
  [
    "Photo",
    "As large as it may be, and nothing laid over it but its own label. Below it stand its place and day, then what somebody wrote, then who took it.",
  ],
  [
    "Comparison",
    "The same spot on two days under one stake. The slider is the browser’s own, so that keys, fingers and screen readers move it; without scripts two pictures stand side by side.",
  ],
  [
    "Chart",
    "Drawn in pencil: heavy what the page is about, light and dashed what stands behind it, with names at the lines and no legend. One sentence says what it shows, and the same numbers stand behind it as a table.",
  ],
  [
    "Ribbon",
    "A season from its first month to its last: a bar for everything that grew, light while it was raised elsewhere, zinc in its place, pencil where it was picked; photos are beads on their days. Moving along it, by hand, key or button, shows that day’s photo, what changed and what stood there, and what did not steps back. It begins with its newest photo. Private pages tell a day by the lines of its notes, each the way to itself. Without scripts the day it begins with stands there and every photo is a link. Weather is told in whole degrees and a word: exact figures would say which station they are from.",
  ],
  [
    "Walk",
    "A film’s beds on the plan, north above, numbered in its order with the way from the gate drawn over them; each box leads to its stop, which has the photo of that day, the names with their times, and what became of them since. A photo of another day says how far it is from the film.",
  ],
  [
    "Days",
    "The year of a bed along its stake, newest first, behind the ribbon: a page that is opened at the fence should not be long.",
  ],
  [
    "Lines and readings",
    "What somebody wrote stands as it is; beside it, in stronger letters, what it is taken to say. Story keeps quiet. A question says so with a word in the flower colour, and shows its readings.",
  ],
  ["Empty places", "A place with nothing in it says what will stand there, and what brings it about."],
  [
    "The mark of private pages",
    "A yellow band stays at the top and runs on down the left edge, with the word once to a phone’s screen: whatever part of a field page is photographed or cut out, it shows the band. The band alone is the mark; the ground is as white as viewers’ pages, or as dark at night, since somebody works on it for hours.",
  ],
  [
    "Paper",
    "On paper everything is black, what can be pressed is gone, and the page’s address is added. The variety list becomes a hand-out: two columns, two sheets for a garden of a hundred varieties.",
  ],
  [
    "Motion",
    "Nothing moves by itself. From page to page the browser may cross-fade; for those who asked their machine for less motion it does not.",
  ],
];

export async function lookPage(): Promise<string> {
  const schemes = readTokens(await readFile(SHEET, "utf8"));
  const names = Object.keys(SCHEMES) as (keyof typeof SCHEMES)[];
  return `# How the pages look

${IDEA}

## Letters

${LETTERS}

${sizes(schemes.light, /^size/u)}

## Colours

${COLOURS}

${table(
  ["pair", "wanted", ...names.map((name) => SCHEMES[name])],
  colourPairs.map(({ on, ground, least }) => [
    `${on} on ${ground}`,
    String(least),
    ...names.map((name) => rounded(contrast(schemes[name][on] ?? "", schemes[name][ground] ?? ""))),
  ]),
)}

## Distances

${DISTANCES}

${sizes(schemes.light, /^space|^step$/u)}

${PARTS.map(([title, why]) => `## ${title}\n\n${why}`).join("\n\n")}
`;
}

/** Never said to be more than it is. */
function rounded(ratio: number): string {
  return String(Math.floor(ratio * 10) / 10);
}

function sizes(tokens: Tokens, names: RegExp): string {
  return table(
    ["name", "value"],
    Object.entries(tokens)
      .filter(([name]) => names.test(name))
      .map(([name, value]) => [name, `\`${value}\``]),
  );
}

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.join(" | ")} |`;
  return [line(head), line(head.map(() => "---")), ...rows.map(line)].join("\n");
}
