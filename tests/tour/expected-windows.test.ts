/** What the brief says of plants that are not ready yet, where this garden's past is known: of what is left, on the day of asking. */
import { expect, test } from "vitest";
import { noWeather } from "../../src/almanac/index.ts";
import { briefFor } from "../../src/cli/brief-command.ts";
import { expectedWindows } from "../../src/cli/expected-windows.ts";
import { makeBrief } from "../../src/tour/index.ts";
import { type Files, gardenOf } from "./garden-of.ts";

const files: Files = {
  "beds/long-bed.md": "---\ntitle: Long Bed\nin use since: 2023-01-01\n---\n",
  "varieties/sungold.md": "---\ntitle: Sungold\ncrop: tomato\ndays to maturity: 60 from planting\n---\n",
  "varieties/boltardy.md": "---\ntitle: Boltardy\ncrop: beetroot\ndays to maturity: 60 from sowing\n---\n",
  "varieties/musselburgh.md": "---\ntitle: Musselburgh\ncrop: leek\ndays to maturity: 60 from planting\n---\n",
  // Two years in which tomatoes took 75 days and 75 days, for 60.
  "notes/2024-05-20.md": "- planted 4 bought Sungold in Long Bed\n",
  "notes/2024-08-03.md": "- picked 1 kg Sungold from Long Bed\n- cleared Sungold from Long Bed\n",
  "notes/2025-05-20.md": "- planted 4 bought Sungold in Long Bed\n",
  "notes/2025-08-03.md": "- picked 1 kg Sungold from Long Bed\n- cleared Sungold from Long Bed\n",
  "notes/2026-05-20.md":
    "- planted 4 bought Sungold in Long Bed\n- planted 20 bought Musselburgh in Long Bed\n- sowed 30 Boltardy in Long Bed\n",
};

async function saidOn(day: string, today = day, more: Files = {}) {
  const garden = await gardenOf({ ...files, ...more }, today);
  const brief = briefFor({ garden, weather: noWeather, today }, day);
  const facts = brief.stops[0]?.facts ?? [];
  const of = (variety: string) =>
    facts.find(({ kind, plantings }) => kind === "expected" && plantings.some((id) => id.includes(variety)))?.text;
  return { sungold: of("sungold"), boltardy: of("boltardy"), musselburgh: of("musselburgh"), brief };
}

test("before its time a window of this garden's own, with the packet's days and last year's", async () => {
  const { sungold } = await saidOn("2026-06-20");
  // log(75 / 60) twice, with two plantings of the packet's: 60 × 1.118 = 67 days. Spread of the logarithm 0.192 (a prior of 0.2
  // for five plantings, and last year's 75 days for the 65 then forecast), so a tenth lies before 52 and a tenth after 86 days.
  expect(sungold).toBe(
    "The Sungold tomatoes should be ready between 11 July and 14 August, most likely about 26 July by this garden's own records: 60 days from planting, and last year it took 75 here.",
  );
});

test("when the packet's day has passed without a picking, what is left of the window", async () => {
  const garden = await gardenOf(files, "2026-08-01");
  const windows = (on: string) => expectedWindows({ garden, weather: noWeather, today: on }, on);
  const id = "long-bed/sungold/2026-05-20";
  const [early, late] = [windows("2026-06-20").get(id), windows("2026-08-01").get(id)];
  // Nothing that has not come by the first of August comes before it.
  expect([early?.from, late?.from]).toEqual(["2026-07-11", "2026-08-02"]);
  expect((late?.likely ?? "") > (early?.likely ?? "")).toBe(true);
  expect((late?.to ?? "") > (early?.to ?? "")).toBe(true);
  const { sungold, brief } = await saidOn("2026-08-01");
  expect(sungold).toMatch(
    /^By their 60 days from planting, the Sungold tomatoes were due to be ready on 19 July; nothing picked yet, and now most likely about \d+ August by this garden's own records\.$/,
  );
  expect(brief.stops[0]?.show.filter(({ text }) => text === sungold).map(({ kind }) => kind)).toEqual(["due soon"]);
  // Without what this garden knows, the brief still says only what the packet said.
  const [bare] = makeBrief(garden, { day: "2026-08-01", today: "2026-08-01" }).stops;
  expect(bare?.facts.map(({ text }) => text)).toContain(
    "By their 60 days from planting, the Sungold tomatoes were due to be ready on 19 July; nothing picked yet.",
  );
});

test("a window that rests on the packet alone is not called the garden's own", async () => {
  const { boltardy } = await saidOn("2026-06-20");
  expect(boltardy).toMatch(/most likely about \d+ July: 60 days from sowing\.$|between .*: 60 days from sowing\.$/);
  expect(boltardy).not.toContain("own records");
});

test("leeks that wait for somebody to want them have no window", async () => {
  const { musselburgh } = await saidOn("2026-06-20");
  expect(musselburgh).not.toMatch(/between|most likely|own records/);
});

test("a tour that was is told what was known on its day", async () => {
  const then = await saidOn("2026-06-20");
  const later = await saidOn("2026-06-20", "2026-12-01", {
    "notes/2026-10-30.md": "- picked 1 kg Sungold from Long Bed\n- cleared Sungold from Long Bed\n",
  });
  expect(later.sungold).toBe(then.sungold);
});
