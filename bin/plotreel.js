#!/usr/bin/env node
const [major, minor] = process.versions.node.split(".").map(Number);
if (major < 22 || (major === 22 && minor < 18)) {
  console.error(
    `Plotreel needs Node 22.18 or newer; this is ${process.versions.node}. Inside the project, "npm ci" brings a newer one and "npx plotreel" uses it.`,
  );
  process.exit(3);
}
const { main } = await import("../src/cli/main.ts");
process.exitCode = await main(process.argv.slice(2));
