/** `plotreel new named`: files only for names that facts use, never for a guess that nobody confirmed. */
import { existsSync, mkdirSync, readdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { expect, it } from "vitest";
import { realEffects } from "../../src/cli/effects.ts";
import { writeNamedRecords } from "../../src/cli/new-command.ts";
import type { Garden } from "../../src/model.ts";
import { emptyFolder, run } from "../cli/run.ts";
import { gardenOf } from "../tour/garden-of.ts";
import { event, offered, question } from "./asked.ts";

const today = "2026-07-18";

it("writes none for the names in an open question", async () => {
  const garden = await gardenOf(
    { "notes/2026-07-18.md": "- planted 3 Musselburgh leek in Long Bed\n- got the BK in\n" },
    today,
  );
  const guess = event("planted", { variety: "black-krim", crop: "tomato", bed: "top-bed" });
  const asked = question("got the BK in", [offered('planted "Black Krim" tomato in Top Bed', guess)]);
  const recordsDir = emptyFolder();
  const effects = { ...realEffects(), out: () => undefined, err: () => undefined };
  const open: Garden = { ...garden, readings: [...garden.readings, asked] };
  expect(await writeNamedRecords(open, recordsDir, today, effects)).toBe(0);
  expect(readdirSync(path.join(recordsDir, "varieties"))).toEqual(["musselburgh.md"]);
  expect(readdirSync(path.join(recordsDir, "beds"))).toEqual(["long-bed.md"]);
});

it("writes none for what is settled as story, and one once a plain line confirms it", async () => {
  const cwd = emptyFolder();
  const note = path.join(cwd, "content/notes/2026-07-18.md");
  mkdirSync(path.dirname(note), { recursive: true });
  const words = '- planted 3 "Black Krim" tomato in Top Bed, in my dreams\n';
  writeFileSync(note, `${words}  - = story\n`);
  const none = await run(["new", "named"], { cwd });
  expect(none.err).toBe("Every bed and variety your notes name has its file already.");
  expect(existsSync(path.join(cwd, "content/varieties"))).toBe(false);
  writeFileSync(note, `${words}  - = planted 3 "Black Krim" tomato in Top Bed\n`);
  expect((await run(["new", "named"], { cwd })).out.split("\n")).toEqual([
    path.join(cwd, "content/beds/top-bed.md"),
    path.join(cwd, "content/varieties/black-krim.md"),
  ]);
});
