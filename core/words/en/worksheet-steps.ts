/** English: the steps of the sheet a person sews from. Lengths come in mm; stitch lengths are told in mm everywhere, as machines are marked. */
export const worksheetSteps: Record<string, string> = {
  // as it arrives, made ready, finished
  'step.arrive-apart':
    'Keep it in a closed bag, apart from other clothes, until it has been cleaned. Look along seams, under collars and in pockets for moth or ' +
    'bugs.',
  'step.arrive-hot-wash':
    'Wash it at 60 °C if its label allows, and dry it through. If the label says less, follow the label; tumble it dry where the label allows ' +
    'that.',
  'step.arrive-tumble': 'Wash it as its label says, then tumble it dry above 40 °C for at least half an hour, as far as the label allows.',
  'step.arrive-freeze':
    'Never wash it at 60 °C or tumble it hot: it would felt, shrink or spoil. Clean it as its label says, or freeze it in a closed bag at −18 °C ' +
    'for three days, then air and brush it.',
  'step.arrive-hide':
    'Do not wash it. Wipe it with a barely damp cloth, air it in the shade, and freeze it in a closed bag for three days against moth.',
  'step.arrive-by-label':
    'Clean it as its label says. Where the label is gone, freeze it in a closed bag at −18 °C for three days, then air it.',
  'step.ready-washed':
    'Wash or steam it now, the way it will be washed later: it was never washed and may still shrink. Measure it again afterwards.',
  'step.ready-pressed': 'Press it flat all over, {press|press}. Empty the pockets first.',
  'step.ready-measured':
    'Measure it with your own tape and compare. If a figure differs from the one below, enter yours and make the sheet anew before you begin.',
  'step.ready-clips':
    'Pins and basting leave holes in this cloth. Where a step says pin or baste, hold it with clips instead, or with pins inside the seam’s own ' +
    'cloth; stand still in it when you try it on.',
  'step.ready-sample':
    'Needle: {needleSize}, {needle|needle}. Thread: {thread|thread}. On a scrap of like cloth, folded as thick as the seam, sew a sample: ' +
    '{stitch|stitch}, {stitchMm} mm ({spi} to the inch).',
  'step.ready-tight-at-first': 'Rigid denim gives in wear. Fit it slightly tight at first.',
  'step.finish-pressed': 'Press the whole garment, {press|press}, and let it hang until it is cold.',
  'step.finish-steamed': 'Smooth the whole garment {press|press}, and let it lie until it is cold and dry.',
  'step.finish-tried': 'Try it on, sit and reach in it, and measure it. It should now measure as below.',

  // fitting and the new line
  'step.try-pinned':
    'Try it on over what is worn with it. Stand, sit and bend; move the pins until it hangs right. Where you moved them, write your figure beside ' +
    'the one above: it counts from here on.',
  'step.try-basted': 'Try it on, basted. Sit, walk and reach. Baste again if it pulls; nothing is sewn or cut until it is right.',
  'step.try-safety-pinned': 'Hold the ends with safety pins and wear it for a quarter of an hour before anything is sewn.',
  'step.try-pinned-shut': 'Pin it shut at the new place and try it on, sitting too. No crooked pull may show.',
  'step.try-length':
    'Try it on with the shoes that are worn with it, standing straight, pinned on both sides. Let someone else look at the hem. If you move a ' +
    'pin, your figure counts from here on.',
  'step.try-turned': 'Try it on with the hem pinned up, all the way round, before any cloth goes.',
  'step.ease-fold': 'The leg is wider than the old edge by the figure below: ease it in evenly as you baste, or taper the leg first.',
  'step.pin-sleeve-length': 'Put it on, let the arms hang, and pin up {amount|length} on both sleeves.',
  'step.pin-body-length': 'Put it on and pin up {amount|length}, the same all round.',
  'step.try-body-length': 'Try it on over what is worn with it, arms hanging, closed. Look at it from the front, the side and behind.',
  'step.try-fold':
    'Try it on with the fold pinned and the old edge turned down: it must hang at the right height in front and at the back.',
  'step.try-turn-up': 'Try it on with the turn-ups pinned in their new place.',
  'step.try-arms': 'Try it on and bend the arms: the edge must still cover the wrist bone, or end where you want it.',
  'step.try-cuffs': 'Try the cuffs on, buttoned: a hand passes opened, and the cuff does not slide over the hand closed.',
  'step.try-sleeves':
    'Try it on with the sleeves basted in. They hang a little forward, without pulls at the cap; turn a sleeve in its armhole if they do not.',
  'step.try-sitting': 'Try it on, basted, and sit down in it. The crotch is not deepened further than that needs.',
  'step.try-paper': 'Pin the paper in and try it on. Trim the paper, not the cloth, until it is right.',
  'step.try-cord': 'Tie a cord round the outside and try it on, to see how the gathers fall.',
  'step.try-laced': 'Try it on, laced through the basted loops. The edges run parallel.',
  'step.try-pads': 'Try it on with the pads basted in. Both shoulders lie at the same height.',
  'step.once-more-before-cut': 'Try it on once more. What is cut now cannot be put back.',
  'step.baste': 'Pin both layers together, mark on mark, and baste them along the new line with long hand stitches.',
  'step.baste-darts':
    'Fold each dart down its middle, right sides together, pin leg on leg, and baste along the leg from its wide end to its point.',
  'step.clip': 'Hold the new line with clips beside the seam; pins and basting would leave holes.',
  'step.baste-outside': 'Baste along the new line, between the old stitching and the raw edge, while the old seam is still closed.',
  'step.old-line-out': 'Take the old stitching out: cut every third stitch and draw the thread.',
  'step.mark-line-in':
    'From inside, chalk the new line at the {seam|seam}. Place each mark by the figures below: down from {from|from}, then across from the old ' +
    'stitching, away from the raw edge. Mark both layers, the same at each such seam, and join the marks smoothly.',
  'step.mark-line-in-both':
    'From inside, chalk the new line at the {seam|seam}, and the same at the {other|seam}. Place each mark by the figures below: down from ' +
    '{from|from}, then across from the old stitching, away from the raw edge. Mark both layers, both sides alike, and join the marks smoothly.',
  'step.mark-line-out':
    'From inside, chalk the new line at the {seam|seam}. Place each mark by the figures below: down from {from|from}, then across from the old ' +
    'stitching, towards the raw edge. Mark both layers, the same at each such seam, and join the marks smoothly.',
  'step.mark-line-out-both':
    'From inside, chalk the new line at the {seam|seam}, and the same at the {other|seam}. Place each mark by the figures below: down from ' +
    '{from|from}, then across from the old stitching, towards the raw edge. Mark both layers, both sides alike, and join the marks smoothly.',
  'step.sew-line':
    'Sew along the new line: {stitch|stitch}, {stitchMm} mm; {ends|ends}. Where it meets the old seam, run along that for {run|length}.',
  'step.sew-line-through': 'Sew along the new line from edge to edge: {stitch|stitch}, {stitchMm} mm; {ends|ends}.',
  'step.old-stitches-out': 'Take out the basting, and the old stitching where the new line has left it.',
  'step.trim-seam': 'Trim the cloth between the new seam and the raw edge to the figure below.',
  'step.keep-cloth': 'Leave the cloth beside the new seam, so that it can be let out again one day.',
  'step.finish-edges': 'Overlock the raw edges, or zigzag over them, so that they do not fray.',
  'step.fell-open':
    'The seam is felled: unpick both rows of its topstitching, as far as the new line runs and a hand’s breadth beyond, and press it flat.',
  'step.fell-trim':
    'Beside the new seam, trim the layer that lies underneath to the first figure below, and the one that folds over it to the second.',
  'step.fell-again':
    'Fold the wider layer in by half, lay it over the narrow one, flat on the garment, and topstitch two rows, 3.5 mm long, in matching thread.',
  'step.glue-seam': 'Glue the seam open with leather glue, a thin coat, and tap it flat over a cloth.',
  'step.press-seam': 'Press the seam as it was sewn, then open or to one side as it was before, {press|press}.',
  'step.press-old-line': 'Press the old line and fold out from the wrong side, {press|press}. Old holes close a little with a damp cloth.',
  'step.press-open-flat': 'Press the old fold open, flat, {press|press}.',
  'step.lining-along': 'Alter the lining by the same figures, or a little less, so that it stays loose.',
  'step.zip-out': 'Take the zip out as far as the new seam runs, a hand’s breadth beyond it, and mark where its teeth begin.',
  'step.zip-in': 'Baste the zip in again, both sides level at the top, and sew it with the zipper foot.',
  'step.paper-first': 'Draw the piece on paper from the figures below, and cut the paper out.',
  'step.cut-panel': 'Cut the piece from the cloth along the grain of the garment, two alike where it stands on both sides.',

  // the waist
  'step.pin-centre-back':
    'Put it on inside out and pinch the centre back seam at the band. Half of the amount goes to each side, less and less down to the old seam.',
  'step.pockets-apart':
    'Measure between the back pockets. If that is less than the first figure below, take in less here, so that the least distance below remains, and ' +
    'take the rest in at the side seams.',
  'step.check-centre-back':
    'Look from behind: no fold under the band, the pockets level, the seam straight. The seat seam may take a little less than the band.',
  'step.pin-sides-at-waist':
    'Put it on inside out and pin both side seams alike from the band down, a quarter of the amount at each layer.',
  'step.pocket-tops': 'Free the tops of the pockets from the band where they lie in the side seams.',
  'step.pocket-tops-back': 'Catch the pocket tops in again, flat, without pulling the mouths open.',
  'step.check-skirt-sides': 'Look from the side: the seams hang straight and in the middle, and the hem is level.',
  'step.check-side-seams-hang': 'Look from the side: the seams hang straight and in the middle, and the pocket mouths lie shut.',
  'step.pin-back-darts':
    'Pin the darts into the back, half way between centre and side, alike on both sides. They point at the fullest part and end above it.',
  'step.pin-back-darts-four':
    'Pin two darts on each side of the centre back, at a third and at two thirds of the way to the side seam, both sides alike. They point at the ' +
    'fullest part and end above it.',
  'step.mark-darts':
    'From inside, chalk each dart: its middle, its legs at the mouth, half to each side of the middle, and its point, from the figures below.',
  'step.sew-darts': 'Sew each dart from its mouth to its point, the last stitches along the fold; tie the threads, do not sew back.',
  'step.press-darts': 'Press the darts towards the middle over a rolled towel, {press|press}, never past their points.',
  'step.lining-darts': 'Fold the same amount into the lining as loose pleats over the darts.',
  'step.check-darts': 'Look at the points: no bubble, both alike. A dart that bowls is too deep or too short.',
  'step.pin-yoke-darts': 'Pin darts through band and yoke on both sides of the centre back, alike, between the loops.',
  'step.pin-yoke-darts-four':
    'Pin two darts through band and yoke on each side of the centre back, alike and evenly apart, between the loops.',
  'step.yoke-loops-off': 'Take off the loops that lie over the darts.',
  'step.mark-yoke-darts': 'Chalk the darts inside, from the top of the band to the seam of the yoke.',
  'step.sew-yoke-darts':
    'Hammer the layers flat and sew slowly, turning the wheel by hand over the band; or sew by hand with back-stitches.',
  'step.yoke-loops-on': 'Sew the loops on again over the darts, or beside them.',
  'step.check-yoke-darts': 'Look at the band: its edge is even, and the yoke lies flat below the darts.',
  'step.look-inside-centre-back':
    'Look inside the centre back seam for spare cloth: the figure below is needed on each side. If there is less, let out only what there is.',
  'step.look-inside-sides':
    'Look inside both side seams for spare cloth: the figure below is needed on each side. If there is less, let out only what there is.',
  'step.check-let-out': 'Look for the old line, for holes and for a darker stripe. Steam it, and say so if you pass the garment on.',
  'step.measure-wedge': 'Work out the wedge: as wide at the band as the amount, running out to nothing in the seam.',
  'step.open-for-wedge': 'Open the centre back seam as far down as the wedge goes.',
  'step.sew-wedge': 'Sew the wedge in from its point to the band, one side and then the other.',
  'step.check-panel': 'Look at it worn: the piece lies flat, its point does not pucker, both sides match.',
  'step.look-for-old-line': 'Look inside for a second row of old holes and cloth folded away: that is the line it goes back to.',
  'step.later-stitches-out': 'Take out the stitching of the later alteration alone, and that of the band over it where there is one.',
  'step.mark-old-line': 'Chalk along the old holes where they are hard to see.',
  'step.look-at-darts':
    'Look inside the darts: how much cloth is in each, and whether it was cut open along its middle. A dart that was cut open is not let out.',
  'step.darts-out': 'Take the stitching out of the darts.',
  'step.mark-darts-narrower': 'Chalk each dart again, narrower, with its point where it was.',
  'step.measure-elastic': 'Mark the back half of the band from side seam to side seam, and cut the elastic to the length below.',
  'step.slits-in-band': 'Open the inside of the band at both side seams, just wide enough for the elastic.',
  'step.elastic-in': 'Draw the elastic through the back half with a bodkin, flat, and pin its ends in the side seams.',
  'step.elastic-ends': 'Sew across both ends of the elastic at the side seams, twice.',
  'step.slits-closed': 'Close the slits by hand.',
  'step.measure-old-elastic': 'Stretch the old elastic. If it has gone slack or crackles, replace it; else shorten it by the amount.',
  'step.casing-open': 'Open the casing at the back by a hand’s breadth and pull out a loop of elastic.',
  'step.elastic-lapped': 'Lap the elastic by the amount and pin it with a safety pin.',
  'step.elastic-cut': 'Cut the elastic so that its ends lap by the figure below.',
  'step.elastic-joined': 'Sew the lapped ends with a zigzag, over and back, as a square.',
  'step.casing-closed': 'Let the elastic slip in, spread the gathers, and close the casing with the elastic stretched.',
  'step.check-gathers': 'Spread the gathers evenly by the four quarters of the waist.',
  'step.measure-cord': 'Cut a cord as long as below, and see that the band or its casing lets it through.',
  'step.mark-eyelets':
    'Mark two eyelets on the outside of the band, {apart|length} either side of the centre front, and stay the cloth behind them.',
  'step.eyelets-in': 'Cut the two holes and set the eyelets, or work two buttonholes, through the outer layer alone.',
  'step.cord-in': 'Draw the cord through, knot its ends, and stitch it once at the centre back so that it cannot come out.',
  'step.check-cord': 'Draw it in and look: the gathers are even and the knots hold.',
  'step.count-pleats':
    'Count your pleats: the amount, divided by their number and by two, goes into each side of each pleat. The figure below is for the usual number.',
  'step.mark-pleats': 'Chalk the new fold of every pleat at the band, and let it run out to the old fold at the hip.',
  'step.baste-pleats': 'Baste all pleats down, from the band to the hip.',
  'step.press-pleats': 'Press the pleats, {press|press}, only as far as they were pressed before.',
  'step.check-pleats': 'Look at the spacing: all pleats alike, and checks or stripes still in order.',
  'step.look-at-pleats': 'Open a pleat by hand and look for a faded or worn fold: it will show.',
  'step.pleats-out': 'Take out the stitching of one pair of pleats, the same one on both sides.',
  'step.baste-pleats-flat': 'Lay the cloth flat into the band and baste it there.',
  'step.measure-gathers': 'Mark the new length of the band, and quarter it and the skirt’s top edge.',
  'step.gather-threads': 'Sew two rows of the longest stitch along the top of the skirt, at the distances below, and leave long ends.',
  'step.draw-gathers': 'Draw the rows up to the new length, quarter on quarter, and spread the gathers.',

  // the band, opened and closed
  'step.loops-off': 'Take off the belt loops in the way, about {loops} of the usual {of}; pin each to where it goes back.',
  'step.band-off':
    'Unpick the band from the top edge for the length below; the more you take in, the more of it you open. The rest stays on.',
  'step.band-tried':
    'Pin the band back on from both ends of the opening. If it is too long, fold the spare away where it will be cut. Try it on, closed. The edge ' +
    'below may be a little longer than the band, and is eased on.',
  'step.band-cut':
    'Cut the band through at the centre back, or at a seam it has there. On both ends chalk a line across, as far from the cut as given below; sew ' +
    'line on line, right sides together, inner and outer band alike, and trim to the seam below.',
  'step.band-cut-sides':
    'Cut the band through over each side seam. On both ends of each cut chalk a line across, as far from it as given below; sew line on line, ' +
    'right sides together, inner and outer band alike, and trim to the seam below. Where a zip ends there, take the ends in by as much.',
  'step.band-longer':
    'Let the band out at its own seam, or set a piece into it where a loop or the belt hides it, longer by the figure below.',
  'step.band-on':
    'Lay the edge of the cloth into the band as it was, and sew the band on again along its old line, inside and outside, without stretching the ' +
    'edge.',
  'step.loops-on': 'Sew the belt loops on again, the middle one over the seam, the others evenly beside it.',
  'step.band-pressed': 'Press the band, {press|press}.',

  // seat and legs
  'step.pin-seat': 'Put it on inside out and pinch the seat seam where it is fullest, no more than lets you sit.',
  'step.mark-seat-in':
    'Chalk the new seat line by the figures below, from the band down. Keep the curve of the crotch, and move the back of the inside legs by the ' +
    'same amount.',
  'step.check-seat': 'Sit and bend in it. A pull from the crotch outwards is too tight; a fold under the seat is too long.',
  'step.look-inside-seat': 'Look inside the seat seam and the top of the inside legs for spare cloth: the figure below is needed.',
  'step.seat-off': 'Open the seat seam from the band to the crotch.',
  'step.seat-on': 'Close what is still open of the seat seam, in a curve, and sew the crotch twice.',
  'step.pin-legs':
    'Put it on inside out and pin both legs alike, the same at the inside and the outside seam, so that the crease stays in the middle.',
  'step.check-crease': 'Lay the leg with its seams together: the crease lies in the middle, and both legs are alike. The foot passes.',
  'step.look-inside-legs': 'Look inside both leg seams at the thigh for spare cloth: the figure below is needed on each side.',
  'step.look-inside-calves': 'Look inside the lower inside leg seams for spare cloth: the figure below is needed on each side.',
  'step.inseam-off': 'Open the inside leg seams from the crotch as far as the new line or piece needs.',
  'step.inseam-on': 'Close what is still open of the inside leg seams along the old line.',
  'step.measure-gusset': 'Work out the gusset: a diamond as wide at the crotch as the amount, running out along the seams.',
  'step.sew-gusset': 'Sew the gusset in, side by side, and stop exactly at each corner.',
  'step.check-gusset': 'Sit and stretch a leg in it. Its corners do not pucker.',
  'step.pin-band-lower': 'Put it on and pin a tape where the band is to sit. Lower it the same all round, or less in front.',
  'step.zip-shorter': 'Take the zip and the fly free at their tops, and pull the teeth above the new line out with pliers.',
  'step.mark-band-line': 'Chalk the new line below the band all round, and check that the pockets lie under it.',
  'step.baste-band': 'Baste the band along the new line, over the cloth that will be cut away.',
  'step.cut-above-band-line': 'Cut the cloth away above the new line, leaving a seam allowance.',
  'step.zip-top': 'Bar the top of the zip by hand, and sew its tapes and the fly in again.',
  'step.ease-into-band': 'The edge is now longer than the band: ease it in, most at the sides.',
  'step.check-fly': 'Close and open the fly: it runs freely and its top is barred.',
  'step.measure-fork': 'Look at the crotch from inside. It is deepened by very little, for a deeper one shortens the inside leg.',
  'step.mark-fork': 'Chalk the new curve below the old one at the crotch, out to nothing at the seat and at the front.',
  'step.sew-fork-again': 'Sew the curve a second time, in the same line.',
  'step.trim-fork': 'Trim the cloth in the curve to the figure below, or it binds.',

  // edges up and down
  'step.pin-length': 'Put it on and pin up {amount|length} on one leg, on the outside; pin the other leg like it, then look at both worn.',
  'step.pin-hem-round': 'Put it on and let someone pin it up {amount|length} all round, the same height from the floor.',
  'step.hang-a-day': 'Hang it up for a day before you measure: cloth cut across the grain drops.',
  'step.hem-off': 'Chalk where the old edge lies before you unpick. Unpick the hem all round, to the depth below.',
  'step.hem-off-turn-up': 'Unpick the stitches that hold the hem inside the turn-ups.',
  'step.hem-again': 'Turn the hem up on its old folds and sew it again as it was.',
  'step.mark-new-edge':
    'From inside, chalk the new edge all round, as far above the chalked old edge (not above the raw edge) as given below. Below the new edge chalk ' +
    'the line where it is cut.',
  'step.pin-turned': 'Turn the cloth inside on the new edge and pin it.',
  'step.cut-hem': 'Cut along the lower line, all round.',
  'step.ease-hem':
    'The raw edge is longer than the new edge by the figure below, and longer by twice that than the place where it is sewn down. Draw it in with a row of ' +
    'long stitches and steam it.',
  'step.hem-follows-slope':
    'The cloth turned up is narrower than the garment above. Open the seam in the turned-up part, or sew it flaring out, until it lies flat.',
  'step.sew-hem-turned':
    'Turn the edge in, then up, by the figures below, and topstitch close to the inner fold: {stitch|stitch}, {stitchMm} mm.',
  'step.sew-hem-narrow':
    'Turn a narrow hem, twice by the figures below, pressing at each turn, and sew close to the inner edge: {stitch|stitch}, {stitchMm} mm.',
  'step.sew-hem-blind':
    'Finish the raw edge, turn it up by the figure below, and hem it blind by hand or machine, catching one thread of the outside.',
  'step.sew-hem-stretch':
    'Turn it up once by the figure below and sew it from the right side with a cover stitch, a twin needle or a zigzag, so that it stretches.',
  'step.glue-hem': 'Turn it up by the figure below, glue it with leather glue, and tap it flat.',
  'step.press-hem': 'Press the hem from the wrong side, {press|press}, and let it grow cold before it hangs.',
  'step.check-legs-alike': 'Lay both sides together: the same length at the inside and at the outside.',
  'step.check-hem-level': 'Look at it worn: the edge is level all round, or dips as it did before.',
  'step.mark-fold':
    'On the outside chalk two lines round the leg above the stitching of the old hem (measured from it, not from the edge): the first at half of ' +
    'the amount, where it is folded; the second at all of it.',
  'step.pin-fold':
    'Fold the leg on the first line, right side on right side, so that the old stitching comes up to lie on the second line; pin all round.',
  'step.sew-beside-edge':
    'Sew round through both layers of the leg, close beside the thick old hem and not through it, with the zipper foot and thread like the old ' +
    'topstitching.',
  'step.trim-tuck':
    'Turn the edge down. Inside, trim the folded cloth to the first figure below, measured from the new seam; where it crosses the leg’s own seams, ' +
    'thin those to the second figure.',
  'step.tuck-edges': 'Overlock or zigzag the trimmed edges.',
  'step.press-tuck': 'With the old edge down, press the seam upwards, {press|press}.',
  'step.catch-tuck': 'Catch the tuck to the leg seams inside, so that it does not fall down.',
  'step.look-inside-hem': 'Look inside the hem: how much cloth is there, and how much stays when it is down.',
  'step.pin-new-edge': 'Pin the new edge below the old one.',
  'step.sew-hem-left': 'Turn up what is left by the figure below, the raw edge finished, and sew it by hand or machine as the old hem was.',
  'step.tape-on': 'Sew hem tape to the raw edge, right sides together, by the seam below.',
  'step.tape-turned': 'Turn the tape inside, press, and hem it by hand.',
  'step.measure-band':
    'Work out the bands: twice as wide as the amount and two seams, as long as the opening and two seams, one for each leg.',
  'step.pin-paper-band': 'Pin a band of paper to each leg.',
  'step.cut-bands': 'Cut two bands along the grain.',
  'step.sew-bands': 'Join each band to a ring, fold it, sew it to the edge, and finish the seam.',
  'step.look-in-turn-up': 'Look inside the turn-up for fading and worn edges; there is cloth of three times its depth in it.',
  'step.turn-up-open': 'Undo the catches at the seams and fold the turn-up out.',
  'step.mark-turn-up':
    'Measure from where the raw edge will be once it is trimmed: first the top of the turn-up, then the new edge, by the figures below.',
  'step.pin-turn-up': 'Fold the turn-up and pin it.',
  'step.cut-below-turn-up': 'Cut the amount off the raw edge.',
  'step.sew-turn-up': 'Sew the raw edge inside, where the turn-up hides it.',
  'step.catch-turn-up': 'Catch the turn-up to the leg at both seams by hand.',
  'step.look-at-roll': 'See whether the roll is only folded or sewn, and whether its edge has faded.',
  'step.roll-open': 'Undo the catches and roll it down.',
  'step.mark-tuck': 'Chalk two lines inside above the hem, as far apart as below; the tuck folds half way between them.',
  'step.sew-growth-tuck': 'Sew the tuck inside by hand with long stitches, so that it comes out easily when the child has grown.',
  'step.turn-all-up': 'Turn all of the amount up into the hem. Nothing is cut.',
  'step.open-seam-in-hem': 'Open the seam inside the turned-up part, for the leg is wider above.',
  'step.sew-growth-hem': 'Hem it by hand with long stitches, so that it can be let down again.',
  'step.check-growth': 'Write the date and the amount on a tape inside: it is let down again later.',

  // skirts
  'step.vent-open': 'Undo the vent: it moves up with the hem and must keep its length.',
  'step.vent-again': 'Mark the vent higher by the amount, stay it, and sew it again.',
  'step.lining-hem':
    'Shorten the lining by the same amount: unpick its hem, turn it up that much higher and sew it as it was, so that it stays shorter than the ' +
    'skirt by the figure below.',
  'step.lining-down': 'See that the lining does not end too high; let it down too if it has cloth turned up.',
  'step.count-layers': 'Count the layers; each gets its own hem. Begin with the innermost.',
  'step.layers-apart': 'Pin the other layers up out of the way.',
  'step.mark-each-layer': 'Mark each layer against the floor or against the layer below, shorter by the amount.',
  'step.cut-each-layer': 'Cut each layer by the amount, leaving the hem it had.',
  'step.sew-each-layer': 'Hem each layer as it was hemmed.',
  'step.pin-skirt-up': 'Put it on and pin a tape where the band is to sit; the hem stays as it is and comes up.',
  'step.mark-below-band': 'Chalk the new line below the band all round.',
  'step.sides-to-band': 'The top is now wider by the figure below. Take it in at the side seams or darts until it meets the band.',
  'step.pleats-to-band': 'Pin every pleat to its old place on the band.',
  'step.pin-skirt-sides': 'Put it on inside out and pin both side seams alike at waist, hip and hem.',
  'step.measure-godet': 'Work out the godets: a wedge in each seam, as wide at the hem as below, running out upwards. Or leave a slit.',
  'step.open-seam-up': 'Open the seam from the hem as far as below.',
  'step.sew-godet': 'Sew each wedge in from its point down, both sides.',

  // bodies
  'step.pin-sides':
    'Put it on inside out, or pin from outside where it is lined; pin both side seams alike, on one smooth line from the underarm down.',
  'step.pin-knit-sides': 'Put it on inside out and pin both sides alike, without stretching; leave the ribs out.',
  'step.stitches-held-at-line':
    'Sew two rows of narrow zigzag beside the new line, towards the raw edge, before anything is cut, or the stitches run.',
  'step.run-into-sleeve':
    'Let the line go on round the underarm into the sleeve’s underarm seam, and run out there by the figures below, measured from the armhole ' +
    'seam.',
  'step.sleeve-set-again':
    'The armhole is now much smaller: unpick the lower half of the sleeve, take the sleeve in by the same amount, and set it in again.',
  'step.check-sides': 'Reach forward and up in it. The armhole does not bind, and the seams hang straight.',
  'step.sides-off': 'Open the side seams from the armhole to the hem.',
  'step.sides-on': 'Close what is still open of the side seams.',
  'step.pin-long-darts': 'Put it on and pin two long darts into the back, half way between centre and side, widest at the waist.',
  'step.mark-long-darts': 'Chalk each dart inside: its middle, its width at the waist, and its two points, from the figures below.',
  'step.sew-long-darts': 'Sew each dart from the waist to one point, then to the other, the last stitches along the fold; tie the threads.',
  'step.pin-centre-back-body': 'Put it on and pinch the centre back seam, most at the waist; it runs out below the collar.',
  'step.vent-open-back': 'Undo the vent and the hem beside it where the seam runs into them.',
  'step.vent-back': 'Fold the vent again on its new line and catch it.',
  'step.check-centre-back-body': 'Look from behind: the collar lies on the neck, the vent hangs shut, no fold across the waist.',
  'step.pin-waistcoat-back': 'Put it on, buttoned, and pinch the back seam, most at the waist.',
  'step.waistcoat-open': 'Open the lining at the lower edge of the back and turn the back inside out.',
  'step.waistcoat-closed': 'Alter the lining by the same figures, turn it right side out, and close the edge by hand.',
  'step.check-waistcoat': 'Button it and look: the points hang level, and the strap at the back lies flat.',
  'step.measure-strips': 'Work out the strips: one for each side, from the underarm to the hem.',
  'step.sew-strips': 'Sew a strip into each side, first to the back, then to the front, and close the underarm above it.',
  'step.tails-curved':
    'Where the shirt has curved tails, the new edge has the curve of the old one: measure up from the old edge at many places, or use the ' +
    'template.',
  'step.lining-hem-in': 'Set the lining’s hem to the new edge with a small fold of ease, by hand.',
  'step.check-pockets-and-buttons': 'Look at the front: the lowest button and the pockets still stand well above the edge.',
  'step.pin-bust-darts': 'Put it on and pin a dart from each side seam towards the fullest part, ending a little before it.',
  'step.mark-bust-darts': 'Chalk both darts alike. Front and back must still be equally long at the side seam: check.',
  'step.pin-bodice': 'Put it on, zipped, and let someone pinch both sides alike from the top edge down.',
  'step.bones-out': 'Open the casings at the top and draw out the bones beside the seam. Number them.',
  'step.bones-back': 'Shorten a bone only if its seam is shorter, tip it again, and close it into its casing.',
  'step.check-bodice': 'Raise the arms in it: it stays up, and the top edges meet at the seams.',
  'step.pin-top-edge': 'Put it on and pinch the top edge at the sides and the back.',
  'step.top-edge-open': 'Open the facing of the top edge at both ends of the back.',
  'step.top-elastic-in': 'Draw narrow elastic through the back of the top edge, and sew a tape that grips to its inside.',
  'step.top-edge-closed': 'Sew the ends of the elastic down and close the facing by hand.',
  'step.check-top-edge': 'Move in it: the edge stays, and does not cut in.',
  'step.measure-lacing': 'Work out the lacing: loops along both edges of the back, and a piece behind them.',
  'step.zip-out-for-lacing': 'Take the zip out whole. Keep it: it can go back.',
  'step.mark-loops': 'Mark the loops on both edges, as far apart as below.',
  'step.baste-loops': 'Baste the loops, all alike, between edge and facing.',
  'step.lacing-loops-on': 'Sew the loops in, twice, close to the edge.',
  'step.placket-behind': 'Sew a stayed piece behind the opening, fastened along one side.',
  'step.check-lacing': 'Lace it: the edges run parallel, and nothing tears at the top.',

  // knits
  'step.pin-above-rib': 'Put it on and pin a tuck of {amount|length} above the cuff rib of both sleeves.',
  'step.pin-above-body-rib': 'Put it on and pin a tuck of {amount|length} above the bottom rib.',
  'step.mark-above-rib': 'Run a thread of another colour along one row of stitches where it will be cut.',
  'step.hold-stitches': 'Pick the stitches of that row up on a needle, or sew two rows of zigzag beside it, so that none runs.',
  'step.rib-off': 'Take the rib off along its join.',
  'step.baste-rib': 'Quarter the rib and the edge, pin quarter on quarter, and baste with the rib stretched.',
  'step.cut-above-rib': 'Cut the part between away.',
  'step.rib-on': 'Sew the rib on, quarter on quarter, stretched to fit, by overlocker or zigzag; or graft the stitches with a needle.',
  'step.steam-rib': 'Steam the join without pressing on it, and let it dry flat.',
  'step.check-rib': 'Stretch the rib: no stitch breaks, and it goes back.',

  // shoulders and necks
  'step.pin-shoulders': 'Put it on and pinch each sleeve seam at the shoulder’s end, half of the amount a side.',
  'step.pads-out': 'Free the shoulder pads and the sleeve-head wadding, and pin them to the side they came from.',
  'step.mark-armhole': 'Chalk the new armhole inside the old one: all of it at the shoulder’s end, out to nothing at the notches.',
  'step.baste-sleeve-to-line': 'Baste the sleeve to the new line, mark on mark, over the cloth that will be cut away.',
  'step.cut-armhole': 'Cut the cloth away beyond the new line, leaving a seam allowance.',
  'step.pads-back': 'Set the pads in again, their edge at the new seam, by hand.',
  'step.check-shoulders': 'Look at both shoulders, worn: the seams end at the bone, level, and the sleeves hang without a dent.',
  'step.feel-pads': 'Feel through the lining how the pads lie and of how many layers they are.',
  'step.pad-reached': 'Open the lining’s sleeve seam at the shoulder and free the pads.',
  'step.pad-thinned': 'Peel a layer off each pad, the same from both, thinning towards the edges; keep what comes off.',
  'step.pad-basted': 'Baste the pads back.',
  'step.pad-sewn': 'Sew the pads in by hand, loosely, so that no dent shows.',
  'step.pin-straps': 'Put it on and pin a tuck of {amount|length} into each strap. Both need not be alike.',
  'step.strap-off': 'Unpick the straps at the back end.',
  'step.mark-strap': 'Mark the straps by the amount; leave the spare end inside.',
  'step.strap-on': 'Sew the straps in at the mark, twice, with the ends turned in.',
  'step.check-straps': 'Raise the arms: the neckline stays, and the straps do not cut in.',
  'step.pin-shoulder-seams': 'Put it on and pinch the shoulder seams, alike at neck and armhole.',
  'step.mark-shoulder-line':
    'From inside, chalk the new line below the shoulder seam, away from the raw edge, as far from the old stitching as given below, on both layers, ' +
    'from neck to armhole.',
  'step.neck-edge-open': 'Open the facing or binding of the neck, a hand’s breadth either side of the shoulder seams.',
  'step.neck-edge-closed': 'Shorten the facing by the figure below and close it again.',
  'step.armhole-deeper': 'Cut the bottom of the armhole lower by the figure below, so that the sleeve still fits it.',
  'step.pin-underarm': 'Put it on and pinch both side seams at the armhole.',
  'step.armhole-edge-open': 'Open the facing or binding of the armhole at the side seam.',
  'step.armhole-edge-closed': 'Take the facing in by the same amount and close it again.',
  'step.check-armholes': 'Move the arms: nothing gapes and nothing binds.',
  'step.pin-waist-seam': 'Put it on and pin a tuck of {amount|length} at the waist seam, all round or only where it is needed.',
  'step.look-inside-waist-seam': 'Look inside the waist seam for spare cloth: the figure below is needed.',
  'step.waist-seam-open': 'Unpick the waist seam all round; mark side seams and centres.',
  'step.mark-waist-up':
    'From inside, chalk the new line on the bodice all round, as far above its old stitching as given below. The skirt keeps its line; the hem comes ' +
    'up with it.',
  'step.mark-waist-down':
    'From inside, chalk the new line all round, as far below the old stitching as given below: on the bodice into its seam, on the skirt into the ' +
    'skirt. The dress stays as long as it is.',
  'step.match-waist-seams':
    'Pin skirt to bodice, right sides together, the skirt’s old stitching line on the bodice’s new line: centres, side seams and darts on each ' +
    'other, the wider edge eased to the narrower.',
  'step.trim-bodice': 'Trim the bodice below the new seam to the seam left below, even with the skirt’s.',
  'step.press-waist-seam': 'Press the waist seam upwards, {press|press}.',
  'step.check-waist-seam': 'Look at it worn: the seam is level, and the zip runs over it freely.',
  'step.pin-neckline': 'Put it on and pinch small darts into the neckline where it gapes.',
  'step.neck-facing-open': 'Open the facing or binding where the darts go.',
  'step.mark-neck-darts': 'Chalk the darts from the neck down, out to nothing.',
  'step.neck-facing-closed': 'Shorten the facing by the same amount and close it.',
  'step.check-neckline': 'Bend forward: nothing gapes, and the head still passes.',
  'step.armhole-marked': 'Mark shoulder, notches and underarm on sleeve and body with thread, and which sleeve is which.',
  'step.sleeve-out': 'Unpick the sleeves from the armholes.',
  'step.sleeve-in-basted':
    'Run an ease thread round each cap. Pin the sleeve in from the underarm up, marks on marks, ease the rest over the top, and baste.',
  'step.sleeve-in': 'Sew the sleeves in, the lower half twice, and finish the edges together.',
  'step.armhole-edge-off': 'Unpick the facing or binding of the armholes near the shoulder.',
  'step.armhole-edge-on': 'Sew the facing or binding of the armholes on again.',
  'step.press-armhole': 'Press the seam towards the sleeve with the iron’s tip, {press|press}; leave the cap round.',

  // sleeves and cuffs
  'step.pin-sleeve-tuck': 'Put it on and pin a tuck of {amount|length} above each cuff.',
  'step.mark-above-cuff': 'Chalk the cut line above the old seam of the cuff, and see that the placket keeps its least length.',
  'step.placket-shorter': 'Unpick the lower end of the placket and its button.',
  'step.baste-cuff': 'Baste the cuff on at the new line.',
  'step.cut-above-cuff': 'Cut the sleeve below the new line, leaving a seam allowance.',
  'step.sleeve-to-cuff': 'The sleeve is a little wider there: lay its pleats deeper or ease it into the cuff.',
  'step.check-sleeves': 'Bend both arms: the edges end alike.',
  'step.cuff-off': 'Unpick the cuffs from the sleeves.',
  'step.cuff-on': 'Sew the cuffs on again, ends flush with the plackets, and topstitch as before.',
  'step.sleeve-hem-off': 'Unpick the hem of the sleeves.',
  'step.sleeve-hem-again': 'Turn the sleeve hems up on their old folds and sew them as they were.',
  'step.press-cuffs': 'Press the sleeve ends, {press|press}.',
  'step.pin-sleeve-head': 'Put it on and pinch the sleeve below the shoulder until the cuff sits right, alike all round the arm.',
  'step.mark-cap': 'Chalk the whole cap line again, lower by the amount everywhere: top, notches and underarm.',
  'step.measure-cap':
    'Measure the new cap line and the armhole with a tape on edge. The cap is longer by the figures below; narrow or widen the underarm until it is.',
  'step.cut-cap': 'Cut the cap beyond the new line, leaving a seam allowance.',
  'step.ease-cap': 'Sew two rows of long stitches over the cap between the notches, to ease it by the figures below.',
  'step.sham-buttons-off': 'Take the sham buttons off.',
  'step.sham-buttons-on': 'Sew the sham buttons on again, the lowest as far from the new edge as given below.',
  'step.sleeve-lining-up': 'Shorten the sleeve lining by the same amount and sew it in by hand, with a fold of ease above its edge.',
  'step.sleeve-lining-down':
    'Let the sleeve lining down by the same amount where there is cloth for it, and sew it in by hand with a fold of ease.',
  'step.pin-sleeve-taper': 'Put it on inside out and pin the underarm seam of both sleeves alike, arm bent.',
  'step.check-elbow': 'Bend the elbow: nothing pulls, and the hand passes.',
  'step.pin-cuffs': 'Put it on and pin both cuffs narrower, at both ends alike.',
  'step.mark-cuff-ends': 'Chalk the new ends of the cuffs, the seam beyond them.',
  'step.sleeve-end-eased':
    'Ease or pleat the sleeve’s edge, or take its seam in, until it is narrower by the figure below and meets the cuff.',
  'step.cut-cuff-ends': 'Cut the cuff ends off beyond the seam.',
  'step.cuff-ends-sewn': 'Sew the cuff ends inside out, turn them, and press the corners.',
  'step.check-cuffs': 'Button both cuffs: alike, with the placket flat.',

  // lining
  'step.lining-off':
    'Open the lining at the edge you work on, as far as your hand needs, and leave the rest closed. A lining that hangs free needs no opening.',
  'step.lining-in-too': 'Alter the lining by the same figures, or a little less, so that it stays loose.',
  'step.lining-closed': 'Close what you opened of the lining by hand, with a fold of ease at the hem.',

  // buttons, hooks, ties
  'step.pin-waist-button': 'Close it on the body and pin it where it sits right; mark where the button then stands.',
  'step.pin-front-buttons':
    'Close it on the body and pin the front shut {amount|length} {way|lap} than before. All buttons, {count} as a rule, stay on one line.',
  'step.pin-neck-button': 'Close the collar with one finger of room and pin it; the tie knot must still cover it.',
  'step.pin-cuff-buttons': 'Close the cuffs on the arm, pin them, and mark both alike.',
  'step.overlap-left': 'Measure what still overlaps: it must not be less than the figure below.',
  'step.mark-button-in':
    'Mark the new place {amount|length} from the old one, level with it, away from the edge that the button stands beside. Mark each button of ' +
    'the row alike.',
  'step.mark-button-out':
    'Mark the new place {amount|length} from the old one, level with it, nearer to the edge that the button stands beside. Mark each button of ' +
    'the row alike.',
  'step.button-off': 'Cut the button off between button and cloth, from the button’s side, and pick the threads out.',
  'step.hammered-off': 'A jeans button is hammered in: prise its back off with pliers, draw the button out, and darn or stay the hole.',
  'step.hammered-on':
    'Pierce the new place with the awl through a scrap of stay, push the stud through, and hammer a jeans button onto it.',
  'step.stay-behind': 'Sew a scrap of stay or a small button behind the new place.',
  'step.button-on':
    'With double thread take two small stitches on the mark. Lay a spacer on the button and sew over it, three to six stitches through each pair ' +
    'of holes. Pins or a toothpick hold the height.',
  'step.shank-wound': 'Draw the spacer out, lift the button, wind the thread two or three times round the shank, and tie it off behind.',
  'step.check-button': 'Button it: it lies flat without a pull, and old marks are steamed out.',
  'step.pin-hook': 'Close it on the body and pin it where it sits right.',
  'step.mark-hook': 'Mark the new place of the hook.',
  'step.hook-off': 'Take the hook off.',
  'step.hook-on': 'Sew the hook on through all layers but the outermost, at its shaft too.',
  'step.check-hook': 'Hook it: the edges meet, and no stitch shows outside.',
  'step.pin-buckles': 'Close the straps on the body and mark both alike.',
  'step.mark-buckles': 'Mark the new place of each buckle, or of a new hole.',
  'step.buckles-off': 'Take the buckles off.',
  'step.buckles-on': 'Sew the buckles on through all layers, or punch a hole with the awl, one every {run|length}.',
  'step.check-buckles': 'Buckle it: the straps lie flat and alike.',
  'step.pin-tie': 'Close it on the body and mark where the tie and the inner button sit right.',
  'step.mark-tie': 'Mark the new places.',
  'step.tie-off': 'Take off the tie and the inner button.',
  'step.tie-on': 'Sew the tie and the inner button on at the marks, with a cross over the tie’s end.',
  'step.check-tie': 'Wrap it and walk: it stays shut.',

  // mending and care
  'step.mend-button-place': 'Mark where the button goes, and look in the side seam for a spare one.',
  'step.mend-shank': 'Sew the loose button on again over a spacer.',
  'step.mend-seam-pinned': 'Pin the open seam along its old line, and past both ends by the figure below.',
  'step.mend-seam-sewn': 'Sew it along the old line: {stitch|stitch}, {stitchMm} mm.',
  'step.mend-pressed': 'Press it from the wrong side, {press|press}.',
  'step.mend-darn-laid': 'Lay threads side by side over the hole, well into sound cloth. A hole larger than below is patched.',
  'step.mend-darn-woven': 'Weave across them, over and under, without pulling it together.',
  'step.mend-patch-cut': 'Cut the patch along the grain, larger than the hole by the figures below.',
  'step.mend-patch-pinned': 'Turn its edges under and pin it.',
  'step.mend-patch-sewn': 'Sew it round twice. An iron-on patch is sewn too where a seam is near.',
  'step.mend-zip-measured': 'Measure the old zip’s teeth and buy one as long, of the same kind.',
  'step.mend-zip-out': 'Unpick the old zip, and mark its place.',
  'step.mend-zip-basted': 'Baste the new zip in, closed.',
  'step.mend-zip-tried': 'Open and close it. It runs freely, and both sides are level.',
  'step.mend-zip-in': 'Sew it with the zipper foot, both sides from the bottom up.',
  'step.mend-elastic-in': 'Draw the new elastic in, its length as below or as your waist is.',
  'step.mend-elastic-joined': 'Lap the ends and sew them with a zigzag, as a square.',
  'step.mend-crease': 'Damp the crease with white vinegar and water on a cloth, after a test inside, and steam it. Once is usually enough.',
  'step.mend-fade': 'Wash it once as its label says, and touch the pale line up with a fabric pen or dye after a test inside. It may stay.',
  'step.mend-pills': 'Comb or shave the pills off, flat on a table, without cutting into the cloth.',
  'step.mend-pocket-pattern': 'Draw round the old pocket bag for a pattern, and cut a new one.',
  'step.mend-pocket-out': 'Cut nothing: unpick the old bag from the mouth.',
  'step.mend-pocket-sewn': 'Sew the new bag to the mouth and close it, twice round.',
  'step.mend-clean-wash': 'Clean it as its label says. Treat stains first, from the wrong side, after a test inside.',
  'step.mend-clean-delicate': 'Clean it by hand in cool water with wool soap, or have it cleaned, as its label says. Never rub.',
  'step.mend-dye-tested': 'Test the dye on a scrap or inside. Polyester thread and cloth stay as they are.',
  'step.mend-dye': 'Dye it wet and without folds, moving all the time, then rinse until the water is clear.',
  'step.mend-proof': 'Clean it, then rub the proofing in, warm, and wipe off what is too much. Let it hang in moving air.',
  'step.mend-polish': 'Clean it, feed the leather, let it rest, and polish it.',
  'step.mend-heel': 'Lever the old piece off, roughen both sides, glue and nail the new one, and rasp its edge.',
  'step.mend-block-wet': 'Wet it in cool water without wringing, and press it out in a towel.',
  'step.mend-block-pinned': 'Lay it flat and pin it to its measures.',
  'step.mend-block-dry': 'Let it dry flat before the pins come out.',
  'step.mend-pests-bagged': 'Close it in a bag at once, apart from everything else, and empty the bag it came in outdoors.',
  'step.mend-pests-frozen':
    'Freeze it in the bag at −18 °C for three days; hot washing would spoil it. Then air it and clean it as its label says.',
  'step.mend-pests-hot':
    'Wash it at 60 °C, or tumble it dry above 40 °C for half an hour, as far as its label allows; else freeze it for three days.',
  'step.mend-pests-brushed': 'Brush seams and pockets outdoors, and look again after two weeks.',
  'step.mend-collar-off': 'Unpick the collar from its stand, and mark the centre on both.',
  'step.mend-collar-turned': 'Turn it, worn side under, and baste it into the stand.',
  'step.mend-collar-on': 'Sew the stand shut along its old line.'
}
