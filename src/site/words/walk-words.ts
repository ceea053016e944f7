/** What a film's page says of its walk: the plan, the photo of a stop, what became of what it showed. */
import { capital, sayAge, sayList, sayNumber } from "../../language/index.ts";
import type { SitePart } from "../page-data/plan.ts";

/** What became of plants; days and amounts as they are said. */
export interface SinceSaid {
  readonly flowered?: string | undefined;
  /** Undefined when nothing was picked, empty when nobody weighed or counted it. */
  readonly picked?: string | undefined;
  readonly times: number;
  readonly lost: number;
  readonly over?: { readonly day: string; readonly wasLost: boolean } | undefined;
}

export const walkWords = {
  title: "The walk",
  plan: (site: string, stops: readonly { readonly number: number; readonly bed: string; readonly part: SitePart }[]) =>
    `The walk over ${site}: ${sayList(stops.map(({ number, bed, part }) => `${number} ${bed} in the ${part}`))}.`,
  north: "N",
  gate: "gate",

  /** Days from the filming day to the photo. */
  taken: (days: number) => `${capital(sayAge(Math.abs(days)))} ${days < 0 ? "before" : "after"} the film.`,

  /** "Since then: in flower from 20 June, 4.2 kg picked, cleared on 3 October."; nothing where nothing was noted. */
  since({ flowered, picked, times, lost, over }: SinceSaid): string {
    const parts = [
      ...(flowered === undefined ? [] : [`in flower from ${flowered}`]),
      ...(picked === undefined
        ? []
        : [picked === "" ? (times === 1 ? "picked" : "picked again and again") : `${picked} picked`]),
      ...(lost > 0 ? [`${sayNumber(lost)} lost`] : []),
      ...(over === undefined ? [] : [`${over.wasLost ? "lost" : "cleared"} on ${over.day}`]),
    ];
    return parts.length === 0 ? "" : `Since then: ${parts.join(", ")}.`;
  },

  said: "What is said here",
  grew: (n: number) => `What grew here: ${sayNumber(n)}`,
  alsoGrew: (n: number) => `What else grew here: ${sayNumber(n)}`,
  alsoNamed: "Also named",
};
