/** What the page of photos without a name asks of whoever keeps the records, and is answered. */

export interface NamingAsk {
  /** Path. */
  readonly photo: string;
  /** What stood beside the photo when the page was made, or what the person was shown since and agreed to. */
  readonly state: string;
  readonly as: "name" | "caption";
  readonly name: string;
}

export interface NamingAnswer {
  /** One sentence for the person. */
  readonly told: string;
  /** Number by which it can be taken back; only when it was written. */
  readonly undo?: number | undefined;
  /** The words beside the photo are others by now: what they say, and the state to agree to. */
  readonly asks?: { readonly state: string; readonly text: string } | undefined;
  /** It was taken back. */
  readonly done?: true | undefined;
}

export interface PhotoNaming {
  /** What stands beside a photo, as a digest; empty when nothing does. */
  state(photo: string): string;
  name(ask: NamingAsk): Promise<NamingAnswer>;
  undo(id: number): Promise<NamingAnswer>;
}

/** Addresses that take a tap, below the field pages. No record makes a page of such a name. */
export const NAME_AT = "@name";
export const UNDO_AT = "@undo";

/** What a page of our own sent; undefined when it is anything else. */
export function namingAsked(naming: PhotoNaming, at: string, sent: unknown): Promise<NamingAnswer> | undefined {
  if (typeof sent !== "object" || sent === null) return undefined;
  const { photo, state, as, name, id } = sent as Readonly<Record<string, unknown>>;
  if (at === UNDO_AT) return Number.isSafeInteger(id) ? naming.undo(id as number) : undefined;
  if (at !== NAME_AT || (as !== "name" && as !== "caption")) return undefined;
  if (typeof photo !== "string" || typeof state !== "string" || typeof name !== "string") return undefined;
  return naming.name({ photo, state, as, name });
}
