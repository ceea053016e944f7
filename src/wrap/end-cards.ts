/** Films to lead to at the end: those this one speaks of, in the order in which it does. */
import type { Garden } from "../model.ts";
import type { Wrap } from "./wrap.ts";

/** Places that sites leave for films at the end of one. */
const MOST = 4;

/** Undefined where no film that viewers may see is spoken of. */
export function endCards(earlier: Wrap["earlier"], { episodes, settings }: Garden): string | undefined {
  const lines = earlier.flatMap(({ episode: id, time }) => {
    const episode = episodes.get(id);
    if (episode === undefined || episode.private || settings.private === true) return [];
    const link = episode.link === undefined ? "" : `: ${episode.link}`;
    return [`${episode.title}, spoken of at ${time}${link}`];
  });
  return lines.length === 0 ? undefined : `${lines.slice(0, MOST).join("\n")}\n`;
}
