/** Briefs of small gardens, read for what nobody would say aloud. */
import { expect, it } from "vitest";
import { isBeingPicked, living, state } from "../../src/timeline/index.ts";
import { cardsMarkdown, makeCards } from "../../src/tour/index.ts";
import { type Files, gardenOf } from "./garden-of.ts";

async function briefOf(files: Files, day: string): Promise<string> {
  const garden = await gardenOf(files, day);
  return cardsMarkdown(makeCards(garden, { day, today: day }), garden.settings);
}

const rows: Files = {
  "garden.md":
    "---\nunits: us\nlanguage: en-US\nplace: {latitude: 30.4, longitude: -98.1}\ntime zone: America/Chicago\n---\n",
  "beds/south-rows.md": "---\ntitle: South Rows\nsize: 30 x 12 ft\nfacing: south\n---\n",
  "beds/stock-tank.md": "---\ntitle: Stock Tank\nsize: 8 x 2 ft\n---\n",
  "varieties/mortgage-lifter.md":
    "---\ntitle: Mortgage Lifter\ncrop: tomato\ndays to maturity: 80 from planting\n---\n",
  "notes/2026-03-14.md": "---\nbed: South Rows\n---\n- planted 8 bought Mortgage Lifter\n",
  "notes/2026-03-20.md": "---\nbed: South Rows\n---\n- replanted 2 bought Mortgage Lifter\n",
  "notes/2026-04-11.md": "- planted 6 bought jalapeños in Stock Tank\n",
  "notes/2026-05-16.md":
    "- picked 1 lb 6 oz Mortgage Lifter from South Rows\n- trouble: hornworms on Mortgage Lifter\n",
  "notes/2026-05-20.md": "- put up shade cloth over South Rows\n- put up a net over South Rows against the hornworms\n",
  "notes/2026-05-21.md": "- did: took the lower leaves off the Mortgage Lifters\n",
  "notes/2026-06-06.md": "- fed the tomatoes w/ fish emulsion\n- pinched out the Mortgage Lifters\n",
};

it("a bed's sides are told in feet from a foot on", async () => {
  const brief = await briefOf(rows, "2026-06-13");
  expect(brief).toContain("The stock tank is 8 feet by 2 feet.");
  expect(brief).toContain("The south rows are 30 feet by 12 feet.");
});

it("nothing is called unpicked while others of the variety are picked in the bed", async () => {
  const brief = await briefOf(rows, "2026-06-13");
  expect(brief).toContain("Picking of the Mortgage Lifter tomatoes began on May 16");
  expect(brief).not.toContain("nothing picked yet");
});

it("what is done beside a trouble is tried against it only where its line says so", async () => {
  const brief = await briefOf(rows, "2026-06-13");
  expect(brief).toMatch(/Tried so far: [^.]*\bnet\b/);
  expect(brief).not.toMatch(/Tried so far: [^.]*(?:shade|leaves)/);
});

it("one stop of known light is in it, whatever the hour", async () => {
  const brief = await briefOf(rows, "2026-06-13");
  expect(brief).not.toMatch(/known in good light/);
  expect(brief).toMatch(/Best start by the light: \d+:\d\d; in good light then: the one stop whose facing is known\./);
});

it("work on plants named in their plural says their name once", async () => {
  const brief = await briefOf(rows, "2026-06-13");
  expect(brief).toContain("The Mortgage Lifter tomatoes were pinched out.");
  expect(brief).toContain("fed with fish emulsion");
});

const kitchen: Files = {
  "garden.md": "---\nname: Kitchen\ntime zone: Europe/London\nlanguage: en-GB\n---\n",
  "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
  "varieties/connover.md": "---\ntitle: Connover's Colossal\ncrop: asparagus\n---\n",
  "varieties/germidour.md": "---\ntitle: Germidour\ncrop: garlic\n---\n",
  "varieties/charlotte.md": "---\ntitle: Charlotte\ncrop: potato\n---\n",
  "notes/2024-04-01.md": "- planted 12 bought Connover's Colossal in Long Bed\n",
  "notes/2025-10-20.md": "- planted 30 bought Germidour in Long Bed\n",
  "notes/2026-04-05.md": "- planted 10 bought Charlotte in Long Bed\n",
  "notes/2026-05-01.md": "- cut 500 g Connover's Colossal from Long Bed\n",
  "notes/2026-05-20.md": "- cut 700 g Connover's Colossal from Long Bed\n",
  "notes/2026-06-26.md": "- picked 2 kg Charlotte from Long Bed\n- lifted 1.5 kg Germidour from Long Bed\n",
};

it("what was picked last weeks ago is not being picked now", async () => {
  const garden = await gardenOf(kitchen, "2026-07-04");
  const asparagus = living(state(garden, "long-bed", "2026-07-04")).find(({ variety }) => variety === "connover");
  expect(asparagus?.stage).toBe("picking");
  const on = (day: string) => asparagus !== undefined && isBeingPicked(asparagus, day);
  expect([on("2026-05-20"), on("2026-06-10"), on("2026-06-11"), on("2026-07-04")]).toEqual([true, true, false, false]);
});

it("what the notes only found there is not called new, nor sown", async () => {
  const brief = await briefOf(
    {
      "beds/rhubarb-bed.md": "---\ntitle: Rhubarb Bed\n---\n",
      "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
      "notes/2026-04-10.md": "- pulled 1 kg rhubarb in Rhubarb Bed\n- sowed radishes in Long Bed\n",
    },
    "2026-04-20",
  );
  const stop = brief.slice(brief.indexOf("· Rhubarb Bed"));
  expect(stop).toContain("Not seen before: rhubarb.");
  expect(stop).not.toMatch(/\bnew rhubarb|new this season|New this season|sown/);
  expect(brief).toMatch(/radishes, new this season|New this season: radishes|Not seen before: radishes, sown/i);
});

it("garlic is lifted once, potatoes are dug, and neither came as plants", async () => {
  const brief = await briefOf(kitchen, "2026-07-04");
  expect(brief).not.toMatch(/first (?:picking of the )?Germidour|Germidour[^.]*began|as plants/i);
  expect(brief).toContain("**Should, the harvest.**");
  expect(brief).toMatch(/Germidour garlic was lifted on 26 June: 1\.5 kg/);
  expect(brief).not.toMatch(/potatoes (?:were|have been) picked|Picking of the Charlotte/);
  expect(brief).toMatch(
    /first Charlotte potatoes were dug on 26 June|Digging of the Charlotte potatoes began on 26 June/,
  );
});
