/** How many taps away from each other the pages of a built site are. */
import { pagesOf } from "./built-site.ts";

/** Files that each page links to, by file. */
export async function waysOf(siteDir: string): Promise<ReadonlyMap<string, ReadonlySet<string>>> {
  const ways = new Map<string, ReadonlySet<string>>();
  for (const [file, page] of await pagesOf(siteDir)) {
    const here = new URL(file.replace(/index\.html$/u, ""), "http://site.test/");
    const links = [...page.querySelectorAll("a[href]")].flatMap((link) => {
      const target = new URL(link.getAttribute("href") ?? "", here);
      if (target.host !== here.host) return [];
      const path = decodeURIComponent(target.pathname.slice(1));
      return [path === "" || path.endsWith("/") ? `${path}index.html` : path];
    });
    ways.set(file, new Set(links));
  }
  return ways;
}

/** Files that can be reached from one by so many taps at most. */
export function within(
  ways: ReadonlyMap<string, ReadonlySet<string>>,
  from: string,
  taps: number,
): ReadonlySet<string> {
  const reached = new Set([from]);
  for (let tap = 0; tap < taps; tap += 1)
    for (const file of [...reached]) for (const next of ways.get(file) ?? []) reached.add(next);
  return reached;
}
