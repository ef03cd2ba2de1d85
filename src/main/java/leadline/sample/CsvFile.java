package leadline.sample;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A new CSV file: UTF-8, lines ended by LF, no cell in need of quotes. */
final class CsvFile implements AutoCloseable {

  private final String separator;
  private final BufferedWriter out;

  CsvFile(Path file, String separator, List<String> header) throws IOException {
    this.separator = separator;
    out = Files.newBufferedWriter(file, StandardCharsets.UTF_8);
    write(header);
  }

  void write(List<String> cells) throws IOException {
    for (String cell : cells) {
      if (cell.contains(separator)
          || cell.chars().anyMatch(letter -> letter == '"' || letter < ' ')) {
        throw new IllegalArgumentException("the sample writes no cell that needs quotes: " + cell);
      }
    }
    out.write(String.join(separator, cells));
    out.write('\n');
  }

  @Override
  public void close() throws IOException {
    out.close();
  }
}
