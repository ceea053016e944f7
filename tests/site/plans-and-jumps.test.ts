/** Plans tell in words what they draw; letters lead into lists that are too long to look through. */
import { describe, expect, it } from "vitest";
import type { Bed } from "../../src/model.ts";
import { letterJumps } from "../../src/site/page-data/letter-jumps.ts";
import { planOf } from "../../src/site/page-data/plan.ts";
import { siteWords } from "../../src/site/words/index.ts";

const place = { file: "beds/x.md", line: 1, column: 1 };

function bed(title: string, x?: number, y?: number): Bed {
  return {
    id: title.toLowerCase().replaceAll(" ", "-"),
    title,
    alsoCalled: [],
    plan: x === undefined || y === undefined ? undefined : { x, y },
    size: { length: 4, width: 1 },
    shade: [],
    built: [],
    filled: [],
    viewpoints: [],
    private: false,
    described: true,
    body: "",
    place,
  };
}

const numbered = (beds: readonly Bed[]) => beds.map((one, index) => ({ bed: one, number: index + 1 }));
const english = siteWords.beds;

describe("a plan", () => {
  const beds = numbered([bed("Wall Bed", 0, 9), bed("Path Bed", 0, 0), bed("Gate Bed", 1, 1.5), bed("Nowhere")]);

  it("says where each bed lies, and where one lies beside which others", () => {
    expect(planOf("The Yard", beds, english)?.told).toBe(
      "Plan of The Yard: Wall Bed in the north, Path Bed in the south and Gate Bed in the south.",
    );
    expect(planOf("The Yard", beds, english, { here: "path-bed" })?.told).toBe(
      "Path Bed lies in the south of The Yard, next to Gate Bed.",
    );
    expect(planOf("The Yard", beds, english, { here: "wall-bed" })?.told).toBe(
      "Wall Bed lies in the north of The Yard.",
    );
  });

  it("draws the beds that tell their place and no others, the south below", () => {
    const plan = planOf("The Yard", beds, english, { here: "path-bed" });
    expect(plan?.beds.map(({ name, number, isThis }) => [name, number, isThis])).toEqual([
      ["Wall Bed", 1, false],
      ["Path Bed", 2, true],
      ["Gate Bed", 3, false],
    ]);
    const [wall, path] = plan?.beds ?? [];
    expect(wall?.y).toBeLessThan(path?.y ?? 0);
  });

  it("is not drawn for a single bed", () => {
    expect(planOf("The Yard", numbered([bed("Wall Bed", 0, 9), bed("Nowhere")]), english)).toBeUndefined();
  });

  it("keeps its numbers as large as text on a phone, however many beds there are", () => {
    const forty = numbered(
      Array.from({ length: 40 }, (_, index) => bed(`Bed ${index}`, (index % 5) * 5, Math.floor(index / 5) * 2)),
    );
    const plan = planOf("The Field", forty, english);
    const phone = 350 / Math.max(plan?.width ?? 0, plan?.height ?? 0);
    expect((plan?.letters ?? 0) * phone).toBeGreaterThanOrEqual(16);
  });
});

describe("letters", () => {
  const names = (count: number) =>
    Array.from({ length: count }, (_, index) => `${"ABČ"[Math.floor((index * 3) / count)]}${index}`);

  it("lead to the first name under each, without its accent", () => {
    const { links, anchorOf } = letterJumps(names(30), "crop-leek");
    expect(links).toEqual([
      { text: "A", href: "#crop-leek-a" },
      { text: "B", href: "#crop-leek-b" },
      { text: "C", href: "#crop-leek-c" },
    ]);
    expect([0, 1, 10, 20, 21].map(anchorOf)).toEqual([
      "crop-leek-a",
      undefined,
      "crop-leek-b",
      "crop-leek-c",
      undefined,
    ]);
  });

  it("are not there where a list can be looked through", () => {
    expect(letterJumps(names(12), "crop-leek").links).toEqual([]);
  });
});
