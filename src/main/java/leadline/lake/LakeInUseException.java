package leadline.lake;

/** Another writer holds the lake; trying again later will do. */
public final class LakeInUseException extends RuntimeException {

  LakeInUseException(String sentence) {
    super(sentence);
  }
}
