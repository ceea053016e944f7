/** Figures of crops as they were published, written down apart from the almanac's own table. */

const cells = (text: string): readonly (readonly string[])[] =>
  text
    .trim()
    .split("\n")
    .map((line) => line.split("|").map((cell) => cell.trim()));

/**
 * Average crop of 100 ft of row: Marr, Vegetable Garden Planting Guide, MF315, Kansas State University (read). Pounds where no
 * unit stands; "10 dozen" ears are written out.
 */
export const averageCrops: ReadonlyMap<string, string> = new Map(
  cells(`
asparagus       | 30 lb
french-bean     | 120 lb
lima-bean       | 25 lb
beetroot        | 150 lb
broccoli        | 100 lb
brussels-sprout | 75 lb
cabbage         | 150 lb
chinese-cabbage | 80 head
carrot          | 100 lb
cauliflower     | 100 lb
celeriac        | 60 lb
celery          | 180 stem
chard           | 75 lb
collard         | 100 lb
kale            | 100 lb
sweetcorn       | 120 ear
cucumber        | 120 lb
aubergine       | 100 lb
melon           | 100 fruit
okra            | 100 lb
onion           | 100 lb
parsnip         | 100 lb
pea             | 20 lb
cowpea          | 40 lb
pepper          | 60 lb
potato          | 100 lb
sweet-potato    | 100 lb
pumpkin         | 100 lb
radish          | 100 bunch
spinach         | 40-50 lb
summer-squash   | 150 lb
squash          | 100 lb
tomato          | 100 lb
turnip          | 50-100 lb
watermelon      | 40 fruit
`).map(([crop = "", amount = ""]) => [crop, amount] as const),
);

/**
 * Inches between plants of a row, and between rows: Planting Chart for the Home Vegetable Garden, University of Maine
 * Cooperative Extension (read); crops that it sows in hills left out.
 */
export const maineDistances = cells(`
asparagus | 18    | 36-48
french-bean | 2-4 | 24
beetroot  | 2-3   | 12-18
broccoli  | 24-30 | 24-36
cabbage   | 12-18 | 24-36
carrot    | 2-3   | 12-18
sweetcorn | 6-8   | 24-36
aubergine | 18    | 24-36
onion     | 1-3   | 12-18
parsnip   | 2-4   | 18-24
pea       | 1-2   | 18-36
pepper    | 18    | 18-24
potato    | 8-12  | 30-36
spinach   | 3-4   | 12-18
tomato    | 18-36 | 24-48
turnip    | 1     | 12-18
`);

/**
 * Days, inches in the row, inches between rows, hardiness, pH: typical of K-State MF315, Clemson HGIC 1256, Texas A&M E-502 and
 * VCE 426-331, from memory, put together before the almanac's table was.
 */
export const typicalRows = cells(`
asparagus       |         | 12-18 | 36-60  | H  | 6.5-7.5
french-bean     | 50-60   | 2-4   | 18-36  | T  | 6-7
lima-bean       | 65-78   | 3-6   | 24-36  | VT | 6-7
beetroot        | 50-70   | 2-4   | 12-24  | HH | 6-7.5
broccoli        | 55-80   | 12-18 | 24-36  | H  | 6-7
brussels-sprout | 90-110  | 18-24 | 30-36  | H  | 6-7
cabbage         | 60-90   | 12-18 | 24-36  | H  | 6-7.5
chinese-cabbage | 55-75   | 10-12 | 18-30  | HH | 6-7.5
carrot          | 60-80   | 1-3   | 12-24  | HH | 5.5-7
cauliflower     | 55-80   | 18    | 24-36  | HH | 6-7
celery          | 90-120  | 6-8   | 24-36  | HH | 6-7
chard           | 50-60   | 6-8   | 18-24  | HH | 6-7.5
collard         | 55-75   | 12-18 | 24-36  | H  | 6-7.5
kale            | 55-75   | 12-18 | 24-36  | H  | 6-7.5
sweetcorn       | 65-95   | 8-12  | 30-36  | T  | 6-7
cucumber        | 50-70   | 12    | 48-72  | VT | 6-7
aubergine       | 65-80   | 18-24 | 30-36  | VT | 5.5-6.8
garlic          | 240-270 | 4-6   | 12-18  | H  | 6-7
lettuce         | 40-50   | 4-8   | 12-18  | HH | 6-7
melon           | 75-100  | 24-36 | 60-72  | VT | 6-7
okra            | 50-65   | 12-18 | 36     | VT | 6-7.5
onion           | 90-120  | 3-4   | 12-18  | H  | 6-7
parsnip         | 100-130 | 3     | 18-24  | H  | 5.5-7
pea             | 55-70   | 1-3   | 12-24  | H  | 6-7.5
cowpea          | 60-90   | 3-6   | 24-36  | VT | 5.5-7
pepper          | 60-80   | 18-24 | 24-36  | VT | 5.5-7
potato          | 80-120  | 10-12 | 30-36  | HH | 5-6.5
pumpkin         | 100-120 | 36-60 | 72-120 | VT | 5.5-7
radish          | 22-30   | 1-2   | 8-12   | H  | 6-7
spinach         | 40-50   | 2-4   | 12-18  | H  | 6-7.5
summer-squash   | 45-60   | 24-36 | 36-60  | VT | 6-7
squash          | 85-110  | 36-48 | 72-96  | VT | 6-7
sweet-potato    | 100-130 | 12    | 36     | VT | 5.5-6.5
tomato          | 60-85   | 18-36 | 36-48  | T  | 6-7
turnip          | 40-60   | 2-4   | 12-18  | H  | 6-7
watermelon      | 75-95   | 36-60 | 72-96  | VT | 5.5-6.8
strawberry      |         | 18-24 | 36-48  | H  | 5.5-6.5
blueberry       |         | 48-60 | 96-120 | H  | 4.5-5.5
`);

/** Whole rows for which no published figure was found, from memory: held still, so that none changes unseen. */
export const heldRows = cells(`
runner-bean        | 60-75 S   | 4-6    | 36-48  | 150 lb, memory    | T     | 6-7     | practice
broad-bean         | 90-120 S  | 8-9    | 18-24  | 50 lb, memory     | H     | 6-7.5   | practice
sprouting-broccoli | 220-270 T | 24     | 24-30  | 60 lb, memory     | H     | 6-7     | practice
celeriac           | 110-140 T | 12     | 15-24  | 60 lb, MF315      | HH    | 6-7     | practice
perpetual-spinach  | 50-60 S   | 6-8    | 18-24  | 75 lb, memory     | H     | 6-7.5   | practice
kohlrabi           | 45-60 S   | 4-6    | 12-18  | 75 lb, memory     | HH    | 6-7     | practice
gherkin            | 50-60 S   | 12     | 48-72  | 120 lb, memory    | VT    | 6-7     | practice
fennel             | 80-100 S  | 8-12   | 15-18  | 60 lb, memory     | HH    | 6-7     | practice
leek               | 100-150 T | 6-9    | 12-15  | 150 lb, memory    | H     | 6-7.5   | practice
shallot            | 90-120 T  | 6      | 9-12   | 80 lb, memory     | H     | 6-7     | practice
spring-onion       | 60-70 S   | 1      | 6-9    | 100 bunch, memory | H     | 6-7     | practice
mangetout          | 55-70 S   | 1-3    | 12-24  | 20 lb, memory     | H     | 6-7.5   | practice
sugar-snap         | 55-70 S   | 1-3    | 12-24  | 20 lb, memory     | H     | 6-7.5   | practice
chilli             | 70-90 T   | 15-18  | 24-30  | 40 lb, memory     | VT    | 5.5-7   | practice
rhubarb            |           | 36     | 36-48  | 100 lb, memory    | H     | 5.5-7   | practice
rocket             | 35-45 S   | 4-6    | 10-12  |                   | H     | 6-7     | practice
corn-salad         | 60-80 S   | 3-4    | 6-9    |                   | H     | 6-7     | practice
courgette          | 45-60 S   | 24-36  | 36-60  | 150 lb, memory    | VT    | 6-7     | practice
swede              | 90-120 S  | 6-9    | 15-18  | 150 lb, memory    | H     | 6-7     | practice
raspberry          |           | 18     | 60-72  |                   | H     | 5.6-6.5 | practice
gooseberry         |           | 48-60  | 60-72  |                   | H     | 6-6.8   | practice
blackcurrant       |           | 48-60  | 60-72  |                   | H     | 6-6.8   | practice
redcurrant         |           | 48-60  | 60-72  |                   | H     | 6-6.8   | practice
basil              | 50-70 S   | 8-12   | 12-18  |                   | VT    | 6-7     | practice
parsley            | 70-90 S   | 6-9    | 12-15  |                   | H     | 6-7     | practice
coriander          | 45-60 S   | 4-6    | 10-12  |                   | HH    | 6-7     | practice
dill               | 50-65 S   | 6-9    | 12-15  |                   | HH    | 6-7     | practice
sweet-pea          | 60-90 T   | 8      | 12-24  |                   | H     | 6.5-7.5 | practice
dahlia             | 70-100 T  | 18-24  | 24-30  |                   | T     | 6-7     | practice
cosmos             | 60-90 S   | 12     | 12-18  |                   | HH    | 6-7     | practice
sunflower          | 60-100 S  | 12-18  | 18-24  |                   | HH    | 6-7.5   | practice
zinnia             | 60-80 S   | 9-12   | 12-15  |                   | T     | 6-7     | practice
calendula          | 50-65 S   | 10-12  | 12-15  |                   | H     | 6-7     | practice
cornflower         | 70-90 S   | 8-9    | 9-12   |                   | H     | 6.5-7.5 | practice
nigella            | 65-80 S   | 8-9    | 9-12   |                   | H     | 6-7     | practice
nasturtium         | 50-65 S   | 10-12  | 12     |                   | T     | 6-7     | practice
tulip              |           | 4-6    | 4-6    |                   | H     | 6-7     | practice
`);
