/** The commands end to end on a small garden: the brief brings the list as a file, publishing brings it as a page. */
import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { expect, test } from "vitest";
import { folderWith, run } from "../cli/run.ts";

test("plotreel brief writes the list beside the brief, and says where", async () => {
  const { exitCode, err, cwd } = await run(["brief", "july-tour"], { cwd: folderWith("two-walls") });
  expect(exitCode).toBe(0);
  const file = path.join(cwd, "out/briefs/july-tour-field-list.html");
  expect(err).toContain(`Field list for the phone: ${file}`);
  const page = readFileSync(file, "utf8");
  expect(page).toContain("<title>Private · Field list · ");
  expect(page).not.toContain("worker-src");
});

test("plotreel publish puts the lists of planned episodes among the private pages, and nowhere else", async () => {
  const { exitCode, cwd } = await run(["publish"], { cwd: folderWith("two-walls") });
  expect(exitCode).toBe(0);
  const out = (file: string) => path.join(cwd, "out", file);
  expect(existsSync(out("private/field-lists/july-tour.html"))).toBe(true);
  expect(existsSync(out("private/field-lists/july-tour-file.html"))).toBe(true);
  expect(existsSync(out("private/service-worker.js"))).toBe(true);
  expect(existsSync(out("public/field-lists"))).toBe(false);
  expect(existsSync(out("public/service-worker.js"))).toBe(false);
});
