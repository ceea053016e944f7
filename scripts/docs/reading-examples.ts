/**
 * What the reader makes of lines as people write them: docs/notes.md shows these examples, and
 * tests/docs/reading-examples.test.ts holds each against the reader. All of them are invented.
 */
import type { LineReading } from "../../src/model.ts";

export interface ReadAs {
  readonly as: LineReading["as"];
  /** The plain lines of facts; of a question the likeliest readings, the best first, each of one line or of several. */
  readonly says?: readonly string[];
}

export interface LineExample extends ReadAs {
  /** A list item of the note. */
  readonly line: string;
}

export interface NoteExample {
  readonly about: string;
  /** The whole file. */
  readonly note: string;
  readonly lines: readonly LineExample[];
}

/** A Saturday: the day of every note here. */
export const exampleDay = "2026-06-06";
/** The bed of single lines. */
export const exampleBed = "Long Bed";

export const exampleBeds = [exampleBed, "Squash Bed", "Greenhouse"];
export const exampleVarieties = [
  ["Musselburgh", "leek"],
  ["Sungold", "tomato"],
  ["Crown Prince", "squash"],
  ["Aquadulce", "broad bean"],
  ["Boltardy", "beetroot"],
  ["French Breakfast", "radish"],
] as const;

/** The described garden that the notes are read in, by path. */
export const exampleGarden: Readonly<Record<string, string>> = Object.fromEntries([
  ["garden.md", "---\nname: A garden\nunits: metric\nlanguage: en-GB\ntime zone: Europe/London\n---\n"],
  ...exampleBeds.map((bed) => [`beds/${bed}.md`, `---\ntitle: ${bed}\n---\n`]),
  ...exampleVarieties.map(([variety, crop]) => [
    `varieties/${variety}.md`,
    `---\ntitle: ${variety}\ncrop: ${crop}\n---\n`,
  ]),
]);

const facts = (line: string, ...says: readonly string[]): LineExample => ({ line, as: "facts", says });
const asked = (line: string, ...says: readonly string[]): LineExample => ({ line, as: "question", says });
const story = (line: string): LineExample => ({ line, as: "story" });

export const factLines: readonly LineExample[] = [
  facts("planted 12 Musselburgh leeks, 20 cm apart", "planted 12 Musselburgh in Long Bed, 20 cm apart"),
  facts("this morning I planted a dozen Musselburgh leeks", "planted 12 Musselburgh in Long Bed"),
  facts("12 Musselburgh leeks went into Long Bed today", "planted 12 Musselburgh in Long Bed"),
  facts("Squash Bed: 4 Crown Prince planted", "planted 4 Crown Prince in Squash Bed"),
  facts("on 3 June 24 leeks planted", "planted 24 leeks in Long Bed, on 3 June"),
  facts("planted Ruby Hollow next to the leeks", 'planted "Ruby Hollow" in Long Bed, next to the leeks'),
  facts("Boltardy sown, one row", "sowed Boltardy in Long Bed"),
  facts("seedlings of Boltardy showing", "emerged: Boltardy in Long Bed"),
  facts("pricked out 20 lettuces", "potted on 20 lettuces"),
  facts("moved 6 leeks from Greenhouse to Long Bed", "moved 6 leeks from Greenhouse to Long Bed"),
  facts("Friday - Sungold in flower", "first flower: Sungold in Long Bed, on 5 June"),
  facts("rasps picked, 400 g", "picked 400 g raspberries from Long Bed"),
  facts(
    "picked: 2 bunches radishes, 3 lettuces, 400 g strawberries",
    "picked 2 bunches radishes from Long Bed",
    "picked 3 heads lettuces from Long Bed",
    "picked 400 g strawberries from Long Bed",
  ),
  facts("12 stems of dahlias cut", "picked 12 stems dahlias from Long Bed"),
  facts("lifted the garlic, 24 bulbs", "picked 24 bulbs garlic from Long Bed"),
  facts("slugs ate three lettuces", "lost 3 lettuces in Long Bed to slugs"),
  facts("two Crown Prince snapped off in the wind", "lost 2 Crown Prince in Long Bed to wind"),
  facts("pigeons have been at the kale", "trouble: pigeons on kale in Long Bed"),
  facts("aphids gone from the broad beans", "cured: aphids on broad beans in Long Bed"),
  facts("butterfly netting on the kale", "put up butterfly netting in Long Bed, on the kale"),
  facts(
    "pinched out the Aquadulce to keep the blackfly off",
    "did: pinched out the Aquadulce, in Long Bed, to keep the blackfly off",
  ),
  facts("bought 6 Sungold plants, £9", "acquired: 6 bought Sungold, for £9"),
  facts("gave away a dozen leeks to my neighbour", "gave away 12 leeks, to my neighbour"),
  facts("sold 3 bunches of radishes for £3", "sold: 3 bunches radishes, for £3"),
  facts("froze 2 kg of broad beans", "preserved: 2 kg of broad beans"),
  facts("self-sown lettuce by the path", "volunteer: lettuces in Long Bed, by the path"),
  facts("the rhubarb has come back", "came back: rhubarb in Long Bed"),
  facts("the Sungold are thriving", "doing: Sungold in Long Bed, thriving"),
  facts("Sungold 1.2 m tall now", "measured Sungold 120 cm tall in Long Bed"),
  facts("to do by Friday: net the strawberries", "to do by 2026-06-12: net the strawberries, in Long Bed"),
  facts("garlic next year", "plan by 2027-12-31: garlic next year"),
];

export const questionLines: readonly LineExample[] = [
  asked("lifted the onions", "picked onions from Long Bed", "did: lifted the onions, in Long Bed"),
  asked("cut the lettuces", "did: cut the lettuces, in Long Bed", "picked lettuces from Long Bed"),
  asked("the slugs had 3 lettuces", "lost 3 lettuces in Long Bed to slugs", "trouble: slugs on lettuces in Long Bed"),
  asked("1 each of Boltardy and Sungold planted", "planted 1 Boltardy in Long Bed\nplanted 1 Sungold in Long Bed"),
  asked(
    "12 leeks planted in Long Bed, 6 Sungold in Greenhouse",
    "planted 12 leeks in Long Bed\nplanted 6 Sungold in Greenhouse",
  ),
  asked("that was 30 leeks, not 12", "picked 30 leeks from Long Bed", "planted 30 leeks in Long Bed"),
  asked(
    "maybe I'll sow more beetroot",
    "plan: maybe I'll sow more beetroot, in Long Bed",
    "sowed beetroot in Long Bed",
  ),
  asked("need to water the leeks tomorrow", "to do by 2026-06-07: need to water the leeks tomorrow, in Long Bed"),
  asked("in 2025 I sowed 40 Boltardy here", "sowed 40 Boltardy in Long Bed"),
  asked("my brother picked 2 kg of plums", "picked 2000 g plums from Long Bed"),
];

export const storyLines: readonly LineExample[] = [
  story("nothing sown today"),
  story("forgot to sow the beetroot"),
  story("never got round to planting the leeks"),
  story("still no sign of the parsnips"),
  story("no sign of blackfly"),
  story("last year the peas failed"),
  story("last year 12 kg of potatoes from this bed"),
  story("if it stays dry I'll plant the leeks"),
  story("was going to plant the leeks but it rained"),
  story("our neighbour has picked his first courgettes"),
  story("my sister sowed her carrots today"),
  story("my mother always sowed her beans on Good Friday"),
  story("the robin followed me all morning"),
  story("rained until four"),
];

const front = `---\nbed: ${exampleBed}\n---\n`;

/** What the page begins with. */
export const firstNote: NoteExample = {
  about: "",
  note: `${front}Cold wind in the morning, and rain until four.\n\n- this morning I planted a dozen Musselburgh leeks\n- slugs ate three lettuces\n- lifted the onions\n- the robin followed me all morning\n`,
  lines: [
    story("Cold wind in the morning, and rain until four."),
    facts("this morning I planted a dozen Musselburgh leeks", "planted 12 Musselburgh in Long Bed"),
    facts("slugs ate three lettuces", "lost 3 lettuces in Long Bed to slugs"),
    asked("lifted the onions", "picked onions from Long Bed", "did: lifted the onions, in Long Bed"),
    story("the robin followed me all morning"),
  ],
};

/** How a note may be laid out. */
export const layouts: readonly NoteExample[] = [
  {
    about: "A heading that is a bed or a day says so for all that stands below it.",
    note: "## Thursday\n\n- picked 600 g broad beans from Long Bed\n\n## Greenhouse\n\n- 6 Sungold planted\n- pricked out 20 lettuces\n",
    lines: [
      facts("picked 600 g broad beans from Long Bed", "picked 600 g broad beans from Long Bed, on 4 June"),
      facts("6 Sungold planted", "planted 6 Sungold in Greenhouse"),
      facts("pricked out 20 lettuces", "potted on 20 lettuces"),
    ],
  },
  {
    about: "So does what was done, above a list.",
    note: `${front}- Sowed:\n  - 40 Boltardy\n  - 12 Aquadulce\n`,
    lines: [
      facts("40 Boltardy", "sowed 40 Boltardy in Long Bed"),
      facts("12 Aquadulce", "sowed 12 Aquadulce in Long Bed"),
    ],
  },
  {
    about: "Numbered lists, and boxes to tick.",
    note: `${front}1. Boltardy thinned to 20\n2. tea on the bench\n3. Aquadulce setting pods\n\n- [ ] feed the tomatoes\n`,
    lines: [
      facts("Boltardy thinned to 20", "thinned Boltardy to 20 in Long Bed"),
      story("tea on the bench"),
      facts("Aquadulce setting pods", "first fruit: Aquadulce in Long Bed"),
      facts("[ ] feed the tomatoes", "to do: feed the tomatoes"),
    ],
  },
  {
    about: "A table whose head row says what was done.",
    note: `${front}| crop | picked |\n|---|---|\n| courgettes | 1.4 kg |\n| broad beans | 600 g |\n`,
    lines: [
      facts("| courgettes | 1.4 kg |", "picked 1400 g courgettes from Long Bed"),
      facts("| broad beans | 600 g |", "picked 600 g broad beans from Long Bed"),
    ],
  },
  {
    about: "Lines without any mark, each beginning with a bed.",
    note: "Long Bed: Boltardy thinned to 20\nGreenhouse: Sungold in flower\n",
    lines: [
      facts("Long Bed: Boltardy thinned to 20", "thinned Boltardy to 20 in Long Bed"),
      facts("Greenhouse: Sungold in flower", "first flower: Sungold in Greenhouse"),
    ],
  },
  {
    about:
      "Paragraphs, sentence by sentence. What stands in one is asked about sooner, because people tell much there that is no record.",
    note: `${front}We had tea under the plum tree. I picked 2 kg of broad beans this morning. The evening was still and warm.\n`,
    lines: [
      story("We had tea under the plum tree."),
      asked("I picked 2 kg of broad beans this morning.", "picked 2000 g broad beans from Long Bed"),
      story("The evening was still and warm."),
    ],
  },
];

/** What is written below a line to settle it. */
export const settledNote: NoteExample = {
  about: "",
  note: `${front}- lifted the onions\n  - = picked 4 kg onions\n- three more for the freezer\n  - = story\n`,
  lines: [facts("lifted the onions", "picked 4000 g onions from Long Bed"), story("three more for the freezer")],
};

/** The garden's words.md, for `taughtNote` alone. */
export const ownWords = "- rasps: raspberries\n- FB: French Breakfast\n- the long one: Long Bed\n";

/** What the garden's own words change. */
export const taughtNote: NoteExample = {
  about: "",
  note: "- sowed 20 FB in the long one\n- picked 400 g rasps from the long one\n",
  lines: [
    facts("sowed 20 FB in the long one", "sowed 20 French Breakfast in Long Bed"),
    facts("picked 400 g rasps from the long one", "picked 400 g raspberries from Long Bed"),
  ],
};

/** Single lines as notes of one line. */
export function asNote(example: LineExample): NoteExample {
  return { about: "", note: `${front}- ${example.line}\n`, lines: [example] };
}

/** All that is read without words of the garden's own. */
export const everyExample: readonly NoteExample[] = [
  ...[...factLines, ...questionLines, ...storyLines].map(asNote),
  firstNote,
  ...layouts,
  settledNote,
];
