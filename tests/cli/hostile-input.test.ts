/** Files that once ended every command, or kept it for minutes. None may; what is wrong is said. */
import { execFileSync } from "node:child_process";
import { mkdirSync, rmSync, symlinkSync, utimesSync, writeFileSync } from "node:fs";
import path from "node:path";
import { beforeEach, expect, test } from "vitest";
import { openRecordsFolder, readRecords } from "../../src/records/index.ts";
import { refuseWhilePublishing } from "../../src/site/publish-lock.ts";
import { openCaptions } from "../../src/wrap/index.ts";
import { recordsOf } from "../records/records-of.ts";
import { emptyFolder, run } from "./run.ts";

let cwd: string;
beforeEach(() => {
  cwd = emptyFolder();
  write("content/notes/2026-05-16.md", "- planted 3 Black Beauty courgette in Long Bed\n");
});

function write(file: string, text: string): void {
  mkdirSync(path.dirname(path.join(cwd, file)), { recursive: true });
  writeFileSync(path.join(cwd, file), text);
}

/** Milliseconds; a slow machine needs a tenth of it. */
const AT_ONCE = 2000;

async function timed<T>(work: () => T | Promise<T>): Promise<T> {
  const began = performance.now();
  const done = await work();
  expect(performance.now() - began).toBeLessThan(AT_ONCE);
  return done;
}

test.each([
  ["question marks", "? ".repeat(30)],
  ["brackets", "{".repeat(24)],
  ["many question marks", "? ".repeat(400)],
  ["brackets that are closed", `${"{".repeat(30)}a${"}".repeat(30)}: 1`],
  ["lists as keys", "? - ".repeat(30)],
])("75 bytes of front matter: %s", async (_, yaml) => {
  const { notes, problems } = await timed(() => recordsOf({ "notes/2026-05-18.md": `---\n${yaml}\n---\nStory.\n` }));
  expect(problems.map(({ severity }) => severity)).toContain("error");
  expect(notes.map((note) => note.private)).toEqual([true]);
});

test("one stray quotation mark in a weather file costs no other line", async () => {
  write("content/weather/2026.csv", 'date,max,min,rain\n2026-05-02,"13,3,0\n2026-05-03,15.5,4,1\n2026-05-04,16,5,0\n');
  const { exitCode, out } = await run(["check"], { cwd });
  expect([exitCode, out.includes("1 log line in 1 note")]).toEqual([0, true]);
});

test.runIf(process.platform === "linux")("a pipe behind a link keeps nobody waiting", async () => {
  execFileSync("mkfifo", [path.join(cwd, "pipe")]);
  execFileSync("mkfifo", [path.join(cwd, "content/.pipe")]);
  symlinkSync(".pipe", path.join(cwd, "content/garden.md"));
  symlinkSync("../.pipe", path.join(cwd, "content/notes/2026-05-17.md"));
  const { exitCode, out } = await run(["check"], { cwd });
  expect(exitCode).toBe(1);
  expect(out).toContain("This link leads to something that is neither a file nor a folder");
});

test.runIf(process.platform === "linux")("a pipe in the place of a file keeps nobody waiting", async () => {
  execFileSync("mkfifo", [path.join(cwd, "content/glossary.txt")]);
  const { exitCode, err } = await timed(() => run(["timeline"], { cwd }));
  expect([exitCode, err]).toEqual([
    3,
    `Could not use ${path.join(cwd, "content/glossary.txt")}: it is neither a file nor a folder (ENOTFILE). Nothing in your records was left half changed.`,
  ]);
});

test.runIf(process.platform === "linux")(
  "a note that becomes a pipe once it was found keeps nobody waiting",
  async () => {
    const folder = await openRecordsFolder(path.join(cwd, "content"));
    rmSync(path.join(cwd, "content/notes/2026-05-16.md"));
    execFileSync("mkfifo", [path.join(cwd, "content/notes/2026-05-16.md")]);
    const { problems } = await timed(() => readRecords(folder, { today: "2026-07-18" }));
    expect(problems.map(({ what }) => what)).toContain("This cannot be read: it is neither a file nor a folder.");
  },
);

test("whoever reads only the first lines ends no command with an error", () => {
  write("content/notes/2026-05-17.md", "- planted 3 Blck Beauty courgette in Lnog Bed\n".repeat(3000));
  const command = `"${process.execPath}" "${path.resolve("bin/plotreel.js")}" check --records content | head -1`;
  const said = execFileSync("sh", ["-c", `${command} 2>&1`], {
    cwd,
    encoding: "utf8",
    stdio: ["ignore", "pipe", "pipe"],
  });
  expect(said.split("\n")).toHaveLength(2);
  const err = execFileSync("sh", ["-c", `(${command}) 2>&1 >/dev/null`], { cwd, encoding: "utf8" });
  expect(err).toBe("");
});

test("a lock whose time is still to come holds up nobody when nobody is at work", async () => {
  write("out/.publishing", '{"pid":1,"host":"other","token":"x"}');
  const later = new Date(Date.now() + 400 * 86_400_000);
  utimesSync(path.join(cwd, "out/.publishing"), later, later);
  await refuseWhilePublishing(path.join(cwd, "out"));
  // One that gives signs of life is another machine's, whose clock is wrong.
  const signs = setInterval(() => {
    const sign = new Date(later.getTime() + Math.random() * 1e6);
    utimesSync(path.join(cwd, "out/.publishing"), sign, sign);
  }, 500);
  await expect(refuseWhilePublishing(path.join(cwd, "out"))).rejects.toThrow(
    `delete ${path.join(cwd, "out/.publishing")}`,
  );
  clearInterval(signs);
}, 40_000);

const blanks = " ".repeat(50_000);
test.each([
  ["pins", "garden.md", `pins: ["a${blanks}b in c"]`],
  ["pins with words", "garden.md", `pins: ["${"a in ".repeat(10_000)}"]`],
  ["a bed's size", "beds/a.md", `size: "4${blanks}y"`],
  ["a length of time", "episodes/a/index.md", `date: 2026-05-16\ntarget: "1${blanks}y"`],
])("a long run of blanks in %s", async (_, file, front) => {
  await timed(() => recordsOf({ [file]: `---\n${front}\n---\n` }));
});

test("timed text with a long run of blanks", async () => {
  const bytes = new TextEncoder().encode(`0:00)${"\t".repeat(20_000)}(\u2028\n0:05 hello\n`);
  const { cues } = await timed(() => openCaptions("a.txt", bytes));
  expect(cues.length).toBeGreaterThan(0);
});
