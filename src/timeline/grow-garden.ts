/** From records to the one model that pages and commands share. */
import type { Garden, Photo, Records } from "../model.ts";

export function growGarden(records: Records, photos: readonly Photo[]): Garden {
  return { ...records, photos, changes: new Map(), nurseryLots: [], followUps: [], tasks: [] };
}
