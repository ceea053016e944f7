/** From an empty folder to a first brief, as somebody does it who has read README: every action is counted. */
import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import type { Key } from "../../src/cli/ask.ts";
import { emptyFolder, run } from "./run.ts";

const today = "2026-06-20";
const filmingDay = "2026-06-21";

/** What somebody writes who goes round once with a notebook: no variety has a file, no bed has one. */
const note = `---
date: 2026-06-20
---

First proper look round since the rain. Everything has doubled.

## Greenhouse border

- 6 Sungold tomatoes and 3 Black Krim planted on 24 May
- the Sungold are flowering

## Long bed

- 12 Musselburgh leeks planted out today, 20 cm apart
- sowed Boltardy beetroot next to the leeks
- promised: show the leeks again in September

## Cold frame

- sowed 20 Little Gem lettuces on 2 May
- slugs ate three Little Gem

## Squash patch

- 2 Crown Prince squash planted on 30 May

## Elsewhere

- planted 8 Aquadulce broad beans in the back border on 3 April
- picked 400 g of Aquadulce from the back border
- to do by Friday: net the strawberries
`;

const beds = ["Greenhouse border", "Long bed", "Cold frame", "Squash patch", "back border"];
const varieties = ["Sungold", "Black Krim", "Musselburgh", "Boltardy", "Little Gem", "Crown Prince", "Aquadulce"];

describe("a first brief", () => {
  /** Commands, keys and texts of the person, one after the other. */
  const actions: string[] = [];
  let checked: Awaited<ReturnType<typeof run>>;
  let settled: typeof checked;
  let brief: string;

  beforeAll(async () => {
    const cwd = emptyFolder();
    const key = (question: string, keys: readonly Key[]) => {
      const first = keys[0]?.key;
      actions.push(`${question} ${first}`);
      return Promise.resolve(first);
    };
    const act = (...argv: readonly string[]) => {
      actions.push(`plotreel ${argv.join(" ")}`);
      const effects = argv[0] === "settle" ? { canAsk: true, askKey: key } : {};
      return run(argv, { cwd, today, effects });
    };
    await act("start", "--name", "Quarry Lane", "--place", "Bangor, UK", "--units", "metric");
    const file = path.join(cwd, "notes/2026-06-20-first-note.md");
    expect(readFileSync(file, "utf8")).toContain("date: 2026-06-20");
    actions.push("write the first note");
    writeFileSync(file, note);
    checked = await act("check", "--reading");
    await act("settle");
    settled = await run(["check"], { cwd, today });
    brief = (await act("brief", filmingDay)).out;
  });

  it("takes fewer than ten actions", () => {
    console.info(`Actions: ${actions.length}`);
    expect(actions.length).toBeGreaterThanOrEqual(6);
    expect(actions.length, actions.join("\n")).toBeLessThan(10);
  });

  it("rests on every line: one is asked about, none goes without a bed", () => {
    expect(checked.exitCode).toBe(0);
    expect(checked.out).toContain("10 lines are facts, 1 is a question and 2 are story.");
    for (const rule of ["note/question", "timeline/no-bed", "timeline/nothing-planted", "timeline/nothing-there"])
      expect(settled.out).not.toContain(` ${rule}\n`);
  });

  it("stops at every bed of the note", () => {
    const stops = [...brief.matchAll(/^## \d+ (.+?) ·/gmu)].map(([, name]) => name);
    expect(stops.toSorted()).toEqual(beds.toSorted());
  });

  it("names every variety at its own bed, and nowhere else", () => {
    const [, ...stops] = brief.slice(brief.indexOf("# Dossier")).split(/^### \d+ · /mu);
    const named = stops.map((stop) => [
      stop.slice(0, stop.indexOf(" ·")),
      // What is asked about the whole garden stands below the last stop.
      varieties.filter((variety) => stop.split(/^## /mu, 1)[0]?.includes(variety)),
    ]);
    expect(Object.fromEntries(named)).toEqual({
      "Greenhouse border": ["Sungold", "Black Krim"],
      "Long bed": ["Musselburgh", "Boltardy"],
      "Cold frame": ["Little Gem"],
      "Squash patch": ["Crown Prince"],
      "back border": ["Aquadulce"],
    });
  });

  it("says how many, since when, what came of it and what is owed", () => {
    for (const said of [
      "6 Sungold and 3 Black Krim, planted on 24 May, so four weeks in the ground",
      "Three of the Little Gem lettuces were lost to slugs yesterday",
      "two Crown Prince squash, planted on 30 May",
      "The first Aquadulce broad beans were picked yesterday: 400 g.",
      "I said I would show the leeks",
      "Due on 26 June: net the strawberries",
    ])
      expect(brief).toContain(said);
  });
});
