/** A records folder with what a change may break: letters of another encoding, rights, two names for one file, links. */
import { chmodSync, linkSync, mkdirSync, symlinkSync, utimesSync, writeFileSync } from "node:fs";
import path from "node:path";
import sharp from "sharp";

const film = [
  "This is the long bed, and it has been dry.",
  "I'll show you the leeks again in July.",
  "Musselburgh, all of it.",
  "And here's the squash bed, five plants.",
];

const files: Readonly<Record<string, string>> = {
  "garden.md": "---\nname: Lower Croft\ntime zone: Europe/London\nunits: metric\nlanguage: en-GB\n---\n",
  "beds/long-bed.md": "---\ntitle: Long Bed\nsize: 8 x 1.2 m\n---\n",
  "beds/squash-bed.md": "---\ntitle: Squash Bed\n---\n",
  "varieties/musselburgh.md": "---\ntitle: Musselburgh\ncrop: leek\n---\n",
  "words.md": "- rasps: raspberries\n",
  "notes/2026-04-10.md": "---\nbed: Long Bed\n---\n\n- sowed 24 Musselburgh leek indoors\n",
  "notes/2026-05-24.md": "---\nbed: Long Bed\n---\n\n- planted 12 Musselburgh leek\n- lifted the onions\n",
  "episodes/june/captions.vtt": `WEBVTT\n\n${film.map((text, at) => `00:00:0${2 * at}.000 --> 00:00:0${2 * at + 2}.000\n${text}\n`).join("\n")}`,
};

/** Kept before Plotreel, and brought in by `ingest FILE`. */
const past: Readonly<Record<string, string>> = {
  "orders.csv":
    "Variety,Crop,Supplier,Sown,Bed\nHarbinger,tomato,Drift Lane,2026-03-01,Squash Bed\nLollo Rossa,lettuce,Drift Lane,2026-04-02,Long Bed\nAilsa Craig,onion,a swap,2026-03-10,Long Bed\n",
  "diary.txt":
    "12 March 2019\nSowed 20 leeks in Long Bed.\nWindy all day.\n\n20 May 2019\nPlanted 5 Crown Prince squash in Squash Bed.\n\n1 June 2019\nPicked 400 g radish from Long Bed.\n",
};

/** Longer than a page of memory, and than what a small limit of the system lets be written at once. */
const story = `${"A dry wind from the east all day, and the cans were empty by noon.\n".repeat(90)}`;

export async function writeTrialRecords(cwd: string): Promise<void> {
  const put = (file: string, content: string | Buffer) => {
    mkdirSync(path.dirname(path.join(cwd, file)), { recursive: true });
    writeFileSync(path.join(cwd, file), content);
  };
  for (const [file, text] of Object.entries(files)) put(`content/${file}`, text);
  // Windows-1252, for its owner alone.
  const record = `---\ntitle: Caf\u00e9 at 20\u00b0\ndate: 2026-06-14\nstatus: filmed\nstops: [long-bed, squash-bed]\n---\n\n${story}`;
  put("content/episodes/june/index.md", Buffer.from(record, "latin1"));
  chmodSync(path.join(cwd, "content/episodes/june/index.md"), 0o600);
  // One file of two names.
  put("content/notes/2026-06-02.md", `---\nbed: Squash Bed\n---\n\n- lifted the garlic\n\n${story}`);
  mkdirSync(path.join(cwd, "backup"));
  linkSync(path.join(cwd, "content/notes/2026-06-02.md"), path.join(cwd, "backup/june.md"));
  // A link, for its owner and group.
  put("content/notes/kept/june-seventh.md", "---\ndate: 2026-06-07\nbed: Long Bed\n---\n\n- lifted the shallots\n");
  chmodSync(path.join(cwd, "content/notes/kept/june-seventh.md"), 0o640);
  symlinkSync("notes/kept/june-seventh.md", path.join(cwd, "content/2026-06-07-linked.md"));
  const shown = { width: 64, height: 48, channels: 3 as const, background: "#885522" };
  put("content/photos/long-bed/2026-06-30.jpg", await sharp({ create: shown }).jpeg().toBuffer());
  for (const [file, text] of Object.entries(past)) put(file, text);
  for (let photo = 0; photo < 5; photo += 1) {
    const picture = { width: 64, height: 48, channels: 3 as const, background: { r: 40 * photo, g: 120, b: 30 } };
    put(`card/IMG_2026060${photo + 1}_120000.jpg`, await sharp({ create: picture }).jpeg().toBuffer());
    utimesSync(path.join(cwd, `card/IMG_2026060${photo + 1}_120000.jpg`), 1_780_000_000, 1_780_000_000 + photo);
  }
}
