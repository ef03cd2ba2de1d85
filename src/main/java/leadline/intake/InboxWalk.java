package leadline.intake;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import leadline.fleet.RecordKind;
import leadline.fleet.Written;
import leadline.origin.FileDigest;
import leadline.problem.FileFault;
import leadline.problem.FileTrouble;
import leadline.settings.SourceFile;

/** Sorts the files of an inbox as they are met. */
final class InboxWalk extends SimpleFileVisitor<Path> {

  private final Path inbox;
  private final List<ExportFile> exports = new ArrayList<>();
  private final List<FileFault> unusable = new ArrayList<>();
  private final List<String> ignored = new ArrayList<>();

  InboxWalk(Path inbox) {
    this.inbox = inbox;
  }

  Inbox found() {
    return new Inbox(exports, unusable, ignored);
  }

  @Override
  public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
    return !folder.equals(inbox) && isHidden(folder)
        ? FileVisitResult.SKIP_SUBTREE
        : FileVisitResult.CONTINUE;
  }

  @Override
  public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
    if (isHidden(file) || file.equals(inbox.resolve(SourceFile.NAME))) {
      return FileVisitResult.CONTINUE;
    }
    String name = nameOf(file);
    if (!canBeRead(name)) {
      ignored.add(below(file));
      return FileVisitResult.CONTINUE;
    }
    Optional<RecordKind> kind = RecordKind.ofFileName(name);
    if (kind.isEmpty()) {
      unusable.add(new FileFault.UnrecognisedFile(below(file), Written.words(RecordKind.class)));
    } else if (!attributes.isRegularFile()) {
      unusable.add(new FileFault.UnreadableFile(below(file), "it is no regular file"));
    } else {
      digest(kind.get(), file);
    }
    return FileVisitResult.CONTINUE;
  }

  /** Of the plain layout only return sheets may be workbooks: ships fill those in by hand. */
  private static boolean canBeRead(String name) {
    return name.toLowerCase(Locale.ROOT).endsWith(".csv")
        || (ExportFile.isWorkbook(name)
            && RecordKind.ofFileName(name).filter(RecordKind.RETURNS::equals).isPresent());
  }

  private void digest(RecordKind kind, Path file) {
    try {
      exports.add(new ExportFile(kind, below(file), FileDigest.of(file)));
    } catch (IOException e) {
      unusable.add(new FileFault.UnreadableFile(below(file), FileTrouble.reason(e)));
    }
  }

  /** A folder without the right to read it, or a link that leads nowhere or in a circle. */
  @Override
  public FileVisitResult visitFileFailed(Path file, IOException reason) {
    if (!isHidden(file)) {
      unusable.add(new FileFault.UnreadableFile(below(file), FileTrouble.reason(reason)));
    }
    return FileVisitResult.CONTINUE;
  }

  private String below(Path file) {
    List<String> names = new ArrayList<>();
    inbox.relativize(file).forEach(name -> names.add(name.toString()));
    return String.join("/", names);
  }

  private static boolean isHidden(Path file) {
    return nameOf(file).startsWith(".");
  }

  private static String nameOf(Path file) {
    return file.getName(file.getNameCount() - 1).toString();
  }
}
