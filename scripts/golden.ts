/**
 * `npm run golden -- keep` before a change, `npm run golden` after it: what every output says of the demo garden, the test
 * gardens and ten made-up ones, and a readable difference between the two. Nothing of it is checked in.
 */
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { mkdir, readdir, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import fc from "fast-check";
import { scene } from "./golden/any-garden.ts";
import { type GardenCase, outputsOf } from "./golden/outputs-of.ts";

const folder = path.resolve(".cache/golden");
/** Outputs must not differ between these; they are kept for the first, and for another only where they do. */
const [home = "", ...elsewhere] = ["Europe/London", "Pacific/Auckland", "America/Los_Angeles"];
const keep = process.argv[2] === "keep";
const to = path.join(folder, keep ? "kept" : "now");

await rm(to, { recursive: true, force: true });
const made = mkdtempSync(path.join(tmpdir(), "plotreel-golden-"));
try {
  for (const garden of await gardens()) {
    const first = await inZone(home, garden);
    await write(path.join(to, garden.name), first);
    for (const zone of elsewhere) {
      const others = [...(await inZone(zone, garden))].filter(([file, text]) => first.get(file) !== text);
      await write(path.join(to, garden.name, zone), new Map(others));
    }
  }
} finally {
  rmSync(made, { recursive: true, force: true });
}
if (keep) console.log(`Kept in ${to}.`);
else process.exitCode = showDifference();

async function gardens(): Promise<readonly GardenCase[]> {
  const tests = (await readdir("tests/gardens")).sort();
  const invented = fc.sample(scene, { numRuns: 10, seed: 12 });
  const cases: GardenCase[] = [
    { name: "demo-july", records: "demo-content", today: "2026-07-18", pages: true },
    { name: "demo-november", records: "demo-content", today: "2026-11-30", pages: false },
    ...tests.map((name) => ({ name, records: `tests/gardens/${name}`, today: "2026-07-18", pages: true })),
  ];
  for (const [index, { files, weather, today }] of invented.entries()) {
    const name = `made-${index + 1}`;
    await write(path.join(made, name), new Map(Object.entries({ ...files, "weather/made.csv": weather })));
    cases.push({ name, records: path.join(made, name), today, pages: true });
  }
  const only = keep ? undefined : process.argv[2];
  return only === undefined ? cases : cases.filter(({ name }) => name.startsWith(only));
}

async function inZone(zone: string, garden: GardenCase): Promise<ReadonlyMap<string, string>> {
  process.env.TZ = zone;
  return outputsOf(garden, path.join(folder, "work"), zone === home);
}

async function write(dir: string, files: ReadonlyMap<string, string>): Promise<void> {
  for (const [file, text] of files) {
    const target = path.join(dir, ...file.split("/"));
    await mkdir(path.dirname(target), { recursive: true });
    await writeFile(target, text);
  }
}

/** Git shows it: the files, then what stands in them. */
function showDifference(): number {
  const only = process.argv[2] ?? "";
  const compare = (...how: readonly string[]) =>
    spawnSync("git", ["diff", "--no-index", ...how, `kept/${only}`, `now/${only}`], {
      cwd: folder,
      encoding: "utf8",
      maxBuffer: 2 ** 30,
    }).stdout;
  const lines = compare("-U1").split("\n");
  if (lines.join("") === "") {
    console.log("No output differs.");
    return 0;
  }
  const shown = lines.filter((line) => !/^(?:index|---|\+\+\+) /u.test(line));
  console.log(shown.slice(0, 400).join("\n"));
  if (shown.length > 400) console.log(`... ${shown.length - 400} more lines: git diff --no-index ${folder}/kept ${to}`);
  console.log(compare("--stat=160"));
  return 1;
}
