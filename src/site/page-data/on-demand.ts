/**
 * A site's data whose parts are worked out when they are first asked for: while records are edited, a person looks at one
 * page, and the rest would only keep it waiting. No part holds characters that turn the direction of what follows.
 */
import { withoutDirectionControls } from "../without-direction-controls.ts";

export function onDemand<Site extends object>(parts: { readonly [Part in keyof Site]: () => Site[Part] }): Site {
  const site = {};
  for (const [part, make] of Object.entries<() => unknown>(parts)) {
    const get = once(() => withoutDirectionControls(make()));
    Object.defineProperty(site, part, { enumerable: true, configurable: true, get });
  }
  return site as Site;
}

/** Made when it is first asked for, and kept. */
export function once<T>(make: () => T): () => T {
  let made: { readonly thing: T } | undefined;
  return () => {
    made ??= { thing: make() };
    return made.thing;
  };
}
