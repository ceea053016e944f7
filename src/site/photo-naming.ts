/** What the page of photos without a name asks of whoever keeps the records. */
import type { Sent, TapAnswer } from "./workbench.ts";

export interface NamingAsk {
  /** Path. */
  readonly photo: string;
  /** What stood beside the photo when the page was made, or what the person was shown since and agreed to. */
  readonly state: string;
  readonly as: "name" | "caption";
  readonly name: string;
}

export interface PhotoNaming {
  /** What stands beside a photo, as a digest; empty when nothing does. */
  state(photo: string): string;
  name(ask: NamingAsk): Promise<TapAnswer>;
}

/** What a page of our own sent; undefined when it is anything else. */
export function namingAsk({ photo, state, as, name }: Sent): NamingAsk | undefined {
  if (as !== "name" && as !== "caption") return undefined;
  if (typeof photo !== "string" || typeof state !== "string" || typeof name !== "string") return undefined;
  return { photo, state, as, name };
}
