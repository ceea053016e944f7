/**
 * The door of the field pages for other devices. A code from the terminal lets one device in and is worth nothing
 * afterwards; the device is known again by a cookie until the command ends. After a few wrong codes from one device no
 * more are taken from it, and after many from all together from nobody: a page elsewhere that makes somebody's browser ask
 * with wrong codes uses up that browser's tries and not the phone's.
 */
import { createHash, randomBytes, randomInt, timingSafeEqual } from "node:crypto";
import type { IncomingMessage, ServerResponse } from "node:http";

/** Wrong codes of one device until the door stays shut for it: five guesses at a million codes. */
const TRIES = 5;
/** Wrong codes of all devices: one guess in ten thousand comes in. */
const TRIES_OF_ALL = 100;
const DIGITS = 6;
const COOKIE = "plotreel-door";

export interface Door {
  /** The code that lets the next device in; undefined when the door is shut. */
  code(): string | undefined;
  admit(request: IncomingMessage, response: ServerResponse): boolean;
}

export interface DoorKeeping {
  /** A device came in, and its code is used up. */
  letIn(): void;
  /** Too many wrong codes. */
  shut(): void;
}

export function openDoor(keeping: DoorKeeping): Door {
  let code: string | undefined = newCode();
  let wrong = 0;
  const wrongOf = new Map<string, number>();
  const guests: string[] = [];

  function admit(request: IncomingMessage, response: ServerResponse): boolean {
    const given = cookieOf(request);
    if (given !== undefined && guests.some((guest) => isSame(guest, given))) {
      response.setHeader("cache-control", "no-store");
      return true;
    }
    const tried = codeIn(request);
    if (tried === undefined || request.method !== "GET") return refuse(response, 401, askPage(""));
    const device = request.socket.remoteAddress ?? "";
    const wrongBefore = wrongOf.get(device) ?? 0;
    if (code === undefined || wrongBefore >= TRIES)
      return refuse(response, 403, askPage("Too many wrong codes were tried. Start the serving again for a new one."));
    if (!isSame(code, tried)) {
      wrong += 1;
      wrongOf.set(device, wrongBefore + 1);
      if (wrong >= TRIES_OF_ALL) {
        code = undefined;
        keeping.shut();
      }
      return refuse(response, 403, askPage("That is not the code that the terminal shows now."));
    }
    const guest = randomBytes(32).toString("base64url");
    guests.push(guest);
    code = newCode();
    keeping.letIn();
    // Lax, not strict: a phone that follows the QR code comes from elsewhere, and has to be known at its first step.
    const cookie = `${COOKIE}=${guest}; HttpOnly; SameSite=Lax; Path=/`;
    response.writeHead(303, { location: "/", "set-cookie": cookie, "cache-control": "no-store" }).end();
    return false;
  }

  return { code: () => code, admit };
}

function newCode(): string {
  return String(randomInt(10 ** DIGITS)).padStart(DIGITS, "0");
}

/** In a time that does not tell how much of it was right. */
function isSame(secret: string, given: string): boolean {
  const hash = (text: string) => createHash("sha256").update(text).digest();
  return timingSafeEqual(hash(secret), hash(given));
}

function codeIn(request: IncomingMessage): string | undefined {
  const query = new URLSearchParams(request.url?.split("?")[1] ?? "");
  return query.get("code")?.replace(/\s/g, "");
}

function cookieOf(request: IncomingMessage): string | undefined {
  const pairs = (request.headers.cookie ?? "").split(";").map((pair) => pair.trim());
  return pairs.find((pair) => pair.startsWith(`${COOKIE}=`))?.slice(COOKIE.length + 1);
}

function refuse(response: ServerResponse, status: number, page: string): false {
  response
    .writeHead(status, {
      "content-type": "text/html; charset=utf-8",
      "cache-control": "no-store",
      "x-content-type-options": "nosniff",
      "referrer-policy": "no-referrer",
      "content-security-policy":
        "default-src 'none'; style-src 'unsafe-inline'; form-action 'self'; frame-ancestors 'none'",
    })
    .end(page);
  return false;
}

/** Tells a stranger nothing but that there is a door. */
function askPage(why: string): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Code</title>
<meta name="color-scheme" content="light dark">
<style>body{max-width:22rem;margin:3rem auto;padding:0 1rem;font:1.375rem/1.4 sans-serif}input,button{box-sizing:border-box;width:100%;min-height:3.5rem;margin-top:1rem;font:inherit}input{letter-spacing:.3em;text-align:center}</style>
</head>
<body>
<h1>Which code?</h1>
<p>${why === "" ? "The terminal that serves these pages shows six digits." : why}</p>
<form action="/"><label>Code<input name="code" inputmode="numeric" autocomplete="one-time-code" required></label><button>Open</button></form>
</body>
</html>
`;
}
