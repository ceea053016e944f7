/** What pickings are counted in, one and several. */
import type { PickUnit } from "../model.ts";

export const pieceWords: Readonly<Record<PickUnit, readonly [one: string, many: string]>> = {
  stem: ["stem", "stems"],
  bunch: ["bunch", "bunches"],
  head: ["head", "heads"],
  fruit: ["fruit", "fruits"],
  pod: ["pod", "pods"],
  punnet: ["punnet", "punnets"],
  crate: ["crate", "crates"],
  root: ["root", "roots"],
  bulb: ["bulb", "bulbs"],
  ear: ["ear", "ears"],
  handful: ["handful", "handfuls"],
  piece: ["piece", "pieces"],
};
