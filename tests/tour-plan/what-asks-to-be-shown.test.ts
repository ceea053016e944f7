/** Each kind of thing that can ask to be shown, found in a small garden; and how what viewers were told already counts. */
import { describe, expect, test } from "vitest";
import type { Day, Garden, SpokenLine } from "../../src/model.ts";
import { makeBrief, type ShowKind } from "../../src/tour/index.ts";
import { showValues } from "../../src/tour/show-values.ts";
import { type Files, gardenFile, gardenOf, photoOf } from "../tour/garden-of.ts";

const day = "2026-07-18";
const tour = (date: string, more = "") =>
  `---\ntitle: Tour of ${date}\ndate: ${date}\nstatus: published\nlink: https://films.example/${date}\nstops: [{bed: long-bed, at: "2:00"}]\n${more}---\n`;
const bed = (more = "") => `---\ntitle: Long Bed\nin use since: 2024-01-01\n${more}---\n`;
const variety = (title: string, crop: string, more = "") => `---\ntitle: ${title}\ncrop: ${crop}\n${more}---\n`;

const before: Files = { "episodes/june/index.md": tour("2026-06-13"), "beds/long-bed.md": bed() };

async function shown(files: Files, on: Day = day, photos: Parameters<typeof gardenOf>[2] = []) {
  const garden = await gardenOf({ ...before, ...files }, on, photos);
  const [stop] = makeBrief(garden, { day: on, today: on }).stops;
  return (kind: ShowKind) => (stop?.show ?? []).filter((point) => point.kind === kind).map(({ text }) => text);
}

describe("what asks to be shown", () => {
  test("something new, and something lost", async () => {
    const of = await shown({
      "varieties/boltardy.md": variety("Boltardy", "beetroot"),
      "notes/2026-07-01.md": "- planted 20 Boltardy in Long Bed\n",
      "notes/2026-07-10.md": "- lost 4 Boltardy to slugs\n",
    });
    expect(of("new")).toEqual(["Not seen before: 16 Boltardy beetroot, planted on 1 July, so 17 days in the ground."]);
    expect(of("lost")).toEqual(["Four of the Boltardy beetroot were lost to slugs on 10 July; 16 are left."]);
  });

  test("a trouble, and its cure", async () => {
    const of = await shown({
      "varieties/aquadulce.md": variety("Aquadulce", "broad bean"),
      "notes/2026-03-01.md": "- sowed 40 Aquadulce in Long Bed\n",
      "notes/2026-06-01.md": "- trouble: blackfly on Aquadulce\n",
      "notes/2026-07-01.md": "- cured: blackfly on Aquadulce\n- trouble: rust on Aquadulce\n",
    });
    expect(of("trouble")[0]).toMatch(/^Rust on the Aquadulce broad beans, (?:since|first seen on) 1 July\.$/);
    expect(of("trouble over")[0]).toMatch(/over on 1 July\.$/);
  });

  test("what will soon be gone: by a task, by last year, by frost", async () => {
    const garlic = {
      "varieties/germidour.md": variety("Germidour", "garlic"),
      "notes/2025-10-20.md": "- planted 20 Germidour in Long Bed\n",
    };
    const task = await shown({
      ...garlic,
      "notes/2026-07-01.md": "- to do by 25 July: lift the Germidour in Long Bed\n",
    });
    expect(task("going")).toEqual(["A last look at the Germidour garlic: lifting is due on 25 July."]);
    const late = await shown({
      ...garlic,
      "notes/2026-07-01.md": "- to do by 16 July: lift the Germidour in Long Bed\n",
    });
    expect(late("going")).toEqual(["A last look at the Germidour garlic: lifting was due on Thursday."]);
    const far = await shown({
      ...garlic,
      "notes/2026-07-01.md": "- to do by 25 August: lift the Germidour in Long Bed\n",
    });
    expect(far("going")).toEqual([]);
    const peas = await shown({
      "varieties/alderman.md": variety("Alderman", "pea"),
      "notes/2025-04-01.md": "- sowed 40 Alderman in Long Bed\n",
      "notes/2025-07-24.md": "- cleared Alderman from Long Bed\n",
      "notes/2026-04-01.md": "- sowed 40 Alderman in Long Bed\n",
      "notes/2026-07-10.md": "- picked 1 kg Alderman from Long Bed\n",
    });
    expect(peas("going")).toEqual(["Soon gone: last year the Alderman peas were out on 24 July."]);
    const dahlias = {
      "garden.md": gardenFile.replace("---\n", "---\nfirst frost: 5 November\n"),
      "varieties/llandaff.md": variety("Bishop of Llandaff", "dahlia"),
      "notes/2026-06-01.md": "- planted 3 Bishop of Llandaff in Long Bed\n",
    };
    const frost = await shown(dahlias, "2026-10-20");
    expect(frost("going")).toEqual(["The usual first frost is on 5 November, and dahlias are tender."]);
    expect((await shown(dahlias, "2026-09-20"))("going")).toEqual([]);
  });

  test("something ripe today, something ready soon, something in flower", async () => {
    const of = await shown({
      "varieties/lucullus.md": variety("Lucullus", "chard", "days to maturity: 60 from sowing\n"),
      "varieties/chioggia.md": variety("Chioggia", "beetroot", "days to maturity: 85 from sowing\n"),
      "varieties/purity.md": variety("Purity", "cosmos"),
      "notes/2026-05-10.md": "- sowed 20 Lucullus in Long Bed\n- sowed 20 Purity in Long Bed\n",
      "notes/2026-05-01.md": "- sowed 30 Chioggia in Long Bed\n",
      "notes/2026-06-10.md": "- first flower: Purity\n",
    });
    expect(of("ready")).toEqual([
      "By its 60 days from sowing, the Lucullus chard was due to be ready on 9 July; nothing picked yet.",
    ]);
    expect(of("due soon")[0]).toContain("85 days from sowing");
    expect(of("in flower")).toEqual(["The Purity cosmos have been in flower since 10 June."]);
  });

  test("a trial, a question with the answer in the notes, work, growth", async () => {
    const of = await shown({
      "varieties/merveille.md": variety("Merveille", "lettuce"),
      "trials/mesh.md":
        "---\ntitle: Mesh or none\nquestion: Does mesh keep them clean?\narms: [{name: mesh, bed: long-bed}, {name: none, bed: long-bed}]\nmeasure: marks\nstatus: running\nstarted: 2026-05-01\n---\n",
      "notes/2026-05-01.md": "- planted 6 Merveille in Long Bed\n",
      "notes/2026-06-13.md":
        "- asked: which variety is the red lettuce by the gate?\n\nThe red lettuce by the gate is Merveille, for whoever asked.\n",
      "notes/2026-07-15.md": "- measured Merveille 22 cm tall\n- watered Long Bed\n",
    });
    expect(of("trial")).toEqual(["On trial here: does mesh keep them clean? Mesh against none, running since 1 May."]);
    expect(of("question")).toEqual([
      "A viewer asks: “which variety is the red lettuce by the gate?” In your notes: “The red lettuce by the gate is Merveille, for whoever asked.”",
    ]);
    expect(of("grew")).toEqual(["The Merveille lettuces were 22 cm tall on Wednesday."]);
    expect(of("work")).toEqual(["Long Bed was watered."]);
  });

  test("then and now from one viewpoint, and last year's figures", async () => {
    const files = {
      "beds/long-bed.md": bed("viewpoints: [{name: gate}]\n"),
      "varieties/alderman.md": variety("Alderman", "pea"),
      "notes/2025-04-01.md": "- sowed 40 Alderman in Long Bed\n",
      "notes/2025-07-10.md": "- picked 1 kg Alderman from Long Bed\n",
      "notes/2025-09-01.md": "- cleared Alderman from Long Bed\n",
      "notes/2026-04-01.md": "- sowed 40 Alderman in Long Bed\n",
      "notes/2026-06-01.md": "- picked 800 g Alderman from Long Bed\n",
      "notes/2026-07-10.md": "- picked 1 kg Alderman from Long Bed\n",
    };
    const paths = ["photos/long-bed/gate/a.jpg", "photos/long-bed/gate/b.jpg"] as const;
    const photos = [
      photoOf(paths[0], "2026-06-12", "long-bed", "gate"),
      photoOf(paths[1], "2026-07-17", "long-bed", "gate"),
    ];
    const of = await shown(files, day, photos);
    expect(of("side by side")).toEqual(["Side by side: the long bed from the gate on 12 June and 17 July."]);
    expect(of("last year")[0]).toContain("by this day last year it was 1 kg");
    // With the photos measured, the cover says it in figures.
    const measured = await gardenOf({ ...before, ...files }, day, photos);
    const cover = (photo: string, share: number) => ({
      photo,
      bed: "long-bed",
      viewpoint: "gate",
      day,
      cover: share,
      coverOf: "bed" as const,
      aligned: true,
      heights: [],
    });
    const grown: Garden = { ...measured, growth: { photos: [cover(paths[0], 0.12), cover(paths[1], 0.61)] } };
    const [stop] = makeBrief(grown, { day, today: day }).stops;
    expect(stop?.show.find(({ kind }) => kind === "side by side")?.text).toBe(
      "Cover went from 12 % to 61 % since the last tour: the two photos from the gate show it.",
    );
  });

  test("nothing: what stands, or an empty bed the person chose", async () => {
    const of = await shown({
      "varieties/boltardy.md": variety("Boltardy", "beetroot"),
      "notes/2026-05-01.md": "- planted 20 Boltardy in Long Bed\n",
    });
    expect(of("standing")).toEqual(["20 Boltardy beetroot stand here."]);
    const episode = `---\ntitle: July\ndate: ${day}\nstatus: planned\nstops: [long-bed]\n---\n`;
    const garden = await gardenOf({ ...before, "episodes/july/index.md": episode }, day);
    const [stop] = makeBrief(garden, { episode: "july", today: day }).stops;
    expect(stop?.show.map(({ text }) => text)).toEqual(["The long bed is empty at the moment."]);
  });
});

describe("what viewers were told already", () => {
  const files: Files = {
    ...before,
    "varieties/boltardy.md": variety("Boltardy", "beetroot"),
    "varieties/crapaudine.md": variety("Crapaudine", "beetroot"),
    "varieties/old-one.md": variety("Old One", "beetroot"),
    "notes/2024-05-01.md": "- planted 5 Old One in Long Bed\n",
    "notes/2025-05-01.md": "- planted 5 Old One in Long Bed\n",
    "notes/2026-05-01.md": "- planted 20 Boltardy in Long Bed\n- planted 20 Crapaudine in Long Bed\n",
    "notes/2026-07-10.md": "- picked 1 kg Boltardy from Long Bed\n- picked 1 kg Crapaudine from Long Bed\n",
    "notes/2026-06-10.md": "- picked 1 kg Boltardy from Long Bed\n- picked 1 kg Crapaudine from Long Bed\n",
  };
  const line = (at: number, text: string): SpokenLine => ({
    at,
    text,
    place: { file: "episodes/june/film.vtt", line: at, column: 1 },
  });
  const said = (...lines: SpokenLine[]) => new Map([["june", lines]]);
  const pointsOf = (garden: Garden) => makeBrief(garden, { day, today: day }).stops[0]?.show ?? [];
  const value = (garden: Garden, name: string) =>
    pointsOf(garden).find(({ kind, text }) => kind === "picking" && text.includes(name))?.value;

  test("counts less, and what no film has named counts more; without captions nothing changes", async () => {
    const grownBefore = {
      "notes/2025-05-02.md": "- planted 5 Boltardy in Long Bed\n- planted 5 Crapaudine in Long Bed\n",
    };
    const silent = await gardenOf({ ...files, ...grownBefore }, day);
    const told: Garden = { ...silent, spoken: said(line(130, "and the Boltardy, as"), line(133, "round as ever")) };
    const { value: worth } = showValues.picking;
    expect([value(silent, "Boltardy"), value(silent, "Crapaudine")].sort()).toEqual([worth * 0.85, worth].sort());
    expect((value(told, "Crapaudine") ?? 0) / (value(silent, "Crapaudine") ?? 1)).toBeCloseTo(1.2, 1);
    expect((value(told, "Boltardy") ?? 0) / (value(silent, "Boltardy") ?? 1)).toBeCloseTo(0.9, 1);
  });

  test("makes a first time of what grew unnamed", async () => {
    const silent = await gardenOf(files, day);
    const told: Garden = { ...silent, spoken: said(line(130, "the Boltardy")) };
    const firsts = (garden: Garden) =>
      pointsOf(garden)
        .filter(({ kind }) => kind === "first time")
        .map(({ text }) => text);
    expect(firsts(told)).toEqual(["First time in this garden: Crapaudine beetroot."]);
    expect(firsts(silent)).toEqual(["First time in this garden: Boltardy beetroot and Crapaudine beetroot."]);
  });

  test("is pointed to with link and time, also where a name runs over two captions; an episode in private is not", async () => {
    const more = {
      ...files,
      "varieties/crapaudine.md": variety("Rouge Crapaudine", "beetroot"),
      "episodes/planting/index.md": `---\ntitle: Planting day\ndate: 2026-05-24\nstatus: published\nlink: https://films.example/planting\n---\n`,
      "episodes/secret/index.md": `---\ntitle: Secret\ndate: 2026-05-25\nstatus: published\nprivate: true\n---\n`,
    };
    const silent = await gardenOf(more, day);
    const spoken = new Map([
      ["june", [line(10, "Good morning.")]],
      ["planting", [line(398, "This is the rouge"), line(400, "crapaudine, the old one.")]],
      ["secret", [line(5, "Rouge Crapaudine")]],
    ]);
    const [stop] = makeBrief({ ...silent, spoken }, { day, today: day }).stops;
    expect(stop?.pointTo).toMatchObject([
      {
        episode: "planting",
        text: "Planting day, 24 May, at 6:38",
        at: 398,
        link: "https://films.example/planting",
        about: "Rouge Crapaudine",
      },
      { episode: "june", text: "Tour of 2026-06-13, 13 June, at 2:00", at: 120, about: "Long Bed" },
    ]);
  });
});

test("a brief of everything at once is the same, whatever order files are listed in", async () => {
  const files: Files = {
    ...before,
    "varieties/boltardy.md": variety("Boltardy", "beetroot"),
    "notes/2026-05-01.md": "- planted 20 Boltardy in Long Bed\n",
    "notes/2026-07-10.md": "- picked 1 kg Boltardy from Long Bed\n- lost 2 Boltardy\n",
  };
  const turned = Object.fromEntries(Object.entries(files).toReversed());
  const [a, b] = [await gardenOf(files, day), await gardenOf(turned, day)];
  expect(JSON.stringify(makeBrief(a, { day, today: day }))).toBe(JSON.stringify(makeBrief(b, { day, today: day })));
});
