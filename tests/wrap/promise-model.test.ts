/** The quick sum of a word's weights is the sum over its features by name. */
import { expect, it } from "vitest";
import { talksIn } from "../../scripts/speech/talks.ts";
import { logOdds } from "../../src/wrap/promise-model.ts";
import { eachFeature, PARTS } from "../../src/wrap/promise-words.ts";
import learned from "../../src/wrap/promises.weights.json" with { type: "json" };

it("adds up every feature that its names tell", () => {
  const weights: Readonly<Record<string, number>> = learned.words;
  for (const { words } of talksIn("tests/talks/learn").slice(0, 4)) {
    const slow = words.map((_, at) => {
      let sum = 0;
      eachFeature(words, at, (name) => {
        sum += weights[name] ?? 0;
      });
      return learned.bias / 100 + sum / (100 * Math.sqrt(PARTS));
    });
    const quick = logOdds(words, learned);
    expect(quick).toHaveLength(words.length);
    for (const [at, odd] of slow.entries()) expect(quick[at]).toBeCloseTo(odd, 6);
  }
});
