/** Photos of which nobody knows yet what they are of: no variety, no spot of a bed, no caption. */
import { bookOf } from "../../garden/index.ts";
import type { Day } from "../../model.ts";
import { sidecarFile } from "../../records/index.ts";
import { living } from "../../timeline/index.ts";
import type { ShownPhoto } from "./pictures.ts";
import type { NamingPage } from "./shapes.ts";
import type { View } from "./view.ts";

/** Photos on the page, the newest; the rest come when these are named. */
const SHOWN = 30;

/** Names to tap: what fits under a photo on a phone without a search. */
const CHOICES = 8;

/** The title, where that leads to this variety alone; else the name of its file. */
type NameOf = (id: string) => string;

/** `stateOf` says what stands beside a photo while somebody can write there; without it the page only shows. */
export function namingPage(view: View, stateOf: ((photo: string) => string) | undefined): NamingPage {
  const { garden, book, words } = view;
  const unnamed = book.all.filter(isUnnamed);
  // Once, and not for each variety: the names of a whole garden are many.
  const known = view.names();
  const nameOf: NameOf = (id) => {
    const title = garden.varieties.get(id)?.title ?? id;
    return known.find("variety", title) === id ? title : id;
  };
  const names = new Set([...garden.varieties.keys()].map(nameOf));
  return {
    byTap: stateOf !== undefined,
    summary: words.naming.summary(unnamed.length),
    photos: unnamed.slice(0, SHOWN).map((photo) => ({
      path: photo.path,
      picture: book.picture(photo),
      title: words.naming.photoOf(view.locale.day(photo.day), garden.beds.get(photo.bed ?? "")?.title),
      file: garden.photoSidecars.get(photo.path)?.place?.file ?? sidecarFile(photo.path),
      state: stateOf?.(photo.path) ?? "",
      choices: choicesOf(view, photo, nameOf).slice(0, CHOICES),
    })),
    more: unnamed.length > SHOWN ? words.naming.more(unnamed.length - SHOWN) : "",
    names: [...names, ...[...garden.beds.values()].map(({ title }) => title)].sort(view.compare),
  };
}

/** Of the moments that pages show; one that stands for a burst speaks for all of it. */
function isUnnamed({ varieties, viewpoint, caption }: ShownPhoto): boolean {
  return varieties.length === 0 && viewpoint === undefined && caption === undefined;
}

/** What grew in the bed on that day; of a photo at no bed, what the notes of that day speak of. */
function choicesOf(view: View, { bed, day }: ShownPhoto, nameOf: NameOf): readonly string[] {
  const ids = bed === undefined ? notedOn(view, day) : growingIn(view, bed, day);
  return [...new Set(ids.flatMap((id) => (id === undefined ? [] : [nameOf(id)])))].sort(view.compare);
}

function growingIn({ garden }: View, bed: string, day: Day): readonly (string | undefined)[] {
  return garden.beds.has(bed) ? living(bookOf(garden).stateOf(bed, day)).map(({ variety }) => variety) : [];
}

function notedOn({ garden }: View, day: Day): readonly (string | undefined)[] {
  return garden.events.filter((event) => event.day === day).map(({ variety }) => variety);
}
