/** A line with a list of what may be meant below it: by arrow keys and Enter, or by a tap (ARIA Authoring Practices, combobox). */
import { type Completing, type Completion, completed, completionOf } from "./complete.ts";

export interface Combobox {
  /** True when the key was for the list. */
  key(event: KeyboardEvent): boolean;
  /** Looks again at what stands before the caret. */
  look(): void;
  close(): void;
}

export function combobox(
  input: HTMLInputElement,
  list: HTMLElement,
  known: () => readonly Completing[],
  kinds: Readonly<Record<Completing["kind"], string>>,
  changed: () => void,
): Combobox {
  let offered: Completion | undefined;
  let active = -1;

  function close(): void {
    offered = undefined;
    active = -1;
    list.hidden = true;
    list.replaceChildren();
    input.setAttribute("aria-expanded", "false");
    input.removeAttribute("aria-activedescendant");
  }

  function take(option: Completing): void {
    if (offered === undefined) return;
    const { text, caret } = completed(input.value, offered, option);
    input.value = text;
    input.setSelectionRange(caret, caret);
    close();
    input.focus();
    changed();
  }

  function look(): void {
    const found = completionOf(input.value, input.selectionStart ?? input.value.length, known());
    close();
    if (found === undefined) return;
    offered = found;
    list.replaceChildren(
      ...found.options.map((option, at) => {
        const row = document.createElement("li");
        const kind = document.createElement("span");
        row.id = `${list.id}-${at}`;
        row.role = "option";
        row.ariaSelected = "false";
        kind.className = "quiet";
        kind.textContent = kinds[option.kind];
        row.append(`${option.name} `, kind);
        // A press would take the caret out of the line before the tap is done.
        row.addEventListener("pointerdown", (event) => event.preventDefault());
        row.addEventListener("click", () => take(option));
        return row;
      }),
    );
    list.hidden = false;
    input.setAttribute("aria-expanded", "true");
  }

  function go(by: number): void {
    const rows = [...list.children] as HTMLElement[];
    active = (active + by + rows.length + (active < 0 && by < 0 ? 1 : 0)) % rows.length;
    for (const [at, row] of rows.entries()) row.ariaSelected = String(at === active);
    input.setAttribute("aria-activedescendant", rows[active]?.id ?? "");
    rows[active]?.scrollIntoView({ block: "nearest" });
  }

  input.addEventListener("blur", close);
  return {
    look,
    close,
    key(event) {
      if (offered === undefined) return false;
      if (event.key === "ArrowDown" || event.key === "ArrowUp") go(event.key === "ArrowDown" ? 1 : -1);
      else if (event.key === "Escape") close();
      else if (event.key === "Enter" && active >= 0) take(offered.options[active] as Completing);
      else return false;
      event.preventDefault();
      return true;
    },
  };
}
