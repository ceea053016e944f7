/** The variety list as data for people's own programs; docs/variety-list.md says what each key means. */
import { cropOf } from "../../crop-of.ts";
import { cropName } from "../../language/index.ts";
import { webAddress } from "./sources.ts";
import type { Harvests } from "./variety-pages.ts";
import { seasonYear, type View } from "./view.ts";

export function varietyJson(view: View, harvests: Harvests): string {
  const { garden, links, today } = view;
  const varieties = [...garden.varieties.values()]
    .sort(
      (a, b) =>
        view.compare(cropOf(garden, a)?.name ?? "", cropOf(garden, b)?.name ?? "") ||
        view.compare(a.title, b.title) ||
        (a.id < b.id ? -1 : 1),
    )
    .map((variety) => {
      const crop = cropOf(garden, variety);
      const now = (view.plantings.get(variety.id) ?? []).filter((planting) => planting.ended === undefined);
      const picked = harvests.get(variety.id)?.get(seasonYear(view, today));
      const { source } = variety;
      return {
        id: variety.id,
        variety: variety.title,
        crop: crop && cropName(crop, 1),
        family: crop?.family || undefined,
        botanicalName: variety.botanical,
        sayAs: variety.sayAs,
        alsoSpelled: variety.alsoSpelled,
        source: source && {
          name: source.name,
          obtained: source.obtained,
          year: source.year,
          link: webAddress(source.link),
        },
        bedsNow: [...new Set(now.map((planting) => garden.beds.get(planting.bed)?.title ?? planting.bed))],
        newThisYear: view.newVarieties.has(variety.id),
        pickedThisYear: picked && {
          grams: picked.grams,
          litres: picked.litres,
          pieces: picked.counts,
          times: picked.times,
        },
        page: `${garden.settings.address ?? ""}${links.variety(variety.id)}`,
      };
    });
  const list = { plotreel: "variety list", version: 1, garden: garden.settings.name, day: today, varieties };
  return `${JSON.stringify(list, null, 2)}\n`;
}
