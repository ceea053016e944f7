/** The cover and the cards as Markdown that reads as it is; the dossier follows them. */
import { type Markdown, markdownWriter, type Sentence, sayPlural } from "../../language/index.ts";
import type { GardenSettings } from "../../model.ts";
import { dossierMarkdown } from "../dossier-markdown.ts";
import type { Card, CardSet, CardShot, Cover, CoverRow, NameToSay, Owed } from "./card.ts";
import { clockOf } from "./clock.ts";

export interface MarkdownOptions {
  /** Under each phrase, the file and line it rests on. */
  readonly sources?: boolean | undefined;
}

export function cardsMarkdown(
  { cover, cards, dossier }: CardSet,
  settings: GardenSettings,
  { sources = false }: MarkdownOptions = {},
): string {
  const write = markdownWriter(sources);
  const cardAt = new Map(cards.map((card) => [card.id, card]));
  const parts = [
    coverMarkdown(cover, write),
    ...cards.map((card) => cardMarkdown(card, write)),
    "---",
    dossierMarkdown(dossier, settings, { write, cardAt }),
  ];
  return `${parts.join("\n\n")}\n`;
}

function coverMarkdown(cover: Cover, write: Markdown): string {
  const { md } = write;
  const head = [cover.day, cover.length, sayPlural(cover.stops, "stop", "stops")].map(md).join(" · ");
  const when = [cover.times, cover.light].filter((part) => part !== undefined).map(md);
  return [
    `# ${md(cover.title)}`,
    `**${head}**`,
    when.join(" "),
    cover.film === undefined
      ? ""
      : `**The film in a sentence:** ${write.sentence(cover.film)}${write.below([cover.film])}`,
    listed("Or open with:", cover.openers, write),
    cover.rows.map((row) => rowMarkdown(row, write)).join(" · "),
    line("Falls out first", cover.fallsOut, write),
    owed(cover, write),
    listed("Settle before you go:", cover.settle, write),
    cautions(cover, write),
    cover.kit.length === 0 ? "" : `Pack: ${cover.kit.map(md).join(" · ")}.`,
  ]
    .filter((part) => part !== "")
    .join("\n\n");
}

/** "1 Long Bed 1:20", a must in bold, what may fall out first in brackets. */
function rowMarkdown({ number, title, seconds, must, mayGo }: CoverRow, { md }: Markdown): string {
  const words = `${number} ${md(title)} ${clockOf(seconds)}`;
  if (mayGo) return `(${words})`;
  return must ? `**${words}**` : words;
}

/** " (5, shot S5.3)"; what waits is kept nowhere yet. */
export function keptWhere({ standing, stop, shot }: Pick<Owed, "standing" | "stop" | "shot">): string {
  if (standing === "waiting") return "";
  if (stop === undefined) return " (at no stop)";
  return shot === undefined ? ` (${stop})` : ` (${stop}, shot ${shot})`;
}

const standings = [
  ["overdue", "Overdue"],
  ["due", "Owed now"],
  ["open", "Owed some time"],
  ["waiting", "Waiting until the notes say so"],
] as const;

function owed({ owed: all }: Cover, { md, below }: Markdown): string {
  return standings
    .flatMap(([standing, title]) => {
      const lines = all.filter((one) => one.standing === standing);
      if (lines.length === 0) return [];
      const said = lines.map((one) => `${md(one.text)}${keptWhere(one)}`);
      return [`**${title}:** ${said.join(" · ")}.${below(lines)}`];
    })
    .join("\n\n");
}

function cautions({ cautions: all, poison }: Cover, { md, item }: Markdown): string {
  if (all.length === 0 && poison === undefined) return "";
  const lines = all.map((caution) => item(caution, { after: ` *(${caution.stops.join(", ")})*` }));
  return ["Take care:", lines.join("\n"), poison === undefined ? "" : md(poison)]
    .filter((part) => part !== "")
    .join("\n\n");
}

function listed(title: string, lines: readonly Sentence[], { item }: Markdown): string {
  return lines.length === 0 ? "" : `${title}\n\n${lines.map((one) => item(one)).join("\n")}`;
}

function line(title: string, phrases: readonly Sentence[], { sentence, below }: Markdown): string {
  return phrases.length === 0 ? "" : `${title}: ${phrases.map(sentence).join(" · ")}.${below(phrases)}`;
}

function cardMarkdown(card: Card, write: Markdown): string {
  const { md, below } = write;
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
  ) => (phrases.length === 0 ? [] : [`- ${title}: ${phrases.map(words).join(" · ")}${below(phrases)}`]);
  const one = (phrase: Sentence | undefined) => (phrase === undefined ? [] : [phrase]);
  const lines = [
    ...part("Then", one(card.before)),
    ...part("Now", card.now, (phrase) => nowWords(phrase, write)),
    ...part("Figure", one(card.figure)),
    ...part("Why", one(card.why)),
    ...part("Names", card.names, (name) => nameWords(name as NameToSay, write)),
    ...part("**SAY ALOUD**", card.aloud, ({ text }) => `“${md(text)}”`),
    ...part("Next", one(card.next)),
  ];
  return [
    head,
    `**“${md(card.opening.text)}”**${below([card.opening])}`,
    lines.join("\n"),
    card.shots.map((shot) => `☐ ${shotWords(shot, write)}`).join(" · "),
  ]
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

function shotWords({ text, hold, cutaway, match }: CardShot, { md }: Markdown): string {
  return [
    `${cutaway ? "cutaway: " : ""}${md(text)}`,
    match === undefined ? undefined : "match the photo",
    hold ? "hold 10" : undefined,
  ]
    .filter((part) => part !== undefined)
    .join(", ");
}
