/** Who gave something, where the person's own words say it: kin, a friend or a neighbour is no seller, unless they trade. */
import type { Giver, Obtained } from "../model.ts";

/** Alternatives of a regular expression, in small letters. */
export const kin =
  "mum|mom|mam|mother|dad|father|nan|nana|nanna|gran|granny|grandma|grandmother|grandad|granddad|grandpa|grandfather|auntie|aunty|aunt|uncle|sister|brother|cousin|niece|nephew|son|daughter|husband|wife|in-law|neighbour|neighbor|next door|friend|mate|pal";
/** In small letters within the words: "Uncle Bob's Compost" may be a maker's name. */
const near = new RegExp(`\\b(?:${kin})(?:['’]?s)?\\b`);
/** And nothing else: "Gran". */
const alone = new RegExp(`^(?:${kin})$`, "i");
const trading =
  /\b(?:nurser(?:y|ies)|farms?|shops?|stores?|stalls?|company|firm|business|seeds|growers?|gardens? cent(?:re|er)|market|trading|works?|co|ltd|inc|llc|brewery|sells?|makes?)\b/i;

/** "a sucker from my sister's" is a person's; "my brother's nursery" and "Grandma's Garden" may be a seller's, which is asked. */
export function giverInWords(obtained: Obtained | undefined, from: string | undefined): Giver | undefined {
  if ((obtained !== "gifted" && obtained !== "lent") || from === undefined) return undefined;
  return (near.test(from) || alone.test(from.trim())) && !trading.test(from) ? "a person" : undefined;
}
