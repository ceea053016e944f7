/** The back of a card: at most seven shots in shooting order, one of them the cutaway. */
import { toPause } from "../../films/index.ts";
import type { Stop } from "../brief.ts";
import type { Shot } from "../camera.ts";
import { type CardShot, mostShots } from "./card.ts";

/** Words a shot can have and still be read at arm's length; the whole of where to stand is in the dossier. */
const mostWords = 9;
const standWords = 5;

export function cardShots({ shots, spot }: Stop): readonly CardShot[] {
  const wide = shots.filter(({ kind }) => kind === "wide");
  const walk = shots.filter(({ kind }) => kind === "walk-in");
  const close = shots.filter(({ kind }) => kind === "close-up");
  const inserts = shots.filter(({ kind }) => kind === "insert");
  const cutaways = shots.filter(({ kind }) => kind === "cutaway");
  // Any picture without lips and hands hides a join; a label or a tool will do where nothing else was passed by.
  const cutaway = cutaways[0] ?? inserts.at(-1);
  const before = [...wide, ...walk, ...close, ...inserts.filter((shot) => shot !== cutaway)];
  const room = mostShots - (cutaway === undefined ? 0 : 1);
  return [
    ...before.slice(0, room).map((shot) => cardShot(shot, spot.text, false)),
    ...(cutaway === undefined ? [] : [cardShot(cutaway, spot.text, true)]),
  ];
}

function cardShot(shot: Shot, spot: string, cutaway: boolean): CardShot {
  return {
    id: shot.id,
    text: shotWords(shot, spot),
    hold: shot.kind === "wide" || shot.kind === "close-up",
    cutaway,
    match: shot.match,
  };
}

function shotWords({ kind, text }: Shot, spot: string): string {
  if (kind === "walk-in") return "walk in";
  if (kind === "wide") {
    const stand = spot === "" ? undefined : toPause(spot.split("; match")[0] ?? spot, standWords);
    return stand === undefined ? "wide" : `wide, ${stand}`;
  }
  const bare = text
    .replace(/^for the promise: /, "")
    .replace(/, then one plant close$|, close(?:, label in the frame)?$/, "");
  return toPause(bare, mostWords) ?? bare.split(" ").slice(0, mostWords).join(" ");
}
