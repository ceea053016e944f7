/** Photos dropped on a bed or a variety, or chosen there: sent one after the other. */
import type { Told } from "./undo-bar.ts";

export function takeDrops(show: (told: Told) => void, notReached: string): void {
  for (const goal of document.querySelectorAll<HTMLElement>("[data-drop]")) {
    const to = goal.dataset.drop ?? "";
    const chooser = goal.querySelector<HTMLInputElement>("input[type=file]");
    chooser?.addEventListener("change", () => void sendAll(to, [...(chooser.files ?? [])]));
    const over = (isOver: boolean) => goal.toggleAttribute("data-over", isOver);
    goal.addEventListener("dragover", (event) => {
      if (event.dataTransfer?.types.includes("Files") !== true) return;
      event.preventDefault();
      over(true);
    });
    goal.addEventListener("dragleave", () => over(false));
    goal.addEventListener("drop", (event) => {
      const files = [...(event.dataTransfer?.files ?? [])];
      over(false);
      if (files.length === 0) return;
      event.preventDefault();
      void sendAll(to, files);
    });
  }

  async function sendAll(to: string, files: readonly File[]): Promise<void> {
    const told: string[] = [];
    for (const file of files) {
      told.push(`${file.name}: ${await sent(to, file)}`);
      show({ told: told.join(" ") });
    }
  }

  async function sent(to: string, file: File): Promise<string> {
    const said = new URLSearchParams(to);
    said.set("name", file.name);
    said.set("modified", String(Math.round(file.lastModified)));
    try {
      const answer = await fetch(`/@photo?${said}`, {
        method: "POST",
        headers: { "content-type": "application/octet-stream" },
        body: file,
      });
      if (answer.ok) return ((await answer.json()) as Told).told;
      if (answer.status === 413) return document.getElementById("undo-bar")?.dataset.tooLarge ?? "";
    } catch {}
    return notReached;
  }
}
