// Tables for people.

/** Lines of aligned columns; numbers are right-aligned. */
export function table(head, rows) {
  const cells = [head, ...rows].map((row) => row.map(String));
  const widths = head.map((_, column) => Math.max(...cells.map((row) => row[column].length)));
  const isNumber = head.map((_, column) => rows.every((row) => typeof row[column] === 'number'));
  return cells
    .map((row) => row.map((cell, column) => (isNumber[column] ? cell.padStart(widths[column]) : cell.padEnd(widths[column]))).join('  ').trimEnd())
    .join('\n');
}

const figure = (value) => (typeof value === 'number' ? String(Math.round(value * 1000) / 1000) : JSON.stringify(value));

/** One difference on one line, followed by the engine's lines if they were read. */
export function differenceLine({width, where, what, expected, actual, slack, read}) {
  const room = slack === undefined ? '' : `, slack ${(slack * 100).toFixed(2)} %`;
  const lines = read ? `\n    ${JSON.stringify(read)}` : '';
  return `  at ${width} px, ${where}: ${what} ${figure(expected)} in the engine, ${figure(actual)} computed${room}${lines}`;
}
