/** A variety in photos: the spot where it grows, then and now, and the photos of its life with its age on each day. */

import { daysBetween } from "../../calendar.ts";
import { capital, fullStop } from "../../language/index.ts";
import type { Planting, Variety } from "../../model.ts";
import { comparisonOf, farthest } from "./comparison-book.ts";
import type { ShownPhoto } from "./pictures.ts";
import { sayAgeOf } from "./plant-ages.ts";
import type { AgedPicture, Comparison } from "./shapes.ts";
import type { View } from "./view.ts";

/** Photos on one page. */
const MOST = 12;

/** Days between two photos of its bed: enough for a difference to be seen. Photos of the variety itself are all shown. */
const APART = 12;

/** `plantings` oldest first. Photos of the variety itself, and of its beds while it grew there; newest first. */
export function varietyPhotos(
  view: View,
  variety: Variety,
  plantings: readonly Planting[],
  but: readonly ShownPhoto[],
): readonly AgedPicture[] {
  const found = new Map<string, { photo: ShownPhoto; age: string }>();
  const add = (photo: ShownPhoto) => {
    const planting = plantings.findLast(
      (one) => (photo.bed === undefined || one.bed === photo.bed) && livedOn(one, photo.day),
    );
    const age = planting === undefined ? "" : fullStop(capital(sayAgeOf(view.garden, planting, photo.day)));
    if (!but.includes(photo)) found.set(photo.path, { photo, age });
  };
  for (const photo of view.book.byVariety.get(variety.id) ?? []) add(photo);
  for (const bed of new Set(plantings.map((planting) => planting.bed))) {
    let last: string | undefined;
    for (const photo of view.book.byBed.get(bed) ?? []) {
      if (photo.varieties.length > 0 || !plantings.some((one) => one.bed === bed && livedOn(one, photo.day))) continue;
      if (last !== undefined && daysBetween(photo.day, last) < APART) continue;
      last = photo.day;
      add(photo);
    }
  }
  return [...found.values()]
    .sort((a, b) =>
      a.photo.day < b.photo.day ? 1 : a.photo.day > b.photo.day ? -1 : a.photo.path < b.photo.path ? -1 : 1,
    )
    .slice(0, MOST)
    .map(({ photo, age }) => ({ picture: view.book.picture(photo), age, others: view.book.others(photo) }));
}

/**
 * The newest photo of a bed where the variety can be found in it: it grew there alone, or its notes say at which spot, which
 * then stands below the photo.
 */
export function viewOfBed(
  view: View,
  plantings: readonly Planting[],
  within: { readonly from: string; readonly to: string } = { from: "", to: view.today },
): { readonly photo: ShownPhoto; readonly caption?: string | undefined } | undefined {
  // Of what stands without a variety's name only today's state tells.
  const nameless = [...view.states.values()].flatMap((state) =>
    state.plantings.filter((one) => one.variety === undefined),
  );
  const all = [...view.plantings.values(), nameless].flat();
  for (const planting of plantings) {
    const photo = view.book.byBed
      .get(planting.bed)
      ?.find(
        ({ varieties, day }) =>
          varieties.length === 0 && livedOn(planting, day) && day >= within.from && day <= within.to,
      );
    if (photo === undefined) continue;
    const isAlone = all.every(
      ({ bed, variety, ...one }) =>
        bed !== planting.bed || variety === planting.variety || !livedOn({ ...one, bed }, photo.day),
    );
    if (isAlone) return { photo };
    if (planting.spot !== undefined)
      return {
        photo,
        caption: [photo.caption, view.words.sentences.photo.look(planting.spot)].filter(Boolean).join(" "),
      };
  }
  return undefined;
}

/** Its newest lot that was photographed from one spot for long enough. */
export function varietyComparison(view: View, plantings: readonly Planting[]): Comparison | undefined {
  const { garden, links, comparisons } = view;
  for (const planting of plantings.toReversed()) {
    for (const spot of comparisons.byBed.get(planting.bed) ?? []) {
      const frames = spot.frames.filter(({ photo }) => livedOn(planting, photo.day));
      const comparison = comparisonOf(garden, comparisons, links, { ...spot, frames }, farthest({ frames }));
      if (comparison !== undefined) return comparison;
    }
  }
  return undefined;
}

function livedOn(planting: Planting, day: string): boolean {
  return planting.since <= day && (planting.ended === undefined || planting.ended >= day);
}
