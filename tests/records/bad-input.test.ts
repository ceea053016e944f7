/** Bytes and folders nobody would write on purpose: each has its message, and nothing else is lost by it. */
import { describe, expect, test } from "vitest";
import type { Event } from "../../src/model.ts";
import { problemText, readRecords } from "../../src/records/index.ts";
import { filmingDay, folderOf, problemsOf, recordsOf } from "./records-of.ts";

const goodBed = { "beds/long-bed.md": "---\ntitle: Long Bed\n---\n" };
const sowing = "- sowed 12 Café Crème beans in Long Bed\n";
const sownAt = ({ day, place, bed, text }: Event) => ({ day, line: place.line, column: place.column, bed, text });

describe("encodings", () => {
  test("a byte-order mark changes nothing", async () => {
    const withMark = {
      ...goodBed,
      "notes/2026-05-16-a.md": `\ufeff${sowing}`,
      "garden.md": "\ufeff---\nname: Marked\n---\n",
    };
    const { events, settings } = await recordsOf(withMark);
    expect(events.map(sownAt)).toEqual([
      { day: "2026-05-16", line: 1, column: 3, bed: "long-bed", text: "sowed 12 Café Crème beans in Long Bed" },
    ]);
    expect(settings.name).toBe("Marked");
    expect(await problemsOf(withMark)).toEqual([]);
  });

  test("line ends of Windows shift neither lines nor columns", async () => {
    const lines = [
      "---",
      "bed: Long Bed",
      "weather: dry",
      "---",
      "",
      "Dry, \u{1f345} ripe.",
      "",
      "- watered everything",
      "  - twice",
      sowing,
    ];
    const unix = await recordsOf({ ...goodBed, "notes/2026-05-16-a.md": lines.join("\n") });
    const windows = await recordsOf({ ...goodBed, "notes/2026-05-16-a.md": lines.join("\r\n") });
    expect(windows).toEqual(unix);
    expect(windows.events).toHaveLength(2);
  });

  test("a column counts characters: an emoji is one, an accented letter is one", async () => {
    expect(await problemsOf({ ...goodBed, "notes/2026-05-16-a.md": "\u{1f345} é ![x](photos/none.jpg)\n" })).toEqual([
      `notes/2026-05-16-a.md:1:5 warning link/unknown-photo
  There is no photo at "photos/none.jpg".
  Write its path from the records folder, for example photos/long-bed/gate/2026-05-16.jpg.`,
    ]);
  });

  test("Windows-1252 is read and reported at its first byte that is not UTF-8", async () => {
    const files = { ...goodBed, "notes/2026-05-16-a.md": Buffer.from(`A dull day.\n\n${sowing}`, "latin1") };
    expect(await problemsOf(files)).toEqual([
      `notes/2026-05-16-a.md:3:15 error text/not-utf8
  This file is not UTF-8; it was read as Windows-1252, and letters such as "é" or "°" may be wrong.
  Save it again as UTF-8.`,
    ]);
    expect((await recordsOf(files)).events.map(({ text }) => text)).toEqual(["sowed 12 Café Crème beans in Long Bed"]);
  });

  test.each([
    ["utf16le", [0xff, 0xfe]],
    ["utf16be", [0xfe, 0xff]],
  ])("%s is read and reported", async (encoding, mark) => {
    const bytes = Buffer.from(sowing, "utf16le");
    const text = encoding === "utf16le" ? bytes : bytes.swap16();
    const files = { ...goodBed, "notes/2026-05-16-a.md": Buffer.concat([Buffer.from(mark), text]) };
    expect(await problemsOf(files)).toEqual([
      `notes/2026-05-16-a.md:1:1 error text/not-utf8
  This file is not UTF-8; it was read as UTF-16, and letters such as "é" or "°" may be wrong.
  Save it again as UTF-8.`,
    ]);
    expect((await recordsOf(files)).events).toHaveLength(1);
  });

  test("a photo named like a note is no note", async () => {
    const jpeg = Uint8Array.of(0xff, 0xd8, 0xff, 0xe0, 0, 16, 0x4a, 0x46, 0x49, 0x46, 0);
    expect(await problemsOf({ ...goodBed, "notes/2026-05-16-a.md": jpeg })).toEqual([
      `notes/2026-05-16-a.md:1:1 error text/not-text
  This file is not text, so nothing was read from it.
  Move it out of the records, or give it the ending that tells what it is.`,
    ]);
  });
});

describe("long and deep notes", () => {
  test("a note of 5 MB is read to its last line, with a warning", { timeout: 240_000 }, async () => {
    const fenced = "- not a log line\n\n- nor this\n".repeat(25);
    const day = `# A day\n\nA dry morning with a little **wind**, and nobody at the gate.\n\n\`\`\`\n${fenced}\`\`\`\n\n`;
    const log = "- watered everything\n  - twice\n\n";
    const text = `${(day.repeat(45) + log).repeat(160)}${sowing}`;
    expect(text.length).toBeGreaterThan(5_000_000);
    const files = { ...goodBed, "notes/2026-05-16-a.md": text };
    const records = await recordsOf(files);
    const lineCount = text.split("\n").length - 1;
    expect(records.events).toHaveLength(161);
    expect(records.events.at(-1)?.place.line).toBe(lineCount);
    expect(records.events[0]?.more).toEqual(["twice"]);
    expect(records.notes[0]?.story).toHaveLength(3 * 45 * 160);
    expect(records.problems.filter(({ rule }) => !rule.startsWith("name/")).map(problemText)).toEqual([
      `notes/2026-05-16-a.md:1:1 warning text/very-long
  This note is ${(text.length / 1_000_000).toFixed(1)} million characters long; it was read, but it slows every first run.
  Make a note of each day, or move what is no note out of the notes folder.`,
    ]);
  });

  test("one paragraph without end is kept as story and reported", async () => {
    const text = `${"word ".repeat(100_000)}end`;
    const records = await recordsOf({ "notes/2026-05-16-a.md": text });
    expect(records.notes[0]?.story.map((piece) => piece.text.length)).toEqual([text.length]);
    expect(records.problems.map(problemText)).toEqual([
      `notes/2026-05-16-a.md:1:1 warning note/not-parsed
  The text from here on is too long or too deeply nested to be taken apart, so it was kept as story.
  Put an empty line between paragraphs and lists, or move it out of the notes.`,
    ]);
  });

  test.each([">", "- ", "[", "*a ", "`", "![", "<a ", "1. "])(
    "a nest of %j neither throws nor takes for ever",
    async (sign) => {
      const records = await recordsOf({ "notes/2026-05-16-a.md": sign.repeat(3000) });
      expect(records.notes).toHaveLength(1);
      expect(records.notes[0]?.story.length).toBeGreaterThan(0);
    },
  );
});

describe("files that cannot be read", () => {
  test("a file the system refuses is reported, the rest is read", async () => {
    const refused = Object.assign(new Error("EACCES: permission denied"), { code: "EACCES" });
    const files = { ...goodBed, "beds/cold-frame.md": refused };
    expect(await problemsOf(files)).toEqual([
      `beds/cold-frame.md:1:1 error folder/unreadable
  This cannot be read: the system does not allow it.
  Wait until it is back, give yourself the right to read it, or check the disk; everything else was read.`,
    ]);
    // What it is called is known, and nobody knows whether it is private.
    const { beds } = await recordsOf(files);
    expect([...beds.values()].map((bed) => [bed.id, bed.private])).toEqual([
      ["cold-frame", true],
      ["long-bed", false],
    ]);
  });
});

describe("ids", () => {
  test("files that differ only in case give one record and an error", async () => {
    const files = { ...goodBed, "beds/Long-Bed.md": "---\ntitle: Another\n---\n" };
    expect(await problemsOf(files)).toEqual([
      `beds/Long-Bed.md:1:1 error folder/same-id
  This file has the same id as beds/long-bed.md, "long-bed", so it was not read.
  Give one of the two another name; small and capital letters make no difference.`,
    ]);
    expect((await recordsOf(files)).beds.get("long-bed")?.title).toBe("Long Bed");
  });

  test("episode folders that differ only in case", async () => {
    const index = "---\ndate: 2026-05-16\nstatus: planned\n---\n";
    expect(await problemsOf({ "episodes/May/index.md": index, "episodes/may/index.md": index })).toEqual([
      `episodes/may/index.md:1:1 error folder/same-id
  This episode has the same id as episodes/May/index.md, "may", so it was not read.
  Give one of the two folders another name; small and capital letters make no difference.`,
    ]);
  });
});

describe("folders", () => {
  test("an empty folder says how to start", async () => {
    expect(await problemsOf({})).toEqual([
      `hint folder/empty
  There are no records here yet.
  "plotreel start" in an empty folder begins a garden. One dated note is enough, too: notes/2026-05-16-first.md with a line such as "- sowed Boltardy beetroot in Long Bed".`,
    ]);
  });

  test("a file where a folder is expected", async () => {
    expect(await problemsOf({ notes: "- watered everything\n" })).toEqual([
      `notes:1:1 error folder/file-not-folder
  "notes" is a file, and a folder of that name is expected here.
  Move it away, and make a folder notes for the records.`,
    ]);
  });

  test("a folder one slip away from a known name is not passed over in silence", async () => {
    expect(
      await problemsOf({ "note/2026-05-16-a.md": sowing, "note/2026-05-17-b.md": sowing, "drafts/x.md": "" }),
    ).toEqual([
      `note/2026-05-16-a.md:1:1 warning folder/misspelt
  The folder "note" is not read.
  Did you mean "notes"?`,
    ]);
  });

  test("problems come sorted, whatever the order of reading", async () => {
    const { problems } = await readRecords(
      folderOf({
        "notes/b.md": "",
        "notes/a.md": "",
        "beds/x.md": "---\nz: 1\na: 1\n---\n",
        "garden.md": "---\nq: 1\n---\n",
      }),
      { today: filmingDay },
    );
    expect(problems.map(({ file, line, rule }) => `${file}:${line} ${rule}`)).toEqual([
      "beds/x.md:2 record/unknown-key",
      "beds/x.md:3 record/unknown-key",
      "garden.md:2 record/unknown-key",
      "notes/a.md:1 note/no-date",
      "notes/b.md:1 note/no-date",
    ]);
  });
});
