/** Trials that run in a bed. */
import { dayOnly, roughly, type Sentence, say, sayList } from "../language/index.ts";
import type { Trial } from "../model.ts";
import { type BedOnTheDay, voiceOf } from "./bed-on-the-day.ts";

/** Running trials with an arm in the bed, or on a variety that grows in it when the arm names no bed. */
export function trialsIn(here: BedOnTheDay): readonly Trial[] {
  const grown = new Set(here.growing.map((lot) => lot.planting.variety));
  return [...here.index.garden.trials.values()].filter(
    (trial) =>
      trial.status === "running" &&
      (trial.started ?? here.day) <= here.day &&
      trial.arms.some((arm) =>
        arm.bed === undefined ? arm.variety !== undefined && grown.has(arm.variety) : arm.bed === here.bed.id,
      ),
  );
}

/** "On trial here: do netted cabbages stay clean? Net against no net, since 16 May; the verdict is due on 31 July." */
export function trialSentence(trial: Trial, here: BedOnTheDay): Sentence {
  const voice = voiceOf(here);
  const question = trial.question.trim().replace(/\.$/, "");
  const asked = /\?$/.test(question) ? question : `${question}?`;
  const arms =
    trial.arms.length < 2
      ? undefined
      : sayList(
          trial.arms.map((arm) => arm.name),
          "against",
        );
  const since =
    trial.started === undefined
      ? undefined
      : `running since ${roughly(trial.started, voice).replace(/^(?:on|in) /, "")}`;
  const state = [arms, since].filter((part) => part !== undefined).join(", ");
  const due = trial.verdictDue;
  const verdict =
    due === undefined
      ? ""
      : due < here.day
        ? ` The verdict was due on ${dayOnly(due, voice)}.`
        : ` The verdict is due on ${dayOnly(due, voice)}.`;
  const stateSaid = state === "" ? "" : ` ${state.charAt(0).toUpperCase()}${state.slice(1)}.`;
  return say(`On trial here: ${lowerQuestion(asked)}${stateSaid}${verdict}`, [trial]);
}

/** A question that follows a colon begins small, unless its first word is a name. */
function lowerQuestion(question: string): string {
  return /^(?:Do|Does|Did|Is|Are|Was|Were|Can|Could|Will|Would|Which|What|When|Where|Why|How|Has|Have|Should)\b/.test(
    question,
  )
    ? question.charAt(0).toLowerCase() + question.slice(1)
    : question;
}
