/** A garden begun in an empty folder: by flags, by answers, and not where something of a person's stands. */
import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import path from "node:path";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import type { Key } from "../../src/cli/ask.ts";
import type { Effects } from "../../src/cli/effects.ts";
import { firstFiles } from "../../src/cli/start/first-files.ts";
import { islandTowns } from "../../src/cli/start/island-towns.ts";
import { openerFile } from "../../src/cli/start/opener.ts";
import { readPlace } from "../../src/cli/start/place.ts";
import { readTowns, timeZonesOf, townsCalled } from "../../src/cli/start/towns.ts";
import { emptyFolder, run } from "./run.ts";

const today = "2026-06-20";
const flags = ["start", "--name", "Quarry Lane", "--place", "Bangor, UK", "--units", "metric"];
const towns = [...readTowns(readFileSync("src/cli/start/towns.tsv", "utf8")), ...islandTowns()];

/** Answers in order, and a browser that notes what it is shown. */
function person(answers: readonly (string | undefined)[]) {
  const left = [...answers];
  const asked: string[] = [];
  const shown: string[] = [];
  const answer = async (question: string) => {
    asked.push(question);
    if (left.length === 0) throw new Error(`Nobody answers: ${question}`);
    return left.shift();
  };
  const effects: Partial<Effects> = {
    canAsk: true,
    timeZone: () => "Europe/London",
    askLine: answer,
    askKey: (question: string, keys: readonly Key[]) =>
      answer(`${question} ${keys.map(({ key, means }) => `${key} ${means}`).join("; ")}`),
    openInBrowser: async (url) => void shown.push(url),
  };
  return { effects, asked, shown, left };
}

function filesIn(dir: string): string[] {
  return readdirSync(dir, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(dir, path.join(entry.parentPath, entry.name)))
    .sort();
}

describe("start with flags", () => {
  it("writes a small garden in which there is nothing to mend", async () => {
    const { cwd, exitCode, out } = await run(flags, { today });
    expect(exitCode).toBe(0);
    expect(filesIn(cwd)).toEqual([
      ".gitignore",
      "README.txt",
      "garden.md",
      "notes/2026-06-20-first-note.md",
      openerFile({ platform: process.platform, node: "", program: "" }).file,
    ]);
    expect(readFileSync(path.join(cwd, "garden.md"), "utf8").split("\n").slice(0, 7)).toEqual([
      "---",
      "plotreel: 1",
      'name: "Quarry Lane"',
      "place: { latitude: 54.65, longitude: -5.67 }   # never published; for sun, light and seasons",
      "time zone: Europe/London",
      "units: metric",
      "language: en-GB",
    ]);
    expect(out).toContain("plotreel check --reading");
    const checked = await run(["check", "--reading"], { cwd, today });
    expect(checked).toMatchObject({ exitCode: 0, err: "" });
    expect(checked.out).toContain("– story");
    expect(checked.out).not.toContain("sowed");
  });

  it("tells where the garden is to nobody but garden.md", async () => {
    const { cwd } = await run(flags, { today });
    await run(["publish"], { cwd, today });
    const pages = filesIn(path.join(cwd, "out/public")).map((file) =>
      readFileSync(path.join(cwd, "out/public", file), "latin1"),
    );
    expect(pages.length).toBeGreaterThan(5);
    expect(pages.filter((page) => /54\.65|-5\.67|Bangor/.test(page))).toEqual([]);
  });

  it("says which are missing when nobody can be asked, and writes nothing", async () => {
    const { cwd, exitCode, err } = await run(["start", "--units", "us"]);
    expect(exitCode).toBe(2);
    expect(err).toContain("--name");
    expect(err).toContain("--place");
    expect(err).not.toContain("--units metric");
    expect(filesIn(cwd)).toEqual([]);
  });

  it("makes the folder that is named, and reads another place, units and zone", async () => {
    const { cwd } = await run(
      [
        "start",
        "--records",
        "my plot",
        "--name",
        'The "Dell": a plot',
        "--place",
        "-41.2, 174.7",
        "--units",
        "us",
      ].concat(["--time-zone", "Pacific/Auckland"]),
      { today },
    );
    const garden = readFileSync(path.join(cwd, "my plot/garden.md"), "utf8");
    expect(garden).toContain('name: "The \\"Dell\\": a plot"\n');
    expect(garden).toContain("{ latitude: -41.2, longitude: 174.7 }");
    expect(garden).toContain("time zone: Pacific/Auckland\nunits: us\nlanguage: en-NZ\n");
    const { out, exitCode } = await run(["check", "--records", "my plot"], { cwd, today });
    expect({ out, exitCode }).toEqual({ out: expect.not.stringContaining("garden.md"), exitCode: 0 });
  });

  it.each([
    [["--place", "Springfield"], 'Say which: --place "Springfield, MO, United States"'],
    [["--place", "Edinbrugh"], 'Did you mean "Edinburgh"?'],
    [["--place", "95, 10"], "is no place on Earth"],
    [["--place", "Boise"], "several time zones"],
    [["--time-zone", "Somewhere"], "is not a time zone"],
    [["--photos", "no-such-folder"], "There is no folder at no-such-folder"],
  ])("refuses %s in words, and writes nothing", async (more, words) => {
    const { cwd, exitCode, err } = await run([...flags, ...more], { today, effects: { timeZone: () => "UTC" } });
    expect({ exitCode, err }).toEqual({ exitCode: 2, err: expect.stringContaining(words) });
    expect(filesIn(cwd)).toEqual([]);
  });

  it("brings photos in", async () => {
    const cwd = emptyFolder();
    mkdirSync(path.join(cwd, "card"));
    const picture = sharp({ create: { width: 64, height: 48, channels: 3, background: { r: 60, g: 120, b: 40 } } });
    await picture.jpeg().toFile(path.join(cwd, "card/IMG_20260614_101500.jpg"));
    const { out } = await run([...flags, "--records", "garden", "--photos", "card"], { cwd, today });
    expect(out).toContain("1 photo brought in.");
    expect(filesIn(path.join(cwd, "garden/photos"))).toEqual(["2026-06-14/IMG_20260614_101500.jpg", "brought-in.txt"]);
    expect(existsSync(path.join(cwd, "card/IMG_20260614_101500.jpg"))).toBe(true);
  });
});

describe("a folder that is taken", () => {
  it.each([
    [{ "garden.md": "---\nname: Mine\n---\n" }, "is a garden already"],
    [{ "letter.txt": "Dear neighbour" }, "holds other files (letter.txt)"],
    [{ "package.json": "{}", "a/b.md": "" }, "wants a folder of its own"],
  ])("stays as it is: %j", async (files, words) => {
    const cwd = emptyFolder();
    for (const [file, text] of Object.entries(files)) {
      mkdirSync(path.dirname(path.join(cwd, file)), { recursive: true });
      writeFileSync(path.join(cwd, file), text as string);
    }
    const { exitCode, err } = await run(flags, { cwd, today });
    expect({ exitCode, err }).toEqual({ exitCode: 3, err: expect.stringContaining(words) });
    expect(filesIn(cwd)).toEqual(Object.keys(files).sort());
  });

  it("is not one with what a system or version control put there", async () => {
    const cwd = emptyFolder();
    mkdirSync(path.join(cwd, ".git"));
    writeFileSync(path.join(cwd, "desktop.ini"), "");
    expect((await run(flags, { cwd, today })).exitCode).toBe(0);
  });
});

describe("a start that was broken off", () => {
  it("is begun again over what it left, and over nothing else", async () => {
    const whole = emptyFolder();
    expect((await run(flags, { cwd: whole, today })).exitCode).toBe(0);
    const left = filesIn(whole).filter((file) => file !== "garden.md");
    for (const count of left.keys()) {
      const cwd = emptyFolder();
      for (const file of left.slice(0, count + 1)) {
        mkdirSync(path.dirname(path.join(cwd, file)), { recursive: true });
        writeFileSync(path.join(cwd, file), readFileSync(path.join(whole, file)));
      }
      expect((await run(flags, { cwd, today })).exitCode).toBe(0);
      expect(filesIn(cwd)).toEqual(filesIn(whole));
      for (const file of filesIn(whole))
        expect(statSync(path.join(cwd, file)).mode).toBe(statSync(path.join(whole, file)).mode);
    }
  });

  it.each([
    ["README.txt", "Dear neighbour"],
    ["notes/2026-06-01.md", "- planted 3 leeks\n"],
  ])("is none where %s is a person's own", async (file, text) => {
    const cwd = emptyFolder();
    mkdirSync(path.dirname(path.join(cwd, file)), { recursive: true });
    writeFileSync(path.join(cwd, file), text);
    expect(await run(flags, { cwd, today })).toMatchObject({
      exitCode: 3,
      err: expect.stringContaining("other files"),
    });
    expect(filesIn(cwd)).toEqual([file]);
  });
});

describe("start with a person at the terminal", () => {
  it("asks four questions and opens the garden", async () => {
    const { effects, asked, shown } = person(["Quarry Lane", "54.3, -5.6", "m", ""]);
    const { cwd, exitCode } = await run(["start"], { today, effects });
    expect(exitCode).toBe(0);
    expect(asked.length).toBe(4);
    expect(readFileSync(path.join(cwd, "garden.md"), "utf8")).toContain("time zone: Europe/London");
    expect(shown).toEqual([expect.stringMatching(/^http:\/\/(?:localhost|127\.0\.0\.1):\d+\//)]);
  });

  it("asks again what it cannot use, which town, and which time zone", async () => {
    const { effects, asked, shown, left } = person([
      "",
      "Springfeld",
      "Springfield",
      "n",
      "Boise",
      "Middle of it",
      "boise",
      "u",
      "'gone'",
      "none",
    ]);
    const { cwd } = await run(["start", "--no-open"], { today, effects: { ...effects, timeZone: () => "UTC" } });
    expect(left).toEqual([]);
    expect(asked[3]).toContain("b Springfield, MA, United States (154,000 people, at 42.1, -72.59)");
    expect(readFileSync(path.join(cwd, "garden.md"), "utf8")).toContain(
      'name: "My garden"\nplace: { latitude: 43.61, longitude: -116.2 }   # never published; for sun, light and seasons\ntime zone: America/Boise\nunits: us\nlanguage: en-US\n',
    );
    expect(shown).toEqual([]);
  });

  it("writes nothing when the person stops", async () => {
    const { effects } = person(["Quarry Lane", undefined]);
    const { cwd, exitCode, err } = await run(["start"], { today, effects });
    expect({ exitCode, err }).toEqual({ exitCode: 3, err: "Stopped. Nothing was written." });
    expect(filesIn(cwd)).toEqual([]);
  });
});

describe("towns", () => {
  it("are many, each at its place", () => {
    expect(towns.length).toBeGreaterThan(15_000);
    for (const { name, country, latitude, longitude } of towns)
      expect([name !== "", /^[A-Z]{2}$/.test(country), Math.abs(latitude) <= 90, Math.abs(longitude) <= 180]).toEqual([
        true,
        true,
        true,
        true,
      ]);
    // From any atlas: to a tenth of a degree.
    for (const [name, latitude, longitude] of [
      ["Edinburgh, Scotland", 55.95, -3.19],
      ["Christchurch, New Zealand", -43.53, 172.64],
      ["Portland, ME", 43.66, -70.26],
      ["Malmö", 55.6, 13],
    ] as const) {
      const [town] = townsCalled(name, towns);
      expect(Math.abs((town?.latitude ?? 0) - latitude), name).toBeLessThan(0.1);
      expect(Math.abs((town?.longitude ?? 0) - longitude), name).toBeLessThan(0.1);
    }
  });

  it.each([
    ["bangor, northern ireland", ["GB"]],
    ["BANGOR, usa", ["US"]],
    ["coruna, es", []],
    ["a coruna", ["ES"]],
    ["newcastle upon tyne", ["GB"]],
  ])("%s", (written, countries) => {
    expect(townsCalled(written, towns).map(({ country }) => country)).toEqual(countries);
  });

  it.each([
    ["54.3, -5.6", { latitude: 54.3, longitude: -5.6 }],
    ["54.3 N 5.6 W", { latitude: 54.3, longitude: -5.6 }],
    ["41.2° south, 174.7° east", { latitude: -41.2, longitude: 174.7 }],
    ["", undefined],
    ["Skip", undefined],
  ])("%j is a place without them", (written, position) => {
    expect(readPlace(written, [])).toEqual({ place: position === undefined ? {} : { position, zones: [] } });
  });

  it("have the time zones of their country", () => {
    expect(timeZonesOf("GB")).toEqual(["Europe/London"]);
    expect(timeZonesOf("US").length).toBeGreaterThan(6);
  });
});

describe("the file that opens the garden", () => {
  const odd = { node: "/opt/it's node/bin/node", program: "/opt/a $b/plotreel.js" };

  it("is one for each system", () => {
    const files = (["linux", "darwin", "win32"] as const).map((platform) => openerFile({ platform, ...odd }));
    expect(files.map(({ file }) => file)).toEqual(["open-garden.sh", "open-garden.command", "open-garden.cmd"]);
    expect(files[2]?.text).toContain('cd /d "%~dp0"\r\n');
    const garden = { name: "G", place: {}, timeZone: "UTC", units: "metric", language: "en-GB" } as const;
    const readme = firstFiles(garden, today, { platform: "win32", ...odd }).find(({ file }) => file === "README.txt");
    expect(readme?.text).toContain("open-garden.cmd");
  });

  it.skipIf(process.platform === "win32")("runs the garden it lies in, by name or where the program was", async () => {
    const cwd = emptyFolder();
    const { exitCode } = await run([...flags, "--records", "my plot"], { cwd, today });
    expect(exitCode).toBe(0);
    const written = path.join(cwd, "my plot", openerFile({ platform: process.platform, ...odd }).file);
    expect(statSync(written).mode & 0o111).toBe(0o111);
    const fake = (file: string) => {
      mkdirSync(path.dirname(file), { recursive: true });
      writeFileSync(file, '#!/bin/sh\necho "$(basename "$0") $(basename "$PWD") $*"\n', { mode: 0o755 });
    };
    const node = path.join(cwd, "it's node/node");
    fake(node);
    const opens = path.join(cwd, "my plot/opens.sh");
    writeFileSync(opens, openerFile({ platform: "linux", node, program: "/a $b/plotreel.js" }).text, { mode: 0o755 });
    const inPath = (folder: string) =>
      spawnSync(opens, { cwd: "/", encoding: "utf8", env: { PATH: `${folder}:/usr/bin:/bin` } }).stdout.trim();
    expect(inPath("/nowhere")).toBe("node my plot /a $b/plotreel.js watch --open");
    fake(path.join(cwd, "bin/plotreel"));
    expect(inPath(path.join(cwd, "bin"))).toBe("plotreel my plot watch --open");
  });
});

describe("a place far from large towns", () => {
  const place = (written: string) => {
    const read = readPlace(written, towns);
    return "place" in read ? read.place : read;
  };

  it.each([
    ["Kirkwall, Scotland", "GB", undefined],
    ["58.98, -2.96", "GB", "Europe/London"],
    ["Dubbo", "AU", "Australia/Sydney"],
    ["-32.24, 148.6", "AU", "Australia/Sydney"],
    ["-31.95, 115.86", "AU", "Australia/Perth"],
    ["-16.92, 145.77", "AU", "Australia/Brisbane"],
    ["30.69, -88.04", "US", "America/Chicago"],
    ["48.6, 7.75", undefined, undefined],
  ])("%s", (written, country, timeZone) => {
    expect(place(written)).toMatchObject({ country, timeZone });
  });

  it("never takes the time of the machine for that of coordinates", async () => {
    const start = (at: string) =>
      run(["start", "--name", "Croft", "--place", at, "--units", "metric"], {
        today,
        effects: { timeZone: () => "UTC" },
      });
    const croft = await start("58.98, -2.96");
    expect(readFileSync(path.join(croft.cwd, "garden.md"), "utf8")).toContain("time zone: Europe/London");
    const ocean = await start("-40, -30");
    expect(ocean.exitCode).toBe(2);
    expect(ocean.err).toContain("No town is near that place to tell its time zone.");
    const border = await start("48.6, 7.75");
    expect(border.exitCode).toBe(2);
    expect(border.err).toMatch(
      /Towns near that place keep several time zones\. Say which: --time-zone .*Europe\/Paris/,
    );
  });
});

describe("a town of the United States", () => {
  const place = (written: string) => {
    const read = readPlace(written, towns);
    return "place" in read ? read.place : read;
  };
  it("is found by the name of its state, and has its time", () => {
    expect(place("Northfield, Minnesota")).toEqual(place("Northfield, MN"));
    expect(place("Northfield, Minnesota")).toMatchObject({ country: "US", timeZone: "America/Chicago" });
    expect(place("El Paso, Texas")).toMatchObject({ timeZone: "America/Denver" });
  });
  it("is asked about where a line between two times runs nearby", () => {
    expect(place("Boise, Idaho")).toMatchObject({ country: "US", timeZone: undefined });
  });
});
