/** Layouts that a new site can begin as, and the names of what they hold. */
export const situations = {
  'situation.driveway-gate': 'Driveway gate',
  'situation.driveway-gate.gist':
    'A sliding gate with a free-exit loop inside and a protecting loop on each side of the gate.',
  'situation.car-park-lane': 'Car-park lane',
  'situation.car-park-lane.gist':
    'One entry lane with a barrier arm: an arrival loop before the arm and a closing loop behind it.',
  'situation.stop-line': 'Stop line with two lanes',
  'situation.stop-line.gist':
    'Two lanes side by side, each with two presence loops in series behind the stop line.',
  'situation.advance-loops': 'Advance loops',
  'situation.advance-loops.gist':
    'A fast approach with a loop at each end of the zone in which drivers decide to stop or to go on.',
  'situation.counting-pair': 'Counting pair',
  'situation.counting-pair.gist':
    'Two short loops one after the other, which count vehicles in and out of a car park.',
  'situation.bicycle-stop-line': 'Bicycle stop line',
  'situation.bicycle-stop-line.gist':
    'A bicycle lane with a diagonal loop beside a traffic lane with a quadrupole.',
  'situation.blank': 'Blank',
  'situation.blank.gist': 'Nothing but the road: draw everything yourself.',

  'named.approach': 'Approach',
  'named.arrival': 'Arrival',
  'named.barrierUnit': 'Barrier unit',
  'named.bicycles': 'Bicycles',
  'named.cabinetUnit': 'Cabinet unit',
  'named.closing': 'Closing',
  'named.countingUnit': 'Counting unit',
  'named.driveway': 'Driveway',
  'named.entry': 'Entry',
  'named.far': 'Far',
  'named.first': 'First',
  'named.freeExit': 'Free exit',
  'named.gateUnit': 'Gate unit',
  'named.inAndOut': 'In and out',
  'named.left': 'Left',
  'named.leftLane': 'Left lane',
  'named.near': 'Near',
  'named.protecting': 'Protecting',
  'named.protectingInside': 'Protecting, inside',
  'named.protectingOutside': 'Protecting, outside',
  'named.right': 'Right',
  'named.rightLane': 'Right lane',
  'named.second': 'Second',
  'named.traffic': 'Traffic'
} as const;
