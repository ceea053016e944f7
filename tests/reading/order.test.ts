/** The parts of a line in any order give the same facts, or a question. */
import { describe, expect, it } from "vitest";
import { reading } from "./a-reader.ts";

/** Each line in its parts, as it is written verb first. */
const lines: readonly (readonly string[])[] = [
  ["sowed", "24 Musselburgh", "in trays", "yesterday"],
  ["planted", "6 Crown Prince", "in Squash Bed", "on 12 June"],
  ["picked", "1.4 kg Sungold", "from Cold Frame", "yesterday"],
  ["picked", "12 leeks", "from Long Bed", "this morning"],
  ["lost", "3 Musselburgh", "to slugs", "in Cold Frame"],
  ["cleared", "the Aquadulce", "from Long Bed", "yesterday"],
  ["potted on", "12 Sungold", "into 9 cm pots", "on 10 June"],
  ["flowered:", "Crown Prince", "in Squash Bed", "on 10 June"],
  ["moved", "9 Sungold", "from Cold Frame", "to Long Bed"],
  ["trouble:", "blackfly", "on Aquadulce", "in Long Bed"],
  ["gave away", "5 Sungold", "yesterday"],
  ["thinned", "the leeks", "to 20", "in Long Bed"],
];

function ordersOf(parts: readonly string[]): readonly (readonly string[])[] {
  if (parts.length < 2) return [parts];
  return parts.flatMap((part, at) => ordersOf(parts.toSpliced(at, 1)).map((rest) => [part, ...rest]));
}

const factsOf = (text: string) => {
  const { as, events } = reading(text);
  const facts = events.map(({ kind, variety, crop, count, grams, bed, toBed, day, cause }) =>
    JSON.stringify([kind, variety, crop, count?.value, grams, bed, toBed, day, cause?.toLowerCase()]),
  );
  return as === "facts" ? facts.sort().join("\n") : as;
};

describe.each([" ", ", "])("parts apart by %j", (joint) => {
  it.each(lines.map((parts) => [parts.join(" "), parts] as const))("%s", (_, parts) => {
    const meant = factsOf(parts.join(" "));
    expect(meant).toMatch(/^\[/);
    const others = ordersOf(parts)
      .map((order) => order.map((part) => part.replace(/:$/, "")).join(joint))
      .map((text) => [text, factsOf(text)] as const)
      .filter(([, facts]) => facts !== meant && facts !== "question");
    expect(others).toEqual([]);
  });
});
