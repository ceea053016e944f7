/** The table of cultivars: what it holds, and that it can be trusted. */
import { expect, test } from "vitest";
import { cropOfCultivar, crops, onlyCropOf } from "../../src/records/crops.ts";
import { cultivarTable } from "../../src/records/reading/tables/cultivars.ts";
import { keyOf } from "../../src/records/reading/tables/rows.ts";

const table = cultivarTable();
const all = [...table.values()].flat();
const found = (name: string) => table.get(keyOf(name)) ?? [];
const cropsOf = (name: string) =>
  found(name)
    .map(({ crop }) => crop)
    .sort();

test.each([
  ["gardeners delight", "tomato"],
  ["SUNGOLD", "tomato"],
  ["Musselburgh", "leek"],
  ["nero di toscana", "kale"],
  ["pink fir apple", "potato"],
  ["yukon gold", "potato"],
  ["Boltardy", "beetroot"],
  ["clemson spineless", "okra"],
  ["crown prince", "squash"],
  ["jarrahdale", "squash"],
  ["Coxs Orange Pippin", "apple"],
  ["autumn bliss", "raspberry"],
  ["ben lomond", "blackcurrant"],
  ["brown turkey", "fig"],
  ["cafe au lait", "dahlia"],
  ["gertrude jekyll", "rose"],
  ["queen of night", "tulip"],
  ["nelly moser", "clematis"],
  ["tete-a-tete", "daffodil"],
  ["rozanne", "geranium"],
])("%s is a cultivar of %s", (name, crop) => {
  expect(cropsOf(name)).toEqual([crop]);
});

test("a name that several crops have stands under each", () => {
  expect(cropsOf("Black Beauty")).toEqual(expect.arrayContaining(["aubergine", "courgette"]));
  expect(cropsOf("Victoria")).toEqual(expect.arrayContaining(["plum", "rhubarb"]));
  expect(cropsOf("Romanesco")).toContain("cauliflower");
});

test("names that are also ordinary words, people or places are weak evidence", () => {
  const names = [
    "Music",
    "Apache",
    "Victoria",
    "Stella",
    "Charlotte",
    "Rocket",
    "Desiree",
    "Discovery",
    "Duke",
    "Detroit",
    "Iceberg",
    "Conference",
  ];
  expect(names.filter((name) => found(name).length === 0 || found(name).some(({ weak }) => !weak))).toEqual([]);
  const strong = ["Nantes", "Musselburgh", "Sungold", "Bramley", "Boltardy", "Uchiki Kuri"];
  expect(strong.filter((name) => !found(name).some(({ weak }) => !weak))).toEqual([]);
});

test("there are enough of them, for enough crops", () => {
  expect(all.length).toBeGreaterThan(1500);
  expect(new Set(all.map(({ crop }) => crop)).size).toBeGreaterThan(120);
});

test("every crop is one of the table of crops, and no name stands twice under it", () => {
  const ids = new Set(crops.map(({ id }) => id));
  expect(all.filter(({ crop }) => !ids.has(crop))).toEqual([]);
  const twice = [...table].filter(([, entries]) => new Set(entries.map(({ crop }) => crop)).size < entries.length);
  expect(twice).toEqual([]);
});

test("titles are written as names, and found by their own key", () => {
  expect(all.filter(({ title }) => title.trim() !== title || !/^[\p{Lu}\d]/u.test(title))).toEqual([]);
  expect(
    [...table].filter(([key, entries]) => key === "" || entries.some(({ title }) => keyOf(title) !== key)),
  ).toEqual([]);
});

test("a crop's own word is a cultivar's name only of that crop, or weak", () => {
  const words = new Map(
    crops.flatMap((crop) => [crop.name, crop.plural, ...crop.alsoCalled].map((name) => [keyOf(name), crop.id])),
  );
  expect(all.filter(({ title, crop, weak }) => !weak && (words.get(keyOf(title)) ?? crop) !== crop)).toEqual([]);
});

test("a cultivar that ends in another crop's word is told from that crop", () => {
  expect(
    ["Yellow Pear", "black cherry", "Crystal  Apple", "Garden Peach", "Pink Fir Apple"].map(cropOfCultivar),
  ).toEqual([...["tomato", "tomato", "cucumber", "tomato", "potato"]]);
  expect(["yellow pears", "Victoria", "Black Beauty", "Nobody"].map(cropOfCultivar)).toEqual([
    undefined,
    undefined,
    undefined,
    undefined,
  ]);
});

/**
 * "Little Gem lettuce" is the lettuce Little Gem, not the gem lettuce Little: a crop's longer name must not take the end of
 * a cultivar's. Those listed are old names of kinds, which people say by themselves.
 */
test("no crop's longer name eats the end of a cultivar's", () => {
  const kinds =
    "cherry tomato,plum tomato,red cabbage,spring cabbage,Russian kale,butternut squash,red onion,banana shallot,red beet,cos lettuce,globe artichoke,globe artichokes";
  const eaten = crops.flatMap((crop) => {
    const names = [crop.name, crop.plural, ...crop.alsoCalled];
    const keys = new Set(names.map(keyOf));
    const titles = all.filter((cultivar) => cultivar.crop === crop.id).map(({ title }) => keyOf(title));
    return names.filter((name) => {
      const words = keyOf(name).split(" ");
      return words.some((_, at) => {
        const [before, after] = [words.slice(0, at).join(" "), words.slice(at).join(" ")];
        return at > 0 && keys.has(after) && titles.some((title) => ` ${title}`.endsWith(` ${before}`));
      });
    });
  });
  expect(eaten.filter((name) => !kinds.split(",").includes(name))).toEqual([]);
});

test("a name is the same with a curly apostrophe, a straight one and none", () => {
  expect(["Kerr’s Pink", "Kerr's Pink", "kerrs pink"].map((title) => onlyCropOf(title)?.id)).toEqual(
    Array(3).fill("potato"),
  );
  expect(["Gardener’s Delight", "Gardener's Delight"].map(cropOfCultivar)).toEqual(["tomato", "tomato"]);
  expect(onlyCropOf("Kerr's Pinks")).toBeUndefined();
});
