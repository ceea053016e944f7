/**
 * The sheet of one shot: each take with its time and its worth. The reason may be said before the take that it is about,
 * or after.
 */
import type { Take } from "../../../model.ts";
import { at, onTap, rowButton, sheet } from "./page.ts";
import type { Tick } from "./shapes.ts";
import type { Row } from "./shots.ts";
import { explained, marked, nextMark, sayTake, sayTick, skipped, taken, takenBack } from "./ticks.ts";

type Change = (tick: Tick, at: string) => Tick;

export function openShotSheet(set: (row: Row, change: Change) => void, tick: (row: Row) => Tick): (row: Row) => void {
  const dialog = sheet("shot-sheet");
  const reason = at<HTMLInputElement>("reason");
  const list = at("takes");
  const chips = [...document.querySelectorAll<HTMLElement>("#shot-sheet [data-reason]")];
  let open: Row | undefined;
  /** Whether a reason said now is about the last take. */
  let asked = false;

  function draw(): void {
    if (open === undefined) return;
    const now = tick(open);
    at("shot-name").textContent = open.shot.id;
    at("shot-text").textContent = open.shot.text;
    at("shot-state").textContent = sayTick(now);
    at<HTMLButtonElement>("shot-back").disabled = now.takes.length === 0 && now.skipped === undefined;
    for (const chip of chips) chip.setAttribute("aria-pressed", String(chip.dataset.reason === reason.value.trim()));
    list.replaceChildren(...now.takes.map(takeRow));
  }

  function takeRow(take: Take, index: number): HTMLElement {
    return rowButton(`Take ${index + 1}`, sayTake(take), () => {
      change((now, time) => marked(now, index, nextMark(now.takes[index]?.mark), time));
      list.querySelectorAll("button")[index]?.focus();
    });
  }

  function change(to: Change): void {
    if (open !== undefined) set(open, to);
    draw();
  }

  function because(why: string): void {
    reason.value = why;
    if (asked) change((now, time) => explained(now, why, time));
    else draw();
  }

  const why = () => reason.value.trim();
  onTap("shot-filmed", () => {
    change((now, time) => taken(now, "good", time));
    dialog.close();
  });
  for (const [id, mark] of [
    ["shot-hold", "hold"],
    ["shot-again", "no good"],
  ] as const) {
    onTap(id, () => {
      // A reason that was said of the take before is not this one's.
      if (asked) reason.value = "";
      change((now, time) => taken(now, mark, time, why()));
      asked = true;
    });
  }
  onTap("shot-back", () => {
    asked = false;
    change(takenBack);
  });
  onTap("shot-skip", () => {
    change((now, time) => skipped(now, why(), time));
    dialog.close();
  });
  for (const chip of chips) {
    const own = chip.dataset.reason ?? "";
    chip.addEventListener("click", () => because(why() === own ? "" : own));
  }
  reason.addEventListener("input", () => {
    if (asked) change((now, time) => explained(now, why(), time));
    else draw();
  });
  return (row) => {
    open = row;
    asked = false;
    reason.value = tick(row).skipped?.reason ?? "";
    draw();
    dialog.showModal();
  };
}
