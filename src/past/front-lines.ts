/** A line of a record's front matter set to another value, every other letter left as it is. */

/** Undefined where it stands in a form that only a person should change. */
export function withFrontLine(text: string, key: string, value: string, below?: string): string | undefined {
  const lines = text.split(/(\r\n|\n|\r)/);
  const isMark = (at: number) => /^---\s*$/.test(lines[at] ?? "");
  const end = lines[1] ?? "\n";
  if (!isMark(0)) return `---${end}${key}: ${value}${end}---${end}${end}${text}`;
  const close = lines.findIndex((_, at) => at > 0 && at % 2 === 0 && isMark(at));
  if (close < 0) return undefined;
  const at = lineOf(lines, close, key);
  const next = [...lines];
  if (at !== undefined) {
    // A value that goes on below its key, or is more than plain text.
    if (/^(?:\s+\S|- )/.test(lines[at + 2] ?? "") || /^[^:]*:\s*[|>&*!]/.test(lines[at] ?? "")) return undefined;
    next[at] = `${key}: ${value}${remarkOf(lines[at] ?? "")}`;
    return next.join("");
  }
  const before = (below === undefined ? undefined : lineOf(lines, close, below)) ?? 0;
  next[before] = `${lines[before]}${end}${key}: ${value}`;
  return next.join("");
}

/** What a person noted behind a value. */
function remarkOf(line: string): string {
  const at = line.search(/\s#/);
  return at < 0 || /^[^:]*:\s*["']/.test(line) ? "" : line.slice(line.slice(0, at).trimEnd().length);
}

/** What stands behind a key; empty where it stands nowhere. */
export function frontValue(text: string, key: string): string {
  const lines = text.split(/(\r\n|\n|\r)/);
  const close = lines.findIndex((line, at) => at > 0 && at % 2 === 0 && /^---\s*$/.test(line));
  const at = lineOf(lines, close, key);
  return at === undefined ? "" : (lines[at] ?? "").slice((lines[at] ?? "").indexOf(":") + 1).trim();
}

function lineOf(lines: readonly string[], close: number, key: string): number | undefined {
  const at = lines.findIndex(
    (line, place) =>
      place > 0 && place < close && place % 2 === 0 && line.startsWith(key) && /^\s*:/.test(line.slice(key.length)),
  );
  return at < 0 ? undefined : at;
}

/** As plain as YAML lets it stand, in a list too. */
export function plainYaml(text: string): string {
  return /^[\p{L}][\p{L}\d '’.-]*$/u.test(text) && !/^(?:true|false|yes|no|null|on|off)$/i.test(text)
    ? text
    : JSON.stringify(text);
}
