/** What a field holds, in words, told from the ending of its name; used where a value is no such thing. */
const BY_NAME: readonly (readonly [RegExp, string])[] = [
  [/^(mm|.*Mm)$/, 'a length in millimetres'],
  [/^(massG|gramsEach)$/, 'a mass in grams'],
  [/^(metresEach|metresPer100g)$/, 'a length of yarn in metres'],
  [/^percent$/, 'a share in percent'],
  [/^(count|stitches|rows|skeins|counts)$/, 'a count'],
  [/^values$/, 'a length in millimetres'],
  [/^(on|finishBy|away|from)$/, 'a day like 2031-04-09'],
  [/^weightClass$/, 'a whole yarn weight class'],
  [/^washes$/, 'a whole number of washes'],
  [/^(id|measurement|landmark|table)$/, 'a short id'],
  [/^temperatureC$/, 'a temperature in °C'],
  [/^(humidityPercent|air)$/, 'a relative humidity in percent'],
  [/^share$/, 'a share from 0 to 1'],
  [/^minutes$/, 'a number of minutes'],
  [/^hours$/, 'a number of hours'],
  [/^wet$/, 'a mass in grams'],
  [/^data$/, 'a picture in base64'],
];

/** Names that hold a moment where they hold a text. */
const MOMENT = /^(begun|pinned|dried|turned|at)$/;

const BY_TYPE: Readonly<Record<string, string>> = {
  string: 'a text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list in [ ]',
  object: 'a group of fields in { }',
};

const fieldName = (path: readonly PropertyKey[]): string =>
  String(path.findLast((step) => typeof step === 'string') ?? '');

/** What is expected at a path: its meaning where the name tells, the bare type otherwise. */
export const expectedAt = (path: readonly PropertyKey[], type: string): string => {
  const bare = BY_TYPE[type] ?? 'another kind of value';
  const isList = type === 'array' || type === 'object';
  if (type === 'string' && MOMENT.test(fieldName(path)))
    return 'a moment like 2031-04-09T18:30:00Z';
  const byName = isList ? undefined : BY_NAME.find(([name]) => name.test(fieldName(path)))?.[1];
  return byName ?? bare;
};
