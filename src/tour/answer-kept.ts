/** What an answer to a question worth asking is kept as: a line that a person would have written themselves. */
import { addDays, parseDay } from "../calendar.ts";
import { cropOf } from "../crop-of.ts";
import { cultivar, plantName } from "../language/index.ts";
import type { Day, Garden } from "../model.ts";
import type { WorthAsking } from "./worth-asking.ts";

export type AnswerKept =
  /** A line of a variety's front matter. */
  | { readonly is: "of the variety"; readonly variety: string; readonly key: string; readonly value: string }
  /** A line of today's note, of a bed or of none. */
  | { readonly is: "in the note"; readonly line: string; readonly bed?: string | undefined }
  /** What the planting's own line says, settled below it: its variety, or that its plants were bought. */
  | { readonly is: "below its line"; readonly planting: string; readonly title?: string; readonly bought?: true }
  | { readonly is: "refused"; readonly told: string };

/** Longer answers are no answer in a few words. */
const LONGEST = 200;

export function answerKept(asking: WorthAsking, answer: string, garden: Garden, today: Day): AnswerKept {
  const words = answer.replace(/\s+/gu, " ").trim();
  if (words === "") return { is: "refused", told: "That is empty: nothing was written." };
  if (words.length > LONGEST || /\p{Cc}/u.test(words))
    return { is: "refused", told: "That is longer than a line. Write it into the note." };
  const { kind, variety, planting, bed } = asking;
  switch (kind) {
    case "quiet":
      return { is: "in the note", line: words === "Nothing new" ? "nothing new in the garden" : words };
    case "source":
      return { is: "of the variety", variety: variety ?? "", ...sourceOf(words) };
    case "again":
      if (!/^(?:yes|no)\b/i.test(words)) return { is: "refused", told: "Begin it with yes or no." };
      return {
        is: "of the variety",
        variety: variety ?? "",
        key: "grow again",
        value: words.charAt(0).toLowerCase() + words.slice(1),
      };
    case "variety":
      return { is: "below its line", planting: planting?.id ?? "", title: words.replace(/["“”]/gu, "") };
    case "picked":
    case "sown": {
      if (kind === "sown" && words === "Bought as plants")
        return { is: "below its line", planting: planting?.id ?? "", bought: true };
      const day = dayOf(words, kind === "sown" ? (planting?.planted ?? today) : today, today);
      if (day === undefined)
        return { is: "refused", told: `“${words}” is no day that I can read. Write it like 14 July or 2026-07-14.` };
      const record = planting && {
        variety: garden.varieties.get(planting.variety ?? ""),
        crop: cropOf(garden, planting),
      };
      const name =
        record === undefined ? "" : record.variety?.described === true ? cultivar(record) : plantName(record);
      const place = garden.beds.get(bed ?? "")?.title ?? "";
      const line = kind === "sown" ? `sowed ${name} indoors` : `picked ${name} from ${place}`;
      return { is: "in the note", line: day === today ? line : `${line} on ${day}`, bed };
    }
  }
}

function sourceOf(words: string): { readonly key: string; readonly value: string } {
  const taps: Readonly<Record<string, string>> = {
    Bought: "bought",
    "Own saved seed": "saved",
    Swapped: "swapped",
    "Given by a person": "given by a person",
  };
  const obtained = taps[words];
  return obtained === undefined ? { key: "source", value: words } : { key: "obtained", value: obtained };
}

function dayOf(words: string, latest: Day, today: Day): Day | undefined {
  if (/^today$/i.test(words)) return today;
  if (/^yesterday$/i.test(words)) return addDays(today, -1);
  const read = parseDay(words.replace(/^(?:on|about|around) /i, ""), { onOrBefore: latest });
  return "refused" in read || read.day > latest ? undefined : read.day;
}
