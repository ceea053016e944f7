/** Cautions: how many rest on pages that were read, and that what no row may claim gets none. */

import { falseFriends, sharedNames } from "../../src/almanac/hazards/false-friends.ts";
import { type NamedPlant, plantHazards, plantHazardsOf, workHazards } from "../../src/almanac/index.ts";
import type { TruthRow } from "./table.ts";

export function hazardRows(): readonly TruthRow[] {
  const plants: readonly NamedPlant[] = [...falseFriends, ...sharedNames.map(({ name }) => name)].map((title) => ({
    title,
  }));
  const claimed = plants.filter((plant) => plantHazardsOf(plant).length > 0);
  const lost = plantHazards.filter((row) => row.names.some((name) => !plantHazardsOf({ title: name }).includes(row)));
  return [
    {
      quantity: "plants named like a poisonous one, or like two, given a row",
      cases: plants.length,
      found: claimed.length === 0 ? "none" : claimed.map(({ title }) => title).join(", "),
      against: "common floras, from memory",
      goal: "none",
      met: claimed.length === 0,
    },
    {
      quantity: "common names of harmful plants that miss their row",
      cases: plantHazards.reduce((sum, { names }) => sum + names.length, 0),
      found: lost.length === 0 ? "none" : lost.map(({ title }) => title).join(", "),
      against: "the table's own names",
      goal: "none",
      met: lost.length === 0,
    },
    {
      quantity: "cautions for plants that rest on a page read (people's side)",
      cases: plantHazards.length,
      found: shares(plantHazards),
      against: "poison centres, extension services, health offices: docs/cautions.md",
      goal: "",
    },
    {
      quantity: "cautions for work that rest on a page read",
      cases: workHazards.length,
      found: shares(workHazards),
      against: "the same",
      goal: "",
    },
  ];
}

/** "81 seen, 6 partly, 32 memory" */
function shares(rows: readonly { readonly proof: string }[]): string {
  const by = Map.groupBy(rows, ({ proof }) => proof);
  return [...by].map(([proof, found]) => `${found.length} ${proof}`).join(", ");
}
