/** The light by starting time as a small bar chart, with the same numbers as a table for whoever cannot see it. */
import type { Plan, StartScore } from "../tour/index.ts";

const bar = 9;
const gap = 2;
const tall = 44;
/** Room for the hours below the bars. */
const foot = 14;

/** Empty when no light is known, or one start is as good as another. */
export function lightChart({ startScores, start }: Plan): string {
  const [first, last] = [startScores[0], startScores.at(-1)];
  const best = Math.max(...startScores.map(({ score }) => score));
  if (first === undefined || last === undefined || startScores.every(({ score }) => score === best)) return "";
  const width = startScores.length * (bar + gap);
  const bars = startScores.map((one, at) => barOf(one, at, one.start === start, one.score === best));
  const hours = startScores.flatMap(({ start: hour }, at) =>
    hour.endsWith(":00")
      ? [`<text x="${at * (bar + gap)}" y="${tall + foot - 2}">${hour.replace(":00", "")}</text>`]
      : [],
  );
  const told = `Light by starting time from ${first.start} to ${last.start}; the table below has the numbers.`;
  return `<figure class="light">
<svg viewBox="0 0 ${width} ${tall + foot}" width="${width}" height="${tall + foot}" role="img" aria-label="${told}">${bars.join("")}${hours.join("")}</svg>
<details><summary>The light in numbers</summary><table><thead><tr><th scope="col">Start</th><th scope="col">Stops in good light</th><th scope="col">Light, of 100</th></tr></thead><tbody>${startScores.map(row).join("")}</tbody></table></details>
</figure>`;
}

function barOf({ score }: StartScore, at: number, chosen: boolean, best: boolean): string {
  const height = Math.max(1, Math.round(score * tall));
  const name = [chosen ? "chosen" : "", best ? "best" : ""].filter((word) => word !== "").join(" ");
  return `<rect x="${at * (bar + gap)}" y="${tall - height}" width="${bar}" height="${height}"${name === "" ? "" : ` class="${name}"`}/>`;
}

function row({ start, good, score }: StartScore): string {
  return `<tr><th scope="row">${start}</th><td>${good}</td><td>${Math.round(score * 100)}</td></tr>`;
}
