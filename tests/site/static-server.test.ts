import { mkdir, mkdtemp, symlink, writeFile } from "node:fs/promises";
import { request } from "node:http";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { headersFile } from "../../src/site/host-files.ts";
import { type StaticServer, serveFolder } from "../../src/site/static-server.ts";

let server: StaticServer;

beforeAll(async () => {
  const outside = await mkdtemp(path.join(tmpdir(), "plotreel-outside-"));
  await writeFile(path.join(outside, "secret.txt"), "secret");
  const folder = await mkdtemp(path.join(tmpdir(), "plotreel-serve-"));
  await mkdir(path.join(folder, "beds"));
  await writeFile(path.join(folder, "index.html"), "home");
  await writeFile(path.join(folder, "long.json"), JSON.stringify("bean ".repeat(1000)));
  await mkdir(path.join(folder, "photos"));
  await writeFile(path.join(folder, "photos", "a.webp"), "picture");
  await writeFile(path.join(folder, "_headers"), headersFile("/garden/"));
  await writeFile(path.join(folder, "404.html"), "lost");
  await writeFile(path.join(folder, "beds", "index.html"), "beds");
  await writeFile(path.join(folder, "Käfer.txt"), "ä");
  await symlink(outside, path.join(folder, "way-out"));
  server = await serveFolder(folder, { base: "/garden/" });
});

afterAll(() => server.close());

/** The raw path as sent, without a client tidying it first. */
function ask(
  rawPath: string,
  method = "GET",
  headers: Readonly<Record<string, string>> = {},
): Promise<{ status: number; type: string; text: string; location: string }> {
  const { hostname, port } = new URL(server.url);
  return new Promise((resolve, reject) => {
    request({ hostname, port, path: rawPath, method, headers }, (response) => {
      let text = "";
      response.setEncoding("utf8").on("data", (part) => {
        text += part;
      });
      response.on("end", () =>
        resolve({
          status: response.statusCode ?? 0,
          type: String(response.headers["content-type"]),
          text,
          location: String(response.headers.location),
        }),
      );
    })
      .on("error", reject)
      .end();
  });
}

describe("the server for a look at a finished site", () => {
  it("serves pages of folders, files and the page for what is missing", async () => {
    expect(await ask("/garden/")).toMatchObject({ status: 200, text: "home", type: "text/html; charset=utf-8" });
    expect(await ask("/garden/beds/?bed=x")).toMatchObject({ status: 200, text: "beds" });
    expect(await ask("/garden/K%C3%A4fer.txt")).toMatchObject({ status: 200, text: "ä" });
    expect(await ask("/garden/nothing/")).toMatchObject({ status: 404, text: "lost" });
    expect(await ask("/elsewhere")).toMatchObject({ status: 404, text: "lost" });
  });

  it("sends a path without its last slash on", async () => {
    expect(await ask("/garden")).toMatchObject({ status: 301, location: "/garden/" });
    expect(await ask("/garden/beds")).toMatchObject({ status: 301, location: "/garden/beds/" });
  });

  it.each([
    "/garden/../../etc/passwd",
    "/garden/%2e%2e/%2e%2e/etc/passwd",
    "/garden/way-out/secret.txt",
    "/garden/%00",
    "/garden/%zz",
    "//etc/passwd",
    "/garden/.//beds",
    "/garden//beds",
    "/garden/..%2f..%2fetc/passwd",
    "/garden/..\\..\\etc\\passwd",
    "/garden/beds/%2e%2e%2f%2e%2e%2f%2e%2e%2fetc%2fpasswd",
    "http://evil.example/garden/way-out/secret.txt",
  ])("keeps inside its folder when asked for %s", async (rawPath) => {
    const answer = await ask(rawPath);
    expect(answer.status).toBe(404);
    expect(answer.text).toBe("lost");
  });

  it("sends what the headers file says, and keeps nothing that is missing", async () => {
    const home = await fetch(server.url);
    expect(home.headers.get("content-security-policy")).toBe("frame-ancestors 'none'");
    expect(home.headers.get("x-content-type-options")).toBe("nosniff");
    expect(home.headers.get("cache-control")).toBeNull();
    const photo = await fetch(new URL("photos/a.webp", server.url));
    expect(photo.headers.get("cache-control")).toBe("public, max-age=31536000, immutable");
    const missing = await fetch(new URL("photos/b.webp", server.url));
    expect(missing.status).toBe(404);
    expect(missing.headers.get("cache-control")).toBeNull();
  });

  it("compresses text for whoever reads it compressed, and no picture", async () => {
    const text = await fetch(new URL("long.json", server.url));
    expect(text.headers.get("content-encoding")).toBe("gzip");
    expect(await text.json()).toBe("bean ".repeat(1000));
    const plain = await fetch(new URL("long.json", server.url), { headers: { "accept-encoding": "identity" } });
    expect(plain.headers.get("content-encoding")).toBeNull();
    expect(await plain.json()).toBe("bean ".repeat(1000));
    expect((await fetch(new URL("photos/a.webp", server.url))).headers.get("content-encoding")).toBeNull();
  });

  it("only reads", async () => {
    expect((await ask("/garden/", "POST")).status).toBe(405);
    expect(await ask("/garden/", "HEAD")).toMatchObject({ status: 200, text: "" });
  });

  it("answers on this machine only", () => {
    expect(new URL(server.url).hostname).toBe("127.0.0.1");
  });

  it.each([
    "evil.example",
    "evil.example:80",
    "localhost.evil.example",
    "127.0.0.1.evil.example",
    "127.0.0.2",
    "[::1]",
  ])("gives nothing under the name %s, which a page elsewhere may have made to lead here", async (host) => {
    expect(await ask("/garden/", "GET", { host })).toMatchObject({
      status: 421,
      text: "Not served under this name.\n",
    });
  });

  it("takes nothing from a page elsewhere, and is neither framed nor shown by one", async () => {
    expect((await ask("/garden/", "POST", { origin: "https://evil.example" })).status).toBe(405);
    for (const path of ["", "nothing/", "photos/a.webp"]) {
      const { headers } = await fetch(new URL(path, server.url));
      expect(headers.get("cross-origin-resource-policy"), path).toBe("same-origin");
      expect(headers.get("x-content-type-options"), path).toBe("nosniff");
      expect(headers.get("content-security-policy"), path).toContain("frame-ancestors 'none'");
      expect(headers.get("access-control-allow-origin"), path).toBeNull();
    }
  });
});
