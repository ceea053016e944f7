/** A film's walk over a site: its beds with the numbers of the stops, and the way from one to the next. */
import type { PlanPoint } from "../../../model.ts";
import type { NumberedSite } from "../bed-pages.ts";
import { boxOf, layOut, type PlacedBed } from "../plan.ts";
import type { PlanDrawing } from "../shapes.ts";
import type { View } from "../view.ts";
import type { WalkStop } from "./walk-shapes.ts";

/** Of sites with two stops or more that tell where they lie. `beds` are those of the stops, in the order of the film. */
export function walkPlans(
  { words }: View,
  sites: readonly NumberedSite[],
  beds: readonly string[],
  stops: readonly WalkStop[],
): readonly PlanDrawing[] {
  const numbered = stops.map(({ number, anchor }, index) => ({ number, anchor, bed: beds[index] }));
  return sites.flatMap((site) => {
    const layout = layOut(site.beds, site.gates);
    if (layout === undefined) return [];
    const { placed, point, partOf, width, height, letters } = layout;
    const stopsAt = ({ bed }: PlacedBed) => numbered.filter((stop) => stop.bed === bed.id);
    const way = numbered.flatMap(({ number, bed: id }) => {
      const box = placed.find(({ bed }) => bed.id === id);
      return box === undefined ? [] : [{ number, box }];
    });
    if (new Set(way.map(({ box }) => box)).size < 2) return [];
    return [
      {
        site: site.name,
        told: words.walk.plan(
          site.name,
          way.map(({ number, box }) => ({ number, bed: box.bed.title, part: partOf(box) })),
        ),
        width,
        height,
        letters,
        beds: placed.map((one) => {
          const here = stopsAt(one);
          return boxOf(layout, one, {
            hrefOf: here[0] === undefined ? undefined : () => `#${here[0]?.anchor}`,
            mark: here.map(({ number }) => number).join(", "),
          });
        }),
        gates: site.gates.map(point),
        route: [...entrance(site.gates, way[0]?.box), ...way.map(({ box }) => middleOf(box))].map(point),
      },
    ];
  });
}

function middleOf({ left, south, width, height }: PlacedBed): PlanPoint {
  return { x: (left + width / 2) / 100, y: (south + height / 2) / 100 };
}

/** The gate nearest to the first stop. */
function entrance(gates: readonly PlanPoint[], first: PlacedBed | undefined): readonly PlanPoint[] {
  if (first === undefined) return [];
  const bed = middleOf(first);
  const away = (gate: PlanPoint) => Math.hypot(gate.x - bed.x, gate.y - bed.y);
  return gates.toSorted((a, b) => away(a) - away(b)).slice(0, 1);
}
