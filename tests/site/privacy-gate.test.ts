import { createHash } from "node:crypto";
import { mkdir, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { gzipSync } from "node:zlib";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { Event, Records } from "../../src/model.ts";
import { creditXmp } from "../../src/photos/index.ts";
import { geohash, plusCode } from "../../src/site/privacy/place-codes.ts";
import { gatePublicFolder } from "../../src/site/privacy-gate.ts";
import { bed, drawn, jpeg, note, records, settings, sidecar, site, tag, tiff, withExif } from "../photos/drawn.ts";

let dir: string;
beforeEach(async () => {
  dir = await mkdtemp(path.join(tmpdir(), "plotreel-gate-"));
});
afterEach(() => rm(dir, { recursive: true, force: true }));

const place = { file: "notes/2026-05-16.md", line: 3, column: 1 };
const story = (text: string) => [{ text, place }];
const event = (text: string, more: Partial<Event> = {}): Event => ({
  id: "e",
  kind: "did",
  day: "2026-05-16",
  verb: "did",
  text,
  place,
  private: false,
  more: [],
  ...more,
});

/** 54°18'45.7"N 5°36'12.2"W and a second place to the east of Greenwich and south of the equator. */
const garden: Records = records([], {
  settings: { ...settings, position: { latitude: 54.31269, longitude: -5.60339, elevation: 12 } },
  sites: [
    site("hill-allotment", { position: { latitude: -33.865143, longitude: 151.2099 } }),
    site("coarse-yard", { position: { latitude: 48.9, longitude: 9.2 } }),
    site("aunt-josephines-yard", { title: "Aunt Josephine's walled yard", private: true }),
  ],
  beds: [
    bed("long-bed"),
    bed("back-door-pots", { private: true, title: "The pots by the back door" }),
    bed("aunts-tubs", { site: "aunt-josephines-yard" }),
  ],
  notes: [
    note("2026-05-16", { story: story("The slugs came back after the rain. We mulched the long bed with straw.") }),
    note("2026-05-17-quarrel", {
      private: true,
      story: story(
        "Had words with *the neighbour* about the overhanging elder and its roots, which he won't cut before autumn.\nGate code changed to the usual one. The slugs came back after the rain.",
      ),
      place: { ...place, file: "notes/2026-05-17-quarrel.md" },
    }),
  ],
  events: [
    event("watered everything in the long bed"),
    event("paid forty for a used water butt", { private: true, place: { ...place, file: "notes/2026-05-18.md" } }),
    event("planted 12 leeks in long bed", { private: true, verb: "planted" }),
  ],
  sidecars: [sidecar("photos/long-bed/house-number.jpg", { private: true, caption: "Our front door with its number" })],
});

async function put(name: string, content: string | Uint8Array) {
  const file = path.join(dir, ...name.split("/"));
  await mkdir(path.dirname(file), { recursive: true });
  await writeFile(file, content);
}

describe("sounds", () => {
  test.each([
    ["memo.m4a", Buffer.from("\0\0\0\x18ftypM4A \0\0\0\0M4A mp42isom", "latin1")],
    ["assets/walk.mp3", Buffer.from("ID3\x04\0\0\0\0\0\0", "latin1")],
    ["assets/bare.mp3", Buffer.from([0xff, 0xfb, 0x90, 0x64, 0, 0])],
    ["a.css", Buffer.from("RIFF\0\0\0\0WAVEfmt ", "latin1")],
    ["page.html", Buffer.from("OggS\0\x02", "latin1")],
  ])("are never handed over, whatever they are called: %s", async (name, bytes) => {
    await put("index.html", "<p>The long bed.</p>");
    await put(name, bytes);
    expect(await rules()).toEqual([`${name}: sound`]);
  });
});

const rules = async () => (await gatePublicFolder(dir, garden)).map(({ file, rule }) => `${file}: ${rule}`);

/** What the gate says of one file with this content. */
async function judged(content: string | Uint8Array, name = "index.html") {
  await put(name, content);
  return gatePublicFolder(dir, garden);
}

describe("pictures", () => {
  test("clean ones pass, others are named with what they carry", async () => {
    await put("photos/a.jpg", await jpeg());
    await put("photos/b.webp", await drawn(20, 20).webp().toBuffer());
    expect(await gatePublicFolder(dir, garden)).toEqual([]);
    const gps = tiff({
      gps: {
        [tag.latitudeRef]: "N",
        [tag.latitude]: [
          [1, 1],
          [2, 1],
          [3, 1],
        ],
      },
    });
    await put("photos/c.jpg", withExif(await jpeg(), gps));
    await put("photos/d.bin", await drawn(20, 20).withXmp("<x:xmpmeta xmlns:x='adobe:ns:meta/'/>").png().toBuffer());
    expect(await gatePublicFolder(dir, garden)).toEqual([
      { file: "photos/c.jpg", rule: "image metadata", what: "The picture carries EXIF, GPS." },
      { file: "photos/d.bin", rule: "image metadata", what: "The picture carries XMP." },
    ]);
  });

  test("the credit of a public photo, when asked for", async () => {
    const credited = (credit: string) => drawn(20, 20).withXmp(creditXmp(credit)).webp().toBuffer();
    const withCredits = {
      ...garden,
      photoSidecars: new Map([
        ["a", sidecar("photos/a.jpg", { credit: "Jo Bloggs" })],
        ["b", sidecar("photos/b.jpg", { credit: "A Secret", private: true })],
      ]),
    };
    await put("a.webp", await credited("Jo Bloggs"));
    await put("b.webp", await credited("A Secret"));
    await put("c.webp", await credited("54.31269, -5.60339"));
    const found = async (more: object) => (await gatePublicFolder(dir, withCredits, more)).map(({ file }) => file);
    expect(await found({})).toEqual(["a.webp", "b.webp", "c.webp"]);
    expect(await found({ creditsAllowed: true })).toEqual(["b.webp", "c.webp"]);
  });

  test("a picture inside a style sheet", async () => {
    const bytes = withExif(await jpeg(), tiff({ ifd0: { [tag.modified]: "2026:05:16 10:00:00" } }));
    expect(
      (await judged(`a{background:url("data:image/jpeg;base64,${bytes.toString("base64")}")}`, "a.css"))[0]?.rule,
    ).toBe("image metadata");
    expect(
      await judged(`a{background:url("data:image/jpeg;base64,${(await jpeg()).toString("base64")}")}`, "a.css"),
    ).toEqual([]);
  });
});

describe("a position in any spelling", () => {
  test.each([
    ["decimals", "<p>54.31269, -5.60339</p>"],
    ["rounded to three", "<p>54.313, -5.603</p>"],
    ["cut off at three", "<p>54.312, -5.603</p>"],
    ["a point some steps away", "<p>54.3131, -5.6029</p>"],
    ["longitude first, as GeoJSON", '{"coordinates":[-5.60339,54.31269]}'],
    ["keys apart", '{"latitude":54.31269,"elevation":12,"accuracy":4.5,"longitude":-5.60339}'],
    ["attributes", '<div data-lat="54.31269" data-lon="-5.60339">'],
    ["an address", '<a href="https://maps.example/?q=54.31269%2C-5.60339">'],
    ["a geo address", "geo:54.31269,-5.60339;u=35"],
    ["commas as decimals", "<p>54,31269; -5,60339</p>"],
    ["commas, three digits", "<p>54,313 / -5,603</p>"],
    ["one number alone", "<p>We are at 54.3127 north.</p>"],
    ["the longitude alone", "<p>lon=-5.60339</p>"],
    ["minus as a sign", "54.31269 −5.60339"],
    ["hemisphere letters", "N54.31269 W5.60339"],
    ["degrees, minutes, seconds", "54°18′45.7″ N 5°36′12.2″ W"],
    ["with typewriter marks", `54°18'45.7"N 5°36'12.2"W`],
    ["as entities", "54&deg;18&prime;45.7&Prime;N, 5&deg;36&prime;12.2&Prime;W"],
    ["as numbered entities", "54&#176;18&#8242;45.7&#x2033;N"],
    ["in words", "54 degrees 18 minutes 45.7 seconds north"],
    ["degrees and decimal minutes", "N 54° 18.761′ W 005° 36.203′"],
    ["whole minutes", "54°19′N 5°36′W"],
    ["spaces", "54 18 45.7 N, 5 36 12.2 W"],
    ["colons", "54:18:45.7N"],
    ["EXIF fractions", "54/1 18/1 4568/100"],
    ["a receiver's sentence", "$GPGLL,5418.7614,N,00536.2034,W"],
    ["whole ten-millionths", '{"latitudeE7":543126900,"longitudeE7":-56033900}'],
    ["digits as entities", "&#53;&#52;&#46;&#51;&#49;&#50;&#54;&#57;"],
    ["escaped in a script", 'x="\\u0035\\u0034.31269,\\x2d5.60339"'],
    ["escaped twice", "54&amp;deg;18&amp;prime;45.7&amp;Prime;N"],
    ["cut up by tags", "<b>54.</b><i>31</i>269, -5<span>.</span>60339"],
    ["cut up by marks nobody sees", "54.3\u200b12\u00ad69, -5.60\u2060339"],
    ["full-width digits", "５４．３１２６９"],
    ["inside escaped markup", "<content>&lt;p&gt;54.31269&lt;/p&gt;</content>"],
    ["geohash", geohash({ latitude: 54.31269, longitude: -5.60339 }, 8)],
    ["plus code", plusCode({ latitude: 54.31269, longitude: -5.60339 })],
    ["short plus code", `${plusCode({ latitude: 54.31269, longitude: -5.60339 }).slice(4)} Gullstone`],
    ["the site's, south and east", "-33.865, 151.210"],
    ["the site's in degrees", "33°51'54.5\"S 151°12'35.6\"E"],
    ["a coarse position as it is written", "48.9, 9.2"],
    ["a coarse position with letters", "48.9° N, 9.2° E"],
    ["drawn as a path", '<path d="M54.31269 -5.60339"/>'],
  ])("%s", async (_, content) => {
    expect((await judged(content)).map(({ rule }) => rule)).toEqual(["position"]);
  });

  test("inside a base64 address, a compressed file and UTF-16", async () => {
    const secret = "<p>54.31269, -5.60339</p>";
    expect(
      (await judged(`<iframe src="data:text/html;base64,${Buffer.from(secret).toString("base64")}">`))[0]?.rule,
    ).toBe("position");
    expect((await judged(gzipSync(secret), "index.html"))[0]?.rule).toBe("position");
    expect((await judged(Buffer.from(`\ufeff${secret}`, "utf16le")))[0]?.rule).toBe("position");
  });

  test("the breach says whose and how it is spelled", async () => {
    expect(await judged("<p>-33.8651, 151.2099</p>")).toEqual([
      { file: "index.html", rule: "position", what: 'It tells where the site hill-allotment is: "33.8651, 151.2099".' },
    ]);
  });

  test.each([
    ["a harvest", "<p>54.3 kg of squash, 5.6 kg of beans</p>"],
    ["a weight with three decimals", "<td>54.312 kg</td><td>5.603 kg</td>".replace("5.603", "7.603")],
    ["thousands", "<p>54,312 views</p>"],
    ["a list of whole numbers", "[54,312,5,603,33,865,151,209]"],
    ["temperatures", "<p>48.9 kg from 9.2 m²</p>"],
    ["one decimal of a degree", "<p>54.3 % cover, 5.6 cm taller</p>"],
    ["a lone number in a drawing", '<path d="M54.3127 12.5L99.1 20"/><circle cx="54.3127" cy="8.1"/>'],
    ["a version", "v54.31.269"],
    ["a long number", "x154.31269 and 54.312691234567e-8".replace("54.312691234567e-8", "9")],
    ["elsewhere in the town", "54.35, -5.65 and 54.350, -5.650"],
    ["a time and a date", "2026-05-16 18:45.7 N 12:33"],
    ["a hash", "5431269a5603390b"],
  ])("%s is no position", async (_, content) => {
    expect(await judged(content)).toEqual([]);
  });

  test("a hundred charts full of numbers are no position", async () => {
    // A seeded generator (Lehmer, Park and Miller 1988), so that a failure comes back.
    let state = 20260718;
    const next = () => {
      state = (state * 48271) % 2147483647;
      return state / 2147483647;
    };
    for (let chart = 0; chart < 100; chart++) {
      const points = Array.from(
        { length: 200 },
        () => `${(next() * 640).toFixed(2)},${(next() * 400).toFixed(3)}`,
      ).join("L");
      const rows = Array.from(
        { length: 60 },
        () => `<tr><td>${(next() * 100).toFixed(1)}</td><td>${(next() * 200).toFixed(2)} cm</td></tr>`,
      ).join("");
      await put(
        `charts/${chart}.html`,
        `<svg viewBox="0 0 640 400"><path d="M${points}"/></svg><table>${rows}</table>`,
      );
    }
    expect(await gatePublicFolder(dir, garden)).toEqual([]);
  });
});

describe("private text", () => {
  test.each([
    [
      "as it is written",
      "<p>Had words with the neighbour about the overhanging elder and its roots, which he won't cut before autumn.</p>",
    ],
    ["with its emphasis as tags", "<p>Had words with <em>the neighbour</em> about the overhanging elder</p>"],
    ["only its middle", "<p>…the overhanging elder and its roots, which he…</p>"],
    ["in an attribute", '<img alt="about the overhanging elder and its roots">'],
    ["as entities", "about&nbsp;the overhanging&#32;elder &amp;amp; no".replace(" &amp;amp; no", " and its roots")],
    ["escaped in JSON", '{"text":"about the overhanging elder\\nand its roots, which he won\\u2019t cut"}'],
    ["percent-encoded", "?q=about%20the%20overhanging%20elder%20and%20its%20roots"],
    ["in capitals without accents", "ABOUT THE OVERHÁNGING ELDER AND ITS ROOTS"],
    ["a private line of a public note", "<li>Paid forty for a used water butt</li>"],
    ["a caption of a private photo", "<figcaption>Our front door with its number</figcaption>"],
    ["the name of a private bed", "<h1>The pots by the back door</h1>"],
    ["a short sentence", "<p>Gate code changed to the usual one.</p>"],
  ])("%s", async (_, content) => {
    expect((await judged(content)).map(({ rule }) => rule)).toEqual(["private text"]);
  });

  test("the breach says which record", async () => {
    expect((await judged("<li>paid forty for a used water butt</li>"))[0]?.what).toBe(
      'It says what notes/2026-05-18.md keeps private: "paid forty for a used water butt".',
    );
  });

  test.each([
    ["what a public note says too", "<p>The slugs came back after the rain.</p>"],
    ["a public event", "<li>watered everything in the long bed</li>"],
    ["a line of names, numbers and trade verbs", "<li>Planted 12 leeks in Long Bed</li>"],
    ["other words of the same trade", "<p>We cut the elder back in autumn and its roots with it.</p>"],
    ["the public name of the site's town", "<p>Gullstone</p>"],
  ])("%s is not private", async (_, content) => {
    expect(await judged(content)).toEqual([]);
  });
});

describe("private names", () => {
  test("in file names and addresses", async () => {
    await put("beds/back-door-pots/index.html", "<p>nothing</p>");
    await put("beds/long-bed/index.html", '<a href="/beds/aunts-tubs/">next</a>');
    await put("photos/house-number.txt", "photos/long-bed/house-number.jpg");
    await put("notes/the-pots-by-the-back-door.html", "");
    expect(await rules()).toEqual([
      "beds/back-door-pots/index.html: private name",
      "beds/long-bed/index.html: private text",
      "beds/long-bed/index.html: private name",
      "notes/the-pots-by-the-back-door.html: private name",
      "photos/house-number.txt: private name",
    ]);
  });

  test("public ones pass", async () => {
    await put(
      "beds/long-bed/index.html",
      '<a href="/beds/long-bed/">here</a> <a href="/sites/hill-allotment/">site</a>',
    );
    expect(await rules()).toEqual([]);
  });
});

describe("what passed before", () => {
  const cacheFile = () => path.join(dir, "..", `${path.basename(dir)}-passed.json`);
  const gate = (of: Records = garden) => gatePublicFolder(dir, of, { gateCache: cacheFile() });
  afterEach(() => rm(cacheFile(), { force: true }));

  test("is not searched again, and what is any different is", async () => {
    await put("index.html", "<p>a fine day</p>");
    await put("beds/index.html", "<p>Gate code changed to the usual one.</p>");
    expect((await gate()).map(({ file }) => file)).toEqual(["beds/index.html"]);
    expect((await gate()).map(({ file }) => file)).toEqual(["beds/index.html"]);
    await put("index.html", "<p>54.31269, -5.60339</p>");
    expect((await gate()).map(({ file }) => file)).toEqual(["beds/index.html", "index.html"]);
  });

  test("is searched again for a new secret, and under another name", async () => {
    await put("index.html", "<p>We drank the elderflower champagne too early again</p>");
    expect(await gate()).toEqual([]);
    const more = note("2026-06-01-own", {
      private: true,
      story: story("We drank the elderflower champagne too early again"),
      place: { ...place, file: "notes/2026-06-01-own.md" },
    });
    expect(await gate({ ...garden, notes: [...garden.notes, more] })).toHaveLength(1);
    expect(await gate()).toEqual([]);
    await put("beds/back-door-pots/index.html", "<p>We drank the elderflower champagne too early again</p>");
    expect((await gate()).map(({ rule }) => rule)).toEqual(["private name"]);
  });

  test("counts for nothing when its list is not one", async () => {
    await put("index.html", "<p>Gate code changed to the usual one.</p>");
    const [mine] = JSON.parse(
      await (async () => {
        await put("other.html", "<p>a fine day</p>");
        await gate();
        return `[${await readFile(cacheFile(), "utf8")}]`;
      })(),
    ) as [{ readonly passed: readonly string[] }];
    const sum = createHash("sha256").update("<p>Gate code changed to the usual one.</p>").digest("base64");
    const forged = JSON.stringify({ ...mine, passed: [...mine.passed, sum] });
    for (const list of [forged, "", "null", "[]", '{"given":"x","passed":["y"]}', "{"]) {
      await writeFile(cacheFile(), list);
      expect(await gate(), list).toHaveLength(1);
    }
  });
});

test("what is packed deeper than anybody looks does not pass", async () => {
  let packed: Buffer = Buffer.from("<p>54.31269, -5.60339</p>");
  for (let box = 0; box < 6; box += 1) packed = gzipSync(packed);
  await put("index.html", packed);
  expect(await rules()).toEqual(["index.html: unreadable"]);
});

test("of a garden that does not say where it is, nothing that looks like a position passes", async () => {
  const found = async (html: string) => {
    await put("index.html", html);
    return (await gatePublicFolder(dir, records([]))).map(({ what }) => what);
  };
  expect(await found("<p>54.31269, -5.60339</p>")).toEqual([
    'It holds what looks like a position: "54.31269, -5.60339".',
  ]);
  expect(await found("<p>NZ 27758 91234</p>")).toHaveLength(1);
  expect(await found("<p>1,980 degree days</p><svg><path d='M54.31269 -5.60339'/></svg><p>12.50 kg</p>")).toEqual([]);
});

test("a place in the person's own photos is looked for too", async () => {
  const home = { latitude: 51.481, longitude: -0.177 };
  await put("index.html", "<p>51.4812, -0.1765</p>");
  expect(await gatePublicFolder(dir, garden)).toEqual([]);
  expect((await gatePublicFolder(dir, { ...garden, photosTakenAt: [home] })).map(({ rule }) => rule)).toEqual([
    "position",
  ]);
});
