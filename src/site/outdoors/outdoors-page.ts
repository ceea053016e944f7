/**
 * The page to write outdoors: one line at a time and photos, kept on the phone until they are at home. Everything inside it but
 * the photos to match and, in the site, what reads a line. Private, as the garden's names are.
 */
import { carriedFonts } from "../carried-fonts.ts";
import { escapeHtml } from "../escape-html.ts";
import { fieldListStyle } from "../field-list/field-list-style.ts";
import { phonePage } from "../phone-page.ts";
import type { OutdoorsPage } from "./outdoors-data.ts";
import { outdoorsStyle } from "./outdoors-style.ts";
import type { BedToTap, OutdoorsData } from "./phone/shapes.ts";

export interface OutdoorsPlace {
  /** Address of the worker that keeps the private pages. */
  readonly worker?: string | undefined;
  /** Address of what reads a line. */
  readonly reader: string;
  /** Address of the same page as a file of its own. */
  readonly file?: string | undefined;
}

/** Beds that stand above the line; the others are unfolded. */
const FIRST_BEDS = 6;

/** A whole HTML document. Without a place it is a file of its own, which asks for nothing. */
export function outdoorsHtml(page: OutdoorsPage, place?: OutdoorsPlace): string {
  const own = place === undefined ? "" : " 'self'";
  return phonePage({
    title: `Write outdoors · ${page.garden}`,
    style: `${carriedFonts("Field list")}${fieldListStyle}${outdoorsStyle}`,
    script: "outdoors",
    reader: place?.reader,
    data: { id: "outdoors", value: dataOf(page, place) },
    mayAsk: [
      `img-src data:${own}`,
      ...(place === undefined ? [] : ["connect-src 'self'"]),
      ...(place?.worker === undefined ? [] : ["worker-src 'self'"]),
    ],
    window: "interactive-widget=resizes-content",
    name: "outdoors",
    body: bodyOf(page, place),
  });
}

function bodyOf(page: OutdoorsPage, place: OutdoorsPlace | undefined): string {
  return `<header>
<div class="mark"><strong>Private</strong> <h1>Write outdoors</h1> <span id="offline" role="status"></span></div>
</header>
<main>
<p class="care unscripted">Nothing can be written here, because this is only a preview of the page. Open the file in a browser.</p>
<div id="write">
<div class="chips" role="group" aria-label="Bed">${bedTaps(page.beds.slice(0, FIRST_BEDS))}${page.beds.length > FIRST_BEDS ? '<button type="button" id="more" aria-expanded="false" aria-controls="more-beds">More beds</button>' : ""}</div>
${page.beds.length > FIRST_BEDS ? `<div id="more-beds" class="chips" role="group" aria-label="More beds" hidden>${bedTaps(page.beds.slice(FIRST_BEDS))}</div>` : ""}
<div class="chips verbs" role="group" aria-label="Verbs">${page.verbs.map((verb) => `<button type="button" data-verb="${escapeHtml(verb)}">${escapeHtml(verb)}</button>`).join("")}</div>
<p id="other-day" class="care" hidden>Not today: what you keep goes to <span id="that-day"></span>.</p>
<label for="line">What happened</label>
<input id="line" type="text" role="combobox" aria-expanded="false" aria-controls="options" aria-autocomplete="list" autocomplete="off" autocapitalize="none" spellcheck="false" enterkeyhint="done" maxlength="1000">
<ul id="options" role="listbox" aria-label="Names that may be meant" hidden></ul>
<ul id="reading" class="reading" aria-label="What is understood"></ul>
<p id="heard" class="unseen" role="status"></p>
<p id="told" class="state" role="status"></p>
<p id="speech" class="quiet" hidden>Speak begins only when you tap it. Your browser may send what you say to its maker.</p>
<div class="when"><label for="day">Day</label> <input id="day" type="date" required>${place === undefined ? "" : ' <a class="download" href="../">Today’s desk</a>'}</div>
</div>
</main>
<nav class="bar" aria-label="Write outdoors">
<button type="button" id="photo">Photo</button>
<button type="button" id="speak" aria-pressed="false" hidden>Speak</button>
<button type="button" id="home">Home</button>
<button type="button" id="keep" class="strong">Keep</button>
</nav>
<p id="said" class="unseen" role="status"></p>
${photoSheet()}
${homeSheet(place)}`;
}

function bedTaps(beds: readonly BedToTap[]): string {
  return beds
    .map(
      ({ id, title }) =>
        `<button type="button" aria-pressed="false" data-bed="${escapeHtml(id)}">${escapeHtml(title)}</button>`,
    )
    .join("");
}

function photoSheet(): string {
  return `<dialog id="photo-sheet" aria-labelledby="photo-name">
<h2 id="photo-name">Photo</h2>
<p><label for="spot">From where</label> <select id="spot"></select></p>
<div id="stage" hidden><img id="last" alt="" src="${NOTHING}" hidden><video id="camera" muted playsinline hidden aria-label="What the camera sees"></video></div>
<p id="strength-row" hidden><label for="strength">How much of the last photo is seen</label> <input id="strength" type="range" min="0" max="100" value="50" step="5"></p>
<p id="no-last" class="quiet" hidden>No photo from there yet: this is the first.</p>
<p id="photo-told" class="state" role="status"></p>
<div class="bar"><button type="button" data-close>Close</button><button type="button" id="show-camera" hidden>Camera</button><label class="pick"><input id="pick" type="file" accept="image/*" capture="environment"><span>Phone’s camera</span></label><button type="button" id="shoot" class="strong" hidden>Take it</button></div>
</dialog>`;
}

/** An image needs an address before it has a picture. */
const NOTHING = "data:image/gif;base64,R0lGODlhAQABAAAAACwAAAAAAQABAAA=";

function homeSheet(place: OutdoorsPlace | undefined): string {
  const save =
    place?.file === undefined
      ? ""
      : `<p id="save-page" hidden>By this address the page opens only with the network. Save it, and open the saved file in the garden. <a class="download" href="${escapeHtml(place.file)}" download="write-outdoors.html">Save it as a file</a></p>`;
  return `<dialog id="home-sheet" aria-labelledby="home-name">
<h2 id="home-name" tabindex="-1">Home</h2>
<p id="keeps-nothing" class="care" hidden>This browser keeps nothing. Take home what you wrote before you close the page.</p>
<p id="how-many"></p>
<p id="sent" class="state" role="status"></p>
<p id="give-code" hidden><a class="download" href="/">Give the code</a></p>
<div class="pair"><button type="button" id="send" data-by-network>Send it home now</button><button type="button" id="save-file">Save it as one file</button></div>
<p class="quiet">The file goes into your records by: plotreel ingest FILE. Sent or brought in twice, it is written once.</p>
<p data-by-network><label class="pick"><input id="take-file" type="file"><span>Add a file saved by this page</span></label></p>
<p id="undo" hidden><span id="undo-said" role="status"></span> <button type="button" id="undo-tap">Put it back</button></p>
<ol id="waiting" aria-label="Kept on this phone, the newest first"></ol>
<p><button type="button" id="clear" hidden>Clear what is in a file</button></p>
<p id="clear-sure" hidden>Is the file in your records? What is in it will be gone from this phone. <button type="button" id="clear-all">Clear it</button></p>
${save}
<div class="bar"><button type="button" data-close class="strong">Back to the line</button></div>
</dialog>`;
}

function dataOf(
  { garden, language, reads, beds, spots }: OutdoorsPage,
  place: OutdoorsPlace | undefined,
): OutdoorsData {
  return {
    ...{ garden, language, reads, beds },
    spots: spots.map(({ last, ...spot }) => {
      if (last === undefined) return spot;
      const { src, width, height } = last;
      const isCarried = src.startsWith("data:");
      // Without copies beside it a file of its own shows no photo to match.
      return isCarried || place !== undefined ? { ...spot, last: { src, width, height } } : spot;
    }),
    ...(place?.worker !== undefined && { worker: place.worker }),
  };
}
