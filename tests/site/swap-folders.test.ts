import { mkdir, mkdtemp, readdir, readFile, rename, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { beforeEach, describe, expect, it } from "vitest";
import { clearNext, dropNext, nextFolder, putLive } from "../../src/site/swap-folders.ts";

let out: string;
let live: string;

beforeEach(async () => {
  out = await mkdtemp(path.join(tmpdir(), "plotreel-swap-"));
  live = path.join(out, "public");
});

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

  it("puts the old site back when a run was stopped between its two renames", async () => {
    await mkdir(live);
    await writeFile(path.join(live, "index.html"), "old");
    await rename(live, `${live}.last`);
    await clearNext(live);
    expect(await page(live)).toBe("old");
  });
});
