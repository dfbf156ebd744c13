/** The words of one language as a build ships them: the plugin `words` of `vite.config.ts` puts the catalogues together. */
declare module 'virtual:words/*' {
  const catalogue: string;
  export default catalogue;
}
