/**
 * Chapter titles held against those people wrote. A title is fit to publish when it stands where theirs does, at the same bed, and
 * is the bed's name alone or goes on with something of theirs or a variety named there; gear alone is no subject unless it is theirs.
 */

import type { Wrap } from "../../src/wrap/index.ts";
import { plainWord } from "../../src/wrap/spoken-words.ts";
import type { FilmLabels } from "./scores.ts";

/** Seconds by which chapters may begin apart. */
const BESIDE = 12;

export function chapterTitles(
  { chapters, stops, names }: FilmLabels,
  wrap: Wrap,
): readonly { readonly fit: boolean; readonly title: string }[] {
  const bedOf = (at: number) => stops.find((stop) => Math.abs(stop.at - at) <= 2)?.bed ?? undefined;
  const theirs = chapters.map((one, index) => ({
    ...one,
    own: one.bed ?? bedOf(one.at),
    until: chapters[index + 1]?.at ?? Number.POSITIVE_INFINITY,
  }));
  return wrap.chapters
    .filter(({ bed, title }) => bed !== undefined || title === "One more bed")
    .map(({ at, bed, title }) => {
      const one = theirs.find((other) => Math.abs(other.at - at) <= BESIDE && other.own === bed);
      const [place = "", about] = title.split(": ");
      if (one === undefined) return { fit: false, title: `${title} at ${at}` };
      if (about === undefined) return { fit: true, title };
      const named = names.filter((name) => name.kind === "variety" && name.at >= one.at && name.at < one.until);
      const fitting = wordsOf([one.title, ...one.also].join(" ").replaceAll(place, ""));
      const varieties = wordsOf(named.map(({ right }) => right).join(" "));
      const words = [...wordsOf(about)];
      const isTheirs = words.some((word) => fitting.has(word));
      const fit = isTheirs || (!about.startsWith("the ") && words.some((word) => varieties.has(word)));
      return { fit, title: `${title}, for ${one.title}` };
    });
}

function wordsOf(text: string): ReadonlySet<string> {
  const words = text.split(/[^\p{L}\p{N}'’]+/u).map(plainWord);
  return new Set(
    words
      .filter((word) => word.length > 2 && !/^(?:the|and|for)$/.test(word))
      .map((word) => word.replace(/(?:oes|es|s)$/, "")),
  );
}
