/** The labelled lines in tests/corpus: gardens, lines and what a careful reader would take from each. */
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import type { Bed, Crop, EventKind, Variety } from "../../src/model.ts";
import { buildNames, crops, idOfName, type Names } from "../../src/records/index.ts";

export interface Expected {
  /** Alternatives apart by bars. */
  readonly kind: string;
  readonly crop?: string;
  readonly var?: string;
  readonly n?: string | number;
  readonly amt?: string | number;
  readonly bed?: string;
  readonly to?: string;
  readonly day?: string;
  readonly due?: string;
  readonly cause?: string;
  readonly ph?: string | number;
  readonly loc?: "in" | "out";
}

export interface CorpusLine {
  readonly id: string;
  readonly gardener: string;
  readonly date: string;
  readonly bed: string | null;
  readonly style: string;
  readonly category: string;
  readonly text: string;
  readonly expect: "story" | "ask" | "correction" | "renamed" | readonly Expected[];
}

export interface CorpusGarden {
  readonly units: "metric" | "us";
  readonly lang: string;
  readonly tz: string;
  readonly beds?: readonly string[];
  readonly varieties?: readonly (readonly [string, string])[];
}

export interface Corpus {
  readonly gardens: Readonly<Record<string, CorpusGarden>>;
  readonly lines: readonly CorpusLine[];
}

/** Kinds as the labels have them, and as Plotreel names them. */
const kinds: Readonly<Record<string, EventKind>> = {
  potted: "potted on",
  soil: "soil test",
  gave: "gave away",
  putup: "put up",
  tookdown: "took down",
  todo: "to do",
  saved: "saved seed",
};

export function kindsOf(label: string): readonly string[] {
  return label.split("|").map((kind) => kinds[kind] ?? kind);
}

export function readCorpus(file: string): Corpus {
  return JSON.parse(readFileSync(file, "utf8"));
}

/** All files of a folder as one. Writers of two files may share a name, so the file's is put before it. */
export function readCorpora(folder: string): Corpus {
  const gardens: Record<string, CorpusGarden> = {};
  const lines: CorpusLine[] = [];
  for (const name of readdirSync(folder)
    .filter((file) => file.endsWith(".json"))
    .sort()) {
    const corpus = readCorpus(path.join(folder, name));
    const own = (gardener: string) => `${name.replace(".json", "")}: ${gardener}`;
    for (const [gardener, garden] of Object.entries(corpus.gardens)) gardens[own(gardener)] = garden;
    for (const line of corpus.lines) lines.push({ ...line, gardener: own(line.gardener) });
  }
  return { gardens, lines };
}

/** The names a writer's garden has: the beds and varieties described, the crops of the table. */
export function namesOfGarden(garden: CorpusGarden): Names {
  const known = new Map(crops.map((crop) => [crop.id, crop]));
  const varieties = (garden.varieties ?? []).map(([title, crop]) => {
    const id = cropId(crop, known);
    return { ...described(title), crop: id, alsoSpelled: [], perennial: false } as Variety;
  });
  const beds = (garden.beds ?? []).map(
    (title) => ({ ...described(title), alsoCalled: [], shade: [], built: [], filled: [], viewpoints: [] }) as Bed,
  );
  return buildNames({ beds, varieties, gear: [], crops: known.values(), sites: [] });
}

function described(title: string) {
  return { id: idOfName(title), title, private: false, body: "", described: true };
}

/** Crops that no table knows get a row, as a garden's own variety files give them one. */
function cropId(name: string, known: Map<string, Crop>): string {
  const names = buildNames({ beds: [], varieties: [], gear: [], crops: known.values(), sites: [] });
  const found = names.find("crop", name);
  if (found !== undefined) return found;
  const id = idOfName(name);
  known.set(id, { id, name, plural: `${name}s`, alsoCalled: [], family: "", perennial: false, use: "vegetable" });
  return id;
}
