package leadline.lake;

/** Keeps the engine running between the commands of a test, each of which closes its own. */
public final class RunningEngine {

  private static final Engine ENGINE = new Engine();

  private RunningEngine() {}

  public static void start() {
    ENGINE.context();
  }
}
