/**
 * What a new record looks like before it is filled in. Lines that begin with "#" are reminders; everything else is ready to keep.
 */

interface KindOfRecord {
  readonly folder: string;
  /** Front matter lines below the title. */
  readonly lines: (facts: TemplateFacts) => readonly string[];
  readonly body: string;
}

export interface TemplateFacts {
  readonly title: string;
  readonly today: string;
  readonly crop?: string;
}

export const KINDS = {
  site: {
    folder: "sites",
    lines: () => [
      "# place name: what viewers may hear, such as: the west side of town",
      "# position: { latitude: , longitude: }   # never shown to viewers",
    ],
    body: "",
  },
  bed: {
    folder: "beds",
    lines: () => [
      "# site: the file name of its site",
      "# size: 4 x 1.2 m",
      "# plan: { x: 0, y: 0 }   # metres from the site's south-west corner",
      "# facing: south",
      "# soil: what it is filled with",
    ],
    body: "",
  },
  variety: {
    folder: "varieties",
    lines: ({ crop }) => [
      crop === undefined ? "# crop: tomato" : `crop: ${crop}`,
      "# say it as: how you say the name on camera",
      "# source: { name: , obtained: bought }   # bought, swapped, saved, given (or lent) by a seller, given (or lent) by a person, paid promotion, discounted, commission link, family business or own product",
      "# days to maturity: 70 from planting",
      "# grow again: yes   # or no, with a reason behind it if you like",
    ],
    body: "",
  },
  note: {
    folder: "notes",
    lines: ({ today }) => [`date: ${today}`, "# bed: the bed these lines speak of"],
    body: "- \n",
  },
  episode: {
    folder: "episodes",
    lines: ({ today }) => [
      `date: ${today}`,
      "status: planned",
      "target: 12 min",
      "# stops: [ beds in your walking order ]",
    ],
    body: "",
  },
  gear: {
    folder: "gear",
    lines: () => [
      "# obtained: bought   # or given by a seller, given by a person, lent by either, paid promotion, discounted, commission link, family business, own product",
      "# from: ",
    ],
    body: "",
  },
  trial: {
    folder: "trials",
    lines: () => [
      "question: What do you want to know?",
      "arms:",
      "  - { name: with }",
      "  - { name: without }",
      "measure: what you will weigh, count or measure",
      "status: planned",
    ],
    body: "",
  },
} as const satisfies Record<string, KindOfRecord>;

export type Kind = keyof typeof KINDS;

export function isKind(word: string): word is Kind {
  return Object.hasOwn(KINDS, word);
}

/** Path of a new record, relative to the records folder. */
export function recordFile(kind: Kind, name: string, today: string): string {
  const id = fileName(name);
  if (kind === "episode") return `episodes/${id}/index.md`;
  if (kind === "note") return `notes/${today}-${id}.md`;
  return `${KINDS[kind].folder}/${id}.md`;
}

export function recordText(kind: Kind, facts: TemplateFacts): string {
  return ["---", `title: ${quoted(facts.title)}`, ...KINDS[kind].lines(facts), "---", "", KINDS[kind].body].join("\n");
}

/** Of a name that has a letter or digit at least. */
function fileName(name: string): string {
  const words = name
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/['’]/g, "")
    .match(/[\p{L}\p{N}]+/gu);
  return (words ?? []).join("-");
}

/** A title in YAML, in quotes only where plain text would be read as something else. */
function quoted(title: string): string {
  return /^[\p{L}][\p{L}\p{N} '’.-]*$/u.test(title) && !/^(true|false|null|yes|no|on|off)$/i.test(title)
    ? title
    : JSON.stringify(title);
}
