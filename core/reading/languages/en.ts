/** English, as private sellers on both sides of the Atlantic write it. */
import type { Lexicon } from './lexicon.ts'

export const en: Lexicon = {
  language: 'en',
  endings: ['s'],
  common:
    'the | and | with | of | is | in | to | this | it | for | on | has | are | from | very | size | length | waist | chest | sleeve | laid | flat | approx | condition | measurements | inches | hips | hem | shoulder | wear | fits | please | waist | bust | inseam | pit',
  points: {
    chest:
      'chest | bust | breast | bust line | bustline | chest size | chest measurement | bust measurement | bust size | breasts | chst | full bust | bst | brst | bust measures | chest measures | fullest part of bust | bust circ | around bust line',
    'chest flat':
      'pit to pit | pit 2 pit | p p | pits to pits | armpit to armpit | arm pit to arm pit | underarm to underarm | under arm to under arm | p2p | ptp | p t p | wide at the pits | wide at pits | wide at the armpits | at the pits | at the armpits | p to p | pit pit | pit-pit | pit to pit chest | pit to pit bust | pit to pit width | half chest | half bust | chest width | bust width | across chest | across the chest | across bust | across the bust | armpit to pit | pit to armpit | pitt to pitt | pit to pits | pit-to-pit measurement | under arm to underarm | underarm to under arm | armpits | pits | armpit | pit | armpit across | armpit width | underarm width | pit width | across the pits | across the armpits | across armpits | seam to seam under arms | armhole to armhole | sleeve to sleeve | underarm across | across underarm | across underarms | across the underarm | across the underarms | width underarm | width at underarm | width at underarms | width under arms | width across underarms | width armpit to armpit | width pit to pit | across the armpit | across at underarm | across at the underarm | width at bust | width at chest | width at the bust | chest across | bust across | across pits | across the pit | flat chest | flat bust | underarm seam to underarm seam | side to side under the arms | armhole to arm hole | pit to pit flat | pit across | pits across | under the arms | under arms | across under the arms | across under arms | beneath the arms | below the arms | across below the arms | from one armpit to the other | one armpit to the other | one underarm to the other | width across body under the sleeves | under the sleeves | across under the sleeves | across body | across the body',
    'chest around':
      'all round when buttoned | all around when buttoned | around when buttoned | round when buttoned | buttoned up around | all round when fastened | all around when fastened | all the way round when buttoned | chest circumference | bust circumference | around the bust | around bust | around the chest | around chest',
    waist:
      'elastic waist | elasticated waist | elastic waistband | elasticated waistband | drawstring waist | stretch waist | stretchy waist | waist elastic | waist | waistline | waist line | waist band | waistband | waste | natural waist | waist measurement | waist size | top of waist | top waist | wasit | wiast | waists | waist actual | actual waist',
    'waist flat':
      'half waist | waist width | waistband width | across waist | across the waist | across waistband | across the waistband | waist across | width at waist | width at the waist | waist flat | flat waist | across at waist | waistband across | width of waist | width across waist | waist seam to seam',
    'waist around': 'waist circumference | around the waist | around waist | round the waist',
    hip: 'hip | hipline | hip line | seat | widest part of hips | widest point of hips | hip measurement | hip size | hips size | full hip | low hip | bum | bottom hip',
    'hip flat':
      'half hip | half hips | hip width | hips width | across hips | across the hips | across hip | across the hip | across the seat | width at hips | width at hip | width at the hips | hips across | hip across | width of hips | flat hip | flat hips',
    'hip around': 'hip circumference | around the hips | around hips | around the hip | round the hips',
    hem: 'bottom hem width | hem of top',
    sweep: 'sweep | skirt sweep | hem circumference | hem sweep | bottom sweep | hemline sweep',
    bottomEdge:
      'hem | hemline | bottom hem | bottom | bottoms | bottom width | hem width | bottom edge | width at hem | width at bottom | bottom band | ribbed hem | bottom opening | hem opening | across hem | across the hem | across bottom | across the bottom | welt | hem edge | btm | width of hem | bottom of hem | around hem | lowest layer | bottom layer | lowest tier | bottom tier | lowest frill | bottom frill | around the hem | around bottom | around the bottom | across at hem | across the bottom hem | bottom rib | ribbed welt | waist rib',
    bicep:
      'bicep | biceps | upper arm | arm width | sleeve width | upper sleeve | upper sleeve width | sleeve circumference | arm circumference | upperarm | bicep width | arm girth | around the arm | across the arm | arm opening width | width of sleeve | around upper arm | around bicep | around biceps | around sleeve | around the sleeve | upper arms | arm circumference at bicep | sleeve at bicep | sleeve at widest | sleeve width at top | top of arm | upper arm around | round upper arm | top of sleeve width',
    cuff: 'sleeve cuff | wrist | sleeve opening | cuff opening sleeve | wrist opening | wrist cuff | sleeve hem | sleeve end | end of sleeve | wrists | around the wrist | round the wrist | sleeve at wrist | across wrist | across the wrist | width of sleeve end | sleeve bottom | bottom of sleeve | sleeve cuffs',
    cuffEdge:
      'cuff | bell end | bell ends | sleeve bell | bell of sleeve | bell of the sleeve | cuff width | cuff opening | cuff circumference | cuffs width',
    neck: 'neck | collar size | neck size | neck circumference | collar circumference | neck opening | neckline circumference | neck measurement | around the neck | around neck | neck girth | neck hole circumference | neck around | round the neck | collar around | around collar | collar button to buttonhole | neckband',
    'neck weak': 'collar | button to buttonhole | button to button hole | button to hole',
    thigh:
      'thigh | upper thigh | thigh width | upper leg | top of leg | top of thigh | thigh opening | thighs | leg at crotch | thight | thai | upper thighs | across thigh | across the thigh | top thigh | widest part of thigh | thigh at crotch | top of the leg | top of the thigh | leg at top | widest part of leg | around thighs | top leg',
    legWidth: 'leg width | width of leg | width of legs | width of the leg | legs width',
    'thigh around': 'thigh circumference | around the thigh | around thigh',
    knee: 'knee | knee width | at the knee | across knee | across the knee | width at knee | width at knees',
    calf: 'calf | calf width | calves | calf circumference',
    legOpening:
      'leg opening | leg openings | leg hem | ankle opening | ankle | ankle width | leg bottom | leg cuff | bottom leg opening | bottom of leg | bottom leg | leg hem width | hem leg | hem opening leg | trouser hem | lo | l o | bottom leg width | leg ends | leg bottoms | bottom cuff | cuffs of leg | opening | bell bottom | leg openning | legs opening | leg open | across leg opening | bells | width at ankle | flare | flares width | leg end | leg opening width | hem opening of leg | width at cuff | ankle hem | width at leg hem | leg bottom width | trouser bottoms | bottoms of legs | ankle cuff | leg hole | leg holes | leg width at hem | leg width at bottom | hem of leg | hem of legs | across leg hem | bottom of leg opening | bell | bell at hem | bell opening | bell hem',
    elbow: 'elbow | elbow width',
    underbust: 'underbust | under bust | under the bust | ribcage | rib cage | below bust | empire waist | empire line',
    armhole:
      'armhole | arm hole | armscye | arm opening | armholes | arm holes | scye | arm hole opening | armhole opening | armhole circumference | armhole depth',
    shoulderWidth:
      'shoulder to shoulder | shoulder | shoulders | shoulder width | shoulder seam to shoulder seam | shoulder seam to seam | s2s | sts | across shoulder | across the shoulder | across shoulders | across the shoulders | shoulder across | shoulders across | shoulder span | shoulder breadth | shoulder 2 shoulder | shldr | shldrs | shoulder seam to shoulder | shoulder seams | seam to seam shoulders | sholder | sholders | shoulders seam to seam | shoulder seam | shoulder point to point | point to point | yoke | cross shoulder | back of shoulders | shlders | shouldr | shulders | across shoulder seams | shoulder seams across | from shoulder to shoulder | shoulder point to shoulder point | shoulder to shoulder seam | back shoulder width | width across shoulders | width at shoulders | width of shoulders | shoulder tip to shoulder tip | shdr | shdrs',
    sleeveLength:
      'sleeve | sleeve length | sleeve bracelet | sleeves bracelet | slv bracelet | sleeve three quarter | sleeves three quarter | sleeve 3 4 | sleeves 3 4 | slv 3 4 | sleeve elbow length | overarm | over arm | sleeve overarm | arm length | arm | arms | length of sleeve | sleeves length | sleeve lenght | sleve | outer sleeve | sleeve outseam | shoulder to cuff | shoulder to wrist | shoulder to end of sleeve | long sleeve length | top of sleeve | outside sleeve | sleave | sleeves measure | sleeve seam | outer arm | s2c | outside arm | slv | slvs | slv length | slv len | sleeve len | sleves | sleeve lgth | sleeve measures | arm seam | sleeve outer | outside of sleeve | sleeve from shoulder seam | sleeve from shoulder | sleeves from shoulder | sleeve shoulder to cuff | outer sleeve length | sleeves from the shoulder | sleeve crown to wrist | sleeve crown to cuff | crown to cuff | sleeve head to cuff | head of sleeve to cuff | crown of sleeve to cuff | top of shoulder to cuff',
    'sleeveLength weak':
      'long sleeve | short sleeve | long sleeves | short sleeves | 3 4 sleeve | 3 4 sleeves | three quarter sleeve | three quarter sleeves | bracelet sleeve | bracelet sleeves | elbow sleeves | cap sleeve | cap sleeves | bell sleeve | bell sleeves | puff sleeve | puff sleeves | bishop sleeves | balloon sleeves | half sleeve | half sleeves',
    sleeveFromCentreBack:
      'center back to cuff | centre back to cuff | middle of collar to cuff | raglan sleeve length | raglan sleeve | center back sleeve | centre back sleeve | cb to cuff | center neck to cuff | raglan | c2c | center of back to cuff | centre of back to cuff | dress shirt sleeve',
    sleeveUnderarm:
      'inner sleeve | inside sleeve | sleeve inseam | under sleeve | undersleeve | underarm sleeve | underarm sleeve length | underarm to cuff | pit to cuff | armpit to cuff | p2c | ptc | pit to sleeve | armpit to sleeve | pit to wrist | armpit to wrist | sleeve underarm | inner arm | inseam sleeve | inside arm | underarm length | under arm length | inner sleeve length | sleeve inner | sleeve inside | under arm sleeve | sleeve pit to cuff | pit to end of sleeve | underarm seam sleeve | inner sleeve seam | inside sleeve length | sleeve under | underarm seam | pit to sleeve end | armpit to end of sleeve | inside sleeve seam | under arm to cuff | underarm to wrist | inner slv | inside of sleeve | inside of arm | under slv | sleeve inner seam | inner sleeves | underarm of sleeve | sleeve under arm | sleeves underarm | sleeve undearm | undersleeve length | under the sleeve | sleeve along the underneath | sleeve along underneath | sleeve underneath | sleeve along the underside | sleeve underside | underside of sleeve | underneath of sleeve | sleeve along the under seam | sleeve along the inside | sleeve along inside | sleeve on the underside | sleeve on the inside | inside seam of sleeve',
    length:
      'length | long | length size | lenght | lengh | lgth | total length | overall length | full length measurement | length overall | lenth | length total | shoulder to hem length | len | lnth | leingth | back length | length back | front length | length front | full length total | top to bottom | top to hem | top to bottom length | overall | body length | length down back | down the back | body | lengths | length top to bottom | garment length | entire length | lng | leng | full length from shoulder | total lgth | drop length | longest length | down back | down centre back | down center back | down the centre back | down the center back | down front | whole length | finished length | length in all',
    'length weak': 'full length | drops | hangs',
    bodyLength:
      'nape to hem | collar to hem | shoulder to hem | shoulder to bottom | collar to bottom | neck to hem | top of shoulder to hem | coat length | jacket length | shirt length | dress length | top length | hps to hem | hsp | hps length | center back length | centre back length | cb length | torso length shirt | body length | bottom of collar to hem | boc | collar to tail | top of collar to hem | top of shoulder to bottom | shoulder down | blouse length | jumper length | sweater length | strap to hem | top of strap to hem | bust to hem total | bottom of collar to bottom hem | back collar to hem | tee length | back of collar to hem | nape down | collar seam down | collar down | back collar down | neck seam down | shoulder seam to hem | from shoulder to hem | back length from nape | back neck to hem | length from nape | length from collar | length from shoulder | length from shoulders | length from neck | hsp to hem | cb neck to hem',
    skirtLength:
      'skirt length | waist to hem | length of skirt | waistband to hem | waist down | waist to bottom | top of waist to hem | skirt part | skirt portion | skirt section | skirt alone | skirt only | skirt part only | skirt from waist | skirt measures',
    napeToWaist:
      'nape to waist | waist length | back waist length | back waist | bodice length | bodice | shoulder to waist | neck to waist | collar to waist | shoulder to waist seam | front waist length | length to waist | waist length back | back neck to waist | neck to waist seam | back neck to waist seam | collar to waist seam | shoulder to the waist | shoulder to waistline | nape to waist seam',
    backWidth:
      'back width | across back | across the back | width of back | cross back | back across | x back | across upper back | yoke width | upper back width | back width across shoulders | width across back | width across the back | across back width | back across shoulder blades | across shoulder blades | across the shoulder blades | across the back between sleeve seams | across the back between the sleeve seams | between sleeve seams | between the sleeve seams | across the back between armholes | across back between armholes | across the back sleeve seam to sleeve seam | sleeve seam to sleeve seam | back sleeve seam to sleeve seam | armhole to armhole across back | between armhole seams',
    inseam:
      'inseam | inside leg | in seam | inner leg | inseam length | inner seam | inside leg length | inleg | insideleg | inside seam | leg inseam | inside leg seam | insean | inner leg length | crotch to hem | crotch to bottom | crotch to ankle | inner leg seam | inside legs | insteam | insem | inseem | in-seem | inside measurement leg | inside leg measures | inside leg from crotch | inside leg measurement | inner leg measurement | inseem length | inside of leg | inside the leg | crotch to cuff',
    'outseam weak': 'outside',
    'inseam weak': 'leg | inside | inner',
    legLength: 'leg length | length of leg | legs | leg lenght',
    outseam:
      'outseam | outside leg | outer leg | out seam | outer seam | outside seam | side seam | outside leg length | waist to ankle | outter seam | outerseam | outleg | outside length | waist to floor | outer leg length | trouser length | pant length | pants length | waist to cuff | outside leg seam | full leg length',
    rise: 'rise | crotch rise | rise length',
    'rise weak':
      'high rise | mid rise | low rise | high-waisted rise | highrise | midrise | lowrise | high waist rise | super high rise | medium rise',
    frontRise:
      'front rise | rise front | crotch to waist | crotch to waistband | waist to crotch | front crotch | crotch seam to waist | crotch depth | rise in front | waistband to crotch | f rise | crotch to top of waist | front rise length | fr | crotch to top of waistband | crotch to top of the waistband | crotch to button | top of waist to crotch | top of waistband to crotch | top of the waistband to crotch | top of the waistband to the crotch | top of waistband to the crotch | waistband to the crotch | crotch seam to top',
    backRise: 'back rise | rise back | rear rise | rise in back | back crotch | b rise | back rise length | seat rise | br | rise at back',
    crotchLength:
      'total rise | crotch length | full rise | front to back rise | crotch front to back | crotch seam front to back | front to back crotch | waist to waist through crotch | full crotch',
    strap: 'strap length | straps length | shoulder strap | strap | length of straps | length of strap | shoulder straps',
    torsoLength: 'torso | torso length | shoulder to crotch | trunk | torso girth | strap to crotch',
    width: 'width | wide | breadth | widest | widest point | widest part | body width',
    'topEdge around': 'round the top | around the top | round top | around top',
    topEdge: 'top edge | across top | across the top'
  },
  landmarks: {
    shoulder:
      'shoulder | shoulder seam | top of shoulder | high point shoulder | hps | shoulder point | strap | straps | top of strap | shoulders | top of the shoulder | shoulder strap | top of straps | shoulder top | tip of shoulder | shoulder tip | edge of shoulder | shoulder edge | top of shoulder seam | high shoulder point | shoulder at neck | highest point of shoulder | strap top | top of the straps | strap seam | shoulder line',
    neck: 'collar | neck | nape | neckline | base of neck | base of collar | bottom of collar | center back | centre back | under collar | top of collar | back neck | neck seam | back of neck | collar seam | nape of neck | base of the collar | bottom of the collar | back of collar | middle of back | neck hole | centre back of neck | center back of neck | centre back neck | center back neck | back of the neck | nape of the neck | base of the neck | base of collar at back | cb neck | cb | collar band | neckband | under the collar | below the collar | below collar | just below the collar | just under the collar | just below collar | below the neckband | underside of collar | bottom of neckband',
    armpit: 'armpit | pit | underarm | under arm | arm pit | armhole | arm hole | armpits | pits | the pit | pit seam | underarm seam',
    waist:
      'waist | waistband | waist band | top of waistband | top of the waistband | waistline | top of waist | top of the waist | waist seam',
    hip: 'hip',
    crotch: 'crotch | crotch seam | fork | groin | crutch | gusset',
    knee: 'knee',
    hem: 'hem | bottom | bottom of the leg | bottom of the hem | bottom of the skirt | bottom of the dress | bottom hem | hemline | end | tail | floor | bottom of skirt | bottom edge | bottom of leg | bottom of hem | ankle | ends | bottom of dress | bottom seam | points | the floor | longest point | floor hem | floor length hem | hem at the floor | front point | bottom of the welt | bottom of jacket | bottom of coat | bottom of shirt | bottom of the back | back hem | front hem | very bottom',
    cuff: 'cuff | wrist | end of sleeve | sleeve end | sleeve hem | sleeve cuff | edge of cuff | end of cuff | sleeve | edge of sleeve | sleeves | cuff end | end of the sleeve | end of the cuff | end of arm | bottom of sleeve | bottom of cuff | sleeve edge | cuff edge | wrist edge',
    elbow: 'elbow',
    bust: 'bust | chest | bustline | underbust | under bust | under the bust | bust seam | empire seam',
    top: 'top'
  },
  basis: {
    flat: 'flat | laid flat | laying flat | lying flat | lay flat | lays flat | layed flat | laid out flat | lying down | flat lay | flatlay | measured flat | one side | side to side | across | straight across | seam to seam | edge to edge | half | one way | on one side | single side | single layer | one way across | not doubled | flat across | half circumference | laying down | laid down | from side to side | taken flat | when flat | held flat | front only | across front | across the front | measured across | laid on a flat surface | on a flat surface | on flat surface | tip to tip | width ways | widthways | pre doubled | before doubling | undoubled | accross | straight accross | acros',
    around:
      'around | round | circumference | all around | all round | all the way around | all the way round | total circumference | in total | circ | full circumference | girth around | whole way around | in circumference | total | around total | when doubled | in the round | girth | full circ | circumfrence | circumferance',
    doubled: 'doubled | x2 | x 2 | 2x | times two | times 2',
    double:
      'double | please double | to be doubled | must be doubled | multiply by 2 | multiply by two | double for | double up | double it | double these | double measurement | just double'
  },
  words: {
    heading:
      'measurements | measurement | measurments | measurement are | dimensions | sizing | sizes | meas | measures | specs | approx measurements | approximate measurements | garment measurements | actual measurements | measurements are | my measurements of it | size guide | measuring | measured | meaurements | mesurements | measurments are | item measurements | taken',
    detail:
      'lapel | lapels | lapel width | collar height | collar width | collar length | collar depth | collar point | collar points | collar spread | neckline depth | neckline drop | neck drop | neck depth | neck width | v neck depth | pocket | pockets | pocket depth | pocket width | pocket opening | slit | slits | slit length | slit height | vent | vents | vent length | back vent | zip | zipper | zip length | zipper length | zippers | fly | belt | belts | belt loop | belt loops | sash | tie | ties | bow | ruffle | ruffles | frill | fringe | fringing | fringe length | lace | trim | trimming | button | buttons | patch | logo | embroidery | appliqué | print | graphic | hood | hood height | hood length | train | train length | waistband height | waist band height | height of waistband | waistband depth | waistband width tall | cuff height | cuff depth | cuff length | turn ups | turn up | turnup | turn-ups | turn-up | hem depth | ribbing | rib | strap drop | handle | handle drop | strap width | straps width | width of straps | elastic width | waist to hip | bust to waist | shoulder pad | shoulder pads | heel | heels | heel height | platform | pleat | pleats | dart | godet | panel | tier | flounce | yoke depth | gap | drawstring | drawstring length | pit to hem | armpit to hem | pit to bottom | armpit to bottom | underarm to hem | underarm to bottom | side length | underarm to waist | armpit to waist | pit to waist | fur collar | fur trim | hem from floor | drop | neckline to hem front | bust to hem | apron | flap | placket | loop | loops | cuffs turned | waist sash | stripe | stripes | check size | checks | motif | gauge | scarf | cuffs fold | hem fold | pile height | shoulder drop | neck tie | slip | petticoat length | cuff turn up | repeat | thick | thickness | depth | deep | welt pocket | welt pockets | jetted pockets | sleeve drop | bib | bib height | bib width | beading | yoke height | ticket pocket | spaghetti straps | boning | busk | medallion | crest | badge | peplum | peplum length | ruching | epaulettes | cummerbund | cuff slit | placket length | rib height | welt depth | welt height | waist rib height | belt length | belt width | back strap | back straps | sash length | tie belt | hidden pocket | cargo pocket | keyhole | keyhole back | collar tips | collar wings | deep hem | depth of hem | hem is deep | hem deep | turned back cuff | turn back cuff | turned back cuffs | turn back cuffs | cuffs are turned back | cuffs turned back | cuffs turn back | cuff turns back | cuff turned back | cuffs folded back | cuff folded back | cuffs are folded back | cuffs fold back | cuff folds back | folded back cuff | folded back cuffs | fold back cuff | fold back cuffs | cuffs folded up | cuffs folded over | cuffs turn up | turned up cuff | turned up cuffs | high hip | upper hip | arm slit | arm slits | sleeve from side of neck | sleeves from the side of neck | sleeve from the side of the neck | sleeves from side of neck | sleeve from neck point | neck edge to cuff | neck edge to end of sleeve | neckline to cuff | sleeve from neck edge | sleeve from side neck | side of neck to cuff | side neck to cuff | modesty panel | front panel | back panel | neck band height | neckband height | band height | neck band depth | lining | lining hem | lining length | hem of lining | outer tulle | wingspan | cuff zip | cuff zips | name tape',
    thing:
      'bag | handbag | hand bag | tote | purse | clutch | backpack | rucksack | suitcase | laptop | phone | shoe | shoes | boot | boots | sandals | trainers | sneakers | heels | hat | cap | beanie | shaft | shaft height | sole | insole | outsole | earrings | necklace | bracelet | ring | brooch | watch | fabric | material piece | remnant | fabric piece | curtain | curtains | cushion | blanket | rug | throw | duvet | bedding | towel | tablecloth | pillow | poster | frame | mirror | wallet | umbrella | glasses | sunglasses | socks | hanger | screen | tv | monitor | bottle | box frame | book | doll | teddy | brim | crown',
    height: 'tall | height | heights | in height | feet tall | foot tall',
    model:
      "model | models | model is | model's | mannequin | manequin | mannequins | dress form | dressform | dummy | tailor's dummy | i am | i'm | im | i wear | i usually wear | she is | she's | she wears | he is | he's | he wears | my height | her height | his height | my measurements | model wears | model measures | model measurements | wearer | my waist | my bust | my hips | my chest | my wife is | my husband is | my daughter is | body measurements | on me | my body | model info | model stats | my model | for reference i | i measure | our model | shown on | modelled on | modeled on | photographed on | the form measures | form is | form measures | on a 5 | my daughter | my son | her measurements | his measurements | someone | modelled by | modeled by | my niece | my sister | my friend | my mum | my mother | dress form set | our stand | my stand | the stand | form set to | he has a | he was | he has an | i have a | i've got a | he's got a | my husband has | my boyfriend has | my partner has | my wife has | my girlfriend has",
    fits: "fits up to | fit up to | would fit | comfy for | comfortable for | will fit | should fit | could fit | can fit | may fit | might fit | would best fit | will best fit | should best fit | best fits | best fit | fits best | best for | best suited | best suits | best on | suits | suit a | would suit | suitable for | ideal for | perfect for | recommended for | recommend for | recommend | recommended | i recommend | i'd recommend | i would recommend | to fit | fits a | fits an | fit a | fits like | fits like a | fits someone | fits sizes | fits size | fits waist | fits bust | fits chest | fits hips | fits hip | to suit | designed for | made to fit | made for | meant for | intended for | fits approx | fits approximately | fits about | fits around | fits between | fits from | great for | good for | works for | work for | would work | would work for | will work | for a | for someone | for those | for bust | for waist | comfortably fits | fits comfortably | fits comfortably up to | fits most | would probably fit | would likely fit | would say | i'd say | estimate | estimated to fit | estimated size | fits me | fits my | to fit bust | to fit waist | to fit chest | will stretch to fit | fits true | accommodate | accommodates | bust up to | waist up to | hips up to | fits hips up to | not exceed | shouldn't exceed | no larger than | no bigger than | no more than | or smaller | maximum | max | max size | fits bust up to | would suit up to | suit up to | suit someone | fit someone | good up to | made for my | fits chests | fits a chest | made to measure for | for my | equates to | closest to a",
    parcel:
      'parcel | package | packet | packaging | postage | shipping | shipped | ships | box | boxed | envelope | posted | mailer | mailing bag | jiffy bag | storage bag',
    elsewhere:
      'another listing | other listing | separate listing | separate listings | listed separately | sold separately | for sale separately | selling separately | available separately | my other listings | own listing | separate auction',
    position:
      'below | above | under | underneath | beneath | down from | up from | away from | away | off the | higher than | lower than | past | over the knee | short of | apart | inside of | from edge | near | longer than | shorter than | longer in | longer at | shorter in | shorter at | higher | lower',
    from: 'from | down',
    letDown:
      'to let down | let down | hem that could be let down | hem that can be let down | hem which could be let down | hem which can be let down | hem to let down | hem allowance | hem to spare | hem turned up | can be let down | turned up inside | to lengthen | for lengthening | of hem | of hem allowance | extra hem | of fabric in the hem | folded up inside | hem to drop | hem available | hem inside | extra length in the hem | to come down | left in the hem | in the hem to let down | fabric to let down | to let down in the hem | spare in the hem | let down hem | extra in the hem | available to let down | extra fabric in the hem | of material in the hem | hem that could come down | hem that can come down | hem which could come down | hem you could let down | hem if you want to let it down | hem if you need to let it down | hem to take down | hem left to let down | of hem left to let down | of hem left | left to let down | hem that could drop | of hem to let down | spare hem | of spare hem | left in hem | hem left | to take down | generous hem allowance | hem allowance inside | turned up in the hem to let down | hem to play with | deep hem to let down | inch hem allowance | allowance in the hem | of allowance in the hem | fabric left in the hem | could be let down | in the hem that could be let down | more turned under | turned under | hem could come down | hem can come down | hem can be let down | hem could be let down | hem lets down',
    letOut:
      'to let out | let out | taken out | could be taken out | can be taken out | be taken out | can be let out | seam to let out | extra fabric in the seam | extra fabric in the seams | room to let out | of room to let out | to be let out | fabric to let out | extra in the waist | extra in the seams | spare in the seam | spare in the seams | to take out | available to let out | of extra fabric in the waist | left to let out | excess fabric in the seams | material to let out | left in the centre back | left in the center back | left in the back seam | left in the centre back seam | left in the center back seam | left in the seam | left in the seams | left in the side seams | left in the seat seam | spare in the centre back | spare in the back seam | extra in the back seam | extra in the centre back | of cloth in the back seam | of fabric in the back seam | of cloth in the centre back | in the seams to let out | of seam to let out | spare in the waist | inside to let out | to come out | of inlay | inlay | left in the back | spare in the back | could be let out',
    seamAllowance: 'seam allowance | seam allowances',
    relaxed:
      'relaxed | unstretched | un stretched | not stretched | at rest | resting | without stretch | without stretching | elastic relaxed | before stretching | before stretch | un-stretched | non stretched | when relaxed | unstreched | ribbing at rest | rib at rest | ribbing relaxed | rib relaxed | ribbing unstretched | rib unstretched | as it lies | lying relaxed | pulls not',
    stretched:
      'stretched | stretchy to | stretchy up to | pulls to | pulls out to | eases to | eases out to | stretches to | stretched out | when stretched | fully stretched | fully extended | extended | stretching to | stretch to | stretches out to | will stretch to | can stretch to | stretches up to | stretch up to | expands to | at full stretch | max stretch | extends to | elastic stretched | up to when stretched | stretching up to | gives to | streched | stretched fully | with stretch | comfortably stretches to | stretches comfortably to | has stretch to | can be stretched to | streches to | stretch out to | at max | pulled out | pulled | pulls to | pulls out to | pulled to | when pulled | when you pull it out | when you pull it right out | when pulled right out | pulled right out | eases out to | eases to | up to stretched',
    cuffed:
      'cuffed | rolled | rolled up | turned up | when cuffed | when rolled | folded up | as shown cuffed | with cuff | with cuffs | with turn ups | as cuffed | as rolled | with turn up | to cuff fold | folded cuff | when folded | cuffs folded | rolled once | worn rolled | with the cuff folded back | with the cuffs folded back | with cuffs folded back | with cuff folded back | with the cuff turned back | with the cuffs turned back | with cuffs turned back | with cuff turned back | with the cuff folded | with the cuffs folded | with cuffs folded | with the cuff turned up | with the cuffs turned up | with cuffs turned up | turn the cuffs back | turn the cuff back | turn cuffs back | turn back the cuffs | turn the cuffs up | turn up the cuffs | fold the cuffs back | fold the cuff back | fold back the cuffs | fold cuffs back | cuffs turned back once | if turned back | when turned back | when folded back',
    uncuffed:
      'uncuffed | unrolled | un cuffed | un-cuffed | turned down | without cuff | without the cuff | unfolded | not cuffed | when uncuffed | rolled down | un rolled | cuffs down | let down fully | without cuffs | unroll | if you unroll | if unrolled | uncuff | if you uncuff | rolled out | with cuffs down | with the cuffs down | cuff down | unfold | if you unfold | with turn ups down | with cuff undone | without turn ups | cuffs undone | cuff undone | if let down | not rolled | not rolled up | not turned up | not folded | without rolling',
    front: 'front | in front | in the front | at front | at the front | on the front | the front',
    back: 'back | in back | in the back | at back | at the back | on the back | rear',
    inner: 'underarm | under arm | inner | inside | armpit | under the arm',
    measures:
      'measures | measure | measuring | measured | measured at | comes in at | comes up | coming in at | measurement is | comes out | come to | comes to | coming to | came to | come in at | came in at | come up at | comes up at | come out at | comes out at | came out at | works out at | work out at | clocks in at | clock in at | lies at | lie at | lying at | come up | sit at | sits at | i get | i make it | tapes at | taped at | goes around for | goes round for | go around for | goes around | goes round | runs | run to | measured up at',
    light:
      'the | quite | rather | fairly | a | an | is | are | was | at | of | in | its | it | and | on | for | with | to | about | approx | approximately | aprox | appx | around about | approximate | circa | ca | roughly | just | just over | just under | exactly | has | have | from | measuring | by | both | each | these | this | size | measurement | max | min | i | taken | actual | or so | so | they | anything | will do | does | adjust | adjusts | adjustable | dropped | three quarter | three quarter length | bracelet length | elbow length | nearly | almost | only | your | apx | aproximately | apprx | measure | total | overall | when | as | up | outer | widest | part | point | center | centre | middle | side | edge | seam | of the | all | then | seams | straight | fully | top | bottom | unworn | along | them | inch | inches | length | new | good | total of | measurment | comes | out',
    to: 'to | out to | down to | till | til | until | thru | through to | all the way to | up to | towards',
    between: 'between',
    and: 'and',
    or: 'or | aka | i e | ie | otherwise | equals | about',
    size: 'size | sz | sized | tag | tagged | tag says | tag reads | tag size | tagged size | label | labelled | labeled | label says | label size | labelled as | marked | marked as | marked size | marked a | size on label | size on tag | size is | size label | label reads | says | states | stated size | recorded size | waist size | tagged as | tagged a | size marked | sizing | a size | in a size | in size | size tag | sizes | tag states | size fits | labelled size | modern size | modern | vintage size | roughly a size | listed as | listed as a | marked on label | brand size | tag marked | tagged waist | labelled waist | marked waist | size waist | label waist',
    region:
      'uk | us | usa | eu | eur | euro | it | ita | fr | de | au | aus | jp | jpn | ger | italian | french | european | british | american | german | int',
    letterSize:
      'xxs | xs | s | m | l | xl | xxl | xxxl | 2xl | 3xl | 4xl | 5xl | small | medium | large | x large | extra large | x small | extra small | one size | os | osfa | petite | s m | m l | xs s | l xl | large tall | xlarge | xxlarge | xsmall | free size',
    age: 'age | aged | ages',
    years: 'years | yrs | yr | year | months | mths | mth | month | yo | y o | year old | years old | t',
    including:
      'including | incl | include | includes | excluding | excl | exclude | excluding the | including the | not including | plus | inc | inclusive of | minus | apart from | except | without | w o',
    all: 'all | everything | every | measurements',
    not: "no | not | non | without | free of | free from | free | isn't | doesn't | never | none | zero | nor | any | hasn't | don't | cannot | can't | wasn't | haven't | lacks | lacking",
    nothing:
      "hips free | hip free | hips full | hips open | hips are free | hips are full | hips are open | free hips | waist open | waist free | waist is open | i'm too | im too | i am too | she's too | he's too | high rise | mid rise | low rise | high waist | high waisted | high-waisted | low waist | low waisted | natural waistline | drop waist | dropped waist | knee length | knee-length | hip length | ankle length | floor length | waist length jacket | full length | mid length | midi length | maxi length | mini length | tea length | calf length | mid calf | thigh length | mid thigh | thigh high | knee high | over the knee | cropped length | 3 4 length | 3 4 sleeve | 3 4 sleeves | 3 4 length sleeve | 3 4 length sleeves | 7 8 length | 1 4 zip | 1 2 zip | 1 2 sleeve | 3 4 zip | half zip | quarter zip | short sleeved | long sleeved | sleeveless | cap sleeve | cap sleeves | bell sleeve | puff sleeve | puff sleeves | balloon sleeve | balloon sleeves | bishop sleeve | bishop sleeves | kimono sleeve | dolman sleeve | batwing sleeve | flutter sleeve | angel sleeve | roll neck | polo neck | crew neck | crewneck | v neck | v-neck | round neck | scoop neck | boat neck | turtle neck | turtleneck | mock neck | high neck | cowl neck | halter neck | halterneck | sweetheart neckline | square neck | neck label | neck tag | shirt collar | peter pan collar | button down collar | grandad collar | mandarin collar | cuban collar | camp collar | revere collar | shawl collar | spread collar | pussy bow | chest pocket | breast pocket | hip pocket | hip pockets | hip hop | back pocket | back pockets | front pocket | front pockets | side pockets | side pocket | patch pockets | cargo pockets | chest pockets | breast pockets | jacket pocket | inside pocket | inner pocket | inside pockets | inner pockets | long line | longline | wide leg | wide-leg | straight leg | skinny leg | slim leg | tapered leg | bootleg | bell bottoms | single breasted | double breasted | single-breasted | double-breasted | belted waist | tie waist | cinched waist | elastic waist | elasticated waist | elastic waistband | elasticated waistband | drawstring waist | empire waistline | no waist | baby doll | babydoll | baby tee | baby shower | girls night | boy fit | trade mark | shoulder padding | padded shoulder | padded shoulders | cold shoulder | off the shoulder | off shoulder | one shoulder | drop shoulder | dropped shoulder | back in stock | bottom line | long time | how long | as long as | no longer | long lasting | before long | all day long | lifelong | long live | long john | long johns | long lengths | long story | along | worldwide | wide range | wide variety | world wide | nation wide | hem line original | raw hem | frayed hem | ruffle hem | ruffled hem | curved hem | scalloped hem | asymmetric hem | original hem | lettuce hem | dip hem | step hem | hem tape | front hem | pinched waist | elastic hem | elastic cuffs | elastic cuff | ribbed cuffs | ribbed cuff | button cuffs | button cuff | french cuffs | french cuff | double cuff | double cuffs | barrel cuff | barrel cuffs | ribbed cuffs and hem | cuffs and hem | cuffs and waist | collar and cuffs | cuff buttons | raised waist | at the waist tie | front zip | full zip | waist tie | hem stitch | sleeve head | sleeve heads | long weekend | bust darts | waist darts | bust dart | waist dart | short length | regular length | long length | petite length | waist adjusters | waist adjuster | side adjusters | waist tabs | shoulder tabs | back yoke | front yoke | western yoke | knee patches | elbow patches | elbow patch | knee patch | knee pads | elbow pads | waist belt | waist trainer | body warmer | bodywarmer | full body | body con | bodycon | body shape | body type | top condition | top quality | top notch | tank top | crop top | top button | top stitching | topstitching | top pocket | top drawer | inside label | inside tag | inner label | inner lining | outer shell | inner pocket label | side zip | back zip | size up | size down | true to size | large pockets | small mark on | flat front | flat fronted | flat felled | flat-felled | flat knit | flat shipping | flat rate | half price | half way | half term | across the world | across town | all round good | year round | all year round | round collar | round the clock | bottoms up | jogging bottoms | bikini bottoms | pyjama bottoms | pajama bottoms | tracksuit bottoms | jogger bottoms | track bottoms | boxy fit | under garment | undergarment | total look | in total contrast | total bargain | leg warmers | tab waist | armhole free | arm candy | waist seam | knee hole | knee rips | neck scarf | sleeve detail | length of time | at length | waist detail | hip huggers | waist cincher | seat of the pants | front seat | back seat | relaxed fit | relaxed style | relaxed leg | total weight | bracelet length | bracelet sleeve | bracelet sleeves | elbow length | elbow length sleeves | elbow sleeves | wrist length | three quarter length | three quarter sleeve | three quarter sleeves | 3 4 arms | fingertip length | ballet length | trumpet sleeve | trumpet sleeves | raglan sleeves | set in sleeve | set in sleeves | leg of mutton sleeves | juliet sleeves | tie neck | funnel neck | mock turtleneck | wing collar | sailor collar | bertha collar | notch collar | notched collar | pointed collar | dagger collar | corduroy collar | velvet collar | leather collar | wide collar | contrast collar | zip neck | neck bow | waist sash tie | pleated front | flat front trousers | drop hem | hem line | chest size label | up to date | broken in | well broken in | broke in",
    otherUnit:
      'pockets | pocket | buttons | button | piece | pieces | pcs | pc | pair | pairs | set | pack | days | day | hours | hrs | minutes | mins | weeks | week | years | year | yrs | yr | months | month | percent | per cent | degrees | degree | deg | c | f | kg | kgs | g | gr | grams | gram | lb | lbs | pound | pounds | oz | ounce | ounces | gsm | denier | den | ml | litre | litres | fill | watching | watchers | sold | available | items | item | photos | pictures | pics | times | time | stars | star | out of | belt loops | loops | zips | layers | tiers | pleats | darts | vents | st | nd | rd | th | pm | am | p | gbp | usd | eur | euros | euro | dollars | quid | bucks | k | mah | gb | ply | wale | colours | colors | others | more | left | owner | owners | previous | wear | wears | washes | wash | people | likes | followers | reviews | bids | bid | offers | ties | way | in 1 | in one | small holes | holes | hole | stains | marks | spots | moth holes | sizes | or more | for | century | th century | snaps | studs | poppers | hooks | straps | panels | rows | row | sided | thread | tog | quality | plus | grade',
    partLined:
      'half lined | half lining | part lined | part lining | partially lined | partly lined | partial lining | quarter lined | semi lined | three quarter lined | 3 4 lined | 1 2 lined | 1 4 lined | body lined | lined body | bodice lined | lined bodice | bodice is lined | skirt lined | skirt is lined | lined to the knee | lined to knee | lined to the hip | lined front | lined at front | front is lined | lined sleeves | sleeves lined | sleeves are lined | lined hood | hood is lined | lined collar | lined pockets | lining is half | half the lining | sleeves unlined | unlined sleeves | sleeves are unlined | sleeves not lined | lined except the sleeves | lined except sleeves | only the bodice is lined | only the skirt is lined | upper back lined | yoke lined',
    lining:
      'lining | lined | inner | interior | padding | filling | fill | wadding | trim | contrast | collar | cuffs | pocket lining | pockets | insert | lace | ribbing | rib | secondary | facing | backing | sleeve lining | hood | trimming | piping | embroidery',
    retail:
      'rrp | retail | retails | retailed | originally | original price | cost | costs | worth | was | new price | full price | paid | bought for | postage | shipping | delivery | p p | post | over | off | save | savings | value | valued | orders over | deposit | new | retail price | fee | per',
    price:
      'price | would like | hoping for |  ono | obo | or nearest offer | or best offer | o n o | asking | now | for sale | selling for | only | sale | buy it now | priced at | yours for | reduced to | down to | selling at | i want | wanting | after | take | firm | letting it go for | let go for | looking for',
    condition: 'condition | cond | cond.',
    conditionWord:
      'excellent | good | great | very | fair | perfect | mint | used | vintage | worn | pristine | fantastic | lovely | preowned | pre owned | pre loved | preloved | near | like | new | brand | beautiful | superb | amazing | decent | poor | as new | immaculate | wonderful | gently | overall | nearly | fabulous | nice | really | well | secondhand | second hand | exceptional | unworn | deadstock | clean | ok | okay | reasonable | average',
    conditionPhrase:
      'new with tags | brand new with tags | bnwt | nwt | bnwot | nwot | new without tags | like new | as new | never worn | vgc | euc | guc | worn once | dead stock | deadstock | new old stock | unworn | brand new | excellent used condition',
    shell:
      'shell | outer | outer shell | main | main fabric | fabric | outside | self | composition | material | made of | made from | body fabric',
    nightwear:
      'pyjama | pyjamas | pajama | pajamas | pjs | nightdress | nightie | nightgown | sleepsuit | sleepwear | nightwear | babygrow',
    backPockets: 'back pockets | rear pockets | hip pockets | seat pockets',
    apart: 'apart | between | gap | distance',
    mended:
      'mended | repaired | darned | patched | sewn up | stitched up | fixed | been mended | invisibly mended | re sewn | resewn | sewn closed',
    but: 'but | except | apart from | other than | aside from | however | save for',
    imitation: 'faux | imitation | fake | vegan | artificial | mock | look | effect | like | feel | style | coloured | colored | type',
    stretch: 'stretch | stretchy | stretches | give | elasticity',
    half: 'half | halves'
  },
  units: {
    in: 'inch | inches | in | ins | inchs | inche | inces | inchese | inched | incehs | ich | inchss | iches',
    cm: 'cm | cms | centimeter | centimetre | centimeters | centimetres | cm s | centimetre s | cmt | cmts | centimetr | centimenters',
    mm: 'mm | mms | millimeter | millimetre | millimeters | millimetres',
    m: 'm | metre | metres | meter | meters | mtr | mtrs',
    ft: 'ft | foot | feet'
  },
  numbers: {
    one: 1,
    two: 2,
    three: 3,
    four: 4,
    five: 5,
    six: 6,
    seven: 7,
    eight: 8,
    nine: 9,
    ten: 10,
    eleven: 11,
    twelve: 12,
    thirteen: 13,
    fourteen: 14,
    fifteen: 15,
    sixteen: 16,
    seventeen: 17,
    eighteen: 18,
    nineteen: 19,
    twenty: 20,
    thirty: 30,
    forty: 40,
    fifty: 50
  },
  kinds: [
    {
      kind: 'jeans',
      phrases:
        'jeans | jean | denims | denim trousers | denim pants | jeggings | denim jeans | mom jeans | mum jeans | boyfriend jeans | bell bottom jeans | flared jeans | bootcut jeans | skinny jeans'
    },
    {
      kind: 'trousers',
      phrases:
        'trousers | trouser | pants | pant | slacks | chinos | chino | khakis | joggers | jogging bottoms | tracksuit bottoms | track pants | sweatpants | leggings | cords | corduroys | culottes | palazzos | dress pants | flares | bell bottoms | cargos | cargo pants | breeches | jodhpurs | pyjama bottoms | pyjama trousers | pajama pants | pajama bottoms | pyjama pants | ski pants | suit trousers | suit pants | dungaree trousers | pantaloons | capris | capri pants | plus fours | treggings | harem pants | salopettes | jogger | track bottoms | trews | overtrousers | work pants | cargo trousers | pyjamas | pajamas | pjs'
    },
    {
      kind: 'shorts',
      phrases:
        'shorts | bermudas | hot pants | bermuda shorts | short pants | culotte shorts | jorts | swim trunks | trunks | board shorts | skort | denim shorts | jean shorts'
    },
    {
      kind: 'skirt',
      phrases:
        'skirt | skt | miniskirt | kilt | maxi skirt | midi skirt | mini skirt | pencil skirt | circle skirt | denim skirt | jean skirt | sarong skirt | petticoat | tutu | half slip | underskirt'
    },
    {
      kind: 'dress',
      phrases:
        'dress | maxi | gown | frock | sundress | shirt dress | shirtdress | t shirt dress | maxi dress | midi dress | mini dress | shift dress | wrap dress | tea dress | pinafore | pinafore dress | jumper dress | sweater dress | wedding dress | slip dress | coat dress | jacket dress | caftan | kaftan | nightgown | nightdress | nightie | housedress | house dress | blazer dress | knit dress | prairie dress | smock dress | tunic dress | ballgown | cheongsam | qipao | shirtwaist dress | slip | denim dress | muumuu | dressing gown dress | sheath dress | robe dress | dungaree dress | sweatshirt dress | bodycon dress | skater dress | shirtwaist | dirndl'
    },
    {
      kind: 'jumpsuit',
      phrases:
        'jumpsuit | playsuit | romper | overalls | dungarees | boiler suit | boilersuit | coveralls | coverall | flightsuit | flight suit | onesie | catsuit | unitard | all in one | bodysuit | leotard | swimsuit'
    },
    {
      kind: 'shirt',
      phrases:
        'shirt | blouse | button up | button down | button up shirt | button down shirt | dress shirt | oxford shirt | tunic | flannel shirt | flannel | overshirt | shacket | chemise | polo shirt dress shirt | hawaiian shirt | western shirt | denim shirt | kimono top | work shirt | pyjama top | pyjama shirt | pajama top | smock | smock top | button-up | button-down | camp shirt | bowling shirt | peasant blouse | shirt jacket | jean shirt'
    },
    {
      kind: 'knit-top',
      phrases:
        't shirt | tshirt | tee | baby tee | baby tees | tee shirt | t-shirt | top | crop top | tank top | tank | vest top | camisole | cami | polo | polo shirt | polo top | long sleeve top | jersey top | henley | rugby shirt | football shirt | jersey shirt | singlet | bustier | halter top | tube top | bandeau | ringer tee | baseball tee | muscle tee | sports bra | base layer | football jersey | baseball jersey | hockey jersey | rugby top | corset top | crop | ringer | bralette'
    },
    {
      kind: 'jumper',
      phrases:
        'jumper | sweater | pullover | merino crew neck | lambswool crew neck | wool crew neck | cashmere crew neck | merino v neck | lambswool v neck | wool v neck | cashmere v neck | merino roll neck | wool roll neck | cashmere roll neck | wool polo neck | merino polo neck | shetland crew neck | cardigan | cardi | knit jacket | knitted jacket | cardigan jacket | knit | knitwear | sweatshirt | hoodie | hoody | hooded sweatshirt | crewneck sweatshirt | cable knit | turtleneck | roll neck jumper | sweater vest | tank knit | fleece | polo neck | guernsey | twinset | crewneck | quarter zip fleece | jumper knit | knit jumper | knit sweater | sweatshirt top | fisherman jumper | fair isle | wool jumper | turtleneck sweater | jumper top | knitted top | knitted jumper | aran | half zip sweatshirt | zip up hoodie | sweater jacket | hooded top'
    },
    {
      kind: 'jacket',
      phrases:
        'blazer | sport coat | sports coat | sportcoat | sports jacket | sport jacket | suit jacket | tuxedo | tuxedo jacket | dinner jacket | suit | two piece suit | three piece suit | tailcoat | morning coat | tux | suit coat | skirt suit | trouser suit | pant suit | pantsuit | tailored jacket | smoking jacket | hacking jacket | suit blazer | nehru jacket',
      made: { tailored: true }
    },
    {
      kind: 'jacket',
      phrases:
        'jacket | jkt | jckt | jean jacket | denim jacket | leather jacket | biker jacket | bomber jacket | trucker jacket | chore jacket | track jacket | work jacket | suede jacket | harrington jacket | harrington | bolero | field jacket | safari jacket | moto jacket | varsity jacket | letterman jacket | corduroy jacket | cord jacket | utility jacket | flight jacket | chore coat | quilted liner | jean coat | cropped jacket | bomber | biker | trucker | kimono jacket | military jacket | tracksuit top | track top | tracksuit jacket | haori | tweed jacket | velvet jacket | wool jacket | linen jacket | wax jacket | waxed jacket | quilted jacket | padded jacket',
      made: { tailored: false }
    },
    {
      kind: 'coat',
      phrases:
        'coat | overcoat | topcoat | top coat | covert coat | camel coat | trench | trench coat | trenchcoat | parka | anorak | puffer | puffer jacket | down jacket | down coat | raincoat | rain jacket | rain coat | peacoat | pea coat | duffle coat | duffel coat | duster | cape | cloak | poncho | windbreaker | wind breaker | windcheater | waterproof jacket | shell jacket | ski jacket | fleece jacket | mac | mackintosh | fur coat | wool coat | gilet coat | hi vis jacket | high visibility jacket | high visibility work jacket | motorcycle jacket | motorbike jacket | faux fur coat | faux fur jacket | fur jacket | swing coat | opera coat | greatcoat | afghan coat | dressing gown | robe | bathrobe | house coat | housecoat | kimono | car coat | barn coat | barn jacket | sheepskin coat | shearling coat | sheepskin jacket | lab coat | winter jacket | winter coat | snow jacket | insulated jacket | cagoule'
    },
    {
      kind: 'waistcoat',
      phrases:
        'waistcoat | gilet | vest | suit vest | bodywarmer | body warmer | puffer vest | down vest | denim vest | leather vest | wescot | sleeveless jacket | tactical vest'
    },
    {
      kind: 'other',
      phrases:
        'wetsuit | wet suit | corset | overbust corset | underbust corset | steel boned corset | bikini | lingerie | full slip | full length slip | nylon slip | underslip | under slip | vintage slip | bra | knickers | swim shorts bikini | sari | saree'
    }
  ],
  fibres: {
    cotton: 'cotton | pima cotton | organic cotton | egyptian cotton | coton',
    wool: 'wool | lambswool | lamb wool | merino | merino wool | virgin wool | new wool | pure wool | shetland wool | harris wool | worsted wool | woollen | woolen | shetland | woolmix',
    linen: 'linen | flax | irish linen',
    silk: 'silk | pure silk | raw silk | mulberry silk',
    viscose: 'viscose | rayon',
    polyester: 'polyester | poly | recycled polyester | trevira',
    polyamide: 'polyamide | nylon',
    elastane: 'elastane | spandex | lycra | elastan | elastaine',
    acrylic: 'acrylic',
    cashmere: 'cashmere',
    modal: 'modal',
    lyocell: 'lyocell | tencel',
    acetate: 'acetate | triacetate',
    cupro: 'cupro',
    mohair: 'mohair',
    alpaca: 'alpaca | baby alpaca',
    angora: 'angora',
    hemp: 'hemp',
    ramie: 'ramie',
    polyurethane: 'polyurethane',
    metallic: 'lurex | metallic fibre | metallic fiber',
    jute: 'jute',
    bamboo: 'bamboo'
  },
  structures: {
    woven:
      'woven | denim | twill | poplin | tweed | corduroy | cord | gabardine | canvas | flannel | chambray | seersucker | moleskin | oxford cloth | broadcloth | voile | organza',
    knit: 'knit | knitted | jersey | ribbed knit | cable knit | crochet | crocheted | hand knit | hand knitted | fleece | french terry | interlock | sweatshirt fabric | cardigan | knitwear | handknit | handknitted',
    leather: 'leather | suede | nappa | lambskin | sheepskin | shearling | nubuck | real leather | genuine leather | cowhide | pigskin'
  },
  traits: {
    rigid:
      'rigid | raw denim | rigid denim | non stretch | no stretch | zero stretch | selvedge | selvage | non-stretch | without stretch | no give | selvedge denim',
    denim: 'denim | denims | raw denim | rigid denim | selvedge denim | chambray denim | double denim',
    pile: 'corduroy | cord | velvet | velour | velveteen | cords | corduroys | plush | faux fur | needlecord | jumbo cord | chenille',
    nap: 'moleskin | brushed cotton | fleece | brushed wool | flannelette',
    check:
      'check | checked | checks | plaid | tartan | gingham | houndstooth | windowpane | prince of wales check | glen check | dogtooth | glen plaid | checkered | argyle | buffalo check',
    stripe:
      'stripe | striped | stripes | pinstripe | pinstriped | pin stripe | chalk stripe | breton stripe | pin striped | pinstripes | chalkstripe',
    'large-print': 'large print | big print | bold print | oversized print | large floral | large scale print | huge print | large repeat',
    sheer: 'sheer | see through | chiffon | organza | tulle | voile | transparent | semi sheer | georgette | see-through | mesh',
    slippery: 'satin | charmeuse | slippery | sateen satin | satiny',
    fraying: 'bouclé | boucle | loosely woven | frays easily | loose weave | open weave',
    beaded: 'beaded | sequin | sequins | sequinned | sequined | beading | beadwork | beads | rhinestone | rhinestones | embellished',
    pleated: 'pleated | pleats | knife pleats | accordion pleats | box pleats | sunray pleats | plissé | plisse',
    suede: 'suede | nubuck | faux suede',
    vinyl: 'vinyl | pvc | patent | faux leather | pleather | vegan leather | leatherette | pu leather',
    coated: 'coated | waxed | oilskin | rubberised | rubberized | wax cotton | waxed cotton | oilcloth',
    silk: 'silk | pure silk | raw silk | mulberry silk',
    taffeta: 'taffeta'
  },
  made: [
    {
      fact: { fact: 'lined', value: true },
      phrases: 'lined | fully lined | full lining | lining | is lined | satin lining | silk lining | lined throughout'
    },
    {
      fact: { fact: 'lined', value: false },
      phrases: 'unlined | not lined | no lining | without lining | un lined | non lined | without a lining | has no lining'
    },
    {
      fact: { fact: 'shortSleeves', value: true },
      phrases:
        'short sleeve | short sleeves | short sleeved | short-sleeved | short-sleeve | sleeveless | cap sleeve | cap sleeves | capped sleeves | three quarter sleeve | three quarter sleeves | 3 4 sleeve | 3 4 sleeves | 3 4 length sleeve | 3 4 length sleeves | bracelet sleeve | bracelet sleeves | elbow sleeves | elbow length sleeves | half sleeve | half sleeves | three quarter length sleeves'
    },
    {
      fact: { fact: 'elasticWaist', value: true },
      phrases:
        'elastic waist | elasticated waist | elastic waistband | elasticated waistband | elasticised waist | stretch waistband | stretchy waistband | elastic at waist | elastic at the waist | elasticated at the waist | elastic in waist | elastic back waist | elasticated back | shirred waist | elastic back | stretch waist | elasticized waist | elasticised waistband | elasticized waistband | stretchy waist | elastic in the waist | elastic drawstring waist | elasticated drawstring waist | waist is elastic | waist elastic | elastic waisted'
    },
    {
      fact: { fact: 'workingCuffButtons', value: true },
      phrases:
        "working cuffs | surgeon cuffs | surgeon's cuffs | surgeons cuffs | functional cuffs | functioning cuffs | working cuff buttons | functional cuff buttons | functioning cuff buttons | real cuff buttons | working buttonholes | surgeon's cuff | working button cuffs | working sleeve buttons | functional sleeve buttons | functional buttons on cuffs | functional button cuffs | cuffs unbutton | cuff buttons are functional | cuff buttons work | cuffs are functional | kissing buttons functional | cuff buttons are working | cuff buttons are real | cuff buttons open | cuff buttons undo | cuff buttons unbutton | cuff buttons do open | cuff buttons do undo | cuff buttons actually open | cuff buttons actually work | cuff buttons all work | cuff buttons all open | sleeve buttons work | sleeve buttons open | sleeve buttons undo | sleeve buttons unbutton | sleeve buttons are functional | sleeve buttons are working | sleeve buttons are real | sleeve buttons do open | sleeve buttons do undo | sleeve buttons actually open | sleeve buttons actually work | sleeve buttons all work | sleeve buttons all open | buttons on cuffs work | buttons on cuffs open | buttons on cuffs undo | buttons on cuffs unbutton | buttons on cuffs are functional | buttons on cuffs are working | buttons on cuffs are real | buttons on cuffs do open | buttons on cuffs do undo | buttons on cuffs actually open | buttons on cuffs actually work | buttons on cuffs all work | buttons on cuffs all open | buttons on the cuffs work | buttons on the cuffs open | buttons on the cuffs undo | buttons on the cuffs unbutton | buttons on the cuffs are functional | buttons on the cuffs are working | buttons on the cuffs are real | buttons on the cuffs do open | buttons on the cuffs do undo | buttons on the cuffs actually open | buttons on the cuffs actually work | buttons on the cuffs all work | buttons on the cuffs all open | buttons on cuff work | buttons on cuff open | buttons on cuff undo | buttons on cuff unbutton | buttons on cuff are functional | buttons on cuff are working | buttons on cuff are real | buttons on cuff do open | buttons on cuff do undo | buttons on cuff actually open | buttons on cuff actually work | buttons on cuff all work | buttons on cuff all open | buttons on the cuff work | buttons on the cuff open | buttons on the cuff undo | buttons on the cuff unbutton | buttons on the cuff are functional | buttons on the cuff are working | buttons on the cuff are real | buttons on the cuff do open | buttons on the cuff do undo | buttons on the cuff actually open | buttons on the cuff actually work | buttons on the cuff all work | buttons on the cuff all open | buttons on sleeves work | buttons on sleeves open | buttons on sleeves undo | buttons on sleeves unbutton | buttons on sleeves are functional | buttons on sleeves are working | buttons on sleeves are real | buttons on sleeves do open | buttons on sleeves do undo | buttons on sleeves actually open | buttons on sleeves actually work | buttons on sleeves all work | buttons on sleeves all open | buttons on the sleeves work | buttons on the sleeves open | buttons on the sleeves undo | buttons on the sleeves unbutton | buttons on the sleeves are functional | buttons on the sleeves are working | buttons on the sleeves are real | buttons on the sleeves do open | buttons on the sleeves do undo | buttons on the sleeves actually open | buttons on the sleeves actually work | buttons on the sleeves all work | buttons on the sleeves all open | buttons at the cuffs work | buttons at the cuffs open | buttons at the cuffs undo | buttons at the cuffs unbutton | buttons at the cuffs are functional | buttons at the cuffs are working | buttons at the cuffs are real | buttons at the cuffs do open | buttons at the cuffs do undo | buttons at the cuffs actually open | buttons at the cuffs actually work | buttons at the cuffs all work | buttons at the cuffs all open | buttons at the cuff work | buttons at the cuff open | buttons at the cuff undo | buttons at the cuff unbutton | buttons at the cuff are functional | buttons at the cuff are working | buttons at the cuff are real | buttons at the cuff do open | buttons at the cuff do undo | buttons at the cuff actually open | buttons at the cuff actually work | buttons at the cuff all work | buttons at the cuff all open | buttons at cuffs work | buttons at cuffs open | buttons at cuffs undo | buttons at cuffs unbutton | buttons at cuffs are functional | buttons at cuffs are working | buttons at cuffs are real | buttons at cuffs do open | buttons at cuffs do undo | buttons at cuffs actually open | buttons at cuffs actually work | buttons at cuffs all work | buttons at cuffs all open | cuffs open | cuffs undo | cuffs actually open | cuffs do open | real buttonholes on the cuffs | real buttonholes at the cuffs | real working cuffs | opening cuffs | working button holes | working buttonholes at cuffs"
    },
    {
      fact: { fact: 'workingCuffButtons', value: false },
      phrases:
        "sham cuffs | non functional cuffs | non working cuffs | non-functioning cuffs | faux cuff buttons | mock cuffs | dummy cuff buttons | cuff buttons are non functional | cuff buttons are not functional | cuff buttons do not open | decorative cuff buttons | cuff buttons are decorative | sham buttons | false cuffs | non-functional cuff buttons | non working cuff buttons | cuffs do not open | sham cuff buttons | cuff buttons are sham | cuff buttons are for show | cuff buttons do not work | non-functioning cuff buttons | cuff buttons are non-working | cuff buttons are not working | cuff buttons are faux | cuff buttons don't open | cuff buttons don't undo | cuff buttons do not undo | cuff buttons don't unbutton | cuff buttons do not unbutton | cuff buttons don't work | cuff buttons aren't functional | cuff buttons aren't working | cuff buttons are non working | cuff buttons are fake | cuff buttons are purely decorative | cuff buttons are just decorative | cuff buttons are only decorative | cuff buttons are just for show | cuff buttons are stitched on | cuff buttons are not real | cuff buttons aren't real | sleeve buttons don't open | sleeve buttons do not open | sleeve buttons don't undo | sleeve buttons do not undo | sleeve buttons don't unbutton | sleeve buttons do not unbutton | sleeve buttons don't work | sleeve buttons do not work | sleeve buttons aren't functional | sleeve buttons are not functional | sleeve buttons are non functional | sleeve buttons aren't working | sleeve buttons are not working | sleeve buttons are non working | sleeve buttons are sham | sleeve buttons are fake | sleeve buttons are faux | sleeve buttons are decorative | sleeve buttons are purely decorative | sleeve buttons are just decorative | sleeve buttons are only decorative | sleeve buttons are just for show | sleeve buttons are for show | sleeve buttons are stitched on | sleeve buttons are not real | sleeve buttons aren't real | buttons on cuffs don't open | buttons on cuffs do not open | buttons on cuffs don't undo | buttons on cuffs do not undo | buttons on cuffs don't unbutton | buttons on cuffs do not unbutton | buttons on cuffs don't work | buttons on cuffs do not work | buttons on cuffs aren't functional | buttons on cuffs are not functional | buttons on cuffs are non functional | buttons on cuffs aren't working | buttons on cuffs are not working | buttons on cuffs are non working | buttons on cuffs are sham | buttons on cuffs are fake | buttons on cuffs are faux | buttons on cuffs are decorative | buttons on cuffs are purely decorative | buttons on cuffs are just decorative | buttons on cuffs are only decorative | buttons on cuffs are just for show | buttons on cuffs are for show | buttons on cuffs are stitched on | buttons on cuffs are not real | buttons on cuffs aren't real | buttons on the cuffs don't open | buttons on the cuffs do not open | buttons on the cuffs don't undo | buttons on the cuffs do not undo | buttons on the cuffs don't unbutton | buttons on the cuffs do not unbutton | buttons on the cuffs don't work | buttons on the cuffs do not work | buttons on the cuffs aren't functional | buttons on the cuffs are not functional | buttons on the cuffs are non functional | buttons on the cuffs aren't working | buttons on the cuffs are not working | buttons on the cuffs are non working | buttons on the cuffs are sham | buttons on the cuffs are fake | buttons on the cuffs are faux | buttons on the cuffs are decorative | buttons on the cuffs are purely decorative | buttons on the cuffs are just decorative | buttons on the cuffs are only decorative | buttons on the cuffs are just for show | buttons on the cuffs are for show | buttons on the cuffs are stitched on | buttons on the cuffs are not real | buttons on the cuffs aren't real | buttons on cuff don't open | buttons on cuff do not open | buttons on cuff don't undo | buttons on cuff do not undo | buttons on cuff don't unbutton | buttons on cuff do not unbutton | buttons on cuff don't work | buttons on cuff do not work | buttons on cuff aren't functional | buttons on cuff are not functional | buttons on cuff are non functional | buttons on cuff aren't working | buttons on cuff are not working | buttons on cuff are non working | buttons on cuff are sham | buttons on cuff are fake | buttons on cuff are faux | buttons on cuff are decorative | buttons on cuff are purely decorative | buttons on cuff are just decorative | buttons on cuff are only decorative | buttons on cuff are just for show | buttons on cuff are for show | buttons on cuff are stitched on | buttons on cuff are not real | buttons on cuff aren't real | buttons on the cuff don't open | buttons on the cuff do not open | buttons on the cuff don't undo | buttons on the cuff do not undo | buttons on the cuff don't unbutton | buttons on the cuff do not unbutton | buttons on the cuff don't work | buttons on the cuff do not work | buttons on the cuff aren't functional | buttons on the cuff are not functional | buttons on the cuff are non functional | buttons on the cuff aren't working | buttons on the cuff are not working | buttons on the cuff are non working | buttons on the cuff are sham | buttons on the cuff are fake | buttons on the cuff are faux | buttons on the cuff are decorative | buttons on the cuff are purely decorative | buttons on the cuff are just decorative | buttons on the cuff are only decorative | buttons on the cuff are just for show | buttons on the cuff are for show | buttons on the cuff are stitched on | buttons on the cuff are not real | buttons on the cuff aren't real | buttons on sleeves don't open | buttons on sleeves do not open | buttons on sleeves don't undo | buttons on sleeves do not undo | buttons on sleeves don't unbutton | buttons on sleeves do not unbutton | buttons on sleeves don't work | buttons on sleeves do not work | buttons on sleeves aren't functional | buttons on sleeves are not functional | buttons on sleeves are non functional | buttons on sleeves aren't working | buttons on sleeves are not working | buttons on sleeves are non working | buttons on sleeves are sham | buttons on sleeves are fake | buttons on sleeves are faux | buttons on sleeves are decorative | buttons on sleeves are purely decorative | buttons on sleeves are just decorative | buttons on sleeves are only decorative | buttons on sleeves are just for show | buttons on sleeves are for show | buttons on sleeves are stitched on | buttons on sleeves are not real | buttons on sleeves aren't real | buttons on the sleeves don't open | buttons on the sleeves do not open | buttons on the sleeves don't undo | buttons on the sleeves do not undo | buttons on the sleeves don't unbutton | buttons on the sleeves do not unbutton | buttons on the sleeves don't work | buttons on the sleeves do not work | buttons on the sleeves aren't functional | buttons on the sleeves are not functional | buttons on the sleeves are non functional | buttons on the sleeves aren't working | buttons on the sleeves are not working | buttons on the sleeves are non working | buttons on the sleeves are sham | buttons on the sleeves are fake | buttons on the sleeves are faux | buttons on the sleeves are decorative | buttons on the sleeves are purely decorative | buttons on the sleeves are just decorative | buttons on the sleeves are only decorative | buttons on the sleeves are just for show | buttons on the sleeves are for show | buttons on the sleeves are stitched on | buttons on the sleeves are not real | buttons on the sleeves aren't real | buttons at the cuffs don't open | buttons at the cuffs do not open | buttons at the cuffs don't undo | buttons at the cuffs do not undo | buttons at the cuffs don't unbutton | buttons at the cuffs do not unbutton | buttons at the cuffs don't work | buttons at the cuffs do not work | buttons at the cuffs aren't functional | buttons at the cuffs are not functional | buttons at the cuffs are non functional | buttons at the cuffs aren't working | buttons at the cuffs are not working | buttons at the cuffs are non working | buttons at the cuffs are sham | buttons at the cuffs are fake | buttons at the cuffs are faux | buttons at the cuffs are decorative | buttons at the cuffs are purely decorative | buttons at the cuffs are just decorative | buttons at the cuffs are only decorative | buttons at the cuffs are just for show | buttons at the cuffs are for show | buttons at the cuffs are stitched on | buttons at the cuffs are not real | buttons at the cuffs aren't real | buttons at the cuff don't open | buttons at the cuff do not open | buttons at the cuff don't undo | buttons at the cuff do not undo | buttons at the cuff don't unbutton | buttons at the cuff do not unbutton | buttons at the cuff don't work | buttons at the cuff do not work | buttons at the cuff aren't functional | buttons at the cuff are not functional | buttons at the cuff are non functional | buttons at the cuff aren't working | buttons at the cuff are not working | buttons at the cuff are non working | buttons at the cuff are sham | buttons at the cuff are fake | buttons at the cuff are faux | buttons at the cuff are decorative | buttons at the cuff are purely decorative | buttons at the cuff are just decorative | buttons at the cuff are only decorative | buttons at the cuff are just for show | buttons at the cuff are for show | buttons at the cuff are stitched on | buttons at the cuff are not real | buttons at the cuff aren't real | buttons at cuffs don't open | buttons at cuffs do not open | buttons at cuffs don't undo | buttons at cuffs do not undo | buttons at cuffs don't unbutton | buttons at cuffs do not unbutton | buttons at cuffs don't work | buttons at cuffs do not work | buttons at cuffs aren't functional | buttons at cuffs are not functional | buttons at cuffs are non functional | buttons at cuffs aren't working | buttons at cuffs are not working | buttons at cuffs are non working | buttons at cuffs are sham | buttons at cuffs are fake | buttons at cuffs are faux | buttons at cuffs are decorative | buttons at cuffs are purely decorative | buttons at cuffs are just decorative | buttons at cuffs are only decorative | buttons at cuffs are just for show | buttons at cuffs are for show | buttons at cuffs are stitched on | buttons at cuffs are not real | buttons at cuffs aren't real | cuffs don't open | cuffs don't undo | cuffs do not undo | cuffs don't unbutton | cuffs do not unbutton | cuffs don't work | cuffs do not work | cuffs aren't functional | cuffs are not functional | cuffs are non functional | cuffs aren't working | cuffs are not working | cuffs are non working | cuffs are sham | cuffs are fake | cuffs are faux | cuffs are decorative | cuffs are purely decorative | cuffs are just decorative | cuffs are only decorative | cuffs are just for show | cuffs are for show | cuffs are stitched on | cuffs are not real | cuffs aren't real | sleeve cuffs don't open | sleeve cuffs do not open | sleeve cuffs don't undo | sleeve cuffs do not undo | sleeve cuffs don't unbutton | sleeve cuffs do not unbutton | sleeve cuffs don't work | sleeve cuffs do not work | sleeve cuffs aren't functional | sleeve cuffs are not functional | sleeve cuffs are non functional | sleeve cuffs aren't working | sleeve cuffs are not working | sleeve cuffs are non working | sleeve cuffs are sham | sleeve cuffs are fake | sleeve cuffs are faux | sleeve cuffs are decorative | sleeve cuffs are purely decorative | sleeve cuffs are just decorative | sleeve cuffs are only decorative | sleeve cuffs are just for show | sleeve cuffs are for show | sleeve cuffs are stitched on | sleeve cuffs are not real | sleeve cuffs aren't real | fake cuff buttons | sham sleeve buttons | decorative sleeve buttons | non working sleeve buttons | cuffs have sham buttons | sham buttons on cuffs | sham buttons at cuffs | non opening cuffs | cuff buttons just for show | no working cuffs | cuffs not functional | cuffs non functional"
    },
    {
      fact: { fact: 'backSeam', value: true },
      phrases:
        'centre back seam | center back seam | back seam | seam down the back | seam at the back | back centre seam | back center seam | seam up the back'
    },
    {
      fact: { fact: 'darts', value: true },
      phrases: 'darts | darted | bust darts | waist darts | front darts | back darts | dart | bust dart'
    },
    { fact: { fact: 'darts', value: false }, phrases: 'no darts | without darts' },
    {
      fact: { fact: 'felledSeams', value: true },
      phrases:
        'flat felled | felled seams | flat felled seams | double felled seams | flat-felled | triple stitched seams | triple stitched | felled'
    },
    {
      fact: { fact: 'slantPockets', value: true },
      phrases:
        'slant pockets | slanted pockets | slash pockets | slanting pockets | angled pockets | slanted side pockets | slash side pockets | slant front pockets'
    },
    { fact: { fact: 'skirtShape', value: 'straight' }, phrases: 'pencil skirt | straight skirt | tube skirt | column skirt' },
    {
      fact: { fact: 'skirtShape', value: 'flared' },
      phrases:
        'a line skirt | a-line | aline | flared skirt | flare skirt | a line | full skirt | gored skirt | skater skirt | swing skirt | tulip skirt flared'
    },
    { fact: { fact: 'skirtShape', value: 'circle' }, phrases: 'circle skirt | full circle skirt | full circle | half circle skirt' },
    {
      fact: { fact: 'skirtShape', value: 'pleated' },
      phrases:
        'pleated skirt | pleated midi skirt | knife pleats | accordion pleats | box pleats | sunray pleats | pleated mini skirt | pleated maxi skirt | kilt | sunray pleated | box pleated | pleated wool skirt | pleated tennis skirt'
    },
    {
      fact: { fact: 'hemKind', value: 'original-edge' },
      phrases:
        'original hem | original hems | original factory hem | factory hem | hem is original | unaltered hem | unhemmed original | hems are original'
    },
    {
      fact: { fact: 'hemKind', value: 'blind' },
      phrases: 'blind hem | blind hemmed | invisible hem | blind stitched hem | hand rolled hem'
    },
    {
      fact: { fact: 'opens', value: ['waist'] },
      phrases:
        'side zip | back zip | side zipper | back zipper | side zip fastening | zip at back | zip at the back | zip at side | zips at the side | zips at the back | zip up back | zips up the back| metal side zip | zipper in back | zipper at back | concealed zip | invisible zip | concealed back zip | invisible back zip | concealed side zip | rear zip'
    },
    {
      fact: { fact: 'opens', value: ['hem'] },
      phrases:
        'side vents | back vents | double vent | double vented | single vent | single vented | centre vent | center vent | twin vents | back vent | dual vents | two side vents | vented | vents | rear vent | rear vents | dual vented | side vented'
    },
    {
      fact: { fact: 'opens', value: ['sweep'] },
      phrases:
        'back slit | side slit | side slits | front slit | kick pleat | slit at back | slit at the back | back split | side split | slit up the back | slit at the side | thigh slit | back kick pleat'
    },
    {
      fact: { fact: 'opens', value: ['legOpening'] },
      phrases:
        'ankle zips | ankle zip | zipped ankles | zips at ankle | zips at the ankle | ankle zippers | zip ankles | zip at ankle | zips at ankles'
    }
  ],
  uses: {
    protective:
      'hi vis | hi viz | high vis | high visibility | high-visibility | flame resistant | flame retardant | fire resistant | fire retardant | arc rated | ce armour | ce armor | ce approved armour | body armour | body armor | motorcycle armour | motorcycle armor | armoured | armored | chainsaw trousers | chainsaw protection | cut resistant | bulletproof | stab proof | stab vest | kevlar lined | kevlar lining | climbing | welding | chemical resistant | fire proof | fireproof | hazmat | knee armour | safety vest | bite suit | motorcycle jacket with armour | armor pads | firefighter | turnout gear | hi-visibility | nomex | safety harness',
    child:
      "kids | kid's | children's | childrens | girls | girl's | boys | boy's | toddler | toddlers | baby | infant | newborn | junior boys | junior girls | child's | youth size | baby's | children | teen girls | teen boys",
    'child-sleepwear':
      "kids pyjamas | children's pyjamas | childrens pyjamas | boys pyjamas | girls pyjamas | baby sleepsuit | children's nightwear | kids pajamas | children's pajamas | toddler pyjamas | kids nightdress | girls nightdress | girls nightie | baby grow | babygrow | sleepsuit | boys pyjama | girls pyjama | boys pajama | girls pajama | boys' pyjama | girls' pyjama | kids pyjama | children's sleepwear | kids sleepwear | boys pajamas | girls pajamas | baby sleepsuits | children's dressing gown | toddler pajamas | kids nightie",
    'medical-compression':
      'medical compression | compression stockings | compression hosiery | compression garment | post surgery compression | class 1 compression | class 2 compression | compression class | lymphoedema | lymphedema | post surgical | varicose | medical grade compression | mmhg | compression therapy'
  },
  faults: [
    {
      mending: ['darn', 'treat-pests'],
      phrases: 'moth hole | moth holes | moth damage | moth eaten | mothing | moth nip | moth nips | mothed | moth bites'
    },
    {
      mending: ['patch'],
      phrases:
        'hole | holes | tear | tears | rip | rips | ripped | torn | pin hole | pinhole | pinholes | pin holes | small hole | worn through | threadbare | cigarette burn | burn hole | burn mark | nick | slash | cut in the fabric'
    },
    {
      mending: ['clean'],
      phrases:
        'age spot | age spots | stain | stains | stained | staining | discolouration | discoloration | discoloured | discolored | sweat marks | yellowing | watermark | water marks | water mark | makeup mark | grubby | musty | dirty | smell | odour | odor | small mark | marks | mark | foxing | rust spot | rust spots | dusty | deodorant marks | needs cleaning | needs a clean | needs washing | dirt | ink mark | grease'
    },
    {
      mending: ['replace-button'],
      phrases:
        'missing button | missing buttons | missing a button | button missing | buttons missing | missing one button | broken button | lost button | one button missing | a button is missing | missing its top button | missing 1 button | buttons are missing | chipped button'
    },
    {
      mending: ['sew-shank'],
      phrases:
        'loose button | loose buttons | button is loose | button loose | buttons are loose | buttons loose | button needs re sewing | button hanging by a thread'
    },
    {
      mending: ['close-seam'],
      phrases:
        'open seam | split seam | seam split | seam has come undone | seam coming apart | seam undone | popped seam | seam has split | loose stitching | stitching coming undone | torn lining | lining torn | ripped lining | lining ripped | lining is torn | tear in lining | tear in the lining | seam separation | stitching has come loose | hem has come down | hem coming down | hem is coming down | hem undone | loose seam | seam is open | seam coming undone | split in the seam | split at the seam | seam opening up | fallen hem | stitching undone | popped stitches | hem down | shattered lining | lining has come away | lining coming away | lining has come loose | lining is coming away | lining loose | loose lining | lining has dropped | seam has gone | seam gone'
    },
    {
      mending: ['replace-zip'],
      phrases:
        'broken zip | broken zipper | zip broken | zipper broken | zip is broken | zip sticks | zipper sticks | zip needs replacing | zipper needs replacing | faulty zip | zip missing | zip is stiff | zip pull missing | missing zip pull | zipper is broken | zip stuck | zip catches | zip does not work | zipper does not work | zipper missing'
    },
    {
      mending: ['replace-elastic'],
      phrases:
        'elastic gone | elastic perished | perished elastic | elastic has gone | worn elastic | tired elastic | elastic is tired | elastic is shot | elastic is worn | elastic stretched out | loose elastic | elastic needs replacing | elastic has perished | elastic has lost'
    },
    { mending: ['de-pill'], phrases: 'pilling | bobbling | bobbled | pilled | bobbles | pills | bobbly | piling' },
    {
      mending: ['lift-crease'],
      phrases:
        'crease mark | crease marks | old hem line | hem line visible | fold line | fold lines | hem crease | old hemline visible | fold marks | creased from storage | line from old hem | visible old hem'
    },
    {
      mending: ['dye'],
      phrases:
        'faded | fading | sun fading | sun faded | fade | colour loss | color loss | light fading | colour run | washed out patches | bleach mark | bleach spot | bleached | bleach marks | bleach stain'
    },
    {
      mending: ['re-line-pocket'],
      phrases:
        'pocket hole | hole in pocket | hole in the pocket | pocket lining hole | pocket lining torn | holes in pocket | holes in the pocket | torn pocket lining | hole in pocket lining | hole in the pocket lining | holes in pockets'
    },
    { mending: ['polish-leather'], phrases: 'scuff | scuffs | scuffed | scuffing | dry leather | leather is dry | scuff marks' },
    {
      mending: ['re-proof'],
      phrases:
        'needs re proofing | needs reproofing | needs rewaxing | needs re waxing | needs a rewax | no longer waterproof | needs waxing | waterproofing gone'
    },
    { mending: ['block-knit'], phrases: 'misshapen | out of shape | stretched out of shape | felted | needs blocking | lost its shape' },
    {
      mending: [],
      phrases:
        'snag | snags | pulled thread | pulled threads | pulls | flaw | flaws | damage | damaged | wear to | fraying | frayed | missing belt | belt missing | missing beads | missing sequins | repair | repaired | darned | altered | visible wear | signs of wear | broken | peeling | cracking | cracked | distressed lining | loose thread | loose threads | hook missing | missing hook'
    }
  ],
  colours: {
    black: 'black | jet black | jet',
    white: 'white | off white | off-white',
    grey: 'grey | gray | charcoal | slate',
    navy: 'navy | navy blue | dark navy | midnight blue',
    blue: 'blue | light blue | dark blue | baby blue | sky blue | royal blue | pale blue | cobalt | powder blue | indigo | bright blue | mid blue',
    teal: 'teal | petrol | turquoise | aqua',
    green:
      'green | olive | khaki green | forest green | emerald | sage | bottle green | olive green | mint green | dark green | lime | moss green | sage green | light green',
    khaki: 'khaki',
    red: 'red | scarlet | cherry red | bright red | dark red | crimson',
    burgundy: 'burgundy | maroon | wine | oxblood',
    pink: 'pink | hot pink | dusty pink | rose | fuchsia | blush | magenta | coral | salmon | baby pink | pale pink | light pink',
    purple: 'purple | lilac | lavender | violet | plum | mauve | aubergine',
    orange: 'orange | rust | terracotta | burnt orange | peach | apricot',
    yellow: 'yellow | mustard | lemon | ochre',
    brown: 'brown | chocolate | tan | chestnut | camel | cognac | tobacco | dark brown | light brown | rust brown | caramel | mocha',
    beige: 'beige | sand | stone | taupe | oatmeal | ecru | nude',
    cream: 'cream | ivory',
    gold: 'gold | golden',
    silver: 'silver'
  },
  currencies: {
    GBP: 'gbp | pounds | quid | pound | pounds sterling | tenner | fiver',
    EUR: 'eur | euro | euros',
    USD: 'usd | dollars | bucks | dollar | us dollars',
    AUD: 'aud | aussie dollars | australian dollars | dollars australian | dollars aud | aud dollars',
    CAD: 'cad | cad dollars | canadian | canadian dollars | dollars canadian | dollars cad',
    NZD: 'nzd',
    CHF: 'chf',
    SEK: 'sek',
    PLN: 'pln',
    DKK: 'dkk',
    NOK: 'nok',
    JPY: 'jpy | yen'
  }
}
