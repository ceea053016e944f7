/** Lines typed on a page, written into the note of their day: what stands there then, what is asked first, what is written once. */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { beforeEach, describe, expect, it } from "vitest";
import { type Effects, realEffects } from "../../src/cli/effects.ts";
import { loadGarden } from "../../src/cli/load-garden.ts";
import { type NoteWriter, noteWriter } from "../../src/cli/write-notes.ts";
import { type WrittenFiles, writtenFiles } from "../../src/cli/written-files.ts";
import { readTyped, typedGarden, typedNames } from "../../src/records/index.ts";
import type { WritingAsk } from "../../src/site/index.ts";
import { writingAsk } from "../../src/site/note-writing.ts";
import { folderWith } from "./run.ts";

const today = "2026-07-18";
let cwd: string;
let files: WrittenFiles;
let writer: NoteWriter;
const at = (file: string) => path.join(cwd, "content", file);
const read = (file: string) => readFileSync(at(file), "utf8");

beforeEach(async () => {
  cwd = folderWith("two-beds");
  await start();
});

async function start(): Promise<void> {
  const { garden, recordsDir, effects } = await load();
  files = writtenFiles(recordsDir, effects);
  writer = noteWriter({ garden, today }, recordsDir, files, effects);
}

async function load() {
  const effects: Effects = {
    ...realEffects(),
    cwd,
    out: () => undefined,
    err: () => undefined,
    cacheFor: () => path.join(cwd, ".cache"),
  };
  return { ...(await loadGarden({ today }, effects)), effects };
}

/** As the page sends it. */
async function typed(lines: readonly string[], more: Partial<WritingAsk> = {}): Promise<WritingAsk> {
  const { garden } = await load();
  const day = more.day ?? today;
  const [note] = (await writer.notesOf(day)).notes;
  const data = typedGarden(garden);
  const beds = more.bed === undefined ? (note?.beds ?? []) : [more.bed];
  const shown = readTyped(lines.join("\n"), { garden: data, names: typedNames(data), day, beds });
  return {
    id: `save-${Math.random().toString(36).slice(2)}`,
    day,
    file: note?.file ?? "",
    state: note?.state ?? "",
    lines,
    shown: shown.map(({ as, says }) => ({ as, says })),
    ...more,
  };
}

describe("what is typed", () => {
  it("begins the note of its day as a person would, is read as it was shown, and can be taken back", async () => {
    const ask = await typed(["picked 400 g Aquadulce", "a wren in the beans"], { bed: "left-bed" });
    expect(ask).toMatchObject({ file: "notes/2026-07-18.md", state: "" });
    const { undo, told } = await writer.write(ask);
    expect(told).toBe("notes/2026-07-18.md begins with it.");
    expect(read("notes/2026-07-18.md")).toBe("## Left bed\n\n- picked 400 g Aquadulce\n- a wren in the beans\n");
    const { garden } = await load();
    const events = garden.events.filter(({ place }) => place.file === "notes/2026-07-18.md");
    expect(events.map(({ kind, bed, grams }) => [kind, bed, grams])).toEqual([["picked", "left-bed", 400]]);
    expect(await files.undo(undo ?? -1)).toMatchObject({ done: true });
    expect(existsSync(at("notes/2026-07-18.md"))).toBe(false);
  });

  it("goes on with a note that is there, whose other bytes stay", async () => {
    const before = read("notes/2026-06-13-planting.md");
    const ask = await typed(["lost 2 leeks to drought"], { day: "2026-06-13" });
    expect(ask).toMatchObject({
      file: "notes/2026-06-13-planting.md",
      shown: [{ says: [expect.stringContaining("Right bed")] }],
    });
    const { undo } = await writer.write(ask);
    expect(read("notes/2026-06-13-planting.md")).toBe(`${before}\n- lost 2 leeks to drought\n`);
    await files.undo(undo ?? -1);
    expect(read("notes/2026-06-13-planting.md")).toBe(before);
  });

  it("lies where this person's notes lie: by year, where they have such folders", async () => {
    writeFileSync(at("notes/2026-07-01.md"), "- wet\n");
    const moved = folderWith("two-beds");
    cwd = moved;
    const { mkdirSync, renameSync } = await import("node:fs");
    mkdirSync(at("notes/2026"));
    renameSync(at("notes/2026-06-13-planting.md"), at("notes/2026/2026-06-13-planting.md"));
    await start();
    expect((await writer.notesOf("2026-07-18")).notes[0]?.file).toBe("notes/2026/2026-07-18.md");
    expect((await writer.notesOf("2025-12-31")).notes[0]?.file).toBe("notes/2025/2025-12-31.md");
  });

  it("is written once, however often it is sent, at once or later", async () => {
    const ask = await typed(["watered the leeks"], { bed: "right-bed" });
    const [one, two] = await Promise.all([writer.write(ask), writer.write(ask)]);
    expect(two).toEqual(one);
    expect(await writer.write(ask)).toEqual(one);
    expect(read("notes/2026-07-18.md").match(/watered the leeks/gu)).toHaveLength(1);
    // Another run knows no ids any more; it asks, since the note is another by now.
    await start();
    expect(await writer.write(ask)).toMatchObject({ asks: { text: read("notes/2026-07-18.md") } });
    expect(read("notes/2026-07-18.md").match(/watered the leeks/gu)).toHaveLength(1);
  });

  it("asks before it goes into a file that changed underneath, and writes when the person agrees", async () => {
    const ask = await typed(["watered the leeks"], { bed: "right-bed" });
    writeFileSync(at("notes/2026-07-18.md"), "- mine\n");
    const asked = await writer.write(ask);
    expect(asked).toMatchObject({ asks: { text: "- mine\n" }, told: expect.stringContaining("was changed") });
    expect(read("notes/2026-07-18.md")).toBe("- mine\n");
    await writer.write({ ...ask, state: asked.asks?.state ?? "" });
    expect(read("notes/2026-07-18.md")).toBe("- mine\n\n## Right bed\n\n- watered the leeks\n");
  });

  it("is not taken back once somebody changed the file", async () => {
    const { undo } = await writer.write(await typed(["watered the leeks"], { bed: "right-bed" }));
    writeFileSync(at("notes/2026-07-18.md"), "- mine\n");
    expect(await files.undo(undo ?? -1)).toEqual({ told: expect.stringContaining("left as it is") });
    expect(read("notes/2026-07-18.md")).toBe("- mine\n");
  });

  it("is asked about when it says something else in the note than was shown", async () => {
    const ask = await typed(["picked 400 g Aquadulce"], { bed: "left-bed" });
    const other = { ...ask, shown: [{ as: "story" as const, says: [] }] };
    const asked = await writer.write(other);
    expect(asked.reads).toEqual([{ as: "facts", says: ["picked 400 g Aquadulce Claudia from Left bed"] }]);
    expect(existsSync(at("notes/2026-07-18.md"))).toBe(false);
    expect(await writer.write({ ...other, shown: asked.reads ?? [] })).toMatchObject({ undo: 0 });
  });

  it("goes into no other file, and speaks of no bed that is not there", async () => {
    for (const file of ["../outside.md", "garden.md", "notes/../../x.md", "notes/2026-03-21-sowing.md", "/etc/x.md"])
      expect(await writer.write(await typed(["wet"], { file }))).toEqual({ told: `${file} is no note of that day.` });
    expect((await writer.write(await typed(["wet"], { bed: "no-bed" }))).told).toContain("not in the records");
  });
});

it("takes from a page only what a page of its own sends", async () => {
  const good = {
    id: "12345678",
    day: today,
    file: "notes/x.md",
    state: "",
    lines: ["wet"],
    shown: [{ as: "story", says: [] }],
  };
  expect(writingAsk(good)).toEqual(good);
  for (const [why, bad] of [
    ["two lines in one", { lines: ["wet\n- dry"] }],
    ["another line end", { lines: ["wet\u2028dry"] }],
    ["an order to the terminal", { lines: ["wet\u001b[2J"] }],
    ["an empty line", { lines: [" "] }],
    ["no line", { lines: [], shown: [] }],
    ["a line of a novel", { lines: ["x".repeat(1001)] }],
    ["a thousand lines", { lines: Array(1000).fill("wet"), shown: Array(1000).fill({ as: "story", says: [] }) }],
    ["no reading", { shown: [] }],
    ["a reading of no kind", { shown: [{ as: "truth", says: [] }] }],
    ["no day", { day: "2026-13-40" }],
    ["no id", { id: "" }],
    ["a bed that is no name", { bed: 3 }],
  ] as const)
    expect(writingAsk({ ...good, ...bad }), why).toBeUndefined();
});
