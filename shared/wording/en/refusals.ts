export const refusals = {};
