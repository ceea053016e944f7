/** The weeks ahead: what is expected, what must be filmed in time, which days are rich, and the calendar made of it. */
import ICAL from "ical.js";
import { describe, expect, test } from "vitest";
import { aheadCalendar } from "../../src/cli/ahead-calendar.ts";
import { aheadMarkdown, lookAhead } from "../../src/tour/index.ts";
import { type Files, gardenOf } from "../tour/garden-of.ts";

const today = "2026-07-01";
const files: Files = {
  "beds/long-bed.md": "---\ntitle: Long Bed\nin use since: 2025-01-01\n---\n",
  "beds/pea-row.md": "---\ntitle: Pea Row\nin use since: 2025-01-01\n---\n",
  "varieties/chioggia.md": "---\ntitle: Chioggia\ncrop: beetroot\ndays to maturity: 85 from sowing\n---\n",
  "varieties/purity.md": "---\ntitle: Purity\ncrop: cosmos\ndays to maturity: 70 from sowing\n---\n",
  "varieties/late-one.md": "---\ntitle: Late One\ncrop: leek\ndays to maturity: 200 from sowing\n---\n",
  "varieties/secret.md": "---\ntitle: Secret\ncrop: carrot\nprivate: true\ndays to maturity: 90 from sowing\n---\n",
  "varieties/alderman.md": "---\ntitle: Alderman\ncrop: pea\n---\n",
  "varieties/rose.md": "---\ntitle: Rose\ncrop: garlic\n---\n",
  "trials/mesh.md":
    "---\ntitle: Mesh or none\nquestion: Does mesh keep it clean?\narms: [{name: mesh, bed: long-bed}, {name: none, bed: long-bed}]\nmeasure: marks\nstatus: running\nstarted: 2026-05-01\nverdict due: 2026-07-20\n---\n",
  "notes/2025-04-01.md": "- sowed 40 Alderman in Pea Row\n- sowed 30 Chioggia in Long Bed\n",
  "notes/2025-06-20.md": "- picked 1 kg Alderman from Pea Row\n- picked 1 kg Chioggia from Long Bed\n",
  "notes/2025-07-09.md": "- cleared Alderman from Pea Row\n- cleared Chioggia from Long Bed\n",
  "notes/2025-10-20.md": "- planted 20 Rose in Pea Row\n",
  "notes/2026-04-01.md": "- sowed 40 Alderman in Pea Row\n",
  "notes/2026-04-20.md": `---
bed: long-bed
---

- sowed 30 Chioggia
- sowed 20 Late One
- sowed 20 Secret
- sowed 12 Purity in Pea Row
`,
  "notes/2026-06-15.md": `- picked 1 kg Alderman from Pea Row
- promised: show how I plait the garlic by 10 July
- to do by 6 July: lift the Rose in Pea Row
`,
};

const garden = await gardenOf(files, today);
const bare = await gardenOf({}, today);
const ahead = lookAhead(garden, { today, weeks: 4 });

describe("the weeks ahead", () => {
  test("expect what the days to maturity say, in the span and no further", () => {
    expect(ahead.to).toBe("2026-07-29");
    expect(ahead.expected.map(({ day, kind, about }) => [day, kind, about])).toEqual([
      // The file of Rose gives no days: by what garlic takes.
      ["2026-07-02", "ready", "the Rose garlic in the pea row"],
      ["2026-07-14", "ready", "the Chioggia beetroot in the long bed"],
      ["2026-07-19", "ready", "the Secret carrots in the long bed"],
      ["2026-07-20", "verdict", "the verdict of “Mesh or none”"],
    ]);
    expect(ahead.expected[1]?.text).toBe(
      "The Chioggia beetroot in the long bed should be ready about 14 July: 85 days from sowing, and last year it took 80 here.",
    );
    expect(ahead.expected[1]?.sources.map(({ file, line }) => `${file}:${line}`)).toEqual([
      "notes/2026-04-20.md:5",
      "varieties/chioggia.md:1",
      "notes/2025-04-01.md:2",
      "notes/2025-06-20.md:2",
    ]);
    expect(ahead.expected[2]?.private).toBe(true);
  });

  test("go by the garden's own window where one is known", () => {
    const id = "long-bed/chioggia/2026-04-20";
    const window = { from: "2026-07-04", likely: "2026-07-11", to: "2026-07-22", own: true };
    const own = lookAhead(garden, { today, weeks: 4, windows: new Map([[id, window]]) });
    expect(own.expected[1]).toMatchObject({ day: "2026-07-11", window: { from: "2026-07-04", to: "2026-07-22" } });
    expect(own.expected[1]?.text).toContain(
      "should be ready about 11 July, by this garden's own records between 4 July and 22 July:",
    );
  });

  test("name what must be filmed before it is gone, and what is promised", () => {
    expect(ahead.deadlines.map(({ day, kind, text }) => [day, kind, text])).toEqual([
      ["2026-07-06", "soon gone", "A last look at the Rose garlic: lifting is due on 6 July."],
      ["2026-07-06", "task", "Due on 6 July: lift the Rose in Pea Row."],
      ["2026-07-09", "soon gone", "Soon gone: last year the Alderman peas were out on 9 July."],
      ["2026-07-10", "promise", "Promised for 10 July at the latest: show how you plait the garlic."],
    ]);
  });

  // Days were ranked by a score nobody could follow; now by the reasons that are told.
  test("give the reasons for each day, and pick the day of each week that has most", () => {
    expect(ahead.days).toHaveLength(29);
    expect(ahead.best).toHaveLength(4);
    for (const [week, best] of ahead.best.entries()) {
      const days = ahead.days.slice(1 + week * 7, 8 + week * 7);
      expect(best.reasons.length).toBe(Math.max(...days.map(({ reasons }) => reasons.length)));
    }
    const day = ahead.days.find((one) => one.day === "2026-07-14");
    expect(day?.reasons).toEqual(["the Chioggia beetroot in the long bed ready from about 14 July"]);
    expect(ahead.days.find((one) => one.day === "2026-07-05")?.reasons).toEqual([
      "a last look at the Rose garlic in the pea row, until 6 July",
      "a last look at the Alderman peas in the pea row, until 9 July",
      "promised by 10 July: show how you plait the garlic",
      "the Rose garlic in the pea row ready as a rule from about 2 July",
    ]);
  });

  test("have a reason from the day on which something should be ready, for a week", async () => {
    const { "beds/long-bed.md": bed = "", "varieties/chioggia.md": variety = "" } = files;
    const alone = await gardenOf(
      {
        "beds/long-bed.md": bed,
        "varieties/chioggia.md": variety,
        "notes/2026-04-20.md": "- sowed 30 Chioggia in Long Bed\n",
      },
      today,
    );
    const { days } = lookAhead(alone, { today, weeks: 4 });
    const reasons = (day: string) => days.find((one) => one.day === day)?.reasons.length;
    expect(["2026-07-05", "2026-07-13", "2026-07-14", "2026-07-20", "2026-07-21"].map(reasons)).toEqual([
      0, 0, 1, 1, 0,
    ]);
  });

  test("go by what is known of the crop where the variety gives no days, and say so", async () => {
    const plain = await gardenOf(
      {
        "beds/long-bed.md": files["beds/long-bed.md"] ?? "",
        "notes/2026-05-20.md": "- planted 6 bought Ailsa Craig tomatoes in Long Bed\n",
      },
      today,
    );
    const { expected } = lookAhead(plain, { today, weeks: 6 });
    expect(expected.map(({ day, byCrop, text }) => [day, byCrop, text])).toEqual([
      [
        "2026-08-01",
        true,
        "The Ailsa Craig tomatoes in the long bed should be ready about 1 August: tomatoes as a rule take 60 to 85 days from planting, and the notes give no days of their own.",
      ],
    ]);
  });

  test("tell what is to be done, with its day, and what is promised for none", async () => {
    const plain = await gardenOf(
      {
        "beds/long-bed.md": files["beds/long-bed.md"] ?? "",
        "notes/2026-06-20.md":
          "- planted 6 bought Ailsa Craig tomatoes in Long Bed\n- to do by 25 June: net the tomatoes\n- to do by 8 July: tie in the tomatoes\n- to do by 8 December: wash the pots\n- promised: show the tomatoes once they flower\n",
      },
      today,
    );
    const made = lookAhead(plain, { today, weeks: 2 });
    expect(made.deadlines.map(({ kind, day, text }) => [kind, day, text])).toEqual([
      ["task", today, "Due since Thursday: net the tomatoes."],
      ["task", "2026-07-08", "Due on 8 July: tie in the tomatoes."],
    ]);
    expect(made.owed.map(({ text }) => text)).toEqual([
      "Show the tomatoes once they flower (waits until the notes say so).",
    ]);
  });

  test("read as they are", () => {
    const markdown = aheadMarkdown(ahead, garden.settings);
    expect(markdown).toMatch(
      /^# The next four weeks\n\n\*\*1 July to 29 July\*\*\n\n## Film it in time\n\n- \*\*By 6 July\.\*\*/,
    );
    expect(markdown).toContain("(private: not for the film)");
    const empty = lookAhead(bare, { today, weeks: 1 });
    expect(aheadMarkdown(empty, bare.settings)).toBe(`# The next week

**1 July to 8 July**

## Days worth filming

Nothing is on record yet that would make a film.

## Expected

Nothing that grows should be ready in this time, by its variety's days or by what its crop takes as a rule.
`);
  });
});

describe("the calendar", () => {
  const text = aheadCalendar(ahead, garden.settings);

  test("is read by another program, every event a whole day", () => {
    const calendar = new ICAL.Component(ICAL.parse(text));
    const events = calendar.getAllSubcomponents("vevent").map((one) => new ICAL.Event(one));
    expect(events.map((event) => [event.startDate.toString(), event.endDate.toString(), event.summary])).toEqual([
      ["2026-07-06", "2026-07-07", "Last days: the Rose garlic in the pea row"],
      ["2026-07-06", "2026-07-07", "Due: lift the Rose in Pea Row"],
      ["2026-07-09", "2026-07-10", "Last days: the Alderman peas in the pea row"],
      ["2026-07-10", "2026-07-11", "Promised: show how you plait the garlic"],
      ["2026-07-02", "2026-07-03", "The Rose garlic in the pea row: ready, as a rule"],
      ["2026-07-14", "2026-07-15", "The Chioggia beetroot in the long bed: ready"],
      ["2026-07-20", "2026-07-21", "The verdict of “Mesh or none” is due"],
    ]);
    expect(events.every((event) => event.startDate.isDate)).toBe(true);
    expect(new Set(events.map((event) => event.uid)).size).toBe(events.length);
    expect(events[0]?.description).toBe("A last look at the Rose garlic: lifting is due on 6 July.");
    expect(calendar.getFirstPropertyValue("version")).toBe("2.0");
  });

  test("keeps private things out, and is the same bytes each time", () => {
    expect(text).not.toContain("Secret");
    expect(aheadCalendar(lookAhead(garden, { today, weeks: 4 }), garden.settings)).toBe(text);
    expect(text.match(/^DTSTAMP:(.*)$/gm)?.every((stamp) => stamp.startsWith("DTSTAMP:20260701T000000Z"))).toBe(true);
    // RFC 5545, 3.1: lines end in CRLF and hold at most 75 octets.
    for (const line of text.split("\r\n")) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
  });

  test("without anything coming is an empty calendar that can be read", () => {
    const empty = aheadCalendar(lookAhead(bare, { today, weeks: 1 }), bare.settings);
    expect(new ICAL.Component(ICAL.parse(empty)).getAllSubcomponents("vevent")).toEqual([]);
  });
});

test("a film that is planned stands among the days worth filming, in place of its week's best", async () => {
  const garden = await gardenOf(
    {
      "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
      "notes/2026-05-01.md": "- planted 3 lettuces in Long Bed\n",
      "episodes/june/index.md": "---\ntitle: June tour\ndate: 2026-06-12\nstatus: planned\n---\n",
    },
    "2026-06-08",
  );
  const ahead = lookAhead(garden, { today: "2026-06-08", weeks: 2 });
  expect(ahead.best.map(({ day, film }) => [day, film])[0]).toEqual(["2026-06-12", "June tour"]);
  expect(aheadMarkdown(ahead, garden.settings)).toContain("- **Friday 12 June**: “June tour” is planned");
});
