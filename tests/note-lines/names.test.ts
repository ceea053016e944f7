/** Finding the names of records in lines, whatever their case, accents, hyphens, apostrophes and plurals. */
import { expect, test } from "vitest";
import type { Crop, Variety } from "../../src/model.ts";
import { buildNames, crops, idOfName, nearestName, normaliseName } from "../../src/records/index.ts";
import { wordsOf } from "../../src/records/line-words.ts";
import { gardenNames, gardenNamesOnceHeard, problemsOf, told } from "./a-garden.ts";

const names = gardenNames();

test.each([
  ["Musselburgh", "musselburgh"],
  ["musselburgh", "musselburgh"],
  ["MUSSELBURGH LEEKS", "musselburgh"],
  ["Musselburgh leek", "musselburgh"],
  ["leek Musselburgh", "musselburgh"],
  ["leek (Musselburgh)", "musselburgh"],
  ["leeks ‘Musselburgh’", "musselburgh"],
  ["Musselburgh (leek)", "musselburgh"],
  ["cafe au lait", "cafe-au-lait"],
  ["Café-au-Lait dahlias", "cafe-au-lait"],
  ["Gardeners Delight", "gardeners-delight"],
  ["Gardener's Delight", "gardeners-delight"],
  ["gardener’s delights", "gardeners-delight"],
  ["Sungold", "sungold"],
  ["Sungold F1 tomatoes", "sungold"],
  ["Aquadulce", "aquadulce-claudia"],
  ["broad beans Aquadulce", "aquadulce-claudia"],
  ["aquadulce-claudia", "aquadulce-claudia"],
  ["Crown Prince pumpkin", "crown-prince"],
  ["Black Beauty zucchini", "black-beauty"],
  ["Lady in Red", "lady-in-red"],
])("%s is the variety %s", (text, id) => {
  const words = wordsOf(text);
  expect(names.plantAt(words, 0)).toEqual({ variety: id, end: words.length, others: [] });
});

test.each([
  ["tomatoes", "tomato"],
  ["eggplant", "aubergine"],
  ["zucchini", "courgette"],
  ["rutabagas", "swede"],
  ["French beans", "french-bean"],
  ["purple sprouting broccoli", "sprouting-broccoli"],
  ["spring onions", "spring-onion"],
  ["scallions", "spring-onion"],
  ["sweet peas", "sweet-pea"],
  ["radishes", "radish"],
  ["cherries", "cherry"],
  ["lady's fingers", "okra"],
  ["lambs lettuce", "corn-salad"],
  ["gladioli", "gladiolus"],
  ["forget-me-nots", "forget-me-not"],
])("%s is the crop %s", (text, id) => {
  const words = wordsOf(text);
  expect(names.plantAt(words, 0)).toEqual({ crop: id, end: words.length, others: [] });
});

test.each(["carrot fly", "leek moths", "tomato blight", "cabbage white", "onion root rot"])(
  "%s is no plant",
  (pest) => {
    expect(names.plantAt(wordsOf(pest), 0)).toBeUndefined();
  },
);

test("the variety of another crop is another variety", () => {
  expect(names.plantAt(wordsOf("Black Beauty aubergine"), 0)).toBeUndefined();
  const mine = gardenNames();
  told("planted 3 Black Beauty aubergines in Long Bed", { names: mine });
  expect(mine.taken().varieties.map(({ id, title, crop }) => ({ id, title, crop }))).toEqual([
    { id: "black-beauty-aubergine", title: "Black Beauty", crop: "aubergine" },
  ]);
});

test("beds, gear and sites by title, id and other names", () => {
  expect(names.find("bed", "the long-bed")).toBe("long-bed");
  expect(names.find("bed", "LONG BED")).toBe("long-bed");
  expect(names.find("bed", "Long Bed, row 2")).toBeUndefined();
  expect(names.find("gear", "mesh")).toBe("mesh-tunnel");
  expect(names.find("site", "harbour yard")).toBe("harbour-yard");
  expect(names.find("variety", "Long Bed")).toBeUndefined();
});

test("the longest name wins", () => {
  const prince: Variety = variety("crown-prince", "Crown Prince", "squash");
  const longer: Variety = variety("crown-prince-blue", "Crown Prince Blue", "squash");
  const both = buildNames({ beds: [], varieties: [prince, longer], gear: [], crops, sites: [] });
  expect(both.plantAt(wordsOf("Crown Prince Blue in bed"), 0)?.variety).toBe("crown-prince-blue");
  expect(both.plantAt(wordsOf("Crown Prince in bed"), 0)?.variety).toBe("crown-prince");
});

test("two varieties of one name are told apart by the crop, or asked about", () => {
  const varieties = [
    variety("black-beauty", "Black Beauty", "courgette"),
    variety("bb-aubergine", "Black Beauty", "aubergine"),
  ];
  const two = buildNames({ beds: [], varieties, gear: [], crops, sites: [] });
  expect(two.plantAt(wordsOf("Black Beauty aubergines"), 0)?.variety).toBe("bb-aubergine");
  expect(two.plantAt(wordsOf("courgette Black Beauty"), 0)?.variety).toBe("black-beauty");
  expect(problemsOf("planted 3 Black Beauty in Sunny Corner", { names: two })).toEqual([
    'note/two-varieties: "Black Beauty" is the name of 2 varieties: black-beauty, bb-aubergine. The first was taken. ' +
      'Say the crop beside it, for example "Black Beauty courgette".',
  ]);
});

test("names in normal form, and as ids", () => {
  expect(normaliseName("Gardener’s-Delights")).toBe(normaliseName("gardeners delight"));
  expect(normaliseName("Café au Lait")).toBe(normaliseName("CAFE AU LAITS"));
  expect(normaliseName("canes")).not.toBe(normaliseName("cans"));
  expect(idOfName("Rouge Vif d'Étampes")).toBe("rouge-vif-detampes");
  expect(idOfName("Café au Lait")).toBe("cafe-au-lait");
  expect(idOfName("?!")).toBe("");
});

test("the nearest name only when one is close", () => {
  const known = ["Musselburgh", "Boltardy", "Crown Prince", "Long Bed", "Row 1"];
  expect(nearestName("Muselburgh", known)).toBe("Musselburgh");
  expect(nearestName("BOLTARDI", known)).toBe("Boltardy");
  expect(nearestName("Crown-Prince", known)).toBe("Crown Prince");
  expect(nearestName("Nantes", known)).toBeUndefined();
  expect(nearestName("Bed", known)).toBeUndefined();
  expect(nearestName("Row 2", known)).toBeUndefined();
  expect(nearestName("Marmonde", ["Marmande", "Mormonde"])).toBeUndefined();
});

test("names that no file describes are taken once, with the crop as soon as a line says it", () => {
  const mine = gardenNames();
  for (const line of [
    "sowed 20 Nantes in Sunny Corner",
    "sowed 20 Nantes carrots in Sunny Corner",
    "picked 1 kg nantes from the sunny corner",
  ]) {
    told(line, { names: mine });
  }
  expect(mine.taken().beds.map(({ id, title, described }) => ({ id, title, described }))).toEqual([
    { id: "sunny-corner", title: "Sunny Corner", described: false },
  ]);
  expect(mine.taken().varieties.map(({ id, title, crop, described }) => ({ id, title, crop, described }))).toEqual([
    { id: "nantes", title: "Nantes", crop: "carrot", described: false },
  ]);
});

test("a second reading knows what the first one heard, whichever line came first", () => {
  const first = gardenNames();
  const lines = ["cleared Sunny Corner", "pinched out Marmande", "planted 6 Marmande tomatoes in Sunny Corner"];
  for (const line of lines) told(line, { names: first });
  const second = gardenNamesOnceHeard(first);
  expect(lines.map((line) => told(line, { names: second }))).toEqual([
    [{ kind: "cleared", bed: "sunny-corner" }],
    [{ kind: "did", what: "pinched out Marmande", variety: "marmande" }],
    [{ kind: "planted", variety: "marmande", count: 6, bed: "sunny-corner" }],
  ]);
  expect(second.taken().varieties.map(({ id }) => id)).toEqual(["marmande"]);
});

test("a crop only this garden grows is found like the others", () => {
  const wasabi: Crop = {
    id: "wasabi",
    name: "wasabi",
    plural: "wasabi",
    alsoCalled: [],
    family: "Brassicaceae",
    perennial: true,
    use: "vegetable",
  };
  const mine = buildNames({ beds: [], varieties: [], gear: [], crops: [...crops, wasabi], sites: [] });
  expect(mine.plantAt(wordsOf("wasabi"), 0)?.crop).toBe("wasabi");
});

function variety(id: string, title: string, crop: string): Variety {
  return { id, title, private: false, body: "", described: true, crop, alsoSpelled: [], perennial: false };
}
