/** When each stop begins: into the film, and on the clock of the filming day. */

import { filmTime, offFilm } from "../../films/index.ts";
import type { Leg } from "./walk.ts";

/** Seconds since the tour began. */
export interface StopTimes {
  /** Into the film. */
  readonly begins: number;
  /** In the garden, setting up and going from site to site included. */
  readonly inTheGarden: number;
}

/** `seconds` are the planned lengths of the stops, `legs` the ways to them. */
export function timesOf(seconds: readonly number[], legs: readonly Leg[]): readonly StopTimes[] {
  let begins: number = filmTime.opening;
  let inTheGarden: number = filmTime.opening;
  return seconds.map((length, index) => {
    inTheGarden += onTheWay(legs[index]);
    const times = { begins, inTheGarden: Math.round(inTheGarden) };
    begins += length;
    inTheGarden += length + offFilm.setUp;
    return times;
  });
}

/** Clock seconds that a leg takes beside the walk that is on film. */
function onTheWay(leg: Leg | undefined): number {
  if (leg === undefined) return 0;
  if (leg.otherSite) {
    const away = leg.betweenSites ?? 0;
    const speed = away > offFilm.furthestWalk ? offFilm.ride : offFilm.walkingPace;
    return offFilm.changeOfSite + away / speed;
  }
  return Math.max(0, (leg.metres ?? 0) / offFilm.walkingPace - filmTime.walk);
}

/** Minutes since midnight of a wall clock "09:15". */
export function minutesOf(clock: string): number {
  const [hours = 0, minutes = 0] = clock.split(":").map(Number);
  return hours * 60 + minutes;
}
