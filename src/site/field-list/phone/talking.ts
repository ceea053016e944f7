/** The talking view: what to say, very large, moving as fast as it is said. A tap pauses it. */
import type { Keeping } from "./keeping.ts";
import { type SpokenPart, scrolledAfter, secondsAt, wordsIn } from "./pacing.ts";
import { at, onTap, sheet } from "./page.ts";

export function showTalking(keeping: Keeping): void {
  const dialog = sheet("talk-sheet");
  const text = at("talk-text");
  const still = matchMedia("(prefers-reduced-motion: reduce)");
  let running: number | undefined;

  const parts = (): readonly SpokenPart[] => {
    const paragraphs = [...text.querySelectorAll("p")];
    return paragraphs.map((paragraph, index) => {
      const next = paragraphs[index + 1]?.offsetTop ?? paragraph.offsetTop + paragraph.offsetHeight;
      return { words: wordsIn(paragraph.textContent ?? ""), height: Math.max(1, next - paragraph.offsetTop) };
    });
  };

  function pause(): void {
    if (running !== undefined) cancelAnimationFrame(running);
    running = undefined;
    at("talk-go").textContent = still.matches ? "Next lines" : "Go on";
  }

  function run(): void {
    const { rate } = keeping.list;
    const spoken = parts();
    const total = spoken.reduce((sum, { height }) => sum + height, 0);
    const said = secondsAt(text.scrollTop, spoken, rate);
    const from = performance.now();
    at("talk-go").textContent = "Pause";
    const step = (now: number) => {
      const scrolled = scrolledAfter(said + (now - from) / 1000, spoken, rate);
      text.scrollTop = scrolled;
      if (scrolled >= total) pause();
      else running = requestAnimationFrame(step);
    };
    running = requestAnimationFrame(step);
  }

  /** Without motion: the next paragraph stands at the reading line at once. */
  function nextLines(): void {
    let top = 0;
    for (const { height } of parts()) {
      top += height;
      if (top > text.scrollTop + 1) break;
    }
    text.scrollTo({ top, behavior: "instant" });
  }

  function tap(): void {
    if (still.matches) nextLines();
    else if (running === undefined) run();
    else pause();
  }

  text.addEventListener("click", tap);
  onTap("talk-go", tap);
  dialog.addEventListener("close", pause);
  onTap("talk", () => {
    const stop = keeping.list.stops[keeping.kept().stop];
    if (stop === undefined) return;
    at("talk-name").textContent = stop.title;
    text.replaceChildren(
      ...stop.outline.map((line) => {
        const paragraph = document.createElement("p");
        paragraph.textContent = line;
        return paragraph;
      }),
    );
    dialog.showModal();
    text.scrollTop = 0;
    at("talk-go").textContent = still.matches ? "Next lines" : "Start";
    at("talk-go").focus();
  });
}
