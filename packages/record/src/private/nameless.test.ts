import fc from 'fast-check';
import { expect, test } from 'vitest';
import { withoutName } from './nameless.ts';

test.each([
  ['Emlen Varr', 'Waistcoat for Emlen', 'Waistcoat for the wearer'],
  ['Emlen Varr', 'EMLEN VARR’s, and emlen’s own', 'the wearer’s, and the wearer’s own'],
  ['Emlen Varr', 'Emlens Weste', 'the wearer Weste'],
  [
    'Sunna Lyle-Marrow',
    'Marrow green, Lyle-Marrow, Sunna',
    'the wearer green, the wearer, the wearer',
  ],
  ['Emlen Varr', 'Varrow stitch is no name', 'Varrow stitch is no name'],
  ['Ana de Sá', 'de luxe for Ana, Sá and all', 'de luxe for the wearer, the wearer and all'],
  ['Bo Lind', 'Bo’s socks, both of them', 'the wearer’s socks, both of them'],
  ['Zoe\u0308', 'ZO\u00cb, Zoe\u0308', 'the wearer, the wearer'],
  ['Ида', 'Свитер: Ида', 'Свитер: the wearer'],
  ['Joost van der Mere', 'a van for Joost', 'a van for the wearer'],
  ['emlen varr', 'Weste: Varr', 'Weste: the wearer'],
  ['小梅', '小梅的毛衣', 'the wearer的毛衣'],
  ['נועה', 'סוודר לנועה', 'סוודר לthe wearer'],
  ['A. (B) *', 'nothing [here]', 'nothing [here]'],
  ['', 'Nobody in particular', 'Nobody in particular'],
])('R96: of %s, %s is %s', (name, text, said) => {
  expect(withoutName(name, 'the wearer')(text)).toBe(said);
});

test('R96: no part of a name of three letters or more is left, whatever stands around it', () => {
  const part = fc
    .stringMatching(/^[A-Z][a-z]{3,8}$/)
    .filter((each) => !/^(the|wearer)s?$/i.test(each));
  fc.assert(
    fc.property(part, part, fc.constantFrom(' ', '-', ', '), (given, family, joint) => {
      const said = withoutName(
        `${given}${joint}${family}`,
        'the wearer',
      )(`For ${family}, by ${given}: “${given}”, ${family}s.`);
      const words = said.toLowerCase().match(/\p{L}+/gu) ?? [];
      expect(words).not.toContain(given.toLowerCase());
      expect(words).not.toContain(family.toLowerCase());
    }),
  );
});
