/** Questions worth asking, answered by a tap, by a few words, or by never again. */
import { send } from "./send.ts";
import type { Told } from "./undo-bar.ts";

export function askByTap(showWritten: (told: Told) => void, notReached: string): void {
  for (const thing of document.querySelectorAll<HTMLElement>("[data-ask]")) {
    const told = thing.querySelector<HTMLElement>("[role=status]");
    const asked = JSON.parse(thing.dataset.ask ?? "{}") as object;
    const answerWith = async (answer: string | undefined) => {
      const kept = await send<Told>("/@ask", { ...asked, ...(answer !== undefined && { answer }) });
      if (kept?.undo === undefined) {
        if (told !== null) told.textContent = kept?.told ?? notReached;
        return;
      }
      showWritten(kept);
      thing.hidden = true;
    };
    for (const button of thing.querySelectorAll<HTMLButtonElement>("button[data-answer], button[data-never]"))
      button.addEventListener("click", () => void answerWith(button.dataset.answer));
    const form = thing.querySelector("form");
    form?.addEventListener("submit", (event) => {
      event.preventDefault();
      const answer = form.querySelector("input")?.value ?? "";
      if (answer.trim() !== "") void answerWith(answer);
    });
  }
}
