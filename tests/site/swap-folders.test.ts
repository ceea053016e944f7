import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdir, mkdtemp, readdir, readFile, rename, rm, symlink, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { ForeignFiles, listOwnFiles, refuseForeignFiles } from "../../src/site/own-files.ts";
import { clearNext, dropNext, nextFolder, putLive, whereItLies } from "../../src/site/swap-folders.ts";

let out: string;
let live: string;

beforeEach(async () => {
  out = await mkdtemp(path.join(tmpdir(), "plotreel-swap-"));
  live = path.join(out, "public");
});

afterEach(() => rm(out, { recursive: true, force: true }));

async function page(folder: string): Promise<string> {
  return readFile(path.join(folder, "index.html"), "utf8");
}

describe("putting a finished site in place", () => {
  it("replaces the old site and leaves nothing beside it", async () => {
    await mkdir(live);
    await writeFile(path.join(live, "index.html"), "old");
    await writeFile(path.join(live, "gone.html"), "old");
    await clearNext(live);
    await writeFile(path.join(nextFolder(live), "index.html"), "new");
    await putLive([live]);
    expect(await page(live)).toBe("new");
    expect(await readdir(live)).toEqual(["index.html"]);
    expect(await readdir(out)).toEqual(["public"]);
  });

  it("keeps the old site when the new one is dropped", async () => {
    await mkdir(live);
    await writeFile(path.join(live, "index.html"), "old");
    await clearNext(live);
    await dropNext([live]);
    expect(await page(live)).toBe("old");
    expect(await readdir(out)).toEqual(["public"]);
  });

  it("follows a link to the folder that is served", async () => {
    await mkdir(path.join(out, "served"));
    await symlink(path.join(out, "served"), live);
    expect(await whereItLies(live)).toBe(path.join(out, "served"));
    expect(await whereItLies(path.join(out, "none"))).toBe(path.join(out, "none"));
  });

  it("puts the old site back when a run was stopped between its two renames", async () => {
    await mkdir(live);
    await writeFile(path.join(live, "index.html"), "old");
    await rename(live, `${live}.last`);
    await clearNext(live);
    expect(await page(live)).toBe("old");
  });
});

/** Swaps two sites in a process that is killed before its rename of this number. */
async function killedSwap(step: number): Promise<void> {
  const script = `
    import fs from "node:fs";
    import { syncBuiltinESMExports } from "node:module";
    let step = 0;
    const rename = fs.renameSync;
    fs.renameSync = (...paths) => {
      if (step++ === ${step}) process.kill(process.pid, "SIGKILL");
      rename(...paths);
    };
    syncBuiltinESMExports();
    const { putLive } = await import("./src/site/swap-folders.ts");
    await putLive(${JSON.stringify([path.join(out, "public"), path.join(out, "private")])});
  `;
  await once(spawn(process.execPath, ["--input-type=module", "-e", script]), "close");
}

async function twoSites(): Promise<readonly string[]> {
  const sites = [live, path.join(out, "private")];
  for (const site of sites) {
    await mkdir(site);
    await writeFile(path.join(site, "index.html"), "old");
    await clearNext(site);
    await writeFile(path.join(nextFolder(site), "index.html"), "new");
  }
  return sites;
}

describe("a swap that is killed between any two of its steps", () => {
  it.each([0, 1, 2, 3])("is mended by the next run (%i)", async (step) => {
    const sites = await twoSites();
    await killedSwap(step);
    for (const site of sites) await clearNext(site);
    expect(await Promise.all(sites.map(page))).toEqual([step >= 2 ? "new" : "old", "old"]);
  });
});

describe("files that somebody else put into a published folder", () => {
  it("are named, and stay", async () => {
    await mkdir(path.join(live, ".git"), { recursive: true });
    await writeFile(path.join(live, "index.html"), "ours");
    await listOwnFiles(live);
    await expect(refuseForeignFiles(live)).resolves.toBeUndefined();
    for (const file of [".git/HEAD", ".git/index", "own-domain", ".DS_Store"])
      await writeFile(path.join(live, file), "");
    await expect(refuseForeignFiles(live)).rejects.toThrow(
      `${live} holds files that Plotreel did not make (.git, own-domain), and publishing would replace the folder, so it was left as it is. Move them out, or publish into another folder with --out.`,
    );
  });

  it("are all there is in a folder that was never published", async () => {
    await mkdir(live);
    await expect(refuseForeignFiles(live)).resolves.toBeUndefined();
    await expect(refuseForeignFiles(path.join(out, "none"))).resolves.toBeUndefined();
    for (const file of ["a", "b", "c", "d", "e"]) await writeFile(path.join(live, file), "");
    await expect(refuseForeignFiles(live)).rejects.toThrow("(a, b, c and 2 more)");
    await expect(refuseForeignFiles(live)).rejects.toThrow(ForeignFiles);
  });

  it("may be called whatever a disk allows", async () => {
    await mkdir(live);
    await writeFile(path.join(live, "two\nlines"), "ours");
    await listOwnFiles(live);
    await expect(refuseForeignFiles(live)).resolves.toBeUndefined();
  });
});
