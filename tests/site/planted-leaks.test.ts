/**
 * A garden whose owner lets slip what they keep back, in every way the records allow; and a finished site into which
 * somebody plants a secret, in every kind of file it has.
 */
import { cp, mkdir, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { gunzipSync, gzipSync } from "node:zlib";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { wrapFiles } from "../../src/cli/wrap-files.ts";
import type { Garden } from "../../src/model.ts";
import type { PublishedPhoto } from "../../src/photos/index.ts";
import { type BuiltSites, buildSites, gatePublicFolder, privacyHints } from "../../src/site/index.ts";
import { readGlossary, wrapEpisode } from "../../src/wrap/index.ts";
import { filesOf, filmTexts, photoCopies, readGarden, today } from "./built-site.ts";

const FILES: Readonly<Record<string, string>> = {
  "garden.md":
    "---\nname: Slip garden\nplace: { latitude: 54.31269, longitude: -5.60339 }\nlanguage: en-GB\ntime zone: Europe/London\naddress: https://garden.example\n---\n\nTwo plots by the sea.\n\nWhat happens in the Thief-proof bed stays there.\n",
  "sites/plot.md": "---\ntitle: The plot\nposition: { latitude: 54.3071, longitude: -5.5992 }\n---\n",
  "sites/granny-yard.md": "---\ntitle: Granny's walled yard\nprivate: true\n---\n",
  "beds/long-bed.md":
    "---\ntitle: Long bed\nsite: plot\nsize: 4 x 1.2 m\nplan: { x: 1, y: 2 }\nsoil: topped up from the thiefproof bed\nbuilt: [{ what: boards, on: 2023-03-01 }, { what: boards left over from the thief-proof bed, on: 2024-03-01 }]\n---\n\nIn full sun.\n\nIts hose comes from Granny's walled yard.\n",
  "beds/thief-proof-bed.md":
    "---\ntitle: Thief-proof bed\nalso called: [Fort Knox]\nwas: Moonlit Vault until 2025-03-31\nsite: plot\nsize: 3 x 1 m\nplan: { x: 6, y: 2 }\nprivate: true\n---\n",
  "beds/yard-pots.md": "---\ntitle: Wicker pots\nsite: granny-yard\nplan: { x: 0, y: 0 }\nsize: 2 x 2 m\n---\n",
  "beds/shed.md": "---\ntitle: Shed\nprivate: true\n---\n",
  "varieties/aquadulce.md": "---\ntitle: Aquadulce\ncrop: broad bean\nsource: Drift Lane Seeds\n---\n",
  "varieties/crimson-flowered.md":
    "---\ntitle: Moonlit Grandmother\ncrop: runner bean\nprivate: true\nalso spelled: [Moonlit Granny]\n---\n",
  "notes/2026-05-16.md":
    "---\nbed: long-bed\ntitle: A trip to Fort Knox\n---\n\nThe Aquadulce went in while the soil was warm.\n\nCarried the compost over to the thief-proof bed.\n\nOur tools live in the Shed. A shed is a fine thing.\n\nThe compost of the Moonlit Vault went under the beans.\n\n- planted 12 Aquadulce broad bean\n  - with compost of Fort Knox\n  - under a net\n- planted 4 Moonlit Grandmother\n- did: swept the steps of Granny’s walled yard\n- trouble: blackfly on Aquadulce\n- planted 2 Uchiki Kuri in the bed of Granny’s walled yard\n- bought 3 Crown Prince squash from the market for £914.37 each\n- sold: 2 bunches of radish in Long Bed, $817.26 a bunch\n- planted 3 Crown Prince in Long Bed, 914.37 € each\n",
  // People who gave and were given, one of whom may be thanked by name; a table brought in, with a row that is private.
  "varieties/whitsun.md":
    "---\ntitle: Whitsun\ncrop: broad bean\nsource: { name: Wilfrid next door, obtained: given by a person, year: 2024 }\n---\n",
  "varieties/maytide.md":
    "---\ntitle: Maytide\ncrop: broad bean\nsource: { name: Maureen Ash, obtained: given by a person }\nthank by name: true\n---\n",
  "varieties.csv":
    "Variety,Crop,Supplier,Private\nLantern,broad bean,Drift Lane Seeds,no\nHushed Emperor,leek,Vandeleur and Daughters,yes\n",
  "varieties/once-shown.md":
    "---\ntitle: Brambling Blue\ncrop: leek\nprivate: true\nsource: { name: Ordered in haste, obtained: bought }\n---\n\n<!-- From orders.csv: paid too much -->\n",
  "gear/net.md": "---\ntitle: Fine net\nobtained: lent by a person\nfrom: Cousin Ottoline\n---\n",
  "notes/2026-05-20.md":
    "---\nbed: long-bed\n---\n\n- planted 3 Whitsun broad bean\n- planted 3 Maytide broad bean\n- planted 2 Lantern\n- planted 5 Hushed Emperor\n- planted 5 Brambling Blue leek\n- gave away 3 Aquadulce broad bean to Dorothea\n- sold 2 Aquadulce broad bean to Lambert at number nine\n- put up Fine net\n- watered Long bed, and off camera: the landlord's quarrel\n  - his quarrel over the well\n\nAfterwards it rained on the Whitsun beans.\n\nNot for the film:\n\n- weeded Long bed while the solicitor waited\n\n## Private notes\n\nThe solicitor comes again.\n\n![the deed](../photos/long-bed/2026-05-21.jpg)\n\n### Long bed\n\n- lost 1 Aquadulce broad bean to the solicitor's boots\n\n## Afterwards\n\nRain at last on the broad beans.\n\nBartholomew and Euphemia dug over the leeks, and Mr Pettigrew lent the fork. Euphemia liked the Whitsun beans best.\n\n- picked 300 g Aquadulce broad bean, with Clementina\n",
  "photos/long-bed/2026-06-01.md":
    "---\ncaption: The beans\ncredit: taken by Aunt Petronella\nvarieties: [Hushed Emperor]\n---\n",
  "notes/2026-05-17.md":
    "---\nbed: long-bed\nprivate: true\n---\n\nThe surgeon called about the biopsy and wants me back on Thursday.\n\n![the letter](../photos/long-bed/gate/2026-05-17.jpg)\n",
  "notes/2026-05-18.md":
    "---\nbed: long-bed\n---\n\nThe window in one photo.\n\n![window](../photos/long-bed/gate/2026-05-18.jpg)\n",
  "photos/long-bed/gate/2026-05-18.md": "---\ncaption: The gate, with Fort Knox behind it\n---\n",
  "photos/long-bed/2026-05-19-number-nine-harbour-lane.md":
    "---\nprivate: true\ncaption: Our door, number nine, Harbour Lane\n---\n",
  "episodes/may/index.md":
    '---\ntitle: May\ndate: 2026-05-16\nstatus: published\nlink: https://films.example/may\nstops: [{ bed: long-bed, at: "0:05" }, { bed: thief-proof-bed, at: "1:00" }]\npromised: [{ what: show the Thief-proof bed in July, bed: long-bed }]\n---\n\nA walk.\n',
  "episodes/may/may.vtt":
    "WEBVTT\n\n00:00:05.000 --> 00:00:09.000\nThis is the long bed with Aquadulce broad beans.\n\n00:00:20.000 --> 00:00:24.000\nBehind it climbs Moonlit Grandmother.\n\n00:00:30.000 --> 00:00:34.000\nNobody finds the Thief-proof bed.\n\n00:01:00.000 --> 00:01:05.000\nWalnuts are hidden under these boards.\n",
  "episodes/secret-film/index.md":
    "---\ntitle: For the family only\ndate: 2026-06-01\nstatus: published\nprivate: true\nlink: https://films.example/family\nstops: [long-bed]\n---\n",
  "trials/boards.md":
    "---\ntitle: Boards or none\nquestion: Do boards help as much as in the thief-proof bed?\nmeasure: weight\nstatus: running\narms: [{ name: with, bed: long-bed }]\n---\n",
};

/** Nothing of this may be in any published byte. */
const SECRETS = [
  /thief/iu,
  /fort knox/iu,
  /grann/iu,
  /grandmother/iu,
  /moonlit/iu,
  /wicker/iu,
  /\bShed\b/u,
  /914\.37|817\.26/u,
  /tools live/iu,
  /biops/iu,
  /surgeon/iu,
  /harbour lane/iu,
  /number.nine/iu,
  /walnut/iu,
  /for the family/iu,
  /secret-film/iu,
  /films\.example\/family/iu,
  /crimson-flowered/iu,
  /wilfrid/iu,
  /dorothea/iu,
  /lambert/iu,
  /ottoline/iu,
  /hushed|emperor|vandeleur/iu,
  /brambling|in haste|paid too much/iu,
  /landlord|quarrel/iu,
  /solicitor|the deed/iu,
  /Bartholomew|Euphemia|Pettigrew|Clementina/iu,
  /petronella/iu,
  /54\.3/u,
  /5\.60/u,
];

let folder: string;
let garden: Garden;
let sites: BuiltSites;
let copies: ReadonlyMap<string, PublishedPhoto>;

beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "plotreel-slips-"));
  const recordsDir = path.join(folder, "records");
  for (const [file, text] of Object.entries(FILES)) {
    await mkdir(path.dirname(path.join(recordsDir, file)), { recursive: true });
    await writeFile(path.join(recordsDir, file), text);
  }
  const photos = ["gate/2026-05-17", "gate/2026-05-18", "2026-05-19-number-nine-harbour-lane", "2026-06-01"];
  photos.push("2026-05-21", "2026-06-02");
  for (const [index, name] of photos.entries()) {
    await sharp({ create: { width: 600, height: 400, channels: 3, background: { r: 40 * index, g: 120, b: 60 } } })
      .jpeg()
      .toFile(path.join(recordsDir, `photos/long-bed/${name}.jpg`));
  }
  garden = await readGarden(recordsDir);
  const cacheDir = path.join(folder, "cache");
  copies = await photoCopies(garden, recordsDir, cacheDir);
  sites = await buildSites(garden, {
    outDir: path.join(folder, "out"),
    cacheDir,
    today,
    photos: copies,
    briefs: [],
    films: await filmTexts(garden, recordsDir),
  });
});

afterAll(() => rm(folder, { recursive: true, force: true }));

/** As it lies there, and unpacked where it is compressed, as the search index is. */
async function bytesOf(file: string): Promise<string> {
  const bytes = await readFile(path.join(sites.publicDir, file));
  return `${file}\n${bytes.toString("latin1")}${isPacked(bytes) ? gunzipSync(bytes).toString("utf8") : ""}`;
}

function isPacked(bytes: Buffer): boolean {
  return bytes[0] === 0x1f && bytes[1] === 0x8b;
}

describe("what an owner lets slip", () => {
  it("is in no published byte, neither on a page nor in the search, a feed or a picture's name", async () => {
    for (const file of await filesOf(sites.publicDir)) {
      // The indexer's own program is the same for everybody.
      if (/^pagefind\/(?:wasm|pagefind(?:-worker)?\.js)/u.test(file)) continue;
      const bytes = await bytesOf(file);
      expect(
        SECRETS.filter((secret) => secret.test(bytes)),
        file,
      ).toEqual([]);
    }
  });

  it("takes nothing along that is public", async () => {
    const bed = await bytesOf("beds/long-bed/index.html");
    for (const text of ["Twelve Aquadulce broad beans", "In full sun", "lackfly"]) expect(bed).toContain(text);
    expect(await bytesOf("varieties/aquadulce/index.html")).toContain("while the soil was warm");
    expect(bed).not.toContain("topped up");
    expect(await bytesOf("index.html")).toContain("Slip garden");
    expect(await bytesOf("episodes/may/index.html")).toContain("This is the long bed");
    expect(await bytesOf("feed.xml")).toContain("<title>May</title>");
    const list = await bytesOf("varieties.csv");
    for (const text of ["Whitsun", "a gift", "Maureen Ash", "Lantern"]) expect(list).toContain(text);
    expect(bed).toContain("given away");
  });

  it("leaves no door of the workbench on a published page", async () => {
    for (const file of await filesOf(sites.publicDir))
      if (file.endsWith(".html"))
        expect(await bytesOf(file), file).not.toMatch(/write-form|data-settle|data-drop|@write/u);
  });

  it("is in nothing that is handed over to be shown: description, comment, posts, chapters, short clips", async () => {
    const episode = garden.episodes.get("may");
    const bytes = new TextEncoder().encode(FILES["episodes/may/may.vtt"]);
    if (episode === undefined) throw new Error("the film is not read");
    const made = wrapEpisode({ garden, episode, captions: { file: "may.vtt", bytes }, glossary: readGlossary("") });
    const files = wrapFiles({ made, garden, plates: [], url: (file) => file });
    const handedOver = [
      "description.txt",
      "pinned-comment.txt",
      "post.txt",
      "newsletter.txt",
      "chapters.txt",
      "chapters.vtt",
    ];
    expect([...files.keys()]).toEqual(expect.arrayContaining(["description.txt", "post.txt", "newsletter.txt"]));
    for (const file of [...handedOver, "shorts.csv"]) {
      const found = SECRETS.filter((secret) => secret.test(files.get(file) ?? ""));
      expect(found, `${file}: ${files.get(file)}`).toEqual([]);
    }
  });

  it("leaves a photo that only a private note shows off every page", async () => {
    const published = new Set(await filesOf(path.join(sites.publicDir, "photos")));
    const isPublished = (photo: string) => (copies.get(photo)?.files ?? []).some(({ name }) => published.has(name));
    expect(isPublished("photos/long-bed/gate/2026-05-17.jpg")).toBe(false);
    expect(isPublished("photos/long-bed/2026-05-19-number-nine-harbour-lane.jpg")).toBe(false);
    expect(isPublished("photos/long-bed/gate/2026-05-18.jpg")).toBe(true);
    // It shows a variety of which a row of the table says that it is private.
    expect(isPublished("photos/long-bed/2026-06-01.jpg")).toBe(false);
    expect(isPublished("photos/long-bed/2026-05-21.jpg")).toBe(false);
    expect(isPublished("photos/long-bed/2026-06-02.jpg")).toBe(true);
  });

  it("is told to the owner, with its place", () => {
    const hints = privacyHints(garden);
    expect(new Set(hints.map(({ rule, severity }) => `${severity} ${rule}`))).toEqual(new Set(["hint privacy/named"]));
    expect(hints).toContainEqual(
      expect.objectContaining({
        file: "notes/2026-05-16.md",
        line: 8,
        what: 'This names "Thief-proof bed", which is private, so viewers are not shown these words.',
      }),
    );
    expect(hints.map(({ file }) => file)).toEqual(expect.arrayContaining(["beds/long-bed.md"]));
    expect(hints.map(({ what }) => what).join()).toContain('"Shed"');
  });
});

/** Where a secret is put in a file of each kind: by what the file's name ends in. */
const PLANTS: readonly { readonly kind: RegExp; readonly plant: (bytes: Buffer) => Buffer | Promise<Buffer> }[] = [
  { kind: /\.(?:html|css|js|json|csv|xml|txt|svg|woff2)$|^_headers$/u, plant: said },
  {
    kind: /^pagefind\/(?:fragment|index|filter)\/|\.pf_meta$|\.pagefind$/u,
    plant: (bytes) => gzipSync(said(gunzipSync(bytes))),
  },
  {
    kind: /\.(?:jpg|webp|png)$/u,
    plant: (bytes) =>
      sharp(bytes)
        .withExif({ IFD0: { ImageDescription: "The biopsy" } })
        .toBuffer(),
  },
  { kind: /\.(?:jpg|webp|png)$/u, plant: said },
];

function said(bytes: Buffer): Buffer {
  return Buffer.concat([bytes, Buffer.from("\nThe surgeon called about the biopsy and wants me back.\n")]);
}

describe("a secret planted into a finished site", () => {
  it("is found in every file, whatever its kind", async () => {
    expect(await gatePublicFolder(sites.publicDir, garden)).toEqual([]);
    const planted = path.join(folder, "planted");
    await mkdir(planted);
    const expected: string[] = [];
    for (const file of await filesOf(sites.publicDir)) {
      const plants = PLANTS.filter(({ kind }) => kind.test(file));
      expect(plants, `nothing is planted into ${file}`).not.toHaveLength(0);
      for (const [index, { plant }] of plants.entries()) {
        const target = path.join(planted, String(index), file);
        await mkdir(path.dirname(target), { recursive: true });
        await writeFile(target, await plant(await readFile(path.join(sites.publicDir, file))));
        expected.push(`${index}/${file}`);
      }
    }
    const found = new Set((await gatePublicFolder(planted, garden)).map(({ file }) => file));
    expect(expected.filter((file) => !found.has(file))).toEqual([]);
    expect(new Set(expected.map((file) => path.extname(file))).size).toBeGreaterThanOrEqual(12);
  });

  it.each([
    ["a private bed's name", "<p>and on to the Thief-proof bed</p>"],
    ["by another of its names", '<img alt="Fort Knox">'],
    ["a private variety's name", "<title>Moonlit Grandmother</title>"],
    ["a bed's of a private site", '{"bed":"Wicker pots"}'],
    ["a private film's", "<item><title>For the family only</title></item>"],
    ["its address", "<loc>https://garden.example/episodes/secret-film/</loc>"],
    ["the place of the garden", "BEGIN:VEVENT\nGEO:54.31269;-5.60339"],
    ["the place of a site", "N 54° 18.426′ W 005° 35.952′"],
    ["a private photo's name", "photos/long-bed/2026-05-19-number-nine-harbour-lane.jpg"],
  ])("is found when it is %s", async (_, text) => {
    const one = path.join(folder, "one");
    await rm(one, { recursive: true, force: true });
    await mkdir(one);
    await writeFile(path.join(one, "index.html"), text);
    expect(await gatePublicFolder(one, garden)).toHaveLength(1);
  });

  it("is found in a link and in a file that nobody can read", async () => {
    const one = path.join(folder, "linked");
    await mkdir(one);
    await cp(path.join(folder, "records/notes/2026-05-17.md"), path.join(one, "note.txt"));
    await writeFile(path.join(one, "broken.pf_meta"), Buffer.from([0x1f, 0x8b, 1, 2, 3]));
    expect((await gatePublicFolder(one, garden)).map(({ file, rule }) => `${file}: ${rule}`)).toEqual([
      "broken.pf_meta: unreadable",
      "note.txt: private text",
      "note.txt: private name",
    ]);
  });
});
