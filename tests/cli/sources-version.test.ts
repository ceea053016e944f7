/** What a run keeps of its reading is another run's only while nothing of the tool has changed. */
import { mkdirSync, mkdtempSync, utimesSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { expect, it } from "vitest";
import { realEffects } from "../../src/cli/effects.ts";
import { sourcesVersion } from "../../src/store/index.ts";

it("changes with any file, wherever it lies, and with the packages beside", () => {
  const folder = mkdtempSync(path.join(tmpdir(), "plotreel-version-"));
  mkdirSync(path.join(folder, "src/records"), { recursive: true });
  const [calendar, reader, packages] = ["src/calendar.ts", "src/records/read.ts", "packages.json"].map((file) =>
    path.join(folder, file),
  ) as [string, string, string];
  for (const file of [calendar, reader, packages]) writeFileSync(file, "a");
  const version = () => sourcesVersion(path.join(folder, "src"), [packages, path.join(folder, "none.json")]);
  const seen = [version()];
  expect(version()).toBe(seen[0]);
  writeFileSync(calendar, "ab");
  seen.push(version());
  utimesSync(reader, 1, 1);
  seen.push(version());
  writeFileSync(packages, "ab");
  seen.push(version());
  writeFileSync(path.join(folder, "src/new.ts"), "");
  seen.push(version());
  expect(new Set(seen).size).toBe(5);
});

it("is of all the tool's sources", () => {
  const src = path.resolve("src");
  expect(realEffects().readerVersion()).toBe(sourcesVersion(src, [path.resolve("node_modules/.package-lock.json")]));
});
