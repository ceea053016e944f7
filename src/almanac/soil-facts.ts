/** Soil pH: what suits crops, what a mean of several tests is, what does not belong in one bed. */
import { cropFacts, type Fact, type Range } from "./crop-facts.ts";

/**
 * Mean of pH values: pH is a logarithm, so what is averaged are hydrogen ions; 5 and 6 give 5.26, not 5.5. Undefined for
 * no values.
 */
export function meanPh(values: readonly number[]): number | undefined {
  if (values.length === 0) return undefined;
  return -Math.log10(values.reduce((sum, ph) => sum + 10 ** -ph, 0) / values.length);
}

/**
 * Most vegetables: 6.0 to 7.0 is best, 5.5 to 7.5 will do (University of California, California Garden Web; the narrower
 * range from memory). Highbush blueberry: 4.0 to 5.3, aim for 4.8 (eXtension, blueberry soil pH; University of Tennessee
 * has 4.8 to 5.5).
 */
export function phRange(crop: string | undefined): Fact<Range> | undefined {
  if (crop === "blueberry") {
    return {
      value: { from: 4, to: 5.5 },
      source: {
        title: "eXtension, blueberries: 4.0 to 5.3; University of Tennessee Extension: 4.8 to 5.5",
        fromMemory: false,
      },
    };
  }
  return cropFacts(crop)?.ph;
}

/** pH values are given to a tenth, and 6.0 - 5.5 must not become 0.5000000000000004. */
const tenth = (ph: number) => Math.round(ph * 10) / 10;

export type PhStanding = "too acid" | "a little acid" | "right" | "a little limy" | "too limy";

/** How a test stands to a crop's range; within half a unit outside it, most crops still do. */
export function phStanding(ph: number, { from, to }: Range): PhStanding {
  const value = tenth(ph);
  if (value < tenth(from - 0.5)) return "too acid";
  if (value < from) return "a little acid";
  if (value > tenth(to + 0.5)) return "too limy";
  return value > to ? "a little limy" : "right";
}

/** Pairs of crops whose ranges leave no pH that suits both: blueberries among vegetables. */
export function phQuarrels(crops: readonly string[]): readonly (readonly [acid: string, limy: string])[] {
  const known = [...new Set(crops)].sort().flatMap((crop) => {
    const range = phRange(crop);
    return range === undefined ? [] : [{ crop, ...range.value }];
  });
  return known.flatMap((acid) =>
    known.filter((other) => acid.to < other.from).map((limy) => [acid.crop, limy.crop] as const),
  );
}
