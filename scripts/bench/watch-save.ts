/**
 * `plotreel watch` on a copy of a garden: from saving a note to having the new page, as an open page does it: it
 * hears of the newer garden and asks for itself again. Prints { first, saves: [{ noticed, read, page, all, … }] } as JSON,
 * in milliseconds. LINE is what is written, with {n} for a number that the page must show then; "-" where it does not.
 *
 *   node watch-save.ts CACHE SAVES RECORDS TODAY public|field PAGE LINE SHOWN
 */
import { cpSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { type Effects, realEffects } from "../../src/cli/effects.ts";
import { main } from "../../src/cli/main.ts";

const [cache = "", saves = "5", records = "", today = "", site = "public", asked = "", written = "", shown = "-"] =
  process.argv.slice(2);
process.env.PLOTREEL_CACHE = cache;
const work = mkdtempSync(path.join(tmpdir(), "plotreel-bench-watch-"));
cpSync(records, path.join(work, "content"), { recursive: true });

/** When the parts of the work begin, as the command's own effects see it. */
const marks = { noticed: 0, reading: 0, told: 0 };
const said: string[] = [];
const real = realEffects();
const ended = Promise.withResolvers<void>();
const effects: Effects = {
  ...real,
  cwd: work,
  terminal: false,
  out: (line) => void said.push(line),
  err: (line) => {
    if (line.startsWith("Shown again")) marks.told = performance.now();
  },
  openRecords: (dir) => {
    marks.reading = performance.now();
    return real.openRecords(dir);
  },
  watchFolder: (dir, changed) =>
    real.watchFolder(dir, (file) => {
      marks.noticed = performance.now();
      changed(file);
    }),
  // The same folder for every run, so that photos need not be measured again.
  cacheFor: () => cache,
  untilStopped: () => ended.promise,
};

const watching = main(["watch", "--today", today], effects);
while (said.length < 3) await pause(50);
const home =
  said
    .find((line) => line.startsWith(site === "public" ? "Public site" : "Your field"))
    ?.split(" ")
    .at(-1) ?? "";
const page = new URL(asked, home).href;
const follow = new URL("@newest", home).href;

const figures = [];
for (let save = 0; save <= Number(saves); save += 1) {
  const listening = new AbortController();
  const stream = await fetch(follow, { signal: listening.signal });
  const heard = stream.body?.pipeThrough(new TextDecoderStream()).getReader();
  const seen = (await heard?.read())?.value;
  await pause(300);
  const used = process.cpuUsage();
  const saved = performance.now();
  const number = `${save + 1}.${save + 1}`;
  writeFileSync(path.join(work, `content/notes/${today}-bench.md`), `- ${written.replace("{n}", number)}\n`);
  while ((await heard?.read())?.value === seen);
  const told = performance.now();
  const text = await (await fetch(page)).text();
  const here = performance.now();
  if (shown !== "-" && !text.includes(shown.replace("{n}", number)))
    throw new Error("The page does not show what was saved.");
  listening.abort();
  const { user, system } = process.cpuUsage(used);
  figures.push({
    noticed: marks.noticed - saved,
    waited: marks.reading - marks.noticed,
    read: told - marks.reading,
    page: here - told,
    all: here - saved,
    processor: (user + system) / 1000,
  });
}
ended.resolve();
await watching;
rmSync(work, { recursive: true, force: true });
// The first save finds nothing warmed up; the others are as on every other day.
console.log(JSON.stringify({ first: figures[0], saves: figures.slice(1) }));

function pause(ms: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, ms));
}
