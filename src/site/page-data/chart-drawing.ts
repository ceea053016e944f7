/** Drawing of charts as SVG text: places in units of a drawing that is as wide as a phone, letters as large as its text. */
import { escapeHtml } from "../escape-html.ts";

export const chartWidth = 380;
export const field = { left: 52, right: 366 } as const;

/** A round step so that about `marks` of them reach `most`, and the top they reach. */
export function scaleTo(most: number, marks = 4): { readonly top: number; readonly step: number } {
  if (!(most > 0)) return { top: 1, step: 1 };
  const rough = most / marks;
  const size = 10 ** Math.floor(Math.log10(rough));
  const step = ([1, 2, 2.5, 5, 10].find((each) => each * size >= rough - 1e-12) ?? 10) * size;
  return { top: Math.ceil(most / step - 1e-9) * step, step };
}

/** Marks from 0 to the top. */
export function marksTo({ top, step }: { readonly top: number; readonly step: number }): readonly number[] {
  return Array.from({ length: Math.round(top / step) + 1 }, (_, index) => index * step);
}

export function svg(height: number, label: string, inside: string): string {
  return `<svg viewBox="0 0 ${chartWidth} ${height}" role="img" aria-label="${escapeHtml(label)}">${inside}</svg>`;
}

export function line(kind: string, x1: number, y1: number, x2: number, y2: number): string {
  return `<line class="${kind}" x1="${short(x1)}" y1="${short(y1)}" x2="${short(x2)}" y2="${short(y2)}"></line>`;
}

export function words(
  x: number,
  y: number,
  text: string,
  anchor: "start" | "middle" | "end" = "start",
  kind = "",
): string {
  const name = kind === "" ? "" : ` class="${kind}"`;
  return `<text${name} x="${short(x)}" y="${short(y)}" text-anchor="${anchor}">${escapeHtml(text)}</text>`;
}

export function box(kind: string, x: number, y: number, width: number, height: number): string {
  return `<rect class="${kind}" x="${short(x)}" y="${short(y)}" width="${short(Math.max(0, width))}" height="${short(Math.max(0, height))}"></rect>`;
}

export function dot(kind: string, x: number, y: number, radius: number): string {
  return `<circle class="${kind}" cx="${short(x)}" cy="${short(y)}" r="${short(radius)}"></circle>`;
}

export function path(kind: string, points: readonly { readonly x: number; readonly y: number }[]): string {
  const d = points.map(({ x, y }, index) => `${index === 0 ? "M" : "L"}${short(x)} ${short(y)}`).join("");
  return `<path class="${kind}" d="${d}"></path>`;
}

/** A tenth of a unit is finer than any screen shows. */
function short(value: number): number {
  return Math.round(value * 10) / 10;
}
