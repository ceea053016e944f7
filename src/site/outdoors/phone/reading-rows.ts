/** What a line is taken to say, as rows below it. */
import type { ShownLine } from "../../note-writing.ts";

const MARKS = { facts: "=", question: "?", story: "–" } as const;
const ALONE = { facts: "", question: "", story: "story: no fact is taken from it" } as const;

export function sayReading({ as, says }: ShownLine): readonly HTMLLIElement[] {
  const asked = as === "question" ? ["a question to you, at home"] : [];
  return [...asked, ...(says.length === 0 && as !== "question" ? [ALONE[as]] : says)].map((said, index) => {
    const row = document.createElement("li");
    row.dataset.as = as;
    row.textContent = `${as === "question" && index > 0 ? "–" : MARKS[as]} ${said}`;
    return row;
  });
}
