/** What is in a file that is brought in, and what the records hold already. Large films are never in memory whole. */
import { createHash } from "node:crypto";
import type { PhotoSource, PhotoStore, SourceFile } from "./ingest-files.ts";

export interface Content {
  readonly size: number;
  /** SHA-256, hexadecimal. */
  hash(): Promise<string>;
  data(): Uint8Array | AsyncIterable<Uint8Array>;
}

/** The card could not be read: nothing is wrong with the records. */
export class UnreadSource extends Error {}

export function contentInMemory(bytes: Uint8Array): Content {
  let hash: string | undefined;
  return {
    size: bytes.length,
    hash: async () => {
      hash ??= createHash("sha256").update(bytes).digest("hex");
      return hash;
    },
    data: () => bytes,
  };
}

/** Read piece by piece. Reading it to bring it in gives its hash as well, so that a film is read once. */
export function contentOnCard({ path, size }: SourceFile, source: PhotoSource): Content {
  let hash: string | undefined;
  async function* pieces(): AsyncGenerator<Uint8Array> {
    const digest = createHash("sha256");
    let read = 0;
    try {
      for await (const piece of source.chunks(path)) {
        digest.update(piece);
        read += piece.length;
        yield piece;
      }
    } catch (error) {
      throw new UnreadSource(path, { cause: error });
    }
    if (read !== size) throw new UnreadSource(path);
    hash = digest.digest("hex");
  }
  return {
    size,
    hash: async () => {
      if (hash === undefined) for await (const _ of pieces());
      return hash as unknown as string;
    },
    data: pieces,
  };
}

/** The files below photos/, by name and by content. Content is hashed only where two sizes agree. */
export class Present {
  readonly #store: PhotoStore;
  /** Folded to one case, since some disks tell no difference. */
  readonly #names: Set<string> = new Set();
  readonly #bySize: Map<number, string[]> = new Map();
  readonly #hashes: Map<string, string | undefined> = new Map();

  private constructor(store: PhotoStore) {
    this.#store = store;
  }

  static async of(store: PhotoStore): Promise<Present> {
    const present = new Present(store);
    for (const { path, size } of await store.list()) present.#enter(path, size);
    return present;
  }

  has(path: string): boolean {
    return this.#names.has(folded(path));
  }

  async sameAs(content: Content): Promise<string | undefined> {
    const candidates = this.#bySize.get(content.size) ?? [];
    if (candidates.length === 0) return undefined;
    const wanted = await content.hash();
    for (const path of candidates) if ((await this.#hash(path)) === wanted) return path;
    return undefined;
  }

  add(path: string, size: number, hash: string): void {
    this.#enter(path, size);
    this.#hashes.set(path, hash);
  }

  /** Looks at a file that appeared since the run began. */
  async lookAt(path: string, size: number): Promise<void> {
    this.#enter(path, size);
    await this.#hash(path);
  }

  #enter(path: string, size: number): void {
    this.#names.add(folded(path));
    const known = this.#bySize.get(size);
    if (known) known.push(path);
    else this.#bySize.set(size, [path]);
  }

  async #hash(path: string): Promise<string | undefined> {
    if (!this.#hashes.has(path)) this.#hashes.set(path, await this.#store.hash(path).catch(() => undefined));
    return this.#hashes.get(path);
  }
}

function folded(path: string): string {
  return path.normalize("NFC").toLowerCase();
}
