import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { globSync } from "tinyglobby";
import { expect, it } from "vitest";

const bin = path.resolve("bin/plotreel.js");
/** Shared, because measuring the demo's photos takes most of a first run and knows of no zone; what was parsed is not kept. */
const cache = mkdtempSync(path.join(tmpdir(), "plotreel-tz-cache-"));

/** What a command prints, and what it writes beside that, when the machine stands in another time zone and speaks another language. */
function printed(argv: readonly string[], written: string | undefined, TZ: string, LANG: string): string {
  const cwd = mkdtempSync(path.join(tmpdir(), "plotreel-tz-"));
  for (const store of globSync("**/{parsed-files,note-readings}.json", { cwd: cache, absolute: true })) rmSync(store);
  const out = execFileSync(
    process.execPath,
    [bin, ...argv, "--records", path.resolve("demo-content"), "--today", "2026-07-18"],
    {
      cwd,
      encoding: "utf8",
      env: { ...process.env, TZ, LANG, LC_ALL: LANG, PLOTREEL_CACHE: cache },
      stdio: ["ignore", "pipe", "ignore"],
    },
  );
  return written === undefined ? out : out + readFileSync(path.join(cwd, written), "utf8");
}

// A brief measures photos before it is made, which takes its time on a busy machine.
it.each([
  [["check", "--json"], undefined],
  [["timeline", "--json"], undefined],
  [["brief", "2026-07-tour"], "out/briefs/2026-07-tour.json"],
])("%j is the same in any time zone and language", { timeout: 240_000 }, (argv, written) => {
  // A day ahead of each other for half of every day, and one of them by half an hour more.
  const east = printed(argv, written, "Pacific/Kiritimati", "de_DE.UTF-8");
  expect(east.length).toBeGreaterThan(200);
  expect(printed(argv, written, "America/St_Johns", "ar_EG.UTF-8")).toBe(east);
});
