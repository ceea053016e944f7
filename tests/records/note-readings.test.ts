/** Kept readings of notes: the same as a fresh reading, whatever changed since. */
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { expect, test } from "vitest";
import { type NoteBody, type NoteReadings, readRecords } from "../../src/records/index.ts";
import { filmingDay, folderOf } from "./records-of.ts";

/** Kept as text, as a store on disk would. */
class KeptAsText implements NoteReadings {
  readonly texts = new Map<string, string>();
  found = 0;

  get(key: string): NoteBody | undefined {
    const text = this.texts.get(key);
    if (text === undefined) return undefined;
    this.found += 1;
    return JSON.parse(text) as NoteBody;
  }

  set(key: string, body: NoteBody): void {
    this.texts.set(key, JSON.stringify(body));
  }
}

function filesOf(garden: string): Map<string, string> {
  const dir = path.resolve("tests/gardens", garden);
  const files = readdirSync(dir, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".md"))
    .sort();
  return new Map(files.map((file) => [file, readFileSync(path.join(dir, file), "utf8")]));
}

function read(files: ReadonlyMap<string, string>, readings?: NoteReadings) {
  return readRecords(folderOf(Object.fromEntries(files)), { today: filmingDay, readings });
}

test.each(["two-beds", "two-walls", "city-balcony", "slips", "same-names", "long-season", "broken-front-matter"])(
  "of %s are the same on the second run",
  async (garden) => {
    const files = filesOf(garden);
    const fresh = await read(files);
    const kept = new KeptAsText();
    expect(await read(files, kept)).toEqual(fresh);
    expect(await read(files, kept)).toEqual(fresh);
    expect(kept.found).toBe(kept.texts.size);
  },
);

test("follow a name, a note, a unit and a new variety that changed", async () => {
  const files = filesOf("two-beds");
  const kept = new KeptAsText();
  await read(files, kept);
  expect(kept.texts.size).toBe(2);
  const changes: readonly (readonly [string, (text: string) => string])[] = [
    ["varieties/musselburgh.md", (text) => text.replace("Musselburgh", "Musselborough")],
    ["beds/left-bed.md", (text) => text.replace("title: Left bed", "title: Sunny bed")],
    ["garden.md", (text) => text.replace("units: metric", "units: us")],
    ["notes/2026-06-13-planting.md", (text) => `${text}\n- picked 2 bunches Whirligig chard\n`],
    ["notes/2026-03-21-sowing.md", (text) => text.replace("---\n", "---\nprivate: true\n")],
  ];
  for (const [file, change] of changes) {
    const before = files.get(file) ?? "";
    files.set(file, change(before));
    expect(await read(files, kept), file).toEqual(await read(files));
  }
});
