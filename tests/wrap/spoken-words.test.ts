/** Captions to words: what is spoken, once each, with its time and every place where it stands. */
import fc from "fast-check";
import { parseText } from "media-captions";
import { describe, expect, it } from "vitest";
import { demoGarden, heldBack, labelledFilm, tuned } from "../../scripts/mis-hearing/labelled-films.ts";
import { openCaptions, writeCaptions } from "../../src/wrap/index.ts";
import { speechOf } from "./small-film.ts";

const cue = (text: string) => speechOf(`WEBVTT\n\n00:01.000 --> 00:05.000\n${text}\n`);
const said = (text: string) =>
  cue(text)
    .words.map((word) => word.text)
    .join(" ");

describe("what is spoken", () => {
  it.each([
    ["<v Ines>Hold <i>that</i> <b.loud>end</b></v>", "Hold that end"],
    ["fish &amp; chips &lt;here&gt; caf&eacute; d&#39;or", "fish chips here café d'or"],
    ["the <00:02.000>leeks<00:03.000> are in", "the leeks are in"],
    ["[Music] right (laughs) hello (about ten)", "right hello about ten"],
    ["♪ a song nobody says ♪\nhello", "hello"],
    [">> WILMA: two metres", "two metres"],
    ["WILMA: two metres", "two metres"],
    ["- No.\n- Yes.", "No Yes"],
    ["{\\an8}up here", "up here"],
    ["<script>alert('x')</script>leeks<style>b{}</style>", "leeks"],
    ["<img src=x onerror=alert(1)>leeks", "leeks"],
    ["mus<c>sel</c>burgh", "musselburgh"],
    ["an open <i tag never closed", "an open"],
    ["twenty-four at 1.8 kilos, 50%", "twenty-four at 1.8 kilos 50%"],
  ])("%s", (text, words) => {
    expect(said(text)).toBe(words);
  });

  it("keeps a shouted caption whole: there a colon says nothing of who speaks", () => {
    expect(said("NOW: THE BEANS")).toBe("NOW THE BEANS");
  });

  it("has times: those written inside, and shares of the caption between them", () => {
    const { words } = cue("the <00:02.000>leeks<00:04.000> are in");
    expect(words.map(({ text, at }) => [text, at])).toEqual([
      ["the", 1000],
      ["leeks", 2000],
      ["are", 4000],
      ["in", 4667],
    ]);
  });

  it("says where each word stands in the file's own text", () => {
    const text = "<i>caf&eacute;</i> d&#39;or";
    const { words } = cue(text);
    expect(words.map(({ start, end }) => text.slice(start, end))).toEqual(["caf&eacute;", "d&#39;or"]);
  });
});

describe("rolling captions", () => {
  const rolling = [
    "WEBVTT\nKind: captions\n",
    "00:00.000 --> 00:02.000\n \nright<00:00.500><c> the</c><00:01.000><c> leeks</c>\n",
    "00:02.000 --> 00:02.010\nright the leeks\n \n",
    "00:02.010 --> 00:04.000\nright the leeks\nno<00:03.000><c> no</c><00:03.500><c> slugs</c>\n",
    "00:04.000 --> 00:04.010\nno no slugs\n \n",
    "00:04.010 --> 00:06.000\nno no slugs\nthis time\n",
  ].join("\n");

  it("are spoken once, and every place they are shown at is known", () => {
    const speech = speechOf(rolling);
    expect(speech.rolling).toBe(true);
    expect(speech.words.map((word) => word.text).join(" ")).toBe("right the leeks no no slugs this time");
    expect(speech.words[2]?.again).toHaveLength(2);
    expect(speech.words.map(({ at }) => at)).toEqual([0, 500, 1000, 2010, 3000, 3500, 4010, 5116]);
  });

  it("that grow word by word are spoken once too", () => {
    const growing = ["right", "right the", "right the leeks", "right the leeks are", "right the leeks are in"];
    const file = growing.map((text, at) => `00:0${at}.000 --> 00:0${at + 1}.000\n${text}\n`).join("\n");
    expect(
      speechOf(`WEBVTT\n\n${file}`)
        .words.map((word) => word.text)
        .join(" "),
    ).toBe("right the leeks are in");
  });

  it("are no reason to drop what somebody says twice", () => {
    const file =
      "WEBVTT\n\n00:00.000 --> 00:02.000\nand one Rouge Vif. One.\n\n00:02.000 --> 00:04.000\nOne. It put everything in.\n";
    expect(speechOf(file).words).toHaveLength(10);
  });
});

describe("no word is lost", () => {
  const word = fc.constantFrom("leek", "squash", "the", "i'll", "Crown", "café", "24", "no");
  const mark = fc.constantFrom("", ",", ".", "?", "\n");
  const text = fc.array(fc.tuple(word, mark), { minLength: 1, maxLength: 12 });
  const film = fc.array(text, { minLength: 1, maxLength: 15 });

  it("every word of every caption is spoken, or shown again, exactly once; times never go back", () => {
    fc.assert(
      fc.property(film, (cues) => {
        const texts = cues.map((parts) => parts.map(([one, after]) => one + after).join(" "));
        const file = writeCaptions(
          texts.map((one, at) => ({ start: at * 2000, end: at * 2000 + 2000, text: one })),
          "vtt",
        );
        const { speech, cues: read } = openCaptions("a.vtt", Buffer.from(file));
        const places = speech.words
          .flatMap((one) => [one, ...one.again])
          .map(({ cue: at, start, end }) => `${at} ${start} ${end}`);
        expect(new Set(places).size).toBe(places.length);
        expect(places).toHaveLength(cues.flat().length);
        for (const one of speech.words) expect(read[one.cue]?.text.slice(one.start, one.end)).toBe(one.text);
        const times = speech.words.map(({ at }) => at);
        expect(times).toEqual([...times].sort((a, b) => a - b));
      }),
    );
  });

  it("any text as a caption is read without an error", () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(..."ab <>&;{}[]()♪:-\n#\\/\"'=1.é"), maxLength: 60 }), (text) => {
        const { words } = cue(text);
        expect(words.every(({ plain, at }) => plain !== "" && at >= 0)).toBe(true);
      }),
    );
  });
});

describe("a second parser", () => {
  it("reads the same words from the demo's captions, clean and automatic", async () => {
    const garden = await demoGarden();
    let compared = 0;
    for (const id of [...tuned, ...heldBack]) {
      const { clean, automatic } = labelledFilm(garden, id);
      for (const file of [clean, automatic]) {
        const written = writeCaptions(file.cues, "vtt");
        const theirs = await parseText(written, { type: "vtt" });
        expect(theirs.cues).toHaveLength(file.cues.length);
        const ours = openCaptions("again.vtt", Buffer.from(written));
        expect(ours.speech.words.map(({ plain }) => plain)).toEqual(file.speech.words.map(({ plain }) => plain));
        theirs.cues.forEach((one, at) => {
          const ms = [one.startTime, one.endTime].map((seconds) => Math.round(seconds * 1000));
          expect(ms).toEqual([file.cues[at]?.start, file.cues[at]?.end]);
        });
        compared += 1;
      }
    }
    expect(compared).toBe(16);
  });
});
