/**
 * Captions to upload from automatic ones. Figures: the timed text guide of the University of Tennessee Libraries (42 letters a
 * line, two lines, 5/6 to 7 seconds; 20 letters a second for adults is common practice); the demo's films are our own mis-hearings.
 */
import { parseText } from "media-captions";
import { describe, expect, it } from "vitest";
import { demoGarden, heldBack, labelledFilm, tuned } from "../../scripts/mis-hearing/labelled-films.ts";
import { captionsToFill, openCaptions, plainCaptions, wrapEpisode, writeCaptions } from "../../src/wrap/index.ts";
import { smallGarden } from "./small-film.ts";

async function clean(text: string, file = "june.vtt") {
  const { garden, episode } = await smallGarden();
  return wrapEpisode({ garden, episode, captions: { file, bytes: Buffer.from(text) } }).clean;
}

/** Each line shown below the one before, as automatic captions roll. */
function rolling(lines: readonly string[], seconds = 3): string {
  const two = (n: number) => String(n).padStart(2, "0");
  const time = (at: number) => `00:${two(Math.floor(at / 60))}:${two(at % 60)}.000`;
  const cues = lines.map(
    (line, at) =>
      `${time(at * seconds)} --> ${time((at + 1) * seconds)}\n${at === 0 ? line : `${lines[at - 1]}\n${line}`}\n`,
  );
  return `WEBVTT\n\n${cues.join("\n")}`;
}

const walk = [
  "so this is the long bed and i put in twelve",
  "muscle bra leeks and they cost me £3.50 &amp; a",
  "bit of string in june and monday was the day",
  "we may march on to the squash bed with five",
  "ooh cheeky carry plants that i'm really proud to own",
];

describe("the clean set", () => {
  it("says every word once, names whole, capitals only where they are certain", async () => {
    const cues = (await clean(rolling(walk)))?.cues ?? [];
    const said = cues.map(({ text }) => text.replaceAll("\n", " ")).join(" ");
    expect(said).toBe(
      "So this is the long bed and I put in twelve Musselburgh leeks and they cost me £3.50 & a bit of string in June and Monday was the day we may march on to the squash bed with five Uchiki Kuri plants that I'm really proud to own",
    );
    for (const { text } of cues) {
      const lines = text.split("\n");
      expect(lines.length).toBeLessThanOrEqual(2);
      for (const line of lines) {
        expect(line.length).toBeLessThanOrEqual(42);
        expect(line).not.toMatch(/Uchiki$|^Kuri/);
        expect(line).not.toMatch(/\b(?:the|a|of)$/);
      }
    }
  });

  it("sets sentences apart and gives them capitals where the captions have marks", async () => {
    const text = rolling([
      "good morning. this is the long bed.",
      "is it not grand? yes, it is.",
      "it is. we go on now.",
      "and on. goodbye.",
    ]);
    expect((await clean(text))?.cues.map((cue) => cue.text.replaceAll("\n", " ")).join(" ")).toBe(
      "Good morning. This is the long bed. Is it not grand? Yes, it is. It is. We go on now. And on. Goodbye.",
    );
  });

  it("tells where somebody speaks faster than can be read, and leaves nothing out", async () => {
    const fast = walk.map((line) => `${line} ${line}`);
    const made = await clean(rolling(fast, 2));
    expect(made?.fast.length).toBeGreaterThan(0);
    expect((await clean(rolling(walk, 6)))?.fast).toEqual([]);
  });

  it("keeps a sound once, while nobody speaks", async () => {
    const music = "WEBVTT\n\n00:20.000 --> 00:22.000\n[Music]\n\n00:22.000 --> 00:24.000\n[Music]\n";
    const made = await clean(rolling(walk) + music.replace("WEBVTT\n", ""));
    expect(made?.cues.at(-1)).toEqual({ start: 20_000, end: 24_000, text: "[Music]" });
  });

  it("is made of text with times too, and of nothing that reads well already", async () => {
    expect((await clean("0:00 The long bed. Twelve muscle bra leeks.\n0:04 Goodbye.\n", "a.txt"))?.cues).toHaveLength(
      2,
    );
    expect(await clean("WEBVTT\n\n00:00.000 --> 00:03.000\nThe long bed.\n")).toBeUndefined();
  });

  it("of the demo's automatic films has their words in their order, in bounds, and another parser reads it", async () => {
    const garden = await demoGarden();
    let compared = 0;
    for (const id of [...tuned, ...heldBack]) {
      const { episode, automatic } = labelledFilm(garden, id);
      const captions = { file: "a.vtt", bytes: Buffer.from(writeCaptions(automatic.cues, "vtt")) };
      const { clean: made, corrected = "" } = wrapEpisode({ garden, episode, captions });
      if (made === undefined) continue;
      const written = plainCaptions(made.cues, "vtt");
      const theirs = await parseText(written, { type: "vtt" });
      expect(theirs.cues).toHaveLength(made.cues.length);
      const plain = (bytes: string) => openCaptions("b.vtt", Buffer.from(bytes)).speech.words.map((word) => word.plain);
      expect(plain(written).join(" ")).toBe(plain(corrected).join(" "));
      made.cues.forEach(({ start, end, text }, at) => {
        expect(end).toBeGreaterThan(start);
        expect(end - start).toBeLessThanOrEqual(7000 + 1500);
        expect(start).toBeGreaterThanOrEqual(made.cues[at - 1]?.end ?? 0);
        for (const line of text.split("\n")) expect(line.length).toBeLessThanOrEqual(42);
      });
      compared += 1;
    }
    expect(compared).toBeGreaterThanOrEqual(8);
  });

  it("leaves room for another language at the same times", () => {
    expect(captionsToFill([{ start: 0, end: 2000, text: "The long\nbed." }])).toBe(
      "WEBVTT\n\nNOTE The long / bed.\n\n00:00:00.000 --> 00:00:02.000\n\n",
    );
  });
});
