/** Where the records are, without and with being told. */
import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { expect, it } from "vitest";
import { emptyFolder, run } from "./run.ts";

function withNote(cwd: string, below: string, crop: string, settings?: string): void {
  mkdirSync(path.join(cwd, below, "notes"), { recursive: true });
  writeFileSync(path.join(cwd, below, "notes/2026-05-16.md"), `- sowed 12 ${crop} in Long Bed\n`);
  if (settings !== undefined) writeFileSync(path.join(cwd, below, "garden.md"), settings);
}

const SETTINGS = "---\nname: Test Garden\n---\n";

it("a folder with a garden.md is a garden's, whatever else lies in it", async () => {
  const cwd = emptyFolder();
  withNote(cwd, "", "leek", SETTINGS);
  withNote(cwd, "content", "radish", SETTINGS);
  const { out } = await run(["timeline"], { cwd });
  expect(out).toContain("Twelve leeks");
  expect(out).not.toContain("radish");
});

it("else the records are in content", async () => {
  const cwd = emptyFolder();
  withNote(cwd, "content", "radish");
  expect((await run(["timeline"], { cwd })).out).toContain("Twelve radishes");
});

it("or where they are said to be", async () => {
  const cwd = emptyFolder();
  withNote(cwd, "", "leek", SETTINGS);
  withNote(cwd, "elsewhere", "kale");
  const { out } = await run(["timeline", "--records", "elsewhere"], { cwd });
  expect(out).toContain("Twelve kale");
  expect(out).not.toContain("leek");
});

it("what is published from a garden's own folder is not read as records, and no record is told of it", async () => {
  const cwd = emptyFolder();
  withNote(cwd, "", "leek", SETTINGS);
  const before = await run(["check"], { cwd });
  expect((await run(["publish"], { cwd })).exitCode).toBe(0);
  expect((await run(["brief", "2026-07-18"], { cwd })).exitCode).toBe(0);
  expect((await run(["check"], { cwd })).out).toBe(before.out);
});

it("a new record goes to the same place", async () => {
  const cwd = emptyFolder();
  writeFileSync(path.join(cwd, "garden.md"), SETTINGS);
  expect((await run(["new", "bed", "Long Bed"], { cwd })).out).toBe(path.join(cwd, "beds/long-bed.md"));
});
