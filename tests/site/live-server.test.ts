/** The server behind `plotreel watch`: pages as they come, followed by the one script that waits for the next save. */
import { readdirSync, readlinkSync } from "node:fs";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { request } from "node:http";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterEach, expect, it } from "vitest";
import { type LiveServer, type LiveServerOptions, serveLive } from "../../src/site/live-server.ts";

let server: LiveServer | undefined;
afterEach(async () => {
  await server?.close();
});

const page = (words: string) => `<!doctype html><html><head><title>${words}</title></head><body>${words}</body></html>`;

async function serve(
  answer: LiveServerOptions["answer"],
  base = "/garden/",
  take?: LiveServerOptions["take"],
): Promise<string> {
  server = await serveLive({ base, answer, missing: async () => page("Nothing grows here"), take });
  return server.url;
}

it("gives a folder's page, with the script in its head, and files as they are", async () => {
  const url = await serve(async (file) => ({ bytes: file === "beds/index.html" ? page("Beds") : `plain ${file}` }));
  const beds = await fetch(new URL("beds/", url));
  expect(beds.headers.get("content-type")).toBe("text/html; charset=utf-8");
  expect(await beds.text()).toBe(
    page("Beds").replace(
      "</head>",
      '<script src="/garden/@follow.js" data-newest="/garden/@newest" data-seen="1"></script></head>',
    ),
  );
  expect(await (await fetch(new URL("varieties.csv", url))).text()).toBe("plain varieties.csv");
  expect(await (await fetch(new URL("@follow.js", url))).text()).toContain("EventSource");
});

it("tells open pages of a newer garden, and at once which one is the newest", async () => {
  const url = await serve(async () => ({ bytes: page("Beds") }));
  const read = async () => {
    const stream = await fetch(new URL("@newest", url));
    return stream.body?.pipeThrough(new TextDecoderStream()).getReader();
  };
  const early = await read();
  expect((await early?.read())?.value).toBe("data: 1\n\n");
  server?.tell();
  expect((await early?.read())?.value).toBe("data: 2\n\n");
  const late = await read();
  expect((await late?.read())?.value).toBe("data: 2\n\n");
  expect(await (await fetch(url)).text()).toContain('data-seen="2"');
});

it("closes the file of a photo when the page is left before all of it came", async () => {
  const folder = await mkdtemp(path.join(tmpdir(), "plotreel-live-"));
  const file = path.join(folder, "photo.jpg");
  await writeFile(file, new Uint8Array(8_000_000));
  const url = await serve(async () => ({ file }));
  const openNow = () =>
    readdirSync("/proc/self/fd").filter((fd) => {
      try {
        return readlinkSync(`/proc/self/fd/${fd}`) === file;
      } catch {
        return false;
      }
    }).length;
  for (let once = 0; once < 20; once += 1) {
    await new Promise<void>((resolve) => {
      const asking = request(new URL("photo.jpg", url), (response) => {
        response.once("data", () => asking.destroy());
        response.on("error", () => undefined);
      });
      asking.on("close", () => resolve()).on("error", () => undefined);
      asking.end();
    });
  }
  await expect.poll(openNow, { timeout: 5000 }).toBe(0);
  await rm(folder, { recursive: true });
});

it("says that there is no such page, and that one could not be made, on pages that follow as well", async () => {
  const url = await serve(async (file) => {
    if (file.startsWith("broken")) throw new Error("<b>no</b> bed");
    return undefined;
  });
  const missing = await fetch(new URL("nowhere/", url));
  expect([missing.status, await missing.text()]).toEqual([404, expect.stringContaining("@follow.js")]);
  const broken = await fetch(new URL("broken/", url));
  const text = await broken.text();
  expect(broken.status).toBe(500);
  expect(text).toContain("@follow.js");
  expect(text).toContain("&lt;b&gt;no&lt;/b&gt; bed");
});

it("leads to the site from outside it, and answers under no other name", async () => {
  const url = await serve(async () => ({ bytes: page("Beds") }));
  const outside = await fetch(new URL("/", url), { redirect: "manual" });
  expect([outside.status, outside.headers.get("location")]).toEqual([302, "/garden/"]);
  const status = await new Promise((resolve, reject) => {
    const { port } = new URL(url);
    request({ host: "127.0.0.1", port, path: "/garden/", headers: { host: "garden.example" } }, (answer) => {
      answer.resume();
      resolve(answer.statusCode);
    })
      .on("error", reject)
      .end();
  });
  expect(status).toBe(421);
});

it("takes what a page of its own sends, and nothing from a page elsewhere", async () => {
  const taken: unknown[] = [];
  const url = await serve(
    async () => ({ bytes: page("Beds") }),
    "/garden/",
    (at, sent) => (at === "@name" ? Promise.resolve(taken.push(sent)) : undefined),
  );
  const { origin, port } = new URL(url);
  const send = (headers: Readonly<Record<string, string>>, to = "/garden/@name", body = '{"tap":1}') =>
    new Promise<number | undefined>((resolve, reject) => {
      request(
        { host: "127.0.0.1", port, path: to, method: "POST", headers: { host: `localhost:${port}`, ...headers } },
        (answer) => {
          answer.resume();
          resolve(answer.statusCode);
        },
      )
        .on("error", reject)
        .end(body);
    });
  const own = { origin, "content-type": "application/json" };
  expect(await send(own)).toBe(200);
  expect(taken).toEqual([{ tap: 1 }]);
  for (const [why, headers] of [
    ["another page", { ...own, origin: "https://evil.example" }],
    ["no page that says which", { "content-type": "application/json" }],
    ["a form, which asks nobody first", { origin, "content-type": "text/plain" }],
    ["another page that the browser tells of", { ...own, "sec-fetch-site": "cross-site" }],
  ] as const)
    expect(await send(headers), why).toBe(405);
  expect(await send({ ...own, host: "evil.example" })).toBe(421);
  expect(await send(own, "/garden/@other")).toBe(405);
  expect(await send(own, "/@name")).toBe(405);
  expect(taken).toHaveLength(1);
});

it("takes a file from a page of its own, up to its size, and none from a page elsewhere", async () => {
  const taken: [string, string | null, number][] = [];
  server = await serveLive({
    base: "/",
    answer: async () => ({ bytes: page("Beds") }),
    missing: async () => page("Nothing grows here"),
    take: async () => ({}),
    takeFile: (at, said, bytes) => {
      if (at !== "@photo") return undefined;
      return Promise.resolve(taken.push([at, said.get("name"), bytes.length]));
    },
  });
  const { url } = server;
  const { origin } = new URL(url);
  const send = async (
    body: Uint8Array<ArrayBuffer>,
    headers: Readonly<Record<string, string>> = {},
    to = "@photo?name=a",
  ) => {
    const answer = await fetch(new URL(to, url), {
      method: "POST",
      headers: { origin, "content-type": "application/octet-stream", ...headers },
      body,
    });
    return answer.status;
  };
  const small = new Uint8Array(300_000);
  expect(await send(small)).toBe(200);
  expect(taken).toEqual([["@photo", "a", 300_000]]);
  for (const headers of [
    { origin: "https://evil.example" },
    { "content-type": "image/jpeg" },
    { "content-type": "multipart/form-data; boundary=x" },
    { "content-type": "text/plain" },
    { "sec-fetch-site": "cross-site" },
  ])
    expect(await send(small, headers), JSON.stringify(headers)).toBe(405);
  expect(await send(small, {}, "@other")).toBe(405);
  // More than a photo has, and more than anybody types.
  expect(await send(new Uint8Array(40 * 1024 * 1024 + 1)).catch(() => 413)).toBe(413);
  expect(await send(small, { "content-type": "application/json" }).catch(() => 413)).toBe(413);
  expect(taken).toHaveLength(1);
});

it("reads no more of what says nothing of its size than it may", async () => {
  let taken = 0;
  const url = await serve(
    async () => ({ bytes: page("Beds") }),
    "/",
    async () => {
      taken += 1;
    },
  );
  const { origin, port } = new URL(url);
  const status = await new Promise((resolve) => {
    const headers = { origin, "content-type": "application/json", "transfer-encoding": "chunked" };
    const asking = request(
      { host: "127.0.0.1", port, path: "/@name", method: "POST", headers: { host: `localhost:${port}`, ...headers } },
      (answer) => {
        answer.resume();
        resolve(answer.statusCode);
        asking.destroy();
      },
    );
    asking.on("error", () => resolve(413));
    for (let part = 0; part < 40; part += 1) asking.write("x".repeat(10_000));
    asking.end();
  });
  expect([status, taken]).toEqual([413, 0]);
});

it("asks at the door before it gives or takes anything at another address", async () => {
  let isIn = false;
  const taken: unknown[] = [];
  server = await serveLive({
    base: "/",
    answer: async () => ({ bytes: page("Beds") }),
    missing: async () => page("Nothing grows here"),
    take: async (_, sent) => taken.push(sent),
    at: {
      address: "127.0.0.1",
      port: 0,
      admit: (_, response) => {
        if (!isIn) response.writeHead(401).end();
        return isIn;
      },
    },
  });
  const { url } = server;
  const send = () =>
    fetch(new URL("@name", url), {
      method: "POST",
      headers: { "content-type": "application/json", origin: new URL(url).origin },
      body: "{}",
    });
  expect([(await fetch(url)).status, (await send()).status, taken.length]).toEqual([401, 401, 0]);
  isIn = true;
  expect([(await fetch(url)).status, (await send()).status, taken.length]).toEqual([200, 200, 1]);
});
