/**
 * Serves one site, each page made when it is asked for; open pages hear of a newer garden and reload. The
 * pages are those that would be published: the one thing added to them is the script that listens. On this machine only, unless
 * another address of it is asked for.
 */
import { createReadStream } from "node:fs";
import { createServer, type IncomingMessage, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { pipeline } from "node:stream";
import { escapeHtml } from "./escape-html.ts";
import { decodedPath, isCalled, KEPT_TO_ITSELF, LOOPBACK, listen, type ServeOptions, typeOf } from "./static-server.ts";

/** What lies at a path: bytes, a text, or a file on the disk. */
export type Answer = { readonly bytes: Uint8Array | string } | { readonly file: string };

export interface LiveServer {
  /** Address of the site's first page. */
  readonly url: string;
  /** From now on pages are made from a newer garden. */
  tell(): void;
  close(): Promise<void>;
}

export interface LiveServerOptions {
  /** Path below which the site is served, with a slash at both ends. */
  readonly base: string;
  /** A file by its path below the site, with forward slashes; undefined when there is none. */
  answer(file: string): Promise<Answer | undefined>;
  /** The page for what is missing. */
  missing(): Promise<Uint8Array | string>;
  /** What a page of this site sent to a path below it, as JSON; undefined where nothing is taken. */
  take?: ((path: string, sent: unknown) => Promise<unknown> | undefined) | undefined;
  /** The same for a file, with what the address says of it. */
  takeFile?: ((path: string, said: URLSearchParams, bytes: Uint8Array) => Promise<unknown> | undefined) | undefined;
  /** Loopback and any free port when left out. */
  at?: ServeAt | undefined;
}

/** Another address of this machine, for those whom `admit` lets in; one that gives false has answered the request itself. */
export type ServeAt = { readonly [Of in "address" | "port" | "admit"]: NonNullable<ServeOptions[Of]> };

/** Bytes of the longest thing a page sends: what is typed, and a photo. */
const LONGEST = { "application/json": 256 * 1024, "application/octet-stream": 40 * 1024 * 1024 } as const;

/** Below the base. No record makes a page of such a name. */
const SCRIPT = "@follow.js";
const NEWEST = "@newest";

/**
 * The number of the newest garden comes at once on connecting, so that nothing saved in between is missed. A page on which
 * somebody is writing may put the reload off.
 */
const FOLLOW = `const { seen, newest } = document.currentScript.dataset;
new EventSource(newest).onmessage = ({ data }) => {
  if (data !== seen && dispatchEvent(new Event("newer", { cancelable: true }))) location.reload();
};
`;

export async function serveLive({ base, answer, missing, take, takeFile, at }: LiveServerOptions): Promise<LiveServer> {
  const address = at?.address ?? LOOPBACK;
  const host = address.includes(":") ? `[${address}]` : address;
  const followers = new Set<ServerResponse>();
  let newest = 1;

  const follow = (response: ServerResponse) => {
    response.writeHead(200, { ...KEPT_TO_ITSELF, "content-type": "text/event-stream", "cache-control": "no-store" });
    response.write(`data: ${newest}\n\n`);
    followers.add(response);
    response.on("close", () => followers.delete(response));
  };

  const send = (response: ServerResponse, status: number, type: string, content: Uint8Array | string) => {
    const body = type.startsWith("text/html") ? withScript(Buffer.from(content).toString(), base, newest) : content;
    response.writeHead(status, { ...KEPT_TO_ITSELF, "content-type": type, "cache-control": "no-store" }).end(body);
  };

  const server = createServer(async (request, response) => {
    // A page elsewhere can make its own name lead here; under that name nothing is given.
    if (!isCalled(request.headers.host, at === undefined ? [host, "localhost"] : [host]))
      return void response.writeHead(421).end();
    if (at?.admit(request, response) === false) return;
    const type = request.method === "POST" && isFromOurs(request) ? typeSent(request) : undefined;
    if (type !== undefined) {
      const to = decodedPath(request.url ?? "/") ?? "";
      const path = to.startsWith(base) ? to.slice(base.length) : "";
      const bytes = await sentWith(request, LONGEST[type]);
      if (bytes === undefined) return void response.writeHead(413, { connection: "close" }).end();
      const given =
        type === "application/json"
          ? take?.(path, jsonOf(bytes))
          : takeFile?.(path, new URL(request.url ?? "/", "http://localhost").searchParams, bytes);
      if (given !== undefined) {
        // What could not be done is not answered: whoever sent it keeps it and may send it again.
        const said = await given.then(JSON.stringify, () => undefined);
        if (said === undefined) return void response.writeHead(500).end();
        return send(response, 200, "application/json; charset=utf-8", said);
      }
    }
    if (request.method !== "GET" && request.method !== "HEAD")
      return void response.writeHead(405, { allow: "GET, HEAD" }).end();
    const asked = decodedPath(request.url ?? "/");
    if (asked === undefined || !asked.startsWith(base)) return void response.writeHead(302, { location: base }).end();
    const path = asked.slice(base.length);
    if (path === NEWEST) return follow(response);
    if (path === SCRIPT) return send(response, 200, "text/javascript; charset=utf-8", FOLLOW);
    try {
      const file = path === "" || path.endsWith("/") ? `${path}index.html` : path;
      const found = await answer(file);
      if (found === undefined) send(response, 404, "text/html; charset=utf-8", await missing());
      else if ("bytes" in found) send(response, 200, typeOf(file), found.bytes);
      else {
        for (const [name, value] of Object.entries(KEPT_TO_ITSELF)) response.setHeader(name, value);
        response.setHeader("content-type", typeOf(file));
        response.setHeader("cache-control", "no-store");
        // Unlike a plain pipe it closes the file when the page is left before all of it came.
        pipeline(createReadStream(found.file), response, (error) => {
          if (error && !response.headersSent) response.writeHead(404).end();
        });
      }
    } catch (error) {
      send(response, 500, "text/html; charset=utf-8", notMade(error));
    }
  });
  await listen(server, address, at?.port ?? 0);
  const { port } = server.address() as AddressInfo;
  return {
    url: `http://${at === undefined ? "localhost" : host}:${port}${base}`,
    tell() {
      newest += 1;
      for (const follower of followers) follower.write(`data: ${newest}\n\n`);
    },
    close: () =>
      new Promise((resolve, reject) => {
        server.close((error) => (error === undefined ? resolve() : reject(error)));
        server.closeAllConnections();
      }),
  };
}

/** A page elsewhere can make a browser send here, but not from this name. */
function isFromOurs({ headers }: IncomingMessage): boolean {
  const site = headers["sec-fetch-site"];
  return headers.origin === `http://${headers.host}` && (site === undefined || site === "same-origin");
}

/** Nor with one of these types: a browser asks first (Fetch Standard, CORS-safelisted types). */
function typeSent({ headers }: IncomingMessage): keyof typeof LONGEST | undefined {
  const type = headers["content-type"] ?? "";
  return Object.hasOwn(LONGEST, type) ? (type as keyof typeof LONGEST) : undefined;
}

/** Undefined when it is too long, of which no more is read. */
async function sentWith(request: IncomingMessage, longest: number): Promise<Buffer | undefined> {
  if (Number(request.headers["content-length"] ?? 0) > longest) return undefined;
  const parts: Buffer[] = [];
  let length = 0;
  for await (const part of request as AsyncIterable<Buffer>) {
    length += part.length;
    if (length > longest) return undefined;
    parts.push(part);
  }
  return Buffer.concat(parts);
}

/** Undefined when it is no JSON. */
function jsonOf(bytes: Buffer): unknown {
  try {
    return JSON.parse(bytes.toString("utf8"));
  } catch {
    return undefined;
  }
}

function withScript(html: string, base: string, seen: number): string {
  const script = `<script src="${base}${SCRIPT}" data-newest="${base}${NEWEST}" data-seen="${seen}"></script>`;
  return html.replace("</head>", () => `${script}</head>`);
}

/** Stays open as other pages do, and shows the page when a save has mended what was wrong. */
function notMade(error: unknown): string {
  const what = escapeHtml(String(error));
  return `<!doctype html><html lang="en"><head><title>Not made</title></head><body><p>This page could not be made: ${what}</p></body></html>`;
}
