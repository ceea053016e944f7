/**
 * Cuts src/cli/start/towns.tsv out of a dump of GeoNames (geonames.org, CC BY 4.0), whose readme names the columns:
 * `node scripts/cut-towns.ts cities15000.txt`. Done again when the table is to be newer.
 */
import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";

/** Smaller places would make the table heavier than all else that is shipped. */
const FEWEST_PEOPLE = 20_000;

/** A part of another town, or what is one no more. */
const NO_TOWN = new Set(["PPLX", "PPLH", "PPLQ", "PPLW", "PPLCH"]);

const [dump] = process.argv.slice(2);
if (dump === undefined) throw new Error("Give the path of a dump: node scripts/cut-towns.ts cities15000.txt");

const rows = readFileSync(dump, "utf8")
  .split("\n")
  .filter((line) => line !== "")
  .map((line) => {
    const column = line.split("\t");
    const [name = "", latitude, longitude, code = "", country = "", region = "", people] = [1, 4, 5, 7, 8, 10, 14].map(
      (at) => column[at],
    );
    return { name, latitude, longitude, code, country, region, people: Number(people) };
  })
  .filter(({ code, people }) => people >= FEWEST_PEOPLE && !NO_TOWN.has(code))
  .map(({ name, country, region, people, latitude, longitude }) =>
    [
      name,
      country,
      // Where a region is known by letters people know them: states, provinces, the countries of the United Kingdom.
      /^[A-Z]{2,3}$/.test(region) ? region : "",
      Math.round(people / 1000),
      // Hundredths of a degree are a kilometre at most, which no light is told from.
      Number(Number(latitude).toFixed(2)),
      Number(Number(longitude).toFixed(2)),
    ].join("\t"),
  )
  .sort();

writeFileSync(
  path.join(import.meta.dirname, "../src/cli/start/towns.tsv"),
  `# Towns of ${FEWEST_PEOPLE} people or more: name, country, region, thousands of people, latitude, longitude.
# From GeoNames (geonames.org), licensed under CC BY 4.0; cut and rounded by scripts/cut-towns.ts.
${[...new Set(rows)].join("\n")}
`,
);
