// A reporter of node's test runner: the files in which a test failed, a line for each failure.
export default async function* (events) {
  for await (const { type, data } of events) if (type === 'test:fail') yield `${data.file}\n`;
}
