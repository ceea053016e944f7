/** How a bed came on: sliders, a strip of weeks and charts, spot by spot. */
import { cropOf } from "../../crop-of.ts";
import { varietyName } from "../../language/index.ts";
import type { Bed, Planting } from "../../model.ts";
import { comparisonOf } from "./comparison-book.ts";
import { coverChart, heightChart } from "./growth-of-bed.ts";
import { lapseOf } from "./lapse.ts";
import type { BedGrowth, GrowthChart } from "./shapes.ts";
import type { MeasuredPlanting, View } from "./view.ts";
import { weekStrip } from "./week-strip.ts";

export function bedGrowth(view: View, bed: Bed): BedGrowth {
  const { garden, links, comparisons } = view;
  const spots = comparisons.byBed.get(bed.id) ?? [];
  const sliders = spots.flatMap((spot) => comparisonOf(garden, comparisons, links, spot) ?? []);
  return {
    comparisons: sliders,
    lapses: spots.flatMap((spot) => lapseOf(view, spot) ?? []),
    strips: spots.flatMap((spot) => weekStrip(view, spot) ?? []),
    charts: chartsOf(view, bed),
    thenAndNow:
      sliders.length === 0
        ? undefined
        : { href: links.thenAndNow(bed.id), text: view.words.bed.thenAndNowOf(bed.title) },
  };
}

function chartsOf(view: View, bed: Bed): readonly GrowthChart[] {
  const { garden } = view;
  const own = view.covers.filter((series) => series.bed === bed.id);
  const covers = own.flatMap((series) => {
    const of = garden.growth?.photos.findLast(
      (photo) => photo.bed === bed.id && photo.viewpoint === series.viewpoint,
    )?.coverOf;
    const spot = own.length > 1 ? (series.viewpoint ?? "").replaceAll("-", " ") : undefined;
    const title = view.words.sentences.green.title(bed.title, of ?? "bed", spot);
    return coverChart(view, series, of ?? "photo", title) ?? [];
  });
  return [...covers, ...heightsIn(view, view.heights.byBed.get(bed.id))];
}

/** Heights of some plantings in one chart. */
export function heightsIn(view: View, heights: readonly MeasuredPlanting[] = []): readonly GrowthChart[] {
  const measured = heights.map((one) => ({ ...one, name: nameOf(view, one.planting) }));
  const names = measured.map(({ name }) => name);
  const chart = heightChart(
    view,
    measured.map((one) =>
      names.filter((name) => name === one.name).length > 1
        ? { ...one, name: `${one.name}, ${begun(view, one.planting)}` }
        : one,
    ),
  );
  return chart === undefined ? [] : [chart];
}

/** "sown 28 March", where two lots of one variety stand in one chart. */
function begun({ locale, today, words }: View, { planted, sown, since }: Planting): string {
  const { heights } = words.sentences;
  if (planted !== undefined) return heights.planted(locale.day(planted, today));
  return sown === undefined ? heights.noted(locale.day(since, today)) : heights.sown(locale.day(sown, today));
}

function nameOf({ garden }: View, planting: Planting): string {
  const variety = garden.varieties.get(planting.variety ?? "");
  return variety?.title ?? varietyName(variety, cropOf(garden, planting));
}
