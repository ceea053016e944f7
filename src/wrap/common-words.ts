/**
 * The words people say most, most said first: the head of SUBTLEXus (Brysbaert and New, Behavior Research Methods
 * 41:977-990, 2009), less what has no place here. A run of nothing but these is seldom a name that was heard wrong.
 */
export const commonWords: ReadonlySet<string> = new Set(
  (
    "you i the to a it that and of in me is we this he on for my your have do be know was not can are all with just " +
    "get here but there so they right like out go she up about if him got at now one her want think good see did who " +
    "as his will going from when back time look take an man them would been some tell or us had were say could " +
    "something really down then little way our make too never by over more need mean very off sorry give has love " +
    "said am people please sure any thing only because two should doing much sir help anything these even night call " +
    "talk nothing into first find wait put great thought day work life before better again still home guy those than " +
    "around other away new last uh ever stop keep told must things big after long does always their everything nice " +
    "name money guys feel believe old place fine kind lot years made leave girl hear father through every bad " +
    "remember three boy coming wrong might stay house may baby another wanted enough talking happened show course " +
    "being care done getting mind left ask car understand mother which try came own world guess next else trying " +
    "someone real room morning hold woman yourself today looking friend move same job tonight went son best saw found " +
    "pretty ready heard whole seen together minute men head matter knew many idea without play family meet most run " +
    "while wife once live somebody everybody used use myself took yet start called kid tomorrow happy school problem " +
    "watch bring actually business says hope open already since looks sit cause alone hard wants stuff turn days " +
    "friends until few kids honey gone both door later saying such having face worry ago five second brother case " +
    "thinking probably beautiful hand check year forget hit lost minutes crazy late phone end easy doctor under part " +
    "deal soon four anyone pay happen true each supposed eat mine working town afraid drink exactly whatever hurt " +
    "knows heart gave young everyone chance read makes number taking change anyway week married point hands police " +
    "word fun wish bit game party set cut comes sleep anybody stand water boys trouble dear couple gets making eyes " +
    "break story far times close means funny goes lady asked walk fire hours rest person inside waiting different " +
    "girls least important also line yours office dinner quite against fight side six half pick question ahead cool " +
    "women body high husband reason almost dog buy truth met telling hot anymore behind started speak bed moment " +
    "tried shall stupid along either though front sister send welcome sometimes trust free book answer between " +
    "children war fact brought clear bet its white glad daughter outside city feeling black seems full till sick " +
    "light shoot news lose wonderful months save hour country needs able perfect shouldn running child died order " +
    "living sounds alive food gentlemen luck hair drive promise sex music power sort special serious street red dance " +
    "hang touch"
  ).split(" "),
);

/** Words that no name begins or ends with by itself: a window that needs none of them goes without. */
export const smallWords: ReadonlySet<string> = new Set(
  (
    "a an the this that these those it its i im ive you your we my our he she they them of in on at to for from by with and or but so if " +
    "as is are was be been do did have has had not no yes up out off over there here now then just all some any one what who um uh ill id ive im youll youve dont cant didnt isnt thats theres theyre shes hes well lets"
  ).split(" "),
);
