/** Briefs of small gardens, read for what nobody would say aloud. */
import { expect, it } from "vitest";
import { briefMarkdown, makeBrief } from "../../src/tour/index.ts";
import { type Files, gardenOf } from "./garden-of.ts";

async function briefOf(files: Files, day: string): Promise<string> {
  const garden = await gardenOf(files, day);
  return briefMarkdown(makeBrief(garden, { day, today: day }), garden.settings);
}

const rows: Files = {
  "garden.md":
    "---\nunits: us\nlanguage: en-US\nplace: {latitude: 30.4, longitude: -98.1}\ntime zone: America/Chicago\n---\n",
  "beds/south-rows.md": "---\ntitle: South Rows\nsize: 30 x 12 ft\nfacing: south\n---\n",
  "beds/stock-tank.md": "---\ntitle: Stock Tank\nsize: 8 x 2 ft\n---\n",
  "varieties/cherokee-purple.md":
    "---\ntitle: Cherokee Purple\ncrop: tomato\ndays to maturity: 80 from planting\n---\n",
  "notes/2026-03-14.md": "---\nbed: South Rows\n---\n- planted 8 bought Cherokee Purple\n",
  "notes/2026-03-20.md": "---\nbed: South Rows\n---\n- replanted 2 bought Cherokee Purple\n",
  "notes/2026-04-11.md": "- planted 6 bought jalapeños in Stock Tank\n",
  "notes/2026-05-16.md":
    "- picked 1 lb 6 oz Cherokee Purple from South Rows\n- trouble: hornworms on Cherokee Purple\n",
  "notes/2026-05-20.md": "- put up shade cloth over South Rows\n- put up a net over South Rows\n",
  "notes/2026-06-06.md": "- fed the tomatoes w/ fish emulsion\n- pinched out the Cherokee Purples\n",
};

it("a bed's sides are told in feet from a foot on", async () => {
  const brief = await briefOf(rows, "2026-06-13");
  expect(brief).toContain("The stock tank is 8 feet by 2 feet.");
  expect(brief).toContain("The south rows are 30 feet by 12 feet.");
});

it("nothing is called unpicked while others of the variety are picked in the bed", async () => {
  const brief = await briefOf(rows, "2026-06-13");
  expect(brief).toContain("Picking of the Cherokee Purple tomatoes began on May 16");
  expect(brief).not.toContain("nothing picked yet");
});

it("what shades is not tried against what eats", async () => {
  const brief = await briefOf(rows, "2026-06-13");
  expect(brief).toMatch(/Tried so far: [^.]*\bnet\b/);
  expect(brief).not.toMatch(/Tried so far: [^.]*shade/);
});

it("one stop of known light is in it, whatever the hour", async () => {
  const brief = await briefOf(rows, "2026-06-13");
  expect(brief).not.toMatch(/known in good light/);
  expect(brief).toMatch(/Best start by the light: \d+:\d\d; in good light then: the one stop whose facing is known\./);
});

it("work on plants named in their plural says their name once", async () => {
  const brief = await briefOf(rows, "2026-06-13");
  expect(brief).toContain("The Cherokee Purple tomatoes were pinched out.");
  expect(brief).toContain("fed with fish emulsion");
});
