/** One command as a person would give it who answers each question of `settle` with the first key; or what a page saves. */
import { realEffects } from "../../src/cli/effects.ts";
import { main } from "../../src/cli/main.ts";
import { savedByPage } from "./page-saves.ts";

const back = Number(process.env.TRUST_CLOCK ?? 0);
if (back !== 0) {
  const now = Date.now;
  Date.now = () => now() + back;
}
const argv = process.argv.slice(2);
process.exitCode = argv[0]?.startsWith("@")
  ? await savedByPage(argv[0])
  : await main(argv, {
      ...realEffects(),
      canAsk: true,
      askKey: async (_question, keys) => keys[0]?.key,
      askLine: async () => undefined,
    });
