/** The dossier as Markdown: what stands behind the cards, stop by stop, for "which variety is that". */
import { type Markdown, sayPlural } from "../language/index.ts";
import type { GardenSettings } from "../model.ts";
import type { Brief, Stop } from "./brief.ts";
import type { Card } from "./cards/card.ts";
import { coverLight, toSettle } from "./cards/cover.ts";
import { leftOutWords, lightWords, planWords, scoreBars } from "./plan-words.ts";
import { stopMarkdown } from "./stop-markdown.ts";

export interface DossierParts {
  readonly write: Markdown;
  /** What the card of a stop had no room for, by stop id. */
  readonly cardAt: ReadonlyMap<string, Pick<Card, "further" | "quoted">>;
}

export function dossierMarkdown(brief: Brief, settings: GardenSettings, { write, cardAt }: DossierParts): string {
  const voice = { settings, day: brief.date };
  const parts = [
    head(brief, write),
    ...brief.stops.flatMap((stop, index) => [
      siteHeading(brief.stops, index, write),
      stopMarkdown(stop, cardAt.get(stop.id), voice, write),
    ]),
    leftOut(brief, write),
    thePlan(brief, write),
  ];
  return parts.filter((part) => part !== "").join("\n\n");
}

function head(brief: Brief, { md }: Markdown): string {
  const bars = scoreBars(brief.plan.startScores);
  const light = coverLight(brief) === undefined ? lightWords(brief) : undefined;
  const sky = [bars === undefined ? undefined : `\`${bars}\``, light].filter((part) => part !== undefined);
  return ["# Dossier", md(planWords(brief)), ...(sky.length === 0 ? [] : [sky.join(" ")])].join("\n\n");
}

function siteHeading(stops: readonly Stop[], index: number, { md }: Markdown): string {
  const site = stops[index]?.siteTitle;
  return site === undefined || site === stops[index - 1]?.siteTitle ? "" : `## ${md(site)}`;
}

function leftOut(brief: Brief, { md }: Markdown): string {
  const words = leftOutWords(brief);
  if (words === undefined) return "";
  const lines = words.lines.map((line) => md(line).replaceAll("\\`", "`"));
  const more = words.more === 0 ? [] : [`and ${sayPlural(words.more, "smaller thing", "smaller things")}`];
  return `## ${words.title}\n\n${[...lines, ...more].join(" · ")}.`;
}

/** What the plan asks and the cover had no room for. */
function thePlan(brief: Brief, { item }: Markdown): string {
  const settled = new Set(toSettle(brief).map(({ text }) => text));
  const lines = [...brief.checks, ...brief.tasks.filter(({ overdue }) => !overdue)].filter(
    ({ text }) => !settled.has(text),
  );
  return lines.length === 0 ? "" : `## About the plan\n\n${lines.map((line) => item(line)).join("\n")}`;
}
