import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { build } from 'vite';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { insideTheApp } from './inside.mjs';
import { notices } from './notices.mjs';

let root: string;
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'dryflat-notices-'));
});
afterEach(() => rmSync(root, { recursive: true }));

const save = (path: string, content: string | object) => {
  mkdirSync(dirname(join(root, path)), { recursive: true });
  const text = typeof content === 'string' ? content : JSON.stringify(content);
  writeFileSync(join(root, path), text);
};

describe('a page that is put together', () => {
  const install = (name: string, licence: object, files: Readonly<Record<string, string>>) => {
    const manifest = { name, version: '1.2.3', main: 'index.js', ...licence };
    for (const [file, content] of Object.entries({ ...files, 'package.json': manifest }))
      save(`node_modules/${name}/${file}`, content);
  };
  const built = async (...imports: readonly string[]): Promise<string> => {
    save('index.html', '<script type="module" src="./page.js"></script>');
    save('page.js', imports.join('\n'));
    const { seen, told } = notices();
    await build({
      configFile: false,
      root,
      logLevel: 'silent',
      plugins: [told],
      worker: { plugins: () => [seen] },
    });
    return readFileSync(join(root, 'dist', 'notices.txt'), 'utf8');
  };
  const SAYS = "import { say } from 'says'; say();";

  it('tells of what went in: into the page, a worker, a style; and of nothing else', async () => {
    const code = { 'index.js': 'export const say = () => console.log("said");' };
    install('says', { license: 'MIT' }, { ...code, LICENSE: 'Copyright of says' });
    install('works', { license: 'ISC' }, { ...code, 'license.md': 'Copyright of works' });
    install(
      '@types/faces',
      { license: 'OFL-1.1' },
      {
        LICENSE: 'Copyright of faces',
        'face.css': '@font-face { font-family: F; src: url(./face.woff2) }',
        'face.woff2': 'a face'.repeat(1000),
      },
    );
    install('drops', { license: 'GPL-3.0' }, code);
    save('worker.js', "import { say } from 'works'; say();");
    save('page.css', "@font-face { font-family: G; src: url('@types/faces/face.woff2') }");
    const text = await built(
      SAYS,
      "import { say as dropped } from 'drops';",
      "import './page.css';",
      "new Worker(new URL('./worker.js', import.meta.url), { type: 'module' });",
    );
    expect(text).toContain('says 1.2.3: MIT\n\nCopyright of says');
    expect(text).toContain('works 1.2.3: ISC\n\nCopyright of works');
    expect(text).toContain('@types/faces 1.2.3: OFL-1.1\n\nCopyright of faces');
    expect(text).not.toContain('drops');
  });

  it.each([
    ['no text of its licence', { license: 'MIT' }, {}, 'says 1.2.3 comes without the text'],
    ['a licence that asks for more', { license: 'GPL-3.0' }, { LICENSE: 'GPL' }, 'under GPL-3.0'],
    ['a text, and no name of it', {}, { LICENSE: 'Do as you like' }, 'under no licence that its'],
  ])('is not made with a package that has %s', async (_, licence, texts, complaint) => {
    install('says', licence, { 'index.js': 'export const say = () => console.log(1);', ...texts });
    await expect(built(SAYS)).rejects.toThrow(complaint);
  });
});

it('the app tells of every package whose lines its source maps name, and of every font', async () => {
  const { inside, untold } = await insideTheApp();
  const names = inside.map((each) => each.replace(/ .*/, ''));
  expect(names).toEqual(
    expect.arrayContaining(['react', 'pdfkit', 'workbox-precaching', '@fontsource/open-sans']),
  );
  expect(untold).toEqual([]);
});
