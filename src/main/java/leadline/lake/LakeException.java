package leadline.lake;

/** The lake cannot be used as it stands; the message says why and what to do. */
public final class LakeException extends RuntimeException {

  public LakeException(String sentence) {
    super(sentence);
  }

  public LakeException(String sentence, Throwable cause) {
    super(sentence, cause);
  }
}
