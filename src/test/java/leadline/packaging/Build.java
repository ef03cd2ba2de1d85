package leadline.packaging;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.jar.Attributes;
import java.util.jar.JarFile;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the build has made. */
final class Build {

  static final Path HOME = Path.of(System.getProperty("leadline.home", ".")).toAbsolutePath();
  static final Path LAUNCHER = HOME.resolve("jobs/leadline");
  static final Path TARGET = HOME.resolve("target");
  static final Path JAR = TARGET.resolve("leadline.jar");
  static final Path JAR_FOR_SPARK = TARGET.resolve("leadline-for-spark.jar");

  private Build() {}

  /** The jars that the program's own jar names as its class path. */
  static List<Path> libraries() {
    try (JarFile jar = new JarFile(JAR.toFile())) {
      String classPath = jar.getManifest().getMainAttributes().getValue(Attributes.Name.CLASS_PATH);
      return Stream.of(classPath.split(" ")).map(TARGET::resolve).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The classes of a jar, as paths, those for one Java version only left out. */
  static Set<String> classes(Path jar) {
    try (JarFile file = new JarFile(jar.toFile())) {
      return file.stream()
          .map(entry -> entry.getName())
          .filter(name -> name.endsWith(".class"))
          .filter(name -> !name.startsWith("META-INF/") && !name.endsWith("module-info.class"))
          .collect(Collectors.toSet());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Whether all classes of a library, of which it has some, are among these. */
  static boolean holdsAll(Set<String> classes, Path library) {
    Set<String> own = classes(library);
    return !own.isEmpty() && classes.containsAll(own);
  }

  static String classPath(Stream<Path> jars) {
    return jars.map(Path::toString)
        .collect(Collectors.joining(System.getProperty("path.separator")));
  }
}
