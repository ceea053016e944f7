/** The same records with the same today give the same bytes, whatever the clock of the machine says and wherever it stands. */
import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterEach, expect, it, vi } from "vitest";
import { buildSites } from "../../src/site/index.ts";
import { filesOf, photoCopies, readGarden, today } from "./built-site.ts";

const zone = process.env.TZ;
let folder: string | undefined;
afterEach(async () => {
  vi.useRealTimers();
  if (zone === undefined) delete process.env.TZ;
  else process.env.TZ = zone;
  if (folder !== undefined) await rm(folder, { recursive: true, force: true });
});

it("two builds on different days, in different time zones and folders, are the same", async () => {
  folder = await mkdtemp(path.join(tmpdir(), "plotreel-same-"));
  const builds: ReadonlyMap<string, string>[] = [];
  for (const [name, now, timeZone] of [
    ["first", "2026-07-18T10:00:00Z", "Pacific/Auckland"],
    ["second/deeper", "2031-02-01T23:30:00Z", "America/Los_Angeles"],
  ] as const) {
    process.env.TZ = timeZone;
    vi.useFakeTimers({ toFake: ["Date"], now: new Date(now) });
    const outDir = path.join(folder, name, "out");
    const cacheDir = path.join(folder, name, "cache");
    for (const records of ["smallest", "two-beds"]) {
      const recordsDir = path.resolve("tests/gardens", records);
      const garden = await readGarden(recordsDir);
      const photos = await photoCopies(garden, recordsDir, cacheDir);
      await buildSites(garden, { outDir: path.join(outDir, records), cacheDir, today, photos, briefs: [] });
    }
    const files = await filesOf(outDir);
    builds.push(
      new Map(
        await Promise.all(
          files.map(async (file) => [file, await readFile(path.join(outDir, file), "latin1")] as const),
        ),
      ),
    );
  }
  const [first, second] = builds;
  expect([...(second?.keys() ?? [])]).toEqual([...(first?.keys() ?? [])]);
  const differing = [...(first ?? [])].filter(([file, bytes]) => second?.get(file) !== bytes).map(([file]) => file);
  expect(differing).toEqual([]);
  expect(first?.size).toBeGreaterThan(20);
});
