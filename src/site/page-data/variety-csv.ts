/** The variety list as CSV (RFC 4180, UTF-8 with a byte-order mark, so that spreadsheets read accents). */

import { stringify } from "csv-stringify/sync";
import { cropOf } from "../../crop-of.ts";
import { cropName, sayPicked } from "../../language/index.ts";
import type { Variety } from "../../model.ts";
import type { Harvests } from "./variety-pages.ts";
import { seasonYear, type View } from "./view.ts";

export function varietyCsv(view: View, harvests: Harvests): string {
  const { garden, links, today } = view;
  const { csv, source: said } = view.words.sentences;
  const cropWord = (of: Variety) => {
    const crop = cropOf(garden, of);
    return crop === undefined ? "" : cropName(crop, 1);
  };
  const origin = garden.settings.address ?? "";
  const rows = [...garden.varieties.values()]
    .sort((a, b) => view.compare(cropWord(a), cropWord(b)) || view.compare(a.title, b.title) || (a.id < b.id ? -1 : 1))
    .map((variety) => {
      const crop = cropOf(garden, variety);
      const now = (view.plantings.get(variety.id) ?? []).filter((planting) => planting.ended === undefined);
      const picked = harvests.get(variety.id)?.get(seasonYear(view, today));
      return [
        variety.title,
        cropWord(variety),
        crop?.family ?? "",
        variety.botanical ?? "",
        variety.sayAs ?? "",
        variety.source?.name ?? "",
        variety.source?.obtained === undefined ? "" : said.disclosures[variety.source.obtained].words,
        variety.source?.year ?? "",
        variety.source?.link ?? "",
        [...new Set(now.map((planting) => garden.beds.get(planting.bed)?.title ?? planting.bed))].join("; "),
        view.newVarieties.has(variety.id) ? csv.yes : "",
        picked === undefined ? "" : (sayPicked(picked, garden.settings) ?? ""),
        `${origin}${links.variety(variety.id)}`,
      ];
    });
  // Text that a spreadsheet would take for a formula is disarmed with an apostrophe.
  return stringify([csv.heads, ...rows], { bom: true, escape_formulas: true, record_delimiter: "windows" });
}
