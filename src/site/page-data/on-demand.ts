/**
 * A site's data whose parts are worked out when they are first asked for: while records are edited, a person looks at one
 * page, and the rest would only keep it waiting. No part holds characters that turn the direction of what follows.
 */
import { withoutDirectionControls } from "../without-direction-controls.ts";

export function onDemand<Site extends object>(parts: { readonly [Part in keyof Site]: () => Site[Part] }): Site {
  const site = {};
  for (const [part, make] of Object.entries<() => unknown>(parts)) {
    const get = once(() => clean(make()));
    Object.defineProperty(site, part, { enumerable: true, configurable: true, get });
  }
  return site as Site;
}

const alreadyClean = new WeakSet<object>();

function clean<T>(part: T): T {
  return typeof part === "object" && part !== null && alreadyClean.has(part) ? part : withoutDirectionControls(part);
}

/** Pages of which the addresses are known, and each other thing only when it is first asked for: one of many is looked at. */
export function pagesOnDemand<Thing, Page extends object, Address extends keyof Page>(
  things: readonly Thing[],
  addressOf: (thing: Thing) => Pick<Page, Address>,
  make: (thing: Thing) => Page,
): readonly Page[] {
  const pages = things.map((thing) => {
    const whole = once(() => withoutDirectionControls(make(thing)));
    const address = withoutDirectionControls(addressOf(thing)) as Page;
    return new Proxy(address, {
      get: (known, key) => Reflect.get(Object.hasOwn(known, key) ? known : whole(), key),
      has: (_, key) => Reflect.has(whole(), key),
      ownKeys: () => Reflect.ownKeys(whole()),
      getOwnPropertyDescriptor(_, key) {
        const own = Reflect.getOwnPropertyDescriptor(whole(), key);
        return own && { ...own, configurable: true };
      },
    });
  });
  alreadyClean.add(pages);
  return pages;
}

/** Made when it is first asked for, and kept. */
export function once<T>(make: () => T): () => T {
  let made: { readonly thing: T } | undefined;
  return () => {
    made ??= { thing: make() };
    return made.thing;
  };
}
