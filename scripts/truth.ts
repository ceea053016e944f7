/**
 * `npm run truth`: one table of what Plotreel reckons, held against figures from outside or against worlds whose truth is
 * known. `-- trials` prints the rows of one subject. Ends with 1 when a goal is not met.
 */
import { captionRows } from "./truth/captions.ts";
import { coverRows } from "./truth/cover.ts";
import { cropRows } from "./truth/crops.ts";
import { daysAheadRows } from "./truth/days-ahead.ts";
import { forecastRows } from "./truth/forecasts.ts";
import { hazardRows } from "./truth/hazards.ts";
import { heatRows } from "./truth/heat.ts";
import { heightRows } from "./truth/heights.ts";
import { latePlantingRows } from "./truth/late-planting.ts";
import { lightRows } from "./truth/light.ts";
import { needRows } from "./truth/needs.ts";
import { routeRows } from "./truth/routes.ts";
import { standingRows } from "./truth/standings.ts";
import { printTable, type RowMaker, type TruthRow } from "./truth/table.ts";
import { trialRows } from "./truth/trials.ts";

/** By subject, in the order of the table. */
const makers: Readonly<Record<string, RowMaker>> = {
  trials: trialRows,
  needs: needRows,
  standings: standingRows,
  forecasts: forecastRows,
  ahead: daysAheadRows,
  light: lightRows,
  heights: heightRows,
  cover: coverRows,
  heat: heatRows,
  late: latePlantingRows,
  walks: routeRows,
  crops: cropRows,
  hazards: hazardRows,
  captions: captionRows,
};

const asked = process.argv.slice(2);
const unknown = asked.filter((subject) => makers[subject] === undefined);
if (unknown.length > 0) {
  console.error(`There is no subject ${unknown.join(", ")}; there are ${Object.keys(makers).join(", ")}.`);
  process.exit(2);
}
const rows: TruthRow[] = [];
for (const [subject, make] of Object.entries(makers)) {
  if (asked.length === 0 || asked.includes(subject)) rows.push(...(await make()));
}
process.exitCode = printTable(rows) ? 0 : 1;
