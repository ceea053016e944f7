/** Work done on plants and beds, and what viewers asked about them. */
import type { Event } from "../model.ts";
import { bedLedger, bedsMeant, type Growing, type Ledger } from "./ledger.ts";
import { become, byBed } from "./living-plantings.ts";
import { plantingsMeant } from "./plantings-meant.ts";
import { isTending, standingPlanting } from "./standing.ts";
import { tryAgainst } from "./troubles.ts";
import { addChange } from "./write-down.ts";

/** Work of one line, which gives one event for each plant it names: told as one thing done, bed by bed. */
export function work(ledger: Ledger, line: readonly [Event, ...Event[]]): void {
  const [event] = line;
  const what = event.what ?? event.verb;
  const here = new Map<string, { readonly growing: Set<Growing>; readonly named: Event[] }>();
  for (const one of line) {
    for (const [bed, growing] of plantsOrBeds(ledger, one)) {
      const known = here.get(bed) ?? { growing: new Set(), named: [] };
      here.set(bed, known);
      for (const planting of growing) known.growing.add(planting);
      if (growing.length > 0) known.named.push(one);
    }
  }
  for (const [bed, { growing, named }] of here) {
    const after = [...growing].map((one) => become(one, {}, event));
    const ids = after.map(({ id }) => id);
    const tried = tryAgainst(bedLedger(ledger, bed), event, { what }, { words: what, plantings: ids });
    addChange(ledger, event, {
      kind: "did",
      bed,
      told: { is: "work", named, plantings: after },
      effect: { ...tried, plantings: after },
    });
  }
}

export function ask(ledger: Ledger, event: Event): void {
  for (const [bed] of plantsOrBeds(ledger, event)) {
    addChange(ledger, event, { kind: "asked", bed, told: { is: "asked" } });
  }
}

/** The plants a line names, by bed; else the beds it speaks of, without plants. */
function plantsOrBeds(ledger: Ledger, event: Event): ReadonlyMap<string, readonly Growing[]> {
  const meant = plantingsMeant(ledger, event);
  if (meant.is === "plantings") return byBed(meant.plantings);
  const standing =
    meant.is === "nothing" && event.kind === "did" && isTending(event) ? standingPlanting(ledger, event) : undefined;
  if (standing !== undefined) return byBed([standing]);
  return meant.is === "lots" ? new Map() : new Map(bedsMeant(ledger, event).map((bed) => [bed, []]));
}
