/** Front matter to records: sites, beds, varieties, gear first, then what names them. */

import type * as z from "zod";
import type { Bed, Crop, Gear, Problem, RecordFile, Site, Variety } from "../model.ts";
import { onlyCropOf } from "./crops.ts";
import type { RecordPlace } from "./file-names.ts";
import type { Names } from "./names.ts";
import { idOfName, normaliseName } from "./names.ts";
import { didYouMean } from "./nearest-spelling.ts";
import type { ParsedFile } from "./parsed-files.ts";
import { problem } from "./problem-rules.ts";
import { checkRecord } from "./record-fronts.ts";
import { cropsIn } from "./region-crops.ts";
import { bedSchema, makeBed } from "./schemas/bed.ts";
import { gearSchema, makeGear } from "./schemas/gear.ts";
import { makeSite, siteSchema } from "./schemas/site.ts";
import { makeVariety, varietySchema } from "./schemas/variety.ts";
import type { UnreadFile } from "./unread-files.ts";

/** Parsed files by path, and the problems found so far. */
export interface Reading {
  readonly unread: readonly UnreadFile[];
  readonly files: ReadonlyMap<string, ParsedFile>;
  readonly problems: Problem[];
}

/** What the notes' names are built from. */
export interface DescribedRecords {
  readonly sites: ReadonlyMap<string, Site>;
  readonly beds: ReadonlyMap<string, Bed>;
  readonly varieties: ReadonlyMap<string, Variety>;
  readonly gear: ReadonlyMap<string, Gear>;
  /** The crop table and a row for each crop that a variety names beyond it. */
  readonly crops: ReadonlyMap<string, Crop>;
}

/** Rows of a crop table by each name: they are the same for every garden of a language. */
const tableNames = new WeakMap<readonly Crop[], ReadonlyMap<string, Crop>>();

function namesIn(table: readonly Crop[]): ReadonlyMap<string, Crop> {
  let byName = tableNames.get(table);
  if (byName === undefined) {
    byName = new Map(table.flatMap((crop) => cropNames(crop).map((name) => [normaliseName(name), crop] as const)));
    tableNames.set(table, byName);
  }
  return byName;
}

export function describedRecords(
  places: { readonly [kind in "sites" | "beds" | "varieties" | "gear"]: readonly RecordPlace[] },
  reading: Reading,
  language: string,
): DescribedRecords {
  const cropTable = cropsIn(language);
  const sites = readKind("sites", places.sites, reading, siteSchema, "a site", makeSite, (file) => makeSite(file, {}));
  const beds = readKind(
    "beds",
    places.beds,
    reading,
    bedSchema,
    "a bed",
    (file, front, parsed) => makeBed(file, { ...front, site: siteOf(front.site, sites, parsed, reading.problems) }),
    (file) => makeBed(file, {}),
  );
  const crops = new Map(cropTable.map((crop) => [crop.id, crop]));
  const cropByName = new Map(namesIn(cropTable));
  const varieties = readKind(
    "varieties",
    places.varieties,
    reading,
    varietySchema,
    "a variety",
    (file, front, parsed) =>
      makeVariety(
        file,
        front,
        front.crop === undefined ? onlyCropOf(file.title) : cropOf(front.crop, crops, cropByName, parsed, reading),
      ),
    (file) => makeVariety(file, {}, undefined),
  );
  const gear = readKind("gear", places.gear, reading, gearSchema, "a gear record", makeGear, (file) =>
    makeGear(file, {}),
  );
  return { sites, beds, varieties, gear, crops };
}

/**
 * Reads every record of one kind; files that lack a needed key are left out, with their problems told. A file that could
 * not be read leaves a private record of its name, so that nothing else is taken to go by it.
 */
export function readKind<Schema extends z.ZodObject, Made>(
  folder: UnreadFile["folder"],
  places: readonly RecordPlace[],
  { files, problems, unread }: Reading,
  schema: Schema,
  kind: string,
  make: (file: RecordFile, front: z.output<Schema>, parsed: ParsedFile) => Made,
  unreadable?: (file: RecordFile) => Made,
): ReadonlyMap<string, Made> {
  const made = new Map<string, Made>();
  const inDoubt = new Map(
    unread.flatMap(({ folder: of, file, id }) => (of === folder && id !== undefined ? [[id, file] as const] : [])),
  );
  for (const place of places) {
    const parsed = files.get(place.file);
    if (parsed === undefined) {
      inDoubt.set(place.id, place.file);
      continue;
    }
    const checked = checkRecord(schema, kind, parsed);
    problems.push(...checked.problems);
    if (checked.front === undefined) continue;
    const file: RecordFile = {
      id: place.id,
      title: (checked.front as { readonly title?: string }).title ?? titleOfId(place.id),
      private: checked.private || inDoubt.has(place.id),
      body: bodyOf(parsed),
      place: place.at ?? { file: place.file, line: 1, column: 1 },
      described: true,
      ...(isOpenly(checked.front) && { openly: true }),
    };
    made.set(place.id, make(file, checked.front, parsed));
  }
  for (const [id, file] of inDoubt) {
    if (id === "" || made.has(id) || unreadable === undefined) continue;
    const place = { file, line: 1, column: 1 };
    made.set(id, unreadable({ id, title: titleOfId(id), private: true, body: "", place, described: true }));
  }
  return made;
}

function isOpenly(front: unknown): boolean {
  return (front as { readonly private?: boolean }).private === false;
}

/** Markdown below the front matter, without the empty lines around it and with plain line ends. */
export function bodyOf(parsed: ParsedFile): string {
  return parsed.text
    .slice(parsed.bodyAt)
    .replaceAll("\r\n", "\n")
    .replace(/^\s*\n/, "")
    .trimEnd();
}

/** "long-bed" without a title is "Long bed". */
function titleOfId(id: string): string {
  const words = id.replaceAll("-", " ");
  return words.charAt(0).toUpperCase() + words.slice(1);
}

function siteOf(
  name: string | undefined,
  sites: ReadonlyMap<string, Site>,
  parsed: ParsedFile,
  problems: Problem[],
): string | undefined {
  if (name === undefined) return undefined;
  const wanted = normaliseName(name);
  const site = [...sites.values()].find(
    ({ id, title }) => normaliseName(id) === wanted || normaliseName(title) === wanted,
  );
  if (site === undefined) {
    problems.push(
      problem(
        "link/unknown-site",
        { file: parsed.file, ...parsed.places().value(["site"]) },
        `No site is called "${name}", so this bed stands on none and is kept private.`,
        didYouMean(
          name,
          [...sites.values()].flatMap(({ id, title }) => [id, title]),
        ) ?? `Write sites/${idOfName(name) || "name"}.md to describe it.`,
      ),
    );
  }
  return site?.id;
}

function cropOf(
  name: string,
  crops: Map<string, Crop>,
  byName: Map<string, Crop>,
  parsed: ParsedFile,
  { problems }: Reading,
): Crop | undefined {
  const known = byName.get(normaliseName(name));
  if (known !== undefined) return known;
  const place = { file: parsed.file, ...parsed.places().value(["crop"]) };
  const near = didYouMean(
    name,
    [...crops.values()].map((crop) => crop.name),
  );
  problems.push(
    near === undefined
      ? problem(
          "name/crop-taken",
          place,
          `The crop "${name}" is not in the table of crops; it was taken as named, of no known family.`,
          "Nothing needs to be done; if it goes by another name as well, that one may be known.",
        )
      : problem("link/unknown-crop", place, `No crop is called "${name}"; it was taken as a crop of its own.`, near),
  );
  const id = idOfName(name);
  if (id === "") return undefined;
  const made: Crop = { id, name, plural: name, alsoCalled: [], family: "", perennial: undefined, use: "vegetable" };
  crops.set(id, made);
  byName.set(normaliseName(name), made);
  return made;
}

function cropNames(crop: Crop): readonly string[] {
  return [crop.id, crop.name, crop.plural, ...crop.alsoCalled];
}

/** Crops that varieties use, by id, in order of id. */
export function cropsInUse(
  crops: ReadonlyMap<string, Crop>,
  used: Iterable<string | undefined>,
): ReadonlyMap<string, Crop> {
  const ids = [...new Set(used)].filter((id) => id !== undefined).sort();
  return new Map(ids.flatMap((id) => (crops.has(id) ? [[id, crops.get(id) as Crop] as const] : [])));
}

/** One hint for each bed and variety that notes name and no file describes. */
export function takenHints(names: Names): Problem[] {
  const taken = names.taken();
  // What is spelled nearly like a record has its own warning at every line that says it.
  const beds = taken.beds.filter(({ title }) => names.slipFor("bed", title) === undefined);
  const varieties = taken.varieties.filter(({ title }) => names.slipFor("variety", title) === undefined);
  /** ", of the crop onion" */
  const aCrop = (crop: string | undefined) => (crop === undefined ? "" : `, of the crop ${names.title("crop", crop)}`);
  return [
    ...beds.map(({ title, id, place }) =>
      problem(
        "name/bed-taken",
        place ?? { file: "notes", line: 1, column: 1 },
        `No file describes the bed "${title}"; it was taken as named.`,
        `Write beds/${id}.md to describe it: plotreel new bed "${title}".`,
      ),
    ),
    ...varieties.map(({ title, id, crop, place }) =>
      problem(
        "name/variety-taken",
        place ?? { file: "notes", line: 1, column: 1 },
        `No file describes the variety "${title}"; it was taken as named${aCrop(crop)}.`,
        `Write varieties/${id}.md to describe it: plotreel new variety "${title}".`,
      ),
    ),
  ];
}
