import { mkdir, mkdtemp, symlink, writeFile } from "node:fs/promises";
import { request } from "node:http";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type StaticServer, serveFolder } from "../../src/site/static-server.ts";

let server: StaticServer;

beforeAll(async () => {
  const outside = await mkdtemp(path.join(tmpdir(), "plotreel-outside-"));
  await writeFile(path.join(outside, "secret.txt"), "secret");
  const folder = await mkdtemp(path.join(tmpdir(), "plotreel-serve-"));
  await mkdir(path.join(folder, "beds"));
  await writeFile(path.join(folder, "index.html"), "home");
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
): Promise<{ status: number; type: string; text: string; location: string }> {
  const { hostname, port } = new URL(server.url);
  return new Promise((resolve, reject) => {
    request({ hostname, port, path: rawPath, method }, (response) => {
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
  ])("keeps inside its folder when asked for %s", async (rawPath) => {
    const answer = await ask(rawPath);
    expect(answer.status).toBe(404);
    expect(answer.text).toBe("lost");
  });

  it("only reads", async () => {
    expect((await ask("/garden/", "POST")).status).toBe(405);
    expect(await ask("/garden/", "HEAD")).toMatchObject({ status: 200, text: "" });
  });

  it("answers on this machine only", () => {
    expect(new URL(server.url).hostname).toBe("127.0.0.1");
  });
});
