/** Questions worth asking: which, in which order, how many, and what an answer is kept as. */
import { describe, expect, test } from "vitest";
import { answerKept, askedNow, worthAsking } from "../../src/tour/index.ts";
import { type Files, gardenFile, gardenOf } from "./garden-of.ts";

const today = "2026-07-18";
const base: Files = {
  "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
  "beds/pea-row.md": "---\ntitle: Pea Row\n---\n",
  "varieties/rondo.md": "---\ntitle: Rondo\ncrop: pea\n---\n",
  "varieties/musselburgh.md": "---\ntitle: Musselburgh\ncrop: leek\nsource: Drift Lane Seeds\n---\n",
  "notes/2026-06-01.md": "- sowed 40 Rondo in Pea Row\n",
  "notes/2026-07-17.md": "- weeded Long Bed\n",
};
const asked = async (files: Files = {}, on = today) =>
  askedNow(await gardenOf({ ...base, ...files }, on), on).map(({ text }) => text);

describe("what is asked", () => {
  test("where a variety came from, unless its record or the line tells", async () => {
    expect(await asked()).toEqual(["Where did the Rondo peas come from?"]);
    const told = { "varieties/rondo.md": "---\ntitle: Rondo\ncrop: pea\nsource: a swap\n---\n" };
    expect(await asked(told)).toEqual([]);
    expect(
      await asked({ ...told, "notes/2026-05-01.md": "- planted 9 bought Little Gem lettuces in Long Bed\n" }),
    ).toEqual([]);
  });

  test("which variety a crop is", async () => {
    expect(await asked({ "notes/2026-05-01.md": "- sowed 30 carrots in Long Bed\n" })).toEqual([
      "Where did the Rondo peas come from?",
      "Which variety are the carrots in the long bed?",
    ]);
  });

  test("when what was planted was sown", async () => {
    expect(await asked({ "notes/2026-07-01.md": "- planted 12 Musselburgh in Long Bed\n" })).toContain(
      "When were the Musselburgh leeks in the long bed sown?",
    );
  });

  test("when what must have been picked was picked first", async () => {
    const files = {
      "varieties/rondo.md": "---\ntitle: Rondo\ncrop: pea\nsource: a swap\ndays to maturity: 20 from sowing\n---\n",
    };
    expect(await asked(files, "2026-06-14")).toEqual([]);
    expect(await asked(files)).toEqual(["When did you first pick the Rondo peas?"]);
    expect(await asked({ ...files, "notes/2026-07-10.md": "- picked 1 kg Rondo from Pea Row\n" })).toEqual([]);
  });

  test("whether what is over would be grown again", async () => {
    const over = { "notes/2026-07-10.md": "- picked 1 kg Rondo from Pea Row\n- cleared Rondo from Pea Row\n" };
    expect(await asked(over)).toEqual(["Would you grow the Rondo peas again?"]);
    const told = { "varieties/rondo.md": "---\ntitle: Rondo\ncrop: pea\ngrow again: yes\n---\n" };
    expect(await asked({ ...over, ...told })).toEqual([]);
  });

  test("what happened, after fourteen days without a note", async () => {
    expect(await asked({}, "2026-07-30")).not.toContain("What has happened in the garden since you last wrote?");
    const [first] = askedNow(await gardenOf(base, "2026-07-31"), "2026-07-31");
    expect([first?.text, first?.why]).toEqual([
      "What has happened in the garden since you last wrote?",
      "Your last note is of 17 July.",
    ]);
  });

  test("nothing of what is private", async () => {
    expect(await asked({ "varieties/rondo.md": "---\ntitle: Rondo\ncrop: pea\nprivate: true\n---\n" })).toEqual([]);
    expect(await asked({ "beds/pea-row.md": "---\ntitle: Pea Row\nprivate: true\n---\n" })).toEqual([]);
    expect(await asked({ "notes/2026-06-01.md": "---\nprivate: true\n---\n- sowed 40 Rondo in Pea Row\n" })).toEqual(
      [],
    );
  });

  test("nothing that is not to be asked", async () => {
    const kept = {
      "garden.md": gardenFile.replace("---\n", "---\ndo not ask: [where did the Rondo peas come from]\n"),
    };
    expect(await asked(kept)).toEqual([]);
  });
});

describe("of many", () => {
  const many = {
    "notes/2026-05-01.md":
      "- sowed 30 carrots in Long Bed\n- sowed 20 beetroot in Pea Row\n- sowed 9 kale in Long Bed\n",
    "notes/2026-05-02.md": '- sowed 30 "Red One" radishes in Long Bed\n- sowed 30 "White One" radishes in Long Bed\n',
  };
  test("three are asked, no more than two of a kind", async () => {
    const all = await asked(many);
    expect(all.map((text) => text.split(" ")[0])).toEqual(["Where", "Where", "Which"]);
  });

  test("what the next film shows goes first", async () => {
    const film = "---\ntitle: July\ndate: 2026-07-19\nstatus: planned\nstops: [Pea Row]\n---\n";
    expect((await asked({ ...many, "episodes/july/index.md": film })).slice(0, 2)).toEqual([
      "Where did the Rondo peas come from?",
      "Which variety is the beetroot in the pea row?",
    ]);
  });

  test("before a film only its beds are asked about, and no quiet weeks", async () => {
    const garden = await gardenOf({ ...base, ...many }, "2026-09-01");
    const only = new Set(["pea-row"]);
    expect(worthAsking(garden, "2026-08-01", { only }).every(({ bed }) => bed === "pea-row")).toBe(true);
  });
});

describe("an answer is kept as", () => {
  const keptOf = async (start: string, answer: string, files: Files = {}, on = today) => {
    const garden = await gardenOf({ ...base, ...files }, on);
    const asking = askedNow(garden, on).find(({ text }) => text.startsWith(start));
    if (asking === undefined) throw new Error(`not asked: ${start}`);
    return answerKept(asking, answer, garden, on);
  };
  test("a line of the variety's record", async () => {
    expect(await keptOf("Where", "Own saved seed")).toMatchObject({
      variety: "rondo",
      key: "obtained",
      value: "saved",
    });
    expect(await keptOf("Where", " Drift  Lane Seeds ")).toMatchObject({ key: "source", value: "Drift Lane Seeds" });
  });

  test("a line of today's note, with its day", async () => {
    const files = {
      "varieties/rondo.md": "---\ntitle: Rondo\ncrop: pea\nsource: a swap\ndays to maturity: 20 from sowing\n---\n",
    };
    expect(await keptOf("When", "Yesterday", files)).toEqual({
      is: "in the note",
      line: "picked Rondo from Pea Row on 2026-07-17",
      bed: "pea-row",
    });
    expect(await keptOf("When", "30 June", files)).toMatchObject({ line: "picked Rondo from Pea Row on 2026-06-30" });
    expect(await keptOf("When", "some time", files)).toMatchObject({ is: "refused" });
  });

  test("no day after the planting of what was sown", async () => {
    const files = { "notes/2026-07-01.md": "- planted 12 Musselburgh in Long Bed\n" };
    expect(await keptOf("When were", "14 March", files)).toMatchObject({
      line: "sowed Musselburgh indoors on 2026-03-14",
    });
    expect(await keptOf("When were", "Bought as plants", files)).toMatchObject({ is: "below its line", bought: true });
  });

  test("nothing, where it is empty or longer than a line", async () => {
    expect(await keptOf("Where", "  ")).toMatchObject({ is: "refused" });
    expect(await keptOf("Where", "a ".repeat(200))).toMatchObject({ is: "refused" });
  });
});
