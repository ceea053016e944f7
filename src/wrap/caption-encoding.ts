/** Bytes of a caption file to text. Captions come from many programs, so the encoding is found out and said. */

export type Encoding = "utf-8" | "utf-16le" | "utf-16be" | "windows-1252";

export interface DecodedCaptions {
  readonly text: string;
  readonly encoding: Encoding;
  /** As the file has it, mark and line ends and all: what a corrected copy is made from. */
  readonly original: string;
}

/** A byte-order mark decides; without one, valid UTF-8 is UTF-8, many zero bytes are UTF-16, the rest is Windows-1252. Line ends become "\n". */
export function decodeCaptions(bytes: Uint8Array): DecodedCaptions {
  const encoding = encodingOf(bytes);
  const original = new TextDecoder(encoding, { ignoreBOM: true }).decode(bytes);
  return {
    original,
    text: original
      .replace(/^\uFEFF/, "")
      .replace(/\r\n?/g, "\n")
      .replaceAll("\u0000", "\uFFFD"),
    encoding,
  };
}

function encodingOf(bytes: Uint8Array): Encoding {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return "utf-16le";
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return "utf-16be";
  const head = bytes.subarray(0, 400);
  const zeros = (parity: number) => head.filter((byte, index) => byte === 0 && index % 2 === parity).length;
  if (zeros(1) > head.length / 4) return "utf-16le";
  if (zeros(0) > head.length / 4) return "utf-16be";
  try {
    new TextDecoder("utf-8", { fatal: true }).decode(bytes);
    return "utf-8";
  } catch {
    return "windows-1252";
  }
}
