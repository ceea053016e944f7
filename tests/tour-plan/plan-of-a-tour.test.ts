/** What fits into the film: musts, wishes, the length, and what is said of all that does not fit. */
import { describe, expect, test } from "vitest";
import { filmTime, stopOverhead } from "../../src/films/film-time.ts";
import { makeBrief } from "../../src/tour/index.ts";
import { showValues } from "../../src/tour/show-values.ts";
import { dossierOf, type Files, gardenFile, gardenOf, squashTour } from "../tour/garden-of.ts";

const day = "2026-06-19";
const planned = (more: string) => `---
title: June tour
date: ${day}
status: planned
stops: [long-bed, pea-row]
${more}---
`;
const withEpisode = async (more: string, files: Files = squashTour) => {
  const garden = await gardenOf({ ...files, "episodes/2026-06-tour/index.md": planned(more) }, day);
  return { garden, brief: makeBrief(garden, { episode: "2026-06-tour", today: day }) };
};
const kinds = ({ stops }: Awaited<ReturnType<typeof withEpisode>>["brief"]) =>
  stops.map((stop) => stop.show.map(({ kind }) => kind));

describe("the length of the film", () => {
  test("is words at the narration rate and the handling of each kind, in whole seconds", async () => {
    const { brief } = await withEpisode("");
    const lost = brief.stops[0]?.show.find(({ kind }) => kind === "lost");
    // 15 words, one of them a number with digits: 16 at 130 a minute are 7.4 seconds; a close-up on top.
    expect(lost?.text).toBe("Three of the Musselburgh leeks were lost to leek moth on 2 June; 21 are left.");
    expect(lost?.seconds).toBe(Math.round((17 * 60) / 130) + filmTime.handling["close-up"]);
    for (const stop of brief.stops) {
      expect(stop.seconds).toBe(stopOverhead + stop.show.reduce((sum, { seconds }) => sum + seconds, 0));
    }
    const all = brief.stops.reduce((sum, { seconds }) => sum + seconds, 0);
    expect(brief.plan.seconds).toBe(all + filmTime.opening + filmTime.goodbye);
    expect(brief.stops.map(({ begins }) => begins)).toEqual([
      filmTime.opening,
      filmTime.opening + (brief.stops[0]?.seconds ?? 0),
    ]);
  });

  test("grows with a slow speaker", async () => {
    const slow = { ...squashTour, "garden.md": gardenFile.replace("---\n", "---\nnarration rate: 65\n") };
    const [fast, slower] = [(await withEpisode("")).brief, (await withEpisode("", slow)).brief];
    expect(slower.plan.seconds).toBeGreaterThan(fast.plan.seconds * 1.4);
  });

  test("never passes the target, keeps every must, and is filled to a few seconds", async () => {
    for (const target of [130, 140, 150, 160]) {
      const { brief } = await withEpisode(`target: ${target} s\n`);
      expect(brief.plan.seconds).toBeLessThanOrEqual(target);
      expect(brief.plan.over).toBe(0);
      expect(kinds(brief)[0]?.slice(0, 3)).toEqual(["owed", "new", "new"]);
      // Nothing that was left out would have fitted.
      const room = target - brief.plan.seconds;
      for (const { seconds = 0 } of brief.leftOut) expect(seconds).toBeGreaterThan(room);
    }
  });

  test("shorter than the musts: says by how much, and drops none", async () => {
    const { brief, garden } = await withEpisode("target: 60 s\n");
    expect(kinds(brief)).toEqual([["owed", "new", "new"], ["first flower"]]);
    expect(brief.plan.over).toBe(brief.plan.seconds - 60);
    const said = brief.checks.filter(({ kind }) => kind === "target").map(({ text }) => text);
    expect(said).toEqual([
      `What must be shown, four things, takes ${brief.plan.over} seconds more than the film should last. All of it was kept; lengthen the film or skip something.`,
    ]);
    expect(dossierOf(brief, garden)).toContain(
      `what has to be in is ${brief.plan.over} seconds too long for 1 minute, and all of it was kept.`,
    );
  });
});

describe("what the person said", () => {
  test("keep: holds what would have fallen, and something weaker goes", async () => {
    const lostIn = ({ stops }: typeof without) => stops.some(({ show }) => show.some(({ kind }) => kind === "lost"));
    const without = (await withEpisode("target: 135 s\n")).brief;
    expect(lostIn(without)).toBe(false);
    const { brief } = await withEpisode("target: 135 s\nkeep: [21 are left]\n");
    expect(lostIn(brief)).toBe(true);
    expect(brief.plan.seconds).toBeLessThanOrEqual(135);
    expect(kinds(brief)[0]).not.toContain("trouble");
  });

  test("skip: takes out, even what is owed, and the promise is told of", async () => {
    const { brief } = await withEpisode("skip: [how close, Musselburgh]\n");
    const said = brief.stops.flatMap(({ show }) => show).map(({ text }) => text);
    expect(said.filter((text) => /how close|Musselburgh/.test(text))).toEqual([]);
    expect(brief.checks.map(({ text }) => text)).toContain(
      "You skip the promise: show how close you dared to plant the squash, which viewers are waiting for.",
    );
    expect(brief.leftOut.filter(({ why }) => why === "you said skip").map(({ about }) => about)).toContain(
      "the Musselburgh leeks in the long bed",
    );
  });

  test("must: lifts the strongest thing of that name that was none", async () => {
    const { brief } = await withEpisode("must: [Crown Prince]\n");
    const flower = brief.stops[0]?.show.find(({ kind }) => kind === "first flower");
    expect(flower?.level).toBe("must");
    expect(flower?.why).toBe("you asked for it; first time since the last tour");
  });

  test("contradictions and names of nothing are said", async () => {
    const { brief } = await withEpisode("keep: [leek moth, Pea Row, the lawn]\nskip: [Leek Moth, pea-row, the pond]\n");
    expect(brief.stops.map(({ bed }) => bed)).toEqual(["long-bed"]);
    expect(brief.checks.filter(({ kind }) => kind === "wish").map(({ text }) => text)).toEqual([
      "You said keep “the lawn”, and nothing in this tour speaks of it.",
      "You said skip “the pond”, and nothing in this tour speaks of it.",
      "The episode both wants and skips “leek moth”; it was skipped.",
      "The episode both wants and skips “Pea Row”; it was skipped.",
    ]);
  });

  test("weights in garden.md change the order, and an unknown kind is said", async () => {
    const weighed = {
      ...squashTour,
      "garden.md": gardenFile.replace("---\n", "---\nweights: {lost: 5, follow-up: 2}\n"),
    };
    const { brief } = await withEpisode("", weighed);
    const [first] = brief.stops[0]?.show.filter(({ level }) => level === "should") ?? [];
    expect(first?.kind).toBe("lost");
    expect(brief.checks.find(({ kind }) => kind === "weight")?.text).toMatch(
      /^garden\.md weighs “follow-up”, which is no kind of thing to show\. The kinds are: owed, new, /,
    );
  });
});

describe("what is left out", () => {
  test("is named with its reason and its length, and how to have it", async () => {
    const { brief, garden } = await withEpisode("target: 140 s\n");
    const [first] = brief.leftOut;
    expect(first).toMatchObject({ what: "thing", why: "no room", bed: "long-bed" });
    const markdown = dossierOf(brief, garden);
    expect(markdown).toMatch(/## Not in these 2 minutes\n\n/);
    for (const one of brief.leftOut) expect(markdown).toContain(`${one.about} (${one.reason}`);
  });

  test("of a tour of all beds: a bed of which nothing fits is one line", async () => {
    const files = {
      ...squashTour,
      "beds/rhubarb.md": "---\ntitle: Rhubarb Corner\nsite: hill\nplan: {x: 6, y: 3}\n---\n",
    };
    const notes = {
      "notes/2024-03-05.md": "- planted 2 rhubarb in Rhubarb Corner\n",
      "notes/2026-06-01.md": "- picked 1 kg rhubarb from Rhubarb Corner\n",
    };
    const garden = await gardenOf(
      {
        ...files,
        ...notes,
        "episodes/2026-06-tour/index.md": planned("target: 110 s\n").replace("stops: [long-bed, pea-row]\n", ""),
      },
      day,
    );
    const brief = makeBrief(garden, { episode: "2026-06-tour", today: day });
    expect(brief.stops.map(({ bed }) => bed)).toEqual(["long-bed"]);
    const beds = brief.leftOut.filter(({ what }) => what === "bed");
    expect(beds.map(({ bed, why }) => [bed, why])).toEqual([
      ["pea-row", "no room for it"],
      ["rhubarb", "no room for it"],
    ]);
    expect(beds[0]?.miss).toContain("The Matucana sweet peas opened on Tuesday");
    // They can be picked up in passing.
    const cutaways = brief.stops.flatMap(({ shots }) => shots.filter(({ kind }) => kind === "cutaway"));
    expect(cutaways.map(({ text }) => text)).toEqual(["the pea row", "the rhubarb corner"]);
  });
});

test("the table of values has a place for every level, from what must be shown down", () => {
  const values = Object.values(showValues);
  const lowest = (level: string) => Math.min(...values.filter((row) => row.level === level).map(({ value }) => value));
  const highest = (level: string) => Math.max(...values.filter((row) => row.level === level).map(({ value }) => value));
  expect(lowest("must")).toBeGreaterThan(highest("should"));
  expect(lowest("should")).toBeGreaterThan(highest("could"));
});
