/** Every tolerance of the project, with its unit and its reason. No number like these stands elsewhere. */
export const TOLERANCE = Object.freeze({
  /** mm. Two points closer than this are one: a tenth of the file form's 0.01 mm. */
  samePoint: 0.001,
  /** A bulge under this is a straight: 0.0005 of sagitta on a chord of 500 mm is 0.1 mm. */
  straightBulge: 1e-6,
  /** rad. A turn smaller than this between pieces is tangent, not a corner (0.6 degrees). */
  tangent: 0.01,
  /** mm. How far a fitted line may lie from the cleaned samples of its stroke. */
  fit: 2,
  /** A relative slack for roots of quadratics at tangency. */
  root: 1e-9,
});
