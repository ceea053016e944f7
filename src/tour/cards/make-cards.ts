/** The one set of a tour: its cover, a card for each stop, and the brief as their dossier. */

import { makeWording } from "../../films/index.ts";
import { plainWords } from "../../language/index.ts";
import type { Garden } from "../../model.ts";
import type { BriefRequest } from "../brief.ts";
import type { OwedLine } from "../candidates/candidate.ts";
import { prepareBrief } from "../make-brief.ts";
import { photosByBed } from "../spot.ts";
import type { TourCards } from "./card.ts";
import { cardOf } from "./card-of-stop.ts";
import { coverOf } from "./cover.ts";

/** A thing promised in a note and again in the film of that week is said once. */
function withoutTwins(lines: readonly OwedLine[]): readonly OwedLine[] {
  return lines.filter(({ what }, at) => !lines.slice(0, at).some((other) => sameThing(what, other.what)));
}

function sameThing(one: string, other: string): boolean {
  const [a, b] = [one, other].map((what) => new Set(plainWords(what).trim().split(" ")));
  if (a === undefined || b === undefined) return false;
  const shared = [...a].filter((word) => b.has(word)).length;
  return shared / Math.min(a.size, b.size) > 0.7;
}

export function makeCards(garden: Garden, request: BriefRequest): TourCards {
  const { brief, planned, owed } = prepareBrief(garden, request);
  const photos = photosByBed(garden.photos);
  const wording = makeWording();
  const disclosed = new Set<string>();
  const cards = brief.stops.flatMap((stop, at) => {
    const there = planned[at];
    if (there === undefined) return [];
    const here = withoutTwins(owed.filter(({ keptAt, private: hidden }) => keptAt === stop.bed && !hidden));
    const site = stop.site === brief.stops[at - 1]?.site ? undefined : there.here.site;
    return [cardOf(there, stop, { wording, photos, owed: here, disclosed, site })];
  });
  return { cover: coverOf(brief, planned, cards, owed), cards, dossier: brief };
}
