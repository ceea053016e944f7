/** Gear of a bed as its stop lists it. */
import type { Gear } from "../model.ts";
import type { GearRow } from "./brief.ts";

export function gearRow(gear: Gear): GearRow {
  return {
    gear: gear.id,
    title: gear.title,
    obtained: gear.obtained,
    from: gear.from,
    link: gear.link,
    sources: gear.place === undefined ? [] : [gear.place],
  };
}
