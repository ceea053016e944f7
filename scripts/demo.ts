/**
 * `npm run demo`: the main job on the demo garden, once. Prints the brief, writes brief and sites, says where they are, ends.
 */
import { main } from "../src/cli/main.ts";

const records = ["--records", "demo-content", "--today", "2026-07-18"];

for (const command of [["check"], ["brief", "2026-07-tour"], ["publish"]]) {
  const exitCode = await main([...command, ...records]);
  if (exitCode !== 0) process.exit(exitCode);
}

console.log(`
Brief:         out/briefs/2026-07-tour.html (also .md and .json)
Field list:    out/briefs/2026-07-tour-field-list.html (one file for the phone)
Public site:   out/public
Private pages: out/private

To look at them: npx plotreel publish --records demo-content --today 2026-07-18 --serve`);
