/** Serves a finished site on this machine only, the way a static host would: for a look before it goes out, and for tests. */
import { createReadStream } from "node:fs";
import { realpath, stat } from "node:fs/promises";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import path from "node:path";

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".csv": "text/csv; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".xml": "application/xml; charset=utf-8",
  ".txt": "text/plain; charset=utf-8",
  ".svg": "image/svg+xml",
  ".jpg": "image/jpeg",
  ".png": "image/png",
  ".webp": "image/webp",
  ".avif": "image/avif",
  ".woff2": "font/woff2",
};

export interface StaticServer {
  /** Address of the site's first page. */
  readonly url: string;
  close(): Promise<void>;
}

/** Serves `folder` below `base` on the loopback address; port 0 takes any free one. */
export async function serveFolder(
  folder: string,
  options: { base?: string; port?: number } = {},
): Promise<StaticServer> {
  const root = await realpath(folder);
  const base = options.base ?? "/";
  const server = createServer(async (request, response) => {
    const answer = (status: number, headers: Record<string, string | number>) =>
      response.writeHead(status, { "x-content-type-options": "nosniff", ...headers });
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
    answer(found === undefined ? 404 : 200, {
      "content-type": TYPES[path.extname(file).toLowerCase()] ?? "application/octet-stream",
    });
    if (request.method === "HEAD") response.end();
    else
      createReadStream(file)
        .on("error", () => response.destroy())
        .pipe(response);
  });
  await new Promise<void>((resolve, reject) =>
    server.once("error", reject).listen(options.port ?? 0, "127.0.0.1", resolve),
  );
  const { port } = server.address() as AddressInfo;
  return {
    url: `http://127.0.0.1:${port}${base}`,
    close: () =>
      new Promise((resolve, reject) => {
        server.close((error) => (error === undefined ? resolve() : reject(error)));
        server.closeAllConnections();
      }),
  };
}

function decodedPath(url: string): string | undefined {
  try {
    return decodeURIComponent(new URL(url, "http://localhost").pathname);
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
