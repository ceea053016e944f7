/** A small file in the garden's folder that opens the garden by a double click, for the system it was made on. */
import type { FirstFile } from "./first-files.ts";

export interface Opener {
  readonly platform: NodeJS.Platform;
  /** This Node and this program, absolute: for when no "plotreel" is found by its name. */
  readonly node: string;
  readonly program: string;
}

export function openerFile({ platform, node, program }: Opener): FirstFile & { readonly runs: true } {
  if (platform === "win32") return { file: "open-garden.cmd", text: windowsText(node, program), runs: true };
  // A Mac runs a file of this ending by a double click; other systems ask, or run it from its menu.
  return {
    file: platform === "darwin" ? "open-garden.command" : "open-garden.sh",
    text: shellText(node, program),
    runs: true,
  };
}

function shellText(node: string, program: string): string {
  return `#!/bin/sh
# Opens this garden in the browser. Close this window, or press Ctrl-C in it, to end.
cd "$(dirname "$0")" || exit 1
if command -v plotreel >/dev/null 2>&1; then
  exec plotreel watch --open
fi
exec ${shellQuoted(node)} ${shellQuoted(program)} watch --open
`;
}

function shellQuoted(text: string): string {
  return `'${text.replaceAll("'", "'\\''")}'`;
}

function windowsText(node: string, program: string): string {
  return [
    "@echo off",
    "rem Opens this garden in the browser. Close this window, or press Ctrl-C in it, to end.",
    'cd /d "%~dp0"',
    "where plotreel >nul 2>nul",
    "if errorlevel 1 goto own",
    "call plotreel watch --open",
    "goto end",
    ":own",
    `"${windowsQuoted(node)}" "${windowsQuoted(program)}" watch --open`,
    ":end",
    "pause",
    "",
  ].join("\r\n");
}

function windowsQuoted(text: string): string {
  return text.replaceAll("%", "%%");
}
