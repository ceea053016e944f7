/** What stands below a private bed's heading, in a note that also speaks of open beds. */
import { expect, it } from "vitest";
import { publicGarden } from "../../src/site/public-garden.ts";
import { growGarden } from "../../src/timeline/index.ts";
import { recordsOf } from "../records/records-of.ts";

const files = {
  "garden.md": "---\nunits: metric\n---\n",
  "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
  "beds/den.md": "---\ntitle: Secret Den\nprivate: true\n---\n",
  "notes/2026-06-20.md":
    "## Long Bed\n\n- planted 12 Sturon onions\n- picked 4 Sturon onions\n\n## Secret Den\n\n- planted 7 Sturon onions\n- picked 2 kg of Sturon onions\n- slugs everywhere\n",
};

it("stays private, also where a line names no bed itself", async () => {
  const garden = growGarden(await recordsOf(files, "2026-07-01"), []);
  expect(garden.notes[0]?.bedsFrom?.map(({ beds }) => beds)).toContainEqual(["den"]);
  const open = publicGarden(garden);
  const all = JSON.stringify(open, (_, value) => (value instanceof Map ? [...value] : value));
  expect(all).not.toMatch(/\bden\b|Secret/u);
  expect(open.events.map(({ kind, bed, place }) => [kind, bed, place.line])).toEqual([
    ["planted", "long-bed", 3],
    ["picked", "long-bed", 4],
  ]);
  expect([...open.changes.keys()]).toEqual(["long-bed"]);
});
