/** The rest of the wrap: coverage, facts, description, disclosures, answers, edit log; and bad input of every kind. */

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { makeBrief } from "../../src/tour/index.ts";
import { missingSources } from "../../src/wrap/disclosures.ts";
import { editLog, wrapEpisode, wrapReport } from "../../src/wrap/index.ts";
import { smallGarden, vtt, wrapOf } from "./small-film.ts";

const walk = [
  "The long bed. Leeks, Musselburgh, twelve of them.",
  "Planted on the twenty-fourth of May, so three weeks today.",
  "The butterfly net's on them.",
  "It was wet, and they like it.",
  "Now the squash bed. Five Uchiki Kuri, doing nicely.",
  "They're up to my knee already, and it's June.",
  "I can't explain it.",
  "Somebody will know.",
  "Last, the tomato pots. Four Harbinger tomatoes.",
  "I'll weigh the first of them on camera.",
  "And that's it.",
  "Thanks for walking round. See you.",
];

describe("coverage", () => {
  it("tells of each planned thing whether it was said or filmed, and what can be picked up", async () => {
    const { garden, episode } = await smallGarden();
    const brief = makeBrief(garden, { episode: "june", today: "2026-07-18" });
    const shot = brief.stops[0]?.show[0]?.shot ?? "S1.1";
    const filming = {
      day: "2026-06-14",
      stops: [
        {
          bed: "long-bed",
          ticks: [
            { shot, state: "filmed" as const, takes: [{}, { at: "09:24:31", mark: "good" as const }], at: "09:24:31" },
          ],
        },
      ],
      place: { file: "episodes/june/field-list.json", line: 1, column: 1 },
    };
    const { wrap } = wrapEpisode({
      garden,
      episode: { ...episode, filming },
      brief,
      captions: { file: "june.vtt", bytes: vtt(walk) },
    });
    const { things, shots, named, neverNamed, reshoot } = wrap.coverage;
    expect(things.find(({ text }) => text.includes("Musselburgh"))).toMatchObject({
      bed: "long-bed",
      covered: "said and filmed",
      time: "0:01",
    });
    expect(shots.find(({ id }) => id === shot)?.covered).toBe("filmed");
    expect(named.map(({ title, time, bed }) => [title, time, bed])).toEqual([
      ["Musselburgh", "0:01", "long-bed"],
      ["Uchiki Kuri", "0:13", "squash-bed"],
      ["Harbinger", "0:25", "tomato-pots"],
    ]);
    expect(neverNamed).toEqual([{ variety: "crown-prince", title: "Crown Prince", bed: "squash-bed" }]);
    // Musts that were not filmed; the one that was is not among them.
    expect(reshoot.length).toBeGreaterThan(0);
    expect(reshoot.map(({ id, what }) => [id, what])).not.toContainEqual([shot, expect.anything()]);
  });

  it("names beds that were planned and never shown, and those shown unplanned", async () => {
    const { garden, episode } = await smallGarden();
    const stops = [{ bed: "long-bed" }, { bed: "squash-bed" }];
    const lines = [...walk.slice(0, 4), ...walk.slice(8)];
    const { wrap } = wrapEpisode({
      garden,
      episode: { ...episode, stops },
      captions: { file: "june.vtt", bytes: vtt(lines) },
    });
    expect(wrap.coverage.bedsMissed).toEqual(["squash-bed"]);
    expect(wrap.coverage.unplanned.map(({ what }) => what)).toContain("Tomato Pots");
    expect(wrap.coverage.toPickUp[0]).toBe("Not shown at all: Squash Bed.");
  });
});

describe("facts checked", () => {
  const disagreements = async (...lines: string[]) =>
    (await wrapOf(lines)).wrap.disagreements.map(({ kind, records }) => [kind, records]);

  it("leaves alone what the records tell too", async () => {
    expect(await disagreements(...walk)).toEqual([]);
  });

  it.each([
    ["Eleven Musselburgh in the long bed.", "count", "The records have twelve Musselburgh there that day."],
    ["Musselburgh leeks, planted on the third of May.", "day", "The records have 10 April or 24 May for Musselburgh."],
    ["Musselburgh, twelve weeks today.", "age", "By the records Musselburgh had been there for three weeks."],
    ["Four Harbinger in the long bed.", "bed", "The records have Harbinger in Tomato Pots, and none in Long Bed."],
  ])("%s", async (said, kind, records) => {
    const found = await disagreements("The long bed. Leeks, all of it.", "Here they are, the leeks.", said, "There.");
    expect(found.map(([one]) => one)).toEqual([kind]);
    if (kind !== "day") expect(found[0]?.[1]).toBe(records);
  });

  it("knows a bed's size, and that a variety is not new", async () => {
    expect(await disagreements("The long bed. Six metres of leeks.", "Leeks and leeks.")).toEqual([
      ["size", "The records have Long Bed as 8 m by 1.2 m."],
    ]);
    const { garden, episode } = await smallGarden({
      "notes/2025/2025-05-20.md":
        "- planted 9 Musselburgh leek in Long Bed\n- cleared Musselburgh leek from Long Bed on 1 November\n",
    });
    const { wrap } = wrapEpisode({
      garden,
      episode,
      captions: { file: "a.vtt", bytes: vtt(["The long bed. Musselburgh leeks, new to me."]) },
    });
    expect(wrap.disagreements.map(({ kind, records }) => [kind, records])).toEqual([
      ["first time", "The records have Musselburgh since 20 May 2025."],
    ]);
  });
});

describe("description and disclosures", () => {
  it("puts what viewers are owed first, and beside the thing", async () => {
    const { wrap } = await wrapOf([...walk, "And the warm mat did that."]);
    const { text } = wrap.description;
    expect(text.split("\n\n")[0]).toBe(
      [
        "Ad. Ember & Tray paid me to show the warm mat.",
        "Ad. If you buy the Harbinger seed through the link, I earn a commission.",
        "Came to me free: Butterfly net.",
      ].join("\n"),
    );
    expect(text).toContain(
      "Harbinger tomatoes (0:25): Pebble & Pod; I earn a commission if you buy through this link https://pod.example/h",
    );
    // Whether a seller gave it nobody said: no name, and it is asked about.
    expect(text).toContain("Butterfly net: given free\n");
    expect(text).not.toContain("Skerry");
    expect(text).toContain("0:00 Long Bed");
  });

  it("never takes what is not recorded for bought", async () => {
    const { wrap } = await wrapOf(walk);
    const crown = wrap.disclosures.find(({ record }) => record === "crown-prince");
    expect(crown).toMatchObject({ obtained: undefined, atTop: false });
    expect(crown?.warning).toBe(
      "Crown Prince: nothing says where it came from, or how. Add it to its record before you publish.",
    );
  });

  it("asks once for all sources that nobody wrote down", async () => {
    const more = { "notes/2026/2026-05-25.md": "- planted 3 Little Gem lettuce in Long Bed\n" };
    const { wrap } = await wrapOf([...walk, "And the Little Gem lettuces in the Long Bed."], {}, more);
    const asked = missingSources(wrap.disclosures).filter((line) => line.includes("nothing says where"));
    expect(asked).toHaveLength(1);
    expect(asked[0]).toMatch(
      /Crown Prince.*Little Gem|Little Gem.*Crown Prince: nothing says where they came from, or how\. Add it to their records/,
    );
  });

  it("leaves out what is private", async () => {
    const more = { "notes/2026/2026-05-25.md": "- planted 3 Velvet Queen sunflower in Long Bed\n" };
    const { wrap } = await wrapOf([...walk, "And the Velvet Queen sunflowers in the Long Bed."], {}, more);
    expect(wrap.description.text).not.toMatch(/Velvet|Secret|54\.2/);
    expect(wrap.disclosures.some(({ thing }) => thing === "Velvet Queen")).toBe(false);
  });

  it("keeps within its limit and names what went", async () => {
    const long = (await wrapOf(walk)).wrap.description;
    const short = (await wrapOf(walk, { limit: long.length - 20 })).wrap.description;
    expect(short.cut).toEqual(["one variety that was not named"]);
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: 60, max: 1500 }), async (limit) => {
        const { text, length, cut } = (await wrapOf(walk, { limit })).wrap.description;
        expect(text.length).toBe(length);
        expect(length).toBeLessThanOrEqual(limit);
        if (limit < long.length) expect(cut.length).toBeGreaterThan(0);
        if (limit > 150) expect(text).toContain("I earn a commission");
      }),
      { numRuns: 15 },
    );
  });
});

describe("viewers' questions", () => {
  it("are answered from the records, or said to be open", async () => {
    const comments = {
      file: "episodes/june/comments.txt",
      text: "lovely film\nWhen did you plant the Musselburgh leeks?\n",
    };
    const { wrap } = await wrapOf(walk, { comments });
    expect(
      wrap.answers.map(({ question, answer, place }) => [question, answer, `${place.file}:${place.line}`]),
    ).toEqual([
      [
        "where did you get the Uchiki Kuri from?",
        "Uchiki Kuri: Saltmarsh Hall seed swap.",
        "notes/2026/2026-06-14.md:1",
      ],
      ["what do you put on slugs?", undefined, "notes/2026/2026-06-14.md:2"],
      [
        "When did you plant the Musselburgh leeks?",
        "Musselburgh: sown on 10 April, planted out on 24 May.",
        "episodes/june/comments.txt:2",
      ],
    ]);
  });
});

describe("the edit log", () => {
  const title = (bed: string | undefined) => bed ?? "none";

  it("lists stops and what was heard in order of time", async () => {
    const { wrap } = await wrapOf(walk);
    const rows = editLog(wrap, title, { num: 30_000, den: 1001 });
    // SMPTE drop frame: the second at 12 s is picture 359 of 29.97, labelled 00:00:11;29.
    expect(rows.find(({ begin }) => begin === "00:00:12.000")).toMatchObject({
      timecode: "00:00:11;29",
      rate: "29.97",
    });
    expect(rows.map(({ begin }) => begin)).toEqual([...rows.map(({ begin }) => begin)].sort());
    expect(rows.filter(({ kind }) => kind === "stop").map(({ what }) => what)).toEqual([
      "long-bed",
      "squash-bed",
      "tomato-pots",
    ]);
    expect(rows.some(({ kind, what }) => kind === "promise" && what === "weigh the first of them on camera")).toBe(
      true,
    );
  });
});

describe("bad input", () => {
  const rules = async (bytes: Uint8Array, more = {}) =>
    (await wrapOf([], { captions: { file: "june.vtt", bytes }, ...more })).wrap.problems.map(({ rule }) => rule);
  const text = (body: string) => Buffer.from(`WEBVTT\n\n${body}`);

  it.each([
    ["no caption at all", Buffer.from(""), "captions/none"],
    ["not even text", Buffer.from([0, 255, 254, 1, 2, 3]), "captions/none"],
    [
      "out of order",
      text("00:05.000 --> 00:06.000\nsecond\n\n00:01.000 --> 00:02.000\nfirst\n"),
      "captions/out-of-order",
    ],
    ["before the film begins", text("-00:01.000 --> 00:05.000\nleeks\n"), "captions/time"],
    ["one over the other", text("00:01.000 --> 00:05.000\na\n\n00:02.000 --> 00:06.000\nb\n"), "captions/overlap"],
    ["UTF-16", Buffer.from(`\uFEFF${text("00:01.000 --> 00:05.000\nleeks\n")}`, "utf16le"), "captions/encoding"],
    ["Windows-1252", Buffer.from("WEBVTT\n\n00:01.000 --> 00:05.000\ncaf\u00e9\n", "latin1"), "captions/encoding"],
  ])("%s is said", async (_, bytes, rule) => {
    expect(await rules(bytes)).toContain(rule);
  });

  it("past the film's end is said, and kept", async () => {
    const { wrap } = await wrapOf(walk, { length: 20 });
    const found = wrap.problems.find(({ rule }) => rule === "captions/past-end");
    expect(found?.what).toBe("The film ends at 0:20, and 5 captions begin after that, the first at 0:21.");
    expect(wrap.coverage.named.map(({ title }) => title)).toContain("Harbinger");
  });

  it("captions of another film are said", async () => {
    const other = Array.from(
      { length: 40 },
      (_, at) => `so the gearbox goes back on number ${at} and we torque it down`,
    );
    const { wrap } = await wrapOf(other);
    expect(wrap.problems.map(({ rule }) => rule)).toContain("captions/another-film");
    expect((await wrapOf(walk)).wrap.problems).toEqual([]);
  });

  it("HTML and scripts in captions never reach what is said", async () => {
    const { wrap } = await wrapOf([
      "<script>alert(1)</script>The long bed. <b onclick=x>Leeks</b>",
      "<img src=x onerror=alert(2)> &lt;script&gt; Musselburgh",
    ]);
    expect(JSON.stringify(wrap.transcript)).not.toMatch(/<script|<img|onerror|onclick|alert\(1\)/);
    expect(wrap.transcript[0]?.text).toContain("The long bed.");
  });

  it("without captions, and without a brief, gives what the records tell", async () => {
    const { garden, episode } = await smallGarden();
    const { wrap, corrected } = wrapEpisode({ garden, episode });
    expect(corrected).toBeUndefined();
    expect(wrap.chapters).toEqual([]);
    expect(wrap.noChapters).toBe(
      "Video sites want at least three chapters of ten seconds or more, and nothing was heard in it.",
    );
    expect(wrap.description.text).toContain("Uchiki Kuri squash");
    expect(wrapReport(wrap, garden)).toContain("There are no captions yet");
  });

  it("an episode of a garden with nothing in it is wrapped too", async () => {
    const { garden, episode } = await smallGarden();
    const bare = {
      ...garden,
      beds: new Map(),
      varieties: new Map(),
      gear: new Map(),
      changes: new Map(),
      events: [],
      notes: [],
    };
    const { wrap } = wrapEpisode({ garden: bare, episode, captions: { file: "a.vtt", bytes: vtt(walk) } });
    expect(wrap.transcript.length).toBeGreaterThan(0);
  });

  it("any captions give a wrap, with times in order and the same again", async () => {
    const { garden, episode } = await smallGarden();
    const line = fc.string({
      unit: fc.constantFrom(
        "leeks ",
        "long bed ",
        "<b>",
        "&amp;",
        "constructor ",
        "i'll show ",
        "in july ",
        "24 ",
        "the ",
        "muscle bra ",
        ".",
        "?",
        "[x]",
        "\n",
        "é",
      ),
      maxLength: 12,
    });
    fc.assert(
      fc.property(fc.array(line, { maxLength: 12 }), (lines) => {
        const request = {
          garden,
          episode,
          captions: { file: "a.vtt", bytes: vtt(lines.map((one) => one.replace(/\n+/g, "\n"))) },
        };
        const { wrap } = wrapEpisode(request);
        expect(wrapEpisode(request).wrap).toEqual(wrap);
        for (const list of [wrap.stops, wrap.chapters, wrap.followUps, wrap.transcript, wrap.disagreements]) {
          const times = list.map(({ at }) => at);
          expect(times).toEqual([...times].sort((a, b) => a - b));
        }
      }),
      { numRuns: 60 },
    );
  });
});
