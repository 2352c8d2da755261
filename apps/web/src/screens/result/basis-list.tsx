import type { Basis, BasisKind } from '@dryflat/engine/fabric';
import { REFERENCES, type ReferenceKey, type Standing } from '@dryflat/engine/textile';
import { useSentences } from './craft-sentence.ts';
import './result.css';

const KINDS: Readonly<Record<BasisKind, string>> = {
  measured: 'measured by you',
  'from-pattern': 'from the pattern',
  published: 'published',
  'common-practice': 'common practice, no source',
  'from-memory': 'from memory',
  assumption: 'assumption',
};

const SEEN: Readonly<Record<Standing, string>> = {
  read: 'read in the work itself',
  'read-second-hand': 'as quoted by others',
  'from-memory': 'from memory',
  data: 'computed here from its open data',
};

/** The bases of these ids in their order, each with its kind and, where published, its source. */
export const BasisList = ({ bases, ids }: { bases: readonly Basis[]; ids: readonly string[] }) => {
  const listed = ids.flatMap((id) => bases.find((each) => each.id === id) ?? []);
  return (
    <ol className="df-bases">
      {listed.map((basis) => (
        <BasisItem key={basis.id} basis={basis} />
      ))}
    </ol>
  );
};

const BasisItem = ({ basis }: { basis: Basis }) => {
  const { plain, own } = useSentences();
  // A measurement's line begins with the name that the knitter gave it.
  const text = basis.kind === 'measured' ? plain(basis.text) : own(basis.text);
  return (
    <li data-kind={basis.kind}>
      <span className="df-kind">{KINDS[basis.kind]}</span>
      <span>{text}</span>
      {basis.source !== null && <Citation source={basis.source} />}
    </li>
  );
};

const Citation = ({ source }: { source: string }) => {
  const work = REFERENCES[source as ReferenceKey];
  if (work === undefined) return <cite>{source}</cite>;
  const { authors, year, title, where, link, standing } = work;
  return (
    <span className="df-soft">
      {authors} ({year}). <cite>{title}</cite>. {where}.{' '}
      {link !== null && <span className="df-address">{link}</span>} ({SEEN[standing]})
    </span>
  );
};
