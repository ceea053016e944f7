/** As many threads as there are cores for what goes over every pixel, so that two photos are measured at a time on two cores. */
import { availableParallelism } from "node:os";
import path from "node:path";
import { Worker } from "node:worker_threads";
import pLimit from "p-limit";
import type { Crop } from "./common-crop.ts";
import type { GreyImage, Outline, RgbImage } from "./raw-image.ts";
import type { Alignment } from "./similarity.ts";

export interface Tasks {
  readonly cover: { readonly photo: RgbImage; readonly outline: Outline | undefined };
  /** `name` tells references apart. */
  readonly align: { readonly name: string; readonly reference: GreyImage; readonly photo: GreyImage };
  readonly straighten: {
    readonly photo: RgbImage;
    readonly alignment: Alignment;
    readonly crop: Crop;
    /** Of the result, in pixels. */
    readonly width: number;
    readonly height: number;
    /** The picture whose light it is to have, of the same size as the result. */
    readonly light: RgbImage | undefined;
  };
}

export interface Answers {
  readonly cover: { readonly cover?: number | undefined; readonly covered?: true; readonly cannotTell?: true };
  readonly align: Alignment | undefined;
  readonly straighten: RgbImage;
}

export interface Task<What extends keyof Tasks = keyof Tasks> {
  readonly what: What;
  readonly task: Tasks[What];
}

export type Answer = { readonly done: Answers[keyof Answers] } | { readonly failed: string };

export class MeasureThreads {
  readonly #limit: ReturnType<typeof pLimit>;
  readonly #idle: Worker[] = [];
  readonly #all: Set<Worker> = new Set();

  constructor(count: number = availableParallelism()) {
    this.#limit = pLimit(count);
  }

  run<What extends keyof Tasks>(what: What, task: Tasks[What]): Promise<Answers[What]> {
    return this.#limit(async () => {
      const worker = this.#idle.pop() ?? this.#start();
      const answer = await this.#ask(worker, { what, task });
      this.#idle.push(worker);
      if ("failed" in answer) throw new Error(answer.failed);
      return answer.done as Answers[What];
    });
  }

  async close(): Promise<void> {
    await Promise.all([...this.#all].map((worker) => worker.terminate()));
    this.#all.clear();
    this.#idle.length = 0;
  }

  #start(): Worker {
    // Built for a registry the worker is a .js file beside this one.
    const worker = new Worker(new URL(`./measure-worker${path.extname(import.meta.url)}`, import.meta.url));
    this.#all.add(worker);
    return worker;
  }

  #ask(worker: Worker, task: Task): Promise<Answer> {
    return new Promise((resolve, reject) => {
      const settle = (finish: () => void) => {
        worker.off("message", answered).off("error", failed).off("exit", ended);
        finish();
      };
      const answered = (answer: Answer) => settle(() => resolve(answer));
      const failed = (error: unknown) => settle(() => reject(error));
      const ended = () => settle(() => reject(new Error("A measuring thread ended before its work was done.")));
      worker.on("message", answered).on("error", failed).on("exit", ended);
      worker.postMessage(task);
    });
  }
}
