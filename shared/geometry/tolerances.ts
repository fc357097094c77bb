/** Every tolerance of geometry, with its unit and its reason. No number like these stands elsewhere. */
export const TOLERANCE = Object.freeze({
  /** mm. Two points closer than this are one: a tenth of the file form's 0.01 mm. */
  samePoint: 0.001,
  /** A bulge under this is a straight: on a chord of 4 m it would stand off by 0.002 mm. */
  straightBulge: 1e-6,
  /** rad. A turn smaller than this between pieces is tangent, not a corner (0.6 degrees). */
  tangent: 0.01,
  /** rad. A line that goes on within 20 degrees of ahead goes straight on: no corner, and no left or right. */
  ahead: Math.PI / 9,
  /** mm. The step of the file form: a rule allows for what rounding a drawing to it can do. */
  step: 0.01,
  /** mm. How far a fitted line may lie from the cleaned samples of its stroke. */
  fit: 2,
  /** 1/mm. A road that bends less is straight: 1 mm aside in 45 m. */
  straightBend: 1e-6,
  /** mm. Ways are sums: where two of them meet, rounding is less than this. */
  sameWay: 1e-9,
  /** A share, of robots or of a radius: far more than rounding is, far less than counts. */
  shareOfRobots: 1e-6,
  shareOfRadius: 1e-9,
  /** Determinant by squared spread: points flat within a ten-thousandth of their length lie on a straight. */
  flat: 2e-8,
  /** mm. How exactly the deepest point of a segment inside an area is searched: far less than any margin says. */
  depth: 0.05,
});
