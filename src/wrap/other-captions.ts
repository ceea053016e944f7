/** Captions of other programs: scripts of SubStation Alpha are read, what cannot be read well is refused in words. */
import { problem } from "../records/index.ts";
import { type Draft, Faults, inOrder } from "./caption-faults.ts";
import { readTime } from "./caption-times.ts";
import type { Captions } from "./read-captions.ts";

const refusedForms: readonly (readonly [RegExp, string])[] = [
  [/^\s*<(?:\?xml|tt|timedtext|transcript)[\s:>]/i, "This is TTML or another kind of XML"],
  [/^\s*(?:\{\s*["}]|\[\s*[{"[\]])/, "This is JSON"],
  [/^\s*\{\d+\}\{\d+\}/, "Its times are counted in frames, and nothing says how many make a second"],
  [/^Scenarist_SCC/i, "These are captions in the codes of a broadcast line"],
];

export function refused(file: string, text: string): Captions | undefined {
  const head = text.slice(0, 400);
  const found = refusedForms.find(([form]) => form.test(head));
  if (found === undefined) return undefined;
  const told = problem(
    "captions/not-read",
    { file, line: 1, column: 1 },
    `${found[1]}, which is not read here.`,
    "Save the captions as WebVTT (.vtt) or SubRip (.srt), and give that file.",
  );
  return { file, format: "none", cues: [], problems: [told] };
}

export const scriptHead = /^\s*\[Script Info\]/i;

/**
 * "Dialogue: 0,0:00:01.00,0:00:03.50,Default,,0,0,0,,twelve\Nleeks": fields by commas in the order of the "Format" line of
 * [Events], the text last (SSA v4 and ASS as the programs' own description has them).
 */
export function readScript(file: string, lines: readonly string[]): Captions {
  let fields = ["layer", "start", "end", "style", "name", "marginl", "marginr", "marginv", "effect", "text"];
  let isEvents = false;
  const drafts: Draft[] = [];
  const faults = new Faults(file);
  lines.forEach((line, index) => {
    const section = /^\s*\[([^\]]*)\]/.exec(line)?.[1];
    if (section !== undefined) isEvents = section.toLowerCase() === "events";
    else if (isEvents && /^Format:/i.test(line))
      fields = line
        .slice("Format:".length)
        .split(",")
        .map((field) => field.trim().toLowerCase());
    else if (isEvents && /^Dialogue:/i.test(line)) {
      const values: string[] = [];
      let at = "Dialogue:".length;
      for (let comma = line.indexOf(",", at); values.length < fields.length - 1 && comma >= 0; ) {
        values.push(line.slice(at, comma).trim());
        at = comma + 1;
        comma = line.indexOf(",", at);
      }
      const time = (name: string) => {
        const value = values[fields.indexOf(name)] ?? "";
        const ms = readTime(value, "vtt")?.ms;
        if (ms === undefined)
          faults.add("captions/time", index + 1, 1, `The time "${value}" cannot be read.`, "Write it as 0:01:05.00.");
        return ms === undefined ? undefined : { ms };
      };
      // Two letters for two, so that offsets stay true.
      const text = line
        .slice(at)
        .replace(/\\[Nn]/g, " \n")
        .replaceAll("\\h", "  ");
      drafts.push({
        start: time("start"),
        end: time("end"),
        text,
        pieces: [{ at: 0, line: index, column: at }],
        settings: "",
        place: { file, line: index + 1, column: 1 },
      });
    }
  });
  return { file, format: "ass", ...inOrder(drafts, faults, lines.length) };
}
