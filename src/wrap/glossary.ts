/** A person's own list of words for the wrap: one name a line, "Name: heard as, heard as". */
import type { GlossaryWord } from "./known-names.ts";

/** Lines that begin with # are remarks. */
export function readGlossary(text: string): readonly GlossaryWord[] {
  return text
    .replace(/^\uFEFF/, "")
    .split(/\r?\n/)
    .map((line) => line.replace(/^\s*[-*]\s+/, "").trim())
    .filter((line) => line !== "" && !line.startsWith("#"))
    .map((line) => {
      const [name = "", heard = ""] = line.split(/:(.*)/s);
      return {
        name: name.trim(),
        heardAs: heard
          .split(",")
          .map((word) => word.trim())
          .filter((word) => word !== ""),
      };
    })
    .filter(({ name }) => name !== "");
}
