import { type GarmentRecord, garmentRecord } from '../schema/garment.ts';
import { inSchemaOrder } from './key-order.ts';

/**
 * A record as the text of a file: keys in the schema's order, two spaces, a newline at the end.
 * Equal records give equal bytes; reading the text and writing it again changes nothing.
 */
export const writeRecord = (record: GarmentRecord): string =>
  `${JSON.stringify(inSchemaOrder(record, garmentRecord), null, 2)}\n`;
