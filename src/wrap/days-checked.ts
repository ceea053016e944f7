/** Days and ages said aloud against the records: sown, planted, in the ground since. */

import { daysBetween } from "../calendar.ts";
import { sayAge, sayDay, sayList } from "../language/index.ts";
import type { Day } from "../model.ts";
import { type Check, disagreement, SUBJECT_NEAR, SURE } from "./fact-check.ts";
import { spokenDay, spokenNumber } from "./spoken-numbers.ts";
import type { Subject } from "./spoken-subjects.ts";
import { inWords } from "./word-ranges.ts";
import type { Disagreement } from "./wrap.ts";

/** Words of beginning, by what day of a planting they tell. */
const beginnings: readonly (readonly [RegExp, "sown" | "planted" | "either"])[] = [
  [/^(?:sown|sowed|seeded)$/, "sown"],
  [/^(?:planted|transplanted)$/, "planted"],
  [/^(?:in|went)$/, "either"],
];
/** Words between a beginning and its day: "sown on the sixth", "planted out last Saturday the ninth". */
const BEGIN_NEAR = 4;

export function days(check: Check): Disagreement[] {
  const { film, plain } = check;
  const { settings } = film.day.garden;
  const found: Disagreement[] = [];
  for (let at = 0; at < plain.length; at += 1) {
    const said = spokenDay(plain, at, film.day.day);
    if (said === undefined) continue;
    const begun = begunBefore(plain, at);
    const subject = begun === undefined ? undefined : subjectNear(check, begun.at, at);
    if (begun !== undefined && subject !== undefined) {
      const known = beginningsOf(subject, begun.kind);
      if (known.length > 0 && !known.includes(said.day)) {
        const near = { language: settings.language, near: film.day.day };
        const told = `The records have ${sayList(
          [...new Set(known)].map((day) => sayDay(day, near)),
          "or",
        )} for ${subject.title}.`;
        found.push(
          disagreement(check, "day", Math.min(begun.at, subject.from), said.end, told, subject.bed, subject.here),
        );
      }
    }
    at = said.end - 1;
  }
  return found;
}

function begunBefore(
  plain: readonly string[],
  at: number,
): { readonly at: number; readonly kind: "sown" | "planted" | "either" } | undefined {
  for (let word = at - 1; word >= Math.max(0, at - BEGIN_NEAR); word -= 1) {
    const row = beginnings.find(([pattern]) => pattern.test(plain[word] ?? ""));
    if (row === undefined) continue;
    // "In on the nineteenth" begins a planting; "in March" and "came in on the fourth" do not.
    const isIn = plain[word] === "in";
    if (isIn && (plain[word + 1] !== "on" || /^(?:came|brought|got|come|bring|them|it)$/.test(plain[word - 1] ?? "")))
      continue;
    return { at: word, kind: row[1] };
  }
  return undefined;
}

function subjectNear({ subjects }: Check, begun: number, to: number): Subject | undefined {
  const near = inWords(subjects, ({ from }) => from, begun - SUBJECT_NEAR, to);
  const last = near.filter(({ from }) => from < begun).at(-1) ?? near[0];
  return last === undefined || last.confidence < SURE || last.here.length === 0 ? undefined : last;
}

function beginningsOf({ here }: Subject, kind: "sown" | "planted" | "either"): readonly Day[] {
  return here.flatMap(({ sown, planted, since }) => {
    const sowing = sown === undefined ? [] : [sown];
    const planting = planted === undefined ? [] : [planted];
    if (kind === "sown") return sowing;
    return kind === "planted" ? planting : [...sowing, ...planting, since];
  });
}

const daysIn: ReadonlyMap<string, readonly [days: number, slack: number]> = new Map(
  Object.entries({
    day: [1, 1],
    days: [1, 1],
    week: [7, 4],
    weeks: [7, 4],
    fortnight: [14, 4],
    month: [30.4, 12],
    months: [30.4, 15],
  }),
);

/** "That's three weeks today", "seven weeks in the ground", "six days ago": since sowing, coming up or planting. */
export function ages(check: Check): Disagreement[] {
  const { film, plain, subjects } = check;
  return subjects.flatMap((subject, index) => {
    if (subject.confidence < SURE || subject.here.length === 0) return [];
    for (let at = subject.to; at < Math.min(plain.length, subject.to + 10); at += 1) {
      if (at === subjects[index + 1]?.from) return [];
      const number =
        plain[at] === "a" && plain[at + 1] === "fortnight" ? { value: 1, end: at + 1 } : spokenNumber(plain, at);
      const unit = number === undefined ? undefined : daysIn.get(plain[number.end] ?? "");
      if (number === undefined || unit === undefined) continue;
      const after = plain.slice(number.end + 1, number.end + 4).join(" ");
      if (!/^(?:today|ago|in the|to the day|old)/.test(after)) continue;
      const said = number.value * unit[0];
      const known = subject.here.flatMap(({ sown, planted, stageSince, stage }) => [
        ...(sown === undefined ? [] : [sown]),
        ...(planted === undefined ? [] : [planted]),
        ...(stage === "up" || stage === "growing" ? [stageSince] : []),
      ]);
      const old = known.map((day) => daysBetween(day, film.day.day));
      if (old.length === 0 || old.some((age) => Math.abs(age - said) <= unit[1])) return [];
      const told = `By the records ${subject.title} had been there for ${sayAge(Math.min(...old))}.`;
      return [disagreement(check, "age", subject.from, number.end + 2, told, subject.bed, subject.here)];
    }
    return [];
  });
}
