/**
 * The recap as one page to read or to print: no request to anywhere, no script, its one style sheet allowed by hash. Private:
 * it carries prices, promises and plans.
 */
import type { GardenSettings } from "../model.ts";
import type { Recap } from "../season/index.ts";
import { preparedText } from "../store/index.ts";
import { carriedFonts } from "./carried-fonts.ts";
import { escapeHtml } from "./escape-html.ts";
import { recapPage } from "./page-data/recap-pages.ts";
import type { ChartFigure, DataTable, RecapSection } from "./page-data/recap-shapes.ts";
import { sealedHead } from "./sealed-head.ts";
import { unbroken } from "./unbroken.ts";

/** The style sheets of the field pages, so that both look alike. */
const sheets = ["tokens", "ground", "plates", "private", "recap", "print"];

/** A whole HTML document. */
export function recapDocument(recap: Recap, settings: GardenSettings): string {
  const page = recapPage(recap, settings, true);
  const style = `${carriedFonts("Alegreya Sans")}${sheets.map(sheet).join("\n")}`;
  return `${sealedHead(text(page.title), style)}
<body class="private">
<header><p class="mark"><strong>Private</strong> <span>Field page. Not for viewers, not for the web.</span></p></header>
<main id="main">
<div class="plate"><h1>${text(page.title)}</h1><p>${text(page.span)}</p></div>
<p class="recap-paragraph">${text(page.paragraph)}</p>
${page.opening.length === 0 ? "" : `<section aria-labelledby="opening"><h2 id="opening">The film may open with</h2><ol class="recap-lines">${page.opening.map((one) => `<li>${text(one)}</li>`).join("")}</ol></section>`}
${page.sections.map(sectionHtml).join("\n")}
<section aria-labelledby="methods"><h2 id="methods">How the figures were worked out</h2><ul class="recap-lines quiet">${page.methods.map((one) => `<li>${text(one)}</li>`).join("")}</ul></section>
</main>
<footer class="soil"><p>${text(settings.name)}. Private field page.</p></footer>
</body>
</html>
`;
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
