/**
 * How often words are said in talk of builds, which word follows which, and which class of word follows which. Written by
 * scripts/make-talk-counts.ts from the stories under tests/stories that may be read; do not edit by hand.
 */

/** Lines "count:words". */
export const WORD_COUNTS = `
11087:#
8691:the
4493:and
3690:a
2894:it
2257:i
1967:to
1817:on
1660:in
1581:of
1501:that
1240:so
1135:is
940:for
836:with
819:at
780:up
746:my
705:be
687:are
611:there
591:not
573:by
570:out
503:have
463:me
456:you
455:all
451:off
441:no
428:i'm
426:got
423:down
406:was
384:i've
363:back
348:like
347:over
330:has
319:she
318:as
312:them
306:he
291:foot
288:mil
287:now
282:had
279:from
278:its
270:what
268:been
267:going then
262:they
259:i'd new
256:about
254:under
249:inch
240:cut
239:friday
235:because before
232:go
229:floor
228:if
226:first
220:than
219:came
217:this
216:we
213:thursday
210:can
208:an
207:side
202:tuesday
201:monday
200:old which
199:metres
198:wednesday
196:wall
194:get
191:come
187:inches
186:roof
184:long says
182:every next
181:her saturday
176:door
174:here
168:through
167:i'll
165:but
163:sunday wants
162:will
161:put wide
159:goes
158:or point
154:end
153:do
152:more
149:top
148:too
147:day
146:good
143:right
142:man those
141:since water
140:somebody
138:each when
135:where
134:said stove want
132:they're
131:again
129:only went
128:see
127:plate
126:did don't
125:last
123:still
122:can't his
120:kilos
119:between
114:till
113:bed
112:round tank well would
111:comes gone
110:across
108:degrees
107:coming hole week
105:done say
103:hours who
102:inside oak whole
100:both
99:way yesterday
97:need
96:boards could night
94:dry nothing
93:feet steel
91:tape
90:deck less time
89:gets
88:behind bench
87:bit deep rather should
86:morning pounds
85:high were
84:already box told
83:frame made must pipe run
82:days em own until
81:saw thick window
80:foam
79:corner ply pump
78:asked look other tomorrow
77:once some square
76:know needs nobody
75:after beam bought centimetres turned
74:bar left litres thing
73:front hand
72:bolts glass house ones second
71:let never stood
70:amp took
69:same
68:gotta promise stand their
66:engine evening paint us you'll
65:another
64:kitchen ordered
63:just line people truck wet
62:bottom cable metre
61:big glued him post take won't
59:gas hung lot room shaft
58:eighths laid order wife
57:am
56:it'll
55:beams film oil sides
54:full wire
53:board sheet short sit wrong
52:built quarters
51:being instead panels posts wheel
50:drawing getting hold joists lift set slab while wrote
49:bolted measured
48:anything clear flat found how
47:battery mill sat without wood word
46:along bent dropped frames lead level little opening shed stone yard
45:ask boat brick fella welded
44:any apart does legs ridge tell
43:also coat coats lime north seat yes
42:fire flue having head hour light mind step straight
41:amps call cause enough find fridge least number one place planks years your
40:heater holes home make past rail rain sill very walls
39:barn doing even live outside pulled show sitting standing think we're
38:dog give ladder leaves minutes ran screwed something stuff windows
37:bad better crane dead fuse gauge gonna height hot lovely makes newton runs stands start tube
36:away centres drop everything pitch shall
35:ain't bare cabin concrete else fat isn't lining middle much piece sheets sink tin today
34:hang hose knees rang red shop sits they'll together
33:brother bucket ceiling finished hatch lathe pair poured proper
32:bilge glue lights means millimetre pine ribs sawn slate tall video yet
31:ash keep panel plank rafters read rest running stainless thought wait
30:bloke book bridge chimney fit ground may millimetres nice sand stick thats wind
29:above clean cold crack fine into near rack though white
28:bathroom bulkhead cap cedar doesn't dollars dug fan guy hinges lady larch late length longer looks motor okay press promised third thou twice used wanted weld
27:air cast heart heat inverter iron leave open painted rubber sorry tea trench y'all
26:around below bucks buy course either ever green locker neighbour plus psi reckons ring stays string test timber welder wiring
25:bearers bricks bus canvas cent counter cross diesel drain drawn hands hear held list log looked moved per planed porch port slats thank we've width
24:batteries bearing bedded block body cat doors due gave lad letter main mast mean nephew percent quid rafter rails strip tonnes trimmed watts weekend ye
23:afternoon anybody asking bigger building called county ends face hit itself jacks job kilowatt looking lower machine metal ought plates pressure primer putting screws skin stern tiles turn vent weight wool work you're
22:brackets bush cracked didn't far god hat he'll mum nails phone proud small sound use volts
21:axle boxes coffee counted fresh haven't hearth kilowatts lifting measure rule scale shelf shes sister soon split stairs sun swear warm wouldn't yeah you'd
20:always ballast battens bay beds brake camera church copper cutting driver gearbox headstock hoist im keel law lay lintel lorry low lying making minimum most moving myself pad plaster plastic rivets rust size someone steam surveyor table that'll tower trailer weeks weighs whoever within
19:against apiece bring brought changed dont drilled edge filled gravel great joint knocked landed loft mine money neighbor packed paper plywood rope sent settled she'll shower solar
18:bags blue bolt bow brass carry cousin cylinder drill fall gate guard hanging happy he'd horse insulation lap lid nearly nuts paid pencil picked pretty ripped saying seal single sleep smell smells sort stay stop stuck tail taken tap they've tops turns uncle wi woman year
17:arrived base beautiful boy cost dad electric feed fuel galley gap holds inspector it'd joints love mud nose our owe pour props reach rolled seen shield showed slates stacked stair stopped strapped taller thinking underneath valve worktop write you've
16:ahead angle bag bath blocks bottle bracket breaker bronze cab center close cloth colour cupboard dig double empty engineer epoxy everybody felt framed gallon hard headroom hood layer lifted mate month mortar mother news patch plenty power price ramp rings sash sawmill screw she'd skins slide south sticks taking times tonne tray van we'll whatever wider winter
15:account actually believe bend broken buying chain chap checked council daylight duct eighth exhaust finger finish frost gallery given hair joist kept kettle kilo laser lives living lost minute noon pattern pick planer plinth plumb properly pull river road rock rotten sawed screen slid sold strips teeth tested thinks tonight town treads tree volt waiting walk wired
14:anyone arch biscuit bless blower bored case cement count crown drip drive dropping eave euro folks gear hadn't heavy hundredths laying lies lines lit litre load lose lunch nailed numbers person piers pipes rear reckon seam shortened slept spring started stock takes taped tyres vents waits walked weeping weighbridge wheels
13:aboard anyway arms arvo asks bars boiler breathe burn cant carcass closed courses cuts dirt drum eat except fair figure finally fourth free gable gantry gives gutter hangs ive keeping kind leg likes logs meant mesh mm naturally none offered opened packing pit roll rung scarf scraped seeing slip slope soft spacing squared stack suit swap swapped talk there'll thumb tight tour tubes um west wheelhouse
12:alternator bearings build bunk burns cannot caravan carried chair change clamps clay comments cover early eyes fellow garboard gentleman grey heard hinge jack kids knee knows laughed lie life lithium lord manifold o'clock obviously pieces plan planking pole pound quick real replacing report riveted school seats shoe shoes should've slides smoke sooner staying steps stones stripped sure tacked tarp these tie toilet truss we'd welding working works
11:actual aluminium aren't beer belt birch black bunks caulking clamp collar conduit dee delivered dinner dozen drops dust edges elbow fish fixed flags foil galvanised hall hammer header help holding hull latest leaks meter meters mouse neck nut pallet panes park pie prayer pressed quiet radio remember scaffold scrap shell sills sleeping sole somewhere spare sums tag telling things tongue track trim trusses ute vestry wagon waste
10:ball bits bone booked boom bore borrowed bringing carpenter centre chapel chassis chest chip club couldn't cream decided delivery drawer draws dried drove east eaves elbows elm everyone falls fence fifth flush gallons generator gland goat grand grandson hooked hoop irons jigsaw kit leaf lean leaving lengths limecrete millimeters move name note ounce pass passenger pegs picker pile plain plane planing plumber pot prop question quit raising rivet row scarfed sealant seams shade shape shot shut shutter solid sparky spindle spot springs stops stringers sweet thereabouts tired torch touch uprights weighed worked worth writing young
9:anywhere bandsaw bank batten beach bearer beauty bell bin boot borrow brings bubble buckets casting centers chalk cheaper clips company corners couch dark drew drips ears earth egg everywhere exactly farm figures fill fingers fir float fortnight goop grandfather gum happen happens heating hydraulic ill jobs keeps launch leak loops matter mattress membrane minus moves music nah nail nicely nowhere oughta overnight pan parlour phase play pleased plumbed purlins push radius ready reed resin rolls sashes sealed sending sense shiny shorter shows shutters starboard sticker strap straps studs supposed swore talking teak thanks they'd true tub turning underside waterline weigh why willing win wrapped
8:allowed barge beside boys brakes breakfast burner button calum carpet catch cellar cells check christmas chuck cork cotton could've covers creek cry cured curtain curve cushion deal deeper digger docked doorway draw drawers dressed drink electrician electrics email feel feeling flange folded forward garage grain graving grinder groove haircut hauler hauling hello higher hire idea jase june laminated lamps lands lapped lets lined lintels loop loose lugs match maybe might mooring mostly oakum october otherwise part passed peak permit pins platform please pop posted propane provided raked re rise rod rods roller rot rough runners sail scraping send shifting shim ship shoulder sign signed sixteenths slow smaller snow sockets sorted spacers spoke spray sprayed stamp starter starts story swing tae tailgate therefore thin touched treated tried twentieth ugly unit upstairs village vinyl watch wear weather wedges won yall
7:alone altogether anchor anyhow arm ate august bang barrels bead bear becomes bees beg bicycle blank bled blow bob bolting boots brushed bulk cake car carriage centimeters chase city closer co coaming correction costs coupling cradle crate cried date decking die drains draught drums eats extra father ferry fetch figured filler firewood fitted fitter flashing foamed fold forgotten form foundry framing friend galvanized gib grandad grease guess handle hanger hangers harbour heel hob hollow honest horn hoses humming hurt husband ice included insurance joyce jump ken kid knock lake land laugh layers letting lighter liner loads many maple mark marked marks mats measures measuring mix molds mounted mr named o oiled op oxide papers pay pier pig pink places pool portholes pouring pulleys pulling pulpit punky quarry quite rained rattle reads really runner sauna saved sawing scratch setting sheep shift sixteenth skinny spoon stain stitched strings sum tanks telephone that'd theres thickness tile trouble twelfth upon vault vee wash wasn't whether yellow zinc
6:add aft ally answer april awning aye baby barrel barrow bedroom beech benches berth bike biscuits blade blades blanks blister bread breath broke butt butter butyl cables calling care channel charge chop climb coamings complete courier covered cricket damp diameter died doubled dream dripping fail faired february fell filmed firm fits fitting footing friends goo grandmother greased grooves gully ha handsome hasn't heads hens herself hey hide hill honey hook hope horses hotter hump hundredth ish joiner joy kev later leaning ledger lens levelled lifts listen loaded mail marine mat men met mezzanine milk milled miss moisture needle neighbours neither nest noise notched odd older onto ordering pack paying pegged photo photograph picture pillars pin pinion pinned plug plugged pond ponies pressing pub pulls purlin pushed puts quits quote rake reading remind rented replaced replacement rich rides rip riser risers rocked rubble sandwich sawyer scarfing seals shaped shoulders shouting shuts sick sixth sizes sketch skip slabs slot smith socks son space speaking spindles spruce stem strake straw stripe stroke strong strut swearing switch talked taught temper tenth tenths thicker thirteenth threw tidy tied tire touches trip trips tunnel uncut units using varnish voice voted washed washer watched wee wonder wont wooden words would've
5:added age ago ali alright arches argue arguing backs basket bats batts beats belly belongs best blowing books boring born boss bottles bottoms bows break burnt calipers callum candle carport caught centimetre chased chat chestnut chewed chisel cleaned clipped coast comma complained compressor condenser converter cook counting counts couple cousins covering crates crawl crew crying cup curb curtains cutout cypress dash depot depth diagonals difference digging dock dogs dollar doubling dreaming drilling dumb earl eggs episode final fixing flap floats fly folds folk footings fore forge forget fully fun funnel gasket girl gold grass grounds gull gunwale hairdryer hairline handed hardly harm hay headlamp headstocks heck hi himself holiday id idiot intake jacked jam joke keelson kidding kilograms lamp landing language large lath laundry lemon lend letters lightning linings linseed lip loaf loan loses luck maker masthead maximum meanwhile members merv missing mold mouth mule museum nan narrow nineteenth nope offside online opinion opinions outboard overhang owed pane paneling pantry partition partitions partners paste peg piles piston plated poles pontoons pony poor portal praying problem pulley radiator raining rains raise ram rated reached rebate record relief rib ride rigger ringing robbery roofs rudder sacks saddle safe safety sale scrape screed sealer segments sell settle shakes shaving sheared shelves shifted shovel showing shy singing siren sistered sisters skid skylight sliding slots snake speak spent spikes spoken spread stacking stall stamped steamed sternpost stitching stretching stuffed sugar summer supper supply survey swallow swallows swan swapping sweep swinging tails tailstock tar tear tent testing themselves theyre tipped tips title ton tooth trace tractor tread trestles trunk trust tyre valley vicar vice watt weed whenever whistle winch worm worn worry written younger
4:accordingly ad advice aff aisle alive almost altar anodes ants apologise apparently arrives auger aunt backed backing backwards balance balusters banana bathtub battened bays beaten begin benchtop beneath bevel beyond bird bitumen blackboard blacksmith boatyard bonnet braced brain breadth brochure brown brush buck bud bugs bulge bun burned burning butcher cabinet cabinets calm cancelled card cardboard cares carrying cash catches catwalk celsius chandler changing charged cherry chicken chucking cladding clearance clears clock coach coir college comment confession cooks cooled cornice crimped crimper crooked cubic cure cushions daft dale daughter decent dentist department dex diagram dial disc ditch douglas drank drawings drinking driving drunk drying ducks eating edged enjoy envelope euros expected extractor eyebrows factory fancy field fierce fifteenth finds flash flask flitch floors foams freezer fronts fry furring g'day gale glazed grab grate gray grew grown gun guys halfway halves handrail happened harness hated hauled heron hers hes hip hired holder honestly hooks hoops horsepower hulls hums in't including induction ins jamb january joking journal july kerosene key kilopascals king kittens knew knots kpa lagged lagging lamb lane laps laughing launder lawn leadscrew leaflet leaking leans leather led legal lino litters loading lock lockers locust losing lottery loud lounge lumber lump mailbox mair mam mamaw marble marking math max melamine mention mice micrometer mixer mob model mould mount mounts muck mug naw newspaper nickel niece ninth notice notion offcuts ok openings outta owl pads pallets parallel parcel parish party passes path patterns peeled pergola pew pews pinch pintle pizza planned planning pointed pointing polycarb porridge praise preacher priced primed probably pumped purl putty quarter quill racking railing rand range rattles rebuilt receipts regulator rejected remains reservoir revs riggers righto ripper roast robe roofing rooflight roughly rupees rusted sacking sagging sang scales scones scrapyard seconds section seized septic settee shallow shave shaved shingles shouldn't shrouds sideways sir slating sleeps slipped smooth snapped soap sofa solebars soup spanner spiral splice squeeze stakes stayed steering stiles stoop storm street stud subfloor suppose surface swept swings tabernacle tacky teacher tells telly template tenon tens themba there'd thirtieth threatened throw thru tick tighter tins tires tore toward transom treat trick trolley try turbine twin ups vet waited walking warmer washing wasted watching wax ways wedding weep weve whack whisker windscreen witness wobble workshop worse wren writes yep
3:able ac according adaptor afore afterwards agreed aint alan allegedly although alto among annex answered answers antenna anvil apron argued argument arriving attic awake balustrade bamboo bananas bark barrows barry basin bat baz bedding begging bells belts bending bends bishop blankets blisters blocked blockwork blood bloody blows boil bookcase booking border borer boxed brand brasses breakdown breaking breathing bright brilliant brim broom bucketing bug bugger builder bumper bunker burlap cage calendar caliper calls camp camper carl cart carved cell centuries certain certificate certifier chainplates chairs chance charcoal charger cheers chickens child chiller chipped chips choose chopped chosen circuit clamped class cleared climbs clocked closing clunk code coded cogs coin colander collect collected composite condo conduits contract controller cooked cooking cooler cooling cord core corridor cos couples cow cracks crawled creaked crimp crook crossed cupboards cuppa cupped curved cutter da dairy dance danced deacon decision degree deposit desk destination diary diet different dime dinnertime donkey doon dot dovetailed downstairs drag drinks drivers driveway drizzle dutchmen dynamo ear easter easy embarrassing ended engineering enters er evenings exceed excuse excuses expanded expect extension eye fabric fabricator faced falling fascia fast fastenings fault feels fetched fight file filed filling firebox fishing fix flattened flax flipping floated flushed folding footbridge forehead forgive forgot foundation fourteenth frog frogs further girder gluing gorgeous grade granddaddy granite grat grill guts gutters halfs hammered handbrake handles handsaw happening hardener hardwood harold hatchback hatches hate haul heap heaters heaven heavier hedge heels helicopter helmet helped hen hence henhouse highway hiya hod holler hoping horrible hosed hubs human hundred hungry hunner imagine injectors inspection iroko ivy ja jacket jars jaw jig join jumped kauri keen kill kindling kindly knocking knot knuckles lacks lads launching lauzes leads learn leathers ledgers leisure liar lied lighting liners listening loom lorraine lotto lowering lumberyard luton m10s m12 m12s mad mahogany mainmast manual march marriage mask masking meadow meaning meet mess metric millimeter millwright mini mint mitre mixing mocked motors mouldings nave needed nights nipped nodded nor northeast notes nowadays numbered oar offcut office opens original outhouse oven owns oxygen packet painting pal parted parts pascals patched peel peeling pencilled perhaps permitting pettifer phenolic phoned photographs picking pigeons piped pitched placed ploughed pockets podcast poker polished polite poly poplar postcard postman prettier priest quarts raccoon raptors reason redo remade remain remembered remove rent renting replacements retired rig rigged rim rims rising rollers rolling roosters root rotted routed router roves rows rpm rubbing rude rules sack sad sailmaker sails saints saloon saves scallops scared schooner screwdriver scribed scrubbed sealing seems selector sender sends sets settles seventh sewing shackles shan't sharpened sheer shims shook shopping shown shrink silence siliconed silly simple simply sinks sistering site sixteens sixties sketched ski skinned skipping slat sleet slim slippers slips sloop slotted sluice smelling smoko smug snugged soakaway soaking soapstone solder soldered soldiers solemn someday sore span speed spell spider spits spliced splitting spokes spotted st stacker staging station steaming steep stepping sticking stooping straightened straightening strakes strapping stretched stretcher stringer stripper stripping stupid sump sunk sunshine sweat sweats swung ta tacks telephoned temple tenons termites thinner thirsty threshold thrown thunder ties tiled timbers tip toast toffee tomato tools topped torqued total touching toughened tram trap trash trencher trev tubing tuttle twelves typical unbolted unless uphill upside varnished verandah vestibule view viewer viewers views vinegar wanna wanting war wardrobe wavy weak wears weighing weights welcome welds wetting whacked what'd whats wheelbase wheelwright whips who'd windshaft wins wondered worries worst wrap wrench wrist ye'll
2:abroad ache acrylic adding admit advance afloat afresh ah aim airship alignment allow allows alternative amidships ampere apologised apology apple apples archdeacon arguments arithmetic arse art asleep auction authority autumn backplate bacon badly bakkie bales balls band barbecue bargeboards barrowed bases basically batch batter beautifully become bedsore bee began behaves behold beige believed bender bents besides bet bi bikes bilges bill bite bites bitter blackbutt blaster bleeding blew blind bliss blown boats bodies bog boiled bonded bookshelf borehole borrowing bother boundary bowed braces brambles braze breadboards breast breeze brief brig brisket broad bruise brushes bruv budged budget buggered builds bulwark bulwarks bundle bung bunged burying business busted busting butler calf camber canal canopy capped carton casing catalogue cathedral caulked cave cents century ceramic chamfered chandlery changes chart cheapest checker checking cheered cheerful chemset chew chewing chicks children chili chimneys choir chopping chuffed cigar claimed claws cleaning cleat click clip clocks clutch coal coated cockpit cocky coconut coffin coke colder color colored column combiner compactor companionway complains composting compound concerning connect control controlled cooktop coolant copying corks correct cowl coz cracking cramps craned crank cranked crawling creak creel crept cringe cropped crossways crosswise crouching crowd crumbled current cuss custard daddy dado daggerboards dare dared dave davo dawn december decks deer definitely degreased delivers depend depends describe described dew didnt dies dignity dims dinette dinkum direct discs discuss discussion dislike distance diver divorce docking doctor dolly doorstep doubt doughnut downpipe draft dragging drained drama draughtsman dreams dropouts dull dump dunny dusk duty dynamite earlier earned eased eaten echo edits eel eels eiderdown eights emailed engineers english enter entered error examiner excavator exchange explain extinguisher extraction faces facing faint fallen false family fantail fatter fattest fenders fiberglass fiddle fighting figuring filing fillets filming fingernail finishes fired fireplace fished five fives flake flaking flank flapping flares flashed flashlight flatten flatter flood floppy flowers flutter focaccia follow fool football footer footy forgetting forth forties fours freeboard freight fridgy froze funny furnace fused fuss future gang gangway gaps garboards garden genius geometra george geranium gidday gilding giraffe giving glassed glassing glazier glazing goopy goose government grabbed gram granary granddad grandkids gravestone gravy greedy greenhouse gretchen grind grinding grinning grip grit grouted grow growing grudge grumble guards gunmetal gunnel guttering habit hacked hail haint hallelujah halloween hammering handshake hardboard harmonium hates havent headboard headlamps headliner hearing heights heritage herringbone hewed hiab hides hind hiring hitch hm hobby holidays hollering honour hooray hoped horsebox housed houses housing housings however humidity hundreds hundredweight hurry hymn ideas improvement insist insulated insurers invited isnt jacking jammed jean jet jockey journals jug kerf ketch keyway kick kicks killing kiln kinked kneel knife l label labelled labels laminate laminating lamplight languages lapping lassie latch lawyer leaned leant learned learning leathering lecture leitrim lent lesson lever library licence licensing lick lids likewise limit lipping listened lists lobbed located lonely lousy loved lowest lucky lunchtime ma'am macerator machines machinist magnets mainsail mallet manage mandrel mango marina market maroon married masonry mass master matched maths matters mattresses measurements meeting meets melt melts memo memory mended meself metalled miles miller millibar million mine'd miracle mirror misspoke mistake mixed mizzen modern mom moment monitor monster mood morra morrow mortgage morticed mosquitoes moss moulding mountain mounting mudguard multiplied municipality mustard nae naked napped narrower navy nearer nearest neat needing negative nephews newel nod noises northwest nosing nowt oath objection obvious often ones'll onion opes options orange organ others ours outdoors outfit overhead ower owned owt oxblood paced paddock panelling pantiles paperweight parking partner pastor pastry patching patience patient patternmaker payroll peace penance pending penetrating pennies penny peonies perfectly perished permission petrol pex physics piano pickup pies pinches piper pistol pits planked plasterers platers pleases plots plugs plumbing plumped pocket points polish polycarbonate pools popcorn popped porcupine porthole portland ports posh position possum posting potter powder powerpoints practically prefer prefers printed progress pronto proposes propped protractor prove puddle puller purely puriri purple purpose quarrel quarryman queen queue quicker quoted rabbet race racket racks raft railroad railway raised ramblers ramps rasp rebated rebuild receipt recipe recording recut recutting redid redone redrilled reduced register rego regret remeasured removed render repacked repairs replace reply resealed respect retirement return rewinder rigging rimu riving romantic roofers rooftop rooms rooster roughed rubbish rubs ruby rugby rungs saint sake sal salt sandpaper save sawdust sawhorses scare scarfs scraper screaming scribe scuppers sea seaside sees sells senga sensible separately service setback seventies several shakedown shallower shame shaping shavings shear shearing sheathing sheds shelter shepherd shimmed shingle shipped shirt shoehorn shoot shoots shore shortest shroud shunt sided silicone silt sin sings skirting sky skylights slack slated slater sledge sleeper sleepers sleeve slit sliver sloping slung smart smoked snap sneeze snug soaked sober soil somebody'll song sorting sounded sounding sounds spa spaced spade sparks specialist spiders spiked spin spine splendid splits sponge spraying squeak squeaks squint squirted staff stained stanchion stanchions stapled star stared starting state steady stealing steer stickered stiff stink stinks stirred stirrups stopping store stories stovepipe strokes stubby studying stuffing style submarine such sulked sulks sunburnt super surprise surrendered survive swallowed swarf swears sweated swelled swells swimming sycamore tackle tailor tallow tamped taper tapered tarpaulin tarps teaching teacup temperature termite terrible thatch theatre thems theyll thinned this'll thread throughout thruster thus ticket ticks tide tighten tilt tiny toe tool topmast torque tow towards township towpath toy tracking tracks traction trees trestle trial tricolor trimmer trims tripod tripped trusting truth trying tugboat tuning turner twist two underlay underpinning undies union unloaded update upholsterer upper upturned useless vac valentine vane vanity vans veneer verdict verniers vertical vid vote wallpaper walt wandered warming warned warped wasp wasps waved wearing wedged weeps wept weren't wetter wheeled wherever whichever whispering whit whoa whose windy wine wish wobbles woke wondering woodworm wore worried wrongly ya yacht yam yell yells yonder youll youre zip
1:absolute absolutely accept accepts accountant accounts ach action adds adjustable admire admission adobe adult adults advert advertised adze adzed afford ag aged ages agms agree aid aiming airplanes alarm alight allergic allotments alongside aluminum amateur ambulance amperes amused angel anger angles annealed announced annoy annoys anode antennas anvils anymore apex apologies apologises app appeal appears applauding applied apprentice apprentices approved aqua arc arched archs area argon armoured arranged arrestor arrive artwork ashamed ashtray asker aspen assembled assessment assorted assume assuming assurance astonishingly astonishment astrologer attack attempts aught auld aunty autopsy auxiliary avoiding awfy axleboxes axles babbitt backfilled backlash backlight backside backsplash backways badger bakery bald bale ballgame baltic bands bangles banjo banner barely baron barrier barrowing baseboard baseplate bashed bathed bathroom'll battens'll battleship bazaar beacon beadboard beaded beading beard beast beat beating beaut beauties beaver became becoming bedfellows bedpan bedplate bedsheets bedtime beef beekeeper beep beers beeswax beet beetle beets begged begun behaved behaving believes believing bellies bellows bench'll benched benchs benchtops benders bespoke bespoken bevelled bevels bezel bible bid biggest billets billiard bind binding birdnesting birds biro birthday blacked bladders bladed blame blanking blasted bleached bleaching bleeder bleep bleeped blender blinds blokes blond bloodhound blowed blowhole blubbed boaked boarded boarding boast boater bobbins bobs bodging bogged bogies bolster bomb bond bones bonfire bonny bonus boo book'll bookkeeper boomed bootlaces boreen boston bothering bounced bounces bowl bowling boxing boy'll boyhood bra brained branding brave bravery brazing breadboard breakers breaks breathable brew bride bridge'll bridges bridging brimette brimmed broadaxe broader brochures broomstick brothers bruised brushing brushings bubbles bucketed buddies bugging buggy bulb bulges bull bullock bummed bumped bunch bundles bungalow bungalows bungs bunny buns bunting burglar buried burst bury busbar busbars bush'll bushfire bushing busy buttoned buys buzz buzzing bypass calculate calculated calibrating calibration callipers cam cameras campground canada cancel candles cane cannae canteen canvas'll canvassed canyon capacity capo captured caravans carcasses careful cargo carries carrot cars carvel casement cashew cassette castings casualty catalog catalogs catboat cattle caulk causes cavity centerboard centered centimeter cept cert certified certifier'd chains chainsaw chairman chalked chamber chambers champ chappal character charges charging charmed charming charred chasing cheap cheaply cheat checks cheek cheeks cheerfully cheerio cheese cheque chequer chesterfields chewy chiefly chin chinked chiselled chisels chocolate chook chooks chore chores chose christ chromed chuckling ciao cinder circuits circular cistern civil civilization clack claims clamping clap clappers claps clarinets classic classy cleanly cleans clearing clearly cleft clenched clever cleverer clicks climbed climbing cling clinker clinometer clocking closes clothe clotted cloud clouds clout clown coarse coaxed cobalt cobbles cobwebs cockeyed coffees coil coins coldest collection colours comfy comin commenter commercial commode compacted complain complaint completed completely component composure compression compromise computer concerned concisely condemned condition conductor confess confident confirm consequently conservation conservatory consider considered constraints consultant consumed consumer contact content continually contradict converters cooker cookies cookstove cool coordination cope cops corbeled coring corn corrected corrections correspondence corro corroded corrugated corrugations costed costing cosy cough coughed coughs couldnae countersunk counties country county'd couplant cove coward cows cozier crabs cracker crackered crackers cramped cranking cranks crankshaft crashed crated crazy creamery creams crease creep crewed cribbing crick cries crime crimps crimson croaky croissant crooks crop cropper cropping crossbeams crosses crossing crossword crow crowned crud cruiser crumble crumbs crumpets crunching crushed crust cube cuckoo cuckoos culled cupful cures curing curls currach cute cutoff cyclone d'you dab dae daisy dales damn damper dandy dangling daren't daresay darwin daves davie de deacons deadline dealt debated decade decide decides deck'll deckchair decked deckhouse deckings declare dedicated definite degreaser degreasing delaminated delay deliberate delicacy demolition demonstrate demonstration den dent dents depending derek descends deserts deserves design detail devil dice dicht didnae differently digits digs dimes dinghy dinners dip dipped directing directly disagree disagreement discovered discovering discreet discussing disgusting dismissed dispatched district dithered dive diving dm'd docket dodging doesnae dome domed dominoes dong donkeys doorbell doris doubler doublers doubtful dough dovetail dowels downhill downpipes dragged drainlayer drainpipe dramatic drawbar drawbored drawed drawknife dread dreading dredging dress dressing dries dripless dripped drives drizzling drone droplights drowned drug drummer dryer duck duckboards ducked duckets ducking ducts dud dulciana dumps dumpster dunce dunno dunted during durn dustbins dutch dye dying earn earthed easier easing echoes economy ed edited editing eggshell eh ehn eiffed eighteen eighteenth eilidh elder elderly eldest elected electricians electricity elegant elevator eleventh elk elsewhere emailing emails embalming emergencies emergency employed energised engine'll engines enquires entering enthusiastic entire entitled entry envelopes ep epoxied equinox estate estimated evenin evens evensong event eventually everyones evicted evidently ex exact exaggerating exams exciting excludes excused exercise exhausts exists expanders expecting expects expense explains exposed express extrusion fact fades failed faints fairing fam famous fan'll fancied fancying fans farmer fashioned fastened fastening faster favours fear fed feeding feet'll fellas fellows felts few fewer fib fibre fibreglass fiddling fifteens fifties fifty fights fillers fillings films filter finalised fingered fingernails firebrick firing firrings firstly fishbowl fishermen fishes fist fittings fixin fixings fixture flagstone flaky flame flames flaming flashings flatbed flattening flattest flaw flew flex flexes flexible flies flight floating flogged floorboards flooring flowerpot flown flu flues fluffs fluorescent flurries flus flux fog fond font food fooled foolish footpath footprint forbid force foredeck forefoot foreman forestay forester foretold forged forgiven fork former forms formwork forrard forum fought fouling fouls four france frees freeze freezing friendly frightened furniture furnitures furred fusing gables gaffer'd gal gallopers galloping galv gamble game gardening garland gary gasless gasps gassed gasworks gatepost gathered gauged gauges gaun geezer gentle geometry geotextile german germany gettin geyser ghost giant gibs gies gimbals ginger girders girlfriend gist glad glands glares glasses glassworks glaziers glides glitter glory glove glovebox gloves goer goin golf gonnae goodbye gooseneck gospel gotten grace graft grams granda grandchildren granddaughter grandma grant grapes graphite grave graves graveyard greasy greeting grief grievance grinders gripped groaned groaning groom gross grout grouting grovel grovelling grows grumbled grumpy grunt grunting guarantee guarding guessed guesses guessing gulls gummed gunna gunwales gussets gusting gutted gutting haggard haggis haggled haha hallway halve halved hame hamsters handing handlebar handlebars handmade handsomer handwriting happier happily happiness harbourmaster hardship hardware harsh harvest hatched haunt haunted hawk hazel he're he've head'll headed headers healed health hears hearse hearts hearty heated heats hedgehog heifers helical hell helm helper helpers helps hem hemi hereby heres hernia hero herring hesitations hew hickory hinged hips hiss history hitting hmm hockey hoe hog holdin holy honor hoo hooking hooroo hoovered hopefully hornbeam horrors horsed horsehair horseshoe hosing hospital hotel houseboat hub hubby hum humble humiliating humped humps hungover hunt hunted hunting hurricane hush hushed hutterite hydraulics ibc icebox icing idli ignore imagines immediately immovable impeller impost inbox increased indeed indicator indoors industrial infill inform ink inner innit insists inspect install instant insufferable insufficient insulate insured intend intended interest interior introduced inventory inverters island isle isnae iso isolator itches itll ivory jackhammer jackhammering jackknife jan janet janets jar jarrah jaws jaybird jelly jen jetty jewellery jib jigsawed jobby joined joinery joker jubilee jugs jumper jumps juniper jute jutland jutta kelpie kerb kerfed keruing keyed keys kia kickboard kickboards kicked kicking kidney killer kills kilometers kilometre kilonewton kinda kinder kissed kissing kite kits knackered knave knitting knives knob knowing known kola kroner lab labor labored lace laced lack ladders ladies lag lags lain lame laminates landlord landlubbers lanes larder larger lashings latches lately lateral lathes launched lave layout ledge leg'll legend lekker lends lengthways lest letterbox leveled levels liars license licensed lifetime lightened lighthouse lightly lights'd liked likely lilac limewash limited limits limping link lippings lipstick liquid liquorice liter literally liters lived livery lo loader loaner locked loco locusts lodgepole logbook longest longways loo lookout lookouts loonie loons loosely looses lop lots louder louvred louvres loveliest loves loving lowered lowers lukewarm lumps lung lungs m m16s m20 m20s m8 m8s madam madonna magazine magpie mailed mailman mains maintenance mama mamas manganese mangoes margarine maro marry mart masked masks mason masters mastic matching materials mates mathematics matting maul maw meantime measurement meatloaf medal melting mentioned merchant merchants mercifully message messages messed mibbe mid middlemen midwest mike miked mikes milimeter milkman milky milliamp millinvers millionaire mils minds mineral ministry miracles mirrors misalignment miserly missed misspoken missus mistakes misting miter mitred mixes mizzle moaning moans mock mollycroft mongrels monsoon moorings moose mopping mornin morse mortices mortise mortised mortises moth moths motorbike motorhome mournful moustaches mouths mrs muddy muggins multitool mumber mun munched murmur mush mushrooms mussels mustn't mutinmetras mystery na nab nagged nailing naira nana napping narrowed narrows nasty natural nature nearside neater neatest neatly negotiable nerve nervous nesting nests netball netted nettles nevertheless newborn nibbling nicer nicked niente nigh nil nine nine'll nines nineteen nineties nip nobodys nods noggings noisy nonskid noo normal northeaster nosings notch notches nothin noticed november nuisance nun nuns nup nylon oarlock oats obedient obliged oceans octave odds offending offer offset oiling oilings oils olive one'll ooh openers openings'll operating opportunity opposite optimist ora orangutan ordinarily oregon orphan orphans ouch out'd outfits outlet outlets outsides outstanding oval ovens overdue overlap overlaps overrated overseas overshot owes ox packer packers pages pain painful paining paints pairs pale pancake panelings panic panics papered paperwork parade paraffin paragraphs parcels pardon parents parked parlor parola particular passage password pasted patches patiently paul pause pavers pavilion payday payload payment pea peach pedal pedants peels pellets pence pencils penetrant peng pension pensioner perches period permanently permits permitted personally persons pet phones phosphor photographed photos pierced pigeon piggery pigs pilgrim pillock pillow pilot pinched pinching pinky pint piping pistons pith pitted piñon plainly planers plant plaque plasterboard plastered platforms played plays plough plugging plum plummer plums poem pollen polyester polystyrene pongal pore portals portrait portugal positions positively possible possibly possums postponed postponing posts'll pot'd potted potting powdery practice prairie pray preached precious precision predecessor prefab preferably preference present preservative presses pressures pretend pretended pretending prettiest previous pricing pride prime priming principle print productive professor programme projection promising pronounced proposed propping proved public publican pump'll pumping pumps punch punched punctually puncture punk purists purred pushes pushing puttied pvc pyramids quality quay questions quibble quieter quietly quitting quotes rabbeted raced races racing radials radiators rafters'll railways rainstorm raisin raking rammed rap rat ratchet rate rating ratio ration rattling reaching readings ream reamed rears rebates rebed recall recalled recap reckoned reclamation recliner recorded recount recycled redder redoing redraw reef reel reflection refused regard regardless regards region regional registered regular regulates rehomed rehoused rehung relace relaid relax relay releaded released relevant relining remainder remembering reminds remote removable removal removing rendering rental rents reopens repacking repair repeated rerouted reseal research reset resident resists respaced respectful restate resting restitch restoring restringing rests resuming rethink retork returned returning reuse rev reveals reversing reviews rhs rhubarb ribbands rice rick riddled ridges rifle ripping rises risk rive rived riveting roar robbed robbing robin rocker rocking rocks rodded rollover roofed roofer rooflights roofline rooks rooted roots roses rosette rosy rots roundabouts rounds route rowing rubbed rubberised rubbery ruled ruler rulers rum rundown runout rush rusts rusty ruth rye s'posed sabbath sag sags sailed salvage salvaged sam sanded sandstone sanitation sank sapwood sardine saturdays saucepan sausage sausages saving savings sawhorse saws scabbed scarcely scaries scene scissor scoff scone scorch scorching score scoreboard scored scoring scout scrapes scratches scream screamed screeded screens scrim scrounged scuffed scupper scythe seacock seasick season seatbelt seawater secondary secondly secretary sections seeded seek segment seldom selected self seller seniority sentence separate september series serious seriously sermon serve served settling seventeenth sewed sewer sewn shades shake shaken shank shapes share shares sharp sharpener sharper she've shears sheaves shebang sheepskins sheeted sheila shellac sheriff shine shines shins shipping ships shipwright shire shock shocked shocker shoehorns shoeing shoes'll shoreline shortcuts shorten shortly shorts shoulda shouldnae shout shouts shovelled shovelling shoving showers shrinks shrug shuffling shut'll shutterply side'll sidewalk sidewall siding sight signs signwriter signwriting silent silicon silver silverware sing singeing sinners sixes sixty skeeters skim skimping skinnier skint skipper skunk slam slap slaps sleepy sleeting sleeved sleeving sliced slick slider sliders slight sling slipper slippery slop slope'll slouches slowed slower slowly slump slur smacked smelled smelt smokebox smokes smoking snacks snag snaps snare sneak sneezed sniffed snob snooker snorkel snow'll snowmobile snuff soak soapy sock socket soggy solars solved somebody'd somehow sometime soot sorta sorts southerly spacer spacings spaghetti spain spannend spared spatter spec sped speeds spicy spiled spins spinster spirit spitfire splay splicing spline splinters splurging spoils spongey spongy spooning spoons spots spreader spreaders spreadsheet sprung spun spur spy squabs squares squeal squeegeed squeezed squelching squid squiggle squillion squiz stable staggered stains staircase stairlift stairwell stake stamps standard standards standby staple stapling staring starve starved state'll statics stations stead steak steal steamer steeple steered stems stepped stepwell stewed stickering stickers sticky stiffened stile stingy stinker stoatin stocks stoned stool stout stoves straightedge straighter strainer strand strands stream strength strict stricter stripes struck structural strung stull stumps stupidity subsidy subtitles successor sucked suction suffer suffice suggest suggested suggests suits summat sunburned sundays sundown sung sunny supervising supplier supplys supposing surgery surveyors suspicious suss swamp swans swaps swat swatting sweating sweeps swelling swifts swims switched sworn sympathy system t t'barn t'house t'other tadpole talker talks tames tan tank'd tapes taps target tarred tarry tasted tawa tax teal teardown tears teas teatime tedious tee teenager television templated temporary tempt tenoned terminals terrace terraces terracotta testify tests texted thanksgiving thatching theirs therapy thereafter thereby thereupon thermometer thermos thermostat theyve thickened thigh thimble thirdly thirds thirties thomas those'd thoughts thousands threaded threads threat three threepenny thrilling throat thud thursdays ticked tickover tightened tightest tilery tiller tinned tinnies tipper tipping toaster toboggan toddler toes toilets tolerate tomatoes tone tongued tonners toolbox toothed toothpaste top'll topsides torn tote toting towbar tows tpi tractors traded trader traffic trail trampoline transmit transposes trap'd traps traumatic travel travelled travelling travels treacle treating trifocals trimming triple trombone trowelled trucked trucks trued truman trunnels trusted truthfully tubeplate tubestack tubs tucked tumblehome tune tup turf turkey turnbuckles tusk tutti tutting tuzzy tv twelve'd twenties twigged twisted twitched tying tyler type types typo tyres'll u uh ultra ultrasonic un unbolt unbore uncle'd undercoat underfloor underfoot underlayment underpinned undershot undersides understand undertaking unlock unloved unorder unpick unpicking unreal unstuck untouched unwrapped upboards upholstery upload upright upshot upsized upsizing uses usual vacation vain valleys value vanished vapour variable vary veil vented ventilation venue verge vernier verse vessel vests vibes villa villain vineyard violin violinist visible visit visitor visitors vocabulary voiced voltage volume volunteered votes vouch vow wadded waders wahala wakes walker walkway walled walleye walnut wane warehouse warmed warms warmth warning warrant warts washers wasnt wastage water'd water'll watering watermelon waterproofing watertight wave waving waxed waybridge wealth weathercock weatherstrip web wedge weetabix weighted welders welled wellie westerly wetted whacking whale wharf whatsoever wheelbarrow wheelhouse'll wheelie wheeling wheels'd wheezes wheezing where'd wheres whereupon which'd which'll whipped whipping whirring whiskey whistled whitewash whitsun whittled whittling whitworth whom whoops whoosh widen widening widest wiggle wild wim winched windaes windlass windpump windshield windshields wink winking winters wiped wireless wires wise wishes wonders woodstove woodwork workboat world worms worthless wouldn't've wouldnt wound wrapper wrapping wriggling writer yank yelled yelling yikes yo youd yours yous youse zealand zeros zinced zincs
`;

/** Lines "word:next count,next count"; pairs said once are left out. */
export const PAIR_COUNTS = `
#:# 2204,a 52,above 11,across 50,all 15,along 3,also 3,amp 69,ampere 2,amps 41,an 10,and 732,anodes 2,apart 16,apiece 5,are 26,as 2,at 48,away 2,back 2,bad 4,bags 12,bales 2,bar 33,barrows 3,bay 3,be 2,beams 8,because 3,before 7,behind 2,below 2,between 30,big 7,bit 3,blades 3,blanks 2,boards 11,bob 4,bolts 9,bottle 2,boxes 5,boys 3,brick 2,bricks 3,bubble 2,bucket 3,buckets 3,bucks 26,burner 4,by 117,came 3,can 6,celsius 2,centers 2,centimeters 7,centimetre 5,centimetres 70,centres 20,cents 2,centuries 3,clamps 2,clear 16,coats 23,coming 3,comma 5,corner 5,corners 2,could 5,courses 10,cousins 2,covers 2,cubic 3,cut 4,cylinder 2,day 9,days 73,deep 69,degrees 107,does 4,dollar 2,dollars 27,done 2,door 4,doors 2,down 12,dozen 2,drawers 2,duct 2,each 26,eighths 58,empty 3,end 5,euro 14,euros 4,even 4,every 3,extra 2,eyes 3,feet 41,fifth 2,fine 2,finger 7,fingers 3,first 8,flat 2,floor 5,flue 2,foot 249,footer 2,for 43,fourth 6,frames 4,fresh 2,friends 2,from 27,front 3,full 2,fuse 2,gallon 12,gallons 10,gap 2,gauge 7,gets 3,go 5,goes 5,going 4,good 3,got 3,grand 4,guys 2,had 2,hand 2,hands 2,has 7,have 3,he 3,high 56,holes 6,horse 11,horsepower 3,hour 4,hours 78,hundred 3,hundredths 14,i 24,i'd 6,i've 3,if 2,im 2,in 98,inch 139,inches 183,inside 15,instead 4,into 4,is 27,ish 3,it 14,its 2,jacks 5,joists 2,kilo 13,kilograms 5,kilopascals 4,kilos 119,kilowatt 22,kilowatts 21,knots 2,kpa 4,languages 2,last 2,layer 2,layers 5,leaf 2,leaves 2,left 3,legs 5,lengths 9,less 3,lifts 2,lights 2,like 4,litre 12,litres 74,litters 4,little 2,long 79,loops 4,loses 2,lovely 2,machines 2,made 3,mair 2,man 4,maple 2,me 2,men 4,meter 3,meters 8,metre 38,metres 156,mil 277,mill 22,millibar 2,millimeter 3,millimeters 10,millimetre 28,millimetres 30,minutes 38,mm 11,more 36,must 6,new 9,newton 37,night 2,ninth 3,now 14,numbers 6,nuts 2,o'clock 12,odd 5,of 323,off 56,on 82,or 20,ounce 7,out 14,outside 6,over 28,pair 2,pallets 3,pane 2,panels 8,panes 3,pascals 2,passes 2,past 8,pegs 2,people 6,per 24,percent 23,person 2,phase 4,piece 4,pieces 6,piles 2,pipe 2,pitch 2,places 5,plank 3,planks 14,plates 2,plus 2,ply 5,point 148,port 2,ports 2,post 3,posts 8,pound 5,pounds 66,proud 5,psi 26,pulleys 2,quarters 50,quarts 3,quid 24,radius 2,rafters 4,rand 4,rather 2,revs 4,ribs 3,rings 2,rise 3,risers 6,rivets 2,rolls 2,rooms 2,round 5,rows 2,rpm 3,run 2,rungs 2,runner 2,rupees 4,sacks 4,sash 2,screw 2,second 2,seconds 4,seventh 2,she 4,sheet 3,sheets 12,short 11,shutters 2,shy 2,side 6,sides 5,sisters 2,sits 3,sixteenths 8,sixth 2,slate 3,slats 3,sleepers 2,small 2,so 30,some 3,something 3,spare 3,split 2,square 48,squared 4,sticks 2,still 2,stone 2,strakes 2,strips 3,stroke 2,strong 2,studs 2,sweats 2,tall 13,teeth 2,tenths 5,that 13,thats 4,the 48,then 3,there 4,they 4,thick 48,thing 8,third 2,this 7,thou 24,through 3,times 16,tin 2,tins 2,to 98,together 3,ton 3,tonne 13,tonnes 23,too 14,treads 3,trusses 2,tube 2,tubes 6,turns 4,under 12,up 18,very 2,volt 14,volts 22,waits 2,wall 5,walls 2,wants 3,was 4,watt 5,watts 23,way 4,weeks 18,went 3,were 2,wheels 2,when 3,where 3,which 2,who 4,wide 130,will 3,window 2,windows 6,with 26,without 2,won't 3,would 10,year 4,years 31,yesterday 2,you 3
.:# 2669,a 277,about 31,according 2,accordingly 3,acrylic 2,actually 4,ad 2,add 6,after 14,afternoon 2,against 3,ah 2,all 138,allegedly 3,along 2,already 5,also 7,alternator 7,although 3,aluminium 2,always 4,an 23,anchor 4,and 2093,another 9,anvil 2,anything 3,anyway 4,are 6,as 56,ash 6,ask 13,at 44,away 2,awning 4,axle 4,aye 4,back 21,bad 9,ballast 5,balusters 2,bandsaw 2,bang 5,bank 2,bar 6,bare 6,base 5,bath 2,bathroom 11,battens 9,batteries 11,battery 14,batts 3,baz 3,be 5,beam 2,beams 12,bear 2,bearer 2,bearers 6,bearing 3,bearings 3,beautiful 9,because 183,bed 19,bedded 7,been 4,bees 2,before 36,behind 12,being 4,believe 4,below 4,belt 2,belts 2,bench 17,benches 2,bent 6,berth 2,better 6,between 11,big 8,bilge 8,bit 9,black 2,bless 12,bliss 2,block 3,blocked 2,bloke 7,blood 2,bloody 2,blower 4,blowing 2,blue 3,board 2,boards 12,body 5,boiler 6,bolted 11,bolts 12,bone 3,boom 2,bored 2,both 46,bottle 2,bottom 10,bow 2,box 9,bracket 2,brackets 2,brake 3,brick 4,bricks 3,brilliant 2,bring 7,brochure 3,broken 3,bronze 4,brother 2,bucket 3,bucketing 2,bud 2,building 2,built 9,bulkhead 3,bulwark 2,bulwarks 2,bunks 3,bush 5,but 96,butcher 2,button 2,buying 2,by 54,cabin 14,cable 10,call 10,called 5,callum 3,calum 8,came 2,can 5,can't 24,canvas 4,cap 5,carcass 2,cash 2,cast 2,casting 2,catalogue 2,catwalk 2,caulking 5,cause 24,cedar 7,ceiling 6,cells 4,cement 5,centre 3,chain 3,chainplates 2,chair 3,chamfered 2,changed 2,chap 3,chase 2,chased 2,cheaper 3,checked 2,cheers 3,chimney 5,chip 3,chips 2,church 3,clamps 3,clay 3,clean 3,cleaned 2,clips 2,close 2,cloth 5,clunk 3,coaming 2,coffee 2,cold 2,collected 2,come 10,comes 2,coming 8,complete 2,concerning 2,concrete 6,condenser 3,conduit 2,coolant 2,copper 6,cork 2,corner 4,correction 3,cos 3,cost 7,could 10,could've 4,council 5,count 3,counted 4,counter 8,county 5,courier 4,course 3,cousin 2,crack 4,crane 5,crew 2,crimper 2,cross 12,crown 3,cry 2,cushions 2,cut 15,cutting 4,cypress 2,dad 9,daft 2,daggerboards 2,dale 2,day 3,daylight 3,dead 11,decided 3,deck 20,dee 4,delivery 3,diagonals 2,did 14,didn't 10,diesel 7,dig 2,digger 2,do 13,does 8,doesn't 2,dog 6,don't 30,done 16,door 16,doorway 3,double 4,doubled 2,doubling 2,douglas 3,down 10,drain 5,drains 2,draught 2,drawers 2,drawing 2,drip 2,drizzle 2,drop 3,dropped 7,dry 21,drying 2,due 2,each 17,early 2,earth 2,edge 2,egg 2,eighth 2,either 2,elbow 2,elbows 2,electric 5,electrics 5,elm 4,else 4,email 2,end 9,engine 14,engineer 2,er 3,even 4,evening 10,ever 2,every 58,everybody 8,everyone 4,everything 8,exactly 2,except 11,exhaust 6,extraction 2,fair 4,faired 2,falling 3,fan 5,farm 2,fastenings 2,fat 3,feet 6,fella 5,felt 4,fence 2,fetch 3,figures 2,filled 4,filmed 2,finally 5,find 2,fine 7,fingers 2,finished 3,fire 5,first 66,five 2,fixed 2,flat 2,flipping 2,floor 38,flue 11,foam 18,foamed 3,foil 3,folk 4,folks 7,foot 4,footing 2,for 134,found 15,fourth 2,frame 12,frames 6,free 3,fresh 9,friday 73,fridge 14,fridgy 2,from 27,front 11,frost 7,fuel 9,full 13,funnel 3,fuse 10,g'day 2,galley 6,galvanised 3,galvanized 2,garage 3,gas 17,gate 2,gauge 3,gave 2,gear 2,gearbox 7,generator 3,get 14,gets 2,getting 2,gib 2,gidday 2,give 13,glass 8,glue 6,glued 18,go 6,god 5,goes 4,going 6,gold 2,gone 4,gonna 4,good 36,goopy 2,got 24,gotta 6,grab 4,granary 2,gravel 5,graving 2,gray 3,greased 2,green 6,gretchen 2,grind 2,grinding 2,ground 4,guard 2,guess 3,ha 4,had 21,hadn't 4,hairdryer 2,hallelujah 2,hammer 2,hand 13,hands 2,hang 8,hangers 2,happy 3,harbour 2,hard 2,hardly 2,harold 2,has 7,hatch 4,hauler 2,have 4,haven't 5,having 2,he 145,he'd 7,he'll 15,header 4,headroom 6,headstock 7,heart 3,hearth 7,heat 3,heater 6,heating 4,heavier 2,heavy 3,height 2,held 5,hello 5,hence 3,her 2,here 14,herringbone 2,herself 5,hey 4,higher 2,hinge 2,hinges 7,his 6,hit 3,hiya 3,hm 2,hold 5,holding 2,hole 4,holes 2,hood 4,hoop 2,hose 4,hot 11,hotter 2,house 6,how 6,however 2,hull 4,humming 2,hung 4,hydraulic 2,i 919,i'd 78,i'll 107,i'm 215,i've 155,if 132,imagine 2,in 116,inch 26,including 2,inside 15,inspection 2,inspector 5,instead 7,insulation 9,insurance 3,intake 2,inverter 11,is 53,it 594,it'd 8,it'll 30,its 9,ja 3,jean 2,jigsaw 4,jobs 6,joint 3,joints 3,joists 12,just 16,keel 7,ken 4,kettle 2,kids 3,kindly 3,kitchen 17,knee 3,knees 2,ladder 8,laid 4,lake 2,laminated 2,larch 5,last 19,late 5,lathe 3,launch 3,lead 7,leaks 2,leaning 2,leathers 2,leave 2,leaves 5,led 3,left 8,legs 8,length 3,less 8,let 25,level 5,levelled 2,lid 2,life 3,lifting 2,light 2,lights 8,like 32,lime 7,line 2,lined 2,liner 3,lining 11,lintel 2,list 2,lithium 3,little 4,live 5,locker 5,log 2,long 11,longer 3,look 2,looked 2,looks 6,loom 2,lord 6,lorry 2,love 2,lovely 14,low 3,lucky 2,m10s 2,m12s 2,ma'am 2,made 5,magnets 2,main 8,mainmast 3,make 3,makes 4,making 2,mam 2,man 3,manifold 3,maple 2,mast 3,mate 3,mattress 3,maximum 3,maybe 3,me 19,meaning 3,means 2,meanwhile 3,measure 2,measured 4,measuring 2,membrane 2,merv 3,mesh 6,metal 2,might 4,mind 15,minimum 9,mix 2,mm 2,moisture 3,monday 59,monitor 2,mooring 2,more 13,morning 2,mortar 2,motor 8,motors 2,mr 2,muck 2,mud 2,mum 10,my 185,nah 8,nails 4,naturally 9,naw 4,near 9,nearly 6,need 10,needs 5,neighbor 2,neighbour 3,neither 3,nephew 3,never 13,new 45,next 55,nice 10,night 2,no 225,nobody 26,none 9,nope 4,north 7,nose 2,not 207,notched 2,note 2,nothing 20,now 112,number 4,nuts 3,oak 20,oakum 2,obviously 9,of 15,off 17,oil 10,okay 24,old 17,older 2,on 96,once 16,one 4,only 36,opened 2,opening 6,options 2,or 44,order 5,ordered 3,ordering 3,other 6,otherwise 3,ought 2,our 4,out 24,outside 6,over 16,oxygen 2,packed 3,paint 10,painted 4,panel 6,panels 9,pass 2,patterns 2,peeled 2,pegged 2,people 9,phenolic 2,phone 2,photo 2,pick 2,picked 5,picker 3,pier 2,piers 8,pile 2,pin 2,pinion 3,pipe 11,pipes 2,pitch 4,plain 2,planed 6,plank 2,planking 6,planks 3,plaster 2,plastic 3,plate 11,please 5,plenty 5,plumb 7,plumber 7,plus 12,ply 11,plywood 4,point 2,polycarb 2,pontoons 2,poor 3,poplar 2,porch 6,port 6,portal 2,portholes 2,post 3,posts 9,pour 2,poured 2,power 3,praise 3,preacher 2,pressure 5,pretty 4,primer 4,probably 3,promise 21,promised 3,propane 2,proper 2,properly 3,props 2,provided 7,pull 2,pulled 4,pump 19,purely 2,puriri 2,purlin 2,purlins 3,put 11,quick 5,quiet 3,quill 2,rack 6,radius 2,rafters 8,rail 3,railing 2,rain 9,rained 2,raising 2,rake 2,raked 2,ramp 3,ran 7,rang 6,rather 35,re 2,read 2,ready 2,rear 5,rebated 2,reckon 2,red 12,reed 2,regulator 2,remind 3,rented 2,report 4,resin 2,respect 2,rest 2,ribs 9,ridge 5,riggers 3,right 52,righto 2,ring 6,rings 3,ripped 2,ripper 2,riser 2,rising 2,rivet 3,riveted 6,rivets 5,roast 3,robe 4,roller 2,roof 33,roofing 2,room 2,rope 4,rough 3,roughly 2,round 5,rubber 2,run 2,runners 4,running 3,runs 2,rust 3,safety 3,sailmaker 2,same 37,sand 3,sash 2,sashes 2,sat 6,saturday 82,saw 8,sawed 3,sawn 3,say 2,says 15,scaffold 3,scared 2,scarfed 3,scratch 2,screed 2,screw 2,screwed 14,screws 5,scribed 2,seal 2,sealant 2,sealed 3,seams 2,seat 7,second 20,see 6,seeing 9,set 3,shaft 22,she 123,she'd 7,she'll 7,shed 4,sheep 2,sheet 6,sheets 2,shell 4,shield 3,shim 3,shims 2,shiny 4,shoes 2,shook 2,shop 2,shore 2,short 4,should 19,shut 3,shutter 4,shutters 2,side 3,sides 3,sill 10,sills 4,since 98,single 4,sink 5,sir 3,sit 3,sitting 6,sixteens 3,sketch 2,skid 2,skin 4,skins 4,slab 12,slabs 2,slate 9,slates 4,slats 8,sleet 3,slid 3,slides 4,slung 2,small 4,smells 5,smoke 2,snow 2,so 953,solar 6,sold 4,sole 2,some 20,somebody 69,someday 2,someone 14,something 3,somewhere 2,soon 6,sorry 22,sort 2,sorted 2,south 2,spacers 2,sparky 4,spindle 3,spoke 3,spokes 2,spray 2,sprayed 2,spring 3,springs 3,spruce 2,square 4,st 3,stacked 3,stacker 2,staging 2,stain 3,stainless 10,stair 2,stairs 4,stand 2,standing 3,stapled 2,starboard 5,start 6,steam 4,steel 13,steps 3,stern 6,stick 2,sticker 2,still 24,stone 3,stood 13,stove 30,stovepipe 2,straight 10,straightening 2,strap 2,strapped 5,stretcher 2,string 2,stringer 2,stripped 4,strips 3,strong 3,studs 2,sums 2,sun 9,sunday 80,sunshine 2,suppose 2,sure 6,swapped 2,swarf 2,swear 2,sweet 5,ta 3,table 2,tacked 5,tail 2,tailgate 3,tailor 2,take 2,tank 24,tape 9,taped 4,tarp 2,tea 4,tell 4,temperature 2,tenons 2,tested 4,testing 3,thank 16,thanks 6,that 401,that'd 4,that'll 13,the 1560,their 2,them 9,themba 2,then 163,there 180,there'll 7,therefore 3,these 4,they 108,they'd 4,they'll 19,they're 62,they've 8,thick 3,thinking 2,third 2,this 28,those 28,though 20,through 6,thunder 3,thursday 83,thus 2,tie 2,tight 4,tiles 3,till 2,timber 2,tipped 2,to 46,today 6,toe 2,together 2,told 4,tomorrow 10,too 17,took 14,top 12,tops 6,tower 2,town 2,trailer 3,treads 2,treated 4,trench 5,trimmed 3,trouble 3,truck 9,tube 5,tubing 3,tuesday 73,turned 3,turning 2,turns 2,tuttle 3,twice 5,typical 3,tyres 6,ugly 5,um 12,uncut 4,under 23,underneath 4,unless 2,until 4,up 6,uprights 2,used 2,valve 2,vanity 2,vent 2,vents 6,very 10,vice 2,vinyl 2,voice 2,wait 6,waiting 2,walked 2,wall 9,walls 12,want 3,wants 8,warm 3,was 6,waste 2,watch 2,water 32,we 79,we'll 11,we're 19,we've 17,wedges 2,wednesday 81,wee 2,weighbridge 3,weighs 3,weight 5,weld 3,welded 5,welder 7,well 47,went 7,were 3,wet 10,what 75,what'd 2,whatever 7,wheel 4,wheelhouse 3,wheels 2,when 30,whenever 3,where 18,wherever 2,which 180,while 10,white 6,who 30,whoever 6,whole 5,why 3,wi 5,width 2,wife 10,will 5,wind 7,window 10,windows 13,wire 8,wiring 9,with 169,without 9,won't 7,wool 7,word 2,working 5,worktop 7,worth 3,would 19,would've 2,wouldn't 6,wrapped 7,write 2,wrong 4,y'all 8,yard 6,ye 4,ye'll 2,yeah 16,yellow 3,yep 2,yes 18,yesterday 3,you 87,you'd 8,you'll 40,you're 6,you've 8,zinc 2,zip 2
a:# 615,baby 5,bad 3,bag 8,banana 3,bank 3,bar 9,barbecue 2,bare 2,barge 2,barn 8,barrel 3,bath 6,bathtub 2,batten 5,battery 2,bay 3,beach 3,bead 2,beauty 6,bed 3,beer 7,bell 2,bench 3,bend 2,bent 3,bicycle 4,big 4,bigger 12,bilge 2,bird 3,biscuit 12,bishop 3,bit 39,blade 2,blister 3,block 4,bloke 6,blue 2,board 6,boat 15,bob 2,boil 2,bone 6,bookshelf 2,boot 2,borrowed 2,bottle 3,bow 5,box 9,boy 4,bracket 2,brass 2,breaker 3,breath 3,brick 3,bridge 2,brisket 2,broom 2,bubble 5,bucket 14,bug 2,bulge 2,bun 3,bus 4,bush 3,cabin 2,cake 2,call 3,candle 2,cap 2,caravan 10,carpet 2,carton 2,cast 3,cat 6,cathedral 2,cave 2,ceiling 3,cellar 2,century 2,certain 3,change 2,chap 2,chapel 6,check 2,chicken 3,child 3,chimney 2,chip 2,church 8,clamp 2,clay 2,clean 2,coat 11,coded 2,coffee 4,coffin 2,coin 3,colander 3,cold 3,colour 2,come 5,coming 2,condo 3,confession 3,cooler 2,corner 6,correction 3,couch 2,couple 4,cow 3,crack 13,crane 9,crate 5,cricket 2,crimp 2,crooked 2,cross 2,cup 3,cuppa 3,curtain 2,curve 2,cushion 3,cut 3,cylinder 3,day 46,dead 6,deeper 2,degree 2,dentist 2,deposit 2,desk 2,dial 2,diameter 2,die 2,diesel 3,diet 2,different 3,dime 3,dinner 2,dog 5,dollar 2,donkey 2,door 12,doughnut 2,dozen 5,drain 5,draught 3,drawer 5,drawing 4,dream 2,drill 2,drip 4,drop 3,drum 3,dry 10,face 4,fail 2,fair 5,fall 3,fan 6,fat 5,feed 2,feeling 2,fella 13,fellow 6,figure 2,film 6,fine 2,finger 3,fire 9,fish 3,fixed 2,flask 2,flat 7,floor 6,flue 4,foot 10,fortnight 8,foundation 2,frame 5,friend 5,frog 3,full 13,fuse 2,gale 3,gallery 2,gallon 2,gantry 2,gap 3,gauge 4,gearbox 2,generator 3,gentleman 5,glass 3,go 2,goat 3,good 26,grand 3,grate 2,graving 5,great 4,grinder 2,grudge 2,guard 2,guy 6,hair 6,haircut 2,hairline 3,halfs 3,hammer 3,hand 5,handsaw 2,hat 12,hatchback 3,having 2,header 2,heap 2,heat 11,heater 6,hen 3,heron 2,hill 2,hip 2,hoist 2,hole 26,hollow 2,hope 2,horsebox 2,hose 5,hot 3,house 12,hundredth 6,hurry 2,hydraulic 4,jig 2,jigsaw 3,job 5,joist 2,joke 2,jug 2,ketch 2,kettle 5,kid 3,kilo 2,king 2,kit 2,kitchen 5,knot 2,lad 4,ladder 3,lady 8,lamb 2,lap 3,laser 4,lathe 7,launch 2,lawn 2,layer 4,leak 3,lecture 2,lemon 3,lend 2,length 2,lens 2,letter 15,level 6,liar 3,library 2,lid 2,lie 3,light 3,line 5,liner 2,list 3,litre 2,little 17,living 2,load 2,loaf 2,lock 2,loft 2,long 3,longer 5,look 10,loop 2,lorry 7,lot 11,lovely 6,lower 2,machine 3,mailbox 2,mallet 2,man 28,manifold 3,marble 4,mask 2,mast 2,mate 5,memory 2,mess 2,metal 2,metre 16,mezzanine 2,mil 7,milk 2,mill 2,millimetre 2,minimum 3,minute 9,month 5,morning 2,mortgage 2,mouse 7,mud 5,mule 5,museum 2,nail 4,new 65,nice 4,night 4,no 2,note 4,number 5,nut 2,packing 2,pair 6,pallet 7,pane 2,panel 3,pantry 2,patch 6,pattern 5,pencil 11,pergola 2,permit 4,person 4,phase 2,phone 2,photo 3,photograph 4,picture 5,pie 6,piece 11,pipe 10,pitch 4,pizza 2,place 2,plan 2,plank 8,plaster 2,plastic 3,plate 7,plinth 4,plug 2,plumb 2,podcast 3,pond 3,pony 3,pool 5,pop 4,porch 2,postcard 3,pound 5,prayer 7,price 9,priest 2,promise 17,proper 21,pump 6,quarry 2,quarter 2,question 2,quiet 2,quote 4,raccoon 2,rack 2,radio 3,rafter 2,rail 2,railroad 2,ramp 2,rasp 2,rattle 4,red 2,relief 2,replacement 3,ring 3,ripper 2,river 2,rock 3,roof 8,rope 5,row 3,run 4,saddle 2,sandwich 4,saturday 6,sauna 3,saw 2,scaffold 2,school 6,schooner 2,scrap 2,screen 2,screwdriver 3,seal 2,seam 2,seat 4,second 13,set 5,shade 4,shaft 2,shed 3,sheet 15,shelf 4,shield 2,ship 3,shoehorn 2,shop 5,short 3,shovel 3,shower 5,side 37,single 5,sit 2,sixteenth 5,size 2,sketch 2,skin 4,skip 2,skylight 2,slab 5,slat 2,slate 3,slide 3,slim 2,sliver 2,slot 2,slow 2,small 5,smaller 2,smell 2,smith 2,sofa 2,solar 2,solemn 2,sound 2,spanner 2,spare 2,spider 2,spiral 2,split 5,spoon 6,spring 3,square 3,squeeze 2,stack 2,stair 2,stamp 2,start 2,steel 16,step 8,stick 12,stone 6,story 2,stove 2,straight 5,straw 2,string 9,strip 10,stripe 2,submarine 2,sunday 2,swallow 2,swan 2,swimming 2,switch 2,table 2,tall 3,taller 2,tap 4,tape 15,tarp 4,teacher 2,teacup 2,telephone 2,tent 2,tenth 3,test 2,thicker 2,thing 5,think 3,third 5,thou 3,thumb 6,time 6,tin 2,tire 3,toilet 2,ton 2,tonne 3,tooth 2,torch 2,tour 4,tractor 3,trailer 7,tram 3,tray 3,tree 2,trench 3,trestle 2,truck 11,tube 2,tuesday 2,tugboat 2,twin 2,ute 3,van 2,vent 3,very 9,viewer 2,wagon 2,walk 3,wall 5,warm 4,wash 2,wasp 2,water 2,weak 2,wedding 3,wee 2,week 35,welder 6,wet 9,wheel 2,wheelwright 2,whisker 4,whistle 2,whole 21,wider 2,win 2,winch 2,window 11,wire 3,witness 2,woman 7,wood 2,word 7,wren 2,yacht 2,yard 3,year 3,young 2
able:to 3
aboard:and 2
about:# 53,a 25,an 2,her 2,in 2,is 2,it 26,my 2,seats 2,that 11,the 67,them 2,this 2,which 2
above:# 7,it 2,the 15
according:to 3
accordingly:the 2
account:of 14
ache:in 2
across:and 4,at 4,by 3,from 2,it 2,the 34,there 2,with 2
ad:says 2
add:it 2,the 2
added:it 2
adding:up 2
aff:the 3
after:# 5,a 8,all 4,church 2,next 2,that 7,the 8
afternoon:and 4,from 3
again:and 2,at 2,i 2,in 3,on 2,with 6
against:the 11
agreed:on 2
ahead:and 2,of 12
aim:to 2
ain't:# 3,a 3,stretching 2
air:bag 2,behind 3
alan:boot 2
all:# 108,afternoon 2,along 4,and 2,around 3,bar 2,bent 2,but 4,cut 3,day 7,done 3,down 3,gotta 2,in 9,it 2,its 2,morning 2,my 2,need 2,night 4,of 28,on 2,out 2,over 4,raked 2,riveted 2,round 19,stacked 2,that 6,the 49,them 2,this 4,those 3,told 6,too 2,up 16,want 2,week 2,welded 2,winter 2
allowed:# 2
along:that 3,the 16,with 3
already:# 4,cut 5,in 2,routed 2,sawn 4,so 2,the 2
alright:the 2
also:heard 2,i 3,the 5
alternator:charger 2,on 2
always:the 2,was 2
am:a 2,changing 2,going 2,i 7,not 10,to 2
amp:# 4,breaker 6,circuit 2,fuse 11,hour 3,hours 24,panel 2
amps:and 2,at 2,on 6
an:a 2,actual 2,afternoon 3,air 2,all 2,angle 3,answer 2,egg 5,eighth 10,electric 2,email 2,engine 3,envelope 4,evening 2,hour 28,idiot 4,improvement 2,inch 60,inverter 2,l 2,oak 5,old 13,onion 2,order 2,ounce 3,own 2,upturned 2
anchor:bolts 3
and:# 543,a 503,about 3,after 5,all 54,an 15,any 3,as 5,asked 2,at 7,ate 2,back 3,bad 3,be 3,bedded 3,bedding 2,before 7,behind 5,being 2,black 2,bled 2,board 2,bolted 8,bolting 2,both 8,bottom 2,bought 2,braced 3,built 2,by 16,call 3,came 3,clipped 2,closed 2,cold 2,come 3,comes 2,complained 2,cut 7,dee 2,did 4,do 2,don't 6,dont 2,down 12,drilled 3,dry 3,each 3,earl 2,evening 3,every 18,everything 11,fifth 2,filled 3,first 2,flashed 2,flax 2,for 6,forgive 2,forth 2,friday 2,from 7,gas 2,get 7,given 2,go 3,goes 4,gone 8,got 2,gravel 3,groove 5,had 2,hang 2,happy 2,has 3,have 8,he 55,he'd 3,he'll 3,here 2,his 6,hit 2,hung 10,i 304,i'd 25,i'll 19,i'm 75,i've 114,if 12,im 4,in 15,is 3,it 320,it'd 3,it'll 13,its 18,jase 2,keep 2,knocked 2,lagged 3,laid 3,lapped 2,leave 2,left 2,level 3,lime 3,look 6,looked 4,lying 2,made 3,me 5,measured 6,mine 2,most 5,mum 2,my 44,nailed 2,never 5,new 3,next 3,no 41,nobody 13,not 59,nothing 15,now 10,oakum 2,off 4,on 15,only 5,out 4,over 2,paint 2,painted 3,pegged 2,pick 2,pinned 2,plugged 3,plumbed 2,pointed 2,pour 2,pressed 2,pretty 2,primed 2,pulled 3,put 6,rain 2,riveted 2,rolled 3,round 2,rust 2,said 4,sat 2,saturday 2,sawed 2,says 2,screwed 6,see 3,shaft 2,she 57,she'll 3,shes 6,since 4,sitting 3,so 13,some 4,somebody 26,someone 2,something 2,stacked 6,standing 3,stitched 2,stood 2,strapped 3,straw 2,sump 2,tacked 3,taped 2,tested 2,thank 3,that 109,thats 2,the 634,their 2,them 3,then 40,there 84,they 33,they'd 3,they'll 6,they're 42,they've 4,thick 2,thicker 2,this 6,those 12,thought 2,tied 2,to 5,told 2,took 2,trev 2,under 3,up 2,very 2,walked 2,we 26,we'll 2,we're 5,we've 3,wedged 2,welded 4,welding 2,went 3,weve 2,what 16,when 7,where 5,while 2,will 2,wired 2,with 16,without 2,won't 2,would 4,y'all 2,yes 13,yesterday 2,you 21,you'd 2,you'll 8,you've 3
angle:grinder 3,iron 2
another:# 19,casting 2,day 4,matter 2,to 2
answer:by 2
antenna:wire 2
any:more 3,of 7,ply 2,timber 3,wood 3
anybody:stands 2,who 2
anything:else 5,gets 2,over 2,that 6,under 3,wooden 2
apart:and 4,at 2
apologise:to 2
arch:has 3,is 2
are:# 105,a 9,all 15,already 3,an 2,at 14,back 4,bedded 2,bent 3,bolted 4,bought 5,bright 2,broken 2,built 2,coming 10,cracked 2,cut 16,docked 2,done 5,down 19,drawn 2,dug 2,fine 2,finished 3,firewood 2,getting 5,glued 10,going 16,gone 3,good 5,hard 2,here 8,hung 3,in 36,inside 2,knocked 2,laid 3,like 5,long 2,made 2,missing 3,morticed 2,nailed 4,no 3,not 5,now 2,oak 4,off 4,on 23,ordered 10,out 13,planed 2,ply 3,poured 4,promised 2,pulled 4,ripped 3,screwed 4,shaved 2,sitting 3,stacked 2,stainless 2,standing 7,still 4,stood 3,stuck 3,that 8,the 11,through 3,to 8,too 8,trimmed 6,turned 2,under 3,up 17,using 2,wanted 2,we 2,welded 2,white 2,wired 2
aren't:going 2
argue:with 2
arguing:with 3
arms:are 3,i 2,like 2
around:# 4,a 2,here 2,the 3
arrived:on 5
arrives:on 2
arvo:with 2
as:# 6,a 65,all 2,drawn 4,ever 3,far 4,for 7,gold 2,i 15,i'm 3,i've 2,in 2,is 2,it 19,much 2,my 8,new 2,of 4,promised 2,several 2,sharpened 2,she 5,sin 2,soon 10,straight 2,that 4,the 25,there 4,they 5,threatened 4,to 3,well 25,you 5
ash:for 2,is 2
ask:for 2,him 2,me 12
asked:about 8,could 2,for 3,how 4,if 8,me 4,the 4,what 5,whether 3
asking:what 3
asks:about 2
at:# 275,a 33,about 2,all 7,an 2,breakfast 2,christmas 2,each 5,either 3,every 2,his 2,is 3,it 26,its 2,last 12,least 26,lunch 2,me 11,minus 2,most 2,my 8,night 5,noon 9,on 2,once 2,that 11,the 293,their 2,them 3,us 2
ate:a 2,the 2
august:and 2
aunt:is 2
away:at 2,by 2,for 4,from 3,in 2,the 3,to 2
axle:# 2,and 2,going 2
baby:head 3
back:# 4,a 3,and 11,are 2,at 2,axle 2,by 3,corner 5,door 5,doors 2,edge 2,end 3,for 2,from 7,gable 2,gear 4,has 3,in 15,is 3,knows 2,left 3,like 2,monday 2,now 2,of 15,off 5,on 13,out 2,over 2,plate 3,slope 2,so 2,step 2,the 4,there 2,thursday 2,to 30,together 5,tomorrow 2,tuesday 2,under 4,up 9,voted 2,wall 10,wheel 2,with 6
bad:# 2,for 2,language 2,news 7,words 2
bag:of 3
bags:of 2
ballast:us 4
bang:on 7
bar:# 5,as 2,at 2,for 3,i 2,in 4,on 2,the 3
bare:and 2,as 2,floor 3,metal 4,steel 3,wood 2
barn:door 6,doors 2,full 2,post 2
barry:had 2
bars:are 4
base:cabinets 2,has 3,is 2
bat:woman 2
bath:in 4
bathroom:is 3,not 2,scale 2
battens:at 3,landed 2,on 2
batteries:by 2
battery:# 2,and 2,box 3,came 2,for 2,is 3,lithium 2,to 2
bay:of 2,to 2
bays:are 2
be:# 124,a 46,able 2,an 2,and 3,at 17,bent 2,black 2,bled 2,bored 4,bought 4,brief 2,built 3,called 2,cast 2,cedar 3,cheaper 2,checked 2,cleared 2,coming 2,cut 9,doing 2,done 8,dressed 2,fetched 2,finished 4,fitted 3,for 2,found 6,friday 2,got 7,had 2,held 2,here 20,hired 2,hung 2,in 6,kept 4,laid 2,let 2,lifted 3,longer 2,made 4,making 2,my 2,nice 2,no 4,on 15,ordered 9,out 2,over 2,packed 2,painted 2,planed 4,planing 2,pressed 2,ready 3,replaced 3,replacing 2,right 2,rolled 2,run 3,running 2,safe 2,saturday 2,sawn 2,scarfed 3,sealed 2,shortened 2,shown 2,sistered 2,sitting 2,stretched 2,stripped 2,taken 2,taking 2,taller 3,the 10,there 5,told 2,trimmed 4,turned 6,under 5,up 2,walking 2,welded 2,with 7,working 2,you'd 2
beam:# 5,and 3,i 2,in 3,is 4,of 3,over 3,with 2
beams:and 2,are 10,came 2,go 2,have 2,i 2,in 2,is 2,to 3
bearers:are 8
bearing:either 2,i 2,on 3,poured 2
bearings:came 2
beats:a 2
because:# 6,a 7,he 2,i 28,i'd 10,i'm 14,i've 9,it 17,its 2,my 8,nobody 7,of 6,she 2,somebody 2,steel 2,that 7,the 40,then 5,there 4,they're 2,with 4,you 4
becomes:# 2
bed:# 7,and 3,board 2,bolts 4,box 2,frame 5,goes 2,going 2,i 2,is 3,it 2,logs 6,of 2,on 2,with 3
bedded:and 3,in 10,on 2
beds:are 5,have 2
bee:lady 2
been:# 6,a 3,and 12,at 4,bought 2,carrying 2,clocked 2,craned 2,cut 7,doing 2,done 3,going 2,hacked 2,here 2,in 4,lifted 2,lined 2,made 5,measuring 3,moved 2,notched 2,on 5,out 2,placed 2,posted 2,pulled 3,put 3,putting 2,raining 2,run 4,rung 2,sat 2,scraped 2,shortened 5,shouting 2,stood 2,studying 2,swapped 2,talked 2,thinking 3,through 5,told 4,touched 2,turned 2,under 3,up 2
before:# 2,a 4,any 10,anybody 8,anyone 3,anything 7,bed 2,breakfast 3,friday 6,he 6,i 25,i'd 3,i've 3,it 14,lunch 3,my 3,next 5,saturday 3,she 5,that 8,the 50,then 2,there 4,they 8,they'll 2,thursday 3,tuesday 2,wednesday 4,ye 2,you 5
begin:with 4
behind:# 2,a 2,it 19,me 10,my 2,the 37,us 4
being:a 4,brought 2,in 2,made 2,no 2,the 4,what 2
believe:it 4,me 2
bell:rang 2
below:# 9,the 9
bench:goes 3,has 2,height 2,is 15,runs 2,to 2,top 8
bend:over 2,that 2
bent:and 3,in 2,it 4,like 2,over 2,tape 2,the 2,up 3
bents:are 2
beside:it 4,the 2
better:in 2,than 6
between:# 7,a 2,and 2,centres 5,coats 15,it 3,its 2,me 2,the 35,them 6
beyond:# 2
bi:fold 2
big:# 6,butt 2,ones 3,room 2,tank 2
bigger:bus 2,crane 2
bilge:pump 10
birch:is 3
bird:nest 3
biscuit:tin 5
bit:came 2,in 2,of 33,off 3,on 3
black:goo 2
blank:has 2
blanks:are 3
bless:her 2,him 7
block:for 2
blocks:are 2,have 2
bloke:at 2,he 2,on 2,reckons 2,up 2,who 4,with 2
blower:came 2
blowing:a 3
blue:light 2
board:got 2,in 2,is 3,on 3,to 2
boards:and 4,are 15,come 2,down 2,for 2,have 5,i 3,of 2,on 6,run 3,to 2,up 3
boat:i'd 2,that 3
bob:and 2,off 2
body:# 2,is 4
boiler:# 2
bolt:wasted 2
bolted:and 2,down 5,every 4,in 2,it 3,on 2,through 2,to 4,up 7
bolts:and 4,are 13,get 2,in 2,through 2
bone:dry 4
book:and 2,is 2,says 3,that 2,wants 4
bore:gauge 2
bored:# 2,to 2
borer:in 2
born:in 2
borrow:a 3,the 4
borrowed:a 3
borrowing:a 2
both:coats 3,dropouts 2,edges 2,ends 3,halves 2,hubs 2,long 2,of 17,sides 18,ways 2
bottle:jack 2,jacks 3
bottom:# 3,and 2,is 2,lugs 2,of 9,rail 4,rails 2
bottoms:of 2
bought:# 3,a 24,and 4,by 2,her 2,the 11
bow:ball 2,thruster 2
bows:are 2
box:inside 2,is 8,itself 2,needs 2,off 2,says 2,section 2,under 2,up 2
boxes:have 2
boy:in 2,that 2
bracket:drawings 2,for 2,slotted 2,up 2
brackets:and 2,are 5
brake:hose 2,hoses 2
brakes:must 2
brand:new 3
brass:man 3
brasses:are 2
breaker:trips 2
breath:of 2
breathe:on 2
brick:either 2,end 2,gets 2,with 2
bricks:are 4,is 2
bridge:deck 2,on 3
bring:a 8,coffee 2,it 2
bringing:it 3,the 3
brings:it 2,the 2
bronze:bar 2
broom:and 2
brother:in 12,says 4
brought:back 2,it 2,the 5
brush:down 2
brushed:the 2
bucket:boards 2,ends 2,of 4
bucks:and 3,the 2
bugs:are 2
build:a 2
building:a 3,along 2,control 2
built:# 3,a 2,and 2,for 4,his 2,in 7,it 6,the 3
bulk:had 4,head 3
bulkhead:and 2
bundle:of 2
bunk:frames 2,tops 3
bunks:are 2
burn:it 2
burner:to 2
burying:it 2
bus:shelter 2
bush:got 2,is 5
but:# 5,a 4,after 2,hes 2,i 9,i'm 6,in 2,it 15,its 2,no 7,nobody 2,not 8,only 2,that 6,the 21,then 2,there 9,they 2,they're 2,we 2,who 3
butcher:block 3
button:and 2
buy:a 11,it 2
buying:a 6
by:# 158,a 9,an 2,bucket 3,courier 2,dinner 4,easter 2,friday 38,hand 8,headlamp 3,it 4,itself 2,lamplight 2,lunch 2,me 4,monday 11,my 6,next 4,noon 3,now 10,parcel 2,saturday 14,some 3,somebody 5,sunday 11,supper 3,telephone 2,tens 3,the 110,then 5,thursday 16,tuesday 17,wednesday 35,with 2
cabin:# 4,floor 2,is 2,sides 3,sole 2
cabinets:are 2
cable:# 4,came 3,for 5,i 2,in 2,is 2,to 3,turned 2
cables:in 2
caliper:on 2
calipers:on 3
call:by 2,it 14,the 8,them 2,to 2
called:in 3,the 4
came:a 2,and 3,at 9,away 5,back 3,by 6,down 7,for 3,friday 6,from 2,home 8,in 2,monday 4,off 8,on 7,out 19,saturday 2,the 4,this 6,thursday 2,to 6,today 3,up 6,wednesday 3,with 10,yesterday 27
can:be 15,climb 2,come 2,do 2,find 2,get 7,go 6,have 5,hear 7,hold 2,laugh 2,lift 2,live 5,only 3,push 6,put 6,reach 2,read 3,rest 2,saw 2,say 2,see 16,sit 3,sleep 3,smell 3,stand 7,start 2,stay 4,still 2,stop 3,take 3,wait 3,walk 2,want 3,wear 2,you 4
can't:argue 2,be 20,cut 4,drill 2,feel 2,find 2,get 5,go 22,have 3,lift 3,move 2,read 2,see 2,start 8,weld 4
cannot:be 3
cant:get 2,go 2,rail 2
canvas:bedded 2,came 2,come 2,is 8
cap:and 2,frame 2,lift 2,rail 2
caravan:i 2
carcass:ends 3,is 3,sides 2
care:how 2
carriage:bolts 2
carried:it 2,the 2,them 3
carry:a 3,that 3,the 3
carved:in 2
case:is 2,you 2
cast:a 2,iron 10
casting:to 2
cat:had 2,has 3,out 2
catch:a 2,them 3
caught:the 2
cause:i 4,it 2,ive 2,the 10,then 2,you 2
cedar:for 2,strips 2
ceiling:# 3,going 2,panels 2
cement:board 2
cent:on 3
centimetre:high 2
centimetres:across 2,and 2,apart 3,each 2,of 8,too 3
centre:and 2,height 2
centres:and 2
ceramic:spacers 2
chain:block 2,hoist 4
chair:# 2,wheel 2
change:a 3,of 3
changed:it 3,my 7
changing:the 2
chap:at 2,who 2
chase:the 4,up 3
chassis:is 3,rail 3
cheaper:than 4
checked:it 3,with 3
checker:plate 2
cherry:picker 3
chewed:through 2
chisel:and 2
chop:saw 3
chucking:it 3
chuffed:with 2
church:pew 2
clay:and 2
clean:across 2,as 2,shoes 2,through 4,to 2
clear:# 2,all 3,and 2,by 2,of 4,the 2,through 2,to 3,under 2,width 2
clears:the 2
close:by 2,it 2
closed:with 2
closer:than 4
cloth:# 2,on 3
club:says 3,won't 2
co:op 7
coaming:is 2
coamings:i 2
coat:is 2,of 14,on 4
coats:and 4,of 12
coded:man 2
coffee:can 3
coir:rope 2
cold:and 3
collar:for 2
collect:the 2
colour:is 2,of 7
come:along 8,and 4,apart 2,back 9,by 3,down 20,friday 4,higher 2,home 4,in 6,monday 2,off 21,on 10,out 27,right 2,the 3,thursday 3,to 11,today 2,tuesday 2,up 5,with 3,yesterday 3
comes:a 6,apart 2,back 2,by 2,down 6,in 8,off 10,on 6,out 15,over 3,the 4,through 5,to 4,tomorrow 2,tuesday 2,up 7,with 2
coming:apart 2,down 14,friday 6,from 2,home 2,in 8,monday 6,off 7,on 6,out 3,saturday 3,the 3,through 2,thursday 6,to 3,tomorrow 2,tuesday 8,up 5,wednesday 7
comma:# 5
company:is 2
concerning:the 2
concrete:in 2,slabs 2,with 2
condo:i'd 2
contract:is 3
cooling:water 2
copper:nails 4
corner:been 2,by 3,gone 2,in 2,is 2,it 2,on 2,post 7,posts 4,to 7
correction:first 2
cost:# 2,breakdown 3,me 4,of 2
costs:more 2
cotton:and 3
could:also 2,be 2,cry 2,do 3,eat 3,get 3,hang 3,have 6,lose 2,not 3,park 2,post 10,roll 2,see 3,shim 2,ski 2,spread 2,stand 2,you 2
could've:bought 3
council:say 4,want 2
count:on 3,the 2
counted:# 3,it 2,the 5
counter:# 3,going 2,top 2
county:got 3,man 3,says 3
couple:of 5
course:it 4,of 3
courses:are 2,of 2
cousin:has 2
covering:board 3
covers:are 2
crack:in 8
cracked:at 2,clean 3
crane:and 2,man 6,wants 2
crate:you 2
crawled:under 2
cream:over 2
crew:bench 3
cried:a 2
cross:bars 3,members 5,my 7,slide 2
crossways:at 2
cubic:metres 3
cup:of 2
cupboard:doors 3,sides 2
cupboards:are 2
curtain:rail 2
cushions:are 2
cut:# 4,a 6,all 5,and 16,any 3,are 2,back 2,down 3,em 2,ends 2,for 6,from 2,in 10,it 6,loose 2,me 3,nails 2,off 4,on 7,out 7,over 2,that 5,the 45,them 2,this 2,till 3,to 8,too 2,until 2,will 2
cutout:# 2
cuts:out 2,the 2
cutting:out 3,that 5
dad:trailer 2
daft:money 2
dairy:tanks 2
dare:say 2
dash:to 2
date:next 2
daughter:counted 2
day:# 4,after 2,and 8,before 2,between 2,he 2,if 2,late 9,of 10,over 3,the 4,to 2,we 2,with 2
daylight:robbery 2
days:and 6,are 2,at 3,before 10,early 2,late 5,of 7,on 3,or 2,under 2,we 2,with 2
dead:calm 2,level 6,man 2,square 2
deal:of 4
decent:about 2
decided:against 2,on 2
deck:# 6,and 4,at 3,beams 4,boards 3,down 2,gonna 2,i 2,in 2,off 2,to 3,with 2
dee:wants 2
deep:# 2,and 4,in 2,the 2
deer:camp 2
degrees:and 4,at 4,for 3,in 5,it 2,of 2,on 6,or 5,so 2
delivered:yesterday 2
depend:on 2
depot:monday 2
destination:sign 2
diameter:of 2
did:# 2,a 4,come 2,get 3,his 2,i 17,it 11,look 2,my 3,not 9,see 2,that 2,the 24,them 2,think 4,we 4,wonder 2
didn't:get 2,i 5,touch 2
diesel:and 2,heater 2,job 2,tank 2
dig:the 2
dinner:plate 2,time 5
ditch:is 2
do:# 3,a 8,about 3,all 2,i 6,is 3,it 22,nicely 2,not 8,that 12,the 19,this 4,with 5,you 5
does:a 2,anybody 2,anyone 3,it 3,not 5,that 6,the 6,to 2
doesn't:do 2,fit 3,go 3,rain 2,weep 2
dog:got 3,the 2
doing:# 2,a 5,by 2,in 2,it 5,that 2,the 7
dollar:pistol 2
dollars:a 4,and 3,for 2
don't:anybody 2,ask 7,care 5,get 4,go 6,have 5,hold 2,know 7,like 2,need 5,nobody 2,put 2,reach 2,say 5,sit 2,tell 9,want 8,write 3
done:and 7,before 2,by 5,cut 2,for 2,in 3,is 2,it 2,its 3,over 2,the 3,up 4,with 5
door:# 9,and 5,cat 2,dropped 2,frame 4,in 2,is 11,itself 3,leaf 2,like 2,on 5,opening 5,sticks 2,that 2,through 2,to 3,with 2
doors:are 4,open 3
doorway:# 2
double:joint 2,wall 2
douglas:fir 3
down:# 14,a 3,after 3,ahead 3,an 2,and 9,another 2,as 5,at 7,before 3,between 2,both 5,by 6,dry 2,every 2,for 8,from 2,here 2,in 9,inside 2,it 4,on 19,once 2,over 2,past 2,she 2,soon 2,the 47,them 2,there 4,through 3,thursday 2,till 3,to 58,tonight 2,until 2,wall 2,when 3,where 3,with 3
dozen:eggs 2
drain:is 2,the 2,to 3
drank:# 2
draw:up 3
drawer:# 2
drawing:# 2,and 2,by 2,for 2,from 2,in 2,it 2,of 2,up 2
drawn:and 3,it 4,the 4,up 2
draws:# 7
dreaming:about 2
dressed:the 2,until 2
drew:the 4
dried:out 5
drill:a 2,the 3,where 2
drilled:the 3
drip:tray 2
dripping:on 2
driver:seat 3,side 6
drivers:window 2
drop:# 2,a 3,in 6,it 2,on 2,saw 2,vent 3
dropped:# 2,a 7,in 5,it 3,on 4,the 12
dropping:it 3,the 2,to 4
drops:# 2,in 4,to 4
drove:# 5,her 2
drunk:its 2
dry:and 2,as 8,day 12,for 4,in 2,out 2,rot 2,week 3
duct:for 2
due:friday 3,monday 3,on 2,thursday 3,wednesday 3
dug:# 2,a 2,and 5,for 2,out 3,the 2
dust:in 3,sheets 2
each:# 5,and 3,end 20,of 9,one 2,other 3,side 33,way 4,with 2
earth:and 2
east:and 2,window 2
eat:it 2,the 2,with 2
eating:my 2
eats:like 2,the 3
eave:# 2,to 2
eighth:inch 2
eighths:by 3,each 2,plate 2,thick 2,wide 3
either:end 5,side 11
elbow:up 2
elbows:have 2
electrician:has 2
else:gets 2,he'll 2,the 2
em:and 4,in 2,off 2,on 4,out 2,so 2,that 2,to 2,up 3
email:the 2
end:# 3,and 4,for 3,grain 3,hooked 2,of 24,on 2,panels 3,play 2,the 2,to 12,up 2,while 2
ended:up 2
ends:are 3,crimped 2,have 2,on 2,should 2,with 2
engine:# 2,bed 3,beds 3,been 2,going 2,hoist 2,hole 2,i 2,in 2,is 4,on 2,people 2
engineer:has 2
engineering:bricks 2
enjoy:it 2
enough:for 4,to 9
euro:for 2,the 4
euros:the 2
even:if 4,the 2
evening:all 2,and 3,from 4,on 2,to 3
ever:have 2,say 3
every:# 74,barrow 2,bit 4,board 3,day 3,evening 2,hole 2,last 11,night 2,plank 2,post 2,seam 2,second 3,single 4,stone 2,time 2
everybody:wants 2
exceed:# 2
except:it 2,the 3
excuse:the 3
exhaust:is 3
expected:on 2
extension:lady 2
eye:and 2
fair:dinkum 2,question 2
faired:and 2
fall:of 3,off 3,out 2
falling:# 3
falls:# 3,to 2
fan:of 2,on 5,wire 2
far:# 2,as 3,end 5
fat:cable 2,for 2,hose 2,stuff 2
father:would 3
feed:mill 2,sack 2,store 2
feel:my 2
feeling:about 2
feels:like 2
feet:across 2,and 3,are 4,by 2,down 2,high 2,is 2,long 3,of 7,on 4,so 2,to 3,up 2
fell:on 2
fella:and 2,came 2,in 4,named 2,that 2,was 2,who 2,with 2,wrote 3
fellow:at 3
felt:and 2,like 2,off 2
fetch:it 2
fifth:on 2
figure:to 2
figured:the 2
fill:it 3
filled:a 2,it 2,the 4
film:goes 2,is 4,of 5,on 4,the 5,up 2
finally:got 2
find:# 3,a 5,it 4,me 3,out 6,that 2,the 7
fine:for 2
fingers:crossed 3
finished:the 2,with 2
fire:and 2,bloke 2,engine 2,extinguisher 2,in 3,lit 2,pot 2
first:# 25,and 2,burn 3,chip 3,coat 11,course 2,day 2,dozen 3,dry 6,fire 7,go 2,is 2,layer 5,night 2,of 6,oil 2,panels 2,place 2,plank 5,portal 2,proper 2,run 4,sheet 2,since 2,start 2,the 4,thing 11,time 10
fit:a 4,for 2,it 2,the 3
fixed:bridge 2,double 2
fixing:to 4
flake:of 2
flap:is 3
flash:off 2
flashing:to 2
flat:# 2,as 2,at 2,bar 4,on 5,one 2,out 2,roof 3
flood:peg 2
floor:# 11,all 2,and 5,at 2,bearers 2,down 4,for 3,frame 2,goes 4,going 3,has 2,i 2,in 3,is 8,it 2,joists 2,of 3,planks 2,so 2,to 15,up 2,video 3,wants 2,will 3,with 5
floppy:tape 2
flue:collar 2,goes 3,hole 2,out 2
flush:and 2
foam:# 3,and 4,board 4,came 2,day 2,down 3,goes 2,has 3,in 2,kit 2,man 2,on 2
foamed:glass 5
foil:boards 2
folded:up 2
folk:keep 2
folks:say 3
foot:# 117,above 2,across 2,and 6,apart 3,at 4,by 3,deep 4,each 2,even 6,goes 2,long 9,of 15,off 2,on 7,pounds 20,to 7,up 2,wide 6
footings:to 2
for:# 66,a 95,about 4,air 3,all 2,an 5,another 6,anybody 3,concrete 2,delivery 2,every 2,friday 7,good 3,grain 2,her 3,him 4,i 3,is 2,it 59,its 5,last 2,like 2,love 2,me 14,monday 5,more 2,my 4,nearly 2,new 2,nothing 4,now 2,once 5,planing 2,real 2,sale 4,scrap 2,sunday 3,that 55,the 331,them 10,they 3,this 5,those 17,thursday 6,today 2,tomorrow 3,tuesday 5,under 2,upstairs 2,us 2,wednesday 4,what 3,when 3,who 2,whoever 7,you 9
forgive:the 2
form:for 2
found:# 5,a 6,it 4,nothing 2,out 2,some 3,that 2,the 5
foundry:has 2
fourth:and 2
frame:and 2,been 2,by 2,for 3,gets 4,has 3,i 5,in 3,is 3,made 2,too 3,was 2
framed:and 2,up 2
frames:# 3,are 9,at 2,instead 2,is 3,together 2
framing:square 2
free:and 3
fresh:dust 2,ones 4,water 4
friday:again 2,and 13,as 3,at 3,evening 2,for 2,i 2,if 3,in 3,like 2,night 7,or 2,the 8,they 2,to 3,week 4,with 2
fridge:is 10,slid 2
from:# 13,a 16,abroad 2,an 3,anything 4,ash 2,floor 2,here 4,inside 2,it 2,me 5,my 4,over 3,scratch 2,start 2,the 151,there 2,today 2,tomorrow 2,town 2,under 3,up 2
front:# 3,beam 3,bearing 2,bulkhead 3,cut 3,door 3,of 4,slope 2,to 6
frost:around 2,on 4
fuel:line 2,tank 7
full:# 2,cost 3,of 11,set 4,tour 2
fully:welded 2
furring:in 2
fuse:and 2,for 4,holder 2,is 6,stays 2
g'day:from 2
gable:the 2
gallery:joists 2
galley:bulkhead 2
gallon:tank 2
gallons:of 2
galvanized:and 2
gap:is 2
garboard:log 3
gas:and 3,fitter 5,is 2,line 4,locker 7,man 10
gauge:# 2,and 2,at 2,down 2,has 2,in 2,on 4,sender 2
gave:it 5,me 7,the 2,you 5
gearbox:covers 2,plate 3
geranium:on 2
get:# 15,a 28,at 3,cut 4,down 2,his 2,hold 3,it 8,me 2,on 5,ordered 2,out 5,past 2,some 3,that 5,the 38,their 3,to 8,up 3
gets:a 10,cut 4,filmed 2,here 4,in 3,its 9,laid 2,lifted 3,no 2,oiled 2,ordered 2,picked 2,the 3,to 3
getting:# 6,a 7,cedar 2,cut 4,in 2,its 2,planed 2
give:her 2,me 5,or 10,the 2,you 10
given:to 3
gives:# 5,me 4,you 2
gland:gets 2,holes 2
glass:and 2,came 4,foam 2,for 4,is 4,lady 2,man 8,people 2,to 2
glue:# 2,a 3,just 2,likes 2,needs 2,wants 2
glued:and 12,on 3,the 5,up 11
gluing:up 2
go:# 6,and 2,at 4,away 2,back 14,down 14,in 32,my 2,off 5,on 24,out 3,over 4,past 4,right 3,round 2,through 9,till 2,to 13,under 3,up 18,with 4
god:help 4
goes:# 3,across 3,back 11,by 3,cold 2,down 9,in 17,near 2,on 20,out 4,over 8,round 2,straight 3,the 5,through 3,to 5,under 3,up 11
going:# 13,across 2,anywhere 2,back 15,by 3,cream 2,crossways 2,down 15,in 11,like 3,near 2,nowhere 2,on 16,out 5,over 3,round 2,through 4,to 87,under 5,up 29,with 9
gone:# 2,and 2,at 2,back 2,down 3,for 8,hard 3,in 4,like 2,off 8,out 2,soft 2,the 3,through 3,to 8,up 6,with 4
gonna:be 19,do 2,have 2,show 2
good:# 5,afternoon 5,and 2,as 3,bit 2,day 3,deal 2,enough 2,evening 14,for 15,lad 2,look 2,news 5,ones 2,steel 2,thing 2,while 2
goop:on 3
got:# 38,a 59,all 2,an 2,and 2,by 2,cut 2,dark 2,dropped 4,em 4,for 2,from 2,her 6,here 4,his 5,in 9,into 2,it 10,its 21,me 3,my 18,new 3,screwed 2,that 5,the 49,through 3,to 75,up 3,wet 2
gotta:be 18,borrow 2,call 2,chase 2,come 2,cut 3,dig 2,do 3,find 2,get 9,go 3,whack 2
grandad:had 3
grandfather:cousin 2
gravel:to 2
graving:piece 5,pieces 3
grease:gone 2
great:deal 2,window 4
green:as 3,oak 2,stuff 2
ground:and 2,off 2,out 2,rod 3,the 3
grounds:that 4
guess:what 2
gully:trap 3
guy:at 3,with 3
had:# 17,a 60,all 3,at 3,been 6,both 3,bought 2,built 2,drawn 2,her 4,his 5,i 3,in 3,it 14,its 18,kittens 2,my 9,on 2,taken 2,the 38,their 10,them 2,this 2,to 9,water 2
hadn't:cut 3,i 4
haint:blue 2
hairline:in 2
hand:and 2,on 10,pump 2,to 4
handed:in 2
handles:and 2
hands:are 2,like 4,smell 2
hang:it 3,on 9,over 2,the 7,them 2
hanger:to 2
hanging:a 2,off 2,the 3
hangs:off 2,on 3
happen:until 2
happy:with 2
harbour:lot 3
hard:as 3
harm:done 3
has:# 5,a 26,also 2,apologised 2,asked 2,at 2,been 54,come 5,done 2,dried 2,eyes 2,given 2,gone 6,got 12,had 5,it 3,its 12,jumped 2,left 3,lost 2,made 2,more 2,moved 6,named 2,no 2,not 2,promised 2,sent 2,taken 5,the 8,to 72,written 2
hat:on 6,that 2
hatch:# 2,boards 3,i 2,is 5,it 2
hate:butyl 2
hated:me 2
hauled:it 3
hauler:# 2
hauling:it 2
have:# 16,a 39,already 3,asked 2,been 40,bought 8,changed 2,chosen 2,come 4,decided 3,done 10,finished 2,found 4,gone 11,got 7,had 16,it 14,its 4,kept 3,left 2,less 3,lost 2,made 5,measured 2,more 3,my 14,no 6,not 5,put 3,said 3,seen 4,settled 2,so 2,some 2,still 2,taken 4,that 7,the 17,their 5,thought 2,to 90,told 3,used 4
haven't:forgotten 2,got 4,so 2
having:# 4,a 14,been 2,that 2,the 5
he:# 4,a 4,ain't 2,also 3,asked 2,at 2,away 2,back 3,been 5,bringing 3,brings 2,came 4,can 9,charged 2,claimed 2,comes 4,could 2,cuts 2,did 3,figures 2,got 7,had 5,has 12,is 9,laughed 4,likes 2,made 2,needs 3,never 2,not 3,on 2,only 2,reckons 6,said 5,say 3,says 15,takes 2,tells 2,the 2,thinking 2,turned 2,turns 3,used 2,wanted 2,wants 7,was 13,went 2,were 2,will 2,won't 2,would 2,wouldn't 3,wrote 2
he'd:be 3,have 3
he'll:be 2,have 2,not 2,want 3
head:and 2,height 3,in 2,plate 2,room 3
header:tank 2
headliner:back 2
headroom:# 3,is 2
headstock:bolts 3
hear:from 2,it 5,me 2,the 4
heard:it 2
heart:pine 2
hearth:# 4,bricks 2,laid 2
heat:cable 2,gun 2,pump 2,shield 4,trace 2
heater:# 2,box 2,came 2,in 2,on 2,shelf 3
heavier:than 2
heavy:as 3
heel:to 2
height:# 3,less 6
held:# 6,a 2,at 2,the 4,up 2
help:me 4,us 2
hen:house 2
hence:the 2
hens:have 2
her:# 4,again 2,and 2,down 4,flat 2,for 4,hat 2,in 5,nan 2,no 2,on 9,out 4,over 5,own 2,to 6,up 9,with 3
here:# 2,and 6,at 2,early 2,friday 4,in 4,is 4,its 2,monday 3,on 8,saturday 2,she 2,since 3,the 10,thursday 4,to 2,tuesday 3,we 2,wednesday 8,you 3
herself:has 2
hey:y'all 3
high:# 2,and 4,pressure 3,water 4
higher:than 5
highway:robbery 2
him:a 4,about 2,at 2,by 4,the 5,to 2
hinge:it 2
hinges:are 5,came 2,for 2,to 2
hire:a 4
his:# 4,drawing 2,grandad 2,head 3,heart 2,holidays 2,in 2,little 3,look 2,money 2,own 10,teeth 2,truck 3,whole 2
hit:# 3,a 2,me 3,something 2,the 7
hoist:is 2
hold:is 5,it 3,me 9,of 4,on 4,the 6
holding:a 2,the 5
holds:# 6,the 2
hole:# 5,for 8,gets 2,i 4,in 13,is 4,now 2,opened 2,saw 4,so 2,through 3,to 2
holes:are 8,by 2,in 3
home:from 2,in 2,with 4
hooked:the 2
hoop:pine 5
hoped:to 2
horse:power 4
hose:and 2,for 2,is 5,on 3
hosed:out 2
hot:as 3,tub 2,water 7
hotter:than 2
hour:an 2,and 7,to 4
hours:a 4,and 3,apart 3,before 3,between 18,from 2,in 9,of 4,on 3,to 3
house:battery 2,corner 2,i'd 4,i'm 2,in 2,is 5,with 2
how:far 2,i 2,it 2,long 2,many 4,much 5,the 3,to 3,we 3,you 3
hubs:are 2
hundredths:of 4
hung:a 3,it 4,off 4,on 4,that 2,the 6,up 3
hunner:and 3
husband:has 2
hydraulic:test 2
i:ache 2,added 2,ain't 12,already 6,am 50,apologise 2,asked 8,been 7,begin 3,believe 2,bent 5,bolted 4,bored 3,borrowed 3,bought 8,built 8,buy 3,call 2,called 4,came 4,can 57,can't 33,cannot 5,cant 2,carried 3,changed 3,chased 2,checked 5,chipped 2,could 26,could've 4,couldn't 3,counted 7,cracked 2,cried 3,cut 30,dare 2,did 53,didn't 4,dig 2,do 26,don't 38,done 4,dont 3,drew 5,drilled 2,drive 2,dropped 10,drove 5,dug 6,eat 2,ever 5,feel 2,figure 2,finally 2,find 7,first 2,fit 2,forget 2,found 12,gave 13,get 26,give 11,glued 5,go 9,got 59,gotta 15,ground 2,guess 2,had 88,hadn't 7,hate 2,have 122,haven't 13,heard 2,held 4,hit 4,hooked 2,hung 10,just 3,keep 8,knocked 6,know 27,laid 13,laughed 2,lay 7,leave 5,left 5,let 4,like 14,live 3,look 5,looked 10,lose 2,lost 3,love 2,made 6,make 10,may 5,mean 16,meant 2,measure 2,measured 17,mention 3,might 3,milled 2,miss 4,misspoke 2,mocked 2,moved 2,must 13,near 2,nearly 5,need 33,never 7,nipped 2,now 2,offered 5,once 5,only 6,opened 2,ordered 4,ought 2,owe 16,own 5,packed 2,paid 5,phoned 2,picked 4,ploughed 2,poured 3,prefer 2,promise 23,promised 3,propped 2,pulled 8,pushed 2,put 52,quit 3,ran 22,rang 14,re 2,read 7,reckon 5,remembered 2,ripped 7,rolled 4,run 5,said 50,sat 12,saw 3,sawed 4,say 12,scraped 3,see 5,seen 2,set 11,shall 17,shan't 3,should 20,should've 6,shouldn't 2,sleep 4,slept 8,slid 5,smell 4,speak 2,spent 3,started 3,still 8,stood 29,stripped 3,stuck 4,swear 14,taped 2,taught 2,tell 7,think 13,thought 19,to 2,told 26,took 12,tore 2,tried 7,trimmed 2,trust 2,turned 4,use 2,used 7,waited 3,walked 4,want 36,wanted 9,was 84,watched 4,weighed 4,welded 4,went 33,were 9,will 34,win 5,wired 2,won 4,won't 11,work 3,would 12,wrote 8
i'd:# 2,a 6,already 5,be 16,been 5,better 2,bought 9,buy 2,call 3,cut 5,do 3,drawn 4,forgotten 4,got 2,had 7,have 37,hooked 4,left 2,like 14,love 5,measured 7,need 2,only 3,pay 2,pencilled 2,put 3,rather 7,read 4,run 2,said 4,sawn 2,say 3,sooner 7,the 3,thought 2,told 2,wanted 2
i'll:be 13,bring 2,call 2,cut 3,do 16,fill 2,film 5,get 5,give 3,have 14,make 2,need 2,not 6,put 7,run 4,see 2,show 17,stand 3,take 6,think 2,walk 2,want 3
i'm:# 22,a 10,about 2,after 8,asking 2,at 2,back 2,bringing 2,building 5,burning 3,buying 2,calling 2,cutting 3,doing 9,dropping 3,figuring 2,fixing 2,getting 2,going 32,gonna 4,hanging 4,having 15,in 5,keeping 8,laying 4,leaving 7,letting 2,lifting 3,lowering 2,making 5,moving 2,no 2,not 64,on 5,only 5,pouring 3,putting 11,raising 3,running 4,sat 2,setting 5,short 4,sick 2,sistering 2,sitting 2,sorry 2,standing 3,still 2,taking 5,the 8,to 7,told 4,up 2,whispering 2
i've:# 10,a 25,already 5,another 2,been 24,borrowed 2,bought 5,brought 2,changed 5,closed 2,come 5,cut 12,done 3,drawn 2,dropped 3,dug 2,found 2,gone 11,got 48,gotta 5,had 18,it 2,just 2,knocked 2,laid 2,left 3,made 8,met 2,moved 2,no 3,not 2,only 4,ordered 3,paid 2,plumped 2,put 4,run 3,said 6,seen 7,settled 4,shortened 2,something 2,still 3,stopped 6,stuck 2,taken 2,that 3,the 13,to 13,told 3,welded 2,yet 2
ice:cream 2,shield 2
if:# 3,anybody 2,i 52,i'd 22,i'm 3,i've 3,it 29,my 4,she 7,she'd 3,that 6,the 25,there 4,they 2,this 9,we 2,we'd 2,you 19,you're 5,your 3,youre 2
ill:do 3
im:# 2,a 2,going 3,not 2
in:# 126,a 112,about 5,again 2,all 4,an 7,and 30,april 2,ash 3,at 14,august 2,bed 6,before 7,behind 2,between 13,bits 4,by 7,case 6,chalk 4,each 5,em 2,english 2,every 2,february 4,for 6,front 6,full 2,hand 6,her 9,here 16,his 10,i 2,is 3,it 66,its 24,january 2,june 2,larch 3,law 18,like 10,lime 4,march 3,me 5,metric 2,mind 3,monday 5,my 52,new 2,oak 3,on 14,once 3,order 3,our 3,over 3,pipe 2,place 6,places 2,ply 2,rather 2,so 4,socks 4,stainless 2,stone 3,summer 2,sunday 2,that 18,the 441,their 8,them 2,there 29,this 13,those 2,thursday 2,till 3,to 16,too 2,town 6,under 4,until 3,water 2,wednesday 3,when 2,while 2,white 4,with 13,without 3,writing 6,your 2
inch:and 65,at 2,by 2,centers 4,centres 4,each 6,fir 3,hole 2,holes 2,is 3,it 2,more 2,now 3,of 5,off 3,plate 2,ply 2,shy 2,spacing 3,tall 2,thick 5,too 2,top 2,tube 2
inches:a 2,above 2,across 2,all 2,and 5,apart 2,at 3,behind 2,between 2,by 2,clear 2,from 5,high 4,in 2,long 3,of 20,off 14,on 5,or 2,over 2,past 2,short 3,tall 2,thick 3,through 2,to 6,too 3,up 2,wide 5
including:the 2
induction:hob 3
injectors:are 2
ins:are 2
inside:# 7,and 2,breadth 2,is 2,it 5,of 4,standing 2,that 2,the 13
inspector:been 2,had 2
instead:of 33
insurance:wants 2,won't 2
into:a 3,that 3,the 16
inverter:# 5
iron:# 3
irons:are 2
is:# 224,a 69,all 4,already 6,also 2,always 2,an 5,at 8,back 4,battened 2,bedded 2,behind 4,bent 2,booked 3,bored 2,built 2,called 2,clean 3,closed 2,coming 14,cracked 4,cut 7,deep 2,done 5,down 4,drawn 2,dripping 3,dropping 2,dry 4,due 2,dug 5,embarrassing 2,enough 2,expected 3,fierce 2,filled 2,fine 2,finished 4,for 7,found 2,from 4,full 2,glued 3,going 17,gone 9,good 3,he 2,her 3,here 4,home 2,how 3,hung 3,in 20,inch 2,it 28,its 2,laid 2,left 2,made 5,monday 2,my 7,new 2,next 3,no 10,not 15,nothing 2,now 14,of 3,older 3,on 26,only 3,open 3,ordered 7,out 6,over 5,painted 2,pending 2,planed 2,plenty 2,promised 3,punky 2,rated 2,rejected 2,right 2,rotten 3,saturday 4,sawn 2,sending 2,she 2,shot 2,sitting 2,so 2,squared 2,standing 4,still 5,supposed 2,swapped 2,that 9,the 65,there 5,therefore 2,this 4,to 21,tomorrow 2,too 12,tuesday 2,turned 3,up 6,welded 2,what 21,where 6,worn 2
isn't:# 8,even 2,going 2,it 2,what 2
it:# 230,a 74,above 2,actually 3,after 2,again 13,ain't 5,all 21,already 4,always 5,an 6,and 37,another 2,anyway 2,apart 3,april 2,are 3,as 4,at 20,back 14,bare 2,be 6,because 4,becomes 2,been 14,before 9,being 6,belongs 4,bends 2,bent 3,better 3,between 2,bigger 2,blows 3,bolted 4,burns 2,but 3,by 11,came 14,can 10,can't 7,catches 2,come 7,comes 25,coming 11,cost 3,cured 3,cut 3,dead 2,does 2,doesn't 12,don't 3,done 3,dont 2,down 38,dried 3,drips 2,dropped 2,dropping 2,drops 3,dry 3,due 2,each 2,ever 3,falls 4,finished 2,first 2,floats 2,for 22,friday 2,from 7,gets 17,getting 7,gives 2,go 2,goes 15,going 30,gone 2,gonna 2,got 20,gotta 4,grew 2,had 7,hanging 3,hangs 4,happens 3,has 21,having 2,heck 2,held 4,her 2,here 7,hit 6,holds 4,hung 3,i 12,i'll 2,in 63,instead 2,is 107,isn't 10,it 2,jammed 2,keeps 2,lacks 2,last 3,leans 2,leaves 3,lies 2,like 16,lit 4,live 5,lives 2,looked 2,looks 9,lying 2,made 2,makes 3,may 2,me 4,monday 2,more 3,mounted 2,must 9,my 5,myself 2,nailed 2,needs 12,next 2,no 3,not 14,now 7,of 3,off 14,on 62,only 4,open 2,ordered 2,ought 7,oughta 3,out 22,outside 2,over 16,ply 2,posted 2,poured 2,pulls 2,rained 4,rains 4,reads 2,right 2,rings 2,rocked 2,round 5,running 3,runs 6,sat 2,saturday 4,says 13,screwed 2,seems 2,shall 2,should 13,shuts 2,sits 4,sitting 3,sleeps 2,smells 5,so 8,sort 2,stand 3,standing 2,stands 10,staying 2,stays 5,still 8,stood 2,stopped 3,stops 2,straight 2,sunday 2,takes 2,tea 2,that 6,the 39,there 4,this 2,through 4,thursday 4,till 8,to 41,today 3,tomorrow 4,too 6,took 11,tuesday 4,turns 4,twice 5,under 7,until 4,up 39,used 2,waits 2,wants 20,warm 3,was 87,weighs 7,went 7,were 3,what 3,when 4,where 2,while 5,wider 2,will 10,with 39,within 2,without 3,won't 8,wont 2,worth 2,would 6,wouldn't 5,wrong 3,you 2
it'd:be 4,have 4,want 2
it'll:be 16,go 2,have 9,not 2,sit 2,want 6
its:# 21,a 5,bags 2,bay 2,box 4,bracket 2,corner 3,face 2,fat 3,feet 6,first 2,haircut 4,hole 7,lid 2,like 2,meant 2,melamine 2,new 6,oil 3,own 21,paint 2,place 6,plate 2,primer 3,replacement 2,seal 2,stand 2,tap 2,the 4,thing 2,track 4,way 10,wet 2
itself:is 5
ive:been 2,glued 2,got 4
jack:and 2
jacked:and 2
jacks:and 4,are 4,from 2,is 2,under 2
jam:jars 3
jase:is 2
jigsaw:and 4
job:for 4
jockey:door 2
joint:has 2,in 3
joints:at 2,film 2
joist:is 2,there 2
joists:# 2,again 2,are 10,at 3,in 2,under 3
joyce:are 3
jump:seat 2,they 2
june:i 2
just:a 5,as 2,got 2,have 2,made 2,me 3,the 3,to 6
keel:bolt 3,bolts 6,line 2
keen:on 3
keep:# 4,asking 3,it 3,the 6
keeping:it 2,the 5
keeps:the 2
kept:# 2,it 2,the 4,wet 3
kettle:and 2
kicks:in 2
kill:it 2
kilo:and 2
kilos:a 3,all 4,and 6,apiece 2,each 2,is 2,of 5,on 3,or 3,so 2,the 3,with 2
kilowatt:fan 2,inverter 2
kind:of 6
kitchen:# 2,all 2,bench 4,is 2,side 2,unit 3,window 3,with 2
knee:wall 3
knees:are 4,up 2,were 3
knock:on 2
knocked:off 2,out 2,the 2,together 2,up 6
knot:in 2
know:about 2,how 2,i 3,if 3,it 4,of 2,that 2,the 3,what 11,where 2,who 4
knows:about 2
labels:and 2
lad:at 2,who 3
ladder:# 2,and 2,now 2,on 4,will 2
lady:asked 2,been 2,drawing 2,in 2,says 2,sewing 2,who 3,with 3
laid:a 9,and 2,in 2,on 2,out 9,the 4,until 2
lamp:cord 2
landed:monday 3,on 4,yesterday 3
lands:on 2
lap:a 2,each 2,of 3,on 2
larch:has 2
large:# 2
laser:across 3
last:# 21,day 5,joist 2,night 12,of 15,one 2,plank 2,sheet 2,week 6,weekend 5,year 4
late:# 2
later:than 2
lathe:is 2
lay:a 3,awake 2,it 2,on 2
layer:is 3,of 5,on 2,under 2
laying:the 3
lead:and 2,for 3,on 2,paste 4,screw 2,stuff 2,to 2
leaf:on 2
leaflet:says 2
leak:on 2
leaks:like 2
lean:in 2,on 2
least:# 18,before 2
leathers:is 2
leave:a 3,it 7,me 3,the 7
leaves:# 9,a 2,me 8,the 9
leaving:it 2,the 4
led:strips 2
ledgers:are 2
left:# 3,at 3,corner 3,for 3,in 5,is 2,it 3,of 6,rear 3,side 2,the 4,wheel 3
leg:# 2
legs:# 3,are 8,of 2,that 2
lemon:cake 2,tree 3
lend:me 3,of 2
length:# 2,and 2,of 3,on 2
lengths:and 2,of 4
less:# 22,and 2,than 15,the 16
let:a 2,go 4,him 2,in 12,it 3,me 23,out 2,say 2,see 4,the 4,us 2,you 2
lets:go 3,in 2
letter:from 2,in 6,through 3,went 2
letting:the 2
level:and 5,as 2,on 6,to 2,within 2
lid:# 3,on 3
lie:down 4,on 2
lied:about 2
lies:on 3,under 2,with 2
life:out 2
lift:# 3,a 4,her 4,it 3,the 3
lifted:on 2
lifting:# 2,a 2,it 2
light:comes 2,of 3,table 2
lighting:the 2
lightning:cable 2
lights:and 3,are 8,on 3
like:# 9,a 154,an 12,bananas 2,butter 5,he 3,her 2,i 9,it 13,much 2,my 8,porridge 2,properly 2,soldiers 2,somebody 3,that 5,the 11,they 8,to 10,toffee 2,wet 5
likes:to 2
lime:and 2,milk 2,mortar 2,to 2
line:and 2,in 3,off 3,the 2,to 2,up 3
lined:up 4
lines:are 3,up 3
lining:off 2,paper 2
lintel:# 2
list:of 3,with 2
lit:it 2,on 2
lithium:# 3
litre:# 4,tank 2
litres:a 3,each 3,of 9,to 2
little:# 2,ones 4
live:at 2,in 4,with 6
lives:in 7
living:in 2,under 2
load:cell 2
loaded:and 2
loaf:of 2
loan:of 3
locker:floor 2,has 2,is 3
loft:floor 2,joist 2,lights 2
log:to 2,truck 3
logs:are 4
long:# 5,and 13,as 4,by 9,enough 4,for 3,inside 3,leg 2,so 2,story 2,tape 3,they 2,to 3,walls 2,way 3
longer:# 2,than 6
look:anyhow 2,at 35,like 8,of 4
looked:around 2,at 11,like 3
looking:at 18
looks:at 3,like 15,right 2
loose:and 2
lord:willing 7
lorry:came 2,that 2
lose:# 2,a 6,it 2
lost:a 3,its 2,their 2
lot:more 2,of 14,will 2
lotto:i'd 2
loud:in 2
love:a 4
loved:a 2
lovely:bloke 3,evening 2,straight 2,woman 3
low:at 2,pressure 3
lower:deck 2,than 3,the 3
lugs:to 2
lunch:in 2
lying:about 2,down 2,in 5,on 2
machine:shop 4
made:# 4,a 2,again 2,already 2,and 2,at 2,for 4,good 2,it 7,of 2,that 2,the 8,to 2,up 6
main:bin 3,boom 2,cable 5,fuse 4
make:a 6,it 14,the 4,this 2
makes:# 7,a 4,her 2,it 4,my 3,the 9
making:it 3,that 3
mamaw:had 2
man:and 2,asked 3,been 2,came 4,can 5,comes 2,for 3,from 2,got 4,has 4,i 2,i'd 2,in 7,must 2,named 2,of 2,on 6,said 5,says 4,to 3,wants 3,was 2,who 6,with 6
mango:tree 2
manifold:and 2,to 2
marble:in 2
marine:place 2
mark:out 2
marking:out 2
masking:up 2
mast:on 2
mats:i 2
matter:of 2
maximum:# 2
may:be 3,hold 2,not 4
maybe:# 5
me:# 27,a 21,about 8,again 5,and 22,at 7,back 5,being 4,buying 2,by 5,head 2,i'm 3,in 11,is 5,my 2,on 6,over 2,put 3,roll 2,say 3,see 4,so 5,tell 2,that 5,the 17,their 2,this 2,to 22,up 2,when 3,with 3
mean:it 4,new 2,that 2,the 2,to 3
means:a 3,me 2,my 2,no 3,that 2,the 6
meant:it 2,to 8
measure:# 3,and 2,it 3
measured:again 2,for 2,from 2,her 2,it 7,that 2,the 13,to 3
measures:# 4
measuring:it 2
meet:the 2
meets:the 2
membrane:on 2
mention:the 2
mesh:is 4
metal:shield 2
meter:long 2
meters:long 2
metre:# 30,and 3,of 3
metres:# 32,across 2,and 5,by 11,each 2,even 2,from 5,in 2,long 7,of 23,off 3,on 10,or 5,over 4,radius 2,to 5,under 3
micrometer:on 2
middle:and 3,it 2,of 5,truss 2
might:not 2
mil:a 6,all 3,and 6,angle 2,at 2,bar 2,between 4,board 2,boards 2,cable 6,deep 2,from 2,hose 2,in 6,laminated 2,larch 2,of 14,off 5,on 2,over 2,pipe 4,plate 7,ply 16,rivets 2,sheet 2,square 2,squared 5,steel 3,tails 2,thick 3,too 2,wall 4,wide 2
mill:and 4,for 2,play 2,scale 2
millimeters:thick 2
millimetre:less 2
millimetres:apiece 2,of 6,thick 2
mind:on 7,you 3
mine:to 3
mini:split 3
minus:# 6,a 3
minutes:and 3,at 2,in 2,of 2,on 2
miss:the 3
mitre:saw 2
mix:is 2
mizzen:step 2
mocked:up 2
moisture:# 2
molds:are 3
monday:# 5,and 5,evening 2,for 2,night 5,or 2,they 2,week 2,with 4
month:of 2
more:ballast 2,like 2,oak 2,on 2,or 2,planks 2,plots 2,than 39,thing 2,to 5
morning:# 2,and 12,before 4,in 2,on 2,with 2
mosquitoes:have 2
most:of 6,the 2
mother:has 2,in 4
motor:and 3
mounts:are 2
mouse:chewed 2
move:the 3
moved:in 2,the 2,where 2
moving:a 2,it 2,the 5
mr:pettifer 3
much:as 9,for 3,i 4
mud:room 2
mum:came 2,carport 2,thinks 2
must:be 28,come 4,get 3,have 2,in 2,it 2,look 2,not 3,rest 2,still 4,therefore 2,wait 3
my:# 10,age 3,arm 3,arms 3,aunt 4,back 17,beautiful 2,bed 3,brother 29,cap 2,coat 2,cousin 9,cousins 3,da 2,dad 4,daughter 4,drawing 2,dreams 2,ears 5,elbow 3,elbows 4,engineer 2,eyes 3,face 3,father 6,fault 2,feet 4,fingers 2,first 2,floor 2,frame 2,friend 2,gantry 2,good 4,grandfather 5,grandmother 3,grandson 7,great 2,hair 6,hand 17,hands 12,hat 3,head 7,heart 9,hip 2,house 2,husband 6,knee 5,knees 25,last 2,late 3,legs 2,life 5,list 3,lovely 7,mate 4,mind 12,mother 14,mouth 4,mum 3,name 2,nan 2,neck 5,neighbor 7,neighbour 5,nephew 15,new 2,niece 4,old 6,own 24,pencil 2,phone 2,pretty 3,roof 2,rule 2,shoulder 3,shoulders 3,sister 16,size 2,son 5,tape 6,teeth 4,temper 3,thumb 4,truck 2,uncle 10,whole 2,wife 34,word 27,wrist 3
myself:and 3
nail:in 2,the 2
nailed:and 2
nails:are 5,came 3
name:on 5
named:the 2
naturally:i 2
nave:# 2
near:as 2,enough 9,it 3,the 6
nearer:than 2
nearly:a 4
neck:like 3
need:# 5,a 18,about 2,another 3,lugs 2,making 2,marking 2,ordering 2,the 5,to 29,welding 2
needle:never 4
needs:# 11,a 20,its 4,the 5,to 11
neighbor:thinks 3
neighbour:came 2,dog 2,lad 2
nephew:and 2,told 2
nest:in 2,of 2
never:again 4,find 2,going 3,heard 3,know 5,less 2,line 2,mind 3,more 4,said 5,stirred 2,stops 2
new:# 15,beams 2,belt 3,bit 2,bolts 2,brasses 2,butyl 2,collar 2,copper 2,deck 3,drawing 2,end 2,ends 2,engine 2,feet 5,floor 7,foot 4,guts 2,height 2,joists 2,legs 4,length 2,lid 4,oak 2,one 9,ones 15,packing 2,pad 2,pair 3,pattern 2,piece 4,planks 2,plate 5,posts 2,seal 4,sides 2,springs 2,steel 3,washer 2,width 2,wood 3
news:department 3
newton:metre 4,metres 32
next:# 11,county 3,door 12,film 4,friday 7,monday 2,month 2,mooring 2,one 4,saturday 5,sunday 5,thing 2,thursday 3,time 24,tuesday 4,video 5,wednesday 3,week 24,weekend 2,weeks 2
nice:and 2,man 2
night:and 8,at 3,no 2,out 2,with 2
nipped:up 2
no:# 5,a 2,arguing 2,argument 2,arguments 2,boat 2,box 2,church 2,cuts 3,date 2,door 2,drips 3,edits 2,end 2,friends 2,further 2,good 5,harm 4,help 2,hotter 2,i 3,idea 4,joy 2,less 13,lighting 2,longer 4,lower 2,more 30,music 6,new 2,oil 2,paint 3,pouring 2,propane 2,quarrel 2,roof 3,room 3,sealer 2,sense 3,smaller 2,steel 2,step 2,talking 3,thank 2,until 2,use 3,varnish 2,wall 4,way 3,weld 2,wind 2,worries 3
nobody:can 4,died 3,else 3,going 2,got 2,here 2,looks 2,sees 2,told 4,touches 2
none:of 8
noon:and 2
north:end 4,gutter 2,pier 2,side 8,slope 3,wall 9,window 2
northeast:post 2
not:# 38,a 68,all 3,allowed 2,an 6,arguing 3,ask 2,bad 4,be 7,been 4,before 7,bitumen 2,buying 3,come 5,cut 2,do 2,doing 6,enough 2,even 6,foam 2,galvanised 2,getting 5,go 3,going 11,good 2,have 4,having 5,in 4,joking 2,keen 2,less 3,let 2,lifting 2,like 2,me 6,moving 3,oak 2,on 7,out 2,paying 2,plywood 2,putting 2,raising 2,red 2,saying 2,so 2,speaking 2,steel 2,that 5,the 35,tile 2,tiles 2,till 5,to 12,touching 3,under 4,varnished 2,welded 2,welding 2,what 16,while 2,with 4,wood 3,wrong 2,yet 8
nothing:but 7,fell 2,for 3,goes 2,in 4,of 2,on 8,over 4,to 3,under 7,up 2
now:# 3,a 6,and 5,have 2,i 14,i'm 2,in 2,it 5,listen 2,my 3,on 3,so 4,that 4,the 44,then 9,there 4,they 2,this 2,too 3,with 3,wrong 2
nowhere:to 2
number:# 21,and 2
nuts:are 2
oak:and 5,been 2,brackets 2,came 3,faced 2,for 4,in 2,is 2,lands 2,on 3,over 2
obviously:not 2
of:# 83,a 69,air 5,ali 2,all 3,an 11,angle 3,ash 2,bearing 5,birch 2,biscuits 3,board 2,boat 2,breathing 2,brick 4,bricks 2,bronze 2,cedar 4,chain 2,channel 2,clay 2,clear 2,cloth 2,course 11,crown 3,daylight 4,diesel 2,discussion 2,each 4,em 40,every 2,fall 2,fire 2,floor 2,foam 13,glass 5,goop 2,hands 3,hay 2,headroom 2,heart 3,her 6,him 2,his 2,honey 2,honour 2,hoop 3,hope 2,insulation 2,iron 5,is 2,it 151,its 5,june 5,lap 3,larch 3,lead 5,lift 5,lifting 2,lime 6,limecrete 2,lining 2,may 2,me 10,membrane 2,mud 2,my 22,oak 7,october 4,oil 6,old 2,paint 6,paper 2,person 2,pipe 4,pitch 2,ply 6,plywood 2,prayer 2,primer 4,red 4,river 2,room 2,rust 3,sand 6,scarf 2,scrap 3,sealant 2,some 3,somebody 2,spring 2,square 2,stacking 2,stainless 5,steel 3,stone 3,tea 4,that 40,the 304,their 2,them 125,thems 2,there 2,these 6,things 2,this 5,those 30,timber 2,tin 2,today 2,tube 2,us 20,wall 4,what 5,which 2,white 2,wind 3,wire 3,you 26
off:# 5,a 18,again 3,an 4,and 14,any 3,anything 3,at 3,by 2,down 2,each 3,either 2,first 2,for 4,from 2,her 7,i 3,in 6,it 15,kev 2,like 5,me 5,monday 2,my 5,on 6,side 2,that 10,the 178,to 8,until 2,with 4
offered:me 5,the 2,up 3
oil:from 2,is 2,on 4,to 2
oiled:the 2
okay:so 6
old:# 8,ballast 2,bed 2,brick 2,canvas 2,deck 2,diesel 2,engine 3,farm 2,fella 4,floor 5,flue 3,girl 3,lining 3,man 2,number 2,oak 2,ones 7,plate 2,roof 2,rubber 2,tape 3,toilet 2,vinyl 2
older:than 6
on:# 56,a 111,about 2,account 14,again 2,an 5,and 15,as 3,at 3,bare 2,before 4,both 3,bricks 2,by 2,camera 10,center 15,centre 2,deck 10,each 6,either 2,em 3,every 5,film 6,fire 2,for 2,friday 29,heart 4,her 13,here 5,his 13,hold 2,i 2,in 4,it 131,its 40,joists 2,like 3,loan 2,me 15,monday 31,my 45,new 3,next 2,oak 2,order 16,paper 4,purpose 2,saturday 18,scaffold 2,she 4,sound 2,spacers 2,sunday 24,that 42,the 586,their 7,them 10,there 4,this 10,those 9,thursday 21,till 7,to 10,too 2,top 35,trestles 2,tuesday 27,video 2,wednesday 18,weight 2,what 3,when 3,with 5,yesterday 3,yet 2
once:and 3,i've 6,it 8,she 2,the 18,there 4
one:# 4,a 3,been 2,cut 2,here 2,on 2,the 4,to 2
ones:are 6,go 3,in 2,on 2
only:# 14,a 3,after 2,go 2,got 2,i 3,just 2,me 3,not 3,seat 2,so 2,that 3,the 11,then 2,there 2,way 2,when 2
onto:that 2,the 2
open:# 3,at 5,that 3,the 2
opened:it 2,up 7
opening:# 16,framed 2,i 2,is 4
openings:are 3
opinions:about 3
or:# 5,a 8,better 8,high 2,i 6,it 6,less 3,minus 4,more 5,not 2,she 2,so 15,take 10,the 10,thereabouts 10,under 2,up 2,warmer 2,we 2,what 2,whatever 2
order:a 2,for 5,has 2,in 3,it 3,that 2,the 3,those 2,to 2
ordered:# 3,a 2,by 4,for 2,from 2,the 5,till 2,tuesday 2
ordering:the 2
other:# 22,day 2,end 7,side 9,thing 2,wall 3,way 3
ought:to 22
oughta:be 5
ounce:over 2
out:# 15,a 8,about 2,again 5,and 35,as 2,at 23,before 3,by 8,came 2,every 3,for 7,from 3,here 3,how 2,in 7,it 6,like 6,live 2,loud 3,of 116,on 18,over 4,past 5,rather 2,saturday 3,she 2,so 3,the 34,there 5,through 2,till 2,to 15,too 3,tuesday 3,what 3,when 4,where 2,whole 2,with 12,yesterday 3
outboard:man 2
outside:of 2,to 4
over:# 36,a 8,again 2,an 2,and 9,at 2,by 5,from 2,in 2,it 20,last 2,lunch 2,my 9,on 4,that 9,the 129,them 2,there 2,to 5,what 6,with 2
owe:him 2,the 5,y'all 2,you 6
owed:a 3
own:# 5,a 3,feet 2,film 3,house 2,rule 4,show 2,string 2,the 2
owns:a 3
paced:it 2
pack:it 2
packed:and 3,round 2,the 4
packing:up 2
pad:# 2,to 2
paid:for 8
paint:and 2,coming 2,has 2,is 2,it 3,off 2,on 6,the 2,turned 2
painted:on 3
pair:of 14,on 2,to 2
pallet:and 2,for 2
panel:in 2,people 2
panels:# 3,are 19,go 3,have 2,on 2,were 2
paper:says 2
parcel:van 2
park:a 2,guy 2
parlour:is 3
part:of 3
parted:off 3
pass:a 2
passenger:seat 3,side 3
past:# 11,it 3,that 2,the 13
patch:is 2,welded 2
pattern:at 2,for 3,off 2,to 2
pay:for 2
paying:for 3
pencil:in 2
penetrating:oil 2
people:and 4,are 2,by 3,have 2,need 2,on 3,rang 2,want 2,who 4
per:cent 23
percent:and 2,moisture 2,of 2
permit:lady 2
person:can 2
phone:about 2,and 2,call 2,that 2,the 2,to 2
phoned:the 2
photo:by 2
pick:up 5
picked:# 3,out 2,up 7
picker:guy 2
picking:out 2
piece:in 3,let 4,of 11
pieces:are 2
piers:are 4
pig:on 2
pile:spacing 2
pillars:have 2
pine:in 3
pink:stuff 2
pins:are 2
pipe:and 5,at 2,came 2,for 4,has 2,in 3,on 2,runs 2,to 4,walk 2
pipes:in 2
pit:# 2
pitch:is 3,of 4,pine 3
pitched:at 2
place:of 2,under 2
plan:chest 3
plane:it 3
planed:and 3,down 3,this 2,up 2
planer:and 2,before 2
plank:and 2,stock 2
planks:and 2,are 8,of 4,on 2
plastic:# 2,heron 2,on 2,ones 2
plate:# 8,and 7,for 3,had 2,has 4,is 6,it 2,on 8,over 2,packed 2,says 6,that 2,to 3
plates:are 3
platform:# 2
play:# 2,at 2
pleased:with 4
plenty:for 2,left 3
plinth:for 2,the 2
plug:in 2
plumb:as 2,line 3
plumber:still 2,to 2
plumped:for 2
plus:# 6,a 3,me 2,or 4,some 2
ply:and 4,came 2,comes 2,down 3,due 2,going 3,on 2,over 3
point:# 151
pointed:up 2
poles:are 2
ponies:and 2
porch:for 2,posts 4
port:side 14
portal:frames 2
portholes:are 2
post:a 10,bases 2,before 3,is 4,office 2,that 2
posts:are 14,for 3,got 2,i 2,up 2
pound:for 2
pounds:and 3,apiece 2,of 6,on 2,to 2
pour:on 3,the 4
poured:the 3
power:company 3,is 2
praise:be 3
prefer:to 2
prefers:the 2
press:has 2,is 2
pressed:in 2,on 2,the 2
pressure:at 2,gauge 2,test 3,treated 2
prettier:than 2
pretty:as 2
price:for 3,on 6
primer:# 2,on 4
promise:from 2,you 7,you'll 2
promised:for 13,you 2
prop:on 2
proper:look 3,walk 2
props:are 3,come 2,under 3
proud:of 10
prove:it 2
provided:it 3,the 2
psi:all 2,on 2
pull:it 3,the 4
pulled:a 4,all 2,in 3,out 2,the 6,through 2,up 4
pulleys:are 2
pulling:it 2,the 2
pulls:# 5
pump:going 2,has 3,in 3,is 4,man 2,on 3,ran 2,running 2,stroke 2,the 2,to 2
purl:ins 4
purlins:at 2
push:a 4
pushed:a 2
put:# 6,a 37,an 3,her 3,his 6,in 2,it 10,my 8,on 4,that 6,the 49,them 2,together 2,up 2,weight 2,your 2
puts:us 2
putting:a 8,back 2,in 2,it 2,off 2,the 4
quarter:what 2
quarters:all 2,at 3,by 2,deep 2,of 4,wall 2
quick:# 3
quid:and 2,the 3
quite:a 2
quote:for 2
rack:and 3,arms 3,for 2,on 2
racks:are 2
radiator:man 2
radio:battery 2
rafter:and 2,pattern 2
rafters:are 8,at 2
rail:# 2,a 2,on 3,top 2
railroad:bridge 2
rails:are 6,so 2
rain:came 2,i 2,is 2,upon 2
rained:all 2
raise:the 2
raising:day 2,it 2,the 4
rake:boards 3
raked:and 2,out 3
ramp:box 2,springs 2
ran:a 9,her 2,it 5,my 2,out 4,the 9
rang:about 3,back 3,him 2,me 2,old 2,round 2,the 4
rated:for 2
rather:buy 2,longer 2,more 2,not 2,than 69
rattles:like 2
re:metalled 2
reach:the 2
read:# 4,a 2,me 2,my 2,that 2,the 8
reading:# 3
reads:# 5
ready:for 2
real:good 2,plain 2,slow 2
rear:axle 4,light 2
rebate:in 2
reckon:that 2
reckons:i 7,i'm 3,the 3
record:the 2
red:lead 6,oxide 6,stuff 2
redid:that 2
redo:it 2
reed:mats 2
relief:valve 4
remain:# 2
remember:the 3,what 3
remind:me 6
repairs:are 2
replacing:them 2
report:number 4
rest:can 2,of 12
ribs:and 2,are 6,on 2
rich:i'd 2
rides:in 2
ridge:and 2,cap 2,comes 3,has 2,is 7,pole 4,tiles 4
rigging:wire 2
right:# 2,and 2,at 4,by 2,down 3,in 3,is 2,length 2,now 2,on 2,one 2,ones 2,over 4,side 2,so 3,the 2,then 2,there 4,through 8,up 7,way 2,where 3
ring:the 8
rings:of 2
ripped:all 2,and 3,down 2,out 2,the 3
rise:and 2
riser:# 2
risers:at 3
rising:main 2
riveted:every 2,on 2
rivets:in 2
road:and 3
roast:in 2
robe:doors 2
rock:up 2
rocked:up 5
rod:in 2
rods:are 2
roll:it 2,of 2
rolled:# 2,in 3
roller:door 3
roof:# 5,and 8,at 3,boards 4,bow 3,for 3,gets 2,going 2,hatch 2,i 4,is 9,mat 2,now 2,off 3,on 5,over 2,pitch 3,plate 4,rack 2,where 2
roofing:mob 2
room:# 4,and 2,for 4,is 3,the 3
rope:and 4,box 2,to 2
rot:from 2,in 2
rough:in 3,opening 3
round:# 2,about 2,and 3,coming 2,every 2,for 2,in 2,it 10,ones 4,that 2,the 18,with 2
routed:the 2
row:of 2
rubber:came 2,for 2,people 2
rubbing:strake 3
ruby:panes 2
rudder:shoe 2
rule:of 2,on 2
run:# 7,it 2,of 3,off 2,out 6,over 4,the 6,through 2,to 2,up 5,wall 2
rung:the 3
running:# 2,a 2,hot 2,in 2,right 2,the 2
runs:# 3,at 3,in 2,off 2
rust:and 2,converter 4,in 2,is 2
rusted:to 2
sad:bit 2
safety:valve 2
said:# 16,a 4,about 2,ask 2,epoxy 2,i 2,i'd 5,it 6,no 3,nothing 2,put 2,something 2,that 4,the 3,tidy 2,use 2,what 4,yes 5
sake:of 2
same:# 16,as 17,day 5,night 2
sand:down 2,is 2,to 5
sandwich:in 3
sash:is 2,repairs 2
sashes:are 2
sat:# 2,at 4,down 3,in 6,on 11,there 3,up 2,with 4
saturday:and 6,arvo 3,by 2,for 2,i 4,i'm 2,if 3,morning 4,night 7,treat 2,week 2,with 3
saves:me 3
saw:# 5,and 5,back 3,bench 2,came 3,i 2,it 6,on 3
sawed:# 2,the 2,to 2
sawn:already 2,off 2,on 2,that 2,through 2
say:# 7,a 3,about 4,for 2,he'd 2,i 2,it 8,no 3,nothing 2,that 9,the 4,was 2
saying:# 4,the 4
says:# 47,a 2,burn 2,don't 2,fit 2,he 3,i 6,it 5,keep 2,no 7,not 2,nothing 2,paint 2,put 2,saturday 2,so 3,that 3,the 17,to 3,what 4
scaffold:lad 2,round 2
scale:and 4,at 3
scarf:a 2,joint 2
scarfed:and 3
scarfing:a 2
school:bus 2
scrap:and 2,of 2
scrape:the 2
scraped:it 2,the 3
screed:boards 3
screen:# 2
screw:has 2,jacks 3
screwed:at 3,down 5,every 5,to 5,together 3
screws:are 4,every 3
seal:on 2,the 2
seat:# 3,board 3,cushion 2,left 2,rails 3
seats:are 4
second:# 8,coat 7,corner 2,hand 4,layer 4,of 2,one 2,pad 2,pair 3,rail 2,row 2,time 3
see:# 5,a 2,about 2,every 2,her 2,how 2,if 2,it 17,me 3,no 2,that 5,the 21,them 5,to 4,what 4,where 2
seeing:as 8,the 2
seen:# 3,it 4,that 2,the 3
seized:solid 2
sell:it 2,us 2
send:it 4
sending:# 2
sent:him 3,me 4
set:# 2,a 2,her 3,it 6,of 5,out 2,the 7,them 2,to 2,up 3
setting:it 2
settled:on 9
several:of 2
sewing:the 2
shackles:are 2
shaft:# 5,back 2,came 2,going 2,has 5,is 4,log 4
shall:be 7,have 5,let 2,see 3
shan't:be 2
shape:of 4
shaped:and 2
shaved:and 3
she:# 36,a 11,been 4,can 6,carried 2,did 3,does 3,doesn't 2,don't 2,draws 2,drew 2,floats 2,getting 2,goes 8,going 3,gonna 2,got 9,has 2,hung 3,in 3,is 11,jacked 3,just 2,knows 2,level 2,lies 2,likes 3,measures 3,never 2,not 4,out 2,rolls 3,runs 2,said 3,sat 2,says 5,shiny 3,sinks 2,sits 4,sitting 6,smells 2,stands 3,taller 3,to 5,told 3,up 2,wants 3,was 9,went 5,won't 2
she'd:be 3,have 3
she'll:be 4,have 4,lift 2
shear:legs 2
sheared:the 2
shed:and 2,door 6,roof 2,until 2,window 2
sheep:wool 2
sheet:# 2,metal 3,of 12,on 3
sheets:are 4,of 2
shelf:and 2
shelves:are 2
shes:# 7,on 2
shield:bent 3,on 2
shift:it 2
shifted:and 2
shifting:it 2,the 3
shim:it 2
shiny:as 3
shoes:and 2,are 3
shook:my 2
shop:and 2,in 2,says 2,took 2,vac 2,with 3
shopping:list 2
short:# 4,a 2,and 2,of 5,the 2
shortened:and 2,the 3
shot:the 2
should:be 39,go 2,have 11,i 8,need 2,put 2,the 2
should've:been 3,bought 3,gone 3
shouldn't:be 2
shouting:at 2
show:the 4,y'all 3,ye 4,you 17
showed:up 13
shower:tray 2
showing:off 2
shows:# 3
shutters:are 2
side:and 3,are 5,as 2,at 2,door 2,for 7,got 2,is 3,it 3,of 17,opening 2,panels 5,to 6,wall 2,wants 2
sides:and 2,are 11,in 2,to 2
signed:for 3,it 2
sill:goes 2,has 2,is 4,plates 2,to 3,trim 2,under 2
sills:are 4
silly:on 2
since:# 10,a 7,he 2,i 9,i'd 2,i'm 4,i've 2,it 5,my 5,nobody 2,rubber 2,she 2,that 5,the 27,thursday 2,tuesday 3,yesterday 2
single:# 2,phase 3
sink:came 2,hole 2,not 2
sister:has 2,says 3
sit:# 4,at 3,down 9,in 4,on 9,up 2
sits:# 5,a 4,in 10,on 3,there 2
sitting:in 11,on 14,room 2
size:of 7
ski:off 2
skin:# 2,of 5,on 3
skinny:# 2
skins:are 4,arrived 2
skipping:the 2
slab:# 3,goes 2,gone 2,got 3,i 2,of 3,on 2
slat:in 2
slate:and 4,tray 2
slates:are 2,off 2
slats:are 8,sawn 2
sleep:in 4,on 2
sleeping:on 3
sleeps:in 2
sleeve:them 2
slept:like 2,on 7
slid:down 2,in 3,right 2,the 2
slide:right 2,the 2
slides:in 5
slim:cylinder 2
slips:on 2
slope:# 2,is 3
small:# 4
smaller:# 2,tank 2,than 2
smell:it 3,like 3,of 5
smells:like 11,of 4
smoke:and 2
smoked:the 2
smoko:on 2
smooth:as 2
snow:on 2
so:# 68,a 17,all 6,am 2,an 3,are 2,bad 2,both 2,bring 2,buy 2,by 2,chuffed 2,did 4,don't 7,each 2,every 4,everybody 2,excuse 2,far 4,first 2,happy 2,he 11,help 2,i 88,i'd 3,i'll 8,i'm 29,i've 21,if 3,im 2,it 78,it'll 3,its 9,jobs 2,let 2,long 4,low 3,much 11,my 13,naturally 4,no 14,nobody 4,not 2,nothing 12,now 7,of 3,out 4,over 2,pleased 4,proud 8,put 3,quick 2,saturday 2,she 18,she'll 2,somebody 7,take 2,that 123,thats 5,the 232,them 2,then 5,there 49,there'll 3,they 8,they're 5,this 12,those 6,tonight 2,tuesday 2,up 3,was 2,we 16,we'll 2,we're 6,were 2,what 8,with 7,you 12,you're 2
soft:as 2
solar:panels 3
sold:it 4
sole:bearers 2
some:# 3,fella 2,folks 2,genius 2,of 7,old 2,people 2,sort 3,time 2,years 2
somebody:asked 13,asks 5,else 4,going 4,got 9,gotta 6,had 2,has 9,in 2,needs 4,online 2,planed 2,remind 2,to 4,wants 3,who 3,with 2,wrote 9
someone:asked 3,gotta 3,has 2,wrote 4
something:to 7
somewhere:on 2
soon:as 19
sooner:have 3,not 2,than 2
sorry:about 3,to 3
sort:a 2,of 10
sound:enough 2,like 2,wood 2
sounds:like 2
south:gable 3,side 5,wall 3
spacing:# 2
sparky:was 2
speaking:to 2
spindles:are 3
split:# 2,before 2,on 2,you 2
spoke:to 5
spoon:through 2
spotted:gum 2
spray:foam 6
spring:is 3,running 2
springs:are 3
square:and 4,as 2,centimetres 3,feet 2,foot 5,for 2,metres 8,to 2,tube 2
st:george 2
stacked:by 4,in 2
stain:on 2
stair:crack 2,treads 2
stand:# 12,at 3,by 2,for 3,in 8,on 8,over 2,the 2,up 5
standing:in 5,on 4,room 2,there 3,under 2
stands:# 7,in 2,on 8,there 2,up 2
stapled:every 2
starboard:side 2
stared:at 2
start:on 3,the 2,till 3,to 11
starter:cable 4
starts:friday 2
station:# 3
stay:in 3,on 4
staying:put 2
stays:as 2,at 2,in 3,on 2
steam:box 8
steel:# 2,and 4,came 2,i'd 2,in 3,is 2,on 3,plate 2,rule 2,shoe 2,tape 4,tube 2,yard 2
step:bit 2,cupboard 2,is 2
stepping:up 2
steps:to 2
stern:bush 2,gland 4,tube 8
stick:across 4,and 2,on 2,out 6,up 3
sticker:and 2,says 3
sticking:out 2
sticks:in 2
still:# 7,a 6,fits 2,got 6,gotta 3,has 3,have 3,in 5,need 2,needs 3,on 4,to 11,want 2
stitching:of 2
stock:# 3,come 2,that 2
stone:and 2,coated 2,of 4,that 2,to 2,under 2
stones:on 2
stood:# 2,a 3,all 2,at 8,back 4,in 9,it 3,off 3,on 5,the 5,there 6,under 2,up 7
stop:# 2,it 3,where 3
stopped:swearing 2
stove:# 5,a 7,and 3,comes 2,door 2,glass 3,here 2,i 2,in 10,itself 2,lit 3,man 2,next 2,on 5,sitting 2,was 3,where 2
stovepipe:# 2
straight:across 2,as 4,edge 3,through 2,up 4
strake:on 2
strakes:to 2
strap:irons 2
strapped:down 3,in 2
straps:for 2
street:side 2
stretching:it 2
string:line 5
stringers:are 2,i 2
strip:and 2,each 2,is 2,of 5,on 2
stripped:out 2,the 4
strips:are 2
stuck:the 2,to 2
stud:wall 4
studs:are 3
studying:on 2
stuff:and 2,because 2,on 2,to 2,which 2
stuffed:the 2
suit:the 2
sum:for 2
sums:for 3,on 2
sun:out 2
sunday:# 2,after 2,and 7,arvo 2,at 2,evening 3,if 3,night 8,the 4,week 3,you 2,you'll 2
supposed:to 9
swan:neck 2
swap:it 2,them 2
swapped:the 2
swapping:the 2
swear:down 3,on 3,to 2
swears:by 2
sweet:as 4
swimming:pool 2
switch:on 2
swore:the 3
table:and 2,saw 3
tacked:every 2
tag:says 4
tail:lift 3,race 2,to 2,vane 2
tailstock:barrel 2
take:# 8,a 11,it 9,nothing 2,the 9,you 2
taken:the 5,to 2
takes:# 7,the 4
taking:it 3,that 2,the 4
talk:about 3,to 3,with 3
tall:and 2,for 2
taller:than 9
tank:# 3,back 2,came 2,full 2,goes 2,got 2,holds 3,in 2,is 5,on 2,out 2,plumbed 2,stands 2,strapped 3,under 2,when 2
tape:across 3,and 3,down 3,for 2,it 2,measure 2,off 2,on 18,out 6,says 3,the 2,to 2,up 3,was 2
taped:it 5,the 3
tarp:and 3,over 2
tea:time 3
teeth:for 2
tell:her 2,me 13,my 2,the 6,ye 2,you 10
telling:me 4,you 3
tells:me 3
temper:cooled 2
tenth:of 3
termite:bloke 2
test:at 2,is 2,it 4
tested:it 3
than:# 63,a 12,concrete 2,have 2,hire 2,i 14,i'd 4,leave 2,me 14,my 6,shaving 2,she 2,the 24,this 2,waste 2
thank:god 4,you 18
thanks:but 2,for 3,to 2
that:# 103,a 56,about 2,all 12,already 3,an 2,and 13,are 5,as 2,asked 2,at 3,back 6,barn 2,bay 2,beam 6,been 3,before 3,being 5,bench 3,bought 2,box 3,bridge 3,brings 2,bulkhead 2,burns 6,by 6,came 2,can't 3,clear 2,collar 2,comes 4,coming 4,corner 5,deck 2,does 2,don't 5,done 6,door 7,down 4,drawing 2,dry 3,end 2,every 3,exhaust 2,fan 2,first 2,floor 7,floppy 2,foam 2,for 11,frame 2,framed 2,from 2,gap 2,gets 5,go 2,goes 8,going 8,good 2,got 8,gotta 3,had 3,hangs 2,has 4,hatch 2,he 4,headstock 2,her 3,his 2,hole 8,how 6,hung 2,i 27,i'll 2,i'm 4,in 14,is 34,isn't 3,it 6,just 2,last 6,leaves 11,less 7,like 2,little 3,log 2,long 3,makes 8,man 2,may 2,me 9,means 8,mine 2,monday 3,more 2,much 3,must 2,my 9,needs 8,next 3,no 5,north 2,not 9,nothing 3,off 10,on 18,once 2,one 4,opening 2,order 6,ordered 3,out 12,over 5,plate 3,plenty 2,ply 2,porch 2,primer 2,purlin 2,puts 2,rafter 3,reach 2,roof 6,rotten 3,runs 3,same 3,says 2,screen 2,settled 3,shaft 2,she 2,side 2,slab 2,somebody 4,spring 3,stays 2,stick 2,stove 5,tail 2,that 2,the 90,they 2,this 2,thursday 2,till 2,to 20,tomorrow 10,too 5,took 2,top 2,trench 2,up 9,waiting 2,waits 3,wall 4,wants 16,was 22,way 4,we 5,wednesday 2,went 2,were 2,what 14,when 6,where 5,whole 2,wide 2,wider 2,will 2,window 2,with 9,won't 2,works 2,would 3,you 3,your 2
that'd:be 2,smoke 2
that'll:be 8,do 2,go 2,need 2,take 2
thats:# 6,a 4,my 3,over 2,the 5
the:# 216,actual 7,ad 2,air 2,aisle 2,ally 2,altar 2,alternator 5,alto 2,aluminium 4,anchor 2,angle 2,annex 3,antenna 3,apron 3,arch 3,archdeacon 2,arches 3,ash 8,attic 3,auger 2,authority 2,autumn 2,axle 9,back 106,backs 2,bad 7,bag 4,ball 2,ballast 9,balustrade 2,bandsaw 5,bar 4,bare 4,barge 3,barn 22,barrels 2,bars 2,base 5,basin 3,basket 2,bath 5,bathroom 14,bathtub 2,battens 5,batteries 7,battery 24,bay 4,beach 6,beam 43,beams 19,bear 3,bearer 4,bearers 11,bearing 6,bed 58,bedroom 6,beds 9,bee 2,bees 2,bell 5,belly 3,belt 4,bench 36,benches 2,benchtop 3,berth 3,best 4,better 2,bicycle 2,big 33,bigger 5,bikes 2,bilge 20,bin 2,birch 3,bit 2,black 2,blackboard 2,blacksmith 4,blaster 2,block 5,blockwork 2,bloke 4,blower 6,blue 4,board 6,boards 17,boat 8,boatyard 3,body 14,boiler 3,bolt 3,bolts 8,bonnet 3,book 21,bookcase 2,boom 4,border 3,bore 5,borehole 2,boring 2,boss 2,both 2,bottle 3,bottom 40,bottoms 5,bow 6,box 16,boxes 6,boy 9,bracket 4,brackets 7,brain 2,brake 13,brakes 4,brass 9,brick 12,bricks 3,bridge 10,brig 2,brim 2,broken 3,bubble 2,bucket 4,buckets 4,budget 2,bugs 2,building 5,bulge 2,bulk 3,bulkhead 14,bunk 6,bunks 3,burn 2,burner 2,bus 11,bush 4,button 5,cab 12,cabin 17,cable 9,cables 2,calipers 5,camera 6,can 3,canvas 9,cap 10,car 3,carcass 8,carpenter 5,carport 2,carriage 3,cart 3,case 6,casting 2,cat 15,catwalk 2,caulking 4,cedar 5,ceiling 19,cellar 5,cells 2,cement 2,centre 3,certifier 3,chain 4,chair 6,chandler 4,chandlery 2,channel 4,chap 6,chapel 3,chassis 8,cheapest 2,cherry 3,chest 2,chestnut 3,chiller 3,chimney 19,chop 2,chuck 4,church 2,city 5,clamp 4,clamps 5,clear 4,clips 3,clock 3,cloth 4,club 5,co 6,coaming 3,coamings 3,coast 3,coffee 5,cold 4,collar 2,college 3,colour 6,combiner 2,comments 9,companionway 2,company 4,composite 2,compressor 5,concrete 6,conduit 5,conduits 3,contract 2,cooktop 2,copper 3,cork 3,corner 26,corners 5,cornice 3,cost 2,costs 2,couch 4,council 7,counter 14,county 13,couples 2,coupling 3,cover 3,covering 3,crack 4,cradle 6,crane 14,creek 6,crew 2,cricket 2,crook 2,cross 5,crown 5,cupboard 5,curb 3,cure 2,curtain 2,cushions 2,cut 2,cutter 2,cylinder 7,dado 2,damp 3,dark 2,dash 4,day 13,deacon 2,decision 2,deck 28,deep 2,dentist 2,depot 4,destination 3,diagonals 2,dial 2,diary 3,diesel 2,difference 5,digger 3,dinette 2,dirt 10,disc 2,ditch 2,dock 4,dog 17,door 65,doors 6,doorway 5,dot 2,double 2,downpipe 2,drain 8,draughtsman 2,drawer 3,drawers 2,drawing 20,dream 2,drill 5,drip 4,drive 4,driver 18,drivers 2,driveway 3,drop 4,drum 6,drums 2,dry 2,ducks 3,duct 7,dumb 2,dynamo 2,earth 2,east 4,eave 9,eaves 8,edge 3,edges 5,eighth 2,elbow 4,elbows 2,electric 5,electrician 5,electrics 2,elm 2,end 39,ends 4,engine 38,engineer 8,engineers 2,epoxy 3,evening 2,exhaust 3,extractor 3,fabricator 3,face 4,factory 3,fall 2,fan 9,fantail 2,far 9,farm 3,fat 6,feed 7,feet 9,fella 5,fellow 3,felt 4,fence 7,ferry 5,fiberglass 2,field 2,fifteenth 4,fifth 4,figure 2,filler 3,film 3,final 3,fire 8,firebox 3,fireplace 2,first 89,fish 3,fitter 2,flags 10,flange 5,flap 3,flashing 4,flat 9,flitch 2,flood 2,floor 108,floors 2,flue 17,foam 22,foamed 3,foams 2,foil 4,foot 10,football 2,footbridge 2,footings 3,fore 2,form 3,forties 2,forward 2,foundry 5,fourteenth 3,fourth 4,frame 24,frames 14,framing 2,freezer 2,friday 2,fridge 23,front 35,fronts 2,frost 2,fuel 7,full 2,furring 2,fuse 6,gable 4,gallery 10,galley 10,gallon 2,gantry 6,gap 4,garage 4,garboard 9,garboards 2,gas 27,gasket 3,gate 10,gauge 11,gear 4,gearbox 8,generator 4,gentleman 4,geometra 2,gib 4,gland 4,glass 27,glue 10,goat 4,good 17,grandson 2,grass 3,gravel 5,grease 2,great 7,green 4,grinder 2,ground 17,grounds 4,guard 6,guards 2,gull 3,gully 3,gum 2,gun 2,gunwale 5,gutter 5,guy 8,hair 2,hairdryer 2,hall 7,hammer 2,hand 5,handbrake 2,handle 2,handrail 2,hanger 3,harbour 3,harmonium 2,harness 2,hatch 12,hatches 2,hauler 4,hay 2,head 12,headboard 2,header 4,headliner 2,headroom 3,heads 2,headstock 9,headstocks 5,heart 4,hearth 7,heat 4,heater 13,hedge 2,heel 2,height 6,helicopter 2,henhouse 2,hens 5,heritage 2,high 3,hill 2,hinge 5,hinges 11,hitch 2,hob 2,hod 2,hoist 11,hold 10,hole 30,holes 5,hood 9,hooks 4,hoop 2,horn 5,horse 2,horses 2,hose 6,hoses 3,hot 4,hour 3,house 19,hull 3,hulls 2,hump 3,hydraulic 2,ice 3,idea 2,inch 7,induction 3,injectors 2,inside 9,inspector 10,insulation 3,insurance 3,insurers 2,intake 3,inverter 11,iron 2,irons 4,ivy 2,jack 2,jacks 8,jigsaw 2,jockey 2,joiner 4,joint 4,joints 8,joists 15,joyce 3,keel 9,keelson 4,kettle 8,key 2,kids 4,kiln 2,kit 2,kitchen 35,knee 2,lad 6,ladder 19,lads 2,lady 10,lake 4,lamps 2,landing 2,lane 4,lap 2,larch 4,laser 7,last 40,latest 6,lathe 14,launch 3,launder 3,laundry 3,lauzes 3,lawn 2,lead 13,leadscrew 3,leaflet 4,least 8,ledgers 2,left 9,legs 11,length 8,lens 2,level 4,licensing 2,lid 6,life 2,lift 8,lifting 4,light 8,lightning 3,lights 12,lime 10,limecrete 3,line 12,liner 2,lines 2,lining 11,linings 3,lintel 13,lintels 4,lip 2,list 9,little 12,living 6,load 2,loan 3,locker 10,loft 13,log 4,logs 2,long 14,look 4,loops 3,lord 3,lorry 5,lot 25,lottery 3,lotto 2,lounge 3,low 5,lower 4,lowest 2,lumberyard 2,luton 2,machine 9,mail 4,main 12,man 16,mandrel 2,mango 2,manifold 6,manual 2,marina 2,marine 2,market 2,marks 2,mast 18,masthead 5,mats 4,mattress 5,measures 3,membrane 4,mesh 4,metal 5,meter 4,mezzanine 2,middle 33,mill 14,millwright 3,mini 2,minimum 3,minute 4,mitre 2,model 3,modern 2,mold 2,molds 4,money 5,month 5,mooring 2,morning 18,morra 2,mortar 7,mosquitoes 2,most 9,motor 13,mountain 2,mud 3,mug 2,municipality 2,museum 2,nails 6,nave 2,near 4,nearest 2,needle 5,neighbor 9,neighbour 14,neighbours 3,nephew 5,new 67,next 21,night 7,nineteenth 5,noise 4,north 27,northeast 2,nose 9,number 7,nut 5,nuts 5,oak 18,oakum 2,oar 2,off 3,offcuts 2,offside 3,oil 7,old 136,once 2,ones 2,only 7,opening 17,opes 2,order 5,other 65,others 2,outboard 3,outhouse 3,outside 10,oven 2,overhang 3,owl 3,packing 2,pad 6,paint 14,pair 14,pallet 2,pan 3,panel 10,paneling 3,panelling 2,panels 14,panes 3,pantry 3,paper 3,papers 5,parcel 2,parish 3,park 4,parlour 7,partition 3,partners 4,passenger 5,patch 4,path 3,pattern 2,peak 6,pegs 4,pencil 2,pergola 2,permit 2,pew 2,pews 2,phone 10,picker 4,piers 2,pig 2,pigeons 2,pinch 2,pine 7,pink 3,pins 3,pipe 25,pipes 4,pit 11,pitch 12,place 4,plan 7,plane 2,planer 13,plank 4,planking 5,planks 6,plaster 8,plastic 6,plate 29,platers 2,plates 5,platform 7,plinth 7,plumb 2,plumber 2,plumbing 2,ply 13,plywood 4,pointing 2,pole 3,ponies 3,pools 2,porch 11,port 15,portholes 3,post 16,postman 2,posts 14,potter 2,pour 3,power 5,press 14,pressing 3,pressure 2,price 3,primer 5,prop 6,proper 3,props 12,pub 3,pulleys 2,pulpit 6,pump 27,purl 3,purlins 5,quarry 4,quarryman 2,rabbet 2,rack 14,racking 3,radiator 5,radio 5,rafter 9,rafters 13,rail 9,rails 7,rain 11,rake 2,ram 2,ramblers 2,ramp 9,range 2,real 2,rear 5,rebate 5,receipts 2,record 4,red 2,reed 2,register 2,relief 2,reservoir 4,resin 3,rest 23,rewinder 2,ribs 13,ridge 31,rigger 3,right 17,rim 3,rims 2,rise 3,river 9,rivets 4,road 13,rock 4,roll 3,roof 103,roofers 2,room 14,roosters 2,root 2,rot 3,rotten 5,round 3,rubber 9,rubbing 3,ruby 2,rudder 3,rule 7,run 3,runner 5,runners 3,rust 4,sad 2,sails 3,sake 2,same 25,sand 7,sash 3,sashes 2,saw 23,sawhorses 2,sawmill 15,sawyer 4,scaffold 4,scale 5,scallops 2,scarf 4,scarfs 2,school 2,scraping 2,scrapyard 3,screed 2,screen 5,screw 3,screws 5,sea 2,seal 3,sealant 3,sealing 2,seam 2,seams 6,seaside 2,seat 11,seats 5,second 27,septic 2,settee 2,settle 3,seventies 2,shade 4,shaft 24,shallow 2,shape 4,shear 2,shed 28,sheer 3,sheet 5,sheets 14,shelf 11,shell 2,shepherd 2,shield 4,shoe 3,shop 14,shopping 2,shower 10,shunt 2,shutter 4,shutters 2,side 25,sides 14,sign 3,sill 14,sills 6,sink 23,siren 5,sixteenth 2,sixth 2,sixties 2,size 10,skin 5,skins 5,skip 2,skylight 3,skylights 2,slab 24,slate 6,slater 2,slates 6,slats 8,sleeping 2,slide 2,slip 8,slope 3,slot 3,slots 2,sluice 2,small 4,smell 2,smith 4,snake 2,snow 4,soakaway 3,soap 2,sockets 4,sofa 2,solar 5,sole 5,solebars 4,sound 2,south 13,space 2,spacing 3,spade 2,span 2,sparky 5,specialist 2,spindle 5,spindles 3,split 2,spot 2,springs 2,stack 4,stain 2,stair 10,stairs 13,stamp 3,stand 3,starboard 3,starter 6,steam 6,steel 24,steering 2,stem 5,step 14,steps 5,stern 13,sternpost 4,stick 4,sticker 3,stiles 2,stitching 3,stock 5,stone 15,stones 6,storm 3,stove 74,straps 3,street 3,string 4,stringers 4,strings 2,strip 2,strut 3,stud 2,studs 3,stuff 4,sum 5,sums 6,sun 8,surface 2,survey 2,surveyor 16,swan 3,sweep 3,tabernacle 2,table 6,tackle 2,tag 7,tail 8,tailgate 4,tailstock 4,tank 39,tap 7,tape 34,tar 2,tarp 4,tea 5,telly 2,temple 2,tenon 2,tent 2,tenth 2,termite 2,thick 4,thickness 3,thin 2,thing 5,third 16,thirteenth 6,thirtieth 4,threshold 2,tie 5,tiles 6,timber 6,timbers 2,time 3,tin 13,tips 3,tires 2,title 3,toilet 4,tongue 4,tools 2,top 62,tops 2,torch 7,tour 3,tower 14,town 3,towpath 2,track 3,trailer 4,transom 4,tray 2,tread 2,treads 6,tree 2,trench 15,trestles 3,trim 2,trims 2,tripod 2,trolley 3,trouble 2,truck 20,true 2,trunk 3,truss 5,trusses 7,tub 5,tube 8,tunnel 4,turbine 2,turn 4,turner 2,twelfth 6,twentieth 8,tyres 4,underpinning 2,underside 7,unit 4,uprights 5,use 3,ute 5,valley 2,valve 3,van 7,vault 7,vee 4,vent 6,vents 2,verniers 2,very 9,vestibule 2,vestry 11,vet 4,vicar 3,vice 2,video 2,village 6,wagon 5,wall 71,walls 12,war 3,wardrobe 3,waste 3,water 44,waterline 9,way 48,weather 5,wedges 4,wednesday 2,weed 4,week 3,weekend 10,weigh 3,weighbridge 8,weighing 3,weight 6,weld 3,welder 9,well 15,west 11,wet 12,wheel 26,wheelbase 3,wheelhouse 10,wheels 3,whips 3,white 3,whole 63,wide 2,width 11,wife 9,winch 2,wind 12,window 20,windows 9,windscreen 4,windshaft 2,winter 4,wire 5,wiring 12,wood 15,wool 8,work 2,workshop 2,worktop 8,worm 4,worry 2,wren 2,wrong 24,yard 26,year 3,young 4,zinc 2
their:# 3,backs 2,feet 2,grooves 2,haircut 2,own 7,place 2,second 2,way 2
them:# 14,a 2,and 6,are 9,at 3,bolted 2,bolts 2,by 3,cut 2,down 5,for 4,frames 3,from 3,have 5,i 2,in 8,instead 2,is 2,monday 2,on 6,out 5,slats 2,that 4,to 10,tuesday 2,twice 2,up 6,where 2,windows 2,with 5
themba:and 2
then:# 7,a 2,had 2,he 2,i 62,i'm 2,it 9,my 3,the 34,there 5,they 2,we 3
there:# 55,a 145,ain't 2,all 2,already 2,an 5,and 10,another 3,are 6,at 3,being 2,borer 2,but 2,by 4,comes 2,daylight 2,friday 2,frost 3,go 2,goes 4,going 2,has 3,i 4,in 4,is 36,isn't 5,it 5,like 4,more 4,no 14,not 5,now 2,on 4,only 9,plenty 2,room 3,rust 3,saturday 2,she 2,something 2,still 2,that 2,the 9,till 4,to 10,was 13,water 3,were 4,will 4,with 14,you 4
there'd:be 4
there'll:be 13
therefore:the 2
theres:# 4,a 3
these:are 3
they:all 3,are 23,came 5,can 5,come 10,did 4,didn't 2,don't 3,drop 2,dropped 3,flutter 2,fly 2,get 4,go 8,got 2,gotta 4,had 2,have 8,landed 3,look 2,rang 2,reckon 5,run 2,said 10,say 11,sent 5,ship 2,should 8,sit 5,stand 2,stay 2,stick 2,tell 3,think 2,told 3,want 19,went 4,were 10,will 3
they'd:have 2,want 2
they'll:be 6,get 2,go 4,have 6,sit 3
they're:# 29,a 4,all 4,at 3,coming 2,cut 2,getting 2,going 5,here 2,not 5,on 6,saying 6,sending 2,sound 2,stacked 2,telling 2,the 7,to 4,under 2
they've:got 5,had 2,sent 2,to 3
theyre:# 3,on 2
thick:and 3,as 2
thickness:is 2,of 3
thin:as 2
thing:is 3,out 2,over 3,the 5,tomorrow 3
think:about 10,it 2,of 5,on 3,that 2
thinking:# 2,about 6,of 2
thinks:i 5,it 3,we 3
third:# 2,course 2,of 6,post 2
this:# 6,afternoon 7,arvo 4,boat 2,evening 3,for 2,here 5,house 4,is 30,memo 2,month 2,morning 46,place 3,rain 2,thing 3,time 11,was 11,week 9,weekend 4
those:# 11,are 13,beams 2,boards 2,come 2,feet 2,for 2,get 2,i 3,i'd 3,need 4,openings 3,this 2,till 3,to 3,up 2,who 2
thou:and 3,at 2,is 2,of 2
thought:about 14,i'd 3,of 4
threw:a 2
through:# 3,a 5,and 4,at 9,by 3,for 2,her 2,it 12,that 5,the 53,them 2,to 3
thru:the 2
thumb:in 3
thursday:# 3,and 7,for 2,in 2,night 5,the 2,they 2,with 2
tie:beam 3,beams 2,rods 3
tight:as 3
tighter:than 2
tiled:stove 2
tiles:are 4
till:# 6,i 4,i've 10,it 10,my 2,she 4,that 9,the 38,their 2,then 4,there 4,they're 2,thursday 2
timber:and 2,yard 3
time:and 6,i 3,it 2,since 2,the 3,we 2,you 3,you'll 3
times:with 3
tin:from 2,of 4
tips:and 2
tire:got 2
tired:of 2
to:# 232,a 25,about 2,all 2,an 3,any 2,anything 7,ask 7,back 6,bare 2,barrow 3,be 286,beg 4,bend 7,bolt 2,book 3,borrow 3,break 2,breathe 5,build 5,buy 10,call 4,carry 5,catch 4,chase 2,choose 2,clean 2,clear 3,climb 2,come 39,cook 2,corner 4,count 2,crawl 2,cut 20,dig 6,do 27,drag 2,draw 5,drill 3,drink 2,drive 3,drop 4,dry 5,eat 3,email 2,end 11,exceed 2,fetch 2,fill 3,find 14,finish 11,fit 6,floor 2,fold 2,front 2,get 27,girder 2,give 3,go 56,god 5,hang 11,happen 3,have 32,hear 4,him 6,hire 2,hold 5,it 26,its 2,keep 6,knock 3,know 9,land 3,lay 4,lean 2,leave 4,length 2,let 5,lie 2,lift 3,live 5,look 14,lose 5,make 9,mark 3,match 7,me 15,measure 4,meet 2,mill 2,morrow 2,move 2,my 14,open 2,order 9,outside 3,pack 3,pad 2,pass 2,pick 4,plane 2,plate 7,plug 2,prove 2,pull 4,put 11,reach 2,read 2,report 2,ring 3,rip 4,rivet 2,rock 2,roof 6,run 4,saw 3,say 20,see 18,send 3,set 8,shift 4,show 4,sit 15,sleep 4,sound 3,spare 3,stand 13,start 3,stay 2,stop 2,strip 2,suit 11,swap 3,take 8,talk 2,tell 6,test 4,that 13,the 260,them 5,think 5,tighten 2,trace 2,trim 3,truck 2,turn 7,underside 2,use 2,wait 8,walk 3,wall 18,watch 2,weld 6,where 4,whoa 2,whoever 2,wire 2,within 4,write 2,you 3
today:# 2,and 2,it 3,was 2
together:# 2,by 2,in 3,out 2,with 2
told:a 3,and 2,him 6,i 2,me 17,the 9,them 2,to 2,us 3,ye 2,you 20
tomorrow:before 2,evening 2,i 3,i'm 2,if 3,night 3,or 5,week 2
tongue:and 5
tonne:and 2
tonnes:and 2,each 2,of 5
too:and 3,beautiful 2,close 6,fat 9,heavy 3,hot 2,long 21,low 2,much 6,narrow 2,short 5,small 2,tall 5,the 2,wide 2
took:# 13,a 9,her 4,his 2,it 3,me 6,my 3,the 17,them 2,up 2
top:# 8,and 4,been 2,bench 2,deck 2,end 2,is 2,it 3,less 2,of 24,on 2,plate 3
topped:out 2
tops:are 7
torch:and 3
tore:the 3
torqued:to 3
touched:the 2
touches:water 2
tour:of 6
toward:the 4
towards:the 2
tower:is 2,ladder 2
town:hall 2
track:and 2,saw 4
traction:engine 2
trailer:in 2
trash:pump 2
treads:# 2,are 4
trench:is 9
tried:# 3,the 2,to 2
trim:strip 2
trimmed:and 6,them 2
trolley:jack 2
trouble:is 2
truck:and 2,came 4,for 2,from 2
truss:foot 2,has 2
trusses:are 2
tube:in 2,is 2
tubes:were 2
tuesday:# 2,and 5,at 3,evening 4,for 2,next 2,night 4,now 3,the 5,to 2
turn:it 3,up 4
turned:# 3,by 2,for 2,in 2,out 6,over 3,the 2,up 32
turning:a 2,the 3
turns:and 2,out 6,with 2
twice:and 2
twin:wall 2
tyres:down 2
ugly:but 2
uncle:barry 2,says 2
under:# 33,a 15,all 2,it 30,my 4,that 12,the 97,them 2,there 16,wet 2,where 3,with 3
underneath:the 2
underside:of 5
units:are 3
until:friday 2,i 3,i've 7,it 3,its 2,that 6,the 33,then 2,there 5,they 3
up:# 22,a 17,again 5,against 3,ahead 2,all 3,already 4,and 33,as 3,at 12,before 5,behind 2,both 2,by 10,close 3,early 2,for 10,friday 7,from 9,front 4,here 5,high 3,i 4,in 24,into 2,is 2,it 7,like 7,monday 5,my 3,north 2,off 3,on 43,once 2,out 5,over 5,saturday 2,she 2,short 2,so 4,some 5,straight 2,sunday 4,the 63,there 32,this 7,through 2,thursday 5,till 5,to 77,tomorrow 2,tonight 3,too 3,top 9,tuesday 3,until 3,wednesday 3,when 3,where 2,with 20,without 2,wrong 2,yesterday 14
upon:the 3
uprights:are 3
upside:down 3
upturned:bucket 2
us:# 2,a 2,and 8,at 2,his 2,on 3,so 2,to 3
use:the 3,to 3
used:# 2,a 2,to 16
using:the 2
valve:in 2
vane:in 2
vee:blocks 3
vent:cut 2,hole 3,in 2
vents:are 4
very:clear 2,least 7,most 2,much 2,nice 4
vestry:wall 2
video:is 2,next 2,on 2,sunday 4,up 5,with 2
view:with 2
views:on 2
voice:is 4
volts:and 3,at 2
wagon:tuesday 2
wait:for 6,on 4,till 5,until 3
waiting:for 3,on 11
waits:for 3,on 8,till 2
walk:on 2,through 2,under 2,you 2
walked:it 4,the 3
walking:round 2
wall:# 2,and 5,each 2,for 3,has 2,hung 2,i 4,in 3,is 4,less 3,of 4,on 2,plate 7,plates 3,that 2,the 3,to 19,tops 3,up 3,with 3
walls:are 12,at 2,of 2
want:# 19,a 19,another 2,cutting 2,doing 2,it 6,recutting 2,replacing 2,that 2,the 6,their 2,to 30
wanted:a 3,it 4,to 4
wanting:a 2
wants:# 26,a 34,at 5,buying 2,cutting 3,doing 3,his 2,it 4,its 3,looking 2,no 2,packing 2,replacing 2,stripping 2,taking 2,the 5,to 24
warm:day 2
was:# 33,a 36,about 2,already 2,always 2,an 2,asked 2,at 7,between 2,born 4,built 2,cheaper 2,delivered 2,dry 3,for 3,free 2,going 10,gone 3,greased 2,here 7,in 7,it 4,just 3,let 2,like 2,me 5,measured 2,my 6,never 2,not 4,off 2,on 9,only 3,out 3,pleased 2,put 2,quite 2,right 2,sagging 3,so 14,stooping 2,taught 2,that 4,the 14,there 3,thinking 3,tipped 2,tired 3,to 4,today 2,up 8,waiting 2,when 2,wrong 2
washing:up 2
wasn't:the 2,there 2
waste:# 2,pipe 2
wasted:to 2
watch:it 2
water:# 4,and 5,at 3,coming 4,goes 3,heater 2,i 3,in 11,is 2,man 2,on 4,pump 2,tank 12,test 2,to 2,with 2
waterline:or 2
watts:apiece 2,at 2,each 2
wavy:glass 2
way:and 3,at 2,for 5,home 3,nobody 2,of 2,round 10,through 2,to 3,up 4
we:are 14,argued 2,both 2,carried 3,cut 2,did 3,don't 3,ever 2,finished 2,get 4,go 2,got 9,had 12,have 28,laid 3,light 3,poured 3,put 4,ran 2,said 2,settled 3,shall 6,should've 2,stood 2,take 3,thank 2,took 3,used 3,weighed 2,went 3,were 4,will 3
we'd:be 3,have 3
we'll:see 7
we're:# 2,a 2,at 2,doing 2,going 4,having 3,not 2,on 2
we've:gone 2,got 9,had 2,settled 2
wears:a 2
wedges:are 2
wednesday:# 3,and 3,evening 6,from 2,i 4,if 2,like 2,night 4,or 3,the 2,wagon 2,week 3,with 2
weed:hatch 4
week:before 3,from 3,i 3,it 2,on 2,out 3,thursday 2,today 5
weeks:of 2,out 2
weeping:oil 2
weigh:bridge 4
weighed:her 2,it 2,the 2
weighs:# 5,a 2,about 2,like 2,more 2
weight:# 2,on 2
weld:a 2,test 2,that 3,till 2
welded:all 2,in 4,it 2,the 4,up 5
welder:and 2,has 3
welding:that 2,up 3
well:end 2,i 4,is 2,now 3
went:# 2,ahead 2,and 5,back 5,down 6,home 2,in 17,like 2,off 6,on 14,out 2,over 4,quiet 2,round 6,through 3,to 17,up 20,with 2
were:# 8,a 3,all 2,cut 2,decent 2,going 3,in 3,lying 2,not 2,on 2,rich 2,the 2
west:and 2,end 3,plate 2,side 2,wall 4
wet:# 4,again 2,and 2,as 2,biscuit 2,cake 2,patch 2,through 2
whacked:down 2
what:a 6,colour 2,did 8,do 2,does 2,else 8,goes 2,happened 2,happens 2,he 5,i 38,i'd 5,i'll 3,i'm 5,i've 4,is 8,it 16,kind 2,left 5,must 2,on 2,she 6,she'll 2,that 7,the 29,there 2,they 3,to 6,was 6,we 5,would 9,you 5,you're 5
whatever:happens 2,i 2,it 3
wheel:arch 9,are 2,is 3,nuts 3,on 2
wheels:are 2
when:he 5,i 23,i'm 4,i've 6,it 19,its 2,my 5,she 13,that 4,the 33,there 6,we 4,you 2,you're 2
whenever:he 2
where:a 2,are 2,he 2,i 15,i'd 3,i'm 2,it 31,it'll 2,my 3,she 4,the 39,there 2,they 8,you 4,you'd 2
whether:i 2,it 3
which:are 4,at 2,for 2,gives 3,i 14,i'd 3,i've 2,is 52,it 3,leaves 13,makes 10,means 17,my 3,puts 2,she 2,the 8,wants 2,was 4,were 2
whichever:way 2
while:he 2,i 23,it 4,the 6,there 2
white:# 2,ants 2,lead 4,metal 2,oak 7,paint 2
who:am 2,asked 7,built 2,came 2,cares 3,does 6,got 3,hated 2,have 2,i 2,is 6,knew 2,knows 3,makes 3,said 2,wrote 6
whoever:asked 2,was 2
whole:# 2,day 2,film 3,floor 2,house 3,lot 8,new 3,north 3,of 4,room 2,stack 2,sum 2,thing 4,time 4,way 3
why:i 2,not 2
wi:a 7,that 2,the 5
wide:# 2,and 10,as 2,at 3,by 5,i 4,is 2,the 2
wider:than 6
width:# 2,is 2,less 6,of 6
wife:asked 3,has 3,is 3,says 6,wants 5,wrote 2
will:be 54,do 2,eat 2,film 2,go 3,have 6,it 2,need 2,not 14,put 2,see 6,show 4,sit 2,stand 3,tell 3,want 2
win:the 2
wind:up 4
window:came 2,frame 4,frames 2,has 2,i 2,in 2,is 2,on 3,sill 2,skins 2
windows:are 6,have 2,in 3,on 2
wire:and 3,brushed 4,down 2,in 3,on 2,rope 2
wired:and 2
wiring:diagram 2,next 2,pulled 2,video 2
with:# 63,a 212,all 5,an 8,both 3,chalk 2,cotton 2,dry 2,everyone 2,everything 4,her 5,his 9,is 2,it 24,its 7,lime 4,luck 3,me 15,my 29,new 2,no 16,nothing 3,smoke 2,string 2,tape 3,tea 2,teak 2,that 13,the 226,tin 2,us 4,water 5,your 2
within:# 13,a 4,the 2
without:# 3,a 13,fail 2,his 2,so 2,swearing 2,that 2
woke:up 2
woman:stopped 2
won:the 5
won't:be 6,carry 3,do 3,draw 2,go 5,have 5,look 2,take 2
wonder:about 2,what 2
wood:# 2,colored 2,has 2,in 3,stove 4
wool:and 3,for 2,is 2,turned 2
word:of 2,on 4,to 2,with 2
work:out 2,top 2
worked:it 2
working:pressure 3
works:out 2
worktop:at 2,had 2,to 2
worth:it 4,of 3
would:be 18,do 3,give 2,go 2,have 11,i 15,it 3,like 2,never 2,you 11
would've:loved 2
wouldn't:come 3,go 3,take 2,you 3
wrap:it 2
wrapped:in 5
write:in 4,it 3,me 2,to 3
wrong:end 2,gear 2,number 2,place 3,side 4
wrote:down 3,in 16,it 8,on 2,that 5,the 2,to 7
y'all:a 2,are 2,hold 2,the 3
yard:and 4,for 2,got 2,is 3,needs 2,to 2
ye:# 2,that 2,the 3
ye'll:see 2
yeah:g'day 2
year:i 2,old 3
years:a 2,ago 3,back 2,of 6,so 2,younger 2
yes:# 3,i 6,or 2,that 2
yesterday:# 2,and 8,at 2,by 2,evening 2,from 3,in 2,so 5,with 5
yet:to 4
you:# 5,a 7,about 5,all 3,ask 3,asked 4,be 2,believe 5,came 2,can 38,can't 9,come 2,could 39,couldn't 3,do 9,don't 4,ever 2,every 2,get 12,go 3,got 5,have 14,hear 7,heard 2,how 7,i'd 2,just 2,know 17,like 3,look 2,lot 3,may 5,measure 2,my 6,never 2,off 2,on 3,people 4,please 3,remember 4,saw 2,see 8,shall 5,stand 2,that 12,the 19,to 2,up 2,want 4,was 2,were 2,what 2,will 5,wrote 2
you'd:get 3,never 5,think 4
you'll:all 2,be 5,get 17,have 7,hear 2,remember 3,see 26
you're:going 2,looking 5
you've:# 2,got 4,my 3
young:fella 2,lad 2,man 3
your:eyes 2,hand 2,hat 2,own 2
`;

/** The same of classes, with those seen once. */
export const CLASS_PAIR_COUNTS = `
#:# 2204,a 52,above 11,abstract 96,across 50,again 1,all 15,along 3,also 3,amp 69,amps 41,an 10,and 732,appliance 8,appliance+ 1,are 26,as 2,assembly 8,assembly+ 11,at 48,away 2,back 2,be 2,because 3,behind 2,below 2,between 30,but 1,by 117,cable 3,cable+ 1,came 3,can 6,can't 1,coating 1,coating+ 24,comes 1,container 11,container+ 15,could 5,day 9,days 73,deep 69,degree 1,degrees 107,did 1,does 4,down 12,each 26,electric 4,electric+ 3,every 3,fastener 7,fastener+ 17,feet 41,foot 249,for 43,from 27,get 1,gets 3,go 5,goes 5,going 4,gone 1,got 3,had 2,has 7,have 3,he 3,high 56,hole 2,hole+ 7,hour 4,hours 78,i 24,i'll 1,i've 3,if 2,in 98,inch 139,inches 183,inside 15,into 4,is 27,it 14,its 2,joist 3,joist+ 28,kilo 13,kilos 119,less 3,like 4,litre 12,litres 74,long 79,machine 2,machine+ 12,material 17,material+ 4,may 1,me 2,measure 15,measure+ 5,meter 3,meters 8,metre 38,metres 156,mil 277,mill 22,mm 11,more 36,must 6,needs 1,not 1,now 14,of 323,off 56,on 82,opening 12,opening+ 11,or 20,other 917,out 14,outside 6,over 28,part 38,part+ 123,past 8,percent 23,person 39,pipe 9,pipe+ 7,region 7,region+ 2,round 14,round+ 20,she 4,sheet 29,sheet+ 49,should 1,so 44,some 3,space 7,space+ 3,still 2,such 91,that 13,the 48,them 1,then 3,there 4,they 4,they're 1,thick 48,thing-or-deed 22,this 7,through 3,till 1,timber 46,timber+ 52,time 116,to 98,too 14,tool 62,tool+ 4,under 12,up 18,very 2,vessel 3,vessel+ 2,volt 14,volts 22,wants 3,was 4,watt 5,watts 23,weeks 18,were 2,what 1,when 3,where 3,which 2,who 4,wide 130,will 3,with 26,without 2,work 200,worked 40,working 3,works 61,would 10,you 3
.:# 2669,a 277,about 31,above 1,abstract 460,across 1,again 1,air 38,all 138,along 2,also 7,am 1,an 23,and 2093,another 9,appliance 115,appliance+ 3,are 6,around 1,as 56,assembly 181,assembly+ 30,at 44,away 2,back 21,be 5,because 183,been 4,behind 12,being 4,below 4,between 11,both 46,but 96,by 54,cable 45,cable+ 2,came 2,can 5,can't 24,coating 43,coating+ 1,come 10,comes 2,container 70,container+ 4,could 10,day 3,deep 1,degrees 1,did 14,didn't 10,do 13,does 8,don't 30,down 10,each 17,electric 76,electric+ 27,every 58,fastener 22,fastener+ 60,feet 6,foot 4,for 134,from 27,get 14,gets 2,go 6,goes 4,going 6,gone 4,got 24,ground 6,had 21,has 7,have 4,having 2,he 145,her 2,here 14,high 1,him 1,his 6,hole 7,hole+ 3,hour 1,how 6,i 919,i'll 107,i'm 215,i've 155,if 132,in 116,inch 26,inches 1,inside 15,into 1,is 53,isn't 1,it 594,its 9,joist 37,joist+ 68,just 16,kilos 1,less 8,like 32,liquid 81,long 11,machine 85,machine+ 5,material 146,material+ 8,me 19,measure 55,measure+ 4,might 4,mil 1,mill 1,mm 2,more 13,must 1,my 185,need 10,needs 5,no 225,not 207,now 112,of 15,off 17,on 96,one 4,only 36,opening 48,opening+ 26,or 44,other 1438,our 4,out 24,outside 6,over 16,part 139,part+ 47,past 1,person 295,pipe 62,pipe+ 9,region 83,round 102,round+ 32,she 123,sheet 271,sheet+ 77,should 19,since 98,so 1134,some 20,space 83,space+ 3,still 24,such 385,that 401,the 1560,their 2,them 9,then 163,there 180,these 4,they 108,they're 62,thick 3,thing-or-deed 81,this 28,those 28,through 6,till 2,timber 58,timber+ 50,time 608,to 46,too 17,tool 49,tool+ 4,under 23,until 4,up 6,very 10,vessel 53,vessel+ 2,want 3,wants 8,was 6,we 79,we're 19,we've 17,week 1,were 3,what 75,when 30,where 18,which 180,who 30,why 3,wide 1,will 5,with 169,without 9,work 358,worked 517,working 103,works 27,would 19,you 87,your 1
a:# 615,abstract 371,air 5,appliance 69,assembly 82,assembly+ 1,cable 8,coating 15,come 5,container 50,day 46,deep 1,degree 2,electric 31,fastener 17,foot 10,go 2,ground 3,having 2,hole 30,inch 1,joist 22,kilo 2,liquid 7,litre 2,long 3,machine 50,material 53,measure 34,metre 16,mil 7,mill 2,no 2,opening 37,other 567,part 120,part+ 3,percent 1,person 188,pipe 31,round 83,sheet 74,so 5,space 28,such 217,thing-or-deed 119,through 1,timber 74,time 73,tool 85,very 9,vessel 118,volt 1,week 35,work 184,worked 48,working 16,works 1
about:# 53,a 25,abstract 3,an 2,another 1,appliance+ 2,as 1,assembly 1,assembly+ 2,coating 1,every 1,fastener+ 1,her 2,his 1,in 2,is 2,it 26,like 1,machine+ 1,material 1,measure 1,most 1,my 2,on 1,other 5,part 2,pipe 1,pipe+ 1,region 1,round 1,sheet 2,such 1,that 11,the 67,them 2,this 2,time 3,to 1,too 1,vessel 1,what 1,where 1,which 2,work 2,worked 1,working 4
above:# 7,every 1,it 2,liquid 1,my 1,that 1,the 15
abstract:# 59,a 27,about 45,abstract 122,again 5,air 1,all 2,along 1,an 1,and 44,any 1,appliance 6,are 5,around 2,as 11,assembly 11,assembly+ 5,at 81,back 4,be 3,because 3,been 1,behind 3,being 3,below 2,between 2,both 1,but 16,by 12,cable 14,came 2,can 7,can't 2,coating 4,comes 4,container 10,day 12,days 1,did 1,does 2,don't 1,down 31,each 1,electric 4,electric+ 1,every 2,fastener 4,fastener+ 1,for 82,from 16,get 1,gets 6,goes 7,going 3,gone 2,got 5,ground 2,had 8,has 8,have 2,he 3,her 3,here 3,his 2,hole+ 1,how 3,i 32,i'll 2,i'm 3,i've 1,if 1,in 72,inch 1,inside 3,into 2,is 45,isn't 1,it 37,its 2,joist 6,joist+ 1,less 1,like 53,liquid 7,long 1,machine 7,material 33,material+ 4,may 1,me 15,measure 5,measure+ 1,metre 1,more 6,must 1,my 17,needs 1,no 6,not 4,now 4,of 168,off 11,on 138,one 2,only 1,onto 1,opening 4,opening+ 3,or 1,other 202,out 14,outside 2,over 18,part 24,part+ 2,past 2,person 28,pipe 3,region 10,round 29,round+ 1,she 4,sheet 25,sheet+ 2,since 1,so 26,space 15,still 1,such 46,than 2,that 29,the 63,them 2,then 4,there 7,they 6,thing-or-deed 20,this 6,those 2,through 11,till 10,timber 11,time 137,to 74,too 1,tool 19,tool+ 3,under 20,until 5,up 26,us 3,vessel 14,vessel+ 1,want 2,wants 3,was 4,we 4,week 6,were 3,what 9,when 3,where 2,who 3,will 9,with 28,work 54,worked 39,working 19,works 9,would 5,you 18,your 2
across:# 1,abstract 1,again 1,and 4,at 4,by 3,from 2,her 1,inside 1,it 2,other 3,so 1,that 1,the 34,there 2,to 1,under 1,with 2
again:all 1,and 2,as 1,at 2,because 1,by 1,have 1,i 2,i'll 1,in 3,its 1,on 2,other 2,part+ 1,region 1,so 1,such 1,that 1,thing-or-deed 1,time 1,too 1,with 6,you 1
air:# 4,again 1,all 2,and 3,appliance 1,around 3,at 1,because 1,been 2,behind 3,being 1,between 1,came 5,come 1,comes 1,did 1,does 1,don't 1,for 1,from 1,going 1,gone 1,got 1,has 5,here 1,i 2,i've 1,in 1,inside 1,is 4,it 1,joist 1,like 1,measure 1,of 1,off 3,on 6,only 1,or 1,other 14,out 3,over 2,part+ 1,round 1,since 1,space 1,space+ 1,thing-or-deed 3,through 1,timber+ 2,time 1,to 2,under 2,up 5,was 2,we 2,where 1,with 1,work 1,worked 1,working 1,works 2
air+:here 1,other 1,pipe 1,the 1
all:# 108,about 1,abstract 4,again 1,along 4,and 2,around 3,be 1,between 1,but 4,came 1,day 7,do 1,down 3,goes 1,his 1,i 1,i'll 1,in 9,is 1,it 2,its 2,joist+ 1,my 2,need 2,of 28,on 2,other 10,out 2,over 4,part 1,part+ 1,person 1,region 1,round 19,round+ 1,so 1,space 1,still 1,such 3,that 6,the 49,them 2,there 1,they 1,this 4,those 3,through 1,timber 2,timber+ 1,time 14,too 2,tool 1,tool+ 1,up 16,want 2,wants 1,week 2,with 1,work 4,worked 38,works 3
along:# 1,a 1,and 1,each 1,from 1,her 1,is 1,it 1,its 1,that 3,the 16,there 1,under 1,with 3
also:# 1,a 1,abstract 4,are 1,be 1,because 1,been 1,i 3,in 1,just 1,not 1,on 1,other 6,some 1,such 1,that 1,the 5,work 3,worked 1
am:# 1,a 2,abstract 3,an 1,and 1,going 2,here 1,i 7,in 1,inside 1,just 1,not 10,only 1,other 7,region 1,so 2,such 2,to 2,worked 2,working 7
amp:# 4,abstract 2,electric 20,electric+ 1,hour 3,hours 24,on 1,other 2,round 1,sheet 2
amps:a 1,and 2,at 2,by 1,if 1,is 1,it 1,on 6,other 2,was 1
an:# 1,a 2,abstract 13,air 2,all 2,amp 1,electric 3,hour 28,inch 60,inside 1,machine 4,material 6,measure 3,opening 1,other 40,person 9,sheet 1,so 1,such 16,time 5,vessel 1,work 8
and:# 543,a 503,about 3,abstract 75,air 2,all 54,an 15,any 3,appliance 2,appliance+ 1,are 1,around 1,as 5,assembly 1,assembly+ 4,at 7,back 3,be 3,behind 5,being 2,both 8,by 16,came 3,coating 7,come 3,comes 2,container 5,container+ 1,did 4,do 2,does 1,don't 6,down 12,each 3,every 18,fastener 4,fastener+ 1,for 6,from 7,get 7,go 3,goes 4,going 1,gone 8,got 2,had 2,has 3,have 8,having 1,he 55,her 1,here 2,his 6,hole 6,i 304,i'll 19,i'm 75,i've 114,if 12,in 15,inch 1,inches 1,inside 1,is 3,isn't 1,it 320,its 18,less 1,liquid 3,machine 3,material 12,me 5,measure 3,measure+ 2,more 1,most 5,my 44,no 41,not 59,now 10,of 1,off 4,on 15,one 1,only 5,opening 2,other 243,out 4,over 2,part 9,part+ 2,past 1,person 53,pipe 1,region 2,round 9,she 57,sheet 13,sheet+ 5,should 1,since 4,so 39,some 4,space 1,space+ 1,such 22,that 109,the 634,their 2,them 3,then 40,there 84,they 33,they're 42,thick 2,thing-or-deed 13,this 6,those 12,through 1,timber 1,timber+ 3,time 18,to 5,tool 4,tool+ 1,under 3,until 1,up 2,very 2,vessel 1,was 1,we 26,we're 5,we've 3,what 16,when 7,where 5,who 1,will 2,with 16,without 2,work 62,worked 219,working 28,works 8,would 4,you 21,your 1
another:# 19,abstract 6,assembly 4,coating 1,container 2,day 4,machine 1,material 1,measure 1,opening 1,other 2,part 3,round 2,thing-or-deed 1,time 4,to 2,tool 1,when 1,work 2,worked 1,working 2
any:# 1,abstract 2,coating 1,joist 1,material 8,measure 1,more 3,of 7,other 5,part 1,sheet 4,so 1,timber 1,time 1,work 4
appliance:# 20,a 9,about 1,abstract 14,again 1,and 14,any 1,appliance 5,are 1,assembly 3,assembly+ 4,at 4,because 1,been 3,behind 1,by 2,cable 2,came 10,can't 2,coating 1,come 1,comes 3,container 5,could 1,did 1,down 2,electric+ 1,every 1,fastener 1,fastener+ 5,for 4,gets 2,goes 5,going 6,gone 2,got 4,had 3,has 5,he 1,here 3,hole 4,hole+ 1,i 8,i'm 1,in 26,is 21,it 5,its 1,joist 5,joist+ 1,less 1,liquid 3,long 1,machine 2,material 2,measure 1,measure+ 2,must 1,no 2,not 3,now 2,of 6,off 4,on 23,opening 7,other 35,out 6,over 3,part 5,part+ 3,person 11,pipe 4,pipe+ 1,round 2,round+ 7,sheet 10,so 2,space 4,still 2,such 3,that 2,the 3,then 1,thing-or-deed 3,those 1,through 1,till 2,timber+ 1,time 2,to 6,too 1,tool 1,under 2,until 3,up 4,wants 4,was 5,when 1,where 3,will 3,with 10,without 1,work 9,worked 20,working 1,works 7
appliance+:abstract 1,and 1,are 6,assembly 1,by 1,can 1,can't 1,go 1,have 2,like 1,on 1,other 2,should 1,to 1,too 1,worked 2
are:# 105,a 9,abstract 27,across 1,all 15,an 2,and 1,another 1,as 1,assembly+ 1,at 14,away 1,back 4,being 1,both 1,down 19,each 1,every 1,for 1,going 16,gone 3,got 1,having 1,here 8,in 36,inch 1,inside 2,joist+ 1,like 5,liquid 1,long 2,material 10,my 1,no 3,not 5,now 2,of 1,off 4,on 23,other 38,out 13,person 1,region 2,sheet 3,so 3,still 4,such 10,that 8,the 11,there 1,thing-or-deed 3,through 3,time 2,to 8,too 8,tool 1,under 3,up 17,we 2,with 1,work 8,worked 166,working 25,you 1
around:# 4,a 2,abstract 1,and 1,her 1,here 2,it 1,that 1,the 3,with 1
as:# 6,a 65,abstract 8,all 2,an 1,and 1,assembly 25,coating 1,day 1,for 7,ground 1,he 1,her 1,high 1,i 15,i'm 3,i've 2,in 2,is 2,it 19,long 1,material 2,me 1,my 8,of 4,other 27,person 4,she 5,sheet+ 1,so 13,such 12,that 4,the 25,them 1,there 4,they 5,thick 1,thing-or-deed 2,to 3,tool 1,vessel+ 1,wants 1,work 2,worked 13,you 5,your 1
assembly:# 44,a 5,above 2,abstract 9,across 1,again 3,all 2,along 1,an 1,and 34,another 1,appliance 1,are 3,as 1,assembly 7,assembly+ 12,at 12,away 1,back 2,been 3,behind 3,being 4,below 1,between 2,by 4,cable 2,came 2,can 2,can't 2,coating 1,coating+ 1,come 3,comes 2,container 2,could 1,day 1,didn't 1,do 1,down 3,fastener 3,fastener+ 3,feet 1,foot 2,for 18,from 2,gets 3,go 2,goes 6,going 5,gone 2,got 9,had 3,has 11,have 1,having 1,he 1,her 1,hole 1,hole+ 1,i 15,i'll 1,i'm 1,i've 2,in 20,inside 1,is 54,it 5,joist 3,joist+ 1,just 1,less 3,like 2,machine 5,material 3,material+ 2,measure 4,measure+ 3,must 2,my 1,needs 1,no 1,not 2,now 7,of 12,off 10,on 29,onto 1,opening 7,opening+ 2,other 51,out 11,over 15,part 20,part+ 14,person 6,pipe 1,pipe+ 1,region 4,round 5,round+ 1,she 2,sheet 25,sheet+ 4,since 2,so 10,still 2,such 4,than 1,that 5,the 13,then 1,there 3,they 1,thing-or-deed 1,this 1,through 3,till 4,timber 2,timber+ 5,time 2,to 16,too 1,tool 2,under 4,until 1,up 15,vessel 3,wants 2,was 3,we 2,when 2,where 2,will 3,with 9,without 1,work 14,worked 34,working 5,works 10,would 1,you 2
assembly+:# 11,a 1,abstract 1,across 1,all 2,also 1,and 4,another 1,are 28,at 7,by 1,came 2,come 1,did 1,for 1,go 1,going 1,got 1,had 1,have 1,here 1,i 4,i'm 1,in 5,it 1,its 2,like 2,me 1,not 1,now 1,off 4,on 10,opening 1,other 10,out 2,over 1,person 1,round 1,sheet 1,since 1,so 1,such 1,that 1,the 2,there 2,time 1,to 8,under 2,up 4,want 1,will 2,with 1,work 1,worked 8,working 1,would 1
at:# 275,a 33,about 2,abstract 12,all 7,an 2,another 1,by 1,container 1,each 5,every 2,he 1,her 1,high 1,him 1,his 2,hole+ 1,is 3,it 26,its 2,least 26,like 1,material 2,me 11,measure 2,most 2,my 8,no 1,on 2,opening 1,opening+ 1,other 15,part 1,person 2,sheet 1,such 2,that 11,the 293,their 2,them 3,thing-or-deed 2,this 1,those 1,timber 1,time 27,us 2,work 1,working 1,you 1
away:at 2,by 2,for 4,from 3,i 1,in 2,is 1,other 2,the 3,this 1,to 2,until 1,up 1,with 1,your 1
back:# 4,a 3,abstract 1,again 1,and 11,are 2,assembly 5,at 2,been 1,by 3,can 1,down 1,for 2,from 7,got 1,has 3,here 1,in 15,inside 1,is 3,it 1,like 2,machine+ 1,material 1,no 1,now 2,of 15,off 5,on 13,one 1,opening 6,opening+ 2,other 20,out 2,over 2,part 11,person 1,region 3,round 10,round+ 2,sheet 13,sheet+ 1,so 3,some 1,space+ 1,that 1,the 4,then 1,there 2,this 1,till 1,timber 2,time 9,to 30,under 4,up 9,was 1,we 1,where 1,with 6,without 1,work 1,worked 3,works 1
be:# 124,a 46,abstract 13,an 2,and 3,assembly 3,assembly+ 1,at 17,between 1,by 1,cable 2,container 1,for 2,going 1,got 7,ground 1,had 2,having 1,her 1,here 20,in 6,inch 1,less 1,liquid 1,machine 1,material 11,me 1,mil 1,more 1,my 2,no 4,now 1,of 1,on 15,only 1,other 61,out 2,over 2,part 1,part+ 1,region 2,sheet 3,sheet+ 2,so 1,such 18,that 1,the 10,then 1,there 5,thing-or-deed 1,this 1,timber 1,timber+ 1,time 9,tool 1,under 5,until 1,up 2,where 1,with 7,without 1,work 6,worked 189,working 35,works 1
because:# 6,a 7,abstract 2,air 2,appliance+ 1,at 1,coating 3,electric+ 1,every 1,he 2,her 1,i 28,i'm 14,i've 9,if 1,in 1,it 17,its 2,material 7,my 8,of 6,on 1,opening 1,other 15,our 1,person 10,pipe 1,region 1,she 2,sheet 4,so 1,such 1,that 7,the 40,then 5,there 4,they 1,they're 2,those 1,time 1,tool 1,we 1,when 1,with 4,work 2,worked 1,working 1,you 4
been:# 6,a 3,abstract 12,all 1,and 12,assembly 4,at 4,back 1,cable 1,going 2,ground 1,here 2,in 4,inside 1,me 1,no 1,on 5,other 41,out 2,past 1,since 1,so 1,such 1,there 1,through 5,timber 2,to 1,under 3,up 2,work 1,worked 119,working 16
behind:# 2,a 2,coating 1,her 1,it 19,me 10,my 2,other 2,still 1,such 1,the 37,them 1,us 4
being:# 1,a 4,about 1,abstract 2,an 1,any 1,in 2,material 1,me 1,no 2,other 5,person 1,so 1,such 3,that 1,the 4,up 1,what 2,work 1,worked 15
below:# 9,assembly 1,i 1,the 9
between:# 7,a 2,and 2,at 1,coating+ 15,fastener 1,fastener+ 1,here 1,it 3,its 2,material 2,me 2,other 2,part+ 7,round+ 1,sheet+ 2,that 1,the 35,them 6,timber+ 1,time 1
both:abstract 2,appliance+ 1,at 1,can 1,coating+ 3,comes 1,container+ 3,her 1,hole+ 1,in 1,its 1,joist+ 1,long 2,of 17,opening+ 2,other 7,part 1,part+ 30,person 2,round+ 3,sheet+ 3,space+ 1,such 1,the 1,timber+ 4,vessel+ 1,work 1,worked 1,works 3
but:# 5,a 4,abstract 4,behind 1,coating 1,feet 1,he 1,i 9,i'll 1,i'm 6,i've 1,in 2,it 15,its 2,joist+ 1,material 1,me 1,my 1,no 7,not 8,now 1,on 1,only 2,other 16,out 1,person 3,she 1,so 1,still 1,such 1,that 6,the 21,then 2,there 9,they 2,they're 2,thing-or-deed 2,us 1,we 2,we're 1,what 1,who 3,will 1,with 1,work 4,worked 1,working 2
by:# 158,a 9,about 1,abstract 11,an 2,and 1,coating 1,container 3,container+ 1,day 1,his 1,i 1,it 4,me 4,measure 2,my 6,now 10,on 1,other 22,our 1,part 4,person 11,some 3,space 1,such 4,that 1,the 110,then 5,there 1,thing-or-deed 1,timber 2,time 161,tool 3,which 1,with 2,work 6,working 2
cable:# 8,a 1,abstract 7,again 1,and 9,assembly 1,at 2,back 1,been 1,behind 1,by 1,cable 1,came 3,can 1,coating 4,down 2,electric 1,electric+ 1,fastener 2,for 9,from 4,gets 1,goes 1,going 1,has 1,here 2,i 2,i'm 1,i've 1,in 11,is 6,it 2,its 1,machine 4,material+ 1,now 1,of 1,off 1,on 5,other 15,part+ 2,person 1,round 6,sheet 2,sheet+ 1,so 1,such 2,that 2,the 3,they 1,through 1,time 1,to 8,too 1,tool 1,under 2,up 2,wants 3,was 1,we're 1,will 1,with 6,work 4,worked 16,working 2,would 1
cable+:a 1,abstract 1,at 1,down 1,for 1,here 1,i 1,in 10,is 1,on 3,she 1,the 1,there 1,where 1,with 1
came:a 2,about 1,and 3,as 1,at 9,away 5,back 3,by 6,down 7,for 3,from 2,in 2,it 1,like 1,liquid 1,off 8,on 7,other 10,out 19,round 1,such 3,the 4,this 6,through 1,time 47,to 6,too 1,up 6,with 10,without 1,worked 2
can:abstract 25,again 1,and 1,appliance 1,assembly 9,be 15,by 1,cable 5,coating 2,come 2,do 2,electric 1,fastener 1,get 7,go 6,have 5,i 1,machine 4,measure 3,only 3,other 3,part 5,so 3,space 2,still 2,thing-or-deed 13,timber 4,tool 1,want 3,work 63,worked 7,you 4
can't:abstract 5,appliance 1,be 20,cable 1,coating 1,come 1,do 1,electric 1,fastener 3,get 5,go 22,have 3,machine 5,measure 2,part 1,pipe 1,round 1,thing-or-deed 2,tool 2,work 38,worked 6
coating:# 5,a 3,about 1,abstract 5,and 6,appliance 1,around 1,at 3,been 1,below 2,but 1,by 2,came 4,can 1,can't 1,coating 2,comes 1,container 1,does 1,don't 1,each 1,fastener 1,for 4,goes 3,gone 2,had 1,has 6,her 1,here 2,hole 1,i 3,i'm 1,in 4,inside 1,is 7,isn't 1,it 7,just 3,material 1,me 1,must 2,needs 3,not 1,of 16,off 6,on 22,only 2,other 23,out 2,over 2,person 2,round 1,sheet 2,should 1,so 5,space+ 1,such 4,that 1,the 4,there 1,they 1,time 4,to 3,tool 1,until 1,up 2,wants 8,was 1,what 1,work 4,worked 9,working 1,works 3
coating+:# 1,abstract 1,and 4,are 1,at 1,gone 1,in 1,of 12,on 1,other 1,such 1,when 1,with 1
come:a 1,abstract 1,across 1,along 8,an 1,and 4,away 1,back 9,by 3,down 20,every 1,from 1,get 1,in 6,material 1,of 1,off 21,on 10,other 7,out 27,region 2,round 1,so 1,such 7,the 3,through 1,time 17,to 11,too 1,up 5,with 3,work 1
comes:a 6,and 1,at 1,back 2,by 2,coating 1,down 6,he 1,in 8,into 1,it 1,off 10,on 6,other 4,out 15,over 3,sheet 1,such 3,the 4,through 5,time 8,to 4,up 7,when 1,with 2,worked 1
container:# 11,a 1,abstract 10,again 1,an 1,and 4,appliance 1,are 1,around 1,assembly 3,assembly+ 4,at 3,back 2,be 1,because 2,but 1,by 4,came 4,coating 1,container 2,container+ 1,down 1,electric 1,fastener+ 1,for 1,from 2,gets 3,goes 3,gone 1,got 3,has 5,having 1,he 1,here 1,i 6,i've 1,in 4,inside 2,is 22,isn't 1,it 2,joist 2,less 1,liquid 1,machine 12,machine+ 3,measure 3,measure+ 1,must 1,my 1,needs 4,not 1,of 12,off 4,on 7,only 1,opening 1,opening+ 1,other 33,out 4,outside 1,part 5,part+ 4,person 3,pipe 1,region 1,round 2,sheet 8,sheet+ 5,so 3,space 1,space+ 4,such 4,that 3,the 1,there 1,thing-or-deed 1,time 1,to 2,under 5,up 3,wants 1,when 2,will 4,with 5,work 3,worked 17,working 3,works 5,you 4
container+:# 4,abstract 1,and 3,are 4,assembly 1,at 1,below 1,can't 1,come 1,for 1,have 2,here 1,i'll 1,if 1,of 1,on 2,or 1,other 5,such 1,the 1,to 1,under 2,was 1,were 1,will 1,with 1,worked 2
could:a 1,abstract 3,also 2,assembly 3,at 1,be 2,cable 1,coating 2,do 3,get 3,have 6,he 1,i 1,it 1,just 1,measure 1,not 3,other 4,part 2,person 1,sheet 2,thing-or-deed 2,timber 11,tool 1,work 28,worked 4,you 2
day:# 4,abstract 1,and 8,at 1,be 1,behind 1,between 2,comes 1,for 1,gets 1,he 2,i 1,i'll 1,if 2,is 1,it 1,of 10,on 1,or 1,other 6,over 3,person 1,such 9,than 1,the 4,they 1,time 3,to 2,too 1,was 1,we 2,we're 1,we've 1,with 2,without 1,working 1,you 1
days:and 6,are 2,at 3,between 1,fastener+ 1,for 1,i 1,in 1,it 1,measure 1,more 1,of 7,on 3,opening+ 1,or 2,other 12,such 8,time 1,to 1,under 2,we 2,with 2
deep:# 2,again 1,and 4,by 1,down 1,if 1,in 2,inside 1,my 1,on 1,or 1,other 3,part 3,the 2,with 1
degree:less 1,other 1
degrees:# 1,all 1,and 4,at 4,each 1,for 3,in 5,inside 1,it 2,my 1,of 2,on 6,or 5,other 5,out 1,so 3,that 1,they 1,this 1,time 1
did:# 2,a 4,abstract 6,all 1,also 1,appliance 1,assembly 1,come 2,every 1,for 1,get 3,have 1,he 1,his 2,i 17,it 11,material 1,me 1,my 3,not 9,region 1,round 1,sheet 1,that 2,the 24,them 2,thing-or-deed 5,those 1,time 1,to 1,we 4,what 1,work 2,worked 1,you 1
didn't:abstract 2,do 1,get 2,go 1,have 1,i 5,like 1,thing-or-deed 1,work 6
do:# 3,a 8,about 3,abstract 5,all 2,another 1,electric+ 1,for 1,have 1,i 6,is 3,it 22,not 8,on 1,other 3,so 3,such 1,that 12,the 19,they 1,thing-or-deed 1,this 4,time 1,tool+ 1,we 1,with 5,work 1,you 5
does:# 1,a 2,abstract 2,all 1,for 1,he 1,it 3,material 1,not 5,person 5,that 6,the 6,to 2
don't:abstract 10,coating 1,come 1,do 1,get 4,go 6,have 5,i 1,like 2,machine 1,measure 4,need 5,other 4,person 6,round 1,so 1,space 2,the 1,thing-or-deed 16,timber 1,want 8,work 34,worked 3,you 1
down:# 14,a 3,again 1,an 2,and 9,another 2,as 5,assembly 1,at 7,because 1,behind 1,between 2,both 5,by 6,comes 1,container 1,each 1,every 2,fastener+ 1,for 8,from 2,goes 1,gone 1,here 2,his 1,i 1,i'm 1,in 9,inside 2,it 4,its 1,like 1,me 1,my 1,no 1,now 1,off 1,on 19,other 11,over 2,part 2,past 2,person 1,region 1,she 2,sheet 3,since 1,so 8,such 5,the 47,them 2,there 4,they 1,this 1,through 3,till 3,timber 2,time 8,to 58,too 1,under 1,until 2,when 3,where 3,with 3,work 2,worked 1,you 1
each:# 5,abstract 4,and 3,assembly 1,fastener 1,hole 1,i 1,joist+ 1,machine 1,must 1,of 9,one 2,other 4,part 58,pipe 1,sheet 2,so 1,space 1,such 1,timber 1,time 1,wants 1,will 1,with 2
electric:# 13,a 6,abstract 13,all 1,also 1,and 8,appliance 1,are 1,as 1,assembly 6,at 1,been 1,by 1,cable 16,came 3,can 1,come 1,comes 2,container 6,container+ 1,electric 13,for 7,from 1,goes 2,going 1,got 3,has 2,he 1,her 1,here 2,i 2,i've 1,in 3,is 13,it 1,joist 2,just 1,machine 1,meter 1,mill 2,must 1,not 1,now 1,of 5,off 2,on 11,opening 2,other 17,over 1,part+ 3,person 3,region 1,round 3,sheet 2,sheet+ 3,so 1,space+ 1,such 4,that 2,the 3,thing-or-deed 2,timber 2,timber+ 2,time 1,to 4,tool 1,under 1,up 1,was 1,work 8,worked 10,working 2,works 4
electric+:# 3,abstract 1,along 1,and 3,appliance 1,are 13,at 2,by 2,came 2,for 1,going 2,got 1,have 1,i 1,i'm 1,i've 1,in 2,off 2,on 4,other 4,over 1,space 1,there 1,time 3,to 4,too 1,under 1,until 1,up 1,want 1,work 3,worked 3
every:# 74,abstract 19,assembly 3,coating 2,container 1,could 1,day 3,electric 2,electric+ 1,fastener 5,foot 1,hole 2,inch 1,joist 5,machine 1,material 5,measure 1,metre 1,opening 2,other 9,part 6,round 9,sheet 7,space 1,thing-or-deed 1,timber 6,time 10,tool 1,work 1,worked 1
fastener:# 1,a 4,abstract 1,and 3,another 1,appliance 1,back 1,because 1,by 2,down 1,electric 1,every 1,fastener 1,fastener+ 8,for 4,goes 1,going 1,got 2,had 1,has 5,him 1,hole+ 1,i 1,in 3,is 4,it 5,machine 1,machine+ 3,meter 1,my 1,on 5,other 4,over 1,part 3,part+ 1,person 2,region 1,round 2,sheet+ 1,space 1,such 1,the 5,them 5,through 1,timber 1,to 7,tool+ 2,up 3,wants 3,was 1,we 1,work 1,worked 7,works 2
fastener+:# 1,abstract 3,all 1,and 11,appliance 2,are 43,at 4,back 1,but 2,by 1,came 7,can 2,can't 1,come 3,don't 1,down 1,every 9,for 5,from 2,get 2,go 1,have 2,hole 1,i 1,in 7,is 3,it 1,its 2,measure 1,no 1,not 1,off 1,on 3,other 8,out 3,part 1,region 1,since 1,so 3,such 3,that 3,there 1,they 1,thing-or-deed 1,this 1,through 2,to 5,tool 1,up 1,were 1,with 1,work 2,worked 8,working 1
feet:# 1,across 2,and 3,are 4,by 2,down 2,each 1,for 1,from 1,go 1,high 2,i 1,inside 1,is 2,it 1,long 3,measure 1,must 1,need 1,of 7,off 1,on 4,or 1,other 1,out 1,over 1,since 1,so 4,such 3,that 1,to 3,up 2,want 1,were 1,wide 1,with 1,work 1,worked 2,working 1
foot:# 117,above 2,abstract 1,across 2,and 6,appliance 1,at 4,below 1,by 3,deep 4,each 2,from 1,goes 2,has 1,i 1,is 1,long 9,machine 1,measure 1,my 1,of 15,off 2,on 7,other 32,outside 1,over 1,part 2,part+ 1,sheet 1,sheet+ 2,such 5,that 1,thing-or-deed 1,to 7,too 1,tool 2,under 1,up 2,vessel 1,wide 6,with 1,worked 2
for:# 66,a 95,about 4,abstract 29,air 3,all 2,an 5,and 1,another 6,as 1,assembly 1,at 1,behind 1,both 1,coating 1,container+ 2,each 1,electric+ 1,every 2,feet 1,her 3,here 1,him 4,his 1,i 3,i'll 1,is 2,it 59,its 5,like 2,liquid 1,machine+ 2,material 7,me 14,measure 3,more 2,my 4,now 2,opening 1,opening+ 1,other 43,our 1,over 1,part 1,part+ 1,person 8,sheet 2,sheet+ 3,so 5,space+ 2,such 5,that 55,the 331,them 10,there 1,they 3,this 5,those 17,time 41,tool 2,tool+ 1,under 2,us 2,vessel+ 1,want 1,what 3,when 3,where 1,who 2,work 5,working 11,works 2,you 9,your 1
from:# 13,a 16,abstract 6,across 1,air 1,an 3,assembly 1,behind 1,being 1,coating 1,down 1,electric 1,every 1,go 1,here 4,inside 2,it 2,its 1,joist 1,liquid 1,material 5,me 5,my 4,now 1,other 11,out 1,outside 1,over 3,part 4,person 1,sheet 6,so 2,space 1,that 1,the 151,then 1,there 2,time 6,under 3,up 2,where 1,work 6
get:# 15,a 28,abstract 1,an 1,any 1,at 3,back 1,by 1,coating 2,down 2,every 1,for 1,from 1,has 1,her 1,here 1,his 2,i'm 1,it 8,its 1,liquid 1,me 2,my 1,on 5,opening+ 1,other 5,out 5,past 2,sheet 1,some 3,space 3,such 3,that 5,the 38,their 3,there 1,thing-or-deed 1,time 1,to 8,under 1,up 3,work 1,worked 20,works 2,you 1,your 1
gets:# 1,a 10,an 1,away 1,coating 1,her 1,here 4,in 3,it 1,its 9,no 2,other 7,sheet 2,such 3,the 3,to 3,work 1,worked 36
go:# 6,a 1,abstract 2,across 1,along 1,and 2,at 4,away 2,back 14,below 1,between 1,down 14,for 1,i 1,in 32,my 2,of 1,off 5,on 24,other 8,out 3,over 4,past 4,region 3,round 2,so 2,such 4,thing-or-deed 2,through 9,till 2,to 13,under 3,until 1,up 18,when 1,where 1,with 4,work 3,worked 2,working 1,would 1
goes:# 3,a 1,above 1,abstract 3,across 3,all 1,along 1,assembly 1,away 1,back 11,behind 1,between 1,by 3,down 9,for 1,in 17,inside 1,it 1,like 1,on 20,other 5,out 4,over 8,past 1,region 1,round 2,so 1,some 1,such 5,the 5,through 3,to 5,under 3,until 1,up 11,with 1,work 2
going:# 13,above 1,abstract 3,across 2,all 1,an 1,and 1,around 1,back 15,by 3,cable 1,down 15,electric 2,for 1,in 11,like 3,material 1,on 16,other 11,out 5,over 3,part 1,round 2,so 5,such 3,through 4,to 87,under 5,up 29,vessel 1,where 1,with 9,work 2
gone:# 2,a 1,abstract 1,and 2,around 1,at 2,back 2,down 3,electric 1,for 8,i 1,in 4,like 2,off 8,on 1,other 6,out 2,outside 1,over 1,such 3,the 3,they 1,through 3,to 8,up 6,with 4
got:# 38,a 59,about 1,abstract 6,all 2,an 2,and 2,another 1,any 1,assembly 1,away 1,back 1,both 1,by 2,cable 1,coating 1,every 1,for 2,from 2,her 6,here 4,his 5,in 9,into 2,is 1,it 10,its 21,joist+ 1,just 1,liquid 1,material 3,me 3,most 1,my 18,off 1,other 13,over 1,part+ 1,person 1,pipe 1,region 1,round+ 3,sheet 2,some 1,space 1,such 7,that 5,the 49,their 1,there 1,through 3,till 1,timber+ 1,time 1,to 75,too 1,tool 1,under 1,up 3,us 1,work 2,worked 31,your 1
ground:# 1,and 5,are 1,at 2,because 1,behind 1,by 1,did 1,for 1,go 1,in 2,is 2,its 1,measure+ 1,off 2,opening+ 1,or 2,other 6,out 2,region 1,round 3,so 1,such 2,the 3,there 1,to 1,vessel 1,which 1,work 1,worked 3,working 1,works 1
ground+:are 1,by 1,can't 1,of 1,out 1,that 4,want 1
had:# 17,a 60,abstract 5,all 3,and 1,assembly 1,at 3,been 6,both 3,but 1,her 4,him 1,his 5,hours 1,i 3,in 3,is 1,it 14,its 18,liquid 2,material 1,me 1,my 9,not 1,on 2,only 1,other 17,our 1,region 1,sheet 1,so 2,some 1,such 1,the 38,their 10,them 2,they 1,this 2,to 9,work 1,worked 19,works 2
has:# 5,a 26,abstract 6,also 2,an 1,another 1,at 2,been 54,come 5,gone 6,got 12,had 5,he 1,his 1,it 3,its 12,material 1,more 2,my 1,no 2,not 2,now 1,other 35,part+ 1,person 3,region 3,round 1,so 4,still 1,the 8,them 1,to 72,worked 50
have:# 16,a 39,abstract 9,all 1,also 1,another 1,assembly 1,assembly+ 1,been 40,come 4,every 1,feet 1,gone 11,got 7,had 16,her 1,i'll 1,in 1,it 14,its 4,less 3,material 2,me 1,more 3,my 14,no 6,not 5,other 49,person 4,region 2,round 1,sheet+ 1,so 7,some 2,still 2,such 2,that 7,the 17,their 5,there 1,thing-or-deed 2,timber 1,to 90,up 1,us 1,work 1,worked 93,you 1
having:# 4,a 14,abstract 2,been 2,gone 1,his 1,hole+ 1,material 3,me 1,other 3,sheet 1,sheet+ 1,such 1,that 2,the 5
he:# 4,a 4,abstract 11,also 3,appliance 1,assembly+ 1,at 2,away 2,back 3,be 1,been 5,cable+ 1,came 4,can 9,can't 1,come 1,comes 4,could 2,did 3,didn't 1,gets 1,goes 1,gone 1,got 7,had 5,has 12,in 1,is 9,isn't 1,machine 1,machine+ 2,may 1,must 1,needs 3,not 3,now 1,off 1,on 2,only 2,other 83,region 1,sheet+ 1,so 3,space+ 1,such 1,the 2,thing-or-deed 4,time 3,wants 7,was 13,were 2,will 2,work 3,worked 30,working 10,works 19,would 2
her:# 4,a 1,abstract 8,across 1,again 2,and 2,appliance 1,are 1,assembly 1,at 1,back 1,be 1,by 1,cable 1,can 1,come 1,container 1,down 4,fastener+ 1,feet 1,for 4,i've 1,in 5,into 1,measure 1,more 1,my 1,no 2,not 1,on 9,other 16,out 4,over 5,part 1,part+ 2,person 4,pipe 1,pipe+ 2,round+ 1,she 1,sheet+ 1,so 1,such 2,that 1,the 1,thing-or-deed 1,timber+ 1,time 2,to 6,under 1,up 9,we 1,when 1,with 3,work 9,worked 1
here:# 2,all 1,and 6,at 2,can 1,comes 1,gets 1,goes 1,has 1,i 1,i'm 1,in 4,is 4,its 2,me 1,my 1,off 1,on 8,other 7,she 2,since 3,so 3,such 3,that 1,the 10,they 1,this 1,time 25,to 2,too 1,we 2,where 1,with 1,without 1,works 1,you 3
high:# 2,and 4,as 1,in 1,inside 1,like 1,liquid 4,measure 3,no 1,now 1,or 1,other 3,sheet+ 1,so 1,where 1,work 1
him:# 1,a 4,about 2,again 1,at 2,by 4,come 1,fastener 1,he 1,in 1,is 1,it 1,no 1,on 1,other 1,so 1,the 5,they 1,they're 1,this 1,to 2,work 3,working 1
his:# 4,abstract 18,appliance 1,as 1,assembly 3,cable 1,come 1,container 1,electric 1,fastener+ 1,in 2,joist 1,machine 3,material 1,other 12,out 1,part 4,part+ 3,person 11,pipe 1,round 2,round+ 2,sheet 1,such 4,that 1,thing-or-deed 4,time 4,tool 7,vessel 5,work 17,works 3
hole:# 8,a 2,about 1,abstract 1,an 1,and 2,any 1,appliance 1,as 1,assembly 1,at 2,by 1,for 9,gets 3,going 1,gone 1,has 1,i 5,in 17,into 1,is 9,it 1,machine 4,more 1,my 1,not 1,now 2,of 1,opening 1,other 2,part 1,part+ 1,should 1,so 3,still 1,that 2,the 1,thing-or-deed 1,through 3,time 1,to 2,tool 2,until 1,with 2,worked 6,works 2,you 1
hole+:# 2,and 1,are 10,by 2,can 1,for 2,get 1,got 1,have 1,i 2,in 6,is 1,like 1,measure 1,now 1,other 2,over 1,that 1,through 1,till 1,time 1,to 1,with 1
hour:abstract 1,an 2,and 7,opening 1,or 1,other 3,to 4,we 1,with 1,work 1
hours:# 1,a 4,and 3,at 1,because 1,between 18,for 1,from 2,he 1,in 9,it 1,measure 1,must 1,now 1,of 4,on 3,other 7,so 2,such 3,to 3,under 1,with 1,work 1,worked 1
how:# 1,abstract 1,air 1,days 1,do 1,he 1,i 2,it 2,long 2,other 13,person 1,such 4,that 1,the 3,they 1,thick 1,to 3,we 3,work 1,would 1,you 3
i:abstract 121,am 50,appliance 1,are 1,assembly 6,be 1,been 7,cable 4,came 4,can 57,can't 33,coating 1,come 1,could 26,did 53,didn't 4,do 26,don't 38,electric 1,fastener 3,fastener+ 1,get 26,go 9,goes 1,going 1,got 59,ground 2,had 88,have 122,in 1,just 3,like 14,machine 6,material 1,may 5,measure 1,might 3,must 13,need 33,no 1,not 1,now 2,only 6,other 351,part 5,person 5,region 5,round 1,shall 17,sheet 1,should 20,so 28,space 1,still 8,then 1,thing-or-deed 78,timber 3,to 2,tool 1,want 36,was 84,were 9,will 34,with 1,work 146,worked 556,working 1,would 12
i'll:abstract 8,appliance 1,assembly 7,be 13,cable 1,do 16,fastener 1,get 5,go 1,have 14,just 1,machine 1,measure 1,need 2,not 6,other 2,part 2,pipe 1,so 1,space 1,thing-or-deed 6,timber 3,time 1,tool 1,want 3,work 57,worked 11
i'm:# 22,a 10,about 2,abstract 22,at 2,back 2,being 1,fastener 2,fastener+ 1,going 32,having 15,in 5,inside 1,measure 1,no 2,not 64,off 1,on 5,only 5,opening 1,other 52,out 1,part 1,region 1,sheet 1,so 2,still 2,such 11,the 8,there 1,through 1,to 7,too 1,up 2,work 2,worked 6,working 133
i've:# 10,a 25,abstract 4,an 1,another 2,assembly 3,been 24,coating 1,come 5,gone 11,got 48,ground 1,had 18,it 2,just 2,liquid 1,measure 1,no 3,not 2,only 4,other 45,region 3,round+ 1,sheet 1,sheet+ 1,so 9,still 3,that 3,the 13,them 1,timber 1,to 13,under 1,worked 121
if:# 3,a 1,abstract 1,he 1,his 1,i 52,i'm 3,i've 3,it 29,its 1,material 1,me 1,my 4,need 1,only 1,other 42,person 4,she 7,that 6,the 25,there 4,they 2,this 9,vessel 1,we 2,work 1,you 19,your 3
in:# 126,a 112,about 5,abstract 32,again 2,air 1,all 4,an 7,and 30,another 1,appliance 6,are 1,as 1,assembly+ 1,at 14,behind 2,between 13,both 1,but 1,by 7,cable 1,coating 2,comes 1,container 6,each 5,electric 1,every 2,fastener+ 2,feet 1,for 6,has 1,he 1,her 9,here 16,his 10,hole+ 1,how 1,i 2,if 1,in 1,is 3,it 66,its 24,like 10,liquid 5,material 32,may 1,me 5,measure 2,mil 1,my 52,no 1,now 1,off 1,on 14,opening 1,other 69,our 3,over 3,part 8,part+ 4,person 21,pipe 3,round 1,round+ 4,sheet 9,sheet+ 1,since 1,so 8,such 8,that 18,the 441,their 8,them 2,there 29,they 1,thing-or-deed 7,this 13,those 2,through 1,till 3,time 40,to 16,too 2,tool 5,under 4,until 3,very 1,vessel 1,we 1,what 1,when 2,where 1,with 13,without 3,work 17,worked 4,working 7,your 2
inch:# 1,a 1,abstract 3,all 1,and 65,assembly 1,at 2,because 1,behind 1,between 1,by 2,each 6,fastener+ 3,feet 1,for 1,hole 3,hole+ 2,inside 1,is 3,it 2,joist+ 1,less 1,machine 1,material 6,measure 4,more 2,not 1,now 3,of 5,off 3,on 1,other 6,part 5,part+ 9,pipe 5,pipe+ 1,round 5,round+ 1,sheet 9,sheet+ 1,so 1,space 1,such 5,the 1,thick 5,thing-or-deed 2,timber 1,timber+ 1,to 1,too 2,tool 1,vessel 1,work 2,works 1
inches:a 2,above 2,across 2,all 2,and 5,at 3,behind 2,between 2,by 2,comes 1,deep 1,down 1,fastener+ 1,from 5,high 4,if 1,in 2,is 1,long 3,of 20,off 14,on 5,or 2,other 7,over 2,past 2,sheet 1,sheet+ 1,so 1,such 5,that 1,the 1,thick 3,through 2,to 6,too 3,under 1,up 2,want 1,wide 5,work 2,working 1,works 1
inside:# 7,a 1,abstract 2,again 1,and 2,at 1,each 1,i 1,in 1,is 2,it 5,of 4,other 3,out 1,part 1,sheet 1,that 2,the 13,this 1,to 1,we've 1,working 2
into:# 1,a 3,him 1,it 1,me 1,my 1,other 1,person 1,that 3,the 16
is:# 224,a 69,about 1,abstract 37,all 4,also 2,an 5,and 1,appliance 1,assembly 1,at 8,back 4,behind 4,being 1,but 1,coating 1,deep 2,down 4,electric 1,for 7,from 4,going 17,gone 9,got 1,he 2,her 3,here 4,how 3,in 20,inch 2,inside 1,it 28,its 2,just 1,like 1,liquid 2,machine 1,material 4,me 1,measure 2,more 1,my 7,no 10,not 15,now 14,of 3,off 1,on 26,only 3,other 99,our 1,out 6,over 5,person 1,region 4,round 2,she 2,sheet 2,sheet+ 1,so 22,space 1,space+ 1,still 5,such 27,that 9,the 65,their 1,there 5,thick 1,thing-or-deed 5,this 4,through 1,timber+ 1,time 12,to 21,too 12,under 1,up 6,what 21,where 6,work 17,worked 115,working 23,you 1,your 1
isn't:# 8,a 1,abstract 1,going 2,it 2,long 1,me 1,other 4,region 1,the 1,to 1,tool 1,what 2,worked 2,working 1
it:# 230,a 74,about 1,above 2,abstract 74,again 13,air 1,air+ 4,all 21,also 1,an 6,and 37,another 2,any 1,appliance+ 1,are 3,as 4,assembly 5,assembly+ 17,at 20,away 1,back 14,be 6,because 4,been 14,behind 1,being 6,below 1,between 2,but 3,by 11,cable 5,cable+ 2,came 14,can 10,can't 7,come 7,comes 25,could 1,didn't 1,does 2,don't 3,down 38,each 2,fastener+ 3,for 22,from 7,get 1,gets 17,go 2,goes 15,going 30,gone 2,got 20,had 7,has 21,having 2,her 2,here 7,high 1,i 12,i'll 2,i'm 1,if 1,in 63,into 1,is 107,isn't 10,it 2,joist+ 1,like 16,machine+ 2,material 4,material+ 1,may 2,me 4,measure+ 11,more 3,must 9,my 5,needs 12,no 3,not 14,now 7,of 3,off 14,on 62,only 4,opening 1,or 1,other 251,out 22,outside 2,over 16,part 3,part+ 11,person 2,pipe+ 1,region 3,round 6,round+ 2,shall 2,sheet 5,sheet+ 5,should 13,so 35,some 1,space 1,space+ 4,still 8,such 25,than 1,that 6,the 39,their 1,then 1,there 4,thing-or-deed 8,this 2,through 4,till 8,timber 1,timber+ 3,time 35,to 41,too 6,tool 1,under 7,until 4,up 39,very 1,wants 20,was 87,were 3,what 3,when 4,where 2,will 10,with 39,without 3,work 23,worked 100,working 26,works 50,would 6,you 2,your 1
its:# 21,a 5,abstract 27,appliance 3,assembly 5,been 1,cable 1,coating 8,coating+ 1,container 5,fastener 3,fastener+ 3,feet 6,foot 1,going 1,got 1,hole 8,hole+ 2,in 1,joist 1,joist+ 2,just 1,like 2,liquid 4,long 1,machine 2,material 1,material+ 2,measure 7,my 1,not 1,on 1,opening 3,other 32,over 1,part 16,part+ 3,person 3,pipe 2,pipe+ 1,round 3,round+ 3,sheet 10,sheet+ 3,such 11,that 1,the 4,thing-or-deed 7,timber 2,timber+ 3,time 3,tool 1,until 1,very 1,vessel 1,week 1,work 27,worked 2,working 3,works 1
joist:# 11,a 2,abstract 2,and 10,are 2,assembly 2,back 1,been 3,behind 1,by 3,cable+ 1,can 1,can't 2,comes 3,container 2,down 1,fastener+ 2,for 4,from 1,gets 5,goes 2,going 1,gone 1,got 2,had 2,has 8,he 1,i 9,in 9,is 18,just 1,like 2,machine 1,material 1,material+ 1,measure 2,measure+ 1,needs 1,not 2,now 1,of 5,off 1,on 3,opening 1,or 1,other 18,over 3,part 3,person 2,round 11,round+ 4,she 1,sheet 4,sheet+ 4,should 2,so 2,space 1,such 1,that 4,the 2,there 2,thing-or-deed 3,timber 1,timber+ 2,time 2,to 4,too 3,tool 1,under 1,until 1,up 3,wants 1,was 4,we 1,where 1,with 4,without 1,work 2,worked 20,works 2
joist+:# 6,abstract 1,again 2,all 1,and 6,are 59,as 1,assembly 2,at 14,because 2,behind 2,being 1,between 1,by 1,came 3,can 1,can't 1,come 2,don't 1,down 2,every 3,for 1,from 1,go 5,got 1,had 1,has 1,have 5,i 8,i've 1,if 1,in 5,is 6,just 1,measure 1,must 2,need 1,now 3,off 1,on 5,onto 1,other 16,part 1,so 4,space+ 1,still 1,such 1,that 1,the 1,this 1,till 1,time 3,to 5,under 5,up 1,want 3,were 4,will 1,with 2,work 5,worked 9,would 1
just:a 5,about 1,abstract 5,as 2,assembly 1,because 1,fastener 1,for 1,from 1,go 1,goes 1,gone 1,got 2,have 2,like 1,machine+ 1,material 1,me 3,measure 1,other 7,the 3,to 6,too 1,work 4,worked 6,working 1,works 1
kilo:abstract 1,all 1,and 2,container 1,in 1,it 1,other 1,over 1,the 1,working 1
kilos:a 3,abstract 1,all 4,and 6,at 1,each 2,electric+ 1,gets 1,he 1,i 1,is 2,of 5,off 1,on 3,or 3,other 5,part+ 1,so 3,the 3,there 1,thing-or-deed 1,with 2,work 2,worked 1,works 1
least:# 18,a 1,from 1,on 1,other 2,sheet 1,such 1,the 1,with 1
less:# 22,a 1,abstract 1,air 1,an 1,and 2,but 1,each 1,hole+ 1,material 1,measure 1,of 1,other 2,part+ 1,so 3,such 1,than 15,the 16,to 1,worked 1
like:# 9,a 154,abstract 1,an 12,being 1,every 1,he 3,her 2,i 9,in 1,it 13,material 3,me 1,my 8,not 1,other 40,part+ 1,person 6,round 1,she 1,sheet+ 1,so 4,such 3,that 5,the 11,their 1,they 8,thing-or-deed 3,this 1,time 2,to 10,tool 1,tool+ 1,with 1,work 1,worked 7,working 2,you 1
liquid:# 5,abstract 9,all 2,and 13,appliance 6,as 1,assembly 1,assembly+ 2,at 5,came 1,can 2,coating 1,comes 1,container 31,container+ 1,does 1,don't 1,electric+ 1,every 1,for 2,from 2,goes 3,going 1,gone 4,has 4,i 3,in 12,inside 2,is 7,it 1,like 1,machine 4,measure 1,meter 1,off 1,on 8,other 14,out 1,person 15,pipe 1,pipe+ 1,region 1,round 9,round+ 1,so 2,still 1,such 1,that 1,the 1,there 1,through 1,timber 1,to 6,tool 2,up 1,vessel 1,wants 1,what 1,with 2,work 3,worked 5,working 4,works 2
liquid+:on 1
litre:# 4,and 1,container 2,liquid 1,other 1
litres:a 3,an 1,and 1,each 3,in 1,is 1,it 1,of 9,on 1,other 1,so 1,to 2,under 1,was 1,worked 1,works 1
long:# 5,a 1,abstract 6,and 13,as 4,back 1,by 9,day 1,does 1,each 1,every 1,for 3,from 1,gone 1,i 1,if 1,inside 3,measure 1,opening 1,opening+ 1,other 5,part 2,part+ 1,round 1,sheet 3,sheet+ 2,so 2,space 1,such 2,that 1,they 2,timber 4,timber+ 1,time 1,to 3,tool 4,will 1
machine:# 14,a 8,about 1,abstract 13,again 1,all 1,and 24,appliance 4,appliance+ 3,around 1,as 1,assembly 4,assembly+ 1,at 6,back 5,been 7,being 1,both 1,by 2,cable 6,cable+ 1,came 8,can 2,come 1,comes 1,container 1,did 1,does 1,down 3,electric 3,fastener 5,fastener+ 1,foot 1,for 7,from 2,gets 2,going 6,gone 1,got 8,has 12,he 1,her 4,here 1,hole 2,i 8,i've 1,if 2,in 10,is 24,it 11,joist 1,less 1,like 2,liquid 1,machine 5,material 1,material+ 1,may 1,measure 3,measure+ 1,more 2,must 3,my 2,needs 1,not 1,now 1,of 1,off 3,on 19,only 2,other 31,out 5,over 1,part 5,part+ 2,person 16,pipe 2,pipe+ 2,region 1,round 6,round+ 2,sheet 2,sheet+ 1,since 1,so 2,some 1,space 5,space+ 1,still 2,such 3,that 5,the 8,thing-or-deed 5,timber 2,timber+ 2,time 3,to 6,tool 2,up 5,vessel 4,wants 5,was 3,when 4,will 2,with 2,without 1,work 6,worked 26,working 4,works 10,you 1
machine+:# 1,a 2,and 6,are 6,assembly 1,at 2,back 2,behind 1,came 1,can't 1,down 1,for 1,from 2,get 1,got 1,if 1,in 1,is 2,it 1,must 2,of 1,off 1,on 1,other 2,out 1,sheet 1,the 1,them 1,under 2,work 1
material:# 14,a 1,about 2,abstract 14,all 2,along 1,also 1,and 29,another 2,appliance 5,appliance+ 1,are 2,assembly 6,assembly+ 3,at 8,back 1,because 1,been 3,behind 2,but 1,by 2,cable 1,came 12,coating 7,coating+ 1,come 1,comes 1,container 2,day 1,do 1,down 5,electric+ 1,fastener 1,fastener+ 10,feet 1,for 19,gets 5,goes 3,going 1,got 2,has 11,he 1,here 2,i 6,i'm 1,if 1,in 21,is 24,it 3,its 1,joist 7,joist+ 3,like 4,material 2,material+ 2,may 1,needs 1,not 2,now 2,of 12,off 1,on 20,only 2,opening+ 1,or 2,other 73,out 1,over 8,part 10,part+ 5,person 13,pipe 5,pipe+ 1,round 2,round+ 7,sheet 22,sheet+ 12,so 8,some 1,space 6,space+ 1,still 1,such 3,than 1,that 6,the 2,there 2,they 1,thing-or-deed 7,this 1,through 2,till 1,timber 7,timber+ 5,time 4,to 19,too 3,tool 8,under 5,until 1,up 4,us 4,vessel 4,wants 2,was 8,we 1,what 1,when 2,will 1,with 7,work 7,worked 29,working 2,works 7,would 1
material+:# 1,abstract 1,and 1,are 11,at 1,because 1,but 1,come 1,don't 1,for 1,go 1,have 3,in 1,is 4,it 1,material 3,must 1,of 2,off 1,on 4,other 2,part 1,part+ 1,so 1,the 1,to 3,work 1,worked 4
may:abstract 3,assembly 2,be 3,come 1,have 1,not 4,only 1,or 1,space 2,the 1,thing-or-deed 2,timber 1,work 5
me:# 27,a 21,about 8,abstract 8,again 5,an 1,and 22,another 1,assembly+ 1,at 7,back 5,be 1,being 4,both 1,but 1,by 5,coating 1,down 1,for 1,from 1,going 1,have 1,here 1,his 1,i'll 1,i'm 3,i've 1,in 11,is 5,it 1,like 1,machine 1,material 1,meter 1,my 2,off 1,on 6,other 19,over 2,part 6,part+ 1,person 4,pipe 1,she 1,sheet 3,so 9,some 1,space 3,such 5,that 5,the 17,their 2,then 1,thing-or-deed 6,this 2,till 1,timber 1,timber+ 1,time 4,to 22,until 1,up 2,was 1,what 1,when 3,why 1,with 3,work 15,worked 5,working 7,works 2
measure:# 31,a 6,abstract 8,across 1,again 1,all 1,along 2,and 10,appliance 1,as 1,assembly 1,at 9,away 1,back 2,because 1,behind 1,between 1,came 1,come 1,comes 2,container 2,down 2,every 1,for 2,going 1,has 1,high 1,if 1,in 18,inside 1,into 1,is 15,it 5,less 12,machine 6,material 2,material+ 1,me 1,measure+ 1,must 1,not 2,of 31,off 6,on 11,opening 3,other 12,out 5,over 3,she 1,sheet 1,sheet+ 3,should 1,so 3,space 2,space+ 1,than 2,that 5,the 6,them 1,there 1,they 1,thing-or-deed 2,those 1,timber 1,to 6,tool 5,up 5,was 2,where 1,will 1,with 1,work 6,worked 7,works 3,you 2
measure+:# 13,a 4,about 2,and 1,are 1,back 1,i 1,in 4,it 1,like 1,other 2,out 2,so 1,this 1,to 7,were 1,work 1,worked 1
meter:# 1,abstract 1,and 1,having 1,long 2,measure+ 1,other 1,the 1,works 1
meters:# 1,if 1,long 2,off 1,over 1,with 1,work 1
metre:# 30,abstract 1,and 3,by 1,from 1,high 1,long 1,measure 1,of 3,on 1,part+ 1,sheet 1,sheet+ 1,you 1
metres:# 32,above 1,across 2,and 5,assembly 1,by 11,deep 1,down 1,each 2,for 1,from 5,in 2,inside 1,long 7,measure 2,need 1,of 23,off 3,on 10,or 5,other 3,over 4,so 1,there 1,to 5,under 3,up 1,when 1,wide 1,would 1
might:could 1,go 1,not 2,timber 1,work 1
mil:# 1,a 6,across 1,all 3,and 6,assembly+ 1,at 2,between 4,by 1,cable 7,cable+ 2,container 1,deep 2,down 1,fastener+ 3,for 1,from 2,high 1,hole 1,hole+ 1,i 1,i'll 1,in 6,is 1,joist+ 1,long 1,material 11,measure 4,measure+ 1,of 14,off 5,on 2,or 1,other 10,out 1,over 2,part 4,part+ 2,pipe 8,round 2,sheet 36,sheet+ 5,since 1,so 1,such 1,that 1,the 1,thick 3,thing-or-deed 3,timber 2,timber+ 2,to 1,too 2,tool 3,where 1,wide 2,work 2,worked 9,works 1
mill:# 1,about 1,abstract 2,and 4,at 1,but 1,cable 1,each 1,for 2,gets 1,has 1,measure 2,other 3,person 1,sheet 1,so 2,that 1,the 1,to 1,tool 3,with 1,worked 2,working 1
mm:cable 1,fastener+ 1,only 1,pipe 1
more:# 1,abstract 7,and 1,are 1,assembly 1,assembly+ 1,by 1,can 1,container 1,container+ 1,days 1,fastener+ 1,for 1,from 1,hole+ 1,in 1,is 1,joist+ 1,like 2,material 6,measure 1,of 1,on 2,opening 1,opening+ 1,or 2,other 11,part 1,part+ 3,person 2,pipe+ 1,region 1,round 1,round+ 1,sheet 2,sheet+ 2,so 1,than 39,the 1,timber+ 2,time 2,to 5,will 1,with 1,work 1,working 2,works 3
most:# 1,abstract 1,i 1,of 6,or 1,other 3,the 2
must:abstract 7,assembly 1,be 28,cable 1,come 4,do 1,get 3,have 2,he 1,in 2,it 2,machine 1,not 3,of 1,off 1,on 1,out 1,so 2,still 4,thing-or-deed 3,tool 1,under 1,work 10,worked 2
my:# 10,abstract 151,appliance 4,assembly 8,assembly+ 1,back 17,cable 1,coating 2,electric+ 1,feet 4,foot 1,hole+ 1,in 1,joist 4,joist+ 1,machine 8,material 5,measure 4,measure+ 1,opening 3,other 61,part 36,part+ 16,person 204,pipe 3,pipe+ 4,region 1,round 2,round+ 1,sheet 8,sheet+ 1,space 6,such 33,thing-or-deed 5,timber 9,timber+ 28,time 12,tool 18,tool+ 2,vessel 7,week 1,work 54,worked 1,working 3,works 2
need:# 5,a 18,about 2,an 1,another 3,be 1,electric+ 2,it 1,liquid 1,of 1,other 2,part+ 1,person 1,sheet 1,such 1,that 1,the 5,to 29,working 19
needs:# 11,a 20,about 1,abstract 1,an 1,another 1,cable 1,hole+ 1,is 1,its 4,my 1,other 2,round+ 1,sheet+ 1,the 5,to 11,working 13
no:# 5,a 2,abstract 74,air 4,appliance 3,assembly 4,been 1,by 1,cable 1,coating 12,container 4,container+ 1,electric 1,fastener 1,fastener+ 3,go 1,going 1,hole 1,i 3,i've 1,joist 2,joist+ 3,less 13,liquid 8,machine 1,material 5,measure 3,more 30,need 1,not 1,off 1,opening 5,opening+ 1,other 38,part 7,part+ 2,person 4,pipe 3,round+ 1,sheet 9,sheet+ 2,so 2,space 4,such 14,that 1,thing-or-deed 3,till 1,timber 5,timber+ 1,time 3,tool 3,until 2,vessel 5,we 1,were 1,work 19,worked 1,working 19,works 5,you 1
not:# 38,a 68,above 1,abstract 23,all 3,also 1,an 6,and 1,as 1,assembly 2,at 1,be 7,been 4,being 1,below 1,coating 5,come 5,container 1,container+ 1,do 2,electric 1,fastener+ 1,for 1,go 3,going 11,have 4,having 5,here 1,hole 1,if 1,in 4,it 1,joist+ 1,less 3,like 2,liquid 1,machine 3,machine+ 1,material 15,me 6,measure 5,measure+ 1,more 1,now 1,off 1,on 7,only 1,other 65,out 2,over 1,part 2,part+ 2,round 2,sheet 11,sheet+ 2,so 13,space 1,such 9,that 5,the 35,thing-or-deed 6,through 1,till 5,timber 1,timber+ 1,time 3,to 12,under 4,until 1,up 1,want 1,what 16,where 1,with 4,without 1,work 28,worked 25,working 58
now:# 3,a 6,about 1,abstract 5,and 5,assembly 2,at 1,don't 1,for 1,from 1,goes 1,have 2,here 1,i 14,i'm 2,i've 1,in 2,it 5,its 1,less 1,material 1,my 3,needs 1,not 1,on 3,other 9,part 1,person 1,since 1,so 5,such 4,that 4,the 44,then 9,there 4,they 2,they're 1,this 2,too 3,under 1,with 3,without 1,work 5,worked 5,working 2,you 1
of:# 83,a 69,abstract 63,air 11,all 3,an 11,any 1,appliance 2,are 1,assembly 8,been 1,cable 9,coating 20,container 2,container+ 1,don't 1,each 4,electric 2,electric+ 1,every 2,fastener+ 3,foot 1,ground 1,her 6,here 1,him 2,his 2,hole+ 1,how 1,i'm 1,i've 1,inch 1,is 2,it 151,its 5,joist 5,joist+ 3,liquid 10,machine 5,material 76,material+ 3,may 2,me 10,measure 19,mil 1,must 1,my 22,need 1,opening 3,other 119,our 1,over 1,part 23,part+ 1,person 11,pipe 7,pipe+ 2,region 1,round 10,round+ 4,sheet 57,sheet+ 2,so 1,some 3,space 3,such 8,that 40,the 304,their 2,them 125,there 2,these 6,thing-or-deed 11,this 5,those 30,timber 10,timber+ 2,time 28,tool 3,tool+ 1,up 1,us 20,vessel 4,what 5,where 1,which 2,who 1,work 20,worked 8,working 18,works 2,you 26,your 1
off:# 5,a 18,abstract 8,again 3,an 4,and 14,any 3,appliance 1,at 3,back 1,below 1,by 2,down 2,each 3,every 1,for 4,from 2,got 1,her 7,his 1,hole 1,i 3,in 6,is 1,it 15,its 1,just 1,like 5,material 1,me 5,my 5,now 1,of 1,on 6,other 14,over 1,part 2,person 1,she 1,so 3,some 1,such 2,that 10,the 178,there 1,they 1,timber+ 1,time 4,to 8,tool 2,under 1,until 2,what 1,where 1,with 4,without 1,work 3
on:# 56,a 111,about 2,abstract 36,again 2,air 1,all 1,an 5,and 15,any 1,appliance 3,as 3,assembly 3,assembly+ 2,at 3,below 1,both 3,but 1,by 2,cable 1,coating 2,container 1,day 1,days 1,each 6,electric 1,every 5,fastener+ 1,for 2,gone 1,ground 1,ground+ 2,has 1,her 13,here 5,him 1,his 13,i 2,if 1,in 4,is 1,it 131,its 40,joist+ 4,like 3,liquid 1,material 9,material+ 3,me 15,measure 3,my 45,not 1,now 1,other 39,our 1,outside 1,part 54,part+ 1,person 3,pipe 1,pipe+ 2,round+ 3,she 4,sheet 15,since 1,so 4,space 3,such 8,that 42,the 586,their 7,them 10,there 4,they 1,thing-or-deed 5,this 10,those 9,till 7,timber 1,timber+ 5,time 177,to 10,too 2,tool 10,tool+ 2,under 1,what 3,when 3,where 1,with 5,work 26,worked 1,working 4,works 1,you 1,your 1
one:# 4,a 3,abstract 3,back 1,been 2,here 2,in 1,on 2,other 6,such 1,the 4,time 1,to 2,worked 6,working 2
only:# 14,a 3,about 1,abstract 9,assembly 2,assembly+ 1,at 1,been 1,by 1,for 1,go 2,got 2,hole 1,i 3,i've 1,in 1,it 1,joist 1,just 2,liquid 1,material 2,me 3,my 1,not 3,now 1,on 1,other 17,part 1,person 1,round 1,so 4,such 1,that 3,the 11,then 2,there 2,to 1,when 2,work 1,worked 7,working 3,works 1
onto:a 1,my 1,that 2,the 2
opening:# 29,a 2,abstract 4,again 1,and 9,are 1,as 1,assembly 2,assembly+ 2,at 1,back 1,because 1,been 1,behind 1,between 1,by 2,cable 1,came 4,comes 1,fastener 1,fastener+ 1,for 2,going 1,gone 1,got 1,had 1,has 8,have 1,he 1,her 1,hole 4,hole+ 1,i 11,i've 1,in 8,is 27,it 4,joist 9,joist+ 2,less 1,like 2,machine 1,material 2,may 1,need 1,needs 1,no 1,now 1,of 4,on 12,opening 7,opening+ 2,or 1,other 24,out 5,over 3,part 4,past 1,person 4,region 2,round 2,round+ 1,she 1,sheet 4,sheet+ 7,so 4,such 2,that 2,the 2,there 1,thing-or-deed 2,this 1,through 3,timber 6,timber+ 1,time 1,to 8,too 1,tool 3,wants 3,was 1,we 2,when 1,where 1,which 1,will 1,with 5,work 5,worked 18,working 2,works 8,you 3
opening+:# 1,abstract 1,and 1,are 24,being 1,but 1,can't 1,come 1,comes 1,did 1,get 1,go 1,has 1,have 3,hole+ 1,i 2,i'm 2,in 3,inside 1,is 1,need 1,not 1,now 1,off 1,on 3,other 5,region 1,the 2,timber 1,to 2,until 1,want 1,we 1,with 1,work 5,worked 3
or:# 5,a 8,abstract 4,any 1,around 1,back 1,every 1,he 1,high 2,i 6,i'm 1,is 1,it 6,less 3,material 1,may 1,more 5,my 1,no 1,not 2,on 1,other 19,she 2,sheet 1,so 27,that 1,the 10,they 1,thing-or-deed 2,time 1,under 2,up 2,was 1,we 2,we're 1,what 2,work 22,worked 4,working 2,works 1,would 1
other:# 332,a 159,about 37,abstract 230,across 10,again 9,air 11,all 30,along 4,also 4,an 7,and 185,another 1,any 11,appliance 27,appliance+ 2,are 45,around 3,as 46,assembly 53,assembly+ 7,at 78,away 3,back 14,be 172,because 7,been 27,behind 9,being 3,between 9,but 11,by 36,cable 15,cable+ 4,came 14,can 9,can't 2,coating 31,come 18,comes 7,container 23,container+ 2,could 4,day 9,deep 1,did 9,do 33,does 6,don't 9,down 37,each 12,electric 16,electric+ 3,every 6,fastener 4,fastener+ 8,feet 1,foot 1,for 91,from 22,get 38,gets 6,go 36,goes 12,going 18,gone 9,got 49,ground 2,had 31,has 28,have 109,having 1,he 17,her 10,here 7,high 3,him 7,his 3,hole 7,hole+ 2,hour 2,how 8,i 101,i'll 3,i'm 11,i've 12,if 17,in 160,inch 2,inside 2,into 3,is 72,isn't 1,it 151,its 10,joist 5,joist+ 8,just 7,less 6,like 57,liquid 16,long 6,machine 24,machine+ 2,material 32,material+ 7,may 1,me 45,measure 35,measure+ 2,meters 1,metre 5,metres 35,mill 1,more 8,must 2,my 36,need 12,needs 3,no 17,not 28,now 9,of 119,off 37,on 210,one 4,only 6,onto 2,opening 8,opening+ 2,or 13,other 548,out 41,outside 2,over 41,part 92,part+ 18,past 4,person 88,pipe 10,pipe+ 2,region 14,round 48,round+ 6,shall 1,she 15,sheet 60,sheet+ 20,should 1,since 9,so 104,some 4,space 18,still 10,such 64,than 109,that 67,the 334,their 3,them 13,then 6,there 28,these 1,they 13,they're 4,thick 7,thing-or-deed 73,this 12,through 16,till 10,timber 38,timber+ 8,time 103,to 158,too 16,tool 19,tool+ 1,under 24,until 5,up 74,us 5,vessel 31,vessel+ 2,want 20,wants 11,was 16,we 9,week 1,were 4,what 31,when 11,where 9,which 2,who 3,why 1,wide 8,will 13,with 71,work 308,worked 247,working 49,works 23,would 5,you 24,your 1
our:abstract 2,assembly 1,liquid 1,machine 1,other 3,person 3,sheet 1,space 1,space+ 1,still 1,work 2
out:# 15,a 8,about 2,abstract 4,again 5,along 1,and 35,appliance 1,as 2,at 23,by 8,cable 2,came 2,every 3,for 7,from 3,goes 1,here 3,how 2,i 1,if 1,in 7,into 1,is 1,it 6,like 6,me 1,my 1,no 1,of 116,off 1,on 18,other 14,over 4,part 1,past 5,region 2,round 1,she 2,so 6,such 6,that 1,the 34,there 5,thing-or-deed 1,this 1,through 2,till 2,time 9,to 15,too 3,under 1,what 3,when 4,where 2,who 1,with 12
outside:and 1,cable 1,had 1,i'm 1,in 1,is 1,less 1,of 2,other 1,part 1,sheet 1,the 1,to 4,what 1
over:# 36,a 8,abstract 3,again 2,all 1,an 2,and 9,at 2,behind 1,by 5,did 1,every 1,fastener+ 1,from 2,here 1,in 2,it 20,its 1,material 4,my 9,on 4,other 6,person 2,sheet 2,so 1,that 9,the 129,their 1,them 2,there 2,those 1,time 7,to 5,too 1,us 1,what 6,with 2,without 1,worked 3,working 1
part:# 32,a 10,abstract 18,again 2,all 2,an 1,and 50,are 6,as 5,assembly 10,assembly+ 4,at 11,back 3,because 1,been 6,being 1,both 1,by 6,cable 3,cable+ 1,came 5,can't 3,coating 3,come 2,comes 1,container 3,container+ 2,day 1,down 5,each 3,electric+ 2,fastener 2,fastener+ 4,for 26,gets 1,go 1,goes 6,going 3,gone 3,got 6,has 15,have 1,high 1,i 5,i'm 1,i've 2,if 1,in 23,inside 1,into 1,is 26,it 23,its 1,joist 5,joist+ 4,just 2,less 3,like 9,liquid 1,machine 17,material 10,material+ 2,may 1,measure 10,measure+ 1,must 2,needs 2,no 4,not 4,now 2,of 117,off 3,on 29,one 2,only 3,opening 11,opening+ 1,or 2,other 55,out 5,over 5,part 12,part+ 3,past 1,person 2,pipe 8,region 4,round 17,round+ 4,sheet 16,sheet+ 10,so 13,some 1,space 7,still 3,such 4,that 8,the 18,their 1,them 1,then 1,there 2,they're 1,thing-or-deed 6,this 3,through 1,timber 16,timber+ 9,time 4,to 55,too 3,tool 1,under 1,until 1,up 10,vessel 2,vessel+ 1,wants 9,was 7,we 2,we've 1,what 2,when 1,where 3,with 6,without 1,work 10,worked 41,working 2,works 5,would 2,you 2
part+:# 12,a 2,about 1,abstract 4,across 1,again 2,all 2,and 23,another 1,appliance 1,are 49,as 3,at 8,back 2,because 1,below 2,by 4,came 3,can't 1,come 2,deep 2,down 1,electric+ 1,fastener+ 1,for 8,from 1,get 1,go 1,have 8,high 1,i 6,in 15,is 1,just 1,like 4,material 2,measure 1,no 2,not 1,now 2,of 15,off 3,on 11,other 17,out 3,over 2,region 1,sheet 2,should 2,so 4,space+ 1,still 5,such 3,than 1,that 1,the 3,they 1,thing-or-deed 1,time 2,to 6,tool 1,under 1,until 1,up 3,want 1,was 1,we 1,we're 1,were 1,what 1,wide 1,will 1,with 5,work 7,worked 11,working 2
past:# 11,at 1,each 1,her 1,it 3,me 1,my 1,other 1,that 2,the 13,them 1,there 1,time 1,to 1,where 1
percent:air 2,and 2,measure 1,of 2,or 1,other 2,work 1,worked 1
person:# 11,a 7,about 9,abstract 57,all 1,also 4,an 1,and 35,appliance 2,are 4,as 4,assembly 8,assembly+ 4,at 20,back 4,been 12,behind 1,but 3,by 6,cable+ 3,came 22,can 23,can't 1,coating 1,coating+ 1,come 5,comes 6,container 2,could 3,did 2,do 1,does 2,don't 1,down 3,electric 2,fastener+ 2,for 8,from 10,get 1,gets 2,goes 1,going 7,got 29,ground 1,had 21,has 44,have 6,he 4,here 3,i 7,if 1,in 49,inside 1,is 20,isn't 1,it 2,its 3,joist+ 1,like 2,machine 6,machine+ 2,me 1,measure 1,measure+ 1,might 1,must 4,my 4,need 2,needs 8,no 1,not 1,now 2,of 6,off 2,on 27,only 3,opening 5,or 3,other 316,out 4,over 2,part 12,part+ 2,person 20,region 1,round 4,round+ 3,shall 1,she 2,sheet 6,should 3,so 14,some 1,space 4,still 6,such 14,that 9,the 7,them 1,there 3,they 2,thing-or-deed 16,this 1,through 1,timber 3,timber+ 3,time 7,to 18,too 1,tool 5,tool+ 1,under 1,up 5,vessel 7,want 5,wants 25,was 15,were 2,who 43,will 8,with 27,work 33,worked 125,working 28,works 21,would 8,you 1
pipe:# 6,a 5,abstract 7,air 1,all 1,and 9,appliance+ 1,around 1,assembly 2,assembly+ 3,at 2,back 1,been 1,between 1,came 5,can't 3,coating+ 1,come 1,comes 2,container 1,container+ 1,didn't 1,down 2,for 8,from 1,gets 4,goes 4,going 3,got 1,had 1,has 9,hole 3,hole+ 1,i 3,in 9,is 14,it 3,joist 1,joist+ 1,like 1,liquid 1,machine+ 1,measure 1,must 1,needs 2,no 1,now 1,of 1,on 6,other 8,out 4,part 1,part+ 2,person 6,pipe 4,round 5,sheet 2,so 4,still 2,that 1,the 3,there 1,thing-or-deed 2,this 1,through 4,till 1,timber 1,time 2,to 7,tool 2,under 2,up 6,wants 1,was 1,where 1,will 4,with 2,work 3,worked 11,working 1,works 2,you 1
pipe+:abstract 2,and 1,are 5,assembly 1,at 1,back 1,for 1,got 1,have 4,in 3,into 1,like 1,of 1,on 1,other 2,out 1,part 1,shall 1,so 1,such 1,up 2,were 3,work 1,worked 2,would 1
region:# 6,a 1,abstract 4,across 1,air 1,all 1,and 7,appliance 1,are 1,assembly 9,at 7,back 1,because 1,behind 2,by 2,cable 1,container 1,down 3,foot 1,for 3,her 1,i 1,if 1,in 8,is 4,isn't 1,it 3,joist+ 3,measure 1,not 1,now 2,of 7,off 2,on 3,one 2,onto 1,opening 8,other 19,over 5,part 56,part+ 1,pipe 1,region 3,round 6,sheet 22,so 4,still 1,the 6,then 2,there 4,thing-or-deed 3,through 8,timber 1,time 2,to 2,up 7,vessel 1,want 1,was 1,when 1,where 4,with 1,work 4,worked 1,works 1
round:# 21,a 3,about 3,abstract 10,again 3,air+ 1,all 1,along 1,an 1,and 23,any 2,appliance 1,are 3,as 3,assembly 4,assembly+ 1,at 6,back 5,been 3,behind 1,being 1,by 5,cable+ 1,came 6,can 1,can't 2,coating 1,come 5,comes 5,container 2,container+ 1,down 6,each 1,every 2,fastener 2,fastener+ 5,for 13,from 3,gets 2,going 5,gone 4,got 9,had 1,has 11,him 1,hole 3,hole+ 2,i 8,i'm 1,i've 1,in 22,is 23,it 14,less 1,like 2,machine 3,material 7,material+ 1,may 1,me 1,measure 2,measure+ 1,more 1,must 2,my 2,no 1,not 2,of 37,off 7,on 22,opening 12,opening+ 2,other 25,out 5,over 1,part 6,part+ 3,person 1,region 2,round 7,round+ 4,she 1,sheet 1,should 1,so 5,still 1,such 9,that 6,the 35,there 2,thing-or-deed 2,through 2,timber 1,time 8,to 15,tool 1,under 2,until 1,up 5,vessel 4,wants 1,was 3,we 2,we're 1,were 1,where 1,will 2,with 4,work 11,worked 29,working 4,works 3,would 3,you 1
round+:# 4,abstract 3,again 1,and 6,are 36,assembly 1,back 1,came 4,come 4,down 3,every 1,for 2,get 2,go 2,has 1,have 6,i 4,in 2,it 2,like 1,of 2,on 4,other 6,out 2,over 1,part 2,person 1,so 1,such 2,time 1,to 3,under 4,up 5,when 1,which 1,will 2,work 3,worked 10,working 1
shall:a 1,also 1,be 7,have 5,i 1,joist 1,need 1,not 1,other 1,thing-or-deed 1,work 11,worked 4
she:# 36,a 11,abstract 11,an 1,appliance+ 2,assembly+ 6,at 1,been 4,both 1,cable+ 1,came 1,can 6,can't 1,come 1,comes 1,did 3,does 3,don't 2,down 1,electric 1,gets 1,goes 8,going 3,got 9,had 1,has 2,have 1,having 1,here 1,in 3,is 11,isn't 1,just 2,like 1,machine+ 3,material 1,measure+ 3,must 1,needs 1,not 4,off 1,other 57,out 2,part+ 3,pipe+ 1,region 1,sheet 1,sheet+ 1,should 1,so 6,still 1,such 8,the 1,thing-or-deed 1,timber 1,to 5,too 1,tool 3,up 2,vessel+ 1,wants 3,was 9,were 1,work 2,worked 32,working 5,works 15,would 1
sheet:# 62,a 3,about 1,above 1,abstract 25,across 3,all 5,an 1,and 49,appliance 5,are 3,as 1,assembly 2,at 12,away 1,back 5,been 4,behind 1,between 1,both 2,by 6,came 16,can 2,can't 7,coating 2,come 4,comes 5,container 1,day 2,did 1,does 1,down 20,each 3,electric 2,electric+ 2,fastener+ 3,for 24,from 3,gets 4,go 1,goes 16,going 17,gone 2,got 7,had 7,has 16,her 1,here 4,hole 1,how 1,i 13,i'm 1,i've 1,in 25,inch 1,inside 2,is 53,isn't 1,it 13,joist 5,joist+ 14,less 4,like 4,liquid 3,machine 3,material 10,measure 7,must 1,need 1,needs 3,no 1,not 5,now 2,of 37,off 12,on 48,opening 2,or 1,other 91,out 4,over 9,part 7,part+ 6,person 24,region 4,round 8,sheet 24,sheet+ 20,should 2,since 1,so 12,space 2,space+ 1,still 3,such 9,that 10,the 11,there 3,thing-or-deed 1,this 1,those 1,through 1,till 1,timber 7,timber+ 5,time 10,to 62,too 4,tool 4,under 6,up 13,wants 5,was 13,we 2,we're 1,what 1,when 1,where 1,which 2,will 6,with 17,without 2,work 15,worked 75,working 9,works 8,you 2
sheet+:# 16,a 2,about 1,above 1,abstract 3,again 1,all 3,an 1,and 10,another 1,are 81,assembly 4,at 2,being 1,by 2,came 4,can 2,can't 2,come 4,don't 1,down 4,for 7,from 1,get 4,go 5,gone 1,has 3,have 15,here 1,his 2,i 11,i've 1,in 6,inside 1,into 1,is 5,it 4,like 1,may 1,me 8,measure 2,more 1,must 1,my 1,need 3,no 1,not 1,now 1,of 12,off 5,on 14,only 1,other 19,out 2,over 3,part 2,region 1,should 3,so 3,space 1,such 2,the 10,then 1,thing-or-deed 4,through 1,timber 3,time 1,to 5,under 1,until 1,up 4,want 1,we 1,were 2,will 3,with 1,work 7,worked 5,working 1,you 3
should:# 1,abstract 1,be 39,by 1,go 2,have 11,i 8,like 1,need 2,not 1,part 1,person 2,so 2,still 1,the 2,thing-or-deed 2,we 1,work 5,worked 2
since:# 10,a 7,abstract 2,an 1,cable 1,every 1,fastener+ 1,has 1,he 2,his 1,i 9,i'm 4,i've 2,it 5,liquid 1,material 8,material+ 1,my 5,not 1,other 14,person 2,she 2,sheet 1,such 1,that 5,the 27,there 1,they're 1,thing-or-deed 1,time 12,under 1,we're 1,without 1,worked 1,working 3,you 1
so:# 91,a 31,abstract 43,again 4,air 1,all 7,am 2,an 3,and 7,any 1,appliance 2,are 2,as 20,assembly 2,at 3,back 1,be 3,because 4,been 3,behind 1,below 2,both 2,by 2,cable 3,cable+ 1,came 1,coating 1,comes 1,did 6,don't 7,down 1,each 3,electric 1,electric+ 1,every 4,from 1,get 1,go 3,going 4,gone 1,got 3,had 3,have 5,he 11,how 1,i 105,i'll 9,i'm 32,i've 21,if 3,in 5,inside 1,is 2,isn't 1,it 83,its 11,less 2,like 2,long 5,machine 2,material 3,me 1,measure 4,more 4,my 13,need 2,needs 1,no 14,not 6,now 8,of 36,on 10,opening+ 1,or 2,other 129,out 6,over 3,part 3,past 1,person 16,pipe 3,region 2,round 6,round+ 1,she 19,sheet 1,sheet+ 1,so 16,space 1,space+ 1,such 25,than 3,that 126,the 250,them 2,then 5,there 53,they 8,they're 6,thick 1,thing-or-deed 14,this 15,those 6,timber 1,timber+ 3,time 12,to 8,tool 3,under 1,up 3,want 1,wants 1,was 5,we 18,we're 6,we've 1,were 2,what 10,when 2,where 3,who 1,will 1,with 8,work 36,worked 57,working 8,works 3,you 13
some:# 3,abstract 3,air 1,and 1,appliance 1,back 1,coating 2,container 2,days 1,fastener 1,fastener+ 2,in 1,liquid 1,material 2,more 1,of 7,other 6,out 1,part+ 1,person 14,pipe 1,sheet 1,such 3,thing-or-deed 1,time 4,up 1,work 3,working 1,works 1
space:# 15,a 5,abstract 4,all 2,an 2,and 14,appliance 5,are 2,as 2,assembly 16,assembly+ 3,been 3,behind 2,below 1,by 3,can 1,come 1,comes 1,container+ 1,did 1,don't 1,down 1,electric+ 3,fastener+ 1,for 12,from 2,gets 1,goes 4,got 3,has 4,hole 1,i 6,i'm 3,if 1,in 8,inside 1,is 27,it 3,joist 4,joist+ 2,less 1,like 2,me 9,measure 3,must 2,my 1,needs 3,not 3,now 2,of 6,off 1,on 10,only 1,opening 11,opening+ 4,or 1,other 29,out 2,over 2,part 9,part+ 6,round 1,sheet 17,sheet+ 3,should 1,so 3,space+ 1,such 2,that 6,the 10,them 1,this 1,through 2,timber 2,timber+ 6,time 8,to 7,tool 3,under 1,up 2,vessel 2,want 1,was 3,were 1,when 1,which 1,will 1,with 8,work 5,worked 8,working 2,works 6,you 1
space+:# 6,about 1,again 1,and 1,are 4,going 1,his 1,if 1,in 1,is 2,its 1,off 1,on 1,out 1,still 1,the 2,there 1,tool 1,were 1
still:# 7,a 6,abstract 7,be 1,cable+ 1,can't 1,come 1,day 1,for 1,get 1,got 6,has 3,have 3,here 1,i 1,in 5,like 1,measure+ 1,must 1,need 2,needs 3,not 1,on 4,other 13,person 1,region 1,so 1,such 2,the 1,there 1,thing-or-deed 1,timber 1,timber+ 1,time 1,to 11,tool 1,under 1,want 2,work 12,working 3,works 4
such:# 83,a 1,about 12,abstract 94,across 2,again 4,air 5,all 1,along 3,and 20,appliance 19,appliance+ 2,as 50,assembly 26,assembly+ 7,at 7,back 2,being 1,both 1,but 5,by 3,cable 9,cable+ 2,coating 8,container 19,container+ 2,day 8,days 2,do 1,don't 1,down 1,each 1,electric 11,electric+ 4,fastener 3,fastener+ 5,feet 5,foot 4,for 14,from 2,go 1,goes 2,ground 3,had 1,has 1,having 1,here 2,hole 4,hole+ 4,hour 1,i 4,i'm 1,if 1,in 11,inch 1,inches 1,inside 2,is 6,it 5,joist 12,joist+ 7,less 1,like 6,liquid 21,machine 29,material 34,material+ 4,me 1,measure 10,measure+ 2,mill 1,more 1,now 4,of 42,off 2,on 12,one 16,opening 23,opening+ 2,other 140,out 3,over 1,part 48,part+ 12,person 62,pipe 8,pipe+ 2,round 34,round+ 6,she 1,sheet 64,sheet+ 9,so 8,space 9,such 14,than 30,that 3,the 8,there 3,they 3,thing-or-deed 13,this 2,through 4,till 1,timber 20,timber+ 18,time 74,to 19,tool 20,tool+ 2,up 9,vessel 20,was 2,watts 1,week 24,weeks 2,when 1,why 1,with 9,work 42,worked 12,working 8,works 8,you 2
than:# 63,a 12,abstract 3,along 1,appliance 1,assembly+ 1,both 1,by 1,cable 1,fastener+ 1,get 1,have 2,he 1,her 1,his 1,i 14,in 1,less 1,liquid 1,material 3,me 14,measure 1,my 6,no 1,off 1,on 1,other 11,person 3,pipe 4,round+ 1,she 2,such 1,that 1,the 24,thing-or-deed 3,this 2,time 1,to 1,under 1,when 1,with 1,work 14,worked 3,working 11
that:# 103,a 56,about 2,abstract 58,again 1,air 2,all 12,an 2,and 13,another 1,any 1,appliance 13,are 5,around 1,as 2,assembly 32,assembly+ 6,at 3,away 1,back 6,been 3,behind 1,being 5,by 6,cable 5,cable+ 1,came 2,can 1,can't 3,coating 7,comes 4,container 5,could 1,day 1,does 2,don't 5,down 4,each 1,electric 2,every 3,fastener 3,fastener+ 1,for 11,from 2,get 1,gets 5,go 2,goes 8,going 8,gone 1,got 8,had 3,has 4,he 4,her 3,his 2,hole 10,how 6,i 27,i'll 2,i'm 4,i've 1,if 1,in 14,inch 1,inside 1,is 34,isn't 3,it 6,joist 15,just 2,less 7,like 2,liquid 1,long 3,machine 5,machine+ 1,material 3,may 2,me 9,measure 9,measure+ 1,mill 1,more 2,must 2,my 9,needs 8,no 5,not 9,off 10,on 18,one 4,opening 18,other 94,our 1,out 12,over 5,part 25,part+ 3,person 13,pipe 6,region 2,round 14,she 2,sheet 31,sheet+ 11,so 11,some 1,space 10,still 1,such 26,that 2,the 90,they 2,they're 1,thick 1,thing-or-deed 6,this 2,till 2,timber 10,time 25,to 20,too 5,tool 4,until 1,up 9,us 1,vessel 4,vessel+ 2,want 1,wants 16,was 22,we 5,week 1,were 2,what 14,when 6,where 5,why 1,wide 2,will 2,with 9,without 1,work 35,worked 40,working 3,works 31,would 3,you 3,your 2
the:# 216,a 1,abstract 534,air 55,air+ 1,appliance 302,appliance+ 12,assembly 416,assembly+ 53,back 106,both 2,by 1,cable 52,cable+ 3,can 3,coating 67,container 156,container+ 17,day 13,deep 2,electric 113,electric+ 29,fastener 35,fastener+ 59,feet 9,foot 10,ground 61,ground+ 14,high 3,hole 50,hole+ 10,hour 3,in 1,inch 7,inside 9,joist 143,joist+ 108,least 8,less 1,like 1,liquid 91,liquid+ 1,long 14,machine 274,machine+ 16,material 212,material+ 18,measure 89,measure+ 3,meter 4,mill 14,most 9,must 1,no 1,off 3,only 7,opening 157,opening+ 31,other 1042,outside 10,part 456,part+ 85,person 327,pipe 113,pipe+ 18,region 103,round 181,round+ 54,sheet 549,sheet+ 121,so 7,space 248,space+ 2,such 421,thick 4,thing-or-deed 139,timber 180,timber+ 75,time 102,tool 189,tool+ 11,very 9,vessel 207,vessel+ 4,week 3,wide 2,work 221,worked 36,working 95,works 38
their:# 3,abstract 5,appliance 1,assembly 2,coating 1,container+ 1,fastener+ 1,feet 2,hole+ 3,inch 1,is 1,liquid 1,machine 1,material 3,material+ 1,measure 1,other 8,part 1,part+ 5,person 2,sheet 2,such 2,thing-or-deed 2,timber 1,time 2,tool 2,week 1,work 8,works 4
them:# 14,a 2,abstract 2,across 1,again 1,all 1,along 1,and 6,are 9,as 1,assembly 1,at 3,been 1,both 1,by 3,comes 1,container 1,down 5,every 1,fastener+ 2,for 4,from 3,gets 1,has 1,have 5,hole+ 1,i 2,in 8,is 2,it 1,joist+ 4,like 1,material 2,material+ 2,measure 1,must 1,now 1,off 1,on 6,opening 1,opening+ 4,other 18,out 5,part 2,part+ 1,round 1,round+ 2,shall 1,sheet+ 2,so 7,such 3,that 4,there 1,they 1,thing-or-deed 1,till 1,timber+ 6,time 7,to 10,tool 1,until 1,up 6,very 1,where 2,with 5,work 1,worked 9,works 2,would 1,you 1
then:# 7,a 2,abstract 2,air 1,all 1,appliance 1,be 1,been 1,came 1,comes 1,did 1,didn't 1,down 1,had 2,he 2,here 1,i 62,i'm 2,it 9,machine 2,material 2,material+ 1,my 3,not 1,other 15,person 1,sheet 2,sheet+ 1,so 2,some 1,that 1,the 34,there 5,they 2,time 1,up 1,we 3,what 1,when 1,work 2,worked 3,working 1,works 1
there:# 55,a 145,about 1,abstract 5,air 4,all 2,an 5,and 10,another 3,any 1,appliance 1,are 6,as 1,assembly+ 1,at 3,been 1,being 2,but 2,by 4,cable 3,came 1,comes 2,electric 2,fastener+ 1,for 1,go 2,goes 4,going 2,has 3,he 1,i 4,i've 1,in 4,is 36,isn't 5,it 5,joist+ 4,just 1,less 1,like 4,liquid 3,machine+ 1,material 4,may 1,measure 1,measure+ 1,more 4,my 1,no 14,not 5,now 2,on 4,only 9,opening+ 1,other 27,part 1,past 1,person 1,round+ 1,shall 1,she 2,sheet 4,since 1,so 4,space 4,still 2,such 3,than 1,that 2,the 9,them 1,thing-or-deed 4,till 4,timber 1,time 6,to 10,want 1,was 13,were 4,will 4,with 14,work 4,worked 2,working 2,you 4
these:# 1,are 3,at 1,comes 1,for 1,in 1,till 1,timber+ 1,time 1,with 1
they:# 1,abstract 7,all 3,are 23,assembly 4,cable 1,came 5,can 5,coating 1,come 10,did 4,didn't 2,do 1,don't 3,get 4,go 8,goes 1,got 2,had 2,have 8,joist+ 1,just 1,measure 4,must 1,other 32,part 3,should 8,so 3,space 1,that 1,thing-or-deed 17,timber 1,vessel 2,want 19,were 10,will 3,work 33,worked 24,would 1
they're:# 29,a 4,abstract 4,all 4,at 3,coating 1,every 1,going 5,having 1,here 2,in 1,material 4,not 5,on 6,other 16,region 1,so 2,such 2,the 7,thing-or-deed 2,to 4,too 1,under 2,up 1,work 1,worked 13,working 10
thick:# 1,abstract 1,all 1,and 3,as 2,coating 1,if 1,material 1,other 1,over 1,part 4,so 2,space 1,the 1,when 1,where 1,work 1,you 1
thing-or-deed:# 26,a 14,about 18,above 1,abstract 9,across 1,again 1,air 2,along 1,am 1,and 18,appliance 5,are 1,as 3,assembly 7,assembly+ 2,at 11,back 1,be 1,behind 2,but 1,by 6,came 1,can 2,coating 1,come 1,comes 1,container 2,container+ 4,days 1,did 2,don't 1,down 2,electric 7,every 1,for 15,from 2,goes 2,going 1,gone 1,got 3,ground 1,had 2,has 5,having 1,he 1,her 3,his 1,how 3,i 8,i'm 2,i've 1,if 3,in 26,inside 1,is 17,it 30,its 2,joist 1,joist+ 1,like 4,liquid 3,machine 1,machine+ 2,material 5,me 4,more 1,must 1,my 10,needs 2,no 3,now 4,of 19,off 2,on 25,opening 3,other 52,out 2,over 5,part 6,past 1,person 6,pipe 2,region 3,round 11,she 1,sheet 4,sheet+ 1,so 11,some 1,space 1,such 2,than 1,that 18,the 35,their 2,them 1,there 2,they 3,they're 1,thing-or-deed 4,through 2,till 1,timber 3,timber+ 10,time 12,to 7,too 1,tool 1,under 4,up 7,us 2,wants 1,was 5,we 1,were 1,what 14,when 3,where 5,who 4,why 1,will 2,with 7,work 13,worked 12,working 4,works 3,would 2,you 3,your 1
this:# 6,a 1,abstract 5,air 5,all 1,and 1,appliance 1,for 2,here 5,in 1,inside 1,is 30,machine 1,other 18,out 1,part 1,person 1,round 1,sheet 2,so 2,space 2,such 2,the 1,thing-or-deed 3,time 76,vessel 11,was 11,week 9,with 1,work 1,works 1,would 1
those:# 11,abstract 2,and 1,are 13,as 1,assembly+ 3,at 1,by 1,come 2,container 1,container+ 1,fastener+ 3,feet 2,for 2,get 2,goes 1,got 1,have 1,hole+ 2,i 3,i've 1,is 1,joist 1,joist+ 3,just 1,machine 1,material+ 1,need 4,now 1,of 1,on 1,opening+ 4,other 8,out 1,part+ 1,person 1,round+ 1,sheet+ 4,such 1,the 1,this 2,till 3,timber 1,timber+ 2,time 6,to 3,tool 1,until 1,up 2,want 1,who 2,with 1,worked 4,working 1,works 2
through:# 3,a 5,about 1,above 1,and 4,at 9,behind 1,by 3,fastener 1,for 2,her 2,i 1,it 12,like 1,material+ 1,my 1,on 1,other 3,over 1,such 1,that 5,the 53,them 2,there 1,those 1,to 3,vessel 1,what 1,where 1,with 1,worked 1,working 1
till:# 6,about 1,he 1,i 4,i'm 1,i've 10,it 10,my 2,now 1,other 2,she 4,that 9,the 38,their 2,then 4,there 4,they 1,they're 2,this 1,time 10,we 1
timber:# 20,a 16,abstract 7,across 1,again 1,all 1,and 15,another 1,appliance 1,appliance+ 1,as 2,assembly 2,at 6,away 1,be 1,because 1,been 3,between 1,but 2,by 2,cable+ 1,came 2,coating 1,comes 1,day 1,deep 1,down 2,each 2,electric 1,fastener 3,fastener+ 8,for 12,get 2,gets 1,go 2,goes 5,going 2,gone 1,got 5,ground 1,has 4,he 1,her 1,here 1,i 8,i've 1,in 13,inch 1,into 1,is 19,isn't 1,it 4,joist 3,joist+ 5,liquid 1,machine 2,material 3,material+ 1,may 1,measure 3,more 1,needs 1,now 2,of 7,off 3,on 19,other 25,out 4,outside 1,over 3,part 7,part+ 7,person 2,round 16,round+ 6,she 1,sheet 7,sheet+ 5,should 1,so 3,space 4,such 5,that 4,the 13,them 1,then 1,there 1,thing-or-deed 3,this 2,those 1,through 3,timber 6,timber+ 3,time 4,to 8,under 5,up 2,wants 2,we 1,when 1,where 4,which 1,will 3,with 5,work 7,worked 19,working 6,works 2,would 1
timber+:# 6,a 1,abstract 1,across 1,all 1,and 6,are 68,as 2,assembly 2,at 7,away 1,because 1,being 1,below 1,by 2,came 1,can't 2,come 3,could 1,each 1,for 7,get 1,go 3,gone 1,got 4,has 1,have 4,i 8,i'll 1,in 6,is 4,machine 1,need 1,of 8,off 2,on 4,other 14,part 1,should 2,so 10,that 2,the 1,then 1,they're 1,to 5,too 2,under 2,up 6,want 3,were 6,where 1,with 1,work 3,worked 11,working 2,works 1
time:# 34,a 4,about 4,abstract 38,again 6,air 3,all 4,also 1,and 103,as 7,assembly 4,at 21,back 3,but 1,by 6,coating 7,come 1,comes 2,container 1,did 1,each 1,electric 3,electric+ 1,fastener+ 1,for 18,from 15,go 1,goes 2,going 1,gone 1,got 2,have 1,he 4,here 1,i 54,i'll 4,i'm 8,i've 3,if 14,in 19,is 9,it 15,its 5,just 1,like 8,liquid 3,machine 1,material 1,me 4,measure+ 1,my 3,need 1,needs 1,no 4,not 4,now 5,of 17,off 4,on 20,one 2,only 3,opening 1,or 13,other 73,out 6,over 2,part 5,part+ 1,person 7,pipe 2,region 4,round 4,round+ 1,she 1,sheet 12,sheet+ 2,since 3,so 20,space+ 1,still 1,such 22,than 1,that 3,the 40,then 1,there 5,they 12,thing-or-deed 7,this 2,till 1,timber 5,timber+ 1,time 104,to 12,too 1,under 2,vessel 4,wants 1,was 3,we 7,week 18,when 1,where 1,with 34,without 2,work 14,worked 7,working 6,would 1,you 10
to:# 232,a 25,about 2,abstract 70,all 2,an 3,another 1,any 2,appliance 1,around 1,assembly 29,back 6,be 286,being 1,by 1,cable 8,coating 13,come 39,do 27,each 1,electric 2,fastener 11,get 27,go 56,ground 1,have 32,her 1,high 1,him 6,how 1,inside 1,it 26,its 2,joist 4,liquid 3,machine 12,material 3,me 15,measure 15,meters 1,mill 2,my 14,need 1,no 1,on 1,opening 1,other 36,outside 3,part 40,person 8,pipe 1,region 1,round 8,round+ 1,sheet 38,so 1,space 5,such 3,that 13,the 260,them 5,thing-or-deed 89,those 1,timber 9,time 6,tool 12,vessel 4,want 1,what 1,where 4,work 355,worked 54,working 2,you 3
too:# 1,abstract 1,and 3,assembly 1,high 1,i 1,if 1,long 21,my 1,other 31,such 18,the 2,thick 1,wide 2,work 10,worked 1
tool:# 7,a 7,about 2,abstract 6,across 6,again 1,along 2,an 1,and 48,as 7,assembly 4,at 5,back 1,because 1,both 1,by 5,cable 1,coating 1,container 3,down 8,feet 2,foot 5,for 10,from 3,goes 1,had 2,has 4,her 1,here 1,i 2,if 1,in 11,inside 1,is 8,isn't 1,it 11,like 1,machine 1,machine+ 1,meters 1,metre 1,metres 8,mill 1,more 1,my 1,needs 1,no 1,not 1,now 2,of 8,off 6,on 44,or 1,other 48,out 10,outside 1,over 1,part 10,part+ 1,person 2,pipe 2,region 1,round 5,round+ 2,she 1,so 1,space 2,such 2,that 6,the 13,them 1,thing-or-deed 2,this 2,through 2,till 1,time 4,to 10,tool 1,under 1,up 6,us 1,very 1,wants 5,was 8,where 2,who 1,with 4,work 6,worked 7,working 2,works 3
tool+:a 1,abstract 1,and 6,are 1,assembly 1,at 1,came 1,for 1,on 1,only 1,opening 2,other 1,so 1,thing-or-deed 1,timber 1,too 2,will 1,worked 1
under:# 33,a 15,abstract 1,air 2,all 2,an 1,at 1,her 1,it 30,liquid 1,measure 2,my 4,now 1,or 1,other 4,sheet 2,so 1,that 12,the 97,them 2,there 16,this 1,where 3,with 3,work 1,worked 2,working 1,your 1
until:# 1,abstract 1,he 1,i 3,i've 7,it 3,its 2,my 1,other 3,person 1,she 1,that 6,the 33,then 2,there 5,they 3,they're 1,this 1,time 3,what 1,work 1,working 1,you 1
up:# 22,a 17,above 1,abstract 8,again 5,all 3,and 33,another 1,any 1,as 3,at 12,behind 2,between 1,both 2,but 1,by 10,electric+ 1,for 10,from 9,get 1,going 1,has 1,her 1,here 5,high 3,i 4,in 24,inside 1,into 2,is 2,it 7,like 7,material 1,more 1,my 3,no 1,off 3,on 43,other 21,out 5,over 5,part 13,person 1,region 3,round 1,she 2,sheet 1,since 1,so 9,some 5,such 11,than 1,that 1,the 63,there 32,they 1,this 7,those 1,through 2,till 5,timber 1,time 49,to 77,too 3,under 1,until 3,was 1,what 1,when 3,where 2,with 20,without 2,work 5,worked 1,would 1
us:# 2,a 2,about 1,and 8,are 1,at 2,down 1,his 2,i 1,in 1,no 1,on 3,other 3,out 1,so 4,such 1,the 1,their 1,there 1,thing-or-deed 1,time 2,to 3,up 1,will 1,without 1,work 1,worked 1,working 2
very:abstract 2,assembly 1,least 7,long 1,most 2,other 5,person 1,round 1,so 1,such 12,work 7
vessel:# 9,a 1,abstract 10,again 1,all 1,and 13,as 1,assembly 9,assembly+ 2,at 3,because 2,behind 1,by 4,cable 1,came 7,can't 1,come 1,comes 2,container+ 2,did 1,down 2,electric 3,electric+ 1,fastener 1,fastener+ 3,for 6,from 3,goes 1,going 1,got 3,has 1,i 5,i'm 3,if 1,in 10,is 21,isn't 1,joist 1,just 1,like 2,material 2,material+ 1,must 2,my 1,no 1,now 4,of 2,on 7,opening 19,opening+ 2,other 40,out 2,part 6,person 3,region 1,she 3,sheet 1,sheet+ 1,so 1,space+ 1,such 7,than 1,that 8,the 3,there 1,thing-or-deed 2,this 2,timber 11,timber+ 1,time 9,to 2,tool 1,under 1,until 3,up 5,vessel 3,wants 1,was 2,we 1,which 1,will 1,with 10,without 2,work 6,worked 10,working 1,works 4,would 1,you 1
vessel+:air 1,are 2,at 1,have 1,in 1,sheet 1,so 1,were 1
volt:# 1,abstract 1,all 1,and 1,not 1,on 1,other 1
volts:a 1,and 3,at 2,for 1,liquid 1,so 1,the 1,they're 1,when 1,work 1
want:# 19,a 19,abstract 4,another 2,electric+ 1,every 1,her 1,his 1,it 6,material 1,measure 1,no 1,of 1,on 1,other 1,so 1,some 1,that 2,the 6,their 2,to 30,under 1,working 23
wants:# 26,a 34,abstract 5,an 1,another 1,any 1,at 5,cable 1,coating 1,her 1,his 2,hole 1,it 4,its 3,me 1,no 2,other 2,sheet 1,sheet+ 1,the 5,thing-or-deed 1,time 1,to 24,tool 1,working 35,works 1
was:# 33,a 36,about 2,abstract 15,also 1,an 2,at 7,behind 1,between 2,but 1,by 1,cable 1,for 3,from 1,going 10,gone 3,her 1,here 7,i 1,in 7,it 4,just 3,like 2,material 2,me 5,measure 1,my 6,no 1,not 4,off 2,on 9,only 3,other 57,out 3,past 1,person 1,region 3,sheet+ 1,so 22,such 14,that 4,the 14,there 3,thing-or-deed 2,this 1,through 1,timber 1,time 4,to 4,under 1,up 8,very 1,vessel 1,when 2,with 1,work 9,worked 39,working 11
watt:# 1,each 1,electric 1
watts:a 1,all 1,at 2,between 1,each 2,liquid 1,of 1,on 1,other 2,the 1
we:abstract 3,all 1,also 1,are 14,assembly 1,both 2,came 1,can 1,can't 1,did 3,don't 3,electric 3,get 4,go 2,going 1,got 9,had 12,have 28,machine 3,measure 1,must 1,need 1,on 1,only 1,other 17,part 1,shall 6,should 1,so 3,thing-or-deed 3,want 1,were 4,will 3,work 15,worked 62,would 1
we're:# 2,a 2,abstract 1,at 2,going 4,having 3,not 2,on 2,other 3,thing-or-deed 1,through 1,to 1,up 1,worked 2,working 12
we've:gone 2,got 9,had 2,other 2,the 1,worked 9
week:abstract 2,and 1,by 1,from 3,he 1,i 3,in 1,it 2,like 1,of 1,off 1,on 2,other 5,out 3,she 1,such 2,that 1,the 1,time 10,to 1,up 1,we 1,work 1,you 1
weeks:abstract 1,i 1,in 1,is 1,of 2,on 1,other 1,out 2,such 1,time 1
were:# 8,a 3,about 1,abstract 2,all 2,another 1,assembly 1,at 1,down 1,fastener 1,fastener+ 1,for 1,going 3,in 3,long 1,material 1,not 2,on 2,other 14,person 1,region 1,so 3,such 2,that 1,the 2,there 1,through 1,to 1,up 1,we 1,when 1,work 1,worked 10,working 5
what:a 6,abstract 6,an 1,appliance 1,at 1,behind 1,came 1,coating 1,comes 1,did 8,do 2,does 2,each 1,goes 2,going 1,has 1,he 5,i 38,i'll 3,i'm 5,i've 4,if 1,in 1,is 8,it 16,must 2,my 1,now 1,of 1,on 2,other 36,part 1,person 3,region 5,shall 1,she 6,such 1,that 7,the 29,there 2,they 3,this 1,time 1,to 6,under 1,want 1,was 6,we 5,will 1,work 5,worked 2,works 1,would 9,you 5,your 1
when:a 1,he 5,i 23,i'm 4,i've 6,it 19,its 2,my 5,other 4,person 1,she 13,such 1,that 4,the 33,there 6,they 1,we 4,we've 1,were 1,worked 1,you 2
where:a 2,are 2,do 1,he 2,i 15,i'll 1,i'm 2,is 1,it 31,its 1,machine 1,my 3,no 1,only 1,other 9,person 1,she 4,the 39,their 1,there 2,they 8,we 1,we're 1,you 4,your 1
which:a 1,abstract 18,are 4,at 2,by 1,don't 1,for 2,had 1,has 1,he 1,i 14,i'll 1,i've 2,in 1,is 52,it 3,my 3,needs 1,on 1,other 19,part 1,part+ 1,she 2,sheet+ 13,so 1,the 8,they 1,wants 2,was 4,we 1,were 2,worked 5,works 20,you 1
who:# 1,abstract 7,am 2,an 1,are 1,cable+ 1,came 2,can 1,didn't 1,does 6,don't 1,fastener 1,going 1,got 3,had 1,has 1,have 2,i 2,is 6,measure+ 1,must 1,needs 1,other 28,so 2,space+ 1,thing-or-deed 1,was 1,will 1,work 1,worked 14,working 1,works 5
why:am 1,be 1,i 2,no 1,not 2,person 1
wide:# 2,and 10,as 2,assembly 2,at 3,because 1,by 5,i 4,in 1,inside 1,is 2,it 1,machine 1,opening 1,opening+ 1,or 1,other 2,person 1,round 1,so 1,such 1,the 2,were 1,you 1
will:# 1,abstract 5,all 1,assembly 4,be 54,come 1,do 2,get 1,go 3,have 6,i 1,it 2,machine 2,measure 2,need 2,not 14,part 1,person 1,so 3,then 1,thing-or-deed 6,timber 1,time 1,want 2,work 35,worked 3
with:# 63,a 212,abstract 21,air 2,all 5,an 8,and 1,are 1,at 1,both 3,coating 5,comes 1,container 3,electric 2,fastener+ 3,feet 1,her 5,high 1,him 1,his 9,hole+ 1,inch 1,inches 1,is 2,it 24,its 7,joist+ 1,less 1,liquid 8,machine+ 1,material 17,material+ 1,me 15,more 1,my 29,no 16,not 1,opening 2,other 23,part 3,part+ 4,person 9,pipe+ 1,round+ 2,sheet 3,sheet+ 2,so 1,some 1,space 1,such 4,that 13,the 226,their 1,them 1,these 1,thing-or-deed 4,this 1,those 1,timber 2,timber+ 2,time 3,tool 7,tool+ 1,until 1,us 4,vessel+ 1,what 1,work 5,worked 2,working 3,works 1,you 1,your 2
without:# 3,a 13,abstract 4,air 1,an 1,any 1,coating 1,going 1,his 2,it 1,its 1,other 3,so 2,that 2,the 1,thing-or-deed 2,us 1,working 4,works 1
work:# 245,a 121,about 10,abstract 53,across 8,again 4,air 1,all 3,along 1,also 1,an 4,and 49,another 6,any 1,appliance 4,are 1,around 1,as 24,assembly 9,at 18,away 2,back 3,be 1,because 2,been 1,behind 3,being 1,below 1,between 3,but 1,by 20,cable 7,cable+ 2,came 3,coating 5,coating+ 1,come 3,comes 2,container 17,day 15,days 1,down 18,each 3,electric 9,electric+ 1,every 4,fastener 1,fastener+ 5,feet 4,for 42,from 9,get 1,gets 2,goes 2,going 1,got 5,has 9,having 2,he 2,her 17,here 2,him 16,his 6,hole 2,how 4,i 10,i'm 2,i've 1,if 8,in 57,inside 3,is 22,isn't 1,it 190,its 2,joist 3,joist+ 2,less 1,like 3,liquid 2,machine 7,machine+ 1,material 24,me 70,measure 11,more 2,must 1,my 14,no 5,not 3,now 5,of 62,off 17,on 82,only 1,opening 8,or 12,other 161,our 1,out 32,over 17,part 10,part+ 3,person 22,pipe 8,pipe+ 1,region 3,round 7,round+ 3,she 1,sheet 27,sheet+ 6,since 1,so 10,some 7,space 9,still 3,such 10,than 10,that 64,the 202,their 2,them 29,then 1,there 6,they're 2,thing-or-deed 9,this 8,those 6,through 10,till 10,timber 5,timber+ 1,time 21,to 62,tool 11,under 7,until 12,up 36,us 2,vessel 12,vessel+ 1,wants 2,was 10,week 3,were 1,what 10,when 4,where 7,which 2,who 2,why 1,will 1,with 25,work 27,worked 23,working 9,works 8,would 2,you 70,your 9
worked:# 125,a 192,about 6,abstract 41,across 2,again 17,air 1,all 23,along 4,also 3,an 8,and 164,another 3,any 4,appliance 4,are 5,around 2,as 13,assembly 5,assembly+ 1,at 40,away 5,back 22,because 2,behind 1,being 1,between 2,both 8,but 2,by 48,cable 2,came 1,coating 1,come 1,container 3,container+ 1,day 1,do 1,down 40,electric 3,electric+ 1,every 24,fastener 1,fastener+ 5,feet 1,for 63,from 19,go 4,goes 2,gone 1,has 1,have 2,her 37,him 17,his 19,hole 1,i 8,i'll 1,if 2,in 163,inside 5,into 4,is 9,isn't 1,it 201,its 13,joist 2,joist+ 2,like 9,liquid 1,long 1,machine 6,material 19,material+ 1,me 75,measure 5,more 3,my 24,no 2,not 1,now 2,of 10,off 41,on 100,one 1,only 2,opening 1,or 4,other 135,out 93,outside 1,over 25,part 2,part+ 3,person 10,pipe 2,region 4,round 10,round+ 1,she 3,sheet 16,sheet+ 2,should 1,since 5,so 21,some 5,still 1,such 20,that 65,the 425,their 4,them 34,there 10,thing-or-deed 5,this 11,those 9,through 11,till 14,timber 3,timber+ 1,time 35,to 98,too 6,tool 8,under 12,until 10,up 176,us 9,vessel 6,was 1,week 1,what 1,when 6,where 5,which 1,who 1,will 3,with 38,without 3,work 27,worked 10,working 9,you 32,your 3
working:# 38,a 66,about 2,abstract 29,again 3,air 1,all 2,along 2,an 1,and 12,another 3,any 2,appliance+ 1,around 1,as 2,assembly 4,assembly+ 2,at 7,away 1,back 7,be 1,been 1,behind 1,both 1,but 1,by 9,cable 2,can 1,can't 1,coating 3,container 1,day 5,did 1,down 6,each 1,electric+ 2,fastener+ 2,for 10,from 1,gets 2,goes 1,going 2,has 1,have 1,her 7,him 1,his 3,hole+ 2,i 4,i'll 1,i've 1,if 1,in 29,into 1,is 5,it 72,its 5,joist+ 2,like 2,liquid 2,machine 2,material 8,material+ 1,me 8,measure 5,measure+ 1,more 1,my 4,no 1,not 1,of 5,off 14,on 19,opening 1,opening+ 1,or 1,other 41,our 1,out 29,over 3,part 4,part+ 3,past 1,person 4,pipe+ 1,region 3,round 2,round+ 2,sheet 6,sheet+ 3,since 1,so 3,some 1,space 4,such 14,that 31,the 96,their 1,them 18,there 4,thing-or-deed 3,this 1,those 6,till 2,timber 6,timber+ 2,time 9,to 18,tool 7,under 4,until 1,up 29,vessel 3,was 3,we 1,when 1,where 2,will 1,with 5,work 13,worked 24,works 5,you 7,your 1
works:# 36,a 16,about 2,abstract 8,again 2,all 2,an 2,and 10,are 11,assembly+ 1,at 6,back 2,be 1,behind 1,below 1,by 3,each 2,every 1,for 6,from 4,get 1,go 6,got 1,have 1,he 1,her 2,his 2,hole 1,how 1,i 3,i'm 1,i've 1,if 1,in 12,inside 1,is 1,it 14,its 2,less 1,like 6,liquid 2,me 12,measure 1,more 5,must 1,my 4,need 1,no 1,now 2,of 5,off 3,on 11,or 1,other 20,out 19,over 7,part 2,part+ 1,person 1,pipe+ 1,round 1,she 1,so 8,such 2,that 2,the 38,them 4,there 1,thing-or-deed 2,through 1,time 4,to 6,too 1,under 1,up 9,us 2,very 1,vessel 1,were 1,what 1,when 1,where 1,with 5,work 3,worked 4,working 1,you 4,your 1
would:# 1,a 1,abstract 4,assembly 1,be 18,come 1,do 3,electric 1,for 1,go 2,have 11,i 15,it 3,just 1,like 2,material 2,not 1,only 1,other 2,part 1,she 1,so 3,space 1,the 1,they 1,thing-or-deed 2,work 14,worked 1,you 11
you:# 5,a 7,about 5,abstract 8,all 3,also 1,are 1,assembly 2,back 1,be 2,cable 1,came 2,can 38,can't 9,come 2,could 39,do 9,don't 4,every 2,for 1,get 12,go 3,got 5,had 1,have 14,how 7,i 1,just 2,like 3,machine 2,may 5,me 1,measure 1,must 1,my 6,need 1,not 1,off 2,on 3,opening 1,other 24,part 1,person 5,region 1,shall 5,so 5,still 1,that 12,the 19,thing-or-deed 23,timber 1,to 2,up 2,very 1,want 4,was 2,were 2,what 2,who 1,will 5,work 53,worked 8,works 1,would 1
your:a 1,abstract 8,appliance+ 1,back 1,fastener+ 1,feet 1,joist 1,material 1,measure 1,other 6,part 2,person 3,round 1,sheet 2,such 1,thing-or-deed 1,timber 1,timber+ 1,tool+ 2,work 4,worked 1
`;
