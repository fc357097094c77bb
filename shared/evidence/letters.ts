/** Letters before the answers to a question, the same on paper, at the desk and on the board. */
export const ANSWER_LETTERS = 'ABCDEF';
