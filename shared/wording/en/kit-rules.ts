/** The drawing rules of a kit, each with the reason for its number. "Common practice" has no single source. */

export const rules = {
  how: 'Each number has its reason beside it. None is validated against real robots: “in the model” is what this program’s robots do.',
  rule: 'Rule',
  number: 'Number',
  reason: 'Why',
  groups: { line: 'Line', marks: 'Marks', bands: 'Bands', junctions: 'Junctions' },
  parts: {
    least: 'least',
    nominal: 'usual',
    most: 'most',
    untidyBelow: 'untidy below',
    mayStopBelow: 'may stop below',
    shortest: 'shortest',
    tidyShortest: 'tidy from',
    tidyLongest: 'tidy to',
    longest: 'longest',
    unknownFrom: 'unknown from',
    colouredFrom: 'only coloured from',
    creep: 'tiptoe',
    steady: 'steady',
    brisk: 'brisk',
    fast: 'fast',
  },
  of: {
    lineWidth: {
      name: 'Width of a line',
      why: 'Common practice. In the model lines of 5 to 7 mm are followed and their bands read; at 8 mm most robots lose them.',
    },
    corner: {
      name: 'Corner, angle between its sides',
      why: 'Common practice: 90° is easiest. In the model every robot gets round 50°, and at 45° a third to most of them.',
    },
    curveRadius: {
      name: 'Radius of a curve',
      why: 'Common practice: S-bends want 15 mm. In the model half-turns of 10 mm still do; the rest is room for hands.',
    },
    clearance: {
      name: 'Between two lines, middle to middle',
      why: 'Room for lines drawn by hand. In the model lines 11 mm apart are kept apart.',
    },
    sheetMargin: {
      name: 'From a line to the edge of the paper',
      why: 'Chosen: a robot that strays a little stays on the paper.',
    },
    endFromEdge: {
      name: 'From a loose end to the edge, at pace fast',
      why: 'Chosen: a fast robot rolls on past the end, and should stop on the paper.',
    },
    beforeMark: {
      name: 'Plain line before a mark',
      why: 'Common practice. In the model 25 mm behind a corner is enough for all robots, 20 mm for none.',
    },
    afterMark: {
      name: 'Plain line after a mark',
      why: 'Common practice at a walking pace: the mark has to end before anything else begins.',
    },
    straightFrom: {
      name: 'A bend this wide counts as straight',
      why: 'Chosen: all five sensors then see the line as if it were straight.',
    },
    actionReady: {
      name: 'From a mark to the place that it is for',
      why: 'Common practice: some 60 mm at full speed. The robot has to understand the mark and act before it is there.',
    },
    bandCount: {
      name: 'Bands of a mark',
      why: 'What the chart uses. A mark can’t have more than 8.',
    },
    bandLength: {
      name: 'Length of a band',
      why: 'Common practice: 5 to 6 mm. In the model those are always read; of 4 mm three of four robots read them, of 7 mm about half.',
    },
    equalWithin: {
      name: 'Bands of a mark alike within',
      why: 'Common practice: a fifth. In the model one band of 0.8 to 1.2 times the others is always read.',
    },
    gap: {
      name: 'White between two bands, at most',
      why: 'In the model 0.6 mm does no harm, and with 1 mm two of three marks are misread.',
    },
    overlap: {
      name: 'One band over the next, at most',
      why: 'In the model 1 mm does no harm, and with 2 mm hardly any mark is read.',
    },
    stretch: {
      name: 'One ink alone on the line',
      why: 'Chosen. A short stretch is taken for a mark that nobody knows; a long one is only a coloured line.',
    },
    inkLighter: {
      name: 'An ink is lighter than the line',
      why: 'Chosen: an ink with twice as much light is never taken for the line.',
    },
    armsApart: {
      name: 'Angle between two arms',
      why: 'Common practice: 90° is best. In the model a crossing of 75° is always counted once.',
    },
    armLength: {
      name: 'Length of an arm',
      why: 'Fitted: in the model 25 mm are enough to tell two junctions apart.',
    },
    snap: {
      name: 'Ends this near make one junction',
      why: 'Chosen: about half the width of a line, which hides the difference.',
    },
  },
};
