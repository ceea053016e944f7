/**
 * The look of the field list: the field pages’ band and lettering, black on white as they, because it is read in full sun.
 * One screen: band and clock above, the stop between, what the thumb needs below.
 */
import { carriedTokens } from "../carried-tokens.ts";

export const fieldListStyle = `
${carriedTokens()}
*, *::before, *::after { box-sizing: border-box; }
[hidden] { display: none !important; }
html {
  background: var(--paper); color: var(--pencil);
  font: 400 100%/1.3 "Field list", "Gill Sans", "Trebuchet MS", sans-serif;
  font-variant-numeric: lining-nums tabular-nums; overscroll-behavior: none; -webkit-text-size-adjust: 100%; text-size-adjust: 100%;
}
body { margin: 0; font-size: 1.3125rem; overflow-wrap: break-word; }
h1, h2, h3, p, ol, ul { margin: 0; padding: 0; }
h1, h2, h3, strong { font-weight: 500; }
h2 { font-size: 1.875rem; line-height: 1.05; text-wrap: balance; }
h3 { margin-top: 1.25rem; font-size: 1.375rem; }
ol, ul { list-style: none; }
button, input, textarea { font: inherit; color: inherit; }
button, summary, .download { min-height: 3.25rem; touch-action: manipulation; cursor: pointer; }
button { padding: .35rem .8rem; border: 2px solid var(--pencil); border-radius: .25rem; background: var(--paper); }
button:disabled { border-color: var(--zinc); color: var(--zinc); cursor: default; }
.download { display: flex; align-items: center; width: fit-content; color: inherit; font-weight: 500; }
button.strong { background: var(--pencil); color: var(--paper); }
:focus-visible { outline: 4px solid var(--pencil); outline-offset: 2px; }
h2:focus, #where:focus { outline: none; }
.unseen { position: absolute; width: 1px; height: 1px; margin: -1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
.quiet { color: var(--quiet); font-size: 1.0625rem; }
.number { color: var(--quiet); }
.grow { flex: 1; min-width: 0; }

.mark { display: flex; align-items: baseline; gap: .6rem; padding: .2rem 1rem; background: var(--band); color: var(--on-band); font-size: 1.0625rem; }
.mark strong { letter-spacing: .08em; text-transform: uppercase; }
.mark h1 { flex: 1; min-width: 0; font-size: inherit; overflow-wrap: anywhere; }
.clock { display: flex; flex-wrap: wrap; align-items: center; justify-content: space-between; gap: .15rem 1rem; min-height: 3.25rem; padding: 0 1rem; border-bottom: 2px solid var(--pencil); }
#elapsed { font-size: 1.625rem; font-weight: 500; margin-right: .4rem; }

main { padding: .2rem 1rem 1rem; }
.stop + .stop { margin-top: 3rem; }
.head { display: flex; flex-wrap: wrap; align-items: baseline; justify-content: space-between; gap: 0 .75rem; }
.head h2 { min-width: 0; }
.picture { flex: none; align-self: center; width: 5.5rem; height: 4rem; min-height: 0; margin: .25rem 0; padding: 0; overflow: hidden; line-height: 0; }
.picture img { width: 100%; height: 100%; object-fit: cover; }
.when { font-size: 1.1875rem; font-weight: 500; }
.opening { margin-top: .2rem; font-size: 1.75rem; line-height: 1.12; font-weight: 500; text-wrap: balance; }
.lines { margin: .4rem 0 0; font-size: 1.375rem; line-height: 1.1; font-weight: 500; }
.lines > div { display: grid; grid-template-columns: 3.1rem minmax(0, 1fr); column-gap: .4rem; padding: .1rem 0; border-top: 1px solid var(--zinc); }
.lines dt { grid-row: span 8; font-size: 1.0625rem; line-height: 1.5; font-weight: 400; }
.lines dd { grid-column: 2; margin: 0; font-weight: 400; }
.lines dd strong { font-weight: 500; border-bottom: 3px solid var(--zinc); }
.lines dd strong.new { border-bottom-color: var(--flower); }
.lines > .say { margin: .15rem 0; padding: .15rem .4rem .2rem; border: 3px solid var(--pencil); font-style: normal; }
.lines > .say dd { font-weight: 500; }
.lines > .say + div { border-top: 0; }
.lines > .names dd { font-size: 1.125rem; line-height: 1.25; }
.further { font-size: 1.0625rem; }
.further li { padding: .2rem 0; }
.own { padding: 0 .3rem; background: var(--band); color: var(--on-band); }

.cover > * + * { margin-top: .45rem; }
.cover b { font-weight: 500; }
.cover .day, .cover .times { font-size: 1.1875rem; font-weight: 500; }
.cover .film { font-size: 1.5rem; line-height: 1.15; font-weight: 500; text-wrap: balance; }
.cover ul { list-style: disc; padding-left: 1.25rem; }
.cover li + li { margin-top: .2rem; }
.cover .order { list-style: none; border-bottom: 1px solid var(--zinc); }
.order li { display: grid; grid-template-columns: 2.2rem minmax(0, 1fr) 3.2rem 3.6rem; gap: .4rem; padding: .3rem 0; border-top: 1px solid var(--zinc); }
.order .must .bed, .order .must .number { font-weight: 500; color: inherit; }
.order .must .number::after { content: " !"; }
.order .may-go .bed::before { content: "("; }
.order .may-go .bed::after { content: ")"; }
.order .long, .order .gone { text-align: right; }
.order .gone { color: var(--quiet); }
.caring { padding: .25rem .6rem .5rem; border-left: .5rem solid var(--band); background: var(--zinc-wash); font-size: 1.0625rem; }
.shots { padding-top: .25rem; }
.shots.first li:last-child { border-bottom: 0; }
.shots.first .label { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
.shots li { display: flex; align-items: stretch; border-top: 2px solid var(--zinc); }
.shots li:last-child { border-bottom: 2px solid var(--zinc); }
.tick {
  flex: 1; display: flex; gap: .75rem; min-height: 4rem; padding: .3rem .25rem .3rem 0; align-items: center; border: 0; border-radius: 0;
  background: none; text-align: left; -webkit-user-select: none; user-select: none; -webkit-touch-callout: none;
}
.tick svg { flex: none; width: 2.25rem; height: 2.25rem; margin-top: .1rem; }
.tick span { display: block; }
.label { color: var(--quiet); font-size: 1.0625rem; }
.state { font-weight: 500; }
.state:empty { display: none !important; }
.more { flex: none; width: 3.5rem; border: 0; background: none; padding: 0; }
.more svg { width: 1.75rem; height: 1.75rem; fill: currentcolor; }
.frame { fill: var(--frame, var(--paper)); stroke: var(--pencil); stroke-width: 3; }
.filmed, .retake, .skipped { fill: none; stroke-width: 4; }
.filmed { stroke: var(--tick, transparent); }
.retake { stroke: var(--again, transparent); stroke-width: 3; }
.skipped { stroke: var(--skip, transparent); }
[data-state=filmed] { --tick: var(--paper); --frame: var(--pencil); }
[data-state=filmed] .what { color: var(--quiet); }
[data-state=retake] { --again: var(--on-band); --frame: var(--band); background: var(--zinc-wash); }
[data-state=skipped] { --skip: var(--pencil); }
[data-state=skipped] .what { color: var(--quiet); text-decoration: line-through; }
.care { margin-top: .4rem; padding: .25rem .6rem; font-size: 1.0625rem; border-left: .5rem solid var(--band); background: var(--zinc-wash); }
.care li + li { margin-top: .25rem; }
.noted { margin-top: .75rem; white-space: pre-line; }
.reading li { padding-left: 1.2em; text-indent: -1.2em; }
.reading [data-as=story] { color: var(--quiet); font-size: 1.0625rem; }
.reading [data-as=question] { font-weight: 500; }
details { margin-top: .5rem; }
summary { padding: .75rem 0; text-decoration: underline; text-underline-offset: .2em; }
.names li { padding: .35rem 0; }
.say { font-style: italic; }
.bar { display: none; }

[data-live] body { display: grid; grid-template-columns: minmax(0, 1fr); grid-template-rows: auto 1fr auto; height: 100vh; height: 100dvh; }
[data-live] main { overflow-y: auto; overscroll-behavior: none; touch-action: pan-y pinch-zoom; display: flex; flex-direction: column; }
[data-live] .stop { margin: 0; flex: 1 0 auto; display: flex; flex-direction: column; position: relative; }
[data-live] .stop[hidden], [data-live] .cover[hidden] { display: none; }
[data-live] .unscripted { display: none; }
[data-live] .bar { display: flex; gap: .4rem; padding: .25rem .5rem max(.25rem, env(safe-area-inset-bottom)); border-top: 2px solid var(--pencil); background: var(--paper); }
.bar button { flex: 1 1 0; min-width: 0; min-height: 4rem; padding: .35rem .1rem; }

dialog {
  width: 100%; max-width: 40rem; max-height: 100dvh; margin: auto auto 0; padding: 1rem 1rem 0; border: 0; border-top: 4px solid var(--pencil);
  background: var(--paper); color: var(--pencil); overflow-y: auto;
}
dialog::backdrop { background: color-mix(in srgb, var(--dark) 50%, transparent); }
dialog > * + * { margin-top: .6rem; }
dialog .bar { position: sticky; bottom: 0; margin: 1rem -1rem 0; }
.takes li + li { margin-top: -2px; }
.takes button { display: flex; flex-wrap: wrap; align-items: baseline; justify-content: space-between; gap: 0 .75rem; width: 100%; min-height: 4rem; padding: .35rem 0; align-content: center; border-width: 2px 0; border-color: var(--zinc); border-radius: 0; text-align: left; }
.worth { display: grid; grid-template-columns: repeat(3, 1fr); gap: .5rem; }
.worth button, .chips button { min-height: 4rem; padding: .35rem .2rem; }
[aria-pressed=true] { background: var(--pencil); color: var(--paper); }
.chips, .pair { display: grid; grid-template-columns: repeat(2, 1fr); gap: .5rem; }
.chips { grid-template-columns: repeat(4, 1fr); }
.chips button { font-size: 1.0625rem; line-height: 1.1; }
input, textarea { width: 100%; min-height: 3.25rem; padding: .5rem .6rem; border: 2px solid var(--pencil); border-radius: .25rem; background: var(--paper); }
::placeholder { color: var(--quiet); opacity: 1; }
label textarea { display: block; margin-top: .5rem; }
#forget-sure button { display: block; margin-top: .5rem; }
#copy-field { font: 1rem/1.3 ui-monospace, monospace; }
.overview li + li { margin-top: -2px; }
.overview button { display: flex; gap: .6rem; width: 100%; text-align: left; border-width: 2px 0; border-radius: 0; border-color: var(--zinc); padding: .5rem 0; }
.overview [aria-current] { background: var(--zinc-wash); }

#talk-sheet { max-width: none; height: 100dvh; padding: 0; border: 0; }
#talk-sheet[open] { display: grid; grid-template-rows: auto 1fr auto; }
#talk-name { padding: .5rem 1rem; font-size: 1.375rem; }
#talk-text { position: relative; margin: 0; padding: 0 1rem; overflow-y: auto; font-size: clamp(2.75rem, 12vw, 7rem); line-height: 1.2; border-top: 2px solid var(--zinc); cursor: pointer; }
#talk-text::before { content: ""; display: block; height: 12vh; }
#talk-text::after { content: ""; display: block; height: 75vh; }
#talk-text p + p { margin-top: .6em; }
#talk-sheet .bar { margin: 0; }
#picture-sheet img { width: 100%; height: auto; }
#picture-sheet button { width: 100%; margin: 0 0 1rem; }

@media (orientation: landscape) and (max-height: 34rem) {
  [data-live] body { grid-template-rows: auto 1fr; grid-template-columns: minmax(0, 1fr) auto; }
  [data-live] body > header { grid-column: 1 / span 2; display: flex; border-bottom: 2px solid var(--pencil); }
  .mark { flex: 1; min-width: 0; align-items: center; }
  .clock { flex-wrap: nowrap; min-height: 0; border: 0; padding: 0 .5rem; font-size: 1.0625rem; }
  .clock button { min-height: 3rem; }
  [data-live] main { grid-column: 1; grid-row: 2; padding: .4rem 1rem; }
  [data-live] body > nav.bar { grid-column: 2; grid-row: 2; flex-direction: column; border-top: 0; border-left: 2px solid var(--pencil); padding: .25rem; gap: .25rem; }
  body > nav.bar button { min-height: 3rem; min-width: 5rem; }
}
@media (min-width: 48rem) and (min-height: 34.01rem) {
  main > *, .clock, .mark { padding-left: max(1rem, calc(50vw - 20rem)); padding-right: max(1rem, calc(50vw - 20rem)); }
}
@media print {
  .bar, .more, #start, details summary { display: none; }
}
`;
