export const desk = {};
