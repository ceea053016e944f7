/**
 * `plotreel settle`: goes through the open questions, one key each. An answer is written into the note at once, below the
 * person's own words, and what it teaches goes into the garden's word list if the person wants it.
 */
import { capital, sayList, sayNumber } from "../language/index.ts";
import type { Day, LineReading, Records } from "../model.ts";
import { CommandError, EXIT } from "./command-error.ts";
import type { Effects } from "./effects.ts";
import { settleBlock } from "./settle-block.ts";
import { settleThings } from "./settle-things.ts";
import { fileOfWords, keepTaught } from "./settle-words.ts";

export interface Settling {
  /** Reads the records as they are now. */
  records(): Promise<Records>;
  /** Absolute. */
  readonly recordsDir: string;
  readonly today: Day;
  /** Behind the lines of the notes, what is worth asking as well. */
  readonly asks?: boolean | undefined;
}

export async function settle(settling: Settling, effects: Effects): Promise<number> {
  if (!effects.canAsk) {
    throw new CommandError(
      "settle asks one question after another, and nobody is at this terminal to answer. " +
        '"plotreel check --reading" shows the questions.',
    );
  }
  const passed = new Set<string>();
  let answered = 0;
  let isStopped = false;
  let open = openIn(await settling.records(), passed);
  if (open.readings.length === 0) {
    effects.out("No line is a question. Nothing to settle.");
    if (settling.asks === true) await settleThings(settling, effects);
    return EXIT.done;
  }
  while (open.readings.length > 0 && !isStopped) {
    const [first] = open.readings as [LineReading];
    const number = answered + passed.size + 1;
    effects.out("");
    effects.out(`Question ${number} of ${number - 1 + open.readings.length}`);
    const words = await effects.readText(await fileOfWords(settling.recordsDir, effects));
    const context = { records: open.records, words, today: settling.today };
    const settled = await settleBlock(first, context, settling.recordsDir, effects, (answer) =>
      keepTaught(answer, context, settling.recordsDir, effects),
    );
    if (settled.outcome === "written") answered += settled.answers;
    else if (settled.outcome === "skipped") for (const line of settled.lines) passed.add(keyOf(line));
    else if (settled.outcome === "stopped") isStopped = true;
    if (!isStopped) open = openIn(await settling.records(), passed);
  }
  if (!isStopped && settling.asks === true) await settleThings(settling, effects);
  sayDone(answered, openIn(await settling.records(), new Set()).readings.length, effects);
  return EXIT.done;
}

function openIn(records: Records, passed: ReadonlySet<string>) {
  const readings = records.readings.filter((reading) => reading.as === "question" && !passed.has(keyOf(reading)));
  return { records, readings };
}

/** Lines move when an answer is written above them; their words stay. */
function keyOf({ place, text }: LineReading): string {
  return `${place.file}\n${text}`;
}

function sayDone(answered: number, left: number, effects: Effects): void {
  const said = [
    ...(answered === 0 ? [] : [`${sayNumber(answered)} settled`]),
    ...(left === 0 ? [] : [`${sayNumber(left)} still open`]),
  ];
  effects.out("");
  if (said.length > 0) effects.out(`${capital(sayList(said))}.`);
}
