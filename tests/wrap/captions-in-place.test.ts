/** The corrected copy is the file itself: whatever names are set right, every other byte of it stays. */
import { parseText } from "media-captions";
import { describe, expect, it } from "vitest";
import { correctedFile } from "../../src/wrap/corrections.ts";
import { type Correction, wrapEpisode } from "../../src/wrap/index.ts";
import { readCaptions } from "../../src/wrap/read-captions.ts";
import { spokenWords } from "../../src/wrap/spoken-words.ts";
import { smallGarden } from "./small-film.ts";

async function corrected(file: string, text: string): Promise<string | undefined> {
  const { garden, episode } = await smallGarden();
  return wrapEpisode({ garden, episode, captions: { file, bytes: Buffer.from(text) } }).corrected;
}

const everything = [
  "\uFEFFWEBVTT - June walk",
  "Kind: captions",
  "",
  "STYLE",
  "::cue(b) { color: peachpuff; }",
  "",
  "REGION",
  "id:left",
  "width:40%",
  "",
  "NOTE muscle bra leeks are no speech here",
  "",
  "opening",
  "00:00.000 --> 00:03.000 align:start position:10%,line-left",
  "The long bed.",
  "",
  "2",
  "00:00:03.000 --> 00:00:06.000  region:left  line:90%",
  "twelve <c>muscle</c><00:00:04.500><c> bra</c> leeks &amp; more",
  "",
  "words after an empty line",
  "",
  "00:06.000 --> 00:09.000 position:50.1234,-0.12",
  "Now the squash bed.",
  "",
].join("\r\n");

describe("a WebVTT file", () => {
  it("keeps styles, regions, notes, names, settings, line ends and what stands after an empty line", async () => {
    expect(await corrected("june.vtt", everything)).toBe(
      everything.replace("<c>muscle</c><00:00:04.500><c> bra</c>", "<c>Musselburgh</c><00:00:04.500><c></c>"),
    );
  });

  it("of one caption with more names to set than a call takes arguments is set right to its end", () => {
    const count = 150_000;
    const file = `WEBVTT\n\n00:00.000 --> 00:03.000\n${"muscle ".repeat(count)}leeks\n`;
    const { cues } = readCaptions("june.vtt", file);
    const { words } = spokenWords(cues);
    const correction = { applied: true, name: "Mussel" } as Correction;
    const names = Array.from({ length: count }, (_, from) => ({ correction, from, to: from + 1 }));
    const result = correctedFile(file, cues, words, names);
    expect(result.endsWith("Mussel Mussel leeks\n")).toBe(true);
    expect(result.includes("muscle")).toBe(false);
  });

  it("loses a line that says nothing any more, and no text below it", async () => {
    const file = "WEBVTT\n\n00:00.000 --> 00:06.000\nthe long bed twelve muscle\nbra\nleeks in the long bed\n";
    expect(await corrected("june.vtt", file)).toBe(file.replace("muscle\nbra\n", "Musselburgh\n"));
  });

  it("keeps captions in the order in which they stand", async () => {
    const file =
      "WEBVTT\n\n00:03.000 --> 00:06.000\ntwelve muscle bra leeks\n\n00:00.000 --> 00:03.000\nThe long bed.\n";
    expect(await corrected("june.vtt", file)).toBe(file.replace("muscle bra", "Musselburgh"));
  });
});

it.each([
  [
    "june.srt",
    "1\r\n00:00:00,000 --> 00:00:03,000\r\n<font color=red>The long bed.</font>\r\n\r\n7\r\n00:00:03,000 --> 00:00:06,000 X1:10\r\ntwelve muscle bra leeks\r\n",
  ],
  ["june.sbv", "0:00:00.000,0:00:03.000\nThe long bed.\n\n0:00:03.000,0:00:06.000\ntwelve muscle bra leeks\n"],
  [
    "june.ass",
    "[Script Info]\nTitle: June\n\n[Events]\nFormat: Layer, Start, End, Style, Text\nComment: 0,0:00:00.00,0:00:01.00,Plain,muscle bra\nDialogue: 0,0:00:00.00,0:00:03.00,Plain,The {\\i1}long{\\i0} bed.\nDialogue: 0,0:00:03.00,0:00:06.00,Plain,twelve\\Nmuscle bra leeks, all of it\n",
  ],
  ["june.txt", "0:00 The long bed.\n\n  **0:03**  twelve muscle bra leeks\n"],
])("%s is set right where it stands", async (file, text) => {
  const at = text.lastIndexOf("muscle bra");
  expect(await corrected(file, text)).toBe(`${text.slice(0, at)}Musselburgh${text.slice(at + "muscle bra".length)}`);
});

describe("WebVTT as the specification reads it", () => {
  const cues = (text: string) => readCaptions("a.vtt", text);
  const told = (text: string) => cues(text).problems.map(({ rule, line }) => [rule, line]);

  // W3C, WebVTT, 1 "Introduction": the examples of styles, names, settings, regions, attributes and comments.
  it.each([
    [
      "styles and comments",
      'WEBVTT\n\nSTYLE\n::cue {\n  color: papayawhip;\n}\n/* Style blocks cannot use blank lines nor "dash dash greater than" */\n\nNOTE comment blocks can be used between style blocks.\n\nSTYLE\n::cue(b) {\n  color: peachpuff;\n}\n\nhello\n00:00:00.000 --> 00:00:10.000\nHello <b>world</b>.\n\nNOTE style blocks cannot appear after the first cue.\n',
      [[0, 10_000, "Hello <b>world</b>.", ""]],
    ],
    [
      "identifiers",
      "WEBVTT\n\ntest\n00:00.000 --> 00:02.000\nThis is a test.\n\n123\n00:00.000 --> 00:02.000\nThat's an, an, that's an L!\n\ncrédit de transcription\n00:04.000 --> 00:05.000\nTranscrit par Célestes™\n",
      [
        [0, 2000, "This is a test.", ""],
        [0, 2000, "That's an, an, that's an L!", ""],
        [4000, 5000, "Transcrit par Célestes™", ""],
      ],
    ],
    [
      "settings",
      "WEBVTT\n\n00:00:00.000 --> 00:00:04.000 position:10%,line-left align:left size:35%\nWhere did he go?\n",
      [[0, 4000, "Where did he go?", "position:10%,line-left align:left size:35%"]],
    ],
    [
      "attributes and regions",
      "WEBVTT\n\nATTRIBUTES\nkind: captions\nlang: es-mx\n\nREGION\nid:fred\nwidth:40%\n\n1\n00:00:47.462 --> 00:01:04.028 region:fred\n[♫ música ♫]\n",
      [[47_462, 64_028, "[♫ música ♫]", "region:fred"]],
    ],
    [
      "comments",
      "WEBVTT\n\nNOTE\nThis file was written by Jill.\n- I was lip-reading\n\n00:01.000 --> 00:04.000\nNever drink liquid nitrogen.\n\nNOTE check next cue\n\n00:05.000 --> 00:09.000\n— It will perforate your stomach.\n— You could die.\n\nNOTE end of file\n",
      [
        [1000, 4000, "Never drink liquid nitrogen.", ""],
        [5000, 9000, "— It will perforate your stomach.\n— You could die.", ""],
      ],
    ],
  ])("%s", (_, text, expected) => {
    const { cues: read, problems } = cues(text);
    expect(read.map(({ start, end, text: said, settings }) => [start, end, said, settings])).toEqual(expected);
    expect(problems.filter(({ rule }) => rule !== "captions/overlap")).toEqual([]);
  });

  // 6.1, "collect a WebVTT block": times stand in a block's first line or in its second; later ones begin a block.
  it("times within a comment's first two lines, and right below a caption, begin captions", () => {
    const file =
      "WEBVTT\n\nNOTE\n00:01.000 --> 00:02.000\none\n\nNOTE\nmore\n00:03.000 --> 00:04.000\ntwo\n7\n00:05.000 --> 00:06.000\nthree\n";
    expect(cues(file).cues.map(({ text }) => text)).toEqual(["one", "two\n7", "three"]);
    expect(told(file)).toEqual([["captions/no-empty-line", 12]]);
  });

  it("tells what players show nowhere", () => {
    const file =
      "WEBVTT\n\n00:01.000 --> 00:02.000\none\n\nleft over\n\nSTYLE\n::cue {}\n\n0:03.000 --> 00:04.000\ntwo\n";
    expect(
      cues(file).problems.map(({ rule, line, what, fix }) => [rule, line, rule === "captions/time" ? fix : what]),
    ).toEqual([
      [
        "captions/stray-text",
        6,
        "These words stand in no caption, so players show them nowhere, and they were not read as speech.",
      ],
      ["captions/stray-text", 8, "STYLE after the first caption does nothing."],
      ["captions/time", 11, "Write it as 00:01:05.000; until then players leave this caption out."],
    ]);
  });

  it("times that only break the rules for writers are shown all the same, and nobody says they are not", () => {
    const [found] = cues("WEBVTT\n\n0:00:05.000 --> 00:00:09.000\nx\n").problems;
    expect(found?.fix).toBe("Write it as 00:01:05.000.");
  });
});

describe("other forms", () => {
  const read = (text: string, file = "a.txt") =>
    readCaptions(file, text).cues.map(({ start, end, text: said }) => [start, end, said]);

  it.each([
    ["0:38 - 1:02 the bean row\n1:02 - 1:30 and on\n"],
    ["[0:38 – 1:02] the bean row\n[1:02 – 1:30] and on\n"],
    ["0:38 --- the bean row\n1:02-1:30 — and on\n"],
    ["**0:38** the bean row\n**1:02 – 1:30:** and on\n"],
    ["- 0:38 to 1:02: the bean row\n- 1:02 to 1:30: and on\n"],
    ["Ann 0:38\nthe bean row\n\nSpeaker 2 (1:02 - 1:30)\nand on\n"],
    ["(00:38)\nthe bean row\n(01:02.000, 01:30.000)\nand on\n"],
  ])("a second time is when it ends: %j", (text) => {
    expect(read(text)).toEqual([
      [38_000, 62_000, "the bean row"],
      [62_000, expect.any(Number), "and on"],
    ]);
  });

  it("frames are read to the second, and told", () => {
    const { cues, problems } = readCaptions("a.txt", "00:00:38:12 the bean row\n00:01:02;03 and on\n");
    expect(cues.map(({ start }) => start)).toEqual([38_000, 62_000]);
    expect(problems.map(({ rule }) => rule)).toEqual(["captions/frames", "captions/frames"]);
  });

  it("a time of day within a sentence begins nothing", () => {
    expect(read("0:05 We came at 9:15\nBy half past 9:45 it rained\n")).toHaveLength(1);
  });

  it("scripts are read as media-captions reads them", async () => {
    const script =
      "[Script Info]\nTitle: x\n\n[V4+ Styles]\nFormat: Name, Fontname\nStyle: Plain,Sans\n\n[Events]\nFormat: Layer, Start, End, Style, Name, MarginL, MarginR, MarginV, Effect, Text\nDialogue: 0,0:00:01.50,0:00:03.00,Plain,,0,0,0,,Leeks, and more\nDialogue: 0,0:01:03.00,0:01:04.25,Plain,,0,0,0,,two\\Nlines\n";
    const theirs = await parseText(script, { type: "ass" });
    const times = theirs.cues.map(({ startTime, endTime }) => [startTime * 1000, endTime * 1000].map(Math.round));
    expect(times).toEqual([
      [1500, 3000],
      [63_000, 64_250],
    ]);
    expect(read(script, "a.ass")).toEqual([
      [1500, 3000, "Leeks, and more"],
      [63_000, 64_250, "two \nlines"],
    ]);
  });

  it.each([
    ['<?xml version="1.0"?>\n<tt xml:lang="en"><body><div><p begin="1s">x</p></div></body></tt>', "XML"],
    ['[{"start": 0.5, "text": "0:38 the leeks"}]', "JSON"],
    ["{0}{25}the leeks", "frames"],
    ["Scenarist_SCC V1.0\n\n00:00:01:05\t9420 94ae", "codes"],
  ])("%j is refused in words", (text, word) => {
    const { cues, problems } = readCaptions("a.txt", text);
    expect(cues).toEqual([]);
    expect(problems).toMatchObject([{ rule: "captions/not-read", severity: "error" }]);
    expect(problems[0]?.what).toContain(word);
  });

  it("lie beside the record and are found there, scripts and lists are not", async () => {
    const { episode } = await smallGarden(
      Object.fromEntries(
        [
          "june.sbv",
          "june.ass",
          "captions.txt",
          "Transcript.json",
          "june.ttml",
          "comments.txt",
          "script.txt",
          "shots.json",
        ].map((name) => [`episodes/june/${name}`, ""]),
      ),
    );
    expect([...episode.captions].sort()).toEqual(
      ["Transcript.json", "captions.txt", "june.ass", "june.sbv", "june.ttml"].map((name) => `episodes/june/${name}`),
    );
  });
});
