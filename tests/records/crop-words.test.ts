/** The crop word that a person writes is the one that they are told, when they write no other. */
import { expect, it } from "vitest";
import { cropsAsWritten } from "../../src/records/crop-words.ts";
import { crops } from "../../src/records/index.ts";
import { cropsIn } from "../../src/records/region-crops.ts";
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
  ["new-zealand-spinach", ["planted 6 warrigal greens"], ["warrigal greens", "warrigal greens"]],
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

const named = (language: string) => {
  const own = new Map(cropsIn(language).map(({ id, name }) => [id, name]));
  return ["courgette", "aubergine", "pepper", "chard", "melon", "sweetcorn", "spring-onion"].map((id) => own.get(id));
};

it.each([
  ["en-GB", ["courgette", "aubergine", "pepper", "chard", "melon", "sweetcorn", "spring onion"]],
  ["en-IE", ["courgette", "aubergine", "pepper", "chard", "melon", "sweetcorn", "scallion"]],
  ["en-US", ["zucchini", "eggplant", "pepper", "chard", "melon", "sweet corn", "scallion"]],
  ["en-CA", ["zucchini", "eggplant", "pepper", "chard", "melon", "sweet corn", "green onion"]],
  ["en-AU", ["zucchini", "eggplant", "capsicum", "silverbeet", "rockmelon", "sweet corn", "spring onion"]],
  ["en-NZ", ["courgette", "eggplant", "capsicum", "silverbeet", "rockmelon", "sweetcorn", "spring onion"]],
  ["en-ZA", ["baby marrow", "brinjal", "pepper", "Swiss chard", "spanspek", "sweetcorn", "spring onion"]],
])("in %s crops have the names of its seed lists", (language, expected) => {
  expect(named(language)).toEqual(expected);
});

it("no region's word is that of another crop", () => {
  for (const language of ["en-US", "en-CA", "en-AU", "en-NZ", "en-ZA", "en-IE", "en-IN"]) {
    const all = cropsIn(language).map(({ name }) => name.toLowerCase());
    expect(new Set(all).size).toBe(all.length);
    for (const crop of cropsIn(language)) {
      const other = crops.find(
        ({ id, name, plural }) => id !== crop.id && (name === crop.name || plural === crop.plural),
      );
      expect(other?.id).toBeUndefined();
    }
  }
});

it("a garden's own word comes before its region's", () => {
  const own = new Map(cropsIn("en-AU").map((crop) => [crop.id, crop]));
  const made = cropsAsWritten(own, [{ crop: "chard", text: "picked Swiss chard" }], names).get("chard");
  expect(made?.name).toBe("Swiss chard");
});
