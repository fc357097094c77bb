export const board = {};
