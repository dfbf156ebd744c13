// The words of one language. What the answers of the core already say in words (checks, certificates, the plain
// command line) is left out: no screen speaks from it.
export default import.meta.glob<string>(
  [
    '../../../../src-tauri/crates/words/locales/es/*.ftl',
    '!../../../../src-tauri/crates/words/locales/es/{care,certificate,check,cli,found,office,photo,register,share,sheet,stock,tables,tag}.ftl',
  ],
  { query: '?raw', import: 'default', eager: true },
);
