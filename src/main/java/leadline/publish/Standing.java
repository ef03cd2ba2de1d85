package leadline.publish;

/** Whether a run saw all that is known, or only what was known at an earlier time. */
public enum Standing {
  CURRENT,
  AS_KNOWN_THEN
}
