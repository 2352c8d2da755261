/** Parts of a name shorter than this are words of their own as often as not. */
const LEAST = 3;

const literal = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** The whole name, then each part of it: given names, family names, halves of double names. */
const partsOf = (name: string): string[] => {
  const whole = name.trim();
  const parts = whole.split(/[\s,.]+/).flatMap((part) => [part, ...part.split('-')]);
  const known = [whole, ...parts.filter((part) => part.length >= LEAST)];
  return [...new Set(known.filter((part) => part !== ''))].sort((a, b) => b.length - a.length);
};

/** Says “the wearer” for every mention of a person's name, or of a part of it. */
export const withoutName = (name: string): ((text: string) => string) => {
  const parts = partsOf(name);
  if (parts.length === 0) return (text) => text;
  const mention = new RegExp(
    `(?<![\\p{L}\\p{N}])(?:${parts.map(literal).join('|')})(?![\\p{L}\\p{N}])`,
    'giu',
  );
  return (text) => text.replace(mention, 'the wearer');
};
