/** From the brief to the list: with the shots of a plan, and without a plan from what the brief says to show. */
import { HtmlValidate } from "html-validate";
import { describe, expect, test } from "vitest";
import { fieldListData, picturesWanted } from "../../src/site/field-list/field-list-data.ts";
import { fieldListPage } from "../../src/site/field-list/field-list-page.ts";
import { planToKeep } from "../../src/tour/index.ts";
import { asCards, pictures, planned, settings, smallBrief, smallList } from "./tour-list.ts";

describe("a planned brief", () => {
  test("gives its shots, times, light and words", async () => {
    const { stops } = await smallList();
    expect(stops.map(({ begins, ends, from }) => [begins, ends, from])).toEqual([
      [0, 190, "9:15"],
      [360, 550, "9:21"],
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
      key: "long-bed/wide",
      words: "Wide from the gate",
      kind: "wide",
      level: "must",
      text: "Wide, from the gate post, hold 10",
      onCard: true,
    });
    expect(stops[0]).toMatchObject({ time: "2:10 · 0:00 gone", opening: expect.stringMatching(/[.?]$/) });
    expect(stops[0]?.lines.map(({ part }) => part)).toContain("Now");
    expect(stops[0]?.picture?.width).toBe(480);
    expect(stops[1]?.site, "the same site is not named twice").toBeUndefined();
    // What is said is the card's, in its order.
    expect(stops[0]?.outline[0]).toBe(stops[0]?.opening);
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
    expect(fieldListData(asCards(night), settings, new Map()).stops.map(({ begins }) => begins)).toEqual([0, 360]);
  });

  test("gives the cover that paper has, and the plan it was made from", async () => {
    const brief = planned(await smallBrief());
    const cards = asCards(brief);
    const list = fieldListData(cards, settings, new Map());
    expect(list.cover).toBe(cards.cover);
    expect(list.plan).toEqual(planToKeep(brief));
    expect(list.plan.stops.flatMap(({ shots }) => shots.map(({ key }) => key)).toSorted()).toEqual(
      list.stops.flatMap(({ shots }) => shots.map(({ key }) => key)).toSorted(),
    );
  });
});

test("a tour without a start counts along its film", async () => {
  const { start: _, ...brief } = planned(await smallBrief());
  const unclocked = { ...brief, stops: brief.stops.map((stop) => ({ ...stop, from: undefined })) };
  const { stops } = fieldListData(asCards(unclocked), settings, new Map());
  expect(stops.map(({ begins, ends }) => [begins, ends])).toEqual([
    [0, 130],
    [130, 260],
  ]);
  expect(stops[0]?.picture).toBeUndefined();
});

test("a brief as it is made gives every stop shots and words", async () => {
  const brief = await smallBrief();
  const { stops } = fieldListData(asCards(brief), settings, new Map());
  // The card's shots stand first; none of the others is lost.
  expect(stops.map(({ shots }) => shots.map(({ id }) => id).toSorted())).toEqual(
    brief.stops.map(({ shots }) => shots.map(({ id }) => id).toSorted()),
  );
  for (const { shots, outline } of stops) {
    expect(shots.length).toBeGreaterThan(0);
    expect(shots[0]?.text).toMatch(/^\p{Lu}/u);
    expect(outline.length).toBeGreaterThan(0);
  }
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

  test("is valid HTML", async () => {
    const validator = new HtmlValidate({
      extends: ["html-validate:recommended"],
      rules: {
        "doctype-style": "off",
        "long-title": "off",
        "no-trailing-whitespace": "off",
        "void-style": "off",
        "no-raw-characters": "off",
      },
    });
    const { results } = await validator.validateString(
      fieldListPage(await smallList(), { worker: "w.js", file: "f.html" }),
    );
    expect(
      results.flatMap(({ messages }) => messages.map(({ line, ruleId, message }) => `${line} ${ruleId}: ${message}`)),
    ).toEqual([]);
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
