/** Notes: their day, their beds, what is a log line and what is story. */
import { describe, expect, test } from "vitest";
import { problemsOf, recordsOf } from "./records-of.ts";

const beds = {
  "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
  "beds/bean-row.md": "---\ntitle: Bean row\nalso called: [the beans]\n---\n",
};

async function noteOf(text: string, name = "2026-05-16-a") {
  const { notes, events } = await recordsOf({ ...beds, [`notes/${name}.md`]: text });
  return { note: notes[0], events };
}

async function storyOf(text: string) {
  const { note, events } = await noteOf(text);
  return {
    story: note?.story.map((piece) => [piece.text, piece.place.line]),
    events: events.map((event) => event.text),
  };
}

describe("the day of a note", () => {
  test.each([
    ["2026-05-16", ""],
    ["2026-05-16-long-bed", ""],
    ["2026-05-16 long bed", ""],
    ["2026-5-16-long-bed", ""],
    ["2026/05/2026-05-16", ""],
    ["long-bed", "---\ndate: 16 May 2026\n---\n"],
    ["long-bed", "---\ndate: 2026-05-16\n---\n"],
    ["2026-05-16-a", "---\ndate: Saturday 16 May 2026\n---\n"],
  ])("of %s with %j is 16 May", async (name, text) => {
    const { note } = await noteOf(text, name);
    expect([note?.day, note?.id]).toEqual(["2026-05-16", name]);
    expect(await problemsOf({ ...beds, [`notes/${name}.md`]: text })).toEqual([]);
  });

  test("the front matter wins over the file name, and the difference is told", async () => {
    const text = "---\ndate: 2026-05-15\n---\n";
    expect((await noteOf(text)).note?.day).toBe("2026-05-15");
    expect(await problemsOf({ "notes/2026-05-16-a.md": text })).toEqual([
      `notes/2026-05-16-a.md:2:7 warning note/two-dates
  This date, 15 May 2026, differs from the 16 May 2026 of the file name; the note was read as of 15 May 2026.
  Correct the one that is wrong.`,
    ]);
  });

  test("a date that is refused is told once, and the file name still tells the day", async () => {
    const text = "---\ndate: 31 June 2026\n---\n";
    expect((await noteOf(text)).note?.day).toBe("2026-05-16");
    expect(await problemsOf({ "notes/2026-05-16-a.md": text })).toEqual([
      `notes/2026-05-16-a.md:2:7 error date/no-such-day
  date: "31 June 2026" does not exist: June 2026 has 30 days.
  Correct the day.`,
    ]);
  });

  test("a note of tomorrow is read and told", async () => {
    const files = { "notes/2026-07-19-a.md": "- watered everything\n" };
    expect((await recordsOf(files)).events).toHaveLength(1);
    expect(await problemsOf(files)).toEqual([
      `notes/2026-07-19-a.md:1:1 warning note/future
  This note is dated 19 July 2026, and today is 18 July 2026.
  Correct the date if it is a slip; what it says counts from that day on.`,
    ]);
    expect(await problemsOf(files, "2026-07-19")).toEqual([]);
  });

  test("notes and events come by day, then file, then line", async () => {
    const { notes, events } = await recordsOf({
      ...beds,
      "notes/b/2026-05-16.md": "- weeded long bed\n- watered long bed\n",
      "notes/a.md": "---\ndate: 2026-05-17\n---\n- hoed long bed\n",
      "notes/2026-05-16-z.md": "- fed long bed\n",
    });
    expect(notes.map(({ id }) => id)).toEqual(["2026-05-16-z", "b/2026-05-16", "a"]);
    expect(events.map(({ id }) => id)).toEqual([
      "notes/2026-05-16-z.md:1",
      "notes/b/2026-05-16.md:1",
      "notes/b/2026-05-16.md:2",
      "notes/a.md:4",
    ]);
  });
});

describe("a sentence right below a log line, without an empty line", () => {
  // CommonMark 0.31 calls this a lazy continuation line and takes it into the item (section 5.2).
  test("is no part of a name that ends the line", async () => {
    const { events } = await noteOf("- sowed chard in Long Bed\nWet and windy. The knife turned up.\n- up: chard\n");
    expect(events.map(({ text, more }) => [text, more])).toEqual([
      ["sowed chard in Long Bed", ["Wet and windy. The knife turned up."]],
      ["up: chard", []],
    ]);
  });

  test.each([
    ["- planted 12 leeks in\nLong Bed, row 2\n", "planted 12 leeks in Long Bed, row 2"],
    ["- planted 12 leeks in Long Bed,\nRow 2\n", "planted 12 leeks in Long Bed, Row 2"],
    ["- planted 12 leeks\n  Musselburgh in Long Bed\n", "planted 12 leeks Musselburgh in Long Bed"],
    ["- planted 12 leeks in Long Bed\nafter the rain\n", "planted 12 leeks in Long Bed after the rain"],
  ])("%j is one line that an editor wrapped", async (text, line) => {
    expect((await noteOf(text)).events.map((event) => [event.text, event.more])).toEqual([[line, []]]);
  });
});

describe("the beds of a note", () => {
  test.each([
    ["bed: long-bed", ["long-bed"]],
    ["bed: The Long Bed", ["long-bed"]],
    ["beds: [the beans, long bed]", ["bean-row", "long-bed"]],
    ["bed: long bed\nbeds: [Long Bed, bean-row]", ["long-bed", "bean-row"]],
    ["title: none", []],
  ])("%j", async (front, ids) => {
    expect((await noteOf(`---\n${front}\n---\n`)).note?.beds).toEqual(ids);
  });

  test("a bed that no file describes is taken as named, and told once", async () => {
    const { beds: known, problems } = await recordsOf({
      "notes/2026-05-16-a.md": "---\nbed: Herb trough\n---\n- watered everything\n",
      "notes/2026-05-17-a.md": "---\nbed: herb trough\n---\n",
    });
    expect(known.get("herb-trough")).toMatchObject({ title: "Herb trough", described: false });
    expect(problems.map(({ rule, file, line, column }) => [rule, file, line, column])).toEqual([
      ["name/bed-taken", "notes/2026-05-16-a.md", 2, 6],
    ]);
  });

  test("a heading that is a bed's name begins that bed's part", async () => {
    const { note, events } = await noteOf(
      "# Round the plot\n\n- watered everything\n\n## Long Bed\n\n- weeded\n\n### Later\n\n- hoed\n\n## The beans:\n\n- tied in\n\n## Home\n\n- a wren in the shed\n- watered everything\n",
    );
    expect(events.map(({ text, bed }) => [text, bed])).toEqual([
      ["watered everything", undefined],
      ["weeded", "long-bed"],
      ["hoed", "long-bed"],
      ["tied in", "bean-row"],
      ["watered everything", undefined],
    ]);
    expect(note?.beds).toEqual(["long-bed", "bean-row"]);
  });

  test("an item that is a bed's name gives its bed to the items below it", async () => {
    const { events } = await noteOf("- Long Bed:\n  - weeded\n- Bean row\n  - watered\n    - twice\n");
    expect(events.map(({ text, bed, more, place }) => [text, bed, more, place.line, place.column])).toEqual([
      ["weeded", "long-bed", [], 2, 5],
      ["watered", "bean-row", ["twice"], 4, 5],
    ]);
  });
});

describe("log lines and story", () => {
  test("paragraphs, quotations, code, headings and tables are story, in order and as written", async () => {
    expect(
      await storyOf(
        "# Friday\n\nThe *first* dry day\nof the week.\n\n> planted nothing, said he\n\n- watered everything\n\n```\n- watered the code\n```\n\n<b>bold</b> words\n\n| a | b |\n",
      ),
    ).toEqual({
      story: [
        ["# Friday", 1],
        ["The *first* dry day\nof the week.", 3],
        ["> planted nothing, said he", 6],
        ["```\n- watered the code\n```", 10],
        ["<b>bold</b> words", 14],
        ["| a | b |", 16],
      ],
      events: ["watered everything"],
    });
  });

  test("links, emphasis, code and HTML leave their words in a log line", async () => {
    expect(
      (
        await storyOf(
          "- **picked** 1.4 kg [Black *Beauty*](varieties/x) courgettes <i>from</i> `Long Bed`,\n  two split ![photo](https://films.example/x.jpg)\\\n  one kept\n",
        )
      ).events,
    ).toEqual(["picked 1.4 kg Black Beauty courgettes from Long Bed, two split photo one kept"]);
  });

  test("nested items and further paragraphs are details of their log line", async () => {
    const { events } = await noteOf(
      "1. watered everything\n\n   from the butt\n\n   - twice\n     - *slowly*\n   - `with` care\n",
    );
    expect(events.map(({ more }) => more)).toEqual([["from the butt", "twice", "slowly", "with care"]]);
  });

  test("neighbouring story items stay one list; a log line between them parts them", async () => {
    expect(await storyOf("- a wren\n- a robin\n\n  with a worm\n- watered everything\n- a gull\n")).toEqual({
      story: [
        ["- a wren\n- a robin\n\n  with a worm", 1],
        ["- a gull", 6],
      ],
      events: ["watered everything"],
    });
  });

  test("log lines below an item that is none are read, and the rest of it is told", async () => {
    expect(
      await storyOf(
        "- In the evening, with the radio on\n  - watered everything\n  - listened to the news\n\n    and to the rain\n",
      ),
    ).toEqual({
      story: [
        ["- In the evening, with the radio on", 1],
        ["- listened to the news\n\n  and to the rain", 3],
      ],
      events: ["watered everything"],
    });
  });

  test("a private note makes its events private", async () => {
    const { note, events } = await noteOf("---\nprivate: true\n---\n- watered everything\n");
    expect([note?.private, events[0]?.private]).toEqual([true, true]);
  });
});

describe("photos a note links", () => {
  test("from the note's folder and from the records folder, by link, image and reference", async () => {
    const { notes, problems } = await recordsOf({
      "photos/long-bed/gate/a 1.jpg": "",
      "photos/2026-05-16/b.png": "",
      "photos/2026-05-16/c.webp": "",
      "notes/2026/2026-05-16-a.md":
        "![x](../../photos/long-bed/gate/a%201.jpg) [y](photos/2026-05-16/b.png)\n\n![z][ref] ![web](https://films.example/w.jpg) [note](other.md)\n\n[ref]: /photos/2026-05-16/c.webp\n",
    });
    expect(notes[0]?.photos).toEqual([
      "photos/long-bed/gate/a 1.jpg",
      "photos/2026-05-16/b.png",
      "photos/2026-05-16/c.webp",
    ]);
    expect(problems).toEqual([]);
  });

  test("a photo that is not there is told with the nearest that is", async () => {
    expect(
      await problemsOf({
        "photos/long-bed/gate/first.jpg": "",
        "notes/2026-05-16-a.md": "Rain.\n\nSee ![x](photos/long-bed/gaet/first.jpg).\n",
      }),
    ).toEqual([
      `notes/2026-05-16-a.md:3:5 warning link/unknown-photo
  There is no photo at "photos/long-bed/gaet/first.jpg".
  Did you mean "photos/long-bed/gate/first.jpg"?`,
    ]);
  });
});

test("a line nobody can read teaches later lines no name", async () => {
  const { events } = await recordsOf({
    "notes/2026-05-01.md": "---\nbed: Long Bed\n---\n\n- sowed a row of =SUM(1)\n- sowed a row of carrots\n",
  });
  expect(events.find(({ text }) => text.endsWith("carrots"))).toMatchObject({ crop: "carrot", variety: undefined });
});

describe("a list below its verb", () => {
  const told = async (text: string) =>
    (await noteOf(text)).events.map(({ kind, variety, crop, count, bed, place }) => ({
      kind,
      plant: variety ?? crop,
      count: count?.value,
      bed,
      line: place.line,
    }));

  test("each item goes on with the verb above it", async () => {
    expect(await told("- Sowed:\n  - Broad beans Aquadulce x20\n  - 12 Sungold tomatoes\n")).toEqual([
      { kind: "sowed", plant: "aquadulce", count: 20, bed: undefined, line: 2 },
      { kind: "sowed", plant: "sungold", count: 12, bed: undefined, line: 3 },
    ]);
  });

  test("and with the bed said above it", async () => {
    expect(await told("- Planted in the long bed:\n  - 6 leeks\n  - picked 2 lettuces from Bean row\n")).toEqual([
      { kind: "planted", plant: "leek", count: 6, bed: "long-bed", line: 2 },
      { kind: "picked", plant: "lettuce", count: 2, bed: "bean-row", line: 3 },
    ]);
  });

  test("what names no plant stays story, and so does the list when nothing in it does", async () => {
    const { events, story } = await storyOf(
      "- Sowed:\n  - 12 Sungold tomatoes\n  - the last of the compost went on this\n",
    );
    expect(events).toEqual(["12 Sungold tomatoes"]);
    expect(story?.map(([text]) => text)).toEqual(["- the last of the compost went on this"]);
    expect((await storyOf("- Picked:\n  - a fight with the hose\n")).events).toEqual([]);
  });
});

test("a bed that is also called something with an article", async () => {
  const { events } = await recordsOf({
    "beds/stock-tank.md": "---\ntitle: Stock Tank\nalso called: [the tank]\n---\n",
    "notes/2026-05-16-a.md": "- sowed basil in the tank\n- watered the tank\n- cleared the tank\n",
  });
  expect(events.map(({ bed }) => bed)).toEqual(["stock-tank", "stock-tank", "stock-tank"]);
});

test("names take the crop that heads their list, and a cultivar named like a crop its own", async () => {
  const { varieties } = await recordsOf({
    ...beds,
    "notes/2026-05-16-a.md":
      "- sowed beans: Scarlet Runner (10), Top Crop (20) in Long Bed\n- sowed toms: 6 Sungold, 4 Black Krim indoors\n- planted 5 Pink Fir Apple in Long Bed\n",
  });
  expect([...varieties.values()].map(({ title, crop }) => [title, crop])).toEqual([
    ["Black Krim", "tomato"],
    ["Pink Fir Apple", "potato"],
    ["Sungold", "tomato"],
    ["Top Crop", "bean"],
  ]);
});

test("a described variety with a small word in its name is found whole, without quotation marks", async () => {
  const { events } = await recordsOf({
    ...beds,
    "varieties/black-from-tula.md": "---\ntitle: Black from Tula\ncrop: tomato\n---\n",
    "notes/2026-05-16-a.md":
      "- planted 4 Black from Tula tomatoes in Long Bed\n- picked 300 g Black from Tula from Long Bed\n",
  });
  expect(events.map(({ variety, bed, detail }) => [variety, bed, detail])).toEqual([
    ["black-from-tula", "long-bed", undefined],
    ["black-from-tula", "long-bed", undefined],
  ]);
});
