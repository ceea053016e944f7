/** What a plant of each variety gave, season by season. */
import { noWeather } from "../almanac/index.ts";
import type { Day, Garden } from "../model.ts";
import { type PerPlant, perPlant } from "./results.ts";
import { seasonBook } from "./season-book.ts";

/** By variety id, then the year in which the season begins; only what `perPlant` can tell. */
export function plantYields(garden: Garden, until: Day): ReadonlyMap<string, ReadonlyMap<number, PerPlant>> {
  const byVariety = Map.groupBy(seasonBook(garden, noWeather, until).lots, ({ planting }) => planting.variety ?? "");
  return new Map(
    [...byVariety].map(([variety, lots]) => {
      const bySeason = Map.groupBy(lots, ({ season }) => season);
      return [variety, new Map([...bySeason].flatMap(([year, own]) => told(year, perPlant(own))))] as const;
    }),
  );
}

function told(year: number, yielded: PerPlant | undefined): readonly (readonly [number, PerPlant])[] {
  return yielded === undefined ? [] : [[year, yielded]];
}
