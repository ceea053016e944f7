/** The variety list as CSV (RFC 4180, UTF-8 with a byte-order mark, so that spreadsheets read accents). */
import { stringify } from "csv-stringify/sync";
import { yearOf } from "../../calendar.ts";
import { sayPicked } from "./planting-words.ts";
import type { Harvests } from "./variety-pages.ts";
import { cropOf, type View } from "./view.ts";

const COLUMNS = [
  "variety",
  "crop",
  "family",
  "botanical name",
  "say it as",
  "source",
  "how obtained",
  "source year",
  "link",
  "beds now",
  "new this year",
  "picked this year",
  "page",
];

export function varietyCsv(view: View, harvests: Harvests): string {
  const { garden, links, today } = view;
  const origin = garden.settings.address ?? "";
  const rows = [...garden.varieties.values()]
    .sort(
      (a, b) =>
        view.compare(cropOf(garden, a)?.name ?? "", cropOf(garden, b)?.name ?? "") ||
        view.compare(a.title, b.title) ||
        (a.id < b.id ? -1 : 1),
    )
    .map((variety) => {
      const crop = cropOf(garden, variety);
      const now = (view.plantings.get(variety.id) ?? []).filter((planting) => planting.ended === undefined);
      const picked = harvests.get(variety.id)?.get(yearOf(today));
      return [
        variety.title,
        crop?.name ?? "",
        crop?.family ?? "",
        variety.botanical ?? "",
        variety.sayAs ?? "",
        variety.source?.name ?? "",
        variety.source?.obtained ?? "",
        variety.source?.year ?? "",
        variety.source?.link ?? "",
        [...new Set(now.map((planting) => garden.beds.get(planting.bed)?.title ?? planting.bed))].join("; "),
        view.newVarieties.has(variety.id) ? "yes" : "",
        picked === undefined ? "" : sayPicked(picked, garden.settings.units),
        `${origin}${links.variety(variety.id)}`,
      ];
    });
  // Text that a spreadsheet would take for a formula is disarmed with an apostrophe.
  return stringify([COLUMNS, ...rows], { bom: true, escape_formulas: true, record_delimiter: "windows" });
}
