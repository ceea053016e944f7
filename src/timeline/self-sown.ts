/** Plants that come by themselves: sown by nobody, or back after the winter. */
import type { Event } from "../model.ts";
import { begin, impliedPlanting } from "./begin-plantings.ts";
import { bedsMeant, type Growing, type Ledger, plantIds, plantKey } from "./ledger.ts";
import { become, byBed } from "./living-plantings.ts";
import { plantingsMeant } from "./plantings-meant.ts";
import { addChange, at, report } from "./write-down.ts";

/** A planting that begins by itself. Of one that nobody counted, a second line speaks again. */
export function volunteer(ledger: Ledger, event: Event): void {
  const ids = plantIds(ledger.records, event);
  if (ids.variety === undefined && ids.crop === undefined) return;
  const [bed, another] = bedsMeant(ledger, event);
  if (bed === undefined || another !== undefined) {
    report(ledger, {
      rule: "timeline/no-bed",
      ...at(event),
      plants: ids,
      doing: "came up",
      one: event.count?.value === 1,
    });
    return;
  }
  const here = [...(ledger.living.get(plantKey(ids)) ?? [])];
  const again = here.find(({ now }) => now.bed === bed && now.selfSown === true && now.count === undefined);
  const known = again !== undefined && (event.spot === undefined || event.spot === again.now.spot);
  const now = known
    ? become(again, { count: event.count }, event)
    : begin(ledger, event, { bed, ids, stage: "up", count: event.count, selfSown: true }).now;
  addChange(ledger, event, {
    kind: "up",
    bed,
    told: { is: "self-sown", plants: now },
    effect: { plantings: [now] },
  });
}

/** Plants that live again this season. How many are back is a count of plants that nobody had counted. */
export function comeBack(ledger: Ledger, event: Event): void {
  const meant = plantingsMeant(ledger, event);
  if (meant.is === "lots") return;
  const implied = meant.is === "nothing" ? impliedPlanting(ledger, event) : undefined;
  const back: readonly Growing[] = meant.is === "plantings" ? meant.plantings : implied === undefined ? [] : [implied];
  for (const [bed, growing] of byBed(back)) {
    for (const one of growing) if (one.now.since < ledger.season) one.cameBack = true;
    const after = growing.map((one) => become(one, countedNow(one, event), event));
    addChange(ledger, event, {
      kind: "came back",
      bed,
      told: { is: "came back", plantings: after },
      effect: { plantings: after },
    });
  }
}

/** A direct sowing's count is of seeds, and a count of plants stays what it was: what is missing may still come. */
function countedNow({ now }: Growing, { count }: Event) {
  return now.count === undefined && count !== undefined ? { count } : {};
}
