/** Where plants came from held against what the records say of it. */
import type { Obtained } from "../../model.ts";
import type { Check } from "../fact-check.ts";
import { plainWord } from "../spoken-words.ts";
import type { Claim, Obtaining } from "./claim.ts";
import type { Verdict } from "./records-told.ts";

/** What the records may hold of what is said to be bought, given, swapped or saved; kin and friends both swap and give. */
const fits: Readonly<Record<Obtaining, readonly string[]>> = {
  bought: ["bought", "commission link", "paid promotion", "discounted"] satisfies Obtained[],
  given: ["gifted", "given", "swapped", "lent"],
  swapped: ["swapped", "gifted", "given"],
  saved: ["saved", "own product"] satisfies Obtained[],
};

export function source(check: Check, { subject, how, whom, isSaid }: Extract<Claim, { kind: "source" }>): Verdict {
  const { garden } = check.film.day;
  const variety = garden.varieties.get(subject.variety ?? "");
  // "planted 1 given Smyrna" tells it of the plants, where no file does of the variety.
  const lots = subject.here.length > 0 ? subject.here : subject.anywhere;
  const came = lots.flatMap(({ plantsFrom }) => plantsFrom ?? []);
  const obtained = variety?.source?.obtained ?? came[0];
  const from = variety?.source?.name;
  const isNamed = from !== undefined && sharesWords(from, whom);
  if (how !== undefined && came.some((one) => one === how)) return "agrees";
  if (variety === undefined || obtained === undefined) return isNamed ? "agrees" : "not told";
  // Another's name, which the records know: "the university counter" is where the chillies came from, and not these.
  const others = [...garden.varieties.values()].flatMap((one) => one.source?.name ?? []);
  const isOfAnother = from !== undefined && others.some((other) => other !== from && sharesWords(other, whom));
  if (how === undefined) {
    if (isNamed) return "agrees";
    return isOfAnother ? told() : "not told";
  }
  const fitting = fits[how].includes(obtained);
  // What is one's own came from nobody else.
  return (fitting && (how === "saved" || !isOfAnother)) || (isNamed && !isSaid) ? "agrees" : told();

  function told(): Verdict {
    return {
      kind: "source",
      text: `The records have ${subject.title} as ${obtained}${from === undefined || from === obtained ? "" : `: ${from}`}.`,
      sources: variety?.place === undefined ? [] : [variety.place],
    };
  }
}

/** Words that most sources have in their names. */
const ofMany = new Set(
  "the and for from with day week year old new home big sale sales tree trees own garden gardens seed seeds nursery shop store market swap plant plants friend neighbour neighbor sister brother".split(
    " ",
  ),
);

/** Whether words name where something came from, as its name is written. */
export function sharesWords(name: string, whom: string): boolean {
  const said = new Set(whom.split(" "));
  return name
    .split(/[^\p{L}]+/u)
    .map(plainWord)
    .some((word) => word.length > 2 && !ofMany.has(word) && said.has(word));
}
