/** What a phone sends of a walk through the garden: lines and photos kept there without a signal, each under an id of its own. */
import { isDay } from "../calendar.ts";
import type { Day } from "../model.ts";
import { isLine, isSaveId, isShown, type ShownLine } from "./note-writing.ts";
import type { Sent } from "./workbench.ts";

export interface OutdoorLine {
  /** What is sent twice is written once, whenever it comes. */
  readonly id: string;
  readonly day: Day;
  /** Id of the bed it speaks of. */
  readonly bed?: string | undefined;
  readonly text: string;
  /** What it was shown to say; undefined where nobody was shown anything, and whatever it says will do. */
  readonly shown?: ShownLine | undefined;
  /** The same line stands there already, and the person says that this is another. */
  readonly again?: true | undefined;
}

export interface OutdoorPhoto {
  readonly id: string;
  /** Id of the bed. */
  readonly bed: string;
  readonly viewpoint?: string | undefined;
  readonly name: string;
  /** Milliseconds since 1970 UTC. */
  readonly modified: number;
  readonly bytes: Uint8Array;
}

export interface OutdoorAnswer {
  /** One sentence for the person. */
  readonly told: string;
  /** It is in the records: the phone need not keep it. */
  readonly done?: true | undefined;
  /** In the note the line says something else than was shown: what it says there, to be agreed to. */
  readonly reads?: ShownLine | undefined;
  /** The same line stands there already: whether this is another is for the person to say. */
  readonly stands?: true | undefined;
}

export interface OutdoorTaking {
  line(ask: OutdoorLine): Promise<OutdoorAnswer>;
  photo(ask: OutdoorPhoto): Promise<OutdoorAnswer>;
}

/** What a page of our own sent; undefined when it is anything else. */
export function outdoorLine({ id, day, bed, text, shown, again }: Sent): OutdoorLine | undefined {
  if (!isSaveId(id) || typeof day !== "string" || !isDay(day) || !isLine(text)) return undefined;
  if (bed !== undefined && typeof bed !== "string") return undefined;
  if ((shown !== undefined && !isShown(shown)) || (again !== undefined && again !== true)) return undefined;
  return { id, day, bed, text, shown, again };
}

/** The same for a photo, with what the address says of it. */
export function outdoorPhoto(said: URLSearchParams, bytes: Uint8Array): OutdoorPhoto | undefined {
  const [id, bed, name] = [said.get("id"), said.get("bed"), said.get("name")];
  const modified = Number(said.get("modified") ?? Number.NaN);
  if (!isSaveId(id) || bed === null || name === null || !Number.isSafeInteger(modified)) return undefined;
  return { id, bed, viewpoint: said.get("viewpoint") ?? undefined, name, modified, bytes };
}
