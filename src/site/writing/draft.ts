/** What is typed and not written yet: it outlives the page, which is made again whenever the garden is. */

export interface Draft {
  /** Of the save it will be. */
  readonly id: string;
  readonly day: string;
  /** Empty for none. */
  readonly bed: string;
  readonly lines: readonly string[];
  /** The line that is being typed. */
  readonly line: string;
}

const KEY = "writing";

export function keepDraft(draft: Draft): void {
  sessionStorage.setItem(KEY, JSON.stringify(draft));
}

export function keptDraft(): Draft | undefined {
  try {
    return JSON.parse(sessionStorage.getItem(KEY) ?? "null") ?? undefined;
  } catch {
    return undefined;
  }
}

export function freshId(): string {
  // Not crypto.randomUUID, which a page at another address of the house does not have.
  return Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) => byte.toString(16).padStart(2, "0")).join("");
}

/** As it will stand in the note: one line, without a mark of a list before it. */
export function cleanLine(text: string): string {
  return text
    .replace(/[\p{Cc}\s]+/gu, " ")
    .replace(/^ ?(?:[-*+] )+/u, "")
    .trim();
}
