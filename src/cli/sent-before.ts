/**
 * What phones sent, remembered by the id they gave it, over restarts. What is done stands in brought-in.txt beside garden.md;
 * what was only begun stands in the cache, so that a run that was killed in the midst is known for what it is.
 */
import path from "node:path";
import { partOf } from "../past/index.ts";
import { broughtInFile } from "./brought-in-file.ts";
import type { Effects } from "./effects.ts";

export interface Begun {
  readonly file: string;
  /** How often the line stood there before. */
  readonly standing: number;
}

export interface SentBefore {
  /** Where it stands; undefined of what is not done. */
  placeOf(id: string): Promise<string | undefined>;
  begunOf(id: string): Promise<Begun | undefined>;
  begin(id: string, begun: Begun): Promise<void>;
  done(id: string, size: number, to: string): Promise<void>;
}

type AllBegun = Readonly<Record<string, Begun>>;

export function sentBefore(recordsDir: string, effects: Effects): SentBefore {
  const file = path.join(effects.cacheFor(recordsDir), "begun-outdoors.json");

  async function allBegun(): Promise<AllBegun> {
    try {
      const found: unknown = JSON.parse((await effects.readText(file)) ?? "{}");
      return typeof found === "object" && found !== null ? (found as AllBegun) : {};
    } catch {
      return {};
    }
  }

  return {
    placeOf: async (id) => (await broughtInFile(recordsDir, effects)).list.placeOf(hashOf(id)),
    async begunOf(id) {
      const all = await allBegun();
      return Object.hasOwn(all, id) ? all[id] : undefined;
    },
    begin: async (id, begun) => effects.writeText(file, JSON.stringify({ ...(await allBegun()), [id]: begun })),
    async done(id, size, to) {
      const { list, save } = await broughtInFile(recordsDir, effects);
      await list.remember({ hash: hashOf(id), size, to });
      await save();
      const { [id]: begun, ...others } = await allBegun();
      if (begun !== undefined) await effects.writeText(file, JSON.stringify(others));
    },
  };
}

/** For a look at what would be done: nothing is kept of it on the disk. */
export function onlyLooking(before: SentBefore): SentBefore {
  const seen = new Map<string, string>();
  return {
    placeOf: async (id) => seen.get(id) ?? before.placeOf(id),
    begunOf: before.begunOf,
    begin: async () => undefined,
    done: async (id, _, to) => void seen.set(id, to),
  };
}

function hashOf(id: string): string {
  return partOf(`outdoors ${id}`, "").hash;
}
