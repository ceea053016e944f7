/**
 * A crop that stands before its varieties: "leeks: 24 Musselburgh", "broad beans, Aquadulce", "2.5 kg potatoes - Charlotte",
 * "6 tomatoes (3 Sungold, 3 Gardener's Delight)". The varieties take its place, so that nothing is counted twice.
 */
import { isCapital } from "./line-words.ts";
import type { NamedPlant } from "./plant-names.ts";
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
  if (item?.crop === undefined || item.variety !== undefined || !isOfCrop(scan, plant, item.crop)) {
    countOff(scan, plant, amount);
    const crop = plant.title === undefined ? plant.crop : (plant.crop ?? scan.head?.crop);
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
  return { plant, amount };
}

/** What the varieties leave of the crop's own number stays the crop's: of "6 tomatoes: 4 Sungold" two. */
export function leaveRest(scan: Scan): void {
  const { head } = scan;
  if (head?.amount?.count !== undefined && head.amount.count.value > 0) scan.read.items.push(head);
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
