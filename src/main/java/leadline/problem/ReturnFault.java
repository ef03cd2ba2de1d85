package leadline.problem;

/** A row of a return sheet whose cells do not go together. */
public sealed interface ReturnFault extends RowFault {

  /** A cell is empty that another, which is filled in, needs. */
  record NeededBeside(String column, String filled) implements ReturnFault {
    @Override
    public String sentence() {
      return "%s is empty, though %s is filled in: fill in both, or neither."
          .formatted(column, filled);
    }
  }

  /** A cell of the overhaul in the row of one of its parts. */
  record OfTheOverhaul(String column, String part) implements ReturnFault {
    @Override
    public String sentence() {
      return "%s is of the overhaul, and this row is of its %s alone: write it in the overhaul's own row, and leave it empty here."
          .formatted(column, part);
    }
  }

  /** A cell of a finding in a row without a part. */
  record OfAPart(String column) implements ReturnFault {
    @Override
    public String sentence() {
      return "%s is of a part, and this row names none: write it in the part's own row, and leave it empty here."
          .formatted(column);
    }
  }

  /** The answer that the record is right, beside a cell that changes it. */
  record RightAndChanged(String column) implements ReturnFault {
    @Override
    public String sentence() {
      return "%s is filled in, though the answer is as-written: write corrected, or leave the cell empty."
          .formatted(column);
    }
  }

  /** The answer that the record is corrected, beside no cell that corrects it. */
  record NothingCorrected(String column) implements ReturnFault {
    @Override
    public String sentence() {
      return "The answer is corrected, but no cell of the record is filled in: fill in what is right, or write as-written.";
    }
  }

  /** The answer that a record is right, where there is none yet. */
  record NothingAsked(String column) implements ReturnFault {
    @Override
    public String sentence() {
      return "The answer as-written belongs to questions, and this row is of an overhaul that falls due: leave it empty.";
    }
  }
}
