/** [time, value that holds until the next one]. */
export type Pairs = readonly (readonly [time: number, value: number])[];

const EVER = Number.POSITIVE_INFINITY;

/**
 * Robustness in discrete time, at the times 0 to 4. Source: RTAMT (nickovic/rtamt, BSD-3-Clause),
 * test_stl_discrete_time_offline_specification.py.
 */
export const SIGNALS = { req: [100, -1, -2, 5, -1], gnt: [20, -2, 10, 4, -1] } as const;
export const IN_STEPS: readonly { readonly formula: string; readonly robustness: readonly number[] }[] = [
  { formula: 'req + gnt', robustness: [120, -3, 8, 9, -2] },
  { formula: '(req - gnt)', robustness: [80, 1, -12, 1, 0] },
  { formula: 'req and gnt', robustness: [20, -2, -2, 4, -1] },
  { formula: 'req or gnt', robustness: [100, -1, 10, 5, -1] },
  { formula: 'req xor gnt', robustness: [80, 1, 12, 1, 0] },
  { formula: 'req -> gnt', robustness: [20, 1, 10, 4, 1] },
  { formula: 'always req', robustness: [-2, -2, -2, -1, -1] },
  { formula: 'always[0,1] req', robustness: [-1, -2, -2, -1, -1] },
  { formula: 'historically req', robustness: [100, -1, -2, -2, -2] },
  { formula: 'once req', robustness: [100, 100, 100, 100, 100] },
  { formula: 'eventually req', robustness: [100, 5, 5, 5, -1] },
  { formula: 'eventually[0,1] req', robustness: [100, -1, 5, 5, -1] },
  { formula: 'req since gnt', robustness: [20, -1, 10, 5, -1] },
  { formula: 'req until gnt', robustness: [20, -1, 10, 4, -1] },
  { formula: 'req until[0,1] gnt', robustness: [20, -1, 10, 4, -1] },
  { formula: 'once[0,1] req', robustness: [100, 100, -1, 5, 5] },
  { formula: 'once[1,2] req', robustness: [-EVER, 100, 100, -1, 5] },
  { formula: 'historically[0,1] req', robustness: [100, -1, -2, -2, -1] },
  { formula: 'historically[1,2] req', robustness: [EVER, 100, -1, -2, -2] },
  { formula: 'req since[0,1] gnt', robustness: [20, -1, 10, 5, -1] },
  { formula: 'not req', robustness: [-100, 1, 2, -5, 1] },
  { formula: 'rise(req)', robustness: [100, -100, -2, 2, -5] },
  { formula: 'fall(req)', robustness: [-100, 1, -1, -5, 1] },
  { formula: 'req >= gnt', robustness: [80, 1, -12, 1, 0] },
  { formula: 'req <= gnt', robustness: [-80, -1, 12, -1, 0] },
  { formula: 'req == gnt', robustness: [-80, -1, -12, -1, 0] },
  { formula: 'req iff gnt', robustness: [-80, -1, -12, -1, 0] },
  { formula: 'next req (weak)', robustness: [-1, -2, 5, -1, EVER] },
  { formula: 's_next req (strong)', robustness: [-1, -2, 5, -1, -EVER] },
];

/** In dense time; results list the changes alone. Source: RTAMT, test_stl_dense_time_offline_specification.py. */
export const IN_DENSE_TIME: readonly {
  readonly formula: string;
  readonly req: Pairs;
  readonly gnt?: Pairs;
  readonly result: Pairs;
}[] = [
  {
    formula: 'always(req)',
    req: [
      [0, 2.5],
      [0.7, 4],
      [1.3, -1.2],
      [2.1, 1.7],
    ],
    result: [
      [0, -1.2],
      [2.1, 1.7],
    ],
  },
  {
    formula: 'eventually(req)',
    req: [
      [0, 2.5],
      [0.7, 4],
      [1.3, -1.2],
      [2.1, 1.7],
    ],
    result: [
      [0, 4],
      [1.3, 1.7],
      [2.1, 1.7],
    ],
  },
  {
    formula: 'always[0,1](req)',
    req: [
      [0, 4],
      [5, 2],
      [10, 5],
      [15, 3],
    ],
    result: [
      [0, 4],
      [4, 2],
      [10, 5],
      [14, 3],
    ],
  },
  {
    formula: 'eventually[0,1](req)',
    req: [
      [0, 4],
      [5, 2],
      [10, 5],
      [15, 3],
    ],
    result: [
      [0, 4],
      [5, 2],
      [9, 5],
      [15, 3],
    ],
  },
  {
    formula: 'eventually[0,5](req)',
    req: [
      [0, 1],
      [6, 2],
      [7, 3],
      [8, 4],
      [9, 5],
      [15, 6],
    ],
    result: [
      [0, 1],
      [1, 2],
      [2, 3],
      [3, 4],
      [4, 5],
      [10, 6],
    ],
  },
  {
    formula: 'req until gnt',
    req: [
      [0, 1.3],
      [0.7, 3],
      [1.3, 0.1],
      [2.1, -2.2],
    ],
    gnt: [
      [0, 2.5],
      [0.7, 4],
      [1.3, -1.2],
      [2.1, 1.7],
    ],
    result: [
      [0, 1.3],
      [0.7, 3],
      [1.3, -1.2],
      [2.1, -2.2],
    ],
  },
];

/** Source: the README of mvcisback/py-metric-temporal-logic: F(a | b) at 0 and at 3 s, X b at 0 with steps of 0.2 s. */
export const SECOND_TOOL: { readonly a: Pairs; readonly b: Pairs; readonly robustness: readonly number[] } = {
  a: [
    [0, 100],
    [1, -1],
    [3, -2],
  ],
  b: [
    [0, 20],
    [0.2, 2],
    [4, -10],
  ],
  robustness: [100, 2, 2],
};
