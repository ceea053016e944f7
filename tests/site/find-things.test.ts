/** What the search takes a question to mean: names first, by letters, by sound, by the crop's word; beds and films behind. */
import { describe, expect, it } from "vitest";
import { type Catalogue, findThings, type Thing } from "../../src/site/components/search/find-things.ts";

const crops = [
  ["squash", "squashes", "winter squash"],
  ["tomato", "tomatoes"],
  ["pea", "peas"],
  ["sweet pea", "sweet peas"],
  ["runner bean", "runner beans"],
  ["broad bean", "broad beans"],
];

const thing = (kind: Thing["kind"], name: string, crop?: number, ...also: readonly string[]): Thing => ({
  kind,
  name,
  href: `/${name}/`,
  also,
  crop,
  says: "",
});

const garden: Catalogue = {
  crops,
  things: [
    thing("variety", "Alderman", 2),
    thing("variety", "Aquadulce Claudia", 5),
    thing("variety", "Costoluto Fiorentino", 1),
    thing("variety", "Crown Prince", 0),
    thing("variety", "Cupani", 3),
    thing("variety", "Gardener's Delight", 1),
    thing("variety", "Long Red", 1),
    thing("variety", "Scarlet Emperor", 4),
    thing("variety", "Uchiki Kuri", 0, "oo-CHEE-kee KOO-ree"),
    thing("bed", "Long Bed"),
    thing("bed", "Squash Bed"),
    thing("bed", "Tomato Pots"),
    thing("film", "June tour"),
    thing("film", "The squash film"),
  ],
};

const found = (asked: string) => findThings(asked, garden).things.map(({ name }) => name);

describe("a question", () => {
  it.each([
    ["crown prins", ["Crown Prince"]],
    ["ucheeki curry", ["Uchiki Kuri"]],
    ["oochikee kooree", ["Uchiki Kuri"]],
    ["kupanny", ["Cupani"]],
    ["what was that costaluto called", ["Costoluto Fiorentino"]],
  ])("%s means a name that was heard", (asked, names) => {
    expect(found(asked)).toEqual(names);
  });

  it("with a crop in it gives that crop's varieties, then its bed, then its film", () => {
    for (const asked of ["squash", "which variety is that squash", "Squashes?"])
      expect(found(asked).slice(0, 2).toSorted(), asked).toEqual(["Crown Prince", "Uchiki Kuri"]);
    expect(found("which variety is that squash").slice(2)).toEqual(["Squash Bed", "The squash film"]);
    expect(found("tomato")).toEqual(["Costoluto Fiorentino", "Gardener's Delight", "Long Red", "Tomato Pots"]);
    expect(found("tomatos").slice(0, 3)).toEqual(["Costoluto Fiorentino", "Gardener's Delight", "Long Red"]);
  });

  it("puts the variety first that its other word names", () => {
    expect(found("the crown squash")[0]).toBe("Crown Prince");
    expect(found("delight tomato")[0]).toBe("Gardener's Delight");
  });

  it("keeps sweet peas from peas, and takes beans for every kind of them", () => {
    expect(found("sweet peas")).toEqual(["Cupani"]);
    expect(found("peas")).toEqual(["Alderman", "Cupani"]);
    expect(found("beans").toSorted()).toEqual(["Aquadulce Claudia", "Scarlet Emperor"]);
  });

  it("gives a bed or a film that is named outright before what is only like it", () => {
    expect(found("long bed")[0]).toBe("Long Bed");
    expect(found("june tour")[0]).toBe("June tour");
  });

  it("of nothing but little words is looked for as it is, and so is an unknown one", () => {
    expect(findThings("which one was it", garden)).toEqual({ things: [], words: "which one was it" });
    expect(findThings("who ate the slugs", garden)).toEqual({ things: [], words: "ate slugs" });
    expect(found("")).toEqual([]);
  });
});
