/** The sentences of changes, as one table. */
import * as said from "./change-sentences.ts";
import * as coming from "./coming-and-going-sentences.ts";
import { sayPicked, saySavedSeed } from "./picking-sentences.ts";
import { sayWork } from "./work-sentences.ts";

export const changeSentences = {
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

export type ChangeSentences = typeof changeSentences;
