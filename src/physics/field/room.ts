/**
 * Working memory that is used again at every call: hundreds of calls a frame would otherwise leave thousands of small
 * arrays to the garbage collector. Longer than asked for, contents left over; nothing of it is handed out.
 */
const rooms: Float64Array[] = [];
export const FRAME = 0;
export const FIELD = 1;
export const FROM_END = 2;
export const FIELD_AHEAD = 3;
export const VALUE = 4;
export const PACKED = 5;
export const room = (which: number, length: number): Float64Array => {
  const known = rooms[which];
  if (known && known.length >= length) return known;
  return (rooms[which] = new Float64Array(2 * length));
};
