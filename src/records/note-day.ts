/** The day of a note: in its front matter, else at the front of its file name. */
import { parseDay, writeDay } from "../calendar.ts";
import type { Day, Place, Problem } from "../model.ts";
import type { ParsedFile } from "./parsed-files.ts";
import { problem } from "./problem-rules.ts";
import { ruleOfRefusedDay } from "./refused-days.ts";

/** `written` is the date key as read, undefined when it is not there or was refused. Undefined when nothing tells the day. */
export function dayOfNote(
  parsed: ParsedFile,
  written: Day | undefined,
  today: Day,
  problems: Problem[],
): Day | undefined {
  const named = dayInName(parsed.file);
  const namedDay = named && "day" in named ? named.day : undefined;
  const dateKey = (): Place => ({ file: parsed.file, ...parsed.places().value(["date"]) });
  const head: Place = { file: parsed.file, line: 1, column: 1 };
  const day = written ?? namedDay;
  if (written !== undefined && namedDay !== undefined && namedDay !== written) {
    problems.push(
      problem(
        "note/two-dates",
        dateKey(),
        `This date, ${writeDay(written)}, differs from the ${writeDay(namedDay)} of the file name; the note was read as of ${writeDay(written)}.`,
        "Correct the one that is wrong.",
      ),
    );
  }
  if (day !== undefined && day > today) {
    problems.push(
      problem(
        "note/future",
        written === undefined ? head : dateKey(),
        `This note is dated ${writeDay(day)}, and today is ${writeDay(today)}.`,
        "Correct the date if it is a slip; what it says counts from that day on.",
      ),
    );
  }
  if (day === undefined && named && "refused" in named) {
    const fix = `${named.fix} The date is the one at the front of the file's name.`;
    problems.push(problem(ruleOfRefusedDay(named), head, named.what, fix));
  } else if (day === undefined && !("date" in parsed.data)) {
    problems.push(
      problem(
        "note/no-date",
        head,
        "This note has no date, so nothing in it could be placed in the season.",
        'Begin the file name with the day, for example "2026-05-16-", or add a line "date: 2026-05-16" to its front matter.',
      ),
    );
  }
  return day;
}

function dayInName(file: string) {
  const name = file.slice(file.lastIndexOf("/") + 1);
  const front = /^\d+[-_.]\d{1,2}[-_.]\d{1,2}(?!\d)/.exec(name)?.[0];
  return front === undefined ? undefined : parseDay(front.replace(/[_.]/g, "-"));
}
