/** `plotreel publish` does not guess: what may have been meant as private stops it, or stays back when that is asked for. */
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import path from "node:path";
import { beforeEach, describe, expect, it } from "vitest";
import { emptyFolder, run } from "./run.ts";

let cwd: string;
beforeEach(() => {
  cwd = emptyFolder();
  write("content/beds/long-bed.md", "---\ntitle: Long Bed\n---\nLong and wide.\n");
  write("content/notes/2026-05-16.md", "---\nbed: Long Bed\n---\nA fine day.\n");
});

function write(file: string, text: string): void {
  mkdirSync(path.dirname(path.join(cwd, file)), { recursive: true });
  writeFileSync(path.join(cwd, file), text);
}

const publicText = () =>
  readdirSync(path.join(cwd, "out/public"), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith(".html"))
    .map((entry) => readFileSync(path.join(entry.parentPath, entry.name), "utf8"))
    .join("\n");

describe("publishing in doubt", () => {
  it("stops, says which records and what to do, and leaves the last site", async () => {
    expect((await run(["publish"], { cwd })).exitCode).toBe(0);
    const before = publicText();
    const rights = (folder: string) => statSync(path.join(cwd, folder)).mode & 0o077;
    // Nobody else who uses this machine reads what is kept back.
    expect([rights("out/private"), rights(".cache")]).toEqual([0, 0]);
    expect(rights("out/public")).not.toBe(0);
    write("content/notes/2026-05-17.md", "\n---\nprivate: true\n---\nThe spare key is under the pot.\n");
    write("content/beds/far-bed.md", "---\ntitle: Far Bed\nsecret: true\n---\n");
    const { exitCode, err } = await run(["publish"], { cwd });
    expect(exitCode).toBe(1);
    expect(err).toContain("notes/2026-05-17.md:2:1 error front-matter/not-first");
    expect(err).toContain("beds/far-bed.md:3:1 error record/unknown-key");
    expect(err).toContain("because 2 things in your records may have been meant as private");
    expect(publicText()).toBe(before);
    expect(existsSync(path.join(cwd, "out/public.next"))).toBe(false);
  }, 120_000);

  it("publishes the rest without what is in doubt when that is asked for", async () => {
    write("content/notes/2026-05-17.md", "\n---\nprivate: true\n---\nThe spare key is under the pot.\n");
    write("content/beds/far-bed.md", "---\ntitle: Far Bed\nsecret: true\n---\n");
    expect((await run(["publish", "--hold-back"], { cwd })).exitCode).toBe(0);
    expect(publicText()).toContain("Long and wide");
    expect(publicText()).not.toMatch(/spare key|Far Bed|far-bed/);
  }, 120_000);
});
