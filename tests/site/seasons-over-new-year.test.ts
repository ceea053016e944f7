/** Seasons that begin in the middle of a year, as south of the equator, are told whole: no page counts calendar years. */
import path from "node:path";
import { expect, it } from "vitest";
import { publicSite } from "../../src/site/page-data/public-site.ts";
import { publicGarden } from "../../src/site/public-garden.ts";
import { readGarden } from "./built-site.ts";

async function southWall(seasonStarts: string, today: string) {
  const garden = publicGarden(await readGarden(path.resolve("tests/gardens/two-walls")));
  const site = publicSite({ ...garden, settings: { ...garden.settings, seasonStarts } }, today, new Map());
  return {
    bed: site.bedPages.find(({ id }) => id === "south-wall"),
    variety: site.varietyPages.find(({ id }) => id === "uchiki-kuri"),
  };
}

it.each([
  ["01-01", "2026-05-01", "2026", "2025"],
  ["07-01", "2026-05-01", "2025/26", "2025/26"],
  ["07-01", "2026-07-18", "2026/27", "2025/26"],
])(
  "seasons from %s, told on %s, are the one of %s, and what was picked that September is of %s",
  async (starts, today, now, then) => {
    const { bed, variety } = await southWall(starts, today);
    expect(bed?.season).toBe(now);
    expect(bed?.seasons.map(({ season }) => season).includes(then)).toBe(now !== then);
    expect((bed?.ribbon?.days ?? []).some(({ day }) => day.includes("September"))).toBe(now === then);
    expect(variety?.picked.map(({ season }) => season)).toEqual([then]);
  },
);
