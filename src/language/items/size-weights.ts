/** What the evidence of `size-evidence.ts` weighs. Written by scripts/fit-attribute.ts; do not edit by hand. */
import { readSizes } from './size-table.ts';

const VOTES = `
band 24
band of near 12
band of next 6
first rule 21
frame 16
frame <measure> of <quantity> 7
frame <quantity> <thing> -6
frame <quantity> each side 17
frame <quantity> of <thing> 3
frame <thing>, <quantity> -17
frame at <quantity> centres 9
frame leaves <quantity> under <thing> 23
frame nothing over <quantity> 9
known 9
known far -24
known like 15
known near 25
known off 9
known only far 16
known only like 15
known only near 17
known only off 12
known only same -3
known same -3
likely 17
likely by measure 14
likely by nothing 2
likely by said 22
likely by usual 7
rule away clearance 6
rule away height 17
rule away offset -36
rule bearing 3
rule bears 3
rule below the water 7
rule bigger or smaller by -8
rule bored to 16
rule clearance -12
rule deep 12
rule down below 11
rule down from 13
rule draws 4
rule each side -13
rule fall of -24
rule from one to the other 11
rule gap 15
rule has room 7
rule headroom -6
rule heart to heart 13
rule high 9
rule hole -21
rule hole to hole 25
rule in the ground 12
rule laid across 7
rule lap -24
rule left over 6
rule level within -5
rule long -2
rule mended -3
rule miss by 13
rule moved a way 12
rule moved by 7
rule moved to 11
rule needs room -2
rule not closer than -5
rule of air -7
rule out of true 20
rule over or under size 7
rule part of a sum 9
rule radius 17
rule ripped to 14
rule spacing -5
rule square 9
rule sticks out 15
rule there and back 5
rule to stand in -16
rule to the roof -3
rule to the top -5
rule to the top of it -17
rule tops out at -6
rule up and down 3
rule up from the ground 15
rule wide -16
size word 19
usual 10
usual of near 9
usual of next 18
value 3
value only 35
word after 46
word before 32
word earlier 15
word far 35
word fellow 10
word in name 7
word next 40
word of fellow 10
word past 6
word prev 43
`;

const SIGNS = `
after 'll h3
after 's h2l2x-5e-3
after a h6w-5o-3c2x2
after about t3
after across w-7o14
after air h-4c2g7
after all h-4t3o-3c3g9x-3
after along l-5e8
after already w3l-2o-2c5
after apart h-2w-3l-3t-2g17x6e-7
after are w2l5s-3
after around g3x-4
after as w6l-2
after at h3l-4t-3o6e-2
after back h3t-3
after be h-4l5d-2g8
after beam w5l-2
after before w3
after behind g8
after between w6t-2e5
after bolts o2
after bottom l-3d5o5
after bronze l4t-4
after by d3x-3s4
after center e3
after centres w-3l3g-2e4
after clear c-2g4
after deck h4
after don't w-2c3
after door h4
after down w10l-3
after each l12d-3c-3g-4x-6s5e3
after edge l-4t4c-3g2x-2e6
after either l3
after end w2l3d-2t-3o5c-2
after even w6l-3e4
after ever t4o-3
after fine c3
after floor h3
after for h-5d-2o-3c-2g12x5
after frame d5
after from h-3d-3o-3r4c8x-3e3
after front w3o-2x3
after give l-2e4
after go w4o-5g5x-2
after got l4e-3
after gotta w5x-2
after head c4
after height x2
after her h4x-4
after hole w3
after i h2w4d-2e-3
after in w4l-3o-3c-7x13s-2
after inside l-4o5g5e-3
after instead d3
after is w-2c5
after it l6d-3c6e-3
after kind abstract h4l-7d-2t3o-2c-4s7
after kind air h-5c2g7
after kind appliance x9
after kind assembly h-2w3d2g5x2
after kind cable l2o-2
after kind container h-3t3c4
after kind electric w-2e3
after kind fastener l-3o3
after kind ground h4x2
after kind hole h2w4l-3o-3x4
after kind joist h-4w3l5x-3
after kind liquid l-2c6x-4
after kind machine w3l-4o4c-2g4e-2
after kind material h-4l3d-3t14c-3x-2
after kind measure h5l-3t2o2r3c-3g-2
after kind opening h3w3l3g-3
after kind part h-5d2o-10r3c6e4
after kind person t3g2x-2
after kind round w-6l3o2g5
after kind sheet h-7w-3l6d7t3c-3s-4
after kind space w5l-7t-4c9x-3
after kind timber h-3w3l8d-3g-3s4
after kind time h9t-3
after kind tool h3w3s-3
after kind vessel l3
after lap w7x-4
after less w2l4t-2s4
after like h4x-3
after long l3
after makes h4x-3
after middle c3
after more t2
after my c7x-2
after not w11l-8d-2t8c-4x-3
after nothing h3
after now w2t5o-2x-3
after of d6t5o-4x-2s-4
after off h6t2c3g4x-7
after on h5w-3l4t3c-4x-5s2
after one h-3w2d4x-2s4
after other e5
after out h4
after outside h-3w8l-4d-3t-2o13s-3
after over h-6w5l-3o3g-3x6s3
after past h-4x8
after plank l8t2o-3
after ply g2
after post l4
after proud h2t4x-3
after radius r3
after rather l2g5x-6
after ridge h-4l6
after roof g5
after round l3o-4c2g6
after short l2
after should l2
after side h-2w-4d2t3c4x-5s6e-3
after sides h-3w3c3
after since c3x-3
after square w2s3
after steel t4c-2
after stern d5
after still h3c-3
after stove x7
after take l-3o3e4
after tank c2
after tape h3
after than l4
after that l3c3x-5
after the w2l-3d5t-4g5x10s-11e-6
after them h2w-2g-2
after there l2c3
after they h-3t3
after through w3g5
after to l2t-6o-2c2g5x6s-2e-4
after too h-5l3t-3o-2g-2x15
after top h3t3
after under l4c4
after up t3
after wall h-6w-3l5d2c6
after want h-2x2
after was t2
after water l-2c6x-5
after way l-4g2x-3s8
after well l-4d4
after which c5
after whole d3
after wide x4
after width w4
after with w-3l6c3x-5
after wrong h2w3o-2
any h4l4d-3t3o-3r-9g2s-2
before 'd h-3w5
before 'em l4
before 'll h3w-3t4g5e-5
before 'm h-4w4l2t7c-3g-3
before 're t-3o-3g3s3
before 's l-3t2o3c3g-6x4e-3
before 've w8x-3
before a h-8w5l-5d7t-4o6c-2g-3x2
before about h2l5x-3
before all h4l5t-7
before already w3x2
before an h4x-3
before and h4w-5d6t-6r-2c11g10x-4s-6e-7
before another h2
before are w-3l5t-3c-6x4
before at h6w-2d4t-3o-5g-3x-5s-2e10
before back h7c-2
before barn h3
before bathroom h4
before battens e3
before be w-2l4d-2t7o-2c-2g-2
before beam h6l-4
before bed w3d4
before been o4
before being l3g-2
before bent w2
before board w4
before boards g3
before book c6
before bottom h5w-2t2
before bush x2
before by h-3w-3g5x5s3
before cabin l-3c4
before cable o4
before came h3l-3
before can't w4s-3
before clear t-3g3
before come w3l-2x3
before comes t2
before coming h4
before corner h3x-2
before cross x2
before cut h-8w12l13d3o-6x-9
before deck w3l-3c2
before don't h4
before done s5
before door h4w-3t-3x5
before down h14l-6t-3c-5g-2x3
before drawn t3o3
before each w-2e7
before end w3o2c2x-2
before every l-3e7
before fat t3
before feet g2
before floor h4t3c2
before flue c4
before for h-4w3l4t4x-7
before four w2
before frame h-3l4g4
before from w-4l5o5x-3
before front w3l-2
before gap g3
before gas c5
before get l2t-5g5
before getting h-2x4
before glued t3
before go h5l-2
before goes g-2
before going w2l-3d3t3
before good h3
before ground d8c2x-5
before had h2t-2o3x-3
before has l-2o3
before have h-3d4c3g3e-3
before he h-2t3
before head h-4w2c5
before height c5
before her h3
before here w3
before hole w4
before holes x3
before i l8d-2t3c6g3x-7e-6
before in l-6d-6t5c2g3x4e-3
before inside h-3w3c2x2
before is h-2l-4d4t-2o6c-6g-4x7
before it w4l8t-6o2c4g-4x2e-7
before its h-2g4
before joists d3
before just l3
before keep c9x-2
before leave c3g3
before leaves h3l-2c3
before less l-2c4x3
before level x3
before lift h6
before like h4x-3
before lintel l3
before long h-2t-2g2x3s4e-2
before made x-4s6
before main l-2s5
before me h-2c3
before measure o3
before more h3
before must x6
before my h-3w4g3x-2
before need l3
before needs c5x-3
before new h-2w3l-4t6c-2s5
before no h-2w3c6e-2
before not x3
before nothing h2w3
before now c-4g4
before oak t3
before of h12w-2o-3g-3e-3
before off l-2o3c2g5x-7e3
before old h4l-2t3x-4e4
before on t-3c3x-6s4e6
before one h6w-3
before ones t3
before only d4c3
before opening l3g-6x5
before out l3o5x-5
before over w10o-3
before pencil w-3d5
before pipes e5
before plate h4w-3l3t-4o3
before plus x4
before post t-7g7
before put c4
before rafters d2
before rail t2
before ridge x3
before roof h3o2
before round x-2
before run w2
before runs l2
before says h9w3l-4c3x-6
before screws l4
before shaft h3o-4x6
before she h-4w9l-5d7t-3o-4c3g-4x4
before sheet o-2s5
before shelf x2
before sides t3
before sill h4w2l-2t-3
before sit g5e-2
before sits c-2g6
before sitting d3
before slab h2
before slide x3
before so h4w-4l7o-4e-2
before stand h5g2
before standing c4
before stands h3l-2x3
before stick h-2x2
before stood g6x-2
before stove w-2c9x-3
before suit h2
before tape h-3w4
before than w2d-2c3x3e-3
before that h3l3d-6o3g3x-3e-2
before the w-2l-9o-4r-4c15g-10x15s-2e2
before them l2
before there w-3t-3o-3c8x4e-2
before they w-3l5o-2x3s2
before this h3w-2l3
before those h3w3d-3
before through w-2t2
before to h10l5d-5t2o-2x-5s-3e-5
before too t2x3
before top w-3l-3t4c2
before tuesday t2
before two t2
before under h-3l6
before underside h9w-5l-3c2
before up h5l-4d-2c5
before wall h9w-9t-5g7
before walls h3
before want h-2t-3g5x3
before wants c9g-5
before was h-3w8
before water h2x3
before we h4w-2l-5x7e-3
before wednesday l2
before what x2
before where h-2w2c3
before which l3x2
before whole x3
before wide g3
before width t2
before will l-2t3g3e2
before with w3t-3c6x-5
before within x3
before wood t2
before you c6g3
bound about h4l5t4x-9
bound at-least h-5d-3t2c10x4
bound at-most h5l-2t-6c-3x12e-3
bound between t2o-3
bound exact l3d3o4r-7c-3x-7e5
by at w-3d3t-4o-3g-2s-2e9
by by h-3w-3l-4g5x4s3
by down h4w-2l-3x3
by for t3x-3
by in t6c-2x-2
by less w-3x7
by of h-6w2d3t4c-2
by on h2o-2s5
by out h-2
by over h2w3l2
by than w2d-2c3x3e-3
by through t3
by to w3l4o2c-3g-3
by up h4t-4c2
by with h3l-5c5g3x-4
by within x3
close after count other t4
close after length same o4g3x2
close after offset same h-3c5
close after other other l3
close after size same l-2s4e3
close after thickness other o3
close after width other g4
close after width same t2
first clearance h3t2g4
first depth d6
first diameter l3
first gap h-4w4d-2o-2c6g-7e3
first height h4w-4g4x-4e7
first length h-2d3x6
first offset o-6c2x3s2
first other t-2o-3g14x-2e3
first radius r3
first size w2
first width h-3o12
frame clearance t5
frame gap c5
frame height c3
frame length l2x3
frame offset h6w6l3x-11
frame other l-3t-2o-3g12e2
frame radius r4
frame thickness d4
frame width t3x-4e3
head air c3
head bar h2l3
head batten w3e3
head beam 5 h6l-5
head beam h8w-2d-5
head bearing c7
head bed l-3d3o-3c-3g7x5e-3
head bench 4 h4
head bench h4
head board 1 t3
head board h-3w4g3x3
head bolt 1 o4
head bolt o4
head box w4g-2
head bush 0 x2
head bush x2
head cabin 5 w4l-2
head cabin w4l-3t2
head cable h-2l3o5
head centre h5l3e-3
head corner h9l-2x-3
head counter 4 h2
head counter h2
head deck l-2t4c2
head door 5 w2
head door h3w-2d3t-3o-3
head drain 2 l3
head drain l3x2
head draught d3
head end l2x-3
head floor 1 t2c2
head floor 5 l5t-3
head floor h-2l3x3
head flue c5x-2
head foot l2x-3
head frame 1 w3
head frame 4 h-2w5
head frame h-7w12l2d-3c-3g4
head glass w4x-3
head head h-4c6
head headroom 5 h4c-3
head headroom h4c-2
head hole 2 t4
head hole 3 d2
head hole 4 w8o-6
head hole w5d3t2o-6
head joist 4 c3
head joist c2s3
head lap w9
head leg 4 h-3w-2l5
head leg h6w-3x-3
head lintel h-2x3
head opening 1 w-3g3s3
head opening 4 l3
head opening h-2l4c-3g2s3
head overhang 4 l8x-4
head overhang l7x-3
head panel h8l-4t-4x4
head peg 1 o3
head peg o3
head pipe 1 o4
head pipe 3 t3o-4e6
head pipe t2g-2x-3e6
head plank l3t4
head plate h6l-3t-4o3
head ply 1 h4x-2
head ply h4x-2
head post 3 l-4o6
head post w-3t-3o5g2x5
head prop o4g3e-3
head rafter l2x4
head rail 4 h4w6l-5
head rail h3w9l-7
head rib e6
head ridge x2
head roof w-3c5
head room l-5c2g2s5
head run w-2
head screw 2 l3
head screw 3 l-4e7
head screw e6
head shaft 0 o-8c-2x12
head shaft o-5c-3x12
head shelf w2x3
head sill g-2
head slide c7
head spindle g2
head step h4l-3
head stock t3
head stove 3 c3
head stove 4 c5
head stove w-2c10
head strap h-3l-3o-2e10
head tank w-3t2o3
head top 1 t2x2
head top h2t3x3
head wall 4 h-5w3t3
head wall 5 h2
head wall h-4w4t-3g6
head wheel o4g2
head window w-3o2g-3x4
kind abstract w4l-3
kind air c3
kind appliance 1 x9
kind appliance 2 w-2o2c4x2
kind appliance 3 w-3c4g6x-2
kind appliance 4 w6c5x-3
kind appliance 5 w-4l7
kind appliance h-4w-6t-2o5c10x4s-2e-3
kind assembly 0 g2x4
kind assembly 1 h3w-3d4
kind assembly 2 h-5g5x2s4
kind assembly 3 h-4d6e2
kind assembly 4 h11w6l-4x-3e-2
kind assembly 5 h-6w8l2c3
kind assembly 6 l7d-2c2x-3
kind assembly h-3w8d4t-6o-5g4
kind cable 6 l5
kind cable l4o5
kind container 4 c2
kind container 6 h-2w4l-3g-2x2s4
kind container l-3d-2g-3s4e6
kind electric l3e2
kind fastener 1 l2o2g3x-2
kind fastener 2 l5t-3
kind fastener 3 h-2e6
kind fastener h-5l5o-3c-4e8
kind hole 0 w-5x8
kind hole 1 w2d5x-4
kind hole 2 t3
kind hole 3 h3
kind hole 4 h2w6o-6
kind hole h4w5l-4d6o-7
kind joist 0 g4
kind joist 1 w4l-3d-3g2x6
kind joist 2 w2s5
kind joist 3 h5w-5l4x-2e2
kind joist 4 h-4w7l-4e7
kind joist 6 h-2l5
kind joist w6l3d-9t-6o-5c-3x7e7
kind machine h3w-2l3
kind material 0 c4
kind material 1 t5g4x-5
kind material 3 x5
kind material 5 l3
kind material h-4t6o-3e2
kind measure 1 x2
kind measure 2 g5
kind measure 3 h6x-4
kind measure 4 c2
kind measure 5 h4l2c-4
kind measure 6 h-2l3
kind measure h5l6t-2o-3c-4g4x-4e-3
kind opening 0 t3c-3g3
kind opening 1 w-4t-3g3x5s3
kind opening 2 w-5l2d5g-2
kind opening 3 h4w-3
kind opening 4 h-3w12g-3
kind opening 5 c3
kind opening l2c-2x2e-3
kind part 0 l-4d-2o-2c3g6x4
kind part 1 h-5l-6d-3o4c7g-4x7s3
kind part 2 w8l-4t-6o3c2x-3
kind part 3 w2l-7t2c-3x7
kind part 4 h-2w5l13d3o-2c-5x-4e-4
kind part 5 h6w-8l5o-4x-4e8
kind part 6 l7x-3
kind part w6l5d-5t-7c5g-2x4
kind pipe 1 o6
kind pipe 2 l2o3
kind pipe 3 g-2e6
kind pipe 4 c5
kind pipe 6 c-5x9
kind pipe h-4w-4o7g-4x6e4
kind round 0 h-7l-3o-13c3g-4x11s4e7
kind round 1 t-4o5c3g2x-2
kind round 2 l-3o4c-2g11e-3
kind round 3 o4
kind round 4 l2o5g2e-3
kind round 5 e4
kind round 6 w-2l7o-2c4
kind round h-12w-9t-4o3c6g10x4s2e3
kind sheet 0 l-4t4g5x3
kind sheet 1 l-2t6g3
kind sheet 2 h8c-2
kind sheet 3 h-3w-5d6o2x5
kind sheet 4 h8w-4d5o-2c-2g-2
kind sheet 5 h5w9t-4o-2x-3
kind sheet 6 l3d3
kind sheet h16w-2l-3d9o-8c-7x3s-3e-5
kind space 1 t3g2
kind space 4 h2l-3
kind space 5 h2w4
kind space 6 s5
kind space l-9d-3t6o-3g2s5e-2
kind timber 1 h-2w-5g2x4s5
kind timber 2 h5w-2t2g-2
kind timber 3 l3d-2o8
kind timber 4 h-6w7l2d3c-2x-3s2
kind timber 5 w4l3
kind timber 6 h3w2
kind timber h3w4l7d-2t-2o4c-8s5e-5
kind unknown 0 h-2l-2t9g-2e4
kind unknown 1 l-3g3s3
kind unknown 2 h-4w-3t11o7x-3
kind unknown 3 h-3l-2d-3t9c5
kind unknown 4 h-2w-5d10t-5o10
kind unknown 5 h8w2l-2x-3
kind unknown 6 w3l6t-5r5c2x-5e-2
kind vessel 2 l-5t4c6g-2
kind vessel 5 l-3o3c3
kind vessel 6 h3l3s-3
kind vessel w5l-5t4o3c7g-3x-5s-4
known far clearance c4
known far depth l4o-2
known far diameter w-3d2c-7g4x7
known far height h-2w-4l-2t3s7
known far length w-3d-5t-4o3c3g3x9s-2
known far offset w10c4x-6
known far size w2x-3s3e4
known far thickness h-5w5d4o-3
known far width h3w-5l6t3o-3c-3s3
known like clearance l-2c4x3
known like height w4
known near height h2
known near width w2
known none h7l7t3o5r-6c-5s-9
known off offset c3
known same offset d5x-5
last angle other 0 x3
last clearance other 1 l-2x4
last clearance other 2 h-2l6t-2o-2s4
last clearance same 0 c3
last count other 0 h7w-2l3d-3x-8
last count other 1 w-4d-2t5c-2
last count other 2 w7l2c2x-4
last count same 0 e2
last count same 1 h2
last current other 1 o2
last depth other 1 l2
last depth other 2 d3
last diameter other 0 w-3o4
last diameter other 1 w-3l3d4o4x-3
last diameter other 2 o3g-4x8
last diameter same 0 w-4d4o3c-5g5
last gap other 0 c5
last gap other 2 l-3x6
last height other 0 h3w-6l4o-5c4g4e-3
last height other 1 w-5g5x-3
last height other 2 h3l-3d4t-3
last height same 0 x2
last length other 0 w4c5g5x-6s-3e-2
last length other 1 h-3l6d-3c2x-4
last length other 2 w-4l4o3r3c-4x-4e2
last length same 0 h-4w3l-6d-2t-3o4c6x3
last length same 1 h3o3c-2x2
last money other 0 h5w-2
last money other 1 d4x-3
last money other 2 w5l-3
last offset other 0 h2l3g-2
last offset other 1 l5o-3
last offset other 2 l7o-4x4
last offset same 0 h-6w4l4c5x-3
last other other 0 w-5l5t8o-3c-2x-7e4
last other other 1 l2t2
last other other 2 w-2c3x2
last pressure other 1 w-3l3
last pressure other 2 h2d3t-3
last ratio other 2 t-2x3
last size other 0 w-4l-2c2g-2s6
last size other 1 x-3s4
last size other 2 l2t4
last size same 0 l-2t3x-2s4e2
last temperature other 2 h3x3
last thickness other 0 w3l-3t4o3c-5g-3x-3s5e-2
last thickness other 1 h2t2c-3
last thickness other 2 w3t-2o5x-3
last thickness same 0 x3
last time other 2 t3o-3
last torque other 0 d5
last torque other 2 h4l-2x-3
last volume other 0 h3x-4
last volume other 1 h-4c4
last weight other 0 w-2t2
last weight other 1 h3d-3
last weight other 2 l-2t3s3
last weight same 0 x2
last width other 0 h-3w17l-3d-4o-2c-4g7s-2e-3
last width other 1 w4t-4c3x3e-3
last width other 2 w5o-2c-4x5
last width same 0 l6
last width same 1 w3
likely clearance h4w-3l-2d-2c6
likely depth h3l-2d7t-3o-3g4
likely diameter h-4w2t4c-4x11e-6
likely gap h-3w6l3d-2o-3c5g-3
likely height h4w7l-3d-3t-5o-4x2s-2e3
likely length t4o3r-4c-6g-5x-3s3e5
likely offset l9t-3o-6c3x-3e-3
likely other w-3o-4g13x-3
likely radius r4
likely size l-2g3s3
likely thickness h-3w-5l3d4t4o8c3g-3s-4e-4
likely width w3l-3t-5o12x-6s-2e6
listed x3e2
name above h6w-2t2g4x-4
name back h7w5l-2t-3x-2
name bars w3l4o-2
name battens e3
name beams h3d-3
name boards h-2t-3g5x4
name bolts o2
name bottom h8w-4
name cabin c4
name centres l4
name corner h-3l2
name cross l4
name deck h3w4l-2
name door w-4l9t-4o-2x3s3
name each l2c3
name end o2
name engine h2g2
name first l5
name floor t4
name frame w2
name fridge g3
name from h11w-4l2d-3o-5r4c6x-5e-3
name front h5g-3
name gas c3
name ground d2
name holes t2o-3x3
name in w3t2
name inside t2
name joists c2s3
name legs h6w-3x-3
name old h-2w3e4
name panels h9l-4t-2x2
name pegs o3
name pipes o3g-2x-3e7
name plank t3
name plate h7
name posts h-3l6
name rafters x4
name ribs e6
name ridge h-3x3
name roof h-6l3o4g5
name sash t3g3x-3
name screws l3
name shaft h3
name side h-4w-4c6g2x7
name sill w2
name slats t-2x5
name stove c3
name top w-3
name wall h11w-10l-3o-2c3x3
name walls h3
name water c5g-2
name well h-2d6t-3x5
name window w3x-3
near bar w4e2
near batten e3
near beam h9l-4d-3
near bed l-3d3o-3c-2x7e-2
near board w5l-2g5x-2
near bolt o4
near bush x3
near cabin w3
near cable o4
near corner h7x-3
near deck w3
near door t-3c2x6
near end w5l-2c2x-2
near floor l3
near flue c4
near foot g2
near frame h-4l4g7
near height c4
near hole w5o-4
near it w6l4d-2t-3o4g-3x6s-3e-6
near joist d3s3
near kind abstract l10o-2x-2
near kind appliance w-7d2c4
near kind assembly h5w4l-6d6t-5o-2g3x-3
near kind cable o4
near kind container l-4s4e8
near kind electric l2c3g-4e5
near kind fastener h-2l-3e9
near kind hole w8l-3d4o-5
near kind joist h2w-4l3t-3o-3c-3g4x-3s2e5
near kind liquid x3
near kind machine h3w-3c2
near kind material h-5d-3t6c-2g5x-4s5
near kind measure h3d-2o-3r2c5g3x-4e-3
near kind opening w3l-2t-5g3x8
near kind part h7w8l3d-6t-8o5x-10s-3e4
near kind person c2
near kind pipe h-3w-2d2t-4o4c-3x4e3
near kind round h-10d-3t-6o8c-3x5s3e9
near kind sheet h6w-5l-3t4o-5g6x4e-2
near kind space h-2w3l-4x3s5
near kind timber l3t-2c-4g5s2
near kind tool w-2l2d4o-5c5e-4
near kind vessel h5w3l-7s-3
near lap w6x-4
near leaf h4w-2
near level x3
near log o3
near nothing h5w2d2c-4s-6e-2
near oak t3
near one x2
near ones w-3t3o2
near panel t-2
near pipe l2e4
near plate h4t-3
near post x2
near rafter d2
near rail h4w3l-4
near roof h6t2x-4
near run w2
near screw e6
near shaft o-5x8
near she h-4w8l-4d7o-3g-3x5
near side o-2c5g4
near slab h3d6t-6
near slide x3
near speaker w4l-3d-5t4o-6c11g4s-3e-5
near that h-3o4s2
near them l3t-3x4
near they l6
near top h7w-2l-2t3
near wall h-4t-2g7
near wheel o3
near which l3
next a h4w-4l-4c2x3e4
next across h-2w-7o15
next all t4g3
next and h5w4l3o-3c3g-3x-3e-3
next at h6w-4l-6o7x3
next behind c3g5
next between w6g-3e5
next but t5
next by s4
next centres e2
next comma w5d-3t5o4r-3c-2x-3s-5
next each l7g-3s3
next end w3
next for h-2l2x2
next from h-5d-3o-3r4c9x-4e3
next hole w3
next i h4l4t-2e-3
next in h-4w2d3t-3x7
next is x3
next less w2l2t-2s4
next long l3
next of h2w-3d3t3o-5c3x-4s-3e3
next off h6l-2t2c3g3x-7
next on w-3l6d-3t3c-3x-3s3
next or l-3c4x4
next over h-6w6x-3s4
next proud h2t4x-3
next quantity s5
next radius r3
next round l4o-2g3
next so h4o-3c-4g4x2e-4
next square w2s3
next stop w3l-3g-3x2s-5e5
next tag adjective h-4w6l-4d9t2o-4c-4x5s-3
next tag be x3
next tag comma w5d-3t5o4r-3c-2x-3s-5
next tag conjunction h9l-3t4o-5c7s-4e-7
next tag determiner h5w-6l4d-2t4o-4e2
next tag dimension h-7w-7t-2o7c-3x5s4e2
next tag noun w7d-6t4o4r3c-5g2x-7
next tag number l-3s5
next tag preposition h-4w-5l6t-8o-5c11s3e3
next tag pronoun h9l3e-5
next tag quantity s5
next tag stop w3l-3g-3x2s-5e5
next tag verb d4c-2
next that l3
next the l3
next to h4t-5o-2g4x8e-3
next under c4
next up h4
next which c3
next with h2x-2
no rule h6w6l2t7o3r-9g-5x-2e-8
no verb h-3l2d-4o5r-6g-5s6e5
of hole w3
of kind abstract w2l-3g3x5
of kind appliance w3
of kind fastener l-2
of kind hole w3o-2
of kind joist h4d-3
of kind material t3o3
of kind measure t4r3c-3
of kind part h-3w3
of kind round o-5g4s5
of kind sheet h-4l3t5
of kind timber l-2o2s5
of kind tool w4s-3
of radius r3
of side w-3c3s2
pair , and c2g-3x-3
pair , because g4
pair , i h-3w-2l4e2
pair , it t3
pair , my h-2c4
pair , so h4w6l-5t-4c-2g3x6e-2
pair , that x3
pair , the h-2w-3d2o5
pair a side w-2t2c4
pair above the h2
pair across , w-3o5
pair across the l2
pair all up t4
pair and it h4t-4
pair and the h3t3o-2c-3x2
pair at the h6w-4l-6o7x3
pair behind it c2g5
pair between the w9
pair each side l2s3
pair for the h-2l3
pair from the w-2l3d-2r5c4
pair give or e3
pair i 'd h2
pair in the h-3l3o-2x3
pair of air c4g-2
pair of it h4l5
pair of the c2
pair off the h5t3c3g4x-6
pair on center e3
pair on deck l3
pair on the t-2o5g2
pair over the h-5w8c-2x-3
pair so that d2
pair so the h2o-3x2
pair that 's l3
pair to the h2w-5d7c3
pair under the c2
plural 0 t4o-3c3g2
plural 1 h-5w-2l-2d-6t-4o7c3x7s4e-3
plural 2 l7d-3t-4c-2g4x-5s8e-3
plural 3 h6w-4d3o-3c-4x-8e12
plural 4 w3d-4t-3x-2e3
plural 5 h8w-5l4d-2t-2o-3g-2x-5e8
plural 6 h-3l11t-2o-2g-3
prev 're h-2t2x-2s3
prev 's h3w4l-2c8x-7s-2
prev a h-3w3t-5o7r2
prev about h3l5x-4
prev all l5x-2
prev and d6c-3g-3
prev another h2
prev are h3w-3d2c-4x4
prev at d5t-5o-3g-3x-3e11
prev back l2x3
prev be h-6w2l8t5o-2
prev by h-3w-2l-3g5x5s3
prev comma c-5s4e-3
prev cut d5
prev down h4w-2l-3x3
prev every l-3e7
prev for w2t2x-2
prev get t-6g6
prev going h3
prev got h-2t3
prev in t5o2c-2x-2
prev inside x4
prev is h2w5l-2d-3t-4o7c-4
prev it h-2x5
prev leaves h3g3
prev less w-3x7
prev needs c5x-3
prev of h-6w2d3t4c-2
prev on h3w-3t-2s5
prev ones o2
prev only d4c3
prev out h-2
prev over h2w3l2
prev pair # , x3e2
prev pair 'll be x2
prev pair , and w4g-2
prev pair , is x4
prev pair , so h3d2t-3
prev pair , with h4d2x-3
prev pair at least c3
prev pair down , d4t-4r4
prev pair down to h7
prev pair has a w2
prev pair in to h-4x8
prev pair it 's w3d-3c6x-6
prev pair it is h4w2d3x-5
prev pair less than c6x-4
prev pair long by x5
prev pair more than h3
prev pair one , o4s3
prev pair out , d3
prev pair she 's l4
prev pair that 's h-3w-2t3
prev pair there 's l-2d3c6
prev pair there is x5
prev pair they 're h-2t2x-2s3
prev pair to be h-5w4l6
prev pair wide , g4
prev pair with a w3x-2
prev runs l2
prev says h5w4l-4x-3
prev so l3t-3
prev stands x3
prev start h3l-3d-3o6x2e-3
prev tag adjective h-2w-3l-3d3t5c5x-2
prev tag adverb w-5l9c-5x8
prev tag auxiliary h-4t-3o-2c9g5x-4
prev tag be w9d-3o5r-2g-5x-6
prev tag comma c-5s4e-3
prev tag conjunction h2l5d8t-5c-4s-2e-3
prev tag determiner h3w6d-7t-5o7c-5g-4x-3e9
prev tag noun h4l-3t4x-8
prev tag participle w-3d3c-4g3
prev tag possessive g4
prev tag preposition l-6t4o-4r-3g3x7
prev tag pronoun h-2l-2c3x5
prev tag verb w-3l2o-13r-2c7x2e4
prev than w4d-2c3x-2e-3
prev that w3
prev the h3w3l2d-3e-2
prev through t3
prev to l6c-2g-2
prev up h4t-4c2
prev wants w3l-4c5g-4x2
prev with h3l-5c5g3
prev within c2
range t2o-3
rule clearance h3t2g4
rule depth w-3d7
rule diameter l3
rule gap h-4w4d-2o-2c5g-2e3
rule height h5w-4g3x-3e6
rule length h-5l3d3t-2x5
rule offset w3l-3o-6c3x4e-2
rule other t-2o-3g14x-2e3
rule radius r3
rule size w2
rule width h-4t-2o12
second 's h3w-3
second , h4l3d-2t-2c-3g-4x3s2
second a h-3w-2l3o-3c6x2s3e-2
second air c4g-2
second all h-2l2g4
second and h2d2g-4x-3s6
second as w4
second at w5x-2
second be g7
second because g4
second center e3
second deck l3
second each t3x-6s3e4
second end w3
second every d4t-3
second from h3x2
second have x-2
second i w2l6d-3c-2
second it h3l5d-2t-3g3
second my h-3c8x-2
second no g3e-3
second on d4t2c-2
second one w4
second or h2l-3o3e3
second over d-2t-2o3x5
second same w3
second should h-7w8
second side w-3c4s2
second so h2w3l-7d3t-4c-3g3x8e-2
second that h-2l5o-2c-3
second the h4l-9d7t-4o7c2g3x2s-6e-6
second there h-2t4
second they w-3t3
second top t2
second up t4
second water h2c3x-3
second what h-2w5
second with t2
size clearance c3g2
size diameter l4
size gap g3
size height h4
size offset h10t5r4c5g-3x-18e-3
size other w-2g5e3
size size t3
size width h-2o9
toleranced l-2o6e3
unit thou h-2l-3d2t-3o-3g2x6
usual clearance h3x3
usual depth h4w-2l-4d5t-4o-4c-2s2e4
usual diameter h-10l-3d-2t3o7g11x-12e6
usual height h-5w9l5t-5o-2g-3x6s-2
usual length h13w8l5d-7t-4o-3g-5e-2
usual none w-8l-6d10t10c7g-5x-7
usual offset w7l5x-7
usual size g3s2
usual thickness h-4d-4t3o3g8x9s-6e-6
usual width w-6r-3x3s4e3
value 0 h-5w-3l-7d3t-7o-12c5x18s-2e12
value 1 h-5w-5l-9t11o-6c2g5x10s-2
value 10 h-5w12l6d14t-8c3g-6x-15
value 11 h16w16t-5o-10c-4x-6e-4
value 12 w17l10d-4t-4o-7c-4g-5x-3e3
value 13 h13w7l7d-5t-8o-5c7g-4x-10
value 14 h11w13l9d-5t-8o-2c3g-6x-11e-5
value 15 h2w4l17d-3t-5o-3r7c-5g-3x-8e-3
value 16 w-8l23t-6o-7c-2g-3x9e-3
value 2 h-4w-9l-8d-5t22o-8c-7g12s2e3
value 3 h-8w-11l-17t7o11g13x10s3e-4
value 4 h-2w-4l-8o9g6x3s4e-4
value 5 h-4l2d3t10o10c-9x-5e-6
value 6 w-3l-2d-5t4o4c4g-3x3e-2
value 7 h6w-5l-14d-5t6o8c6g-3x-4e6
value 8 w-4l-8d5t-5o12c-2g-3e8
value 9 h-8w-17l3d5c7g5x11s-2e-2
verb 're h2x-4s3
verb 's w6l-8t4o4c5g-3x-5s-3
verb are at l-2x4
verb are w-5o5c-4
verb be h-4l6d-2t5
verb came h3l-3t2
verb com h4
verb com to h4
verb come than x4
verb come to w4
verb come w3l-2t2x3
verb cut h-8w9d4o-4r5c-2
verb fram g4x-3
verb get l3t-6g6
verb go h5w-4d3
verb go to t3
verb goes l3
verb got h-3t2
verb has l-2c3
verb have c4
verb is w3l-2d-4o5c-5g-2x3
verb keep l-3c4
verb leav h2w-2c3x-3
verb lift e8
verb measur o3
verb need c5x-3
verb read t5
verb runs l2
verb says h4w4l-4c3x-3
verb sit g5e-2
verb sits d3
verb stand h6l-3
verb want at c2
verb want l-5c10g-3
`;

export const SIZE_WEIGHTS = readSizes({ votes: VOTES, signs: SIGNS });
