/** What pages send to the workbench of `watch`, and what others might: nothing is written but what was asked for, and whole. */
import fc from "fast-check";
import { realEffects } from "../../../src/cli/effects.ts";
import { openWorkbench } from "../../../src/cli/open-workbench.ts";
import { asked, sentFile } from "../../../src/site/workbench.ts";
import { folderOf, ground, grown, type Target, TODAY } from "./ground.ts";
import { day, line, value } from "./hostile-text.ts";
import { holds } from "./oracle.ts";

const file = fc.oneof(
  fc.constantFrom("notes/2026-04-10.md", "../garden.md", "notes/../../x.md", "beds/long-bed.md", "notes/\u0000.md", ""),
  line,
);
const anything = fc.oneof(line, value, day, fc.integer(), fc.constantFrom(null, true, [], {}, -1, 2 ** 53));
const shown = fc.record({
  as: fc.constantFrom("facts", "question", "story", "x"),
  says: fc.array(line, { maxLength: 2 }),
});

const ask = fc.record(
  {
    id: fc.oneof(fc.constantFrom("save-0001", "__proto__", "constructor"), anything),
    day: fc.oneof(day, anything),
    file,
    state: fc.oneof(fc.constant(""), anything),
    bed: fc.oneof(fc.constantFrom("long-bed", "__proto__"), anything),
    lines: fc.oneof(fc.array(line, { maxLength: 4 }), anything),
    shown: fc.oneof(fc.array(shown, { maxLength: 4 }), anything),
    line: fc.oneof(fc.nat(9), anything),
    text: line,
    reading: fc.oneof(fc.nat(3), anything),
    photo: file,
    as: fc.constantFrom("name", "caption", "x"),
    name: fc.oneof(line, anything),
  },
  { requiredKeys: [] },
);

type Case = { readonly at: string; readonly sent: unknown; readonly query: string; readonly bytes: readonly number[] };

export const pageAsks: Target<Case> = {
  name: "page asks",
  cases: fc.record({
    at: fc.constantFrom("@name", "@day", "@write", "@settle", "@undo", "@photo", "@x", "constructor"),
    sent: fc.oneof({ weight: 4, arbitrary: ask }, { weight: 1, arbitrary: fc.json().map((text) => JSON.parse(text)) }),
    query: fc
      .tuple(fc.constantFrom("bed=long-bed", "bed=../..", "variety=__proto__", ""), line, anything)
      .map(([of, name, modified]) => `${of}&name=${encodeURIComponent(wellFormed(name))}&modified=${String(modified)}`),
    // No picture: what is one is brought in by the trials, which have a disk.
    bytes: fc.array(fc.nat(255), { maxLength: 40 }).map((bytes) => [0, ...bytes]),
  }),
  share: 60,
  hold: ({ at, sent, query, bytes }) =>
    holds(JSON.stringify([sent, query]), async () => {
      const { garden } = await opened();
      const wrote: string[] = [];
      const put = async (name: string) => {
        wrote.push(name);
        return false;
      };
      const workbench = openWorkbench(garden, TODAY, "/nowhere/content", {
        ...realEffects(),
        err: () => undefined,
        openRecords: async () => folderOf(ground),
        readText: async () => undefined,
        createText: put,
        editBytes: put,
        removeBytes: put,
      });
      const answers = [
        await asked(workbench, at, sent),
        await sentFile(workbench, at, new URLSearchParams(query), Uint8Array.from(bytes)),
      ];
      const strange = wrote.find(
        (name) => !/^\/nowhere\/content\/(?:notes|photos)\/[^/]+(?:\/[^/]+)*\.md$/u.test(name),
      );
      if (strange !== undefined) throw new Error(`writes ${strange}`);
      return answers;
    }),
};

let read: ReturnType<typeof grown> | undefined;
function opened(): ReturnType<typeof grown> {
  read ??= grown(ground);
  return read;
}

/** Half of a pair has no place in an address. */
function wellFormed(text: string): string {
  return text.toWellFormed();
}
