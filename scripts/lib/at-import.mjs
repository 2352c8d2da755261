// @ts-check
// What a file calls while it is imported, read from its syntax: time does not tell on a busy machine.
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import ts from 'typescript';
import { filesEnding } from './measuring.mjs';
import { ROOT } from './root.mjs';

/** Calls that plan, draw, or start a program. */
export const WORK = [
  'planBlock',
  'replan',
  'learnOnMat',
  'matModel',
  'pinPiece',
  'forecast',
  'routes',
  'paceForecast',
  'drawPace',
  'skeinAdvice',
  'forecastDrying',
  'drawDryings',
  'countsOfPiece',
  'spawnSync',
];

/** Calls that keep the functions given to them for later. Any other may call them at once, as `describe` and `map` do. */
const LATER = new Set(['it', 'test', 'beforeAll', 'beforeEach', 'afterAll', 'afterEach', 'once']);

/**
 * @typedef {object} File
 * @property {string} path
 * @property {ts.SourceFile} source
 * @property {Map<string, ts.Node[]>} functions by name, at any depth
 * @property {Map<string, { from: string, name: string }>} imports by local name; those of this repository only
 * @property {string[]} sources files that it imports from, or passes on
 */

/** @param {ts.Node} node */
const isFunction = (node) => ts.isFunctionLike(node) && 'body' in node;

/**
 * The name that a call goes by: `describe` of `describe.each(…)('…', …)`.
 * @param {ts.Expression} callee
 * @returns {string | null}
 */
const nameOf = (callee) => {
  if (ts.isIdentifier(callee)) return callee.text;
  if (ts.isPropertyAccessExpression(callee) || ts.isCallExpression(callee))
    return nameOf(callee.expression);
  return null;
};

/** Reads files once, and finds out what runs when one of them is imported. */
const importReader = () => {
  /** @type {Map<string, File>} */
  const files = new Map();

  /**
   * @param {string} path
   * @returns {File}
   */
  const read = (path) => {
    const known = files.get(path);
    if (known !== undefined) return known;
    const source = ts.createSourceFile(
      path,
      readFileSync(path, 'utf8'),
      ts.ScriptTarget.Latest,
      true,
    );
    /** @type {File} */
    const file = { path, source, functions: new Map(), imports: new Map(), sources: [] };
    files.set(path, file);
    /** @param {ts.Node} node */
    const gather = (node) => {
      if (ts.isVariableDeclaration(node) && ts.isIdentifier(node.name) && node.initializer)
        if (isFunction(node.initializer)) add(node.name.text, node.initializer);
      if (ts.isFunctionDeclaration(node) && node.name) add(node.name.text, node);
      if ((ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) && node.moduleSpecifier)
        follow(node, /** @type {ts.StringLiteral} */ (node.moduleSpecifier).text);
      ts.forEachChild(node, gather);
    };
    /**
     * @param {string} name
     * @param {ts.Node} node
     */
    const add = (name, node) =>
      file.functions.set(name, [...(file.functions.get(name) ?? []), node]);
    /**
     * @param {ts.ImportDeclaration | ts.ExportDeclaration} node
     * @param {string} specifier
     */
    const follow = (node, specifier) => {
      const from = join(dirname(path), specifier);
      if (!specifier.startsWith('.') || !/\.(ts|tsx|mjs)$/.test(from) || !existsSync(from)) return;
      file.sources.push(from);
      const names = ts.isImportDeclaration(node)
        ? node.importClause?.namedBindings
        : node.exportClause;
      if (names !== undefined && (ts.isNamedImports(names) || ts.isNamedExports(names)))
        for (const each of names.elements)
          file.imports.set(each.name.text, { from, name: (each.propertyName ?? each.name).text });
    };
    gather(source);
    return file;
  };

  /**
   * Functions that a name stands for in a file.
   * @param {File} file
   * @param {string} name
   * @returns {{ file: File, node: ts.Node }[]}
   */
  const meant = (file, name) => {
    const own = file.functions.get(name);
    if (own !== undefined) return own.map((node) => ({ file, node }));
    const imported = file.imports.get(name);
    return imported === undefined ? [] : meant(read(imported.from), imported.name);
  };

  /**
   * Calls of WORK that importing the file makes, each with the way to it, like `PLAN > planOf > planBlock`.
   * @param {string} path
   * @returns {string[]}
   */
  const workAtImport = (path) => {
    /** @type {Set<string>} */
    const found = new Set();
    /** @type {Set<ts.Node>} */
    const seen = new Set();

    /**
     * @param {ts.Node} node
     * @param {File} file
     * @param {string} way
     * @returns {void}
     */
    const run = (node, file, way) => {
      if (seen.has(node)) return;
      seen.add(node);
      ts.forEachChild(node, (child) => visit(child, file, way));
    };

    /**
     * @param {ts.Node} node
     * @param {File} file
     * @param {string} way
     * @returns {void}
     */
    const visit = (node, file, way) => {
      if (ts.isImportDeclaration(node) || ts.isTypeNode(node) || isFunction(node)) return;
      if (!ts.isCallExpression(node))
        return ts.forEachChild(node, (child) => visit(child, file, way));
      const name = nameOf(node.expression);
      const plain = ts.isIdentifier(node.expression);
      if (name !== null && plain && WORK.includes(name) && !file.functions.has(name))
        found.add(`${way} > ${name}`);
      else if (name !== null && plain)
        for (const each of meant(file, name)) run(each.node, each.file, `${way} > ${name}`);
      if (isFunction(node.expression)) run(node.expression, file, way);
      else visit(node.expression, file, way);
      for (const given of node.arguments) {
        if (!isFunction(given)) visit(given, file, way);
        else if (name === null || !LATER.has(name)) run(given, file, way);
      }
    };

    /** @param {string} each */
    const importing = (each) => {
      const file = read(each);
      if (seen.has(file.source)) return;
      run(file.source, file, each);
      for (const from of file.sources) importing(from);
    };
    importing(path);
    return [...found];
  };

  return workAtImport;
};

/**
 * What importing one file does.
 * @param {string} path
 */
export const workAtImport = (path) => importReader()(path);

/** Test files of the repository that work while they are imported, with what they call; and kinds of work that no test calls any more. */
export const planningAtImport = () => {
  const workOf = importReader();
  const tests = ['.test.ts', '.test.tsx', '.e2e.ts'].flatMap(filesEnding);
  const files = tests.flatMap((file) =>
    workOf(join(ROOT, file)).map((way) => way.replaceAll(`${ROOT}/`, '')),
  );
  const all = tests.map((file) => readFileSync(join(ROOT, file), 'utf8')).join('\n');
  return { files, missing: WORK.filter((name) => !all.includes(`${name}(`)) };
};
