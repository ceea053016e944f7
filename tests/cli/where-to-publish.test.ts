/** Where `plotreel publish` may write, what it says where it may not or cannot, and that nothing is lost then. */
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { beforeEach, describe, expect, it } from "vitest";
import { sayRefused } from "../../src/cli/system-reason.ts";
import { emptyFolder, run } from "./run.ts";

let cwd: string;
beforeEach(() => {
  cwd = emptyFolder();
  write("content/notes/2026-05-16.md", "- planted 3 Black Beauty courgette in Long Bed\n");
});

function write(file: string, text: string): void {
  mkdirSync(path.dirname(path.join(cwd, file)), { recursive: true });
  writeFileSync(path.join(cwd, file), text);
}

describe("a folder to publish into", () => {
  it("is not one that holds somebody's own files", async () => {
    write("public/holiday.jpg", "mine");
    const { exitCode, err } = await run(["publish", "--out", "."], { cwd });
    expect(exitCode).toBe(3);
    expect(err).toBe(
      `${cwd}/public holds files that Plotreel did not make (holiday.jpg), and publishing would replace the folder, so it was left as it is. Move them out, or publish into another folder with --out.`,
    );
    expect(readdirSync(path.join(cwd, "public"))).toEqual(["holiday.jpg"]);
    expect(existsSync(path.join(cwd, "private"))).toBe(false);
  });

  it("is not inside one that is served, whether by its name or by what lies in it", async () => {
    write("site/index.html", "<p>served</p>");
    for (const out of ["out/public", "public_html", "site", "site/garden", "www/a/b"]) {
      const { exitCode, err } = await run(["publish", "--out", out], { cwd });
      expect(exitCode, out).toBe(2);
      expect(err).toMatch(/looks like a folder that a web server hands out.*Give a folder outside it with --out\./u);
    }
    expect(existsSync(path.join(cwd, "out"))).toBe(false);
  });

  it("is not the records themselves, nor one among them, by whatever name", async () => {
    write("public/garden.md", "---\nname: Here\n---\n");
    const replaced = await run(["publish", "--records", "public", "--out", "."], { cwd });
    expect(replaced.exitCode).toBe(3);
    expect(readdirSync(path.join(cwd, "public"))).toEqual(["garden.md"]);
    symlinkSync(path.join(cwd, "content"), path.join(cwd, "other-name"));
    for (const out of ["content/photos", "content/notes/site", "other-name/photos/site"]) {
      const { exitCode, err } = await run(["publish", "--out", out], { cwd });
      expect(exitCode, out).toBe(2);
      expect(err).toMatch(
        /lies among your records, where the pages would be read as (?:photos|notes)\. Give a folder outside /u,
      );
    }
    expect(readdirSync(path.join(cwd, "content"))).toEqual(["notes"]);
  });

  it("may be published into again, lie beside the records' folders, and be reached by a link", async () => {
    mkdirSync(path.join(cwd, "web"));
    mkdirSync(path.join(cwd, "content/out"));
    symlinkSync(path.join(cwd, "web"), path.join(cwd, "content/out/public"));
    for (let time = 0; time < 2; time += 1) {
      const { exitCode, err } = await run(["publish", "--out", "content/out"], { cwd });
      expect(exitCode, err).toBe(0);
    }
    expect(readdirSync(path.join(cwd, "web"))).toContain("index.html");
    expect(readdirSync(path.join(cwd, "content/out")).sort()).toEqual(["private", "public"]);
  });

  const otherDisk = "/dev/shm";
  it.runIf(existsSync(otherDisk) && statSync(otherDisk).dev !== statSync(tmpdir()).dev)(
    "may be on another disk",
    async () => {
      const out = mkdtempSync(path.join(otherDisk, "plotreel-"));
      try {
        const { exitCode, err } = await run(["publish", "--out", out], { cwd });
        expect(exitCode, err).toBe(0);
        expect(readdirSync(out).sort()).toEqual(["private", "public"]);
      } finally {
        rmSync(out, { recursive: true });
      }
    },
  );

  it("is a folder", async () => {
    write("taken", "a file");
    const { exitCode, err } = await run(["publish", "--out", "taken"], { cwd });
    expect(exitCode).toBe(3);
    expect(err).toBe(
      `Could not use ${cwd}/taken/public: a part of the path is a file, not a folder (ENOTDIR). Nothing in your records was left half changed.`,
    );
  });

  it.runIf(process.getuid?.() !== 0)("is one that may be written to", async () => {
    mkdirSync(path.join(cwd, "closed"));
    chmodSync(path.join(cwd, "closed"), 0o555);
    const { exitCode, err } = await run(["publish", "--out", "closed/out"], { cwd });
    expect(exitCode).toBe(3);
    expect(err).toContain(`Could not use ${cwd}/closed/out: the system does not allow it (EACCES).`);
  });
});

describe("what the system refuses", () => {
  const refused = (error: object) => sayRefused(Object.assign(new Error(), error));

  it("is said in words, with the file that was to be written", () => {
    expect(refused({ code: "ENOSPC", syscall: "copyfile", path: "/tool/a.css", dest: "/out/a.css" })).toBe(
      "Could not use /out/a.css: the disk is full (ENOSPC). Nothing in your records was left half changed.",
    );
    expect(refused({ code: "ENOSPC", syscall: "write" })).toBe(
      "Could not write a file: the disk is full (ENOSPC). Nothing in your records was left half changed.",
    );
    expect(refused({ code: "EROFS", syscall: "mkdir", path: "/out" })).toBe(
      "Could not use /out: the disk can only be read from (EROFS). Nothing in your records was left half changed.",
    );
  });

  it("is told from faults of the program", () => {
    expect(refused({})).toBeUndefined();
    expect(refused({ code: "ERR_INVALID_ARG_TYPE" })).toBeUndefined();
  });
});
