declare module "heic-decode" {
  export interface HeicImage {
    readonly width: number;
    readonly height: number;
    decode(): Promise<{
      readonly width: number;
      readonly height: number;
      readonly data: Uint8ClampedArray<ArrayBuffer>;
    }>;
  }

  interface HeicDecode {
    all(options: { readonly buffer: Uint8Array }): Promise<readonly HeicImage[] & { dispose(): void }>;
  }

  const decode: HeicDecode;
  export default decode;
}
