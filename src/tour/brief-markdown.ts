/** The brief as Markdown that reads as it is, in any editor or on paper. */
import { type Markdown, markdownWriter, sayPlural } from "../language/index.ts";
import type { GardenSettings } from "../model.ts";
import type { Brief, FollowUpLine, Stop } from "./brief.ts";
import { headLine, leftOutWords, lightWords, planWords, scoreBars } from "./plan-words.ts";
import { stopMarkdown } from "./stop-markdown.ts";

export interface MarkdownOptions {
  /** Under each sentence, the file and line it rests on. */
  readonly sources?: boolean | undefined;
}

export function briefMarkdown(
  brief: Brief,
  settings: GardenSettings,
  { sources = false }: MarkdownOptions = {},
): string {
  const write = markdownWriter(sources);
  const voice = { settings, day: brief.date };
  const parts = [
    head(brief, settings, write),
    opening(brief, write),
    owed(brief, write),
    ...brief.stops.flatMap((stop, index) => [siteHeading(brief.stops, index, write), stopMarkdown(stop, voice, write)]),
    leftOut(brief, write),
    before(brief, settings, write),
    care(brief, write),
  ];
  return `${parts.filter((part) => part !== "").join("\n\n")}\n`;
}

function head(brief: Brief, settings: GardenSettings, { md }: Markdown): string {
  const bars = scoreBars(brief.plan.startScores);
  const light = [bars === undefined ? undefined : `\`${bars}\``, lightWords(brief)].filter(
    (part) => part !== undefined,
  );
  return [
    `# ${md(brief.title)}`,
    `**${md(headLine(brief, settings))}**`,
    md(planWords(brief)),
    ...(light.length === 0 ? [] : [light.join(" ")]),
  ].join("\n\n");
}

function opening(brief: Brief, { item }: Markdown): string {
  if (brief.opening.length === 0) return "";
  const lines = brief.opening.map((line, index) => item(line, { mark: `${index + 1}.` }));
  return `${brief.opening.length === 1 ? "Open with this:" : "Open with one of these:"}\n\n${lines.join("\n")}`;
}

function owed(brief: Brief, { item }: Markdown): string {
  if (brief.followUps.length === 0) return "";
  const lines = brief.followUps.map((line) => item(line, { before: standing(line), after: whereKept(line, brief) }));
  return `## Owed to viewers\n\n${lines.join("\n")}`;
}

function standing(line: FollowUpLine): string {
  return line.standing === "overdue" ? "**Overdue.** " : line.standing === "due" ? "**Due.** " : "";
}

function whereKept(line: FollowUpLine, brief: Brief): string {
  const stop = brief.stops.find((each) => each.id === line.stop);
  return stop === undefined ? " *(no stop of this tour)*" : ` *(stop ${stop.number})*`;
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

function before(brief: Brief, settings: GardenSettings, { item, md }: Markdown): string {
  const lines = [
    ...brief.checks.map((line) => item(line)),
    ...brief.tasks.filter((task) => !task.overdue).map((task) => item(task)),
    ...(settings.kit.length === 0 ? [] : [`- Pack: ${settings.kit.map(md).join(" · ")}.`]),
  ];
  return lines.length === 0 ? "" : `## Before you film\n\n${lines.join("\n")}`;
}

/** Cautions the stops had no room for, and once for all of them whom to call. */
function care({ stops, closingCaution }: Brief, { item, md }: Markdown): string {
  if (closingCaution === undefined) return "";
  const further = stops.flatMap(({ number, furtherCautions }) =>
    furtherCautions.map((line) => item(line, { after: ` *(stop ${number})*` })),
  );
  return [`## Care`, ...(further.length === 0 ? [] : [further.join("\n")]), md(closingCaution)].join("\n\n");
}
