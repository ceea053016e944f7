/** Private is decided when something is read: what cannot be read for sure is private until it can, and is told. */
import { describe, expect, test } from "vitest";
import { isDoubt } from "../../src/records/index.ts";
import { type Files, recordsOf } from "./records-of.ts";

const base: Files = {
  "sites/hill.md": "---\ntitle: Hill\n---\n",
  "sites/back-yard.md": "---\ntitle: Hidden Yard\nprivate: true\n---\n",
  "beds/long-bed.md": "---\ntitle: Long Bed\nsite: hill\n---\n",
  "beds/secret-nursery.md": "---\ntitle: Secret Nursery\nprivate: true\n---\n",
  "varieties/black-velvet.md": "---\ntitle: Black Velvet\ncrop: tomato\nprivate: true\n---\n",
  "varieties/musselburgh.md": "---\ntitle: Musselburgh\ncrop: leek\n---\n",
};

async function read(files: Files) {
  const records = await recordsOf(files);
  return { ...records, doubts: records.problems.filter(isDoubt).map(({ file, rule }) => `${file} ${rule}`) };
}

const note = "notes/2026-05-18.md";

test("nothing is in doubt where nothing is wrong", async () => {
  const { doubts, notes, beds } = await read({
    ...base,
    [note]: "---\nbed: Long Bed\n---\n- planted 3 Musselburgh leek\n",
  });
  expect(doubts).toEqual([]);
  expect(notes.map((one) => one.private)).toEqual([false]);
  expect(beds.get("long-bed")?.private).toBe(false);
});

describe("a mark that stands where it is not read keeps the whole note private", () => {
  const heads: readonly (readonly [string, string])[] = [
    ["an empty line before", "\n---\nprivate: true\n---\n"],
    ["a blank before", " ---\nprivate: true\n---\n"],
    ["four hyphens", "----\nprivate: true\n----\n"],
    ["smart dashes", "—-\nprivate: true\n—-\n"],
    ["an en dash and a hyphen", "–-\nbed: Long Bed\n–-\n"],
    ["plus signs", "+++\nprivate = true\n+++\n"],
    ["a heading before", "# 18 May\n---\nprivate: true\n---\n"],
    ["two byte-order marks", "\uFEFF\uFEFF---\nprivate: true\n---\n"],
    ["a fence of code", "```yaml\nprivate: true\n```\n"],
    ["front matter without a mark, one line too low", "\n---\nbed: Long Bed\n---\n"],
    ["no fence at all", "private: true\n\n"],
    ["in quotation marks", '"private": yes\n'],
    ["in bold", "**Private:** true\n"],
    ["a list item", "- private: true\n"],
    ["a heading that is the word", "# Private\n"],
    ["a tag", "#private\n"],
    ["in square brackets", "[private]\n"],
    ["visibility", "visibility: private\n"],
    ["public: no", "public: no\n"],
    ["German", "privat: ja\n"],
    ["a slip", "private: ture\n"],
    ["at the end of prose", "A fine day.\n\nprivate: true\n"],
  ];
  test.each(heads)("%s", async (_, head) => {
    const { notes, events, doubts } = await read({ ...base, [note]: `${head}\n- weeded Long Bed\n` });
    expect(notes.map((one) => one.private)).toEqual([true]);
    expect(events.every((event) => event.private)).toBe(true);
    expect(doubts).toHaveLength(1);
    expect(doubts[0]).toMatch(/^notes\/2026-05-18\.md (?:front-matter\/not-first|privacy\/mark-unclear)$/);
  });

  test.each(
    [
      "secret: true",
      "hidden: yes",
      "draft: true",
      "visibility: private",
      "public: false",
      "publish: no",
      "tags: [private]",
      "status: private",
      "privat: ja",
      "prviate: true",
      "keep private: true",
      "anything: else",
    ].map((key) => [key]),
  )("the key %s", async (key) => {
    const { notes, doubts } = await read({ ...base, [note]: `---\n${key}\n---\n- weeded Long Bed\n` });
    expect(notes.map((one) => one.private)).toEqual([true]);
    expect(doubts).toEqual([`${note} record/unknown-key`]);
  });

  test.each([
    ["Secret: add lime every other year, in autumn.\n"],
    ["private: no\n"],
    ["The hidden bed is public now.\n"],
    ["-----\n\nA line across the page.\n"],
    ["Wet.\n\n---\n\nBetter: a dry afternoon.\n"],
    ["- the private garden opens on Sunday\n"],
    ["status: failed\n"],
    ["public: yes\n"],
  ])("prose is prose: %j", async (text) => {
    expect((await read({ ...base, [note]: text })).notes.map((one) => one.private)).toEqual([false]);
  });
});

describe("a bed whose file is not read for sure", () => {
  const lines = "- planted 7 Musselburgh leek in Secret Nursery\n- planted 2 Musselburgh leek in Potting Place\n";
  const without = Object.fromEntries(Object.entries(base).filter(([file]) => file !== "beds/secret-nursery.md"));
  const isPrivate = async (files: Files) => {
    const { beds, doubts } = await read({ ...without, ...files, [note]: lines });
    expect(doubts).not.toEqual([]);
    return [beds.get("secret-nursery")?.private, beds.get("potting-place")?.private, beds.get("long-bed")?.private];
  };
  // Its title is not known either, so no other name that nothing describes may be its own.
  test.each([
    ["of the ending .markdown", { "beds/secret-nursery.markdown": "---\nprivate: true\n---\n" }],
    ["of the ending .md.txt", { "beds/secret-nursery.md.txt": "---\nprivate: true\n---\n" }],
    ["in a folder Beds", { "Beds/secret-nursery.md": "---\nprivate: true\n---\n" }],
    ["in a folder bed", { "bed/secret-nursery.md": "---\nprivate: true\n---\n" }],
    ["named by another title", { "beds/b7.markdown": "---\ntitle: Secret Nursery\nprivate: true\n---\n" }],
    ["no text", { "beds/secret-nursery.md": new Uint8Array([0, 1, 2, 0, 255]) }],
    ["refused by the system", { "beds/secret-nursery.md": Object.assign(new Error("no"), { code: "EACCES" }) }],
  ] as readonly (readonly [string, Files])[])("%s", async (_, files) => {
    expect(await isPrivate(files)).toEqual([true, true, false]);
  });

  test("empty", async () => {
    expect(await isPrivate({ "beds/secret-nursery.md": "" })).toEqual([true, true, false]);
  });

  test("the second of two files of one id", async () => {
    const { beds } = await read({ ...base, "beds/Long-Bed.md": "---\ntitle: Long Bed\nprivate: true\n---\n" });
    expect(beds.get("long-bed")?.private).toBe(true);
  });
});

describe("names with a slip in them", () => {
  test.each([["Secret Nurserry"], ["Secret Nursry"], ["Secretnurserry"]])("the bed %s", async (name) => {
    const { beds, doubts } = await read({ ...base, [note]: `- planted 4 Musselburgh leek in ${name}\n` });
    const [made] = [...beds.values()].filter((bed) => !bed.described);
    expect(made?.private).toBe(true);
    expect(doubts).toEqual([`${note} privacy/like-private`]);
  });

  test("a bed that is like no private one stays public", async () => {
    const { beds, doubts } = await read({ ...base, [note]: "- planted 4 Musselburgh leek in Rose Border\n" });
    expect(beds.get("rose-border")?.private).toBe(false);
    expect(doubts).toEqual([]);
  });

  test("a variety", async () => {
    const { varieties, doubts } = await read({ ...base, [note]: "- planted 4 Black Velvt tomato in Long Bed\n" });
    expect([...varieties.values()].find((one) => !one.described)?.private).toBe(true);
    expect(doubts).toEqual([`${note} privacy/like-private`]);
  });

  test("in the front matter of a note", async () => {
    const { notes, doubts } = await read({ ...base, [note]: "---\nbed: Secret Nurserey\n---\n- weeded\n" });
    expect(notes.map((one) => one.private)).toEqual([true]);
    expect(doubts).toEqual([`${note} privacy/like-private`]);
  });

  test.each([["hidden yrd"], ["somewhere else"]])("a bed on the site %s, which is none", async (site) => {
    const { beds, doubts } = await read({ ...base, "beds/zed.md": `---\ntitle: Zed\nsite: ${site}\n---\n` });
    expect(beds.get("zed")?.private).toBe(true);
    expect(doubts.join()).toContain("beds/zed.md link/unknown-site");
  });
});

test("a name that only private lines give is private", async () => {
  const { beds, varieties } = await read({
    ...base,
    "notes/2026-05-17.md": "---\nprivate: true\n---\n- planted 3 Ghostly tomato in Far Corner\n",
    [note]: "- planted 2 Sungold tomato in Rose Border\n",
  });
  const open = [...beds.values(), ...varieties.values()].filter((one) => !one.described && !one.private);
  expect(open.map(({ id }) => id).sort()).toEqual(["rose-border", "sungold"]);
});

describe("photos", () => {
  const privateOf = async (files: Files) => {
    const { photoSidecars, photoFiles } = await read({ ...base, ...files });
    return photoFiles.filter((photo) => photoSidecars.get(photo)?.private !== true);
  };
  const mark = "---\nprivate: true\n---\n";
  test.each([
    ["HEIC and JPEG", { "photos/IMG_1.heic": "", "photos/IMG_1.jpg": "", "photos/IMG_1.md": mark }],
    ["two JPEG endings", { "photos/IMG_1.jpeg": "", "photos/IMG_1.jpg": "", "photos/IMG_1.md": mark }],
    ["an edited copy", { "photos/IMG_1.jpg": "", "photos/IMG_1 edited.jpg": "", "photos/IMG_1.md": mark }],
    ["a phone's edited copy", { "photos/IMG_0001.jpg": "", "photos/IMG_E0001.jpg": "", "photos/IMG_0001.md": mark }],
    ["a raw file's words", { "photos/IMG_1.NEF": "", "photos/IMG_1.jpg": "", "photos/IMG_1.NEF.md": mark }],
    ["a clip's words", { "photos/IMG_1.MOV": "", "photos/IMG_1.jpg": "", "photos/img_1.mov.MD": mark }],
    ["words of the file that was edited", { "photos/IMG_E0001.jpg": "", "photos/IMG_0001.md": mark }],
    ["a copy with a number", { "photos/IMG_1.jpg": "", "photos/IMG_1 (2).jpg": "", "photos/IMG_1.md": mark }],
    [
      "its own file says so, the other not",
      { "photos/IMG_1.jpg": "", "photos/IMG_1.jpg.md": mark, "photos/IMG_1.md": "---\ncaption: x\n---\n" },
    ],
    [
      "the other says so, its own not",
      { "photos/IMG_1.jpg": "", "photos/IMG_1.md": mark, "photos/IMG_1.jpg.md": "---\ncaption: x\n---\n" },
    ],
    ["small and capital letters", { "photos/IMG_1.JPG": "", "photos/img_1.md": mark }],
    ["an empty line first", { "photos/IMG_1.jpg": "", "photos/IMG_1.md": `\n${mark}` }],
    ["no text", { "photos/IMG_1.jpg": "", "photos/IMG_1.md": new Uint8Array([0, 1, 2]) }],
    ["empty", { "photos/IMG_1.jpg": "", "photos/IMG_1.md": "" }],
    ["of the ending .txt", { "photos/IMG_1.jpg": "", "photos/IMG_1.txt": "private: true" }],
    [
      "named with a slip",
      {
        "photos/IMG_20260613_100521.jpg": "",
        "photos/IMGG_20260613_100521.md": mark,
      },
    ],
    ["linked by a note without a day", { "photos/IMG_1.jpg": "", "notes/may.md": "![x](../photos/IMG_1.jpg)\n" }],
    [
      "beside a note that is not read",
      { "photos/IMG_1.jpg": "", "notes/2026-05-16.markdown": "![x](../photos/IMG_1.jpg)\n" },
    ],
    [
      "of a bed whose name has a slip",
      { "photos/IMG_1.jpg": "", "photos/IMG_1.md": "---\nbed: Secret Nurserry\n---\n" },
    ],
  ] as readonly (readonly [string, Files])[])("%s", async (_, files) => {
    expect(await privateOf(files)).toEqual([]);
  });

  test("other pictures of that day stay public", async () => {
    const files = { "photos/2026-06-13.jpg": "", "photos/2026-06-13.md": mark, "photos/2026-06-13-2.jpg": "" };
    expect(await privateOf(files)).toEqual(["photos/2026-06-13-2.jpg"]);
  });

  test("a file that keeps a photo private which is not there is in doubt", async () => {
    const { doubts } = await read({ ...base, "photos/long-bed/gone-away.md": mark });
    expect(doubts).toEqual(["photos/long-bed/gone-away.md privacy/photo"]);
  });

  test("one file of words speaks for each picture it stands beside", async () => {
    const { photoSidecars } = await read({ ...base, "photos/a.heic": "", "photos/a.jpg": "", "photos/a.md": "Mist\n" });
    expect([...photoSidecars.values()].map(({ caption }) => caption)).toEqual(["Mist", "Mist"]);
  });
});

describe("garden.md", () => {
  const settings = async (front: string) => (await read({ "garden.md": `---\n${front}\n---\nBy the sea.\n` })).settings;
  test.each([["private: true"], ["secret: true"], ["private: ture"], ["public: no"], ["name: [x"]])(
    "%s keeps all of the garden",
    async (front) => {
      expect((await settings(front)).private).toBe(true);
    },
  );
  test("a slip elsewhere keeps its own words only", async () => {
    expect(await settings("season starts: soon")).toMatchObject({ inDoubt: true });
    expect((await settings("season starts: soon")).private).toBeUndefined();
  });
  test("is read as it stands", async () => {
    expect(await settings("public: only described")).toMatchObject({ onlyDescribed: true });
  });
});
