/** Which photos the demo garden has: days, times, weather, how the phone was held and what it wrote down. */

import type { PhotoPlan } from "./draw.ts";
import type { PhoneFacts } from "./exif.ts";
import type { Random } from "./random.ts";
import { between, randomFrom, spread } from "./random.ts";
import { brassicaBed } from "./scenes/brassica-bed.ts";
import { cuttingPatch } from "./scenes/cutting-patch.ts";
import { longBed } from "./scenes/long-bed.ts";
import type { SceneDesign } from "./scenes/scene-design.ts";
import { squashBed } from "./scenes/squash-bed.ts";
import { tomatoPots } from "./scenes/tomato-pots.ts";
import { tunnelNorth } from "./scenes/tunnel-north.ts";

interface Series {
  readonly design: SceneDesign;
  /** "MM-DD HH:MM", by year. */
  readonly takings: Readonly<Record<number, string>>;
  /** EXIF orientations, taken in turn. */
  readonly orientations: readonly number[];
}

export const series: readonly Series[] = [
  {
    design: longBed,
    takings: {
      2024: "06-15 10:20, 07-20 11:05",
      2025: "05-17 17:40, 06-14 10:31, 07-19 18:22",
      2026: "04-04 11:12, 04-11 16:30, 04-18 09:48, 04-25 18:05, 05-02 10:26, 05-09 17:20, 05-16 18:15, 05-23 11:40, 05-30 09:35, 06-06 19:10, 06-13 10:05, 06-20 18:44, 06-27 11:02, 07-04 17:52, 07-11 09:20, 07-17 18:31",
    },
    orientations: [1],
  },
  {
    design: squashBed,
    takings: {
      2024: "07-20 11:12",
      2025: "06-14 10:40, 07-19 18:30",
      2026: "04-12 15:20, 04-26 10:15, 05-10 17:05, 05-16 18:22, 05-30 19:02, 05-31 10:48, 06-07 16:12, 06-13 10:14, 06-20 18:52, 06-28 09:58, 07-05 17:33, 07-12 10:41, 07-17 18:38",
    },
    orientations: [1, 1, 1, 3],
  },
  {
    design: cuttingPatch,
    takings: {
      2024: "07-20 11:20",
      2025: "05-17 17:52, 07-19 18:41",
      2026: "04-11 16:41, 04-18 10:02, 04-25 18:17, 05-02 10:39, 05-16 18:31, 05-30 09:47, 06-06 19:18, 06-13 10:22, 06-20 19:01, 06-28 10:09, 07-05 17:44, 07-12 10:52, 07-17 18:46",
    },
    orientations: [6],
  },
  {
    design: brassicaBed,
    takings: {
      2025: "06-15 09:40",
      2026: "04-25 10:10, 05-02 10:50, 05-09 17:31, 05-16 18:40, 05-24 11:52, 06-02 18:20, 06-13 10:30, 06-21 17:15, 06-28 10:17, 07-05 17:58, 07-11 09:31, 07-17 18:55",
    },
    orientations: [1],
  },
  {
    design: tomatoPots,
    takings: {
      2024: "07-20 19:05",
      2025: "07-19 20:02",
      2026: "04-10 12:20, 04-24 13:41, 05-08 18:55, 05-16 14:10, 05-17 15:22, 05-27 12:48, 06-05 13:30, 06-13 15:02, 06-22 12:11, 07-01 14:26, 07-08 13:12, 07-17 14:35",
    },
    orientations: [8, 6, 6],
  },
  {
    design: tunnelNorth,
    takings: {
      2025: "06-14 12:15",
      2026: "04-04 12:31, 04-17 17:10, 05-01 12:02, 05-16 12:44, 05-23 11:20, 06-03 18:05, 06-13 12:20, 06-25 17:41, 07-02 12:55",
    },
    orientations: [1],
  },
];

/** Where each bed would be on a map, so that the privacy rule has something to remove. The town is invented. */
const positions: Readonly<Record<string, readonly [number, number, number]>> = {
  hill: [54.3021, -5.6043, 47],
  yard: [54.2969, -5.5987, 6],
  tunnel: [54.2984, -5.6122, 29],
};
const yard = ["tomato-pots", "step-pots", "herb-trough"];
const siteOf = (bed: string): string => (yard.includes(bed) ? "yard" : bed.startsWith("tunnel") ? "tunnel" : "hill");

/** Hours the garden's clock is ahead of UTC: one from the end of March to the end of October. */
const ahead = (day: string): number => (day.slice(5) >= "03-30" && day.slice(5) < "10-26" ? 1 : 0);

const two = (n: number): string => String(n).padStart(2, "0");

/** What the phone noted: an offset on most, sub-seconds on half, a position on some. */
export function phoneFacts(random: Random, day: string, time: string, orientation: number, bed: string): PhoneFacts {
  const colonDay = day.replaceAll("-", ":");
  const [lat, lon, alt] = positions[siteOf(bed)] as readonly [number, number, number];
  const hasOffset = random() < 0.82;
  const hasSubSeconds = random() < 0.5;
  const hasPosition = random() < 0.4;
  const subSeconds = String(Math.floor(random() * 1000)).padStart(3, "0");
  const [h, m, s] = time.split(":") as [string, string, string];
  return {
    taken: `${colonDay} ${time}`,
    offset: hasOffset ? `+0${ahead(day)}:00` : undefined,
    subSeconds: hasSubSeconds ? subSeconds : undefined,
    orientation,
    position: hasPosition
      ? {
          latitude: lat + 0.00012 * spread(random),
          longitude: lon + 0.0002 * spread(random),
          altitude: alt + spread(random),
        }
      : undefined,
    // Every second position comes with its satellite time; 17:15 here is 16:15 UTC.
    ...(hasPosition && Number(s) % 2 === 0
      ? { gpsDay: colonDay, gpsTime: `${two(Number(h) - ahead(day))}:${m}:${s}` }
      : {}),
  };
}

export const fileName = (day: string, time: string): string =>
  `IMG_${day.replaceAll("-", "")}_${time.replaceAll(":", "")}.jpg`;

function viewpointPhotos(): PhotoPlan[] {
  return series.flatMap(({ design, takings, orientations }) =>
    Object.entries(takings).flatMap(([year, list]) =>
      list.split(", ").map((taking, index): PhotoPlan => {
        const [monthDay, clock] = taking.split(" ") as [string, string];
        const day = `${year}-${monthDay}`;
        const random = randomFrom(`${design.bed} ${day}`);
        const time = `${clock}:${two(Math.floor(random() * 60))}`;
        const cloud = random() < 0.45 ? between(random, 0.05, 0.3) : between(random, 0.35, 0.95);
        return {
          path: `${design.bed}/${design.viewpoint}/${fileName(day, time)}`,
          design,
          day,
          time,
          cloud: Math.round(cloud * 100) / 100,
          jitter: {
            shiftX: Math.round(14 * spread(random) * 100) / 100,
            shiftY: Math.round(11 * spread(random) * 100) / 100,
            scale: Math.round((1 + 0.016 * spread(random)) * 10000) / 10000,
            rotationDeg: Math.round(0.8 * spread(random) * 100) / 100,
          },
          taking: {
            exposure: 0.22 * spread(random),
            warmth: 1 + 0.035 * spread(random),
            grain: between(random, 1.3, 2.2),
            blur: 0,
            seed: `grain ${design.bed} ${day}`,
          },
          facts: phoneFacts(random, day, time, orientations[index % orientations.length] as number, design.bed),
          quality: 62,
        };
      }),
    ),
  );
}

/** Photos of one morning that nobody sorted: two close-ups and a burst of three, one of them shaken. */
function unplacedPhotos(): PhotoPlan[] {
  const day = "2026-07-12";
  const close = (
    design: SceneDesign,
    time: string,
    orientation: number,
    eye: PhotoPlan["closeUp"],
    blur: number,
    nudge: number,
  ): PhotoPlan => {
    const random = randomFrom(`close ${time}`);
    return {
      path: `${day}/${fileName(day, time)}`,
      design,
      day,
      time,
      cloud: 0.3,
      jitter: { shiftX: 3 * nudge, shiftY: -2 * nudge, scale: 1, rotationDeg: 0.2 * nudge },
      taking: { exposure: 0, warmth: 1.01, grain: 1.5, blur, seed: `grain ${time}` },
      facts: {
        ...phoneFacts(random, day, time, orientation, design.bed),
        offset: "+01:00",
        subSeconds: String(120 + nudge * 310),
      },
      closeUp: eye,
      quality: 62,
    };
  };
  const dahlias = { eye: [0.15, -0.25, 1.45], target: [0.42, 1.0, 0.68], view: 52 } as const;
  return [
    close(cuttingPatch, "10:55:02", 6, dahlias, 0, 0),
    close(cuttingPatch, "10:55:03", 6, dahlias, 2, 1),
    close(cuttingPatch, "10:55:04", 6, dahlias, 0, 2),
    close(squashBed, "10:43:37", 1, { eye: [-0.95, -0.5, 0.95], target: [-0.8, 0.7, 0.22], view: 55 }, 0, 0),
    close(tomatoPots, "14:20:19", 6, { eye: [-2.0, 0.9, 1.15], target: [-1.78, 2.0, 0.72], view: 50 }, 0, 0),
  ];
}

export const photoPlans = (): PhotoPlan[] =>
  [...viewpointPhotos(), ...unplacedPhotos()].sort((a, b) => (a.path < b.path ? -1 : 1));
