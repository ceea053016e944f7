import { spawnSync } from "node:child_process";
import { copyFileSync, linkSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { run } from "../cli/run.ts";
import { brought, filesIn, gardenWith, ingest, recordsIn, today } from "./bringing.ts";

describe("a diary of two months", () => {
  const words = readFileSync(brought("allotment-book.txt"), "utf8");

  it("is shown with every line's reading before anything is written", async () => {
    const dir = gardenWith();
    const before = filesIn(dir);
    const { out, exitCode } = await ingest(dir, brought("allotment-book.txt"));
    expect(exitCode).toBe(1);
    expect(out).toContain("allotment-book.txt: a diary of 20 days.");
    expect(out).toContain("= did: netted the gooseberries");
    expect(out).toMatch(/\d+ lines are facts, \d+ are questions and \d+ are story\./);
    expect(out).toContain("line 1: stands before the first day: ALLOTMENT BOOK");
    expect(out).toContain('line 32: "Tuesday" was taken for 2023-05-16');
    expect(out.replace(/\n +/g, " ")).toContain(
      'line 40: "Mon 30 May" would be 2023-05-30, which is another day of the week: Bank holiday.',
    );
    expect(filesIn(dir)).toEqual(before);
  });

  it("loses no line: each stands in a note of its day as it was written, or is told", async () => {
    const dir = gardenWith();
    const { out } = await ingest(dir, brought("allotment-book.txt"), "--write");
    const notes = Object.entries(filesIn(dir)).filter(([file]) => file.startsWith("notes/"));
    expect(notes).toHaveLength(20);
    const all = notes.map(([, text]) => text).join("\n");
    const said = out.replace(/\s+/g, " ");
    // Headings and days alone are in the notes' names.
    const headings = /^(?:APRIL 2023|MAY|Sat 15th|22nd|Sunday 7 May|Tuesday)$/;
    const lost = words
      .split("\n")
      .map((line) => line.trim())
      .filter((line) => line !== "" && !headings.test(line))
      .map((line) =>
        line.replace(
          /^(?:\d{1,2}(?:st|nd|rd|th)(?: May)?|\d{1,2}\/5(?:\/23)?|30 April 2023|Sun 16th|Mon 30 May)[ .:–-]*/,
          "",
        ),
      )
      .filter((line) => !all.includes(line) && !said.includes(line));
    expect(lost).toEqual([]);
    const records = await recordsIn(dir);
    expect(records.notes.every((note) => note.private)).toBe(true);
    expect(records.notes.map(({ day }) => day).slice(0, 3)).toEqual(["2023-04-01", "2023-04-02", "2023-04-08"]);
    expect(filesIn(dir)["notes/2023/2023-04-22-allotment-book.md"]).toBe(
      "---\ndate: 2023-04-22\nprivate: true\n---\n\n- leeks up in the seed bed\n- slugs have had the lettuces again, lost 5 of 9\n- netted the gooseberries\n",
    );
  });

  it("brings nothing twice, and of a diary that goes on only what was added", async () => {
    const dir = gardenWith();
    const file = path.join(dir, "allotment-book.txt");
    copyFileSync(brought("allotment-book.txt"), file);
    await ingest(dir, file, "--write");
    const before = filesIn(dir);
    const again = await ingest(dir, file, "--write");
    expect(again.out).toContain("20 days brought in before.");
    expect(filesIn(dir)).toEqual(before);
    writeFileSync(
      file,
      words.replace("- netted the gooseberries", "- netted the gooseberries\n- sowed radish in Middle Bed"),
    );
    await ingest(dir, file, "--write");
    const added = Object.entries(filesIn(dir)).filter(([name, text]) => before[name] !== text);
    expect(added.filter(([name]) => name.startsWith("notes/"))).toEqual([
      [
        "notes/2023/2023-04-22-allotment-book-2.md",
        "---\ndate: 2023-04-22\nprivate: true\n---\n\n- sowed radish in Middle Bed\n",
      ],
    ]);
  });

  it("is not brought twice after a run that was broken off before it remembered", async () => {
    const dir = gardenWith();
    await ingest(dir, brought("allotment-book.txt"), "--write");
    const whole = filesIn(dir);
    const [, first = ""] = Object.keys(whole).filter((file) => file.startsWith("notes/"));
    rmSync(path.join(dir, "brought-in.txt"));
    rmSync(path.join(dir, first));
    await ingest(dir, brought("allotment-book.txt"), "--write");
    expect(Object.keys(filesIn(dir))).toEqual(Object.keys(whole));
    expect(filesIn(dir)[first]).toBe(whole[first]);
  });

  it("leaves nothing beside a note whose run was killed between its two names", async () => {
    const dir = gardenWith();
    await ingest(dir, brought("allotment-book.txt"), "--write");
    const whole = filesIn(dir);
    const note = Object.keys(whole).find((file) => file.startsWith("notes/")) ?? "";
    const gone = spawnSync(process.execPath, ["-e", ""]).pid;
    linkSync(path.join(dir, note), path.join(dir, path.dirname(note), `.plotreel-${gone}-0a1b2c3d.part`));
    rmSync(path.join(dir, "brought-in.txt"));
    await ingest(dir, brought("allotment-book.txt"), "--write");
    expect(filesIn(dir)).toEqual(whole);
  });

  it("says which facts a note of that day tells already", async () => {
    const dir = gardenWith({ "notes/2023-04-22.md": "- netted the gooseberries\n" });
    const { out } = await ingest(dir, brought("allotment-book.txt"));
    expect(out.replace(/\n +/g, " ")).toContain(
      '"netted the gooseberries" of 2023-04-22 stands in notes/2023-04-22.md:1 too',
    );
  });
});

describe("the captions of an old film", () => {
  const film = "2023-06-18-plot-walk.en.vtt";
  const garden = {
    "beds/middle-bed.md": "---\ntitle: Middle Bed\n---\n",
    "varieties/boltardy.md": "---\ntitle: Boltardy\ncrop: beetroot\n---\n",
    "varieties/uchiki-kuri.md": "---\ntitle: Uchiki Kuri\ncrop: squash\n---\n",
    "notes/2023-05-13.md": "- sowed Boltardy in Middle Bed\n- planted 2 Uchiki Kuri in Far Bed\n",
  };

  it("become an episode of that day, private, with what is named in them", async () => {
    const dir = gardenWith(garden);
    const { out, exitCode } = await ingest(dir, brought(film), "--write");
    expect(exitCode).toBe(0);
    expect(out).toContain("Named in it: Middle Bed (0:07), Boltardy (0:08)");
    expect(out).toContain("Perhaps, by their sound: Uchiki Kuri (0:26)");
    expect(out.replace(/\s+/g, " ")).toContain('and what it shows: "stops: [Middle Bed]".');
    const { episodes, problems } = await recordsIn(dir);
    const episode = episodes.get("2023-06-18-plot-walk");
    expect(episode).toMatchObject({
      day: "2023-06-18",
      status: "filmed",
      private: true,
      captions: ["episodes/2023-06-18-plot-walk/captions.vtt"],
    });
    expect(episode?.body).toBe("<!-- Named in it:\n- Middle Bed (0:07)\n- Boltardy (0:08)\n-->");
    expect(problems.filter(({ file }) => file.startsWith("episodes/"))).toEqual([]);
    expect(readFileSync(path.join(dir, "episodes/2023-06-18-plot-walk/captions.vtt"))).toEqual(
      readFileSync(brought(film)),
    );
  });

  it("are known again, also where they came by hand", async () => {
    const dir = gardenWith(garden);
    await ingest(dir, brought(film), "--write");
    expect((await ingest(dir, brought(film), "--write")).out).toContain("These captions are in your records already.");
    const byHand = gardenWith({
      "episodes/walk/index.md": "---\ndate: 2023-06-18\nstatus: filmed\n---\n",
      "episodes/walk/captions.vtt": readFileSync(brought(film), "utf8"),
    });
    const { out } = await ingest(byHand, brought(film), "--write");
    expect(out).toContain("These captions are in your records already.");
    expect(Object.keys(filesIn(byHand)).filter((file) => file.startsWith("episodes/"))).toHaveLength(2);
  });

  it("need the day from the person where their name has none", async () => {
    const dir = gardenWith(garden);
    expect((await ingest(dir, brought("rain.srt"))).err).toContain("--date 2019-06-14");
    const { out } = await ingest(dir, brought("rain.srt"), "--date", "2023-07-01", "--write");
    expect(out).toContain("No name of your records is said in it.");
    expect(Object.keys(filesIn(dir))).toContain("episodes/2023-07-01-rain/captions.srt");
  });
});

describe("a film whose record is there without captions", () => {
  it("is told, so that it does not become two", async () => {
    const dir = gardenWith({ "episodes/june/index.md": "---\ndate: 2023-06-18\nstatus: filmed\n---\n" });
    const { out } = await ingest(dir, brought("2023-06-18-plot-walk.en.vtt"));
    expect(out.replace(/\s+/g, " ")).toContain(
      "episodes/june/index.md is of that day and has no captions: if this is its film",
    );
  });
});

describe("writing", () => {
  it("is for a file: a folder of photos is brought in at once", async () => {
    const dir = gardenWith({ "card/a.txt": "x" });
    const { exitCode, err } = await ingest(dir, "card", "--write");
    expect([exitCode, err]).toEqual([2, "--write is for one file; a folder of photos is brought in without it."]);
  });

  it("is asked about where somebody watches, and both flags at once are wrong use", async () => {
    const dir = gardenWith();
    expect((await ingest(dir, brought("rain.srt"), "--write", "--dry-run")).exitCode).toBe(2);
    const asked = (key: string) => run(["ingest", brought("seed-tin.csv")], { cwd: dir, today, keys: [key] });
    const before = filesIn(dir);
    await asked("n");
    expect(filesIn(dir)).toEqual(before);
    expect((await asked("y")).out).toContain("Written: 46 files.");
  });
});
