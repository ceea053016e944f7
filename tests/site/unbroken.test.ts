import { expect, test } from "vitest";
import { unbroken } from "../../src/site/unbroken.ts";

test.each([
  ["green went from 8 % to 58 % of the bed", "green went from 8\u00a0% to 58\u00a0% of the bed"],
  ["9.8 kg, 15 % of it; 5 cm of rain", "9.8\u00a0kg, 15\u00a0% of it; 5\u00a0cm of rain"],
  ["21.2 °C by 8 m, 2 min 10 s", "21.2\u00a0°C by 8\u00a0m, 2\u00a0min 10\u00a0s"],
  ["on 5 May 3 more, 12 gardens, 6 slugs, 2 mice", "on 5 May 3 more, 12 gardens, 6 slugs, 2 mice"],
])("%s", (said, shown) => {
  expect(unbroken(said)).toBe(shown);
  expect(unbroken(shown)).toBe(shown);
});
