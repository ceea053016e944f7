/** Which way of saying has been used in a brief: no frame comes twice while another fits, and none a third time. */
import type { Ground, Sentence } from "../../language/index.ts";
import { say } from "../../language/index.ts";
import { fits } from "./count-words.ts";

/** One way to say a thing: the frame's own name, the words, and what they rest on. */
export interface Way {
  readonly frame: string;
  readonly text: string;
  readonly grounds: readonly (Ground | undefined)[];
  /** Says little: taken only when nothing else fits. */
  readonly last?: true | undefined;
}

export interface Wording {
  /** The first of the least used ways that fits; undefined when none does, or all were heard twice. */
  readonly choose: (ways: readonly Way[], words: number, extra?: (text: string) => boolean) => Sentence | undefined;
}

const mostHeard = 2;

export function makeWording(): Wording {
  const heard = new Map<string, number>();
  const said = new Set<string>();
  return {
    choose(ways, words, extra = () => true) {
      const open = ways.filter(
        ({ text, frame }) =>
          fits(text, words) && extra(text) && !said.has(text.toLowerCase()) && (heard.get(frame) ?? 0) < mostHeard,
      );
      const cost = ({ frame, last }: Way) => (heard.get(frame) ?? 0) + (last === true ? mostHeard : 0);
      const best = open.toSorted((a, b) => cost(a) - cost(b))[0];
      if (best === undefined) return undefined;
      heard.set(best.frame, (heard.get(best.frame) ?? 0) + 1);
      said.add(best.text.toLowerCase());
      return say(best.text, best.grounds);
    },
  };
}

/** A way of somebody's own words is no stock phrase. */
export function own(text: string, grounds: readonly (Ground | undefined)[]): Way {
  return { frame: `own: ${text}`, text, grounds };
}
