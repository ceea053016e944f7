/** What the page to write outdoors has beside the look of the field list. */

export const outdoorsStyle = `
.outdoors #write > * + * { margin-top: .45rem; }
.outdoors label[for=line] { display: block; padding-top: .3rem; }
.outdoors main { padding-bottom: .5rem; }
.when { display: flex; align-items: center; gap: .6rem; }
.when input { width: auto; flex: 0 1 11rem; min-width: 0; }
.when .download { margin-left: auto; font-size: 1.0625rem; }
.outdoors .chips { display: flex; flex-wrap: wrap; gap: .3rem; }
.outdoors .chips button { min-height: 3rem; padding: .25rem .55rem; max-width: 100%; text-align: left; }
.outdoors .chips.verbs { padding-top: .45rem; border-top: 1px solid var(--zinc); }
#more { border-style: dashed; }
.outdoors .chips [aria-pressed=true] { background: var(--pencil); color: var(--paper); }
#line { font-size: 1.5rem; min-height: 3.75rem; }
#options { border: 2px solid var(--pencil); border-top: 0; border-radius: 0 0 .25rem .25rem; margin-top: -.25rem; }
#options li { display: flex; flex-wrap: wrap; align-items: center; justify-content: space-between; gap: 0 .6rem; min-height: 3rem; padding: .25rem .6rem; cursor: pointer; touch-action: manipulation; }
#options li + li { border-top: 1px solid var(--zinc); }
#options [aria-selected=true] { background: var(--pencil); color: var(--paper); }
#options [aria-selected=true] .quiet { color: inherit; }
#reading:empty, .outdoors .state:empty { display: none; }
#reading { font-size: 1.25rem; }
select { width: 100%; min-height: 3.25rem; padding: .5rem .6rem; border: 2px solid var(--pencil); border-radius: .25rem; background: var(--paper); color: inherit; font: inherit; }
#waiting > li { padding: .5rem 0; border-top: 2px solid var(--zinc); }
#waiting > li > * + * { margin-top: .25rem; }
#waiting .kept { font-weight: 500; }
#waiting .pair:empty { display: none; }
.pick { position: relative; display: flex; align-items: center; justify-content: center; min-height: 3.25rem; padding: .35rem .8rem; border: 2px solid var(--pencil); border-radius: .25rem; cursor: pointer; }
.pick input { position: absolute; inset: 0; width: 100%; height: 100%; min-height: 0; padding: 0; border: 0; opacity: 0; cursor: pointer; }
.pick:focus-within { outline: 4px solid var(--pencil); outline-offset: 2px; }
.bar .pick { flex: 1 1 0; min-width: 0; min-height: 4rem; padding: .35rem .2rem; text-align: center; line-height: 1.1; }
#photo-sheet { max-width: 48rem; }
#spot { margin-top: .4rem; }
#stage { position: relative; --strength: .5; background: var(--dark); line-height: 0; }
#stage img, #stage video { display: block; width: 100%; height: auto; max-height: 60vh; object-fit: cover; }
#stage video:not([hidden]) { position: static; }
#stage img:not([hidden]) + video:not([hidden]) { position: absolute; inset: 0; height: 100%; max-height: none; }
#stage:has(video:not([hidden])) img { position: relative; z-index: 1; opacity: var(--strength); pointer-events: none; }
#strength { min-height: 3rem; padding: 0; border: 0; }
#undo { display: flex; flex-wrap: wrap; align-items: center; gap: .6rem; }
@media (min-width: 48rem) and (min-height: 34.01rem) {
  .outdoors nav.bar { padding-left: max(.5rem, calc(50vw - 20rem)); padding-right: max(.5rem, calc(50vw - 20rem)); }
}
`;
