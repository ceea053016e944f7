/** The commands end to end on a small garden: the brief brings the list as a file, publishing brings it as a page. */
import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { expect, test } from "vitest";
import { folderWith, run } from "../cli/run.ts";
import { recordsOf } from "../records/records-of.ts";

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

const manual = readFileSync("docs/filming-day.md", "utf8");

test("the commands on the page about filming day are ones there are", async () => {
  const commands = Array.from(manual.matchAll(/npx plotreel ([^\n`]+)/g), ([, words]) => words ?? "");
  expect(commands).toContain("brief 2026-07-tour --pdf");
  for (const words of commands) {
    const argv = Array.from(words.matchAll(/"([^"]*)"|(\S+)/g), ([, quoted, plain]) => quoted ?? plain ?? "");
    expect(await run([...argv, "--help"]), words).toMatchObject({ exitCode: 0 });
  }
});

test("the file of ticks on that page is read as it stands", async () => {
  const { problems, episodes } = await recordsOf({
    "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
    "episodes/2026-07-tour/index.md": "---\ntitle: July tour\ndate: 2026-07-18\n---\n",
    "episodes/2026-07-tour/field-list.json": /```json\n([\s\S]*?)```/.exec(manual)?.[1] ?? "",
  });
  expect(problems).toEqual([]);
  expect(episodes.get("2026-07-tour")?.filming?.stops[0]?.ticks).toHaveLength(2);
});
