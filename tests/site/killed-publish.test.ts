/** Publishing that is killed, and publishing twice at once: what is served stays whole. */
import { spawn } from "node:child_process";
import { createHash } from "node:crypto";
import { once } from "node:events";
import { cp, mkdir, mkdtemp, readdir, readFile, rm, symlink, utimes, writeFile } from "node:fs/promises";
import { hostname, tmpdir } from "node:os";
import path from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { PublishRunning, whilePublishing } from "../../src/site/publish-lock.ts";
import { filesOf } from "./built-site.ts";

const KILLS = 50;
/** Publishings at the same time, each in a folder of its own. */
const LANES = 2;

let folder: string;

beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "plotreel-killed-"));
  // A copy of the tool, so that work on its sources while this runs does not look like a broken site.
  for (const part of ["src", "bin", "package.json"]) await cp(part, path.join(tool(), part), { recursive: true });
  await symlink(path.resolve("node_modules"), path.join(tool(), "node_modules"));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

function tool(): string {
  return path.join(folder, "tool");
}

interface Run {
  readonly exitCode: number | null;
  readonly err: string;
  /** Milliseconds from the first page to the end. */
  readonly took: number;
}

/** A real run of the command; killed that long after it began to make pages, if at all. */
async function publish(cwd: string, { killAfter }: { killAfter?: number } = {}): Promise<Run> {
  const child = spawn(
    process.execPath,
    [path.join(tool(), "bin/plotreel.js"), "publish", "--records", "content", "--today", "2026-07-18"],
    { cwd, env: { ...process.env, PLOTREEL_CACHE: path.join(cwd, "cache") }, stdio: ["ignore", "ignore", "pipe"] },
  );
  let err = "";
  let began = 0;
  child.stderr.setEncoding("utf8").on("data", (text: string) => {
    err += text;
    if (began > 0) return;
    began = performance.now();
    if (killAfter !== undefined) setTimeout(() => child.kill("SIGKILL"), killAfter);
  });
  const [exitCode] = (await once(child, "close")) as [number | null];
  return { exitCode, err, took: performance.now() - began };
}

async function gardenIn(cwd: string, bed: string): Promise<void> {
  await mkdir(path.join(cwd, "content/notes"), { recursive: true });
  await writeFile(path.join(cwd, "content/notes/2026-05-16.md"), `- planted 3 Black Beauty courgette in ${bed}\n`);
}

/** Names and bytes of everything that is served, as one word; undefined when there is nothing. */
async function served(cwd: string): Promise<string | undefined> {
  const hash = createHash("sha256");
  for (const site of ["public", "private"]) {
    const siteDir = path.join(cwd, "out", site);
    const files = await filesOf(siteDir).catch(() => undefined);
    if (files === undefined) return undefined;
    for (const file of files) hash.update(`\0${file}\0`).update(await readFile(path.join(siteDir, file)));
    hash.update(`\0${site}`);
  }
  return hash.digest("hex");
}

describe("publishing that is killed at any moment", () => {
  it("leaves the old site or the new one, whole", { timeout: 900_000 }, async () => {
    let whole = 0;
    const lane = async (number: number) => {
      const cwd = path.join(folder, `lane-${number}`);
      const known = new Map<string, string>();
      let longest = 0;
      for (const bed of ["Long Bed", "Round Bed"]) {
        await gardenIn(cwd, bed);
        const { exitCode, err, took } = await publish(cwd);
        expect(exitCode, err).toBe(0);
        known.set((await served(cwd)) as string, bed);
        longest = Math.max(longest, took);
      }
      expect(known.size).toBe(2);
      for (let kill = 0; kill < KILLS / LANES; kill += 1) {
        await gardenIn(cwd, kill % 2 === 0 ? "Long Bed" : "Round Bed");
        await publish(cwd, { killAfter: Math.random() * longest });
        const found = await served(cwd);
        expect(known.get(found ?? ""), `after kill ${kill} of lane ${number}`).toBeDefined();
        whole += 1;
      }
      await gardenIn(cwd, "Long Bed");
      expect((await publish(cwd)).exitCode).toBe(0);
      expect(known.get((await served(cwd)) ?? "")).toBe("Long Bed");
      // Nothing of the killed runs is left, neither beside the sites nor in the cache.
      expect((await readdir(path.join(cwd, "out"))).sort()).toEqual(["private", "public"]);
      const cache = await filesOf(path.join(cwd, "cache"));
      expect(cache.filter((file) => /(?:^|\/)work-/u.test(file))).toEqual([]);
    };
    await Promise.all(Array.from({ length: LANES }, (_, number) => lane(number)));
    expect(whole).toBe(KILLS);
  });
});

describe("publishing twice at once", () => {
  it("lets the second say so and stop", async () => {
    const out = path.join(folder, "twice");
    let finish = () => {};
    const first = whilePublishing(out, () => new Promise<void>((resolve) => (finish = resolve)));
    await expect.poll(() => readdir(out)).toContain(".publishing");
    const second = whilePublishing(out, async () => "ran");
    await expect(second).rejects.toThrow(PublishRunning);
    await expect(whilePublishing(out, async () => "ran")).rejects.toThrow(
      `Another run is publishing into ${out}, so this one stopped. Nothing was changed; run it again when the other is done.`,
    );
    finish();
    await first;
    expect(await whilePublishing(out, async () => "ran")).toBe("ran");
    expect(await readdir(out)).toEqual([]);
  });

  it("takes over from a run of this machine that is no more", async () => {
    const out = path.join(folder, "dead");
    const child = spawn(process.execPath, ["-e", ""]);
    await once(child, "close");
    await leaveLock(out, { pid: child.pid ?? 0, host: hostname(), token: "gone" });
    expect(await whilePublishing(out, async () => "ran")).toBe("ran");
  });

  it("trusts a run of another machine until it has been silent for a while", async () => {
    const out = path.join(folder, "elsewhere");
    const lock = await leaveLock(out, { pid: 1, host: "another-machine", token: "far" });
    await expect(whilePublishing(out, async () => "ran")).rejects.toThrow(PublishRunning);
    const longAgo = new Date(Date.now() - 120_000);
    await utimes(lock, longAgo, longAgo);
    expect(await whilePublishing(out, async () => "ran")).toBe("ran");
  });

  it("gives the place to one of many that find the same stale lock", async () => {
    const out = path.join(folder, "many");
    await leaveLock(out, { pid: 2 ** 22 + 1, host: hostname(), token: "gone" });
    let inside = 0;
    let most = 0;
    const runs = Array.from({ length: 12 }, () =>
      whilePublishing(out, async () => {
        inside += 1;
        most = Math.max(most, inside);
        await new Promise((resolve) => setTimeout(resolve, 50));
        inside -= 1;
      }),
    );
    const ended = await Promise.allSettled(runs);
    expect(most).toBe(1);
    expect(ended.filter(({ status }) => status === "fulfilled")).not.toHaveLength(0);
  });
});

async function leaveLock(out: string, holder: object): Promise<string> {
  await mkdir(out, { recursive: true });
  const lock = path.join(out, ".publishing");
  await writeFile(lock, JSON.stringify(holder));
  return lock;
}
