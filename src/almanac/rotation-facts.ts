/**
 * How long a family should stay off a bed, and why: what lives on in the soil is a reason to move, what comes through the
 * air is none. "Years" are seasons since: grown in 2023 and again in 2026 is three.
 *
 * Each row names the page that asks for its interval and names its family. The reasons beside them are growers' common
 * knowledge, from memory. Spores of clubroot: half gone in 3 to 6 years (Pacific Northwest Plant Disease Handbook).
 */
import type { FactSource } from "./crop-facts.ts";

export interface RotationRule {
  /** Botanical family. */
  readonly family: string;
  /** What gardeners call it: "the cabbage family". */
  readonly name: string;
  /** Seasons that should pass: grown in season s, again from s + years on. */
  readonly years: number;
  /** What builds up in the soil. */
  readonly reason: string;
  /** Of the interval. */
  readonly source: FactSource;
  readonly reasonSource: FactSource;
}

/** "Two to three years"; names the nightshades, the cabbage, onion, cucumber and pea families, and no other. */
const westVirginia: FactSource = {
  title: "West Virginia University Extension, Crop Rotation in the Garden (2025)",
  fromMemory: false,
};
/** "A three-year wait"; names the parsley family, and beet, chard and spinach as kin, among others. */
const kansas: FactSource = {
  title: "K-State Research and Extension, Riley County, column on vegetable crop rotation",
  fromMemory: false,
};
/** Not "year after year in the same part of the garden": one season between. Names the lettuce family among ten. */
const sacramento: FactSource = {
  title: "UC Master Gardeners of Sacramento County, Crop Rotation",
  fromMemory: false,
};
const growers: FactSource = { title: "common knowledge of growers", fromMemory: true };

const rule = (family: string, name: string, years: number, source: FactSource, reason: string): RotationRule => ({
  family,
  name,
  years,
  reason,
  source,
  reasonSource: growers,
});

export const rotationRules: readonly RotationRule[] = [
  rule("Brassicaceae", "the cabbage family", 3, westVirginia, "clubroot and cabbage root fly build up in the soil"),
  rule(
    "Solanaceae",
    "the potato and tomato family",
    3,
    westVirginia,
    "potato cyst eelworm and verticillium wilt stay in the soil",
  ),
  rule("Amaryllidaceae", "the onion family", 3, westVirginia, "white rot stays in the soil"),
  rule("Apiaceae", "the carrot family", 3, kansas, "carrot fly winters in the soil and canker stays there"),
  rule("Fabaceae", "the pea and bean family", 3, westVirginia, "root rots build up in the soil"),
  rule("Cucurbitaceae", "the cucumber and squash family", 3, westVirginia, "root rots and wilts build up in the soil"),
  rule("Amaranthaceae", "the beet family", 3, kansas, "beet eelworm and leaf spot carry over in the soil"),
  rule("Asteraceae", "the lettuce family", 2, sacramento, "root aphid and stem rot carry over in the soil"),
];

export interface SoilDisease {
  /** Matches a trouble's or loss's cause, in lower case. */
  readonly cause: RegExp;
  readonly family: string;
  readonly name: string;
  readonly years: number;
  readonly advice: string;
  readonly source: FactSource;
}

/** Seen in a bed, these ask for more than the usual interval. */
export const soilDiseases: readonly SoilDisease[] = [
  {
    cause: /club ?root/,
    family: "Brassicaceae",
    name: "clubroot",
    years: 7,
    advice:
      "Keep the whole cabbage family off that soil for seven years or more, mustard and radish too, and don't carry its soil elsewhere on boots or tools; lime to about pH 7.2 holds it down and doesn't kill it.",
    source: {
      title:
        "Oregon State University, quoted in Growing Magazine; University of California Cooperative Extension on lime",
      fromMemory: false,
    },
  },
  {
    cause: /white rot/,
    family: "Amaryllidaceae",
    name: "onion white rot",
    years: 8,
    advice: "Keep onions, leeks and garlic off that soil for eight years or more.",
    source: { title: "common practice", fromMemory: true },
  },
  {
    cause: /eelworm|cyst nematode/,
    family: "Solanaceae",
    name: "potato eelworm",
    years: 6,
    advice: "Keep potatoes and tomatoes off that soil for six years, and look for resistant varieties.",
    source: { title: "common practice", fromMemory: true },
  },
];

/** What comes through the air or on the wing: moving the bed is not sold as a cure for it. */
export const airborne: readonly { readonly cause: RegExp; readonly why: string; readonly source: FactSource }[] = [
  {
    cause: /powdery mildew/,
    why: "Powdery mildew comes through the air, so another bed is no cure for it.",
    source: {
      title: "University of Massachusetts Amherst and Cornell University, cucurbit powdery mildew",
      fromMemory: false,
    },
  },
  {
    cause: /\bblight\b/,
    why: "Blight comes through the air, so another bed is no cure for it; clear out old tubers and fruit, which carry it over.",
    source: { title: "common practice", fromMemory: true },
  },
  {
    cause: /blackfly|greenfly|aphid|whitefly|butterfl|caterpillar|leek moth/,
    why: "It flies in, so a net in time does more than another bed.",
    source: { title: "common practice", fromMemory: true },
  },
];

const byFamily = new Map(rotationRules.map((row) => [row.family, row]));

/** Undefined for families nobody rotates: rhubarb's, the mints', most flowers'. */
export function rotationRule(family: string | undefined): RotationRule | undefined {
  return family === undefined ? undefined : byFamily.get(family);
}
