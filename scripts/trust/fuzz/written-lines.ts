/** Lines that a person marked: as private, which no viewer may meet, and as settled. */
import fc from "fast-check";
import { publicGarden } from "../../../src/site/index.ts";
import { ground, grown, type Target } from "./ground.ts";
import { line } from "./hostile-text.ts";
import { holds } from "./oracle.ts";

/** No word of the garden or of the corpus. */
const SECRET = "Quillbark";

const marked = fc.oneof(
  fc
    .constantFrom("(not for the film) ", "off camera: ", "Private: ", "don't mention this: ", "keep this to myself: ")
    .map((mark) => ({ mark, behind: "" })),
  fc
    .constantFrom(" (not for the film)", ", off the record", " - never on camera", " (don't film this)")
    .map((behind) => ({ mark: "", behind })),
);

/** One line among others says that nobody is to see it; what it says, and what stands below it, is told to nobody. */
export const privateLines: Target<{
  readonly before: string;
  readonly said: string;
  readonly mark: string;
  readonly behind: string;
  readonly below: string;
  readonly form: string;
}> = {
  name: "private lines",
  cases: fc
    .record({ before: line, said: line, below: line, form: fc.constantFrom("item", "list", "heading") })
    .chain((made) => marked.map((more) => ({ ...made, ...more }))),
  share: 60,
  hold: (made) =>
    holds(JSON.stringify(made), async () => {
      const [before, said, below] = [made.before, made.said, made.below].map(oneLine) as [string, string, string];
      const secret = `${made.mark}${SECRET} ${said} ${SECRET}${made.behind}`;
      const text = {
        item: `- ${before}\n- ${secret}\n  - ${SECRET} ${below}\n`,
        list: `- ${before}\n\n${secret}\n`,
        heading: `- ${before}\n\n## ${made.mark}${made.behind}\n\n- ${SECRET} ${below}\n\n${SECRET} ${said}\n`,
      }[made.form];
      const { garden } = await grown({ ...ground, "notes/2026-05-16.md": `---\nbed: Long Bed\n---\n\n${text}` });
      const seen = JSON.stringify(publicGarden(garden), (key, value) => {
        if (key === "place" || key === "note") return undefined;
        return value instanceof Map ? [...value] : value;
      });
      if (seen.includes(SECRET)) throw new Error(`viewers are told ${around(seen)}`);
    }),
};

/** A line end, a comment or a fence in the made words would put the mark somewhere else than meant. */
function oneLine(text: string): string {
  return text
    .replace(/\p{Cc}|[\u2028\u2029<>`~|\\[\]=#*_]/gu, " ")
    .replace(/\s+/gu, " ")
    .trim();
}

function around(text: string): string {
  const at = text.indexOf(SECRET);
  return JSON.stringify(text.slice(Math.max(0, at - 80), at + 80));
}

export const settledLines: Target<string> = {
  name: "settled lines",
  cases: fc
    .array(fc.tuple(line, fc.array(fc.tuple(fc.constantFrom("  - = ", "  - =", "- = ", "  = ", "  - == "), line))), {
      minLength: 1,
      maxLength: 3,
    })
    .map((all) =>
      all.flatMap(([said, below]) => [`- ${said}`, ...below.slice(0, 3).map((parts) => parts.join(""))]).join("\n"),
    ),
  share: 40,
  hold: (text) => holds(text, async () => (await grown({ ...ground, "notes/2026-05-16.md": `${text}\n` })).told),
};
