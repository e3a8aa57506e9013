/** As far as the tests use it. */
declare module 'js-quantities' {
  export default class Qty {
    constructor(value: number, unit: string)
    to(unit: string): { scalar: number }
  }
}
