/** The licences of the packages whose code or lettering is part of what is shipped, as most of them ask for. */
import { readdir, readFile } from "node:fs/promises";
import path from "node:path";
import { CLONE } from "./sources.ts";

/** Built into pages: what Astro puts into the code of templates, and the lettering. */
const IN_TEMPLATES = ["astro", "@fontsource/alegreya-sans"];

/** As its licence asks. */
const TOWNS = `== Towns (CC BY 4.0)

Names, places and numbers of people of towns are from GeoNames (geonames.org), licensed under Creative Commons Attribution 4.0
(creativecommons.org/licenses/by/4.0). Only the larger towns are here, and places and numbers are rounded.
`;

/** `inputs` are the files that were built in, relative to the project. */
export async function licencesOf(inputs: readonly string[]): Promise<string> {
  const folders = new Set(IN_TEMPLATES.map((name) => `node_modules/${name}`));
  for (const file of inputs) {
    const [folder] = /^.*node_modules\/(?:@[^/]+\/)?[^/]+/u.exec(file) ?? [];
    if (folder !== undefined) folders.add(folder);
  }
  const texts = await Promise.all([...folders].sort().map((folder) => licenceOf(path.resolve(CLONE, folder))));
  return `Plotreel holds code and lettering of these packages, and a table of towns.\n\n${texts.join("\n")}\n${TOWNS}`;
}

async function licenceOf(folder: string): Promise<string> {
  const { name, version, license } = JSON.parse(await readFile(path.join(folder, "package.json"), "utf8")) as Readonly<
    Record<"name" | "version" | "license", string>
  >;
  const files = (await readdir(folder)).filter((file) => /^(?:licen[cs]e|copying)(?:[.-]|$)/iu.test(file)).sort();
  const texts = await Promise.all(files.map((file) => readFile(path.join(folder, file), "utf8")));
  return `== ${name} ${version} (${license})\n\n${texts.map((text) => text.replaceAll("\r\n", "\n").trim()).join("\n\n")}\n`;
}
