import type { GarmentKind } from '@dryflat/engine/garment';
import type { GarmentRecord } from '../schema/garment.ts';
import { CURRENT_VERSION, FORMAT } from '../schema/version.ts';

/** A new record that says nothing yet but what it is; nothing in it is guessed for the knitter. */
export const emptyRecord = (from: {
  id: string;
  name: string;
  kind: GarmentKind;
}): GarmentRecord => ({
  format: FORMAT,
  version: CURRENT_VERSION,
  id: from.id,
  name: from.name,
  kind: from.kind,
  stitch: 'stockinette',
  wearer: { name: '', group: 'not-said', body: [], wanted: [] },
  pattern: { name: '', sizes: [], measurements: [] },
  yarns: [],
  evidence: [],
  pieces: [],
  plan: { washing: 'not-said', drying: 'lay', pinTo: [], judgeAt: 'dried' },
  forecasts: [],
  outcomes: [],
  notes: [],
});
