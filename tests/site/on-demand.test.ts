/** Pages that are worked out when they are asked for: their addresses before, everything else once, clean as all page data. */
import { expect, it } from "vitest";
import { onDemand, pagesOnDemand } from "../../src/site/page-data/on-demand.ts";

interface Bed {
  readonly id: string;
  readonly name: string;
}

function bedsOf(ids: readonly string[]) {
  const made: string[] = [];
  const site = onDemand<{ readonly beds: readonly Bed[] }>({
    beds: () =>
      pagesOnDemand(
        ids,
        (id) => ({ id }),
        (id): Bed => {
          made.push(id);
          return { id, name: `Bed \u202e${id}` };
        },
      ),
  });
  return { site, made };
}

it("makes of many pages the one that is read, and that once", () => {
  const { site, made } = bedsOf(["long", "short"]);
  expect(site.beds.map(({ id }) => id)).toEqual(["long", "short"]);
  expect(made).toEqual([]);
  const [, short] = site.beds;
  expect([short?.name, short?.name]).toEqual(["Bed short", "Bed short"]);
  expect(made).toEqual(["short"]);
});

it("is as any other data where all of it is wanted", () => {
  const { site } = bedsOf(["long"]);
  expect(JSON.stringify(site)).toBe('{"beds":[{"id":"long","name":"Bed long"}]}');
  expect(site.beds).toEqual([{ id: "long", name: "Bed long" }]);
  expect({ ...site.beds[0], more: 1 }).toEqual({ id: "long", name: "Bed long", more: 1 });
});
