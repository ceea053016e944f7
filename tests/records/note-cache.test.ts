/** Kept parses change nothing but time. */
import { describe, expect, test } from "vitest";
import { type NoteCache, openRecordsFolder, type ParsedNote, readRecords } from "../../src/records/index.ts";
import { filmingDay, folderOf } from "./records-of.ts";

/** A cache that goes through JSON, as the one on disk does, and counts. */
function countingCache() {
  const kept = new Map<string, string>();
  const counts = { found: 0, made: 0 };
  const cache: NoteCache = {
    get(hash) {
      const text = kept.get(hash);
      if (text === undefined) return undefined;
      counts.found += 1;
      return JSON.parse(text) as ParsedNote;
    },
    set(hash, parsed) {
      counts.made += 1;
      kept.set(hash, JSON.stringify(parsed));
    },
  };
  return { cache, counts };
}

describe("a cache of parsed files", () => {
  test.each(["two-beds", "slips", "broken-front-matter", "same-names"])(
    "%s reads the same with and without",
    async (name) => {
      const folder = await openRecordsFolder(`tests/gardens/${name}`);
      const { cache, counts } = countingCache();
      const without = await readRecords(folder, { today: filmingDay });
      const cold = await readRecords(folder, { today: filmingDay, cache });
      const made = counts.made;
      const warm = await readRecords(folder, { today: filmingDay, cache });
      expect(cold).toEqual(without);
      expect(warm).toEqual(without);
      expect(made).toBeGreaterThan(0);
      expect(counts.made).toBe(made);
    },
  );

  test("a changed file is read again, the others are not; a moved one is not read again", async () => {
    const { cache, counts } = countingCache();
    const read = (files: Readonly<Record<string, string>>) =>
      readRecords(folderOf(files), { today: filmingDay, cache });
    await read({ "notes/2026-05-16-a.md": "- watered everything\n", "notes/2026-05-17-a.md": "Rain.\n" });
    expect(counts).toEqual({ found: 0, made: 2 });
    await read({ "notes/2026-05-16-a.md": "- weeded everything\n", "notes/2026-05-17-a.md": "Rain.\n" });
    expect(counts).toEqual({ found: 1, made: 3 });
    const { events } = await read({ "notes/2026-05-20-b.md": "- weeded everything\n" });
    expect(counts).toEqual({ found: 2, made: 3 });
    expect(events.map(({ id, day, verb }) => [id, day, verb])).toEqual([
      ["notes/2026-05-20-b.md:1", "2026-05-20", "weeded"],
    ]);
  });

  test("the same text as a note and as a bed is kept apart", async () => {
    const { cache } = countingCache();
    const text = "- watered everything\n";
    const { events, beds } = await readRecords(folderOf({ "beds/a.md": text, "notes/2026-05-16-a.md": text }), {
      today: filmingDay,
      cache,
    });
    expect([events.length, beds.get("a")?.body]).toEqual([1, "- watered everything"]);
  });

  test("progress counts every file once", async () => {
    const seen: number[][] = [];
    await readRecords(folderOf({ "garden.md": "", "beds/a.md": "", "notes/2026-05-16-a.md": "", "photos/a.jpg": "" }), {
      today: filmingDay,
      onProgress: (done, total) => seen.push([done, total]),
    });
    expect(seen).toEqual([
      [1, 3],
      [2, 3],
      [3, 3],
    ]);
  });
});
