/** The brief as Markdown that reads as it is, in any editor or on paper. */
import type { GardenSettings } from "../model.ts";
import { capital, sayNumber, sayPlural } from "../timeline/index.ts";
import type { Brief, Check, FollowUpLine, Sentence, ShowPoint, Stop, VarietyRow } from "./brief.ts";
import { dayOnly, type Speech } from "./days-said.ts";
import { factParagraphs } from "./facts.ts";
import { levelWords, quietChanges } from "./show-values.ts";

/** Older changes than these are in the timeline and not worth a page. */
const mostChanges = 8;

export function briefMarkdown(brief: Brief, settings: GardenSettings): string {
  const speech: Speech = { settings, day: brief.date };
  const parts = [
    head(brief),
    opening(brief),
    owed(brief),
    ...brief.stops.flatMap((stop, index) => [siteHeading(brief.stops, index), stopMarkdown(stop, speech)]),
    leftOut(brief),
    before(brief, settings),
  ];
  return `${parts.filter((part) => part !== "").join("\n\n")}\n`;
}

function head(brief: Brief): string {
  const target = brief.target === undefined ? undefined : targetWords(brief.target);
  const parts = [
    brief.dateText,
    target,
    brief.start === undefined ? undefined : `start ${brief.start.replace(/^0/, "")}`,
    brief.sinceText === undefined ? "the first tour" : `since ${brief.sinceText}`,
  ];
  const line = parts.filter((part) => part !== undefined).join(" · ");
  return `# ${md(brief.title)}\n\n**${line}**\n\n${lengthLine(brief)}`;
}

/** How long the words take, so that a tour that cannot fit is seen before the camera runs. */
function lengthLine(brief: Brief): string {
  const stops = capital(sayPlural(brief.stops.length, "stop", "stops"));
  return `${stops}. Saying what must be shown takes about ${minutes(brief.seconds.must)}, with what should be shown ${minutes(brief.seconds.should)}; walking and looking come on top.`;
}

/** "12 minutes", "90 seconds": what the film should last, in digits as on a clock. */
export function targetWords(seconds: number): string {
  const whole = Math.round(seconds / 60);
  if (seconds < 120 && seconds !== 60) return `${seconds} seconds`;
  return whole === 1 ? "1 minute" : `${whole} minutes`;
}

function minutes(seconds: number): string {
  if (seconds < 60) return `${sayNumber(seconds)} seconds`;
  const whole = Math.floor(seconds / 60);
  const half = seconds % 60 >= 30 ? " and a half" : "";
  return whole === 1 && half === "" ? "one minute" : `${sayNumber(whole)}${half} minutes`;
}

function opening(brief: Brief): string {
  if (brief.opening.length === 0) return "";
  const lines = brief.opening.map((line, index) => `${index + 1}. ${sentence(line)}`);
  return `${brief.opening.length === 1 ? "Open with this:" : "Open with one of these:"}\n\n${lines.join("\n")}`;
}

function owed(brief: Brief): string {
  if (brief.followUps.length === 0) return "";
  const lines = brief.followUps.map((line) => `- ${standing(line)}${sentence(line)}${whereKept(line, brief)}`);
  return `## Owed to viewers\n\n${lines.join("\n")}`;
}

function standing(line: FollowUpLine): string {
  return line.standing === "overdue" ? "**Overdue.** " : line.standing === "due" ? "**Due.** " : "";
}

function whereKept(line: FollowUpLine, brief: Brief): string {
  const stop = brief.stops.find((each) => each.id === line.stop);
  return stop === undefined ? " *(no stop of this tour)*" : ` *(stop ${stop.number})*`;
}

function siteHeading(stops: readonly Stop[], index: number): string {
  const site = stops[index]?.siteTitle;
  return site === undefined || site === stops[index - 1]?.siteTitle ? "" : `## ${md(site)}`;
}

function stopMarkdown(stop: Stop, speech: Speech): string {
  const parts = [
    `### ${stop.number} · ${md(stop.title)}`,
    [stop.spot.text === "" ? "" : `*${md(capital(stop.spot.text))}.*`, ...stop.lastSeen.map(sentence)]
      .filter((part) => part !== "")
      .join(" "),
    stop.show.map(showLine).join("\n"),
    varietyTable(stop.varieties),
    gearLine(stop),
    facts(stop),
    listed(
      "Finished since",
      stop.finishedSince.filter((line) => !stop.show.some((point) => point.text === line.text)),
    ),
    changes(stop, speech),
    listed(
      "Trouble",
      stop.troubles.filter((line) => !stop.show.some((point) => point.text === line.text)),
    ),
    listed("Still to do", stop.tasks),
    listed("Say it", stop.disclosures),
    listed("Care", stop.cautions),
  ];
  return parts.filter((part) => part !== "").join("\n\n");
}

function showLine(point: ShowPoint): string {
  return `- **${levelWords(point)}.** ${sentence(point)}`;
}

function varietyTable(rows: readonly VarietyRow[]): string {
  if (rows.length === 0) return "";
  const lines = rows.map((row) => {
    const name = `${md(row.label)}${row.newThisYear ? " · **new this year**" : ""}${row.private ? " · private" : ""}`;
    return `| ${[name, row.howMany, row.say, row.from].map(cell).join(" | ")} |`;
  });
  return ["| | how many | say | from |", "|---|---|---|---|", ...lines].join("\n");
}

function gearLine(stop: Stop): string {
  if (stop.gear.length === 0) return "";
  return `Gear here: ${stop.gear.map((row) => md(row.title)).join(", ")}.`;
}

function facts(stop: Stop): string {
  return factParagraphs(stop)
    .map((paragraph) => `- ${sentence(paragraph)}`)
    .join("\n");
}

function changes(stop: Stop, speech: Speech): string {
  const told = stop.changes.filter((change) => !quietChanges.has(change.kind));
  if (told.length === 0) return "";
  const latest = told.slice(-mostChanges).toReversed();
  const older = told.length - latest.length;
  const more = older === 0 ? "" : `\n- and ${sayNumber(older)} earlier, in the timeline`;
  const since = stop.since.episode === undefined ? "This season" : capital(stop.since.text);
  return `${since}:\n\n${latest.map((line) => `- ${dayOnly(line.day, speech)}: ${sentence(line)}`).join("\n")}${more}`;
}

function listed(title: string, lines: readonly Sentence[]): string {
  return lines.length === 0 ? "" : `${title}: ${lines.map(sentence).join(" ")}`;
}

function leftOut(brief: Brief): string {
  if (brief.leftOut.length === 0) return "";
  const lines = brief.leftOut.map((line) => {
    const time = line.seconds === undefined ? "" : ` *(${sayNumber(line.seconds)} seconds to say)*`;
    return `- ${capital(sentence(line))}${line.miss === undefined ? "." : ""}${time}`;
  });
  return `## Not in this tour\n\n${lines.join("\n")}`;
}

function before(brief: Brief, settings: GardenSettings): string {
  const lines = [
    ...brief.checks.map((line: Check) => `- ${sentence(line)}`),
    ...brief.tasks.filter((task) => !task.overdue).map((task) => `- ${sentence(task)}`),
    ...(settings.kit.length === 0 ? [] : [`- Pack: ${settings.kit.map(md).join(" · ")}.`]),
  ];
  return lines.length === 0 ? "" : `## Before you film\n\n${lines.join("\n")}`;
}

function sentence(line: Sentence): string {
  const cued = md(line.text).replace(/\(say ([^)]+)\)/g, "(say *$1*)");
  return line.private ? `${cued} *(private: not for the film)*` : cued;
}

function cell(text: string): string {
  return text.replaceAll("|", "\\|");
}

/** Words from the records must not turn into marks of their own. */
function md(text: string): string {
  return text.replace(/[\\`*_[\]<>#]/g, "\\$&").replace(/\s+/g, " ");
}
