/**
 * The brief as one page to read on a phone or to print: no request to anywhere, no script, its one style sheet allowed by
 * hash. Private: it carries promises, private notes and what is missing.
 */
import { createHash } from "node:crypto";
import type { Garden } from "../model.ts";
import { capital, sayDay, sayNumber } from "../timeline/index.ts";
import {
  type Brief,
  type FollowUpLine,
  factParagraphs,
  levelWords,
  quietChanges,
  type Sentence,
  type ShowPoint,
  type Stop,
  targetWords,
  type VarietyRow,
} from "../tour/index.ts";
import { briefStyle } from "./brief-page-style.ts";
import { carriedFonts } from "./carried-fonts.ts";

/** Older changes than these are read in the timeline. */
const mostChanges = 40;

/** A whole HTML document. With a `paper` it prints on that and no other; without, on whatever lies in the printer. */
export function briefPage(brief: Brief, garden: Garden, paper?: "A4" | "Letter"): string {
  const sheet = paper === undefined ? "" : `@page { size: ${paper}; }`;
  const style = `${carriedFonts("Brief")}${briefStyle}${sheet}`;
  const hash = createHash("sha256").update(style).digest("base64");
  const policy = `default-src 'none'; style-src 'sha256-${hash}'; font-src data:; base-uri 'none'; form-action 'none'`;
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Private · ${text(brief.title)} · ${text(garden.settings.name)}</title>
<meta name="robots" content="noindex, nofollow">
<meta name="referrer" content="no-referrer">
<meta name="color-scheme" content="light dark">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<style>${style}</style>
</head>
<body>
<header class="mark"><strong>Private</strong> Field page. Not for viewers, not for the web.</header>
<main>
${head(brief)}
<div class="paper${wordsToPrint(brief) > fullPaper ? " tight" : ""}">
${opening(brief)}
${owed(brief)}
${brief.stops.map((stop, index) => `${siteHeading(brief.stops, index)}${stopHtml(stop, brief, garden.settings.language)}`).join("\n")}
${leftOut(brief)}
${before(brief)}
</div>
</main>
<footer>${text(garden.settings.name)}. Private field page.</footer>
</body>
</html>
`;
}

/**
 * Letters that two sheets of A4 or Letter hold beside the lists at the end. A fuller brief leaves out on paper what could
 * be shown, so that ten stops stay on two sheets; measured on the demo garden's tours.
 */
const fullPaper = 25_000;

function wordsToPrint(brief: Brief): number {
  const ofStop = (stop: Stop) => [
    ...stop.show,
    ...factParagraphs(stop),
    ...stop.lastSeen,
    ...stop.tasks,
    ...stop.troubles,
    ...stop.cautions,
    ...stop.disclosures,
    ...stop.varieties.map((row) => ({ text: `${row.label} ${row.howMany} ${row.say} ${row.from}` })),
  ];
  const lines = [...brief.opening, ...brief.stops.flatMap(ofStop), ...brief.leftOut, ...brief.checks];
  return lines.reduce((sum, line) => sum + line.text.length, 0);
}

function head(brief: Brief): string {
  const parts = [
    brief.dateText,
    brief.target === undefined ? undefined : targetWords(brief.target),
    brief.start === undefined ? undefined : `start ${brief.start.replace(/^0/, "")}`,
    brief.sinceText === undefined ? "the first tour" : `since ${brief.sinceText}`,
  ].filter((part) => part !== undefined);
  return `<h1>${text(brief.title)}</h1>
<p class="when">${parts.map(text).join(" · ")}</p>`;
}

function opening(brief: Brief): string {
  if (brief.opening.length === 0) return "";
  const title = brief.opening.length === 1 ? "Open with this" : "Open with one of these";
  return `<section><h2>${title}</h2><ol class="lines">${brief.opening.map((line) => `<li>${sentence(line)}</li>`).join("")}</ol></section>`;
}

function owed(brief: Brief): string {
  if (brief.followUps.length === 0) return "";
  const item = (line: FollowUpLine) => {
    const stop = brief.stops.find((each) => each.id === line.stop);
    const where = stop === undefined ? "no stop of this tour" : `stop ${stop.number}`;
    const standing = line.standing === "open" ? "" : `<span class="level">${capital(line.standing)}</span>`;
    return `<li${stop === undefined ? "" : ' class="kept"'}>${standing}${sentence(line)} <span class="why">(${where})</span></li>`;
  };
  const kept = brief.followUps.every((line) => line.stop !== undefined);
  return `<section${kept ? ' class="kept"' : ""}><h2>Owed to viewers</h2><ul class="lines">${brief.followUps.map(item).join("")}</ul></section>`;
}

function siteHeading(stops: readonly Stop[], index: number): string {
  const site = stops[index]?.siteTitle;
  return site === undefined || site === stops[index - 1]?.siteTitle ? "" : `<h2 class="site">${text(site)}</h2>\n`;
}

function stopHtml(stop: Stop, brief: Brief, language: string): string {
  const facts = factParagraphs(stop);
  const said =
    facts.length === 0
      ? ""
      : `<ul class="facts">${facts.map((fact) => `<li${fact.about === "bed" ? ' class="screen"' : ""}>${sentence(fact)}</li>`).join("")}</ul>`;
  return `<article class="stop" id="${stop.id.toLowerCase()}">
<header><h3><span class="number">${stop.number}</span> ${text(stop.title)}</h3>
${stop.spot.text === "" ? "" : `<p class="spot">${text(capital(stop.spot.text))}.</p>`}
${stop.lastSeen.length === 0 ? "" : `<p class="seen">${stop.lastSeen.map(sentence).join(" ")}</p>`}</header>
<div class="told"><ul class="show">${stop.show.map(showItem).join("")}</ul>
${said}
${notes(stop)}</div>
<div class="listed">${varietyTable(stop.varieties)}
${changes(stop, brief, language)}</div>
</article>`;
}

function showItem(point: ShowPoint): string {
  const classes = [point.level, point.kind === "new" ? "is-new" : ""].filter((name) => name !== "").join(" ");
  return `<li class="${classes}"><label><input type="checkbox" id="${point.id.toLowerCase().replace(".", "-")}"><span><span class="level">${levelWords(point)}.</span>${sentence(point)}</span></label></li>`;
}

/** The roles are said outright, because on a phone and on paper the rows are laid out as lines of text. */
function varietyTable(rows: readonly VarietyRow[]): string {
  if (rows.length === 0) return "";
  const cell = (words: string) => `<td role="cell">${text(words)}</td>`;
  const line = (row: VarietyRow) => {
    const fresh = row.newThisYear ? ' <span class="new">new this year</span>' : "";
    const own = row.private ? ' <span class="own">private</span>' : "";
    const name = `<th scope="row" role="rowheader">${text(row.label)}${fresh}${own}</th>`;
    return `<tr role="row">${name}${cell(row.howMany)}${cell(row.say)}${cell(row.from)}</tr>`;
  };
  const head = ["Variety", "How many", "Say", "From"]
    .map((title) => `<th scope="col" role="columnheader">${title}</th>`)
    .join("");
  return `<table role="table"><thead role="rowgroup"><tr role="row">${head}</tr></thead><tbody role="rowgroup">${rows.map(line).join("")}</tbody></table>`;
}

function notes(stop: Stop): string {
  const shown = new Set(stop.show.map((point) => point.text));
  const unshown = (lines: readonly Sentence[]) => lines.filter((line) => !shown.has(line.text));
  const parts: readonly (readonly [string, readonly Sentence[]])[] = [
    ["Finished since", unshown(stop.finishedSince)],
    ["Trouble", unshown(stop.troubles)],
    ["Still to do", stop.tasks],
    ["Say it", stop.disclosures],
    ["Care", stop.cautions],
  ];
  const lines = parts
    .filter(([, all]) => all.length > 0)
    .map(([title, all]) => `<p><b>${title}:</b> ${all.map(sentence).join(" ")}</p>`);
  const gear =
    stop.gear.length === 0 ? [] : [`<p><b>Gear here:</b> ${stop.gear.map((row) => text(row.title)).join(", ")}.</p>`];
  const all = [...gear, ...lines];
  return all.length === 0 ? "" : `<div class="notes">${all.join("")}</div>`;
}

function changes(stop: Stop, brief: Brief, language: string): string {
  const told = stop.changes.filter((change) => !quietChanges.has(change.kind));
  if (told.length === 0) return "";
  const since = stop.since.episode === undefined ? "this season" : stop.since.text;
  const latest = told.slice(-mostChanges).toReversed();
  const older = told.length - latest.length;
  const rest = older === 0 ? "" : `<li>and ${sayNumber(older)} earlier, in the timeline</li>`;
  const items = latest.map(
    (line) => `<li>${text(sayDay(line.day, { language, near: brief.date }))}: ${sentence(line)}</li>`,
  );
  return `<details><summary>Everything ${text(since)}</summary><ul>${items.join("")}${rest}</ul></details>`;
}

function leftOut(brief: Brief): string {
  if (brief.leftOut.length === 0) return "";
  const lines = brief.leftOut.map((line) => {
    const time =
      line.seconds === undefined ? "" : ` <span class="why">(${sayNumber(line.seconds)} seconds to say)</span>`;
    return `<li>${capital(sentence(line))}${line.miss === undefined ? "." : ""}${time}</li>`;
  });
  return `<section><h2>Not in this tour</h2><ul class="lines">${lines.join("")}</ul></section>`;
}

function before(brief: Brief): string {
  const tasks = brief.tasks.filter((task) => !task.overdue);
  const lines = [...brief.checks, ...tasks].map(sentence);
  const pack = brief.kit.length === 0 ? [] : [`Pack: ${brief.kit.map(text).join(" · ")}.`];
  const tick = (line: string, index: number) =>
    `<li><label><input type="checkbox" id="before-${index + 1}"><span>${line}</span></label></li>`;
  if (lines.length + pack.length === 0) return "";
  return `<section><h2>Before you film</h2><ul class="ticks">${[...lines, ...pack].map(tick).join("")}</ul></section>`;
}

function sentence(line: Sentence): string {
  const cued = text(line.text).replace(/\(say ([^)]+)\)/g, "(say <em>$1</em>)");
  return line.private ? `${cued} <span class="own">private, not for the film</span>` : cued;
}

function text(words: string): string {
  return words.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");
}
