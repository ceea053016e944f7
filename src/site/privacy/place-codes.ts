/**
 * Short codes that name a place on Earth. Geohash: the public-domain scheme of 2008, base 32 over interleaved bits of
 * longitude and latitude. Plus code: the Open Location Code specification, base 20, ten digits with a plus after eight.
 */
import type { Position } from "../../model.ts";

const geohashDigits = "0123456789bcdefghjkmnpqrstuvwxyz";

export function geohash({ latitude, longitude }: Position, length: number): string {
  const ranges = [
    { low: -180, high: 180, value: longitude },
    { low: -90, high: 90, value: latitude },
  ];
  let code = "";
  for (let digit = 0; digit < length; digit++) {
    let bits = 0;
    for (let bit = 0; bit < 5; bit++) {
      const range = ranges[(digit * 5 + bit) % 2] as (typeof ranges)[number];
      const middle = (range.low + range.high) / 2;
      const upper = range.value >= middle;
      if (upper) range.low = middle;
      else range.high = middle;
      bits = bits * 2 + (upper ? 1 : 0);
    }
    code += geohashDigits[bits];
  }
  return code;
}

const plusDigits = "23456789CFGHJMPQRVWX";

export function plusCode({ latitude, longitude }: Position): string {
  // Counted in whole eight-thousandths of a degree: five pairs of digits, each pair twenty times finer.
  let north = Math.floor((Math.min(latitude, 89.9999) + 90) * 8000 + 1e-6);
  let east = Math.floor(((((longitude + 180) % 360) + 360) % 360) * 8000 + 1e-6);
  let code = "";
  for (let pair = 0; pair < 5; pair++) {
    code = `${plusDigits[north % 20]}${plusDigits[east % 20]}${code}`;
    north = Math.floor(north / 20);
    east = Math.floor(east / 20);
  }
  return `${code.slice(0, 8)}+${code.slice(8)}`;
}
