/**
 * Makes the labelled captions of the demo garden: for each clean caption file, what an automatic captioner would have
 * written, and beside it which names it said and how they were heard.
 *
 *     node scripts/mangle-captions.ts
 *
 * Writes demo-content/episodes/EPISODE/labelled/automatic.vtt and names.json, the same bytes every time. What is promised
 * in each film was labelled by hand and stands beside them in promises.json, which this script never touches.
 */
import { mkdir, readFile, writeFile } from "node:fs/promises";
import path from "node:path";
import { openRecordsFolder, readRecords } from "../src/records/index.ts";
import { openCaptions } from "../src/wrap/index.ts";
import { automaticWords } from "./mis-hearing/automatic-words.ts";
import { earOf, KNOWN_WORDS } from "./mis-hearing/mis-hear.ts";
import { rollingCaptions } from "./mis-hearing/rolling-captions.ts";

const SEED = "first hearing";
const content = path.join(import.meta.dirname, "../demo-content");

const records = await readRecords(await openRecordsFolder(content), { today: "2026-07-18" });
const ear = earOf(KNOWN_WORDS);
for (const episode of records.episodes.values()) {
  const clean = episode.captions.find((file) => file.endsWith(".vtt"));
  if (clean === undefined) continue;
  const { speech } = openCaptions(clean, await readFile(path.join(content, clean)));
  const seed = `${SEED} ${episode.id}`;
  const { words, names } = automaticWords(speech.words, records.varieties.values(), ear, seed);
  const folder = path.join(content, "episodes", episode.id, "labelled");
  await mkdir(folder, { recursive: true });
  await writeFile(path.join(folder, "automatic.vtt"), rollingCaptions(words, seed));
  await writeFile(path.join(folder, "names.json"), `${JSON.stringify({ seed, names }, null, 1)}\n`);
  const mangled = names.filter(({ kind }) => kind === "mangled").length;
  console.log(`${episode.id}: ${names.length} names, ${mangled} of them mangled`);
}
