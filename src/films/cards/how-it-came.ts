/** How a thing came that did not cost its price, in the first person: what must be said aloud. */
import type { HowItCame } from "../../language/index.ts";
import type { Obtained } from "../../model.ts";

type Telling = (thing: string, from: string | undefined) => readonly [string, ...string[]];

/** Several ways, because a garden with kind neighbours says such a thing at every other stop. */
const words: Partial<Record<Obtained, Telling>> = {
  gifted: (thing, from) =>
    from === undefined
      ? [`${thing} came to me free.`, `I paid nothing for ${lower(thing)}.`]
      : isSentence(from)
        ? [`${thing} came to me free: ${from}.`, `I paid nothing for ${lower(thing)}: ${from}.`]
        : [
            `${from} gave me ${lower(thing)} free.`,
            `${thing} came free, from ${from}.`,
            `I have ${lower(thing)} from ${from}, as a gift.`,
          ],
  lent: (thing, from) => [
    `I have ${lower(thing)} on loan${from === undefined ? "" : ` from ${from}`}.`,
    `On loan${from === undefined ? "" : ` from ${from}`}: ${lower(thing)}.`,
  ],
  "paid promotion": (thing, from) => [
    from === undefined
      ? `I was paid to show ${lower(thing)}: this is an ad.`
      : `${from} paid me to show ${lower(thing)}: this is an ad.`,
  ],
  "commission link": (thing) => [
    `My link to ${lower(thing)} earns me a little.`,
    `Buy ${lower(thing)} by my link, and I earn a little.`,
  ],
  "own product": (thing) => [`I make and sell ${lower(thing)} myself.`],
  discounted: (thing) => [`I paid less than the price for ${lower(thing)}.`],
  "family business": (thing) => [`${thing}: from a business of my family or friends.`],
};

/** "A seed firm sent a packet to try, they asked to be told how it did": a person's own words, more than a giver's name. */
function isSentence(from: string): boolean {
  return from.includes(",") || from.split(/\s+/).length > 6;
}

/** Ways to say it, each with the thing in it ("the netting"); none of what was bought, or what a private person gave or lent. */
export function howItCame({ obtained, giver, from }: HowItCame, thing: string): readonly string[] {
  const tell = obtained === undefined || giver === "a person" ? undefined : words[obtained];
  return (tell?.(thing, from) ?? []).map((text) => text.charAt(0).toUpperCase() + text.slice(1));
}

function lower(thing: string): string {
  return thing.replace(/^The /, "the ");
}
