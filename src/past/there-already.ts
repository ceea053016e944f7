/** What a row of a table says of a variety that a file describes: the same by another spelling, and what that file does not say. */
import type { Crop, Records, Variety } from "../model.ts";
import { idOfName, type Names } from "../records/index.ts";
import type { RowFacts } from "./row-facts.ts";

/** A file that may be of the variety a row names, and what the person is asked before another is made. */
export function spelledOtherwise(
  { variety, crop }: Pick<RowFacts, "variety" | "crop">,
  { varieties }: Pick<Records, "varieties">,
  names: Names,
): string | undefined {
  if (variety === undefined) return undefined;
  const own = lettersOf(variety);
  const cropId = crop === undefined ? undefined : names.find("crop", crop);
  const cropSaid = names.crop(cropId);
  const near = [...varieties.values()].find(
    (one) =>
      one.described &&
      [one.title, ...one.alsoSpelled].some((name) => lettersOf(name) === own) &&
      mayBeOne(names.crop(one.crop), cropSaid),
  );
  if (near === undefined) return undefined;
  const file = fileOf(near);
  if (!isNamed(near, variety, names))
    return (
      `"${variety}" is "${near.title}" of ${file} but for its spelling, so no second file is made. If they are one, write ` +
      `"also spelled: [${variety}]" there and bring this in again; if they are two, write varieties/${idOfName(variety)}.md first`
    );
  return (
    `"${variety}" is ${withCrop(names.crop(near.crop))} in ${file} and ${withCrop(cropSaid)} here, so no second file is made. ` +
    `If they are one, let both say the same crop and bring this in again; if they are two, write varieties/${idOfName(variety)}-${cropId}.md first`
  );
}

function isNamed({ id, title }: Variety, variety: string, names: Names): boolean {
  return names.find("variety", variety) === id || idOfName(title) === idOfName(variety);
}

function withCrop(crop: Crop | undefined): string {
  return crop === undefined ? "of no crop" : `a ${crop.name}`;
}

/** "Pink-eye purple hull" and "Pinkeye Purple Hull" have the same letters. */
function lettersOf(name: string): string {
  return idOfName(name).replaceAll("-", "");
}

/** A pepper may be a chilli and a bean a climbing bean; an aubergine is no courgette, whatever both are called. */
function mayBeOne(one: Crop | undefined, other: Crop | undefined): boolean {
  return one === undefined || other === undefined || one.id === other.id || one.family === other.family;
}

/** What a row says that the file does not, as the table has it; the file is the person's and stays as it is. */
export function notInFile(row: RowFacts, variety: Variety): string | undefined {
  const { source, maturity, botanical, sayAs } = variety;
  const days = /\d+/.exec(row.maturity ?? "")?.[0];
  const said: readonly (readonly [string, string | number | undefined, boolean])[] = [
    ["source", row.source, same(row.source, source?.name)],
    ["obtained", row.obtained, same(row.obtained, source?.obtained) || same(row.obtained, source?.name)],
    ["year", row.year, row.year === source?.year],
    ["link", row.link, row.link === source?.link],
    ["botanical", row.botanical, same(row.botanical, botanical)],
    ["say it as", row.sayAs, same(row.sayAs, sayAs)],
    ["days to maturity", row.maturity, Number(days) === maturity?.days],
    ...row.notes.map((note) => ["notes", note, variety.body.toLowerCase().includes(note.toLowerCase())] as const),
  ];
  const left = said.flatMap(([key, value, isThere]) =>
    value === undefined || isThere ? [] : [`${key}: ${String(value).replace(/\s+/g, " ")}`],
  );
  if (left.length === 0) return undefined;
  return `${fileOf(variety)} is there and stays as it is; it does not say ${left.join(" · ")}`;
}

function same(a: string | undefined, b: string | undefined): boolean {
  return a?.toLowerCase() === b?.toLowerCase();
}

function fileOf({ place, id }: Variety): string {
  return place?.file ?? `varieties/${id}.md`;
}
