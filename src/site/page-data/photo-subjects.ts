/** What a photo of a variety shows of it, by the words of its caption and its file name. */
import type { Photo, Variety } from "../../model.ts";

/** In the order in which a plate shows them. */
export const SUBJECTS = ["close-up", "cut open", "leaf", "flower", "seed", "in the hand"] as const;

export type Subject = (typeof SUBJECTS)[number];

/** Words that say it; of several the first row wins: "cut open in the hand" is looked at for what is inside. */
const WORDS: readonly (readonly [subject: Subject, says: string])[] = [
  ["cut open", "cut open, cut in half, cut through, cut, halved, half, sliced, slice, inside, split"],
  ["seed", "seed, seeds, pips"],
  ["flower", "flower, flowers, blossom, blossoms, bloom, blooms, in flower"],
  ["leaf", "leaf, leaves, foliage"],
  ["in the hand", "in the hand, in hand, in my hand, hand, hands, palm, held"],
  [
    "close-up",
    "close-up, close up, closeup, fruit, fruits, truss, pod, pods, head, root, roots, bulb, bulbs, ripe, whole",
  ],
];

const ROWS = WORDS.map(([subject, says]) => ({ subject, says: says.split(", ").map(plain) }));

/** Undefined where no word tells it. A variety's own name tells nothing: "Red Leaf", "Flower Sprout". */
export function subjectOf(
  { path, caption = "" }: Pick<Photo, "path" | "caption">,
  variety: Variety,
): Subject | undefined {
  const file = path.slice(path.lastIndexOf("/") + 1).replace(/\.[^.]*$/u, "");
  const names = [variety.title, ...variety.alsoSpelled, variety.id].map(plain);
  // A caption is meant for people, a file name may be the camera's: the caption speaks first.
  for (const said of [caption, file]) {
    const words = names.reduce((text, name) => text.replace(` ${name} `, " "), ` ${plain(said)} `);
    const row = ROWS.find(({ says }) => says.some((one) => words.includes(` ${one} `)));
    if (row !== undefined) return row.subject;
  }
  return undefined;
}

function plain(text: string): string {
  return text
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^\p{L}]+/gu, " ")
    .trim();
}
