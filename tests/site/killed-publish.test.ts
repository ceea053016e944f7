/** Publishing that is killed, and publishing twice at once: what is served stays whole. */
import { spawn } from "node:child_process";
import { createHash } from "node:crypto";
import { once } from "node:events";
import { cp, mkdir, mkdtemp, readdir, readFile, rm, symlink, utimes, writeFile } from "node:fs/promises";
import { hostname, tmpdir } from "node:os";
import path from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildInto } from "../../scripts/build/build.ts";
import { PublishRunning, whilePublishing } from "../../src/site/publish-lock.ts";
import { filesOf } from "./built-site.ts";

/** A bounded share; `npm run trust` kills more often, and other commands too. */
const KILLS = 20;
/** Publishings at the same time, each in a folder of its own. */
const LANES = 2;

let folder: string;

beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "plotreel-killed-"));
  // The tool as it is shipped: work on its sources while this runs does not look like a broken site.
  for (const part of ["bin", "package.json"]) await cp(part, path.join(tool(), part), { recursive: true });
  await buildInto(path.join(tool(), "dist"));
  await symlink(path.resolve("node_modules"), path.join(tool(), "node_modules"));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

function tool(): string {
  return path.join(folder, "tool");
}

interface Run {
  readonly exitCode: number | null;
  readonly err: string;
  /** Milliseconds from its start to its end. */
  readonly took: number;
}

interface RunOptions {
  /** Milliseconds from its start. */
  readonly killAfter?: number;
  /** Called once it has begun to make pages; the run is held until this is over. */
  readonly onPages?: () => Promise<unknown>;
}

/** A real run of the command. */
async function publish(cwd: string, { killAfter, onPages }: RunOptions = {}): Promise<Run> {
  const began = performance.now();
  const child = spawn(
    process.execPath,
    [path.join(tool(), "bin/plotreel.js"), "publish", "--records", "content", "--today", "2026-07-18"],
    { cwd, env: { ...process.env, PLOTREEL_CACHE: path.join(cwd, "cache") }, stdio: ["ignore", "ignore", "pipe"] },
  );
  if (killAfter !== undefined) setTimeout(() => child.kill("SIGKILL"), killAfter);
  let err = "";
  child.stderr.setEncoding("utf8").on("data", (text: string) => {
    if (err === "" && onPages !== undefined) {
      child.kill("SIGSTOP");
      void onPages().finally(() => child.kill("SIGCONT"));
    }
    err += text;
  });
  const [exitCode] = (await once(child, "close")) as [number | null];
  return { exitCode, err, took: performance.now() - began };
}

async function gardenIn(cwd: string, bed: string): Promise<void> {
  await mkdir(path.join(cwd, "content/notes"), { recursive: true });
  await writeFile(path.join(cwd, "content/notes/2026-05-16.md"), `- planted 3 Black Beauty courgette in ${bed}\n`);
}

const SITES = ["public", "private"] as const;
type Site = (typeof SITES)[number];

/** Names and bytes of everything that is served in one folder, as one word; undefined when there is no folder. */
async function served(cwd: string, site: Site | `${Site}.last`): Promise<string | undefined> {
  const hash = createHash("sha256");
  const siteDir = path.join(cwd, "out", site);
  const files = await filesOf(siteDir).catch(() => undefined);
  if (files === undefined) return undefined;
  for (const file of files) hash.update(`\0${file}\0`).update(await readFile(path.join(siteDir, file)));
  return hash.digest("hex");
}

/** A kill between the two renames leaves the old site under the name the next run finds it by. */
async function servedOrSetAside(cwd: string, site: Site): Promise<string | undefined> {
  return (await served(cwd, site)) ?? (await served(cwd, `${site}.last`));
}

describe("publishing that is killed at any moment", () => {
  it("leaves the old site or the new one, whole", { timeout: 900_000 }, async () => {
    let whole = 0;
    const lane = async (number: number) => {
      const cwd = path.join(folder, `lane-${number}`);
      // What is served once the garden of each bed is published, by site and content.
      const known = new Map<string, string>();
      let took = 0;
      // Twice: the first time everything is made, from then on only what changed.
      for (const bed of ["Long Bed", "Round Bed", "Long Bed", "Round Bed"]) {
        await gardenIn(cwd, bed);
        const run = await publish(cwd);
        expect(run.exitCode, run.err).toBe(0);
        for (const site of SITES) known.set(`${site} ${await served(cwd, site)}`, bed);
        took = run.took;
      }
      expect(known.size).toBe(4);
      for (let kills = 0; kills < KILLS / LANES; ) {
        await gardenIn(cwd, kills % 2 === 0 ? "Long Bed" : "Round Bed");
        const { exitCode } = await publish(cwd, { killAfter: Math.random() * took });
        for (const site of SITES)
          expect(
            known.get(`${site} ${await servedOrSetAside(cwd, site)}`),
            `${site} after kill ${kills}`,
          ).toBeDefined();
        // A run that was over before its time to be killed had come counts for none.
        if (exitCode === null) {
          kills += 1;
          whole += 1;
        }
      }
      await gardenIn(cwd, "Long Bed");
      expect((await publish(cwd)).exitCode).toBe(0);
      for (const site of SITES) expect(known.get(`${site} ${await served(cwd, site)}`)).toBe("Long Bed");
      // Nothing of the killed runs is left, neither beside the sites nor in the cache.
      expect((await readdir(path.join(cwd, "out"))).sort()).toEqual(["private", "public"]);
      const cache = await filesOf(path.join(cwd, "cache"));
      expect(cache.filter((file) => /(?:^|\/)work-/u.test(file))).toEqual([]);
    };
    await Promise.all(Array.from({ length: LANES }, (_, number) => lane(number)));
    expect(whole).toBe(KILLS);
  });
});

it("clears what a run left that was killed while it took the lock", async () => {
  const cwd = path.join(folder, "left-over");
  await gardenIn(cwd, "Long Bed");
  await mkdir(path.join(cwd, "out"), { recursive: true });
  // No process has a number this high.
  for (const name of [".publishing.99999999-17", ".publishing.next.99999999-17", ".publishing.next"])
    await writeFile(path.join(cwd, "out", name), "");
  expect((await publish(cwd)).exitCode).toBe(0);
  expect((await readdir(path.join(cwd, "out"))).sort()).toEqual(["private", "public"]);
});

describe("publishing twice at once", () => {
  it("is told on the command line, at once, and the first run goes on", async () => {
    const cwd = path.join(folder, "two-commands");
    await gardenIn(cwd, "Long Bed");
    let second: Promise<Run> | undefined;
    const first = await publish(cwd, { onPages: () => (second = publish(cwd)) });
    const refused = await second;
    expect(refused?.exitCode).toBe(3);
    expect(refused?.err).toBe(
      `Another run is publishing into ${path.join(cwd, "out")}, so this one stopped. Nothing was changed; run it again when the other is done. If no other is at work on any machine, delete ${path.join(cwd, "out", ".publishing")}.\n`,
    );
    expect(first.exitCode, first.err).toBe(0);
    expect((await readdir(path.join(cwd, "out"))).sort()).toEqual(["private", "public"]);
  });

  it("lets the second say so and stop", async () => {
    const out = path.join(folder, "twice");
    let finish = () => {};
    const first = whilePublishing(out, () => new Promise<void>((resolve) => (finish = resolve)));
    await expect.poll(() => readdir(out)).toContain(".publishing");
    const second = whilePublishing(out, async () => "ran");
    await expect(second).rejects.toThrow(PublishRunning);
    await expect(whilePublishing(out, async () => "ran")).rejects.toThrow(
      `Another run is publishing into ${out}, so this one stopped. Nothing was changed; run it again when the other is done. If no other is at work on any machine, delete ${path.join(out, ".publishing")}.`,
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

  it.runIf(process.platform === "linux")("takes over when the number belongs to another process by now", async () => {
    const out = path.join(folder, "reused");
    await leaveLock(out, {
      pid: process.pid,
      host: hostname(),
      began: "an earlier start of the machine 1",
      token: "old",
    });
    expect(await whilePublishing(out, async () => "ran")).toBe("ran");
  });

  it.runIf(process.platform === "linux")("waits for a run of this machine that sleeps, however long", async () => {
    const out = path.join(folder, "asleep");
    const longAgo = new Date(Date.now() - 86_400_000);
    await whilePublishing(out, async () => {
      await utimes(path.join(out, ".publishing"), longAgo, longAgo);
      await expect(whilePublishing(out, async () => "ran")).rejects.toThrow(PublishRunning);
    });
  });

  it("does not put its site in place once it was taken for dead", async () => {
    const out = path.join(folder, "woken");
    const late = whilePublishing(out, async (insist) => {
      await leaveLock(out, { pid: 1, host: "another-machine", token: "its own" });
      await insist();
      return "put in place";
    });
    await expect(late).rejects.toThrow(PublishRunning);
    // The other's lock stays its own.
    expect(await readdir(out)).toEqual([".publishing"]);
  });

  it("trusts a run of another machine until it has been silent for a while", async () => {
    const out = path.join(folder, "elsewhere");
    const lock = await leaveLock(out, { pid: 1, host: "another-machine", token: "far" });
    await expect(whilePublishing(out, async () => "ran")).rejects.toThrow(PublishRunning);
    const longAgo = new Date(Date.now() - 120_000);
    await utimes(lock, longAgo, longAgo);
    expect(await whilePublishing(out, async () => "ran")).toBe("ran");
  });

  it("gives the place to one of many that find the same stale lock, be its taking over stale too", async () => {
    const gone = { pid: 2 ** 22 + 1, host: hostname(), token: "gone" };
    for (let round = 0; round < 40; round += 1) {
      const out = path.join(folder, `many-${round}`);
      await leaveLock(out, gone);
      if (round % 2 === 1) await writeFile(path.join(out, ".publishing.next"), JSON.stringify(gone));
      let inside = 0;
      let most = 0;
      const runs = Array.from({ length: 12 }, () =>
        whilePublishing(out, async () => {
          inside += 1;
          most = Math.max(most, inside);
          await new Promise((resolve) => setTimeout(resolve, 20));
          inside -= 1;
        }),
      );
      const ended = await Promise.allSettled(runs);
      expect(most).toBe(1);
      expect(ended.filter(({ status }) => status === "fulfilled")).not.toHaveLength(0);
      expect(await readdir(out)).toEqual([]);
    }
  });
});

async function leaveLock(out: string, holder: object): Promise<string> {
  await mkdir(out, { recursive: true });
  const lock = path.join(out, ".publishing");
  await writeFile(lock, JSON.stringify(holder));
  return lock;
}
