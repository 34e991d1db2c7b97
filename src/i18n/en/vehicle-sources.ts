/** Where the sizes of the catalogue's vehicles come from, by id. */
export const vehicleSources = {
  'source.car':
    'Length: medium class of the usual European classes of cars by length (small 3.7 to 4.2 m, medium 4.2 to 4.6 m, large 4.6 to 4.8 m); width: common practice, rounded. The passenger car of the AASHTO design-vehicle table (Green Book, 2004: 5.8 x 2.1 m) is larger than nearly all. Floor as one plate. Effective heights: assumption, above the geometric clearance because a real underside has gaps.',
  'source.car-small':
    'Length: small class of the usual European classes of cars by length (small 3.7 to 4.2 m, medium 4.2 to 4.6 m, large 4.6 to 4.8 m); width: common practice, rounded. Floor as one plate. Effective heights: assumption, above the geometric clearance because a real underside has gaps. Taken as high as that of the car.',
  'source.suv':
    'Length: large class of the usual European classes of cars by length (small 3.7 to 4.2 m, medium 4.2 to 4.6 m, large 4.6 to 4.8 m); width: common practice, rounded. The passenger car of the AASHTO design-vehicle table (Green Book, 2004: 5.8 x 2.1 m) is larger than nearly all. Floor as one plate. Effective heights: assumption, above the geometric clearance because a real underside has gaps. Taken 7 cm above that of the car: such vehicles stand higher by about as much, common practice.',
  'source.van':
    'Sizes: common practice, rounded, between the passenger car and the single-unit lorry of the AASHTO design-vehicle table (Green Book, 2004: 5.8 x 2.1 m and 9.2 x 2.4 m). Floor as one plate. Effective heights: assumption, above the geometric clearance because a real underside has gaps.',
  'source.lorry':
    'Sizes: between the single-unit lorry of the AASHTO design-vehicle table (Green Book, 2004: 9.2 x 2.4 m) and the largest that Directive 96/53/EC permits (12.00 x 2.55 m), rounded. Chassis, engine and two axles as plates, their places and sizes common practice. Effective heights: assumption, above the geometric clearance because a real underside has gaps.',
  'source.lorry-articulated':
    "Body: the largest that Directive 96/53/EC permits, 16.50 x 2.55 m, with 12.00 m from the kingpin to the trailer's rear end; between the WB-12 and WB-15 combinations of the AASHTO design-vehicle table (Green Book, 2004: 13.9 x 2.4 m and 16.8 x 2.6 m). Places and sizes of frame, engine and axles: common practice, from memory. Effective heights: assumption, above the geometric clearance because a real underside has gaps. The trailer's floor is some 1.2 m up and often timber on two beams: taken as a sheet at 1.5 m. In between the axles it is what a loop loses.",
  'source.tractor':
    'The front and the rear of the articulated lorry, taken apart: sizes by common practice and effective heights by assumption, as there. Couple a trailer behind it.',
  'source.semitrailer':
    'The front and the rear of the articulated lorry, taken apart: sizes by common practice and effective heights by assumption, as there. It reaches 3.3 m over its tractor.',
  'source.bus':
    'Sizes: the city transit bus of the AASHTO design-vehicle table (Green Book, 2004: 12.2 x 2.6 m), rounded down to a common one of 12 m. Floor and two axles as plates, their places and sizes common practice. Effective heights: assumption, above the geometric clearance because a real underside has gaps.',
  'source.motorcycle':
    'Sizes: ordinary machine of its kind, rounded, common practice. Engine and frame as one plate, two wheel rims as rings. Plate and rim section: assumption, chosen so that the strongest response of a three-turn loop of 1.8 x 1.8 m with 30 m of lead-in is about 0.3 %, the large-motorcycle class of NEMA TS 1 (0.32 %, from memory).',
  'source.motorcycle-small':
    'Sizes: ordinary machine of its kind, rounded, common practice. Engine as a plate, two wheel rims as rings. Plate and rim section: assumption, chosen so that the strongest response of a three-turn loop of 1.8 x 1.8 m with 30 m of lead-in is about 0.1 %, the small-motorcycle class of NEMA TS 1 (0.13 %, from memory).',
  'source.bicycle':
    'Sizes: ordinary cycle, about 1.8 x 0.65 m in the cycle design guidance LTN 1/20, from memory, rounded; wheels of 0.68 m, common practice. Two aluminium rims as closed rings without loss, frame left out. Rim section: assumption.',
  'source.bicycle-steel':
    'Sizes: ordinary cycle, about 1.8 x 0.65 m in the cycle design guidance LTN 1/20, from memory, rounded; wheels of 0.68 m, common practice. Two rims of mild steel as closed rings, frame left out. Rim section: assumption, that of the aluminium rims. Resistivity 0.17 microohm metres; relative permeability 100: assumption, 40 to 400 occur.',
  'source.wheel':
    "A bicycle's wheel by itself, upright and along the lane: a small test object that shows where a bicycle's wheel must roll. Diameter 0.68 m, common practice; a closed ring without loss, rim section an assumption.",
  'source.class-motorcycle-small':
    'Class and figure: NEMA TS 1 section 15, from memory. Size of the plate: assumption, ordinary for its kind, rounded. Height: solved for, so that the plate driven along the middle of the lane over the middle of the standard loop (6 x 6 ft, corners cut 12 in, 3 turns of 14 AWG, slot 1-1/2 in deep, 100 ft of 14 AWG lead-in, 50 kHz) changes the inductance at the terminals by 0.13 % at the strongest place of the pass. A flat plate has no wheels: with its middle right over a slot along the lane, as on a quadrupole, it answers next to nothing where a two-wheeler does answer.',
  'source.class-motorcycle-large':
    'Class and figure: NEMA TS 1 section 15, from memory. Size of the plate: assumption, ordinary for its kind, rounded. Height: solved for, so that the plate driven along the middle of the lane over the middle of the standard loop (6 x 6 ft, corners cut 12 in, 3 turns of 14 AWG, slot 1-1/2 in deep, 100 ft of 14 AWG lead-in, 50 kHz) changes the inductance at the terminals by 0.32 % at the strongest place of the pass. A flat plate has no wheels: with its middle right over a slot along the lane, as on a quadrupole, it answers next to nothing where a two-wheeler does answer.',
  'source.class-automobile':
    'Class and figure: NEMA TS 1 section 15, from memory. Size of the plate: assumption, ordinary for its kind, rounded. Height: solved for, so that the plate driven along the middle of the lane over the middle of the standard loop (6 x 6 ft, corners cut 12 in, 3 turns of 14 AWG, slot 1-1/2 in deep, 100 ft of 14 AWG lead-in, 50 kHz) changes the inductance at the terminals by 3.2 % at the strongest place of the pass.'
} as const;
