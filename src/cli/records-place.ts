/** Where the records are: in the folder named with --records, else the current one when it is a garden's, else content/ in it. */
import path from "node:path";
import type { Effects } from "./effects.ts";

/** What makes a folder a garden's. */
const MARK = "garden.md";

/** Absolute. */
export async function recordsPlace(named: string | undefined, effects: Effects): Promise<string> {
  if (named !== undefined) return path.resolve(effects.cwd, named);
  const isGarden = (await effects.readText(path.join(effects.cwd, MARK))) !== undefined;
  return isGarden ? effects.cwd : path.join(effects.cwd, "content");
}
