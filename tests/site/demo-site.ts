/** The demo garden published by the command, both sites served and a browser to open them in: made once for a test file. */
import path from "node:path";
import type { Browser } from "playwright-core";
import { kindsOfPages, type PageKind } from "../../scripts/bench/page-kinds.ts";
import type { Garden } from "../../src/model.ts";
import { type StaticServer, serveFolder } from "../../src/site/index.ts";
import { openBrowser } from "../browser.ts";
import { run } from "../cli/run.ts";
import { readGarden, today } from "./built-site.ts";

export interface DemoSite {
  readonly garden: Garden;
  readonly publicDir: string;
  readonly privateDir: string;
  readonly browser: Browser;
  /** Addresses of every kind of page, public ones first: the fullest page of each. */
  readonly kinds: readonly { readonly kind: PageKind; readonly url: string; readonly isPublic: boolean }[];
  /** Whole address of a public page. */
  at(address: string): string;
  close(): Promise<void>;
}

export async function openDemoSite(): Promise<DemoSite> {
  const records = path.resolve("demo-content");
  const { exitCode, err, cwd } = await run(["publish", "--records", records, "--today", today]);
  if (exitCode !== 0) throw new Error(err);
  const publicDir = path.join(cwd, "out/public");
  const privateDir = path.join(cwd, "out/private");
  const servers: StaticServer[] = [await serveFolder(publicDir), await serveFolder(privateDir)];
  const [open, field] = servers as [StaticServer, StaticServer];
  const browser = await openBrowser();
  const kindsOf = async (server: StaticServer, siteDir: string, site: "public" | "field") =>
    (await kindsOfPages(siteDir, site)).map((kind) => ({
      kind,
      url: server.url + kind.address,
      isPublic: site === "public",
    }));
  return {
    garden: await readGarden(records),
    publicDir,
    privateDir,
    browser,
    kinds: [...(await kindsOf(open, publicDir, "public")), ...(await kindsOf(field, privateDir, "field"))],
    at: (address) => open.url + address,
    async close() {
      await browser.close();
      for (const server of servers) await server.close();
    },
  };
}
