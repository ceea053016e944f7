/** Asks whether the workbench is there, and sends it what was kept. Other places that serve this page get nothing. */
import type { OutdoorAnswer } from "../../outdoors-taking.ts";
import { type Deliver, lineToSend } from "./queue.ts";
import type { Queued, QueuedPhoto } from "./shapes.ts";

/** Milliseconds after which nobody is there, and after which what was sent is not answered. */
const LOOKING = 4000;
const ANSWERING = 60_000;

export type AtHome = "there" | "asks for a code" | "another garden" | "nobody";

/** A page that is a file of its own has no computer to ask. */
export function canAsk(): boolean {
  return location.protocol === "http:" || location.protocol === "https:";
}

export async function whoIsThere(garden: string): Promise<AtHome> {
  if (!canAsk()) return "nobody";
  try {
    const answer = await fetch("/@outdoors.json", { cache: "no-store", signal: AbortSignal.timeout(LOOKING) });
    if (answer.status === 401) return "asks for a code";
    if (!answer.ok) return "nobody";
    const { takes } = (await answer.json()) as { takes?: unknown };
    if (typeof takes !== "string") return "nobody";
    return takes === garden ? "there" : "another garden";
  } catch {
    return "nobody";
  }
}

export const deliver: Deliver = async (entry, bytes) => {
  try {
    const answer = await fetch(addressOf(entry), {
      method: "POST",
      headers: { "content-type": entry.kind === "line" ? "application/json" : "application/octet-stream" },
      body: entry.kind === "line" ? JSON.stringify(lineToSend(entry)) : (bytes ?? new ArrayBuffer(0)),
      signal: AbortSignal.timeout(ANSWERING),
    });
    if (answer.ok) return (await answer.json()) as OutdoorAnswer;
    if (answer.status === 413) return { told: "It is larger than the computer takes. Take it home as a file." };
    return answer.status === 404 || answer.status === 405
      ? { told: "The computer does not understand it. Take it home as a file." }
      : undefined;
  } catch {
    return undefined;
  }
};

function addressOf(entry: Queued): string {
  return entry.kind === "line" ? "/@outdoors" : `/@outdoors-photo?${saidOf(entry)}`;
}

function saidOf({ id, bed, viewpoint, name, modified }: QueuedPhoto): URLSearchParams {
  const said = { id, bed, name, modified: String(modified) };
  return new URLSearchParams(viewpoint === undefined ? said : { ...said, viewpoint });
}
