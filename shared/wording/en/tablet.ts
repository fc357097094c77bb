export const tablet = {};
