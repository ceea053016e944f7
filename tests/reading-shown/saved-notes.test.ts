/** What is told of a note the moment it is saved. */
import { expect, it } from "vitest";
import { saySaved } from "../../src/cli/saved-notes.ts";
import type { Garden } from "../../src/model.ts";
import { questionProblem } from "../../src/records/index.ts";
import { recordsOf } from "../records/records-of.ts";
import { event, offered, question } from "./asked.ts";

const notes = {
  "beds/left-bed.md": "---\ntitle: Left bed\n---\n",
  "notes/2026-07-16.md": "- picked 2 kg Boltardy beetroot from Left Bed\n- what a day\n",
  "notes/2026-07-17.md": "- planted leeks in Leff Bed\n",
};

it("is each of its lines with its reading, and every warning and hint, of no other note", async () => {
  const garden = (await recordsOf(notes)) as Garden;
  expect(saySaved(new Set(["notes/2026-07-16.md", "beds/left-bed.md"]), garden)).toEqual([
    "notes/2026-07-16.md",
    "  1  picked 2 kg Boltardy beetroot from Left Bed",
    '     = picked 2000 g "Boltardy" beetroot from Left bed',
    "  2  what a day",
    "     – story",
    "",
    [
      "notes/2026-07-16.md:1:3 hint name/variety-taken",
      '  No file describes the variety "Boltardy"; it was taken as named, of the crop beetroot.',
      '  Write varieties/boltardy.md to describe it: plotreel new variety "Boltardy".',
    ].join("\n"),
  ]);
  const warned = saySaved(new Set(["notes/2026-07-17.md"]), garden).join("\n");
  expect(warned).toContain("warning note/unknown-bed");
  expect(warned).not.toContain("2026-07-16");
});

it("is the questions it leaves open, and how to settle them", async () => {
  const asked = question("lifted the onions", [offered("picked onions", event("picked", { crop: "onion" }))]);
  const problem = questionProblem(asked);
  const records = await recordsOf(notes);
  const garden = { ...records, readings: [asked], problems: [problem] } as unknown as Garden;
  const told = saySaved(new Set([asked.place.file]), garden);
  expect(told).toContain("     ? a) picked onions");
  expect(told.join("\n")).toContain("hint note/question");
  expect(told.at(-1)).toBe('One line is a question to you: "plotreel settle" asks it.');
});

it("is nothing where nothing of notes was saved", async () => {
  expect(saySaved(new Set(["photos/gate.jpg"]), (await recordsOf(notes)) as Garden)).toEqual([]);
});
