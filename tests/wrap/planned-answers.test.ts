/** What becomes of what was planned: told only when its claim is made, put off, kept back, or open where the turn is a guess. */
import { describe, expect, it } from "vitest";
import type { PlannedThing, PlannedTour } from "../../src/model.ts";
import { state } from "../../src/timeline/index.ts";
import { wrapEpisode, wrapReport } from "../../src/wrap/index.ts";
import { smallGarden, vtt } from "./small-film.ts";

const records = {
  "notes/2026/2026-06-06.md": [
    "- lost 3 Musselburgh leeks in Long Bed to slugs",
    "- trouble: rust on Musselburgh leek in Long Bed",
    "- promised: measure the leeks in June",
    "",
  ].join("\n"),
};

async function filmed(lines: readonly string[], point: Partial<PlannedThing>) {
  const { garden, episode } = await smallGarden(records);
  const leeks = state(garden, "long-bed", episode.day)
    .plantings.filter(({ variety }) => variety === "musselburgh")
    .map(({ id }) => id);
  const thing: PlannedThing = {
    id: "S1a",
    key: "long-bed/a",
    kind: "lost",
    level: "should",
    text: "Three of the Musselburgh leeks were lost to slugs on 6 June.",
    plantings: leeks,
    ...point,
  };
  const brief: PlannedTour = {
    stops: [
      { bed: "long-bed", show: [thing], shots: [], cautions: [], furtherCautions: [] },
      { bed: "squash-bed", show: [], shots: [], cautions: [], furtherCautions: [] },
      { bed: "tomato-pots", show: [], shots: [], cautions: [], furtherCautions: [] },
    ],
    followUps: [],
  };
  const captions = {
    file: "a.vtt",
    bytes: vtt(["First the long bed.", ...lines, "Now the squash bed. Uchiki Kuri here."], 6),
  };
  return { wrap: wrapEpisode({ garden, episode, brief, captions }).wrap, garden };
}

const answer = async (lines: readonly string[], point: Partial<PlannedThing> = {}) =>
  (await filmed(lines, point)).wrap.coverage.things[0]?.covered;

describe("a planned thing", () => {
  it.each([
    ["lost", "These are the Musselburgh leeks. Slugs had three of them.", "said"],
    ["lost", "These are the Musselburgh leeks. They look well, twelve of them in a row.", "shown, not said"],
    ["first flower", "These are the Musselburgh leeks. The first one opened on Friday.", "said"],
    ["first flower", "These are the Musselburgh leeks. See the white ball on that one.", "shown, not said"],
    ["first picking", "These are the Musselburgh leeks. I pulled the first of them last week.", "said"],
    ["first picking", "These are the Musselburgh leeks. I will pull the first next week.", "shown, not said"],
    ["first time", "These are the Musselburgh leeks. They are new to me.", "said"],
    ["first time", "These are the Musselburgh leeks. They look well.", "shown, not said"],
    ["grew", "These are the Musselburgh leeks. They are forty centimetres tall.", "said"],
    ["lost", "Nothing to look at here at all.", "missed"],
  ])("of the kind %s: %s", async (kind, said, covered) => {
    expect(await answer([said], { kind })).toBe(covered);
  });

  it("of a trouble is told by the trouble's name alone", async () => {
    const rust = { kind: "trouble", text: "Rust on the Musselburgh leeks, since 6 June." };
    expect(await answer(["The leeks have rust on them."], rust)).toBe("said");
    expect(await answer(["The leeks have orange spots on them."], rust)).toBe("shown, not said");
  });

  it("that was promised is kept, put off again, or owned up to", async () => {
    const owed = { kind: "owed", text: "measure the leeks in June" };
    const said = "The leeks. I said I would measure them.";
    expect(await answer([said, "So I did, and they are thirty-five centimetres."], owed)).toBe("said");
    expect(await answer([said, "The tape is in the shed, so I'll measure them next time."], owed)).toBe(
      "put off again",
    );
    expect(await answer([said, "And I haven't."], owed)).toBe("shown, not said");
  });

  it.each([
    "But it will have to wait, the tape is in the shed.",
    "The tape is in the shed. That's a job for another day.",
    "No light left, sorry.",
    "We'll keep that for the next film.",
    "Not this time, I've run out of puff.",
    "So it is pushed back to the summer.",
  ])("that was promised is put off by: %s", async (said) => {
    const owed = { kind: "owed", text: "measure the leeks in June" };
    expect(await answer(["The leeks. I said I would measure them.", said], owed)).toBe("put off again");
  });

  it("that was promised is put off without a word of the promise, and not by what is kept for the kitchen", async () => {
    const owed = { kind: "owed", text: "measure the leeks in June" };
    expect(await answer(["I'm not going to measure the leeks today."], owed)).toBe("put off again");
    expect(
      await answer(
        ["The leeks. I said I would measure them. Thirty-five centimetres.", "We'll eat them another day."],
        owed,
      ),
    ).toBe("said");
  });

  it("that was meant and came to nothing is not kept, and an answer may be no", async () => {
    const measure = { kind: "owed", text: "measure the leeks in June" };
    expect(await answer(["The leeks. I was going to measure them but it rained."], measure)).toBe("shown, not said");
    const whether = { kind: "owed", text: "tell whether the net keeps the moth off the leeks" };
    expect(await answer(["You wanted to know whether the net keeps the moth off. Not one leek had it."], whether)).toBe(
      "said",
    );
  });

  it("that is an old promise told again is no new one", async () => {
    const owed = { kind: "owed", text: "show the leeks in June" };
    expect(await answer(["I told you, the leeks, you'll see them next time. Here they are."], owed)).toBe("said");
  });

  it("is told by its own figure before its plants are named", async () => {
    const leeks = "These are the Musselburgh leeks. They look well.";
    expect(await answer(["I lost three in the wet.", leeks])).toBe("said");
    expect(await answer(["I lost five in the wet.", leeks])).toBe("shown, not said");
  });

  it.each([
    ["Powdery mildew on the Musselburgh leeks, since 6 June.", "The leeks have mildew.", "said"],
    ["Squash bugs on the Musselburgh leeks, since 6 June.", "The leeks have little bugs.", "shown, not said"],
  ])("of a trouble is told by what it is, and not by what many things are: %s", async (text, said, covered) => {
    expect(await answer([said], { kind: "trouble", text })).toBe(covered);
  });

  it("that was shown and not said is to be picked up, with its time", async () => {
    const { wrap } = await filmed(["These are the Musselburgh leeks. They look well."], {});
    expect(wrap.coverage.toPickUp.join("\n")).toMatch(/Long Bed, S1a, at 0:\d\d shown and not said: Three of the/);
  });
});

describe("claims", () => {
  it("are counted, and what the records tell nothing of is listed and no agreement", async () => {
    const { wrap, garden } = await filmed(
      [
        "These are the Musselburgh leeks, twelve of them.",
        "They are forty centimetres tall.",
        "I planted them on the first of May.",
      ],
      {},
    );
    // That leeks stand there is one of them.
    const { heard, compared, agreed, differed, notCompared } = wrap.claims;
    expect({ compared, agreed, differed }).toEqual({ compared: 3, agreed: 2, differed: 1 });
    expect(notCompared.map(({ said }) => said)).toEqual([expect.stringContaining("forty centimetres")]);
    expect(heard).toBe(compared + notCompared.length);
    expect(wrapReport(wrap, garden)).toMatch(
      /## Held against the records\n\n- 4 claims about plants heard, 3 compared: 2 agreed, 1 differed\. Of the other 1 the records tell nothing/,
    );
  });

  it("are read past fillers, feasts and losses", async () => {
    const { wrap } = await filmed(
      [
        "These are the Musselburgh leeks. I planted them, um, at, like, Easter.",
        "Slugs came. They ate, you know, nine.",
      ],
      {},
    );
    expect(wrap.disagreements.map(({ records: told }) => told)).toEqual([
      expect.stringMatching(/Musselburgh planted on 24 May/),
      expect.stringMatching(/three Musselburgh lost/),
    ]);
  });
});
