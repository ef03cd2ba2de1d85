package leadline.packaging;

import java.util.List;

/** A program that has ended: its exit code and the lines it wrote. */
record Finished(int exit, List<String> out, List<String> err) {

  String lastLine() {
    return out.get(out.size() - 1);
  }
}
