import { describe, expect, test } from "vitest";
import type { Variety } from "../../src/model.ts";
import { readPhotos } from "../../src/photos/index.ts";
import { bed, jpeg, photosInMemory, records, sidecar } from "./drawn.ts";

const variety = (id: string, more: Partial<Variety> = {}): readonly [string, Variety] => [
  id,
  {
    id,
    title: id.replaceAll("-", " "),
    private: false,
    body: "",
    described: true,
    alsoSpelled: [],
    perennial: undefined,
    ...more,
  },
];
const varieties = new Map([
  variety("crown-prince"),
  variety("prince"),
  variety("sungold", { alsoSpelled: ["Sun Gold"] }),
  variety("red"),
  variety("cherry-belle", { alsoSpelled: ["Belle"] }),
  variety("belle-de-mai", { alsoSpelled: ["Belle"] }),
  variety("corner"),
]);
const beds = [bed("long-bed", { viewpoints: [{ name: "corner" }] })];

async function shown(path: string, sidecars: ReturnType<typeof sidecar>[] = []) {
  const { photos, problems } = await readPhotos(
    records([path], { beds, varieties, sidecars }),
    photosInMemory({ [path]: await jpeg() }),
  );
  return { varieties: photos[0]?.varieties, isPrivate: photos[0]?.private, problems };
}

describe("what a photo is of", () => {
  test.each([
    ["photos/varieties/crown-prince/2026-05-16.jpg", ["crown-prince"]],
    ["photos/Varieties/Sun Gold/2026-05-16.jpg", ["sungold"]],
    ["photos/varieties/crown-prince/2026/2026-05-16.jpg", ["crown-prince"]],
    ["photos/varieties/red/2026-05-16.jpg", ["red"]],
    ["photos/long-bed/2026-05-16-crown-prince.jpg", ["crown-prince"]],
    ["photos/long-bed/Sun_Gold_2026-05-16.jpg", ["sungold"]],
    ["photos/long-bed/sungold and crown prince 2026-05-16.jpg", ["crown-prince", "sungold"]],
    // Found by themselves in too many names: a short word, what two varieties are called, what a viewpoint is called.
    ["photos/long-bed/red 2026-05-16.jpg", []],
    ["photos/long-bed/belle 2026-05-16.jpg", []],
    ["photos/long-bed/corner/2026-05-16-corner.jpg", []],
    ["photos/long-bed/sungolden 2026-05-16.jpg", []],
    ["photos/varieties/2026-05-16.jpg", []],
  ])("%s", async (path, expected) => {
    expect((await shown(path)).varieties).toEqual(expected);
  });

  test.each([
    ["Crown Prince on the arch", ["crown-prince"]],
    ["Where the Sungold stood", []],
    ["This is not Crown Prince", []],
    ["Before the Sungold: bare soil", []],
  ])("caption %s", async (caption, expected) => {
    const path = "photos/long-bed/2026-05-16.jpg";
    expect((await shown(path, [sidecar(path, { caption })])).varieties).toEqual(expected);
  });

  test("what the sidecar names stands alone", async () => {
    const path = "photos/long-bed/crown-prince 2026-05-16.jpg";
    expect((await shown(path, [sidecar(path, { varieties: ["sungold"] })])).varieties).toEqual(["sungold"]);
  });

  test("a folder called after no variety is told once, and its photos stay private", async () => {
    const { isPrivate, problems } = await shown("photos/varieties/crown-price/2026-05-16.jpg");
    expect(isPrivate).toBe(true);
    expect(problems.map(({ rule, what, fix }) => [rule, `${what} ${fix}`])).toEqual([
      [
        "photo/unknown-variety",
        'No variety is called "crown-price", so one photo in this folder shows none and is kept private. Did you mean "crown-prince"? Rename the folder.',
      ],
    ]);
  });

  test("a photo of a variety needs no bed", async () => {
    expect((await shown("photos/varieties/sungold/2026-05-16.jpg")).problems).toEqual([]);
  });

  test("a folder of that name that is a bed stays a bed", async () => {
    const path = "photos/varieties/gate/2026-05-16.jpg";
    const { photos, problems } = await readPhotos(
      records([path], { beds: [bed("varieties")], varieties }),
      photosInMemory({ [path]: await jpeg() }),
    );
    expect(photos).toMatchObject([{ bed: "varieties", viewpoint: "gate", varieties: [], private: false }]);
    expect(problems).toEqual([]);
  });
});
