package leadline.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Another process that holds a lake's lock until its standard input ends. */
final class LockHolder {

  private final Process process;

  private LockHolder(Process process) {
    this.process = process;
  }

  static LockHolder of(Path lake) throws IOException {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                LockHolder.class.getProtectionDomain().getCodeSource().getLocation().getPath(),
                LockHolder.class.getName(),
                lake.resolve("writer.lock").toString())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    if (process.getInputStream().read() < 0) {
      throw new IOException("the other process could not take the lock");
    }
    return new LockHolder(process);
  }

  static void whileHeld(Path lake, Runnable work) throws IOException {
    LockHolder holder = of(lake);
    try {
      work.run();
    } finally {
      holder.release();
    }
  }

  public static void main(String[] arguments) throws IOException {
    try (FileChannel file =
        FileChannel.open(
            Path.of(arguments[0]), StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
      file.lock();
      System.out.println("held");
      while (System.in.read() >= 0) {}
    }
  }

  void kill() {
    process.destroyForcibly().onExit().join();
  }

  void release() {
    try {
      process.getOutputStream().close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    process.onExit().join();
  }
}
