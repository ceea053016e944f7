/** The cover, then one stop a screen: going from one to the next by button, by swipe, by arrow key; and the clock. */
import type { Keeping } from "./keeping.ts";
import { announce, at, onTap } from "./page.ts";
import { sayAgainstPlan, sayElapsed } from "./plan-clock.ts";
import { COVER } from "./shapes.ts";

/** Pixels a finger travels before it is a swipe, and how much farther along than down. */
const SWIPE = 60;
const ALONG = 2;

export function showStops(keeping: Keeping): { go(to: number): void } {
  const { list } = keeping;
  const cover = at("cover");
  const sections = [...document.querySelectorAll<HTMLElement>("section.stop")];
  const main = document.querySelector("main") as HTMLElement;

  function here(): number {
    return Math.min(Math.max(keeping.kept().stop, COVER), sections.length - 1);
  }

  function draw(): void {
    const now = here();
    cover.hidden = now !== COVER;
    for (const [index, section] of sections.entries()) section.hidden = index !== now;
    at("where").textContent = now === COVER ? sayStops(sections.length) : `Stop ${now + 1} of ${sections.length}`;
    for (const id of ["write", "talk"]) at<HTMLButtonElement>(id).disabled = now === COVER;
    for (const [id, to, word] of [
      ["back", now - 1, "Back"],
      ["next", now + 1, "Next"],
    ] as const) {
      const button = at<HTMLButtonElement>(id);
      const title = to === COVER ? "the cover" : list.stops[to]?.title;
      button.disabled = title === undefined;
      button.setAttribute("aria-label", title === undefined ? word : `${word}: ${title}`);
    }
  }

  function go(to: number): void {
    if (to < COVER || to >= sections.length || to === here()) return;
    keeping.change({ ...keeping.kept(), stop: to });
    main.scrollTop = 0;
    (sections[to] ?? cover).querySelector<HTMLElement>("h2")?.focus({ preventScroll: true });
    announce(to === COVER ? "The cover" : `Stop ${to + 1}, ${list.stops[to]?.title}`);
  }

  let from: Touch | undefined;
  main.addEventListener(
    "touchstart",
    (event) => {
      from = event.touches.length === 1 ? event.touches[0] : undefined;
    },
    { passive: true },
  );
  main.addEventListener("touchend", (event) => {
    const to = event.changedTouches[0];
    if (from === undefined || to === undefined) return;
    const [along, down] = [to.clientX - from.clientX, to.clientY - from.clientY];
    from = undefined;
    if (Math.abs(along) >= SWIPE && Math.abs(along) >= ALONG * Math.abs(down)) go(here() + (along < 0 ? 1 : -1));
  });
  document.addEventListener("keydown", (event) => {
    const step = { ArrowRight: 1, ArrowLeft: -1 }[event.key];
    const busy = document.querySelector("dialog[open]") !== null || event.altKey || event.ctrlKey || event.metaKey;
    if (step !== undefined && !busy) go(here() + step);
  });
  onTap("back", () => go(here() - 1));
  onTap("next", () => go(here() + 1));

  const clock = () => drawClock(keeping);
  onTap("start", () => {
    keeping.change({ ...keeping.kept(), started: Date.now(), stopped: undefined });
    at("where").focus();
  });
  setInterval(clock, 1000);
  keeping.onChange(draw);
  keeping.onChange(clock);
  draw();
  clock();
  return { go };
}

function drawClock({ list, kept }: Keeping): void {
  const { started, stopped, stop } = kept();
  at("start").hidden = started !== undefined;
  at("running").hidden = started === undefined;
  const planned = list.stops[stop];
  if (started === undefined) return;
  const elapsed = ((stopped ?? Date.now()) - started) / 1000;
  at("elapsed").textContent = sayElapsed(elapsed);
  const against = planned === undefined ? "" : sayAgainstPlan(elapsed, planned);
  at("against").textContent = stopped === undefined ? against : "clock stopped";
}

function sayStops(count: number): string {
  return count === 1 ? "One stop" : `${count} stops`;
}
