/** What the room gives, and what it never reaches for. */
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { expect, test } from "vitest";
import * as timeline from "../../src/timeline/index.ts";

const room = path.join(import.meta.dirname, "../../src/timeline");

test("gives just this", () => {
  expect(Object.keys(timeline).sort()).toEqual([
    "applyChange",
    "changes",
    "comesAsPlants",
    "foldChanges",
    "growGarden",
    "habitOf",
    "isBeingPicked",
    "living",
    "openFollowUps",
    "openTasks",
    "state",
    "takingVerb",
    "yearOfLife",
  ]);
});

test("imports only the model, the calendar, the pickings, the records' door and itself; no words, no clock", () => {
  const files = readdirSync(room, { recursive: true, encoding: "utf8" }).filter((file) => file.endsWith(".ts"));
  expect(files.length).toBeGreaterThan(20);
  for (const file of files) {
    const text = readFileSync(path.join(room, file), "utf8");
    for (const [, from = ""] of text.matchAll(/from "([^"]+)"/g)) {
      expect(`${file}: ${from}`).toMatch(/: (\.\/[a-z-]+\.ts|\.\.\/(model|calendar|picked|records\/index)\.ts)$/);
    }
    expect(text).not.toMatch(/Date\.now|new Date\(\)|performance\.|process\./);
  }
});
