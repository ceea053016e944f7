import { describe, expect, test } from "vitest";
import { openFollowUps } from "../../src/timeline/index.ts";
import { grow, promised } from "./small-garden.ts";

describe("follow-ups", () => {
  test("of notes are open until a done line keeps them", () => {
    const garden = grow({
      episodes: [
        { id: "2026-05-tour", day: "2026-05-16" },
        { id: "2026-07-tour", day: "2026-07-12" },
      ],
      lines: [
        ["2026-05-16", "promised", { bed: "long-bed", what: "show the leeks again in July", due: "2026-07-31" }],
        ["2026-07-12", "done", { what: "showed the leeks again" }],
      ],
    });
    expect(openFollowUps(garden, "2026-06-01")).toMatchObject([
      {
        what: "show the leeks again in July",
        bed: "long-bed",
        promisedOn: "2026-05-16",
        episode: "2026-05-tour",
        due: "2026-07-31",
      },
    ]);
    expect(openFollowUps(garden, "2026-05-15")).toEqual([]);
    expect(openFollowUps(garden, "2026-07-12")).toEqual([]);
    expect(garden.followUps[0]).toMatchObject({ kept: "2026-07-12", keptIn: "2026-07-tour" });
    expect(garden.changes.get("long-bed")?.map(({ kind, day, text }) => [kind, day, text])).toEqual([
      ["promised", "2026-05-16", "Promised to viewers: show the leeks again in July."],
      ["done", "2026-07-12", "Kept as promised: show the leeks again in July."],
    ]);
  });

  test("of episode records are made when the film is published", () => {
    const garden = grow({
      episodes: [
        {
          id: "2026-05-tour",
          day: "2026-05-16",
          published: "2026-05-22",
          promised: [
            promised("how close I dared to plant the squash", { bed: "squash-bed", due: "2026-06-13", at: 400 }),
          ],
        },
      ],
      lines: [],
    });
    expect(openFollowUps(garden, "2026-05-21")).toEqual([]);
    expect(openFollowUps(garden, "2026-05-22")).toMatchObject([
      { episode: "2026-05-tour", at: 400, bed: "squash-bed" },
    ]);
    expect(garden.changes.get("squash-bed")?.map(({ kind, day, text }) => [kind, day, text])).toEqual([
      ["promised", "2026-05-22", "Promised to viewers: how close I dared to plant the squash."],
      ["overdue", "2026-06-14", "Owed to viewers since 13 June: how close I dared to plant the squash."],
    ]);
  });

  test("are kept by a day, by an episode, or by a done line", () => {
    const garden = grow({
      episodes: [
        {
          id: "2026-05-tour",
          day: "2026-05-16",
          promised: [
            promised("the arch", { kept: "2026-06-01" }),
            promised("the tunnel door", { kept: "2026-06-tour" }),
            promised("weigh the first garlic on camera"),
            promised("taste the radishes"),
          ].map((one, index) => ({ ...one, place: { ...one.place, line: 10 + index } })),
        },
        { id: "2026-06-tour", day: "2026-06-13", published: "2026-06-19" },
      ],
      lines: [["2026-07-11", "done", { what: "weighed the garlic on camera" }]],
    });
    expect(garden.followUps.map(({ what, kept, keptIn }) => [what, kept, keptIn])).toEqual([
      ["the arch", "2026-06-01", undefined],
      ["the tunnel door", "2026-06-19", "2026-06-tour"],
      ["weigh the first garlic on camera", "2026-07-11", undefined],
      ["taste the radishes", undefined, undefined],
    ]);
    expect(openFollowUps(garden, "2026-07-18").map(({ what }) => what)).toEqual(["taste the radishes"]);
  });

  test("are ordered by what is due first", () => {
    const garden = grow({
      lines: [
        ["2026-05-01", "promised", { what: "some day" }],
        ["2026-05-02", "promised", { what: "in August", due: "2026-08-31" }],
        ["2026-05-03", "promised", { what: "in July", due: "2026-07-31" }],
      ],
    });
    expect(openFollowUps(garden, "2026-06-01").map(({ what }) => what)).toEqual(["in July", "in August", "some day"]);
  });

  test("are private when their line is", () => {
    const garden = grow({
      lines: [["2026-05-01", "promised", { what: "tell Ines first", private: true, bed: "long-bed" }]],
    });
    expect(garden.followUps[0]?.private).toBe(true);
    expect(garden.changes.get("long-bed")?.[0]?.private).toBe(true);
  });
});
