package leadline.fleet;

/**
 * Whether a part's failure always shows in service, or may stay unseen until the part is opened.
 */
public enum FailureShows implements Written {
  ALWAYS,
  MAY_STAY_UNSEEN
}
