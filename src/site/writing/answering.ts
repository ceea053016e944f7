/** Questions on a page, answered by a tap on one of their readings. */
import { send } from "./send.ts";
import type { Told } from "./undo-bar.ts";

export function answerByTap(showWritten: (told: Told) => void, notReached: string): void {
  for (const question of document.querySelectorAll<HTMLElement>("[data-settle]")) {
    const told = question.querySelector<HTMLElement>("[role=status]");
    for (const button of question.querySelectorAll<HTMLButtonElement>("button")) {
      button.addEventListener("click", async () => {
        const { reading } = button.dataset;
        const asked = JSON.parse(question.dataset.settle ?? "{}") as object;
        const answer = await send<Told>("/@settle", {
          ...asked,
          ...(reading !== undefined && { reading: Number(reading) }),
        });
        if (answer?.undo === undefined) {
          if (told !== null) told.textContent = answer?.told ?? notReached;
          return;
        }
        showWritten(answer);
        question.hidden = true;
      });
    }
  }
}
