/** The one table of work that can hurt, and what of it stands in a text. */
import { preserving } from "./preserving.ts";
import { spraysAndSoil } from "./sprays-and-soil.ts";
import { toolsAndFire } from "./tools-and-fire.ts";
import type { WorkHazard } from "./work-hazard.ts";

export const workHazards: readonly WorkHazard[] = [...preserving, ...spraysAndSoil, ...toolsAndFire];

/** Work that these words name. Never asked of a plant's name: only of lines, and of goals in jars. */
export function workHazardsIn(text: string): readonly WorkHazard[] {
  return workHazards.filter(({ words }) => words.test(text));
}

/** The line, and whom to follow where the line does not say so itself. */
export function workCaution({ caution, defer }: WorkHazard): string {
  return defer === undefined ? caution : `${caution} ${defer}`;
}

/** Lines on food in jars are never cut for length. */
export function isPreserving(hazard: WorkHazard): boolean {
  return preserving.includes(hazard);
}
