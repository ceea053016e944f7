/**
 * Lines and photos that a phone kept outdoors, into the note of their day and the folder of their spot. What was sent before is
 * not written again, also when the answer never reached the phone, or this program was killed between writing and answering.
 */
import type { OutdoorAnswer, OutdoorLine, OutdoorPhoto, OutdoorTaking } from "../site/index.ts";
import type { Effects } from "./effects.ts";
import type { SentBefore } from "./sent-before.ts";
import type { PhotoTaker } from "./take-photos.ts";
import type { NoteWriter } from "./write-notes.ts";

/** Writing is tried again when somebody changes the note in that moment. */
const TRIES = 3;

export function outdoorTaker(
  notes: NoteWriter,
  photos: Pick<PhotoTaker, "take">,
  sent: SentBefore,
  effects: Pick<Effects, "err">,
): OutdoorTaking {
  let last: Promise<unknown> = Promise.resolve();

  async function line(ask: OutdoorLine): Promise<OutdoorAnswer> {
    const { id, day, bed, text } = ask;
    const known = await sent.placeOf(id);
    if (known !== undefined) return { told: `It stands in ${known} already.`, done: true };
    for (let tries = 1; ; tries += 1) {
      const [note] = (await notes.notesOf(day)).notes;
      if (note === undefined) return { told: "There is no note it could go to." };
      const { file, state } = note;
      const now = await notes.preview({ day, file, bed, text });
      if ("refused" in now) return { told: now.refused };
      const begun = await sent.begunOf(id);
      if (begun?.file === file && now.standing > begun.standing) {
        await sent.done(id, text.length, file);
        return { told: `It stands in ${file}.`, done: true, reads: now.reads };
      }
      if (begun === undefined && now.standing > 0 && ask.again !== true)
        return { told: `${file} says this already.`, stands: true };
      await sent.begin(id, { file, standing: now.standing });
      const shown = [ask.shown ?? now.reads];
      const answer = await notes.write({ id, day, file, state, bed, lines: [text], shown });
      if (answer.undo !== undefined) {
        await sent.done(id, text.length, file);
        return { told: answer.told, done: true, reads: now.reads };
      }
      if (answer.asks !== undefined && tries < TRIES) continue;
      return { told: answer.told, reads: answer.reads?.[0] };
    }
  }

  async function photo({ id, bed, viewpoint, name, modified, bytes }: OutdoorPhoto): Promise<OutdoorAnswer> {
    const known = await sent.placeOf(id);
    if (known !== undefined) return { told: `It was brought to ${known}.`, done: true };
    // A photo that was kept and not answered for is known again by its bytes.
    const { told, done } = await photos.take({ of: { bed, viewpoint }, name, modified, bytes });
    if (done !== true) return { told };
    await sent.done(id, bytes.length, `photos/${bed}${viewpoint === undefined ? "" : `/${viewpoint}`}`);
    return { told, done };
  }

  /** One after the other: each looks at what the one before left. */
  function inTurn(work: () => Promise<OutdoorAnswer>): Promise<OutdoorAnswer> {
    const answer = last.then(work);
    last = answer.catch((error: Error) => effects.err(`Not written: ${error.message}. The phone keeps it.`));
    return answer;
  }

  return { line: (ask) => inTurn(() => line(ask)), photo: (ask) => inTurn(() => photo(ask)) };
}
