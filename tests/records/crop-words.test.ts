/** The crop word that a person writes is the one that they are told, when they write no other. */
import { expect, it } from "vitest";
import { cropsAsWritten } from "../../src/records/crop-words.ts";
import { crops } from "../../src/records/index.ts";
import { gardenNames } from "../note-lines/a-garden.ts";

const names = gardenNames();
const table = new Map(crops.map((crop) => [crop.id, crop]));

function shown(crop: string, ...texts: readonly string[]): readonly string[] {
  const found = cropsAsWritten(
    table,
    texts.map((text) => ({ crop, text })),
    names,
  ).get(crop);
  return [found?.name ?? "", found?.plural ?? ""];
}

it.each([
  ["courgette", ["planted 3 zucchini", "the zucchini are up"], ["zucchini", "zucchini"]],
  ["plum", ["picked 900 g of damsons"], ["damson", "damsons"]],
  ["french-bean", ["pole beans up", "12 pole beans planted"], ["pole bean", "pole beans"]],
  ["sweetcorn", ["corn is up"], ["corn", "corn"]],
  ["beetroot", ["sowed beets"], ["beet", "beets"]],
])("%s in %j", (crop, texts, expected) => {
  expect(shown(crop, ...texts)).toEqual(expected);
});

it.each([
  ["both names are written", "courgette", ["planted 3 zucchini", "courgettes up"], ["courgette", "courgettes"]],
  ["two other names are", "french-bean", ["pole beans up", "bush beans up"], ["French bean", "French beans"]],
  ["a word only shortens the name", "potato", ["spuds up"], ["potato", "potatoes"]],
  ["it is written of another crop", "leek", ["planted 3 zucchini"], ["leek", "leeks"]],
])("the table's word stays where %s", (_, crop, texts, expected) => {
  expect(shown(crop, ...texts)).toEqual(expected);
});

it("still finds the crop by the table's name", () => {
  const made = cropsAsWritten(table, [{ crop: "courgette", text: "zucchini in" }], names).get("courgette");
  expect(made?.alsoCalled).toContain("courgette");
  expect(made?.alsoCalled).not.toContain("zucchini");
});
