/** The brief as a PDF, printed by a Chromium that is on the machine anyway. Without one the page itself prints as well. */
import path from "node:path";
import { briefPage, type Printing } from "../site/index.ts";
import type { TourCards } from "../tour/index.ts";
import type { Effects } from "./effects.ts";
import type { Loaded } from "./load-garden.ts";

export async function printBrief(
  { garden }: Pick<Loaded, "garden">,
  cards: TourCards,
  stem: string,
  effects: Effects,
  how: Pick<Printing, "pictures" | "pocket"> = {},
): Promise<void> {
  const paper = garden.settings.units === "us" ? "Letter" : "A4";
  const printing = await effects.printPage(briefPage(cards, garden, { ...how, paper }), path.dirname(stem));
  if (printing.pdf === undefined) {
    const why =
      printing.why === "no program"
        ? "No Chromium was found on this machine (CHROMIUM may name one)"
        : "Chromium did not print it";
    effects.err(`No PDF. ${why}; print ${stem}.html from any browser instead.`);
    return;
  }
  await effects.writeBytes(`${stem}.pdf`, settled(printing.pdf, cards.dossier.date));
  effects.err(`Printed on ${paper}: ${stem}.pdf`);
}

/**
 * The same brief gives the same PDF: its dates become the filming day, and its marks for screen readers, which the browser
 * numbers by whatever it did before, are numbered from 1. Lengths stay, so that no offset in the file moves.
 */
function settled(pdf: Uint8Array, day: string): Uint8Array {
  const moment = `D:${day.replaceAll("-", "")}000000+00'00'`;
  const text = Buffer.from(pdf).toString("latin1");
  const marks = [...new Set(Array.from(text.matchAll(NODE), ([mark]) => mark))].sort();
  const numbers = new Map(marks.map((mark, index) => [mark, `(node${String(index + 1).padStart(8, "0")})`]));
  const same = text
    .replace(/(\/(?:CreationDate|ModDate) \()D:\d{14}[+-]\d\d'\d\d'/g, `$1${moment}`)
    .replace(NODE, (mark) => numbers.get(mark) ?? mark);
  return Buffer.from(same, "latin1");
}

const NODE = /\(node\d{8}\)/g;
