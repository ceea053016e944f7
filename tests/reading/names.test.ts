/** Common cultivar names, written by somebody who had not seen the tables: named right or asked, never as something else. */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { namesOfGarden } from "../../scripts/reading/corpus.ts";
import { normal } from "../../scripts/reading/judge.ts";
import { garden, reading } from "./a-reader.ts";

const cultivars: readonly (readonly [string, string])[] = JSON.parse(
  readFileSync("tests/corpus/cultivars.json", "utf8"),
);
const described = namesOfGarden({ ...garden, varieties: cultivars });
const undescribed = namesOfGarden(garden);

const ways: readonly [string, (name: string, crop: string) => string][] = [
  ["with its crop", (name, crop) => `sowed 12 ${name} ${crop} in Long Bed`],
  ["alone", (name) => `sowed 12 ${name} in Long Bed`],
  ["in small letters", (name, crop) => `sowed 12 ${name.toLowerCase()} ${crop} in Long Bed`],
];

describe.each([["described", described] as const, ["not described", undescribed] as const])(
  "names that are %s",
  (_, names) => {
    it.each(ways)("%s are named right or asked in 97 of 100", (__, line) => {
      const wrong = cultivars.filter(([name, crop]) => {
        const { as, events } = reading(line(name, crop), { with: names });
        if (as !== "facts") return as === "story";
        const [only, second] = events;
        // "Sugar Snap pea" may be a crop of that name.
        const said = normal((only?.variety ?? only?.crop)?.replaceAll("-", " "));
        return second !== undefined || said === "" || !(said.includes(normal(name)) || normal(name).includes(said));
      });
      expect(wrong.length / cultivars.length, wrong.map(([name]) => name).join(", ")).toBeLessThanOrEqual(0.03);
    });
  },
);
