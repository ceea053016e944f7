/**
 * The recap as one page to read or to print, cover and cards first, the report behind them: no request to anywhere, no script, its
 * one style sheet allowed by hash. Private: it carries prices, promises and plans.
 */

import { type Sentence, sayDay, sayPlural } from "../language/index.ts";
import type { GardenSettings } from "../model.ts";
import { type RecapCards, type RecapCover, recapTitles, type ThreadCard } from "../season/index.ts";
import { preparedText } from "../store/index.ts";
import { type CardPictures, frontSheets, rowHtml } from "./cards-page.ts";
import { cardsPageStyle } from "./cards-page-style.ts";
import { carriedFonts } from "./carried-fonts.ts";
import { escapeHtml } from "./escape-html.ts";
import { recapPage } from "./page-data/recap-pages.ts";
import type { ChartFigure, DataTable, RecapSection } from "./page-data/recap-shapes.ts";
import { sealedHead } from "./sealed-head.ts";
import { unbroken } from "./unbroken.ts";

/** The style sheets of the field pages, so that both look alike. */
const sheets = ["tokens", "ground", "plates", "private", "recap", "print"];

/** A whole HTML document. */
export function recapDocument(
  { cover, cards, dossier: recap }: RecapCards,
  settings: GardenSettings,
  pictures: CardPictures = new Map(),
): string {
  const page = recapPage(recap, settings, true);
  const paper = settings.units === "us" ? "Letter" : "A4";
  const style = `${carriedFonts("Alegreya Sans")}${sheets.map(sheet).join("\n")}${cardsPageStyle(paper)}`;
  return `${sealedHead(text(page.title), style, { pictures: pictures.size > 0 })}
<body class="private">
<header><p class="mark"><strong>Private</strong> <span>Field page. Not for viewers, not for the web.</span></p></header>
<main id="main">
${coverHtml(cover)}
${frontSheets(cards, (card) => photosHtml(card, settings, pictures), recapTitles)}
<section class="dossier-head"><h2>Dossier</h2>
<p>${text(page.span)}</p>
<p class="recap-paragraph">${text(page.paragraph)}</p></section>
${page.sections.map(sectionHtml).join("\n")}
<section aria-labelledby="methods"><h2 id="methods">How the figures were worked out</h2><ul class="recap-lines quiet">${page.methods.map((one) => `<li>${text(one)}</li>`).join("")}</ul></section>
</main>
<footer class="soil"><p>${text(settings.name)}. Private field page.</p></footer>
</body>
</html>
`;
}

function coverHtml(cover: RecapCover): string {
  const head = [cover.span, cover.length, sayPlural(cover.cards, "card", "cards")].map(text).join(" · ");
  const list = (title: string, lines: readonly Sentence[]) =>
    lines.length === 0
      ? ""
      : `<h2>${title}</h2><ul class="recap-lines">${lines.map((one) => `<li>${text(one.text)}</li>`).join("")}</ul>`;
  return `<section class="cover">
<h1>${text(cover.title)}</h1>
<p class="day">${head}</p>
${cover.year === undefined ? "" : `<p class="film">${text(cover.year.text)}</p>`}
${cover.openers.length === 0 ? "" : `<p class="or"><b>Or open with:</b> ${cover.openers.map((one) => `“${text(one.text)}”`).join(" · ")}</p>`}
<ol class="order">${cover.rows.map(rowHtml).join("")}</ol>
${cover.fallsOut.length === 0 ? "" : `<p><b>Not in this length:</b> ${cover.fallsOut.map((one) => text(one.text)).join(" · ")}.</p>`}
${list("Settle before you go", cover.settle)}
${cover.cautions.length === 0 ? "" : `<div class="caring">${list("Take care", cover.cautions)}</div>`}
</section>`;
}

/** The photos to show, first to last, below the words. */
function photosHtml({ photos }: ThreadCard, { language }: GardenSettings, pictures: CardPictures): string {
  const shown = photos.flatMap(({ path, day }) => {
    const picture = pictures.get(path);
    const said = sayDay(day, { language });
    return picture === undefined
      ? []
      : [
          `<img src="${picture.src}" width="${picture.width}" height="${picture.height}" alt="As it was on ${text(said)}">`,
        ];
  });
  return shown.length === 0 ? "" : `<p class="spot-photos">${shown.join("")}</p>`;
}

function sheet(name: string): string {
  return preparedText(`styles/${name}.css`);
}

function sectionHtml({ id, title, lines, charts, tables }: RecapSection): string {
  const list =
    lines.length === 0
      ? ""
      : `<ul class="recap-lines">${lines
          .map(
            ({ text: said, level, file }) =>
              `<li>${level === undefined ? "" : `<strong>${level}.</strong> `}${text(said)}${file === undefined ? "" : ` <span class="file">${text(file)}</span>`}</li>`,
          )
          .join("")}</ul>`;
  const drawings = charts.length === 0 ? "" : `<div class="recap-charts">${charts.map(chartHtml).join("")}</div>`;
  return `<section aria-labelledby="${text(id)}" class="recap-${text(id)}"><h2 id="${text(id)}">${text(title)}</h2>${list}${drawings}${tables.map((table) => tableHtml(table, true)).join("")}</section>`;
}

function chartHtml({ id, title, svg, summary, method, table }: ChartFigure): string {
  return `<figure class="recap-chart" id="${text(id)}"><h3>${text(title)}</h3>${svg}<figcaption><p>${text(summary)}</p><p class="quiet">${text(method)}</p><details><summary>The numbers</summary>${tableHtml(table, false)}</details></figcaption></figure>`;
}

function tableHtml({ title, head, rows }: DataTable, named: boolean): string {
  const cells = ([first = "", ...rest]: readonly string[]) =>
    `<tr><th scope="row">${text(first)}</th>${rest.map((cell) => `<td>${text(cell)}</td>`).join("")}</tr>`;
  return `<section class="sideways" tabindex="0" aria-label="${text(title)}"><table class="data">${named ? `<caption>${text(title)}</caption>` : ""}<thead><tr>${head.map((cell) => `<th scope="col">${text(cell)}</th>`).join("")}</tr></thead><tbody>${rows.map(cells).join("")}</tbody></table></section>`;
}

function text(words: string): string {
  return escapeHtml(unbroken(words));
}
