/** The richest day of the weeks ahead, in made-up gardens in which most kinds come ripe in one week and some in others. */
import { addDays, daysBetween } from "../../src/calendar.ts";
import { lookAhead } from "../../src/tour/index.ts";
import { chance } from "./chance.ts";
import { MadeNotes } from "./made-garden.ts";
import type { TruthRow } from "./table.ts";

const gardens = 60;
const today = "2026-06-01";
const weeks = 6;

export async function daysAheadRows(): Promise<readonly TruthRow[]> {
  const random = chance(31415);
  let [right, dayOff] = [0, 0];
  for (let run = 0; run < gardens; run += 1) {
    const notes = new MadeNotes();
    const middle = random.whole(10, 32);
    const together = random.whole(4, 6);
    const apart = [random.whole(2, middle - 7), random.whole(Math.min(40, middle + 8), 41)];
    const ripe = [...Array.from({ length: together }, () => middle + random.whole(-2, 2)), ...apart];
    for (const [kind, ahead] of ripe.entries()) {
      const title = `Kind ${String.fromCharCode(65 + kind)}`;
      const days = random.whole(50, 90);
      notes.record(`beds/b${kind}.md`, { title: `Bed ${kind + 1}` });
      notes.record(`varieties/kind-${title.slice(-1).toLowerCase()}.md`, {
        title,
        crop: "courgette",
        "days to maturity": `${days} from planting`,
      });
      notes.line(addDays(today, ahead - days), `planted 6 bought ${title} in Bed ${kind + 1}`);
    }
    const ahead = lookAhead(await notes.garden(today), { today, weeks });
    const richest = ahead.days.reduce((best, day) => (day.reasons.length > best.reasons.length ? day : best));
    const first = daysBetween(today, richest.day) - Math.max(...ripe.slice(0, together));
    // All of the cluster is ripe and still news: a film of that day has most reasons.
    if (first >= 0 && first <= 7) right += 1;
    dayOff = Math.max(
      dayOff,
      ...ahead.expected.map(({ day, bed }) => Math.abs(daysBetween(today, day) - (ripe[Number(bed?.slice(1))] ?? 99))),
    );
  }
  return [
    {
      quantity: "days ahead: the day with most reasons falls in the week after most came ripe",
      cases: gardens,
      found: `${Math.round((100 * right) / gardens)} %`,
      against: "made-up gardens whose ripe days are known",
      // A reason is one for a week: the first day with the most of them is the last of the cluster, or the day after.
      goal: "100 %",
      met: right === gardens,
    },
    {
      quantity: "days ahead: the day each kind is expected",
      cases: gardens,
      found: `${dayOff} days`,
      against: "the packet's days from the day of planting",
      goal: "0 days",
      met: dayOff === 0,
    },
  ];
}
