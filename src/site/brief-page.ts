/**
 * The brief as one page to read on a phone or to print: no request to anywhere, no script, its one style sheet allowed by
 * hash. Private: it carries promises, private notes and what is missing.
 */

import { stopLength } from "../films/index.ts";
import { capital, type Sentence, sayDay, sayNumber, sayPlural } from "../language/index.ts";
import type { Garden } from "../model.ts";
import {
  type Brief,
  type Card,
  coverLight,
  factParagraphs,
  leftOutWords,
  levelWords,
  lightWords,
  planWords,
  quietChanges,
  type ShowPoint,
  type Stop,
  seenBefore,
  type TourCards,
  toSettle,
  type VarietyRow,
} from "../tour/index.ts";
import { lightChart } from "./brief-page-light.ts";
import { briefStyle } from "./brief-page-style.ts";
import { type CardPictures, cardSheets, coverHtml, pocketSheets } from "./cards-page.ts";
import { cardsPageStyle, pocketStyle } from "./cards-page-style.ts";
import { carriedFonts } from "./carried-fonts.ts";
import { escapeHtml } from "./escape-html.ts";
import { sealedHead } from "./sealed-head.ts";
import { unbroken } from "./unbroken.ts";

/** Older changes than these are read in the timeline. */
const mostChanges = 40;

/** The word along the left edge from top to bottom, as on the other field pages. */
const tape = `<svg class="tape" aria-hidden="true"><defs><pattern id="tape" width="24" height="163" patternUnits="userSpaceOnUse"><text transform="translate(17 127) rotate(-90)">Private</text></pattern></defs><rect class="ground" width="100%" height="100%"/><rect width="100%" height="100%" fill="url(#tape)"/></svg>`;

export interface Printing {
  /** By its units a garden prints on A4 or Letter. */
  readonly paper?: "A4" | "Letter" | undefined;
  /** By photo path: the views to match, carried in the page. */
  readonly pictures?: CardPictures | undefined;
  /** Cards of a quarter of the sheet, for a pocket. */
  readonly pocket?: boolean | undefined;
  /** Beds whose cards say something new since the last look; only while the page is served live. */
  readonly changed?: ReadonlySet<string> | undefined;
}

/** A whole HTML document: the cover, the cards two to a sheet, then the dossier. */
export function briefPage(
  { cover, cards, dossier: brief }: TourCards,
  garden: Garden,
  { paper, pictures = new Map(), pocket = false, changed }: Printing = {},
): string {
  const sheet = paper ?? (garden.settings.units === "us" ? "Letter" : "A4");
  const style = `${carriedFonts("Brief")}${briefStyle}${cardsPageStyle(sheet)}${pocket ? pocketStyle(sheet) : ""}`;
  const cardAt = new Map(cards.map((card) => [card.id, card]));
  return `${sealedHead(`${text(brief.title)} · ${text(garden.settings.name)}`, style, { pictures: pictures.size > 0, live: changed !== undefined })}
<body>
<header class="mark"><strong>Private</strong> Field page. Not for viewers, not for the web.</header>
${tape}
<main>
${changed === undefined ? "" : onScreen(cards, changed)}
${coverHtml(cover)}
${pocket ? pocketSheets(cards, pictures) : cardSheets(cards, pictures, changed)}
<section class="dossier-head"><h2>Dossier</h2>
<p class="plan">${text(planWords(brief))}${coverLight(brief) === undefined ? ` ${text(lightWords(brief) ?? "")}` : ""}</p>
${lightChart(brief.plan)}</section>
<div class="paper">
${brief.stops.map((stop, index) => `${siteHeading(brief.stops, index)}${stopHtml(stop, brief, garden.settings.language, cardAt.get(stop.id))}`).join("\n")}
${leftOut(brief)}
${aboutThePlan(brief)}
</div>
</main>
<footer>${text(garden.settings.name)}. Private field page.</footer>
</body>
</html>
`;
}

/** The way back, and which cards are new: not on paper. */
function onScreen(cards: readonly Card[], changed: ReadonlySet<string>): string {
  const fresh = cards
    .filter(({ bed }) => changed.has(bed))
    .map(({ number, title }) => `<a href="#card-${number}">${number} ${text(title)}</a>`);
  const said = fresh.length === 0 ? "" : `<p class="changed">New since you last looked: ${fresh.join(" · ")}.</p>`;
  return `<nav class="live"><p><a href="/">Today</a></p>${said}</nav>`;
}

function siteHeading(stops: readonly Stop[], index: number): string {
  const site = stops[index]?.siteTitle;
  return site === undefined || site === stops[index - 1]?.siteTitle ? "" : `<h2 class="site">${text(site)}</h2>\n`;
}

function stopHtml(stop: Stop, brief: Brief, language: string, card: Card | undefined): string {
  const facts = factParagraphs(stop);
  const factItem = (fact: (typeof facts)[number]) =>
    `<li class="${fact.shown === undefined || fact.shown === "no" ? "screen" : `of-${fact.shown}`}">${sentence(fact)}</li>`;
  const said = facts.length === 0 ? "" : `<ul class="facts">${facts.map(factItem).join("")}</ul>`;
  const plan = [stopLength(stop.seconds), stop.from === undefined ? undefined : `from ${stop.from}`, stop.light].filter(
    (part) => part !== undefined,
  );
  const seen = seenBefore(stop);
  const stand = [stop.way, stop.spot.text === "" ? undefined : stop.spot.text].filter((part) => part !== undefined);
  return `<article class="stop" id="${stop.id.toLowerCase()}">
<header><h3><span class="number">${stop.number}</span> ${text(stop.title)}</h3>
<p class="clock">${text(plan.join(" · "))}</p>
${stand.length === 0 ? "" : `<p class="spot">${text(capital(stand.join("; ")))}.</p>`}
${stop.link === undefined ? "" : `<p class="say">“${text(stop.link)}”</p>`}
${seen.length === 0 ? "" : `<p class="seen">${seen.map(sentence).join(" ")}</p>`}</header>
<div class="told"><ul class="show">${stop.show.map(showItem).join("")}</ul>
${stop.close === undefined ? "" : `<p class="say">“${text(stop.close)}”</p>`}
${said}
${notes(stop, card)}</div>
<div class="listed">${varietyTable(stop.varieties)}
${changes(stop, brief, language)}</div>
</article>`;
}

function showItem(point: ShowPoint): string {
  const classes = [point.level, point.kind === "new" ? "is-new" : ""].filter((name) => name !== "").join(" ");
  return `<li class="${classes}"><label><input type="checkbox" id="${point.id.toLowerCase().replace(".", "-")}"><span><span class="level">${levelWords(point)}.</span>${sentence(point)}${point.shot === undefined ? "" : ` <span class="why">${point.shot}</span>`}</span></label></li>`;
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

function notes(stop: Stop, card: Card | undefined): string {
  const shown = new Set(stop.show.map((point) => point.text));
  const unshown = (lines: readonly Sentence[]) => lines.filter((line) => !shown.has(line.text));
  const parts: readonly (readonly [string, readonly Sentence[]])[] = [
    ["Finished since", unshown(stop.finishedSince)],
    ["Trouble", unshown(stop.troubles)],
    ["Still to do", stop.tasks],
  ];
  const lines = parts
    .filter(([, all]) => all.length > 0)
    .map(([title, all]) => `<p><b>${title}:</b> ${all.map(sentence).join(" ")}</p>`);
  const gear =
    stop.gear.length === 0 ? [] : [`<p><b>Gear here:</b> ${stop.gear.map((row) => text(row.title)).join(", ")}.</p>`];
  const { further = [], quoted = [] } = card ?? {};
  const more = further.length === 0 ? [] : [`<p><b>Could be said:</b> ${further.map(sentence).join(" · ")}.</p>`];
  const written =
    quoted.length === 0
      ? []
      : [
          `<p><b>In your notes, and not on record yet:</b></p><ul>${quoted.map((one) => `<li>${sentence(one)}</li>`).join("")}</ul>`,
        ];
  const all = [...gear, ...lines, ...more, ...written, ...pointTo(stop), shots(stop)];
  return all.length === 0 ? "" : `<div class="notes">${all.join("")}</div>`;
}

/** The links are words here: the page asks nothing of any network. */
function pointTo({ pointTo: films }: Stop): readonly string[] {
  if (films.length === 0) return [];
  const said = films.map(
    ({ title, text: words, about }) => `<i>${text(title)}</i>${text(words.slice(title.length))} (${text(about)})`,
  );
  return [`<p><b>Point to:</b> ${said.join(" · ")}.</p>`];
}

/** Shots beside those that stand at the things to show. */
function shots({ shots: all, show }: Stop): string {
  const atPoints = new Set(show.map(({ shot }) => shot));
  const others = all.filter(({ id, kind }) => kind === "wide" || !atPoints.has(id));
  const said = others.map((shot) => {
    if (shot.kind === "walk-in") return `${shot.id} walk-in`;
    if (shot.kind !== "wide") return `${shot.id} ${text(shot.text)}`;
    return `${shot.id} wide${shot.match === undefined ? "" : ", match the photo"}`;
  });
  return `<p class="shots"><b>Shots:</b> ${said.join(" · ")}.</p>`;
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
  const words = leftOutWords(brief);
  if (words === undefined) return "";
  const line = (words: string) => text(words).replace(/`([^`]*)`/g, "<code>$1</code>");
  const more = words.more === 0 ? [] : [`and ${sayPlural(words.more, "smaller thing", "smaller things")}`];
  return `<section><h2>${text(words.title)}</h2><p class="left">${[...words.lines.map(line), ...more].join(" · ")}.</p></section>`;
}

/** What the plan asks and the cover had no room for. */
function aboutThePlan(brief: Brief): string {
  const settled = new Set(toSettle(brief).map(({ text: words }) => words));
  const open = [...brief.checks, ...brief.tasks.filter(({ overdue }) => !overdue)];
  const lines = open.filter(({ text: words }) => !settled.has(words)).map((line) => `<li>${sentence(line)}</li>`);
  return lines.length === 0 ? "" : `<section><h2>About the plan</h2><ul class="lines">${lines.join("")}</ul></section>`;
}

function sentence(line: Sentence): string {
  const cued = text(line.text).replace(/\(say ([^)]+)\)/g, "(say <em>$1</em>)");
  return line.private ? `${cued} <span class="own">private, not for the film</span>` : cued;
}

function text(words: string): string {
  return escapeHtml(unbroken(words));
}
