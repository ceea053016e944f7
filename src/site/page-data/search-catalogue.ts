/** What the search knows by name: varieties with every way they are written or said, beds, films, and the words for crops. */
import { cropOf } from "../../crop-of.ts";
import { plain } from "../components/search/close-names.ts";
import type { Catalogue, Thing } from "../components/search/find-things.ts";
import { sayGrowing } from "./bed-pages.ts";
import { episodeCard } from "./episode-pages.ts";
import type { SmallPlates } from "./small-plates.ts";
import { saySource } from "./sources.ts";
import { bedsInOrder, episodesInOrder, type View } from "./view.ts";

export function searchCatalogue(view: View, plates: SmallPlates): string {
  const { garden, links, words } = view;
  const crops = [...new Set([...garden.varieties.values()].flatMap((variety) => cropOf(garden, variety) ?? []))];
  const varieties = [...garden.varieties.values()]
    .sort((a, b) => view.compare(a.title, b.title) || (a.id < b.id ? -1 : 1))
    .flatMap((variety): readonly Thing[] => {
      const plate = plates.get(variety.id);
      const crop = cropOf(garden, variety);
      if (plate === undefined) return [];
      return [
        {
          kind: "variety",
          name: plate.name,
          href: plate.href,
          also: [...variety.alsoSpelled, ...(plate.sayAs === undefined ? [] : [plate.sayAs])],
          crop: crop && crops.indexOf(crop),
          of: plate.crop,
          say: plate.sayAs,
          from: variety.source && saySource(words, variety.source),
          says: plate.says,
          thumb: plate.thumb?.src,
        },
      ];
    });
  const beds = bedsInOrder(view).map(
    (bed): Thing => ({
      kind: "bed",
      name: bed.title,
      href: links.bed(bed.id),
      also: [],
      says: sayGrowing(view, bed),
      thumb: thumbOf(view, bed.id),
    }),
  );
  const films = episodesInOrder(garden).map((episode): Thing => {
    const { href, title, text } = episodeCard(view, episode);
    return { kind: "film", name: title, href, also: [], says: text };
  });
  const catalogue: Catalogue = {
    things: [...varieties, ...beds, ...films],
    crops: crops.map(({ name, plural, alsoCalled }) => [...new Set([name, plural, ...alsoCalled].map(plain))]),
  };
  return `${JSON.stringify(catalogue)}\n`;
}

function thumbOf({ book }: View, bed: string): string | undefined {
  const newest = book.byBed.get(bed)?.[0];
  return newest && book.thumb(newest).src;
}
