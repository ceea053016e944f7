/** `plotreel recap` as a person runs it: what it prints and writes, and what it says to what it cannot do. */
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { parse } from "csv-parse/sync";
import { describe, expect, it } from "vitest";
import { emptyFolder, run } from "../cli/run.ts";

const files = {
  "garden.md":
    "---\nname: Small Garden\nlanguage: en-GB\ntime zone: Europe/London\nseason starts: 1 July\ngoals: [4 kg of leeks, 9 pints of green beans]\npins: [leeks in Long Bed, moonfruit in Long Bed]\nprices: {leek: 3 a kg}\n---\n",
  "beds/long-bed.md": "---\ntitle: Long Bed\nsize: 6 x 1.2 m\n---\n",
  "varieties/musselburgh.md":
    "---\ntitle: Musselburgh\ncrop: leek\ndays to maturity: 130 from planting\nsource: {name: Drift Lane Seeds, obtained: bought, year: 2025}\n---\n",
  "notes/2025-07-05.md": "- planted 20 Musselburgh in Long Bed\n",
  "notes/2025-12-28.md": "- dug 2 kg Musselburgh from Long Bed\n",
  "notes/2026-01-03.md": "- dug 1.5 kg Musselburgh from Long Bed\n- asked: why so thin?\n",
  "weather/garden.csv": "date,tmin_c,tmax_c,rain_mm\n2025-11-20,-2,4,0\n2026-01-02,1,6,3\n2026-01-02,1,6,3\n",
};

function garden(more: Readonly<Record<string, string>> = {}): string {
  const cwd = emptyFolder();
  for (const [file, text] of Object.entries({ ...files, ...more })) {
    mkdirSync(path.join(cwd, "content", path.dirname(file)), { recursive: true });
    writeFileSync(path.join(cwd, "content", file), text);
  }
  return cwd;
}

const read = (cwd: string, ...parts: string[]) => readFileSync(path.join(cwd, ...parts), "utf8");
const today = "2026-03-01";

describe("plotreel recap", () => {
  it("tells a season over New Year and writes every form of it", async () => {
    const cwd = garden();
    const before = readdirSync(path.join(cwd, "content"), { recursive: true }).length;
    const { exitCode, out, err } = await run(["recap", "2025/26"], { cwd, today });
    expect(exitCode).toBe(0);
    expect(out).toContain("# Small Garden: the season of 2025/26 so far");
    expect(out).toContain("By 1 March the garden has given 3.5 kg.");
    // Of two days in 244 no hottest day can be told.
    expect(out).toContain("Of 244 days the weather files have only two, too few to tell of frost, heat or rain.");
    expect(err).toContain("out/recaps/2025-26");
    const made = readdirSync(path.join(cwd, "out", "recaps")).sort();
    expect(made).toEqual(["2025-26-seed-order.csv", "2025-26.html", "2025-26.json", "2025-26.md"]);
    expect(read(cwd, "out/recaps/2025-26.md").trim()).toBe(out.trim());
    expect(read(cwd, "out/recaps/2025-26.html")).toMatch(/^<!doctype html>/i);
    const rows = parse(read(cwd, "out/recaps/2025-26-seed-order.csv"), { bom: true, columns: true });
    expect(rows).toMatchObject([
      { source: "Drift Lane Seeds", variety: "Musselburgh, leek", crop: "leek", how: "buy" },
    ]);
    expect(readdirSync(path.join(cwd, "content"), { recursive: true })).toHaveLength(before);
  });

  it("gives data of the promised shape, with the cautions of jars", async () => {
    const { out } = await run(["recap", "2025", "--json", "--length", "5"], { cwd: garden(), today });
    const made = JSON.parse(out);
    expect(Object.keys(made)).toEqual(["cover", "cards", "dossier"]);
    const recap = made.dossier;
    for (const key of ["paragraph", "opening", "segments", "results", "nextYear", "charts", "methods", "leftOut"]) {
      expect(recap).toHaveProperty(key);
    }
    expect(recap.seconds.chosen).toBeLessThanOrEqual(300);
    expect(JSON.stringify(recap.cautions)).toContain("pressure canner");
  });

  it("tells a month, and what came since the last recap", async () => {
    const cwd = garden({
      "episodes/autumn-recap/index.md":
        "---\ntitle: Autumn recap\ndate: 2025-12-31\nstatus: published\n---\n\nLooking back.\n",
    });
    const month = await run(["recap", "2025", "--month", "1"], { cwd, today });
    expect(month.out).toContain("From 1 January to 31 January the garden gave 1.5 kg.");
    expect(month.out).toContain("Small Garden: January 2026");
    expect(existsSync(path.join(cwd, "out/recaps/2026-01.md"))).toBe(true);
    const since = await run(["recap", "2025", "--since-last"], { cwd, today });
    expect(since.exitCode).toBe(0);
    expect(since.out).toContain("1.5 kg in one picking");
    expect(since.out).not.toContain("3.5 kg");
  });

  it.each([
    [["recap", "soon"], '"soon" is no season. Write the year in which it begins, such as 2026.'],
    [["recap", "2027"], "The season of 2027/28 has not begun yet."],
    [["recap", "2025", "--month", "13"], "is no month of the season of 2025/26"],
    [["recap", "2025", "--month", "5"], "2026-05 has not begun yet."],
    [["recap", "2025", "--month", "1", "--since-last"], "give one of them"],
  ])("%j is told what is wrong", async (argv, said) => {
    const { exitCode, err } = await run(argv, { cwd: garden(), today });
    expect(exitCode).toBe(2);
    expect(err).toContain(said);
  });

  it("has weather, goals and pins it cannot use among the problems", async () => {
    const { out, err, exitCode } = await run(["check"], { cwd: garden(), today });
    const said = `${out}\n${err}`;
    expect(exitCode).not.toBe(2);
    expect(said).toContain("weather/day-twice");
    expect(said).toContain("weather/gap");
    expect(said).toContain("goal/unknown-pin");
  });
});
