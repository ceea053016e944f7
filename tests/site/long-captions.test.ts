/** Captions of 400,000 words are wrapped and published in seconds, and twice as many take twice as long. */
import { beforeAll, describe, expect, test } from "vitest";
import type { Episode, Garden } from "../../src/model.ts";
import { publicCaptions } from "../../src/site/index.ts";
import { wrapEpisode } from "../../src/wrap/index.ts";
import { attempt } from "./leak-attempts.ts";

const FILM = "2026-05-tour";
let garden: Garden;
let open: Garden;

beforeAll(async () => {
  ({ garden, open } = await attempt({}));
});

/** What a film may be full of. */
const speeches: Readonly<Record<string, readonly string[]>> = {
  talk: [
    "So here we are at the long bed.",
    "The Musselburgh leeks went in last May, twelve of them,",
    "and they are fine.",
  ],
  "no full stops": ["and the musselburgh leeks and the long bed and what we did and"],
  "promises without full stops": ["and i'll show you the leeks again in july and"],
  "figures without full stops": ["and we planted twelve musselburgh leeks on the 24th of may and"],
  beds: ["So here we are at the long bed.", "And now the yard bed."],
  promises: ["I'll show you the leeks again in July."],
  questions: ["What do you do about slugs on leeks?"],
  "lone quotation marks": ["' ’ ' ’ ' ’ ' ’ ' ’"],
  "the word that begins a name": ["Secret Secret Secret Secret Secret"],
};

function captionsOf(lines: readonly string[], words: number, perCue: number): Uint8Array {
  const cues: string[] = [];
  const time = (ms: number) => new Date(ms).toISOString().slice(11, 23);
  let now = 0;
  for (let said = 0, line = 0; said < words; now += 2000) {
    const text: string[] = [];
    for (let here = 0; here < perCue && said < words; line += 1) {
      const next = lines[line % lines.length] ?? "";
      const length = next.split(" ").length;
      text.push(next);
      here += length;
      said += length;
    }
    cues.push(`${time(now / 10)} --> ${time(now / 10 + 150)}\n${text.join(" ")}\n`);
  }
  return new TextEncoder().encode(`WEBVTT\n\n${cues.join("\n")}`);
}

/** Seconds of processor time, which other programs on the machine hardly lengthen. */
function seconds(work: () => unknown): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1e6;
}

const wrapped = (bytes: Uint8Array) =>
  wrapEpisode({ garden, episode: garden.episodes.get(FILM) as Episode, captions: { file: "c.vtt", bytes } });
const published = (bytes: Uint8Array) =>
  publicCaptions(garden, open, { captions: new Map([[FILM, { file: "c.vtt", bytes }]]) });

describe.each(Object.entries(speeches))("%s", (_, lines) => {
  test.each([
    ["in many captions", 8],
    ["in one", 1e9],
  ])("%s", (_name, perCue) => {
    for (const work of [wrapped, published]) {
      work(captionsOf(lines, 5_000, perCue));
      const quarter = seconds(() => work(captionsOf(lines, 25_000, perCue)));
      const whole = seconds(() => work(captionsOf(lines, 100_000, perCue)));
      // Four times as much; a square would be sixteen times. Half a second is what the collector may take.
      expect(whole).toBeLessThan(7 * quarter + 0.5);
    }
  });
});

test("400,000 words", () => {
  const bytes = captionsOf(speeches.talk ?? [], 400_000, 8);
  expect(seconds(() => wrapped(bytes))).toBeLessThan(20);
  expect(seconds(() => published(bytes))).toBeLessThan(20);
});
