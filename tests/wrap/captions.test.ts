import fc from "fast-check";
import { parseText } from "media-captions";
import { describe, expect, it } from "vitest";
import { decodeCaptions } from "../../src/wrap/caption-encoding.ts";
import { readTime, sayTime, writeTime } from "../../src/wrap/caption-times.ts";
import { readCaptions } from "../../src/wrap/read-captions.ts";
import { writeCaptions } from "../../src/wrap/write-captions.ts";

const vtt = (times: string) => readCaptions("a.vtt", `WEBVTT\n\n${times}\nthe leeks\n`);

describe("times", () => {
  // W3C, WebVTT: hours optional but two digits at least, minutes and seconds 00-59, a full stop, three digits.
  it.each([
    ["00:00.000 --> 00:04.500", 0, 4500],
    ["00:00:05.000 --> 00:00:09.000 align:start line:90%", 5000, 9000],
    ["100:00:00.000 --> 100:00:01.000", 360_000_000, 360_001_000],
  ])("valid: %s", (times, start, end) => {
    const { cues, problems } = vtt(times);
    expect(problems).toEqual([]);
    expect(cues[0]).toMatchObject({ start, end, text: "the leeks" });
  });

  it.each([
    ["0:00:05.000 --> 00:00:09.000", 'The time "0:00:05.000" has an hour of one digit.'],
    ["00:05,000 --> 00:06.000", 'The time "00:05,000" has "," before its thousandths.'],
    ["00:05.00 --> 00:06.000", 'The time "00:05.00" has thousandths that are not three digits.'],
    ["60:00.000 --> 01:01:00.000", 'The time "60:00.000" cannot be read.'],
    ["00:61.000 --> 01:01:00.000", 'The time "00:61.000" cannot be read.'],
    ["00:05.000-->00:06.000", "The arrow has no space on each side."],
    ["00:06.000 --> 00:05.000", "This caption ends before it begins."],
    ["-00:01.000 --> 00:05.000", 'The time "-00:01.000" is before the film begins.'],
  ])("invalid, said and kept: %s", (times, what) => {
    const { cues, problems } = vtt(times);
    expect(problems.map((problem) => problem.what)).toContain(what);
    expect(cues).toHaveLength(1);
    expect(cues[0]?.end).toBeGreaterThan(cues[0]?.start ?? 0);
  });

  it("are rounded before they are split", () => {
    expect(writeTime(3_599_999.6, "vtt")).toBe("01:00:00.000");
    expect(writeTime(3_661_500, "vtt")).toBe("01:01:01.500");
    expect(writeTime(3_661_500, "srt")).toBe("01:01:01,500");
    expect(writeTime(0.5, "vtt")).toBe("00:00:00.001");
    expect([0, 725_000, 3_725_999].map(sayTime)).toEqual(["0:00", "12:05", "1:02:05"]);
  });

  it("come back as they were written", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 400_000_000 }),
        fc.constantFrom("vtt" as const, "srt" as const),
        (ms, format) => {
          expect(readTime(writeTime(ms, format), format)).toEqual({ ms, fault: undefined });
        },
      ),
    );
  });
});

describe("files", () => {
  it("are read as SubRip, numbers and all", () => {
    const { format, cues, problems } = readCaptions(
      "a.srt",
      "1\n00:00:01,000 --> 00:00:02,500\nthe leeks\nand more\n\n2\n00:00:03,000 --> 00:00:04,000\n1859\n",
    );
    expect({ format, problems }).toEqual({ format: "srt", problems: [] });
    expect(cues.map(({ start, text }) => [start, text])).toEqual([
      [1000, "the leeks\nand more"],
      [3000, "1859"],
    ]);
  });

  it("are read as plain timed text", () => {
    const { format, cues } = readCaptions(
      "a.txt",
      "0:00 Good morning from the plot.\n\n[1:05] - And the bean row.\nStill the bean row.\n\n1:02:10 Goodbye.\n",
    );
    expect(format).toBe("timed text");
    expect(cues.map(({ start, end, text }) => [start, end, text])).toEqual([
      [0, 65_000, "Good morning from the plot."],
      [65_000, 3_730_000, "And the bean row.\nStill the bean row."],
      [3_730_000, 3_732_000, "Goodbye."],
    ]);
  });

  it("leave out notes, styles and regions, and say what is out of order", () => {
    const text =
      "WEBVTT - a film\n\nNOTE\nnot said\n\nSTYLE\n::cue { color: red }\n\nintro\n00:05.000 --> 00:06.000\nsecond\n\n00:01.000 --> 00:02.000\nfirst\n";
    const { cues, problems } = readCaptions("a.vtt", text);
    expect(cues.map((cue) => cue.text)).toEqual(["first", "second"]);
    expect(problems.map(({ rule, line }) => [rule, line])).toEqual([["captions/out-of-order", 13]]);
  });

  it("say once that a fault runs through the whole file", () => {
    const text = `WEBVTT\n\n${Array.from({ length: 20 }, (_, i) => `0:00:${String(i + 10)}.000 --> 00:00:${i + 11}.000\nx\n`).join("\n")}`;
    const { cues, problems } = readCaptions("a.vtt", text);
    expect(cues).toHaveLength(20);
    expect(problems).toHaveLength(3);
    expect(problems[2]?.what).toContain("(17 more like this below.)");
  });

  it("with no caption say so", () => {
    expect(readCaptions("a.vtt", "").problems[0]).toMatchObject({ rule: "captions/none", severity: "error" });
  });

  it.each([
    ["utf-8", Buffer.from("\uFEFFWEBVTT\r\n\r\ncafé", "utf8")],
    ["utf-16le", Buffer.from("\uFEFFWEBVTT\r\n\r\ncafé", "utf16le")],
    ["utf-16le", Buffer.from("WEBVTT\r\n\r\ncafé", "utf16le")],
    ["utf-16be", Buffer.from("\uFEFFWEBVTT\r\n\r\ncafé", "utf16le").swap16()],
    ["windows-1252", Buffer.from("WEBVTT\r\n\r\ncaf\u00e9", "latin1")],
  ])("in %s are recognised", (encoding, bytes) => {
    expect(decodeCaptions(bytes)).toMatchObject({ encoding, text: "WEBVTT\n\ncafé" });
  });
});

describe("writing", () => {
  const spoken = fc
    .string({ unit: fc.constantFrom("a", "b", " ", "-", ">", "é", "\n", "1"), maxLength: 30 })
    .filter((text) => text.trim() !== "");
  const written = fc
    .array(fc.record({ gap: fc.nat(5000), length: fc.integer({ min: 1, max: 9000 }), text: spoken }), {
      minLength: 1,
      maxLength: 20,
    })
    .map((drawn) => {
      let at = 0;
      return drawn.map(({ gap, length, text }) => {
        const start = at + gap;
        at = start + length;
        return { start, end: start + length, text };
      });
    });

  it("loses no cue and no text, by our reader and by media-captions", async () => {
    await fc.assert(
      fc.asyncProperty(written, fc.constantFrom("vtt" as const, "srt" as const), async (cues, format) => {
        const file = writeCaptions(cues, format);
        const expected = cues.map(({ start, end, text }) => [
          start,
          end,
          text.replaceAll("-->", "→").replace(/\s+/g, " ").trim(),
        ]);
        const ours = readCaptions(`a.${format}`, file);
        expect(ours.problems).toEqual([]);
        expect(ours.cues.map(({ start, end, text }) => [start, end, text.replace(/\s+/g, " ").trim()])).toEqual(
          expected,
        );
        const theirs = await parseText(file, { type: format });
        expect(
          theirs.cues.map(({ startTime, endTime }) => [Math.round(startTime * 1000), Math.round(endTime * 1000)]),
        ).toEqual(cues.map(({ start, end }) => [start, end]));
      }),
      { numRuns: 200 },
    );
  });
});
