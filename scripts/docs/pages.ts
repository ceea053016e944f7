/** The generated pages of docs/ by file name. A test fails when one of them is stale. */
import { cautionsPage } from "./cautions-page.ts";
import { commandsPage } from "./commands-page.ts";
import { cropsPage } from "./crops-page.ts";
import { handbookPage, withWays } from "./handbook.ts";
import { lookPage } from "./look-page.ts";
import { messagesPage } from "./messages-page.ts";
import { notesPage } from "./notes-page.ts";
import { planningPage } from "./planning-page.ts";
import { recordSchemas } from "./record-schemas.ts";
import { recordsPage } from "./records-page.ts";
import { seasonsPage } from "./seasons-page.ts";
import { wrapPage } from "./wrap-page.ts";

const printed: Readonly<Record<string, () => string | Promise<string>>> = {
  "cautions.md": cautionsPage,
  "commands.md": commandsPage,
  "crops.md": cropsPage,
  "look.md": lookPage,
  "messages.md": messagesPage,
  "notes.md": notesPage,
  "planning.md": planningPage,
  "README.md": handbookPage,
  "records.md": recordsPage,
  "seasons.md": seasonsPage,
  "wrap.md": wrapPage,
  ...Object.fromEntries(Object.entries(recordSchemas).map(([name, schema]) => [`schemas/${name}`, schema])),
};

export const generatedPages: Readonly<Record<string, () => Promise<string>>> = Object.fromEntries(
  Object.entries(printed).map(([file, page]) => [file, async () => withWays(file, await page())]),
);
