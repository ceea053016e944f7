import { readFileSync } from "node:fs";
import path from "node:path";
import { globSync } from "tinyglobby";
import { describe, expect, it } from "vitest";

/** Rooms in the order of the flow; a room may import from rooms of a lower rank only. */
const RANK: Readonly<Record<string, number>> = {
  language: 0,
  store: 0,
  records: 1,
  photos: 1,
  timeline: 2,
  garden: 3,
  almanac: 3,
  films: 3,
  facts: 4,
  tour: 5,
  season: 5,
  wrap: 6,
  site: 7,
  past: 7,
  cli: 8,
};
/** Photos stand beside records and read them. Tour and season know nothing of one another; wrap reads the tour's brief. */
const BESIDE = new Set(["photos>records"]);
/** What happened is data here; sentences about it are made where they are shown. */
const NO_WORDS = ["timeline", "facts"];
const NO_DISK = ["language", "timeline", "garden", "almanac", "films", "facts", "tour", "wrap", "season"];

const src = path.resolve(import.meta.dirname, "../src");
const files = globSync("**/*.{ts,astro}", { cwd: src }).sort();

interface Import {
  readonly file: string;
  readonly room: string;
  readonly from: string;
}

const imports: readonly Import[] = files.flatMap((file) => {
  const text = readFileSync(path.join(src, file), "utf8");
  const found = [
    ...text.matchAll(/(?:^|\n)\s*(?:import|export)\b[^;'"]*?from\s*["']([^"']+)["']|import\(\s*["']([^"']+)["']\s*\)/g),
  ];
  return found.map((match) => ({ file, room: file.split("/")[0] as string, from: (match[1] ?? match[2]) as string }));
});

/** The room an import leads to, and the path inside it; undefined for packages and for the files before the rooms. */
function target({ file, from }: Import): { room: string; inside: string } | undefined {
  if (!from.startsWith(".")) return undefined;
  const to = path.posix.normalize(path.posix.join(path.posix.dirname(file), from));
  const [room = "", ...inside] = to.split("/");
  return inside.length === 0 || RANK[room] === undefined ? undefined : { room, inside: inside.join("/") };
}

describe("the rooms", () => {
  it("are looked at, all of them", () => {
    expect(files.length).toBeGreaterThan(100);
    expect(new Set(imports.map(({ room }) => room)).size).toBeGreaterThanOrEqual(10);
  });

  it("import from their left only", () => {
    const backward = imports.flatMap((found) => {
      const to = target(found);
      if (to === undefined || to.room === found.room || BESIDE.has(`${found.room}>${to.room}`)) return [];
      const [here, there] = [RANK[found.room] ?? 0, RANK[to.room] ?? 0];
      return there < here ? [] : [`${found.file} imports ${found.from}`];
    });
    expect(backward).toEqual([]);
  });

  it("import one another through their index", () => {
    const around = imports.flatMap((found) => {
      const to = target(found);
      return to === undefined || to.room === found.room || to.inside === "index.ts"
        ? []
        : [`${found.file} imports ${found.from}`];
    });
    expect(around).toEqual([]);
  });

  it("that never touch the disk import nothing of node", () => {
    expect(imports.filter(({ room, from }) => NO_DISK.includes(room) && from.startsWith("node:"))).toEqual([]);
  });

  it("that hold facts import no words", () => {
    const worded = imports.filter((found) => NO_WORDS.includes(found.room) && target(found)?.room === "language");
    expect(worded.map(({ file, from }) => `${file} imports ${from}`)).toEqual([]);
  });

  it("say in their index what they take, give and never do", () => {
    for (const room of Object.keys(RANK).filter((name) => name !== "cli" && files.includes(`${name}/index.ts`))) {
      const [takes, gives, never] = readFileSync(path.join(src, room, "index.ts"), "utf8").split("\n");
      expect(
        [takes, gives, never].map((line) => line?.match(/^\/\/ (Takes|Gives|Never)/)?.[1]),
        room,
      ).toEqual(["Takes", "Gives", "Never"]);
    }
  });
});
