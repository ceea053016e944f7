/** `plotreel publish --serve`: a look at both sites on this machine, and for a phone in the house by an address and a code. */
import { type BuiltSites, type ServeAt, type StaticServer, serveFolder } from "../site/index.ts";
import type { Effects } from "./effects.ts";
import { type Door, openDoor } from "./serve-door.ts";
import { terminalQr } from "./serve-qr.ts";

/** The same every time where they are free: what a phone keeps, it keeps by address and port. */
const PORTS = { public: 8640, private: 8641, phone: 8642 } as const;

/** Serves until the person ends it. `address` is one of this machine in a network of the person's own. */
export async function serveSites(
  sites: BuiltSites,
  { base, address }: { readonly base: string; readonly address?: string | undefined },
  effects: Effects,
): Promise<void> {
  const servers: StaticServer[] = [];
  try {
    const open = await serveFolder(sites.publicDir, { base, port: PORTS.public });
    servers.push(open);
    const own = await serveFolder(sites.privateDir, { port: PORTS.private });
    servers.push(own);
    effects.out(`Look at the public site at ${open.url} and at your field pages at ${own.url}`);
    if (address === undefined) effects.out("Both are served on this machine only. Ctrl-C ends it.");
    else servers.push(await serveByCode((at) => serveFolder(sites.privateDir, at), address, effects));
    await effects.untilStopped();
  } finally {
    for (const server of servers) await server.close();
  }
}

/** The field pages at an address of this machine, for devices that know the code the terminal shows. */
export async function serveByCode<Server extends { readonly url: string }>(
  serve: (at: ServeAt) => Promise<Server>,
  address: string,
  effects: Effects,
): Promise<Server> {
  const door = openDoor({
    letIn: () => {
      effects.out("A device was let in.");
      showCode(door, server.url, effects);
    },
    shut: () => effects.out("Five wrong codes were tried, so no other device is let in. Start again for a new code."),
  });
  const server = await serve({ address, port: PORTS.phone, admit: door.admit });
  effects.out(`Your field pages are also at ${server.url} for devices in your own network. Ctrl-C ends it.`);
  showCode(door, server.url, effects);
  return server;
}

/** Each code opens for one device. */
function showCode(door: Door, url: string, effects: Effects): void {
  const code = door.code();
  if (code === undefined) return;
  effects.out(`Code for the next device: ${code.slice(0, 3)} ${code.slice(3)}`);
  if (!effects.terminal) return;
  for (const line of terminalQr(`${url}?code=${code}`)) effects.draw(line);
}
