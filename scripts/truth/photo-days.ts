/**
 * Days of photos against exiftool (Perl, an independent reader): `node scripts/truth/photo-days.ts FOLDER`. Prints the share of
 * photos with a time of taking by exiftool of which Plotreel says the same day, and each that differs.
 */
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import path from "node:path";
import { globSync } from "tinyglobby";
import { photoHead } from "../../src/photos/exif-tags.ts";
import { photoMoment } from "../../src/photos/photo-date.ts";

const dir = path.resolve(process.argv[2] ?? ".");
const files = globSync("**/*.{jpg,jpeg,heic,heif,png,webp,avif}", { cwd: dir, caseSensitiveMatch: false }).sort();
const asked = [
  "-j",
  "-fast",
  "-DateTimeOriginal",
  "-XMP-photoshop:DateCreated",
  "-XMP-xmp:CreateDate",
  "-IPTC:DateCreated",
];
const told = JSON.parse(
  execFileSync("exiftool", [...asked, "-PNG:CreationTime", "-d", "%Y-%m-%d", "-@", "-"], {
    cwd: dir,
    input: files.join("\n"),
    maxBuffer: 1e9,
  }).toString(),
) as {
  SourceFile: string;
  DateTimeOriginal?: string;
  DateCreated?: string;
  CreateDate?: string;
  CreationTime?: string;
}[];

let same = 0;
let compared = 0;
for (const { SourceFile, DateTimeOriginal, DateCreated, CreateDate, CreationTime } of told) {
  const truth = (DateTimeOriginal ?? DateCreated ?? CreateDate ?? CreationTime)?.slice(0, 10).replaceAll(":", "-");
  if (truth === undefined || !/^\d{4}-\d\d-\d\d$/.test(truth)) continue;
  const { tags } = await photoHead(readFileSync(path.join(dir, SourceFile)));
  const { day } = photoMoment({ tags, path: "photo", timeZone: "Europe/London" });
  compared += 1;
  if (day === truth) same += 1;
  else console.log(`${SourceFile}: exiftool ${truth}, Plotreel ${day ?? "nothing"}`);
}
console.log(`${same} of ${compared} the same day (${compared === 0 ? "-" : ((100 * same) / compared).toFixed(1)} %)`);
