/**
 * The export of a field list, `field-list.json` beside an episode: which shots were filmed in which takes, the plan they
 * were filmed by, and the quick notes made on the way. A phone wrote it, but a person carried it here and may have mended it, so it is checked like any record.
 */
import * as z from "zod";
import type { Bed, Episode, Filming, Problem, ShotState, ShotTick, Take } from "../model.ts";
import type { EpisodePlace } from "./episode-places.ts";
import { head } from "./file-names.ts";
import { inFile } from "./file-problem.ts";
import { yamlPlaces } from "./front-matter.ts";
import { type JsonData, line, parseJson, readJsonText } from "./json-files.ts";
import { planIn } from "./kept-plans.ts";
import { didYouMean } from "./nearest-spelling.ts";
import { problem } from "./problem-rules.ts";
import type { RecordsFolder } from "./records-folder.ts";
import { checkFrontMatter } from "./schema-sentences.ts";
import { day, number, oneOf, readAs, text, wrongValue } from "./schemas/fields.ts";
import { textPlaces } from "./text-places.ts";

const timeOfDay = readAs((written) =>
  /^([01]\d|2[0-3]):[0-5]\d:[0-5]\d$/.test(written)
    ? { value: written }
    : wrongValue(
        `"${written}" is not a time of day.`,
        'Write hours, minutes and seconds, two digits each: "09:24:31".',
      ),
);

const state = oneOf(["filmed", "retake", "skipped"]);

/** Until 0.2.0 takes were only counted, and a shot was known by its number alone. */
const countedTick = z
  .strictObject({
    shot: line,
    state,
    reason: line.optional(),
    takes: number({ from: 0, to: 999 }),
    at: timeOfDay,
  })
  .transform(({ takes, ...tick }): ShotTick => ({ ...tick, takes: takesCounted(takes, tick) }));

const tick = z.strictObject({
  shot: line,
  key: line,
  words: line,
  state,
  reason: line.optional(),
  takes: z.array(
    z.strictObject({
      at: timeOfDay.optional(),
      mark: oneOf(["good", "hold", "no good"]).optional(),
      why: line.optional(),
    }),
  ),
  at: timeOfDay,
});

const common = { plotreel: text, version: text, episode: text, day, exported: text };
const stop = { bed: text, note: text.optional() };
const schemas = {
  1: z.strictObject({
    ...common,
    stops: z.array(z.strictObject({ bed: stop.bed, ticks: z.array(countedTick), note: stop.note })),
  }),
  2: z.strictObject({
    ...common,
    stops: z.array(z.strictObject({ bed: stop.bed, ticks: z.array(tick), note: stop.note })),
    plan: z.unknown().optional(),
  }),
} as const;

/** Of takes that were only counted, the last is the one that was ticked or held. */
function takesCounted(
  count: number,
  { state: as, at }: { readonly state: ShotState; readonly at: string },
): readonly Take[] {
  const last: Take = as === "filmed" ? { at, mark: "good" } : as === "retake" ? { at, mark: "no good" } : {};
  return Array.from({ length: count }, (_, take) => (take === count - 1 ? last : {}));
}

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
    const written = await readJsonText(folder, fieldList, problems);
    const filming = written === undefined ? undefined : filmingOf(fieldList, written, { id, episodes, beds, problems });
    if (filming !== undefined) filled.set(id, { ...episode, filming });
  }
  return filled;
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
  if (data.plotreel !== "field list" || (data.version !== "1" && data.version !== "2")) {
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
  const check = (schema: (typeof schemas)[1 | 2]) =>
    checkFrontMatter<(typeof schemas)[1 | 2]>(schema, "the export of a field list", data, places);
  const { front, problems: wrong } = check(data.version === "1" ? schemas[1] : schemas[2]);
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
    const index = (data.stops as readonly JsonData[]).findIndex((stop) => stop.bed === bed);
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
  const plan = "plan" in front && front.plan !== undefined ? planIn(file, front.plan, id, problems) : undefined;
  return { day: front.day, stops, ...(plan === undefined ? {} : { plan }), place: head(file) };
}
