/**
 * `npm run chromium`: the browser tests drive Debian's Chromium. Brings it where that is possible without asking; otherwise says
 * in one line how.
 */
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";

const chromium = process.env.CHROMIUM ?? "/usr/bin/chromium";

if (!existsSync(chromium)) {
  const root = process.getuid?.() === 0;
  const debian = existsSync("/usr/bin/apt-get");
  if (root && debian) {
    console.log("Getting Chromium for the browser tests (apt-get install chromium) …");
    spawnSync("apt-get", ["update", "-qq"], { stdio: "ignore" });
    spawnSync("apt-get", ["install", "-y", "-qq", "chromium"], {
      stdio: "ignore",
      env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
    });
  }
  if (!existsSync(chromium)) {
    console.error(
      'The browser tests need Chromium: run "sudo apt-get install chromium", or set CHROMIUM to the path of one.',
    );
    process.exit(1);
  }
}
