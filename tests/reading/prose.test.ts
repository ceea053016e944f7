/** Ordinary English, and stories about gardens, hold no fact. */
import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { reading } from "./a-reader.ts";

const linesOf = (file: string) =>
  readFileSync(`tests/corpus/${file}`, "utf8")
    .split("\n")
    .filter((line) => line !== "");

it("800 sentences of ordinary prose give no fact in paragraphs, and three in 1,000 at most as list items", () => {
  const sentences = linesOf("ordinary-prose.txt");
  expect(sentences.length).toBeGreaterThanOrEqual(800);
  expect(sentences.filter((text) => reading(text, { prose: true }).as === "facts")).toEqual([]);
  expect(sentences.filter((text) => reading(text).as === "facts").length / sentences.length).toBeLessThanOrEqual(
    3 / 1000,
  );
});

it("of stories about gardens at most two in a hundred are taken as facts, and none in a paragraph", () => {
  const stories = linesOf("garden-stories.txt");
  expect(stories.filter((text) => reading(text, { prose: true }).as === "facts")).toEqual([]);
  expect(stories.filter((text) => reading(text).as === "facts").length / stories.length).toBeLessThanOrEqual(0.02);
});
