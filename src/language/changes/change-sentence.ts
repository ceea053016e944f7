/** What changed in a bed, as one sentence a person could say on camera: made here, where it is shown, from the facts of a change. */
import type { Change, Told } from "../../model.ts";
import { type Named, type Names, namesOf } from "../names.ts";
import * as said from "./change-sentences.ts";
import * as coming from "./coming-and-going-sentences.ts";
import { sayPicked, saySavedSeed } from "./picking-sentences.ts";
import { sayWork } from "./work-sentences.ts";

/** Why it was done stands behind what was done. */
export function changeSentence(change: Change, garden: Named): string {
  const reason = change.told.line?.reason;
  const text = whatHappened(change, change.told, namesOf(garden));
  return reason === undefined ? text : said.sayBecause(text, reason);
}

type Context = Pick<Change, "bed" | "day" | "cause" | "harvest">;

function whatHappened({ bed, day, cause = "", harvest = {} }: Context, told: Told, names: Names): string {
  switch (told.is) {
    case "sown":
      return said.saySown(names, told.line, told.plants);
    case "self-sown":
      return coming.saySelfSown(names, told.line, told.plants);
    case "planted":
      return said.sayPlanted(names, told.line, told.plants, told.raised);
    case "moved out":
      return said.sayMovedOut(names, told.line, told.plants, told.to);
    case "moved in":
      return said.sayMovedIn(names, told.line, told.plants, told.from);
    case "moved within":
      return said.sayMovedWithin(names, told.line, told.plants);
    case "first noted":
      return said.sayNew(names, told.plants);
    case "in use":
      return said.sayInUse(names, bed);
    case "renamed":
      return said.sayRenamed(told.before, told.now);
    case "built":
    case "filled":
      return said.sayBedWork(names, bed, told.is, told.what);
    case "up":
      return said.sayUp(names, told.line, told.plantings);
    case "potted on":
      return said.sayPottedOn(names, told.line, told.plantings);
    case "thinned":
      return said.sayThinned(names, told.line, told.plantings);
    case "flowered":
      return said.sayFlowered(names, told.line, told.plantings);
    case "fruited":
      return said.sayFruited(names, told.line, told.plantings);
    case "measured":
      return said.sayMeasured(names, told.line, told.plantings);
    case "came back":
      return coming.sayCameBack(names, told.line, told.plantings);
    case "doing":
      return coming.sayDoing(names, told.line, bed, told.plantings);
    case "lost":
      return said.sayLost(names, told.line, told.plants, told.number);
    case "cleared":
      return said.sayCleared(names, told.line, bed, told.plantings);
    case "given away":
      return coming.sayGivenAway(names, told.line, told.plants, told.doing);
    case "picked":
      return sayPicked(names, told.line, told.plants, { harvest, whole: told.whole, atOnce: told.atOnce });
    case "seed saved":
      return saySavedSeed(names, told.line);
    case "acquired":
      return coming.sayAcquired(names, told.line);
    case "preserved":
      return coming.sayPreserved(told.line);
    case "taken to be over":
      return said.sayEndedWithoutWord(names, told.plants, day);
    case "next year":
      return said.sayNextYear(names, told.plants, told.year);
    case "trouble":
      return said.sayTrouble(names, told.line, cause, { bed, plantings: told.plantings, known: told.known });
    case "trouble over":
      return said.sayTroubleOver(names, told.line, { bed, cause, plantings: told.plantings, days: told.days });
    case "trouble forgotten":
      return said.sayTroubleForgotten(cause);
    case "gear up":
      return said.sayGearUp(names, told.line);
    case "gear down":
      return said.sayGearDown(names, told.line);
    case "soil test":
      return said.saySoilTest(names, told.line);
    case "work":
      return sayWork(names, told.line, { bed, named: told.named, plantings: told.plantings });
    case "asked":
      return said.sayAsked(told.line);
    case "to do":
      return said.sayToDo(names, told, day);
    case "done":
      return said.sayDone(told.what);
    case "promised":
      return said.sayPromised(told.what);
    case "kept":
      return said.sayKept(told.what);
    case "planned":
      return coming.sayPlanned(told.what);
    case "overdue":
      return said.sayOverdue(names, told.what, told.due);
    case "owed":
      return said.sayOwed(names, told.what, told.due);
  }
}
