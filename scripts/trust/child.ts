/** One command as a person would give it who answers each question of `settle` with the first key. */
import { realEffects } from "../../src/cli/effects.ts";
import { main } from "../../src/cli/main.ts";

const back = Number(process.env.TRUST_CLOCK ?? 0);
if (back !== 0) {
  const now = Date.now;
  Date.now = () => now() + back;
}
process.exitCode = await main(process.argv.slice(2), {
  ...realEffects(),
  canAsk: true,
  askKey: async (_question, keys) => keys[0]?.key,
  askLine: async () => undefined,
});
