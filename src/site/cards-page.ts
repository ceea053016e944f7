/** The cover and the cards of a brief as HTML: two cards to a sheet, their backs behind them. */
import {
  type CardTitles,
  type CoverRow,
  clockOf,
  type NameToSay,
  type NowPhrase,
  type SpokenCard,
  tourTitles,
} from "../films/index.ts";
import { type Sentence, sayPlural } from "../language/index.ts";
import { type Card, type CardShot, keptWhere, type TourCover } from "../tour/index.ts";
import { escapeHtml } from "./escape-html.ts";
import type { FieldPicture } from "./field-list/field-list-data.ts";
import { unbroken } from "./unbroken.ts";

export type CardPictures = ReadonlyMap<string, FieldPicture>;

/** One page of paper; on the phone the first screen, below the page's own heading and with no boxes, which nothing would keep. */
export function coverHtml(cover: TourCover, on: "paper" | "phone" = "paper"): string {
  const head = [cover.day, cover.length, sayPlural(cover.stops, "stop", "stops")].map(text).join(" · ");
  const when = [cover.times, cover.light].filter((part) => part !== undefined).map(text);
  const [opens, title] =
    on === "paper"
      ? ['class="cover"', `<h1>${text(cover.title)}</h1>`]
      : [
          'class="cover" id="cover" aria-labelledby="cover-name"',
          `<h2 id="cover-name" tabindex="-1">${text(cover.title)}</h2>`,
        ];
  const parts = on === "paper" ? "h2" : "h3";
  return `<section ${opens}>
${title}
<p class="day">${head}</p>
${when.length === 0 ? "" : `<p class="times">${when.join(" ")}</p>`}
${cover.film === undefined ? "" : `<p class="film">${sentence(cover.film)}</p>`}
${listed("Or open with", cover.openers)}
<ol class="order">${cover.rows.map(rowHtml).join("")}</ol>
${cover.fallsOut.length === 0 ? "" : `<p><b>Falls out first:</b> ${cover.fallsOut.map(sentence).join(" · ")}.</p>`}
${owedHtml(cover)}
${listed("Worth asking yourself before you film", cover.asks)}
${settleHtml(cover.settle, parts, on === "paper")}
${cover.kit.length === 0 ? "" : `<p><b>Pack:</b> ${cover.kit.map(text).join(" · ")}.</p>`}
${careHtml(cover, parts)}
</section>`;
}

export function rowHtml({ number, title, seconds, begins, must, mayGo }: CoverRow): string {
  const classes = [must ? "must" : "", mayGo ? "may-go" : ""].filter((name) => name !== "").join(" ");
  return `<li${classes === "" ? "" : ` class="${classes}"`}><span class="number">${number}</span> <span class="bed">${text(title)}</span> <span class="long">${clockOf(seconds)}</span> <span class="gone">${clockOf(begins + seconds)}</span></li>`;
}

function owedHtml({ owed }: TourCover): string {
  const titles = {
    overdue: "Overdue",
    due: "Owed now",
    open: "Owed some time",
    waiting: "Waiting until the notes say so",
  } as const;
  return (["overdue", "due", "open", "waiting"] as const)
    .map((standing) => {
      const lines = owed.filter((one) => one.standing === standing);
      const said = lines.map((one) => `${sentence(one)}${text(keptWhere(one))}`);
      return lines.length === 0 ? "" : `<p><b>${titles[standing]}:</b> ${said.join(" · ")}.</p>`;
    })
    .join("");
}

function settleHtml(lines: readonly Sentence[], heading: string, boxes: boolean): string {
  if (lines.length === 0) return "";
  const item = (line: Sentence, index: number) =>
    boxes
      ? `<li><label><input type="checkbox" id="settle-${index + 1}"><span>${sentence(line)}</span></label></li>`
      : `<li>${sentence(line)}</li>`;
  const list = boxes ? '<ul class="ticks">' : "<ul>";
  return `<${heading}>Settle before you go</${heading}>${list}${lines.map(item).join("")}</ul>`;
}

function careHtml({ cautions, poison }: TourCover, heading: string): string {
  if (cautions.length === 0 && poison === undefined) return "";
  const lines = cautions.map((one) => `<li>${sentence(one)} (${one.stops.join(", ")})</li>`);
  return `<div class="caring"><${heading}>Take care</${heading}>${lines.length === 0 ? "" : `<ul>${lines.join("")}</ul>`}${poison === undefined ? "" : `<p>${text(poison)}</p>`}</div>`;
}

function listed(title: string, lines: readonly Sentence[]): string {
  return lines.length === 0
    ? ""
    : `<p class="or"><b>${title}:</b> ${lines.map((line) => `“${sentence(line)}”`).join(" · ")}</p>`;
}

/** Shots on one face of a pocket card. */
const pocketShots = 4;

/** A sheet for each stop, to be cut in four: what is shown, what is told of it, what is filmed first and then. */
export function pocketSheets(cards: readonly Card[], pictures: CardPictures): string {
  const sheet = (card: Card) => {
    const { shots, light } = card;
    const [first, then] = [shots.slice(0, pocketShots), shots.slice(pocketShots)];
    return [
      face(
        card,
        `${clockOf(card.seconds)} · ${clockOf(card.begins)} gone`,
        `${openingHtml(card)}<dl>${shownParts(card, tourTitles)}</dl>`,
        "front",
      ),
      face(card, light, `<dl>${toldParts(card, tourTitles)}</dl>`, "front"),
      face(card, marks, shotList(first), "back"),
      face(card, then.length === 0 ? undefined : marks, `${shotList(then)}${matchPicture(card, pictures)}`, "back"),
    ];
  };
  return cards.map((card) => `<div class="sheet pocket">${sheet(card).join("")}</div>`).join("\n");
}

function face(
  { number, title }: SpokenCard,
  beside: string | undefined,
  body: string,
  side: "front" | "back",
  anchor = "",
): string {
  const clock = beside === undefined ? "" : `<p class="clock">${text(beside)}</p>`;
  return `<article class="card ${side}"${anchor}>
<header><h2><span class="number">${number}</span> ${text(title)}</h2>${clock}</header>
${body}
</article>`;
}

/** Cards without backs, two to a sheet: what a recap needs while it is spoken. */
export function frontSheets<One extends SpokenCard>(
  cards: readonly One[],
  below: (card: One) => string,
  titles: CardTitles,
): string {
  return inPairs(cards)
    .map((pair) => `<div class="sheet">${pair.map((card) => frontHtml(card, below(card), titles)).join("")}</div>`)
    .join("\n");
}

function inPairs<One>(cards: readonly One[]): readonly (readonly One[])[] {
  return cards.flatMap((_card, at) => (at % 2 === 0 ? [cards.slice(at, at + 2)] : []));
}

/** Two fronts on a sheet and their backs on the next: turned over along its long edge, each back lies behind its front. */
export function cardSheets(
  cards: readonly Card[],
  pictures: CardPictures,
  changed: ReadonlySet<string> = new Set(),
): string {
  return inPairs(cards)
    .map(
      (
        pair,
      ) => `<div class="sheet">${pair.map((card) => frontHtml(card, changed.has(card.bed) ? isNewHtml : "")).join("")}</div>
<div class="sheet">${pair.map((card) => backHtml(card, pictures)).join("")}</div>`,
    )
    .join("\n");
}

/** Below a card that says something new; on the screen only. */
const isNewHtml = '<p class="changed">New since you last looked</p>';

function frontHtml(card: SpokenCard, below = "", titles = tourTitles): string {
  const time = [
    clockOf(card.seconds),
    `${clockOf(card.begins)} gone`,
    ...(card.light === undefined ? [] : [card.light]),
  ];
  const body = `${openingHtml(card)}\n<dl>${shownParts(card, titles)}${toldParts(card, titles)}</dl>${below}`;
  return face(card, time.join(" · "), body, "front", ` id="card-${card.number}"`);
}

function openingHtml({ opening }: SpokenCard): string {
  return `<p class="opening">“${sentence(opening)}”</p>`;
}

function shownParts({ before, now, figure }: SpokenCard, titles: CardTitles): string {
  return [part(titles.before, one(before)), part(titles.now, now.map(nowHtml)), part("Figure", one(figure))].join("");
}

function toldParts({ why, names, aloud, next }: SpokenCard, titles: CardTitles): string {
  return [
    part(titles.why, one(why)),
    part("Names", names.length === 0 ? [] : [names.map(nameHtml).join(" · ")]),
    part(
      "Say",
      aloud.map((line) => `“${sentence(line)}”`),
    ),
    part("Next", one(next)),
  ].join("");
}

function one(phrase: Sentence | undefined): readonly string[] {
  return phrase === undefined ? [] : [sentence(phrase)];
}

function part(title: string, lines: readonly string[]): string {
  if (lines.length === 0) return "";
  return `<div class="part-${title.toLowerCase()}"><dt>${title}</dt>${lines.map((line) => `<dd>${line}</dd>`).join("")}</div>`;
}

function nowHtml({ text: words, hand }: NowPhrase): string {
  return hand !== undefined && words.startsWith(hand)
    ? `<strong>${text(hand)}</strong>${text(words.slice(hand.length))}`
    : text(words);
}

function nameHtml({ name, say, standing }: NameToSay): string {
  const fresh = standing === "new to this garden" ? `<span class="new">${standing}</span>` : standing;
  return `${text(name)}: ${[say === undefined ? undefined : `<em>${text(say)}</em>`, fresh].filter((part) => part !== undefined).join(", ")}`;
}

/** How the takes are marked with a pencil, for the three worths a take can have. */
const marks = "circle good, underline hold, strike no good";

function backHtml(card: Card, pictures: CardPictures): string {
  return face(card, marks, `${matchPicture(card, pictures)}\n${shotList(card.shots)}`, "back");
}

function matchPicture({ shots, title }: Card, pictures: CardPictures): string {
  const match = shots.find(({ match: path }) => path !== undefined)?.match;
  const picture = match === undefined ? undefined : pictures.get(match);
  if (picture === undefined) return "";
  return `<img src="${picture.src}" width="${picture.width}" height="${picture.height}" alt="${text(title)} as it was last filmed: match this view">`;
}

function shotList(shots: readonly CardShot[]): string {
  return shots.length === 0 ? "" : `<ol class="shots">${shots.map(shotHtml).join("")}</ol>`;
}

function shotHtml({ id, text: words, hold, cutaway, match }: CardShot): string {
  const said = `${cutaway ? "cutaway: " : ""}${words}${match === undefined ? "" : ", match"}${hold ? ", hold 10" : ""}`;
  return `<li><label><input type="checkbox" id="back-${id.toLowerCase().replace(".", "-")}"><span>${text(said)}</span></label><span class="takes" aria-hidden="true"><i>1</i><i>2</i><i>3</i></span></li>`;
}

function sentence(line: Sentence): string {
  return line.private ? `${text(line.text)} <span class="own">private, not for the film</span>` : text(line.text);
}

function text(words: string): string {
  return escapeHtml(unbroken(words));
}
