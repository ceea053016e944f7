/**
 * Lines that the person has settled: below their own words stands what they mean, as plain lines marked by "=".
 *
 *     - leeks went in today
 *       - = planted 12 Musselburgh in Long Bed
 *
 * "= story" says that the line holds no fact. What is settled is never asked about again, and the facts are those of the
 * plain lines, in the person's own words and at the place of these.
 */
import type { Event, Place, Problem } from "../model.ts";
import { type LineContext, type NoteLine, type ReadLine, readNoteLine } from "./note-line.ts";
import type { SettledLine } from "./note-tree.ts";
import { problem } from "./problem-rules.ts";

/** What settles a line as holding no fact. */
export const noFact = "story";

/** `own` are the words that were settled. */
export function readSettled(own: NoteLine, settled: readonly SettledLine[], context: LineContext): ReadLine {
  const events: Event[] = [];
  const problems: Problem[] = [];
  for (const { text: written, more, line, column } of settled) {
    const text = unquoted(written);
    if (text.toLowerCase().replace(/\.$/, "") === noFact) continue;
    const place: Place = { file: own.place.file, line, column };
    const read = readNoteLine({ text, more: [...own.more, ...more], place }, context);
    problems.push(...(read?.problems ?? []));
    if (read === undefined || read.events.length === 0) problems.push(unread(text, place));
    for (const event of read?.events ?? []) {
      const { file, line: at } = own.place;
      const id = events.length === 0 ? `${file}:${at}` : `${file}:${at}/${events.length + 1}`;
      events.push({ ...event, id, text: own.text, place: own.place });
    }
  }
  return { events, problems };
}

/** `= "planted 12 leeks"`: quotation marks around the whole of it are no name's. */
function unquoted(text: string): string {
  const [, inner] = /^["“„](.*)["”“]\.?$/u.exec(text) ?? [];
  return inner === undefined || /["“”„]/u.test(inner) ? text : inner.trim();
}

function unread(text: string, place: Place): Problem {
  return problem(
    "note/settled-unread",
    place,
    `"${text}" says how the line above it is read, and gives no fact itself.`,
    'Write it as in docs/notes.md, with the verb first; or write "= story" when the line above holds no fact.',
  );
}
