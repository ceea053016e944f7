/** All stops at a glance, and what goes home: saved as two files, or copied as text. */
import { drawGoingBack } from "./going-back.ts";
import type { Keeping } from "./keeping.ts";
import { announce, at, onTap, sheet } from "./page.ts";
import { dayOf } from "./plan-clock.ts";
import { COVER } from "./shapes.ts";
import { noteHome, sayCounts, takenHome } from "./take-home.ts";
import { nothingKept, saySoFar } from "./ticks.ts";

export function showOverview(keeping: Keeping, go: (to: number) => void): void {
  const { list } = keeping;
  const dialog = sheet("stops-sheet");
  const rows = [...dialog.querySelectorAll<HTMLButtonElement>("[data-stop]")];

  function draw(): void {
    const kept = keeping.kept();
    for (const [index, row] of rows.entries()) {
      const stop = list.stops[index];
      if (stop === undefined) continue;
      (row.querySelector(".so-far") as HTMLElement).textContent = saySoFar(kept, stop);
      if (index === kept.stop) row.setAttribute("aria-current", "step");
      else row.removeAttribute("aria-current");
    }
    at("counts").textContent = sayCounts(list, kept);
    drawGoingBack(list, kept, goTo);
    at("keeps-nothing").hidden = keeping.lasts();
    at("stop-clock").hidden = kept.started === undefined || kept.stopped !== undefined;
    at("go-on").hidden = kept.stopped === undefined;
  }
  for (const [index, row] of rows.entries()) row.addEventListener("click", () => goTo(index));
  onTap("to-cover", () => goTo(COVER));

  function goTo(stop: number): void {
    dialog.close();
    go(stop);
  }

  const json = () => `${JSON.stringify(takenHome(list, keeping.kept(), new Date()), null, 2)}\n`;
  const note = () => noteHome(list, keeping.kept(), new Date());
  onTap("save-list", () => save("field-list.json", "application/json", json()));
  onTap("save-note", () => save(`${keeping.kept().day ?? dayOf(new Date())}-filming.md`, "text/markdown", note()));
  onTap("copy-list", () => copy(json()));
  onTap("copy-note", () => copy(note()));

  onTap("stop-clock", () => keeping.change({ ...keeping.kept(), stopped: Date.now() }));
  onTap("go-on", () => {
    const { started = 0, stopped = 0, ...kept } = keeping.kept();
    // A pause does not count: the start moves forward by its length.
    keeping.change({ ...kept, started: started + Date.now() - stopped });
  });
  onTap("forget", () => {
    at("forget").hidden = true;
    at("forget-sure").hidden = false;
    at("forget-all").focus();
  });
  onTap("forget-all", () => {
    keeping.change(nothingKept);
    announce("All ticks and notes of this list are gone.");
    dialog.close();
  });

  onTap("stops", () => {
    at("forget").hidden = false;
    at("forget-sure").hidden = true;
    at("copied").textContent = "";
    at("by-hand").hidden = true;
    draw();
    dialog.showModal();
    dialog.scrollTop = 0;
  });
  keeping.onChange(draw);
}

function save(name: string, type: string, text: string): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([text], { type: `${type};charset=utf-8` }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
  at("copied").textContent = `${name} is saved with the phone's downloads.`;
}

/** A page from plain http may not write to the clipboard; its text is then shown, chosen, to be copied by hand. */
async function copy(text: string): Promise<void> {
  try {
    await navigator.clipboard.writeText(text);
    at("copied").textContent = "Copied.";
  } catch {
    const field = at<HTMLTextAreaElement>("copy-field");
    at("by-hand").hidden = false;
    field.value = text;
    field.focus();
    field.select();
    at("copied").textContent = "Copy the chosen text below.";
  }
}
