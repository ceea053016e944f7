/** A whole command over records that lie on no disk; gives all it says and writes. */
import { realEffects } from "../../../src/cli/effects.ts";
import { main } from "../../../src/cli/main.ts";
import { folderOf } from "./ground.ts";

export async function runInMemory(
  argv: readonly string[],
  files: Readonly<Record<string, string>>,
): Promise<readonly string[]> {
  const said: string[] = [];
  const say = (text: string) => void said.push(text);
  const below = (file: string) => file.replace(/^.*\/nowhere\/content\//u, "");
  const exitCode = await main(
    [...argv, "--records", "/nowhere/content", ...(TAKES_OUT.has(argv[0] ?? "") ? ["--out", "/nowhere/out"] : [])],
    {
      ...realEffects(),
      cwd: "/nowhere",
      terminal: false,
      canAsk: false,
      out: say,
      err: say,
      openRecords: async (dir) => (dir === "/nowhere/content" ? folderOf(files) : folderOf({})),
      readText: async (file) => files[below(file)],
      // The scripts of a page are code, and speak of what they test for.
      writeText: async (_file, text) => say(text.replace(/<script\b[^>]*>[\s\S]*?<\/script>/g, "")),
      createText: async (_file, text) => {
        say(text);
        return true;
      },
      writeBytes: async () => {},
      readerVersion: () => "fuzz",
      keepToOwner: async () => {},
      cacheFor: () => "/nowhere/cache",
    },
  );
  if (exitCode !== 0 && exitCode !== 1) throw new Error(`ended with ${exitCode}: ${said.at(-1)}`);
  return said;
}

const TAKES_OUT: ReadonlySet<string> = new Set(["brief", "ahead", "recap", "wrap"]);
