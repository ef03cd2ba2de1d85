package leadline.estimate;

/**
 * Data or settings that a method cannot use; the message is one sentence that says where and why.
 */
public final class UnusableData extends RuntimeException {

  public UnusableData(String sentence) {
    super(sentence);
  }
}
