/** What pages wrote into the records while `watch` runs: whole files, each of which can be put back as long as nobody changed it since. */
import { createHash } from "node:crypto";
import path from "node:path";
import { readFileAt } from "../records/index.ts";
import type { TapAnswer } from "../site/index.ts";
import type { Effects } from "./effects.ts";

export interface WrittenFiles {
  /** Undefined when there is no such file. Files are named below the records folder, with forward slashes. */
  bytes(file: string): Buffer | undefined;
  /** Stands for what is in a file; empty when there is none. */
  state(file: string): string;
  /** The number by which it is taken back; undefined, and nothing written, when another `before` stands there by now. */
  write(file: string, before: Uint8Array | undefined, after: Uint8Array): Promise<number | undefined>;
  undo(id: number): Promise<TapAnswer>;
}

interface Written {
  readonly file: string;
  readonly before: Uint8Array | undefined;
  readonly after: Uint8Array;
}

export function writtenFiles(recordsDir: string, effects: Effects): WrittenFiles {
  const written: Written[] = [];
  const absolute = (file: string) => path.join(recordsDir, ...file.split("/"));

  function bytes(file: string): Buffer | undefined {
    try {
      return readFileAt(absolute(file));
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code === "ENOENT") return undefined;
      throw error;
    }
  }

  return {
    bytes,
    state: (file) => digestOf(bytes(file)),
    async write(file, before, after) {
      const isDone =
        before === undefined
          ? await effects.createText(absolute(file), Buffer.from(after).toString("utf8"))
          : await effects.editBytes(absolute(file), before, after);
      return isDone ? written.push({ file, before, after }) - 1 : undefined;
    },
    async undo(id) {
      const last = written[id];
      if (last === undefined) return { told: "Nothing of that is known any more." };
      const { file, before, after } = last;
      const isAsWritten = bytes(file)?.equals(after) === true;
      const isDone =
        isAsWritten &&
        (before === undefined
          ? await effects.removeBytes(absolute(file), after)
          : await effects.editBytes(absolute(file), after, before));
      if (!isDone) return { told: `${file} was changed since, so it was left as it is.` };
      effects.err(`Taken back: ${file}`);
      return { told: before === undefined ? `${file} is gone again.` : `${file} is as it was.`, done: true };
    },
  };
}

export function digestOf(bytes: Uint8Array | undefined): string {
  return bytes === undefined ? "" : createHash("sha256").update(bytes).digest("hex").slice(0, 24);
}

/** What a person is asked before a file is changed that is another than the one their page was made from. */
export function changedBeneath(file: string, now: Uint8Array | undefined): TapAnswer {
  const text = now === undefined ? "" : Buffer.from(now).toString("utf8");
  return {
    told:
      now === undefined ? `${file} is gone since this page was made.` : `${file} was changed since this page was made.`,
    asks: { state: digestOf(now), text },
  };
}
