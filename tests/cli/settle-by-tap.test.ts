/** Questions answered by tap: the line that settle would write, and nothing where anything changed. */
import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { beforeEach, expect, it } from "vitest";
import { type Effects, realEffects } from "../../src/cli/effects.ts";
import { loadGarden } from "../../src/cli/load-garden.ts";
import { type TapSettler, tapSettler } from "../../src/cli/settle-by-tap.ts";
import { type WrittenFiles, writtenFiles } from "../../src/cli/written-files.ts";
import type { LineReading } from "../../src/model.ts";
import { answeringAsk } from "../../src/site/question-answering.ts";
import { folderWith } from "./run.ts";

const today = "2026-07-18";
const file = "notes/2026-07-17.md";
let cwd: string;
let settler: TapSettler;
let files: WrittenFiles;
let questions: readonly LineReading[];
const at = () => path.join(cwd, "content", file);

async function start(note: string): Promise<void> {
  writeFileSync(at(), note);
  const effects: Effects = {
    ...realEffects(),
    cwd,
    out: () => undefined,
    err: () => undefined,
    cacheFor: () => path.join(cwd, ".cache"),
  };
  const { garden, recordsDir } = await loadGarden({ today }, effects);
  files = writtenFiles(recordsDir, effects);
  settler = tapSettler({ garden, today }, recordsDir, files, effects);
  questions = garden.readings.filter(({ as, place }) => as === "question" && place.file === file);
}

beforeEach(() => {
  cwd = folderWith("two-beds");
});

function tap(question: LineReading | undefined, reading?: number) {
  const { place, text } = question as LineReading;
  return settler.answer({ file, line: place.line, text, state: files.state(file), reading });
}

it("writes the chosen reading below the person's words, and takes it back", async () => {
  await start("- lifted the leeks\n- a wren\n");
  const [question] = questions;
  const { undo } = await tap(question, 0);
  const plain = question?.readings[0]?.line ?? "";
  expect(plain).not.toBe("");
  expect(readFileSync(at(), "utf8")).toBe(`- lifted the leeks\n${plain.replace(/^/gmu, "  - = ")}\n- a wren\n`);
  await files.undo(undo ?? -1);
  expect(readFileSync(at(), "utf8")).toBe("- lifted the leeks\n- a wren\n");
});

it("says that a line holds no fact", async () => {
  await start("- lifted the leeks\n");
  await tap(questions[0]);
  expect(readFileSync(at(), "utf8")).toBe("- lifted the leeks\n  - = story\n");
});

it("writes nothing where the note or the question is another by now", async () => {
  await start("- lifted the leeks\n");
  const [question] = questions;
  const state = files.state(file);
  writeFileSync(at(), "- mine\n- lifted the leeks\n");
  const { place, text } = question as LineReading;
  const late = { file, line: place.line, text, state, reading: 0 };
  expect(await settler.answer(late)).toEqual({ told: expect.stringContaining("was changed") });
  expect(await settler.answer({ ...late, state: files.state(file) })).toEqual({
    told: expect.stringContaining("was changed"),
  });
  for (const other of ["../outside.md", "garden.md", "/etc/hosts"])
    expect(await settler.answer({ ...late, file: other })).toEqual({ told: expect.stringContaining("was changed") });
  expect(readFileSync(at(), "utf8")).toBe("- mine\n- lifted the leeks\n");
});

it("offers no reading that the line does not have, and takes from a page only what its own sends", async () => {
  await start("- lifted the leeks\n");
  expect((await tap(questions[0], 99)).told).toContain("not offered");
  const good = { file, line: 1, text: "x", state: "", reading: 0 };
  expect(answeringAsk(good)).toEqual(good);
  for (const bad of [{ line: -1 }, { line: 1.5 }, { reading: "0" }, { file: 3 }, { text: undefined }, { state: null }])
    expect(answeringAsk({ ...good, ...bad })).toBeUndefined();
});
