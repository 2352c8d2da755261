/** Room that a label takes, in the unit of its sheet. */
export interface LabelSize {
  readonly width: number;
  readonly height: number;
}
