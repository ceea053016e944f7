/**
 * Lines that say something of the garden which they alone do not tell: what was done is said by what was done before ("same as
 * Tuesday", "the other two as well"), a number is put right, a thing gets another name. They are questions, never story.
 */

const back =
  /\b(?:ditto|same (?:as|again|number|depth|how)|as (?:before|b4|we (?:said|spoke))|the (?:rest|others|other (?:one|ones|two|three|four|five|six|half|lot|side)|remaining|last lot)|other side|those same|(?:few|three|two|four|\d+) more|another (?:\d+|two|three|four|five|six|ten|dozen)|second row|half (?:of )?(?:it|those|them|rest)|one of them)\b/i;
const does =
  /\b(?:did|done|do|put|planted|sowed|sown|finished|moved|in|out|up|came|come|gone|went|cleared|picked|repeat|x\d|\d+ in)\b|\d/i;

const putsRight =
  /\b(?:mistake|mis-?counted|miscount|amend|correction|oops|ignore|scrub that|scratch that|not (?:eleven|twelve|\d+)|for \d+ .*read \d+|i wrote|i counted again|soz|was one not|sorry)\b/i;

const renames =
  /\b(?:(?:always|been|what i'?ve been|getting) call(?:ed|ing)|from here on|redesignated|henceforth|right name is|keys? out (?:to|as)|renam(?:ed|ing)|naming:|turns? out to be|is really a|now (?:called|known as)|shall be called)\b/i;

/** Of list items: a diary goes on about others and the rest without keeping a record. */
export function saysMoreThanItTells(text: string): boolean {
  if (text.length > 140) return false;
  if (renames.test(text)) return true;
  if (putsRight.test(text)) return /\d|\b(?:two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)\b/i.test(text);
  return back.test(text) && does.test(text);
}
