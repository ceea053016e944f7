/** What the person's own notes say to a viewer's question, in their own words; nothing is concluded from it. */

import { type Sentence, say, sentencesOf } from "../../language/index.ts";
import type { Event, Note } from "../../model.ts";

/** Words that questions are made of and that say nothing of what is asked about. */
const small = new Set(
  `about again all also and any are ask asked been before being best can could did does doing down each else ever every for from get give
  going good have here how into just keep kind know like long look make many more most much need never not now off once one only other
  our out over really same say see should since some still such sure take than that the them then there these they thing this those time
  too use variety very want was way well were what when where which while who whole why will with work would year you your`.split(
    /\s+/,
  ),
);

/** Share of the question's words that an answer takes up. */
const takenUp = 0.6;

/** "In your notes: “The red lettuce by the gate is Merveille, for whoever asked.”" The earliest sentence that takes the question up. */
export function answerInNotes({ what = "", day }: Event, notes: readonly Note[], until: string): Sentence | undefined {
  const asked = wordsOf(what);
  if (asked.size < 2) return undefined;
  const needed = Math.max(2, Math.ceil(asked.size * takenUp));
  const first = notes.findIndex((note) => note.day >= day);
  for (const note of first < 0 ? [] : notes.slice(first)) {
    if (note.day > until) return undefined;
    for (const { text, place, private: hidden = note.private } of note.story) {
      const answer = sentencesOf(text).find((sentence) => {
        if (sentence.endsWith("?")) return false;
        const said = wordsOf(sentence);
        return [...asked].filter((word) => said.has(word)).length >= needed;
      });
      if (answer !== undefined) return say(`In your notes: “${answer}”`, [{ place, private: hidden }]);
    }
  }
  return undefined;
}

/** Words that carry meaning, without regard to number. */
function wordsOf(text: string): ReadonlySet<string> {
  const words = text
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .match(/[\p{L}\p{N}]+/gu);
  return new Set(
    (words ?? []).filter((word) => word.length > 2 && !small.has(word)).map((word) => word.replace(/s$/, "")),
  );
}
