/** Lines that say of themselves that nobody else is to see them, in a note that is public. */
import { describe, expect, test } from "vitest";
import { isDoubt } from "../../src/records/index.ts";
import { saysPrivate } from "../../src/records/private-lines.ts";
import { publicGarden } from "../../src/site/index.ts";
import { gardenOf } from "../tour/garden-of.ts";
import { recordsOf } from "./records-of.ts";

test.each([
  "(not for the film) Wilf's wife back in hospital, leeks for her tea",
  "off camera: the neighbour's fence",
  "never on camera, he asked me",
  "don't film this bit",
  "Private: the key is under the pot",
  "keep this to myself for now",
])("%s", (line) => {
  expect(saysPrivate(line)).toBe(true);
});

test.each([
  "leeks looking well on camera day",
  "picked 2 kg of beans for the show",
  "private hedge cut back",
  "the secret is to water at night",
  "not for eating yet",
])("%s is for everybody", (line) => {
  expect(saysPrivate(line)).toBe(false);
});

test("stay out of the viewers' garden, facts and story alike", async () => {
  const garden = await gardenOf(
    {
      "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
      "notes/2026-07-01.md":
        "---\nbed: Long Bed\n---\n\n- picked 2 kg Musselburgh\n- picked 3 kg Sturon (not for the film)\n- (not for the film) Musselburgh for the neighbour's tea, her hip again\n\nDon't mention this: Wilf's cough. The leeks stood well.\n",
    },
    "2026-07-18",
  );
  const seen = publicGarden(garden);
  expect(seen.notes.flatMap(({ story }) => story.filter(({ asks }) => asks !== true)).map(({ text }) => text)).toEqual(
    [],
  );
  const told = JSON.stringify([...seen.changes.values()]);
  expect(told).toContain("2 kg Musselburgh");
  expect(told).not.toMatch(/Sturon|hip|cough/);
});

test("hide no less in a list below a verb, or below a line that is read", async () => {
  const garden = await gardenOf(
    {
      "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
      "notes/2026-07-01.md":
        "---\nbed: Long Bed\n---\n\n- planted:\n  - 12 Musselburgh\n  - 30 Sturon (not for the film)\n- picked 2 kg Boltardy\n  - off camera: half of it for Wilf\n",
    },
    "2026-07-18",
  );
  const told = JSON.stringify([...publicGarden(garden).changes.values()]);
  expect(told).toContain("Musselburgh");
  expect(told).not.toMatch(/Sturon|Boltardy|Wilf/);
});

test("are private, and no question", async () => {
  const garden = await gardenOf(
    {
      "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
      "notes/2026-07-01.md": "---\nbed: Long Bed\n---\n\nDon't mention this: the leeks came from Wilf's cellar.\n",
    },
    "2026-07-18",
  );
  expect(garden.notes.flatMap(({ story }) => story.map((part) => [part.private, part.asks]))).toEqual([
    [true, undefined],
  ]);
});

describe("a heading, and a line that says nothing else", () => {
  const note = (text: string) => ({
    "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
    "photos/long-bed/2026-07-01.jpg": "",
    "notes/2026-07-01.md": `---\nbed: Long Bed\n---\n\n- picked 2 kg Musselburgh\n\n${text}`,
  });
  const tellsOf = async (text: string) => {
    const garden = await gardenOf(note(text), "2026-07-18");
    const seen = publicGarden(garden);
    return {
      stops: garden.problems.filter(isDoubt),
      told: JSON.stringify([...seen.changes.values(), seen.notes.map(({ story }) => story), seen.events]),
    };
  };

  test.each([
    "## Not for the film\n\n- lost 3 Sturon onions to Wilf\n\nWilf's cough again.\n",
    "## Private\n\n- lost 3 Sturon onions to Wilf\n- Wilf's cough\n  - Wilf again\n",
    "## Private notes\n\nWilf's cough.\n",
    "## Just for me\n\nWilf's cough.\n",
    "Off camera\n----------\n\nWilf's cough.\n",
    "## Private\n\n### Long Bed\n\n- lost 3 Sturon onions to Wilf\n",
    "## Long Bed (not for the film)\n\n- lost 3 Sturon onions to Wilf\n",
    "## Wilf's garden, not for the film\n\n- lost 3 Sturon onions\n",
    "Not for the film:\n\n- lost 3 Sturon onions to Wilf\n- Wilf's cough\n\nAnd Wilf's wife.\n",
    "**Not for the film:**\n\nWilf's cough.\n",
    "(off camera)\n\nWilf's cough.\n",
    "- not for the film:\n- Wilf's cough\n- lost 3 Sturon onions to Wilf\n",
    "- not for the film:\n  - Wilf's cough\n",
  ])("keep back what stands below: %j", async (text) => {
    const { told, stops } = await tellsOf(text);
    expect(told).toContain("Musselburgh");
    expect(told).not.toMatch(/Wilf|Sturon/);
    expect(stops).toEqual([]);
  });

  test.each([
    "## Private\n\nWilf's cough.\n\n## Long Bed\n\n- picked 3 kg Boltardy\n",
    "Not for the film:\n\n- Wilf's cough\n\n## Long Bed\n\n- picked 3 kg Boltardy\n",
    "## A secret bed of Wilf's\n\n- nothing\n\n## The harvest\n\n- picked 3 kg Boltardy\n".replace(" of Wilf's", ""),
  ])("end where the next part begins: %j", async (text) => {
    const { told } = await tellsOf(text);
    expect(told).toContain("Boltardy");
    expect(told).not.toContain("Wilf");
  });

  test("leave a bed that is called so to its own mark, and a whole note in doubt where it begins so", async () => {
    const open = await gardenOf(
      {
        "beds/secret-corner.md": "---\ntitle: Secret Corner\n---\n",
        "notes/2026-07-01.md": "- a wren\n\n## Secret Corner\n\n- picked 3 kg Boltardy\n",
      },
      "2026-07-18",
    );
    expect(publicGarden(open).events.map(({ bed }) => bed)).toEqual(["secret-corner"]);
    const doubtful = await gardenOf({ "notes/2026-07-01.md": "# Private\n\n- picked 3 kg Boltardy\n" }, "2026-07-18");
    expect(doubtful.problems.filter(isDoubt).map(({ rule }) => rule)).toEqual(["privacy/mark-unclear"]);
  });

  test("keep back a photo that they alone show", async () => {
    const shown = "![the gate](photos/long-bed/2026-07-01.jpg)";
    const photosOf = async (text: string) => {
      const { notes } = await gardenOf(note(text), "2026-07-18");
      return [notes[0]?.photos, notes[0]?.privatePhotos];
    };
    const [photo] = ["photos/long-bed/2026-07-01.jpg"];
    expect(await photosOf(`## Private\n\n${shown}\n`)).toEqual([[photo], [photo]]);
    expect(await photosOf(`- off camera: ${shown}\n`)).toEqual([[photo], [photo]]);
    expect(await photosOf(`${shown}\n\n## Private\n\n${shown}\n`)).toEqual([[photo], undefined]);
  });
});

test("what is told of a variety whose file keeps it back is private, in a note that is not", async () => {
  const { events } = await recordsOf({
    "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
    "varieties/sungold.md": "---\ntitle: Sungold\ncrop: tomato\nprivate: true\n---\n",
    "notes/2026-05-16.md": "---\nbed: long-bed\n---\n\n- planted 2 Sungold\n- planted 3 Musselburgh leeks\n",
  });
  expect(events.map((event) => [event.variety, event.private])).toEqual([
    ["sungold", true],
    ["musselburgh", false],
  ]);
});
