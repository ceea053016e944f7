/** A quick note of the stop on the screen, kept with every letter. */
import type { Keeping } from "./keeping.ts";
import { at, onTap, sheet } from "./page.ts";
import { dayOf } from "./plan-clock.ts";
import { withNote } from "./ticks.ts";

export function showNotes(keeping: Keeping): void {
  const dialog = sheet("note-sheet");
  const field = at<HTMLTextAreaElement>("note");
  const stop = () => keeping.list.stops[keeping.kept().stop];

  onTap("write", () => {
    const here = stop();
    if (here === undefined) return;
    at("note-bed").textContent = here.title;
    field.value = keeping.kept().beds[here.bed]?.note ?? "";
    dialog.showModal();
    field.focus();
    field.setSelectionRange(field.value.length, field.value.length);
  });
  field.addEventListener("input", () => {
    const [here, kept] = [stop(), keeping.kept()];
    if (here !== undefined) {
      keeping.change({ ...withNote(kept, here, field.value), day: kept.day ?? dayOf(new Date()) });
    }
  });

  function draw(): void {
    for (const { bed } of keeping.list.stops) {
      const note = (keeping.kept().beds[bed]?.note ?? "").trim();
      for (const shown of document.querySelectorAll<HTMLElement>(`[data-note-of="${CSS.escape(bed)}"]`)) {
        shown.hidden = note === "";
        (shown.querySelector("span") as HTMLElement).textContent = note;
      }
    }
  }
  keeping.onChange(draw);
  draw();
}
