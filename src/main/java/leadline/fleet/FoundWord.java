package leadline.fleet;

/** The condition a part was found in, before any work. */
public enum FoundWord implements Written {
  SOUND,
  WORN,
  SCORED,
  CRACKED,
  BROKEN,
  CORRODED,
  ERODED,
  DEFORMED,
  STUCK,
  LEAKING,
  BLOCKED,
  MISSING
}
