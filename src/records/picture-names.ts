/** What the name of a picture's file says of the moment it belongs to. */
import { asideEnding, mediaEnding, textEnding, transcriptEnding } from "./file-names.ts";

/** What programs put behind the name of a picture that they changed, and people behind one that they copied. */
const changed = "edited|edit|bearbeitet|modifi[ée]|hdr|enhanced|cropped";
const copied = String.raw`\(\d{1,2}\)|copy|kopie`;
const behind = new RegExp(`[ _-]{0,3}(?:${changed}|${copied})$`);
const changedBehind = new RegExp(`[ _-](?:${changed})$`);
const copiedBehind = new RegExp(`[ _-]{0,3}(?:${copied})$`);
/** Phones call the changed one IMG_E0001 beside IMG_0001. */
const phoneEdit = /(^|\/)img_e(?=\d)/;
/** A phone's picture with a film of its moment: MVIMG_20260516_100000, and PXL_20260516_100000123.MP with an ending behind. */
const motionMark = /\.mp$/;

/** Stands for one picture taken: its HEIC, its JPEG and what a phone or a program made of them have it in common. */
export function momentName(file: string): string {
  return withoutEnd(plainName(file).replace(phoneEdit, "$1img_"), behind);
}

/** Whether the name says that a person or a program worked on the picture. */
export function isEditedName(file: string): boolean {
  const plain = plainName(file);
  return phoneEdit.test(plain) || changedBehind.test(withoutEnd(plain, copiedBehind));
}

/** Whether the name has a number or a word behind it that a copy gets, which another picture of that name gets too. */
export function isCopyName(file: string): boolean {
  return copiedBehind.test(plainName(file));
}

/** Takes what stands at the end away, as often as it stands there. */
function withoutEnd(name: string, end: RegExp): string {
  let rest = name;
  for (let before = ""; before !== rest; ) [before, rest] = [rest, rest.replace(end, "")];
  return rest;
}

/**
 * The file that a text or a program's file stands beside: "IMG_1.jpg.md" and "IMG_1.xmp" name it with or without its ending, a
 * takeout writes "IMG_1.jpg.supplemental-metadata.json", cut short as it likes, and "IMG_1.jpg(1).json" beside "IMG_1(1).jpg".
 */
export function besideName(file: string): string {
  const plain = file.replace(textEnding, "").replace(transcriptEnding, "").replace(asideEnding, "");
  return /\.json$/i.test(file)
    ? plain.replace(/(\.\w{3,4})\.s[a-z-]*(?=\(\d+\)$|$)/i, "$1").replace(/(\.\w{3,4})(\(\d+\))$/, "$2$1")
    : plain;
}

function plainName(file: string): string {
  return file
    .toLowerCase()
    .replace(mediaEnding, "")
    .replace(motionMark, "")
    .replace(/(^|\/)mvimg_/, "$1img_");
}
