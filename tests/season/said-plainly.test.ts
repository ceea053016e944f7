/** Recaps of small gardens, read for what nobody would say: of plants lost, of ground in feet, of plantings by their ids. */
import { describe, expect, it } from "vitest";
import { seasonBeginning } from "../../src/garden/index.ts";
import { makeRecap, recapMarkdown } from "../../src/season/index.ts";
import { type Files, gardenOf } from "../tour/garden-of.ts";

const texas: Files = {
  "garden.md": "---\nname: Caliche Corner\nunits: us\nlanguage: en-US\n---\n",
  "beds/south-rows.md": "---\ntitle: South Rows\nsize: 30 x 12 ft\n---\n",
  "varieties/mortgage-lifter.md":
    "---\ntitle: Mortgage Lifter\ncrop: tomato\ndays to maturity: 80 from planting\n---\n",
  "varieties/apache.md": "---\ntitle: Apache\ncrop: chili\n---\n",
  "notes/2026-01-18.md": "- started 18 Mortgage Lifter indoors\n- started 9 Apache indoors\n",
  "notes/2026-02-28.md": "- lost 3 Mortgage Lifter, damped off\n- lost 1 Mortgage Lifter\n",
  "notes/2026-03-14.md":
    "---\nbed: South Rows\n---\n- planted 8 Mortgage Lifter\n- planted 6 Apache\n- sowed bush beans\n- picked 30 lb spinach\n",
  "notes/2026-03-20.md": "- lost all the beans to frost\n- lost 4 Apache to frost\n- lost all Meteor peas to pigeons\n",
};

async function recapOf(files: Files, today: string, season = seasonBeginning(Number(today.slice(0, 4)), "01-01")) {
  const garden = await gardenOf(files, today);
  const recap = makeRecap(garden, undefined, { season, today });
  return { recap, text: recapMarkdown(recap, garden.settings) };
}

describe("losses", () => {
  it("of plants set out are counted against those set out, not against the seed", async () => {
    const { text } = await recapOf(texas, "2026-05-01");
    expect(text).toContain("The Apache hot peppers lost four of six plants to frost");
    expect(text).toContain("The Mortgage Lifter tomatoes lost four of 18 plants to damping off");
  });

  it("of all there was are no single plant", async () => {
    const { recap, text } = await recapOf(texas, "2026-05-01");
    expect(text).toContain("The Meteor peas were all lost to pigeons.");
    expect(recap.losses.map(({ sentence }) => sentence.text)).toContain(
      "Pigeons took all the Meteor peas, on March 20.",
    );
  });

  it("without a cause are said in words", async () => {
    const { recap } = await recapOf({ ...texas, "notes/2026-03-20.md": "" }, "2026-05-01");
    expect(recap.paragraph.map(({ text }) => text).join(" ")).toContain(
      "Damping off took three tomato plants, and one more was lost without a cause noted.",
    );
  });
});

it("ground is told in square feet where the garden is measured in feet", async () => {
  const { text } = await recapOf(texas, "2026-05-01");
  // 30 lb from 360 square feet is 1.33 oz from each.
  expect(text).toContain("The south rows gave 30 lb, all of it spinach.");
  expect(text).toContain("| a square foot |");
  expect(text).toContain("| South Rows | 30 lb | 1 | March 14 | March 14 | 1.3 oz |");
  expect(text).not.toContain("metre");
});

it("forecasts name the planting as people do", async () => {
  const { text } = await recapOf(texas, "2026-05-01");
  expect(text).toContain("| Mortgage Lifter tomatoes in the south rows, planted on March 14 | picking |");
  expect(text).not.toContain("south-rows/");
});

it("next year's draft is named like the season", async () => {
  const files: Files = {
    "garden.md": "---\nseason starts: 1 July\nplace: {latitude: -41, longitude: 174}\n---\n",
    "beds/terrace.md": "---\ntitle: Terrace\nsize: 3 x 1 m\n---\n",
    "notes/2025-10-25.md": "- planted 10 bought Moneymaker tomatoes in Terrace\n",
  };
  const { text } = await recapOf(files, "2026-05-15", seasonBeginning(2025, "07-01"));
  expect(text).toContain("## A draft for 2026/27");
  expect(text).toContain("The draft for 2026/27 was found");
});

it("viewers are not told how a draft was found that they are not shown", async () => {
  const garden = await gardenOf(texas, "2026-05-01");
  const request = { season: seasonBeginning(2026, "01-01"), today: "2026-05-01" };
  const said = (forViewers: boolean) => makeRecap(garden, undefined, { ...request, forViewers }).methods.join("\n");
  expect(said(false)).toContain("The draft for 2027");
  expect(said(true)).not.toContain("draft");
});
