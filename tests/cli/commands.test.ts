import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { emptyFolder, folderWith, run } from "./run.ts";

describe("wrong use", () => {
  it("is exit code 2, with the nearest right spelling", async () => {
    const flag = await run(["check", "--jsno"]);
    expect(flag.exitCode).toBe(2);
    expect(flag.err).toContain("error: unknown option '--jsno'\n(Did you mean --json?)");
    const command = await run(["chek"]);
    expect(command.exitCode).toBe(2);
    expect(command.err).toContain("(Did you mean check?)");
  });

  it("says what a day looks like", async () => {
    const { exitCode, err } = await run(["timeline", "--on", "2026-02-30"]);
    expect(exitCode).toBe(2);
    expect(err).toContain("Write a day as year, month and day: 2026-06-14.");
  });

  it("names the beds there are, or the one that was meant", async () => {
    const cwd = folderWith("two-beds");
    const near = await run(["timeline", "Left Bde"], { cwd });
    expect(near.exitCode).toBe(2);
    expect(near.err).toContain('No bed is called "Left Bde". Did you mean "Left bed"?');
    const far = await run(["timeline", "glasshouse"], { cwd });
    expect(far.err).toContain("The beds are: ");
  });

  it("names the episode that was meant", async () => {
    const { exitCode, err } = await run(["brief", "2026-07-tuor", "--records", path.resolve("demo-content")]);
    expect(exitCode).toBe(2);
    expect(err).toContain(
      'No episode is called "2026-07-tuor", and it is not a day such as 2026-07-18. Did you mean "2026-07-tour"?',
    );
  });

  it("asks for help kindly and is done", async () => {
    const { exitCode, out } = await run(["--help"]);
    expect(exitCode).toBe(0);
    expect(out).toContain("plotreel");
  });
});

describe("a first garden", () => {
  it("needs one note", async () => {
    const cwd = emptyFolder();
    mkdirSync(path.join(cwd, "content/notes"), { recursive: true });
    writeFileSync(
      path.join(cwd, "content/notes/2026-05-16.md"),
      "- planted 12 Musselburgh leek in Long Bed, 20 cm apart, row 2\n",
    );
    const check = await run(["check"], { cwd });
    expect(check.exitCode).toBe(0);
    expect(check.out).toContain("1 log line in 1 note");
    const brief = await run(["brief", "2026-07-18"], { cwd });
    expect(brief.exitCode).toBe(0);
    expect(brief.out).toContain("Musselburgh");
    for (const ending of [".md", ".json", ".html"])
      expect(existsSync(path.join(cwd, `out/briefs/2026-07-18${ending}`))).toBe(true);
  });

  it("has records written out for what its notes name, and never over a file that is there", async () => {
    const cwd = emptyFolder();
    mkdirSync(path.join(cwd, "content/notes"), { recursive: true });
    writeFileSync(path.join(cwd, "content/notes/2026-05-16.md"), "- planted 12 bought Musselburgh leek in Long Bed\n");
    writeFileSync(path.join(cwd, "content/garden.md"), "---\nunits: metric\n---\n");
    const named = await run(["new", "named"], { cwd });
    expect(named.exitCode).toBe(0);
    expect(readFileSync(path.join(cwd, "content/varieties/musselburgh.md"), "utf8")).toContain(
      "title: Musselburgh\ncrop: leek\n",
    );
    expect(existsSync(path.join(cwd, "content/beds/long-bed.md"))).toBe(true);
    // The day after: weeks later what happened since would be asked.
    expect((await run(["check"], { cwd, today: "2026-05-17" })).out).toBe("1 log line in 1 note. Nothing to mend.");
    expect((await run(["check"], { cwd, today: "2026-06-17" })).out).toContain("What has happened in the garden since");
    const nameless = await run(["new", "bed", " – "], { cwd });
    expect(nameless).toMatchObject({ exitCode: 2, err: expect.stringContaining("Say what the bed is called") });

    const again = await run(["new", "bed", "Long Bed"], { cwd });
    expect(again.exitCode).toBe(3);
    expect(again.err).toContain("is there already and was left as it is");
  });

  it.each(["site", "bed", "variety", "note", "episode", "gear", "trial"])(
    "has a %s that can be read as it was written",
    async (kind) => {
      const cwd = emptyFolder();
      expect((await run(["new", kind, "Café Corner"], { cwd })).exitCode).toBe(0);
      const { exitCode, out } = await run(["check", "--json"], { cwd });
      const { problems } = JSON.parse(out) as { problems: { severity: string; rule: string }[] };
      expect(problems.filter(({ severity }) => severity !== "hint")).toEqual([]);
      expect(exitCode).toBe(0);
    },
  );

  it("has an episode for tomorrow, or for the day that is said", async () => {
    const cwd = emptyFolder();
    await run(["new", "episode", "July tour"], { cwd, today: "2026-07-10" });
    expect(readFileSync(path.join(cwd, "content/episodes/july-tour/index.md"), "utf8")).toContain("date: 2026-07-11\n");
    await run(["new", "episode", "Late tour", "--date", "18 July"], { cwd, today: "2026-07-10" });
    expect(readFileSync(path.join(cwd, "content/episodes/late-tour/index.md"), "utf8")).toContain("date: 2026-07-18\n");
    expect((await run(["new", "episode", "No tour", "--date", "soon"], { cwd })).err).toContain("is not a day");
  });

  it("says how to start when there is nothing yet", async () => {
    const missing = await run(["check"]);
    expect(missing.exitCode).toBe(1);
    expect(missing.out).toContain("There is no records folder");
    expect(missing.out).toContain('"plotreel start" in an empty folder begins a garden');
  });
});

describe("timeline as data", () => {
  it("has the documented shape", async () => {
    const { out, exitCode } = await run(["timeline", "--json", "--records", path.resolve("demo-content")]);
    expect(exitCode).toBe(0);
    const views = JSON.parse(out) as {
      bed: string;
      plantings: Record<string, unknown>[];
      changes: Record<string, unknown>[];
    }[];
    expect(views.length).toBeGreaterThanOrEqual(15);
    const planting = views.find(({ bed }) => bed === "squash-bed")?.plantings[0] ?? {};
    for (const key of [
      "id",
      "variety",
      "crop",
      "count",
      "sown",
      "planted",
      "ageDays",
      "daysInGround",
      "stage",
      "stageSince",
      "heightCm",
      "heightOn",
      "picked",
      "source",
      "sayAs",
      "lastNote",
    ]) {
      expect(Object.keys(planting)).toContain(key);
    }
    const change = views.flatMap(({ changes }) => changes)[0] ?? {};
    expect(change).toMatchObject({
      kind: expect.any(String),
      date: expect.stringMatching(/^\d{4}-\d\d-\d\d$/),
      text: expect.any(String),
      note: { file: expect.any(String), line: expect.any(Number) },
    });
  });

  it("refuses a span that runs backward", async () => {
    const { exitCode, err } = await run(["timeline", "--on", "2026-05-01", "--since", "2026-06-01"], {
      cwd: folderWith("two-beds"),
    });
    expect(exitCode).toBe(2);
    expect(err).toContain("--since 2026-06-01 is later than 2026-05-01.");
  });
});

describe("the cache", () => {
  it("saves reading, says how many files were read again, and changes nothing else", async () => {
    const cwd = folderWith("two-beds");
    const cold = await run(["brief", "2026-07-18", "--json", "--verbose"], { cwd });
    const warm = await run(["brief", "2026-07-18", "--json", "--verbose"], { cwd });
    expect(warm.out).toBe(cold.out);
    expect(cold.err).toMatch(/^[1-9]\d* files read again, 0 unchanged/m);
    expect(warm.err).toMatch(/^0 files read again, [1-9]\d* unchanged/m);
    writeFileSync(path.join(cwd, "content/notes/2026-06-30-more.md"), "- picked 2 kg Boltardy\n");
    expect((await run(["check", "--verbose"], { cwd })).err).toMatch(/^1 files? read again/m);
    const now = await run(["brief", "2026-07-18", "--json"], { cwd });
    for (const store of ["parsed-files.json", "note-readings.json"])
      writeFileSync(path.join(cwd, ".cache", store), "[1,");
    expect((await run(["brief", "2026-07-18", "--json"], { cwd })).out).toBe(now.out);
    rmSync(path.join(cwd, ".cache"), { recursive: true });
    expect((await run(["brief", "2026-07-18", "--json"], { cwd })).out).toBe(now.out);
  });
});

describe("bringing photos in", () => {
  it("copies by day, leaves what is there, and says what it did", async () => {
    const cwd = folderWith("two-beds");
    const card = path.join(cwd, "card");
    mkdirSync(card);
    const picture = await sharp({ create: { width: 8, height: 8, channels: 3, background: "#486" } })
      .jpeg()
      .toBuffer();
    writeFileSync(path.join(card, "IMG_20260516_181503.jpg"), picture);
    writeFileSync(path.join(card, "notes.txt"), "not a photo");
    const dry = await run(["ingest", "card", "--dry-run"], { cwd });
    expect(dry.out).toContain("1 photo would be brought in.");
    expect(dry.out).not.toContain("Safe to clear");
    const first = await run(["ingest", "card"], { cwd });
    expect(first.out).toContain("IMG_20260516_181503.jpg -> photos/2026-05-16/IMG_20260516_181503.jpg");
    expect(readFileSync(path.join(cwd, "content/photos/2026-05-16/IMG_20260516_181503.jpg"))).toEqual(picture);
    expect(first.out).toMatch(
      /\nnotes\.txt: words that lie beside no photo and no sound, not in the records\nNot safe to clear: 1 file, named above, is not in the records\.$/,
    );
    expect(first.exitCode).toBe(1);
    rmSync(path.join(card, "notes.txt"));
    const again = await run(["ingest", "card"], { cwd });
    expect(again.out).toBe(
      "0 photos brought in, 1 file there already.\nSafe to clear: all that a camera took is in the records.",
    );
    expect(again.exitCode).toBe(0);
    const missing = await run(["ingest", "crad"], { cwd });
    expect(missing.exitCode).toBe(2);
    expect(missing.err).toContain("Give the folder your photos are in.");
  });
});
