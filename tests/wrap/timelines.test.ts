/**
 * What editing programs are given. Timecode: SMPTE ST 12-1 drop frame as tables of it have it (17,982 pictures in ten minutes,
 * 107,892 in an hour at 29.97; agreed with ffmpeg and npm smpte-timecode 1.3.6 when the values were gathered). Files: required
 * keys of OpenTimelineIO's own readers (0.14 to 0.18), the columns of CMX 3600, the order of children in FCPXML 1.9.
 */
import fc from "fast-check";
import { parseHTML } from "linkedom";
import { describe, expect, it } from "vitest";
import type { FrameRate } from "../../src/model.ts";
import type { LoggedClip } from "../../src/wrap/clips/clip-log.ts";
import { frameOfLabel, framesIn, hasDropFrame, labelOfFrame, readRate } from "../../src/wrap/hand-over/timecode.ts";
import { shortName } from "../../src/wrap/hand-over/timeline.ts";
import {
  editList,
  filmTimeline,
  finalCutXml,
  markList,
  marksOf,
  openTimeline,
  roughCut,
} from "../../src/wrap/index.ts";
import { wrapOf } from "./small-film.ts";

const ntsc: FrameRate = { num: 30_000, den: 1001 };
const fast: FrameRate = { num: 60_000, den: 1001 };
const pal: FrameRate = { num: 25, den: 1 };

describe("timecode", () => {
  it.each([
    [ntsc, "00:00:59;29", 1799],
    [ntsc, "00:01:00;02", 1800],
    [ntsc, "00:09:59;29", 17_981],
    [ntsc, "00:10:00;00", 17_982],
    [ntsc, "00:10:00;02", 17_984],
    [ntsc, "00:59:59;29", 107_891],
    [ntsc, "01:00:00;00", 107_892],
    [ntsc, "10:00:00;00", 1_078_920],
    [fast, "00:01:00;04", 3600],
    [fast, "01:00:00;00", 215_784],
    [pal, "01:00:00:00", 90_000],
  ])("%j %s is picture %i", (rate, label, frame) => {
    expect(frameOfLabel(label, rate)).toBe(frame);
    expect(labelOfFrame(frame, rate)).toBe(label);
  });

  it.each(["00:01:00;00", "00:01:00;01", "00:00:00;30", "00:60:00;00"])("%s is no label", (label) => {
    expect(frameOfLabel(label, ntsc)).toBeUndefined();
  });

  it("comes back for every picture of a day", () => {
    for (const [rate, day] of [
      [ntsc, 2_589_408],
      [fast, 5_178_816],
    ] as const) {
      fc.assert(
        fc.property(fc.nat(day - 1), (frame) => frameOfLabel(labelOfFrame(frame, rate), rate) === frame),
        { numRuns: 3000 },
      );
      // Around every minute and ten minutes of two hours, where labels are left out.
      for (let minute = 0; minute < 120; minute += 1) {
        const about = Math.floor((minute * 60 * rate.num) / rate.den);
        for (let frame = Math.max(0, about - 5); frame < about + 5; frame += 1)
          expect(frameOfLabel(labelOfFrame(frame, rate), rate)).toBe(frame);
      }
    }
    // An hour of drop frame lasts 3,599.9964 s; of 29.97 without it 3,603.6 s.
    expect((107_892 * 1001) / 30_000).toBeCloseTo(3599.9964, 4);
    expect((108_000 * 1001) / 30_000).toBeCloseTo(3603.6, 6);
    expect(labelOfFrame(108_000, ntsc, false)).toBe("01:00:00:00");
  });

  it("is never past the moment, and 23.976 has no drop frame", () => {
    expect([framesIn(999.9, pal), framesIn(1000, pal), framesIn(1001, ntsc), framesIn(1000, ntsc)]).toEqual([
      24, 25, 30, 29,
    ]);
    expect([ntsc, fast, { num: 24_000, den: 1001 }, pal].map(hasDropFrame)).toEqual([true, true, false, false]);
    expect(["25", "29.97", "23.976", "30000/1001", "fast", "0", "25/0"].map(readRate)).toEqual([
      pal,
      ntsc,
      { num: 24_000, den: 1001 },
      ntsc,
      undefined,
      undefined,
      undefined,
    ]);
  });
});

const walk = [
  "The long bed. Leeks, Musselburgh, twelve of them.",
  "Planted on the twenty-fourth of May, so three weeks today.",
  "The butterfly net's on them.",
  "I'll show you the leeks again in July, and the whole of the net, when it has kept the moth away for us.",
  "Now the squash bed. Five Uchiki Kuri, doing nicely.",
  "They're up to my knee already, and it's June.",
  "I can't explain it & <nobody> can.",
  "Somebody will know.",
  "Last, the tomato pots. Four Harbinger tomatoes.",
  "I'll weigh the first of them on camera.",
  "And that's it.",
  "Thanks for walking round. See you.",
];

async function film(rate: FrameRate) {
  const { wrap } = await wrapOf(walk);
  return filmTimeline(
    wrap.title,
    wrap.length,
    marksOf(wrap, (bed) => bed ?? "At no bed"),
    rate,
  );
}

const clip = (more: Partial<LoggedClip>): LoggedClip => ({
  file: "GX010001.MP4",
  camera: "Lens 4",
  bed: "long-bed",
  shot: "S1.1",
  take: 1,
  mark: "good",
  isBest: true,
  isSure: true,
  isVariable: false,
  within: [],
  begins: 0,
  length: 30_000,
  rate: ntsc,
  width: 1920,
  height: 1080,
  hasSound: true,
  ...more,
});
const clips = [
  clip({}),
  clip({ file: "a/GX010002.MP4", isBest: false, mark: "no good" }),
  clip({
    file: "a/GX010003 café.MP4",
    shot: "S1.2",
    begins: 60_000,
    startFrame: 107_892,
    spoken: { from: 4000, to: 9000 },
  }),
  clip({ file: "b/IMG_0004.MOV", shot: "S2.1", begins: 90_000, length: 9000, rate: pal, isVariable: true }),
];
const names = { stop: () => "Long Bed", shot: () => "the leeks, wide & close" };
const cut = () => {
  const made = roughCut({ name: "June walk", clips, names, url: (file) => `file:///card/${encodeURI(file)}` });
  if (made === undefined) throw new Error("no cut");
  return made;
};

describe("the rough cut", () => {
  it("has the best takes in order, handles at both ends, and the words where captions tell of them", () => {
    const { rate, isDrop, clips: made } = cut();
    expect([rate, isDrop]).toEqual([ntsc, true]);
    expect(made.map(({ reel }) => reel?.file)).toEqual(["GX010001.MP4", "a/GX010003 café.MP4", "b/IMG_0004.MOV"]);
    const spans = made.map(({ from, frames }) => [from, from + (frames * 1001) / 30]);
    // Two seconds off thirty, a second around what is said, a tenth off nine; on whole pictures.
    for (const [index, [from, to]] of [
      [2000, 28_000],
      [3000, 10_000],
      [900, 8100],
    ].entries()) {
      expect(spans[index]?.[0]).toBeGreaterThanOrEqual(from as number);
      expect(spans[index]?.[0]).toBeLessThan((from as number) + 34);
      expect(spans[index]?.[1]).toBeLessThanOrEqual((to as number) + 0.1);
      expect(spans[index]?.[1]).toBeGreaterThan((to as number) - 34);
    }
  });

  it("is none without a good take", () => {
    const nothing = clips.map((one) => ({ ...one, isBest: false }));
    expect(roughCut({ name: "x", clips: nothing, names, url: String })).toBeUndefined();
  });
});

describe("OpenTimelineIO", () => {
  /** What the project's readers ask for, by schema; everything else may be missing. */
  const required: Readonly<Record<string, readonly string[]>> = {
    "Timeline.1": ["tracks"],
    "Stack.1": ["children"],
    "Track.1": ["children", "kind"],
    "Clip.1": ["media_reference"],
    "ExternalReference.1": ["target_url"],
    "MissingReference.1": [],
    "Marker.2": ["marked_range", "range", "color"],
    "TimeRange.1": ["start_time", "duration"],
    "RationalTime.1": ["rate", "value"],
  };
  const objects = (value: unknown): Record<string, unknown>[] =>
    typeof value !== "object" || value === null
      ? []
      : [
          ...("OTIO_SCHEMA" in value ? [value as Record<string, unknown>] : []),
          ...Object.values(value).flatMap(objects),
        ];

  it("has no schema that a reader since 0.14 does not know, and whole pictures of a real rate", async () => {
    for (const timeline of [await film(ntsc), cut()]) {
      const all = objects(JSON.parse(JSON.stringify(openTimeline(timeline))));
      expect(all.length).toBeGreaterThan(20);
      for (const one of all) {
        const keys = required[one.OTIO_SCHEMA as string];
        expect(keys, String(one.OTIO_SCHEMA)).toBeDefined();
        for (const key of keys ?? []) expect(one).toHaveProperty(key);
        if (one.OTIO_SCHEMA === "Marker.2") expect(one.range).toEqual(one.marked_range);
        if (one.OTIO_SCHEMA === "RationalTime.1") {
          expect(Number.isInteger(one.value)).toBe(true);
          expect([29.97002997002997, 25]).toContain(one.rate);
        }
      }
    }
  });

  it("has a film's marks on the stack, short names, and the sentence beside them", async () => {
    const { tracks } = JSON.parse(JSON.stringify(openTimeline(await film(pal))));
    expect(tracks.markers.length).toBeGreaterThan(5);
    for (const { name, comment, metadata } of tracks.markers) {
      expect(name.length).toBeLessThanOrEqual(40);
      expect(comment.startsWith(metadata.plotreel.said)).toBe(true);
    }
    const promise = tracks.markers.find(({ color }: { color: string }) => color === "ORANGE");
    // Said at 0:09: picture 225 of 25 a second.
    expect(promise.marked_range.start_time).toEqual({ OTIO_SCHEMA: "RationalTime.1", rate: 25, value: 225 });
  });

  it("tells a file's times in its own rate, from its own timecode on", () => {
    const [, second, third] = JSON.parse(JSON.stringify(openTimeline(cut()))).tracks.children[0].children;
    expect(second.media_reference).toMatchObject({
      target_url: "file:///card/a/GX010003%20caf%C3%A9.MP4",
      available_range: { start_time: { value: 107_892 }, duration: { value: 899 } },
    });
    expect(second.source_range.start_time.value).toBe(107_892 + 90);
    expect(third.source_range.start_time.rate).toBe(25);
  });

  it("cuts names at a word", () => {
    expect(shortName("Show the leeks again in July, and the whole of the net")).toBe(
      "Show the leeks again in July, and the…",
    );
    expect(shortName("Long Bed")).toBe("Long Bed");
  });
});

describe("the edit list", () => {
  const events = (list: string, rate: FrameRate) =>
    [...list.matchAll(/^(\d{3}) {2}([A-Z0-9]{1,8}) *V {5}C {8}(\S{11}) (\S{11}) (\S{11}) (\S{11})$/gm)].map(
      (found) => ({
        reel: found[2],
        frames: found.slice(3, 7).map((label) => frameOfLabel(label, rate) as number),
      }),
    );

  it("has equal lengths of source and record, each event where the last one ended, in ASCII", () => {
    const list = editList(cut());
    expect(list).toMatch(
      /^TITLE: June walk, rough cut\nFCM: DROP FRAME\n\* PLOTREEL RATE 29\.97 DF\n\n001 {2}GX010001 V/,
    );
    expect(list).toContain("* FROM CLIP NAME: GX010003 cafe.MP4");
    expect(list).not.toContain("FROM CLIP:");
    expect(list).toMatch(/^[\x20-\x7e\n]*$/);
    const all = events(list, ntsc);
    expect(all.map(({ reel }) => reel)).toEqual(["GX010001", "GX010003", "IMG0004"]);
    // One hour of drop frame is picture 107,892.
    expect(all[0]?.frames[2]).toBe(107_892);
    expect(all[1]?.frames[0]).toBe(107_892 + 90);
    all.forEach(({ frames: [from = 0, to = 0, at = 0, end = 0] }, index) => {
      expect(to - from).toBe(end - at);
      if (index > 0) expect(at).toBe(all[index - 1]?.frames[3]);
    });
  });

  it("has a film's marks by record time, and as a list of their own", async () => {
    const timeline = await film(pal);
    const list = editList(timeline);
    expect(list).toContain("FCM: NON-DROP FRAME");
    expect(list).toMatch(/^\* LOC: 01:00:09:00 YELLOW {2}show the leeks again in July/m);
    expect(list.match(/^\* LOC:/gm)).toHaveLength(timeline.marks.length);
    const marks = markList(timeline);
    expect(marks.match(/^ \|C:ResolveColor(?:Green|Cyan|Blue|Yellow|Red|Pink) \|M:[^|\n]+ \|D:\d+$/gm)).toHaveLength(
      timeline.marks.length,
    );
    for (const { frames } of events(marks, pal)) expect((frames[1] ?? 0) - (frames[0] ?? 0)).toBe(1);
  });
});

describe("FCPXML", () => {
  /** Order of children as the definition of 1.9 has it. */
  const order: Readonly<Record<string, readonly string[]>> = {
    fcpxml: ["resources", "library"],
    resources: ["format", "asset"],
    asset: ["media-rep"],
    library: ["event"],
    event: ["project"],
    project: ["sequence"],
    sequence: ["spine"],
    spine: ["asset-clip", "gap"],
    "asset-clip": ["note", "marker", "chapter-marker"],
    gap: ["note", "marker", "chapter-marker"],
  };
  const needs: Readonly<Record<string, readonly string[]>> = {
    format: ["id", "frameDuration"],
    asset: ["id", "format", "start", "duration"],
    "media-rep": ["src"],
    sequence: ["format"],
    "asset-clip": ["ref", "offset", "start", "duration"],
    gap: ["offset", "start", "duration"],
    marker: ["start", "value"],
    "chapter-marker": ["start", "value"],
  };

  it.each([
    ["the film at 29.97", () => film(ntsc), ntsc],
    ["the film at 25", () => film(pal), pal],
    ["the rough cut", async () => cut(), ntsc],
  ])("%s stands in the order of the definition, every edge on a whole picture", async (_, make, rate) => {
    const text = finalCutXml(await make());
    expect(text).toMatch(/^<\?xml version="1\.0" encoding="UTF-8"\?>\n<!DOCTYPE fcpxml>\n<fcpxml version="1\.9">/);
    const { document } = parseHTML(text.slice(text.indexOf("<fcpxml")).replace(/<([\w-]+)([^<>]*)\/>/g, "<$1$2></$1>"));
    const root = document.querySelector("fcpxml");
    let seen = 0;
    const look = (element: Element) => {
      const name = element.localName;
      seen += 1;
      for (const attribute of needs[name] ?? [])
        expect(element.hasAttribute(attribute), `${name} ${attribute}`).toBe(true);
      const ranks = [...element.children].map(({ localName }) => (order[name] ?? []).indexOf(localName));
      expect(ranks, name).not.toContain(-1);
      if (name !== "spine") expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
      for (const child of element.children) look(child);
    };
    look(root as unknown as Element);
    expect(seen).toBeGreaterThan(12);
    for (const line of text.match(/<(?:asset-clip|gap|marker|chapter-marker|sequence)[^>]*>/g) ?? []) {
      for (const [, num, den = "1"] of line.matchAll(/(?:start|offset|duration)="(\d+)(?:\/(\d+))?s"/g)) {
        const pictures = (Number(num) * rate.num) / (Number(den) * rate.den);
        expect(Math.abs(pictures - Math.round(pictures)), line).toBeLessThan(1e-6);
      }
    }
    expect(text).not.toMatch(/\d\.\d+s"/);
  });

  it("writes names so that they stay names", async () => {
    const text = finalCutXml(await film(pal));
    expect(text).not.toMatch(/<nobody>/);
    expect(finalCutXml(cut())).toContain("<note>the leeks, wide &amp; close; GX010001.MP4, take 1</note>");
    expect(finalCutXml({ ...cut(), name: 'a\u0000b "c" <d>' })).toContain('<event name="ab &quot;c&quot; &lt;d&gt;">');
  });
});
