import type { GaugeForecast } from '@dryflat/engine/garment';
import { Button, Card, FaultList, toast, useFaultText } from '../../kit/index.ts';
import { useView } from '../../store/index.ts';
import type { PartCounts, PieceAnswer } from '../../worker/counts/index.ts';
import { useSentences } from '../result/craft-sentence.ts';
import { copyText } from './copy-text.ts';
import { heelLine, partLines, partTitle, pieceText, pieceTitle } from './counts-text.ts';
import { MeasureTable } from './measure-table.tsx';
import { Outlines, type ShownOutline } from './outlines.tsx';

/** One piece in stitches and rows, as written instructions, with what rounding does to it. */
export const PieceCountsCard = ({ piece, gauge }: { piece: PieceAnswer; gauge: GaugeForecast }) => {
  const { words } = useView();
  const { plain } = useSentences();
  const print = useFaultText();
  const title = pieceTitle(piece);
  const heel = heelLine(piece);
  const faults = piece.faults.map((fault) => ({
    ...fault,
    field: '',
    given: '',
    problem: print(fault.problem),
  }));
  const copy = async () => {
    const copied = await copyText(pieceText(piece, words, plain));
    toast(copied ? `${title} is copied.` : 'This browser does not let it be copied.');
  };
  return (
    <div className="co-piece">
      <Card title={title}>
        <FaultList faults={faults} />
        {piece.parts.map((part) => (
          <div className="co-part" key={part.part ?? 'whole'}>
            <Part part={part} piece={piece} gauge={gauge} />
            {part.part === 'leg' && heel && <p>{heel}</p>}
          </div>
        ))}
        {piece.parts.length > 0 && (
          <div className="df-row co-not-printed">
            <Button icon="copy" onPress={copy}>
              Copy<span className="df-unseen">: {title}</span>
            </Button>
          </div>
        )}
      </Card>
    </div>
  );
};

const Part = ({
  part,
  piece,
  gauge,
}: {
  part: PartCounts;
  piece: PieceAnswer;
  gauge: GaugeForecast;
}) => {
  const { words } = useView();
  const { plain, own } = useSentences();
  const { counts, drawn } = part;
  const heading = partTitle(part);
  const name = heading ?? pieceTitle(piece);
  const shown: ShownOutline[] = [
    ...(part.part === null
      ? [{ as: 'wanted' as const, label: 'wanted', outline: piece.outline }]
      : []),
    ...(drawn ? [{ as: 'counts' as const, label: 'these counts', outline: drawn }] : []),
  ];
  return (
    <>
      {heading && <h3>{heading}</h3>}
      <div className="co-beside">
        <ol className="co-steps">
          {partLines(part, words, plain).map((line, at) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: the list is written anew as a whole
            <li key={at}>{line}</li>
          ))}
        </ol>
        <Outlines
          title={`${name}: outline of these counts${part.part === null ? ' over the one wanted' : ''}`}
          shown={shown}
        />
      </div>
      <MeasureTable
        title={`What rounding does: ${name}`}
        measures={counts.measures}
        asKnitRowMm={counts.pitch.state === 'asKnit' ? null : gauge.row.asKnit.p50Mm}
      />
      {counts.notices.map(({ code, text }) => (
        <p className="df-soft" key={code}>
          {own(text)}
        </p>
      ))}
    </>
  );
};
