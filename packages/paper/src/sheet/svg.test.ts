import { expect, test } from 'vitest';
import { PAPERS } from './paper-size.ts';
import type { Mark } from './sheet.ts';
import { toSvg } from './svg.ts';

const marks: Mark[] = [
  {
    kind: 'line',
    from: { x: 8, y: 20 },
    to: { x: 108, y: 20 },
    stroke: { colour: '#000000', widthMm: 0.25, dash: [1, 2] },
  },
  { kind: 'path', d: 'M1 2L3 4', stroke: { colour: '#000000', widthMm: 0.1 } },
  { kind: 'box', x: 1, y: 2, width: 3, height: 4, fill: '#ffffff' },
  { kind: 'dot', x: 1, y: 2, radius: 3, fill: '#000000' },
  {
    kind: 'text',
    x: 1.23456,
    y: 2,
    text: 'a < b & "c" 13⅜',
    sizeMm: 3,
    weight: 'strong',
    align: 'end',
    colour: '#000000',
  },
  {
    kind: 'picture',
    x: 1,
    y: 2,
    width: 3,
    height: 4,
    type: 'image/jpeg',
    base64: 'AAAA',
    alt: 'x',
  },
];
const svg = toSvg({ ...PAPERS.letter, title: 'a <title>', marks });

test('PA10: an SVG has its size in millimetres, and a unit is one', () => {
  expect(svg).toContain('width="215.9mm" height="279.4mm" viewBox="0 0 215.9 279.4"');
});

test('PA11: every mark is drawn, to a thousandth of a millimetre', () => {
  expect(svg).toContain(
    '<line x1="8" y1="20" x2="108" y2="20" stroke="#000000" stroke-width="0.25" stroke-dasharray="1 2"/>',
  );
  for (const name of ['path', 'rect', 'circle', 'text', 'image'])
    expect(svg).toContain(`<${name} `);
  expect(svg).toContain('x="1.235"');
});

test('PA12: text is escaped, fractions stay characters', () => {
  expect(svg).toContain('a &lt; b &amp; &quot;c&quot; 13⅜</text>');
  expect(svg).toContain('<title>a &lt;title&gt;</title>');
});
