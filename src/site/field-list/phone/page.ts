/** Finding things on the page, and saying aloud what happened there. */

/** The element of that id. The page is made together with this script, so one that is missing is a bug. */
export function at<Kind extends HTMLElement = HTMLElement>(id: string): Kind {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`No element has the id ${id}.`);
  return found as Kind;
}

export function onTap(id: string, act: () => void): void {
  at(id).addEventListener("click", act);
}

/** For those who listen: a line that is read out and not shown. */
export function announce(words: string): void {
  at("said").textContent = words;
}

/** A sheet stays open until it is closed by its button, by Escape, or by a tap beside it. */
export function sheet(id: string): HTMLDialogElement {
  const dialog = at<HTMLDialogElement>(id);
  dialog.addEventListener("click", (event) => {
    // The gaps between its buttons are the sheet too: only what lies outside of it is beside it.
    const { left, right, top, bottom } = dialog.getBoundingClientRect();
    const inside = event.clientX >= left && event.clientX <= right && event.clientY >= top && event.clientY <= bottom;
    if (event.target === dialog && !inside) dialog.close();
  });
  for (const button of dialog.querySelectorAll("[data-close]")) button.addEventListener("click", () => dialog.close());
  return dialog;
}

/** A row of a list that is one button: what it is, and how it stands. */
export function rowButton(what: string, state: string, act: () => void): HTMLLIElement {
  const row = document.createElement("li");
  const button = document.createElement("button");
  const [title, how] = [document.createElement("span"), document.createElement("span")];
  button.type = "button";
  title.textContent = what;
  how.textContent = state;
  how.className = "state";
  button.append(title, " ", how);
  button.addEventListener("click", act);
  row.append(button);
  return row;
}
