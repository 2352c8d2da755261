import fc from 'fast-check';
import { expect, test } from 'vitest';
import { withoutName } from './nameless.ts';

test.each([
  ['Emlen Varr', 'Waistcoat for Emlen', 'Waistcoat for the wearer'],
  ['Emlen Varr', 'EMLEN VARR’s, and emlen’s own', 'the wearer’s, and the wearer’s own'],
  [
    'Sunna Lyle-Marrow',
    'Marrow green, Lyle-Marrow, Sunna',
    'the wearer green, the wearer, the wearer',
  ],
  ['Emlen Varr', 'Varrow stitch is no name', 'Varrow stitch is no name'],
  ['Ana de Sá', 'de luxe for Ana', 'de luxe for the wearer'],
  ['Ида', 'Свитер: Ида', 'Свитер: the wearer'],
  ['A. (B) *', 'nothing [here]', 'nothing [here]'],
  ['', 'Nobody in particular', 'Nobody in particular'],
])('PA54: of %s, %s is %s', (name, text, said) => {
  expect(withoutName(name)(text)).toBe(said);
});

test('PA54: no part of a name of three letters or more is left, whatever stands around it', () => {
  const part = fc
    .stringMatching(/^[A-Z][a-z]{3,8}$/)
    .filter((each) => !/^(the|wearer)$/i.test(each));
  fc.assert(
    fc.property(part, part, fc.constantFrom(' ', '-', ', '), (given, family, joint) => {
      const said = withoutName(`${given}${joint}${family}`)(
        `For ${family}, by ${given}: “${given}”.`,
      );
      const words = said.toLowerCase().match(/\p{L}+/gu) ?? [];
      expect(words).not.toContain(given.toLowerCase());
      expect(words).not.toContain(family.toLowerCase());
    }),
  );
});
