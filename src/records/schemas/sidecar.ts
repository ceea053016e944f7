/** gate.md beside gate.jpg: words and corrections for one photo. */
import * as z from "zod";
import type { PhotoSidecar } from "../../model.ts";
import { day, framePoint, names, readAs, text, wrongValue } from "./fields.ts";
import { forViewers } from "./meaning.ts";
import { recordKeys } from "./record.ts";

/** Quarter turns clockwise. */
const turn = readAs((written) => {
  const degrees = Number(written.replace(/(?<!\s)\s*(?:°|degrees?)$/i, ""));
  const value = ([90, 180, 270] as const).find((one) => one === (degrees + 360) % 360);
  return value === undefined
    ? wrongValue(
        `"${written}" is no quarter turn.`,
        "Write 90, 180 or 270: degrees clockwise from how it is shown now.",
      )
    : { value };
});

export const sidecarSchema = z.strictObject({
  ...recordKeys,
  date: forViewers("the day it was taken, where the file says none or a wrong one", "2026-05-16", day.optional()),
  bed: forViewers("the bed it shows", "Long Bed", text.optional()),
  viewpoint: forViewers("the spot it was taken from", "gate", text.optional()),
  varieties: forViewers("what it shows, set off by commas", "[Musselburgh, Sungold]", names.optional()),
  caption: forViewers("words that stand below it", "The first leek of the year", text.optional()),
  credit: forViewers("who took it, where that was not you", "photo by a neighbour", text.optional()),
  turn: forViewers(
    "quarter turns, in degrees clockwise from how it is shown now: 90, 180 or 270",
    "90",
    turn.optional(),
  ),
  heights: forViewers(
    "where the tops of plants are in a photo with a stake in it, so that their heights are measured",
    "[{ variety: Sungold, top: [0.4, 0.2] }]",
    z
      .array(
        z.strictObject({
          variety: forViewers("which", "Sungold", text),
          top: forViewers("fractions of the photo's width and height from the upper left", "[0.4, 0.2]", framePoint),
        }),
      )
      .optional(),
  ),
});

export interface SidecarLinks {
  readonly photo: string;
  readonly bed: string | undefined;
  readonly varieties: readonly string[];
  readonly plantTops: PhotoSidecar["plantTops"];
  readonly private: boolean;
  /** Text below the front matter: the caption when no key gives one. */
  readonly body: string;
}

export function makeSidecar(front: z.output<typeof sidecarSchema>, links: SidecarLinks): PhotoSidecar {
  const { photo, bed, varieties, plantTops, body } = links;
  const caption = front.caption ?? front.title ?? (body.trim() === "" ? undefined : body.trim());
  return {
    photo,
    day: front.date,
    bed,
    viewpoint: front.viewpoint,
    varieties,
    caption,
    credit: front.credit,
    turn: front.turn,
    plantTops,
    private: links.private,
  };
}
