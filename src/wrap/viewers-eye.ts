/**
 * What viewers may be told of, for texts that leave the house: records that are public and lie in nothing private, and words that
 * name nothing and nobody that is kept back. Doubt means private.
 */
import type { Garden, RecordFile } from "../model.ts";
import { privatePersons } from "./private-aloud.ts";
import { plainWord } from "./spoken-words.ts";

export interface ViewersEye {
  readonly bed: (id: string | undefined) => boolean;
  readonly variety: (id: string | undefined) => boolean;
  /** Names nothing that is kept back. */
  readonly text: (text: string) => boolean;
}

const made = new WeakMap<Garden, ViewersEye>();

/** Opened once for a garden: each of its films looks through it. */
export function viewersEye(garden: Garden): ViewersEye {
  const eye = made.get(garden) ?? openEye(garden);
  made.set(garden, eye);
  return eye;
}

function openEye(garden: Garden): ViewersEye {
  const { settings, sites, beds, varieties, gear } = garden;
  const isOpen = (record: RecordFile | undefined) =>
    settings.private !== true &&
    record !== undefined &&
    !record.private &&
    (settings.onlyDescribed !== true || record.described);
  const bed = (id: string | undefined) => {
    const record = beds.get(id ?? "");
    const site = sites.get(record?.site ?? "");
    return isOpen(record) && site?.private !== true;
  };
  const variety = (id: string | undefined) => isOpen(varieties.get(id ?? ""));
  const keptBack = [
    ...[...sites.values()].flatMap((one) => (isOpen(one) ? [] : [one.title])),
    ...[...beds.values()].flatMap((one) => (bed(one.id) ? [] : [one.title])),
    ...[...varieties.values()].flatMap((one) => (isOpen(one) ? [] : [one.title, ...one.alsoSpelled])),
    ...[...gear.values()].flatMap((one) => (isOpen(one) ? [] : [one.title, ...one.alsoCalled])),
    ...privatePersons(garden),
  ];
  const open = [varieties, beds, gear].flatMap((records) => [...records.values()].filter(isOpen));
  const names = keptBack.map(spaced).filter((name) => name.trim() !== "");
  // "Wilma's Red" is a lettuce that everybody may know.
  const harmless = open.map(({ title }) => spaced(title)).filter((title) => names.some((name) => isNamed(title, name)));
  return {
    bed,
    variety,
    text: (text) => {
      const said = harmless.reduce((left, title) => left.replaceAll(title, " "), spaced(text));
      return !names.some((name) => isNamed(said, name));
    },
  };
}

function isNamed(text: string, name: string): boolean {
  return text.includes(name) || text.includes(`${name.trimEnd()}s `);
}

/** " velvet queen ": whole words only, however they are written. */
function spaced(text: string): string {
  const words = text.split(/[^\p{L}\p{N}'’]+/u).map(plainWord);
  return ` ${words.filter((word) => word !== "").join(" ")} `;
}
