/**
 * The worker that keeps the private pages for a garden without signal. The list of pages is written in front of it when
 * the site is made: path and SHA-256 of each. What is kept is whole or not kept: a page whose bytes are not those of the
 * list fails the whole version, and the one before stays in use.
 */
declare const pages: Readonly<Record<string, string>>;
declare const version: string;

interface WorkerScope {
  readonly registration: { readonly scope: string };
  readonly clients: { claim(): Promise<void> };
  skipWaiting(): Promise<void>;
  addEventListener(kind: "install" | "activate", act: (event: Waiting) => void): void;
  addEventListener(kind: "fetch", act: (event: Asked) => void): void;
  addEventListener(kind: "message", act: (event: MessageEvent & Waiting) => void): void;
}
interface Waiting {
  waitUntil(work: Promise<unknown>): void;
}
interface Asked {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}

const worker = globalThis as unknown as WorkerScope;
const FAMILY = "plotreel field pages ";
const NAME = FAMILY + version;
/** Milliseconds a page may take from the network before the kept one is shown: in a garden a signal is often no signal. */
const PATIENCE = 3000;

worker.addEventListener("install", (event) => event.waitUntil(keepAll().then(() => worker.skipWaiting())));
worker.addEventListener("activate", (event) => event.waitUntil(dropOlder().then(() => worker.clients.claim())));
worker.addEventListener("message", (event) =>
  event.waitUntil(keptAfterAll().then((kept) => event.ports[0]?.postMessage(kept))),
);
worker.addEventListener("fetch", (event) => {
  const path = pathOf(event.request);
  if (path !== undefined) event.respondWith(answer(event.request, path));
});

/** Path in the list of what a request is for; undefined for what is not kept. */
function pathOf(request: Request): string | undefined {
  const { scope } = worker.registration;
  const [address = ""] = request.url.split(/[?#]/);
  if (request.method !== "GET" || !address.startsWith(scope)) return undefined;
  const path = decodeURIComponent(address.slice(scope.length));
  return [path, `${path}index.html`, `${path}/index.html`].find((each) => Object.hasOwn(pages, each));
}

function addressOf(path: string): string {
  return new URL(path.split("/").map(encodeURIComponent).join("/"), worker.registration.scope).href;
}

/** Unchanged pages are taken over from the version before, so that a new version costs what is new. */
async function keepAll(): Promise<void> {
  const cache = await caches.open(NAME);
  for (const [path, hash] of Object.entries(pages)) {
    const address = addressOf(path);
    const known = await caches.match(address);
    const page =
      known !== undefined && (await hashOf(known)) === hash ? known : await fetch(address, { cache: "no-store" });
    if (!page.ok || (await hashOf(page)) !== hash) throw new Error(`${path} is not the page it should be.`);
    await cache.put(address, new Response(await page.blob(), { headers: page.headers }));
  }
}

async function hashOf(page: Response): Promise<string> {
  const digest = await crypto.subtle.digest("SHA-256", await page.clone().arrayBuffer());
  return btoa(String.fromCharCode(...new Uint8Array(digest)));
}

async function isWhole(): Promise<boolean> {
  const cache = await caches.open(NAME);
  const kept = await Promise.all(Object.keys(pages).map((path) => cache.match(addressOf(path))));
  return kept.every((page) => page !== undefined);
}

/** A browser short of room may have dropped pages: what is missing is fetched again, if there is a network to do it. */
async function keptAfterAll(): Promise<boolean> {
  return (await isWhole()) || keepAll().then(isWhole, () => false);
}

async function dropOlder(): Promise<void> {
  const names = await caches.keys();
  await Promise.all(
    names.filter((name) => name.startsWith(FAMILY) && name !== NAME).map((name) => caches.delete(name)),
  );
}

/** The newest page where there is a network, else the kept one at once. */
async function answer(request: Request, path: string): Promise<Response> {
  const kept = await (await caches.open(NAME)).match(addressOf(path));
  if (kept === undefined) return fetch(request);
  try {
    const fresh = await fetch(request, { signal: AbortSignal.timeout(PATIENCE) });
    return fresh.ok ? fresh : kept;
  } catch {
    return kept;
  }
}
