/**
 * A crop that stands before its varieties: "leeks: 24 Musselburgh", "broad beans, Aquadulce", "2.5 kg potatoes - Charlotte",
 * "6 tomatoes (3 Sungold, 3 Gardener's Delight)". The varieties take its place, so that nothing is counted twice.
 */
import { isCapital } from "./line-words.ts";
import { allCapitals, type NamedPlant, plantIn, takePlant } from "./plant-names.ts";
import type { PlantItem, Scan } from "./plant-scan.ts";
import type { Amount } from "./quantities.ts";

/** What the plant just found takes over from the crop before it. */
export interface Taking {
  readonly plant: NamedPlant;
  readonly amount: Amount | undefined;
}

/** Takes the crop named just before out of the items when this plant is its variety. */
export function takeCropHead(scan: Scan, plant: NamedPlant, amount: Amount | undefined): Taking {
  const item = scan.read.items.at(-1);
  if (isHeading(scan, plant, item)) {
    scan.read.items.pop();
    scan.headCrop = item?.crop;
    const crop = plant.title === undefined ? plant.crop : (plant.crop ?? item?.crop);
    return { plant: { ...plant, crop }, amount };
  }
  if (item?.crop === undefined || item.variety !== undefined || !isOfCrop(scan, plant, item.crop)) {
    countOff(scan, plant, amount);
    const crop = plant.title === undefined ? plant.crop : (plant.crop ?? scan.head?.crop ?? scan.headCrop);
    return { plant: { ...plant, crop }, amount };
  }
  const mark = scan.line.lower(Math.min(scan.at, plant.from) - 1);
  const named: NamedPlant = plant.title === undefined ? plant : { ...plant, crop: item.crop };
  const had = item.amount;
  if (had === undefined && /^[,:(–—-]$/.test(mark)) {
    scan.read.items.pop();
    return { plant: named, amount };
  }
  if (
    had !== undefined &&
    amount === undefined &&
    (/^[:(–—-]$/.test(mark) || (mark === "," && endsList(scan, plant.end)))
  ) {
    scan.read.items.pop();
    return { plant: named, amount: had };
  }
  if (had !== undefined && amount !== undefined && /^[:(]$/.test(mark)) {
    scan.read.items.pop();
    scan.head = { ...item, amount: had };
    countOff(scan, named, amount);
    return { plant: named, amount };
  }
  const crop = plant.title === undefined ? plant.crop : (plant.crop ?? scan.headCrop);
  return { plant: { ...plant, crop }, amount };
}

/** "beans: Scarlet Runner (10), Top Crop (20)": a crop without a number and with a colon behind it only heads the list. */
function isHeading(scan: Scan, plant: NamedPlant, item: PlantItem | undefined): boolean {
  return (
    item?.crop !== undefined && item.amount === undefined && scan.line.lower(Math.min(scan.at, plant.from) - 1) === ":"
  );
}

/** What the varieties leave of the crop's own number stays the crop's: of "6 tomatoes: 4 Sungold" two. */
export function leaveRest(scan: Scan): void {
  const { head } = scan;
  if (head?.amount?.count !== undefined && head.amount.count.value > 0) scan.read.items.push(head);
}

/**
 * "the leeks in North Bed (24 of them, Musselburgh)", "20 sweet potato slips (Beauregard)": a name in brackets behind the
 * only crop of a line is its variety.
 */
export function takeBracketed({ line, read, kind }: Scan): void {
  const [item, second] = read.items;
  if (item?.crop === undefined || item.at === undefined || second !== undefined) return;
  const open = line.words.findIndex((word, at) => at > (item.at ?? 0) && word.text === "(");
  const close = line.words.findIndex((word, at) => at > open && word.text === ")");
  if (open < 0 || close < 0 || close >= line.end) return;
  for (let from = open + 1; from < close; ) {
    const comma = line.words.findIndex((word, at) => at >= from && at < close && /^[,;]$/.test(word.text));
    const end = comma < 0 ? close : comma;
    const plant = allCapitals(line.words.slice(from, end)) ? plantIn(line, from, end, kind, true) : undefined;
    if (plant !== undefined && plant.from === from && plant.end === end && ofCrop(line, plant, item.crop)) {
      Object.assign(item, { crop: undefined, ...takePlant(line, { ...plant, crop: item.crop }) });
      line.claim(from, end);
      return;
    }
    from = end + 1;
  }
}

function ofCrop(line: Scan["line"], plant: NamedPlant, crop: string): boolean {
  if (plant.variety !== undefined) return line.names.cropOf(plant.variety) === crop;
  return plant.title !== undefined && (plant.crop ?? crop) === crop;
}

function countOff(scan: Scan, plant: NamedPlant, amount: Amount | undefined): void {
  const { head } = scan;
  if (head?.crop === undefined || head.amount?.count === undefined || amount?.count === undefined) return;
  const crop = plant.variety === undefined ? plant.crop : scan.line.names.cropOf(plant.variety);
  if (crop !== undefined && crop !== head.crop) return;
  const value = head.amount.count.value - amount.count.value;
  scan.head = { ...head, amount: { ...head.amount, count: { value, approx: head.amount.count.approx } } };
}

function isOfCrop({ line }: Scan, plant: NamedPlant, crop: PlantItem["crop"]): boolean {
  if (plant.variety !== undefined) return line.names.cropOf(plant.variety) === crop;
  const first = line.words[plant.from];
  return (
    plant.title !== undefined &&
    (plant.crop ?? crop) === crop &&
    first !== undefined &&
    (isCapital(first) || first.kind === "mark")
  );
}

function endsList({ line }: Scan, end: number): boolean {
  return end >= line.end || /^(?:[,.;)]|in|from|at|on)$/.test(line.lower(end));
}
