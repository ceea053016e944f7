/** What the person says of their things in their own words: in a variety's, a bed's and a gear's file, and in the notes. */
import { isQuotable } from "../../garden/index.ts";
import { type Ground, mentions, type Sentence, say, sentencesOf } from "../../language/index.ts";
import type { Gear, Variety } from "../../model.ts";
import type { BedOnTheDay, Lot } from "../bed-on-the-day.ts";
import { isPlanning, namedInLines } from "../own-lines.ts";

/** Sentences about the record itself, which nobody says on a walk: when it was grown, or that it is new. */
const bookkeeping = /^(?:new in|grown in|grown once|bought once|sown once)\b/i;

/** What a record's text says, sentence by sentence, as the person's own. */
export function wordsOf(record: { readonly body: string } & Ground): readonly Sentence[] {
  return sentencesOf(record.body)
    .map((text) => text.trim().replace(/\.$/, ""))
    .filter((text) => text !== "" && !bookkeeping.test(text) && !/[[\]<>`|#*_]|https?:/.test(text))
    .map((text) => say(text, [record]));
}

/** What is special about a variety: the first thing its file says of the plant. */
export function specialOf(variety: Variety | undefined): Sentence | undefined {
  return variety === undefined ? undefined : wordsOf(variety)[0];
}

/** Everything its file says, each sentence with the name, so that it can be said by itself. */
export function varietyWords(variety: Variety): readonly Sentence[] {
  const { name, obtained } = variety.source ?? {};
  const given = name !== undefined && (obtained === "gifted" || obtained === "swapped" || obtained === "saved");
  return [
    ...wordsOf(variety).map((words) => ({ ...words, text: `${variety.title}: ${words.text}` })),
    ...(given ? [say(`${variety.title}: ${obtained === "saved" ? "" : "from "}${name}`, [variety])] : []),
  ];
}

/** "Wanted this year: 21 pints of green beans", where what is wanted grows. */
export function goalWords(here: BedOnTheDay): readonly Sentence[] {
  const { goals = [] } = here.index.garden.settings;
  const names = here.growing.flatMap(({ crop, variety }) =>
    [crop?.name, crop?.plural, variety?.title, ...(crop?.alsoCalled ?? [])].filter((name) => name !== undefined),
  );
  const last = names.flatMap((name) => name.split(" ").at(-1) ?? []);
  return goals
    .filter(({ text }) => mentions(text, [...names, ...last]))
    .map(({ text }) => say(`Wanted this year: ${text}`, [{ place: { file: "garden.md", line: 1, column: 1 } }]));
}

/** What stands in the bed, and what its notes name though no line of it is read for sure. */
export function gearHere(here: BedOnTheDay): readonly Gear[] {
  const standing = here.now.gear.flatMap((id) => here.index.garden.gear.get(id) ?? []);
  return [...new Set([...standing, ...namedInLines(here).gear])];
}

export function varietiesHere(here: BedOnTheDay): readonly Variety[] {
  const grown = [...here.growing, ...here.ended].flatMap(({ variety }) => variety ?? []);
  return [...new Set([...grown, ...namedInLines(here).varieties])];
}

export function gearWords(here: BedOnTheDay): readonly Sentence[] {
  return gearHere(here).flatMap((gear) =>
    wordsOf(gear).map((words) => ({ ...words, text: `${gear.title}: ${words.text}` })),
  );
}

/** What the notes of this bed alone told since viewers last saw it, and what any note told of the plants shown. */
export function storyWords(here: BedOnTheDay, lots: readonly Lot[]): readonly Sentence[] {
  const names = [
    ...new Set(
      lots.flatMap(({ variety, crop }) => [variety?.title, crop?.plural].filter((name) => name !== undefined)),
    ),
  ];
  const notes = here.index.garden.notes.filter(
    ({ day, private: hidden }) => !hidden && day > here.newsAfter && day <= here.day,
  );
  return notes.flatMap((note) => {
    const ofBed = note.beds.length === 1 && note.beds[0] === here.bed.id;
    return note.story
      .filter((part) => part.asks !== true && part.private !== true && !/^[-*#>|\d]/.test(part.text))
      .flatMap((part) =>
        sentencesOf(part.text)
          .filter((text) => isQuotable(text) && !isPlanning(text) && (ofBed || mentions(text, names)))
          .map((text) => say(`“${text.trim().replace(/\.$/, "")}”`, [{ place: part.place }])),
      );
  });
}
