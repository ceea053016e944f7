/** The marks of the walks belong to the statements they were made for; `MARKS=1` prints their shares. */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";

interface Marks {
  readonly gardens: Readonly<
    Record<string, { readonly stops: Readonly<Record<string, { readonly before: string; readonly after: string }>> }>
  >;
}
interface Walk {
  readonly stops: readonly { readonly bed: string; readonly statements: readonly { readonly held: boolean }[] }[];
}

const read = (file: string): unknown => JSON.parse(readFileSync(`tests/walks/${file}`, "utf8"));
const { gardens } = read("marks.json") as Marks;

test("every statement that the records hold has a mark, and no other", () => {
  expect(Object.keys(gardens)).toHaveLength(6);
  const held = { before: 0, after: 0 };
  const there = { before: 0, after: 0 };
  for (const [garden, { stops }] of Object.entries(gardens)) {
    const walk = read(`${garden}/would-say.json`) as Walk;
    expect(walk.stops.map(({ bed }) => bed)).toEqual(Object.keys(stops));
    for (const { bed, statements } of walk.stops) {
      for (const when of ["before", "after"] as const) {
        const marks = [...(stops[bed]?.[when] ?? "")];
        expect(
          marks.map((mark) => mark !== "."),
          `${garden}, ${bed}`,
        ).toEqual(statements.map((one) => one.held));
        expect(marks.filter((mark) => !".CDUM".includes(mark))).toEqual([]);
        held[when] += marks.filter((mark) => mark !== ".").length;
        there[when] += marks.filter((mark) => "CD".includes(mark)).length;
      }
    }
  }
  if (process.env.MARKS !== undefined) console.table({ held, there });
  expect(held.before).toBe(held.after);
  expect(there.after).toBeGreaterThan(there.before);
});
