/** Plants and produce that leave the garden: given away or sold. */
import type { Event, Planting } from "../model.ts";
import { isNone, less } from "./counts.ts";
import { habitOf } from "./crop-habits.ts";
import { endIfAlive, reportNothing, takeable, takeFromNursery } from "./leaving.ts";
import { bedsMeant, cropOf, type Growing, type Ledger, plantIds } from "./ledger.ts";
import { become, byBed } from "./living-plantings.ts";
import { isProduce, plantingsMeant } from "./plantings-meant.ts";
import { addChange, type ChangeFacts } from "./write-down.ts";

interface Parting {
  readonly kind: ChangeFacts["kind"];
  readonly doing: "given away" | "sold";
}

const gift: Parting = { kind: "did", doing: "given away" };
const sale: Parting = { kind: "sold", doing: "sold" };

export function giveAway(ledger: Ledger, event: Event): void {
  part(ledger, event, gift);
}

export function sell(ledger: Ledger, event: Event): void {
  part(ledger, event, sale);
}

function part(ledger: Ledger, event: Event, parting: Parting): void {
  if (isProduce(event)) {
    partWithProduce(ledger, event, parting);
    return;
  }
  const meant = plantingsMeant(ledger, event);
  if (meant.is === "lots") {
    takeFromNursery(ledger, event, meant.lots, parting.doing);
    tellOfBed(ledger, event, parting, [...new Set(meant.lots.flatMap(({ now }) => now.bed ?? []))]);
    return;
  }
  if (meant.is === "nothing") {
    if (event.variety !== undefined || event.crop !== undefined) reportNothing(ledger, event, parting.doing);
    tellOfBed(ledger, event, parting, bedsMeant(ledger, event));
    return;
  }
  for (const growing of meant.plantings) partWithPlants(ledger, event, growing, parting);
}

function partWithPlants(ledger: Ledger, event: Event, growing: Growing, { kind, doing }: Parting): void {
  const { bed, givenAway } = growing.now;
  const gone =
    event.count === undefined || bears(ledger, growing.now)
      ? 0
      : takeable(ledger, event, growing, event.count.value, doing);
  const patch = {
    givenAway: givenAway + gone,
    count: gone === 0 ? growing.now.count : less(growing.now.count, gone),
  };
  const told = { is: "given away", plants: growing.now, doing } as const;
  const effect =
    gone > 0 && isNone(patch.count)
      ? endIfAlive(ledger, growing, event, "finished", patch)
      : { plantings: [become(growing, patch, event)] };
  addChange(ledger, event, { kind, bed, told, effect });
}

/** Produce leaves the plants as they are, though they may have ended since; bed by bed it is told once. */
function partWithProduce(ledger: Ledger, event: Event, parting: Parting): void {
  const meant = plantingsMeant(ledger, event);
  if (meant.is !== "plantings") {
    tellOfBed(ledger, event, parting, bedsMeant(ledger, event));
    return;
  }
  for (const [bed, growing] of byBed(meant.plantings)) {
    const after = growing.map((one) => become(one, {}, event));
    const plants = after[0] ?? plantIds(ledger.records, event);
    const told = { is: "given away", plants, doing: parting.doing } as const;
    addChange(ledger, event, { kind: parting.kind, bed, told, effect: { plantings: after } });
  }
}

function tellOfBed(ledger: Ledger, event: Event, { kind, doing }: Parting, beds: readonly string[]): void {
  const told = { is: "given away", plants: plantIds(ledger.records, event), doing } as const;
  for (const bed of beds) addChange(ledger, event, { kind, bed, told });
}

/** From plants in fruit, "gave away 4 courgettes" speaks of courgettes, unless picking one takes the plant. */
function bears(ledger: Ledger, planting: Planting): boolean {
  const { stage } = planting;
  return (
    (stage === "fruiting" || stage === "picking" || stage === "finished") &&
    habitOf(cropOf(ledger, planting)).takenWhole === undefined
  );
}
