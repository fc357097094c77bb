/** Numbers of a robot, as labels in the kit's editor. */

export const fields = {
  robot: {
    name: 'Kind of robot',
    sizes: 'Sizes',
    width: 'Width across the wheels',
    length: 'Length, front to back',
    axleToRear: 'From the axle to the rear end',
    wheelTrack: 'Between the middles of the wheels',
    sensors: 'Sensors',
    barAhead: 'Sensor bar ahead of the axle',
    sensorPitch: 'From one sensor to the next',
    bandUnit: 'What its reader takes for one band',
    actsAfter: 'From reading a mark to doing it',
    choices: 'What it does by itself',
    unmarkedJunction: 'At a junction without a mark',
    junctions: { any: 'any way but back, each as likely', straight: 'straight on where it can' },
    looseEnd: 'Where a line ends',
    ends: { stop: 'stops', 'turn-back': 'turns back' },
  },
  paces: {
    creep: 'Tiptoe',
    steady: 'Steady',
    brisk: 'Brisk',
    fast: 'Fast',
    topWheelSpeed: 'Fastest that a wheel can turn',
    startPace: 'Pace at the start',
    how: 'Let a robot follow a straight printed line of 500 mm three times, and divide 500 by the mean of the times in seconds.',
  },
};

export const tolerances = {
  title: 'How much robots differ',
  how: 'One standard deviation each, in calm weather; two of three robots lie within. The usual values are chosen, not measured: trials with the class’s own robots say more.',
  aside: 'Set down beside the middle',
  heading: 'Set down turned',
  commonSpeed: 'Speed of a robot',
  wheelMismatch: 'One wheel against the other',
  sensorGain: 'How strongly a sensor sees',
  sensorOffset: 'What a sensor sees in the dark',
  calibration: 'White level when calibrated',
};
