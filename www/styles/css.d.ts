/** A style sheet taken as text. */
declare module '*.css' {
  const text: string;
  export default text;
}
