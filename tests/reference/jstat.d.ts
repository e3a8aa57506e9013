/** The little of jstat that is used here; it ships no types. */
declare module 'jstat' {
  const jstat: {
    studentt: { inv(p: number, dof: number): number }
    normal: {
      inv(p: number, mean: number, sd: number): number
      pdf(x: number, mean: number, sd: number): number
      cdf(x: number, mean: number, sd: number): number
    }
  }
  export default jstat
}
