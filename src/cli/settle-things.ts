/** The last part of `settle`: what is worth asking, one key or a few words each, kept as a line. */
import type { Garden } from "../model.ts";
import { growGarden } from "../timeline/index.ts";
import { askedNow, type WorthAsking } from "../tour/index.ts";
import type { Key } from "./ask.ts";
import type { Effects } from "./effects.ts";
import { type Keeping, keepAnswer, keepNotAsked } from "./keep-answer.ts";
import type { Settling } from "./settle-command.ts";
import { wrapped } from "./wrapped-text.ts";
import { writtenFiles } from "./written-files.ts";

const LETTERS: readonly string[] = ["a", "b", "c", "d"];

/** How many were answered; each question is asked once in a run. */
export async function settleThings(settling: Settling, effects: Effects): Promise<number> {
  const { recordsDir, today } = settling;
  const files = writtenFiles(recordsDir, effects);
  const passed = new Set<string>();
  let answered = 0;
  for (;;) {
    const garden: Garden = growGarden(await settling.records(), []);
    const asking = askedNow(garden, today).find(({ id }) => !passed.has(id));
    if (asking === undefined || passed.size >= MOST_IN_A_RUN) return answered;
    passed.add(asking.id);
    const outcome = await ask(asking, { garden, today, recordsDir, files, effects }, effects);
    if (outcome === "stop") return answered;
    if (outcome === "kept") answered += 1;
  }
}

/** More in a row is a form to fill in. */
const MOST_IN_A_RUN = 3;

async function ask(asking: WorthAsking, keeping: Keeping, effects: Effects): Promise<"kept" | "skip" | "stop"> {
  effects.out("");
  for (const line of wrapped("", asking.why === undefined ? asking.text : `${asking.text} ${asking.why}`))
    effects.out(line);
  const keys: readonly Key[] = [
    ...asking.taps.map((tap, at) => ({ key: LETTERS[at] ?? "", means: tap })),
    { key: "t", means: `type it, such as: ${asking.such}` },
    { key: "s", means: "skip this one" },
    { key: "n", means: "do not ask this again" },
    { key: "q", means: "stop for now" },
  ];
  for (;;) {
    const key = await effects.askKey("What is it?", keys);
    if (key === undefined || key === "q") return "stop";
    if (key === "s") return "skip";
    const tapped = asking.taps[LETTERS.indexOf(key)];
    const answer = tapped ?? (key === "t" ? await effects.askLine("In a few words") : undefined);
    if (key === "t" && (answer ?? "").trim() === "") continue;
    const { told, undo } =
      key === "n" ? await keepNotAsked(asking, keeping) : await keepAnswer(asking, answer ?? "", keeping);
    effects.out(told);
    if (undo !== undefined) return "kept";
  }
}
