/**
 * Measures remembered by what they were taken from: the photo's own content, what it was held against, and the way of
 * measuring. One file, never wrong, deletable at any time.
 */
import { mkdir, readFile, writeFile } from "node:fs/promises";
import path from "node:path";
import { makeWhole } from "../store/index.ts";

/** New measures after which they are written down, so that a run that is broken off loses little. */
const writeEvery = 25;

export class MeasureCache {
  readonly #file: string;
  readonly #known: Map<string, unknown>;
  #unwritten = 0;
  #writing: Promise<void> = Promise.resolve();

  private constructor(file: string, known: Map<string, unknown>) {
    this.#file = file;
    this.#known = known;
  }

  static async open(dir: string): Promise<MeasureCache> {
    const file = path.join(dir, "measures.json");
    await mkdir(dir, { recursive: true });
    try {
      return new MeasureCache(file, new Map(Object.entries(JSON.parse(await readFile(file, "utf8")) as object)));
    } catch {
      return new MeasureCache(file, new Map());
    }
  }

  /** What is known under a key, else what `measure` finds. Undefined ("cannot be measured") is remembered as well. */
  async of<T>(key: string, measure: () => Promise<T | undefined>): Promise<T | undefined> {
    if (this.#known.has(key)) return (this.#known.get(key) ?? undefined) as T | undefined;
    const found = await measure();
    this.#known.set(key, found ?? null);
    this.#unwritten += 1;
    if (this.#unwritten >= writeEvery) await this.save();
    return found;
  }

  async save(): Promise<void> {
    if (this.#unwritten === 0) return this.#writing;
    this.#unwritten = 0;
    // One after the other, so that the last one written is the fullest.
    this.#writing = this.#writing.then(() => this.#write());
    return this.#writing;
  }

  async #write(): Promise<void> {
    const inOrder = [...this.#known].sort(([a], [b]) => (a < b ? -1 : 1));
    await makeWhole(this.#file, (part) => writeFile(part, JSON.stringify(Object.fromEntries(inOrder))));
  }
}
