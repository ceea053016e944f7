/** Heights by a stake, measured in pictures of a pinhole camera whose plants are of known height. */
import { heightByStake, markingErrorPx } from "../../src/photos/stake-height.ts";
import { percent, type TruthRow } from "./table.ts";

export interface StakeTruth {
  readonly measured: number;
  /** Root of the mean square, centimetres. */
  readonly error: number;
  readonly stated: number;
  /** Share of the errors within the stated standard deviation; 68 % of a normal error are. */
  readonly within: number;
}

/** Draws `cases` cameras before a stake and a plant of `from` to `to` metres. */
export function measureByStake(cases: number, from: number, to: number, stakeM: number, seed = 7): StakeTruth {
  const random = uniform(seed);
  const normal = () => Array.from({ length: 12 }, random).reduce((sum, one) => sum + one, -6);
  const marked = ([x, y]: Pixel): Pixel => [x + markingErrorPx * normal(), y + markingErrorPx * normal()];
  let [measured, squares, stated, within] = [0, 0, 0, 0];
  for (let i = 0; i < cases; i += 1) {
    const camera = { height: 1.2 + 0.4 * random(), pitch: ((5 + 15 * random()) * Math.PI) / 180 };
    const distance = 2 + 2 * random();
    const height = from + (to - from) * random();
    const plantAway = distance * (1 + 0.05 * normal());
    const found = heightByStake(
      {
        foot: marked(seen(camera, 0, 0, distance)),
        top: marked(seen(camera, 0, stakeM, distance)),
        lengthCm: stakeM * 100,
      },
      marked(seen(camera, 0.3, height, plantAway)),
    );
    if (found === undefined) continue;
    const error = found.heightCm - height * 100;
    measured += 1;
    squares += error * error;
    stated += found.uncertaintyCm;
    if (Math.abs(error) <= found.uncertaintyCm) within += 1;
  }
  return { measured, error: Math.sqrt(squares / measured), stated: stated / measured, within: within / measured };
}

type Pixel = readonly [number, number];

/** A point `aside` metres to the right, `height` above the ground and `away` metres off, as a camera of 4000 × 3000 shows it. */
function seen(
  camera: { readonly height: number; readonly pitch: number },
  aside: number,
  height: number,
  away: number,
): Pixel {
  const up = height - camera.height;
  const [cos, sin] = [Math.cos(camera.pitch), Math.sin(camera.pitch)];
  const depth = away * cos - up * sin;
  return [2000 + (3000 * aside) / depth, 1500 - (3000 * (up * cos + away * sin)) / depth];
}

/** Numerical Recipes' linear congruence; the same numbers on every machine. */
function uniform(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 4_294_967_296;
  };
}

export const plantHeights = [
  [0.1, 0.3],
  [0.3, 0.6],
  [0.6, 1.2],
] as const;

/** 68.3 % within one standard deviation, give or take what a model of unknown cameras may miss by. */
export const withinGoal = { from: 0.6, to: 0.78 } as const;

export function heightRows(): readonly TruthRow[] {
  return plantHeights.flatMap(([from, to]) =>
    [0.6, 1.2, 2].map((stake): TruthRow => {
      const { measured, error, stated, within } = measureByStake(5000, from, to, stake);
      return {
        quantity: `height by a ${stake * 100} cm stake, plants of ${from * 100} to ${to * 100} cm`,
        cases: measured,
        found: `error ${error.toFixed(1)} cm, stated ${stated.toFixed(1)} cm, ${percent(within)} within it`,
        against: "drawn cameras 1.2 to 1.6 m high, 5 to 20° down, distances off by 5 %",
        goal: `${100 * withinGoal.from} to ${100 * withinGoal.to} % within`,
        met: within >= withinGoal.from && within <= withinGoal.to,
      };
    }),
  );
}
