/** Whether two texts speak of the same thing, by their words: "netted the brassicas" does of "net the brassicas by Friday". */

const empty = new Set(
  (
    "a an the this that these those it its my our your their some all more again and or but of in on at to for from by with into up out " +
    "off over against is are was were be been do did done will would how what when where whether which who if then them they i we you as " +
    "about after before still also just really finally today tomorrow yesterday soon need needs must should"
  ).split(" "),
);

/** Number words that stand in names of places and pots: "ten-litre pots" are "10 litre pots". */
const numbers: ReadonlyMap<string, string> = new Map(
  Object.entries({
    two: "2",
    three: "3",
    four: "4",
    five: "5",
    six: "6",
    seven: "7",
    eight: "8",
    nine: "9",
    ten: "10",
    twelve: "12",
    fifteen: "15",
    twenty: "20",
    thirty: "30",
    forty: "40",
    fifty: "50",
  }),
);

/** The telling words of a text in a form that endings do not change; each once, in order. */
export function wordsOf(text: string): readonly string[] {
  // Most lines say nothing beside names and numbers.
  if (text.trim() === "") return [];
  const words = text
    .normalize("NFD")
    .replace(/[\p{M}’']/gu, "")
    .toLowerCase()
    .match(/[\p{L}\p{N}]+/gu);
  return [...new Set((words ?? []).filter((word) => !empty.has(word)).map(stem))];
}

/**
 * The beginning of a word that its endings leave alone: net, nets, netted, netting are one. Crude on purpose: it only ever
 * compares words of one person's notes with one another.
 */
function stem(word: string): string {
  const number = numbers.get(word);
  if (number !== undefined) return number;
  if (word.length <= 3 || /\d/.test(word)) return word;
  const bare = word
    .replace(/(?:ies|ied)$/, "y")
    .replace(/(?<=[sxz]|ch|sh|o)es$/, "")
    .replace(/(?<=[^su])s$/, "")
    .replace(/(?<=..)(?:ed|ing)$/, "");
  const single = bare.length < word.length ? bare.replace(/([bdgklmnprt])\1$/, "$1") : bare;
  return single.length > 3 ? single.replace(/e$/, "") : single;
}

/** How much two word lists have in common, from 0 to 1: Dice's coefficient (Dice, Ecology 26:297-302, 1945). */
export function likeness(a: readonly string[], b: readonly string[]): number {
  if (a.length === 0 || b.length === 0) return 0;
  return (2 * a.filter((word) => b.includes(word)).length) / (a.length + b.length);
}
