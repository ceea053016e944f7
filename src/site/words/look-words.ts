/** What the style page says: why the pages look as they do, for whoever works on them. */
import type { Schemes } from "../look/tokens.ts";

export const lookWords = {
  description: "What the look of these pages is made of, and why.",
  idea: [
    "A plant label pushed into soil: zinc grey, pencil black, generous white, and one flower colour that is only for what is new and, on field pages, for what is asked. Photographs carry the page; everything else keeps quiet beside them.",
    "All of it is read outdoors: on a phone in full sun, with wet hands, or on a sheet of paper in a pocket. So letters are large and lines few, text stands out from its ground by 7 to 1 or more, nothing is told by colour alone, and no sign has to be learned.",
    "Colours, sizes of letters and distances stand in src/site/styles/tokens.css and nowhere else: a test fails on one that is written anywhere else. What stands below is made of the parts that all pages are made of, from this garden’s own records.",
  ],
  letters: "Letters",
  lettersWhy:
    "One family, Alegreya Sans, in two weights and one slant: it keeps the stroke of a pen, as the lettering on a label does. Names are the largest, because a name is what people come for. The files travel with the pages, and nobody else is asked for them; until they have come, the machine’s own letters stand there as wide and as high, so that nothing moves.",
  colours: "Colours",
  coloursWhy:
    "Zinc is for labels, stakes, edges and lines; pencil for everything written. Text reaches 7 to 1 on its ground, edges of what can be pressed 3 to 1, as WCAG 2.2 works it out; the figures come from the style sheet each time these pages are made.",
  schemes: {
    light: "By day",
    dark: "By night",
    field: "Field pages by day",
    fieldDark: "Field pages by night",
  } satisfies Record<Exclude<keyof Schemes, "paper">, string>,
  pair: (on: string, ground: string) => `${on} on ${ground}`,
  contrast: (ratio: string, least: number) => `${ratio} to 1; wanted ${least}`,
  distances: "Distances",
  distancesWhy:
    "What belongs together stands together: a small step inside a thing, a large one between things. One step, between the parts of a page, grows with the screen.",
  label: "Label and stake",
  labelWhy:
    "The page’s name stands on a zinc plate. Where a photo follows, the stake goes into it; where lines belong to the name, they stand along the stake: what it is, how it did, where it came from, all in the first screen of a phone.",
  list: "List",
  listWhy:
    "One name to a row, in the size of a heading, and below it in quiet letters what the list can tell. New is said with a word; its colour only helps. Letters lead into what is longer than three screens.",
  controls: "Controls",
  controlsWhy:
    "Square, edged, and never lower than a thumb in a glove needs. A cross, as one makes with a pencil, says that something is chosen.",
  photo: "Photo",
  photoWhy:
    "As large as it may be, and nothing laid over it but its own label. Below it stand its place and day, then what somebody wrote, then who took it.",
  comparison: "Comparison",
  comparisonWhy:
    "The same spot on two days under one stake. The slider is the browser’s own, so that keys, fingers and screen readers move it; without scripts two pictures stand side by side.",
  chart: "Chart",
  chartWhy:
    "Drawn in pencil: heavy what the page is about, light and dashed what stands behind it, with names at the lines and no legend. One sentence says what it shows, and the same numbers stand behind it as a table.",
  days: "Days",
  daysWhy:
    "The year of a bed along its stake, newest first. Older days are folded away; a page that is opened at the fence should not be long.",
  reading: "Lines and readings",
  readingWhy:
    "What somebody wrote stands as it is; beside it, in stronger letters, what it is taken to say. Story keeps quiet. A question says so with a word in the flower colour, and shows its readings.",
  empty: "Empty places",
  emptyWhy: "A place with nothing in it says what will stand there, and what brings it about.",
  mark: "The mark of private pages",
  markWhy:
    "A yellow band stays at the top, the paper is manila, and the word itself runs along the left edge from top to bottom: whatever part of a field page is photographed or cut out, it says that it is private.",
  paper: "Paper",
  paperWhy:
    "On paper everything is black, what can be pressed is gone, and the page’s address is added. The variety list becomes a hand-out: two columns, two sheets for a garden of a hundred varieties.",
  motion: "Motion",
  motionWhy:
    "Nothing moves by itself. From page to page the browser may cross-fade; for those who asked their machine for less motion it does not.",
  none: "As soon as the garden has one, it will stand here.",
};

export type LookWords = typeof lookWords;
