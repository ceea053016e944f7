/** Sentences as Markdown: marks of their own kept from acting, cues set in italics, sources printed below when asked for. */
import type { Place } from "../model.ts";
import type { Sentence } from "./sentence.ts";

type Said = Pick<Sentence, "text" | "sources"> & { readonly private?: boolean | undefined };

export interface Markdown {
  /** Words from the records must not turn into marks. */
  readonly md: (text: string) => string;
  /** One sentence, without its sources. */
  readonly sentence: (line: Said) => string;
  /** One list item: marks and words around the sentence, its sources on a line of their own. */
  readonly item: (
    line: Said,
    around?: { readonly mark?: string; readonly before?: string; readonly after?: string },
  ) => string;
  /** Sources of several sentences as a line to stand below a paragraph; "" when not asked for. */
  readonly below: (lines: readonly Said[]) => string;
}

export function markdownWriter(withSources: boolean): Markdown {
  const places = (lines: readonly Said[]) =>
    withSources
      ? [...new Set(lines.flatMap(({ sources }) => sources.map(placeText)))].map((text) => `\`${text}\``)
      : [];
  return {
    md,
    sentence,
    item: (line, { mark = "-", before = "", after = "" } = {}) => {
      const found = places([line]);
      const indent = " ".repeat(mark.length + 1);
      const sources = found.length === 0 ? "" : `\\\n${indent}${found.join(", ")}`;
      return `${mark} ${before}${sentence(line)}${after}${sources}`;
    },
    below: (lines) => {
      const found = places(lines);
      return found.length === 0 ? "" : `\\\n${found.join(", ")}`;
    },
  };
}

function placeText({ file, line }: Place): string {
  return `${file}:${line}`;
}

function sentence(line: Said): string {
  const cued = md(line.text).replace(/\(say ([^)]+)\)/g, "(say *$1*)");
  return line.private === true ? `${cued} *(private: not for the film)*` : cued;
}

/** Words from the records must not turn into marks of their own. */
export function md(text: string): string {
  return text.replace(/[\\`*_[\]<>#]/g, "\\$&").replace(/\s+/g, " ");
}
