import * as z from 'zod';
import { garmentRecord } from './schema/garment.ts';
import { CURRENT_VERSION } from './schema/version.ts';

/** Name of the published file: the version is in it, and a published version never changes. */
export const SCHEMA_FILE = `dryflat-garment-${CURRENT_VERSION}.schema.json`;

/** The structure of a record as JSON Schema (draft 2020-12), made from the schema that reading uses. */
export const jsonSchema = (): object => ({
  $id: `urn:dryflat:garment:${CURRENT_VERSION}`,
  title: 'Dryflat garment record',
  description:
    'One hand-knitted garment: wearer, pattern, yarns, evidence, pieces, plan, kept forecasts, outcomes. Lengths are millimetres, masses grams, days ISO 8601.',
  ...z.toJSONSchema(garmentRecord, { target: 'draft-2020-12' }),
});

/** The text of the published file. */
export const schemaText = (): string => `${JSON.stringify(jsonSchema(), null, 2)}\n`;
