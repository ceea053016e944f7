/** `plotreel check --reading`: each line with what it is taken to say. */
import { describe, expect, it } from "vitest";
import { check } from "../../src/cli/check-command.ts";
import type { Loaded } from "../../src/cli/load-garden.ts";
import { sayReadings } from "../../src/cli/reading-words.ts";
import { folderWith, run } from "../cli/run.ts";
import { gardenNames } from "../note-lines/a-garden.ts";
import { recordsOf } from "../records/records-of.ts";
import { event, facts, offered, place, question, story } from "./asked.ts";

const garden = {
  notes: [{ ...{ id: "x", day: "2026-07-18", beds: [], private: false, story: [], photos: [] }, place }],
  settings: { language: "en-GB" },
} as unknown as Parameters<typeof sayReadings>[1];

describe("readings in words", () => {
  it("stand below their lines: facts with a day that is not the note's, a question's readings, story", () => {
    const at = (line: number) => ({ place: { ...place, line } });
    expect(
      sayReadings(
        [
          facts("leeks in, and 2 kg beans Thursday", [
            event("planted", { variety: "musselburgh", count: { value: 12, approx: false }, bed: "long-bed" }),
            event("picked", { crop: "bean", grams: 2000, day: "2026-07-16" }),
          ]),
          question("lifted the onions", [offered("picked onions"), offered("cleared onions\ndid: dug over")], at(9)),
          question("on FB", [], at(10)),
          story("Rain all day.", at(112)),
        ],
        garden,
        gardenNames(),
      ),
    ).toEqual([
      "notes/2026-07-18-long-bed.md",
      "  7  leeks in, and 2 kg beans Thursday",
      "     = planted 12 Musselburgh in Long Bed",
      "     = picked 2000 g beans, on 16 July",
      "  9  lifted the onions",
      "     ? a) picked onions",
      "       b) cleared onions",
      "          did: dug over",
      " 10  on FB",
      "     ? it may hold a fact, and no reading explains it",
      "112  Rain all day.",
      "     – story",
    ]);
  });

  it("fit into 80 columns, whatever the words", () => {
    const long = "we carried the last of the barrowloads down to the far end and tipped them out there, tired ".repeat(
      3,
    );
    const lines = sayReadings([question(long, [offered(`did: ${long}`)])], garden, gardenNames());
    expect(lines.length).toBeGreaterThan(8);
    for (const line of lines) expect(line.length).toBeLessThanOrEqual(80);
    expect(lines.join(" ").replace(/\s+/g, " ")).toContain(long.trim());
  });
});

describe("the command", () => {
  it("shows every line of the notes with its line number, then sums up", async () => {
    const { exitCode, out } = await run(["check", "--reading"], { cwd: folderWith("two-beds") });
    expect(exitCode).toBe(0);
    expect(out).toContain(
      [
        "notes/2026-06-13-planting.md",
        "  5  planted 24 Musselburgh, 15 cm apart",
        "     = planted 24 Musselburgh in Right bed, 15 cm apart",
      ].join("\n"),
    );
    expect(out).toMatch(/\n5 lines are facts and 3 are story\.$/);
  });

  it("gives exactly an array with --json, and the problems as before without --reading", async () => {
    const cwd = folderWith("two-beds");
    const readings = JSON.parse((await run(["check", "--reading", "--json"], { cwd })).out) as unknown[];
    expect(readings).toHaveLength(8);
    expect(readings[2]).toEqual({
      file: "notes/2026-03-21-sowing.md",
      line: 3,
      text: "sowed 40 Musselburgh leek indoors, 2 trays",
      as: "facts",
      events: [{ kind: "sowed", crop: "leek", variety: "Musselburgh", count: 40, nursery: true, day: "2026-03-21" }],
      readings: [],
    });
    expect(Object.keys(JSON.parse((await run(["check", "--json"], { cwd })).out) as object)).toEqual(["problems"]);
  });

  it.each([
    "notes/2026-03-21-sowing.md",
    "content/notes/2026-03-21-sowing.md",
    "2026-03-21-sowing",
    "2026-03-21-sowing.md",
    "2026-03-21-Sowing.MD",
  ])("shows only the note %s", async (note) => {
    const { out } = await run(["check", "--reading", note], { cwd: folderWith("two-beds") });
    expect(out).toMatch(/^notes\/2026-03-21-sowing\.md\n/);
    expect(out).not.toContain("2026-06-13-planting");
    expect(out).toMatch(/\n2 lines are facts and 2 are story\.$/);
  });

  it("offers the nearest name when no note is called so", async () => {
    const cwd = folderWith("two-beds");
    const near = await run(["check", "--reading", "2026-03-21-sowign"], { cwd });
    expect(near).toMatchObject({ exitCode: 2, out: "" });
    expect(near.err).toBe('No note is called "2026-03-21-sowign". Did you mean "2026-03-21-sowing"?');
    const far = await run(["check", "--reading", "harvest"], { cwd });
    expect(far.err).toContain('Give its path, or its file name such as "2026-06-13-planting".');
  });

  it("says how many questions are open and how to settle them", async () => {
    const records = await recordsOf({ "notes/2026-07-18-long-bed.md": "- lifted the onions\n" });
    const said = (readings: unknown, reading?: boolean) => {
      const out: string[] = [];
      const loaded = { garden: { ...records, readings }, recordsDir: "/garden" } as unknown as Loaded;
      const effects = { cwd: "/", out: (line: string) => void out.push(line) };
      check(loaded, { reading }, effects as unknown as Parameters<typeof check>[2]);
      return out.at(-1);
    };
    const asked = question("lifted the onions", [offered("picked onions")]);
    expect(said([asked, asked, asked])).toBe(
      'Three lines are questions to you: "plotreel settle" asks them one by one. "plotreel check --reading" shows every line.',
    );
    expect(said([asked], true)).toBe('One line is a question to you: "plotreel settle" asks it.');
    expect(said([story("lifted the onions")])).not.toContain("settle");
  });
});
