import { describe, expect, test } from "vitest";
import { sidecarFile, withSidecarKey } from "../../src/records/index.ts";

describe("the words beside a photo get one more key", () => {
  test.each([
    ["nothing there yet", undefined, "---\nvarieties: Crown Prince\n---\n"],
    [
      "keys of the person's own",
      "---\ncredit: a neighbour # asked\n---\n",
      "---\ncredit: a neighbour # asked\nvarieties: Crown Prince\n---\n",
    ],
    [
      "words below",
      "---\nprivate: true\n---\n\nThe arch.\n",
      "---\nprivate: true\nvarieties: Crown Prince\n---\n\nThe arch.\n",
    ],
    ["words alone", "The arch.\n", "---\nvarieties: Crown Prince\n---\n\nThe arch.\n"],
    [
      "lines that end as on Windows",
      "---\r\ncredit: a friend\r\n---\r\nThe arch.\r\n",
      "---\r\ncredit: a friend\r\nvarieties: Crown Prince\r\n---\r\nThe arch.\r\n",
    ],
    [
      "a mark of its encoding, and no last line end",
      "\ufeff---\ncredit: a friend\n---",
      "\ufeff---\ncredit: a friend\nvarieties: Crown Prince\n---",
    ],
    ["front matter with nothing in it", "---\n---\n", "---\nvarieties: Crown Prince\n---\n"],
  ])("%s", (_, before, after) => {
    expect(withSidecarKey(before, "varieties", "Crown Prince")).toEqual({ text: after });
  });

  test.each([
    ["the key is there", "---\nvarieties: Crown Pince\n---\n", "already"],
    ["it is not closed", "---\ncredit: a friend\n", "cannot be read"],
    ["another style", "---\n{credit: a friend}\n---\n", "takes no other line"],
  ])("is left as it is where %s", (_, before, why) => {
    expect(withSidecarKey(before, "varieties", "Crown Prince")).toEqual({ refused: expect.stringContaining(why) });
  });

  test.each([
    ["varieties", "Red, early", 'varieties: ["Red, early"]'],
    ["caption", "Peas: the early row", 'caption: "Peas: the early row"'],
    ["caption", "It's the arch, in July", 'caption: "It\'s the arch, in July"'],
    ["varieties", "No", 'varieties: "No"'],
  ] as const)("%s %s in quotes only where needed", (key, value, line) => {
    expect(withSidecarKey(undefined, key, value)).toEqual({ text: `---\n${line}\n---\n` });
  });
});

test("a photo's words lie beside it, under its name", () => {
  expect(sidecarFile("photos/long-bed/IMG_4711.HEIC")).toBe("photos/long-bed/IMG_4711.md");
});
