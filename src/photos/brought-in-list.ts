/**
 * photos/brought-in.txt remembers what was brought in, so that what the person threw away since does not come back from the
 * same card. Plain text: a line holds the SHA-256 of the file, its size and where it was put; who deletes a line gets it again.
 */
export const listFile = "photos/brought-in.txt";

const opening =
  "# Files that were brought in, so that what you throw away does not come back from the same card.\n" +
  "# Delete a line, and the next ingest brings that file in again.\n";

export interface BroughtInLine {
  readonly hash: string;
  readonly size: number;
  /** Relative to the records folder. */
  readonly to: string;
}

export class BroughtInList {
  readonly #append: (text: string) => Promise<void>;
  readonly #byHash: Map<string, string> = new Map();
  readonly #sizes: Set<number> = new Set();
  #text: string;

  readonly #opening: string;

  /** Lines that are damaged or a person's own are passed over; `begins` is what a new list begins with. */
  constructor(text: string, append: (text: string) => Promise<void>, begins = opening) {
    this.#text = text;
    this.#opening = begins;
    this.#append = append;
    for (const line of text.split(/\r?\n/)) {
      const [, hash, size, to] = /^([0-9a-f]{64})\s+(\d+)\s+(\S.*)$/.exec(line) ?? [];
      if (hash !== undefined && to !== undefined) this.#enter({ hash, size: Number(size), to });
    }
  }

  /** Whether a file of this size was ever brought in: only such files need their bytes looked at. */
  hasSize(size: number): boolean {
    return this.#sizes.has(size);
  }

  /** What was brought in, by hash. */
  hashes(): ReadonlySet<string> {
    return new Set(this.#byHash.keys());
  }

  /** Where a file of this content was put. */
  placeOf(hash: string): string | undefined {
    return this.#byHash.get(hash);
  }

  /** Written at once, so that a run that is broken off has remembered what it did. */
  async remember(line: BroughtInLine): Promise<void> {
    if (this.#byHash.has(line.hash)) return;
    const start = this.#text === "" ? this.#opening : this.#text.endsWith("\n") ? "" : "\n";
    const written = `${line.hash} ${line.size} ${line.to.replace(/[\r\n]/g, "?")}\n`;
    await this.#append(start + written);
    this.#text = written;
    this.#enter(line);
  }

  #enter({ hash, size, to }: BroughtInLine): void {
    this.#byHash.set(hash, to);
    this.#sizes.add(size);
  }
}
