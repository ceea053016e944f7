/** `plotreel publish` does not guess: what may have been meant as private stops it, or stays back when that is asked for. */
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import path from "node:path";
import { beforeEach, describe, expect, it } from "vitest";
import { emptyFolder, run } from "./run.ts";

let cwd: string;
beforeEach(() => {
  cwd = emptyFolder();
  write("content/beds/long-bed.md", "---\ntitle: Long Bed\n---\nLong and wide.\n");
  write("content/notes/2026-05-16.md", "---\nbed: Long Bed\n---\nA fine day.\n");
});

function write(file: string, text: string | Uint8Array): void {
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

  it("tells what viewers would see for the first time, and what is kept back and why, and makes nothing", async () => {
    const first = await run(["publish", "--dry-run"], { cwd });
    expect(first.out).toContain("Nothing was published here before");
    expect(existsSync(path.join(cwd, "out"))).toBe(false);
    write("content/beds/shed.md", "---\ntitle: Shed\nprivate: true\n---\n");
    write("content/notes/2026-05-18.md", "- planted 2 leeks in Shed\n");
    write(
      "content/photos/long-bed/2026-05-18.jpg",
      readFileSync("tests/gardens/hanggarten/photos/wildes-eck/IMG_20260712_104337.jpg"),
    );
    write("content/photos/long-bed/2026-05-18.md", "---\nprivate: true\n---\n");
    expect((await run(["publish"], { cwd })).exitCode).toBe(0);
    write("content/beds/new-bed.md", "---\ntitle: New Bed\n---\n");
    write("content/beds/far-bed.md", "---\ntitle: Far Bed\nsecret: true\n---\n");
    const { exitCode, out, err } = await run(["publish", "--dry-run", "--whole"], { cwd });
    expect(exitCode).toBe(1);
    expect(out.split("\n")[0]).toBe("New to viewers: 1 bed.");
    expect(out).toContain("New to viewers:\n  bed New Bed\n");
    expect(out).toContain("bed Shed: it is marked private in beds/shed.md\n");
    expect(out).toContain('bed Far Bed: it is in doubt (beds/far-bed.md): "secret" is not a key of a bed');
    expect(out).toContain(
      "photo photos/long-bed/2026-05-18.jpg: it is marked private in photos/long-bed/2026-05-18.md",
    );
    expect(err).toContain("Publishing would stop: 1 thing may have been meant as private");
    rmSync(path.join(cwd, "content/beds/far-bed.md"));

    // A file that is gone for a moment lets nothing out that it kept back.
    rmSync(path.join(cwd, "content/beds/shed.md"));
    rmSync(path.join(cwd, "content/photos/long-bed/2026-05-18.md"));
    const stopped = await run(["publish"], { cwd });
    expect(stopped.exitCode).toBe(1);
    expect(stopped.err).toContain('The bed "Shed" was kept back when you last published');
    expect(stopped.err).toContain("photos/long-bed/2026-05-18.jpg:1:1 error privacy/described-no-more");
    for (const _ of ["once", "and again"]) {
      expect((await run(["publish", "--hold-back"], { cwd })).exitCode).toBe(0);
      expect(publicText()).not.toMatch(/Shed|2026-05-18\.jpg/);
      expect(publicText()).toContain("New Bed");
      expect(existsSync(path.join(cwd, "out/public/photos"))).toBe(false);
    }
    write("content/beds/shed.md", "---\ntitle: Shed\n---\n");
    write("content/photos/long-bed/2026-05-18.md", "---\nprivate: false\n---\n");
    expect((await run(["publish"], { cwd })).exitCode).toBe(0);
    expect(publicText()).toContain("Shed");
  }, 240_000);

  it("tells first in plain lines what is new and what goes, by kind, and why something is no longer shown", async () => {
    write(
      "content/notes/2026-05-18.md",
      "- planted 12 Musselburgh leek in Long Bed\n- planted 3 Sungold tomato in Long Bed\n",
    );
    expect((await run(["publish"], { cwd })).exitCode).toBe(0);
    // As a table that is brought in describes it.
    write("content/varieties/sungold.md", "---\ntitle: Sungold\ncrop: tomato\nprivate: true\n---\n");
    write("content/notes/2026-05-19.md", "- lost 2 Musselburgh leek in Long Bed to slugs\nA wren.\n");
    write("content/notes/2026-05-20.md", "- weeded Long Bed (not for the film)\n");
    const { out, exitCode } = await run(["publish", "--dry-run"], { cwd });
    expect(exitCode).toBe(0);
    expect(out.split("\n").slice(0, 3)).toEqual([
      "New to viewers: 1 line of your notes.",
      "No longer shown: 1 variety and 1 line of your notes.",
      "Kept back, as ever or from now on: 1 variety.",
    ]);
    expect(out).toContain(
      '  variety Sungold: because it is marked private in varieties/sungold.md. Take "private: true" out of varieties/sungold.md if viewers may see it.\n',
    );
    expect(out).toContain("planted 3 Sungold tomato in Long Bed: because the variety Sungold is kept back now\n");
    expect(out).toContain("  1 because it is marked private: variety Sungold\n");
    const { err } = await run(["publish"], { cwd });
    expect(err).toContain("No longer shown: variety Sungold, because it is marked private in varieties/sungold.md.");
    expect((await run(["publish", "--whole"], { cwd })).exitCode).toBe(2);
  }, 240_000);

  it("lets no name out for the first time that no file describes, while anything else is in doubt", async () => {
    write("content/notes/2026-05-18.md", "- planted 2 leeks in Shed\n");
    write("content/notes/2026-05-19.md", "\n---\nprivate: true\n---\nThe spare key is under the pot.\n");
    const { out } = await run(["publish", "--dry-run", "--whole"], { cwd });
    expect(out).toContain("bed Shed: no file describes it, and other records cannot be read for sure\n");
    expect((await run(["publish", "--hold-back"], { cwd })).exitCode).toBe(0);
    expect(publicText()).not.toContain("Shed");
    // Nothing is in doubt: a name needs no file.
    rmSync(path.join(cwd, "content/notes/2026-05-19.md"));
    expect((await run(["publish"], { cwd })).exitCode).toBe(0);
    expect(publicText()).toContain("Shed");
    // What viewers know stays.
    write("content/notes/2026-05-19.md", "\n---\nprivate: true\n---\nThe spare key is under the pot.\n");
    expect((await run(["publish", "--hold-back"], { cwd })).exitCode).toBe(0);
    expect(publicText()).toContain("Shed");
  }, 240_000);

  it("publishes the rest without what is in doubt when that is asked for", async () => {
    write("content/notes/2026-05-17.md", "\n---\nprivate: true\n---\nThe spare key is under the pot.\n");
    write("content/beds/far-bed.md", "---\ntitle: Far Bed\nsecret: true\n---\n");
    expect((await run(["publish", "--hold-back"], { cwd })).exitCode).toBe(0);
    expect(publicText()).toContain("Long and wide");
    expect(publicText()).not.toMatch(/spare key|Far Bed|far-bed/);
  }, 120_000);
});
