package leadline.fleet;

/** The outcome of the test on the stand. */
public enum TestResult implements Written {
  PASSED,
  FAILED
}
