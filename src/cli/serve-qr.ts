/** A QR code for a terminal: half blocks, black on white whatever the terminal's own colours are. */
import { encode } from "uqr";

/** Light modules around the code, as its standard asks for. */
const QUIET = 4;
const BLACK_ON_WHITE = "\u001b[30;107m";
const RESET = "\u001b[0m";

/** Two rows of modules to a line of text. */
export function terminalQr(text: string): readonly string[] {
  const { data, size } = encode(text, { border: QUIET });
  const lines: string[] = [];
  for (let row = 0; row < size; row += 2) {
    let line = "";
    for (let column = 0; column < size; column += 1) {
      const [upper, lower] = [data[row]?.[column] === true, data[row + 1]?.[column] === true];
      line += upper ? (lower ? "█" : "▀") : lower ? "▄" : " ";
    }
    lines.push(`${BLACK_ON_WHITE}${line}${RESET}`);
  }
  return lines;
}
