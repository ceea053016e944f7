/** Small films for the wrap's tests: a garden of a few files, and what is said in it. */
import type { Episode, Garden } from "../../src/model.ts";
import { readRecords } from "../../src/records/index.ts";
import { growGarden } from "../../src/timeline/index.ts";
import { openCaptions, type WrapMade, type WrapRequest, wrapEpisode } from "../../src/wrap/index.ts";
import { folderOf } from "../records/records-of.ts";

export const gardenFiles: Readonly<Record<string, string>> = {
  "garden.md": "---\nname: Lower Croft\ntime zone: Europe/London\nunits: metric\nlanguage: en-GB\n---\n",
  "sites/croft.md": "---\ntitle: Croft\nplace name: the croft\nposition: {latitude: 54.2, longitude: -5.5}\n---\n",
  "beds/long-bed.md": "---\ntitle: Long Bed\nsite: croft\nsize: 8 x 1.2 m\n---\n",
  "beds/squash-bed.md": "---\ntitle: Squash Bed\nsite: croft\nsize: 5 x 3 m\n---\n",
  "beds/tomato-pots.md": "---\ntitle: Tomato Pots\nsite: croft\n---\n",
  "beds/secret-patch.md": "---\ntitle: Secret Patch\nsite: croft\nprivate: true\n---\n",
  "varieties/musselburgh.md":
    "---\ntitle: Musselburgh\ncrop: leek\nsay it as: MUSSEL-bruh\nsource: {name: Drift Lane Seeds, obtained: bought}\n---\n",
  "varieties/uchiki-kuri.md":
    "---\ntitle: Uchiki Kuri\ncrop: squash\nsay it as: oo-CHEE-kee KOO-ree\nsource: {name: Saltmarsh Hall seed swap, obtained: swapped}\n---\n",
  "varieties/crown-prince.md": "---\ntitle: Crown Prince\ncrop: squash\n---\n",
  "varieties/harbinger.md":
    '---\ntitle: Harbinger\ncrop: tomato\nsource: {name: Pebble & Pod, obtained: commission link, link: "https://pod.example/h"}\n---\n',
  "varieties/velvet-queen.md": "---\ntitle: Velvet Queen\ncrop: sunflower\nprivate: true\n---\n",
  "gear/butterfly-net.md": "---\ntitle: Butterfly net\nobtained: gifted\nfrom: Skerry Netting\n---\n",
  "gear/warm-mat.md": "---\ntitle: Warm mat\nobtained: paid promotion\nfrom: Ember & Tray\n---\n",
  "notes/2026/2026-04-10.md": [
    "- sowed 24 Musselburgh leek indoors",
    "- sowed 6 Uchiki Kuri indoors",
    "- sowed 4 Crown Prince indoors",
    "- sowed 4 Harbinger indoors",
    "",
  ].join("\n"),
  "notes/2026/2026-05-24.md": [
    "- planted 12 Musselburgh leek in Long Bed",
    "- planted 5 Uchiki Kuri in Squash Bed",
    "- planted 3 Crown Prince in Squash Bed",
    "- planted 4 Harbinger in Tomato Pots",
    "- put up Butterfly net in Long Bed",
    "",
  ].join("\n"),
  "notes/2026/2026-06-14.md": "- asked: where did you get the Uchiki Kuri from?\n- asked: what do you put on slugs?\n",
  "episodes/june/index.md":
    "---\ntitle: June walk\ndate: 2026-06-14\npublished: 2026-06-20\nlink: https://films.example/june\nstops: [long-bed, squash-bed, tomato-pots]\n---\n",
};

export async function smallGarden(
  more: Readonly<Record<string, string>> = {},
): Promise<{ garden: Garden; episode: Episode }> {
  const records = await readRecords(folderOf({ ...gardenFiles, ...more }), { today: "2026-07-18" });
  const garden = growGarden(records, []);
  return { garden, episode: garden.episodes.get("june") as Episode };
}

/** Captions of three seconds each, one after the other. */
export function vtt(lines: readonly string[], seconds = 3): Uint8Array {
  const time = (at: number) =>
    `00:${String(Math.floor(at / 60)).padStart(2, "0")}:${String(at % 60).padStart(2, "0")}.000`;
  const cues = lines.map((text, at) => `${time(at * seconds)} --> ${time((at + 1) * seconds)}\n${text}\n`);
  return Buffer.from(`WEBVTT\n\n${cues.join("\n")}`);
}

export async function wrapOf(
  lines: readonly string[],
  request: Partial<WrapRequest> = {},
  more: Readonly<Record<string, string>> = {},
): Promise<WrapMade> {
  const { garden, episode } = await smallGarden(more);
  return wrapEpisode({ garden, episode, captions: { file: "june.vtt", bytes: vtt(lines) }, ...request });
}

export function speechOf(text: string) {
  return openCaptions("a.vtt", Buffer.from(text)).speech;
}
