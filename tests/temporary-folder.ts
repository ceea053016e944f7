/** All tests make their folders below one, which goes when they have run: a thousand were left behind in a day of work. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { preparedFolder } from "../src/store/index.ts";

export default function makeTemporaryFolder(): () => void {
  // Templates and scripts, once for all tests, and not by each thread that finds them missing.
  preparedFolder();
  const folder = mkdtempSync(path.join(tmpdir(), "plotreel-tests-"));
  process.env.TMPDIR = folder;
  return () => rmSync(folder, { recursive: true, force: true, maxRetries: 3 });
}
