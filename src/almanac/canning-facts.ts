/**
 * How much produce fills how many jars. Estimates for planning only: what is put into jars follows a tested recipe.
 *
 * USDA Complete Guide to Home Canning, Agriculture Information Bulletin 539 (2015). The pint column is not half of the
 * quart column; each is used for its own jars.
 */
import { gramsPerPound } from "../measures.ts";
import type { FactSource } from "./crop-facts.ts";

export type JarSize = "quart" | "pint";

export interface CanningFact {
  readonly product: string;
  /** What is weighed: "tomatoes", "green peas in the pod". */
  readonly fresh: string;
  /** What it is called, whole and in lower case: "tomato soup" is no tomato. Singular and plural are one. */
  readonly names: readonly string[];
  /** Crop ids it is made of. */
  readonly crops: readonly string[];
  /** Pounds for a canner load: seven quarts, nine pints. */
  readonly poundsPerSevenQuarts: number;
  readonly poundsPerNinePints: number;
  /** Sour enough for boiling water, sour enough only with acid added, or only for a pressure canner. */
  readonly acid: "acid" | "acidify" | "low";
  readonly source: FactSource;
}

const guide = (fromMemory: boolean): FactSource => ({
  title: "USDA Complete Guide to Home Canning, AIB 539 (2015)",
  fromMemory,
});

export const canningFacts: readonly CanningFact[] = [
  {
    product: "thick tomato sauce",
    fresh: "tomatoes, for a thick sauce",
    names: ["thick tomato sauce", "passata", "tomato passata"],
    crops: ["tomato"],
    poundsPerSevenQuarts: 46,
    poundsPerNinePints: 28,
    acid: "acidify",
    source: guide(true),
  },
  {
    product: "tomato sauce",
    fresh: "tomatoes, for a thin sauce",
    names: ["tomato sauce", "thin tomato sauce"],
    crops: ["tomato"],
    poundsPerSevenQuarts: 35,
    poundsPerNinePints: 21,
    acid: "acidify",
    source: guide(true),
  },
  {
    product: "tomato juice",
    fresh: "tomatoes",
    names: ["tomato juice"],
    crops: ["tomato"],
    poundsPerSevenQuarts: 23,
    poundsPerNinePints: 14,
    acid: "acidify",
    source: guide(true),
  },
  {
    product: "crushed tomatoes",
    fresh: "tomatoes",
    names: ["crushed tomatoes", "chopped tomatoes"],
    crops: ["tomato"],
    poundsPerSevenQuarts: 22,
    poundsPerNinePints: 14,
    acid: "acidify",
    source: guide(true),
  },
  {
    product: "tomatoes",
    fresh: "tomatoes",
    names: ["tomatoes", "whole tomatoes", "plum tomatoes", "cherry tomatoes", "halved tomatoes"],
    crops: ["tomato"],
    poundsPerSevenQuarts: 21,
    poundsPerNinePints: 13,
    acid: "acidify",
    source: guide(false),
  },
  {
    product: "green beans",
    fresh: "green beans",
    names: ["green beans", "french beans", "snap beans", "string beans", "wax beans"],
    crops: ["french-bean"],
    poundsPerSevenQuarts: 14,
    poundsPerNinePints: 9,
    acid: "low",
    source: guide(false),
  },
  {
    product: "beetroot",
    fresh: "beetroot without tops",
    names: ["beetroot", "beets"],
    crops: ["beetroot"],
    poundsPerSevenQuarts: 21,
    poundsPerNinePints: 13.5,
    acid: "low",
    source: guide(true),
  },
  {
    product: "carrots",
    fresh: "carrots without tops",
    names: ["carrots"],
    crops: ["carrot"],
    poundsPerSevenQuarts: 17.5,
    poundsPerNinePints: 11,
    acid: "low",
    source: guide(true),
  },
  {
    product: "sweetcorn",
    fresh: "sweetcorn in the husk",
    names: ["sweetcorn", "sweet corn", "corn"],
    crops: ["sweetcorn"],
    poundsPerSevenQuarts: 31.5,
    poundsPerNinePints: 20,
    acid: "low",
    source: guide(true),
  },
  {
    product: "peas",
    fresh: "peas in the pod",
    names: ["peas", "garden peas", "green peas", "shelled peas"],
    crops: ["pea"],
    poundsPerSevenQuarts: 31.5,
    poundsPerNinePints: 20,
    acid: "low",
    source: guide(true),
  },
  {
    product: "peaches",
    fresh: "peaches",
    names: ["peaches"],
    crops: ["peach"],
    poundsPerSevenQuarts: 17.5,
    poundsPerNinePints: 11,
    acid: "acid",
    source: guide(true),
  },
  {
    product: "apple sauce",
    fresh: "apples",
    names: ["apple sauce", "applesauce"],
    crops: ["apple"],
    poundsPerSevenQuarts: 21,
    poundsPerNinePints: 13.5,
    acid: "acid",
    source: guide(true),
  },
];

/** Grams of fresh produce for a number of jars. */
export function gramsForJars(fact: CanningFact, jars: number, size: JarSize): number {
  const pounds = size === "quart" ? fact.poundsPerSevenQuarts / 7 : fact.poundsPerNinePints / 9;
  return jars * pounds * gramsPerPound;
}

/** Jars that fill a canner load: seven quarts or nine pints. */
export function cannerLoads(jars: number, size: JarSize): { readonly full: number; readonly over: number } {
  const load = size === "quart" ? 7 : 9;
  return { full: Math.floor(jars / load), over: jars % load };
}

/** What must stand beside every figure, most important first. */
export function canningCautions({ acid }: CanningFact): readonly string[] {
  return [
    "This is an estimate for planning: when you fill jars, follow a tested recipe from the official guide for your altitude, and never shorten its times.",
    ...(acid === "low"
      ? ["Low-acid vegetables need a pressure canner: boiling water doesn't make them safe."]
      : acid === "acidify"
        ? [
            "Tomatoes need acid in every jar, in a pressure canner too: as the tested recipe says, bottled lemon juice rather than fresh, or citric acid. Leave out fruit from dead or frosted vines.",
          ]
        : []),
    "Guidance differs from country to country: look up your own.",
  ];
}
