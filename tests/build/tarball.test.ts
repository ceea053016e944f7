/**
 * The tool as it is shipped: packed, put into an empty folder with the packages it asks for, and run there on a garden beside
 * it, by the Node that runs the tests and, where NODE_22 names one, by the oldest line of Node it is for.
 */
import { spawnSync } from "node:child_process";
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Installed, installInto, packInto, type Tarball } from "../../scripts/build/check-tarball.ts";
import { gardenFiles, vtt } from "../wrap/small-film.ts";

const NODES = [process.execPath, ...(process.env.NODE_22 === undefined ? [] : [process.env.NODE_22])];
const MEGABYTE = 1_000_000;

let folder: string;
let tarball: Tarball;
let installed: Installed;

beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "plotreel-tarball-"));
  tarball = await packInto(folder);
  installed = await installInto(path.join(folder, "empty"), tarball);
});
afterAll(() => rm(folder, { recursive: true, force: true }));

describe("what is shipped", () => {
  it("is small, and is the built program and what is read about it", () => {
    console.info(`Tarball: ${(tarball.bytes / MEGABYTE).toFixed(1)} MB in ${tarball.files.length} files`);
    expect(tarball.bytes).toBeLessThan(3 * MEGABYTE);
    const places = new Set(tarball.files.map((file) => file.split("/").slice(0, -1)[0] ?? file));
    expect([...places].sort()).toEqual(["CHANGELOG.md", "LICENSE", "README.md", "bin", "dist", "package.json"]);
    expect(tarball.files).toContain("dist/licences.txt");
  });

  it("asks for few packages, and for none that compiles or builds", () => {
    const { packages, bytes } = installed;
    console.info(`Installed: ${packages.length} packages, ${Math.round(bytes / MEGABYTE)} MB`);
    expect(packages.length).toBeLessThanOrEqual(80);
    expect(bytes).toBeLessThan(120 * MEGABYTE);
    const building =
      /^(?:astro|vite|rollup|rolldown|esbuild|typescript|unified|remark|rehype)|^@(?:astrojs|esbuild|rollup)/u;
    expect(packages.filter((name) => building.test(name))).toEqual([]);
  });

  it("tells no folder of the machine it was built on", () => {
    const root = path.join(path.dirname(installed.program), "..");
    const telling = tarball.files.filter((file) => readFileSync(path.join(root, file)).includes(process.cwd()));
    expect(telling).toEqual([]);
  });
});

describe.each(NODES)("installed, run by %s", (node) => {
  let cwd: string;

  beforeAll(() => {
    cwd = path.join(folder, `beside-${NODES.indexOf(node)}`);
    for (const [file, text] of Object.entries({
      ...gardenFiles,
      "episodes/june/captions.vtt": Buffer.from(vtt(["The long bed.", "I'll show you the leeks again in July."])),
    })) {
      mkdirSync(path.join(cwd, path.dirname(file)), { recursive: true });
      writeFileSync(path.join(cwd, file), text);
    }
  });

  /** In the garden's own folder, so that no command has to be told where the records are. */
  function plotreel(...argv: readonly string[]): string {
    const { status, stdout, stderr } = spawnSync(node, [installed.program, ...argv, "--today", "2026-07-18"], {
      cwd,
      encoding: "utf8",
      env: { ...process.env, PLOTREEL_CACHE: path.join(cwd, ".cache"), NODE_OPTIONS: "" },
    });
    expect({ argv, status, stderr: status === 0 ? "" : stderr }).toEqual({ argv, status: 0, stderr: "" });
    return stdout;
  }

  it("writes a note to fill in, and reads it", () => {
    const file = plotreel("new", "note", "long bed").trim();
    writeFileSync(file, `${readFileSync(file, "utf8")}\n- sowed 20 radish in Long Bed\n`);
    expect(plotreel("check", "--reading")).toContain("sowed 20 radish in Long Bed");
  });

  it("makes a brief, and its list for the phone", () => {
    expect(plotreel("brief", "2026-07-18")).toMatch(/^# /u);
    expect(readFileSync(path.join(cwd, "out/briefs/2026-07-18-field-list.html"), "utf8")).toContain("<script");
  });

  it("publishes below the path it is given, with lettering and search", () => {
    plotreel("publish", "--base", "/plot/");
    const home = readFileSync(path.join(cwd, "out/public/index.html"), "utf8");
    const [, sheet = ""] = /<link rel="stylesheet" href="\/plot\/([^"]+)"/u.exec(home) ?? [];
    expect(readFileSync(path.join(cwd, "out/public", sheet), "utf8")).toContain("url(/plot/_astro/alegreya-sans");
    expect(home).not.toContain("put-in-when-written");
    expect(readFileSync(path.join(cwd, "out/public/pagefind/pagefind.js"), "utf8").length).toBeGreaterThan(1000);
  });

  it("wraps a film up", () => {
    expect(plotreel("wrap", "june")).toContain("show the leeks again in July");
  });
});
