/** What a photo that is dropped on a bed or a variety asks of whoever keeps the records. */
import type { TapAnswer } from "./workbench.ts";

export interface PhotoAsk {
  readonly of: { readonly bed: string; readonly viewpoint?: string | undefined } | { readonly variety: string };
  /** As the person's device calls it. */
  readonly name: string;
  /** Milliseconds since 1970 UTC. */
  readonly modified: number;
  readonly bytes: Uint8Array;
}

export interface PhotoTaking {
  take(ask: PhotoAsk): Promise<TapAnswer>;
}

/** What a page of our own sent; undefined when it is anything else. */
export function photoAsk(said: URLSearchParams, bytes: Uint8Array): PhotoAsk | undefined {
  const [bed, variety, name] = [said.get("bed"), said.get("variety"), said.get("name")];
  const modified = Number(said.get("modified") ?? Number.NaN);
  if (name === null || !Number.isSafeInteger(modified) || (bed === null) === (variety === null)) return undefined;
  return { of: bed === null ? { variety: variety ?? "" } : { bed }, name, modified, bytes };
}
