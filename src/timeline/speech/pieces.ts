/** What pickings are counted in, one and several, by language. A single German one stands with its article. */
import type { PickUnit } from "../../model.ts";

export type PieceWords = Readonly<Record<PickUnit, readonly [one: string, many: string]>>;

export const englishPieces: PieceWords = {
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

export const germanPieces: PieceWords = {
  stem: ["ein Stiel", "Stiele"],
  bunch: ["ein Bund", "Bund"],
  head: ["ein Kopf", "Köpfe"],
  fruit: ["eine Frucht", "Früchte"],
  pod: ["eine Hülse", "Hülsen"],
  punnet: ["eine Schale", "Schalen"],
  crate: ["eine Kiste", "Kisten"],
  root: ["eine Rübe", "Rüben"],
  bulb: ["eine Zwiebel", "Zwiebeln"],
  ear: ["ein Kolben", "Kolben"],
  handful: ["eine Handvoll", "Handvoll"],
  piece: ["ein Stück", "Stück"],
};
