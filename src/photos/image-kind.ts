/** What kind of picture some bytes are, whatever the file is called. */

export type ImageKind = "jpeg" | "png" | "webp" | "avif" | "heic" | "gif" | "tiff";

const heicBrands = new Set(["heic", "heix", "heim", "heis", "hevc", "hevx", "hevm", "hevs", "mif1", "msf1"]);

/**
 * Reads the signature at the head of a file; undefined when it is none of a picture Plotreel knows. The brands of the
 * ISO base media kinds: ISO/IEC 23008-12 (HEIF) and the AV1 Image File Format specification; "mif1" and "msf1" alone
 * leave the coding open, so the compatible brands decide.
 */
export function imageKind(head: Uint8Array): ImageKind | undefined {
  if (head[0] === 0xff && head[1] === 0xd8 && head[2] === 0xff) return "jpeg";
  if (startsWith(head, 0, "\x89PNG\r\n\x1a\n")) return "png";
  if (startsWith(head, 0, "RIFF") && startsWith(head, 8, "WEBP")) return "webp";
  if (startsWith(head, 0, "GIF87a") || startsWith(head, 0, "GIF89a")) return "gif";
  if (startsWith(head, 0, "II*\0") || startsWith(head, 0, "MM\0*")) return "tiff";
  if (startsWith(head, 4, "ftyp")) return mediaKind(head);
  return undefined;
}

function mediaKind(head: Uint8Array): ImageKind | undefined {
  const view = new DataView(head.buffer, head.byteOffset, head.byteLength);
  const end = Math.min(head.length, view.getUint32(0), 256);
  const brands: string[] = [];
  for (let at = 8; at + 4 <= end; at += 4) {
    if (at !== 12) brands.push(text(head, at, 4));
  }
  if (brands.some((brand) => brand === "avif" || brand === "avis")) return "avif";
  return brands.some((brand) => heicBrands.has(brand)) ? "heic" : undefined;
}

export function startsWith(bytes: Uint8Array, at: number, signature: string): boolean {
  if (bytes.length < at + signature.length) return false;
  for (let i = 0; i < signature.length; i++) {
    if (bytes[at + i] !== signature.charCodeAt(i)) return false;
  }
  return true;
}

/** Bytes as Latin-1 text. */
export function text(bytes: Uint8Array, at: number, length: number): string {
  return String.fromCharCode(...bytes.subarray(at, at + length));
}
