const ONES = [
  'zero',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
  'thirteen',
  'fourteen',
  'fifteen',
  'sixteen',
  'seventeen',
  'eighteen',
  'nineteen',
] as const;
const TENS = [
  '',
  '',
  'twenty',
  'thirty',
  'forty',
  'fifty',
  'sixty',
  'seventy',
  'eighty',
  'ninety',
] as const;

const belowHundred = (n: number): string => {
  if (n < 20) return ONES[n]!;
  const ones = n % 10;
  return ones === 0 ? TENS[Math.floor(n / 10)]! : `${TENS[Math.floor(n / 10)]}-${ONES[ones]}`;
};

const belowThousand = (n: number): string => {
  if (n < 100) return belowHundred(n);
  const hundreds = `${ONES[Math.floor(n / 100)]} hundred`;
  return n % 100 === 0 ? hundreds : `${hundreds} and ${belowHundred(n % 100)}`;
};

/** A whole number from 0 to 999,999 in words: `one hundred and four`. */
export const wholeInWords = (n: number): string => {
  if (n < 1000) return belowThousand(n);
  const rest = n % 1000;
  const thousands = `${belowThousand(Math.floor(n / 1000))} thousand`;
  if (rest === 0) return thousands;
  return rest < 100
    ? `${thousands} and ${belowHundred(rest)}`
    : `${thousands} ${belowThousand(rest)}`;
};

/** Every number in a text as a voice says it: `34.5 centimetres` is `thirty-four point five centimetres`. */
export const inWords = (text: string): string =>
  text.replace(/\d{1,6}(\.\d+)?/g, (number) => {
    const [whole, part] = number.split('.');
    const said = wholeInWords(Number(whole));
    if (part === undefined) return said;
    return `${said} point ${[...part].map((digit) => ONES[Number(digit)]).join(' ')}`;
  });
