/** The camera page of every viewpoint: where to stand, and the photo to match. */

import { daysBetween } from "../../calendar.ts";
import { capital, fullStop } from "../../language/index.ts";
import type { Bed } from "../../model.ts";
import { viewpointFileName } from "../../photos/index.ts";
import type { ShownPhoto } from "./pictures.ts";
import type { Link, ViewpointPage } from "./shapes.ts";
import { bedsInOrder, type View } from "./view.ts";

/** In the beds' order; viewpoints that only photos know come after those that the bed describes. */
export function viewpointPages(view: View, isPrivate: (bed: Bed) => boolean): readonly ViewpointPage[] {
  return bedsInOrder(view).flatMap((bed) =>
    viewpointsOf(view, bed).map((one) => ({ ...one, isPrivate: isPrivate(bed) })),
  );
}

/** A bed's viewpoints without what only the whole site knows. */
export function viewpointsOf(view: View, bed: Bed): readonly Omit<ViewpointPage, "isPrivate">[] {
  const photos = view.book.byBed.get(bed.id) ?? [];
  const named = bed.viewpoints.map(({ name }) => name);
  const found = photos.flatMap(({ viewpoint }) => (viewpoint === undefined ? [] : [viewpoint]));
  const link: Link = { href: view.links.bed(bed.id), text: bed.title };
  return [...new Set([...named, ...found])].filter(isFolderName).map((name) => {
    const last = photos.find((photo) => photo.viewpoint === name);
    const spot = bed.viewpoints.find((one) => one.name === name)?.spot;
    return {
      bedId: bed.id,
      name,
      href: view.links.viewpoint(bed.id, name),
      bed: link,
      title: capital(name.replaceAll("-", " ")),
      text: [spot === undefined ? undefined : fullStop(capital(spot)), sayGap(view, last)]
        .filter((part) => part !== undefined)
        .join(" "),
      last:
        last === undefined
          ? undefined
          : { picture: view.book.picture(last), src: view.links.viewpointPhoto(bed.id, name), path: last.path },
      fileName: viewpointFileName(bed.id, name, "{day}", "{time}"),
    };
  });
}

/** What cannot name a folder on every disk has no photos and can have no address. */
function isFolderName(name: string): boolean {
  return /^[^/\\\p{Cc}\p{Cf}]{1,100}$/u.test(name) && !/^\.+$/u.test(name);
}

function sayGap(view: View, last: ShownPhoto | undefined): string {
  const { field } = view.words;
  if (last === undefined) return field.noPhotoYet;
  return last.day === view.today ? field.photoToday : field.lastPhotoAgo(daysBetween(last.day, view.today));
}
