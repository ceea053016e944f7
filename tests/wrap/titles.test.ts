/** Titles to choose from and films to lead to at the end: phrases of what was shown, never a list, never what is kept back. */
import { describe, expect, it } from "vitest";
import { titleLines } from "../../src/wrap/titles.ts";
import { wrapOf } from "./small-film.ts";

const walk = [
  "The long bed. Leeks, Musselburgh, nine of them.",
  "I said I'd show you how the leeks came on under the net.",
  "Here they are, under the net.",
  "The slugs had three of those.",
  "The straw row stands taller.",
  "The bare row is hungry.",
  "It was wet, and they like it.",
  "Now the squash bed. Uchiki Kuri, doing nicely.",
  "I picked two of them on Wednesday.",
  "They are small yet.",
  "There's more to come.",
  "Last, the tomato pots. Four Harbinger tomatoes.",
  "As I showed you in May, they like the wall.",
  "Thanks for walking round. See you.",
];

const may = (more = "") =>
  `---\ntitle: May walk\ndate: 2026-05-28\npublished: 2026-06-01\nstatus: published\nlink: https://films.example/may\nstops: [long-bed]\n${more}---\n`;
const promise = (what: string) => `promised:\n  - {what: "${what}", bed: long-bed, kept: june}\n`;
const files = {
  "notes/2026/2026-06-10.md":
    "- picked 2 fruits Uchiki Kuri from Squash Bed\n- lost 3 Musselburgh to slugs, from Long Bed\n",
  "episodes/may/index.md": may(promise("show how the leeks came on under the net")),
  "trials/straw.md":
    "---\ntitle: Straw or bare\nquestion: Do leeks under straw grow faster?\narms:\n  - {name: straw row, variety: musselburgh, bed: long-bed}\n  - {name: bare row, variety: musselburgh, bed: long-bed}\nmeasure: width of the stems in October\nstatus: running\nstarted: 2026-05-24\n---\n",
};

async function titles(more: Readonly<Record<string, string>> = {}, lines = walk) {
  const { wrap } = await wrapOf(lines, {}, { ...files, ...more });
  return wrap.titles.map(({ title, time }) => `${title} (${time})`);
}

describe("titles", () => {
  it("are three at most, the strongest first, each with its moment", async () => {
    const all = await titles();
    expect(all).toEqual([
      "How the leeks came on under the net (0:00)",
      "Straw or bare? (0:12)",
      "What the slugs did to the leeks (0:00)",
    ]);
  });

  it("say what was promised where no question was answered by it", async () => {
    const other = { "episodes/may/index.md": may(promise("show the leeks under the net")) };
    expect(await titles(other)).toContain("I said I would show the leeks under the net (0:00)");
  });

  it("make no story of one plant lost", async () => {
    const one = { "notes/2026/2026-06-10.md": "- lost 1 Musselburgh to slugs, from Long Bed\n" };
    expect((await titles(one)).join()).not.toContain("slugs");
  });

  it("are the longest stay where nothing happened, and none without captions", async () => {
    const quiet = { "notes/2026/2026-06-10.md": "", "episodes/may/index.md": may(), "trials/straw.md": "" };
    const lines = [
      "The long bed. Leeks.",
      "They stand.",
      "They are green.",
      "Now the squash bed. Uchiki Kuri.",
      "Bye.",
    ];
    expect(await titles(quiet, lines)).toEqual(["The long bed in June (0:00)"]);
    expect(await titles({}, [])).toEqual([]);
  });

  it("name nothing that is kept back", async () => {
    const hidden = { "episodes/may/index.md": may(promise("show how the Velvet Queen came on beside the leeks")) };
    expect((await titles(hidden)).join()).not.toContain("Velvet");
  });

  it("stand in a file with the picture's time", async () => {
    const { wrap } = await wrapOf(walk, {}, files);
    expect(titleLines(wrap.titles).split("\n").slice(0, 3)).toEqual([
      "How the leeks came on under the net",
      "Picture: the film at 0:00",
      "",
    ]);
  });
});

describe("end cards", () => {
  it("lead to the films spoken of, when, and where they are", async () => {
    const { wrap } = await wrapOf(walk, {}, files);
    expect(wrap.endCards).toBe("May walk, spoken of at 0:03: https://films.example/may\n");
  });

  it("are none for a private film, or where none is spoken of", async () => {
    const secret = { ...files, "episodes/may/index.md": may("private: true\n") };
    expect((await wrapOf(walk, {}, secret)).wrap.endCards).toBeUndefined();
    expect((await wrapOf(["The long bed. Leeks."], {}, files)).wrap.endCards).toBeUndefined();
  });
});
