/**
 * The plan a tour was to be filmed by, `plan.json` beside its episode. The tool wrote it with the brief; without one, or with
 * one that cannot be read, the tour is planned anew from the notes there are by then.
 */
import * as z from "zod";
import type { Episode, PlannedTour, Problem } from "../model.ts";
import type { EpisodePlace } from "./episode-places.ts";
import { head } from "./file-names.ts";
import { line, parseJson, readJsonText } from "./json-files.ts";
import { problem } from "./problem-rules.ts";
import type { RecordsFolder } from "./records-folder.ts";
import { oneOf } from "./schemas/fields.ts";

const level = oneOf(["must", "should", "could"]);

const schema = z.object({
  plotreel: z.literal("plan"),
  version: z.literal("1"),
  episode: line,
  stops: z.array(
    z.object({
      bed: line,
      show: z.array(
        z.object({
          id: line,
          key: line,
          kind: line,
          level,
          text: line,
          plantings: z.array(line),
          shot: line.optional(),
        }),
      ),
      shots: z.array(z.object({ id: line, key: line, text: line, level: level.optional() })),
      cautions: z.array(line),
    }),
  ),
  care: line.optional(),
});

/** The episodes with the plans that were kept beside them. */
export async function withKeptPlans(
  episodes: ReadonlyMap<string, Episode>,
  places: readonly EpisodePlace[],
  folder: RecordsFolder,
  problems: Problem[],
): Promise<ReadonlyMap<string, Episode>> {
  const filled = new Map(episodes);
  for (const { id, plan: file } of places) {
    const episode = filled.get(id);
    if (file === undefined || episode === undefined) continue;
    const written = await readJsonText(folder, file, problems);
    if (written === undefined) continue;
    const parsed = parseJson(written);
    const plan = planIn(file, "data" in parsed ? parsed.data : undefined, id, problems);
    if (plan !== undefined) filled.set(id, { ...episode, plan });
  }
  return filled;
}

/** `data` has every scalar as its text. */
export function planIn(file: string, data: unknown, episode: string, problems: Problem[]): PlannedTour | undefined {
  const { data: kept } = schema.safeParse(data);
  if (kept === undefined || kept.episode !== episode) {
    const why = kept === undefined ? "cannot be read" : `was made for the tour "${kept.episode}"`;
    problems.push(
      problem(
        "plan/not-read",
        head(file),
        `The plan in this file ${why}, so the tour is planned anew after filming.`,
        "Bring back the file as it was, or delete it.",
      ),
    );
    return undefined;
  }
  const stops = kept.stops.map(({ cautions, ...stop }) => ({
    ...stop,
    cautions: cautions.map((caution) => ({ text: caution, private: false })),
    furtherCautions: [],
  }));
  return { stops, followUps: [], closingCaution: kept.care };
}
