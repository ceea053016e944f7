/** Offers to keep what an answer teaches: a word for the garden's own list, one key each. */
import path from "node:path";
import {
  namesOfGarden,
  type OneNoteContext,
  ownWords,
  type Taught,
  taughtBy,
  withOwnWord,
  wordsFile,
  writtenWords,
} from "../records/index.ts";
import { commonWords } from "../wrap/index.ts";
import type { Effects } from "./effects.ts";
import type { Answer } from "./settle-block.ts";

export async function keepTaught(
  { question, chosen }: Answer,
  { records }: OneNoteContext,
  recordsDir: string,
  effects: Effects,
): Promise<void> {
  const file = await fileOfWords(recordsDir, effects);
  const { words } = ownWords(
    writtenWords(wordsFile, (await effects.readText(file)) ?? "").words,
    namesOfGarden(records),
  );
  const names = namesOfGarden(records);
  names.learn(words);
  const beds = records.notes.find(({ place }) => place.file === question.place.file)?.beds ?? [];
  const line = { text: question.text, chosen, offered: question.readings, beds };
  for (const taught of taughtBy(line, names, (lower) => commonWords.has(lower))) {
    if (!isUnderstood(taught, records) || words.some(({ word }) => word === taught.word)) continue;
    const kept = await effects.askKey(`Does "${taught.word}" always mean ${taught.means}?`, [
      { key: "y", means: `yes, keep it in ${wordsFile}` },
      { key: "n", means: "no" },
    ]);
    if (kept === "y") await keep(taught, file, effects);
  }
}

/** Where the list lies, in small letters or not, or is to begin. */
export async function fileOfWords(recordsDir: string, effects: Pick<Effects, "openRecords">): Promise<string> {
  const files = await (await effects.openRecords(recordsDir)).list();
  return path.join(recordsDir, files.find((file) => file.toLowerCase() === wordsFile) ?? wordsFile);
}

/** Whether the line that would be written is read as it is meant. */
function isUnderstood({ word, means }: Taught, records: OneNoteContext["records"]): boolean {
  const { words } = writtenWords(wordsFile, withOwnWord(undefined, word, means));
  return ownWords(words, namesOfGarden(records)).words.length === 1;
}

async function keep({ word, means }: Taught, file: string, effects: Effects): Promise<void> {
  const text = await effects.readText(file);
  if (text?.includes("\ufffd") === true) {
    effects.err(
      `${wordsFile} is not UTF-8, so nothing was written into it. Save it as UTF-8, and add: ${word}: ${means}`,
    );
    return;
  }
  if (text === undefined) await effects.createText(file, withOwnWord(text, word, means));
  else {
    // Another run may have kept it since it was asked about.
    const isKept = (now: string) => writtenWords(wordsFile, now).words.some((known) => known.word === word);
    const { refused } = await effects.editText(file, (now) => ({
      text: isKept(now) ? now : withOwnWord(now, word, means),
    }));
    if (refused !== undefined) {
      effects.err(`${wordsFile} was left as it is. ${refused} Add: ${word}: ${means}`);
      return;
    }
  }
  effects.out(`Kept in ${wordsFile}: ${word}: ${means}`);
}
