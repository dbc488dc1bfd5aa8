/**
 * Everyday English words: what part of speech they are, and which nouns name no thing to measure. Words of the trade
 * stand in `trade-nouns.ts` and win over these. Written by scripts/make-everyday-words.ts; do not edit by hand.
 * Sources: the lexicon of `natural` (MIT, from the Penn Treebank) and Princeton WordNet 3.0 (Copyright 2006 by
 * Princeton University; free to use, copy and change with this notice).
 */
import { wordSet } from '../word-table.ts';

/** Verbs that are no nouns, in their base form. */
export const VERB_BASES = wordSet(`
  abhor abide abolish abound abrogate absent absorb abstain accede accelerate accentuate accept accommodate
  accompany accomplish accrue accumulate accuse achieve acknowledge acquaint acquiesce acquit activate
  actuate adapt add adhere adjourn adjust administer admire admit adopt adore adorn advertise affirm affix
  afford aggravate agitate agree alienate alight align allege alleviate allocate allot allow alter amass
  amaze amble amend amplify amuse analyze annihilate announce annoy antagonize anticipate apologize appear
  appease append applaud apply appoint apportion appraise appreciate apprehend appropriate approve
  arbitrate argue arise arouse arrange arrive arrogate articulate ascend ascertain ascribe ask aspire
  assail assemble assert assess assign assimilate assume assure astound atone attach attain attend attest
  attract augment augur authenticate authorize automate avenge avert avoid await awake awaken bake balk
  banish bare bathe beautify beckon become befall beg beget begin beguile behave behold belie believe
  belong bemoan beseech besiege besmirch bespeak bestow betray better bewail beware bide bilk bleed bless
  blunt bode boo borrow brave breathe brighten bring broaden browbeat budge bury calculate capitalize
  careen caress carve castigate catapult catechize categorize cater cavort cease celebrate centralize
  certify chafe chandelle characterize cheat cherish chew chide choose chug cipher circulate cite clarify
  classify clean cleanse clear cleave clench clinch cling clobber clog clothe coalesce coax coddle coerce
  coexist cohere coincide collaborate collect come commemorate commence commend commiserate commit
  communicate communize compel compensate compete compile complain complete complicate comply compose
  comprehend compress comprise compute conceal concede conceive conciliate conclude concoct concur condemn
  condense condone confer confess confide confine confirm confiscate conform confound confront confuse
  congeal congratulate congregate connect connote conquer conserve consider consign consist console
  consolidate conspire constitute construct construe consult consume contain contaminate contemplate
  contend continue contradict contribute contrive convene converge convey convince cooperate correct
  correlate correspond corroborate corrode corrupt counteract counterchallenge covet cower crave create
  cremate cringe crisscross criticize crochet croon crumble crystallize culminate cultivate curl curtail
  dabble dampen dangle darken darn daunt dazzle deceive decelerate decentralize decertify decide declare
  decompose decorate decry dedicate deduce deduct deem deepen defend defer define defraud defray defy
  degenerate degrade delimit deliver delude delve democratize demolish demonstrate demur demythologize
  denote denounce deny depart depend depict deplore deploy depose depress deprive deride derive descend
  describe deserve despise destroy detach detain detect deter deteriorate determine detest detonate detract
  detribalize devastate develop deviate devise devote devour diagnose dictate differ differentiate diffuse
  dignify digress dilate dilute diminish dine direct disable disabuse disagree disallow disappear
  disappoint disapprove disarm disassemble disband disbelieve discard discern disclose disconnect
  discontinue discourage discover discriminate discuss disengage disentangle dishearten disintegrate
  dislodge dismember dismiss disobey disown dispel dispense disperse displace dispose disprove disqualify
  disrobe disrupt disseminate dissipate dissuade distinguish distort distract distribute disturb diverge
  divert divest divulge dominate donate dramatize drown dry duplicate dwell dwindle earn eat economize edit
  educate effectuate effloresce eject elaborate elapse elect elevate elicit eliminate elongate emancipate
  emasculate embark embarrass embellish embezzle embody embroider emerge emigrate emit emphasize empower
  emulate enable enact encamp enchant encompass encourage encroach endanger endorse endow endure energize
  enforce engage engender engrave engulf enhance enjoin enjoy enlarge enlist enliven enrich enroll ensue
  ensure entail enter entertain entice entitle entrench entrust enunciate envisage envision epitomize
  equate equip eradicate erase erect erode err erupt eschew espouse establish etch eulogize evacuate evade
  evaluate evaporate eventuate evoke evolve exacerbate exact exaggerate exalt examine exasperate exceed
  excel except excite exclaim exclude excoriate execute exemplify exempt exert exist exonerate exorcise
  expand expect expedite expel expend expire explain explode explore expunge extend extenuate exterminate
  extinguish extrapolate extricate exude facilitate falsify falter fascinate fasten fathom fatten faze
  federalize fetch fete flatten flatter flaunt flee flinch flip flirt flit flog flounce flounder flout
  follow forbid foreclose forego foresee forestall forget forgive forgo formulate forsake fortify foster
  foul found fraternize free frequent frighten frown frustrate fulfill fulminate furnish further garner
  gather generalize generate gentle germinate get gild gird glean glide glorify gnash gnaw gore gouge
  govern grapple gratify graze greet grope grovel grow grumble gush guzzle gyrate happen harass harden
  harry hasten heal hear heighten herald hesitate hibernate hinder hobble holler homogenize hover humanize
  humble hurl hypothesize identify idle idolize ignite ignore illuminate illumine illustrate imagine imbibe
  imitate impart impede imperil impinge implement implore imply impose imprison improve improvise impute
  incarnate incise incite include incorporate incubate incur indicate indict induce indulge infect infer
  infest infiltrate inflame inflate inflict inform infuriate ingest inhabit inherit inhibit inject injure
  innovate inquire insist inspect inspire install instigate instruct insulate insure integrate intend
  intensify interact intercede interfere interject interpenetrate interpret interrupt intersect intervene
  intimidate introduce intrude inure invade invalidate inveigh invent invert invest investigate invoke
  involve iodinate irrigate irritate isolate itemize jeopardize jog join jostle justify juxtapose kidnap
  kneel lacerate lampoon languish lay laze lean learn legislate legitimize lend lengthen lessen liberalize
  liberate lick lighten linger liquidate listen lob locate long loose loosen lose lower lunge lurk magnify
  maintain maltreat manage manifest manipulate mar marry materialize matriculate mature maximize meddle
  mediate meditate memorize mend metabolize mew migrate militate mince mingle minimize misinterpret
  misplace misrepresent misunderstand mitigate moan mobilize mock moderate modernize modify moisten molest
  mollify monopolize motivate mourn mow mull multiply munch mutter nab narrow nationalize navigate near
  necessitate negotiate neutralize nominate notify nourish obey obliterate obscure observe obstruct obtain
  occupy occur offend officiate omit operate oppose ordain organize originate ossify oust outclass outdo
  outface outgrow outlive outmaneuver outnumber outrun outstrip outweigh overburden overcome overeat
  overemphasize overestimate overexpose overfeed overfill overhear overheat overlook overpower overproduce
  overreach overshadow overtake overturn overwhelm owe own pacify pamper paralyze pare parry partake
  participate patronize peddle peel penalize penetrate perceive perform perish permeate perpetrate
  perpetuate persecute persevere persist personalize persuade pertain peruse pervade pester pierce piss
  plead please plod polarize ponder populate portend portray possess postpone postulate pounce pour pray
  preach precede preclude predict predominate preempt prefer preoccupy prepare presage prescribe preside
  presume presuppose pretend prevail prevent proceed proclaim procrastinate procure profess proffer
  prohibit prolong promote prompt pronounce propel propose proscribe prosecute prosper protect protrude
  prove provide provoke pry publicize publish pulverize pummel punish purify purport pursue quadruple
  qualify quash quell quench quicken radiate ramble ransack ratify rationalize react readjust ready
  reaffirm realign realize reap reappear rearrange reassemble reassert reassign reassure reawaken rebuild
  rebut recapitulate recede receive recite reckon reclaim recognize recollect recommend reconcile
  reconnoiter reconsider reconstruct recoup recover recreate recur rededicate redeem redefine redirect
  rediscover redistribute redouble reduce reenact reestablish reexamine refer refinance refine reflect
  refuel refurbish refute regain regroup regulate rehabilitate rehearse reimburse reinforce reinstall
  reinstate reinterpret reiterate reject rejoice rejoin relate relax relent relieve relinquish relive rely
  remain remake remarry remember remind remonstrate remove rename rend renew reopen reorder reorganize
  repay repel repent rephrase replace replenish represent repress reprint reproduce repudiate require
  reread reschedule rescind resemble resent resettle reshape reside resign resist restate restock restore
  restrain restrict resurrect retain retaliate retard retire retrace retract retrieve reunite reuse
  reverberate revert revise revitalize revive revolutionize revolve rid riffle ripen roam rob romanticize
  rotate rouse rove ruffle rummage salivate satiate satisfy saturate saute save savor scamper scarify scold
  scour scowl scribble scrounge scrutinize scuff scuttle sear secede seclude secure see seek seem seep
  segregate seize select send sensitize sentimentalize separate serve sever sew sharpen shatter shelve
  shimmy shirk shorten shudder shun sidestep sidle sift signify simmer simplify simulate sing sit skulk
  slacken slow smack smolder smooth smother smuggle snatch sniff snoop snub soak soar sob socialize soften
  solicit solve soothe spare speak specialize specify speculate spend spoil sprout spurn sputter squawk
  squelch squint stabilize stagger stalk standardize startle starve steal sterilize stiffen stifle
  stimulate stipulate stoke straddle strafe straggle straighten stratify strengthen strive subdue subjugate
  submerge submit subscribe subside subsidize subsist substantiate subtract subvert succeed succumb sue
  suffer suffice suffocate suffuse suggest summarize summon sunder sup superimpose superintend supersede
  supervise supplant suppose suppress surmise surmount surpass survive suspend sustain swab symbolize
  sympathize synchronize synthesize tabulate tame tamper tarnish tarry tat teach tell tempt tend terminate
  terrify terrorize testify thank theorize thicken thin thrash threaten thrive tighten tinker tiptoe
  tolerate topple totter trample transact transcend transcribe transform translate transmit traverse tuck
  typify uncover underestimate undergo underlie underline undermine underpin underrate understand
  understate undertake underwrite undo undulate unearth unfold unify unite universalize unleash unload
  unlock unmask unpack unravel unscramble unscrew unsheathe unsolder unteach unthaw untie unveil unwind
  unwire uphold uproot usurp utilize utter vacate validate vanish vanquish vary veer verify vex vibrate
  victimize vie vindicate violate visualize vivify vocalize vomit wade waft waive wallow wander warm warn
  weaken wean weatherstrip wed weigh widen wield winnow wipe withdraw wither withhold withstand woo
  woolgather worsen wreak wrestle wring write zoom
`);

/** Words that are as well nouns as verbs: the place in the sentence tells. */
export const NOUN_OR_VERB = wordSet(`
  abandon abstract abuse accent acclaim accord ache acquire act address advance adventure advise advocate
  affect agglomerate aid aim alarm alert alternate ambush amount anger appeal approach approximate arrest
  assault assist associate attack attempt attribute audit audition avail award backstitch bag bait balance
  ban band bankrupt barbecue bark barricade bat batter battle bear beat bellow bend benefit bid bind bite
  blame blanket blast blaze bleat blend blink bloom blossom blow blunder blur blurt blush bluster boast
  boil bolster bomb boomerang boost bounce boycott brag brand breach break breed bribe brief bristle
  broadcast broil brood brown bruise bubble buck buckle bud buffer buffet bug build bulge bull bulletin
  bullshit bum bump bundle burn burrow burst bust buy buzz bypass call calm camouflage camp campaign cancel
  canvass capture care caricature carry cascade cash cast caucus cause caution challenge champion chant
  charge charm chart chase chat chatter check cheer chill chin choke chop chuckle circle claim clamor clash
  clatter climax climb clock close clot cloud cluster clutch code coin collapse color comb combat combine
  comfort command commission commune commute compare complement compliment compromise con concentrate
  concern condition conduct conflict consent contact content contest contract contrast control converse
  convert convict cook cool coordinate cope copy corral cough counsel count counterattack counterbalance
  court crack crackle crash crawl creak creep cripple croak crop cross crouch crow crowd cruise crunch
  crush cry curb cure curse cushion cut cycle damage damn dance dare dart dawn deal debate debut decay
  decline decrease default defeat delay delegate delight demand dent deposit desert design designate desire
  despair dial die dig digest dip discharge discipline discount discredit disdain disguise dishonor dislike
  dispatch display dispute disregard dissent dissolve distrust dive divide divorce document dodge don doom
  dot double doubt down downgrade drag drape dream dress drift drink droop duck dump dunk dust dwarf ease
  ebb echo eclipse effect embrace employ empty encounter endeavor envy equal escape escort evidence
  exchange excise excuse exercise exhibit exile experience experiment exploit export expose express extract
  factor fade fail faint fake fancy fare farm fashion fault favor fear feast feather feature feint ferry
  field fight file fill filter finance find fine fit fix flag flare flash flicker fling float flock flood
  flop flourish flow flower flurry flush fly focus fold fool force forecast forfeit forward freeze fret
  frolic fry function funnel fuss gain gallop gamble garrison gasp gaze give glance glare glaze gleam
  glisten gloat glow glut gobble grab grace grade graduate grant grasp grimace grin grind grip group grunt
  guarantee guard hack haggle hail halt hamper handicap hang harbor harm harp harvest hate haul haunt have
  hawk hazard heat hedge heed herd hide highlight hike hint hire hit hock honeymoon honor hoot hop hope
  howl huckster hug hum humor hunch hunt hurt hustle impair implant import impress imprint inch increase
  index influence initiate institute insult intercept interconnect interest interview intimate intrigue
  invite issue itch jail jam jerk jet jockey jolt journey judge jump junk keep keynote kill kiss knit knock
  knot know labor lack lament land lapse lash last laugh leap lease leave lecture let levy lie like link
  litter loan lobby lodge loot lull lump lurch lure mail major make mandate maneuver manufacture map mark
  market marshal marvel mash masquerade massacre massage master mastermind match mean measure meet melt
  mention merge merit milk mine miss mistrust misuse model mop move murder murmur muse muster name need
  needle neglect nest net nickname nip nod note notice nudge nurture object oblige occasion offer open
  orbit outlaw outline output outrage overhaul overlay override overthrow pace pack package page pale pall
  palm panic pantomime parade parallel paraphrase parcel pardon park parody pass pat patch patrol pause paw
  pay peak peck peer pen pepper perch pet petition photograph pick picture pile pinch ping pinpoint pioneer
  pit pivot place plague plant pledge plot plow pluck plummet plunder plunge pocket poison poke polish poll
  pool pop pose position pot pound practice praise precipitate present preserve prey pride print prize
  probe process prod produce profit program project protest prowl puff pulse punch purchase purge push put
  putt puzzle pyramid quarrel quickstep quiet quit race rage raid raise rally rank rap rape rattle read
  rear rebel rebound rebuke recall recapture recoil record recount recruit redress reek reel refashion
  refill reform refrain refund refuse regard regiment register regret rehash reign rein release relish
  remark remedy rent repair repeal repeat reply report request requisition rescue research reserve reset
  resolve resort respect respond result resume retail retch rethink retort retreat return revamp revel
  reverse review reward rewrite ride ridicule rinse rip ripple risk rival roar roast rock roll romp roost
  root rot round rub ruin rumble rust rustle sack sacrifice safeguard salute salvage sample sanction sap
  savvy say scan scare scatter schedule school scoff score scorn scramble scrape scratch scream scrub
  scurry search sell service set shadow shape share shave shell shepherd shield shift shine shiver shoot
  shout shove show shred shriek shrink shrug shuffle shut shy sigh sight sign signal silence sin single
  sizzle skirt slam slant slap slash slaughter sleep slice slip slit slop slug slump smash smile smirk
  smoke snag snap snare sneak snort snowball sock solace sound sour sow spade spear spearhead spell spice
  spill spin spiral spit splinter split sponge sponsor sport sprawl spray spread sprinkle spy squat squeal
  squeeze stack staff stake stamp stampede star stare state steer stick still sting stink stir stoop store
  storm strain stray streak stream stress stride strike stroll structure struggle stumble stump stunt
  subcontract subject subordinate subpoena substitute suck sugar suit summate supplement surface surfeit
  surge surrender survey suspect swallow swamp swap swarm sway sweat sweep swell swerve swim swipe swirl
  swivel tackle tag tailor take talk taper taste taunt tax tear tease telegraph telephone telescope term
  test thaw think thrill throng thrust thud thumb thump thunder tick tilt tint titter toast toil toll
  torment torture toss total tour trace trade trail train transfer transplant transport treasure treat
  tremble trespass trick trickle trigger trip triple triumph trot trumpet trundle trust tumble tune tunnel
  turn tutor twitch underscore update upgrade uplift upset urge use usher vacation vacuum value venture
  vest veto visit volunteer vote vow wad wag wage wail wait wake walk wane want warrant wash watch wave
  waver wear weave welcome weld wet whack whimper whine whip whirl whisper whistle wiggle will wilt win
  wink wish witness wobble wonder worry worship wound wrack wrap wreck writhe yank yawn yearn yell yellow
  yield zip
`);

/** Adjectives that are nothing else. */
export const EVERYDAY_ADJECTIVES = wordSet(`
  abashed abbreviated abdominal aberrant abhorrent abject ablaze able abnormal abominable above aboveground
  abrupt absorptive abstractive absurd abundant acceptable accidental accurate acoustical acrobatic actual
  adamant adaptable additional adept adequate adjacent adjectival administrative admirable admissible
  adroit advantageous adventurous adverbial adverse advisable aerobic aerodynamic affectionate afferent
  afire aflame aforesaid afraid aggressive aghast agile agricultural ahead aimless airborne airless airy
  akin alike alive alkaline allocable allowable alone aloof ambiguous ambitious ambivalent amenable amiable
  amicable amiss amoral amorous amorphous ample anaerobic analeptic analogous analytical anastomotic
  anatomic ancestral anemic angelic angry anguished angular anhydrous animate anionic anomalous anomic
  anonymous antagonistic antebellum anterior anthropomorphic antic antithetical antithyroid anxious apart
  apocalyptic apocryphal apologetic apostolic appalling applicable appreciable appreciative approachable
  apt aqueous arable arbitrary arboreal archeological architectural arctic ardent arduous aristocratic
  arrogant arterial arteriolar artistic arty ascertainable ashamed ashen asleep assertive astonishing
  astral astringent astronomical astute asymmetric asymptotic atheistic atheromatous athletic atmospheric
  atomic atrophic attentive attractive attributable atypical audacious audible austere authentic
  authoritarian authoritative automotive autonomic available avowed aware awful awkward awry axial
  axiomatic backward bacterial baffling baggy bald baleful banal barbaric barefoot baronial barren bashful
  basophilic bated bawdy beady beardown beautiful bedfast bedraggled beefy behavioral belated believable
  belligerent beneficial benevolent bespectacled bestial bestubbled bewhiskered biblical bibliographical
  big bigger biggest bilateral bilingual bimolecular biochemical biographical biomedical bipartisan bitter
  bittersweet bizarre bland blasphemous blatant bleary blissful blithe bloodless bloodstained bloodthirsty
  bloody bluish blustery boastful bogus boisterous bold bony bottomless boundless boyish brackish brainy
  brash brassy breathless bright brilliant brisk brittle broad brocaded bronchial bronchiolar bronzed
  brotherly brownish brushy brutal bucolic budgetary bulky buoyant bureaucratic burly bushy businesslike
  busy bygone cadaverous cagey callous calloused calorimetric candid capable capitalistic cardiovascular
  carefree careful careless careworn carnal cassocked casual catastrophic causal causative cautious
  ceaseless celestial centenary ceramic cerebral certain chaotic charitable charming cheerful cheery
  childish childlike chilly chinless chivalrous choosy choreographic chromatographic chunky cinematic
  circumspect civic civil clammy clamorous clandestine clannish classical classificatory classless
  clearheaded clever clinical clonic closer clotted cloudy clumsy coarse coastal coaxial cockeyed cocky
  coexistent cognate coherent cohesive collapsible collegiate colloidal colloquial colorful colorless
  colossal combinable cometary commendable commensurate communal communicational communicative communistic
  comparable compassionate compatible compensatory competent competitive complementary complimentary
  comprehensive compulsive concave conceivable conceptual conciliatory concise conclusive concordant
  concretistic concurrent condemnatory confident confidential confluent congenital congestive
  congratulatory congregational congressional conjugal connective conscientious consecutive consequent
  considerable considerate consistent consonantal conspicuous constitutional constructive consumptive
  contemplative contemptible contemptuous contiguous continental continual continuous contractual
  contributory controversial convenient conventional conversational convex convivial convulsive corinthian
  corporate corporeal corrosive cortical cosmic costly countless countrywide courageous courteous cowardly
  cozy crafty craggy cranky craven crazy creamy creative credible creditable creedal crested critical
  crocked crocketed crooked crotchety crucial cruel crummy cryptic cubist cultural cumbersome cumulative
  curious curly curricular cursory curtained custodial customary cute cylindrical cynical dainty dangerous
  dank dapper dappled dauntless deadly deaf deathly debilitating decadent decent deceptive decisive
  decorative dedifferentiated deductible deductive deep defective defensible defiant deficient definable
  definite definitive deformational delicate delicious delightful democratic demonstrable demure
  denominational dense departmental dependable deplorable deprecatory descriptive desirable desolate
  desperate despicable despondent destructive desultory detachable detectable determinable determinate
  developmental deviant devilish devious devotional devout dextrous diachronic diagonal diagonalizable
  diatomic dietary different differentiable difficult digestible digestive diligent dim dimensional
  diminutive dingy diplomatic directional disastrous discernable discernible discontented discourteous
  discrete discretionary disdainful diseased disembodied disgusting disheveled dishonest disillusioning
  disintegrative disinterested dismal dismaying disobedient disorderly disparate dispassionate
  disproportionate disputable disruptive dissimilar distal distant distinct distinctive distinguishable
  distortable distraught distressing distributive divergent diverse divisive dizzy docile doctrinal
  dogmatic doleful dominant doped dormant doubtful downcast downhill downtrodden downward drab drafty
  dramatic drastic draughty dreamlike dreamy dreary dressy drowsy drugless drunken dual dubious dull dumb
  duplicable durable dusky dusty eager eared earliest early earsplitting earthbound earthshaking earthy
  eastern easy eatable ebullient ecclesiastical economic economical edematous edentulous edgy edifying
  educational efficacious efficient effortless egocentric eighteenth eldest electoral electrical
  electrifying electronic electrostatic elegant elementary eleventh elfin eloquent elusive emblematic
  emergent eminent emotional emphatic emphysematous empirical endearing endless endothelial energetic
  enforceable engrossing enigmatic enjoyable enormous enterprising enthusiastic envious environmental
  enzymatic eosinophilic ephemeral epileptic epistolatory equipotent equitable equivocal ergotropic erotic
  erratic erroneous ersatz erudite esoteric esthetic estranging eternal ethereal ethical ethnic
  etymological eugenic euphoric evaluative evangelical evasive eventual everyday evident evidential
  evolutionary excellent exceptional excessive excitatory excruciating exhaustive exhilarating existential
  exotic expectable expectant expendable expensive experiential experimental explanatory explicit
  exploratory expository expressible expressionistic expressionless expressive expropriated exquisite
  extant extensive external extralegal extramarital extraneous extraterrestrial extravagant exuberant
  fabled fabulous facetious factual fallow false fanciful fantastic far faraway fascist fastidious fatal
  fateful fatty favorable fearful fearless feasible featureless fecund federal feeble feline ferocious
  ferromagnetic fertile fervent festive fetid feudal feverish fewer fibrocalcific fictional fictive
  fiendish fierce fiery fifteenth fiftieth figurative filthy final financial finest finicky flashy flawless
  fleeting fleshy flexible flimsy floral florid fluent fluffy fluorescent foamy focal folksy follicular
  foolhardy foolish foolproof footloose foppish forceful foreign foremost forensic foreseeable forgetful
  forlorn formal formidable forthright fortunate fourfold fourteenth fourth fractional fragile fragmentary
  fragrant frail frantic freehand freelance freewheeling frenzied fresh friable friendly frightful frigid
  frivolous frontal fruitful fruitless full fundamental fungal funny furious furry furtive fusiform fussy
  futile fuzzy gainful gallant galling galvanic gaseous gastrointestinal gauche gaudy gaunt gay generous
  genetic genial gentlemanly genuine geographic geographical geological geometric geometrical germinal
  gerundial ghastly ghostlike ghostly gigantic gingerly girlish glad glamorous glassless glassy gleeful
  global glomerular gloomy glorious glottochronological goddam goddamned godless godlike golden gorgeous
  gory governmental gowned graceful gracious gradual grammatical grandiose granular granulocytic graphic
  graphical grateful gratuitous gravid gravitational grayed greasy great greater greatest greedy gregarious
  grievous grim gritty grizzled groggy grotesque groundless gruesome gruff gubernatorial guileless guilty
  gullible gummy gymnastic habitable habitual hackneyed haggard hairless hairy halfway hallowed handless
  handmade handsome handwritten handy hapless happy hard hardworking hardy harmful harmless harmonic
  harmonious harsh hasty hateful haughty hazel hazy headless headstrong healthful healthy heartening hearty
  heavenly hebephrenic hectic heedless hefty helpful helpless hemispherical hemolytic henpecked heraldic
  herculean hermetic heroic heterogeneous heterozygous hideous higher highest hilar hilarious historic
  historical hitless hoarse homely homemade homesick homicidal homogeneous homozygous hopeless horrid
  horrifying hospitable hot hourly hoydenish huge humane humanistic humiliating humorous hungry husky
  hyaline hydrophilic hydrophobic hydrous hyperbolic hyperemic hyperfine hypoactive hypophyseal
  hypothalamic hypothetical hysterical iced icy identical identifiable idiomatic idiosyncratic idiotic
  idyllic ignorant illegal illegitimate illicit illiterate illusionary illusory illustrative illustrious
  imaginative imitative immaculate immaterial immature immediate imminent immoral immortal impartial
  impassable impassioned impeccable imperfect imperial imperious impersonal impervious impetuous impious
  implacable implicit important impossible impotent impractical imprecise impregnable impressive improbable
  impudent inaccurate inactive inadequate inadvisable inane inanimate inappropriate inaudible incalculable
  incandescent incertain incessant incidental incisive inclusive incoherent incompatible incomplete
  inconceivable inconsequential inconsiderable inconsistent inconvenient incorrect incredible incurable
  indebted indecent indefatigable indefensible indefinable indelible indelicate indescribable indeterminate
  indifferent indignant indirect indiscriminate indistinct indistinguishable individualistic indolent
  indoor indubitable indulgent industrial industrious ineffable ineligible inept inert inescapable
  inevitable inexcusable inexhaustible inexorable inexpensive inexperienced inexplicable inexpressible
  inextricable infamous infantile infectious inferential inferior infernal infertile infirm inflammatory
  inflexible influential informal infrequent ingenious inglorious inherent inhibitory inhospitable inhuman
  inhumane innate inner innocent innumerable inoperable inorganic inquisitive insane inscrutable
  insensitive inseparable insignificant insistent insolent inspirational instantaneous instinctive
  institutional instructional instructive insubstantial insufficient insuperable insurmountable intact
  intelligent intense intentional interchangeable intercontinental interdepartmental interdependent
  interesting interfaith interlobular intermediate interminable intermittent intermolecular internal
  interpersonal interpretable interpretative interstellar interstitial intimal intolerable intractable
  intradepartmental intrapulmonary intricate intrinsic introductory introspective intrusive intuitive
  invaluable invariable inventive investigative inveterate invincible inviolate invisible involuntary
  invulnerable inward ionic irksome ironic ironical irrational irreconcilable irreducible irrelevant
  irremediable irreparable irresistible irresolute irreversible irrevocable irritable isothermal isotonic
  isotopic isotropic jaunty jazzy jealous jeweled jocose jocular jolly jovial joyous jubilant judicial
  juicy jumpy just khaki killable kindly kindred kinesthetic kinetic kittenish knifelike knightly knotty
  knowledgeable kosher labile lacy ladylike landlocked languid lanky large larger largest larval late later
  latest lavish lawless lax lazy leaded leaden least leathered legal legendary legged leggy legislative
  legitimate lengthy less lesser lethal lewd lexical lexicostatistic liable lifeless lifelike lifelong
  lighthearted likely lilac limitless linear linguistic listless literal literate lithe little livable
  lively livid loathsome lobular lofty logical logistic lone lonely longer longstanding lordly loud lousy
  lovely lowly loyal lucid lucky ludicrous lukewarm lumbar luminescent luminous lumpish lunar lunatic lurid
  luscious lush lusty luxurious lyrical macabre machinelike macromolecular mad magical magnetic magnificent
  maimed majestic maladroit malformed malign malposed mammalian mammoth maniacal manic maniclike mantic
  marginal marital marketable maroon martial marvelous massive masterly maternal mathematical mauve maximal
  meager meaningful meaningless measurable meaty mechanical mechanistic medical meditative meek
  megakaryocytic melodic melodious melodramatic memorable mendacious menial mental merciful merciless
  mercurial mere meritorious merry mesenteric messy metabolic metallic metaphysical meteoritic
  meteorological methodical microbial micrometeoritic microscopic microsomal mid midwestern mighty
  migratory mild militant mimetic mindful mindless mineralized minimal ministerial miraculous misbranded
  miscellaneous mischievous miserable misty mitral mobile modal modest moist molal molecular molten
  momentary momentous monastic monaural monkish mononuclear monophonic monotonous monstrous monumental
  moonlit moralistic morose morphemic morphologic morphophonemic motional motionless mountainous mournful
  mousy muddleheaded muddy multidimensional multilateral multitudinous mundane murky muscular mustached
  mutational mutual myocardial mysterious mystical mythic mythological naked nameless nasal nascent nasty
  natal nationalistic nationwide nautical naval nearby nearer nearest nearsighted neat nebulous necessary
  necrotic needless negligent negligible neo neoliberal nerveless nervous nettlesome neurological
  neuromuscular neuronal neuropsychiatric neurotic new newborn newest next nice nighted nightmarish
  nihilistic nilpotent nimble nineteenth ninth noble nociceptive nocturnal nodular noisy non nonchalant
  nonchurchgoing noncommissioned noncompetitive nondescript nonequivalent nonexistent nonfunctional
  nonionic nonlinguistic nonmetallic nonobservant nonpartisan nonpolitical nonproductive nonresident
  nonspecific nonverbal normal northerly northern nostalgic notable noteworthy noticeable notorious nubile
  nuclear numb numbing numerical numerous numinous nutrient nutritional nutritive oaken obdurate obedient
  objectionable obligational oblique oblivious obnoxious obscene obsequious observable observant
  observational obsolescent obtainable obvious occasional occipital occlusive occupational ocular odd
  odious offbeat ohmic oiled oily old older oldest oleophilic oleophobic ominous omniscient oncoming
  onetime only opalescent opaque operatic operational opinionated opportunistic optical optimal optimistic
  opulent oral oratorical orchestral organic organizational oriental ornate ornery orthographic orthopedic
  osseous ostentatious outdoor outer outlying outrageous outright outspoken outstanding outward over
  overactive overbearing overconfident overcurious overprotective overt pacific painful painless
  paleocortical pallid palpable panoramic papal papery papillary paradoxical paramagnetic parametric
  paramount paranoid parasympathetic pardonable parental parliamentary parochial particularistic
  particulate passionate pastoral paternalistic pathetic pathless pathogenic pathologic pathological
  patriarchal patristic payable peaceable peaceful peaky pearly pedagogical pedantic penultimate
  perceptible perceptive perceptual percussive peremptory perennial perfect perfunctory perilous periodic
  peripheral perky permanent perpetual perplexing perspiring persuasive pert pertinent pervasive perverse
  pessimistic petite pharmacological philanthropic philological philosophic philosophical phonemic phonetic
  phonic phonologic phosphorescent photographic physiologic physiological pianistic pictorial piezoelectric
  piteous pithy pitiable pitiful pitiless placid planar planetary platitudinous playable playful pleasant
  plentiful pleural pliant plump pluralistic poetic poignant polar polemical polite political
  polycrystalline polytonal pompous ponderous popular populous porous portentous possessive possible
  posterior posthumous postwar potent powdery powerful powerless practicable practised pragmatic precarious
  precious precise precocious preconceived predictable predictive preferable preferential pregnant
  prehistoric prejudicial preliterate premonitory preparative preparatory prepositional preposterous
  prepubescent prepupal presentable presentational presidential pretrial pretty previous prewar priceless
  prickly primeval primitive printable privileged probable procedural procreative prodigal prodigious
  productive profane proficient profitable profound profuse prolific prominent promotional prone
  propagandistic proper prophetic propitious proportionate prosodic prospective prosperous prostrate
  proteolytic prototypical proud proverbial providential provincial provisional provocative proximal
  proximate prurient pseudo psychiatric psychical psychological psychopathic psychopharmacological
  psychotherapeutic psychotic pubescent puckish pulmonary pungent punishable punitive puny puppyish pure
  purposeful pursuant pyknotic quaint qualitative quantitative quarrelsome queer querulous questionable
  quiescent quilted quixotic racial racy radial radiant radioactive ragged rampant rangy rapid rare
  rarified rasping ratable rational raucous raw readable realistic reasonable rebellious recent receptive
  reciprocal reckless recognizable recoverable recreational rectangular recurrent reddish redheaded
  redundant reflective regal regional regular regulatory relativistic relentless relevant reliable
  reluctant remarkable remedial remorseful remorseless remote remunerative repayable repentant repetitious
  repetitive reprehensible repressive reproducible republican repulsive reputable researchable resentful
  residential resiny resistive resolute resonant resounding respectable respectful respective respiratory
  resplendent responsible restive restless restrictive retaliatory retentive reticulate retinal
  retrogressive reversible rhythmic rhythmical rickety ridiculous righteous rightful rigid rigorous rimless
  riotous ripe risky robust rocklike rocky rosy rotary rotten rough roughhewn roundabout rubbery rudderless
  ruddy rude rudimentary rugged ruinous rural rusted rustic rusty ruthless rutted sacred sad sadistic
  salable salacious salient salivary sallow salty salubrious salutary same sanctified sandy sane
  sanguineous sarcastic sarcolemmal sardonic satiric satirical satisfactory savory scalloped scant scanty
  scarce scarecrowish scathing scenic schematic scholarly schoolgirlish scientific sclerotic scoreless
  scornful scraggly scratchy scrawny screechy scriptural sculptural seafaring seasonal secondary secondhand
  secular sedate sedentary seductive segmental seismic selective selfish semantic semiempirical
  semiliterate semipublic senatorial senile sensational senseless sensory sensual sensuous sentimental
  separable serious serological serviceable servile seventeenth seventh several severe sexual sexy shabby
  shadowy shaggy shaky shameful shapeless shapely sharp shaven shiny shipshape shivery shod shortsighted
  showy shrewd shrewish shrill sick sickish sickly sidelong significant silent silky silvery similar
  simplistic simultaneous sincere sinewy sinful sinister sinuous sinusoidal sixteenth sixth sizable
  skeletal skeptical skillful skinny sleek sleepy slender slightest slippery sloppy slovenly sluggish sly
  small smaller smallest smallish smudged smug snappy snobbish sober socialistic societal socioeconomic
  sociological sodden solemn soluble somatic somber sombre somnolent sonorous sooty sophisticated sordid
  sorrowful sorry soundproof southbound southeastern southern soviet spacious sparse spatial speckled
  spectacular spectral speculative speedy spherical spidery spineless splendid spongy spontaneous sporadic
  spotless sprightly squeaky stagnant stale staminate stark stately statesmanlike statistical statutory
  steady stealthy stellar stentorian stepwise stereophonic sterile sternal sticky stilted stocky stolid
  storied stormy stout straight straightforward strange strategic strenuous strict stringy striped strong
  structural stubborn studious stuffy stunning stupefying stupendous stupid sturdy stylistic suave subgross
  subjective subliterary submissive subsequent subservient substantial subsurface subtle suburban
  successful successive such sudden sufficient suggestive suitable sullen sultry sumptuous sunbaked
  sunburnt sundry sunken sunny sunshiny super superb supercilious superficial superlative supernatant
  supersonic superstitious supplemental supportive sure surly suspicious swart swarthy sweaty sweet
  sweltering swingy symbolic symmetric symmetrical sympathetic symphonic symptomatic synchronous
  synergistic synonymous syntactic syrupy systematic tactile tactual talented talismanic talkative talky
  tall tangential tangible tasteful taut tawdry tawny taxable taxpaying technical technological tedious
  teenage teensy telegraphic temporary tenable tenebrous tensional tensionless tenuous tepid terrestrial
  terrible terrific terse teutonic textured theistic thematic then theological theoretical thermal
  thermodynamic thermometric thirsty thirtieth thorough thoroughgoing thoughtful thoughtless threadbare
  thrifty thrilling through thunderous thyroidal thyrotoxic tight tilled timbered timely timeworn timid
  tiny tipsy tireless tiresome titanic tokenish tolerable tolerant tonal topical topnotch torpid tortuous
  totalistic totalitarian totemic traceable traditional traitorous tranquil transcendent transcendental
  transcultural transitional translucent transmissible transplantable treacherous tremendous triangular
  tribal tricolor trigonal trite triumphant troublesome truculent true trustworthy truthful tubular
  tumultuous tuneful turbulent tuxedoed tweedy twelfth twentieth twofold typical typographic ubiquitous
  ugly ulcerated ultimate ultra ultramodern ultrasonic unabated unable unacceptable unaccompanied
  unaccountable unachievable unadjusted unaffected unafraid unaided unalterable unambiguous unanimous
  unanswered unarmed unasked unassisted unasterisked unattractive unauthentic unauthorized unavailable
  unavailing unavoidable unaware unbearable unbelievable unbidden unbounded unbreakable unbroken uncanny
  uncaused uncertain uncertified unchangeable unchanged uncharged unclaimed unclean unclouded uncombable
  uncomfortable uncommon uncompromising unconcerned unconditional unconditioned unconnected unconquerable
  unconstitutional uncontrollable unconventional unconvincing uncooperative uncousinly uncritical undamaged
  undaunted undeclared undeniable under undercover underdeveloped undereducated underhanded underprivileged
  undersea understandable underway undeveloped undifferentiated undigested undiluted undiminished
  undisguised undisputed undisturbed undrinkable undue uneasy uneconomical unemployed unending unendurable
  unenthusiastic unerring uneven unexpected unexplainable unexplained unexplored unfair unfaithful
  unfamiliar unfavorable unfertile unfitting unforeseen unforgettable unfrozen ungainly ungodly ungrateful
  unguided unhappy unhealthy unheated unheeded unholy unhurried unhurt uniformed unilateral unimaginable
  unimaginative unimpaired unimpassioned unimpeachable unimportant unimposing unimpressed unimpressive
  unimproved uninitiated uninjectable unintended uninterrupted uninvited uninvolved univalent universal
  universalistic unjust unkind unlawful unlikely unlimited unlined unliterary unlovely unlucky unmalicious
  unmeritorious unmistakable unmolested unmoved unnatural unnecessary unneeded unnoticed unnourished
  unnumbered unobtainable unoccupied unofficial unopposed unorthodox unpaid unpaintable unparalleled
  unpatriotic unpaved unperformed unpicturesque unpleasant unplowed unplumbed unpopular unprecedented
  unpredictable unpremeditated unprepared unpretentious unproblematic unprocurable unpromising unprotected
  unpublished unpunished unqualified unready unreal unrealistic unreasoning unrecognizable unrecognized
  unreconstructed unredeemed unreflective unrelated unreleased unreliable unremarkable unrequited
  unresponsive unrestricted unruly unsaid unsatisfactory unsaturated unscathed unscientific unscrupulous
  unseen unselfish unservile unshakable unshaved unshaven unsigned unsloped unsmiling unsold unsolved
  unspeakable unspoken unstable unstained unstilted unstressed unstructured unstrung unsuccessful
  unsuitable unsung unsympathetic untellable untenable untested unthematic unthinking untold untouched
  untoward untraditional untried untrue unused unusual unwanted unwarranted unwed unwelcome unwilling
  unwise unwitting unworn unwrinkled unwritten upcoming upland upper uppermost upstream upward urban urgent
  urinary usable useable useful useless usual utilitarian vacant vague vain valiant valid valuable
  valueless variegated various vascular vast vehement veined velvety verbal veridical veritable vernal
  versatile vertebral very vesicular veterinary viable vibrant vibrionic vicarious vicious vigorous vile
  villainous vindictive violent virile virtual virtuous virulent visceral viscoelastic viselike visible
  visual vital vivacious vivid vocalic vocational vociferous volatile voltaic volumetric voluminous
  voluntary voluptuous votive vulgar vulnerable vulpine wacky wainscoted wakeful wan warlike wary wasteful
  watchful watery wavy waxen wayward weak wearisome weary wee westerly western whiskered wholesome wicked
  wide widespread wifely wild willful wily windy winless wintry wiry wise witty wobbly woeful wonderful
  wondrous wooded wooden woolen woolly wordy workable workmanlike worldly worldwide worse worst worthless
  worthwhile worthy wrathful wretched wry yearly younger youngish youthful zodiacal
`);

/** Adverbs that are nothing else, without those in -ly. */
export const EVERYDAY_ADVERBS = wordSet(`
  aback abed aborning abreast abroad abroade adrift afar afield afloat afoul afresh afterward afterwards
  aftuh again agayne aground ajar all aloft aloud alreadeh already also altogether always amok anew any
  anyhow anymore anyplace anytime anyway anywhere apace aside askance askew astray asunder away awaye
  awhile aye backstage befoh beforehand behahn bluntest circa clockwise crossways crosswise darned
  deathward doubtless drearier eastward edgewise enroute eventshahleh ever everywhere extempore faier
  farther fifteenfold firmwide forever forth forthwith forwards fro frothier furiouser furthermore
  grevouselye grimmer halfways headlong hence henceforth here hereabouts hereafter hereby herein
  hereinafter heretofore hereunto herewith hither hitherto homeward homewards homologous however howsomever
  inasmuch indeed instead irrespective jist kinda lengthier likewise lonelier marketwise maybe midmonth
  moreover nawt nay neater never nevertheless nigh nonetheless northward not nott nowadays oft often
  oftener oftentimes onleh onscreen onward onwards ornraier overboard overland perchance perforce perhaps
  piecewise presto pronto prouder quite regardless seldom sevenfold skyward sofar someday somehow sometimes
  somewhat somewheres soon sooner sooo stomachwise straightway supra thar thence there thereabouts
  thereafter thereby therefor therefore therefrom therein thereof thereon thereto theretofore thereunder
  thereupon therewith this thither thrice thruways thus tollways too truley twise unawares underfoot
  upfield verie versa whatever whatsoever wherein whereof widthwise wus yes yet yon
`);

/** Nouns for people. */
export const PEOPLE = wordSet(`
  abbot abolitionist aborigine academic accomplice accountant acolyte actor actress adherent administrator
  admirer adolescent adventurer adversary advisor advocate aeon aggressor aide alderman alien amateur
  ambassador amorist analyst anarchist ancestor angel antagonist anthropologist apologist apothecary
  apparition applicant appointee appraiser archaeologist archbishop artisan artist aspirant assassin
  assessor assignee assistant associate atheist athlete attacker attendant attorney author auxiliary baby
  bachelor backer ballerina balletomane ballplayer bandit banker banshee barbarian barkeep bartender
  bastard batter beadle beadsman beatnik beau beggar beginner believer belle beneficiary bidder biologist
  biophysicist bishop biter blackmailer blonde bluestocking boatswain bodybuilder bodyguard bondsman booker
  bootlegger borrower bride bridegroom brigadier brute buffoon bugler bully bum bunkmate bunter burglar
  busboy businessman butler buyer caller campmate candidate capitalist captain captive caretaker cartoonist
  catcher caterer celebrity chairman chambermaid champ champion charlatan chemist chief chieftain child
  chiropractor chump citizen civilian claimant classmate clergyman cleric clerk client clown coach
  collaborator colleague colonel colonial coloratura columnist comedian comer commander commando
  commentator commissioner communist companion compatriot competitor composer comrade concessionaire
  concierge confessor confidant confidante congressman connoisseur conqueror conservative conspirator
  consultant consumer contemporary contestant contractor contralto contributor convert convict cook
  coordinator coquette coroner corporal correspondent counsel counselor countryman courier courtier coward
  cowboy cowhand cowpuncher crackpot crafter craftsman creator criminal cripple critic crone crony culprit
  cultist custodian cyclist cynic daddy dame dancer darling deacon dean dear deceased decedent defendant
  defender delegate demander democrat demon dentist dependent depositor deputy dervish descendant
  descendent designer detective detractor developer devil devisee devotee diabetic diplomat director
  disciple dissenter distributor divinity donor doorman dragon dramatist draper dreamer drinker dropout
  drover drummer drunk drunkard duffer duke dweller earl eccentric economist editor educator egghead
  egotist elder electrotherapist embodiment employee employer engraver entertainer enthusiast entrepreneur
  epicure equal escort evangelist executioner executive executor existentialist experimenter explorer
  exporter extern fairy faker fanatic fantasist felon fielder fiend fisherman flapper flautist foe follower
  fool foreigner freak freeman freshman fugitive fullback gadfly gambler gangster gardener general
  generalist geneticist genie gentleman geographer geologist ghoul girlfriend giver gladiator gnome god
  goddess goldsmith golfer gourmet governess governor graduate grandchild grandma grandmother graybeard
  grocer groom grower guardian guerrilla guest gunman gunner gunslinger guru gymnast gynecologist hacker
  halfback handyman hawker headmaster headsman healer hearer heir hero heroine herpetologist highwayman
  hijacker hillbilly historian hitter homosexual horseman hostess hotelman householder housewife huckster
  humanist humorist hunter hurler hypocrite idealist ideologist idler ignoramus illustrator imbecile
  immigrant impressionist incarnation incubus individualist infant infantryman infielder informant inmate
  inquisitor instructor intellectual intermediary interne interpreter interviewer intruder invader invalid
  inventor investigator investor jackass janitor jeweler jockey journalist judge junior jurist juror
  kidnapper killer king knight laborer laggard landowner lawman lawyer layman leader lecher lecturer
  legatee legislator letterman liar liberal libertine librarian lieutenant lightweight linebacker lineman
  linguist listener litigant logger longshoreman lord loser lover loyalist lummox lyricist machinist madam
  madman magician magistrate maid maiden mailman major mama manager maniac manservant marksman marshal
  martyr masseur master matriarch matron mayor mercer mermaid messenger miner minister minor minstrel
  misanthrope misogynist miss missionary mistress modern monarch moneymaker monk monologist monster
  moralist mover moviegoer murderer musician mutineer namesake national native naturopath navigator
  neutralist newcomer newsboy newsman newspaperman nigger nondriver novelist nun nurse nymphomaniac
  observer occupant offender official offspring ogress onlooker opponent orator orderly ordinary outcast
  outfielder outlaw outsider oyabun paranoiac parent parson participant partner passenger passerby pastor
  pathologist patient patriot patrolman patron patronne peasant peddler peer pensioner performer personage
  personification pessimist petitioner phantom pharmacist philanthropist philosopher phony physician
  physicist pianist pilgrim pimp pioneer piper pirate planner player playmate playwright poet policeman
  politician pope porter poseur positivist posseman potter practitioner preacher predecessor president
  priest prince prisoner private pro procurer producer professional professor promoter propagandist prophet
  proponent proprietor prosecutor prostitute protagonist protege psychiatrist psychologist psychopath
  psychopomp publicist puncher punster pursuer purveyor quack quarterback questioner rabbi racist racketeer
  rajah rancher rapist rascal reactionary reader realist rebel receptionist recipient recluse recruit
  redcoat redheader referee refugee registrant repairman reporter representative reprobate researcher
  resident retailer reviewer rider rifleman rival robber romantic rookie roughneck rowdy ruffian rustler
  sailor saint salesgirl saleslady satirist savage saver schizophrenic scholar scholastic schoolboy
  schoolgirl schoolmate scientist scoundrel sculptor seaman secessionist secretary secularist seer
  segregationist seminarian senator senior sentinel sentry sergeant servant settler shepherd sheriff
  shopkeeper shopper shortstop singer sinner sir skeptic slave sleepwalker slob slugger smuggler sniper
  socialist sociologist soldier soloist sonny sophisticate sophomore soprano southpaw sovereign specialist
  spectator spokesman sponsor sportsman spouse spy squire stager statesman statistician stepchild
  stepmother steward stiff stockbroker stockholder storyteller stranger strategist stylist subjectivist
  subordinate suburbanite successor sufferer suitor sultan superintendent superior supernatural supervisor
  surgeon suspect swami sweetheart tailback taxpayer teammate teamster tease technician teenager teetotaler
  telegrapher terrorist theatregoer theologian theorist therapist thief thinker tourist townsman trader
  traditionalist trainman traitor tramp trapper traveler traveller treasurer trooper troubleshooter trustee
  tutor twirler tyrant underachiever undergraduate underling undersecretary undertaker unfortunate user
  valet vaquero vendor vet veteran vicar victim victor villager villain violinist virgin virtuoso vocalist
  volunteer voter voyager wag waiter waitress wanderer warrior watcher watchmaker watchman watercolorist
  whiz wholesaler whore widow widower wigmaker wildcatter windbag wingman winner wisenheimer witch witness
  wizard woodcarver workman worshipper wrestler wretch writer yokel youngster youth
`);

/** Nouns for times. */
export const TIMES = wordSet(`
  adolescence adulthood airspeed anniversary bedtime birth bout boyhood centennial childhood clocking close
  continuum cps culmination dawn dawning daybreak daytime deathbed dinnertime duration dusk dying epoch era
  eternity eve evensong expiration festival furlough future gait halftime heyday holiday honeymoon
  hypervelocity incipience incipiency infancy inning instant interim interlude leave lifetime lull lunation
  maturity midday midnight midsummer millennium min morrow mph nightfall nighttime nineties noon novitiate
  now outset overtime past pause payday period picnic present presidency reign rpm schooldays springtime
  sundown teens tempo tenure termination thirties twenties twinkling vacation velocity weekday widowhood
  wink wintertime workweek yesteryear
`);

/** Nouns for acts, thoughts, words, feelings, states: no thing that a size is said of. */
export const ABSTRACT = wordSet(`
  abandon abandonment abasement ability abjection ablation abnormality abolition abortion abreaction
  abridgment abruptness abscess abscissa absence absenteeism absolute absorbency absorption abstention
  abstract absurdity abundance abuse academy acceleration accent accenting acceptance accident
  accompaniment accomplishment accordance account accounting accreditation accretion acculturation
  accumulation accuracy accusation acetonemia ache achievement acidity acquaintance acquiescence
  acquisition acreage acres acrobatics acting action activism activity actuality adaptation adequacy
  adherence adjective adjournment adjudication adjustment administration admiration admission admonition
  ado adoption adroitness advance advantage advent adventure adverb adversity advertisement advertising
  advice advisability advocacy aeration affair affairs affect affection affidavit affiliation affirmation
  affluence affront aged agency agenda agglomeration agglutination aggregation aggression aggressiveness
  agitation agony agreement agriculture ague aid ailment aim airflow alertness alibi alienation alignment
  allegation allegiance allegory allocation allotment allusion ally aloneness aloofness alpha alteration
  altercation alternative altitude altruism amateurishness amazement ambiguity ambition ambuscade ambush
  amendment amity amphibology amplification amplitude amusement anaesthesia analogue analogy analysis
  analyticity anaplasmosis anarchy anatomical ancestry anecdote anemia anger angst anguish animosity
  annihilation announcement annoyance anonymity anorexia antecedent anthropology anticipation
  anticoagulation antipathy antiredeposition antithesis anxiety aplomb apology appeal appearance appetite
  applause applicability application appraisal appreciation apprehension apprenticeship approach
  appropriation approval approximation aptitude archives ardor argot argument aridity aristocracy army
  aroma arrangement arrest arrival arrogance arteriolosclerosis arthritis artifice artistry arts ascendancy
  aspect aspiration assault assent assertion assertiveness assessment asset assiduity assignment assist
  assistance association assortment assumption assurance astonishment astronomy astrophysics asymmetry
  asynchrony athleticism athletics atrophy attack attainment attempt attendance attention attitude audacity
  audit austerity authenticity authorities authority authorization authorship automation autonomy autopsy
  avail availability avarice aversion aviation avoidance awakening award awarding awareness awe awfulness
  axiom axis backbend background bad badge badness balance balkiness ballad ballet ballot ballyhoo banging
  bankruptcy banquet banter bargaining barrage baseball bash basis basketball bathing bathos battalion
  batting battle beating beggary behalf behavior belch belching belief bellow benediction benefit bequest
  bereavement best bestowal beta betrayal betterment bevy bewilderment bibliography bickering bid bidding
  bilharziasis binomial biography biology biopsy birthright bishopry bitterness black blackening blackness
  blackout blame blandness blasphemy blast blatancy blaze bleat blemish blend blending blessing blight
  blindness bloat bloc blockade bloodshed blooming blot blotch blow blowing blues blunder blur bluster
  boarding boast boating bodybuilding boiling boldness bombast bombing bonfire bonus booking boon boost
  bootlegging booty boredom borrowing bounce bouncing bourgeoisie braggadocio brand bravado bravery
  brazenness breadth break breakaway breakdown breaking breakthrough breakup breathing breed breeding
  brevity bribe bricklaying brief briefing brigade brightness brilliance bringing broadcast broadcasting
  broadening bronchiolitis brood brooding brotherhood brown brucellosis bruise brushing brutality build
  buildup bulk bulletin bureaucracy burglary burial burn burning bursitis burst business businessmen buying
  buzz cadence cadenza cadre calamity calcification calculation caliber calibration calibre call
  callousness calm calmness calumny calving camaraderie campaign campfire camping cancellation cancer
  candidacy candour canon canter capability capitalism captivity capture cardiomegaly cards care career
  careerism carelessness carnival carpentry carping carry cartoon cash castigation catalog catalogue
  catastrophe catching category catharsis cause caution cavalry caveat celebration celerity censorship
  censure census centering centralization centrifugation ceremony certainty certificate certification
  certiorari chagrin challenge championship chaos chapter character characteristic characterization charge
  charisma charity charter chase chastisement chastity chatter chattering check checkbook checklist checkup
  cheer cheerfulness chemistry childishness chill chivalry choir cholelithiasis chomp chore choreography
  chorus christening chromatography chuckle chunk cinch circumstance circumstances circus citation claim
  clairvoyance clamor clan clang clannishness clap clapping clarity clash class classics classification
  clatter clause claustrophobia cleaning cleansing clearness clergy clerking cleverness cliche click
  clientele climate climax clique clod closing closure clowning cluck cluster clutches coaching coalescence
  coalition coccidioidomycosis coccidiosis code codification coexistence cognizance cohesion cohesiveness
  coin coincidence cold coldness collaboration collapse collection collective college collision collusion
  colony color combat combination combo combustion comeback comedy comfort comforts coming command
  commandment commentary commerce commercial commercialism commercialization commission commitment
  committee commonplace commotion communicating communion communique communism community commutation
  commuting companionship company comparison compassion compensation competence competition complaint
  complaisance complement completeness completion complexion complexity compliance complication complicity
  compliment comportment composite composure compounding comprehension compromise compulsion compulsivity
  computation con conceit concentration concept conception conceptuality conceptualization concern concert
  concerto concession conciseness conclave conclusion concurrence concussion condemnation condensation
  condescension condition conditioning conduct confederacy conference confidence confidentiality
  configuration confinement confines confirmation conflict conformity confrontation confusion congestion
  congratulation congratulations congregation congress conjecture conjunction connotation conquest
  conscience consciousness conscription consensus consent conservation conservatism consideration
  consistence consistency consolation consolidation consonant conspiracy constancy constant constatation
  consternation constitution construction consultation contact contamination contemplation contemporaries
  contempt content contention contest context continence contingency contingent continuance continuation
  continuity contour contraception contract contraction contradiction contradistinction contrary contrast
  contribution contrition control controversy convection convenience convention conversation conversion
  conviction convoy cooking coolness cooperation cooperative coordinate coordination corporation
  corporeality corps corpulence correctness correlation correspondence corruption counseling counterattack
  counteroffensive counterpart counterpoint counterproposal counting coup coupon courage courtesy coverage
  covetousness cowardice coyness cracking crackle craftsmanship crash crassness crawl craze creaking
  creativeness creativity credo creed crescendo crime criminality crimson crisis crispness criterion
  criticism croaking crossroads crouch crowd crucifixion crudity cruelty crunch crusade cry crystallography
  cubism cult cultivation culture curiosity currency curriculum curse curtness custody custom cycle cyst
  damage damn damnation dance dancing danger daring data dead deadlock dealing dealings debate debility
  debt debunking debut deceit deceleration decency declaration decline decomposition decorativeness decorum
  decrease decree decrement dedication deduction default defeat defect defection defense deference defiance
  deficiency definition deformation degeneration degradation dejection delay delegation deliberation
  delight delirium deliverance demand demeanor demineralization democracy demolition demonstration
  demoralization demythologization denial denomination denouement densitometry density denunciation
  department departure dependence dependency depletion depravity depreciation dereliction derision
  descendants descent description desecration desertion designation desire desolation despair desperation
  despondency despotism destiny destruction detachment detecting detection detergency deterioration
  determinant determination deterrent development deviation devotion diabetes diagnosing diagnosis dialect
  dialectic dialogue dialysis diam diarrhea diarrhoea diary dictatorship dictionary dictum differentiation
  difficulty diffusion digitalization dignity dilemma diligence dime diminution din diplomacy directive
  directivity directory dirge disability disabled disadvantage disagreement disappearance disappointment
  disapprobation disapproval disarmament disarray disassembly disbelief discipline disclosure discomfort
  discontent discontinuance discontinuity discount discourse discovery discredit discrepancy discretion
  discrimination discussion disdain disease disenfranchisement disengagement disgrace disguise disgust
  dishonor disillusionment disintegration disinterest dislike dislocation disloyalty dismay dismissal
  disobedience disorder disparagement dispatch dispensation dispersal dispersion displacement displeasure
  disposal disposition dispossession dispute disregard disrepair disrepute disruption dissatisfaction
  dissection dissemination dissension dissent disservice dissociation dissolution dissolve distaste
  distension distillation distinction distraction distress distribution distrust disturbance ditty
  divergence diversification diversion diversity divestiture dividend diving division divorce doctorate
  doctrine documentary dodge doggerel dogma dominance domination dominion donation doom double doubleheader
  doubt doweling downfall dowry drafting drama dramatics drawl dread dream drinking drought drunkenness
  dryness due duel durability duty dyeing dynamics dynasty dysentery eagerness earnest earnestness earnings
  earthquake ease eating eccentricity echo eclipse economics economy ecstasy edema editorial education
  effectiveness efficacy efficiency effort egalitarianism ego egotism ejection elaboration elasticity
  elation election electrolysis electronics electrophoresis electroshock elegance elevation elimination
  elite elution embargo embarrassment embrace emergence emergency emigration emission emotion emotionalism
  emotionality emphasis emphysema empiricism employ employment enactment enchantment encounter
  encouragement encroachment encyclopedia endeavor ending endowment endurance enemy enervation enforcement
  engagement engineering enigma enjoyment enlargement enlightenment enormity enrichment enrollment ensemble
  enterotoxemia enterprise entertainment enthalpy enthusiasm entirety environment envy epic epidemic
  epiphany epistemology epitaph epithet epitome equality equanimity equation equilibrium equipping equity
  equivalence equivalent erosion errand error eruption escalation escapade escape escheat espionage essay
  estate esteem estrangement ethic ethics ethos etiquette euphoria evacuation evaluation evaporation
  evidence evil evocation evolution exacerbation exaggeration examination example exasperation excellence
  exception excess excitability excitement exclamation exclusion exclusiveness excursion excursus excuse
  execution exemplar exemption exercise exercising exertion exhaustion exhibit exhibition existence exodus
  expanse expansion expansiveness expectancy expectation expedition expenditure expense experience
  experiment experimentalism experimentation expertise explanation expletive exploit exploitation
  exploration explosion exposition exposure expression expressiveness expulsion expurgation extent
  extraneousness extrapolation extravaganza exultation eyesight facet faction faculty fadeout failure fair
  fairness faith faithful falloff falsity faltering fame familiarity family fanaticism fancy fanfare
  fantasia fantasy fantods farce fare farewell farming fascination fascism fashion fast fastball fate
  fatigue fault favor favorite fear feasibility feast feat fecundity fee feedback feeding feelings felicity
  fellowship femininity fermentation ferocity fervor festivity fever fiat fibrosis fiction fidelity
  fielding fierceness fig fight fighting filing fillip finale finance financing finding fineness fingering
  fingerprint fingerprinting finishing fireman firepower firing firm firmness fishing fit fitness fix flair
  flame flash flashback flatness flattery flatus flavor flaw fleet flexibility flick flocculation flourish
  flow flowering flu flush flutter flyer focus focusing folk folklore following folly fondness foolishness
  footnote footprint foraging foreboding forecast forecasting foreground foreknowledge forerunner foresight
  forest forgetfulness formalism formative formula fortitude forwarding fostering founder founding fracas
  fractionation fragmentation fragrance frambesia franchise fraternisation fraternity fraud freedom
  freezing frenzy frequency freshness friction friendliness friendship fright frolic frontage frostbite
  fruitfulness frustration fulfillment fullness fumble function fund fundamentals funds funeral furor fury
  fusion fuss futility gag gaiety galaxy gallantry gallop gambling game gamut gang gardening gasp gassing
  gathering gaze gender generalization generation generosity genesis gentry genus geochemistry geology
  geometry gesture ghost giddiness gift giggle give giveaway givenness giving glamor glance glanders glare
  glaucoma gleam glee glimmer glimpse glint glitter gloom glory glossary glottochronology goal going goitre
  golf golfing good goodness gospel gossip gout government grace grade grading graduation graining grandeur
  grant grapevine graph grappling grassfire gratification gratitude greatness greed greenness greeting
  grief grievance grin gripe groan grounder growing growl growth grudge grumbling grunt guarantee guessing
  guidance guidepost guilt gulp gunfire gunplay gunshot gusto guts gymnastics gyration habit hackwork
  hallmark halo halt hamming handclasp handicap handling handstand handwriting hangover happening happiness
  hardship harm harmony harshness haste hatching hate hatred havoc haystack headache headline headlinese
  headstand healing health heartbeat heating heaviness hedonism heed helplessness hemorrhage hepatitis herd
  heredity heritage hermeneutics heroics heroism hesitancy hesitation hex hexameter hiding hierarchy high
  highschool hike hilarity hissing histology history histrionics hit hodgepodge holding holdup hollowness
  holocaust homefolk homer homicide homogeneity honesty honor honour hoot hope hopscotch horde horsemanship
  hospitality hostility housebreaking household housekeeping housework howl hubbub hubris huddle hue
  hugging humanism humanity humiliation humility humming humor hunch hunger hunting hurt husbandry hush
  hyalinization hymn hypercellularity hyperemia hyperplasia hypertrophy hypoadrenocorticism hypocellularity
  hypocrisy hypothesis hypothyroidism hysteria ideal idealization identification identity ideology idiom
  idleness ignorance ilk illegitimacy illness illumination illusion imagery imagination imaging imbalance
  immediacy immensity immigration imminence immobility immortality immunity immunoelectrophoresis
  impairment impasse impatience imperialism implementation implication importance imposition impotence
  impotency impression imprimatur imprisonment impromptu impropriety improvement impulse impunity inability
  inaccuracy inaction inadequacy inadvertence inaugural inauguration incantation incentive inception
  incidence incident incitement income incompatibility incompetence inconvenience incorporation
  incorruptibility incubation inculcation incursion indecision indefinity independence index indexing
  indication indictment indifference indigestion indignation indignity indirection individualism
  individuality indolence inducement industrialism industrialization industry inequality inevitability
  inexperience infantry infatuation infection inference inferiority infidelity infiltration infinitive
  infirmity inflation inflection infliction inflow influence influx information ingratitude inheritance
  inhibition initial initiation initiative injection injury injustice inkling innocence inoculation input
  inquest inquiry inroad insanity inscription inscrutability insight insignificance insinuation insistence
  insolence insouciance inspection instability installment instance instancy instinct institute institution
  instruction insubordination insularity insult insurance insurrection intake intangible integral
  integration integrity intellect intelligence intensification intensity intent intention interaction
  intercept interconnectedness intercourse interdependence interest interference intermission interplay
  interposition interpretation interrelation interrelationship interrogation interruption interval
  intervention interview intimacy intimidation intolerance intonation intransigence intrigue introduction
  introject intrusion intuition invasion investigating investigation investment invitation invocation
  involvement invulnerability iodination irony irregularity irreproducibility irresolution irresponsibility
  irreverence irrigation irritability irritation isolation issuance issue jab jealousy jeopardy jerk jest
  jolt journalese journalism journey joust joy judgment judiciary jumble jurisprudence jury justice
  justification justness keeping ken ketosis keynote kickoff kill killing kindergarten kinship kiss knack
  knock knocking knuckleball labor labour lack laity landslide lapse last laugh laughter launching
  laundering laurels laxness laying layoff layout leaders leadership league leakage leap leapfrog learning
  lease leaving lecture lecturing legacy legation legend legibility legion legislation legislature
  legitimacy leisure lending leprosy lesion lessening letdown lethality lethargy letter letterhead
  lettering letters lexicon lexicostatistics liability liaison liberalism liberation liberty libretto lie
  life likelihood liking lilt limbo lineage lineup linguistics liquidation literalism literalness
  literature litigation livelihood liveliness living loan localization logarithm logging logic logistics
  loneliness longevity longhand longing looking lookup loot lore loss losses loveliness loyalty lucidity
  lullaby luminosity lurch lust luster lustre luxury lyric madness magic magnificence magnitude maintenance
  majesty majors make making malady malaise malaria malediction maleness malignancy management mandamus
  maneuver maneuverability manhood mania manifestation manipulation manner manners manpower manufacture
  manufacturing manumission manuscript marathon marbleizing marching marginality mark marketing marking
  marksmanship marriage marvel masculinity massage mastery materialism mathematics mating matrimony
  matsyendra maturation maxim mean meaning meaningfulness meanness measuring medal meddling mediocrity
  meditation medley meet meeting megalomania melancholy melee melioration melodrama melody melting
  membership memoir memorabilia memorandum memorization memory menace menarche mentality mention
  merchandising mercy merger merging merit merriment merrymaking message metaphor method microcosm
  microscopy mien might migration mileage milestone milieu military militia millenarianism mimesis
  mineralogy mining minority minuet misbehavior miscalculation miscegenation mischief misconception
  misconstruction misdemeanor misery misfortune misinterpretation mismanagement misnomer misrepresentation
  mission missive mistaking misunderstanding misuse mitigation mixing mob mobility mobilization mockery
  mode model moderation modernity modernization modesty modifier modulation momentum moneymaking monitoring
  monograph monologue monopolization monopoly monosyllable monotone monotony monstrosity mood moral morale
  morality morals mores morphology morphophonemics mortality mortgage motion motto move movement movie
  muddle multiplication multiplicity murder murmur musical musicianship mutilation mutiny mutuality
  myelofibrosis mystery mystique myth mythology nadir nakedness name narrative narrowing narrowness nation
  nationalism nationality naturalism naturalness nausea navigation navy nearness necropsy neglect
  negligence negotiation neighborliness nerves nervousness neurosis neuter neutralism neutrality
  neutralization newsletter newspaper nickname nihilism nobility nod nomination nonequivalence nonfiction
  noninterference nonoccurrence nonsense norm nostalgia notation note notebook notice notification notion
  noun novel novelty nowhere nuance nuisance numbering numbness nursing oath obedience objectification
  objection objective objectivity obligation obliteration oblivion obscenity obscurity observance
  observation obtrusiveness occasion occasions occupancy occupation occurrence odds odor odyssey offense
  offensive offer offering omen omission oneness onrush onset onslaught opener opera operation operations
  operator operetta opportunism opportunity opposition oppression optimism optimum opus oration oratorio
  orchestration ordeal ordering orderliness ordinance organification organization orgy orientation
  originality orthodoxy orthography oscillation ossification osteoporosis outbreak outburst outcry outing
  outlay outlook outrage outreach overcast overeating overestimation overpayment overprotection
  oversimplification overthrow overture ownership oxidation pachinko pacing pact paean paganism page
  pageant paging pain pains pallor pamphlet panic pantomime papers parable parade paradigm paradox paragon
  paragraph parallelism parameter paraphrase pardon parenthood parish parisology parlance parliament parody
  participation particular parting partnership party pass passing passion passivity pastel pastime patent
  pathogenesis pathology pathos patriotism patrol patronage patter paucity pay payment payroll peace peal
  pearl peculiarity pedigree penalty penance pennant pension percent percentage perception percussion
  perfectibility perfection perfectionism performance perfusion peril periodical periodicity permanence
  permission perpetration perpetuation persecution persistence persistency persona personality personnel
  perspective pertinence perturbation perusal pervaporation pessimism petition petting petulance phantasy
  phase philosophizing philosophy phonemics phonetics phonology photography phrase phraseology phrasing
  physicalness physics physiology physique pianism picturing pidgin piety pilgrimage pinball pink pinning
  pinpoint pitching placement planning plantation planting plasticity platoon playing plenitude plight
  plodding plowing pluck plumpness plunder plunge pneumonia poem poetry poignancy polarity policy polio
  polish politeness politics polka pollution polymerization polymyositis polynomial pompousness populace
  popularity population porosity portrayal pose positivism posse possibility postmark postscript posture
  potency potential potentiality pounding poverty powerfulness powwow practice praise prank prayer
  preaching preamble precaution precedence precedent prechlorination precision predicament predicator
  prediction predilection predominance predomination preface preference preferment prejudice prelude
  premiere premise premium premonition preoccupation preposition prerequisite presentation presentness
  preservation prestige presumption presupposition pretence pretense pretext prettiness prevalence
  prevention prevision pricing pride primacy principal principle printing priority privacy privilege prize
  probability procedure proceeding proceedings proceeds process processing proclamation procrastination
  procreation procurement productivity profanity profession professorship proficiency profit profitability
  profits profundity profusion program programming progression progressivism prohibition project
  proletariat proliferation prolongation prominence promotion pronoun pronouncement proof propaganda
  propagation property prophecy proportion proportionality proposal proposition proprietorship propriety
  prose prosecution prospect prosperity prostitution proteolysis protest prototype proverb providence
  provincialism provision proviso provocation prowess prudence psyche psychology psychotherapy public
  publication publicity publisher publishing pulse pun punctuality punishment purgatory purging
  purification purity purple purpose pursuit pushing putout puzzlement quackery quadrupling quake
  qualification quality quarrel quatrain quaver query quest questioning questionnaire quickie quickness
  quiet quietness quintet quiz quotation rabble race racing radicalism rage raid raise raising rally
  rallying rancor randomization rank ransom rap rapidity rapport rapture rationale rationalism
  rationalization rationing rattling rbi reaction reactivity readiness readjustment realism realization
  realm reappearance rearguard rearing reasoning reassurance rebellion rebuff rebuilding reception
  recession recital recklessness reckoning reclassification recognition recollection recommendation
  reconsideration reconstruction recourse recovery recreation recrimination recruitment rectitude
  recuperation recurrence red redefinition redemption redeposition redevelopment rediscovery redress
  reducing reduction redundancy reelection reevaluation reference referendum refinement reflex refocusing
  reform refrain refrigeration refueling refund refusal regard regime regiment regimentation registration
  registry regret regularity regulation rehabilitation reharmonization rehearing rehearsal reimbursement
  reinforcement reissue rejection rejoicing relatedness relations relationship relentlessness relevance
  relevancy reliability reliance religion religiousness relish reliving remainder remark remembrance
  reminder remnant remorse removal remuda remuneration rendering rendition renewal renovation renunciation
  reorientation repair repayment repeal repeat repentance repetition replacement replenishment replication
  reply report reporting repose repression reprieve reprisal reproach reproducibility reproduction reproof
  republic repugnance reputation repute request requisition rescue research resemblance resentment reserve
  reserves resignation resilience resolve resource resourcefulness respect respects respiration respite
  responsibility responsiveness restatement restlessness restraint restriction resume resumption retail
  retailing retaliation retention retentiveness retirement retraining retreat retribution retrospect
  retrospective retrovision return reunion revel revelation revelry revenge revenue reverberation reverie
  reversal reversibility revery review revision revival revolt revolution revulsion reward rheumatism
  rhinotracheitis rhyme rhythm richness ride ridicule righteousness rightness rigor ringing riot ripple
  risk rite ritual roar roaring robbery robustness rodeo role roleplaying romance romanticism romp rooting
  roster rot rotation rotundity roughness roundup routine royalty rubric rudeness ruling rumble rumor
  rumpus runaway rundown running runoff rushing rustle rustling ruthlessness sabotage sacrament sacrifice
  sacrilege sadism sadness safeguard saga sailing sake salary sale salesmanship salvation salvo sameness
  sample sampling sanction sanctity sanitation sanity sarcasm sassing satiety satire satisfaction
  saturation saving savings scan scandal scar scarcity scent scepticism schedule scheme scherzo schism
  scholarship school schooling sciatica science scoffing scope scorn scouring scours scramble scrape
  scratchiness scream screaming screech screenplay scrimmage script scrubbing scrutiny scuffle sealing
  seaquake search secrecy sect secularism security seduction seepage seizure selection self selfishness
  selling seminary semitrance senate sending seniority sensation sensibility sensing sensitivity sensuality
  sentence sentiment sentimentality separation septation sequestration serenade serenity series seriousness
  sermon service services session set settlement severalty severing severity sex sextet sforzando shading
  shaking shallowness shaping share sharpness shibboleth shift shipbuilding shipping shiver shivering
  shooting shopping shortage shortness shout shouting show showcase showdown showing shriek shrieking shrug
  shucks shuffling shutdown sickness siege sigh sight sightseeing signal signaling signature significance
  signpost silence similarity simile similitude simplicity sin sincerity sinfulness singing single
  singularity sinking sinning sip sitting situation skeet skepticism skill skimming skirmish skit slant
  slaughter slavery sleep sleeping slight slippage slogan slovenliness slowing slowness slumber slump
  smallness smallpox smash smile smiling smoking smoothness snarl sneer snoring soaking sobriety
  sociability social socialism sociality society softening softness sojourn solace soldiering soldiery
  solemnity solicitude solidarity solidity solipsism solo somersault somersaulting song sonnet sonority
  sophistication sore sorority sorption sorrow sovereignty spaciousness sparkle spasm spatter speaking
  specialization specialty species specification specificity specter spectroscopy speculation
  speechlessness spell spelling spending spinnability spiritual spite splash splendor sponsorship
  spontaneity sport spraying spree sprue squabble squad squadron squeak squeal squeeze stability
  stabilization staginess stagnation staining stampede stance standard standing standpoint standstill
  stardom stare starting startup starvation statement statesmanship stationery statistic statuary stature
  status statute stead stealing stealth stenography steprelationship stereotype stiffening stiffness
  stillness stimulation stimulus sting stirring stoicism storyline strangeness strangulation stratagem
  strategy stratification streak strength stress stretching strife strike striving stroll struggle
  stubbornness stumping stunt stupidity stupor style stylemark stylization subcommittee subjugation
  submission subscription subsidy subsistence subspace subspecies substitute substitution subsystem
  subterfuge subtlety success succession succor suck suddenness suffering suffix suffocation suffrage
  suggestion suicide suitability summary summation superficiality superiority supernaturalism superstition
  supervision suppleness supremacy surf surge surplus surrender surveillance survey surveying survival
  susceptibility suspense suspicion swarm sway swearing sweep sweeping sweetness swelling swerve swig
  swimming switching swoop syllabicity syllable symbol symbolism sympathy symphony symposium symptom
  synchronism synchrony syndicate syndrome synergism synonym syntax synthesis systematization tableau
  tabulation tact tactic tactics tag taint takeoff takeover takings tale talent talk talking talks tally
  tampering tan tango tantrum tapping tariff task taste taunt tax teaching tears teasing technique
  technology telegram telepathy temerity temper temperament temptation tenacity tenancy tendency tenderness
  tending tenet tennis tenor tense tenting term terminology terms terror test testament testimonial
  testimony testing text texture thankfulness theme theology theorem theory therapy thermodynamics
  thermometry thermostatics thesis thicket thieving thinking thinness thirst thoroughness thought threat
  threshing thrill thriller throbbing thrombosis throng thud thumping thunder thwack ticket tidings
  tightening timbre timeliness timetable timidity timing tint titer titration toll tone topic topography
  torment torpor torture toss touchdown touchstone toughness tour tournament tow tracing trade trademark
  trading tradition traditionalism traffic tragedy training trait trampling trance tranquility transaction
  transcription transfer transformation transfusion transience transition translation translucence
  transmitting transmutation transpiration transvestitism travelogue treachery treason treasury treatment
  treaty tremor trepidation trial tribunal tribute trick trill trip triple triumph troop troops trot troupe
  trucking truculence trust truthfulness tsunami tuberculosis tuition tularemia tumble tumbling tumor
  tumult tune tuning turmoil turning turnover twinge twisting typewriting typhoid typhus typing typography
  tyranny ugliness ulcer ultimatum ultracentrifugation unambiguity unawareness unbalance uncertainty
  unconcern unconscious underbrush undercurrent understanding understatement undertaking underworld undoing
  uneasiness unemployment unhappiness unification uniformity uninitiate union uniqueness universality
  unloading unpredictability unrealism unreality unreason unrest unselfconsciousness untruth unwillingness
  upheaval upkeep uppercut uprising uproar upset uptake urge urgency urging usage use usefulness
  uselessness utilization utmost utterance vacationing vaccination vacuolization vacuum vagueness
  validation validity valor valuation value values vandalism vanguard vaporization variability variant
  variation variety vaudeville vector vegetation vehemence vending vengeance venture veracity verb verdict
  verification verisimilitude versatility verse vertex vertigo verve vestige veto viability vibrancy
  vibration victory viewpoint vigilance vigilantism vigor vindication violation violence virginity virtue
  virulence viscosity visibility vision visit vista visualization vitality vividness vocabulary vocation
  vogue volition volley vomiting vote voting vowel voyage vulnerability wage wager wages wail wailing wait
  waiting wakefulness walk walkout walkover war warehousing warfare warmth warning warrant washing watching
  wave wavelength waxing weakening weakness wealth weariness wedding weekly weeping weightlessness welcome
  welfare welter wet wetness wetting whim whir whisper white whiteness whole wickedness wildlife wildness
  will willingness willpower win winning wisdom wish wishing wisp wit withdrawal withholding woe wonder
  wonderfulness woodgraining wording workout worksheet worry worship worthlessness wound wrath wrestling
  wretchedness writ writing wrong wrongdoing yardage yawn yaws yearning yell yelling yellow yelp yoga zeal
  zest zoning
`);
