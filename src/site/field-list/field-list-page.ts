/**
 * The field list as one page for a phone in a garden: everything inside it but, in the site, what reads a line; no request to
 * anywhere else. Private, like the brief it is made from.
 */
import type { Sentence } from "../../language/index.ts";
import { coverHtml } from "../cards-page.ts";
import { carriedFonts } from "../carried-fonts.ts";
import { escapeHtml } from "../escape-html.ts";
import { phonePage } from "../phone-page.ts";
import type { CardLine, FieldList, FieldShot, FieldStop } from "./field-list-data.ts";
import { fieldListStyle } from "./field-list-style.ts";
import type { ListData } from "./phone/shapes.ts";

export interface FieldListPageOptions {
  /** Address of the worker that keeps the private pages offline; a list that is a file of its own has none. */
  readonly worker?: string | undefined;
  /** Address of what reads a line; a list that is a file of its own carries it. */
  readonly reader?: string | undefined;
  /** Address of the same list as a file of its own. */
  readonly file?: string | undefined;
  /** Address of the page to write outdoors. */
  readonly outdoors?: string | undefined;
}

/** A whole HTML document. */
export function fieldListPage(list: FieldList, options: FieldListPageOptions = {}): string {
  return phonePage({
    title: `Field list · ${list.title}`,
    style: `${carriedFonts("Field list")}${fieldListStyle}`,
    script: "list",
    reader: options.reader,
    data: { id: "list", value: dataOf(list, options.worker) },
    mayAsk: ["img-src data:", ...(options.worker === undefined ? [] : ["worker-src 'self'"])],
    body: bodyOf(list, options),
  });
}

function bodyOf(list: FieldList, options: FieldListPageOptions): string {
  return `<header>
<div class="mark"><strong>Private</strong> <h1>${escapeHtml(list.title)}</h1> <span id="offline" role="status"></span></div>
<div class="clock">
<button type="button" id="start">Start the clock</button>
<p id="running" hidden><span id="elapsed"></span> <span id="against"></span></p>
${options.outdoors === undefined ? "" : `<a class="download outdoors" href="${escapeHtml(options.outdoors)}" aria-label="Write outdoors">Write</a>`}
<p id="where" tabindex="-1">${list.stops.length === 1 ? "One stop" : `${list.stops.length} stops`}</p>
</div>
</header>
<main>
<p class="care unscripted">Nothing can be ticked here, because this is only a preview of the list. Open the file in a browser.</p>
${coverHtml(list.cover, "phone")}
${list.stops.length === 0 ? "<p>This tour has no stops yet.</p>" : list.stops.map(stopHtml).join("\n")}
</main>
<nav class="bar" aria-label="Filming">
<button type="button" id="back">Back</button>
<button type="button" id="stops">Stops</button>
<button type="button" id="write">Note</button>
<button type="button" id="talk">Talk</button>
<button type="button" id="next">Next</button>
</nav>
<p id="said" class="unseen" role="status"></p>
${shotSheet()}
${noteSheet()}
${stopsSheet(list, options)}
<dialog id="talk-sheet" aria-labelledby="talk-name">
<h2 id="talk-name">What to say</h2>
<section id="talk-text" tabindex="0" aria-label="What to say"></section>
<div class="bar"><button type="button" data-close>Close</button><button type="button" id="talk-go" class="strong">Start</button></div>
</dialog>
<dialog id="picture-sheet" aria-label="The view to match">
<img id="large" alt="" src="data:image/gif;base64,R0lGODlhAQABAAAAACwAAAAAAQABAAA=">
<button type="button" data-close>Close</button>
</dialog>
<svg class="unseen" aria-hidden="true"><defs>
<symbol id="box" viewBox="0 0 32 32"><rect class="frame" x="2" y="2" width="28" height="28" rx="2"/><path class="filmed" d="M8 17l6 6 11-14"/><path class="retake" d="M24 12a9 9 0 1 0 1 7M25 5v8h-8"/><path class="skipped" d="M8 16h16"/></symbol>
</defs></svg>`;
}

function stopHtml(stop: FieldStop): string {
  const [first, ...shots] = stop.shots.filter(({ onCard }) => onCard);
  const others = stop.shots.filter(({ onCard }) => !onCard);
  const where = [stop.site, stop.from === undefined ? undefined : `from ${stop.from}`, stop.light];
  return `<section class="stop" id="${stop.id}" aria-labelledby="${stop.id}-name">
<div class="head"><h2 id="${stop.id}-name" tabindex="-1"><span class="number">${stop.number}</span> ${escapeHtml(stop.title)}</h2>
${paragraph("when", stop.time)}</div>
${paragraph("opening", stop.opening === undefined ? undefined : `“${stop.opening}”`)}
${first === undefined ? "" : `<ol class="shots first">\n${shotHtml(first, picture(stop))}\n</ol>`}
${cardLines(stop)}
<p class="noted" data-note-of="${escapeHtml(stop.bed)}" hidden><strong>Note:</strong> <span></span></p>
<ol class="shots">
${shots.map((shot) => shotHtml(shot)).join("\n")}
</ol>
<details class="dossier"><summary>Dossier</summary>
${paragraph("quiet", where.filter((part) => part !== undefined).join(" · ") || undefined)}
${paragraph("quiet", stop.way === undefined ? undefined : `${stop.way}.`)}
${stop.cautions.length === 0 ? "" : `<ul class="care">${stop.cautions.map((line) => `<li>${escapeHtml(line)}</li>`).join("")}</ul>`}
${names(stop)}
${dossierPart("Could be said", stop.further.map(escapeHtml))}
${dossierPart("Facts", stop.facts.map(ownLine))}
${dossierPart("Changed since", stop.changes.map(ownLine))}
${dossierPart("Point to", stop.films.map(escapeHtml))}
${others.length === 0 ? "" : `<ol class="shots">\n${others.map((shot) => shotHtml(shot)).join("\n")}\n</ol>`}
</details>
</section>`;
}

/** The parts of a card in their order; a part's name stands once, before its first line. */
function cardLines({ lines }: FieldStop): string {
  if (lines.length === 0) return "";
  const parts = [...Map.groupBy(lines, ({ part }) => part)].map(
    ([part, all]) =>
      `<div class="${part.toLowerCase()}"><dt>${part}</dt>${rows(part, all.map(lineWords))
        .map((line) => `<dd>${line}</dd>`)
        .join("")}</div>`,
  );
  return `<dl class="lines">${parts.join("")}</dl>`;
}

/** Names are cues and flow on; what is said or done has its own line. */
function rows(part: string, lines: readonly string[]): readonly string[] {
  return part === "Names" ? [lines.join(" · ")] : lines;
}

function lineWords({ part, text, hand }: CardLine): string {
  if (hand !== undefined && text.startsWith(hand)) {
    return `<strong>${escapeHtml(hand)}</strong>${escapeHtml(text.slice(hand.length))}`;
  }
  const fresh = "new to this garden";
  if (part !== "Names" || !text.endsWith(fresh)) return escapeHtml(text);
  return `${escapeHtml(text.slice(0, -fresh.length))}<strong class="new">${fresh}</strong>`;
}

function shotHtml(shot: FieldShot, beside = ""): string {
  const label = [shot.id, shot.kind, shot.level].filter((part) => part !== undefined).join(" · ");
  return `<li id="shot-${escapeHtml(shot.id.replace(".", "-"))}" data-state="open"><button type="button" class="tick"><svg aria-hidden="true"><use href="#box"/></svg><span><span class="label">${escapeHtml(label)}</span> <span class="what">${escapeHtml(shot.text)}</span> <span class="state"></span></span></button>${beside}<button type="button" class="more" aria-label="More for ${escapeHtml(shot.id)}"><svg aria-hidden="true" viewBox="0 0 24 24"><circle cx="5" cy="12" r="2.2"/><circle cx="12" cy="12" r="2.2"/><circle cx="19" cy="12" r="2.2"/></svg></button></li>`;
}

function paragraph(name: string, words: string | undefined): string {
  return words === undefined ? "" : `<p class="${name}">${escapeHtml(words)}</p>`;
}

function picture({ picture: found, title }: FieldStop): string {
  if (found === undefined) return "";
  const { src, width, height, alt } = found;
  return `<button type="button" class="picture" aria-label="Show the view of ${escapeHtml(title)} to match"><img src="${src}" width="${width}" height="${height}" alt="${escapeHtml(alt)}"></button>`;
}

function names(stop: FieldStop): string {
  if (stop.names.length === 0) return "";
  const rows = stop.names.map(
    ({ name, say, about }) =>
      `<li><strong>${escapeHtml(name)}</strong>${say === undefined ? "" : ` <span class="say">say ${escapeHtml(say)}</span>`}<br><span class="quiet">${escapeHtml(about)}</span></li>`,
  );
  return `<ul class="names" aria-label="Names and where they are from">${rows.join("")}</ul>`;
}

function dossierPart(title: string, lines: readonly string[]): string {
  if (lines.length === 0) return "";
  return `<h3>${title}</h3>\n<ul class="further">${lines.map((line) => `<li>${line}</li>`).join("")}</ul>`;
}

function ownLine({ text, private: own }: Sentence): string {
  return own ? `${escapeHtml(text)} <span class="own">private, not for the film</span>` : escapeHtml(text);
}

/** Why a take is no good or a shot is left out, in the words of a filming day. */
const REASONS = ["light", "wind", "rain", "noise", "focus", "words", "not ready", "no time"] as const;

function shotSheet(): string {
  return `<dialog id="shot-sheet" aria-labelledby="shot-name">
<h2 id="shot-name">Shot</h2>
<p id="shot-text"></p>
<p id="shot-state" class="state"></p>
<ol id="takes" class="takes" aria-label="Takes: a tap on one changes what it is worth"></ol>
<div class="worth"><button type="button" id="shot-filmed" class="strong">Good</button><button type="button" id="shot-hold">Hold</button><button type="button" id="shot-again">No good</button></div>
<h3 id="why">Why</h3>
<p class="chips" role="group" aria-labelledby="why">${REASONS.map((reason) => `<button type="button" aria-pressed="false" data-reason="${reason}">${reason}</button>`).join("")}</p>
<p><label><span class="unseen">Another reason</span><input id="reason" type="text" placeholder="another reason" autocomplete="off" enterkeyhint="done"></label></p>
<div class="bar"><button type="button" data-close>Close</button><button type="button" id="shot-back">Take back</button><button type="button" id="shot-skip">Skip</button></div>
</dialog>`;
}

function noteSheet(): string {
  return `<dialog id="note-sheet" aria-labelledby="note-name">
<h2 id="note-name">Note for <span id="note-bed"></span></h2>
<label><span class="quiet">A line for each thing, as in your notes: picked 1.4 kg Boltardy</span><textarea id="note" rows="6" autocapitalize="none"></textarea></label>
<ul id="note-reading" class="reading" aria-label="What is understood"></ul>
<div class="bar"><button type="button" data-close class="strong">Done</button></div>
</dialog>`;
}

function stopsSheet(list: FieldList, options: FieldListPageOptions): string {
  const rows = list.stops.map(
    ({ number, title }, index) =>
      `<li><button type="button" data-stop="${index}"><span class="number">${number}</span> <span class="grow">${escapeHtml(title)}<br><span class="so-far quiet"></span></span></button></li>`,
  );
  const save =
    options.file === undefined
      ? ""
      : `<p id="save-page" hidden>By this address the list opens only with the network. Save it, and open the saved file in the garden. <a class="download" href="${escapeHtml(options.file)}" download="${escapeHtml(list.tour)}-field-list.html">Save it as a file</a></p>`;
  return `<dialog id="stops-sheet" aria-labelledby="stops-name">
<h2 id="stops-name">${escapeHtml(list.title)}</h2>
<p class="quiet">${escapeHtml(list.dayText)}</p>
${save}
${paragraph("care", list.care)}
<p id="keeps-nothing" class="care" hidden>This browser keeps nothing. Take the list home before you close the page.</p>
<ol class="overview"><li><button type="button" id="to-cover"><span class="grow">Cover</span></button></li>${rows.join("")}</ol>
<section id="again" hidden><h3>To go back for</h3><ol id="again-list" class="takes"></ol></section>
<div class="pair"><button type="button" id="stop-clock" hidden>Stop the clock</button><button type="button" id="go-on" hidden>Let the clock go on</button></div>
<h3>Take it home</h3>
<p id="counts"></p>
<div class="pair"><button type="button" id="save-list">Save the ticks</button><button type="button" id="copy-list">Copy the ticks</button><button type="button" id="save-note">Save the note</button><button type="button" id="copy-note">Copy the note</button></div>
<p id="copied" role="status"></p>
<p id="by-hand" hidden><label>Text to copy<textarea id="copy-field" rows="5" readonly></textarea></label></p>
<p class="quiet">The ticks belong beside the episode, as episodes/${escapeHtml(list.tour)}/field-list.json, and the note among your notes.</p>
<h3>Begin again</h3>
<p><button type="button" id="forget">Begin this list again</button></p>
<p id="forget-sure" hidden>All ticks and notes of this list will be gone from this phone. <button type="button" id="forget-all">Forget them</button></p>
<div class="bar"><button type="button" data-close class="strong">Back to the stop</button></div>
</dialog>`;
}

function dataOf(list: FieldList, worker: string | undefined): ListData {
  return {
    tour: list.tour,
    title: list.title,
    garden: list.garden,
    rate: list.rate,
    stops: list.stops.map(({ bed, title, begins, ends, shots, outline }) => ({
      bed,
      title,
      begins,
      ends,
      shots: shots.map(({ id, key, words, text, level }) => ({ id, key, words, text, level })),
      outline,
    })),
    plan: list.plan,
    ...(worker === undefined ? {} : { worker }),
    ...(list.reads === undefined ? {} : { reads: list.reads }),
  };
}
