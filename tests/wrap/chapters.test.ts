/** Stops heard and the chapters made of them. Rules of chapters: common practice of video sites. */
import fc from "fast-check";
import { parseText } from "media-captions";
import { describe, expect, it } from "vitest";
import { stopErrors } from "../../scripts/mis-hearing/hearing-scores.ts";
import { demoGarden, heldBack, labelledFilm, tuned } from "../../scripts/mis-hearing/labelled-films.ts";
import { chaptersOf } from "../../src/wrap/chapters.ts";
import {
  chapterCues,
  chapterLines,
  filmingDay,
  hearFilm,
  isoDuration,
  plainCaptions,
  videoObject,
  wrapEpisode,
} from "../../src/wrap/index.ts";
import type { Stretch } from "../../src/wrap/stops-heard.ts";
import { smallGarden, speechOf, vtt, wrapOf } from "./small-film.ts";

const walk = [
  "Good morning, it's a lovely day,",
  "and I'm going to walk you round.",
  "The long bed. Leeks, Musselburgh,",
  "twelve of them under the butterfly net,",
  "and they like it there.",
  "It was wet all of May.",
  "Now the squash bed.",
  "Uchiki Kuri, five of those,",
  "and three Crown Prince squash,",
  "up to my knee already.",
  "Last, the tomato pots.",
  "Harbinger tomatoes in all four,",
  "and a flower on one of them.",
  "That's it. See you next month.",
];

describe("stops", () => {
  it("are heard in order, each with the words it rests on", async () => {
    const { wrap } = await wrapOf(walk);
    expect(wrap.stops.map(({ bed, time }) => [bed, time])).toEqual([
      [undefined, "0:00"],
      ["long-bed", "0:06"],
      ["squash-bed", "0:18"],
      ["tomato-pots", "0:30"],
    ]);
    expect(wrap.stops[2]?.restsOn).toEqual(["Squash Bed", "Uchiki Kuri", "Crown Prince", "squash"]);
    expect(wrap.stops.every(({ confidence }) => confidence > 0.5 && confidence <= 1)).toBe(true);
  });

  it("begin where a bed is presented, wherever the lines of automatic captions are cut", async () => {
    const lines = [
      "good morning and here is my garden on a wet day and my teacher said",
      "speak about something what you love so i speak about leeks and this is",
      "the end of the lane and i have number thirty one by the gate so come",
      "with me and never mind the rain and i show you everything there is and",
      "never mind the mud because first is the long bed and it is very wet so",
      "i will be quick twelve musselburgh leeks and they do not mind it at all",
      "now the squash bed uchiki kuri five of those and three crown prince too",
      "last the tomato pots and harbinger tomatoes in all four of them this year",
    ];
    const { wrap } = await wrapOf([], { captions: { file: "a.vtt", bytes: vtt(lines, 6) } });
    const lineOf = (at: number) => Math.floor(at / 6);
    expect(wrap.stops.flatMap(({ bed, at }) => (bed === undefined ? [] : [[bed, lineOf(at)]]))).toEqual([
      ["long-bed", 4],
      ["squash-bed", 6],
      ["tomato-pots", 7],
    ]);
  });

  it("are heard in another order than planned, and without any plan", async () => {
    const turned = [...walk.slice(0, 2), ...walk.slice(10, 13), ...walk.slice(6, 10), ...walk.slice(2, 6)];
    const beds = async (plan: readonly { bed: string }[]) => {
      const { garden, episode } = await smallGarden();
      const { wrap } = wrapEpisode({
        garden,
        episode: { ...episode, stops: plan },
        captions: { file: "a.vtt", bytes: vtt(turned) },
      });
      return wrap.stops.flatMap(({ bed }) => bed ?? []);
    };
    const heard = ["tomato-pots", "squash-bed", "long-bed"];
    expect(await beds([{ bed: "long-bed" }, { bed: "squash-bed" }, { bed: "tomato-pots" }])).toEqual(heard);
    expect(await beds([])).toEqual(heard);
  });

  it("keep the times a person gave them", async () => {
    const { garden, episode } = await smallGarden();
    const stops = [
      { bed: "squash-bed", at: 4 },
      { bed: "long-bed", at: 20 },
      { bed: "tomato-pots", at: 33 },
    ];
    const { wrap } = wrapEpisode({
      garden,
      episode: { ...episode, stops },
      captions: { file: "a.vtt", bytes: vtt(walk) },
    });
    expect(wrap.stops.map(({ bed, at, confidence }) => [bed, at, confidence])).toEqual([
      [undefined, 0, 1],
      ["squash-bed", 4, 1],
      ["long-bed", 20, 1],
      ["tomato-pots", 33, 1],
    ]);
    const one = wrapEpisode({
      garden,
      episode: { ...episode, stops: [{ bed: "long-bed" }, { bed: "squash-bed", at: 21 }, { bed: "tomato-pots" }] },
      captions: { file: "a.vtt", bytes: vtt(walk) },
    });
    expect(one.wrap.stops.map(({ bed }) => bed)).toEqual([undefined, "long-bed", "squash-bed", "tomato-pots"]);
  });

  it("of the demo's films are found within five seconds, nine of ten, clean or automatic", async () => {
    const garden = await demoGarden();
    const errors = [...tuned, ...heldBack].flatMap((id) => {
      const film = labelledFilm(garden, id);
      return [...stopErrors(garden, film, film.clean), ...stopErrors(garden, film, film.automatic)];
    });
    expect(errors).toHaveLength(94);
    expect(errors.filter((error) => error <= 5).length / errors.length).toBeGreaterThan(0.85);
  });

  it("any speech gives stretches that cover it, without gaps, in order", async () => {
    const { garden, episode } = await smallGarden();
    const day = filmingDay(garden, episode);
    const words = fc.array(
      fc.constantFrom("leeks", "squash", "the", "Long Bed", "now", "tomato", "and", "that's it", "Uchiki Kuri."),
      { minLength: 1, maxLength: 40 },
    );
    fc.assert(
      fc.property(words, (said) => {
        const speech = speechOf(Buffer.from(vtt(said)).toString());
        const { stretches } = hearFilm({ speech, day, plan: ["long-bed", "squash-bed"] });
        expect(stretches[0]?.from).toBe(0);
        expect(stretches.at(-1)?.to).toBe(speech.words.length);
        stretches.slice(1).forEach((stretch, at) => {
          expect(stretch.from).toBe(stretches[at]?.to);
          expect(stretch.at).toBeGreaterThanOrEqual(stretches[at]?.at ?? 0);
        });
      }),
      { numRuns: 60 },
    );
  });
});

describe("chapters", () => {
  it("are short and specific", async () => {
    const { wrap } = await wrapOf(walk);
    expect(chapterLines(wrap.chapters)).toEqual([
      "0:00 Long Bed: Musselburgh leeks",
      "0:18 Squash Bed: Uchiki Kuri and Crown Prince",
      "0:30 Tomato Pots: Harbinger",
    ]);
  });

  it("are about what grows at their bed, and about gear only where nothing does", async () => {
    const said = [
      ...walk.slice(0, 3),
      "Under the butterfly net, they are.",
      "Taller than the tomatoes, tomatoes, tomatoes.",
      "It was wet all of May.",
      ...walk.slice(6),
    ];
    expect((await wrapOf(said)).wrap.chapters[0]?.title).toBe("Long Bed: Musselburgh leeks");
    const unnamed = [...walk.slice(0, 2), "The long bed.", "Under the butterfly net,", ...walk.slice(4)];
    expect((await wrapOf(unnamed)).wrap.chapters[0]?.title).toBe("Long Bed");
  });

  it("begin at 0:00, go up, last ten seconds, and are three or none", async () => {
    const { garden, episode } = await smallGarden();
    const day = filmingDay(garden, episode);
    const speech = speechOf(Buffer.from(vtt(walk)).toString());
    const film = hearFilm({ speech, day, plan: ["long-bed", "squash-bed", "tomato-pots"] });
    const beds = fc.constantFrom(undefined, "long-bed", "squash-bed", "tomato-pots");
    fc.assert(
      fc.property(fc.array(fc.tuple(beds, fc.integer({ min: 0, max: 90_000 })), { maxLength: 14 }), (drawn) => {
        let at = 0;
        const stretches = drawn.map(([bed, length], index): Stretch => {
          const begins = at;
          at += length;
          return { bed, from: index, to: index + 1, at: begins, confidence: 1, restsOn: [] };
        });
        const { chapters, none } = chaptersOf({ ...film, speech: { ...speech, end: at } }, stretches);
        if (chapters.length === 0) {
          expect(none).toMatch(/^Video sites want at least three/);
          return;
        }
        expect(none).toBeUndefined();
        expect(chapters.length).toBeGreaterThanOrEqual(3);
        expect(chapters[0]).toMatchObject({ at: 0, time: "0:00" });
        for (const { at: from, until, title } of chapters) {
          expect(until - from).toBeGreaterThanOrEqual(9.9);
          expect(title.length).toBeLessThanOrEqual(70);
        }
        expect(new Set(chapters.map(({ at: from }) => from)).size).toBe(chapters.length);
      }),
    );
  });

  it("are a track that a second parser reads, whatever is in a title", async () => {
    const chapter = { at: 0, time: "0:00", until: 83.4, title: "Peas & beans <b>up</b> --> the arch", bed: undefined };
    const { cues } = await parseText(plainCaptions(chapterCues([chapter]), "vtt"), { type: "vtt" });
    expect(cues).toHaveLength(1);
    expect([cues[0]?.startTime, cues[0]?.endTime]).toEqual([0, 83.4]);
    expect(cues[0]?.text).toBe("Peas &amp; beans &lt;b&gt;up&lt;/b&gt; --&gt; the arch");
  });

  it("never name a private bed", async () => {
    const { garden, episode } = await smallGarden();
    const stops = [
      { bed: "long-bed", at: 0 },
      { bed: "secret-patch", at: 14 },
      { bed: "tomato-pots", at: 30 },
    ];
    const { wrap } = wrapEpisode({
      garden,
      episode: { ...episode, stops },
      captions: { file: "a.vtt", bytes: vtt(walk) },
    });
    expect(wrap.chapters).toHaveLength(3);
    expect(JSON.stringify(wrap.chapters.map(({ title }) => title))).not.toContain("Secret");
    expect(wrap.description.text).not.toContain("Secret");
  });
});

describe("structured data", () => {
  // ISO 8601 durations: 6 min 58 s is PT6M58S in the search engines' own example.
  it.each([
    [418, "PT6M58S"],
    [3600, "PT1H"],
    [3725, "PT1H2M5S"],
    [0, "PT0S"],
  ])("%d s is %s", (seconds, text) => {
    expect(isoDuration(seconds)).toBe(text);
  });

  it("has every field that video results require, and a clip for each chapter", async () => {
    const { wrap } = await wrapOf(walk);
    const data = videoObject({
      name: wrap.title,
      description: wrap.description.text,
      thumbnails: ["https://croft.example/p.jpg"],
      published: "2026-06-20",
      length: wrap.length,
      film: "https://films.example/june",
      chapters: wrap.chapters.map((chapter) => ({ ...chapter, url: `https://films.example/june?t=${chapter.at}` })),
    }) as Record<string, unknown>;
    for (const field of ["name", "description", "thumbnailUrl", "uploadDate", "duration", "url", "hasPart"])
      expect(data[field]).toBeTruthy();
    expect(data).not.toHaveProperty("embedUrl");
    expect(data.hasPart).toEqual([
      {
        "@type": "Clip",
        name: "Long Bed: Musselburgh leeks",
        startOffset: 0,
        endOffset: 18,
        url: "https://films.example/june?t=0",
      },
      {
        "@type": "Clip",
        name: "Squash Bed: Uchiki Kuri and Crown Prince",
        startOffset: 18,
        endOffset: 30,
        url: "https://films.example/june?t=18",
      },
      {
        "@type": "Clip",
        name: "Tomato Pots: Harbinger",
        startOffset: 30,
        endOffset: 42,
        url: "https://films.example/june?t=30",
      },
    ]);
  });
});
