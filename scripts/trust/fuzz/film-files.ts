/** Captions as other programs write them, and the boxes of film files. */
import fc from "fast-check";
import { clipFacts } from "../../../src/photos/clip-facts.ts";
import { openCaptions } from "../../../src/wrap/index.ts";
import type { Target } from "./ground.ts";
import { line } from "./hostile-text.ts";
import { holds } from "./oracle.ts";

const time = fc.constantFrom(
  "0:00:01.00",
  "0:00:03,500",
  "00:01",
  "1:02:03:04",
  "0:0:0.0",
  "-1",
  "9:99:99.99",
  "",
  "x",
);

const script = fc
  .tuple(
    fc.constantFrom(
      "[Script Info]\n\n[Events]\nFormat: Layer, Start, End, Style, Name, MarginL, MarginR, MarginV, Effect, Text\n",
      "[Script Info]\n[Events]\nFormat: Text, End, Start\n",
      "[Script Info]\n[events]\nFormat:\n",
    ),
    fc.array(fc.tuple(time, time, line), { maxLength: 8 }),
  )
  .map(
    ([head, rows]) =>
      head + rows.map(([a, b, text]) => `Dialogue: 0,${a},${b},Default,,0,0,0,,${text}\\N{\\i1}\n`).join(""),
  );

const sheet = fc
  .array(fc.tuple(time, time, line), { maxLength: 8 })
  .map((rows) => rows.map(([a, b, text]) => `${a},${b}\n${text}\n`).join("\n"));

const listed = fc
  .array(fc.tuple(time, fc.constantFrom("\n", " ", "\t", " - ", ") ", "] "), line), { maxLength: 10 })
  .map((rows) => rows.map((parts) => parts.join("")).join("\n"));

const others = fc
  .tuple(
    fc.constantFrom(
      "<?xml version='1.0'?><tt>",
      "{",
      "[{",
      "{12}{30}",
      "Scenarist_SCC V1.0\n",
      "[00:01.00]",
      "\ufeff",
      "\r\r",
    ),
    line,
  )
  .map((parts) => parts.join(""));

export const otherCaptions: Target<{ readonly file: string; readonly text: string }> = {
  name: "captions of other programs",
  cases: fc.record({
    file: fc.constantFrom("a.ass", "a.sbv", "a.txt", "a.lrc", "a.ttml", "a"),
    text: fc.oneof(script, sheet, listed, others),
  }),
  share: 40,
  hold: ({ file, text }) => holds(text, () => openCaptions(file, new TextEncoder().encode(text), 60_000)),
};

/** A box of a type that is known, whose length is its own, too long, too short, or said in eight bytes. */
const { box } = fc.letrec<{ box: readonly number[] }>((tie) => ({
  box: fc
    .tuple(
      fc.constantFrom(
        ...["ftyp", "moov", "mvhd", "trak", "mdia", "mdhd", "hdlr", "minf", "stbl", "stts", "stsd", "stco", "tkhd"],
        ...["tmcd", "udta", "meta", "keys", "ilst", "mdat", "free", "©mak"],
      ),
      fc.oneof(
        { maxDepth: 4 },
        fc.array(fc.oneof(fc.nat(255), fc.constant(0)), { maxLength: 60 }),
        fc.array(tie("box"), { maxLength: 4 }).map((all) => all.flat()),
      ),
      fc.constantFrom(0, 0, 0, 0, 0, 1, -4, 400, 2 ** 31),
      fc.constantFrom(false, false, false, true),
    )
    .map(([type, content, off, isLong]) => {
      const size = content.length + (isLong ? 16 : 8) + off;
      const long = (value: number) => [24, 16, 8, 0].map((shift) => (value >>> shift) & 255);
      const name = [...Buffer.from(type, "latin1")].slice(0, 4);
      return isLong
        ? [...long(1), ...name, ...long(0), ...long(size), ...content]
        : [...long(size), ...name, ...content];
    }),
}));

export const clipBoxes: Target<readonly number[]> = {
  name: "clip boxes",
  cases: fc.array(box, { maxLength: 5 }).map((all) => all.flat()),
  share: 60,
  hold: (bytes) =>
    holds("", () => {
      const content = Uint8Array.from(bytes);
      return clipFacts("clips/IMG_20260616_101112.mp4", {
        read: async () => content,
        readAt: async (_file, from, length) => content.subarray(from, from + length),
      });
    }),
};
