/** The threads of a year as a page tells them. */
import type { Season } from "../../garden/index.ts";
import { fullStop } from "../../language/index.ts";
import type { ThreadCard } from "../../season/index.ts";
import { unbroken } from "../unbroken.ts";
import type { RecapThread } from "./recap-shapes.ts";
import type { Picture } from "./shapes.ts";
import { viewOfBed } from "./variety-photos.ts";
import type { View } from "./view.ts";

/** As it is spoken, each phrase a sentence; what must be said aloud stands with it. */
export function threadOf(card: ThreadCard, view: View, season: Season): RecapThread {
  const bed = view.garden.beds.get(card.bed ?? "");
  const parts = [card.before, ...card.now, card.figure, card.why, card.next, ...card.aloud];
  return {
    id: card.id.toLowerCase(),
    title: card.title,
    opening: unbroken(card.opening.text),
    lines: parts.flatMap((one) => (one === undefined ? [] : [unbroken(fullStop(one.text))])),
    bed: bed === undefined ? undefined : { href: view.links.bed(bed.id), text: bed.title },
    pictures: picturesOfThread(card, view, season),
  };
}

/** Its own photos, else the newest of that season that shows its variety alone, else of a bed where it is told from the others. */
function picturesOfThread({ photos, variety = "" }: ThreadCard, view: View, { from, to }: Season): readonly Picture[] {
  const { book } = view;
  const own = photos.flatMap(({ path }) => book.all.find((one) => one.path === path) ?? []);
  const alone = (book.byVariety.get(variety) ?? []).filter(
    ({ day, varieties }) => varieties.length === 1 && day >= from && day <= to,
  );
  const shown = own.length > 0 ? own : alone.slice(0, 1);
  if (shown.length > 0) return shown.map((photo) => book.picture(photo));
  const found = viewOfBed(view, (view.plantings.get(variety) ?? []).toReversed(), { from, to });
  return found === undefined ? [] : [{ ...book.picture(found.photo), caption: found.caption ?? found.photo.caption }];
}
