export { flow, type PageFrame } from './flow/flow.ts';
export { type FullSizeOptions, fullSize } from './full-size/full-size.ts';
export {
  type BlankInput,
  blankInput,
  type PaperGiven,
  type PaperInput,
  paperInput,
} from './input/paper-input.ts';
export type { PageOptions, Telling } from './input/telling.ts';
export { measuringSheet } from './pages/measuring-sheet.ts';
export { planPage } from './pages/plan-page.ts';
export { reportHtml } from './report/html.ts';
export { reportMarkdown } from './report/markdown.ts';
export { type Report, type ReportGiven, reportOf } from './report/report.ts';
export { reportSheets } from './report/sheets.ts';
export { PAPERS, type PaperName } from './sheet/paper-size.ts';
export { type PdfAbout, toPdf } from './sheet/pdf.ts';
export type { Mark, Sheet } from './sheet/sheet.ts';
export { toSvg } from './sheet/svg.ts';
export { FACE_FILES, type FaceName } from './type/face-files.ts';
export { type Faces, facesFrom } from './type/faces.ts';
