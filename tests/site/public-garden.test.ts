import path from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { changeSentence } from "../../src/language/index.ts";
import type { DateBasis, Garden, Photo } from "../../src/model.ts";
import { publicGarden } from "../../src/site/public-garden.ts";
import { state } from "../../src/timeline/index.ts";
import { readGarden, today } from "./built-site.ts";

let garden: Garden;
let open: Garden;

beforeAll(async () => {
  garden = await readGarden(path.resolve("tests/gardens/two-walls"));
  open = publicGarden(garden);
});

/** Everything in the garden as one text, maps and all. */
function everyWord(of: Garden): string {
  return JSON.stringify(of, (_, value) => (value instanceof Map ? [...value] : value));
}

describe("the garden as viewers may see it", () => {
  it("has no private word anywhere, not even where no page looks", () => {
    const secrets = [
      "Grandfather",
      "Thief",
      "thief-proof",
      "shed-row",
      "behind-the-shed",
      "1961",
      "Quarrel",
      "flowerpot",
      "surprise",
      "walnut",
      "kitchen door",
      "51.48",
      "0.91377",
    ];
    expect(secrets.filter((secret) => !everyWord(garden).includes(secret))).toEqual([]);
    expect(secrets.filter((secret) => everyWord(open).includes(secret))).toEqual([]);
  });

  it("shows no photo whose day is only that of its file", () => {
    const photo = { path: "photos/a.jpg", day: "2026-05-16", varieties: [], private: false };
    const shown = (dateBasis: DateBasis) =>
      publicGarden({ ...garden, photos: [{ ...photo, dateBasis }] }).photos.length;
    expect([shown("file time"), shown("file name")]).toEqual([0, 1]);
  });

  it("knows nothing of what was paid, wherever a line says it", () => {
    const [line] = garden.events.filter((event) => open.events.some(({ id }) => id === event.id));
    if (line === undefined) throw new Error("no public line");
    const paid = {
      ...line,
      price: "£4.75 each",
      text: `${line.text}, for £4.75 each`,
      detail: "at £4.75 each, from the fair",
    };
    const events = [{ ...paid, reason: "because they were £4.75", more: ["a bargain at £4.75", "watered in"] }];
    const shown = publicGarden({ ...garden, events });
    expect(shown.events[0]).toMatchObject({
      text: line.text,
      detail: "from the fair",
      more: ["a bargain", "watered in"],
    });
    expect(everyWord(shown)).not.toContain("4.75");
  });

  it("keeps plans to the person", () => {
    const [line] = garden.events.filter((event) => open.events.some(({ id }) => id === event.id));
    if (line === undefined) throw new Error("no public line");
    const planned = publicGarden({ ...garden, events: [{ ...line, kind: "plan", what: "dig it all up next year" }] });
    expect(planned.plans).toEqual([]);
    expect(everyWord(planned)).not.toContain("dig it all up");
  });

  it("keeps the beds of a private site back, and films that are not out", () => {
    expect([...open.beds.keys()]).toEqual(["north-wall", "south-wall"]);
    expect([...open.episodes.keys()]).toEqual(["may-tour"]);
    expect(open.episodes.get("may-tour")?.stops).toEqual([{ bed: "south-wall", at: 65 }]);
  });

  it("keeps back a photo of no bed that was taken at a private site", () => {
    const taken = (path: string, site: string | undefined): Photo => ({
      path,
      site,
      day: "2026-05-25",
      dateBasis: "exif offset",
      varieties: [],
      private: false,
    });
    const photos = [
      taken("photos/a.jpg", "behind-the-shed"),
      taken("photos/b.jpg", "yard"),
      taken("photos/c.jpg", undefined),
    ];
    expect(publicGarden({ ...garden, photos }).photos.map(({ path }) => path)).toEqual([
      "photos/b.jpg",
      "photos/c.jpg",
    ]);
  });

  it("adds up public lines only", () => {
    const crownPrince = (of: Garden) =>
      state(of, "south-wall", today).plantings.find(({ variety }) => variety === "crown-prince");
    expect(crownPrince(garden)?.picked.grams).toBe(900);
    expect(crownPrince(open)?.picked.grams).toBe(0);
    expect(crownPrince(open)?.stage).toBe("flowering");
  });

  it("lets plants that move into a private bed be gone, and says nothing of where", () => {
    const musselburgh = (of: Garden) =>
      state(of, "north-wall", today).plantings.find(({ variety }) => variety === "musselburgh");
    expect(musselburgh(garden)?.count?.value).toBe(14);
    expect(musselburgh(open)?.count?.value).toBe(14);
    expect(open.changes.get("north-wall")?.map((change) => changeSentence(change, open))).toContain(
      "Four Musselburgh leeks moved to a bed that is not shown.",
    );
    expect([...open.changes.keys()].sort()).toEqual([...open.beds.keys()].sort());
  });

  it("leaves out what a person only notes for themselves", () => {
    expect(open.tasks).toEqual([]);
    expect(open.problems).toEqual([]);
    expect(state(open, "north-wall", today).tasks).toEqual([]);
    expect(open.followUps.map(({ what }) => what)).toEqual(["show the leeks again in July"]);
  });

  it("leaves the garden it was given as it was", () => {
    const before = everyWord(garden);
    publicGarden(garden);
    expect(everyWord(garden)).toBe(before);
  });
});
