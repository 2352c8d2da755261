// @ts-check
// What is inside the built app, and its licences: one text, made from what the bundler put in.
import { readdirSync, readFileSync } from 'node:fs';
import { isAbsolute, join, resolve } from 'node:path';
import { ROOT } from './root.mjs';

/** Licences (SPDX) that ask for no more than that their text goes along. */
const ALLOWED = new Set([
  '0BSD',
  'Apache-2.0',
  'BlueOak-1.0.0',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'CC0-1.0',
  'ISC',
  'MIT',
  'OFL-1.1',
  'Unlicense',
]);

/**
 * What packages leave out of their own files: of brotli the decoder is another's, as its files say;
 * png-js comes with the text of a licence that it does not name.
 * @type {Readonly<Record<string, readonly string[]>>}
 */
const AS_THEIR_FILES_SAY = { brotli: ['MIT', 'Apache-2.0'], 'png-js': ['MIT'] };

/** Packages without a text of their own: they get that of the licence which they name. */
const WITHOUT_TEXT = new Set(['@humanwhocodes/momoa', 'brotli', 'dfa', 'fontkit']);

const HEAD = `What is inside Dryflat

Dryflat itself is under the licence that stands first. It is made with the work
of others; that follows, each part with its licence.

Fonts lie in the pages that are saved and printed too. Their licence lets a
document carry them, and asks nothing of the document.`;

const RULE = '-'.repeat(72);
const IS_TEXT = /^(un)?licen[cs]e|^copying|^notice/i;

/** @param {string} file */
const read = (file) =>
  readFileSync(file, 'utf8').replaceAll('\r\n', '\n').replace(/^\n+/, '').trimEnd();

const ours = () => read(join(ROOT, 'LICENSE'));

/**
 * The words of a licence, without anybody's copyright.
 * @type {Readonly<Record<string, () => string>>}
 */
const WORDS = {
  MIT: () => ours().replace(/^Copyright .*\n\n/m, ''),
  'Apache-2.0': () =>
    read(join(ROOT, 'node_modules', 'react-aria', 'LICENSE')).replace(/\n *APPENDIX:[\s\S]*/, ''),
};

/**
 * @typedef {object} Package one that has a part inside the app
 * @property {string} folder where it is installed
 * @property {string[]} files those of its files that went in
 *
 * @typedef {{ name: string, version: string, licence: string, text: string }} Notice
 */

/**
 * Where the package of a module is installed; null for a module of ours.
 * @param {string} path
 */
const folderOf = (path) => {
  const [folder] = /^.*\/node_modules\/(?:@[^/]+\/)?[^/]+/.exec(path) ?? [];
  if (folder !== undefined || isAbsolute(path)) return folder ?? null;
  // Made by the bundler, and named after the package that makes it: `vite/preload-helper.js`.
  return join(ROOT, 'node_modules', path.split('/')[0] ?? '');
};

/**
 * @param {Iterable<string>} ids modules as the bundler names them
 * @returns {Package[]}
 */
const packagesOf = (ids) => {
  /** @type {Map<string, string[]>} */
  const found = new Map();
  for (const id of ids) {
    const path = id.replace('\0', '').replace(/\?.*/, '').replaceAll('\\', '/');
    const folder = folderOf(path);
    if (folder !== null) found.set(folder, [...(found.get(folder) ?? []), path]);
  }
  return [...found].map(([folder, files]) => ({ folder, files }));
};

/**
 * Lines of copyright in the comments that files begin with.
 * @param {readonly string[]} files
 */
const copyrights = (files) =>
  files.flatMap((file) => {
    const [comment = ''] = /^\s*\/\*[\s\S]*?\*\//.exec(read(file)) ?? [];
    return comment.match(/Copyright .*\d{4}.*/g) ?? [];
  });

/**
 * The text for a package that brings none.
 * @param {Package} of
 * @param {{ author?: string | { name: string } }} manifest
 * @param {readonly string[]} licences
 * @returns {string} empty where we do not have the words of the licence
 */
const madeText = ({ files }, { author }, licences) => {
  if (!licences.every((licence) => licence in WORDS)) return '';
  const named = typeof author === 'string' ? author.replace(/ *<.*/, '') : author?.name;
  const owners = new Set([`Copyright (c) ${named}`, ...copyrights(files)]);
  const words = licences.map((licence) => WORDS[licence]?.() ?? '');
  return [[...owners].join('\n'), ...words].join('\n\n');
};

/**
 * @param {string} folder
 * @returns {string} empty where there is none
 */
const ownText = (folder) =>
  readdirSync(folder)
    .filter((name) => IS_TEXT.test(name))
    .sort()
    // What follows in Vite's is about the parts of its own programs, which stay outside.
    .map((name) =>
      read(join(folder, name))
        .replace(/\n# Licenses of bundled dep[\s\S]*/, '')
        .trim(),
    )
    .join('\n\n');

/**
 * @param {Package} of
 * @returns {Notice | { complaint: string }}
 */
const noticeOf = (of) => {
  const manifest = JSON.parse(read(join(of.folder, 'package.json')));
  const { name, version, license } = manifest;
  const licences = AS_THEIR_FILES_SAY[name] ?? [
    license ?? 'no licence that its package.json names',
  ];
  const unknown = licences.find((licence) => !ALLOWED.has(licence));
  if (unknown !== undefined) return { complaint: `${name} ${version} is under ${unknown}` };
  const own = ownText(of.folder);
  const text = own === '' && WITHOUT_TEXT.has(name) ? madeText(of, manifest, licences) : own;
  if (text === '') return { complaint: `${name} ${version} comes without the text of its licence` };
  return { name, version, licence: licences.join(' and '), text };
};

/**
 * One text with the licence of every package that the modules belong to; packages with the same text
 * share it. Throws, with every package by name, where one may not go in as it is.
 * @param {Iterable<string>} ids modules as the bundler names them
 */
export const noticesOf = (ids) => {
  const told = packagesOf(ids).map(noticeOf);
  const complaints = told.flatMap((each) => ('complaint' in each ? [each.complaint] : []));
  if (complaints.length > 0)
    throw new Error(
      `Not everything in the app may be passed on as it is:\n  ${complaints.join('\n  ')}\n` +
        'Leave it out, or, where its sources allow it, say so in scripts/lib/notices.mjs.',
    );
  /** @type {Map<string, string[]>} */
  const byText = new Map([[ours(), ['Dryflat: MIT']]]);
  const notices = told.flatMap((each) => ('complaint' in each ? [] : [each]));
  for (const { name, version, licence, text } of notices.sort((a, b) => (a.name < b.name ? -1 : 1)))
    byText.set(text, [...(byText.get(text) ?? []), `${name} ${version}: ${licence}`]);
  const sections = [...byText].map(([text, names]) => `${names.join('\n')}\n\n${text}`);
  return `${[HEAD, ...sections].join(`\n\n${RULE}\n\n`)}\n`;
};

/**
 * Parts of a Vite build that write `notices.txt`: `seen` goes among the plugins of workers, `told`
 * among those of the page.
 * @param {readonly string[]} [also] packages that other tools put in, out of the bundler's sight
 */
export const notices = (also = []) => {
  const ids = new Set(also.map((name) => join(ROOT, 'node_modules', name, 'package.json')));
  /** @type {(bundle: import('vite').Rolldown.OutputBundle, root: string) => void} */
  const see = (bundle, root) => {
    for (const part of Object.values(bundle)) {
      const files =
        part.type === 'chunk'
          ? part.moduleIds
          : part.originalFileNames.map((file) => resolve(root, file));
      for (const id of files) ids.add(id);
    }
  };
  /** @type {import('vite').Plugin} */
  const seen = {
    name: 'notices-seen',
    generateBundle(_, bundle) {
      see(bundle, this.environment.config.root);
    },
  };
  /** @type {import('vite').Plugin} */
  const told = {
    name: 'notices-told',
    generateBundle(_, bundle) {
      see(bundle, this.environment.config.root);
      this.emitFile({ type: 'asset', fileName: 'notices.txt', source: noticesOf(ids) });
    },
  };
  return { seen, told };
};
