/** What a phone kept outdoors, taken by the workbench and by ingest: where it is written, once, and what is refused. */
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import sharp from "sharp";
import { beforeEach, describe, expect, it } from "vitest";
import { type Effects, realEffects } from "../../src/cli/effects.ts";
import { loadGarden } from "../../src/cli/load-garden.ts";
import { openWorkbench } from "../../src/cli/open-workbench.ts";
import type { OutdoorLine, OutdoorPhoto, OutdoorTaking } from "../../src/site/index.ts";
import { outdoorLine, outdoorPhoto } from "../../src/site/outdoors-taking.ts";
import { folderWith, run } from "./run.ts";

const today = "2026-07-18";
const note = "notes/2026-07-18.md";
let cwd: string;
let taker: OutdoorTaking;
const at = (file: string) => path.join(cwd, "content", file);
const read = (file: string) => readFileSync(at(file), "utf8");

beforeEach(async () => {
  cwd = folderWith("two-beds");
  taker = await started();
});

/** As after a new start of the program: nothing is remembered but what is on the disk. */
async function started(given: Partial<Effects> = {}): Promise<OutdoorTaking> {
  const effects: Effects = {
    ...realEffects(),
    ...{ cwd, out: () => undefined, err: () => undefined, cacheFor: () => path.join(cwd, ".cache") },
    ...given,
  };
  const { garden, recordsDir } = await loadGarden({ today }, effects);
  return openWorkbench(garden, today, recordsDir, effects).outdoors;
}

const shown = { as: "facts", says: ["picked 400 g Aquadulce Claudia from Left bed"] } as const;
const line = (more: Partial<OutdoorLine> = {}): OutdoorLine => ({
  ...{ id: "phone-line-1", day: today, bed: "left-bed", text: "picked 400 g Aquadulce", shown },
  ...more,
});
const written = "## Left bed\n\n- picked 400 g Aquadulce\n";

describe("a line", () => {
  it("is written where the workbench would write it, and sent again it is not, also after a new start", async () => {
    expect(await taker.line(line())).toMatchObject({ told: `${note} begins with it.`, done: true });
    expect(read(note)).toBe(written);
    expect(await taker.line(line())).toEqual({ told: `It stands in ${note} already.`, done: true });
    taker = await started();
    expect(await taker.line(line())).toMatchObject({ done: true });
    // Nor when the person has reworded it since, and the cache is gone.
    writeFileSync(at(note), "- broad beans, 400 g\n");
    rmSync(path.join(cwd, ".cache"), { recursive: true });
    expect(await (await started()).line(line())).toMatchObject({ done: true });
    expect(read(note)).toBe("- broad beans, 400 g\n");
  });

  it("sent at once by two pages is written once", async () => {
    const answers = await Promise.all([taker.line(line()), taker.line(line()), taker.line(line())]);
    expect(answers.map(({ done }) => done)).toEqual([true, true, true]);
    expect(read(note)).toBe(written);
  });

  it("is there once when the program is killed after writing and before remembering", async () => {
    const killed = await started({
      createText: (file, text) => {
        if (path.basename(file) === "brought-in.txt") throw new Error("killed");
        return realEffects().createText(file, text);
      },
    });
    await expect(killed.line(line())).rejects.toThrow("killed");
    expect(read(note)).toBe(written);
    const next = await started();
    expect(await next.line(line())).toMatchObject({ told: `It stands in ${note}.`, done: true });
    expect(read(note)).toBe(written);
  });

  it("is there once when the program is killed before writing, with the same line of another day's round in the note", async () => {
    mkdirSync(path.dirname(at(note)), { recursive: true });
    writeFileSync(at(note), written);
    let calls = 0;
    const killed = await started({
      editBytes: async () => {
        calls += 1;
        throw new Error("killed");
      },
    });
    await expect(killed.line(line({ again: true }))).rejects.toThrow("killed");
    expect([calls, read(note)]).toEqual([1, written]);
    const next = await started();
    expect(await next.line(line({ again: true }))).toMatchObject({ done: true });
    expect(read(note)).toBe(`${written}- picked 400 g Aquadulce\n`);
    expect(await next.line(line({ again: true }))).toMatchObject({ done: true });
    expect(read(note)).toBe(`${written}- picked 400 g Aquadulce\n`);
  });

  it("that stands there already is asked about, and the same one of another bed is not", async () => {
    await taker.line(line());
    const other = line({ id: "phone-line-2" });
    expect(await taker.line(other)).toEqual({ told: `${note} says this already.`, stands: true });
    expect(read(note)).toBe(written);
    const right = { ...shown, says: ["picked 400 g Aquadulce Claudia from Right bed"] };
    expect(await taker.line(line({ id: "phone-line-3", bed: "right-bed", shown: right }))).toMatchObject({
      done: true,
    });
    expect(await taker.line({ ...other, again: true })).toMatchObject({ done: true });
    expect(read(note)).toBe(
      "## Left bed\n\n- picked 400 g Aquadulce\n- picked 400 g Aquadulce\n\n## Right bed\n\n- picked 400 g Aquadulce\n",
    );
  });

  it("that says something else at home is not written before that is agreed to", async () => {
    const old = { as: "question", says: ["picked aquadulce"] } as const;
    const answer = await taker.line(line({ shown: old }));
    expect(answer).toMatchObject({ reads: shown });
    expect(answer.done).toBeUndefined();
    expect(existsSync(at(note))).toBe(false);
    expect(await taker.line(line({ shown: answer.reads }))).toMatchObject({ done: true });
  });

  it("of a bed that is gone, and one that Markdown would take apart, stays with the reason", async () => {
    expect(await taker.line(line({ bed: "pond" }))).toEqual({ told: "That bed is not in the records any more." });
    expect(existsSync(at(note))).toBe(false);
  });
});

describe("a photo", () => {
  const jpeg = (green: number) =>
    sharp({ create: { width: 64, height: 48, channels: 3, background: { r: 60, g: green, b: 40 } } })
      .jpeg()
      .toBuffer();
  const photo = async (more: Partial<OutdoorPhoto> = {}): Promise<OutdoorPhoto> => ({
    ...{ id: "phone-photo-1", bed: "left-bed", viewpoint: "gate", name: "left-bed__gate__2026-07-18T09-15-00.jpg" },
    ...{ modified: Date.UTC(2026, 6, 18, 9), bytes: await jpeg(120) },
    ...more,
  });
  const folder = "photos/left-bed/gate";

  it("lies in the folder of its spot, once, also when the answer was lost or the file thrown away since", async () => {
    expect(await taker.photo(await photo())).toMatchObject({
      told: `It lies in ${folder}/left-bed__gate__2026-07-18T09-15-00.jpg.`,
      done: true,
    });
    expect(await taker.photo(await photo())).toMatchObject({ done: true });
    // Killed before it was remembered: known by its bytes.
    expect(await taker.photo(await photo({ id: "phone-photo-2" }))).toMatchObject({ done: true });
    expect(readdirSync(at(folder))).toEqual(["left-bed__gate__2026-07-18T09-15-00.jpg"]);
    rmSync(at(folder), { recursive: true });
    expect(await (await started()).photo(await photo())).toMatchObject({ done: true });
    expect(existsSync(at(folder))).toBe(false);
  });

  it("leads nowhere else, and is a photo", async () => {
    for (const viewpoint of ["../..", "a/b", ".hidden", "a\\b", "c:", "", "x".repeat(200)])
      expect((await taker.photo(await photo({ viewpoint }))).done, viewpoint).toBeUndefined();
    expect((await taker.photo(await photo({ bed: "pond" }))).done).toBeUndefined();
    const script = await taker.photo(await photo({ bytes: Buffer.from("<script>"), name: "../../garden.md" }));
    expect(script.told).toContain("no photo that can be kept");
    expect(existsSync(at("photos"))).toBe(false);
  });
});

describe("what a page sends", () => {
  it("is a line, one, of a day, under an id", () => {
    expect(outdoorLine({ ...line() })).toEqual({ ...line(), again: undefined });
    const wrong: Record<string, unknown>[] = [
      { id: "../../x" },
      { id: 7 },
      { id: "short" },
      { day: "2026-02-30" },
      { text: "two\nlines" },
      { text: "two\u2028lines" },
      { text: " " },
      { text: "x".repeat(1001) },
      { bed: 3 },
      { shown: { as: "fact", says: [] } },
      { shown: "watered" },
      { again: "yes" },
    ];
    for (const more of wrong) expect(outdoorLine({ ...line(), ...more }), JSON.stringify(more)).toBeUndefined();
  });

  it("is a photo of a bed, named and dated", () => {
    const said = { id: "phone-photo-1", bed: "left-bed", name: "a.jpg", modified: "1784362500000" };
    const bytes = Uint8Array.of(1);
    expect(outdoorPhoto(new URLSearchParams(said), bytes)).toMatchObject({ bed: "left-bed", viewpoint: undefined });
    for (const key of Object.keys(said)) {
      const { [key as keyof typeof said]: _, ...rest } = said;
      expect(outdoorPhoto(new URLSearchParams(rest), bytes), key).toBeUndefined();
    }
  });
});

describe("ingest of the file", () => {
  const head =
    '{"plotreel":"outdoors","version":1,"garden":"Two beds behind the house","exported":"2026-07-18T11:00:00+01:00"}';
  const entries = async (): Promise<readonly object[]> => [
    {
      kind: "line",
      id: "phone-line-1",
      time: 1,
      day: today,
      garden: "Two beds behind the house",
      bed: "left-bed",
      text: "picked 400 g Aquadulce",
      shown,
    },
    {
      kind: "line",
      id: "phone-line-2",
      time: 2,
      day: today,
      garden: "Two beds behind the house",
      bed: "left-bed",
      text: "a wren on the fence",
      shown,
    },
    {
      ...{
        kind: "photo",
        id: "phone-photo-1",
        time: 3,
        day: today,
        garden: "Two beds behind the house",
        bed: "left-bed",
        viewpoint: "gate",
      },
      ...{ name: "left-bed__gate__2026-07-18T09-15-00.jpg", modified: Date.UTC(2026, 6, 18, 9), size: 1 },
      bytes: (
        await sharp({ create: { width: 64, height: 48, channels: 3, background: "#3c7828" } })
          .jpeg()
          .toBuffer()
      ).toString("base64"),
    },
  ];
  const save = (all: readonly object[], name = "2026-07-18-outdoors.jsonl") =>
    writeFileSync(path.join(cwd, name), `${[head, ...all.map((one) => JSON.stringify(one))].join("\n")}\n`);
  const digest = () =>
    createHash("sha256")
      .update(readdirSync(path.join(cwd, "content"), { recursive: true }).sort().join("\n"))
      .digest("hex");

  it("shows what would be written where, writes it when asked to, and brings nothing twice", async () => {
    save(await entries());
    const before = digest();
    const dry = await run(["ingest", "2026-07-18-outdoors.jsonl"], { cwd });
    expect(dry.exitCode).toBe(0);
    expect(dry.out).toContain("2 lines and 1 photo from the phone.");
    expect(dry.out).toContain(
      "2026-07-18, Left bed\n  picked 400 g Aquadulce\n    = picked 400 g Aquadulce Claudia from Left bed",
    );
    expect(dry.out).toContain("It would lie in photos/left-bed/gate/left-bed__gate__2026-07-18T09-15-00.jpg.");
    expect(dry.out).toContain("Nothing was written yet. The same command with --write writes it.");
    expect(digest()).toBe(before);
    const wrote = await run(["ingest", "2026-07-18-outdoors.jsonl", "--write"], { cwd });
    expect([wrote.exitCode, wrote.out.split("\n").at(-1)]).toEqual([0, "Written: 2 lines and 1 photo."]);
    expect(read(note)).toBe(`${written}- a wren on the fence\n`);
    expect(readdirSync(at("photos/left-bed/gate"))).toEqual(["left-bed__gate__2026-07-18T09-15-00.jpg"]);
    const again = await run(["ingest", "2026-07-18-outdoors.jsonl", "--write"], { cwd });
    expect(again.out).toContain("2 lines and 1 photo brought in before.");
    expect(again.out).toContain("Nothing is to be written.");
    expect(read(note)).toBe(`${written}- a wren on the fence\n`);
    // Nor does what came by the file come by the workbench too.
    expect(await (await started()).line(line())).toMatchObject({ done: true });
    expect(read(note)).toBe(`${written}- a wren on the fence\n`);
  });

  it("says what is left out and why, and what comes from another garden", async () => {
    const [first] = await entries();
    save(
      [
        { ...first, bed: "pond" },
        { ...first, id: "phone-line-5" },
        { ...first, id: "phone-line-6" },
      ],
      "walk.txt",
    );
    writeFileSync(
      path.join(cwd, "walk.txt"),
      `${readFileSync(path.join(cwd, "walk.txt"), "utf8").replace("Two beds behind the house", "Elsewhere")}{"kind":"li`,
    );
    const { exitCode, out } = await run(["ingest", "walk.txt", "--write"], { cwd });
    expect(exitCode).toBe(1);
    expect(out).toContain("It was kept for “Elsewhere”");
    expect(out).toContain("pond: picked 400 g Aquadulce. That bed is not in the records any more.");
    expect(out).toContain(`${note} says this already. If it happened twice, write it into the note yourself.`);
    expect(out).toContain("line 5 is no entry that is understood: the file may be cut off here");
    expect(read(note)).toBe(written);
  });

  it("is data where data is asked for", async () => {
    save(await entries());
    const { out } = await run(["ingest", "2026-07-18-outdoors.jsonl", "--json"], { cwd });
    const { entries: brought } = JSON.parse(out);
    expect(brought).toMatchObject([{ id: "phone-line-1", brought: true, before: false, reads: shown }, {}, {}]);
    expect(existsSync(at(note))).toBe(false);
  });
});
