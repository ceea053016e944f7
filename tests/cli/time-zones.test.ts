import { execFileSync } from "node:child_process";
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { expect, it } from "vitest";

const bin = path.resolve("bin/plotreel.js");

/** What a command prints when the machine stands in another time zone and speaks another language. */
function printed(argv: readonly string[], TZ: string, LANG: string): string {
  const cwd = mkdtempSync(path.join(tmpdir(), "plotreel-tz-"));
  return execFileSync(
    process.execPath,
    [bin, ...argv, "--records", path.resolve("demo-content"), "--today", "2026-07-18"],
    {
      cwd,
      encoding: "utf8",
      env: { ...process.env, TZ, LANG, LC_ALL: LANG, PLOTREEL_CACHE: path.join(cwd, "cache") },
      stdio: ["ignore", "pipe", "ignore"],
    },
  );
}

it.each([
  [["check", "--json"]],
  [["timeline", "--json"]],
  [["brief", "2026-07-tour", "--json"]],
  [["brief", "2026-07-tour"]],
])("%j is the same in any time zone and language", (argv) => {
  const here = printed(argv, "UTC", "C");
  expect(here.length).toBeGreaterThan(200);
  expect(printed(argv, "Pacific/Kiritimati", "de_DE.UTF-8")).toBe(here);
  expect(printed(argv, "America/St_Johns", "ar_EG.UTF-8")).toBe(here);
});
