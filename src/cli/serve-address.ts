/** Which address another device may come in by: one of this machine, in a network of the person's own. */
import { BlockList, isIP } from "node:net";
import { CommandError } from "./command-error.ts";

/** Networks that lead nowhere else: RFC 1918, and RFC 4193 for the longer addresses. */
const OWN_NETWORKS = new BlockList();
OWN_NETWORKS.addSubnet("10.0.0.0", 8, "ipv4");
OWN_NETWORKS.addSubnet("172.16.0.0", 12, "ipv4");
OWN_NETWORKS.addSubnet("192.168.0.0", 16, "ipv4");
OWN_NETWORKS.addSubnet("fc00::", 7, "ipv6");

/** `asked` when it may be served; otherwise says why not. */
export function addressToServe(asked: string, own: readonly string[]): string {
  const home = own.filter(isAtHome);
  const choice =
    home.length === 0
      ? "This machine has no such address now."
      : `This machine has ${home.length === 1 ? "this one" : "these"}: ${home.join(", ")}.`;
  if (!isAtHome(asked)) {
    throw new CommandError(
      `"${asked}" is no address of a network of your own, such as 192.168.1.20, and the field pages are for nobody else. ${choice}`,
    );
  }
  if (!own.includes(asked)) throw new CommandError(`${asked} is not an address of this machine. ${choice}`);
  return asked;
}

function isAtHome(address: string): boolean {
  const kind = isIP(address);
  return kind !== 0 && OWN_NETWORKS.check(address, kind === 6 ? "ipv6" : "ipv4");
}
