package leadline.problem;

/** A cell is empty without which the row means nothing. */
public record EmptyCell(String column) implements RowFault {

  @Override
  public String sentence() {
    return column + " is empty: every row needs it, so fill it in.";
  }
}
