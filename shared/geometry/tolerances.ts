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
  /** mm. How exactly the deepest point of a segment inside an area is searched: far less than any margin says. */
  depth: 0.05,
});
