package leadline.job;

/** What was asked cannot be done with these data; the message says why and what to do. */
public final class UnusableRequest extends RuntimeException {

  public UnusableRequest(String sentence) {
    super(sentence);
  }
}
