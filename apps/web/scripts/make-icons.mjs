#!/usr/bin/env node
// Draws the app's icons from public/icon.svg with a headless Chromium. Run after changing the SVG.
import { readFile, writeFile } from 'node:fs/promises';
import { chromium } from 'playwright-core';

const folder = new URL('../public/', import.meta.url);
const svg = await readFile(new URL('icon.svg', folder), 'utf8');
const bleed = svg.replace('rx="14"', 'rx="0"');

/** `inset`: a masked icon keeps its drawing inside the middle 80 % (W3C Web App Manifest, "safe zone"). */
const ICONS = [
  { name: 'icon-180.png', size: 180, drawing: bleed, inset: 0 },
  { name: 'icon-192.png', size: 192, drawing: svg, inset: 0 },
  { name: 'icon-512.png', size: 512, drawing: svg, inset: 0 },
  { name: 'icon-512-masked.png', size: 512, drawing: bleed, inset: 0.1 },
];

const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu'],
});
const page = await browser.newPage();
for (const { name, size, drawing, inset } of ICONS) {
  await page.setViewportSize({ width: size, height: size });
  const ground = inset > 0 ? '#2f4180' : 'transparent';
  const side = size * (1 - 2 * inset);
  await page.setContent(
    `<body style="margin:0;display:grid;place-items:center;height:100vh;background:${ground}">
     <div style="width:${side}px;height:${side}px">${drawing}</div>`,
  );
  const png = await page.screenshot({ omitBackground: true, type: 'png' });
  await writeFile(new URL(name, folder), png);
}
await browser.close();
