/** What the hand does while a thing is told: a stop without an action is a stand-still. */
import type { EventKind } from "../../model.ts";
import type { Lot } from "../bed-on-the-day.ts";
import { pickVerb } from "../picked-sentences.ts";

/** Where a trouble shows, and what the hand does to show it. The first that fits the cause. */
const shows: readonly (readonly [cause: RegExp, ways: readonly string[]])[] = [
  [/clubroot|root|canker|wireworm|eelworm/i, ["show the roots", "hold up a root"]],
  [/blossom end|split|crack|scab|fruit/i, ["turn up a fruit", "cup one fruit"]],
  [/slug|snail/i, ["look underneath", "part the leaves"]],
  [/mouse|mice|vole|pigeon|bird|cat\b|deer|rabbit/i, ["point to the bites", "show the damage"]],
  [/frost|wind|heat|drought|hail|sun/i, ["touch the scorched leaves", "show the worst plant"]],
  [/./, ["turn a leaf", "hold a leaf up", "bend a leaf back"]],
];

export function handsForTrouble(cause: string): readonly string[] {
  return shows.find(([words]) => words.test(cause))?.[1] ?? [];
}

/** The verb of having it, said to oneself: "dig", "cut", "lift", "pick". */
const taking: Readonly<Record<string, string>> = {
  dug: "dig",
  cut: "cut",
  lifted: "lift",
  harvested: "pick",
  picked: "pick",
  pulled: "pull",
};

export function takingHand(lot: Lot): string {
  const event = lot.events.findLast(({ kind }: { readonly kind: EventKind }) => kind === "picked");
  return taking[pickVerb(event, lot)] ?? "pick";
}
