/** What a close-up of a variety must tell: what it is of, when it was taken, where the lens stood. */

import type { PhoneFacts } from "../exif.ts";
import type { Vec } from "../mesh.ts";
import type { Behind } from "./focus.ts";
import type { Model } from "./model.ts";
import type { StageName } from "./stages.ts";

export interface View {
  /** Where the lens looks, how far away it is, and from how many degrees above. */
  readonly target: Vec;
  readonly away: number;
  readonly tilt: number;
  /** Where the sun stands: radians from straight behind the subject, to the right. */
  readonly sun?: number;
  /** 0 blue sky, 1 overcast. */
  readonly cloud?: number;
  /** Units around the target that get fine shadows. */
  readonly reach?: number;
  /** How much nearer than the target the lens is sharp. */
  readonly nearer?: number;
  /** Blur, in pixels, of what is far away. */
  readonly open?: number;
  /** Stops above what the meter chose. */
  readonly exposure?: number;
  readonly warmth?: number;
}

/** One picture as a subject describes it. */
export interface Subject {
  readonly stage: StageName;
  readonly view: View;
  readonly behind?: Behind;
  readonly build: (model: Model) => void;
}

export interface CloseUp extends Subject {
  /** Below photos/. */
  readonly path: string;
  readonly day: string;
  readonly time: string;
  readonly facts: PhoneFacts;
  /** What the gardener wrote beside the photo. */
  readonly sidecar: string;
}
