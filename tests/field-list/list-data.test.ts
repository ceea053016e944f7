/** From the brief to the list: with the shots of a plan, and without a plan from what the brief says to show. */
import { describe, expect, test } from "vitest";
import { fieldListData, picturesWanted } from "../../src/site/field-list/field-list-data.ts";
import { fieldListPage } from "../../src/site/field-list/field-list-page.ts";
import { pictures, planned, settings, smallBrief, smallList } from "./tour-list.ts";

describe("a planned brief", () => {
  test("gives its shots, times, light and words", async () => {
    const { stops, start } = await smallList();
    expect(start).toBe("9:15");
    expect(stops.map(({ begins, from }) => [begins, from])).toEqual([
      [0, "9:15"],
      [360, "9:21"],
    ]);
    expect(stops[0]).toMatchObject({
      id: "s1",
      bed: "long-bed",
      title: "Long Bed",
      site: "Hill",
      light: "sun behind you until 10:40",
    });
    expect(stops[0]?.shots[0]).toEqual({
      id: "S1.1",
      key: "Wide from the gate",
      kind: "wide",
      level: "must",
      text: "Wide from the gate",
    });
    expect(stops[0]?.picture?.width).toBe(480);
    expect(stops[1]?.link).toBe("From the gate, ten steps left.");
    expect(stops[0]?.outline).toHaveLength(3);
    expect(stops[0]?.names.find(({ name }) => name.startsWith("Uchiki"))).toEqual({
      name: "Uchiki Kuri, squash",
      say: "oo-CHEE-kee KOO-ree",
      about: expect.stringContaining("5"),
    });
  });

  test("past midnight goes on counting", async () => {
    const brief = planned(await smallBrief());
    const night = {
      ...brief,
      start: "23:58",
      stops: brief.stops.map((stop, index) => ({ ...stop, from: ["23:58", "0:04"][index] })),
    };
    expect(fieldListData(night, settings, new Map()).stops.map(({ begins }) => begins)).toEqual([0, 360]);
  });

  test("keeps two shots of the same words apart", async () => {
    const brief = planned(await smallBrief());
    const shots = ["S1.1", "S1.2"].map((id) => ({ id, kind: "close-up", text: "Flower, close" }));
    const [stop] = fieldListData(
      { ...brief, stops: [{ ...brief.stops[0], shots } as never] },
      settings,
      new Map(),
    ).stops;
    expect(stop?.shots.map(({ key }) => key)).toEqual(["Flower, close", "Flower, close (2)"]);
  });
});

describe("a brief without a plan", () => {
  test("lists what it says to show, one after the other", async () => {
    const brief = await smallBrief();
    const { stops } = fieldListData({ ...brief, stops: brief.stops.map(withoutPlan) }, settings, new Map());
    expect(stops[0]?.shots.map(({ id }) => id)).toEqual(brief.stops[0]?.show.map(({ id }) => id));
    expect(stops[0]?.shots[0]?.text).toBe(brief.stops[0]?.show[0]?.text);
    expect(stops[1]?.begins).toBe(stops[0]?.seconds);
    expect(stops[0]?.outline.length).toBeGreaterThan(0);
    expect(stops[0]?.picture).toBeUndefined();
  });

  test("never gives what is private to be said", async () => {
    const brief = await smallBrief();
    const [first] = brief.stops.map(withoutPlan);
    const secret = {
      ...(first as (typeof brief.stops)[number]),
      facts: [{ text: "The key is under the pot.", private: true, sources: [], kind: "bed", plantings: [] }],
    };
    const { stops } = fieldListData({ ...brief, stops: [secret as never] }, settings, new Map());
    expect(stops[0]?.outline.join(" ")).not.toContain("under the pot");
  });
});

describe("the page", () => {
  test("asks for no other file and lets nothing else run", async () => {
    const html = fieldListPage(await smallList());
    expect(html).toContain("default-src 'none'; script-src 'sha256-");
    expect(html).not.toMatch(/\b(?:src|href)="(?!data:|#)/);
    expect(html).not.toContain("url(http");
    expect(html).not.toContain("unsafe-inline");
    expect(html).not.toContain("worker-src");
    expect(fieldListPage(await smallList(), { worker: "../service-worker.js" })).toContain("worker-src 'self'");
  });

  test("is the same for the same brief", async () => {
    expect(fieldListPage(await smallList())).toBe(fieldListPage(await smallList()));
  });

  test("keeps words that look like code as words", async () => {
    const list = await smallList();
    const [stop] = list.stops;
    const odd = '</script><script>alert(1)</script> "quoted" & <b>bold</b>';
    const html = fieldListPage({ ...list, title: odd, stops: [{ ...stop, title: odd, outline: [odd] } as never] });
    expect(html).not.toContain("<script>alert");
    expect(html).not.toContain("<b>bold");
  });

  test("of a tour without stops says so", async () => {
    expect(fieldListPage({ ...(await smallList()), stops: [] })).toContain("This tour has no stops yet.");
  });
});

test("the pictures wanted are those to match, each once", async () => {
  const brief = await smallBrief();
  const wanted = picturesWanted(planned(brief));
  expect(wanted).toEqual([...(await pictures()).keys()]);
});

/** As it comes from a brief that has no plan. */
function withoutPlan<Stop extends object>(stop: Stop): Stop {
  const {
    shots: _,
    outline: __,
    from: ___,
    ...rest
  } = stop as Stop & { shots?: unknown; outline?: unknown; from?: unknown };
  return rest as unknown as Stop;
}
