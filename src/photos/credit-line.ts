/**
 * The one piece of metadata that a published copy may carry, when asked: who is to be credited. Written as XMP, since EXIF
 * text is ASCII and would misspell names: property photoshop:Credit, "Credit Line" of the IPTC Photo Metadata Standard.
 */
import { imageMetadataBlocks } from "./metadata-blocks.ts";

export function creditXmp(credit: string): string {
  const escaped = credit.replace(/[&<>"]/g, (mark) => `&#${mark.charCodeAt(0)};`);
  return `<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description rdf:about="" xmlns:photoshop="http://ns.adobe.com/photoshop/1.0/" photoshop:Credit="${escaped}"/></rdf:RDF></x:xmpmeta>`;
}

/** Which of the credits a picture carries, to the byte as it is written here and with no other metadata; else undefined. */
export function onlyCredit(bytes: Uint8Array, credits: Iterable<string>): string | undefined {
  const [block, ...others] = imageMetadataBlocks(bytes);
  if (block?.kind !== "XMP" || others.length > 0) return undefined;
  const content = new TextDecoder()
    .decode(bytes.subarray(block.start, block.end))
    .replace(/^http:\/\/ns\.adobe\.com\/xap\/1\.0\/\0/, "");
  for (const credit of credits) if (content === creditXmp(credit)) return credit;
  return undefined;
}
