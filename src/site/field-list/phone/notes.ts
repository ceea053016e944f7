/** A quick note of the stop on the screen, kept with every letter and read while it is typed. */
import type { Keeping } from "./keeping.ts";
import { at, onTap, sheet } from "./page.ts";
import { dayOf } from "./plan-clock.ts";
import { withNote } from "./ticks.ts";
import { typedInto } from "./typed.ts";

export function showNotes(keeping: Keeping): void {
  const dialog = sheet("note-sheet");
  const field = at<HTMLTextAreaElement>("note");
  const { reads } = keeping.list;
  const showReading = typedInto(at("note-reading"), reads);
  const stop = () => keeping.list.stops[keeping.kept().stop];

  onTap("write", () => {
    const here = stop();
    if (here === undefined) return;
    at("note-bed").textContent = here.title;
    field.value = keeping.kept().beds[here.bed]?.note ?? "";
    showReading(field.value, here.bed, keeping.kept().day ?? dayOf(new Date()));
    dialog.showModal();
    field.focus();
    field.setSelectionRange(field.value.length, field.value.length);
  });
  field.addEventListener("input", () => {
    const [here, kept] = [stop(), keeping.kept()];
    if (here === undefined) return;
    const day = kept.day ?? dayOf(new Date());
    keeping.change({ ...withNote(kept, here, field.value), day });
    showReading(field.value, here.bed, day);
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
