/** Where varieties and gear came from, as printed and as it must be said. */

import type { Gear, Obtained, Source, Variety } from "../model.ts";
import type { HowItCame } from "./notices.ts";
import { capital } from "./numbers.ts";
import { theGear } from "./places.ts";
import { type Sentence, say } from "./sentence.ts";

/**
 * What stands under "from" in the variety list: "seed swap, Saltmarsh Hall", "own saved seed, 2025", "not known". `asPlants`: what
 * comes of this crop are plants, and no sets or bulbs.
 */
export function fromWords(source: Source | undefined, plantsFrom?: "bought" | "given", asPlants = true): string {
  if (source === undefined)
    return plantsFrom === undefined ? "not known" : asPlants ? `${plantsFrom} as plants` : plantsFrom;
  const { name, obtained, year } = source;
  const dated = year === undefined ? "" : `, ${year}`;
  if (obtained === undefined) return `${name}${dated}`;
  if (obtained === "saved")
    return /\b(?:own|saved)\b/i.test(name) ? `${name}${dated}` : `own saved seed, from ${name}${dated}`;
  if (obtained === "swapped") return /\bswap/i.test(name) ? `${name}${dated}` : `${name}, swapped${dated}`;
  return `${name}, ${howObtained[obtained]}${dated}`;
}

const howObtained: Readonly<Record<Obtained, string>> = {
  bought: "bought",
  swapped: "swapped",
  saved: "own saved seed",
  gifted: "a gift",
  lent: "lent",
  "paid promotion": "paid promotion",
  "commission link": "bought, commission link",
  "own product": "own product",
  discounted: "bought at a discount",
  "family business": "a business of family or friends",
};

/** What viewers must be told next to the thing; nothing for what was bought, swapped or saved. `many`: "nets", "cloches". */
const disclosures: Partial<Readonly<Record<Obtained, (thing: string, from: string, many: boolean) => string>>> = {
  gifted: (thing, from, many) => `${thing} came free${from}: say so when you show ${many ? "them" : "it"}.`,
  lent: (thing, from, many) =>
    `${thing} ${many ? "are" : "is"} on loan${from}: say so when you show ${many ? "them" : "it"}.`,
  "paid promotion": (thing, from, many) =>
    `${thing} ${many ? "are" : "is"} paid promotion${from}: say so first, and follow local rules.`,
  "commission link": (thing, from) => `A link to ${thing} earns commission${from}: say so before the link.`,
  "own product": (thing, _, many) =>
    `${thing} ${many ? "are" : "is"} your own product: say so when you show ${many ? "them" : "it"}.`,
  discounted: (thing, from, many) =>
    `${thing} cost you less than the price${from}: say so when you show ${many ? "them" : "it"}.`,
  "family business": (thing, from, many) =>
    `${thing} ${many ? "come" : "comes"} from a business of family or friends${from}: say so when you show ${many ? "them" : "it"}.`,
};

/**
 * Who is named as a giver: a seller or maker always, a person only where the records allow it. Of a gift or a loan of which
 * nobody said whose it is, doubt means that nobody is named.
 */
export function namedGiver({ obtained, giver, from }: HowItCame, mayThank: boolean | undefined): string | undefined {
  const isPrivateGift = (obtained === "gifted" || obtained === "lent") && giver !== "a seller";
  return isPrivateGift && !(giver === "a person" && mayThank === true) ? undefined : from;
}

export function disclosureLines(varieties: readonly Variety[], gear: readonly Gear[]): readonly Sentence[] {
  const seed = varieties.map((variety) => ({
    thing: variety.title,
    many: false,
    obtained: variety.source?.obtained,
    giver: variety.source?.giver,
    from: namedGiver({ ...variety.source, from: variety.source?.name }, variety.thankByName),
    record: variety,
  }));
  const things = gear.map((one) => ({
    thing: theGear(one.title),
    many: /[^s]s$/i.test(one.title),
    obtained: one.obtained,
    giver: one.giver,
    from: namedGiver(one, one.thankByName),
    record: one,
  }));
  return [...seed, ...things].flatMap(({ thing, many, obtained, giver, from, record }) => {
    // What a person gave is no notice: it is thanks.
    const words = obtained === undefined || giver === "a person" ? undefined : disclosures[obtained];
    return words === undefined
      ? []
      : [say(capital(words(thing, from === undefined ? "" : ` from ${from}`, many)), [record])];
  });
}
