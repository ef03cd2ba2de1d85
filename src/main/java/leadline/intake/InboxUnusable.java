package leadline.intake;

/** The inbox folder cannot be read at all. The message is a sentence for the person at the desk. */
public final class InboxUnusable extends RuntimeException {

  private static final long serialVersionUID = 1;

  InboxUnusable(String sentence) {
    super(sentence);
  }

  InboxUnusable(String sentence, Throwable cause) {
    super(sentence, cause);
  }
}
