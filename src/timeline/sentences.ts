/**
 * The sentences of changes, by the garden's language. English is the pattern: another language is a table of the same
 * functions, and a row here.
 */
import * as said from "./change-sentences.ts";
import * as coming from "./coming-and-going-sentences.ts";
import { germanSentences } from "./german-sentences.ts";
import { sayPicked, saySavedSeed } from "./picking-sentences.ts";
import { type Language, languageOf } from "./speech/speech-of.ts";
import { sayWork } from "./work-sentences.ts";

const english = {
  sown: said.saySown,
  planted: said.sayPlanted,
  movedOut: said.sayMovedOut,
  movedIn: said.sayMovedIn,
  movedWithin: said.sayMovedWithin,
  first: said.sayNew,
  inUse: said.sayInUse,
  bedWork: said.sayBedWork,
  up: said.sayUp,
  pottedOn: said.sayPottedOn,
  thinned: said.sayThinned,
  flowered: said.sayFlowered,
  fruited: said.sayFruited,
  measured: said.sayMeasured,
  lost: said.sayLost,
  givenAway: coming.sayGivenAway,
  cleared: said.sayCleared,
  endedWithoutWord: said.sayEndedWithoutWord,
  nextYear: said.sayNextYear,
  trouble: said.sayTrouble,
  troubleOver: said.sayTroubleOver,
  troubleForgotten: said.sayTroubleForgotten,
  gearUp: said.sayGearUp,
  gearDown: said.sayGearDown,
  soilTest: said.saySoilTest,
  toDo: said.sayToDo,
  done: said.sayDone,
  overdue: said.sayOverdue,
  promised: said.sayPromised,
  kept: said.sayKept,
  owed: said.sayOwed,
  asked: said.sayAsked,
  picked: sayPicked,
  savedSeed: saySavedSeed,
  work: sayWork,
  acquired: coming.sayAcquired,
  selfSown: coming.saySelfSown,
  cameBack: coming.sayCameBack,
  doing: coming.sayDoing,
  preserved: coming.sayPreserved,
  planned: coming.sayPlanned,
  because: said.sayBecause,
};

export type ChangeSentences = typeof english;

const tables: Readonly<Record<Language, ChangeSentences>> = { en: english, de: germanSentences };

export function sentencesIn(language: string): ChangeSentences {
  return tables[languageOf(language)];
}
