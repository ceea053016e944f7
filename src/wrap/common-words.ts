/**
 * The words people say most, most said first: the head of SUBTLEXus (Brysbaert and New, Behavior Research Methods
 * 41:977-990, 2009), less what has no place here. A run of nothing but these is seldom a name that was heard wrong.
 */
export const commonWords: ReadonlySet<string> = new Set(
  (
    "come well yes oh okay ok let lets hello thanks thank hey hi bye maybe whats youre were im its ive ill thats you i the to a it that and of in me is we this he on for my your have do be know was not can are all with just get here but " +
    "there so they right like out go she up about if him got at now one her want think good see did who as his will going from " +
    "when back time look take an man them would been some tell or us had were say could something really down then little way our " +
    "make too never by over more need mean very off sorry give has love said am people please sure any thing only because two " +
    "should doing much sir help anything these even night call talk nothing into first find wait put great thought day work life " +
    "before better again still home guy those than around other away new last uh ever stop keep told must things big after long " +
    "does always their everything nice name money guys feel believe old place fine kind lot years made leave girl hear father " +
    "through every bad remember three boy coming wrong might stay house may baby another wanted enough talking happened show " +
    "course being care done getting mind left ask car understand mother which try came own world guess next else trying someone " +
    "real room morning hold woman yourself today looking friend move same job tonight went son best saw found pretty ready heard " +
    "whole seen together minute men head matter knew many idea without play family meet most run while wife once live somebody " +
    "everybody used use myself took yet start called kid tomorrow happy school problem watch bring actually business says hope " +
    "open already since looks sit cause alone hard wants stuff turn days friends until few kids honey gone both door later saying " +
    "such having face worry ago five second brother case thinking probably beautiful hand check year forget hit lost minutes late " +
    "phone end easy doctor under part deal soon four anyone pay happen true each supposed eat mine working town afraid drink " +
    "exactly whatever hurt knows heart gave young everyone chance read makes number taking change anyway week married point hands " +
    "police word fun wish bit game party set cut comes anybody stand water boys trouble dear couple gets making eyes break story " +
    "far times close means funny goes lady asked walk fire hours rest person inside waiting different girls least important also " +
    "line yours office dinner quite against fight side six half pick question ahead cool women body high husband reason almost " +
    "dog buy truth met telling hot anymore behind started speak bed moment tried shall along either though front sister send " +
    "welcome sometimes trust free book answer between children war fact brought clear bet its white glad daughter outside city " +
    "feeling black seems full till sick light shoot news lose wonderful months save hour country needs able perfect shouldn " +
    "running child died order living sounds alive food gentlemen luck hair drive promise music power sort special serious street " +
    "red dance hang touch team playing company pull plan sweet ten coffee lucky sound safe date leaving parents himself seem " +
    "lives air taken picture ladies sent fast happens catch ride win top scared dream sign meeting sense beat control drop cold " +
    "weeks darling figure king poor throw asking write cannot suppose small human piece boss hospital past calling known follow " +
    "movie straight weren words clean looked feet evening million lie felt moving certainly step learn fall questions finally " +
    "takes class quiet wonder law become worked rather possible unless mad absolutely tired road eye except somewhere explain " +
    "less none loved giving seeing secret wear worth act careful quick handle pass early report state busy turned table wake " +
    "works broke ball seven mouth marry meant fault lunch expect future paper officer hotel buddy thinks talked blue mistake ones " +
    "wedding clothes weird changed court floor watching building earth others longer forgot finish ship club attention eight " +
    "worse pain blow choice birthday stick relax yesterday honor smart boat plane month lovely given train fair worried needed " +
    "sitting security cover across bag terrible caught song spend horse ring sell return personal message system afternoon hasn " +
    "happening tough quit count box missed present kept charge information fool simple middle calm surprise forever decided dark " +
    "anywhere miles swear land missing cute lying master dress strong key fix interesting wearing strange voice rock window bar " +
    "totally interested appreciate army paid short record bought card certain college fly evidence bank completely ran test " +
    "history finished born proud fish join lead smell near apartment enjoy letter situation trip store amazing star accident " +
    "imagine pleasure ought list rich calls service entire difference judge ice lawyer fat instead age station realize gold seat " +
    "liked hundred summer dollars standing mess radio hungry problems marriage brain soul forgive deep figured likes girlfriend " +
    "folks slow private during beer definitely stopped partner walking area dangerous offer scene third upset bus owe shoes " +
    "driving group kick joke fell truck teach ground green loves cash forward honest boyfriend park single position respect " +
    "broken wrote public grab fighting art favor upstairs wall force seconds push prove normal protect machine field spent feels " +
    "speaking named jump starting saved nose hide sun church peace share moved picked"
  ).split(" "),
);

/** Words that no name begins or ends with by itself: a window that needs none of them goes without. */
export const smallWords: ReadonlySet<string> = new Set(
  (
    "a an the this that these those it its i im ive you your we my our he she they them of in on at to for from by with and or but so if " +
    "as is are was be been do did have has had not no yes up out off over there here now then just all some any one what who um uh ill id ive im youll youve dont cant didnt isnt thats theres theyre shes hes well lets"
  ).split(" "),
);
