/** The walk: the person's own order, the shortest one where there is none, gates, points to pass, ends, sites in order. */
import { describe, expect, test } from "vitest";
import type { Episode, Garden } from "../../src/model.ts";
import { makeBrief } from "../../src/tour/index.ts";
import { reorderOf, shortestWalk } from "../../src/tour/plan/walk.ts";
import { type Files, gardenFile, gardenOf } from "../tour/garden-of.ts";

const day = "2026-06-01";
const bed = (title: string, x: number | undefined, y = 0, site = "hill", more = "") =>
  `---\ntitle: ${title}\nsite: ${site}\n${x === undefined ? "" : `plan: {x: ${x}, y: ${y}}\n`}${more}---\n`;
const sowings = (...ids: readonly string[]) => ({
  "notes/2026-05-01.md": ids.map((id) => `- sowed 20 Boltardy in ${id}\n`).join(""),
});
const variety = { "varieties/boltardy.md": "---\ntitle: Boltardy\ncrop: beetroot\n---\n" };

/** Four beds in a square, named so that the order of the plan is no walk round it. */
const square: Files = {
  ...variety,
  "sites/hill.md": "---\ntitle: Hill\n---\n",
  "beds/a.md": bed("A", 0, 0),
  "beds/b.md": bed("B", 0, 10),
  "beds/c.md": bed("C", 1, 0),
  "beds/d.md": bed("D", 1, 10),
  ...sowings("a", "b", "c", "d"),
};
const ids = (beds: readonly { readonly id: string }[]) => beds.map(({ id }) => id);
const walked = (garden: Garden, episode?: Episode) => ids(shortestWalk(garden, [...garden.beds.values()], episode));

describe("a walk nobody gave", () => {
  test("is the shortest within the site", async () => {
    expect(walked(await gardenOf(square, day))).toEqual(["a", "c", "d", "b"]);
  });

  test("comes in by one gate and leaves by another, past the points it must pass", async () => {
    const gates = { "sites/hill.md": "---\ntitle: Hill\ngates: [{x: 0, y: 12}]\n---\n" };
    expect(walked(await gardenOf({ ...square, ...gates }, day))).toEqual(["b", "a", "c", "d"]);
    const ends = { "sites/hill.md": "---\ntitle: Hill\nstart: d\nend: {x: 0, y: 12}\n---\n" };
    expect(walked(await gardenOf({ ...square, ...ends }, day))).toEqual(["d", "c", "a", "b"]);
    const tap = { "sites/hill.md": "---\ntitle: Hill\nstart: a\nmust pass: {x: -9, y: 5}\n---\n" };
    // The tap lies to the west: the walk goes out to it between the two western beds.
    expect(walked(await gardenOf({ ...square, ...tap }, day))).toEqual(["a", "c", "d", "b"]);
  });

  test("begins and ends where the episode says", async () => {
    const episode = `---\ntitle: June\ndate: ${day}\nstatus: planned\nfirst stop: d\nlast stop: c\n---\n`;
    const garden = await gardenOf({ ...square, "episodes/june/index.md": episode }, day);
    expect(makeBrief(garden, { episode: "june", today: day }).stops.map((stop) => stop.bed)).toEqual([
      "d",
      "b",
      "a",
      "c",
    ]);
  });

  test("takes two beds at one point one after the other, and beds without a place on the plan last", async () => {
    const files = {
      ...square,
      "beds/e.md": bed("E", 1, 10),
      "beds/f.md": bed("F", undefined),
      ...sowings("a", "b", "c", "d", "e", "f"),
    };
    const garden = await gardenOf(files, day);
    const order = walked(garden);
    expect(Math.abs(order.indexOf("d") - order.indexOf("e"))).toBe(1);
    expect(order.at(-1)).toBe("f");
    const { stops } = makeBrief(garden, { day, today: day });
    const twin = stops.find(({ bed: id }) => id === (order.indexOf("d") < order.indexOf("e") ? "e" : "d"));
    expect(twin?.way).toMatch(/^right beside [DE]$/);
    expect(stops.at(-1)?.way).toBeUndefined();
  });

  test("of no beds, and of beds without any place, is what it was", async () => {
    const none = await gardenOf({}, day);
    expect(shortestWalk(none, [], undefined)).toEqual([]);
    const files = { ...variety, "beds/z.md": bed("Z", undefined, 0, ""), "beds/y.md": bed("Y", undefined, 0, "") };
    expect(walked(await gardenOf(files, day))).toEqual(["y", "z"]);
  });
});

describe("the person's own order", () => {
  const own = `---\ntitle: June\ndate: ${day}\nstatus: planned\nstops: [a, d, c, b]\n---\n`;

  test("always stays, and the brief says what another would save", async () => {
    const garden = await gardenOf({ ...square, "episodes/june/index.md": own }, day);
    const brief = makeBrief(garden, { episode: "june", today: day });
    expect(brief.stops.map((stop) => stop.bed)).toEqual(["a", "d", "c", "b"]);
    // a-d 10.05, d-c 10, c-b 10.05 against a-c-d-b 12 metres.
    expect(brief.plan.metres).toBe(30);
    expect(brief.plan.reorder).toMatchObject({ saves: 18.1, beds: ["a", "c", "d", "b"] });
    expect(brief.checks.map(({ text }) => text)).toContain(
      "Your order stays. In the order A, C, D and B, the walk would be 24 steps shorter.",
    );
  });

  test("is not spoken of when it is as good", async () => {
    const good = own.replace("[a, d, c, b]", "[b, d, c, a]");
    const garden = await gardenOf({ ...square, "episodes/june/index.md": good }, day);
    expect(makeBrief(garden, { episode: "june", today: day }).plan.reorder).toBeUndefined();
    expect(reorderOf(garden, [], undefined)).toBeUndefined();
  });
});

describe("several sites", () => {
  const place = (latitude: number) => `position: {latitude: ${latitude}, longitude: -1}`;
  /** The camera that looks west has the sun in its lens from the early afternoon on, the one that looks east until noon. */
  const files = (order: string): Files => ({
    ...variety,
    "garden.md": gardenFile.replace(
      "---\n",
      "---\nplace: {latitude: 52, longitude: -1}\nfilm between: 7:00 to 21:00\n",
    ),
    "sites/hill.md": `---\ntitle: Hill\n${place(52)}\n${order === "" ? "" : "order: 1\n"}---\n`,
    "sites/yard.md": `---\ntitle: Yard\n${place(52.01)}\n${order === "" ? "" : "order: 2\n"}---\n`,
    "beds/a.md": bed("A", 0, 0, "hill", "viewpoints: [{name: path, looking: east}]\n"),
    "beds/b.md": bed("B", 0, 0, "yard", "viewpoints: [{name: door, looking: west}]\n"),
    ...sowings("a", "b"),
  });

  test("go by the order the person gave", async () => {
    const { stops, plan } = makeBrief(await gardenOf(files("given"), day), { day, today: day, start: "11:00" });
    expect(stops.map((stop) => stop.bed)).toEqual(["a", "b"]);
    expect(plan.start).toBe("11:00");
  });

  test("else by the light: the yard first, before its sun comes round into the lens", async () => {
    const garden = await gardenOf(files(""), day);
    const late = makeBrief(garden, { day, today: day, start: "13:55" });
    expect(late.stops.map((stop) => stop.bed)).toEqual(["b", "a"]);
    expect(late.stops[1]?.link).toMatch(/the Hill|the hill/);
  });

  test("cost the clock, not the film, and a far one is driven to", async () => {
    const near = makeBrief(await gardenOf(files("given"), day), { day, today: day, start: "11:00" });
    const [first, second] = near.stops;
    // 1.1 km at 1.1 m a second is 17 minutes, packing up and setting up five.
    expect(second?.from).toBe("11:22");
    expect(second?.begins).toBe((first?.begins ?? 0) + (first?.seconds ?? 0));
    const far = { ...files("given"), "sites/yard.md": `---\ntitle: Yard\n${place(52.1)}\norder: 2\n---\n` };
    const drive = makeBrief(await gardenOf(far, day), { day, today: day, start: "11:00" });
    // 11.1 km at 25 km an hour is 26 minutes.
    expect(drive.stops[1]?.from).toBe("11:32");
    expect(drive.stops[1]?.way).toBe("about eleven km from the last stop");
  });
});
