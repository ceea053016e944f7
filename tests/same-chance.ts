/** Made-up cases are the same in every run, so that a change is judged by what it changes. `SEED=7 npm test` tries others. */
import fc from "fast-check";

fc.configureGlobal({ seed: Number(process.env.SEED ?? 20261130) });
