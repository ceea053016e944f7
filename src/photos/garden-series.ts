/** A garden's growth as series: cover of each viewpoint from its photos, height of each planting from notes and photos. */
import type { Garden, GrowthPoint, GrowthSeries, Planting } from "../model.ts";
import { growthSeries } from "./growth-series.ts";

/** One series per viewpoint of which some photo could be measured, by bed and name. */
export function coverSeries(garden: Garden): readonly GrowthSeries[] {
  const measured = Map.groupBy(garden.growth?.photos ?? [], ({ bed, viewpoint }) => `${bed}\n${viewpoint}`);
  return [...measured.values()].flatMap((photos) => {
    const points = photos.flatMap(({ day, cover, photo }): GrowthPoint[] =>
      cover === undefined ? [] : [{ day, value: cover, origin: "photo", source: photo }],
    );
    const [first] = photos;
    if (points.length === 0 || first === undefined) return [];
    return [growthSeries({ what: "cover", bed: first.bed, viewpoint: first.viewpoint }, points)];
  });
}

/** One series per planting that was measured, by bed and then by planting. */
export function heightSeries(garden: Garden): readonly GrowthSeries[] {
  const events = new Map(garden.events.map((event) => [event.id, event]));
  const found = new Map<string, { bed: string; points: GrowthPoint[] }>();
  const add = (bed: string, planting: string, point: GrowthPoint) => {
    const known = found.get(planting) ?? { bed, points: [] };
    known.points.push(point);
    found.set(planting, known);
  };
  const lives = new Map<string, Planting>();
  for (const [bed, changes] of garden.changes) {
    for (const { kind, event, day, effect } of changes) {
      for (const planting of effect.plantings ?? []) lives.set(planting.id, planting);
      const heightCm = kind === "grew" && event !== undefined ? events.get(event)?.heightCm : undefined;
      if (heightCm === undefined || event === undefined) continue;
      for (const planting of effect.plantings ?? [])
        add(bed, planting.id, { day, value: heightCm, origin: "note", source: event });
    }
  }
  for (const { photo, bed, day, heights } of garden.growth?.photos ?? []) {
    for (const { variety, heightCm, uncertaintyCm } of heights) {
      // Of two sowings the older one stands up to the stake.
      const planting = [...lives.values()].find(
        (one) => one.bed === bed && one.variety === variety && one.since <= day && (one.ended ?? "9999") >= day,
      );
      if (planting)
        add(bed, planting.id, { day, value: heightCm, uncertainty: uncertaintyCm, origin: "photo", source: photo });
    }
  }
  return [...found]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([planting, { bed, points }]) => growthSeries({ what: "height", bed, planting }, points));
}
