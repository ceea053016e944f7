/** A number and its unit stay on one line: "58 %" must not leave its sign to begin the next. */

const numberAndUnit = /(\d) (?=(?:%|°|(?:kg|g|lb|oz|cm|mm|m|ml|km|pH|min|s|ft)(?![\p{L}\d])))/gu;

/** Text for HTML, with no-break spaces between numbers and the units that follow them. */
export function unbroken(text: string): string {
  return text.replace(numberAndUnit, "$1\u00a0");
}
