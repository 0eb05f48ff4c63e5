/** A word of the trade, for the glossary and the index. */
export interface Term {
  /** As sheets write it. */
  readonly term: string;
  /** One plain sentence. */
  readonly says: string;
  /** What it is called in the United States, or elsewhere in the trade. */
  readonly us?: string;
  readonly also?: string;
  /** The ways it stands in a text, as patterns, each with or without an s. */
  readonly forms: readonly string[];
  /** It is meant only in lessons in which one of these stands too: words of the bench are everyday words as well. */
  readonly beside?: readonly string[];
}

/** A term a line, in the order of the alphabet: the word, what it means, and what else there is to say of it. */
const TABLE = String.raw`
addendum | The part of a tooth above the pitch circle. | as addendum, addenda
allowance | What is added to a size on purpose, such as 2.76 modules for the tips of a clock wheel.
angular indexing | Dividing by an angle instead of by a count.
approach | How far the axis of a round cutter is from the face of the work when the cutter first touches. | as approach, approaches
arbor | The spindle that carries a wheel or a cutter. | also arbour
arc | A piece of a circle, measured along the curve.
arm | One of the bars left between hub and rim when a wheel is crossed out. | US spoke | also crossing | beside hub, crossing out
backing | A disc behind the blanks, cut with them, so that the last one keeps its edge.
backlash | Lost motion when a screw or a wheel turns the other way. | US lash | also play
barrel | The drum on which the line or the spring of a clock is wound.
beat | One swing of the pendulum, to one side; two beats make a period. | also tick
bite | How much metal one tooth of the cutter takes at a turn. | US chip load | also feed per tooth
blank | The plain disc or rod, turned to size, in which teeth are cut.
bob | The weight of a pendulum.
bore | The hole through the middle of a wheel.
burr | The thin lip that a cut leaves at an edge. | also feather edge
bush | A liner in which a pivot turns. | US bushing | as bush, bushes
cannon pinion | The tube that carries the minute hand and drives the motion work.
centre distance | The distance from arbor to arbor of a wheel and its pinion. | US center distance | as centre distance, centres
centre wheel | The wheel that turns once in an hour. | US center wheel
change wheel | A loose gear of the lathe, put on to cut a screw. | US change gear
chatter | A shake between tool and work that feeds itself and leaves ripples.
chord | A straight line from one point of a circle to another.
chuck | The jaws of the lathe that hold the work.
chuck key | The key that opens a chuck; it never stays in it. | US chuck wrench
circular pitch | The distance from one tooth to the next, along the pitch circle. | as circular pitch, circular pitches
clearance | Room left on purpose, so that two things do not touch.
closing tooth | The tooth between the last cut and the first; all errors of the steps meet in it. | as closing tooth, closing teeth, last tooth
collet | A brass seat for a wheel on its arbor; on the lathe, a split sleeve that grips the work.
compound indexing | Dividing by two moves on one plate, where a single move will not do.
crank | The handle of a dividing head.
cross-slide | The slide of a lathe that moves across the bed. | US cross slide
crossing out | Sawing windows into a wheel, so that hub, arms and rim stay. | US spoking | as crossing out, cross out, crossed out, crosses out
cutter | The tool that cuts the spaces between teeth; its edge has their shape. | US gear cutter | also wheel cutter
cutting speed | How fast the edge of a cutter meets the metal, in metres a minute. | US surface speed, in feet a minute
cycloidal | Shaped by a circle that rolls on another, as the teeth of clock wheels are.
dedendum | The part of a tooth below the pitch circle.
depth of cut | How far the cutter goes in from the rim of the blank. | also depth | as depth of cut, depths of cut
depthing | Setting a wheel and its pinion at the right distance, so that the teeth enter as far as they should. | also engagement | as depthing
depthing tool | Two pairs of parallel centres, set apart by a screw, to try a wheel with its pinion. | US depth tool
detent | The pin, wedge or ball that locks a division plate. | US index pin, pawl | also plunger
dial | The ring of marks on a feed screw; also a gauge whose needle shows a small movement. | US indicator | also clock
diametral pitch | Teeth to each inch of the pitch diameter. | also DP
differential indexing | Dividing with the plate geared to the spindle, so that it turns a little with each move.
direct dividing | Dividing with a plate on the spindle itself, without a worm. | US direct indexing
dividers | Two legs with points, for marking and stepping off lengths. | as dividers
dividing head | A tool that holds work and turns it by exact parts of a turn, through a worm. | US indexing head, index head
division plate | A plate with circles of holes or notches to divide by. | US index plate | also dividing plate | as division plate, dividing plate, plate | beside notch, crank, detent, hole circle
dovetail | A slide whose sides slope under, so that it cannot lift.
end shake | The little way that an arbor may move along itself. | US end play
escape wheel | The last wheel of the train, which the pallets let go tooth by tooth. | also scape wheel
escapement | What lets the train move on by one tooth at each beat, and keeps the pendulum swinging.
face | The side of a wheel; or the part of a tooth above the pitch circle.
feed | How fast the work moves past the cutter. | US feed rate
feeler | A thin strip of known thickness, to find where two things just touch.
fillet | A rounded inside corner.
flank | The side of a tooth, above all the part below the pitch circle.
fly cutter | A single cutting tooth held in a bar. | also single-point cutter | as fly cutter, fly-cutter, single-point cutter
full depth | The whole height of a tooth, from its tip to the root. | US whole depth
gauge | A tool that tells by touch or by eye whether a size is right. | US gage
graver | A hand tool for turning small work.
great wheel | The first wheel of the train, on the barrel. | US main wheel
half-angle | The angle between one side of a taper and its middle line; the included angle is twice that.
half-turn test | Two nicks, cut half a turn apart, that show how far a cutter is off centre.
head ratio | The turns of the crank that make one turn of the work, 40 or 60 as a rule. | also worm ratio
heel | The back of a cutting tool, which follows its edge.
hole circle | A ring of evenly spaced holes in a division plate. | also hole row | as hole[ -]circle
hour wheel | The wheel that carries the hour hand.
hub | The middle of a wheel, round its hole. | also boss
hump | What stays at the foot of a space when the cutter stops short of the far face.
hunting tooth | Said of a pair whose counts have no common factor, so that every tooth meets every other.
idler | A wheel between two others, which turns the last one the other way and changes no ratio. | also carrier wheel
indexing | Turning the work by one division at a time. | as indexing, index, indexed
involute | The curve of a line unwound from a circle; the teeth of most gears have it.
land | The flat that a cut leaves at the tip of a tooth. | also witness, tip land
lantern pinion | A pinion of round pins between two discs.
lead screw | The long screw of a lathe that moves the tool when a thread is cut.
leaf | A tooth of a pinion. | US tooth | as leaf, leaves
limit | The largest or the smallest size that will do.
mandrel | A true stub or spindle on which work is held to be turned. | US arbor
marking blue | A stain on metal in which scribed lines show. | US layout dye
marking out | Drawing on the metal what is to be cut. | US layout
mesh | The meeting of the teeth of two wheels. | as mesh, meshes, meshing
micrometer | A screw gauge that measures to a hundredth of a millimetre or a thousandth of an inch.
minute wheel | The wheel of the motion work that the cannon pinion drives.
module | Millimetres of pitch diameter to each tooth; a wheel and its pinion have the same.
motion work | The gearing behind the dial that turns the hour hand once for twelve turns of the minute hand. | US dial train
off centre | Said of a cutter whose middle does not point at the axis of the work. | US off center | as off centre, off-centre
outside diameter | The diameter over the tips of the teeth, which is that of the blank.
over-travel | How far a slide must go beyond the work before the cut is complete. | US overrun
pallet | One of the two faces that stop and release the escape wheel.
parting off | Cutting a piece from the bar with a narrow tool. | US cutting off | as parting off, part off, parted off
pass | One cut along the work; a full depth may take several. | as passes, each pass, one pass, first pass, last pass
pendulum | The swinging weight that keeps the time of a clock. | as pendulum
period | The time of two beats, there and back. | as period of, the period, each period
piercing saw | A hand saw with a fine blade, for work in sheet. | US jeweler’s saw
pillar | A post that holds the two plates of a clock apart.
pinion | The small one of two wheels that mesh, under twenty leaves or so.
pitch | The distance from one tooth, or one thread, to the next. | as pitch, pitches
pitch circle | The circle on which a wheel seems to roll upon its pinion.
pitch diameter | The diameter of the pitch circle: module times teeth.
pivot | The thin end of an arbor, on which it turns.
quarter mark | A line on the work, a quarter of a turn from the next, to check the count by.
rake | The slope of the top of a cutting tool; for brass there is none. | US back rake | also top rake
rating nut | The nut under the bob, which sets the length of the pendulum.
relief | The slope behind a cutting edge, so that the heel does not rub. | US clearance angle
rim | The ring of a wheel that carries the teeth; also the outer edge of a blank.
ring | A circle of holes or notches on a plate. | as ring(?! one)
root | The bottom of the space between two teeth.
root diameter | The diameter at the bottom of the spaces.
rotary table | A table that turns by a worm, for dividing and for milling arcs.
run-out | What a dial moves in one turn of work that is off centre: twice the distance. | US TIR, FIM | as run-out, run out, runs out, ran out
sagitta | How high an arc stands over its chord.
sector arms | Two arms on a division plate that enclose the holes of one move. | US sector | as sector arm, arm | beside sector arm
set-over | Moving a tool or a tailstock sideways by a set amount. | US offset
shake | The small freedom between two teeth, or of a pivot in its hole. | US play | also freedom
shop card | The card beside the machine with the numbers of one job.
silver steel | A steel rod, ground to size, that can be hardened. | US drill rod
simple indexing | Dividing by one and the same move of the crank, on one circle. | US plain indexing
slide | A part of a machine that moves straight, and carries tool or work.
space | The gap between two teeth; on a plate, the step from one hole to the next.
spindle | The turning shaft of a machine. | also mandrel
stack | Several blanks, clamped together and cut as one. | US gang
suspension | The thin spring from which a pendulum hangs. | as suspension
swarf | What a cut takes off. | US chips
tailstock | The end of a lathe that holds the other end of the work.
tally | A list of every move, to be ticked as it is made. | as tally, tallies
taper | What grows thinner evenly along its length.
template | A drawing at true size, to be glued on the metal and cut to.
third wheel | The wheel between the centre wheel and the escape wheel.
thou | A thousandth of an inch. | also mil
tip | The outermost part of a tooth.
tolerance | How far a size may be out and still do: its largest less its smallest.
tooth thickness | How thick a tooth is, along the pitch circle.
top slide | The small slide on top of a lathe’s cross-slide. | US compound rest | as top slide, top-slide
train | Wheels and pinions that drive one another in a row. | US gear train
travel | How far a slide moves.
vernier | A second short scale that tells parts of the first one’s divisions.
wheel | The large one of two that mesh; in clocks a gear is called so. | US gear
wheel cutting engine | A machine made to divide wheels and cut them. | also engine
witness mark | A trace left on purpose, to show that nothing more was taken off.
worm | A screw that turns a wheel; it makes the slow motion of a dividing head.
`;

export const terms: readonly Term[] = TABLE.trim().split('\n').map(termOf);

function termOf(line: string): Term {
  const [term = '', says = '', ...more] = line.split(' | ');
  const told = (word: string) => more.find((one) => one.startsWith(`${word} `))?.slice(word.length + 1);
  const [us, also, forms, beside] = [told('US'), told('also'), told('as'), told('beside')];
  return {
    term,
    says,
    ...(us === undefined ? {} : { us }),
    ...(also === undefined ? {} : { also }),
    forms: forms?.split(', ') ?? [term],
    ...(beside === undefined ? {} : { beside: beside.split(', ') }),
  };
}
