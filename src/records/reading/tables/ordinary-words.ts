/**
 * Frequent English words that are never a misspelt crop, trouble or variety, and never a plant by themselves. What the
 * other tables hold is not repeated here. Written by `node scripts/ordinary-words.ts` from SUBTLEX word frequencies.
 */

let set: ReadonlySet<string> | undefined;

/** The words in lower case, without accents and apostrophes; made when first asked for. */
export function ordinaryWords(): ReadonlySet<string> {
  set ??= new Set(words.split(/\s+/));
  return set;
}

const words = `a abandoned ability able aboard about above absolutely accent accept accepted access accident account accused aching
across act acting action actions active activity actor actors actress acts actual actually ad add address admire admit
adult advance advantage adventure advice advise affair affairs afford afraid after afternoon afternoons afterwards again
against age agency agents ago agree agreed agreement ah ahead aid aim aint air airport alarm alcohol alert alien alive
all alley allotments allow allowed almost alone along alongside already also although always am ambulance american among
amongst amount an ancient and angels anger angle angry animal animals anniversary another answer answered answering
answers anxious any anybody anyhow anymore anything anytime anyway anywhere apart apartment apologize apology appeal
appear appearance appears apply appointment appreciate approach approaching appropriate are area arent argue argument
arm armed arms army around arrange arranged arrest arrested arrive arrived art article artist as ashamed aside ask asked
asking asks asleep assault assigned assignment assistant assume assure attached attack attacked attempt attempts attend
attention attitude attorney attracted attractive audience audition august authorities authority available average avoid
awake award aware away awesome awful awfully awkward babe back backache background backup backwards bad badge badly bail
balance ball balls band bang bank banks bar barely bargain barn bars base baseball based basic basically basis
basketball bat bathroom battery battle be beach bear beard beast beat beaten beating beats beautiful beauty became
because become becomes becoming bed bedroom bedtime beef been beer before beg begging begin beginning begins behalf
behave behavior behind being beings believe believed believes belly belong belongs beloved below belt bend beneath
benefit beside besides best bet betrayed better between beyond bid big bigger biggest bike birth birthday bit bite black
blade blah blame blast bleeding bless blessed blonde blood bloody board boat boats bodge bodged bomb bombs bone bones
book books boom booth boots border bored boring born borrow both bother bothering bottom bound bout bow brain brains
brand brass brave bread breakfast breasts breath breathe breathing breezy bride bridge brief bright bring bringing
brings british brought brush bucks bull bullet bullets bum bump bus bush bushy business bust busted busy but butter
button by bye cabin cable cake call called calling calls calm came camp campaign cancel cancer cannot cant capable
capital captured car care cared career careful carefully cares carpet carried carry carrying cars case cases cash casino
cast castle cause caused cave celebrate center cents century ceremony certain certainly chain chair challenge chamber
champ chance chances change changed changes changing channel chapter character charge charged charges charity charm
charming cheap cheat cheated cheating check checking checks cheer cheering cheese chef chest chick chicks childhood chin
chip chips choice choices choose chores chose chosen christmas chuckles church cigar cigarette cigarettes circle
circumstances circus citizen citizens city civil claim claims class classes classic clearly clerk clever client clients
climb clinic clock closet clothes cloud cloudy clown club clue coach coast coat cobbled code coincidence collection
college color com coma combat combination come comedy comes comfort comfortable coming command comment comments
commercial commission commit committed committee common community compact company complain complete completely complex
complicated computer con concentrate concern concerned concert condition conditions confess confession confidence
confirm confirmed confused connected connection conscience consider considered considering construction contact contest
continue continues contract control convention conversation convince convinced cookie cookies cool cop cops copy corner
correct cost costs costume cotton couch could couldnt council counsel count counter counting country counts courage
course court coward cowboy crash crawl crazy cream create created creature creatures credit crew cried crime crimes
criminal criminals crisis critical cross crossed crowd cruel cruise cry crying crystal culture cure curious current
curse custody customer customers cute daily dame damp dance dancer dancing danger dangerous dare dark darkness darling
darn data dated dating day days de dead deaf deal dealer dealing dear death debt december decent decide decided decision
decisions deep deeper deeply defend defendant defense definitely degree degrees delicious delighted deliver delivered
delivery demand demon demons denied deny department depends depressed deputy describe description desert deserve
deserves design designed desire desk desperate despite dessert destiny destroy destroyed destruction detail details
determined developed development device devil diamond diamonds diary didnt diet difference different difficult dime
diner dining direct direction directly director dirt dirty disappear disappointed disappointing disaster discover
discovered discuss discussion disgusting dish dishes dismissed distance district dive divine division divorce divorced
do doctor doctors does doesnt doing doll dollar dollars done dont door doors dope double doubt dough down downstairs
downtown dr drag dragged drama drank draw drawer drawing dreadful dream dreamed dreaming dreams dress dressed dressing
drill drink drinking drinks drive driver drives driving drizzly drove drug drugs drunk dude due dull dumb dump dumped
dunno during dusk duty each earlier earn earned earth ease easier easily easter easy editor education effect effects
effort egg eggs eh eight either electricity elevator eleven else em embarrassed embarrassing emergency emotional
employee employees end ended ending ends enemies enemy energy engaged engagement engine engineer english enjoy enjoyed
enjoying enough enter entered entering entertainment entire entirely entitled entrance entry environment episode equal
equipment escape escaped escort especially estate et even evening evenings event events eventually ever every everything
everywhere evidence evil ex exact exactly exam example excellent except exchange excited excitement exciting exercise
exhausted exist existence exit expect expected expecting expensive experience experiment experimented expert explain
explained explanation explosion expression extra extraordinary extremely eye eyes fabulous face faces facility fact
factory facts faff faffing failure fair fairy faith fake familiar famous fancy fantastic fantasy far farm fascinating
fashion fast faster fat fate fault favor favorite favour favourite fear february federal feel feeling feelings feels
feet fellow fellows felt female fever fiddly field fields fifth fifty fight fighter fighting fights figure figured
figures file files film filmed filming films filthy final finally financial fine finest finger fingerprints fingers
finish finished fire fired firing firm first fish fishing fit fits five flag flesh flew flies flight flip floor flow fly
flying focus follow followed following fond food fool fooling foolish fools foot footage football for force forced
forces foreign forest forget forgetting forgive forgot form former forth fortnight fortune forty forward fought foul
four fourth frame frankly freak freaking free freedom french fresh friday friendly friendship fries frightened frog from
front fuel full fully fun funeral funny furniture further future gain gal gambling game games gang garbage garden
gardening gardens gas gear generation generous genius gentle gentleman gentlemen german get gets getting ghost ghosts
giant gift gifts glass glasses glory go goal gods goes going gold golden golf gone gonna good goodbye goodness goods
gorgeous gosh got gotta gotten government governor grab grabbed grade graduate grand granted grass grateful grave gray
great greater greatest green grim gross ground group guarantee guard guards guess guide guilt guilty guitar gum gun guns
guts gym ha habit had hadnt hair half halfway hall ham hammer handle handled handsome handy happen happened happening
happens happier happiness happy hard harder hardly harm has hasnt hat hatch hate hated hates have havent having he
headache headed heading headquarters health healthy hear heard hearing heaven heavens heavy heck held helicopter hello
help helped helpful helps her here heres hero heroes hers hes hey hi hid hidden hide hiding high higher highest highly
highway hill hills him hip hire hired his history hit hits hitting hockey hold holding holds hole holes holiday home
homes homework homicide hon honest honestly honey honeymoon honor honour hood hooked hope hoped hopeless hopes hoping
horn horrible horrid horse horses hospital host hostage hot hotel hour hours house houses how however hows hug huge huh
human humans humid humor hundred hundreds hungry hunt hunting hurt hurting hurts hut i id idea ideas identify identity
idiot idiots if ignore ill illegal im image imagination imagine immediately impatient important impossible impressed
impression impressive improvised in inch inches incident including incredibly indeed individual industry influence
inform information informed innit innocent insane inside insist instance instead instructions insult insurance
intelligence intelligent intend intended interest interested interesting interests international interrupt interview
into introduce introduced invented investigation invisible invite invited involved irish is island isnt issue issues it
item its itself ive jacket jail january jealous jerk jet job jobs join joined joining joint joke jokes joking journey
judge judgment jump jumped jumping jungle junk jury just justice keep keeping keeps kept key keys kick kicked kicking
kidding kidnapped kidnapping kind kinda kinds kingdom kiss kissed kissing kit knackered knee kneeling knees knew knife
knock knocked knocking know knowing knowledge known knows la lab labor lack ladies lady lake lamp land landed landing
language lap large last late lately later latest laugh laughing laughs laughter launch law lawn laws lawyer lawyers lazy
lead leader leading leads league learn learned learning least leather leaving led left leg legal legs lend less lesson
lessons let lets letter letters letting liar library license lie lied lies life lifetime light lights like liked likely
likes limit link lion lips liquor list listen listened listening literally little live lived liver lives living ln
loaded loan lobby local location lock locked locker log lonely long longer look looked looking looks loose loud lousy
love loved lovely lover loves loving low lower loyal loyalty ls luck lucky lunch lunchtime machine machines mad madam
made magazine magic magnificent maid mail main maintain make makes makeup making male mall man manage managed management
manager manner manners many map march market marriage married marry marrying marvelous mask master match matches
material math matter matters may maybe mayor me mean meaning means meant meantime meanwhile meat medal media medical
medication medicine meet meeting member members memories memory men mental mention mentioned merely message messages
messed messing messy met metal method midday middle midnight midweek might mightnt mighty mild mile miles military
million millions mind minds mine minister minor minute minutes miracle mirror miss missed missile missing mistake
mistaken mistakes mistress misty mix mixed mob model modern moment moments mon monday money monitor monster month months
mood moon moral more morning mornings moron most mostly motel motion motive motor mountain mountains mouth movement
movie movies mr mrs much mud muggy muscle museum musical must mustnt my myself mysterious mystery nail name named names
nap nation natural naturally nature near nearly neat necessary neck need needed needle neednt needs negative
neighborhood neighbourhood neither nerve nervous network never new news next nice night nightmare nights nine no noble
noise none nonsense noon nor normal normally nose not note notes nothing november now nowhere nuclear number numbers
nurse nurses nut nuts o object obvious obviously occasion occurred ocean october odd odds of off offense offer offered
offering office officer officers official officially often oh oil ok okay old older on once one ones only onto opera
operate operating operation operations operator opinion opportunity opposite option options or ordinary organization
original other others otherwise ought our ours ourselves out outfit outside outta over overnight owe own owned owner
owns oxygen package packed packing page pages paid pain painful paint painted painting pair palm panic pants paper
papers paradise pardon park parking part particular particularly parties parts party pass passed passengers passes
passing passion past patch patience patient patients patrol pattern pay paying pays pen penis penny people per percent
perfect perfectly perform performance perfume period permanent permission permit person personal personality personally
personnel pet phase phone phones photo photos physical piano picnic picture pictures pie piece pieces pig pigs pill
pillow pills pilot pin pipe pit pitch pity pizza place placed places plain plan plane planes planet planned planning
plans plastic play played player players playing plays pleasant please pleased pleasure plot pocket pockets poem poetry
point pointless points poison poker police policeman policy polite political politics pool poor popular port position
positive possession possibility possible possibly post potential pottering pound pounds pour powder power powerful
powers practically practice pray prayer precisely prefer pregnant prepare prepared presence present presents press
pressure pretend pretending pretty prevent price pride priest prime princess principal print prints prison prisoner
prisoners privacy private prize pro probably problem problems procedure proceed process producer product production
professional profile program progress project prom promise promised promising proof properly property propose protection
proud prove provide psychiatrist psychic public pulse punch punishment punk pure purple purpose purse push pushed
pushing put puts putting quality quarter quarters queen question questions quick quickly quiet quietly quit quite race
racing radio railroad raise raised ran ranch range rap rare rate rather reach reached reaction read reading ready real
realise reality realize realized really rear reason reasonable reasons recall receive received recent recently reckon
recognize recommend recording red refuse refused regret regular rehearsal related relationship relationships relax
release released relief religion religious remain remains remarkable remember remembered remind reminds remote rent
repeat report reported reporter reporting reports represent reputation request rescue research resist respect respond
response responsibility responsible rest restaurant result results retired return returned returning revenge review
revolution reward rid ride ridiculous riding rifle right rights ring ringing rings rip ripped rise risk river road
robbed robbery robot rock rocks role roll rolling romance romantic roof room rooms rough round route routine rub rubber
rude ruin ruined rule rules run running runs rush sacred sacrifice sad safe safety said sail sailor sake sakes sale
sales salt same sample sandwich sat satellite satisfied saturday sauce say saying says scary scene schedule school
schools science scientist score scout scratch scream screaming screams screen screw screwed script scruffy sea seal
search searching season seat seats sec secret secretary secrets section secure security seek seem seemed seems self
selfish send sending sends senior sense sensitive sent sentence separate september series serious seriously servant
serve served service services session settle settled seven shadow shadows shake shaking shall shame shape shark sharp
shattered shave she sheet sheets shelter shes shift shine ship ships shirt shock shocked shoe shoes shoot shooting shop
shopping short shot shots should shoulder shoulders shouldnt shout shouting shove show showed shower showing shown shows
shy side sides sighs sight sign signal signature signed signs silence silent silly silver similar simple simply sin
since sing singer singing single sir sire sit site sitting situation six sixty size skills skin skinny skip skull sky
slap slave sleep sleeping slept slide slip slipped slow slowly small smaller smart smashing smell smells smile smiling
smoking smooth snake sneak so soccer social society socks soda soft solid solution solve someday somehow someplace
something sometime sometimes somewhere song songs soon sooner sore sorry sort sorta soul souls sound sounded sounds soup
source space spare speak speaking speaks special species specific speech speed spell spend spending spent spin spirit
spirits spit splendid spoil spoke spoken sport sports spring spy squad square squeeze stable staff stage stairs stand
standard standing stands star staring stars starving state statement station stations status stay stayed staying stays
steady steak steal stealing steam steel stepped sticking still stink stinks stocky stole stomach stood stories story
straight strange stranger strangers street streets strength stress stretch strip stroke strong stronger struck stuck
studio study studying stuff stupid sturdy style subject success successful such suck sucker sucks sudden suddenly sugar
suggest suggestion suit suitcase suite suits summer sun super superior supper supplies supply suppose supposed sure
surely surface surgeon surgery surprise surprised surrender surrounded surveillance suspect suspects suspicious swallow
swear sweat sweater sweet sweetie swim swimming switch sword system systems table tables tag tail take taken takes
taking tale talent talk talked talking talks tall tape tapes target task tasks tattoo taught tax taxi teach teaching
team teams tear tears teatime technically technology teeth television tell telling tells temper temperature temple
temporary ten tend tennis tent term terms terrible terribly terrific territory testify testimony th than thanks that
thats the theater theatre thee their them theme themselves then theory therapy there therefore theres these they theyd
theyll theyre theyve thick thief thing things think thinking thinks third thirsty thirty this those thou though thought
thoughts thousand thousands threat threatened threatening three threw throat through throw throwing thrown thumb thunder
thursday thus thy ticket tickets tiger tight time times timing tiny tip tire tired title to toast today todays toe toes
together toilet told tomorrow tone tongue tonight too took tooth torture toss total totally touch touched touching tour
toward towards towel tower town toy toys trace track tracking tracks tradition traffic tragedy tragic trail transfer
transferred trash trauma travel traveling treasure treatment tree trees trial trick tricks tries trigger trip troops
trouble troubles truck true truly trunk trust trusted truth try trying tube tuesday tune twenty twice twist two type
typical ugly uh um unbelievable uncomfortable unconscious under undercover underground underneath understand
understanding understood underwear unfortunate uniform union unit units universe unknown unless until unusual up upon
upper upset upstairs urgent us use used useful useless uses using usual usually vacation valuable value vampire vault
vehicle version very vice victim victims victory video view village violence violent virgin vision visit visiting visual
voice voices vote wagon wait waited waiter waiting waitress wake walk walked walking walks wallet wanna want wanted
wanting wants war ward warm warn warned warning warrant was wasnt waste wasted wasting watch watched watching way ways
we weapon weapons wear wearing wears weather wed wedding wednesday week weekday weekend weekends weeks weight weird
welcome well went were werent weve what whatever whats wheel wheels when whenever where wheres wherever whether which
while whilst whip whiskey whistle white who whoever whole whom whos whose why wicked wide widow wild willing win window
windows wine wing wings winner winning wins winter wipe wise wish wishes witch with within without witness witnesses
wives woke wolf woman women won wonder wondered wonderful wondering wont wood woods word words wore work worked working
works world worried worry worrying worse worst worth would wouldnt wound wounded wounds wow wreck write writer writing
written wrong wrote ya yard yards ye yeah year years yell yelling yellow yes yesterday yesterdays yet you youd youll
young younger your youre yours yourself yourselves youth youve zero zone zoo`;
