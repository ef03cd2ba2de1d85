package leadline.fleet;

/** Why an overhaul was done. A test-only visit is no overhaul. */
public enum Reason implements Written {
  PLANNED,
  CONDITION,
  BREAKDOWN,
  TEST_ONLY;

  public boolean isOverhaul() {
    return this != TEST_ONLY;
  }
}
