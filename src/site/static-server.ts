/**
 * Serves a finished site the way a static host would, with its headers file and compressed: for a look before it goes out,
 * for a phone in the same house, and for tests. On this machine only, unless another address of it is asked for.
 */
import { createReadStream } from "node:fs";
import { readFile, realpath, stat } from "node:fs/promises";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import path from "node:path";
import { pipeline } from "node:stream";
import { createGzip } from "node:zlib";
import { headersFor } from "./host-files.ts";

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".csv": "text/csv; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".wasm": "application/wasm",
  ".xml": "application/xml; charset=utf-8",
  ".txt": "text/plain; charset=utf-8",
  ".svg": "image/svg+xml",
  ".jpg": "image/jpeg",
  ".png": "image/png",
  ".webp": "image/webp",
  ".avif": "image/avif",
  ".mp4": "video/mp4",
  ".woff2": "font/woff2",
};

/** What a file's name says it holds. */
export function typeOf(file: string): string {
  return TYPES[path.extname(file).toLowerCase()] ?? "application/octet-stream";
}

export interface StaticServer {
  /** Address of the site's first page. */
  readonly url: string;
  close(): Promise<void>;
}

export interface ServeOptions {
  /** Path below which the site is served. */
  readonly base?: string | undefined;
  /** Taken when it is free, so that what a browser keeps by address is found again; else, and when left out, any free one. */
  readonly port?: number | undefined;
  /** One address of this machine; its loopback when left out. */
  readonly address?: string | undefined;
  /** Asked before anything is served. One that gives false has answered the request itself. */
  readonly admit?: ((request: IncomingMessage, response: ServerResponse) => boolean) | undefined;
}

/** A page elsewhere may neither show nor frame what is served here, nor have it taken for a script. */
export const KEPT_TO_ITSELF = {
  "x-content-type-options": "nosniff",
  "cross-origin-resource-policy": "same-origin",
  "content-security-policy": "frame-ancestors 'none'",
} as const;

/** What hosts compress; pictures and fonts are so already. */
const COMPRESSED = /^(?:text\/|application\/(?:json|xml)|image\/svg)/u;

export const LOOPBACK = "127.0.0.1";

export async function serveFolder(folder: string, options: ServeOptions = {}): Promise<StaticServer> {
  const root = await realpath(folder);
  const hostHeaders = await readFile(path.join(root, "_headers"), "utf8").catch(() => "");
  const base = options.base ?? "/";
  const address = options.address ?? LOOPBACK;
  const host = address.includes(":") ? `[${address}]` : address;
  const server = createServer(async (request, response) => {
    const answer = (status: number, headers: Record<string, string | number>) =>
      response.writeHead(status, { ...KEPT_TO_ITSELF, ...headers });
    // A page elsewhere can make its own name lead here; under that name nothing is given.
    if (!isCalled(request.headers.host, address === LOOPBACK ? [host, "localhost"] : [host])) {
      answer(421, { "content-type": "text/plain; charset=utf-8" }).end("Not served under this name.\n");
      return;
    }
    if (options.admit?.(request, response) === false) return;
    if (request.method !== "GET" && request.method !== "HEAD") {
      answer(405, { allow: "GET, HEAD" }).end();
      return;
    }
    const asked = decodedPath(request.url ?? "/");
    if (asked !== undefined && asked === base.slice(0, -1)) {
      answer(301, { location: base }).end();
      return;
    }
    const found = asked?.startsWith(base) ? await fileAt(root, asked.slice(base.length)) : undefined;
    if (found === "folder") {
      answer(301, { location: `${new URL(request.url ?? "/", "http://localhost").pathname}/` }).end();
      return;
    }
    const file = found ?? (await fileAt(root, "404.html"));
    if (file === undefined || file === "folder") {
      answer(404, { "content-type": "text/plain; charset=utf-8" }).end("Not found.\n");
      return;
    }
    if (response.destroyed) return;
    const type = typeOf(file);
    const isCompressed = COMPRESSED.test(type) && /\bgzip\b/u.test(request.headers["accept-encoding"] ?? "");
    answer(found === undefined ? 404 : 200, {
      ...headersFor(hostHeaders, found === undefined ? `${base}404.html` : (asked ?? "")),
      "content-type": type,
      ...(isCompressed ? { "content-encoding": "gzip", vary: "Accept-Encoding" } : {}),
    });
    if (request.method === "HEAD") response.end();
    else if (isCompressed) pipeline(createReadStream(file), createGzip(), response, () => {});
    else pipeline(createReadStream(file), response, () => {});
  });
  await listen(server, address, options.port ?? 0);
  const { port } = server.address() as AddressInfo;
  return {
    url: `http://${host}:${port}${base}`,
    close: () =>
      new Promise((resolve, reject) => {
        server.close((error) => (error === undefined ? resolve() : reject(error)));
        server.closeAllConnections();
      }),
  };
}

/** At a port when it is free, else at any. */
export async function listen(server: Server, address: string, port: number): Promise<void> {
  const attempt = (on: number) =>
    new Promise<void>((resolve, reject) => {
      server.once("error", reject).listen(on, address, () => resolve(void server.off("error", reject)));
    });
  try {
    await attempt(port);
  } catch (error) {
    if (port === 0 || (error as NodeJS.ErrnoException).code !== "EADDRINUSE") throw error;
    server.removeAllListeners("error");
    await attempt(0);
  }
}

/** Whether a request asks for one of these names, whatever the port. */
export function isCalled(name: string | undefined, names: readonly string[]): boolean {
  return names.some((each) => name?.replace(/:\d+$/, "").toLowerCase() === each.toLowerCase());
}

/** Undefined when it is no path. */
export function decodedPath(url: string): string | undefined {
  try {
    const path = decodeURIComponent(new URL(url, "http://localhost").pathname);
    // "//name" at the head of an address is another host.
    return path.includes("//") || path.includes("\0") ? undefined : path;
  } catch {
    return undefined;
  }
}

/** The file a path means, "folder" when the path lacks its last slash, undefined when there is none inside the root. */
async function fileAt(root: string, relative: string): Promise<string | "folder" | undefined> {
  if (relative.includes("\0")) return undefined;
  try {
    const target = await realpath(path.join(root, relative));
    if (target !== root && !target.startsWith(root + path.sep)) return undefined;
    const isFolder = (await stat(target)).isDirectory();
    if (!isFolder) return target;
    if (relative !== "" && !relative.endsWith("/")) return "folder";
    return await realpath(path.join(target, "index.html"));
  } catch {
    return undefined;
  }
}
