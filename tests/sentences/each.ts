export const each = <V>(values: readonly V[], ask: (value: V) => unknown): void => void values.map(ask);
