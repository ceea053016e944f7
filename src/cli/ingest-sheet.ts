/** Which sheet of a spreadsheet is brought in, and what is said where it cannot be. */
import { openWorkbook, type SheetRead, type WhyNot, type Workbook } from "../past/index.ts";
import { didYouMean } from "../records/index.ts";
import { CommandError, EXIT } from "./command-error.ts";
import type { Effects } from "./effects.ts";

export interface SheetOptions {
  /** A sheet by its name. */
  readonly sheet?: string | undefined;
  readonly json?: boolean | undefined;
}

export async function sheetOf(
  bytes: Uint8Array,
  name: string,
  options: SheetOptions,
  effects: Effects,
): Promise<SheetRead & { readonly sheet: string }> {
  const workbook = openWorkbook(bytes);
  if (typeof workbook === "string") throw new CommandError(cannotBeRead(name, workbook), EXIT.couldNot);
  const sheet = await chosenSheet(workbook, name, options, effects);
  const read = await workbook.read(sheet);
  if (typeof read === "string") throw new CommandError(cannotBeRead(name, read), EXIT.couldNot);
  return { ...read, sheet };
}

async function chosenSheet(
  { sheets }: Workbook,
  name: string,
  { sheet, json }: SheetOptions,
  effects: Effects,
): Promise<string> {
  const filled = sheets.filter(({ rows }) => rows > 0);
  const all = filled.map((one) => `"${one.name}" (${one.rows} ${one.rows === 1 ? "row" : "rows"})`).join(", ");
  if (sheet !== undefined) {
    const plain = (text: string) => text.trim().toLowerCase();
    const found = filled.find((one) => one.name === sheet) ?? filled.find((one) => plain(one.name) === plain(sheet));
    if (found !== undefined) return found.name;
    const near = didYouMean(
      sheet,
      filled.map((one) => one.name),
    );
    throw new CommandError(
      `No sheet of ${name} that holds rows is called "${sheet}". ${near ?? (all === "" ? "" : `There are: ${all}.`)}`.trim(),
    );
  }
  const [first, second] = filled;
  if (first === undefined) throw new CommandError(`No sheet of ${name} holds any row.`, EXIT.problemsFound);
  if (second === undefined) return first.name;
  const letters = "123456789abcdefghijklmnopqrstuvwxyz";
  if (effects.canAsk && json !== true && filled.length <= letters.length) {
    const answer = await effects.askKey(
      "Which sheet?",
      filled.map((one, index) => ({ key: letters[index] ?? "", means: `${one.name} (${one.rows} rows)` })),
    );
    const chosen = filled[letters.indexOf(answer ?? "-")];
    if (chosen !== undefined) return chosen.name;
  }
  throw new CommandError(
    `${name} has ${filled.length} sheets with rows: ${all}. Say which, one at a time: --sheet "${first.name}".`,
  );
}

function cannotBeRead(name: string, why: WhyNot): string {
  const asCsv = 'choose "Save as" or "Export", and save the sheet with your list as CSV; then bring that file in.';
  switch (why) {
    case "too large":
      return `${name} is too large to be read here: more than 60 MB, or more than two million cells. Open it, ${asCsv}`;
    case "locked":
      return `${name} is locked by a password, or of an older kind than its name says. Open it, save it without a password as XLSX, and bring that in; or ${asCsv}`;
    case "damaged":
      return `${name} cannot be taken apart: it is damaged, or no spreadsheet. If a program still opens it, ${asCsv}`;
  }
}
