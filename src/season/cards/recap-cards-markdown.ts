/** The cover and the cards of a recap as Markdown that reads as it is; the report follows as their dossier. */
import { cardMarkdown, rowMarkdown } from "../../films/index.ts";
import { type Markdown, markdownWriter, type Sentence, sayDay, sayPlural } from "../../language/index.ts";
import type { GardenSettings } from "../../model.ts";
import { recapMarkdown } from "../recap-markdown.ts";
import { type RecapCards, type RecapCover, recapTitles, type ThreadCard } from "./recap-card.ts";

export function recapCardsMarkdown({ cover, cards, dossier }: RecapCards, settings: GardenSettings): string {
  const write = markdownWriter(false);
  const parts = [
    coverMarkdown(cover, write),
    ...cards.map((card) => cardMarkdown(card, photosOf(card, settings, write), write, recapTitles)),
    "---",
    recapMarkdown(dossier, settings),
    further(cards, write),
  ];
  return `${parts
    .map((part) => part.trimEnd())
    .filter((part) => part !== "")
    .join("\n\n")}\n`;
}

function coverMarkdown(cover: RecapCover, write: Markdown): string {
  const { md, sentence } = write;
  const list = (title: string, lines: readonly Sentence[]) =>
    lines.length === 0 ? "" : `${title}\n\n${lines.map((one) => write.item(one)).join("\n")}`;
  return [
    `# ${md(cover.title)}`,
    `**${[cover.span, cover.length, sayPlural(cover.cards, "card", "cards")].map(md).join(" · ")}**`,
    cover.year === undefined ? "" : `**The year in a sentence:** ${sentence(cover.year)}`,
    list("Or open with:", cover.openers),
    cover.rows.map((row) => rowMarkdown(row, write)).join(" · "),
    cover.fallsOut.length === 0 ? "" : `Not in this length: ${cover.fallsOut.map(sentence).join(" · ")}.`,
    list("Settle before you go:", cover.settle),
    list("Take care:", cover.cautions),
  ]
    .filter((part) => part !== "")
    .join("\n\n");
}

function photosOf({ photos }: ThreadCard, settings: GardenSettings, { md }: Markdown): string {
  return photos.length === 0
    ? ""
    : `Show: ${photos.map(({ path, day }) => `${sayDay(day, settings)} (${md(path)})`).join(" · ")}`;
}

function further(cards: readonly ThreadCard[], write: Markdown): string {
  const more = cards.filter(({ further: lines }) => lines.length > 0);
  return more.length === 0
    ? ""
    : `## What the cards had no room for\n\n${more
        .map(
          ({ number, title, further: lines }) =>
            `- ${number} ${write.md(title)}: ${lines.map(write.sentence).join(" · ")}`,
        )
        .join("\n")}`;
}
