/**
 * Days that stand in a picture outside its EXIF: XMP (ISO 16684-1), IPTC's Date Created (IIM 4.2, 2:55 and 2:60), and the texts
 * of a PNG (W3C PNG third edition, 11.3.3: "Creation Time"). Read only where EXIF tells nothing.
 */
import { inflateSync } from "node:zlib";
import { xmpDate } from "./dates-beside.ts";
import { type ImageKind, startsWith, text } from "./image-kind.ts";
import { imageParts } from "./metadata-blocks.ts";

/** ISO 8601 as XMP writes it, or what looks like it; undefined when nothing tells. */
export function otherDate(bytes: Uint8Array, kind: ImageKind): string | undefined {
  for (const part of imageParts(bytes, kind)) {
    const content = () => bytes.subarray(part.start, Math.min(part.end, bytes.length));
    const found =
      part.kind === "XMP"
        ? xmpDate(new TextDecoder().decode(xmpIn(content())))
        : part.kind === "IPTC"
          ? iptcDate(content())
          : part.kind === "comment" && kind === "png"
            ? pngDate(content())
            : undefined;
    if (found !== undefined) return found;
  }
  return undefined;
}

function iptcDate(block: Uint8Array): string | undefined {
  const value = (dataSet: number) => {
    for (let at = block.indexOf(0x1c); at >= 0; at = block.indexOf(0x1c, at + 1))
      if (block[at + 1] === 2 && block[at + 2] === dataSet)
        return text(block, at + 5, ((block[at + 3] as number) << 8) | (block[at + 4] as number));
    return undefined;
  };
  const day = /^(\d{4})(\d\d)(\d\d)$/.exec(value(55) ?? "");
  if (!day) return undefined;
  const time = /^(\d\d)(\d\d)(\d\d)([+-]\d{4})?$/.exec(value(60) ?? "");
  const written = `${day[1]}-${day[2]}-${day[3]}`;
  return time ? `${written}T${time[1]}:${time[2]}:${time[3]}${time[4] ?? ""}` : written;
}

/** Texts longer than this hold no date; it also bounds what is unpacked. */
const longestText = 100_000;

/** Keyword, then plain text (tEXt), packed text (zTXt) or either in UTF-8 (iTXt). The type stands before the block's start. */
function pngText(block: Uint8Array): { readonly keyword: string; readonly value: string } | undefined {
  const end = block.indexOf(0);
  if (end < 1 || end > 79) return undefined;
  const keyword = text(block, 0, end);
  const type = text(new Uint8Array(block.buffer, block.byteOffset - 4, 4), 0, 4);
  let value = block.subarray(end + 1);
  let isPacked = type === "zTXt";
  if (type === "zTXt") value = value.subarray(1);
  if (type === "iTXt") {
    isPacked = value[0] === 1;
    const language = value.indexOf(0, 2);
    const translated = language < 0 ? -1 : value.indexOf(0, language + 1);
    if (translated < 0) return undefined;
    value = value.subarray(translated + 1);
  }
  try {
    const plain = isPacked ? inflateSync(value, { maxOutputLength: longestText }) : value.subarray(0, longestText);
    return { keyword, value: new TextDecoder().decode(plain) };
  } catch {
    return undefined;
  }
}

/** An iTXt chunk may pack its XMP; elsewhere it stands as it is. */
function xmpIn(block: Uint8Array): Uint8Array {
  if (!startsWith(block, 0, "XML:com.adobe.xmp\0")) return block;
  return new TextEncoder().encode(pngText(block)?.value ?? "");
}

const months = "jan feb mar apr may jun jul aug sep oct nov dec".split(" ");

function pngDate(block: Uint8Array): string | undefined {
  const { keyword, value } = pngText(block) ?? {};
  // Programs without a place for IPTC in PNG write it as a name, a length and hexadecimal digits, a line each or more.
  if (/^raw profile type (?:iptc|8bim)$/i.test(keyword ?? ""))
    return iptcDate(Buffer.from((value ?? "").trim().split("\n").slice(2).join(""), "hex"));
  if (value === undefined || !/^(?:creation time|exif:datetimeoriginal|datetimeoriginal)$/i.test(keyword ?? ""))
    return undefined;
  // RFC 1123, as the PNG standard suggests: "Sat, 16 May 2026 10:00:00 +0100".
  const [, day, month, year, time, zone] =
    /(\d{1,2}) ([a-z]{3})[a-z]* (\d{4})(?:[ ,]+(\d\d:\d\d:\d\d))?(?:\s*(GMT|UTC|[+-]\d{4}))?/i.exec(value) ?? [];
  if (day === undefined || month === undefined) return value.trim();
  const number = String(months.indexOf(month.toLowerCase()) + 1).padStart(2, "0");
  const written = `${year}-${number}-${day.padStart(2, "0")}`;
  return time === undefined ? written : `${written}T${time}${zone?.replace(/GMT|UTC/i, "Z") ?? ""}`;
}
