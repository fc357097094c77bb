export const safety = {};
