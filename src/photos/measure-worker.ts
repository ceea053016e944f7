/** Runs in threads of their own: the measures that go over every pixel. */
import { parentPort } from "node:worker_threads";
import { alignerTo } from "./align.ts";
import { canopyCover, isCovered } from "./canopy-cover.ts";
import { evened } from "./even-exposure.ts";
import type { Answer, Answers, Task, Tasks } from "./measure-threads.ts";
import { straightened } from "./straighten.ts";

type Aligner = ReturnType<typeof alignerTo>;

/** Photos of a viewpoint come one after the other, all held against the same one. */
let last: { readonly name: string; readonly aligner: Aligner } | undefined;

const work: { readonly [What in keyof Tasks]: (task: Tasks[What]) => Answers[What] } = {
  cover: ({ photo, outline }) => {
    const found = canopyCover(photo, outline);
    // Without the bed's outline the white may be sky.
    if (found && outline && isCovered(found)) return { covered: true };
    return found?.isUnsure ? { cannotTell: true } : { cover: found?.cover };
  },
  align: ({ name, reference, photo }) => {
    if (last?.name !== name) last = { name, aligner: alignerTo(reference) };
    const found = last.aligner(photo);
    if (!found) return undefined;
    const { agreeing: _agreeing, found: _found, ...alignment } = found;
    return alignment;
  },
  straighten: ({ photo, alignment, crop, width, height, light }) => {
    const straight = straightened(photo, alignment, crop, width, height);
    return light === undefined ? straight : evened(straight, light).image;
  },
};

function answerTo<What extends keyof Tasks>({ what, task }: Task<What>): Answers[What] {
  return work[what](task);
}

parentPort?.on("message", (task: Task) => {
  let answer: Answer;
  try {
    answer = { done: answerTo(task) };
  } catch (error) {
    answer = { failed: error instanceof Error ? error.message : String(error) };
  }
  parentPort?.postMessage(answer);
});
