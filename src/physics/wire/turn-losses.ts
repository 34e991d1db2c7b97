/**
 * Proximity loss of a stack of wires turn by turn: with currents I_v in the turns, a wire at distance d_wv from those of
 * the others sits in the transverse field Σ I_v/(2πd_wv) of line currents, and loses in proportion to its square. That is
 * a quadratic form in the currents. With one current in all it is `proximityResistance`.
 */

/**
 * 1/m²: Σ_w (1/2πd_wv)(1/2πd_wu) for every two turns v and u, row by row. `wires` in the column, an equal number of them of
 * each turn, neighbours of one turn next to one another; `pitch` in metres. Times twice the loss of a wire in a field of
 * 1 A/m it is the turns' matrix of resistances per metre.
 */
export const turnLosses = (wires: number, turns: number, pitch: number): Float64Array => {
  const each = wires / turns;
  const matrix = new Float64Array(turns * turns);
  const field = new Float64Array(turns);
  for (let w = 0; w < wires; w++) {
    field.fill(0);
    for (let v = 0; v < wires; v++)
      if (v !== w) field[Math.floor(v / each)]! += 1 / (2 * Math.PI * pitch * (v - w));
    for (let i = 0; i < turns; i++)
      for (let j = 0; j < turns; j++) matrix[i * turns + j]! += field[i]! * field[j]!;
  }
  return matrix;
};
