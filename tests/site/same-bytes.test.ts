/**
 * The same records with the same today give the same bytes: the real command, run on two machines as unlike as one machine
 * can play them: another day and hour, time zone, language, folder, times of files, and order in which the disk lists them.
 */
import { spawn } from "node:child_process";
import { once } from "node:events";
import { cp, mkdir, mkdtemp, readdir, readFile, rm, utimes, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { gunzipSync } from "node:zlib";
import { afterAll, beforeAll, expect, it } from "vitest";
import { filesOf } from "./built-site.ts";

/** A garden with everything that pages are made from: photos from one spot, captions, weather, a planned tour, a trial. */
const GARDEN = path.resolve("tests/gardens/hanggarten");

interface Machine {
  readonly name: string;
  readonly now: string;
  readonly env: Readonly<Record<string, string>>;
  /** How its disk lists a folder. */
  readonly order: "forward" | "reverse";
  readonly fileTime: string;
}

const MACHINES: readonly Machine[] = [
  {
    name: "first",
    now: "2026-07-18T10:00:00Z",
    env: { TZ: "Pacific/Auckland", LANG: "en_US.UTF-8", LC_ALL: "en_US.UTF-8" },
    order: "forward",
    fileTime: "2020-02-29T12:00:00Z",
  },
  {
    name: "second/much deeper",
    now: "2031-02-01T23:30:00Z",
    env: { TZ: "America/Los_Angeles", LANG: "tr_TR.UTF-8", LC_ALL: "tr_TR.UTF-8" },
    order: "reverse",
    fileTime: "2026-07-18T01:00:00Z",
  },
];

/** Loaded before the command: its clock, and the order in which it sees files. */
function world({ now, order }: Machine): string {
  return `
    import fs from "node:fs";
    import { syncBuiltinESMExports } from "node:module";
    const ahead = Date.parse(${JSON.stringify(now)}) - Date.now();
    const Real = Date;
    globalThis.Date = class extends Real {
      constructor(...given) { given.length === 0 ? super(Real.now() + ahead) : super(...given); }
      static now() { return Real.now() + ahead; }
    };
    const sorted = (entries) => {
      const name = (entry) => String(entry?.name ?? entry);
      const inOrder = [...entries].sort((a, b) => (name(a) < name(b) ? -1 : 1));
      return ${order === "reverse"} ? inOrder.reverse() : inOrder;
    };
    const { readdir } = fs.promises;
    fs.promises.readdir = async (...given) => sorted(await readdir(...given));
    const { readdirSync } = fs;
    fs.readdirSync = (...given) => sorted(readdirSync(...given));
    syncBuiltinESMExports();
  `;
}

let folder: string;
let sites: readonly ReadonlyMap<string, Buffer>[];

beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "plotreel-same-"));
  sites = await Promise.all(MACHINES.map(publishOn));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

async function publishOn(machine: Machine): Promise<ReadonlyMap<string, Buffer>> {
  const cwd = path.join(folder, machine.name);
  await mkdir(cwd, { recursive: true });
  await cp(GARDEN, path.join(cwd, "content"), { recursive: true });
  const time = new Date(machine.fileTime);
  for (const file of await readdir(path.join(cwd, "content"), { recursive: true }))
    await utimes(path.join(cwd, "content", file), time, time);
  await writeFile(path.join(cwd, "world.mjs"), world(machine));
  const child = spawn(
    process.execPath,
    ["--import", path.join(cwd, "world.mjs"), path.resolve("bin/plotreel.js"), "publish", "--today", "2026-07-18"],
    {
      cwd,
      env: { ...process.env, ...machine.env, PLOTREEL_CACHE: path.join(cwd, "cache") },
      stdio: ["ignore", "ignore", "pipe"],
    },
  );
  let err = "";
  child.stderr.setEncoding("utf8").on("data", (text: string) => {
    err += text;
  });
  const [exitCode] = await once(child, "close");
  expect(exitCode, err).toBe(0);
  const out = path.join(cwd, "out");
  return new Map(
    await Promise.all((await filesOf(out)).map(async (file) => [file, await readFile(path.join(out, file))] as const)),
  );
}

it("on two days, in two time zones, languages, folders and orders of files, to the byte", () => {
  const [first, second] = sites;
  expect([...(second?.keys() ?? [])]).toEqual([...(first?.keys() ?? [])]);
  const differing = [...(first ?? [])].filter(([file, bytes]) => second?.get(file)?.equals(bytes) !== true);
  expect(differing.map(([file]) => file)).toEqual([]);
  const kinds = new Set([...(first?.keys() ?? [])].map((file) => path.extname(file)));
  for (const kind of [
    ".html",
    ".css",
    ".js",
    ".json",
    ".xml",
    ".csv",
    ".jpg",
    ".webp",
    ".woff2",
    ".pf_index",
    ".pf_fragment",
  ])
    expect(kinds, kind).toContain(kind);
});

it("without the day of the machine, its folders or its language in any of them", () => {
  for (const [file, bytes] of sites[1] ?? []) {
    const text =
      bytes[0] === 0x1f && bytes[1] === 0x8b ? gunzipSync(bytes).toString("latin1") : bytes.toString("latin1");
    expect(/2031-0[12]|much deeper|tr[-_]TR/u.exec(text)?.[0], file).toBeUndefined();
  }
});
