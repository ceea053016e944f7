/** A garden from files written out in the test, read by the same path as a folder on disk. */

import { markdownWriter } from "../../src/language/index.ts";
import type { Day, Garden, Photo } from "../../src/model.ts";
import { readRecords } from "../../src/records/index.ts";
import { growGarden } from "../../src/timeline/index.ts";
import { dossierMarkdown } from "../../src/tour/dossier-markdown.ts";
import { type Brief, makeCards, type TourCards } from "../../src/tour/index.ts";

export type Files = Readonly<Record<string, string>>;

export const gardenFile = `---
name: Test Garden
time zone: Europe/London
language: en-GB
---
`;

export async function gardenOf(files: Files, today: Day, photos: readonly Photo[] = []): Promise<Garden> {
  const all: Files = { "garden.md": gardenFile, ...files };
  const folder = {
    list: async () => Object.keys(all).sort(),
    read: async (file: string) => new TextEncoder().encode(all[file] ?? ""),
  };
  return growGarden(await readRecords(folder, { today }), photos);
}

/** The dossier of a brief alone, as it follows the cards. */
export function dossierOf(brief: Brief, garden: Pick<Garden, "settings">, sources = false): string {
  return dossierMarkdown(brief, garden.settings, { write: markdownWriter(sources), cardAt: new Map() });
}

/** The cards of the same tour, with this brief as their dossier. */
export function cardsAround(brief: Brief, garden: Garden): TourCards {
  const tour = garden.episodes.has(brief.tour) ? { episode: brief.tour } : { day: brief.date };
  return { ...makeCards(garden, { ...tour, today: brief.date }), dossier: brief };
}

/** A photo as the photos room would give it. */
export function photoOf(path: string, day: Day, bed: string, viewpoint?: string): Photo {
  return { path, day, bed, viewpoint, dateBasis: "file name", varieties: [], private: false };
}

/** The tour of voice.md: squash, leeks under mesh, a promise owed, and a May tour that saw the bed bare. */
export const squashTour: Files = {
  "sites/hill.md": "---\ntitle: Hill\norder: 1\n---\n",
  "beds/long-bed.md": `---
title: Long Bed
site: hill
size: 8 x 1.2 m
plan: {x: 4, y: 1}
in use since: 2024-03-01
viewpoints:
  - {name: gate, spot: "from the gate post, chest height", looking: north-west}
---
`,
  "beds/pea-row.md": "---\ntitle: Pea Row\nsite: hill\nplan: {x: 1, y: 1}\nin use since: 2024-03-01\n---\n",
  "varieties/crown-prince.md": `---
title: Crown Prince
crop: squash
source: {name: own saved seed, obtained: saved, year: 2025}
days to maturity: 95 from planting
---
`,
  "varieties/uchiki-kuri.md": `---
title: Uchiki Kuri
crop: squash
say it as: oo-CHEE-kee KOO-ree
source: {name: "seed swap, Saltmarsh Hall", obtained: swapped}
---
`,
  "varieties/musselburgh.md": `---
title: Musselburgh
crop: leek
say it as: MUSSEL-bruh
source: {name: Drift Lane Seeds, obtained: bought}
---
`,
  "varieties/matucana.md": "---\ntitle: Matucana\ncrop: sweet pea\nsource: own saved seed\n---\n",
  "episodes/2026-05-tour/index.md": `---
title: May tour
date: 2026-05-17
published: 2026-05-20
status: published
stops: [long-bed, pea-row]
promised:
  - {what: show how close I dared to plant the squash, bed: long-bed, due: 2026-06-19}
---
`,
  "episodes/2026-06-tour/index.md": `---
title: June tour
date: 2026-06-19
status: planned
target: 12 min
start: "09:15"
stops: [long-bed, pea-row]
---
`,
  "notes/2025-05-20.md": "- planted 4 Crown Prince in Long Bed\n",
  "notes/2025-06-25.md": "- first flower: Matucana, in Pea Row\n",
  "notes/2025-03-01.md": "- sowed 10 Matucana in Pea Row\n",
  "notes/2025-08-29.md": "- picked 3 kg Crown Prince from Long Bed\n- cleared Crown Prince from Long Bed\n",
  "notes/2025-10-01.md": "- cleared Matucana from Pea Row\n",
  "notes/2026-03-01.md": "- sowed 10 Matucana in Pea Row\n",
  "notes/2026-03-10.md": "- sowed 30 Musselburgh indoors\n",
  "notes/2026-04-21.md": "- sowed 6 Crown Prince and 5 Uchiki Kuri indoors\n",
  "notes/2026-05-24-planting-day.md": `---
bed: long-bed
---

- planted 6 Crown Prince, row 1, 90 cm apart
- planted 5 Uchiki Kuri, row 1, 90 cm apart
- planted 24 Musselburgh, row 2
`,
  "notes/2026-06-02.md": `---
bed: long-bed
---

- lost 3 Musselburgh to leek moth
- trouble: leek moth on Musselburgh
- to do by 15 June: net the leeks
`,
  "notes/2026-06-14.md": "- first flower: Crown Prince in Long Bed\n",
  "notes/2026-06-16.md": "- first flower: Matucana in Pea Row\n",
};
