/** What is told and changes no plant: how plants are, what was put up, what is planned. */
import type { Event, Plan } from "../model.ts";
import { bedsMeant, isPrivate, type Ledger, plantIds } from "./ledger.ts";
import { become, byBed, livingNamed } from "./living-plantings.ts";
import { plantingsMeant } from "./plantings-meant.ts";
import { standingPlanting } from "./standing.ts";
import { bedsConcerned } from "./tasks-and-promises.ts";
import { addChange } from "./write-down.ts";

/** How plants or a bed are, in the person's words. */
export function remark(ledger: Ledger, event: Event): void {
  const meant = plantingsMeant(ledger, event);
  const standing = meant.is === "nothing" ? standingPlanting(ledger, event) : undefined;
  const plantings = meant.is === "plantings" ? meant.plantings : standing === undefined ? [] : [standing];
  if (plantings.length > 0) {
    for (const [bed, growing] of byBed(plantings)) {
      const after = growing.map((one) => become(one, {}, event));
      addChange(ledger, event, {
        kind: "doing",
        bed,
        told: { is: "doing", plantings: after },
        effect: { plantings: after },
      });
    }
    return;
  }
  const beds = meant.is === "lots" ? meant.lots.flatMap(({ now }) => now.bed ?? []) : bedsMeant(ledger, event);
  for (const bed of new Set(beds)) {
    addChange(ledger, event, { kind: "doing", bed, told: { is: "doing", plantings: [] } });
  }
}

/** Jars, packets and bottles: told of the bed they came from, where one is known. What was picked was told by its picking. */
export function preserve(ledger: Ledger, event: Event): void {
  const told = { is: "preserved" } as const;
  for (const bed of bedsOfStores(ledger, event)) addChange(ledger, event, { kind: "preserved", bed, told });
}

function bedsOfStores(ledger: Ledger, event: Event): readonly string[] {
  const meant = bedsMeant(ledger, event);
  const ids = plantIds(ledger.records, event);
  if (event.bed !== undefined || (ids.variety === undefined && ids.crop === undefined)) return meant;
  const beds = [...new Set(livingNamed(ledger, ids).map(({ now }) => now.bed))];
  // A note about several beds says of none that the jars came from it.
  const among = beds.filter((bed) => meant.includes(bed));
  if (among.length > 0) return among;
  if (meant.length === 1) return meant;
  return beds.length === 1 ? beds : [];
}

/** A plan is no task: it has no day, is never overdue, and nothing counts it as done. */
export function plan(ledger: Ledger, event: Event): void {
  const what = event.what ?? event.detail ?? event.text;
  const beds = event.bed === undefined ? bedsConcerned(ledger, event) : [event.bed];
  const bed = beds.length === 1 ? beds[0] : undefined;
  const ids = plantIds(ledger.records, event);
  const planned: Plan = {
    id: event.id,
    what,
    reason: event.reason,
    bed,
    ...ids,
    said: event.day,
    private: event.private || isPrivate(ledger, { bed, variety: ids.variety }),
    place: event.place,
  };
  ledger.plans.push(planned);
  for (const one of beds) addChange(ledger, event, { kind: "plan", bed: one, told: { is: "planned", what } });
}
