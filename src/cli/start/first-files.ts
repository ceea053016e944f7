/** What a new garden's folder holds, as texts by file name. */
import { recordFile } from "../record-templates.ts";
import { type Opener, openerFile } from "./opener.ts";
import type { StartPlace } from "./place.ts";

export interface NewGarden {
  readonly name: string;
  readonly place: StartPlace;
  readonly timeZone: string;
  readonly units: "metric" | "us";
  readonly language: string;
}

export interface FirstFile {
  /** Relative to the garden's folder. */
  readonly file: string;
  readonly text: string;
  /** A program that a double click runs. */
  readonly runs?: boolean | undefined;
}

export function firstNote(today: string): string {
  return recordFile("note", "first note", today);
}

/** In the order in which they are written: garden.md last, so that what it stands in is whole. */
export function firstFiles(garden: NewGarden, today: string, opener: Opener): readonly FirstFile[] {
  return [
    ...filesOfAnyGarden(opener),
    { file: firstNote(today), text: noteText(today) },
    { file: "garden.md", text: gardenText(garden) },
  ];
}

function filesOfAnyGarden(opener: Opener): readonly FirstFile[] {
  return [
    { file: "README.txt", text: readmeText(openerFile(opener).file) },
    { file: ".gitignore", text: "# What Plotreel makes from your records and makes again when it is asked.\nout/\n" },
    openerFile(opener),
  ];
}

/** Whether a file is as a start that was broken off leaves it: it may be begun again over it. */
export function isLeftByStart(file: string, text: string, opener: Opener): boolean {
  if (filesOfAnyGarden(opener).some((one) => one.file === file && one.text === text)) return true;
  const day = /^notes\/(\d{4}-\d\d-\d\d)/u.exec(file)?.[1];
  return day !== undefined && file === firstNote(day) && text === noteText(day);
}

function gardenText({ name, place: { position }, timeZone, units, language }: NewGarden): string {
  const place =
    position === undefined
      ? "# place: { latitude: , longitude: }   # never published; for sun, light and seasons"
      : `place: { latitude: ${position.latitude}, longitude: ${position.longitude} }   # never published; for sun, light and seasons`;
  return `---
plotreel: 1
name: ${JSON.stringify(name)}
${place}
time zone: ${timeZone}
units: ${units}
language: ${language}
# last frost: 20 April      # the usual last frost of spring; leave it out if you have none
# first frost: 5 November   # the usual first frost of autumn
# kit: [camera, spare battery, microphone]   # what to pack on a filming day
---
`;
}

/** The example stands in a comment, which is not read: nothing that nobody did gets onto the record. */
function noteText(today: string): string {
  return `---
date: ${today}
---

- began to keep a record of this garden

<!--
Write a line above for each thing you did or saw, in your own words, and name the bed. For example:

- sowed 24 leeks in the cold frame
- 6 Sungold tomatoes planted in the long bed, from a swap
- slugs on the lettuces in the long bed
- promised: show the leeks again in July

A new day is a new file in this folder, with the day in its name. This comment is not read: take it away when you like.
-->
`;
}

function readmeText(open: string): string {
  return `YOUR GARDEN'S RECORDS

To open them: double-click "${open}" in this folder. Everything stays on this computer.

What is yours, and cannot be made again:
  garden.md     the garden's name, units and place
  words.md      what things are called only in your garden, if you write it
  notes/        what happened, a file for each day you write
  photos/       your photos, by bed and spot
  beds/  varieties/  episodes/  gear/  sites/  trials/  weather/
                whatever you add of these

What Plotreel makes, and makes again when it is asked:
  out/          pages, briefs and lists; may be thrown away at any time

To keep it safe: copy this whole folder to another disk now and then. It is made of plain files, so any backup program and
any folder that is kept in step will do. To go back, copy it back. There is no account, and nothing else to save.

This folder tells where your garden lies, and holds what you keep private. For viewers there is only the folder out/public,
which Plotreel makes without any of that: never put this folder on the web.
`;
}
