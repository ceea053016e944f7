/** Lines that say of themselves that nobody else is to see them, in a note that is public. */
import { expect, test } from "vitest";
import { saysPrivate } from "../../src/records/private-lines.ts";
import { publicGarden } from "../../src/site/index.ts";
import { gardenOf } from "../tour/garden-of.ts";

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
