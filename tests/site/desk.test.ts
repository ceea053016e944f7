/** Today's desk: what is to be done now, from what the records say, each thing in one place, errors last. */
import { describe, expect, it } from "vitest";
import { type FieldGiven, fieldSite } from "../../src/site/page-data/field-site.ts";
import { jumpsOf } from "../../src/site/page-data/note-pages.ts";
import { viewGarden } from "../../src/site/page-data/view.ts";
import { lookAhead } from "../../src/tour/index.ts";
import { gardenOf } from "../tour/garden-of.ts";

const today = "2026-07-13";
const files = {
  "garden.md": "---\nname: Test Garden\nlanguage: en-GB\n---\n",
  "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
  "varieties/sungold.md": "---\ntitle: Sungold\ncrop: tomato\ndays to maturity: 57 from planting\n---\n",
  "episodes/spring/index.md": "---\ntitle: The spring walk\ndate: 2026-06-01\nstatus: planned\n---\n",
  "episodes/july/index.md": "---\ntitle: The July walk\ndate: 2026-07-18\nstatus: planned\n---\n",
  "episodes/august/index.md": "---\ntitle: The August walk\ndate: 2026-08-15\nstatus: planned\n---\n",
  "notes/2026-05-24.md": "---\nbed: Long Bed\n---\n\n- planted 6 Sungold tomatoes\n- planted 3 Musselburgh leek\n",
  "notes/2026-07-01.md":
    "---\nbed: Long Bed\n---\n\n- promised: show the leeks again in July\n- to do by 2026-07-10: net the leeks\n- to do by 2026-07-19: tie in the tomatoes\n- to do by 2026-09-01: order garlic\n- lifted the leeks\n",
  "notes/2026-07-12.md": "---\nbed: Lnog Bed\n---\n\n- watered\n",
};

async function deskOf(given: Partial<FieldGiven> = {}, on = today, more: Readonly<Record<string, string>> = {}) {
  const garden = await gardenOf({ ...files, ...more }, on);
  const briefs = ["august", "july", "spring"];
  const ahead = () => lookAhead(garden, { today: on, weeks: 1 });
  return fieldSite(garden, on, { photos: new Map(), briefs, fieldLists: ["july"], ahead, ...given }).home;
}

describe("the desk", () => {
  it("begins with the next film and what viewers are owed", async () => {
    const { film, owed, others } = await deskOf();
    expect(film).toEqual({
      brief: { href: "/briefs/july.html", text: "The July walk" },
      when: "In five days, on Saturday 18 July.",
      fieldList: "/field-lists/july.html",
    });
    expect(owed.now.map(({ what, from }) => [what, from])).toEqual([
      [
        "Show the leeks again in July. Promised on 1 July.",
        { text: "notes/2026-07-01.md:5", href: "/notes/2026-07-01/#line-5" },
      ],
    ]);
    expect(others.map(({ text }) => text)).toEqual([
      "The August walk",
      "The spring walk",
      "Notes, line by line",
      "Photos from the same spots",
      ...(await fieldSiteRecaps()),
    ]);
  });

  it("says that a planned film's day is past, when no other is to come", async () => {
    expect((await deskOf({ briefs: ["spring"] })).film?.when).toBe(
      "Its day was Monday 1 June, and it is not marked as filmed.",
    );
    expect((await deskOf({}, "2026-07-17")).film?.when).toBe("Tomorrow, Saturday 18 July.");
    expect((await deskOf({}, "2026-07-18")).film?.when).toBe("Today.");
    expect((await deskOf({ briefs: [] })).film).toBeUndefined();
  });

  it("lists what is due within the week, late ones too, and folds the rest away", async () => {
    const { tasks } = await deskOf();
    expect(tasks.now.map(({ what, isLate }) => [what, isLate])).toEqual([
      ["Net the leeks.", true],
      ["Tie in the tomatoes.", false],
    ]);
    expect(tasks.later.map(({ what }) => what)).toEqual(["Order garlic."]);
    expect(tasks.laterSaid).toBe("One more, not due this week");
  });

  it("tells what comes this week, and in what bed; without a look ahead only what is there", async () => {
    const [first] = (await deskOf()).best;
    expect(first).toEqual({
      text: "The Sungold tomatoes in the long bed: ready from about Monday 20 July.",
      bed: { href: "/beds/long-bed/", text: "Long Bed" },
    });
    expect((await deskOf({ ahead: undefined })).best).toEqual([]);
    const picked = { "notes/2026-07-11.md": "- picked 200 g Sungold from Long Bed\n" };
    expect((await deskOf({ ahead: undefined }, today, picked)).best).toEqual([
      { text: "Being picked: Sungold tomatoes." },
    ]);
  });

  it("leaves open what is needed first, and folds away hints and older questions", async () => {
    const lines = "- lifted the leeks\n".repeat(4);
    const note = { "notes/2026-07-02.md": `---\nbed: Long Bed\n---\n\n${lines}` };
    const { questions, problems } = await deskOf({}, today, note);
    expect([questions.asked.length, questions.open, questions.laterSaid]).toEqual([6, 2, "Four more"]);
    expect(problems.open).toBeLessThan(problems.lines.length);
    expect(problems.lines.slice(problems.open).every(({ severity }) => /hint/i.test(severity))).toBe(true);
  });

  it("asks what waits for an answer, and takes taps only while somebody is there to write", async () => {
    const { questions, problems, writing } = await deskOf();
    expect(questions.asked.map(({ text, from, tap }) => [text, from.href, tap])).toEqual([
      // Newest first; in a note that names no bed, what was watered is asked.
      ["watered", "/notes/2026-07-12/#line-5", undefined],
      ["lifted the leeks", "/notes/2026-07-01/#line-9", undefined],
    ]);
    expect(writing).toBeUndefined();
    // A question is no problem as well: each thing stands in one place.
    expect(problems.lines.map(({ what }) => what).filter((what) => what.includes("not read for sure"))).toEqual([]);
    const live = await deskOf({ workbench: { stateBeside: () => "", stateOf: (file) => `state of ${file}` } });
    expect(live.writing).toEqual({
      day: today,
      beds: [{ id: "long-bed", href: "/beds/long-bed/", text: "Long Bed" }],
      script: "/@write.js",
    });
    expect(live.questions.asked[1]?.tap).toEqual({
      file: "notes/2026-07-01.md",
      line: 9,
      state: "state of notes/2026-07-01.md",
    });
  });

  it("ends with what is wrong, each with a jump to its line, where it stands again", async () => {
    const { problems } = await deskOf();
    const slip = problems.lines.find(({ what }) => what.includes("Lnog Bed"));
    expect(slip?.from).toEqual({ text: "notes/2026-07-12.md:2", href: "/notes/2026-07-12/" });
    const garden = await gardenOf(files, today);
    const { notePages } = fieldSite(garden, today, { photos: new Map() });
    expect(notePages.find(({ id }) => id === "2026-07-12")?.wrong.join(" ")).toContain("Lnog Bed");
    const jump = jumpsOf(viewGarden(garden, today, "/", new Map(), new Map()));
    expect(jump("beds/long-bed.md", 2)).toEqual({ text: "beds/long-bed.md:2" });
    expect(jump("notes/2026-07-01.md", 8)).toEqual({
      text: "notes/2026-07-01.md:8",
      href: "/notes/2026-07-01/#line-8",
    });
  });
});

async function fieldSiteRecaps(): Promise<readonly string[]> {
  const garden = await gardenOf(files, today);
  return fieldSite(garden, today, { photos: new Map() }).recaps.map(({ name }) => `Recap of ${name}`);
}

describe("what is worth asking", () => {
  it("stands on the desk, and takes answers only while somebody is there to write them", async () => {
    const { asks } = await deskOf();
    expect(asks.map(({ text, isLive }) => [text, isLive])).toEqual([
      ["Where did the Musselburgh leeks come from?", false],
      ["Where did the Sungold tomatoes come from?", false],
    ]);
    const workbench = { stateBeside: () => "", stateOf: () => "" };
    expect((await deskOf({ workbench })).asks.every(({ isLive }) => isLive)).toBe(true);
  });
});
