/** The end of `plotreel check`: what `settle --asks` asks. */
import { askedNow } from "../tour/index.ts";
import type { CheckOptions } from "./check-command.ts";
import type { Effects } from "./effects.ts";
import type { Loaded } from "./load-garden.ts";
import { wrapped } from "./wrapped-text.ts";

export function showAsked(
  { garden, today }: Loaded,
  { json, reading }: CheckOptions,
  effects: Pick<Effects, "out">,
): void {
  if (json === true || (reading !== undefined && reading !== false)) return;
  const asked = askedNow(garden, today);
  if (asked.length === 0) return;
  effects.out("");
  effects.out('Worth asking yourself ("plotreel settle --asks" keeps the answers):');
  for (const { text } of asked) for (const line of wrapped("  ", text)) effects.out(line);
}
