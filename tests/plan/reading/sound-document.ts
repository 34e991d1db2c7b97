import { archived } from '../../archive/documents';

type Json = Record<string, unknown>;

/** The archived document with every field, as plain JSON, parsed anew for every test that spoils it. */
export const soundDocument = (): Json => JSON.parse(archived('v1-full')) as Json;

/** Sets what a path like `loops[0].turns` names; `undefined` takes the field away. */
export function withValue(document: Json, path: string, value: unknown): Json {
  const keys = path.split(/[.[\]]+/).filter((key) => key !== '');
  const last = keys.pop()!;
  let at: unknown = document;
  for (const key of keys) at = (at as Json)[key];
  if (value === undefined) Reflect.deleteProperty(at as Json, last);
  else (at as Json)[last] = value;
  return document;
}
