/** The plan in words, the same in the Markdown and on the page: the first line, the length, the light, what was left out. */

import { exactLength, filmLength, roughLength, stopLength } from "../films/index.ts";
import { capital, sayNumber, sayPlural } from "../language/index.ts";
import type { Brief, LeftOut, Stop } from "./brief.ts";
import type { StartScore } from "./plan/plan.ts";
import { bestStart } from "./plan/tour-light.ts";

/** Day, stops, length and clock in one paragraph. */
export function planWords({ dateText, sinceText, isFirst, stops, plan }: Brief): string {
  const since = sinceText === undefined ? (isFirst ? "the first tour" : undefined) : `since ${sinceText}`;
  const day = `${dateText}${since === undefined ? "" : `, ${since}`}.`;
  if (stops.length === 0) return day;
  const count = capital(sayPlural(stops.length, "stop", "stops"));
  const film = `${count}, ${stopLength(plan.seconds)} of film`;
  const { target } = plan;
  const fits =
    target === undefined
      ? "."
      : plan.over > 0
        ? `: what has to be in is ${exactLength(plan.over)} too long for ${filmLength(target)}, and all of it was kept.`
        : target - plan.seconds >= 15
          ? `, ${roughLength(target - plan.seconds)} short of ${filmLength(target)}.`
          : ".";
  const end =
    plan.end === undefined
      ? ""
      : ` Filming ends at about ${plan.end}${siteChanges(stops) ? ", the way between the sites included" : ""}.`;
  return `${day} ${film}${fits}${end}`;
}

/** What viewers saw last time, where the link has not said it already. */
export function seenBefore({ link, lastSeen }: Stop): Stop["lastSeen"] {
  return link?.includes("bare when you last saw") === true ? [] : lastSeen;
}

function siteChanges(stops: readonly Stop[]): boolean {
  return new Set(stops.map(({ site }) => site)).size > 1;
}

/** "Stops in good light when filming starts at 8:00: seven of ten; best at 9:45 with nine. Sunrise …" */
export function lightWords({ plan, stops: { length } }: Brief): string | undefined {
  const best = bestStart(plan.startScores);
  const stops = sayStops(plan.litStops, length);
  const all = plan.startScores.every(({ score }) => score === best?.score);
  const scores =
    best === undefined
      ? undefined
      : all
        ? `The hour makes no difference: ${stops(best.good)} ${best.good === 1 || (best.good === length && length === plan.litStops) ? "is" : "are"} in good light whenever you start.`
        : length === plan.litStops
          ? `Best start by the light: ${best.start}, with ${stops(best.good)} in good light.`
          : `Best start by the light: ${best.start}; in good light then: ${stops(best.good)}.`;
  return [scores, plan.sun].filter((part) => part !== undefined).join(" ") || undefined;
}

/** Of stops of unknown facing nobody can say how they are lit, so they are not counted. */
function sayStops(lit: number, all: number): (good: number) => string {
  const known = lit === all ? "" : " whose facing is known";
  return (good) => {
    if (good < lit) return `${sayNumber(good)} of ${sayPlural(lit, "stop", "stops")}${known}`;
    return lit === 1
      ? `the one stop${known}`
      : known === ""
        ? "every stop"
        : `all ${sayPlural(lit, "stop", "stops")}${known}`;
  };
}

/** "8:00 ▅▅▆▇██▇▆ 12:00": the scores as bars between the worst and the best; undefined where all are one. */
export function scoreBars(scores: readonly StartScore[]): string | undefined {
  const [first, last] = [scores[0], scores.at(-1)];
  const values = scores.map(({ score }) => score);
  const [low, high] = [Math.min(...values), Math.max(...values)];
  if (first === undefined || last === undefined || low === high) return undefined;
  const height = (score: number) => 1 + Math.round((6 * (score - low)) / (high - low));
  const bars = values.map((score) => "▁▂▃▄▅▆▇█".charAt(height(score))).join("");
  return `${first.start} ${bars} ${last.start}`;
}

/** More than these are small change. */
const mostTold = 10;
/** For the most valuable of them it is said how to have them, as long as each asks for something else to go. */
const mostAdvised = 2;

export interface LeftOutWords {
  /** "Not in these 12 minutes" */
  readonly title: string;
  /** The most valuable first. */
  readonly lines: readonly string[];
  /** How many things are not even named. */
  readonly more: number;
}

/** "the mint trough (nothing new since May, 35 s)", "… (up since Thursday, 20 s; say keep: beetroot to have it, the mint could go)" */
export function leftOutWords({ leftOut, target }: Brief): LeftOutWords | undefined {
  if (leftOut.length === 0) return undefined;
  const things = leftOut.filter(({ what }) => what === "thing");
  const beds = leftOut.filter(({ what }) => what === "bed");
  const gone = new Set<string>();
  const lines = [...things.slice(0, mostTold), ...beds].map((one) => {
    const { couldGo, keepBy } = one;
    const advise = couldGo !== undefined && keepBy !== undefined && gone.size < mostAdvised && !gone.has(couldGo);
    if (advise) gone.add(couldGo);
    return leftOutLine(one, advise);
  });
  return {
    title:
      target === undefined
        ? "Not in this tour"
        : filmLength(target) === "1 minute"
          ? "Not in this minute"
          : `Not in these ${filmLength(target)}`,
    lines,
    more: Math.max(0, things.length - mostTold),
  };
}

function leftOutLine({ about, reason, seconds, keepBy, couldGo }: LeftOut, advise: boolean): string {
  const time = seconds === undefined ? "" : `, ${stopLength(seconds)}`;
  const advice = advise ? `; say \`keep: ${keepBy}\` to have it, ${couldGo} could go` : "";
  return `${about} (${reason}${time}${advice})`;
}
