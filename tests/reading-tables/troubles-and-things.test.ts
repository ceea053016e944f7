/** Pests, symptoms, gear, materials, containers: rows anybody would look for, and that no word stands twice. */
import { describe, expect, test } from "vitest";
import { crops } from "../../src/records/crops.ts";
import * as containers from "../../src/records/reading/tables/containers.ts";
import { gearRows, gearTable } from "../../src/records/reading/tables/gear.ts";
import { materialRows, materialTable } from "../../src/records/reading/tables/materials.ts";
import { pestRows, pestTable } from "../../src/records/reading/tables/pests.ts";
import { keyOf, rowsOf } from "../../src/records/reading/tables/rows.ts";
import { symptomRows, symptomTable } from "../../src/records/reading/tables/symptoms.ts";

const cropKeys = new Set(crops.flatMap((crop) => [crop.name, crop.plural, ...crop.alsoCalled].map(keyOf)));

/** Every key of a table in the order it is written down. */
function keysIn(...tables: string[]): string[] {
  return tables.flatMap(rowsOf).flatMap(([head, others]) => [head, ...others].map(keyOf));
}

describe.each([
  ["pests", keysIn(...Object.values(pestRows)), pestTable()],
  ["symptoms", keysIn(symptomRows), symptomTable()],
  ["gear", keysIn(...Object.values(gearRows)), gearTable()],
  ["materials", keysIn(...Object.values(materialRows)), materialTable()],
  ["containers", keysIn(containers.nurseryRows, containers.stayingRows), containers.containerTable()],
  ["loose amounts", keysIn(containers.looseAmountRows), containers.looseAmountTable()],
] as const)("%s", (_, keys, table) => {
  test("no form stands twice, none is empty, and all are found", () => {
    expect(keys.filter((key, at) => keys.indexOf(key) !== at)).toEqual([]);
    expect(keys.filter((key) => key === "" || key.trim() !== key)).toEqual([]);
    expect(table.size).toBe(keys.length);
  });

  test("none is a crop's own name", () => {
    expect(keys.filter((key) => cropKeys.has(key))).toEqual([]);
  });
});

test("what a trouble is called stands in one table only", () => {
  const pests = pestTable();
  expect([...symptomTable().keys()].filter((key) => pests.has(key))).toEqual([]);
  expect([...materialTable().keys()].filter((key) => pests.has(key))).toEqual([]);
});

test.each([
  ["slugs", "slugs", "pest"],
  ["slug", "slugs", "pest"],
  ["Cabbage Whites", "cabbage white butterflies", "pest"],
  ["carrot flies", "carrot fly", "pest"],
  ["SVB", "squash vine borer", "pest"],
  ["groundhog", "groundhogs", "pest"],
  ["mouse", "mice", "pest"],
  ["baboons", "baboons", "pest"],
  ["fall armyworm", "fall armyworm", "pest"],
  ["possum", "opossums", "pest"],
  ["leek moth", "leek moth", "pest"],
  ["blighted", "blight", "disease"],
  ["gray mold", "grey mould", "disease"],
  ["blackspot", "black spot", "disease"],
  ["damping-off", "damping off", "disease"],
  ["club root", "clubroot", "disease"],
  ["honey fungus", "honey fungus", "disease"],
  ["blossom end rot", "blossom end rot", "disorder"],
  ["gone to seed", "bolting", "disorder"],
  ["sun scald", "sunscald", "disorder"],
  ["late frost", "frost", "weather"],
  ["hailstorm", "hail", "weather"],
  ["waterlogged", "waterlogging", "weather"],
  ["heatwave", "heat", "weather"],
])("%s: %s, %s", (form, cause, kind) => {
  expect(pestTable().get(keyOf(form))).toEqual({ cause, kind });
});

test.each([
  ["yellow leaves", "yellowing"],
  ["holes in leaves", "holes in leaves"],
  ["chewed", "chewed"],
  ["nibbled", "nibbled"],
  ["mushy", "rotted"],
  ["singed", "scorched"],
  ["leggy", "leggy"],
  ["keeled over", "wilting"],
  ["stripped", "eaten"],
  ["curled", "curled"],
  ["shriveled", "shrivelled"],
  ["spindly", "leggy"],
])("%s is a sign: %s", (form, sign) => {
  expect(symptomTable().get(keyOf(form))).toBe(sign);
});

test.each([
  ["hoop house", "polytunnel", "structure"],
  ["cold frames", "cold frame", "structure"],
  ["electric fence", "electric fence", "structure"],
  ["butterfly netting", "netting", "cover"],
  ["fleece", "fleece", "cover"],
  ["shadecloth", "shade cloth", "cover"],
  ["scarecrow", "bird scarer", "cover"],
  ["bean poles", "beanpole", "support"],
  ["teepees", "wigwam", "support"],
  ["canes", "cane", "support"],
  ["rain barrel", "water butt", "water"],
  ["drip lines", "drip line", "water"],
  ["secateurs", "secateurs", "tool"],
  ["grow bags", "grow bag", "container"],
])("%s: %s, %s", (form, name, kind) => {
  expect(gearTable().get(keyOf(form))).toEqual({ name, kind });
});

test.each([
  ["comfrey tea", "comfrey tea", "feed"],
  ["fish blood and bone", "blood fish and bone", "feed"],
  ["tomato food", "tomato feed", "feed"],
  ["wood ashes", "wood ash", "feed"],
  ["wood chips", "wood chip", "mulch"],
  ["lawn clippings", "grass clippings", "mulch"],
  ["leaf mold", "leaf mould", "mulch"],
  ["well-rotted manure", "manure", "compost"],
  ["worm castings", "vermicompost", "compost"],
  ["potting mix", "multipurpose compost", "compost"],
  ["lime", "lime", "treatment"],
  ["neem oil", "neem", "treatment"],
  ["soapy water", "soap spray", "treatment"],
])("%s: %s, %s", (form, name, kind) => {
  expect(materialTable().get(keyOf(form))).toEqual({ name, kind });
});

test.each([
  ["trays", true],
  ["modules", true],
  ["plugs", true],
  ["loo rolls", true],
  ["root trainers", true],
  ["soil blocks", true],
  ["flats", true],
  ["kitchen windowsill", true],
  ["heat mat", true],
  ["airing cupboard", true],
  ["greenhouse", true],
  ["cold frame", true],
  ["tubs", false],
  ["grow bags", false],
  ["hanging baskets", false],
  ["terracotta pots", false],
])("plants in %s go on to a bed: %s", (form, nursery) => {
  expect(containers.containerTable().get(keyOf(form))?.nursery).toBe(nursery);
});

test.each([
  ["handfuls", "handful"],
  ["trugs", "trug"],
  ["colander", "colander"],
  ["bucketful", "bucket"],
  ["carrier bag", "bag"],
  ["barrow load", "barrow"],
  ["bunches", "bunch"],
  ["heads", "head"],
  ["pods", "pod"],
  ["sprigs", "stem"],
  ["punnets", "punnet"],
  ["bowls", "bowl"],
])("%s are said as %s", (form, unit) => {
  expect(containers.looseAmountTable().get(keyOf(form))).toBe(unit);
});
