/** Answers to questions worth asking, in the records: one line each, read back as what was meant, and taken back. */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { beforeEach, expect, it } from "vitest";
import { type ThingAnswerer, thingAnswerer } from "../../src/cli/answer-by-tap.ts";
import { type Effects, realEffects } from "../../src/cli/effects.ts";
import { loadGarden } from "../../src/cli/load-garden.ts";
import { type WrittenFiles, writtenFiles } from "../../src/cli/written-files.ts";
import type { Garden } from "../../src/model.ts";
import { asked } from "../../src/site/workbench.ts";
import { askedNow } from "../../src/tour/index.ts";
import { emptyFolder, run } from "./run.ts";

const today = "2026-07-18";
const records = {
  "garden.md": "---\nname: Test\nlanguage: en-GB\n---\n",
  "beds/pea-row.md": "---\ntitle: Pea Row\n---\n",
  "varieties/rondo.md": "---\ntitle: Rondo\ncrop: pea\n---\nKeeps well.\n",
  "notes/2026-06-01.md": "- sowed 40 Rondo in Pea Row\n",
  "notes/2026-07-17.md": "- weeded Pea Row\n",
};
let cwd: string;
let isBegun: boolean;
let files: WrittenFiles;
let things: ThingAnswerer;
let garden: Garden;
const text = (file: string) => readFileSync(path.join(cwd, "content", file), "utf8");
const effects = (): Effects => ({
  ...realEffects(),
  cwd,
  out: () => undefined,
  err: () => undefined,
  cacheFor: () => path.join(cwd, ".cache"),
});

async function load(more: Readonly<Record<string, string>> = {}) {
  for (const [file, content] of Object.entries(isBegun ? more : { ...records, ...more })) {
    mkdirSync(path.dirname(path.join(cwd, "content", file)), { recursive: true });
    writeFileSync(path.join(cwd, "content", file), content);
  }
  isBegun = true;
  const loaded = await loadGarden({ today }, effects());
  garden = loaded.garden;
  files = writtenFiles(loaded.recordsDir, effects());
  things = thingAnswerer({ garden, today, recordsDir: loaded.recordsDir, files, effects: effects() });
}

const answer = (start: string, said?: string) => {
  const asking = askedNow(garden, today).find((one) => one.text.startsWith(start));
  if (asking === undefined) throw new Error(`not asked: ${start}`);
  return things.answerThing({ id: asking.id, text: asking.text, answer: said });
};

beforeEach(() => {
  cwd = emptyFolder();
  isBegun = false;
});

it("puts a source into the variety's file, and takes it back", async () => {
  await load();
  const { undo } = await answer("Where", "Drift Lane Seeds");
  expect(text("varieties/rondo.md")).toBe("---\ntitle: Rondo\ncrop: pea\nsource: Drift Lane Seeds\n---\nKeeps well.\n");
  await files.undo(undo ?? -1);
  expect(text("varieties/rondo.md")).toBe(records["varieties/rondo.md"]);
});

it("begins the file of a variety that has none", async () => {
  await load({ "notes/2026-05-01.md": '- sowed 20 "Red One" radishes in Pea Row\n' });
  expect((await answer("Where did the Red One", "Own saved seed")).undo).toBeDefined();
  await load();
  expect(garden.varieties.get("red-one")).toMatchObject({
    described: true,
    crop: "radish",
    source: { obtained: "saved" },
  });
});

it("says the variety below the line that planted it", async () => {
  await load({ "notes/2026-05-01.md": "- sowed 30 carrots in Pea Row, row 2\n- watered\n" });
  await answer("Which variety", "Nantes");
  expect(text("notes/2026-05-01.md")).toBe(
    '- sowed 30 carrots in Pea Row, row 2\n  - = sowed 30 "Nantes" carrot in Pea Row, row 2\n- watered\n',
  );
});

it("puts a day into today's note", async () => {
  await load({
    "varieties/musselburgh.md": "---\ntitle: Musselburgh\ncrop: leek\nsource: a swap\n---\n",
    "notes/2026-07-01.md": "- planted 12 Musselburgh in Pea Row\n",
  });
  await answer("When were", "14 March");
  expect(text("notes/2026-07-18.md")).toContain("- sowed Musselburgh indoors on 2026-03-14");
});

it("keeps what is not to be asked again, and does not ask it", async () => {
  await load();
  expect((await answer("Where")).undo).toBeDefined();
  expect(text("garden.md")).toBe(
    "---\nname: Test\nlanguage: en-GB\ndo not ask:\n  - Where did the Rondo peas come from?\n---\n",
  );
  const now = await loadGarden({ today }, effects());
  expect(askedNow(now.garden, today)).toEqual([]);
});

it("writes nothing for a question that is not asked, or an answer that says nothing", async () => {
  await load();
  expect(await things.answerThing({ id: "source rondo", text: "Another?", answer: "x" })).not.toHaveProperty("undo");
  expect(await answer("Where", "   ")).not.toHaveProperty("undo");
  expect(text("varieties/rondo.md")).toBe(records["varieties/rondo.md"]);
  expect(existsSync(path.join(cwd, "content/notes/2026-07-18.md"))).toBe(false);
});

it("takes only what a page of its own sends", () => {
  const workbench = { things: { answerThing: () => Promise.resolve({ told: "taken" }) } } as never;
  expect(asked(workbench, "@ask", { id: "a", text: "b" })).toBeDefined();
  for (const sent of [{}, { id: 1, text: "b" }, { id: "a", text: "b", answer: 3 }, { id: "a".repeat(2000), text: "b" }])
    expect(asked(workbench, "@ask", sent)).toBeUndefined();
});

it("is asked at the terminal behind --asks, and only there", async () => {
  await load();
  const keys = ["t", "q"];
  const person = {
    canAsk: true,
    askKey: async () => keys.shift(),
    askLine: async () => "Drift Lane Seeds",
  };
  const plain = await run(["settle"], { cwd, today, effects: { canAsk: true } });
  expect(plain.out).toBe("No line is a question. Nothing to settle.");
  const { out } = await run(["settle", "--asks"], { cwd, today, effects: person });
  expect(out).toContain("Where did the Rondo peas come from?");
  expect(text("varieties/rondo.md")).toContain("source: Drift Lane Seeds");
  const checked = await run(["check"], { cwd, today });
  expect(checked.out).not.toContain("Worth asking");
});
