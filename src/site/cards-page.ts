/** The cover and the cards of a brief as HTML: two cards to a sheet, their backs behind them. */
import { type Sentence, sayPlural } from "../language/index.ts";
import {
  type Card,
  type CardShot,
  type Cover,
  type CoverRow,
  clockOf,
  keptWhere,
  type NameToSay,
  type NowPhrase,
} from "../tour/index.ts";
import { escapeHtml } from "./escape-html.ts";
import type { FieldPicture } from "./field-list/field-list-data.ts";
import { unbroken } from "./unbroken.ts";

export type CardPictures = ReadonlyMap<string, FieldPicture>;

export function coverHtml(cover: Cover): string {
  const head = [cover.day, cover.length, sayPlural(cover.stops, "stop", "stops")].map(text).join(" · ");
  const when = [cover.times, cover.light].filter((part) => part !== undefined).map(text);
  return `<section class="cover">
<h1>${text(cover.title)}</h1>
<p class="day">${head}</p>
${when.length === 0 ? "" : `<p class="times">${when.join(" ")}</p>`}
${cover.film === undefined ? "" : `<p class="film">${sentence(cover.film)}</p>`}
${listed("Or open with", cover.openers)}
<ol class="order">${cover.rows.map(rowHtml).join("")}</ol>
${cover.fallsOut.length === 0 ? "" : `<p><b>Falls out first:</b> ${cover.fallsOut.map(sentence).join(" · ")}.</p>`}
${owedHtml(cover)}
${settleHtml(cover.settle)}
${cover.kit.length === 0 ? "" : `<p><b>Pack:</b> ${cover.kit.map(text).join(" · ")}.</p>`}
${careHtml(cover)}
</section>`;
}

function rowHtml({ number, title, seconds, begins, must, mayGo }: CoverRow): string {
  const classes = [must ? "must" : "", mayGo ? "may-go" : ""].filter((name) => name !== "").join(" ");
  return `<li${classes === "" ? "" : ` class="${classes}"`}><span class="number">${number}</span> <span class="bed">${text(title)}</span> <span class="long">${clockOf(seconds)}</span> <span class="gone">${clockOf(begins + seconds)}</span></li>`;
}

function owedHtml({ owed }: Cover): string {
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

function settleHtml(lines: readonly Sentence[]): string {
  if (lines.length === 0) return "";
  const tick = (line: Sentence, index: number) =>
    `<li><label><input type="checkbox" id="settle-${index + 1}"><span>${sentence(line)}</span></label></li>`;
  return `<h2>Settle before you go</h2><ul class="ticks">${lines.map(tick).join("")}</ul>`;
}

function careHtml({ cautions, poison }: Cover): string {
  if (cautions.length === 0 && poison === undefined) return "";
  const lines = cautions.map((one) => `<li>${sentence(one)} (${one.stops.join(", ")})</li>`);
  return `<div class="caring"><h2>Take care</h2>${lines.length === 0 ? "" : `<ul>${lines.join("")}</ul>`}${poison === undefined ? "" : `<p>${text(poison)}</p>`}</div>`;
}

function listed(title: string, lines: readonly Sentence[]): string {
  return lines.length === 0
    ? ""
    : `<p class="or"><b>${title}:</b> ${lines.map((line) => `“${sentence(line)}”`).join(" · ")}</p>`;
}

/** Two fronts on a sheet and their backs on the next: turned over along its long edge, each back lies behind its front. */
export function cardSheets(cards: readonly Card[], pictures: CardPictures): string {
  const pairs = cards.flatMap((_card, at) => (at % 2 === 0 ? [cards.slice(at, at + 2)] : []));
  return pairs
    .map(
      (pair) => `<div class="sheet">${pair.map(frontHtml).join("")}</div>
<div class="sheet">${pair.map((card) => backHtml(card, pictures)).join("")}</div>`,
    )
    .join("\n");
}

function frontHtml(card: Card): string {
  const time = [
    clockOf(card.seconds),
    `${clockOf(card.begins)} gone`,
    ...(card.light === undefined ? [] : [card.light]),
  ];
  return `<article class="card front" id="card-${card.number}">
<header><h2><span class="number">${card.number}</span> ${text(card.title)}</h2><p class="clock">${text(time.join(" · "))}</p></header>
<p class="opening">“${sentence(card.opening)}”</p>
<dl>${[
    part("Then", one(card.before)),
    part("Now", card.now.map(nowHtml)),
    part("Figure", one(card.figure)),
    part("Why", one(card.why)),
    part("Names", card.names.length === 0 ? [] : [card.names.map(nameHtml).join(" · ")]),
    part(
      "Say",
      card.aloud.map((line) => `“${sentence(line)}”`),
    ),
    part("Next", one(card.next)),
  ].join("")}</dl>
</article>`;
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

function backHtml(card: Card, pictures: CardPictures): string {
  const match = card.shots.find(({ match: path }) => path !== undefined)?.match;
  const picture = match === undefined ? undefined : pictures.get(match);
  return `<article class="card back">
<header><h2><span class="number">${card.number}</span> ${text(card.title)}</h2><p class="clock">Takes: circle the good one</p></header>
${picture === undefined ? "" : `<img src="${picture.src}" width="${picture.width}" height="${picture.height}" alt="${text(card.title)} as it was last filmed: match this view">`}
<ol class="shots">${card.shots.map(shotHtml).join("")}</ol>
</article>`;
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
