/** `plotreel watch` as a person starts it, for tests that open its pages. */
import { spawn } from "node:child_process";
import { once } from "node:events";
import path from "node:path";
import { expect, vi } from "vitest";

export interface Watched {
  /** All that the terminal shows. */
  said(): string;
  /** The address at the end of the line that begins so. */
  address(words: string): string;
  /** Its exit code. */
  stop(): Promise<unknown>;
}

export async function watched(cwd: string): Promise<Watched> {
  let said = "";
  // A process of its own: Astro's server would take this one's for its own kind.
  const watching = spawn(process.execPath, [path.resolve("bin/plotreel.js"), "watch", "--today", "2026-07-18"], {
    cwd,
    env: { ...withoutTestRunner(), PLOTREEL_CACHE: path.join(cwd, ".cache") },
  });
  for (const stream of [watching.stdout, watching.stderr]) {
    stream?.setEncoding("utf8").on("data", (text: string) => {
      said += text;
    });
  }
  await vi.waitFor(() => expect(said).toContain("Ctrl-C ends it"), { timeout: 60_000, interval: 100 });
  return {
    said: () => said,
    address(words) {
      const line = said.split("\n").find((each) => each.startsWith(words));
      return line?.split(" ").at(-1) ?? "";
    },
    async stop() {
      const ended = once(watching, "close");
      watching.kill("SIGINT");
      return (await ended)[0];
    },
  };
}

function withoutTestRunner(): NodeJS.ProcessEnv {
  const { NODE_ENV: _mode, VITEST: _runner, ...rest } = process.env;
  return rest;
}
