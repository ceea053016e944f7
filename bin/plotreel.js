#!/usr/bin/env node
import { existsSync } from "node:fs";
import module from "node:module";

const [major, minor] = process.versions.node.split(".").map(Number);
if (major < 22 || (major === 22 && minor < 18)) {
  console.error(`Plotreel needs Node 22.18 or newer; this is ${process.versions.node}.`);
  process.exit(3);
}
// Half of a short command's time is loading code; the cache keeps it compiled (startup 0.45 s to 0.18 s).
module.enableCompileCache();
// In the clone the sources run as they are; what is installed has none.
const sources = new URL("../src/cli/main.ts", import.meta.url);
const { main } = await import(existsSync(sources) ? sources.href : "../dist/cli.js");
process.exitCode = await main(process.argv.slice(2));
