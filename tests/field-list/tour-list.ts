/** What the field list's tests share: the list of a small tour, with shots as a planned brief has them, and its page on disk. */

import { readFileSync } from "node:fs";
import { mkdtemp, writeFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import path from "node:path";
import type { Page } from "playwright-core";
import sharp from "sharp";
import { type FieldList, type FieldPicture, fieldListData } from "../../src/site/field-list/field-list-data.ts";
import { fieldListPage } from "../../src/site/field-list/field-list-page.ts";
import { cardShots } from "../../src/tour/cards/card-shots.ts";
import { type Brief, makeBrief, makeCards, type TourCards } from "../../src/tour/index.ts";
import { gardenOf, photoOf, squashTour } from "../tour/garden-of.ts";

export const day = "2026-06-19";
const photo = photoOf("photos/long-bed/gate/may.jpg", "2026-05-17", "long-bed", "gate");

export async function smallBrief(): Promise<Brief> {
  return makeBrief(await gardenOf(squashTour, day, [photo]), { episode: "2026-06-tour", today: day });
}

const cards = makeCards(await gardenOf(squashTour, day, [photo]), { episode: "2026-06-tour", today: day });

/** The small tour's cards with another brief behind them. */
export function asCards(brief: Brief): TourCards {
  const shown = cards.cards.map((card) => {
    const stop = brief.stops.find(({ id }) => id === card.id);
    return stop === undefined ? card : { ...card, shots: cardShots(stop) };
  });
  return { ...cards, cards: shown, dossier: brief };
}

export const settings = { name: "Test Garden", language: "en-GB", narrationRate: 130 } as const;

/** The brief with the shots, times and words that a plan gives its stops. */
export function planned(brief: Brief): Brief {
  const stops = brief.stops.map((stop, index) => ({
    ...stop,
    seconds: 130,
    begins: index * 130,
    from: ["9:15", "9:21"][index],
    light: "sun behind you until 10:40",
    shots: shots([
      {
        id: `S${stop.number}.1`,
        key: `${stop.bed}/wide`,
        kind: "wide",
        level: "must",
        text: "Wide from the gate",
        match: photo.path,
      },
      {
        id: `S${stop.number}.2`,
        key: `${stop.bed}/first-flower/uchiki-kuri`,
        kind: "close-up",
        level: "should",
        text: "Female flower, close",
      },
      {
        id: `S${stop.number}.3`,
        key: `${stop.bed}/label/uchiki-kuri`,
        kind: "insert",
        text: "Hand's width between leaves",
      },
      { id: `S${stop.number}.4`, key: `${stop.bed}/cutaway/mesh`, kind: "cutaway", text: "Mesh edge, low" },
    ]),
    outline: [
      { text: "And straight out of the gate, the bed that was bare in May.", sources: [] },
      {
        text: "Six Crown Prince and five Uchiki Kuri, sown indoors on 21 April and planted out on 24 May.",
        sources: [],
      },
      { text: "First female flower seen on Sunday.", sources: [] },
    ],
  }));
  return { ...brief, start: "09:15", stops };
}

/** Says of a list of shots that it is one, where it stands inside a wider object. */
function shots(list: Brief["stops"][number]["shots"]): Brief["stops"][number]["shots"] {
  return list;
}

export async function pictures(): Promise<ReadonlyMap<string, FieldPicture>> {
  const image = await sharp({ create: { width: 480, height: 320, channels: 3, background: "#487030" } })
    .webp()
    .toBuffer();
  const src = `data:image/webp;base64,${image.toString("base64")}`;
  return new Map([[photo.path, { src, width: 480, height: 320 }]]);
}

export async function smallList(): Promise<FieldList> {
  return fieldListData(asCards(planned(await smallBrief())), settings, await pictures());
}

/** The address of the list as a file of its own. */
export async function listOnDisk(list: FieldList): Promise<string> {
  const folder = await mkdtemp(path.join(tmpdir(), "plotreel-list-"));
  const file = path.join(folder, "list.html");
  await writeFile(file, fieldListPage(list));
  return `file://${file}`;
}

const axeSource = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

export async function axeViolations(page: Page): Promise<readonly string[]> {
  await page.evaluate(axeSource);
  return page.evaluate(async () => {
    const { axe } = globalThis as unknown as {
      axe: { run(): Promise<{ violations: { id: string; nodes: { target: unknown[]; failureSummary: string }[] }[] }> };
    };
    const { violations } = await axe.run();
    return violations.flatMap(({ id, nodes }) =>
      nodes.map(({ target, failureSummary }) => `${id} ${target.join(" ")} ${failureSummary}`),
    );
  });
}
