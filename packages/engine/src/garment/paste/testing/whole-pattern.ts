/** The head of an invented pattern, as it is copied from its first pages. */
const HEAD = `Harbour Step
A pullover in one piece, knit in the round from the lower edge up, with a yoke in two colors.
Shown in size 2 on a body of 36 in / 91.5 cm, with 4 in / 10 cm of positive ease.

SIZES
Sizes: 1 (2, 3, 4, 5)
To fit bust: 32 (36, 40, 44, 48) in / 81.5 (91.5, 101.5, 112, 122) cm

FINISHED MEASUREMENTS
Chest circumference: 36 (40, 44, 48, 52) in / 91.5 (101.5, 112, 122, 132) cm
Length, hem to shoulder: 22 (22½, 23, 23½, 24) in / 56 (57, 58.5, 59.5, 61) cm
Length to underarm: 14 (14, 14½, 14½, 15) in / 35.5 (35.5, 37, 37, 38) cm
Yoke depth: 8 (8½, 8½, 9, 9) in / 20.5 (21.5, 21.5, 23, 23) cm
Upper arm, around: 13 (14, 15, 16, 17½) in / 33 (35.5, 38, 40.5, 44.5) cm
Cuff: 8 (8, 8½, 9, 9) in / 20.5 (20.5, 21.5, 23, 23) cm
Sleeve length: 17 (17½, 17½, 18, 18) in / 43 (44.5, 44.5, 45.5, 45.5) cm
Rib depth: 2 (2, 2, 2, 2) in / 5 (5, 5, 5, 5) cm

MATERIALS
Worsted weight wool, 200 m / 220 yd to 100 g: 5 (5, 6, 7, 7) skeins of A, 1 (1, 1, 2, 2) of B
US 7 (4.5 mm) circular needles, 16 in and 32 in / 40 and 80 cm long
Size US 5 (3.75 mm) circular needle and double-pointed needles for the ribbing
5 stitch markers, one of them different; 4 lengths of waste yarn, 12 in / 30 cm each

GAUGE
18 sts and 24 rows = 4 in / 10 cm in stockinette on the larger needles, after blocking

ABBREVIATIONS
k: knit. p: purl. k2tog: knit 2 together. ssk: slip 2, knit them together. m1: make 1.
`;

/** Lines of instructions; `#` becomes a number, `@` a number for each of the five sizes. */
const INSTRUCTIONS = [
  'BODY',
  'With smaller needles and A, cast on @ sts. Join to work in the round and place a marker.',
  'Rnd #: (k1, p1) to the end.',
  'Work in ribbing until the piece measures 2 in / 5 cm from the cast-on edge.',
  'Next rnd: change to larger needles, (k#, m1) # times, k to the end. @ sts.',
  'Knit # rnds, or until the body measures 14 (14, 14½, 14½, 15) in / 35.5 (35.5, 37, 37, 38) cm.',
  'Row # (RS): k#, ssk, k to # sts before the marker, k2tog, k#. @ sts remain.',
  'Rows # and #: p.',
  'Sizes 1 (2, 3) only: repeat the last # rows @ times more.',
  'Size 4 only:',
  'Rep rows # to # until armhole measures 8 (8½, 8½, 9, 9) in, ending with a WS row.',
  'and at the same time, when sleeve measures # in / # cm from the underarm, begin the shaping:',
  'decrease # sts at each end of every #th row @ times, then every #th row @ times (see chart, page #).',
  'SLEEVES (make 2)',
  'Place the next @ sts on waste yarn for the second sleeve, leaving a tail of 12 in / 30 cm.',
  'Pick up and knit @ sts along the edge at a rate of 3 sts for every 4 rows.',
  'Rnd #: *k# A, k# B; repeat from * to the last # sts, k#.',
  'Bind off @ sts loosely. Break the yarn (do not pull it tight',
  '#',
  'YOKE AND FINISHING',
  'Next row (WS): p# (#, #, #, #), pm, p to the last # (#, #, #, #) sts, pm, p to the end.',
  'Soak for 20 min, press the water out and lay it flat to 40 in / 101.5 cm at the chest.',
];

/** The same number for every size, a little larger from one to the next. */
const perSize = (first: number): string =>
  `${first} (${[1, 2, 3, 4].map((k) => first + 8 * k).join(', ')})`;

/**
 * A whole pattern of our own making, of so many characters, the same every time: a head with its sizes,
 * nine lines of measurements, one gauge, and instructions to the end.
 */
export const wholePattern = (length: number): string => {
  let text = HEAD;
  for (let at = 0; text.length < length; at++) {
    const line = INSTRUCTIONS[at % INSTRUCTIONS.length]!;
    let number = at % 37;
    text += `\n${line.replace(/[#@]/g, (mark) => (mark === '#' ? `${1 + (++number % 30)}` : perSize(20 + ((7 * at) % 90))))}`;
  }
  return text.slice(0, length);
};

/** Names of the measurements that it holds, in order; the first is of the body. */
export const WHOLE_PATTERN_NAMES = [
  'To fit bust',
  'Chest circumference',
  'Length, hem to shoulder',
  'Length to underarm',
  'Yoke depth',
  'Upper arm, around',
  'Cuff',
  'Sleeve length',
  'Rib depth',
];
