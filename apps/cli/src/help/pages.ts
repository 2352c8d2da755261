/**
 * What `--help` teaches. Every line that begins with `$ ` is run as it stands by a test, in a folder
 * of its own, in the order of the page.
 */
export const OVERVIEW = `
Dryflat tells what a hand-knitted garment will measure when it is dry: off the
needles, wet, dried, worn, and washed again. Every length belongs to one of
these states, and a number of one state is never used for another.

  as knit    off the needles, rested, never wet
  wet        soaked through, laid flat without stretch
  dried      dry, pins out, rested
  worn       after hanging under its own weight on a body
  rewashed   after a later soak, dried without pins

A garment is one file. To see one and its forecast:

  $ dryflat example waistcoat -o waistcoat.json
  $ dryflat forecast waistcoat.json

A chest may be measured flat (across one layer) or around (all the way round,
twice as much). The file says which; where it does not, you are asked:
"span": "flat" or "span": "around".

Exit codes: 0 done; 2 something given cannot be used, with one line for each
fault on standard error, nothing printed and nothing written; 1 a fault of the
program itself. FILE may be - for standard input.

More about one command: dryflat help COMMAND
`;

export const FORECAST = `
Prints each measurement in five states side by side: the likeliest number, and
below it the range that should hold nine times in ten. Then gauge, fit, what
you should know, and what every number stands on: measured by you, published,
or custom of the craft without a source.

  $ dryflat example waistcoat -o waistcoat.json
  $ dryflat forecast waistcoat.json --units in
  $ dryflat forecast waistcoat.json --json --seed 7

The same file and seed give the same bytes. --json prints one object, lengths
in millimetres: measurements[].states.dried.p50Mm is the likeliest dried
length, p05Mm and p95Mm the ends of its range. Where no size is chosen, each is
told with its chance; --size asks for one.
`;

export const BLOCK = `
Plans the mat: which pins go where and in which order, with two distances for a
tape to each; what every measurement will then be, dried, and after the next
wash; how far the edge scallops; what the fabric will not do, and why.

  $ dryflat example waistcoat -o waistcoat.json
  $ dryflat block waistcoat.json --svg waistcoat.svg
  $ dryflat block waistcoat.json --to-measure --json

Pins stretch no measurement by more than is called safe for its stitch and fiber
(plain wool 5 %, lace 30 %); --to-measure goes as far as the fabric does.
"gentle" of --json says which.

Pins, wires and the mat at hand are plan.stock and plan.mat of the file; usual
ones are assumed where it does not say. plan.sewn: true lies double. Places in
--json are millimetres from the top left corner of the mat. Where no size is
chosen it asks which, with the chance of each; --size asks for one.
`;

export const PRINT = `
Makes pages to print, as PDF, SVG or both. Without more: the drawing with wanted
and forecast lengths, dried, and for each piece its pins in order, to take to
the mat.

  $ dryflat example ferry-socks -o socks.json
  $ dryflat print socks.json --pdf socks.pdf --paper letter --units in
  $ dryflat print socks.json --full-size --piece sock --pdf outline.pdf
  $ dryflat print socks.json --blank --svg sheet.svg --pdf sheet.pdf

--full-size draws the outline at 1:1 over as many sheets as it takes. Print at
100 %, without fitting to the page, and lay a tape on the check lines. SVG of
more than one page is numbered: out-1.svg, out-2.svg.

The same file and options give the same bytes.
`;

export const DRY = `
Tells of the last drying in the file when it is dry, as a range; when to weigh,
turn and look; what the scale shows when it is dry; and how sure that is after
each weighing. Times are universal time.

  $ dryflat example hayloft-pullover -o hayloft.json
  $ dryflat dry hayloft.json
  $ dryflat dry hayloft.json --weighings 2 --calendar hayloft.ics
  $ dryflat dry hayloft.json --json

The file says how it lies: "dryings" has the mass wet and dry, the air of the
room, layers, thick places and weighings. In --json hours count from "begun".
`;

export const COUNTS = `
Tells every count of a garment at your own gauge, dried, as it is forecast: what
to cast on, how to shape each piece, and how far each number is off by rounding
to whole stitches and rows. Where the file holds the pattern's own counts of a
piece, they stand beside what they become at your gauge.

  $ dryflat example waistcoat -o waistcoat.json
  $ dryflat counts waistcoat.json
  $ dryflat counts waistcoat.json --piece back --words uk --units in
  $ dryflat counts waistcoat.json --json

Where no size is chosen each is told; --size asks for one.

"pattern.repeat" of the file keeps the stitch pattern whole: {"stitches": 8,
"plus": 3}. "instructions" holds texts such as "Cast on 112. Work 6 cm in rib.
Decrease 1 each end of every 4th row 6 times. Bind off the remaining stitches."

In --json pieces[].lines are the instructions and pieces[].steps the same as
data; pieces[].measures[].errorMm is what a count measures less what is wanted;
instructions[].lines[] have each line as printed (theirs) and recounted (mine),
or instructions[].faults what cannot be read, with its line.
`;

export const REPORT = `
Says what came of a garment: size, gauge in each state, lengths wanted, forecast
and got side by side, yarn, time, changes, fit, and the photos that were chosen;
without a size what does not hang on it. Printed as Markdown, or written to
files.

  $ dryflat example hayloft-pullover -o pullover.json
  $ dryflat report pullover.json
  $ dryflat report pullover.json --html report.html --pdf report.pdf

Body measurements and names of persons are private: they are left out, and
every name that the file knows is taken out of every text, unless report.body of
the file is true or you add --with-body. The garment's own name may be
somebody's: it goes by its pattern's name, or by what it is. So it does on
printed pages and in calendars, by report.body of the file. A number of a body
that you wrote into a text yourself stays. Photos are without what a camera
notes beside them.
`;

export const ROUTES = `
Lists what to do now, best first: go on, block gently or hard, rip a part back,
begin again on another needle or in another size, add or take away, give it to
somebody whom it fits, leave the yarn. Each with the chance that all of it
fits, hours, yarn, and the chance of the date; then why the first is first,
which cheap measurement is worth taking before, and what is not open and why.

  $ dryflat example waistcoat -o waistcoat.json
  $ dryflat routes waistcoat.json --today 2031-01-13
  $ dryflat routes waistcoat.json --today 2031-01-13 --json --seed 7

What counts is plan.weights of the file: fit, time and yarn, each from 0 to 1.
How much is knit is progress, yarn left is left, and hours are pace.
Where no size is chosen it asks which, with the chance of each; --size asks for
one. The same file, day and seed give the same bytes.
`;

export const PACE = `
Tells when it is done as planned: hours of work that are left, the likely end
of each step, the chance day by day and of the date, which step takes the
days, and the last day to ask for more yarn.

  $ dryflat example waistcoat -o waistcoat.json
  $ dryflat pace waistcoat.json --today 2031-01-13
  $ dryflat pace waistcoat.json --today 2031-01-13 --calendar waistcoat.ics

Hours for knitting, days away and timed rows are pace of the file. Where no size
is chosen each is told; --size asks for one.
`;

export const CHECK = `
Looks at files and says whether they are sound: every fault with its field,
what was given and how to mend it. A number that is possible but unlikely is
"worth a second look"; what "only you can say" is left out until you do. Neither
stops anything else.

  $ dryflat example waistcoat -o waistcoat.json
  $ dryflat check waistcoat.json
`;

export const NEW = `
Makes a record to fill in, with the usual measurements of its kind and no
number guessed. Lengths in a file are millimetres.

  $ dryflat new --kind hat --name "Harbour hat" -o hat.json
  $ dryflat check hat.json

A file that is there already is kept, unless you add --force.
`;

export const EXAMPLE = `
Lists the examples, or prints one. They are invented garments that show
different evidence, from no swatch at all to a finished garment on the bed.

  $ dryflat example
  $ dryflat example lace-shawl -o shawl.json
`;

export const SCHEMA = `
Prints the JSON Schema of a record, for editors and other programs.

  $ dryflat schema
`;

/** Command lines of a page, as a reader would type them. */
export const commandsIn = (page: string): string[] =>
  [...page.matchAll(/^ *\$ (.+)$/gm)].map(([, line]) => line ?? '');
