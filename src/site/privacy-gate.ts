/**
 * The last look before a public folder is handed over: every byte of every file is read again, by eyes that know nothing
 * of how the pages were made. Whatever it finds stops the hand-over.
 */
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { readdir } from "node:fs/promises";
import path from "node:path";
import { gunzipSync } from "node:zlib";
import type { Garden, Records } from "../model.ts";
import { imageKind, imageMetadataBlocks, isSound, onlyCredit } from "../photos/index.ts";
import { toolVersion } from "../store/index.ts";
import { openGateCache } from "./gate-cache.ts";
import { coordinatesIn } from "./privacy/coordinates.ts";
import { findLoneCoordinate, findPosition, type SecretPosition, secretPositions } from "./privacy/positions.ts";
import { findPrivateName, type PrivateNames, privateNames } from "./privacy/private-names.ts";
import { findPrivatePhrase, type PrivatePhrases, privatePhrases } from "./privacy/private-phrases.ts";
import { shownText, textViews, withoutDrawings } from "./privacy/text-views.ts";

export interface Breach {
  /** Relative to the public folder, with forward slashes. */
  readonly file: string;
  readonly rule: "image metadata" | "sound" | "position" | "private text" | "private name" | "unreadable";
  /** One sentence. */
  readonly what: string;
}

export interface GateOptions {
  /** A picture may carry the credit of a public photo, and nothing else. */
  readonly creditsAllowed?: boolean | undefined;
  /** Where to keep what passed, for the next run; all is looked at without it. */
  readonly gateCache?: string | undefined;
}

interface Secrets {
  readonly positions: readonly SecretPosition[];
  /** The garden does not say where it is, so nobody knows which position would be its own. */
  readonly placeless: boolean;
  readonly phrases: PrivatePhrases;
  readonly names: PrivateNames;
  readonly credits: ReadonlySet<string>;
}

/** Every breach of privacy in a folder, in order of file; none when it may be handed over. */
export async function gatePublicFolder(
  dir: string,
  records: Records & Pick<Garden, "photosTakenAt">,
  { creditsAllowed = false, gateCache }: GateOptions = {},
): Promise<readonly Breach[]> {
  const secrets: Secrets = {
    positions: secretPositions(records),
    placeless: records.settings.position === undefined,
    phrases: privatePhrases(records),
    names: privateNames(records),
    credits: new Set(creditsAllowed ? publicCredits(records) : []),
  };
  const passed =
    gateCache === undefined
      ? undefined
      : await openGateCache(gateCache, sumOfAll(secrets), JSON.stringify(listOf(secrets)));
  const entries = await readdir(dir, { recursive: true, withFileTypes: true });
  const files = entries
    .filter((entry) => !entry.isDirectory())
    .map((entry) => path.relative(dir, path.join(entry.parentPath, entry.name)).split(path.sep).join("/"))
    .sort();
  const breaches: Breach[] = [];
  for (const file of files) {
    const name = findPrivateName(file, secrets.names) ?? phraseInName(file, secrets);
    if (name !== undefined) breaches.push({ file, rule: "private name", what: name });
    try {
      const bytes = readFileSync(path.join(dir, ...file.split("/")));
      if (passed?.has(bytes) === true) continue;
      const found = breachesIn(file, bytes, secrets, 0);
      breaches.push(...found);
      if (found.length === 0) passed?.add(bytes);
    } catch (error) {
      breaches.push({
        file,
        rule: "unreadable",
        what: `It cannot be read, so nobody knows what it gives away: ${String(error)}.`,
      });
    }
  }
  await passed?.save();
  return breaches;
}

/** Stands for the tool and all that is secret. */
function sumOfAll(secrets: Secrets): string {
  return createHash("sha256")
    .update(toolVersion())
    .update(JSON.stringify(listOf(secrets)))
    .digest("base64");
}

function listOf({ positions, placeless, phrases, names, credits }: Secrets): readonly unknown[] {
  return [positions, placeless, [...phrases], [...names.ids], names.photos, [...credits]];
}

function* publicCredits(records: Records): Generator<string> {
  for (const photo of records.photoSidecars.values()) if (!photo.private && photo.credit) yield photo.credit;
}

function phraseInName(file: string, { phrases }: Secrets): string | undefined {
  const phrase = findPrivatePhrase(file, phrases);
  return phrase && `Its name says what ${phrase.file} keeps private.`;
}

/** Boxes within boxes: a picture in a style sheet in a compressed file is as deep as it gets. */
const deepest = 4;

function breachesIn(file: string, bytes: Buffer, secrets: Secrets, depth: number): Breach[] {
  if (depth > deepest)
    return [{ file, rule: "unreadable", what: "It is packed within packed files, deeper than anybody looks." }];
  const blocks = imageMetadataBlocks(bytes);
  if (blocks.length > 0 && onlyCredit(bytes, secrets.credits) === undefined) {
    const kinds = [...new Set(blocks.map(({ kind }) => kind))].join(", ");
    return [{ file, rule: "image metadata", what: `The picture carries ${kinds}.` }];
  }
  // Nothing in it but the coded picture, in which to look for words would only take time.
  if (imageKind(bytes) !== undefined) return [];
  if (isSound(bytes))
    return [{ file, rule: "sound", what: "It is a sound or a film, and nobody can read what is said in it." }];
  if (bytes[0] === 0x1f && bytes[1] === 0x8b) return breachesIn(file, gunzipSync(bytes), secrets, depth + 1);
  const raw = asText(bytes);
  return [
    ...embedded(raw).flatMap((inner) => breachesIn(file, inner, secrets, depth + 1)),
    ...breachesInText(file, raw, secrets),
  ];
}

function breachesInText(file: string, raw: string, { positions, placeless, phrases, names }: Secrets): Breach[] {
  const breaches: Breach[] = [];
  const views = textViews(raw);
  const found =
    positions.length === 0
      ? undefined
      : (first(views.forNumbers, (view) => findPosition(view, positions)) ??
        first(textViews(withoutDrawings(raw)).forNumbers, (view) => findLoneCoordinate(view, positions)));
  if (found) {
    breaches.push({ file, rule: "position", what: `It tells where ${found.of} is: "${found.spelled}".` });
  }
  const looksLike = placeless && /\.html$/.test(file) ? coordinatesIn(shownText(raw)) : undefined;
  if (looksLike !== undefined)
    breaches.push({ file, rule: "position", what: `It holds what looks like a position: "${looksLike}".` });
  const phrase = first(views.forWords, (view) => findPrivatePhrase(view, phrases));
  if (phrase)
    breaches.push({
      file,
      rule: "private text",
      what: `It says what ${phrase.file} keeps private: "${phrase.words.join(" ")}".`,
    });
  const name = first(views.forWords, (view) => findPrivateName(view, names));
  if (name !== undefined) breaches.push({ file, rule: "private name", what: name });
  return breaches;
}

function first<T>(views: readonly string[], find: (view: string) => T | undefined): T | undefined {
  for (const view of views) {
    const found = find(view);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** Files of data addresses: pictures and pages that stand inside a page as base 64. */
function embedded(text: string): Buffer[] {
  return [...text.matchAll(/;base64,([A-Za-z0-9+/_-]{16,}={0,2})/g)].map((found) =>
    Buffer.from(found[1] as string, "base64"),
  );
}

function asText(bytes: Buffer): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder("utf-16le").decode(bytes);
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new TextDecoder("utf-16be").decode(bytes);
  return new TextDecoder().decode(bytes);
}
