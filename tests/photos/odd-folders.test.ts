import { mkdir, mkdtemp, rm, symlink, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { expect, test } from "vitest";
import { openPhotoFolder, readPhotos } from "../../src/photos/index.ts";
import { openRecordsFolder, readRecords } from "../../src/records/index.ts";
import { jpeg, tag, tiff, withExif } from "./drawn.ts";

test("odd names are read, links outside are not followed, folders are no photos, and each gets one line", async () => {
  const dir = await mkdtemp(path.join(tmpdir(), "plotreel-odd-"));
  try {
    const gate = path.join(dir, "records/photos/long-bed/gate");
    await mkdir(gate, { recursive: true });
    await mkdir(path.join(dir, "records/beds"));
    await writeFile(path.join(dir, "records/beds/long-bed.md"), "---\ntitle: Long Bed\n---\n");
    const exif = tiff({ exif: { [tag.original]: "2026:05:16 10:00:00" } });
    const bytes = withExif(await jpeg(), exif);
    const odd = [
      "two words.jpg",
      "-rf.jpg",
      "été.jpg",
      "🌱🥕.jpg",
      "a..b.jpg",
      "100%.jpg",
      "it's #1?.jpg",
      "UPPER.JPG",
    ];
    // Pictures that differ in their bytes: copies would be one moment.
    for (const [at, name] of odd.entries()) await writeFile(path.join(gate, name), withExif(await jpeg(65 + at), exif));
    await writeFile(path.join(dir, "outside.jpg"), bytes);
    await symlink(path.join(dir, "outside.jpg"), path.join(gate, "link-outside.jpg"));
    await symlink(gate, path.join(gate, "loop"));
    await mkdir(path.join(gate, "folder.jpg"));
    await writeFile(path.join(gate, "folder.jpg", "inside.jpg"), bytes);
    await writeFile(path.join(gate, "text.jpg"), "only words");
    await writeFile(path.join(gate, "empty.jpg"), "");

    const recordsDir = path.join(dir, "records");
    const records = await readRecords(await openRecordsFolder(recordsDir), { today: "2026-07-18" });
    const { photos, problems } = await readPhotos(records, openPhotoFolder(recordsDir));
    const names = photos.map((photo) => photo.path.replace("photos/long-bed/gate/", ""));
    expect(names.sort()).toEqual([...odd, "folder.jpg/inside.jpg"].sort());
    expect(new Set(photos.map(({ bed, viewpoint, day }) => `${bed} ${viewpoint} ${day}`))).toEqual(
      new Set(["long-bed gate 2026-05-16"]),
    );
    const said = [...records.problems, ...problems].map(({ rule, file }) => `${rule} ${path.posix.basename(file)}`);
    expect(said.filter((line) => /^(photo|folder\/link)/.test(line)).sort()).toEqual([
      "folder/link-loop loop",
      "folder/link-outside link-outside.jpg",
      "photo/empty empty.jpg",
      "photo/not-a-picture text.jpg",
    ]);
  } finally {
    await rm(dir, { recursive: true, force: true });
  }
});
