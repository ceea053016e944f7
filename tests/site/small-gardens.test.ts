/** Gardens with little in them, with slips, with odd names: published below a path, whole and valid. */
import { readdirSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { folderWith, run } from "../cli/run.ts";
import { brokenLinks, filesOf } from "./built-site.ts";
import { htmlComplaints } from "./page-checks.ts";

const gardens = readdirSync(path.resolve(import.meta.dirname, "../gardens"), { withFileTypes: true });

describe("a small garden's pages below a path", () => {
  it.each(gardens.filter((entry) => entry.isDirectory()).map(({ name }) => name))("%s", async (name) => {
    const { exitCode, err, cwd } = await run(["publish", "--hold-back", "--base", "/plots/ours/"], {
      cwd: folderWith(name),
    });
    expect(exitCode, err).toBe(0);
    for (const [site, base] of [
      ["public", "/plots/ours/"],
      ["private", "/"],
    ] as const) {
      const folder = path.join(cwd, "out", site);
      expect(await brokenLinks(folder, base)).toEqual([]);
      const pages = (await filesOf(folder)).filter((file) => file.endsWith(".html"));
      expect(pages).toContain("index.html");
      const complaints = await Promise.all(
        pages.map(async (file) => (await htmlComplaints(path.join(folder, file))).map((what) => `${file}:${what}`)),
      );
      expect(complaints.flat().slice(0, 10)).toEqual([]);
    }
  });
});
