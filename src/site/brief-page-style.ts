/** The look of the brief's page: the colours of the field pages, one column on a phone, two pages of paper for ten stops. */

import { carriedTokens } from "./carried-tokens.ts";

export const briefStyle = `
${carriedTokens()}
*, *::before, *::after { box-sizing: border-box; }
html {
  background: var(--paper); color: var(--pencil);
  font: 400 1.1875rem/1.42 "Brief", "Gill Sans", "Trebuchet MS", sans-serif;
  font-variant-numeric: lining-nums; -webkit-text-size-adjust: 100%; text-size-adjust: 100%;
  scroll-padding-top: 7rem;
}
body { margin: 0; overflow-wrap: break-word; }
h1, h2, h3, h4, p, ul, ol, table { margin: 0; padding: 0; }
h1, h2, h3, h4, strong, th { font-weight: 500; }
h1 { font-size: clamp(2.25rem, 1.5rem + 4vw, 3.75rem); line-height: 1.05; text-wrap: balance; }
h2 { font-size: 1.75rem; line-height: 1.15; }
h3 { font-size: 2rem; line-height: 1.1; }
h4 { font-size: 1.0625rem; color: var(--quiet); }
p { text-wrap: pretty; }
body { position: relative; padding-left: 1.25rem; }
.mark { position: sticky; top: 0; z-index: 1; margin-left: -1.25rem; padding: .4rem max(1.25rem, 4vw); background: var(--band); color: var(--on-band); }
.tape { position: absolute; top: 0; left: 0; width: 1.25rem; height: 100%; }
.tape .ground { fill: var(--band); }
.tape text { fill: var(--on-band); font-size: 1rem; font-weight: 500; letter-spacing: .12em; text-transform: uppercase; }
.mark strong { font-size: 1.5rem; letter-spacing: .12em; text-transform: uppercase; margin-right: .6rem; }
main { max-width: 78rem; margin: 0 auto; padding: 1.5rem max(1.25rem, 4vw) 4rem; }
.when { margin-top: .5rem; font-size: 1.375rem; }
.plan, .left { max-width: 44rem; margin-top: .35rem; }
code { font: inherit; font-weight: 500; }
.light { margin: 1rem 0 0; }
.light svg { max-width: 100%; height: auto; overflow: visible; }
.light rect { fill: var(--zinc-line); }
.light rect.best { fill: var(--quiet); }
.light rect.chosen { fill: var(--flower); }
.light text { fill: var(--quiet); font-size: 12px; }
.clock { margin-top: .15rem; font-weight: 500; }
.say { margin-top: .5rem; max-width: 44rem; padding-left: .75rem; border-left: 3px solid var(--zinc-line); }
.quiet { color: var(--quiet); }
section { margin-top: 2.25rem; }
section > h2 { margin-bottom: .5rem; }
.lines { max-width: 44rem; padding-left: 1.5rem; }
.lines li + li { margin-top: .4rem; }
.site { margin-top: 3rem; padding-bottom: .25rem; border-bottom: 2px solid var(--pencil); }
.stop { margin-top: 2rem; padding-top: 1.25rem; border-top: 1px solid var(--zinc-line); }
.site + .stop { margin-top: 1rem; border-top: 0; padding-top: 0; }
.stop .number { display: inline-block; min-width: 1.4em; color: var(--quiet); }
.spot { margin-top: .25rem; color: var(--quiet); }
.seen { margin-top: .35rem; max-width: 44rem; }
.show, .ticks { list-style: none; max-width: 44rem; }
.show { margin-top: .75rem; }
.show label, .ticks label { display: grid; grid-template-columns: 2rem 1fr; gap: .6rem; min-height: 3rem; padding: .35rem 0; cursor: pointer; }
input[type=checkbox] {
  appearance: none; width: 1.75rem; height: 1.75rem; margin: .05rem 0 0; border: 2px solid var(--pencil); border-radius: 2px;
  background: transparent; cursor: pointer;
}
input[type=checkbox]:checked { background: linear-gradient(to top right, transparent 46%, var(--pencil) 46%, var(--pencil) 54%, transparent 54%), linear-gradient(to bottom right, transparent 46%, var(--pencil) 46%, var(--pencil) 54%, transparent 54%); }
input[type=checkbox]:focus-visible, summary:focus-visible { outline: 3px solid var(--pencil); outline-offset: 3px; }
.level { margin-right: .35em; font-weight: 500; }
.could .level { font-weight: 400; font-style: normal; color: var(--quiet); }
.is-new .level, .new { color: var(--flower); }
.new { font-weight: 500; }
.why { color: var(--quiet); }
table { width: 100%; margin-top: .75rem; border-collapse: collapse; font-size: 1.0625rem; }
th, td { padding: .35rem .75rem .35rem 0; text-align: left; vertical-align: top; border-top: 1px solid var(--zinc-line); }
thead th { border-top: 0; color: var(--quiet); font-weight: 400; }
.facts { margin-top: .75rem; max-width: 44rem; padding-left: 1.1rem; }
.facts li + li { margin-top: .25rem; }
.notes { margin-top: .5rem; max-width: 44rem; font-size: 1.0625rem; }
.notes b { font-weight: 500; }
.notes p + p { margin-top: .25rem; }
details { margin-top: .6rem; max-width: 44rem; font-size: 1.0625rem; }
summary { min-height: 3rem; padding: .6rem 0; cursor: pointer; text-decoration: underline; text-decoration-color: var(--zinc-line); text-underline-offset: .2em; }
details ul { padding-left: 1.25rem; }
.own { padding: 0 .35em; background: var(--band); color: var(--on-band); }
footer { max-width: 78rem; margin: 0 auto; padding: 1rem max(1.25rem, 4vw) 2rem; color: var(--quiet); }
@media (min-width: 68rem) {
  .stop { display: grid; grid-template-columns: minmax(0, 33rem) minmax(0, 1fr); column-gap: 3rem; align-items: start; }
  .stop > header, .stop > .told { grid-column: 1; }
  .stop > .listed { grid-column: 2; grid-row: 1 / span 2; }
  .stop > .listed table { margin-top: 0; }
}
@media print, (max-width: 46rem) {
  table, tbody, tr { display: block; }
  th, td { display: inline; padding: 0; border: 0; }
  td::before { content: " \\00b7  "; }
  tr { padding: .3rem 0; border-top: 1px solid var(--zinc-line); }
  thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
}
@media print {
  html { font-size: 10pt; line-height: 1.2; }
  body { print-color-adjust: economy; }
  main { max-width: none; padding: 0; }
  body { padding: 0; }
  .tape { display: none; }
  .mark { position: static; margin: 0; padding: 0; border-bottom: 1pt solid var(--pencil); background: none; }
  .mark strong { font-size: 10pt; }
  h1 { display: inline; font-size: 13pt; }
  h2 { font-size: 13pt; }
  h3 { font-size: 12pt; }
  .when, table, .notes { font-size: inherit; }
  .plan { max-width: none; margin: 0; }
  .light, .clock, .say { margin: 0; }
  .light { margin-top: 1mm; }
  .light svg { height: 7mm; width: auto; }
  .light rect { fill: var(--zinc-line); }
  .light rect.best { fill: var(--quiet); }
  .light rect.chosen { fill: var(--pencil); }
  main { position: relative; }
  .say { padding: 0; border: 0; }
  .left { max-width: none; }
  .when { display: inline; margin: 0 0 0 2mm; }
  .paper { columns: 2; column-gap: 5mm; column-rule: .3pt solid var(--zinc-line); margin-top: 1mm; }
  section { margin-top: 1.4mm; }
  section > h2 { margin-bottom: .2mm; }
  section:first-child { margin-top: 0; }
  .lines, .show, .ticks, .facts, .notes, .seen { max-width: none; }
  .lines { padding-left: 3mm; }
  .lines li + li { margin-top: 0; }
  .site { margin-top: 1.6mm; padding: 0; border-bottom-width: .8pt; }
  .stop { display: block; margin-top: 1.1mm; padding-top: .5mm; border-top: .3pt solid var(--zinc-line); }
  .stop header > * { display: inline; margin: 0 .6mm 0 0; }
  .stop .number { min-width: 0; }
  .show, table, .facts, .notes { margin-top: .3mm; }
  .notes p + p { margin: 0; }
  .show label, .ticks label { grid-template-columns: 3.2mm 1fr; gap: 1mm; min-height: 0; padding: 0; }
  input[type=checkbox] { width: 3mm; height: 3mm; margin-top: .5mm; border: .5pt solid var(--pencil); border-radius: 0; }
  .facts { padding: 0; }
  .facts li { display: inline; }
  .facts li::before { content: " \\2022\\00a0"; }
  tr { padding: 0 0 0 2mm; border-top: .25pt solid var(--zinc-line); text-indent: -2mm; }
  thead { display: none; }
  .new { font-style: italic; white-space: normal; }
  h2, h3, header { break-after: avoid; }
  .show li, tr, .notes p { break-inside: avoid; }
  p, li { orphans: 2; widows: 2; }
  .screen, .facts .screen, details, footer { display: none; }
}
`;
