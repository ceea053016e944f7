/** A question answered by tap on a page: what `settle` would write, with no terminal to ask at. */
import type { Day, Garden } from "../model.ts";
import { answeredNote, blockAt, namesOfGarden } from "../records/index.ts";
import type { AnsweringAsk, QuestionAnswering, TapAnswer } from "../site/index.ts";
import type { Effects } from "./effects.ts";
import { linesOf, plainLine, tried } from "./settle-lines.ts";
import { fileOfWords } from "./settle-words.ts";
import { digestOf, type WrittenFiles } from "./written-files.ts";

export interface TapSettler extends QuestionAnswering {
  see(garden: Garden, today: Day): void;
}

export function tapSettler(
  first: { readonly garden: Garden; readonly today: Day },
  recordsDir: string,
  files: WrittenFiles,
  effects: Pick<Effects, "openRecords" | "readText" | "err">,
): TapSettler {
  let { garden, today } = first;

  async function answer({ file, line, text, state, reading }: AnsweringAsk): Promise<TapAnswer> {
    const question = garden.readings.find(
      (one) => one.as === "question" && one.place.file === file && one.place.line === line && one.text === text,
    );
    // Only files of the records are read, whatever a page sends.
    const bytes = question === undefined ? undefined : files.bytes(file);
    const block = bytes === undefined ? undefined : blockAt(bytes, line);
    if (
      bytes === undefined ||
      digestOf(bytes) !== state ||
      question === undefined ||
      block?.text.includes(text) !== true
    )
      return { told: `${file} was changed since this page was made, so nothing was written into it.` };
    const offered = reading === undefined ? undefined : question.readings[reading];
    if (reading !== undefined && offered === undefined) return { told: "That reading is not offered any more." };
    const words = await effects.readText(await fileOfWords(recordsDir, effects));
    const context = { records: garden, words, today };
    const names = namesOfGarden(garden);
    const together = linesOf(block, question, context);
    if (together.some((one) => one.as === "question" && one !== question))
      return { told: "Its paragraph asks more than one thing: “plotreel settle” asks them together." };
    const noteDay = garden.notes.find(({ place }) => place.file === file)?.day;
    const chosen = (offered?.line ?? "").split("\n").filter((plain) => plain.trim() !== "");
    const plain = together.flatMap((one) => {
      if (one === question) return chosen;
      return one.as === "facts" ? one.events.map((event) => plainLine(event, { names, context }, noteDay)) : [];
    });
    if (chosen.length > 0 && !tried(plain, { bytes, file, line, context, names }).isRead)
      return { told: "Written as a plain line, that would not be read again. Write it in the note in your own words." };
    const written = answeredNote(bytes, line, plain);
    if ("refused" in written) return { told: written.refused };
    const undo = await files.write(file, bytes, written.bytes);
    if (undo === undefined) return { told: `${file} was changed in this moment, so nothing was written into it.` };
    effects.err(`Settled by tap: ${file}:${line} = ${plain.length === 0 ? "story" : plain.join("; ")}`);
    return {
      told: `Below that line of ${file} now stands: = ${plain.length === 0 ? "story" : plain.join("; ")}`,
      undo,
    };
  }

  return {
    see(newest, on) {
      garden = newest;
      today = on;
    },
    answer,
  };
}
