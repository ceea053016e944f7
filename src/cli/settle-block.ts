/** One line that is a question, from asking to the note: and with it what else of the same paragraph has to be said. */
import path from "node:path";
import type { Day, Event, LineReading, OfferedReading } from "../model.ts";
import { answeredNote, blockAt, namesOfGarden, type OneNoteContext } from "../records/index.ts";
import type { Key } from "./ask.ts";
import type { Effects } from "./effects.ts";
import { OFFERED, sayEvent } from "./reading-words.ts";
import { type AskedLines, linesOf, plainLine, tried } from "./settle-lines.ts";
import { wrapped } from "./wrapped-text.ts";

/** A question with the answer that was written. */
export interface Answer {
  readonly question: LineReading;
  /** What the chosen reading, or the typed line, gives. */
  readonly chosen: readonly Event[];
}

export type Settled =
  | { readonly outcome: "written"; readonly answers: number }
  | { readonly outcome: "skipped"; readonly lines: readonly LineReading[] }
  /** The note is another than the one that was read: it is read again. */
  | { readonly outcome: "changed" }
  | { readonly outcome: "stopped" };

export async function settleBlock(
  question: LineReading,
  context: OneNoteContext,
  recordsDir: string,
  effects: Effects,
  keepTaught: (answer: Answer) => Promise<void>,
): Promise<Settled> {
  const { file, line } = question.place;
  const folder = await effects.openRecords(recordsDir);
  const bytes = await folder.read(file);
  const block = blockAt(bytes, line);
  const canWrite = answeredNote(bytes, line, []);
  if ("refused" in canWrite || block?.text.includes(question.text) !== true) {
    effects.out(`${file}:${line}`);
    for (const one of wrapped("  ", question.text)) effects.out(one);
    effects.err("refused" in canWrite ? canWrite.refused : "This line is not found in the note any more.");
    return { outcome: "skipped", lines: [question] };
  }
  const lines = linesOf(block, question, context);
  const names = namesOfGarden(context.records);
  const noteDay = context.records.notes.find(({ place }) => place.file === file)?.day;
  const asking: Asking = { bytes, file, line, context, names, noteDay, effects };

  const plain: string[] = [];
  const answers: Answer[] = [];
  for (const reading of lines) {
    if (reading.as === "facts")
      plain.push(...reading.events.map((event) => plainLine(event, { names, context }, noteDay)));
    if (reading.as !== "question") continue;
    const answer = await ask(reading, plain, asking);
    if (answer === "stop") return { outcome: "stopped" };
    if (answer === "skip") return { outcome: "skipped", lines: lines.filter(({ as }) => as === "question") };
    plain.push(...answer.plain);
    answers.push({ question: reading, chosen: answer.chosen });
  }

  const written = answeredNote(bytes, line, plain);
  if ("refused" in written) {
    effects.err(written.refused);
    return { outcome: "skipped", lines };
  }
  // Before the note: a run that ends between the two asks the question again, but would never again ask what it taught.
  for (const answer of answers) await keepTaught(answer);
  if (!(await effects.editBytes(path.join(recordsDir, ...file.split("/")), bytes, written.bytes))) {
    effects.err(`${file} was changed in the meantime, so nothing was written into it. It is read again.`);
    return { outcome: "changed" };
  }
  effects.out(`Written below line ${block.lastLine} of ${file}:`);
  for (const said of plain.length === 0 ? ["story"] : plain) for (const one of wrapped("  = ", said)) effects.out(one);
  return { outcome: "written", answers: answers.length };
}

interface Asking extends AskedLines {
  readonly noteDay: Day | undefined;
  readonly effects: Effects;
}

type Chosen = { readonly plain: readonly string[]; readonly chosen: readonly Event[] };

async function ask(reading: LineReading, before: readonly string[], asking: Asking): Promise<Chosen | "skip" | "stop"> {
  const { effects } = asking;
  const { file, line } = reading.place;
  effects.out(`${file}:${line}`);
  for (const one of wrapped("  ", reading.text)) effects.out(one);
  // A reading that is no fact is the key for that.
  const offers = reading.readings.filter((offered) => offered.line.trim() !== "").slice(0, OFFERED.length);
  const keys: readonly Key[] = [
    ...offers.map((offered, at) => ({ key: OFFERED[at] ?? "", means: offered.line.split("\n").join("; ") })),
    { key: "n", means: "none of these: it holds no fact" },
    { key: "t", means: "type it in plain words" },
    { key: "s", means: "skip this one" },
    { key: "q", means: "stop for now" },
  ];
  for (;;) {
    const key = await effects.askKey("What does it say?", keys);
    if (key === undefined || key === "q") return "stop";
    if (key === "s") return "skip";
    if (key === "n") return { plain: [], chosen: [] };
    const offered = offers[OFFERED.indexOf(key)];
    const chosen = offered === undefined ? await typed(before, asking) : picked(offered, before, asking);
    if (chosen !== undefined) return chosen;
  }
}

/** Undefined when its plain lines, put into the note, would not give it again. */
function picked(offered: OfferedReading, before: readonly string[], asking: Asking): Chosen | undefined {
  const plain = offered.line.split("\n");
  if (tried([...before, ...plain], asking).isRead) return { plain, chosen: offered.events };
  asking.effects.err("Written as a plain line, that would not be read again. Type it in your own words.");
  return undefined;
}

/** A line in the person's plain words, read and shown before it counts. */
async function typed(before: readonly string[], asking: Asking): Promise<Chosen | undefined> {
  const { effects, noteDay, context } = asking;
  const answer = await effects.askLine("In plain words, such as: picked 2 kg raspberries");
  const line = (answer ?? "")
    .replace(/\s+/gu, " ")
    .replace(/^[\s=*-]+/u, "")
    .trim();
  if (line === "") return undefined;
  const { events, problems, names, isRead } = tried([...before, line], asking);
  const known = tried(before, asking).events.length;
  const own = events.slice(before.length === 0 ? 0 : known);
  if (!isRead || own.length === 0) {
    effects.err("That gives no fact.");
    for (const problem of problems) for (const one of wrapped("  ", `${problem.what} ${problem.fix}`)) effects.err(one);
    return undefined;
  }
  for (const event of own) {
    for (const one of wrapped("  = ", sayEvent(event, names, context.records.settings, noteDay))) effects.out(one);
  }
  const isRight = await effects.askKey("Is that it?", [
    { key: "y", means: "yes, write it" },
    { key: "n", means: "no, go back" },
  ]);
  return isRight === "y" ? { plain: [line], chosen: own } : undefined;
}
