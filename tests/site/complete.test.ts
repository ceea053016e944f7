/** What may be meant by the letters before the caret. */
import { expect, it } from "vitest";
import { type Completing, completed, completionOf } from "../../src/site/writing/complete.ts";
import { cleanLine } from "../../src/site/writing/draft.ts";

const known: readonly Completing[] = [
  { name: "planted", kind: "verb" },
  { name: "Plant Bed", kind: "bed" },
  { name: "Long Bed", kind: "bed" },
  { name: "Crown Prince", kind: "variety" },
  { name: "Gardener’s Delight", kind: "variety" },
  { name: "Noire de Crimée", kind: "variety" },
];

function offered(text: string, caret = text.length): readonly string[] {
  return (completionOf(text, caret, known)?.options ?? []).map(({ name }) => name);
}

it.each([
  ["pl", ["planted", "Plant Bed"]],
  ["planted 3 pl", ["Plant Bed"]],
  ["planted 3 crown pr", ["Crown Prince"]],
  ["planted 3 pri", ["Crown Prince"]],
  ["picked gardeners", ["Gardener’s Delight"]],
  ["picked noire de crime", ["Noire de Crimée"]],
  ["in long", ["Long Bed"]],
  ["in the bed", ["Plant Bed", "Long Bed"]],
  ["planted 3 c", []],
  ["planted 3 Crown Prince", []],
  ["a wren", []],
])("%j offers %j", (text, names) => {
  expect(offered(text)).toEqual(names);
});

it("puts the name in the place of what began it, in the middle of a line too", () => {
  const text = "planted 3 crown in Long Bed";
  const found = completionOf(text, 15, known);
  expect(found && completed(text, found, { name: "Crown Prince", kind: "variety" })).toEqual({
    text: "planted 3 Crown Prince in Long Bed",
    caret: 23,
  });
});

it("cleans a line of what would make it another one", () => {
  expect(cleanLine("  - planted\t3\u0007 leeks ")).toBe("planted 3 leeks");
  expect(cleanLine("- - wet")).toBe("wet");
  expect(cleanLine("-5 degrees")).toBe("-5 degrees");
});
