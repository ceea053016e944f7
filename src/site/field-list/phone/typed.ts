/** Below a note that is being typed: what each of its lines is taken to say. */

import type { Day } from "../../../model.ts";
import { readTyped, type TypedGarden, type TypedLine, typedNames } from "../../../records/index.ts";

/** Milliseconds without a letter after which the lines are read. */
const PAUSE = 100;

const MARKS = { facts: "=", question: "?", story: "–" } as const;

/** Shows the reading of a text in a list, once nothing more is typed for a moment. Without a garden's names nothing is shown. */
export function typedInto(list: HTMLElement, garden: TypedGarden | undefined) {
  let names: ReturnType<typeof typedNames> | undefined;
  let waiting: ReturnType<typeof setTimeout> | undefined;
  return (text: string, bed: string, day: Day): void => {
    clearTimeout(waiting);
    if (garden === undefined) return;
    waiting = setTimeout(() => {
      names ??= typedNames(garden);
      list.replaceChildren(...readTyped(text, { garden, names, beds: [bed], day }).flatMap(rowsOf));
    }, PAUSE);
  };
}

function rowsOf({ as, says }: TypedLine): readonly HTMLElement[] {
  return (says.length === 0 ? ["story"] : says).map((said) => {
    const row = document.createElement("li");
    row.dataset.as = as;
    row.textContent = `${MARKS[as]} ${said}`;
    return row;
  });
}
