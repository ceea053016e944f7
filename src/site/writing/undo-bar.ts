/** What was written last, and the way back: kept while the page is made again. */
import { send } from "./send.ts";

export interface Told {
  readonly told: string;
  readonly undo?: number | undefined;
}

const KEY = "writing told";

export function undoBar(bar: HTMLElement): (told: Told) => void {
  const button = bar.querySelector("button") as HTMLButtonElement;
  const said = bar.querySelector("p") as HTMLElement;
  let last: Told | undefined;

  function show(told: Told): void {
    last = told;
    said.textContent = told.told;
    button.hidden = told.undo === undefined;
    bar.hidden = told.told === "";
    sessionStorage.setItem(KEY, JSON.stringify(told));
  }

  button.addEventListener("click", async () => {
    const answer = await send<{ told: string; done?: true }>("/@undo", { id: last?.undo });
    // What is not answered may be tried again.
    show(answer === undefined ? { told: bar.dataset.notReached ?? "", undo: last?.undo } : { told: answer.told });
  });
  try {
    show(JSON.parse(sessionStorage.getItem(KEY) ?? "null") ?? { told: "" });
  } catch {}
  return show;
}
