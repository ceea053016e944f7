/** Trees, shrubs and other plants that stand for years, of which nobody ever wrote that they were planted: tending shows that they stand. */
import type { Event } from "../model.ts";
import { impliedPlanting, standsElsewhere } from "./begin-plantings.ts";
import { bedsMeant, type Growing, isPerennial, type Ledger, plantIds } from "./ledger.ts";

/** What is done to plants that stand there; "dug a hole for the fig" is done for one that does not yet. */
const tending =
  /\b(?:prun|water|feed|fed\b|mulch|net(?:s|ted|ting)?\b|tied|tying|stak|trim|clip|shap|spray|weed|dead-?head|top-?dress|wrap|fleec|cut back|thinn|train|graft|summer-prun|hard-prun|limed|scrap|wash|hand-pollinat|pollinat|check)/i;
const notYet = /\b(?:for|before|ready|where|hole|site|order|will|going to)\b/i;

/** Plants that beds are fed, mulched and staked with: that they are named tells of no plant that stands there. */
const alsoMaterial: ReadonlySet<string> = new Set(["comfrey", "nettle", "lucerne", "bamboo", "hazel", "willow"]);

export function isTending({ what = "" }: Event): boolean {
  return tending.test(what) && !notYet.test(what);
}

/** Undefined where it is not known to last, or nobody can tell in which bed it stands. */
export function standingPlanting(ledger: Ledger, event: Event): Growing | undefined {
  const ids = plantIds(ledger.records, event);
  if (alsoMaterial.has(ids.crop ?? "")) return undefined;
  if ((ids.variety === undefined && ids.crop === undefined) || isPerennial(ledger, ids) !== true) return undefined;
  const [bed, another] = bedsMeant(ledger, event);
  if (bed === undefined || another !== undefined || standsElsewhere(ledger, event, ids, bed)) return undefined;
  return impliedPlanting(ledger, event);
}
