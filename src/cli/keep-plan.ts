/** Keeps the plan of a tour beside its episode when its brief is made: what is filmed by it is wrapped by it. */
import path from "node:path";
import type { Episode } from "../model.ts";
import { type Brief, planToKeep } from "../tour/index.ts";
import type { Effects } from "./effects.ts";
import type { Loaded } from "./load-garden.ts";

/** Of a tour that was filmed the plan stays as it was, and one that no episode records has no place for it. */
export async function keepPlan(
  { garden, recordsDir, today }: Pick<Loaded, "garden" | "recordsDir" | "today">,
  brief: Brief,
  effects: Effects,
): Promise<void> {
  const episode = garden.episodes.get(brief.tour);
  if (episode?.place === undefined || !isAhead(episode, today)) return;
  const file = path.join(recordsDir, path.dirname(episode.place.file), "plan.json");
  const text = `${JSON.stringify(planToKeep(brief), null, 2)}\n`;
  try {
    if ((await effects.readText(file)) !== text) await effects.writeText(file, text);
    effects.err(`Kept for the wrap: ${file}`);
  } catch (error) {
    // Records may lie where nothing can be written; the phone brings its plan home all the same.
    effects.err(`The plan could not be kept beside the episode: ${(error as Error).message}`);
  }
}

function isAhead({ day, status, filming, captions }: Episode, today: string): boolean {
  return status === "planned" && day >= today && filming === undefined && captions.length === 0;
}
