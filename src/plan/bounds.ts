/**
 * Largest and smallest values that a document may hold, SI.
 *
 * They are far outside anything that is cut into a road, and exist so that a slip (millimetres typed as metres,
 * a pasted telephone number) is refused with a sentence instead of producing a figure that looks like one.
 */
export const BOUNDS = {
  coordinate: { min: -20_000, max: 20_000 },
  side: { min: 0.05, max: 500 },
  turns: { min: 1, max: 50 },
  slotDepth: { min: 0.005, max: 1 },
  slotWidth: { min: 0.001, max: 0.1 },
  permittivity: { min: 1, max: 100 },
  tail: { min: 0, max: 1_000 },
  leadIn: { min: 0, max: 10_000 },
  resistancePerMetre: { min: 1e-6, max: 10 },
  inductancePerMetre: { min: 1e-9, max: 1e-4 },
  capacitancePerMetre: { min: 0, max: 1e-8 },
  wireDiameter: { min: 1e-4, max: 0.1 },
  addedResistance: { min: 0, max: 1_000 },
  laneWidth: { min: 0.5, max: 50 },
  frequency: { min: 1_000, max: 1_000_000 },
  settingCapacitance: { min: 1e-11, max: 1e-4 },
  inductance: { min: 1e-9, max: 1 },
  mutualPerMetre: { min: 0, max: 1e-6 },
  measuringTime: { min: 1e-5, max: 10 },
  ratio: { min: 1e-6, max: 0.5 },
  seconds: { min: 0, max: 86_400 },
  pulse: { min: 0.01, max: 5 },
  timing: { min: 0.01, max: 600 },
  adaptation: { min: 10, max: 1_000_000 },
  cycle: { min: 5, max: 600 },
  flow: { min: 0, max: 3_000 },
  /** m/s */
  speed: { min: 0.2, max: 70 },
  partSize: { min: 0.02, max: 60 },
  partPosition: { min: -60, max: 60 },
  partHeight: { min: 0.02, max: 10 },
  ringRadius: { min: 0.02, max: 5 },
  conductorRadius: { min: 1e-4, max: 0.2 },
  temperature: { min: -60, max: 90 },
  steelDepth: { min: 0.005, max: 5 },
  resistivity: { min: 1e-9, max: 1e-3 },
  permeability: { min: 1, max: 100_000 },
  conductivity: { min: 0, max: 10 },
  steelCost: { min: 0.001, max: 0.9 },
  pitch: { min: 0.02, max: 5 },
  barRadius: { min: 0.001, max: 0.05 },
  bendRadius: { min: 0, max: 5_000 },
  leafTravel: { min: -50, max: 50 },
  dimensionOffset: { min: -100, max: 100 },
  metresPerPixel: { min: 1e-5, max: 100 },
  opacity: { min: 0.05, max: 1 },
  money: { min: 0, max: 1e9 },
  /** Metres an hour. */
  pace: { min: 0.1, max: 10_000 },
  blade: { min: 0.05, max: 2 },
  core: { min: 0.005, max: 0.5 },
  pack: { min: 1e-6, max: 1e6 }
} as const;

/** How many of each the document may hold. */
export const COUNTS = {
  lanes: 200,
  marks: 2_000,
  underlays: 4,
  /** Pixels along a side. */
  picturePixels: 8_192,
  /** Characters of a picture's bytes as base64: 6 MB; four of them fit into the largest file. */
  pictureText: 8_000_000,
  loops: 500,
  cables: 100,
  cablesInRow: 8,
  wires: 100,
  circuits: 500,
  loopsPerCircuit: 64,
  units: 100,
  conduits: 200,
  channels: 64,
  settings: 64,
  vehicles: 100,
  parts: 24,
  probes: 100,
  paths: 100,
  arrivals: 2_000,
  steel: 100,
  readings: 10_000,
  instruments: 50,
  points: 400,
  /** Of an underlay's lines: paths, and points of one. */
  linePaths: 20_000,
  linePoints: 2_000,
  prices: 200,
  nameLength: 200,
  noteLength: 4_000,
  /** Designs kept beside the present one. */
  variants: 24
} as const;
