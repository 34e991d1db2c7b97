/** How it was computed: circuits, vehicles, neighbours. */
export const explainCircuit = {
  'explain.terminal-inductance.title': 'Apparent inductance at the terminals',
  'explain.terminal-inductance.words':
    'The full impedance matrix of the circuit’s loops, with the mutual inductance between every two of them, is joined in series and parallel as they are wired; tail and lead-in follow as transmission lines. The inductance is the reactance at the terminals over 2πf.',
  'explain.terminal-inductance.source':
    'Network and transmission line equations, any text on circuits; mutual inductances as for a loop (Rosa 1908; Grover 1946; Maxwell). Inductance of a twisted pair: two-wire line.',
  'explain.terminal-inductance.range': 'Any series and parallel wiring; exact for a linear network.',
  'explain.terminal-inductance.omits': 'Currents that flow between circuits of different channels.',

  'explain.terminal-magnetic.title': 'Magnetic inductance at the terminals',
  'explain.terminal-magnetic.words':
    'The same network with every capacitance taken out: what the coils and cables have by their magnetic field alone.',
  'explain.terminal-magnetic.source': 'As the apparent inductance, with C = 0.',
  'explain.terminal-magnetic.range': 'For comparison with hand calculations, which know no capacitance.',
  'explain.terminal-magnetic.omits': 'All capacitance; no meter reads this figure.',

  'explain.terminal-resistance.title': 'Resistance at the terminals',
  'explain.terminal-resistance.words':
    'The real part of the impedance. It is the sum of all losses: each resistance counts with the square of its share of the terminal current.',
  'explain.terminal-resistance.source': 'Network equations; the loops’ resistances as explained there.',
  'explain.terminal-resistance.range': 'The frequency and the temperature shown.',
  'explain.terminal-resistance.omits': 'Splices and joints, unless you add them to a loop.',

  'explain.terminal-dc.title': 'Resistance to direct current at the terminals',
  'explain.terminal-dc.words':
    'Copper of loops, tails and lead-in, in series and parallel as they are wired, with what you added. What an ohmmeter reads at the cabinet.',
  'explain.terminal-dc.source': 'Annealed copper, IEC 60028; Ohm’s law.',
  'explain.terminal-dc.range': 'The wire temperature shown, for all of the circuit.',
  'explain.terminal-dc.omits':
    'A cable stated by its constants counts with its stated resistance, whatever the temperature.',

  'explain.terminal-q.title': 'Quality factor at the terminals',
  'explain.terminal-q.words':
    'Reactance over resistance of the whole circuit as the unit sees it. Under 5 a unit may not run.',
  'explain.terminal-q.source': 'Definition. The limit of 5: NEMA TS 1 and TS 2, from memory of the standard.',
  'explain.terminal-q.range': 'The frequency and the temperature shown.',
  'explain.terminal-q.omits': 'Losses inside the unit.',

  'explain.frequency.title': 'Operating frequency',
  'explain.frequency.words':
    'The unit’s oscillator swings with the circuit’s inductance and the capacitance of its frequency setting; losses pull it down a little. A frequency that you give overrides it; without a channel 50 kHz is assumed.',
  'explain.frequency.source':
    'Thomson’s formula; the shift by losses is the second-order term of a damped oscillator.',
  'explain.frequency.range':
    'Q above about 2. The setting’s capacitance is the unit’s own: a measured frequency on a known loop yields it.',
  'explain.frequency.omits': 'Stray capacitance of the unit’s input.',

  'explain.losses.title': 'Where the resistance comes from',
  'explain.losses.words':
    'Each cause is what it dissipates per ampere squared at the ends. Together they are the whole resistance, and Q falls with their sum.',
  'explain.losses.source':
    'Power in each element of the solved network; skin and proximity effect by the Bessel solutions of the round wire (NBS Circular 74 for the former).',
  'explain.losses.range': 'The frequency and the temperature shown.',
  'explain.losses.omits': 'Metal and bad joints that are not in the drawing.',

  'explain.temperature.title': 'Cold and hot',
  'explain.temperature.words':
    'The whole circuit is solved again with the copper of the coldest and of the hottest day. Inductance hardly moves; resistance and Q do.',
  'explain.temperature.source': 'Annealed copper, IEC 60028: 0.00393 per kelvin at 20 °C.',
  'explain.temperature.range': 'Copper from about −60 to 90 °C; all of the circuit at one temperature.',
  'explain.temperature.omits':
    'Movement of the pavement, drift of the unit itself, and cables stated by their constants, which stay as stated.',

  'explain.moisture.title': 'Dry and wet',
  'explain.moisture.words':
    'The whole circuit is solved again with the lowest and the highest permittivity that the pavement’s material plausibly has. More capacitance raises the apparent inductance and lowers the frequency.',
  'explain.moisture.source':
    'Capacitance as explained at the loop. The range of permittivity stands in the catalogue of pavements.',
  'explain.moisture.range':
    'An estimate: the spread matters more than the two figures. In a pavement whose conductivity is stated, the permittivity hardly counts at these frequencies.',
  'explain.moisture.omits':
    'Water that fills a slot whose sealant has failed, and leakage through damaged insulation.',

  'explain.response.title': 'Response to a vehicle',
  'explain.response.words':
    'The vehicle’s plates and rings are perfect conductors at these frequencies: currents in them keep the loop’s field out. Those currents follow from the field that the loop sends through the vehicle, and they lower the loop’s inductance. The vehicle is driven along the lane, a two-wheeler on five paths across it, others in its middle; shown is the strongest moment of the worst of these paths.',
  'explain.response.source':
    'Boundary elements with a stream function on each plate (Galerkin’s method); a ring’s inductance µ₀R(ln 8R/a − 2), Grover 1946. Checked against the image of a loop under a large sheet.',
  'explain.response.range':
    '20 to 100 kHz, where the skin depth of steel is about 0.1 mm. The mesh errs by about half a percent, to the low side.',
  'explain.response.omits':
    'Iron at the wheels, which raises the inductance a little, and the gaps of a real underside: hence an effective height, above the clearance.',

  'explain.response-inductance.title': 'Change of inductance',
  'explain.response-inductance.words':
    'The circuit is solved once with the vehicle and once without; the difference at the terminals is shown. The frequency moves by half the relative change, the other way.',
  'explain.response-inductance.source': 'As the response to a vehicle.',
  'explain.response-inductance.range': 'The vehicle where it stands on the plan.',
  'explain.response-inductance.omits': 'As the response to a vehicle.',

  'explain.margin.title': 'Times the threshold',
  'explain.margin.words':
    'The response on the worst path over the channel’s trip threshold. Above 1 the vehicle makes a call: a two-wheeler on every path, others in the middle of the lane.',
  'explain.margin.source': 'Definition.',
  'explain.margin.range': 'The paths that are tried, across the width of the lane.',
  'explain.margin.omits': 'Drift, noise and the unit’s own tolerance: leave room.',

  'explain.range.title': 'Plausible range',
  'explain.range.words':
    'Every tolerance, stated or usual, is moved up and down by its amount, and the true model is solved each time. Half the difference is that tolerance’s half width; independent ones add as squares. Where the figure bends too much for that, it is sampled instead.',
  'explain.range.source':
    'Propagation of uncertainty as in the Guide to the Expression of Uncertainty in Measurement (JCGM 100).',
  'explain.range.range': 'Nineteen times in twenty, if each tolerance holds nineteen times in twenty.',
  'explain.range.omits':
    'Mistakes: a wrong number of turns or a wrong cable is no tolerance. Tolerances that go together.',

  'explain.class-margin.title': 'Standard test plate',
  'explain.class-margin.words':
    'For each vehicle class a flat plate is kept, at the height at which it gives exactly the class’s figure on the standard loop (6 × 6 ft, 3 turns, 100 ft of lead-in). Here it is driven along the lane like a vehicle.',
  'explain.class-margin.source':
    'Class figures: NEMA TS 1, section 15, from memory of the standard. The plates’ sizes are our own assumption.',
  'explain.class-margin.range':
    'A way to compare loops, not a vehicle: what a class means on any other loop. A flat plate hardly feels a slot right below its middle: what it misses there a real vehicle may not.',
  'explain.class-margin.omits': 'The standard’s own procedure and its units’ limits.',

  'explain.steel-cost.title': 'What steel costs',
  'explain.steel-cost.words':
    'A mat of bars is a grid of closed meshes, a plate a continuous sheet; the loop’s field drives currents in them, which lower its inductance, add losses and leave less for a vehicle to change. The circuit is solved with the steel and without; shown is the share that is lost.',
  'explain.steel-cost.source':
    'Coupled circuits; bars as straight filaments (Rosa 1908; Grover 1946) with the round wire’s impedance; surface impedance of a thick plate (Ramo, Whinnery & Van Duzer).',
  'explain.steel-cost.range':
    'Bars bonded wherever they cross, at a depth below the wires: a mat that is tied loosely or coated costs less. A plate whose outline is no rectangle counts as a rectangle of the same area.',
  'explain.steel-cost.omits':
    'Bars that end or do not touch, bars at two depths, and what separate pieces of steel do to one another. The permeability is assumed.',

  'explain.coupling.title': 'Coupling of two circuits',
  'explain.coupling.words':
    'The mutual inductances between the loops of the two circuits, each weighted with its share of its circuit’s current, over the geometric mean of the two terminal inductances. Steel under both takes some of it away. Lead-ins that share a conduit add theirs; its sign is not known, so it counts against.',
  'explain.coupling.source':
    'Definition; mutual inductances by Neumann’s integral in closed form (Grover 1946); steel as the image in a plane, a mat at its apparent depth. The usual coupling of twisted lead-ins, 1 nH/m, is common practice: a fiftieth of what two straight pairs side by side would have.',
  'explain.coupling.range':
    'Loops in air or pavement, at any distance. Over a mat, what the steel leaves is good to a sixth against a lattice of bars under both; loops that lie over it in part count in part.',
  'explain.coupling.omits':
    'Capacitance between the circuits, tails in one saw cut (state a conduit for them), and steel that lies under only one of the two.',

  'explain.sweep.title': 'The interval that a frequency sweeps',
  'explain.sweep.words':
    'The lowest frequency is that of the coldest, the hottest or the stated temperature, with nothing over the loops. The highest is the highest of the three with the strongest vehicle on its best path: to first order a vehicle raises the frequency by half of its relative change of inductance.',
  'explain.sweep.source': 'Follows from f = 1/(2π√(LC)), with the circuit solved at each temperature.',
  'explain.sweep.range':
    'The vehicles that are driven over the circuit, one at a time, and the temperatures of the site.',
  'explain.sweep.omits':
    'Tolerance and drift of the unit’s own capacitance (calibrate the setting), moisture, and several vehicles over one circuit at once.',

  'explain.separation.title': 'Least distance of two frequencies',
  'explain.separation.words':
    'Vehicles and temperature let each channel sweep an interval. Shown is the smallest distance between the two intervals, 0 where they overlap.',
  'explain.separation.source': 'Follows from f = 1/(2π√(LC)).',
  'explain.separation.range':
    'Each interval for itself: that a hot day moves both the same way is not counted in favour.',
  'explain.separation.omits': 'Drift of the units’ own capacitances, and moisture.',

  'explain.ripple.title': 'Ripple from a neighbour that runs at the same time',
  'explain.ripple.words':
    'As long as two coupled oscillators are further apart than their coupling can pull them, they do not lock: the frequency of each swings at the beat, which its unit reads as a change of inductance of ±k. A unit that measures longer than the beat averages most of it away. Nearer than that they may lock, and then nothing is taken to be averaged away.',
  'explain.ripple.source':
    'First-order theory of two weakly coupled oscillators. Checked by integrating the equations of two limiting oscillators in time, here and in a circuit simulator.',
  'explain.ripple.range':
    'Coupling of 0.005 to 0.02, distances of 0.4 to 3 kHz at 50 kHz: within 11 % of the integrated equations where coupling times frequency is under a third of the distance. Nearer than that a high Q may swing further; what averaging over a beat or longer leaves stays within 15 %.',
  'explain.ripple.omits':
    'A steady pull that a neighbour near its locking range adds to the mean frequency, and that a vehicle over the one changes for the other; coupling through cabinets and supplies.',

  'explain.next-lane.title': 'Traffic in the next lane',
  'explain.next-lane.words':
    'The largest vehicle that uses the next lane is driven along it, on the path nearest to the loops. Its response must stay under the threshold.',
  'explain.next-lane.source': 'As the response to a vehicle.',
  'explain.next-lane.range': 'The lanes that are drawn.',
  'explain.next-lane.omits': 'Vehicles that stray out of their lane.'
} as const;
