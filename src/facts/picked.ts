/** What plantings gave, of the pickings that are credited to them. */
import { bookOf } from "../garden/index.ts";
import type { Day, Garden, Picked, Planting } from "../model.ts";
import { pickedInAll } from "../picked.ts";
import type { Fact } from "./fact.ts";

/** After one day, up to and with another. */
export function pickedOf(
  garden: Garden,
  plantings: readonly Pick<Planting, "id">[],
  { after, to }: { readonly after: Day; readonly to: Day },
): Fact<Picked> {
  const { pickingsOf } = bookOf(garden);
  const pickings = plantings.flatMap((planting) => pickingsOf(planting).filter(({ day }) => day > after && day <= to));
  return {
    value: pickedInAll(pickings),
    sources: pickings.map(({ note }) => note),
    private: pickings.some((picking) => picking.private),
    day: to,
  };
}
