package leadline.publish;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import leadline.origin.FileDigest;

/**
 * A published file by its content.
 *
 * @param path below the run's folder, with forward slashes
 * @param hash {@code sha256:} and the digest, as the data package standard writes it
 */
record FileFacts(String path, long bytes, String hash) {

  static FileFacts of(Path folder, Path file) throws IOException {
    return new FileFacts(
        folder.relativize(file).toString().replace('\\', '/'),
        Files.size(file),
        "sha256:" + FileDigest.of(file).hex());
  }
}
