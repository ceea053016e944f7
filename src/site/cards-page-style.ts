/**
 * The look of cover and cards: a plant label in zinc grey and pencil black with much white. On paper a card is half a sheet,
 * read at arm's length: 18 points and 24 for the opening (docs/planning.md has the reckoning). A card that overflows is a
 * mistake in its words, never a reason for smaller letters.
 */
export function cardsPageStyle(paper: "A4" | "Letter"): string {
  const [wide, high] = paper === "A4" ? ["210mm", "148.4mm"] : ["215.9mm", "139.6mm"];
  return `
.cover > * + * { margin-top: .5rem; }
.cover .day { font-size: 1.375rem; }
.cover .film { max-width: 44rem; font-size: 1.625rem; line-height: 1.2; font-weight: 500; }
.cover b { font-weight: 500; }
.cover h2 { font-size: 1.375rem; }
.order { max-width: 44rem; list-style: none; border-bottom: 1px solid var(--zinc-line); }
.order li { display: grid; grid-template-columns: 2rem minmax(0, 1fr) 4rem 4rem; gap: .5rem; padding: .2rem 0; border-top: 1px solid var(--zinc-line); }
.order .must .bed, .order .must .number { font-weight: 500; }
.order .must .number::after { content: " !"; }
.order .may-go .bed::before { content: "("; }
.order .may-go .bed::after { content: ")"; }
.order .long, .order .gone { text-align: right; }
.order .gone { color: var(--quiet); }
.caring { max-width: 44rem; font-size: 1.0625rem; }
.caring ul { padding-left: 1.25rem; }
.sheet { display: grid; gap: 1.5rem; margin-top: 1.5rem; }
.card { display: flow-root; padding: 1rem; border: 2px solid var(--pencil); border-radius: .5rem; overflow-wrap: anywhere; }
.card header { display: flex; flex-wrap: wrap; align-items: baseline; justify-content: space-between; gap: 0 1rem; }
.card .number { color: inherit; }
.card .opening { margin-top: .3rem; font-size: 1.75rem; line-height: 1.12; font-weight: 500; }
.card dl { margin: .4rem 0 0; font-size: 1.375rem; line-height: 1.2; }
.card dl > div { display: grid; grid-template-columns: 3.6rem minmax(0, 1fr); column-gap: .5rem; padding: .1rem 0; border-top: 1px solid var(--zinc-line); }
.card dt { grid-row: span 4; font-size: 1.0625rem; line-height: 1.55; }
.card dd { grid-column: 2; margin: 0; }
@media print, (min-width: 40rem) { .card dd em { white-space: nowrap; } }
.card dd strong { border-bottom: 3px solid var(--zinc-line); }
.card dl > .part-say { padding: .2rem .5rem; border: 3px solid var(--pencil); font-weight: 500; }
.card dl > .part-say + div { border-top: 0; }
.card .shots { list-style: none; margin-top: .4rem; }
.card .shots li { display: flex; align-items: center; gap: .6rem; border-top: 1px solid var(--zinc-line); }
.card .shots label { flex: 1; display: grid; grid-template-columns: 2rem minmax(0, 1fr); align-items: center; gap: .6rem; min-height: 3rem; cursor: pointer; }
.takes { flex: none; display: flex; gap: .4rem; }
.takes i { width: 1.75rem; height: 1.75rem; border: 1px solid var(--zinc-line); border-radius: 50%; font-style: normal; text-align: center; line-height: 1.65rem; }
.card img { float: right; width: 9rem; height: auto; margin: 0 0 .4rem .6rem; }
.card .spot-photos { display: flex; flex-wrap: wrap; gap: .6rem; margin-top: .6rem; }
.card .spot-photos img { float: none; margin: 0; }
.changed { color: var(--flower); font-weight: 500; }
.card:has(> .changed) { border-color: var(--flower); }
.card > .changed { margin-top: .4rem; }
.live { margin-bottom: 1rem; }
.live a { display: inline-block; padding: .5rem 0; color: inherit; }
.dossier-head { margin-top: 3rem; }
@media screen and (max-width: 40rem) {
  .card .shots li { flex-wrap: wrap; padding-bottom: .4rem; }
  .card .shots label { flex-basis: 100%; }
  .card .takes { margin-left: 2.6rem; }
  .card > img { float: none; width: 100%; margin: .4rem 0; }
}
@media (min-width: 68rem) { .sheet { grid-template-columns: 1fr 1fr; } }
@media print {
  .changed, .live { display: none; }
  .card:has(> .changed) { border-color: var(--pencil); }
  @page { size: ${paper}; margin: 11mm 12mm; }
  @page cards { margin: 0; }
  .cover { font-size: 11pt; line-height: 1.2; }
  .cover > * + * { margin-top: 1.6mm; }
  .cover h1 { display: block; font-size: 26pt; }
  .cover .day { font-size: 14pt; }
  .cover .film { max-width: none; font-size: 16pt; }
  .cover h2 { font-size: 12pt; }
  .order, .caring { max-width: none; }
  .order { columns: 2; column-gap: 8mm; font-size: 12pt; }
  .order li { padding: .6mm 0; grid-template-columns: 9mm minmax(0, 1fr) 13mm 13mm; gap: 0; break-inside: avoid; }
  .cover .ticks { columns: 2; column-gap: 8mm; }
  .cover .ticks li { break-inside: avoid; }
  .cover .ticks label { grid-template-columns: 5mm 1fr; gap: 1mm; }
  .caring { font-size: 10pt; line-height: 1.15; }
  .sheet { page: cards; display: block; margin: 0; break-before: page; break-after: page; width: ${wide}; }
  .card { width: ${wide}; height: ${high}; padding: 8mm 11mm; border: 0; overflow: hidden; border-radius: 0; break-inside: avoid; font-size: 18pt; line-height: 1.12; }
  .card { position: relative; }
  /* Where to cut, short of the edge that printers leave free. */
  .card + .card::before { content: ""; position: absolute; top: 0; left: 6mm; right: 6mm; border-top: .3pt dashed var(--zinc-line); }
  .card header { flex-wrap: nowrap; }
  .card h2 { font-size: 24pt; line-height: 1; font-weight: 500; }
  .card .number { font-size: 30pt; }
  .card .clock { font-size: 18pt; font-weight: 400; text-align: right; }
  .card .opening { margin-top: 1mm; font-size: 24pt; line-height: 1.05; }
  .card dl, .card .shots { margin-top: 1.2mm; font-size: 18pt; line-height: 1.1; }
  .card dl > div { grid-template-columns: 19mm minmax(0, 1fr); column-gap: 1mm; padding: .3mm 0; border-top: .3pt solid var(--zinc-line); }
  .card dt { font-size: 18pt; line-height: inherit; color: var(--quiet); }
  .card dl > .part-say { padding: .3mm 1.5mm; border: 1.2pt solid var(--pencil); }
  .card .shots li { border-top: .3pt solid var(--zinc-line); gap: 2mm; }
  .card .shots label { grid-template-columns: 7mm 1fr; gap: 1mm; min-height: 9.5mm; }
  .card input[type=checkbox] { width: 6mm; height: 6mm; margin: 0; border: 1pt solid var(--pencil); }
  .takes { gap: 1.5mm; }
  .takes i { width: 8mm; height: 8mm; line-height: 7.6mm; border: .6pt solid var(--zinc-line); }
  .card img { width: 42mm; margin: 0 0 1mm 3mm; filter: grayscale(1); }
  .dossier-head { break-before: page; margin: 0; }
}
`;
}

/** A sheet in four, A6 or a quarter of Letter each: the same letters, fewer lines to a face. */
export function pocketStyle(paper: "A4" | "Letter"): string {
  const [wide, high] = paper === "A4" ? ["105mm", "148.4mm"] : ["107.9mm", "139.6mm"];
  return `
@media print {
  .sheet.pocket { display: grid; grid-template-columns: ${wide} ${wide}; grid-auto-rows: ${high}; gap: 0; }
  .pocket .card { width: ${wide}; height: ${high}; padding: 6mm; }
  .pocket .card:nth-child(2)::before { display: none; }
  .pocket .card:nth-child(2n + 1)::after { content: ""; position: absolute; top: 6mm; bottom: 6mm; right: 0; border-right: .3pt dashed var(--zinc-line); }
  .pocket .card header { display: block; }
  .pocket .card h2 { font-size: 18pt; line-height: 1.1; }
  .pocket .card .number { font-size: 24pt; }
  .pocket .card .clock { text-align: left; }
  .pocket .card dl > div { display: block; padding: .6mm 0; }
  .pocket .card dt { display: inline; padding-right: 2mm; }
  .pocket .card dt + dd { display: inline; }
  .pocket .card dd em { white-space: normal; }
  .pocket .card dl > .part-say { padding: .6mm 1.5mm; }
  .pocket .card img { float: none; margin: 3mm 0 0; }
  .pocket .card .shots li { align-items: flex-start; padding: .8mm 0; }
  .pocket .card .shots label { align-items: start; min-height: 0; }
  .pocket .takes { gap: 1mm; }
  .pocket .takes i { width: 7mm; height: 7mm; line-height: 6.6mm; }
}
`;
}
