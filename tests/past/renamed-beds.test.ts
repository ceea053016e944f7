import { writeFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { changeSentence } from "../../src/language/index.ts";
import type { Garden } from "../../src/model.ts";
import { changes, growGarden, living, state } from "../../src/timeline/index.ts";
import { run } from "../cli/run.ts";
import { filesIn, gardenWith, recordsIn, today } from "./bringing.ts";

const names = (dir: string, ...args: readonly string[]) => run(["names", ...args], { cwd: dir, today });

const garden = {
  "beds/gravy.md": "---\r\ntitle: Gravy  # after the dog\r\nsize: 4 x 1.2 m\r\n---\r\n\r\nBy the wall.\r\n",
  "notes/2025-05-10.md": "- planted 12 Musselburgh leeks in Gravy\n",
  "notes/2025-10-10.md": "---\nbed: Gravy\n---\n\n- picked 3 Musselburgh leeks\n",
  "notes/2026-05-20.md": "- planted 6 Sungold tomatoes in Kitchen Side\n- sowed 40 Boltardy beetroot in Gravy\n",
};

const rename = ["--rename", "Gravy", "Kitchen Side", "--from", "2026-05-01"] as const;

async function onBeds(dir: string) {
  const { events } = await recordsIn(dir);
  return events.map(({ day, kind, bed }) => [day, kind, bed]);
}

function renamings(garden: Garden, bed: string) {
  return changes(garden, bed, "2000-01-01", today)
    .filter(({ told: { is } }) => is === "renamed")
    .map((change) => [change.day, changeSentence(change, garden)]);
}

describe("a bed with another name from a day on", () => {
  it("is shown first: what its file would say, and which notes say which name", async () => {
    const dir = gardenWith(garden);
    const before = filesIn(dir);
    const { out, exitCode } = await names(dir, ...rename);
    expect(exitCode).toBe(0);
    expect(out).toContain(
      "beds/gravy.md\n  - title: Gravy # after the dog\n  + title: Kitchen Side # after the dog\n  + was: Gravy until 2026-04-30\n",
    );
    expect(out).toContain('1 line of earlier notes says "Gravy"; no word of a note is changed.');
    expect(out).toContain("Facts on this bed: 3 now, 4 with it.");
    expect(out.replace(/\s+/g, " ")).toContain('From 2026-05-01 on these still say "Gravy"');
    expect(out).toContain("notes/2026-05-20.md:2");
    expect(out).toContain("Nothing was written yet.");
    expect(filesIn(dir)).toEqual(before);
  });

  it("keeps its notes, its history and every other letter", async () => {
    const dir = gardenWith(garden);
    await names(dir, ...rename, "--write");
    const after = filesIn(dir);
    expect(after["beds/gravy.md"]).toBe(
      "---\r\ntitle: Kitchen Side  # after the dog\r\nwas: Gravy until 2026-04-30\r\nsize: 4 x 1.2 m\r\n---\r\n\r\nBy the wall.\r\n",
    );
    for (const note of Object.keys(garden).filter((file) => file.startsWith("notes/")))
      expect(after[note]).toBe(garden[note as keyof typeof garden]);
    expect(await onBeds(dir)).toEqual([
      ["2025-05-10", "planted", "gravy"],
      ["2025-10-10", "picked", "gravy"],
      ["2026-05-20", "planted", "gravy"],
      ["2026-05-20", "sowed", "gravy"],
    ]);
    const records = await recordsIn(dir);
    expect([...records.beds.values()].map(({ title }) => title)).toEqual(["Kitchen Side"]);
    const grown = growGarden(records, []);
    expect(renamings(grown, "gravy")).toEqual([["2026-05-01", "Gravy is called Kitchen Side from now on."]]);
  });

  it("lends its old name to another bed, and each note means the bed of its day", async () => {
    const dir = gardenWith(garden);
    await names(dir, ...rename, "--write");
    writeFileSync(path.join(dir, "beds/new-gravy.md"), "---\ntitle: Gravy\nin use since: 2026-05-01\n---\n");
    expect(await onBeds(dir)).toEqual([
      ["2025-05-10", "planted", "gravy"],
      ["2025-10-10", "picked", "gravy"],
      ["2026-05-20", "planted", "gravy"],
      ["2026-05-20", "sowed", "new-gravy"],
    ]);
    expect((await recordsIn(dir)).problems.map(({ rule }) => rule)).not.toContain("name/ambiguous");
    // Without the days nobody could tell them apart.
    const two = gardenWith({ ...garden, "beds/new-gravy.md": "---\ntitle: Gravy\n---\n" });
    expect((await recordsIn(two)).problems.map(({ rule }) => rule)).toContain("name/ambiguous");
    expect((await names(two, ...rename)).err).toContain('2 beds are called "Gravy": beds/gravy.md, beds/new-gravy.md.');
  });

  it("gets another name once more, and a file where it had none", async () => {
    const dir = gardenWith({ "notes/2025-05-10.md": "- planted 12 Musselburgh leeks in Sunny Corner\n" });
    await names(dir, "--rename", "Sunny Corner", "Dry Corner", "--from", "2025-09-01", "--write");
    expect(filesIn(dir)["beds/sunny-corner.md"]).toBe(
      "---\ntitle: Dry Corner\nwas: Sunny Corner until 2025-08-31\n---\n\n",
    );
    await names(dir, "--rename", "Dry Corner", "Fig: corner", "--from", "2026-01-01", "--write");
    expect(filesIn(dir)["beds/sunny-corner.md"]).toBe(
      '---\ntitle: "Fig: corner"\nwas: [Sunny Corner until 2025-08-31, Dry Corner until 2025-12-31]\n---\n\n',
    );
    const records = await recordsIn(dir);
    expect(records.events.map(({ bed }) => bed)).toEqual(["sunny-corner"]);
    const grown = growGarden(records, []);
    expect(renamings(grown, "sunny-corner")).toEqual([
      ["2025-09-01", "Sunny Corner is called Dry Corner from now on."],
      ["2026-01-01", "Dry Corner is called Fig: corner from now on."],
    ]);
  });

  it.each([
    [["Gravvy", "Kitchen Side", "2026-05-01"], 'No bed is called "Gravvy". Did you mean "Gravy"?'],
    [["Gravy", "gravy", "2026-05-01"], "These are the same name"],
    [["Gravy", "Kitchen Side", "2027-05-01"], "2027-05-01 is still to come."],
  ])("is refused for %s", async ([from = "", to = "", day = ""], why) => {
    const dir = gardenWith({ ...garden, "beds/long-bed.md": "---\ntitle: Long Bed\n---\n" });
    const { err, exitCode } = await names(dir, "--rename", from, to, "--from", day);
    expect([exitCode, err]).toEqual([2, expect.stringContaining(why)]);
  });

  it("becomes a part of another bed, and both keep their history", async () => {
    const dir = gardenWith({
      ...garden,
      "beds/gravy.md": "---\ntitle: Gravy\n---\n",
      "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
      "notes/2025-11-10.md": "- planted 8 Musselburgh leeks in Gravy, row 2\n- planted 3 rhubarb in Gravy\n",
      "notes/2026-05-20.md": "- planted 6 Sungold tomatoes in Long Bed\n",
    });
    const before = filesIn(dir);
    const join = ["--rename", "Gravy", "Long Bed", "--from", "2026-03-01"];
    const shown = await names(dir, ...join);
    expect(shown.out.replace(/\s+/g, " ")).toContain(
      '"Long Bed" has a file of its own, so "Gravy" becomes a part of it from 2026-03-01 on:',
    );
    expect(filesIn(dir)).toEqual(before);
    await names(dir, ...join, "--write");
    const after = filesIn(dir);
    expect(after["beds/gravy.md"]).toBe("---\ntitle: Gravy\nin use until: 2026-02-28\n---\n");
    expect(after["notes/2026/2026-03-01-beds.md"]).toBe(
      '---\ndate: 2026-03-01\n---\n\n- moved "Musselburgh" leek from Gravy to Long Bed\n- moved rhubarb from Gravy to Long Bed\n',
    );
    const records = await recordsIn(dir);
    expect(records.problems.filter(({ rule }) => rule === "timeline/bed-not-in-use")).toEqual([]);
    const grown = growGarden(records, []);
    expect(living(state(grown, "gravy", "2026-03-01"))).toEqual([]);
    expect(living(state(grown, "long-bed", "2026-03-01")).map(({ variety, crop }) => variety ?? crop)).toEqual([
      "musselburgh",
      "musselburgh",
      "rhubarb",
    ]);
    expect((await names(dir, ...join)).err).toContain('says already until when "Gravy" was in use.');
  });

  it("says in its file an earlier name and its last day, and nothing less", async () => {
    const { problems } = await recordsIn(
      gardenWith({ "beds/gravy.md": "---\ntitle: Kitchen Side\nwas: Gravy\n---\n" }),
    );
    expect(problems.map(({ rule, line }) => [rule, line])).toContainEqual(["record/wrong-value", 3]);
  });
});
