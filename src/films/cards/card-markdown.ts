/** One card as Markdown that reads as it is. */
import type { Markdown, Sentence } from "../../language/index.ts";
import { type CardTitles, type CoverRow, type NameToSay, type SpokenCard, tourTitles } from "./card.ts";
import { clockOf } from "./clock.ts";

/** The card in the order in which it is spoken; `below` is what stands under it: shots to tick, photos to show. */
export function cardMarkdown(
  card: SpokenCard,
  below: string,
  write: Markdown,
  titles: CardTitles = tourTitles,
): string {
  const { md, below: sources } = write;
  const head = [
    `## ${card.number} ${md(card.title)}`,
    clockOf(card.seconds),
    `${clockOf(card.begins)} gone`,
    ...(card.light === undefined ? [] : [md(card.light)]),
  ].join(" · ");
  const part = (
    title: string,
    phrases: readonly Sentence[],
    words: (one: Sentence) => string = ({ text }) => md(text),
  ) => (phrases.length === 0 ? [] : [`- ${title}: ${phrases.map(words).join(" · ")}${sources(phrases)}`]);
  const one = (phrase: Sentence | undefined) => (phrase === undefined ? [] : [phrase]);
  const lines = [
    ...part(titles.before, one(card.before)),
    ...part(titles.now, card.now, (phrase) => nowWords(phrase, write)),
    ...part("Figure", one(card.figure)),
    ...part(titles.why, one(card.why)),
    ...part("Names", card.names, (name) => nameWords(name as NameToSay, write)),
    ...part("**SAY ALOUD**", card.aloud, ({ text }) => `“${md(text)}”`),
    ...part("Next", one(card.next)),
  ];
  return [head, `**“${md(card.opening.text)}”**${sources([card.opening])}`, lines.join("\n"), below]
    .filter((text) => text !== "")
    .join("\n\n");
}

function nowWords(phrase: Sentence & { readonly hand?: string | undefined }, { md }: Markdown): string {
  const { hand, text } = phrase;
  return hand !== undefined && text.startsWith(hand) ? `*${md(hand)}*${md(text.slice(hand.length))}` : md(text);
}

function nameWords({ name, say, standing }: NameToSay, { md }: Markdown): string {
  const cue = say === undefined ? undefined : md(say);
  const kind = standing === undefined ? undefined : standing === "new to this garden" ? `**${standing}**` : standing;
  return `${md(name)}: ${[cue, kind].filter((part) => part !== undefined).join(", ")}`;
}

/** "1 Long Bed 1:20", a must in bold, what may fall out first in brackets. */
export function rowMarkdown({ number, title, seconds, must, mayGo }: CoverRow, { md }: Markdown): string {
  const words = `${number} ${md(title)} ${clockOf(seconds)}`;
  if (mayGo) return `(${words})`;
  return must ? `**${words}**` : words;
}
