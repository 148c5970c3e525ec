/** The compiled engine packed into text, put in by the build. */
declare module 'packed:engine' {
  const text: string;
  export default text;
}
