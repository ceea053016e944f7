import { existsSync, mkdirSync, readdirSync, readFileSync, utimesSync, writeFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { linesSaid } from "../../src/past/bring-voice.ts";
import { run } from "../cli/run.ts";
import { filesIn, gardenWith, recordsIn, today } from "./bringing.ts";

/** A sound file of a phone with nothing in it but its movie header (ISO/IEC 14496-12, 8.2.2). */
function m4a(spoken: string | undefined): Buffer {
  const box = (type: string, content: Uint8Array) => {
    const head = Buffer.alloc(8);
    head.writeUInt32BE(content.length + 8);
    head.write(type, 4, "latin1");
    return Buffer.concat([head, content]);
  };
  const header = Buffer.alloc(100);
  const seconds = spoken === undefined ? 0 : Date.parse(spoken) / 1000 + 2_082_844_800;
  for (const at of [4, 8]) header.writeUInt32BE(seconds, at);
  return Buffer.concat([
    box("ftyp", Buffer.from("M4A \0\0\0\0M4A ", "latin1")),
    box("moov", box("mvhd", header)),
    box("mdat", Buffer.from("the spare key lies below the third pot")),
  ]);
}

const captions = `WEBVTT

00:00:01.000 --> 00:00:04.000
Sowed forty beetroot in

00:00:04.100 --> 00:00:06.000
the long bed. Picked 1.5 kg of

00:00:06.100 --> 00:00:08.000
courgettes. The robin followed me all morning.

00:00:12.000 --> 00:00:14.000
netted the strawberries
`;

function card(files: Readonly<Record<string, string | Uint8Array>>): { readonly dir: string; readonly from: string } {
  const dir = gardenWith({
    "garden.md": "---\nunits: metric\nlanguage: en-GB\ntime zone: Europe/London\n---\n",
    "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
  });
  const from = path.join(gardenWith(), "card");
  for (const [name, content] of Object.entries(files)) {
    mkdirSync(path.dirname(path.join(from, name)), { recursive: true });
    writeFileSync(path.join(from, name), content);
    utimesSync(path.join(from, name), new Date("2026-07-01T12:00:00Z"), new Date("2026-07-01T12:00:00Z"));
  }
  return { dir, from };
}

const plotreel = (dir: string, ...args: readonly string[]) => run(args, { cwd: dir, today });

describe("voice notes among the photos of a card", () => {
  it("are kept with day and bed, and wait for their words", async () => {
    const { dir, from } = card({
      "long-bed/memo.m4a": m4a("2026-06-03T10:20:30Z"),
      "2026-06-04-walk.mp3": Buffer.from("ID3\x04\0\0\0\0\0\0", "latin1"),
      "old.amr": "#!AMR\n",
      "broken.wav": "this is no sound",
    });
    const { out, exitCode } = await plotreel(dir, "ingest", from);
    expect(exitCode).toBe(1);
    expect(out).toContain("3 voice notes brought in");
    expect(out).toContain("broken.wav: has a sound's name but no sound in it, not in the records");
    expect(Object.keys(filesIn(dir)).filter((file) => file.startsWith("photos/"))).toEqual([
      "photos/2026-06-04/2026-06-04-walk.mp3",
      "photos/brought-in.txt",
      "photos/long-bed/memo.m4a",
      "photos/old.amr",
    ]);
    const check = await plotreel(dir, "check");
    expect(check.out).toMatch(
      /^photos\/long-bed\/memo\.m4a:1:1 hint voice\/waits\n {2}A voice note of 3 June 2026 waits for its words\.$/m,
    );
    expect(check.out).toContain("A voice note of 4 June 2026 waits for its words.");
    expect(check.out).toContain("A voice note, of 1 July 2026 if its file's own time is right, waits for its words.");
    // A second time nothing comes twice.
    expect((await plotreel(dir, "ingest", from)).out).toContain("3 files there already");
  });

  it("become a note in their own words when these lie beside them, once, and only when it is wanted", async () => {
    const { dir, from } = card({ "long-bed/memo.m4a": m4a("2026-06-03T10:20:30Z"), "long-bed/memo.vtt": captions });
    const { out } = await plotreel(dir, "ingest", from);
    expect(out).toContain("A voice note has words beside it.");
    expect(out).toContain("plotreel ingest photos/long-bed/memo.vtt");
    const shown = await plotreel(dir, "ingest", "photos/long-bed/memo.vtt");
    expect(shown.out).toContain("the words of photos/long-bed/memo.m4a, of 2026-06-03, at Long Bed.");
    expect(shown.out).toContain("Nothing was written yet.");
    expect(existsSync(path.join(dir, "notes"))).toBe(false);
    await plotreel(dir, "ingest", "photos/long-bed/memo.vtt", "--write");
    expect(filesIn(dir)["notes/2026/2026-06-03-memo.md"]).toBe(
      '---\ndate: 2026-06-03\nbed: "Long Bed"\nprivate: true\nvoice note: "photos/long-bed/memo.m4a"\n---\n\n' +
        "- Sowed forty beetroot in the long bed\n- Picked 1.5 kg of courgettes\n- The robin followed me all morning\n- netted the strawberries\n",
    );
    const { events, readings, problems } = await recordsIn(dir);
    expect(events.map(({ kind, bed, count, grams }) => [kind, bed, count?.value ?? grams])).toEqual([
      ["sowed", "long-bed", 40],
      ["picked", "long-bed", 1500],
      ["did", "long-bed", undefined],
    ]);
    expect(readings.find(({ text }) => text.includes("robin"))?.as).toBe("story");
    expect(problems.filter(({ severity }) => severity === "error")).toEqual([]);
    expect((await plotreel(dir, "check")).out).not.toContain("voice/waits");
    const again = await plotreel(dir, "ingest", "photos/long-bed/memo.vtt", "--write");
    expect(again.err).toContain("A note says already what was spoken in photos/long-bed/memo.m4a.");
  });

  it("ask for a day that nothing tells for sure", async () => {
    const { dir, from } = card({ "memo.m4a": m4a(undefined), "memo.txt": "picked 2 kg of courgettes in Long Bed\n" });
    await plotreel(dir, "ingest", from);
    const asked = await plotreel(dir, "ingest", "photos/memo.txt", "--write");
    expect(asked.exitCode).toBe(2);
    expect(asked.err).toContain("If it was 2026-07-01, as its file has it, say --date 2026-07-01.");
    await plotreel(dir, "ingest", "photos/memo.txt", "--write", "--date", "2026-06-30");
    expect((await recordsIn(dir)).events.map(({ day, grams }) => [day, grams])).toEqual([["2026-06-30", 2000]]);
  });

  it("are not read from a program's own form, and it is said what is", async () => {
    const { dir, from } = card({ "memo.m4a": m4a("2026-06-03T10:20:30Z"), "memo.json": '{"segments":[]}' });
    await plotreel(dir, "ingest", from);
    const { err } = await plotreel(dir, "ingest", path.join(from, "memo.json"));
    expect(err).toContain("Let that program write them as .vtt, .srt or .txt.");
  });

  it("stay out of the public site, and so does what they are called", async () => {
    const { dir, from } = card({
      "long-bed/kitchen-talk.m4a": m4a("2026-06-03T10:20:30Z"),
      "long-bed/kitchen-talk.vtt": captions,
    });
    await plotreel(dir, "ingest", from);
    await plotreel(dir, "ingest", "photos/long-bed/kitchen-talk.vtt", "--write", "--public");
    expect((await plotreel(dir, "publish")).exitCode).toBe(0);
    const published = readdirSync(path.join(dir, "out/public"), { recursive: true, withFileTypes: true }).filter(
      (entry) => entry.isFile(),
    );
    expect(published.length).toBeGreaterThan(5);
    const given = published.map((entry) => readFileSync(path.join(entry.parentPath, entry.name), "latin1"));
    expect(given.some((text) => /beetroot/i.test(text))).toBe(true);
    expect(published.filter(({ name }) => /\.(?:m4a|vtt)$/.test(name))).toEqual([]);
    for (const secret of [/spare key/, /kitchen-talk/, /voice note/i])
      expect(given.filter((text) => secret.test(text))).toEqual([]);
  }, 120_000);
});

describe("what is said", () => {
  const said = (words: string, text: string) => linesSaid({ words, text, bytes: Buffer.from(text) });

  it("is a line for each sentence, and numbers and short words do not end one", () => {
    expect(
      said("a.txt", "Picked approx. 3 kg of Sungold. Row 2 has blight! Sprayed nothing.\n\n- lost 1.5 m of net\n"),
    ).toEqual(["Picked approx. 3 kg of Sungold", "Row 2 has blight!", "Sprayed nothing", "lost 1.5 m of net"]);
  });

  it("never begins as a heading, a list within a list or a settled reading", () => {
    expect(said("a.txt", "# Long Bed\n= sowed 3 leeks\n> - x marks it\n---\n")).toEqual([
      "Long Bed",
      "sowed 3 leeks",
      "x marks it",
    ]);
  });

  it("is taken once from captions that keep showing the line before", () => {
    const rolling =
      "1\n00:00:01,000 --> 00:00:02,000\nnetted the peas\n\n2\n00:00:02,000 --> 00:00:03,000\nnetted the peas\n\n3\n00:00:09,000 --> 00:00:10,000\n<i>fed</i> the leeks\n";
    expect(said("a.srt", rolling)).toEqual(["netted the peas", "fed the leeks"]);
  });
});
