/** What the person wrote behind `must`, `keep` and `skip` in the episode's record: beds, and things by any of their names. */
import type { Bed, Episode, Garden } from "../model.ts";
import { bedNamed } from "./stop-order.ts";

export interface Wishes {
  /** Bed ids that stay in the tour, and those left out of it. A bed in both is left out. */
  readonly keptBeds: ReadonlySet<string>;
  readonly skippedBeds: ReadonlySet<string>;
  /** Names of things, as written. */
  readonly must: readonly string[];
  readonly keep: readonly string[];
  readonly skip: readonly string[];
  /** Names that are both wanted and skipped. */
  readonly contradictions: readonly string[];
}

export function wishesOf(garden: Garden, episode: Episode | undefined): Wishes {
  const { must = [], keep = [], skip = [] } = episode ?? {};
  const beds = (names: readonly string[]): readonly Bed[] => names.flatMap((name) => bedNamed(garden, name) ?? []);
  const things = (names: readonly string[]) => names.filter((name) => bedNamed(garden, name) === undefined);
  const same = (a: string, b: string) => {
    const [bedA, bedB] = [bedNamed(garden, a), bedNamed(garden, b)];
    return a.trim().toLowerCase() === b.trim().toLowerCase() || (bedA !== undefined && bedA === bedB);
  };
  return {
    keptBeds: new Set(beds([...must, ...keep]).map(({ id }) => id)),
    skippedBeds: new Set(beds(skip).map(({ id }) => id)),
    must: things(must),
    keep: things(keep),
    skip: things(skip),
    contradictions: [...new Set([...must, ...keep])].filter((name) => skip.some((other) => same(name, other))),
  };
}
