/** A page in the person's own browser, by whatever the system opens addresses with. */
import { spawn } from "node:child_process";

const OPENERS: Readonly<Partial<Record<NodeJS.Platform, readonly [string, ...string[]]>>> = {
  darwin: ["open"],
  win32: ["rundll32", "url.dll,FileProtocolHandler"],
};

/** Where no browser can be opened the address stands on the terminal all the same. */
export function openInBrowser(url: string): Promise<void> {
  const [command, ...args] = OPENERS[process.platform] ?? ["xdg-open"];
  return new Promise((resolve) => {
    const opening = spawn(command, [...args, url], { stdio: "ignore", detached: true });
    opening.once("error", () => resolve());
    opening.once("spawn", () => {
      opening.unref();
      resolve();
    });
  });
}
