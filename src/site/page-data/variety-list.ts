/** The variety list: by crop, with jumps by letter and family, and the rules that narrow it without scripts. */
import { cropOf } from "../../crop-of.ts";
import { capital, cropName } from "../../language/index.ts";
import type { Variety } from "../../model.ts";
import { firstLetter, letterJumps } from "./letter-jumps.ts";
import { cropAnchor } from "./links.ts";
import type { CropGroup, FilterChoice, Link, VarietyListPage, VarietyRow } from "./shapes.ts";
import { saySource } from "./sources.ts";
import { sayWhere } from "./variety-pages.ts";
import { seasonLabel, seasonYear, type View } from "./view.ts";

/** Group of varieties whose crop nothing tells. */
const OTHER = "other";

export function varietyList(view: View): VarietyListPage {
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
  const groups = [...byCrop]
    .map(([id, varieties]) => group(view, id, cropWord(id), varieties))
    .sort((a, b) => view.compare(a.name, b.name));
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
  const someNew = rows.some((row) => row.isNew);
  return {
    href: links.varieties,
    csvHref: links.csv,
    jsonHref: links.json,
    filterHref: links.varietyFilters,
    filterRules: filterRules(crops, beds, sources, someNew),
    count: rows.length === 0 ? words.varieties.none : words.varieties.count(rows.length, groups.length),
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

function group(view: View, id: string, name: string, varieties: readonly Variety[]): CropGroup {
  const anchor = cropAnchor(id);
  const sorted = [...varieties].sort((a, b) => view.compare(a.title, b.title) || (a.id < b.id ? -1 : 1));
  const letters = letterJumps(
    sorted.map(({ title }) => title),
    anchor,
  );
  const rows = sorted.map((variety, index) => ({ ...row(view, variety), anchor: letters.anchorOf(index) }));
  return {
    id: anchor,
    cropId: word(id),
    name,
    rows,
    letters: letters.links,
    bedIds: unique(rows.flatMap(({ bedIds }) => bedIds)),
    sourceIds: unique(rows.map(({ sourceId }) => sourceId)),
    someNew: rows.some(({ isNew }) => isNew),
  };
}

function row(view: View, variety: Variety): VarietyRow {
  const plantings = view.plantings.get(variety.id) ?? [];
  const now = plantings.filter((planting) => planting.ended === undefined);
  return {
    id: variety.id,
    href: view.links.variety(variety.id),
    name: variety.title,
    sayAs: variety.sayAs,
    source: saySource(view.words, variety.source),
    where: sayWhere(view, variety),
    isNew: view.newVarieties.has(variety.id),
    bedIds: unique(now.map(({ bed }) => word(bed))),
    sourceId: variety.source === undefined ? "" : word(variety.source.name),
  };
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
  for (const { id, name } of groups) {
    const letter = firstLetter(name);
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
