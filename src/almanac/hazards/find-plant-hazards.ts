/**
 * Which rows of the hazard table a plant has: by its botanical genus first, then by its crop, then by whole common names,
 * the longest before the shorter. A name counts where it ends: "narcissus-flowered dahlia" is a dahlia, and a cultivar's name
 * ('Potato Leaf') names nothing.
 */
import { falseFriends, type SharedName, sharedNames } from "./false-friends.ts";
import type { PlantHazard } from "./plant-hazard.ts";
import { plantHazards } from "./plant-hazards.ts";
import { plantKey, plantWords } from "./plant-words.ts";

export interface NamedPlant {
  readonly crop?: { readonly id: string; readonly name: string } | undefined;
  /** As the records title it. */
  readonly title?: string | undefined;
  readonly botanical?: string | undefined;
}

/** Rows of the plant, none when no row knows it, which does not mean that it is harmless. */
export function plantHazardsOf(plant: NamedPlant): readonly PlantHazard[] {
  const found = find(plant);
  return found === undefined || "means" in found ? [] : found.rows;
}

/** The name that leaves open which of two plants it is. */
export function sharedNameOf(plant: NamedPlant): SharedName | undefined {
  const found = find(plant);
  return found !== undefined && "means" in found ? found : undefined;
}

interface Found {
  readonly rows: readonly PlantHazard[];
}

function find(plant: NamedPlant): Found | SharedName | undefined {
  const latin = latinOf(plant);
  if (latin !== undefined) return { rows: rowsOfLatin(latin, plant) };
  const { crop, title = "" } = plant;
  if (sweetPeaOrGardenPea(plant)) return sweetPea;
  const named = longest([endOf(title), crop === undefined ? undefined : endOf(`${title} ${crop.name}`)]);
  if (crop === undefined) return named?.found ?? beginningOf(title);
  // A name of several words knows more than the crop: a Peruvian lily is no lily.
  if (named !== undefined && named.words > 1) return named.found;
  const rows = plantHazards.filter(({ crops }) => crops.includes(crop.id));
  return rows.length > 0 ? { rows } : endOf(crop.name)?.found;
}

// --------------------------------------------------------------------------------------------------- botanical names

interface Latin {
  readonly genus: string;
  readonly species?: string | undefined;
}

/** Older and other names of genera and species in the table. */
const synonyms: ReadonlyMap<string, Latin> = new Map(
  Object.entries({
    lycopersicon: { genus: "solanum", species: "lycopersicum" },
    "physalis alkekengi": { genus: "alkekengi", species: "officinarum" },
    "physalis franchetii": { genus: "alkekengi", species: "officinarum" },
    thevetia: { genus: "cascabela" },
    "chrysanthemum parthenium": { genus: "tanacetum", species: "parthenium" },
    "matricaria parthenium": { genus: "tanacetum", species: "parthenium" },
    "rhus radicans": { genus: "toxicodendron" },
    cimicifuga: { genus: "actaea" },
    endymion: { genus: "hyacinthoides" },
    dendranthema: { genus: "chrysanthemum" },
    azalea: { genus: "rhododendron" },
    rosmarinus: { genus: "salvia" },
  }),
);

const byGenus = Map.groupBy(
  plantHazards.flatMap((row) => row.genera.map((genus) => ({ genus: genus.toLowerCase(), row }))),
  ({ genus }) => genus,
);

function latinOf({ botanical, title = "", crop }: NamedPlant): Latin | undefined {
  const written = botanical === undefined ? undefined : latinIn(botanical);
  // One word in small letters that no row knows is no genus: somebody wrote the common name there.
  if (written !== undefined && (written.species !== undefined || /^\s*\p{Lu}/u.test(botanical ?? "") || knows(written)))
    return written;
  const inBrackets = latinIn(/\(([^)]{0,200})\)/.exec(title)?.[1] ?? "");
  if (inBrackets !== undefined && knows(inBrackets)) return inBrackets;
  const begins = /^\s*\p{Lu}\p{Ll}+(?:\s+[×x])?(?:\s+\p{Ll}{3,}(?![-'’]))?/u.exec(title)?.[0];
  const [genus, species] = begins?.trim().split(/\s+(?:[×x]\s+)?/) ?? [];
  if (genus === undefined || (species === undefined && (crop !== undefined || begins?.trim() !== title.trim())))
    return undefined;
  const latin = latinIn(begins ?? "");
  return latin !== undefined && knows(latin) ? latin : undefined;
}

function latinIn(text: string): Latin | undefined {
  const [, genus, species] = /^\s*(?:[×x]\s*)?(\p{L}{3,})(?:\s+(?:[×x]\s+)?([a-z-]{3,}))?/u.exec(text) ?? [];
  if (genus === undefined) return undefined;
  const lower = genus.toLowerCase();
  return synonyms.get(`${lower} ${species}`) ?? synonyms.get(lower) ?? { genus: lower, species };
}

function knows({ genus }: Latin): boolean {
  return byGenus.has(genus);
}

function rowsOfLatin({ genus, species }: Latin, plant: NamedPlant): readonly PlantHazard[] {
  const rows = (byGenus.get(genus) ?? []).map(({ row }) => row);
  const meant = rows.filter((row) => species !== undefined && row.species?.includes(species) === true);
  if (meant.length > 0) return meant;
  const rest = rows.filter((row) => row.species === undefined && !(row.notSpecies ?? []).includes(species ?? ""));
  if (species !== undefined || rest.length === rows.length) return rest;
  // Only the genus is known, and it holds food and poison: the crop tells, or the name.
  const { botanical: _, ...without } = plant;
  const named = find({ ...without, title: without.title?.replace(/\([^)]{0,200}\)/g, "") });
  const told = named === undefined || "means" in named ? [] : rows.filter((row) => named.rows.includes(row));
  return told.length > 0 ? told : rest;
}

// ------------------------------------------------------------------------------------------------------ common names

const byName = new Map<string, Found | SharedName>([
  ...[
    ...Map.groupBy(
      plantHazards.flatMap((row) => row.names.map((name) => ({ key: plantKey(name), row }))),
      ({ key }) => key,
    ),
  ].map(([key, found]) => [key, { rows: found.map(({ row }) => row) }] as const),
  ...falseFriends.map((name) => [plantKey(name), { rows: [] }] as const),
  ...sharedNames.map((shared) => [plantKey(shared.name), shared] as const),
]);

interface Named {
  readonly found: Found | SharedName;
  readonly words: number;
}

/** The longest name with which a text ends. */
function endOf(text: string): Named | undefined {
  const all = plantWords(text);
  for (let from = 0; from < all.length; from++) {
    const found = byName.get(all.slice(from).join(" "));
    if (found !== undefined) return { found, words: all.length - from };
  }
  return undefined;
}

function longest(names: readonly (Named | undefined)[]): Named | undefined {
  return names.reduce<Named | undefined>(
    (best, one) => ((one?.words ?? 0) > (best?.words ?? 0) ? one : best),
    undefined,
  );
}

/** Nouns that make another plant, or none, of the name before them: "foxglove tree", "monkshood vine". */
const otherPlants = new Set(
  "tree vine bush shrub grass moss fern palm pine root weed leaf wort family border bed mix seed sage thistle".split(
    " ",
  ),
);

/** "Lily Stargazer", "Foxglove 'Alba'": a common name first, and a cultivar's name behind it. */
function beginningOf(title: string): Found | SharedName | undefined {
  const quoted = /(?<=\s)['‘"“]/.test(title);
  const words = plantWords(title);
  const behind = title
    .replace(/\([^)]{0,200}\)/g, " ")
    .trim()
    .split(/\s+/);
  for (let until = words.length - 1; until > 0; until--) {
    const found = byName.get(words.slice(0, until).join(" "));
    if (found === undefined) continue;
    const rest = behind.slice(until);
    const isCultivar = quoted || rest.every((word) => /^\p{Lu}|^\d/u.test(word));
    return isCultivar && !otherPlants.has(words.at(-1) ?? "") ? found : undefined;
  }
  return undefined;
}

// ---------------------------------------------------------------------------------------------------------- the pea

const sweetPea: SharedName = {
  name: "sweet pea",
  means: "the flower (Lathyrus), whose pods and seeds are poisonous, or a garden pea (Pisum)",
};

/** "Sweet peas (sugar snap)", or a pea of the kitchen garden titled so: the one is food, the other poison. */
function sweetPeaOrGardenPea({ crop, title = "" }: NamedPlant): boolean {
  if (!/\bsweet[ -]?peas?\b/i.test(title)) return false;
  return (
    ["pea", "mangetout", "sugar-snap"].includes(crop?.id ?? "") || /\b(?:snap|snow|garden|shelling)\b/i.test(title)
  );
}
