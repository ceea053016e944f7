/** The variety list: by crop, with jumps by letter and family, and the rules that narrow it without scripts. */
import { cropOf } from "../../crop-of.ts";
import { capital, cropName } from "../../language/index.ts";
import type { Variety } from "../../model.ts";
import { firstLetter, letterJumps } from "./letter-jumps.ts";
import { cropAnchor } from "./links.ts";
import { type NamelessCrop, namelessCrops } from "./nameless-crops.ts";
import type { CropGroup, FilterChoice, Link, VarietyListPage, VarietyRow } from "./shapes.ts";
import type { SmallPlates } from "./small-plates.ts";
import { seasonLabel, seasonYear, type View } from "./view.ts";

/** Group of varieties whose crop nothing tells. */
const OTHER = "other";

export function varietyList(view: View, plates: SmallPlates): VarietyListPage {
  const { garden, links, words } = view;
  const byCrop = new Map<string, Variety[]>();
  for (const variety of garden.varieties.values()) {
    const crop = cropOf(garden, variety)?.id ?? OTHER;
    byCrop.set(crop, [...(byCrop.get(crop) ?? []), variety]);
  }
  const cropWord = (id: string) => {
    const crop = garden.crops.get(id);
    return id === OTHER ? words.varieties.otherCrops : capital(crop === undefined ? id : cropName(crop));
  };
  const nameless = namelessCrops(view);
  const groups = [
    ...[...byCrop].map(([id, varieties]) => group(view, plates, id, cropWord(id), varieties)),
    ...nameless.map((crop) => namelessGroup(crop)),
  ].sort((a, b) => view.compare(a.name, b.name));
  const rows = groups.flatMap((one) => one.rows);
  const beds = choices(
    view,
    rows.flatMap((row) => row.bedIds),
    (id) => bedName(view, id),
  );
  const sources = choices(
    view,
    [...garden.varieties.values()].flatMap(({ source }) => (source === undefined ? [] : [source.name])),
    (name) => name,
  ).map(({ id, name }) => ({ id: word(id), name }));
  const crops = groups.map(({ cropId, name }) => ({ id: cropId, name }));
  const someNew = rows.some(({ plate }) => plate.isNew);
  return {
    href: links.varieties,
    csvHref: links.csv,
    jsonHref: links.json,
    filterHref: links.varietyFilters,
    filterRules: filterRules(crops, beds, sources, someNew),
    pictured: rows.some(({ plate }) => plate.thumb !== undefined),
    count:
      rows.length === 0
        ? words.varieties.none
        : words.varieties.count(rows.length - nameless.length, groups.length - nameless.length, nameless.length),
    groups,
    letters: letters(groups),
    families: families(view, groups),
    crops,
    beds: beds.map(({ id, name }) => ({ id: word(id), name })),
    sources,
    someNew,
    season: seasonLabel(view, seasonYear(view, view.today)),
  };
}

function group(view: View, plates: SmallPlates, id: string, name: string, varieties: readonly Variety[]): CropGroup {
  const anchor = cropAnchor(id);
  const sorted = [...varieties].sort((a, b) => view.compare(a.title, b.title) || (a.id < b.id ? -1 : 1));
  const letters = letterJumps(
    sorted.map(({ title }) => title),
    anchor,
  );
  const rows = sorted.flatMap((variety, index) =>
    row(view, plates, variety).map((one) => ({ ...one, anchor: letters.anchorOf(index) })),
  );
  return {
    id: anchor,
    cropId: word(id),
    name,
    letter: firstLetter(name),
    rows,
    letters: letters.links,
    bedIds: unique(rows.flatMap(({ bedIds }) => bedIds)),
    sourceIds: unique(rows.map(({ sourceId }) => sourceId)),
    someNew: rows.some(({ plate }) => plate.isNew),
  };
}

function namelessGroup({ crop, beds, plate }: NamelessCrop): CropGroup {
  const bedIds = beds.map(word);
  return {
    id: cropAnchor(crop),
    cropId: word(crop),
    name: plate.name,
    letter: firstLetter(plate.name),
    rows: [{ plate, bedIds, sourceId: "" }],
    letters: [],
    bedIds,
    sourceIds: [""],
    someNew: false,
  };
}

function row(view: View, plates: SmallPlates, variety: Variety): readonly VarietyRow[] {
  const plate = plates.get(variety.id);
  if (plate === undefined) return [];
  const plantings = view.plantings.get(variety.id) ?? [];
  const now = plantings.filter((planting) => planting.ended === undefined);
  return [
    {
      id: variety.id,
      plate,
      bedIds: unique(now.map(({ bed }) => word(bed))),
      sourceId: variety.source === undefined ? "" : word(variety.source.name),
    },
  ];
}

function bedName(view: View, id: string): string {
  return [...view.garden.beds.values()].find((bed) => word(bed.id) === id)?.title ?? id;
}

function choices(view: View, ids: readonly string[], name: (id: string) => string): readonly FilterChoice[] {
  return unique(ids)
    .map((id) => ({ id, name: name(id) }))
    .sort((a, b) => view.compare(a.name, b.name));
}

function letters(groups: readonly CropGroup[]): readonly Link[] {
  const first = new Map<string, string>();
  for (const { id, letter } of groups) {
    if (!first.has(letter)) first.set(letter, id);
  }
  return [...first].map(([text, id]) => ({ text, href: `#${encodeURIComponent(id)}` }));
}

function families(view: View, groups: readonly CropGroup[]): VarietyListPage["families"] {
  const found = new Map<string, Link[]>();
  for (const crop of view.garden.crops.values()) {
    const shown = groups.find(({ id }) => id === cropAnchor(crop.id));
    if (shown !== undefined && crop.family !== "")
      found.set(crop.family, [
        ...(found.get(crop.family) ?? []),
        { text: shown.name, href: `#${encodeURIComponent(shown.id)}` },
      ]);
  }
  return [...found]
    .map(([name, crops]) => ({ name, crops: crops.sort((a, b) => view.compare(a.text, b.text)) }))
    .sort((a, b) => view.compare(a.name, b.name));
}

/**
 * One rule a choice: while it is chosen, rows and groups without its value are not shown. A value is a word of a
 * `data-` attribute, so it may not hold spaces.
 */
function filterRules(
  crops: readonly FilterChoice[],
  beds: readonly FilterChoice[],
  sources: readonly FilterChoice[],
  someNew: boolean,
): string {
  const option = (kind: string, id: string) => `#by-${kind} option[value=${quoted(word(id))}]:checked`;
  const rules = [
    ...crops.map(({ id }) => [option("crop", id), `&:not([data-crop=${quoted(id)}])`]),
    ...beds.map(({ id }) => [option("bed", id), without(`[data-beds~=${quoted(word(id))}]`)]),
    ...sources.map(({ id }) => [option("source", id), without(`[data-sources~=${quoted(id)}]`)]),
    ...(someNew ? [["#by-new:checked", without("[data-new]")]] : []),
  ];
  // Asked of the choices alone: asked of the whole list, each rule would make a browser look through all of it.
  return rules
    .map(([chosen, gone]) => `.filters:has(${chosen}) ~ .crop-group { ${gone} { display: none; } }\n`)
    .join("");
}

/** Groups and rows that lack what is chosen. */
function without(mark: string): string {
  return `&:not(${mark}), & .row:not(${mark})`;
}

function word(text: string): string {
  return text.trim().toLowerCase().replace(/\s+/gu, "-");
}

/** A CSS string: whatever a name holds, it can not end the rule. */
function quoted(text: string): string {
  return `"${text.replace(/[^\p{L}\p{N}_-]/gu, (character) => `\\${character.codePointAt(0)?.toString(16)} `)}"`;
}

function unique(all: readonly string[]): readonly string[] {
  return [...new Set(all)];
}
