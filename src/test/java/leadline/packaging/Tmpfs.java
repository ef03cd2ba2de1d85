package leadline.packaging;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A small disk in memory. Only the administrator may mount one: without that right, no test. */
record Tmpfs(Path folder) implements AutoCloseable {

  static Tmpfs mounted(Path folder, String size) throws IOException {
    Files.createDirectories(folder);
    assumeTrue(
        mount("-t", "tmpfs", "-o", "size=" + size, "tmpfs", folder.toString()),
        "no right to mount a small disk");
    return new Tmpfs(folder);
  }

  void readOnly() {
    remount("ro");
  }

  void writable() {
    remount("rw");
  }

  private void remount(String option) {
    if (!mount("-o", "remount," + option, folder.toString())) {
      throw new IllegalStateException("cannot remount " + folder + " with " + option);
    }
  }

  private static boolean mount(String... arguments) {
    return Program.system("mount", arguments).run().exit() == 0;
  }

  @Override
  public void close() {
    Program.system("umount", "-l", folder.toString()).run();
  }
}
