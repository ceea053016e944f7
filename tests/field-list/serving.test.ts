/** The field pages for a phone in the house: by which address, by which code, and what a stranger gets to see. */
import { mkdir, mkdtemp, writeFile } from "node:fs/promises";
import { request } from "node:http";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type Effects, realEffects } from "../../src/cli/effects.ts";
import { addressToServe } from "../../src/cli/serve-address.ts";
import { type Door, openDoor } from "../../src/cli/serve-door.ts";
import { terminalQr } from "../../src/cli/serve-qr.ts";
import { serveSites } from "../../src/cli/serve-sites.ts";
import { type StaticServer, serveFolder } from "../../src/site/index.ts";
import { run } from "../cli/run.ts";
import { cv, openCvReady } from "../photo-measures/opencv.ts";

describe("the address", () => {
  const own = ["192.168.1.20", "10.0.0.7", "fd00::20", "84.12.1.9", "fe80::1"];

  test.each(["192.168.1.20", "10.0.0.7", "fd00::20"])("%s is one of a network of one's own", (address) => {
    expect(addressToServe(address, own)).toBe(address);
  });

  // RFC 1918 and RFC 4193 say which addresses lead nowhere else.
  test.each([
    "84.12.1.9",
    "0.0.0.0",
    "::",
    "127.0.0.1",
    "172.32.0.1",
    "192.169.0.1",
    "fe80::1",
    "2001:db8::1",
    "home",
    "",
  ])('"%s" is not, and is refused with those there are', (address) => {
    expect(() => addressToServe(address, own)).toThrow(
      /no address of a network of your own.*192\.168\.1\.20, 10\.0\.0\.7, fd00::20/,
    );
  });

  test("of another machine is refused", () => {
    expect(() => addressToServe("192.168.1.99", own)).toThrow(
      "192.168.1.99 is not an address of this machine. This machine has these: 192.168.1.20, 10.0.0.7, fd00::20.",
    );
    expect(() => addressToServe("192.168.1.99", [])).toThrow("This machine has no such address now.");
  });

  test("goes with --serve, and is looked at before the long work", async () => {
    const alone = await run([
      "publish",
      "--address",
      "192.168.1.20",
      "--records",
      path.resolve("tests/gardens/two-beds"),
    ]);
    expect([alone.exitCode, alone.err]).toEqual([2, "--address says where to serve, so it goes with --serve."]);
    const open = await run([
      "publish",
      "--serve",
      "--address",
      "0.0.0.0",
      "--records",
      path.resolve("tests/gardens/two-beds"),
    ]);
    expect(open.exitCode).toBe(2);
    expect(open.out).toBe("");
  });
});

interface Answer {
  readonly status: number;
  readonly text: string;
  readonly headers: Readonly<Record<string, string | string[] | undefined>>;
}

function ask(url: string, headers: Record<string, string> = {}, method = "GET", from?: string): Promise<Answer> {
  return new Promise((resolve, reject) => {
    request(url, { method, headers, ...(from !== undefined && { localAddress: from }) }, (response) => {
      let text = "";
      response.setEncoding("utf8").on("data", (part) => {
        text += part;
      });
      response.on("end", () => resolve({ status: response.statusCode ?? 0, text, headers: response.headers }));
    })
      .on("error", reject)
      .end();
  });
}

async function site(name: string): Promise<string> {
  const folder = path.join(await mkdtemp(path.join(tmpdir(), "plotreel-door-")), name);
  await mkdir(folder);
  await writeFile(path.join(folder, "index.html"), `the ${name} pages`);
  return folder;
}

describe("the door", () => {
  let server: StaticServer;
  let door: Door;
  const told: string[] = [];

  beforeAll(async () => {
    door = openDoor({ letIn: () => told.push("let in"), shut: () => told.push("shut") });
    server = await serveFolder(await site("private"), { admit: door.admit });
  });
  afterAll(() => server.close());

  const enter = (code: string) => ask(`${server.url}?code=${encodeURIComponent(code)}`);
  const cookieOf = (answer: Answer) => String(answer.headers["set-cookie"]?.[0] ?? "").split(";")[0] ?? "";
  let first: string;
  let cookie: string;

  test("shows a stranger nothing but itself", async () => {
    const answer = await ask(`${server.url}anything/`);
    expect(answer.status).toBe(401);
    expect(answer.text).toContain("The terminal that serves these pages shows six digits.");
    expect(answer.text).not.toContain("private pages");
    expect(answer.headers["content-security-policy"]).toContain("default-src 'none'");
  });

  test("opens by the code, whatever spaces it is typed with, and says nothing of it in the address afterwards", async () => {
    first = door.code() ?? "";
    expect(first).toMatch(/^\d{6}$/);
    const answer = await enter(`${first.slice(0, 3)} ${first.slice(3)}`);
    expect(answer.status).toBe(303);
    expect(answer.headers.location).toBe("/");
    expect(String(answer.headers["set-cookie"])).toMatch(/HttpOnly; SameSite=Lax; Path=\/$/);
    cookie = cookieOf(answer);
    expect(told).toEqual(["let in"]);
    const inside = await ask(server.url, { cookie });
    expect([inside.status, inside.text]).toEqual([200, "the private pages"]);
    expect(inside.headers["cache-control"]).toBe("no-store");
  });

  test("opens by one code once, and by the next for the next device", async () => {
    expect((await enter(first)).status).toBe(403);
    expect(door.code()).not.toBe(first);
    const answer = await enter(door.code() ?? "");
    expect(answer.status).toBe(303);
    expect(cookieOf(answer)).not.toBe(cookie);
    expect((await ask(server.url, { cookie })).status).toBe(200);
  });

  test("is not opened by a made-up cookie, another kind of request, or half a code", async () => {
    expect((await ask(server.url, { cookie: "plotreel-door=AAAA" })).status).toBe(401);
    expect((await ask(server.url, { cookie: `${cookie}x` })).status).toBe(401);
    expect((await ask(`${server.url}?code=${door.code()}`, {}, "HEAD")).status).toBe(401);
    expect((await enter((door.code() ?? "").slice(0, 3))).status).toBe(403);
    expect((await enter("")).status).toBe(403);
  });

  test("after five wrong codes takes none of that device any more, and keeps those who are in", async () => {
    const right = door.code() ?? "";
    const wrong = right === "000000" ? "111111" : "000000";
    // Three were wrong above: one used up, one half, one empty.
    expect((await enter(wrong)).status).toBe(403);
    expect(told).not.toContain("shut");
    expect((await enter(wrong)).status).toBe(403);
    const late = await enter(right);
    expect([late.status, late.text.includes("Too many wrong codes")]).toEqual([403, true]);
    expect((await ask(server.url, { cookie })).status).toBe(200);
    // A page elsewhere that makes this browser ask has used up none of the phone's tries.
    const from = (device: number, code: string) => ask(`${server.url}?code=${code}`, {}, "GET", `127.0.0.${device}`);
    expect((await from(2, right)).status).toBe(303);
    // One machine of many addresses gets no further.
    for (let device = 3; door.code() !== undefined && device < 60; device += 1)
      for (let once = 0; once < 5; once += 1) await from(device, door.code() === wrong ? "222222" : wrong);
    expect(told.at(-1)).toBe("shut");
    expect(door.code()).toBeUndefined();
  });
});

test("a server gives nothing under a name that is not its own", async () => {
  // A page elsewhere can let its own name point to this machine; the browser then asks under that name.
  const server = await serveFolder(await site("private"));
  expect((await ask(server.url, { host: "evil.example" })).status).toBe(421);
  expect((await ask(server.url, { host: `localhost:${new URL(server.url).port}` })).status).toBe(200);
  await server.close();
});

test("a port that is taken gives way to another", async () => {
  const folder = await site("private");
  const first = await serveFolder(folder, { port: 18_655 });
  const second = await serveFolder(folder, { port: 18_655 });
  expect(new URL(first.url).port).toBe("18655");
  expect(new URL(second.url).port).not.toBe("18655");
  expect((await ask(second.url)).text).toBe("the private pages");
  await first.close();
  await second.close();
});

test("two sites served: both on this machine, and the private one by code at the address, told and drawn in the terminal", async () => {
  const [publicDir, privateDir] = [await site("public"), await site("private")];
  const out: string[] = [];
  const drawn: string[] = [];
  const seen: string[] = [];
  const effects: Effects = {
    ...realEffects(),
    terminal: true,
    out: (line) => void out.push(line),
    draw: (line) => void drawn.push(line),
    async untilStopped() {
      const [open, own] = Array.from(
        out.join("\n").matchAll(/http:\/\/127\.0\.0\.1:\d+\/(?:garden\/)?/g),
        ([url]) => url,
      );
      seen.push((await ask(open ?? "")).text, (await ask(own ?? "")).text);
      const phone = /http:\/\/127\.0\.0\.2:\d+\//.exec(out.join("\n"))?.[0] ?? "";
      const code = /Code for the next device: (\d{3}) (\d{3})/.exec(out.join("\n"));
      expect((await ask(phone)).status).toBe(401);
      expect(await readQr(drawn)).toBe(`${phone}?code=${code?.[1]}${code?.[2]}`);
      expect((await ask(`${phone}?code=${code?.[1]}${code?.[2]}`)).status).toBe(303);
    },
  };
  const sites = { publicDir, privateDir, publicPages: 1, privatePages: 1, pages: 2 };
  // All of 127.0.0.0/8 is this machine on Linux: a second address of it stands for the one in the house.
  await serveSites(sites, { base: "/garden/", address: "127.0.0.2" }, effects);
  expect(seen).toEqual(["the public pages", "the private pages"]);
  expect(out.slice(-2)).toEqual([
    "A device was let in.",
    expect.stringMatching(/^Code for the next device: \d{3} \d{3}$/),
  ]);
});

test("without a terminal the code is told in words only", async () => {
  const out: string[] = [];
  const err: string[] = [];
  const folder = await site("private");
  const effects: Effects = {
    ...realEffects(),
    terminal: false,
    out: (line) => void out.push(line),
    err: (line) => void err.push(line),
    draw: (line) => void err.push(line),
    untilStopped: () => Promise.resolve(),
  };
  await serveSites(
    { publicDir: folder, privateDir: folder, publicPages: 1, privatePages: 1, pages: 2 },
    { base: "/", address: "127.0.0.2" },
    effects,
  );
  expect(out.at(-1)).toMatch(/^Code for the next device/);
  expect(err).toEqual([]);
});

/** What a camera reads from the lines a terminal draws, by OpenCV. */
async function readQr(lines: readonly string[]): Promise<string> {
  await openCvReady();
  const rows = lines.map((line) => {
    expect(line.startsWith("\u001b[30;107m") && line.endsWith("\u001b[0m")).toBe(true);
    return [...line.slice("\u001b[30;107m".length, -"\u001b[0m".length)];
  });
  const size = rows[0]?.length ?? 0;
  const scale = 6;
  const picture = new cv.Mat(rows.length * 2 * scale, size * scale, cv.CV_8UC1, new cv.Scalar(255));
  for (const [row, marks] of rows.entries()) {
    for (const [column, mark] of marks.entries()) {
      for (const half of [0, 1]) {
        const dark = mark === "█" || mark === (half === 0 ? "▀" : "▄");
        if (!dark) continue;
        for (let y = 0; y < scale; y += 1) {
          for (let x = 0; x < scale; x += 1) picture.ucharPtr((row * 2 + half) * scale + y, column * scale + x)[0] = 0;
        }
      }
    }
  }
  const detector = new cv.QRCodeDetector();
  const text = String(detector.detectAndDecode(picture));
  picture.delete();
  detector.delete();
  return text;
}

test("a QR code is read back by another library", async () => {
  for (const address of ["http://192.168.1.20:8642/?code=048213", "http://[fd00::20]:8642/?code=999999"]) {
    expect(await readQr(terminalQr(address))).toBe(address);
  }
});
