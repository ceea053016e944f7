/** The one set of a tour: its cover, a card for each stop, and the brief as their dossier. */
import type { Garden } from "../../model.ts";
import type { BriefRequest } from "../brief.ts";
import { prepareBrief } from "../make-brief.ts";
import { photosByBed } from "../spot.ts";
import type { CardSet } from "./card.ts";
import { cardOf } from "./card-of-stop.ts";
import { coverOf } from "./cover.ts";
import { makeWording } from "./wording.ts";

export function makeCards(garden: Garden, request: BriefRequest): CardSet {
  const { brief, planned, owed } = prepareBrief(garden, request);
  const photos = photosByBed(garden.photos);
  const wording = makeWording();
  const disclosed = new Set<string>();
  const cards = brief.stops.flatMap((stop, at) => {
    const there = planned[at];
    if (there === undefined) return [];
    const here = owed.filter(({ keptAt, private: hidden }) => keptAt === stop.bed && !hidden);
    const site = stop.site === brief.stops[at - 1]?.site ? undefined : there.here.site;
    return [cardOf(there, stop, { wording, photos, owed: here, disclosed, site })];
  });
  return { cover: coverOf(brief, planned, cards, owed), cards, dossier: brief };
}
