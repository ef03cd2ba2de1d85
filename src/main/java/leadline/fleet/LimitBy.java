package leadline.fleet;

/** Who sets a limit between overhauls; of two that fall together, the first here is named. */
public enum LimitBy implements Written {
  CLASS,
  MAKER,
  SETTINGS,
  CATALOGUE
}
