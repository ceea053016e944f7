/** What a film says of promises beside making them: kept in the same film, and earlier ones put off once more. */
import { describe, expect, it } from "vitest";
import type { Garden } from "../../src/model.ts";
import { openFollowUps } from "../../src/timeline/index.ts";
import { acceptPromises, wrapReport } from "../../src/wrap/index.ts";
import { smallGarden, wrapOf } from "./small-film.ts";

const may =
  "---\ntitle: May walk\ndate: 2026-05-30\npublished: 2026-05-31\nstops: [long-bed]\npromised:\n  - {what: weigh the first leeks, bed: long-bed, due: 2026-06-30}\n  - {what: count the slugs under the boards, bed: long-bed}\n---\n";

describe("a promise made and kept in one film", () => {
  const lines = [
    "The long bed. Twelve Musselburgh leeks here.",
    "I'll weigh a leek on camera before we go.",
    "Some grass between them.",
    "I said I'd weigh a leek. Here it is on the scale: three hundred grams.",
    "And that is the long bed.",
  ];

  it("closes itself", async () => {
    const { wrap } = await wrapOf(lines);
    expect(wrap.followUps.map(({ what, kept, putsOff }) => [what, kept?.at, putsOff])).toEqual([
      ["weigh a leek on camera before we go", 9, undefined],
    ]);
    const { garden } = await smallGarden();
    expect(wrapReport(wrap, garden)).toContain("(Long Bed, kept in this film, at 0:09)");
  });

  it("stays open when it is for another day, or only spoken of", async () => {
    const later = await wrapOf(lines.map((line) => line.replace("before we go", "in August")));
    expect(later.wrap.followUps.map(({ kept }) => kept)).toEqual([undefined]);
    const not = await wrapOf(
      lines.map((line) => line.replace(/Here it is.*/, "But I haven't, the scale is in the house.")),
    );
    expect(not.wrap.followUps.map(({ kept }) => kept)).toEqual([undefined]);
  });
});

describe("an earlier promise that is put off", () => {
  const lines = [
    "The long bed. Twelve Musselburgh leeks here.",
    "In May I said I'd weigh the first leeks. They are not ready,",
    "so I'll weigh them in August.",
    "And that is the long bed.",
  ];

  it("is named with the new one, and goes into the record with it", async () => {
    const { wrap } = await wrapOf(lines, {}, { "episodes/may/index.md": may });
    const [one] = wrap.followUps;
    expect(one).toMatchObject({
      due: "2026-08-31",
      putsOff: { what: "weigh the first leeks", promisedOn: "2026-05-31" },
    });
    const { garden } = await smallGarden({ "episodes/may/index.md": may });
    expect(wrapReport(wrap, garden)).toContain("puts off “weigh the first leeks”, promised on 31 May");
  });

  it("is owed no more from that day on, and the new one is", async () => {
    const record =
      "---\ntitle: June walk\ndate: 2026-06-14\npublished: 2026-06-20\nlink: https://films.example/june\nstops: [long-bed]\n---\n";
    const promise = { what: "weigh them in August", bed: "long-bed", due: "2026-08-31", at: 6 };
    const accepted = acceptPromises(record, [{ ...promise, putsOff: "weigh the first leeks" }]);
    const text = "text" in accepted ? accepted.text : accepted.refused;
    expect(text).toContain("    due: 2026-08-31\n    puts off: weigh the first leeks\n");
    const { garden } = await smallGarden({ "episodes/may/index.md": may, "episodes/june/index.md": text });
    const owed = (day: string) => openFollowUps(garden, day).map(({ what }) => what);
    expect(owed("2026-06-19")).toEqual(["weigh the first leeks", "count the slugs under the boards"]);
    expect(owed("2026-06-20")).toEqual(["weigh them in August", "count the slugs under the boards"]);
    const overdue = [...garden.changes.values()].flat().filter(({ kind }) => kind === "overdue");
    expect(overdue.map(({ day }) => day)).toEqual(["2026-09-01"]);
    const rules = (grown: Garden) => grown.doubts.map(({ rule }) => rule);
    expect(rules(garden)).not.toContain("timeline/no-such-promise");
    const slip = text.replace("puts off: weigh the first leeks", "puts off: paint the gate");
    const { garden: slipped } = await smallGarden({ "episodes/may/index.md": may, "episodes/june/index.md": slip });
    expect(rules(slipped)).toContain("timeline/no-such-promise");
  });
});
