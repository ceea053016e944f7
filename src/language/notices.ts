/**
 * What viewers are told of things that a seller or maker had a hand in, in the first person and in the words that are asked
 * for where the garden is: the FTC's Endorsement Guides (16 CFR 255.5), the CAP Code (2.1, 2.3) with the CMA's guidance, the AANA
 * Code of Ethics (2.7), and the EU's directive 2005/29/EC. Help with the records, not legal advice: local rules decide.
 */
import type { GardenSettings, Giver, Notices, Obtained } from "../model.ts";
import { capital, sayList } from "./numbers.ts";

/** By the English that is written, where garden.md says nothing; of other places the strictest. */
export function noticesOf({ notices, language }: Pick<GardenSettings, "notices" | "language">): Notices {
  if (notices !== undefined) return notices;
  const region = /-([A-Z]{2})\b/.exec(language)?.[1] ?? "";
  return ({ US: "us", GB: "uk", AU: "au", IE: "eu", MT: "eu", CY: "eu" } as const)[region] ?? "all";
}

export interface HowItCame {
  readonly obtained?: Obtained | undefined;
  readonly giver?: Giver | undefined;
  /** Seller, maker or person. */
  readonly from?: string | undefined;
}

/** A tie to a seller or maker; a private person's gift is none, and one of which nobody said is asked about. */
export function isNotice({ obtained, giver }: HowItCame): boolean {
  if (obtained === "gifted" || obtained === "lent") return giver === "a seller";
  return obtained !== undefined && words[obtained] !== undefined;
}

/** Whether a gift or a loan came from a seller was not said, and much hangs on it. */
export function isUndecided({ obtained, giver }: HowItCame): boolean {
  return (obtained === "gifted" || obtained === "lent") && giver === undefined;
}

type Tell = (things: string, from: string | undefined, many: boolean, notices: Notices) => string;

const words: Partial<Readonly<Record<Obtained, Tell>>> = {
  "paid promotion": (things, from) =>
    from === undefined ? `I was paid to show ${things}.` : `${from} paid me to show ${things}.`,
  "own product": (things) => `I make and sell ${things} myself.`,
  "family business": (things, from, many) =>
    `${capital(things)} ${many ? "come" : "comes"} from ${from === undefined ? "" : `${from}, `}a business of my family or friends.`,
  "commission link": (things) => `If you buy ${things} through the link, I earn a commission.`,
  gifted: (things, from, _, notices) =>
    from === undefined
      ? `${capital(things)} came to me free from a seller.`
      : `${from} ${notices === "us" ? "gave" : "sent"} me ${things} free.`,
  discounted: (things, from, many) =>
    `${from ?? "The seller"} let me have ${things} for less than ${many ? "their" : "its"} price.`,
  lent: (things, from) => `${from ?? "The seller"} lent me ${things}.`,
};

/** The gravest first. */
export const gravest = Object.keys(words) as readonly Obtained[];

/** "Ad. Skerry Netting sent me the net free."; undefined where no notice is owed. */
export function noticeLine(things: readonly string[], came: HowItCame, notices: Notices): string | undefined {
  const tell = came.obtained === undefined || !isNotice(came) ? undefined : words[came.obtained];
  if (tell === undefined || things.length === 0) return undefined;
  const isAd = notices !== "us" || came.obtained === "paid promotion";
  return `${isAd ? "Ad. " : ""}${capital(tell(sayList(things), came.from, things.length > 1, notices))}`;
}
