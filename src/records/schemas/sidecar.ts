/** gate.md beside gate.jpg: words and corrections for one photo. */
import * as z from "zod";
import type { PhotoSidecar } from "../../model.ts";
import { day, framePoint, names, readAs, text, wrongValue } from "./fields.ts";
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
  date: day.optional(),
  bed: text.optional(),
  viewpoint: text.optional(),
  varieties: names.optional(),
  caption: text.optional(),
  credit: text.optional(),
  turn: turn.optional(),
  heights: z.array(z.strictObject({ variety: text, top: framePoint })).optional(),
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
