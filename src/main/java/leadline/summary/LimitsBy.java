package leadline.summary;

import leadline.fleet.Written;

/** How limits were found. */
public enum LimitsBy implements Written {
  PROFILE_LIKELIHOOD,
  BOOTSTRAP_OF_VESSELS,
  BOOTSTRAP_OF_LIVES,
  BINOMIAL,
  NONE
}
