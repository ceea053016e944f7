import { spawn } from "node:child_process";
import { createHash } from "node:crypto";
import { mkdir, mkdtemp, readdir, readFile, rename, rm, stat, symlink, utimes, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import {
  ingestFolder,
  ingestPhotos,
  type PhotoStore,
  viewpointFileName,
  viewpointInName,
} from "../../src/photos/index.ts";
import { bed, drawn, jpeg, tag, tiff, withExif } from "./drawn.ts";

let dir: string;
beforeEach(async () => {
  dir = await mkdtemp(path.join(tmpdir(), "plotreel-ingest-"));
  await mkdir(path.join(dir, "card"));
});
afterEach(() => rm(dir, { recursive: true, force: true }));

const beds = new Map(
  [bed("long-bed", { title: "Long Bed", viewpoints: [{ name: "gate" }] }), bed("bean-row")].map((one) => [one.id, one]),
);

async function onCard(name: string, bytes: Uint8Array | string, modified?: Date) {
  const file = path.join(dir, "card", ...name.split("/"));
  await mkdir(path.dirname(file), { recursive: true });
  await writeFile(file, bytes);
  if (modified) await utimes(file, modified, modified);
}

const ingest = (more: Partial<Parameters<typeof ingestFolder>[2]> = {}) =>
  ingestFolder(path.join(dir, "card"), path.join(dir, "records"), {
    beds,
    timeZone: "Europe/London",
    dryRun: false,
    ...more,
  });

const list = "photos/brought-in.txt";

/** Everything in the records, hidden things too; not the list of what was brought in. */
async function inRecords(): Promise<string[]> {
  const entries = await readdir(path.join(dir, "records"), { recursive: true, withFileTypes: true }).catch(() => []);
  return entries
    .filter((entry) => !entry.isDirectory())
    .map((entry) =>
      path.relative(path.join(dir, "records"), path.join(entry.parentPath, entry.name)).split(path.sep).join("/"),
    )
    .filter((file) => file !== list)
    .sort();
}

/** Pictures that differ in their bytes. */
const picture = (seed: number) =>
  drawn(40 + (seed % 20), 30, `#${(0x102030 + seed * 4099).toString(16).padStart(6, "0").slice(-6)}`)
    .jpeg()
    .toBuffer();
const taken = async (when: string, seed = 0) => withExif(await picture(seed), tiff({ exif: { [tag.original]: when } }));

describe("where photos go", () => {
  test("to bed and viewpoint where a folder names them, else to their day", async () => {
    await onCard("long-bed/gate/IMG_1.jpg", await taken("2026:05:16 10:00:00", 1));
    await onCard("Long Bed/IMG_2.jpg", await taken("2026:05:16 10:00:00", 2));
    await onCard("long-bed/holiday/IMG_3.jpg", await taken("2026:05:16 10:00:00", 3));
    await onCard("DCIM/100APPLE/IMG_4.jpg", await taken("2026:05:17 23:59:00", 4));
    await onCard("DCIM/IMG_20260518_070000.jpg", await picture(5));
    await onCard("DCIM/DSC6.jpg", await picture(6), new Date("2026-05-19T12:00:00Z"));
    const summary = await ingest();
    expect(summary).toMatchObject({ alreadyThere: [], leftAlone: [] });
    expect(
      summary.broughtIn.map(({ from, to, bed: bedId, viewpoint, day }) => [from, to, bedId, viewpoint, day]),
    ).toEqual([
      ["DCIM/100APPLE/IMG_4.jpg", "photos/2026-05-17/IMG_4.jpg", undefined, undefined, "2026-05-17"],
      // Only the file's own time tells its day: no folder may make more of it.
      ["DCIM/DSC6.jpg", "photos/DSC6.jpg", undefined, undefined, "2026-05-19"],
      ["DCIM/IMG_20260518_070000.jpg", "photos/2026-05-18/IMG_20260518_070000.jpg", undefined, undefined, "2026-05-18"],
      ["Long Bed/IMG_2.jpg", "photos/long-bed/IMG_2.jpg", "long-bed", undefined, "2026-05-16"],
      ["long-bed/gate/IMG_1.jpg", "photos/long-bed/gate/IMG_1.jpg", "long-bed", "gate", "2026-05-16"],
      ["long-bed/holiday/IMG_3.jpg", "photos/long-bed/IMG_3.jpg", "long-bed", undefined, "2026-05-16"],
    ]);
    expect(await inRecords()).toEqual(summary.broughtIn.map(({ to }) => to).sort());
    expect((await stat(path.join(dir, "records/photos/DSC6.jpg"))).mtime).toEqual(new Date("2026-05-19T12:00:00Z"));
  });

  test("by the viewpoint page's file name", async () => {
    const name = viewpointFileName("long-bed", "gate", "2026-07-18", "09:15:00");
    expect(name).toBe("long-bed__gate__2026-07-18T09-15-00.jpg");
    await onCard(`Download/${name}`, await picture(1));
    expect((await ingest()).broughtIn).toMatchObject([
      { to: `photos/long-bed/gate/${name}`, day: "2026-07-18", viewpoint: "gate" },
    ]);
    expect(viewpointInName("IMG__1.jpg")).toBeUndefined();
    expect(viewpointInName("a__b__c.jpg")).toBeUndefined();
  });

  test("the source is left as it was", async () => {
    const bytes = await taken("2026:05:16 10:00:00");
    await onCard("IMG_1.jpg", bytes);
    await ingest();
    expect(await readFile(path.join(dir, "card/IMG_1.jpg"))).toEqual(bytes);
    expect(await readFile(path.join(dir, "records/photos/2026-05-16/IMG_1.jpg"))).toEqual(bytes);
  });
});

describe("nothing twice, nothing over another", () => {
  test("a second run brings in nothing", async () => {
    await onCard("IMG_1.jpg", await taken("2026:05:16 10:00:00", 1));
    await ingest();
    const again = await ingest();
    expect(again).toEqual({
      broughtIn: [],
      alreadyThere: [{ from: "IMG_1.jpg", to: "photos/2026-05-16/IMG_1.jpg" }],
      leftAlone: [],
      safeToClear: true,
    });
  });

  test("a photo that was sorted into another folder since counts as there", async () => {
    const bytes = await taken("2026:05:16 10:00:00", 1);
    await mkdir(path.join(dir, "records/photos/bean-row"), { recursive: true });
    await writeFile(path.join(dir, "records/photos/bean-row/first-beans.jpg"), bytes);
    await onCard("IMG_1.jpg", bytes);
    expect((await ingest()).alreadyThere).toEqual([{ from: "IMG_1.jpg", to: "photos/bean-row/first-beans.jpg" }]);
  });

  test("the same photo twice on the card comes in once", async () => {
    const bytes = await taken("2026:05:16 10:00:00", 1);
    await onCard("a.jpg", bytes);
    await onCard("b.jpg", bytes);
    expect(await ingest()).toMatchObject({ broughtIn: [{ from: "a.jpg" }], alreadyThere: [{ from: "b.jpg" }] });
  });

  test("another photo of the same name gets a number, whatever the case of its letters", async () => {
    await onCard("a/IMG_1.jpg", await taken("2026:05:16 10:00:00", 1));
    await onCard("b/IMG_1.jpg", await taken("2026:05:16 11:00:00", 2));
    await onCard("c/img_1.JPG", await taken("2026:05:16 12:00:00", 3));
    const { broughtIn } = await ingest();
    expect(broughtIn.map(({ to, renamed }) => [to, renamed])).toEqual([
      ["photos/2026-05-16/IMG_1.jpg", false],
      ["photos/2026-05-16/IMG_1-2.jpg", true],
      ["photos/2026-05-16/img_1-3.JPG", true],
    ]);
    for (const { from, to } of broughtIn)
      expect(await readFile(path.join(dir, "records", to))).toEqual(await readFile(path.join(dir, "card", from)));
  });

  test("a name taken between looking and writing is not written over", async () => {
    const late = await taken("2026:05:16 09:00:00", 9);
    const store = storeInMemory();
    const put = store.put;
    store.put = async (name, bytes, modified) => {
      if (name.endsWith("/IMG_1.jpg")) store.files.set(name, late);
      return put(name, bytes, modified);
    };
    const source = sourceInMemory({ "IMG_1.jpg": await taken("2026:05:16 10:00:00", 1) });
    const { broughtIn } = await ingestPhotos({ source, store, beds, timeZone: "Europe/London", dryRun: false });
    expect(broughtIn.map(({ to }) => to)).toEqual(["photos/2026-05-16/IMG_1-2.jpg"]);
    expect(store.files.get("photos/2026-05-16/IMG_1.jpg")).toBe(late);
  });
});

test("a dry run tells the same and writes nothing", async () => {
  await onCard("a/IMG_1.jpg", await taken("2026:05:16 10:00:00", 1));
  await onCard("b/IMG_1.jpg", await taken("2026:05:16 11:00:00", 2));
  await onCard("c/IMG_1.jpg", await taken("2026:05:16 10:00:00", 1));
  const dry = await ingest({ dryRun: true });
  expect(await inRecords()).toEqual([]);
  expect(await ingest()).toEqual(dry);
});

test("what is no photo is left alone, each with its reason; links are not followed", async () => {
  await onCard("film.mp4", "x");
  await onCard("empty.jpg", "");
  await onCard("text.jpg", "only words");
  await onCard(".hidden.jpg", await picture(1));
  await onCard("good.jpg", await picture(2));
  await writeFile(path.join(dir, "outside.jpg"), await picture(3));
  await symlink(path.join(dir, "outside.jpg"), path.join(dir, "card/link.jpg"));
  await symlink(dir, path.join(dir, "card/loop"));
  const summary = await ingest();
  expect(summary.safeToClear).toBe(false);
  expect(summary.leftAlone).toEqual([
    { from: ".hidden.jpg", why: "hidden" },
    { from: "empty.jpg", why: "empty" },
    { from: "film.mp4", why: "no film in it" },
    { from: "link.jpg", why: "link" },
    { from: "loop", why: "link" },
    { from: "text.jpg", why: "no picture in it" },
  ]);
  expect(summary.broughtIn.map(({ from }) => from)).toEqual(["good.jpg"]);
});

test.each(["two words.jpg", "-rf.jpg", "été.jpg", "🌱🥕.jpg", "a..b.jpg", "100%.jpg", "it's #1?.jpg"])(
  "name %s",
  async (name) => {
    await onCard(name, await taken("2026:05:16 10:00:00"));
    expect((await ingest()).broughtIn.map(({ to }) => to)).toEqual([`photos/2026-05-16/${name}`]);
  },
);

test("taking in the records' own photos changes nothing", async () => {
  await onCard("IMG_1.jpg", await taken("2026:05:16 10:00:00", 1));
  await ingest();
  const before = await inRecords();
  const summary = await ingestFolder(dir, path.join(dir, "records"), {
    beds,
    timeZone: "Europe/London",
    dryRun: false,
  });
  expect(summary.broughtIn).toEqual([]);
  expect(await inRecords()).toEqual(before);
});

describe("when it goes wrong", () => {
  test("a full disk stops the run and says so; what came in is whole", async () => {
    const store = storeInMemory();
    const put = store.put;
    store.put = async (name, bytes, modified) => {
      if (store.files.size === 1) throw Object.assign(new Error("no space"), { code: "ENOSPC" });
      return put(name, bytes, modified);
    };
    const source = sourceInMemory({
      "a.jpg": await taken("2026:05:16 10:00:00", 1),
      "b.jpg": await taken("2026:05:16 10:00:00", 2),
    });
    const summary = await ingestPhotos({ source, store, beds, timeZone: "Europe/London", dryRun: false });
    expect(summary).toMatchObject({ stopped: "the disk is full", broughtIn: [{ from: "a.jpg" }] });
    expect([...store.files.keys()]).toEqual(["photos/2026-05-16/a.jpg"]);
  });

  test("a card that is pulled while it is read stops the run, which says so", async () => {
    const source = sourceInMemory({ "a.jpg": await picture(1), "b.jpg": await picture(2), "c.jpg": await picture(3) });
    const read = source.read;
    source.read = (name) => (name === "a.jpg" ? read(name) : Promise.reject(new Error("ENOENT")));
    source.isThere = async () => false;
    const store = storeInMemory();
    const summary = await ingestPhotos({ source, store, beds, timeZone: "Europe/London", dryRun: false });
    expect(summary).toMatchObject({
      stopped: "the folder the photos come from is no longer there",
      broughtIn: [{ from: "a.jpg" }],
      leftAlone: [],
    });
  });

  test("one file that cannot be read does not stop the rest", async () => {
    const source = sourceInMemory({ "a.jpg": await picture(1), "b.jpg": await picture(2) });
    const read = source.read;
    source.read = (name) => (name === "a.jpg" ? Promise.reject(new Error("EIO")) : read(name));
    const summary = await ingestPhotos({
      source,
      store: storeInMemory(),
      beds,
      timeZone: "Europe/London",
      dryRun: false,
    });
    expect(summary).toMatchObject({
      leftAlone: [{ from: "a.jpg", why: "unreadable" }],
      broughtIn: [{ from: "b.jpg" }],
    });
  });

  test("killed again and again, it leaves no half photo and comes to its end", async () => {
    const names = Array.from({ length: 60 }, (_, i) => `IMG_${i}.jpg`);
    for (const [i, name] of names.entries())
      await onCard(name, Buffer.concat([await taken("2026:05:16 10:00:00", i), Buffer.alloc(400_000, i)]));
    const card = path.join(dir, "card");
    const records = path.join(dir, "records");
    const script = fileURLToPath(new URL("../../src/photos/index.ts", import.meta.url));
    const code = `import { ingestFolder } from ${JSON.stringify(script)};
      await ingestFolder(${JSON.stringify(card)}, ${JSON.stringify(records)}, { beds: new Map(), timeZone: "Europe/London", dryRun: false, onProgress: () => console.log("one") });`;
    for (let round = 0; round < 4; round++) {
      const child = spawn(process.execPath, ["--input-type=module", "-e", code], {
        stdio: ["ignore", "pipe", "inherit"],
      });
      let seen = 0;
      child.stdout.on("data", (chunk: Buffer) => {
        seen += chunk.toString().split("\n").length - 1;
        // At once, in the midst of the next photo.
        if (seen >= 7 * (round + 1)) child.kill("SIGKILL");
      });
      await new Promise((resolve) => child.on("close", resolve));
      for (const file of await inRecords()) {
        if (file.includes("/.incoming/")) continue;
        expect(await readFile(path.join(records, file))).toEqual(await readFile(path.join(card, path.basename(file))));
      }
    }
    const last = await ingest();
    expect(last.broughtIn.length + last.alreadyThere.length).toBe(60);
    // With nothing left of the runs that were killed.
    expect(await inRecords()).toHaveLength(60);
    expect(await readdir(path.join(records, "photos"))).not.toContain(".incoming");
  });

  test("a card of a million names is walked through without a photo being opened", async () => {
    const source = {
      list: async () =>
        Array.from({ length: 1_000_000 }, (_, i) => ({
          path: `MISC/${i}.dat`,
          size: 1,
          modified: 0,
          kind: "file" as const,
        })),
      read: () => Promise.reject(new Error("opened")),
      chunks: () => {
        throw new Error("opened");
      },
      isThere: async () => true,
    };
    let seen = 0;
    const summary = await ingestPhotos({
      source,
      store: storeInMemory(),
      beds,
      timeZone: "Europe/London",
      dryRun: false,
      onProgress: (done) => (seen = done),
    });
    expect(summary.leftAlone).toHaveLength(1_000_000);
    expect(seen).toBe(1_000_000);
  });
});

describe("what belongs to a photo comes along", () => {
  const film = Buffer.concat([Buffer.from("\0\0\0\x18ftypqt  ", "latin1"), Buffer.alloc(3_000_000, 7)]);

  test("clip, raw file, words in either name and case, XMP and edits, under the name the photo got", async () => {
    await onCard("a/IMG_1.JPG", await taken("2026:05:16 09:00:00", 1));
    await onCard("b/IMG_1.JPG", await taken("2026:05:16 10:00:00", 2));
    await onCard("b/img_1.md", "---\nprivate: true\n---\n");
    await onCard("b/IMG_1.jpg.MD", "caption");
    await onCard("b/IMG_1.MOV", film);
    await onCard("b/IMG_1.NEF", "raw");
    await onCard("b/IMG_1.xmp", "<x/>");
    await onCard("b/IMG_1.AAE", "steps");
    const summary = await ingest();
    expect(summary.broughtIn.map(({ from, to, is }) => [from, to, is])).toEqual([
      ["a/IMG_1.JPG", "photos/2026-05-16/IMG_1.JPG", "photo"],
      ["b/IMG_1.AAE", "photos/2026-05-16/IMG_1-2.AAE", "aside"],
      ["b/IMG_1.JPG", "photos/2026-05-16/IMG_1-2.JPG", "photo"],
      ["b/IMG_1.MOV", "photos/2026-05-16/IMG_1-2.MOV", "film"],
      ["b/IMG_1.NEF", "photos/2026-05-16/IMG_1-2.NEF", "raw"],
      ["b/IMG_1.jpg.MD", "photos/2026-05-16/IMG_1-2.jpg.MD", "words"],
      ["b/IMG_1.xmp", "photos/2026-05-16/IMG_1-2.xmp", "aside"],
      ["b/img_1.md", "photos/2026-05-16/IMG_1-2.md", "words"],
    ]);
    expect(summary.safeToClear).toBe(true);
    expect(await readFile(path.join(dir, "records/photos/2026-05-16/IMG_1-2.MOV"))).toEqual(film);
    expect((await ingest()).broughtIn).toEqual([]);
  });

  test("beside a photo that was sorted since", async () => {
    await onCard("IMG_1.jpg", await taken("2026:05:16 09:00:00", 1));
    await ingest();
    await mkdir(path.join(dir, "records/photos/bean-row"), { recursive: true });
    await rename(
      path.join(dir, "records/photos/2026-05-16/IMG_1.jpg"),
      path.join(dir, "records/photos/bean-row/first.jpg"),
    );
    await onCard("IMG_1.md", "First beans");
    expect((await ingest()).broughtIn.map(({ to }) => to)).toEqual(["photos/bean-row/first.md"]);
  });

  test("words that were changed in the records stay as they are, and the card's are named", async () => {
    await onCard("IMG_1.jpg", await taken("2026:05:16 09:00:00", 1));
    await onCard("IMG_1.md", "First beans");
    await ingest();
    await onCard("IMG_1.md", "Second thoughts");
    expect(await ingest()).toMatchObject({
      broughtIn: [],
      leftAlone: [{ from: "IMG_1.md", why: "other words there" }],
      safeToClear: false,
    });
    expect(await readFile(path.join(dir, "records/photos/2026-05-16/IMG_1.md"), "utf8")).toBe("First beans");
  });

  test("XMP and a takeout's JSON tell the day of a photo that does not", async () => {
    await onCard("a.jpg", await picture(1));
    await onCard("a.xmp", '<rdf:Description exif:DateTimeOriginal="2026-05-16T23:30:00-05:00"/>');
    await onCard("b.jpg", await picture(2));
    await onCard("b.jpg.supplemental-metadata.json", '{"photoTakenTime": {"timestamp": "1779058200"}}');
    await onCard("c(1).jpg", await picture(3));
    await onCard("c.jpg(1).json", '{"photoTakenTime": {"timestamp": "1779231600"}}');
    const { broughtIn, safeToClear } = await ingest();
    expect(broughtIn.map(({ to }) => to)).toEqual([
      "photos/2026-05-16/a.jpg",
      "photos/2026-05-16/a.xmp",
      // 22:50 UTC on 17 May 2026 is ten to midnight in London.
      "photos/2026-05-17/b.jpg",
      "photos/2026-05-17/b.jpg.supplemental-metadata.json",
      "photos/2026-05-20/c(1).jpg",
      "photos/2026-05-20/c.jpg(1).json",
    ]);
    expect(safeToClear).toBe(true);
  });
});

describe("what was thrown away stays away", () => {
  test("until its line is taken out of the list", async () => {
    await onCard("a.jpg", await taken("2026:05:16 09:00:00", 1));
    await onCard("b.jpg", await taken("2026:05:16 10:00:00", 2));
    await onCard("b.md", "Blurred");
    await ingest();
    for (const name of ["b.jpg", "b.md"]) await rm(path.join(dir, "records/photos/2026-05-16", name));
    expect(await ingest()).toMatchObject({
      broughtIn: [],
      alreadyThere: [{ from: "a.jpg" }],
      leftAlone: [
        { from: "b.jpg", why: "thrown away" },
        { from: "b.md", why: "thrown away" },
      ],
      safeToClear: true,
    });
    const file = path.join(dir, "records", list);
    const lines = (await readFile(file, "utf8")).split("\n");
    expect(lines.filter((line) => / \d+ photos\//.test(line))).toHaveLength(3);
    await writeFile(file, lines.filter((line) => !line.endsWith("/b.jpg")).join("\n"));
    expect((await ingest()).broughtIn.map(({ to }) => to)).toEqual(["photos/2026-05-16/b.jpg"]);
  });

  test("also what lay in the records before the list began", async () => {
    const bytes = await taken("2026:05:16 10:00:00", 1);
    await mkdir(path.join(dir, "records/photos"), { recursive: true });
    await writeFile(path.join(dir, "records/photos/old.jpg"), bytes);
    await onCard("a.jpg", bytes);
    await ingest();
    await rm(path.join(dir, "records/photos/old.jpg"));
    expect((await ingest()).broughtIn).toEqual([]);
  });
});

describe("the answer", () => {
  test("is no while anything that may be missed is not in the records", async () => {
    await onCard("a.jpg", await picture(1));
    await onCard("Thumbs.db", "x");
    await onCard("album/metadata.json", "{}");
    expect((await ingest()).safeToClear).toBe(true);
    await onCard("voice.wav", "x");
    expect(await ingest()).toMatchObject({
      leftAlone: [
        { from: "Thumbs.db", why: "camera's own" },
        { from: "album/metadata.json", why: "aside of no photo" },
        { from: "voice.wav", why: "no sound in it" },
      ],
      safeToClear: false,
    });
  });

  test("is no for an empty folder, and for a film that ends early", async () => {
    expect((await ingest()).safeToClear).toBe(false);
    const source = sourceInMemory({ "a.mp4": Buffer.from("\0\0\0\x18ftypisom", "latin1") });
    const whole = source.list;
    source.list = async () => (await whole()).map((file) => ({ ...file, size: file.size + 1 }));
    const store = storeInMemory();
    const summary = await ingestPhotos({ source, store, beds, timeZone: "Europe/London", dryRun: false });
    expect(summary).toMatchObject({ leftAlone: [{ from: "a.mp4", why: "unreadable" }], safeToClear: false });
  });
});

test("progress counts every file", async () => {
  for (let i = 0; i < 3; i++) await onCard(`${i}.jpg`, await picture(i));
  const seen: string[] = [];
  await ingest({ onProgress: (done, total) => seen.push(`${done}/${total}`) });
  expect(seen).toEqual(["1/3", "2/3", "3/3"]);
});

function sourceInMemory(files: Record<string, Uint8Array>) {
  return {
    list: async () =>
      Object.entries(files).map(([name, { length }]) => ({
        path: name,
        size: length,
        modified: Date.UTC(2026, 4, 16),
        kind: "file" as const,
      })),
    read: async (name: string) => files[name] ?? (await jpeg()),
    chunks: async function* (name: string) {
      yield files[name] ?? new Uint8Array();
    },
    isThere: async () => true,
  };
}

function storeInMemory(): PhotoStore & { files: Map<string, Uint8Array> } {
  const files = new Map<string, Uint8Array>();
  let list = "";
  return {
    files,
    list: async () => [...files].map(([name, { length }]) => ({ path: name, size: length })),
    hash: async (name) =>
      createHash("sha256")
        .update(files.get(name) ?? "")
        .digest("hex"),
    put: async (name, data) => {
      if (files.has(name)) return false;
      const pieces: Uint8Array[] = [];
      if (data instanceof Uint8Array) pieces.push(data);
      else for await (const piece of data) pieces.push(piece);
      files.set(name, Buffer.concat(pieces));
      return true;
    },
    listed: async () => list,
    addToList: async (text) => {
      list += text;
    },
    close: async () => undefined,
  };
}
