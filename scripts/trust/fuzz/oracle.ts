/** What every case has to keep: nothing thrown, an answer within a second, no leavings of the language in what people read. */

/** Milliseconds of processor time: a busy machine is no fault. */
export const AT_MOST = 1000;

const LEAVINGS = /\bNaN\b|\bundefined\b|\[object Object\]|\bInfinity\b/u;
/** A person who writes them within a word is quoted with them standing alone: "0000-00-00NaN". */
const WRITTEN = /NaN|undefined|\[object Object\]|Infinity/u;

/** Throws, with a sentence, when the case does not hold. `input` is what the case was made from. */
export async function holds(input: string, work: () => unknown): Promise<void> {
  const began = process.cpuUsage();
  const told = await work();
  const { user, system } = process.cpuUsage(began);
  const took = (user + system) / 1000;
  if (took > AT_MOST) throw new Error(`took ${took.toFixed(0)} ms`);
  const found = leavingsIn(told, WRITTEN.test(input), new Set());
  if (found !== undefined) throw new Error(found);
}

/** The first string or number in it that no person should meet. */
function leavingsIn(told: unknown, isInInput: boolean, seen: Set<object>): string | undefined {
  if (typeof told === "string") return !isInInput && LEAVINGS.test(told) ? `says ${around(told)}` : undefined;
  if (typeof told === "number") return Number.isNaN(told) ? "gives a number that is none" : undefined;
  if (typeof told !== "object" || told === null || seen.has(told)) return undefined;
  seen.add(told);
  const parts =
    told instanceof Map ? [...told.entries()].flat() : told instanceof Set ? [...told] : Object.entries(told);
  for (const part of parts) {
    const [key, value] = told instanceof Map || told instanceof Set ? ["", part] : (part as [string, unknown]);
    const found = leavingsIn(value, isInInput, seen);
    if (found !== undefined) return key === "" ? found : `${key}: ${found}`;
  }
  return undefined;
}

function around(text: string): string {
  const at = LEAVINGS.exec(text)?.index ?? 0;
  return JSON.stringify(text.slice(Math.max(0, at - 60), at + 60));
}
