/** `plotreel wrap` as a person runs it: files, what is kept of their edits, promises taken into the record. */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { parse } from "csv-parse/sync";
import { describe, expect, it } from "vitest";
import { filmFile } from "../wrap/film-file.ts";
import { gardenFiles, vtt } from "../wrap/small-film.ts";
import { emptyFolder, run } from "./run.ts";

const walk = [
  "The long bed. Leeks, twelve of them.",
  "I'll show you the leeks again in July.",
  "Musselburgh, all of it.",
  "It was wet, and they like it.",
  "Now the squash bed. Five Uchiki Kuri.",
  "They're up to my knee already.",
  "Every one of the squash.",
  "Not one is lost.",
  "Last, the tomato pots. Four Harbinger.",
  "I'll weigh the first tomato on camera.",
  "And that's it.",
  "Thanks for walking round. See you.",
];

function garden(): string {
  const cwd = emptyFolder();
  const files = { ...gardenFiles, "episodes/june/captions.vtt": Buffer.from(vtt(walk)).toString() };
  for (const [file, text] of Object.entries(files)) {
    mkdirSync(path.join(cwd, "content", path.dirname(file)), { recursive: true });
    writeFileSync(path.join(cwd, "content", file), text);
  }
  return cwd;
}

const read = (cwd: string, ...parts: string[]) => readFileSync(path.join(cwd, ...parts), "utf8");

describe("plotreel wrap", () => {
  it("prints a report and writes every file beside it; the captions stay as they are", async () => {
    const cwd = garden();
    const captions = read(cwd, "content/episodes/june/captions.vtt");
    const { exitCode, out, err } = await run(["wrap", "june"], { cwd });
    expect(exitCode).toBe(0);
    expect(out).toContain("# After filming: June walk");
    expect(out).toContain(
      "1. 0:03 “I'll show you the leeks again in July.” → show the leeks again in July (Long Bed, due by 31 July)",
    );
    expect(out).toContain("`plotreel wrap june --accept 1 2`");
    expect(err).toContain("out/wraps/june");
    expect(read(cwd, "content/episodes/june/captions.vtt")).toBe(captions);
    expect(read(cwd, "out/wraps/june/chapters.txt").split("\n")[0]).toBe("0:00 Long Bed: Musselburgh leeks");
    expect(read(cwd, "out/wraps/june/chapters.vtt")).toMatch(
      /^WEBVTT\n\n00:00:00\.000 --> 00:00:12\.000\nLong Bed: Musselburgh leeks\n/,
    );
    expect(read(cwd, "out/wraps/june/captions.corrected.vtt")).toContain("Five Uchiki Kuri.");
    expect(read(cwd, "out/wraps/june/description.txt")).toContain("June walk\nFilmed on 14 June 2026");
    const rows = parse(read(cwd, "out/wraps/june/edit-log.csv"), { bom: true, columns: true }) as Record<
      string,
      string
    >[];
    expect(Object.keys(rows[0] ?? {})).toEqual(["begin", "end", "kind", "what", "note", "name", "timecode", "rate"]);
    // No rate is known, and none is guessed.
    expect(err).toContain("No timeline was made, because nothing tells the film's pictures a second");
    expect(readdirSync(path.join(cwd, "out/wraps/june"))).not.toContain("edit-log.otio");
    const again = await run(["wrap", "june", "--rate", "25"], { cwd });
    expect(again.err).toContain("Timelines are at 25 pictures a second.");
    expect(JSON.parse(read(cwd, "out/wraps/june/edit-log.otio"))).toHaveProperty("OTIO_SCHEMA", "Timeline.1");
    expect((await run(["wrap", "june", "--rate", "fast"], { cwd })).exitCode).toBe(2);
  });

  it("writes what goes to platforms, each file unless garden.md does without it", async () => {
    const cwd = garden();
    await run(["wrap", "june"], { cwd });
    const written = () => readdirSync(path.join(cwd, "out/wraps/june"));
    expect(written()).toEqual(expect.arrayContaining(["pinned-comment.txt", "post.txt", "newsletter.txt"]));
    // Nothing was picked or promised, and an empty list is no file.
    expect(written()).not.toContain("shorts.csv");
    const other = garden();
    const settings = `${gardenFiles["garden.md"]}`.replace(
      "name:",
      "wrap without: [newsletter, pinned comment]\nname:",
    );
    writeFileSync(path.join(other, "content/garden.md"), settings);
    const { exitCode } = await run(["wrap", "june"], { cwd: other });
    expect(exitCode).toBe(0);
    const left = readdirSync(path.join(other, "out/wraps/june"));
    expect(left).toContain("post.txt");
    expect(left).not.toContain("newsletter.txt");
    expect(left).not.toContain("pinned-comment.txt");
    writeFileSync(path.join(other, "content/garden.md"), settings.replace("newsletter", "news"));
    const refused = await run(["check"], { cwd: other });
    expect(refused.out).toContain("Write pinned comment, shorts, post, newsletter, titles or end cards.");
  });

  it("gives data of the promised shape", async () => {
    const { out } = await run(["wrap", "june", "--json"], { cwd: garden() });
    const data = JSON.parse(out);
    for (const key of [
      "chapters",
      "coverage",
      "corrections",
      "followUps",
      "questions",
      "disagreements",
      "description",
      "disclosures",
    ]) {
      expect(data).toHaveProperty(key);
    }
  });

  it("takes promises into the record once, and nothing else in it changes", async () => {
    const cwd = garden();
    const before = read(cwd, "content/episodes/june/index.md");
    const { exitCode, err } = await run(["wrap", "june", "--accept", "1"], { cwd });
    expect(exitCode).toBe(0);
    expect(err).toContain("Taken into episodes/june/index.md: show the leeks again in July.");
    const after = read(cwd, "content/episodes/june/index.md");
    expect(
      after.replace(
        'promised:\n  - what: show the leeks again in July\n    bed: long-bed\n    due: 2026-07-31\n    at: "0:03"\n',
        "",
      ),
    ).toBe(before);
    const again = await run(["wrap", "june", "--accept", "1"], { cwd });
    expect(again.err).toContain("Promise 1 is in the record already.");
    expect(again.out).toContain("already in the record");
    expect(read(cwd, "content/episodes/june/index.md")).toBe(after);
    const check = await run(["check"], { cwd });
    expect(check.exitCode).toBe(0);
    const wrong = await run(["wrap", "june", "--accept", "9"], { cwd });
    expect(wrong.exitCode).toBe(2);
    expect(wrong.err).toContain("There is no promise 9. The promises are numbered 1 to 2.");
  });

  it("keeps what a person edited, writes the new version beside it, and says so", async () => {
    const cwd = garden();
    await run(["wrap", "june"], { cwd });
    const file = path.join(cwd, "out/wraps/june/description.txt");
    writeFileSync(file, "Mine now.\n");
    const same = await run(["wrap", "june"], { cwd });
    expect(same.err).toContain(
      "You have edited description.txt; it was left as it is, and there is nothing new for it.",
    );
    writeFileSync(
      path.join(cwd, "content/gear/butterfly-net.md"),
      "---\ntitle: Butterfly net\nobtained: lent by a seller\nfrom: Skerry Netting\n---\n",
    );
    const changed = await run(["wrap", "june"], { cwd });
    expect(changed.err).toContain(
      "You have edited description.txt; it was left as it is, and the new version is description.new.txt.",
    );
    expect(readFileSync(file, "utf8")).toBe("Mine now.\n");
    expect(read(cwd, "out/wraps/june/description.new.txt")).toContain("Ad. Skerry Netting lent me the butterfly net.");
    const third = await run(["wrap", "june"], { cwd });
    expect(third.err).not.toContain("wrap.md");
  });

  it("works from the records alone, and says that captions are missing", async () => {
    const cwd = garden();
    writeFileSync(path.join(cwd, "content/episodes/june/captions.vtt"), "");
    const { exitCode, err } = await run(["wrap", "june"], { cwd });
    expect(exitCode).toBe(0);
    expect(err).toContain("error captions/none");
  });

  it("reads other captions, SubRip or timed text, comments and own words", async () => {
    const cwd = garden();
    writeFileSync(
      path.join(cwd, "said.txt"),
      walk.map((text, at) => `0:${String(at * 3).padStart(2, "0")} ${text}`).join("\n\n"),
    );
    writeFileSync(path.join(cwd, "content/episodes/june/comments.txt"), "When did you plant the Musselburgh leeks?\n");
    writeFileSync(path.join(cwd, "content/glossary.txt"), "Ines: eness\n");
    const { exitCode, out } = await run(["wrap", "june", "--captions", "said.txt", "--length", "0:40"], { cwd });
    expect(exitCode).toBe(0);
    expect(out).toContain("Musselburgh: sown on 10 April, planted out on 24 May.");
    expect(read(cwd, "out/wraps/june/captions.corrected.txt")).toContain("0:03 ");
  });

  it("names for each film file its stop, shot and take, and no place", async () => {
    const cwd = garden();
    const ticks = [{ shot: "S1.1", state: "filmed", takes: 1, at: "09:20:29" }];
    writeFileSync(
      path.join(cwd, "content/episodes/june/field-list.json"),
      JSON.stringify({
        plotreel: "field list",
        version: "1",
        episode: "june",
        exported: "2026-06-14T12:00:00",
        day: "2026-06-14",
        stops: [{ bed: "long-bed", ticks }],
      }),
    );
    mkdirSync(path.join(cwd, "card"));
    const film = filmFile({
      header: "2026-06-14T08:20:00",
      length: 22,
      position: "+51.5000-000.1200/",
      model: "Lens 4",
    });
    writeFileSync(path.join(cwd, "card/GX010001.MP4"), film);
    writeFileSync(path.join(cwd, "card/GX010001.srt"), "1\n00:00:00,000 --> 00:00:02,000\nthe leeks\n");
    const { exitCode, err } = await run(["wrap", "june", "--clips", "card"], { cwd });
    expect(exitCode).toBe(0);
    expect(err).toContain(
      "Lens 4, one file: its dates are in UTC, and tell when a clip begins; 1 of 1 ticks stand right after a file.",
    );
    const [row] = parse(read(cwd, "out/wraps/june/clips.csv"), { bom: true, columns: true }) as Record<
      string,
      string
    >[];
    expect(row).toMatchObject({
      file: "GX010001.MP4",
      stop: "Long Bed",
      shot: "S1.1",
      take: "1",
      mark: "good",
      best: "best",
      begins: "2026-06-14 09:20:00",
      length: "0:22.0",
      rate: "29.97",
      said: "the leeks",
    });
    for (const name of readdirSync(path.join(cwd, "out/wraps/june")))
      expect(read(cwd, "out/wraps/june", name)).not.toMatch(/51\.5|0\.12/);
    expect(err).toContain("Timelines are at 29.97 pictures a second, as most of the clips are; --rate says otherwise.");
    expect(read(cwd, "out/wraps/june/rough-cut.edl")).toContain("* FROM CLIP NAME: GX010001.MP4");
    expect(read(cwd, "out/wraps/june/rough-cut.fcpxml")).toContain("/card/GX010001.MP4");
    const empty = await run(["wrap", "june", "--clips", "nowhere"], { cwd });
    expect([empty.exitCode, empty.err]).toEqual([3, expect.stringContaining("There is no MP4 or MOV file in")]);
  });

  it("says what is wrong with how it was called", async () => {
    const cwd = garden();
    const near = await run(["wrap", "jun"], { cwd });
    expect([near.exitCode, near.err]).toEqual([2, 'No episode is called "jun". The episodes are: june.']);
    expect((await run(["wrap", "june", "--length", "12"], { cwd })).err).toContain("Write minutes and seconds: 12:05.");
    expect((await run(["wrap", "june", "--limit", "none"], { cwd })).exitCode).toBe(2);
    const missing = await run(["wrap", "june", "--captions", "nowhere.vtt"], { cwd });
    expect(missing.exitCode).toBe(3);
  });
});
