/** The opinion's weights come out of their packing as they went in, but for the ladder of their steps. */
import { gzipSync } from "node:zlib";
import fc from "fast-check";
import { expect, test } from "vitest";
import { packedOpinion } from "../../scripts/reading/pack-opinion.ts";
import type { OpinionWeights } from "../../src/records/reading/opinion.ts";
import kept from "../../src/records/reading/opinion.weights.json" with { type: "json" };
import { unpackedOpinion, weightOf } from "../../src/records/reading/packed-opinion.ts";

const word = fc.stringMatching(/^[a-zé<>:!|→🌱0-9]{1,30}$/u).filter((one) => !/^\d:/.test(one));
const feature = fc.oneof(
  word,
  fc.tuple(word, word).map((pair) => pair.join(" ")),
  fc.tuple(fc.constantFrom("0:", "1:", "2:"), word).map((pair) => pair.join("")),
);
const weight = fc.integer({ min: 5, max: 2300 }).chain((size) => fc.constantFrom(size, -size));
const labels = Array.from({ length: 80 }, (_, at) => `label ${at}`);
const row = fc
  .dictionary(fc.nat({ max: 79 }).map(String), weight, { minKeys: 1 })
  .map((by) => Object.entries(by).flatMap(([label, value]) => [Number(label), value]));

function labelsOf({ weights }: OpinionWeights): Record<string, number[]> {
  return Object.fromEntries(
    Object.entries(weights).map(([name, list]) => [name, list.filter((_, at) => at % 2 === 0)]),
  );
}

test("any weights, each by no more than half a step", () => {
  fc.assert(
    fc.property(fc.dictionary(feature, row, { maxKeys: 60 }), fc.array(fc.integer()), (weights, bias) => {
      const before: OpinionWeights = { labels, bias, weights };
      const after = unpackedOpinion(packedOpinion(before));
      expect({ labels: after.labels, bias: after.bias }).toEqual({ labels, bias });
      expect(labelsOf(after)).toEqual(labelsOf(before));
      for (const [name, list] of Object.entries(weights)) {
        for (const [at, value] of list.entries()) {
          if (at % 2 === 0) continue;
          const ratio = (after.weights[name]?.[at] ?? 0) / value;
          // Half of 15 %, and what comes of whole hundredths where weights are small.
          expect(Math.abs(Math.log(ratio))).toBeLessThanOrEqual(0.075 + 0.5 / Math.abs(value));
        }
      }
      expect(packedOpinion(after)).toEqual(packedOpinion(before));
    }),
  );
});

test("a vocabulary of thousands, and weights beyond the ladder", () => {
  const weights = Object.fromEntries(Array.from({ length: 5000 }, (_, at) => [`w${at} w${(at * 7) % 5000}`, [0, 1e6]]));
  const after = unpackedOpinion(packedOpinion({ labels, bias: [], weights }));
  expect(Object.keys(after.weights).sort()).toEqual(Object.keys(weights).sort());
  expect(new Set(Object.values(after.weights).map(([, value]) => value))).toEqual(new Set([weightOf(41)]));
});

test("those that are kept are packed already, and small", () => {
  const opinion = unpackedOpinion(kept);
  expect(Object.keys(opinion.weights).length).toBeGreaterThan(3000);
  expect(packedOpinion(opinion)).toEqual(kept);
  const [size, plain] = [kept, opinion].map((one) => gzipSync(JSON.stringify(one), { level: 9 }).length);
  console.info(`Weights of the opinion, compressed: ${size} bytes of ${plain}`);
  expect(size).toBeLessThan((plain as number) * 0.6);
});
