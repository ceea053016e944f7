/** What long work says of itself: at a terminal and in a log. */
import { expect, it } from "vitest";
import { reportTo } from "../../src/cli/report.ts";

function saidBy(terminal: boolean, work: readonly (readonly [seconds: number, done: number])[], total: number) {
  const lines: string[] = [];
  const line = (text: string) => void lines.push(text);
  let now = 0;
  const report = reportTo({ terminal, err: line, redraw: line }, () => now);
  for (const [seconds, done] of work) {
    now = seconds * 1000;
    report.progress("Making photo copies", done, total);
  }
  return lines;
}

it("at a terminal says how many, how fast and how long yet", () => {
  expect(
    saidBy(
      true,
      [
        [0, 0],
        [10, 42],
        [60, 300],
        [110, 790],
        [112, 800],
      ],
      800,
    ),
  ).toEqual([
    "Making photo copies: 0 of 800",
    "Making photo copies: 42 of 800, 4.2 a second, about 3 min left",
    "Making photo copies: 300 of 800, 5 a second, about 2 min left",
    "Making photo copies: 790 of 800, 7.2 a second, about 1 s left",
    "Making photo copies: 800 of 800",
  ]);
});

it("in a log says little: a line every half minute, and one at the end", () => {
  const everySecond = Array.from({ length: 71 }, (_, second) => [second, second * 10] as const);
  expect(saidBy(false, everySecond, 700)).toEqual([
    "Making photo copies: 300 of 700",
    "Making photo copies: 600 of 700",
    "Making photo copies: 700",
  ]);
  expect(
    saidBy(
      false,
      [
        [0, 0],
        [1, 700],
      ],
      700,
    ),
  ).toEqual([]);
});
