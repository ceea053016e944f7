/**
 * The export of a field list, `field-list.json` beside an episode: which shots were filmed, and the quick notes made on
 * the way. A phone wrote it, but a person carried it here and may have mended it, so it is checked like any record.
 */
import * as z from "zod";
import type { Bed, Episode, Filming, Problem } from "../model.ts";
import { decodeText } from "./decode-text.ts";
import type { EpisodePlace } from "./episode-places.ts";
import { head } from "./file-names.ts";
import { inFile } from "./file-problem.ts";
import { yamlPlaces } from "./front-matter.ts";
import { didYouMean } from "./nearest-spelling.ts";
import { problem } from "./problem-rules.ts";
import { type RecordsFolder, unreadable } from "./records-folder.ts";
import { checkFrontMatter } from "./schema-sentences.ts";
import { day, number, oneOf, readAs, text, wrongValue } from "./schemas/fields.ts";
import { textPlaces } from "./text-places.ts";
import type { YamlValue } from "./yaml-values.ts";

const timeOfDay = readAs((written) =>
  /^([01]\d|2[0-3]):[0-5]\d:[0-5]\d$/.test(written)
    ? { value: written }
    : wrongValue(
        `"${written}" is not a time of day.`,
        'Write hours, minutes and seconds, two digits each: "09:24:31".',
      ),
);

const schema = z.strictObject({
  plotreel: text,
  version: text,
  episode: text,
  day,
  exported: text,
  stops: z.array(
    z.strictObject({
      bed: text,
      ticks: z.array(
        z.strictObject({
          shot: text,
          state: oneOf(["filmed", "retake", "skipped"]),
          reason: text.optional(),
          takes: number({ from: 0, to: 999 }),
          at: timeOfDay,
        }),
      ),
      note: text.optional(),
    }),
  ),
});

type Data = { readonly [key: string]: YamlValue };

/** The episodes with what their field lists brought back; an export that cannot be read leaves its episode as it was. */
export async function withFieldLists(
  episodes: ReadonlyMap<string, Episode>,
  places: readonly EpisodePlace[],
  folder: RecordsFolder,
  beds: ReadonlyMap<string, Bed>,
  problems: Problem[],
): Promise<ReadonlyMap<string, Episode>> {
  const filled = new Map(episodes);
  for (const { id, fieldList } of places) {
    const episode = filled.get(id);
    if (fieldList === undefined || episode === undefined) continue;
    const written = await readText(folder, fieldList, problems);
    const filming = written === undefined ? undefined : filmingOf(fieldList, written, { id, episodes, beds, problems });
    if (filming !== undefined) filled.set(id, { ...episode, filming });
  }
  return filled;
}

async function readText(folder: RecordsFolder, file: string, problems: Problem[]): Promise<string | undefined> {
  try {
    const decoded = decodeText(await folder.read(file));
    problems.push(...decoded.problems.map((found) => inFile(file, found)));
    return decoded.text;
  } catch (error) {
    problems.push(unreadable(file, error));
    return undefined;
  }
}

interface Around {
  /** Id of the episode the file lies beside. */
  readonly id: string;
  readonly episodes: ReadonlyMap<string, Episode>;
  readonly beds: ReadonlyMap<string, Bed>;
  readonly problems: Problem[];
}

function filmingOf(file: string, written: string, { id, episodes, beds, problems }: Around): Filming | undefined {
  const parsed = parseJson(written);
  if ("brokenAt" in parsed) {
    problems.push(
      problem(
        "field-list/not-whole",
        { file, ...textPlaces(written)(parsed.brokenAt) },
        "This export cannot be read from here on; it may have been cut short on its way.",
        "Save it once more from the phone, or copy its whole text.",
      ),
    );
    return undefined;
  }
  const { data } = parsed;
  if (data.plotreel !== "field list" || data.version !== "1") {
    problems.push(
      problem(
        "field-list/not-one",
        head(file),
        data.plotreel === "field list"
          ? "This export is of another version than the one that is read here, so it was left out."
          : "This is not the export of a field list, so it was left out.",
        "Put the file here that the field list saved on the phone, or move this one away.",
      ),
    );
    return undefined;
  }
  const places = () => yamlPlaces(written, textPlaces(written));
  const { front, problems: wrong } = checkFrontMatter(schema, "the export of a field list", data, places);
  problems.push(...wrong.map((found) => inFile(file, found)));
  if (front === undefined) return undefined;
  if (front.episode !== id) {
    const home = episodes.has(front.episode) ? `Move it to episodes/${front.episode}, or` : "If it belongs here,";
    problems.push(
      problem(
        "field-list/another-tour",
        { file, ...places().value(["episode"]) },
        `This export was made for the tour "${front.episode}", so it was left out here.`,
        `${home} write "${id}" as its episode.`,
      ),
    );
    return undefined;
  }
  const stops = front.stops.filter(({ bed }) => {
    if (beds.has(bed)) return true;
    const index = (data.stops as readonly Data[]).findIndex((stop) => stop.bed === bed);
    problems.push(
      problem(
        "link/unknown-bed",
        { file, ...places().value(["stops", index, "bed"]) },
        `No bed is called "${bed}", so what was filmed there was left out.`,
        didYouMean(bed, [...beds.keys()]) ?? `Write beds/${bed}.md to describe it.`,
      ),
    );
    return false;
  });
  return { day: front.day, stops, place: head(file) };
}

/** A byte-order mark is taken off before. Gives the offset of the fault where the text is no JSON. */
function parseJson(written: string): { readonly data: Data } | { readonly brokenAt: number } {
  try {
    const value = asWritten(JSON.parse(written), 0);
    return { data: typeof value === "object" && !Array.isArray(value) ? (value as Data) : {} };
  } catch (error) {
    const { message } = error as SyntaxError;
    const offset = /position (\d+)/.exec(message)?.[1];
    if (offset !== undefined) return { brokenAt: Number(offset) };
    return { brokenAt: /end of JSON/.test(message) ? written.trimEnd().length : 0 };
  }
}

/** An export has no lists deeper than this; what lies deeper is nobody's tick. */
const deepest = 8;

/** Every scalar as its text, nothing where a value is empty: the shape in which all records are checked. */
function asWritten(value: unknown, depth: number): YamlValue | undefined {
  if (value === null || value === undefined || value === "") return undefined;
  if (typeof value !== "object") return String(value);
  if (depth > deepest) return "…";
  if (Array.isArray(value)) return value.map((entry) => asWritten(entry, depth + 1) ?? "");
  const map: Record<string, YamlValue> = Object.create(null);
  for (const [key, inner] of Object.entries(value)) {
    const text = asWritten(inner, depth + 1);
    if (text !== undefined) map[key] = text;
  }
  return map;
}
