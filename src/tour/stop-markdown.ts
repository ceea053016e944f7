/** One stop as Markdown, in the order in which it is needed in the garden. */

import { stopLength } from "../films/index.ts";
import { capital, dayOnly, type Markdown, type Sentence, sayNumber, type Voice } from "../language/index.ts";
import type { Stop, VarietyRow } from "./brief.ts";
import type { Card } from "./cards/card.ts";
import { factParagraphs } from "./facts.ts";
import { seenBefore } from "./plan-words.ts";
import { levelWords, quietChanges } from "./show-values.ts";

/** Older changes than these are in the timeline and not worth a page. */
const mostChanges = 3;

export function stopMarkdown(
  stop: Stop,
  card: Pick<Card, "further" | "quoted"> | undefined,
  voice: Voice,
  write: Markdown,
): string {
  const parts = [
    heading(stop, write),
    standAndLink(stop, write),
    stop.show.map((point) => write.item(point, { before: `**${levelWords(point)}.** ` })).join("\n"),
    closing(stop, write),
    varietyTable(stop.varieties, write),
    gearLine(stop, write),
    facts(stop, write),
    listed("Finished since", unshown(stop, stop.finishedSince), write),
    changes(stop, voice, write),
    listed("Trouble", unshown(stop, stop.troubles), write),
    listed("Still to do", stop.tasks, write),
    pointTo(stop, write),
    shots(stop, write),
    more(card?.further ?? [], write),
    quoted(card?.quoted ?? [], write),
  ];
  return parts.filter((part) => part !== "").join("\n\n");
}

/** "### 3 · Long Bed · 2 min 10 · from 9:21 · sun behind you until 10:40" */
function heading({ number, title, seconds, from, light }: Stop, { md }: Markdown): string {
  const parts = [
    String(number),
    md(title),
    stopLength(seconds),
    from === undefined ? undefined : `from ${from}`,
    light === undefined ? undefined : md(light),
  ];
  return `### ${parts.filter((part) => part !== undefined).join(" · ")}`;
}

/** "*Ten steps north from the bean row; from the gate post, chest height.* “On to the long bed, bare when you last saw it.” …" */
function standAndLink(stop: Stop, write: Markdown): string {
  const { md, sentence, below } = write;
  const way = [stop.way, stop.spot.text === "" ? undefined : stop.spot.text].filter((part) => part !== undefined);
  const link = stop.outline[0];
  const parts = [
    ...(way.length === 0 ? [] : [`*${md(capital(way.join("; ")))}.*`]),
    ...(link === undefined ? [] : [`“${md(link.text)}”`]),
    ...seenBefore(stop).map(sentence),
  ];
  return `${parts.join(" ")}${below([...(link === undefined ? [] : [link]), ...seenBefore(stop)])}`;
}

/** What the outline ends on, when that is more than the last thing shown. */
function closing({ outline, close }: Stop, { md, below }: Markdown): string {
  const last = outline.at(-1);
  return close === undefined || last === undefined ? "" : `Close: “${md(close)}”${below([last])}`;
}

function varietyTable(rows: readonly VarietyRow[], { md }: Markdown): string {
  if (rows.length === 0) return "";
  const lines = rows.map((row) => {
    const name = `${md(row.label)}${row.newThisYear ? " · **new this year**" : ""}${row.private ? " · private" : ""}`;
    return `| ${[name, row.howMany, row.say, row.from].map((text) => text.replaceAll("|", "\\|")).join(" | ")} |`;
  });
  return ["| | how many | say | from |", "|---|---|---|---|", ...lines].join("\n");
}

function gearLine(stop: Stop, { md }: Markdown): string {
  return stop.gear.length === 0 ? "" : `Gear here: ${stop.gear.map((row) => md(row.title)).join(", ")}.`;
}

/** Facts of what is shown, and of the bed; the rest is in the data and on the page. */
function facts(stop: Stop, { item }: Markdown): string {
  return factParagraphs(stop)
    .filter(({ shown }) => shown !== "no")
    .map((paragraph) => item(paragraph))
    .join("\n");
}

/** What changed and was not told yet by what is shown. */
function changes(stop: Stop, voice: Voice, { item }: Markdown): string {
  const elsewhere = [...stop.show, ...stop.finishedSince, ...stop.troubles];
  const told = new Set(elsewhere.flatMap(({ sources }) => sources.map(({ file, line }) => `${file}:${line}`)));
  const untold = stop.changes.filter(
    ({ kind, sources }) => !quietChanges.has(kind) && !sources.some(({ file, line }) => told.has(`${file}:${line}`)),
  );
  if (untold.length === 0) return "";
  const latest = untold.slice(-mostChanges).toReversed();
  const older = untold.length - latest.length;
  const more = older === 0 ? "" : `\n- and ${sayNumber(older)} earlier, in the timeline`;
  const since = stop.since.episode === undefined ? "this season" : stop.since.text;
  const lines = latest.map((line) => item(line, { before: `${dayOnly(line.day, voice)}: ` }));
  return `Also ${since}:\n\n${lines.join("\n")}${more}`;
}

function unshown(stop: Stop, lines: readonly Sentence[]): readonly Sentence[] {
  return lines.filter((line) => !stop.show.some((point) => point.text === line.text));
}

function listed(title: string, lines: readonly Sentence[], { sentence, below }: Markdown): string {
  return lines.length === 0 ? "" : `${title}: ${lines.map(sentence).join(" ")}${below(lines)}`;
}

/** What the card had no room for, in the person's own words where they are theirs. */
function more(further: readonly Sentence[], { sentence, below }: Markdown): string {
  return further.length === 0 ? "" : `Could be said: ${further.map(sentence).join(" · ")}.${below(further)}`;
}

/** Lines that no fact holds: for the person to say, or to settle. */
function quoted(lines: readonly Sentence[], { item }: Markdown): string {
  return lines.length === 0
    ? ""
    : `In your notes, and not on record yet:\n\n${lines.map((line) => item(line)).join("\n")}`;
}

/** "Point to: *Planting day*, 24 May, at 6:40." */
function pointTo(stop: Stop, { md, below }: Markdown): string {
  if (stop.pointTo.length === 0) return "";
  const films = stop.pointTo.map(({ title, text, link, about }) => {
    const rest = text.slice(title.length);
    const name = link === undefined ? `*${md(title)}*` : `[${md(title)}](${link})`;
    return `${name}${md(rest)} (${md(about)})`;
  });
  return `Point to: ${films.join(" · ")}.${below(stop.pointTo)}`;
}

/** Where the camera stands for the wide shot is told above, so here it is only named. */
function shots(stop: Stop, { md }: Markdown): string {
  const words = (shot: Stop["shots"][number]) => {
    if (shot.kind === "walk-in") return "walk-in";
    if (shot.kind !== "wide") return md(shot.text);
    const match = /match the photo of .+$/.exec(shot.text)?.[0];
    return match === undefined ? "wide" : `wide, ${md(match)}`;
  };
  return `Shots: ${stop.shots.map((shot) => `${shot.id} ${words(shot)}`).join(" · ")}.`;
}
