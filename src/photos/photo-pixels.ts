/** The photos of a records folder as pixels to measure, each opened only when it is asked for. */
import { createHash } from "node:crypto";
import path from "node:path";
import sharp from "sharp";
import type { Photo, QuarterTurn } from "../model.ts";
import { readFileAt } from "../records/index.ts";
import { alignmentWidth } from "./align.ts";
import { pixelLimit } from "./copy-recipe.ts";
import { HeicPictures } from "./heic-pictures.ts";
import { imageKind } from "./image-kind.ts";
import { readySharp } from "./make-copies.ts";
import { loadGrey, loadRgb } from "./picture-loader.ts";
import type { GreyImage, RgbImage } from "./raw-image.ts";
import { SourceHashes } from "./source-hashes.ts";

export interface Shape {
  /** Pixels, upright. */
  readonly width: number;
  readonly height: number;
}

/** The photo cannot be opened: publishing its copies says why. */
export class UnopenedPhoto extends Error {}

/** HEIC pictures kept decoded, because one is opened twice in a row and decoding takes a second. */
const keptDecoded = 4;

export class PhotoPixels {
  readonly #recordsDir: string;
  readonly #hashes: SourceHashes;
  readonly #turns: ReadonlyMap<string, QuarterTurn>;
  readonly #heic = new HeicPictures();
  readonly #shapes: Map<string, Promise<Shape | undefined>> = new Map();
  readonly #decoded: Map<string, Promise<Uint8Array>> = new Map();

  private constructor(recordsDir: string, hashes: SourceHashes, turns: ReadonlyMap<string, QuarterTurn>) {
    this.#recordsDir = recordsDir;
    this.#hashes = hashes;
    this.#turns = turns;
  }

  /** `photos` are those that will be asked for. */
  static async open(
    recordsDir: string,
    cacheDir: string,
    photos: readonly Pick<Photo, "path" | "turn">[],
  ): Promise<PhotoPixels> {
    readySharp();
    const turns = new Map(
      photos.flatMap(({ path: photo, turn }) => (turn === undefined ? [] : [[photo, turn] as const])),
    );
    return new PhotoPixels(recordsDir, await SourceHashes.open(cacheDir), turns);
  }

  /** SHA-256 of a photo's bytes, hexadecimal; of a photo that a person turned, of them and the turn. */
  async hash(photo: string): Promise<string> {
    const { hash } = await this.#hashes.of(photo, this.#onDisk(photo));
    const turn = this.#turns.get(photo);
    return turn === undefined ? hash : createHash("sha256").update(`${hash} ${turn}`).digest("hex");
  }

  /** Undefined when the file holds no picture. */
  shape(photo: string): Promise<Shape | undefined> {
    const known = this.#shapes.get(photo);
    if (known) return known;
    const found = sharp(this.#onDisk(photo))
      .metadata()
      .then(({ autoOrient: { width, height } }) =>
        this.#liesOnItsSide(photo) ? { width: height, height: width } : { width, height },
      )
      .catch(() => undefined);
    this.#shapes.set(photo, found);
    return found;
  }

  /** Throws UnopenedPhoto. */
  rgb(photo: string, width: number): Promise<RgbImage> {
    return this.#load(photo, width, loadRgb);
  }

  /** Throws UnopenedPhoto. */
  grey(photo: string, width: number): Promise<GreyImage> {
    return this.#load(photo, width, loadGrey);
  }

  /** Ends the decoder. Hashes are kept for the next run unless only a few photos were looked at. */
  async close({ keepHashes }: { readonly keepHashes: boolean }): Promise<void> {
    await this.#heic.close();
    if (keepHashes) await this.#hashes.save();
  }

  async #load<T>(photo: string, width: number, load: (bytes: Uint8Array, width: number) => Promise<T>): Promise<T> {
    try {
      return await load(await this.#bytes(photo, width), width);
    } catch (error) {
      throw new UnopenedPhoto(photo, { cause: error });
    }
  }

  async #bytes(photo: string, width: number): Promise<Uint8Array> {
    const bytes = readFileAt(this.#onDisk(photo));
    if (imageKind(bytes) !== "heic") return this.#turned(photo, bytes, width);
    const wide = Math.max(width, alignmentWidth);
    const key = `${wide} ${photo}`;
    const decoded =
      this.#decoded.get(key) ?? this.#heic.decode(bytes, wide).then((upright) => this.#turned(photo, upright, wide));
    this.#decoded.delete(key);
    this.#decoded.set(key, decoded);
    const [oldest] = this.#decoded.keys();
    if (this.#decoded.size > keptDecoded && oldest !== undefined) this.#decoded.delete(oldest);
    return decoded;
  }

  #liesOnItsSide(photo: string): boolean {
    return (this.#turns.get(photo) ?? 180) !== 180;
  }

  /** What a person turned is turned before anything is measured in it. */
  async #turned(photo: string, bytes: Uint8Array, width: number): Promise<Uint8Array> {
    const turn = this.#turns.get(photo);
    if (turn === undefined) return bytes;
    return sharp(bytes, { limitInputPixels: pixelLimit })
      .autoOrient()
      .rotate(turn)
      .resize({ width, withoutEnlargement: true })
      .keepIccProfile()
      .png({ compressionLevel: 0 })
      .toBuffer();
  }

  #onDisk(photo: string): string {
    return path.join(this.#recordsDir, ...photo.split("/"));
  }
}
