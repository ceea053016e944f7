/** The words beside a photo with one more key among them, as a person would write it: every other letter stays. */
import { clipEnding, photoEnding } from "./file-names.ts";
import { readFrontMatter } from "./front-matter.ts";

export type SidecarKey = "varieties" | "bed" | "caption";

/** Where a person would write of a photo of which nothing is written yet. */
export function sidecarFile(photo: string): string {
  return `${photo.replace(photoEnding, "").replace(clipEnding, "")}.md`;
}

/** `text` is undefined where nothing is written yet. */
export function withSidecarKey(
  text: string | undefined,
  key: SidecarKey,
  value: string,
): { readonly text: string } | { readonly refused: string } {
  const line = `${key}: ${written(key, value)}`;
  if (text === undefined) return { text: `---\n${line}\n---\n` };
  const mark = text.startsWith("\ufeff") ? "\ufeff" : "";
  const own = text.slice(mark.length);
  const before = readFrontMatter(own);
  if (before.problems.length > 0)
    return { refused: "What stands there between the hyphens cannot be read. Mend it first." };
  if (Object.hasOwn(before.data, key)) return { refused: `It says "${key}:" already. Change it there.` };
  const end = own.includes("\r\n") ? "\r\n" : "\n";
  const close = before.bodyAt === 0 ? undefined : /\r?\n---[^\r\n]*(?:\r?\n)?$/.exec(own.slice(0, before.bodyAt));
  const changed =
    close === undefined || close === null
      ? ["---", line, "---", "", own].join(end)
      : `${own.slice(0, close.index)}${end}${line}${own.slice(close.index)}`;
  // Front matter in another of YAML's styles takes no line like this.
  const after = readFrontMatter(changed.replaceAll("\r\n", "\n"));
  const { [key]: added, ...rest } = after.data;
  const was = readFrontMatter(own.replaceAll("\r\n", "\n"));
  const isKept = after.problems.length === 0 && JSON.stringify(rest) === JSON.stringify(was.data);
  if (!isKept || added === undefined)
    return { refused: "It is written in a way that takes no other line. Write the name there yourself." };
  return { text: mark + changed };
}

/** In quotes only where plain text would be read as something else; a comma parts two varieties. */
function written(key: SidecarKey, value: string): string {
  const isPlain = /^\p{L}[\p{L}\p{N} '’.-]*$/u.test(value) && !/^(?:true|false|null|yes|no|on|off)$/i.test(value);
  if (isPlain) return value;
  return key === "varieties" && value.includes(",") ? `[${JSON.stringify(value)}]` : JSON.stringify(value);
}
