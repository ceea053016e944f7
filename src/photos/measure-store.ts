/**
 * Measures that were taken before, one JSON file in the cache. Keys name the contents they were measured on, so a
 * measure is never wrong, only unused; those not asked for in a run are dropped at its end. The file may be deleted at
 * any time.
 */
import { mkdir, readFile, rename, writeFile } from "node:fs/promises";
import path from "node:path";

export class MeasureStore {
  readonly #file: string;
  readonly #known: ReadonlyMap<string, unknown>;
  readonly #now = new Map<string, unknown>();

  private constructor(file: string, known: ReadonlyMap<string, unknown>) {
    this.#file = file;
    this.#known = known;
  }

  static async open(cacheDir: string): Promise<MeasureStore> {
    const file = path.join(cacheDir, "measures.json");
    const known = await readFile(file, "utf8")
      .then((text) => new Map(Object.entries(JSON.parse(text) as Record<string, unknown>)))
      .catch(() => new Map<string, unknown>());
    return new MeasureStore(file, known);
  }

  /** The measure under a key, taken now when it is not there; `undefined` ("cannot be measured") is remembered too. */
  async get<T>(key: string, take: () => Promise<T | undefined>): Promise<T | undefined> {
    const known = this.#now.get(key) ?? this.#known.get(key);
    const value = known === undefined ? ((await take()) ?? null) : (known as T | null);
    this.#now.set(key, value);
    return value ?? undefined;
  }

  async save(): Promise<void> {
    await mkdir(path.dirname(this.#file), { recursive: true });
    const aside = `${this.#file}.${process.pid}.part`;
    await writeFile(aside, JSON.stringify(Object.fromEntries([...this.#now].sort(([a], [b]) => (a < b ? -1 : 1)))));
    await rename(aside, this.#file);
  }
}
