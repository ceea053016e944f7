/** Flowers grown anew each year, by family. Families and who stands for years: from memory of standard floras. */
import { grown } from "./grown.ts";

export const annualFlowers = grown(
  "flower",
  `
Asteraceae:
sunflower, sunflowers, helianthus, maximilian sunflower
zinnia, zinnias, zinia, zinnea
cosmos, =, cosmea, chocolate cosmos
calendula, calendulas, pot marigold, English marigold, calendulars, callendula
marigold, marigolds, tagetes, French marigold, African marigold, Aztec marigold, marrigold, tagets, genda, signet marigold, Mexican marigold
cornflower, cornflowers, bachelor’s button, centaurea cyanus
China aster, China asters, callistephus
strawflower, strawflowers, helichrysum, xerochrysum, bracteantha, helichrysum bracteatum
ageratum, =, flossflower, floss flower
tithonia, tithonias, Mexican sunflower
coreopsis, =, tickseed
bidens, =
osteospermum, osteospermums, African daisy, Cape daisy
Namaqualand daisy, Namaqualand daisies, dimorphotheca
gazania, gazanias
arctotis, =
brachyscome, =, Swan River daisy
gerbera, gerberas
cineraria, cinerarias
craspedia, =, billy buttons
safflower, safflowers
rhodanthe, =, acroclinium, paper daisy, everlasting daisy
xeranthemum, =
bellis, =, English daisy, bedding daisy
felicia, felicias
ptilotus, =
Fabaceae:
sweet pea, sweet peas, sweetpea, lathyrus odoratus
Brassicaceae:
stock, stocks, matthiola, night-scented stock, Virginia stock
wallflower, wallflowers, erysimum, cheiranthus
honesty, =, lunaria, silver dollar plant
sweet alyssum, =, alyssum
candytuft, =, iberis
sweet rocket, =, hesperis, dame’s rocket
ornamental kale, =, ornamental cabbage
Plantaginaceae:
snapdragon, snapdragons, antirrhinum, antirrinum
foxglove, foxgloves, digitalis
linaria, linarias, toadflax
angelonia, angelonias
bacopa, bacopas
Ranunculaceae:
larkspur, =, consolida
nigella, =, love-in-a-mist, devil in the bush, black cumin
ranunculus, =, ranunculuses, Persian buttercup, ranunculi, ranunc
anemone, anemones, windflower, anenome
Papaveraceae:
poppy, poppies, Iceland poppy, California poppy, Shirley poppy, opium poppy, corn poppy, field poppy, bread seed poppy, breadseed poppy, eschscholzia, papaver, Icelandic poppy, Flanders poppy
Caryophyllaceae:
sweet William, sweet Williams, dianthus barbatus
gypsophila, =, baby’s breath
corncockle, corncockles
saponaria vaccaria, =, cow cockle
viscaria, =
Apiaceae:
ammi, =, bishop’s flower, false Queen Anne’s lace, ammi majus, ammi visnaga, false bishop’s weed, visnaga, bishop’s weed
orlaya, =, white lace flower
Queen Anne’s lace, =, wild carrot
bupleurum, =
cow parsley, =
didiscus, =, blue lace flower
Amaranthaceae:
celosia, celosias, cockscomb, woolflower
gomphrena, gomphrenas, globe amaranth
bassia, =, kochia
Plumbaginaceae:
statice, =, limonium, sea lavender
Tropaeolaceae:
nasturtium, nasturtiums, nasturtian, nastursium, tropaeolum, nasturshum
Onagraceae:
clarkia, clarkias, godetia
evening primrose, evening primroses, oenothera
Boraginaceae:
forget-me-not, forget-me-nots, myosotis
cerinthe, =, honeywort
nemophila, nemophilas, baby blue eyes
echium, echiums, viper’s bugloss
heliotrope, heliotropes
cynoglossum, =, Chinese forget-me-not
Lamiaceae:
bells of Ireland, =, moluccella
coleus, =
Polemoniaceae:
phlox, =, annual phlox, border phlox, creeping phlox, moss phlox, garden phlox, phlox drummondii
cobaea, =, cup and saucer vine
gilia, gilias
Verbenaceae:
verbena, verbenas, vervain, verbena bonariensis, rose verbena
Violaceae:
viola, violas, pansy, pansies, heartsease, Johnny-jump-up, sweet violet, dog violet, wild violet
Malvaceae:
hollyhock, hollyhocks
lavatera, lavateras, mallow, tree mallow, musk mallow, malva, malope
cotton plant, cotton plants
Iridaceae:
freesia, freesias
Geraniaceae:
pelargonium, pelargoniums, scented geranium, zonal geranium, ivy-leaved geranium, scented pelargonium
Scrophulariaceae:
nemesia, nemesias
diascia, diascias
Phrymaceae:
mimulus, =, monkey flower
Cleomaceae:
cleome, cleomes, spider flower
Solanaceae:
petunia, petunias
nicotiana, nicotianas, tobacco plant, flowering tobacco
schizanthus, =, poor man’s orchid
salpiglossis, =
calibrachoa, calibrachoas, million bells
datura, daturas
Gentianaceae:
lisianthus, =, eustoma
Campanulaceae:
Canterbury bells, =
lobelia, lobelias
trachelium, =
Balsaminaceae:
impatiens, =, busy Lizzie
balsam, balsams
Begoniaceae:
begonia, begonias
Acanthaceae:
thunbergia, thunbergias, black-eyed Susan vine
Portulacaceae:
moss rose, moss roses, portulaca
Aizoaceae:
Livingstone daisy, Livingstone daisies, mesembryanthemum, vygie, ice plant
Resedaceae:
mignonette, =
Apocynaceae:
annual vinca, =, catharanthus, Madagascar periwinkle, sadabahar
tweedia, =
Convolvulaceae:
morning glory, morning glories, ipomoea
moonflower, moonflowers
convolvulus, =
Spanish flag, =, mina lobata
sweet potato vine, sweet potato vines
Euphorbiaceae:
castor bean, castor beans, ricinus, castor oil plant
Caprifoliaceae:
teasel, teasels
Goodeniaceae:
scaevola, =, fan flower
Nyctaginaceae:
mirabilis, =, four-o’clock, marvel of Peru
Rubiaceae:
pentas, =
Poaceae:
bunny tails, =, lagurus, bunny tail grass
quaking grass, =, briza
`,
);
