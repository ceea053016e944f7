/** A garden that keeps something back, changed in many ways; and what viewers would be told of it, as one text. */
import type { Garden } from "../../src/model.ts";
import { readPhotos } from "../../src/photos/index.ts";
import { isDoubt, readRecords } from "../../src/records/index.ts";
import { publicGarden } from "../../src/site/index.ts";
import { growGarden } from "../../src/timeline/index.ts";
import { jpeg } from "../photos/drawn.ts";
import { type Files, folderOf } from "../records/records-of.ts";

export const base: Files = {
  "garden.md":
    "---\nname: Test Garden\nplace: {latitude: 54.31234, longitude: -1.57321}\ntime zone: Europe/London\nprices: {leek: 7.77 a kg}\ngoals: [77 kg of leeks]\n---\n\nA garden.\n",
  "sites/hill.md": "---\ntitle: Hill\nposition: {latitude: 54.32987, longitude: -1.58123}\n---\nThe hill.\n",
  "sites/back-yard.md": "---\ntitle: Hidden Yard\nprivate: true\n---\nSECRETSITEBODY text of the yard.\n",
  "beds/long-bed.md": "---\ntitle: Long Bed\nsite: hill\n---\nLong and wide.\n",
  "beds/secret-nursery.md":
    "---\ntitle: Secret Nursery\nprivate: true\nsite: hill\n---\nNobody must know of the code.\n",
  "beds/yard-bed.md": "---\ntitle: Yard Bed Zed\nsite: back-yard\n---\nYARDBEDBODY zone.\n",
  "beds/shed.md": "---\ntitle: Shed\nprivate: true\n---\n",
  "varieties/musselburgh.md": "---\ntitle: Musselburgh\ncrop: leek\n---\nOld kind.\n",
  "varieties/black-velvet.md": "---\ntitle: Black Velvet\ncrop: tomato\nprivate: true\n---\nNot yet released.\n",
  "episodes/2026-05-tour/index.md":
    '---\ntitle: May tour\ndate: 2026-05-20\nstatus: published\nlink: https://films.example/may\nstops:\n  - {bed: long-bed, at: "0:05"}\n---\nA tour.\n',
  "notes/2026-05-16.md": "---\nbed: Long Bed\n---\nA fine day.\n\n- planted 12 Musselburgh leek\n",
  "notes/2026-05-17-x.md":
    "---\nprivate: true\nbed: Long Bed\n---\nThe doctor says the knee must rest.\n\n- planted 3 Black Velvet in Secret Nursery\n",
};

let tried = 0;

/** How many there were so far. */
export const attempts = (): number => tried;

let picture: Buffer | undefined;

export interface Attempt {
  /** Everything viewers may be told, whatever page makes it. */
  readonly told: string;
  readonly photos: readonly string[];
  /** Whether publish would stop and say so. */
  readonly stops: boolean;
  readonly garden: Garden;
  readonly open: Garden;
}

/** A file that is undefined is not there. */
export async function attempt(change: { readonly [file: string]: Files[string] | undefined }): Promise<Attempt> {
  tried += 1;
  picture ??= await jpeg();
  const bytes = picture;
  const all = { ...base, ...change };
  const files = Object.fromEntries(Object.entries(all).filter(([, content]) => content !== undefined)) as Files;
  const records = await readRecords(folderOf(files), { today: "2026-06-20" });
  const { photos, problems } = await readPhotos(records, {
    read: async (file) => (files[file] === "" ? bytes : (files[file] as Uint8Array)),
  });
  const garden: Garden = growGarden({ ...records, problems: [...records.problems, ...problems] }, photos);
  const open = publicGarden(garden);
  const { timeZone: _, ...settings } = open.settings;
  // Files, and the places of lines in them, stand on no page.
  const told = JSON.stringify({ ...open, settings }, (key, value) => {
    if (key === "place" || key === "note" || key === "photoFiles") return undefined;
    return value instanceof Map ? [...value] : value;
  });
  return { told, photos: open.photos.map(({ path }) => path), stops: garden.problems.some(isDoubt), garden, open };
}
