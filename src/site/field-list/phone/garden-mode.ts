/** What the garden needs of the phone: a screen that stays awake, storage that stays, pages without a network. */
import type { Keeping } from "./keeping.ts";
import { at } from "./page.ts";

/** The screen stays on from the start of the clock to its end, where the browser can; the lock ends with every look away. */
export function stayAwake({ kept, onChange }: Keeping): void {
  let lock: WakeLockSentinel | undefined;
  let asking = false;
  async function follow(): Promise<void> {
    const { started, stopped } = kept();
    const wanted = started !== undefined && stopped === undefined && document.visibilityState === "visible";
    if (!wanted) {
      await lock?.release();
      lock = undefined;
    } else if ((lock === undefined || lock.released) && !asking && "wakeLock" in navigator) {
      asking = true;
      lock = await navigator.wakeLock.request("screen").catch(() => undefined);
      asking = false;
    }
    document.documentElement.dataset.awake = String(lock !== undefined && !lock.released);
  }
  document.addEventListener("visibilitychange", follow);
  onChange(follow);
  void follow();
}

/** Asks the browser not to clear the ticks when it runs short of room. */
export function keepForGood(): void {
  void navigator.storage?.persist?.().catch(() => false);
}

/**
 * Says "Ready offline" only when the worker has looked into the cache and found every page there. A worker needs https or
 * this machine itself; by plain http from another device the list must be saved as a file.
 */
export async function keepOffline(worker: string): Promise<void> {
  const says = (words: string) => {
    at("offline").textContent = words;
  };
  if (!("serviceWorker" in navigator)) {
    at("save-page").hidden = false;
    says("Needs the network");
    return;
  }
  const { serviceWorker } = navigator;
  const look = async () =>
    says((await isKept((await serviceWorker.ready).active)) ? "Ready offline" : "Not ready offline");
  says("Saving for offline");
  try {
    await serviceWorker.register(worker);
    await look();
    // A newer worker has other pages to keep.
    serviceWorker.addEventListener("controllerchange", look);
  } catch {
    says("Not ready offline");
  }
}

/** Milliseconds a worker may take to look into its cache. */
const LOOKING = 20_000;

function isKept(worker: ServiceWorker | null): Promise<boolean> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }) => resolve(data === true);
    setTimeout(() => resolve(false), LOOKING);
    worker?.postMessage("is everything kept?", [port2]);
  });
}
