/** The cover and the cards as Markdown that reads as it is; the dossier follows them. */
import { cardMarkdown, rowMarkdown } from "../../films/index.ts";
import { type Markdown, markdownWriter, type Sentence, sayPlural } from "../../language/index.ts";
import type { GardenSettings } from "../../model.ts";
import { dossierMarkdown } from "../dossier-markdown.ts";
import type { Card, CardShot, Owed, TourCards, TourCover } from "./card.ts";

export interface MarkdownOptions {
  /** Under each phrase, the file and line it rests on. */
  readonly sources?: boolean | undefined;
}

export function cardsMarkdown(
  { cover, cards, dossier }: TourCards,
  settings: GardenSettings,
  { sources = false }: MarkdownOptions = {},
): string {
  const write = markdownWriter(sources);
  const cardAt = new Map(cards.map((card) => [card.id, card]));
  const parts = [
    coverMarkdown(cover, write),
    ...cards.map((card) => cardMarkdown(card, shotList(card, write), write)),
    "---",
    dossierMarkdown(dossier, settings, { write, cardAt }),
  ];
  return `${parts.join("\n\n")}\n`;
}

function coverMarkdown(cover: TourCover, write: Markdown): string {
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
    listed("Worth asking yourself before you film:", cover.asks, write),
    listed("Settle before you go:", cover.settle, write),
    cautions(cover, write),
    cover.kit.length === 0 ? "" : `Pack: ${cover.kit.map(md).join(" · ")}.`,
  ]
    .filter((part) => part !== "")
    .join("\n\n");
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

function owed({ owed: all }: TourCover, { md, below }: Markdown): string {
  return standings
    .flatMap(([standing, title]) => {
      const lines = all.filter((one) => one.standing === standing);
      if (lines.length === 0) return [];
      const said = lines.map((one) => `${md(one.text)}${keptWhere(one)}`);
      return [`**${title}:** ${said.join(" · ")}.${below(lines)}`];
    })
    .join("\n\n");
}

function cautions({ cautions: all, poison }: TourCover, { md, item }: Markdown): string {
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

function shotList({ shots }: Card, write: Markdown): string {
  return shots.map((shot) => `☐ ${shotWords(shot, write)}`).join(" · ");
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
